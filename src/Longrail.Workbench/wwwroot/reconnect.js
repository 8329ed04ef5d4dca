// A lost circuit costs a reload and nothing else: the table stands in the page's address and its steps in the tab's storage.
const dialog = document.getElementById("components-reconnect-modal");
const words = document.getElementById("reconnect-words");
let again = 0;

async function reloadWhenThere() {
  clearTimeout(again);
  try {
    await fetch("/mark.svg", { cache: "no-store" });
    location.reload();
  } catch {
    words.textContent = "The program does not answer. Is it still running at the terminal?";
    again = setTimeout(reloadWhenThere, 2000);
  }
}

async function tryAgain() {
  try {
    if (!await Blazor.reconnect()) await reloadWhenThere();
  } catch {
    await reloadWhenThere();
  }
}

dialog.addEventListener("components-reconnect-state-changed", event => {
  switch (event.detail.state) {
    case "show":
      words.textContent = "The connection to the program is lost. Trying again.";
      if (!dialog.open) dialog.showModal();
      break;
    case "hide":
      clearTimeout(again);
      if (dialog.open) dialog.close();
      break;
    case "failed":
      reloadWhenThere();
      break;
    case "rejected":
      location.reload();
      break;
  }
});
dialog.addEventListener("cancel", event => event.preventDefault());
document.getElementById("reconnect-now").addEventListener("click", tryAgain);
