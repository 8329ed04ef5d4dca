// What the browser remembers of a table: its link in the address, its steps in this tab, its units in this browser.
const steps = "longrail.steps";
const looks = "longrail.view";

function fromAddress() {
  const parts = new URLSearchParams(location.hash.slice(1));
  return { link: parts.get("t"), version: parts.get("v"), view: parts.get("u") };
}

function read(storage, key) {
  try { return JSON.parse(storage.getItem(key)); } catch { return null; }
}

function write(storage, key, value) {
  // A full or forbidden storage costs undo after a reload and nothing else.
  try { storage.setItem(key, JSON.stringify(value)); } catch { storage.removeItem(key); }
}

export function recall() {
  const { link, version, view } = fromAddress();
  const kept = read(sessionStorage, steps);
  const links = Array.isArray(kept?.links) ? kept.links.filter(one => typeof one === "string").slice(-200) : null;
  const place = Number.isInteger(kept?.place) ? kept.place : -1;
  if (links) write(sessionStorage, steps, { links, place, forgotten: 0 });
  const seen = view ?? read(localStorage, looks);
  return { link, version, links, place, view: typeof seen === "string" ? seen.slice(0, 100) : null, width: innerWidth };
}

// The server sends the newest step and where it stands; the list is kept here.
export function keep(link, version, place, count, forgotten) {
  const kept = read(sessionStorage, steps);
  const links = Array.isArray(kept?.links) ? kept.links : [];
  for (let k = kept?.forgotten ?? 0; k < forgotten; k++) links.shift();
  links.length = Math.max(links.length, place + 1);
  links[place] = link;
  links.length = count;
  for (let i = 0; i < count; i++) links[i] ??= link;
  write(sessionStorage, steps, { links, place, forgotten });
  address({ t: link, v: version });
}

export function keepView(view) {
  write(localStorage, looks, view);
  address({ u: view });
}

function address(changes) {
  const parts = new URLSearchParams(location.hash.slice(1));
  for (const [key, value] of Object.entries(changes)) parts.set(key, value);
  history.replaceState(history.state, "", location.pathname + location.search + "#" + parts);
}

export function skipTo(id) {
  const place = document.getElementById(id);
  place?.setAttribute("tabindex", "-1");
  place?.focus();
}

export async function copyLink() {
  await navigator.clipboard.writeText(location.href);
}

export function save(name, text) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

export function show(id) {
  const dialog = document.getElementById(id);
  if (dialog && !dialog.open) dialog.showModal();
}

export function hide(id) {
  document.getElementById(id)?.close();
}

// A link pasted into the address of an open page is opened like any other.
addEventListener("hashchange", () => location.reload());

// The usual keys for a step back and forward, but not where they belong to a text that is being typed.
document.addEventListener("keydown", event => {
  if (!(event.ctrlKey || event.metaKey) || event.target.matches("input[type=text]")) return;
  const key = event.key.toLowerCase();
  const step = key === "y" || (key === "z" && event.shiftKey) ? "redo" : key === "z" ? "undo" : null;
  const button = step && document.querySelector(`[data-step="${step}"]`);
  if (!button) return;
  event.preventDefault();
  button.click();
});
