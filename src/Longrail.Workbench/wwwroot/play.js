// Moves the balls of a drawing along their computed ways. Between two keys, 1/240 s apart and at every contact, a ball goes
// straight and turns the shorter way round; all that is drawn here is drawn where the keys say.
const svgNamespace = "http://www.w3.org/2000/svg";
const halfWidth = 0.5;

const attached = new WeakMap();

export function detach(bar) {
  attached.get(bar)?.abort();
}

export function attach(bar, bench) {
  const leave = new AbortController();
  attached.set(bar, leave);
  const stage = bar.parentElement.querySelector(".stage");
  const part = name => bar.querySelector(`[data-play="${name}"]`);
  const [play, back, next, speed, lens, clock, line, glass] =
    ["play", "back", "next", "speed", "lens", "clock", "time", "glass"].map(part);
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  let motion = null, events = [], shot = null, time = 0, running = 0, last = 0, balls = [];

  async function load() {
    if (motion && shot === bar.dataset.shot) return true;
    const now = bar.dataset.shot;
    const width = stage.querySelector("svg.picture")?.viewBox.baseVal.width;
    [motion, events] = await Promise.all([bench.invokeMethodAsync("Motion", width), bench.invokeMethodAsync("Events")]);
    shot = now;
    balls = motion ? motion.balls.map(one => new MovingBall(one)) : [];
    return motion !== null;
  }

  function layer() {
    return stage.querySelector("g.moving-layer");
  }

  function draw() {
    const at = layer();
    if (!at || !motion) return;
    stage.toggleAttribute("data-playing", time > 0);
    const elements = time > 0 ? balls.map(ball => ball.at(time)).filter(element => element) : [];
    at.replaceChildren(...elements);
    line.value = time;
    line.setAttribute("aria-valuetext", `${time.toFixed(2)} seconds`);
    clock.value = `${time.toFixed(2)} s`;
    for (const row of document.querySelectorAll("[data-line]")) {
      const when = Number(row.dataset.time);
      row.classList.toggle("now", time > 0 && when <= time + 1e-9 && time - when < 0.12);
    }
    focusLens();
  }

  function focusLens() {
    const ball = balls.find(one => one.name !== "" && one.name === lens.value);
    glass.hidden = !ball;
    if (!ball) return;
    const picture = stage.querySelector("svg.picture");
    const perPixel = picture.viewBox.baseVal.width / picture.getBoundingClientRect().width;
    const view = glass.firstElementChild;
    const { width, height } = view.getBoundingClientRect();
    const [x, y] = ball.place(time);
    const [w, h] = [width * perPixel / 10, height * perPixel / 10];
    view.setAttribute("viewBox", `${x - w / 2} ${y - h / 2} ${w} ${h}`);
  }

  function stop() {
    cancelAnimationFrame(running);
    running = 0;
    play.textContent = "▶ Play";
  }

  function frame(now) {
    // A page that was out of sight does not leap.
    time += Math.min(now - last, 100) / 1000 * Number(speed.value);
    last = now;
    if (!motion || shot !== bar.dataset.shot) { reset(); return; }
    if (time >= motion.duration) {
      time = motion.duration;
      draw();
      stop();
      return;
    }
    draw();
    running = requestAnimationFrame(frame);
  }

  async function start() {
    if (running) { stop(); return; }
    if (!await load()) return;
    if (time >= motion.duration - 1e-6) time = 0;
    // With reduced motion a press goes on to the next event and shows it as a still.
    if (still.matches) { step(1); return; }
    play.textContent = "⏸ Pause";
    last = performance.now();
    running = requestAnimationFrame(frame);
  }

  async function step(direction) {
    if (!await load()) return;
    stop();
    const near = 1e-6;
    const found = direction > 0 ? events.find(one => one > time + near) : events.findLast(one => one < time - near);
    time = found ?? (direction > 0 ? motion.duration : 0);
    draw();
  }

  async function seek(to) {
    if (!await load()) return;
    time = Math.min(Math.max(to, 0), motion.duration);
    draw();
  }

  function reset() {
    stop();
    motion = null;
    time = 0;
    stage.removeAttribute("data-playing");
    layer()?.replaceChildren();
    line.value = 0;
    clock.value = "0.00 s";
    glass.hidden = true;
  }

  play.addEventListener("click", start);
  back.addEventListener("click", () => step(-1));
  next.addEventListener("click", () => step(1));
  line.addEventListener("input", () => { stop(); seek(Number(line.value)); });
  lens.addEventListener("change", async () => { if (await load()) { draw(); } });
  document.addEventListener("click", event => {
    const row = event.target.closest("[data-line]");
    if (row && !event.target.closest("button")) { stop(); seek(Number(row.dataset.time)); }
  }, { signal: leave.signal });
  const watch = new MutationObserver(() => { if (shot !== null && shot !== bar.dataset.shot) reset(); });
  watch.observe(bar, { attributes: true, attributeFilter: ["data-shot"] });
  bar.dataset.ready = "";
  leave.signal.addEventListener("abort", () => { watch.disconnect(); stop(); });
}

class MovingBall {
  #keys;
  #group;
  #stripe;
  #spot;
  #up;
  #top;

  constructor(motion) {
    this.name = motion.name;
    this.motion = motion;
    this.#keys = motion.keys;
    this.#up = this.#pole();
    this.#top = this.#side();
    this.#group = element("g", { class: "moving" });
    const round = { cx: 0, cy: 0, r: motion.radius };
    this.#stripe = element("path", { fill: motion.colour, "fill-rule": "evenodd" });
    this.#spot = motion.name.length > 0 && motion.name.length <= 2 ? this.#numberSpot() : element("g", {});
    this.#group.append(
      element("circle", { ...round, fill: "#ffffff" }), this.#stripe, this.#spot,
      element("circle", { ...round, fill: "none", stroke: motion.colour, "stroke-width": 3.8 }));
  }

  place(time) {
    const k = this.#find(time), keys = this.#keys;
    const part = this.#part(k, time);
    return [1, 2].map(i => keys[7 * k + i] + part * ((keys[7 * k + 7 + i] ?? keys[7 * k + i]) - keys[7 * k + i]));
  }

  at(time) {
    if (this.motion.gone !== null && time >= this.motion.gone) return null;
    const [x, y] = this.place(time);
    const turn = this.#turn(time);
    this.#group.setAttribute("transform", `translate(${x} ${y})`);
    if (this.motion.stripeAxis) this.#stripe.setAttribute("d", stripe(rotate(turn, this.motion.stripeAxis), this.motion.radius));
    this.#turnSpot(rotate(turn, this.#up), rotate(turn, this.#top));
    return this.#group;
  }

  // The number stands in the middle of the stripe, as far up as it goes; on a ball without one, on top.
  #pole() {
    const [x, y, z] = this.motion.stripeAxis ?? [0, 1, 0];
    const flat = Math.abs(z) > 0.9;
    const up = flat ? [0, -1, 0] : [0, 0, 1];
    const along = x * up[0] + y * up[1] + z * up[2];
    const pole = [x, y, z].map((part, i) => up[i] - along * part);
    const length = Math.hypot(...pole);
    return pole.map(part => part / length);
  }

  #side() {
    return cross(this.#pole(), this.motion.stripeAxis && Math.abs(this.motion.stripeAxis[1]) > 0.5 ? [0, 1, 0] : [1, 0, 0])
      .map((part, i, all) => part / Math.hypot(...all));
  }

  #numberSpot() {
    const size = 0.42 * this.motion.radius;
    const text = element("text", { "text-anchor": "middle", "font-size": 1.25 * size, "font-weight": "bold", fill: "#2b2a28", y: 0.45 * size });
    text.textContent = this.name;
    const spot = element("g", {});
    spot.append(element("circle", { r: size, fill: "#ffffff", stroke: this.motion.colour, "stroke-width": 1.2 }), text);
    // Upside down a six is a nine.
    if (this.name === "6" || this.name === "9") {
      spot.append(element("line", { x1: -0.35 * size, x2: 0.35 * size, y1: 0.64 * size, y2: 0.64 * size, stroke: "#2b2a28", "stroke-width": 0.12 * size }));
    }
    return spot;
  }

  // The disc of the number is seen on the near half only, foreshortened.
  #turnSpot(pole, up) {
    const face = pole[2] >= 0 ? pole : pole.map(part => -part);
    if (face[2] < 0.08) { this.#spot.setAttribute("display", "none"); return; }
    const right = cross(up, face);
    const r = this.motion.radius;
    this.#spot.removeAttribute("display");
    this.#spot.setAttribute("transform",
      `matrix(${[right[0], -right[1], -up[0], up[1], r * face[0] * 0.92, -r * face[1] * 0.92].map(v => v.toFixed(4)).join(" ")})`);
  }

  #find(time) {
    const keys = this.#keys;
    let low = 0, high = keys.length / 7 - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (keys[7 * middle] <= time) low = middle; else high = middle - 1;
    }
    return low;
  }

  #part(k, time) {
    const from = this.#keys[7 * k], to = this.#keys[7 * k + 7];
    return to > from ? Math.min((time - from) / (to - from), 1) : 0;
  }

  #turn(time) {
    const k = this.#find(time), keys = this.#keys;
    const a = keys.slice(7 * k + 3, 7 * k + 7);
    const b = keys.slice(7 * k + 10, 7 * k + 14);
    if (b.length < 4) return a;
    return slerp(a, b, this.#part(k, time));
  }
}

function element(name, attributes) {
  const made = document.createElementNS(svgNamespace, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

function slerp(a, b, part) {
  let dot = a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3];
  const sign = dot < 0 ? -1 : 1;
  dot = Math.min(Math.abs(dot), 1);
  const angle = Math.acos(dot);
  const [p, q] = angle < 1e-4 ? [1 - part, part] : [Math.sin((1 - part) * angle) / Math.sin(angle), Math.sin(part * angle) / Math.sin(angle)];
  return a.map((value, i) => p * value + q * sign * b[i]);
}

export function rotate([w, x, y, z], v) {
  const q = [x, y, z];
  const t = cross(q, v).map(part => 2 * part);
  const u = cross(q, t);
  return v.map((part, i) => part + w * t[i] + u[i]);
}

function cross(a, b) {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

// The same outline as the drawing's own stripe: the band |axis . p| <= 1/2 of the unit sphere seen from above.
export function stripe(axis, radius) {
  const length = Math.hypot(...axis);
  const a = axis.map(part => (axis[2] < 0 ? -part : part) / length);
  const level = Math.hypot(a[0], a[1]);
  const rho = Math.sqrt(1 - halfWidth * halfWidth);
  const n = value => String(Math.round(value * 1000) / 1000);
  const sheet = (x, y) => `${n(radius * x)} ${n(-radius * y)}`;
  const disc = (cx, cy, rx, ry, turn) => {
    const c = Math.cos(turn * Math.PI / 180), s = Math.sin(turn * Math.PI / 180);
    const from = `${n(cx - rx * c)} ${n(cy - rx * s)}`, to = `${n(cx + rx * c)} ${n(cy + rx * s)}`;
    return `M${from}A${n(rx)} ${n(ry)} ${n(turn)} 0 1 ${to}A${n(rx)} ${n(ry)} ${n(turn)} 0 1 ${from}Z`;
  };
  if (level <= halfWidth) {
    const turn = level > 0 ? Math.atan2(-a[0] / level, -a[1] / level) * 180 / Math.PI : 0;
    return disc(0, 0, radius, radius, 0)
      + disc(radius * halfWidth * a[0], -radius * halfWidth * a[1], rho * radius, rho * a[2] * radius, turn);
  }
  const phi = Math.asin(halfWidth * a[2] / (rho * level));
  const u = [-a[1] / level, a[0] / level];
  const edge = (side, angle) => {
    const c = Math.cos(angle), s = a[2] / level * Math.sin(angle);
    return sheet(side * halfWidth * a[0] + rho * (u[0] * c - a[0] * s), side * halfWidth * a[1] + rho * (u[1] * c - a[1] * s));
  };
  const turn = Math.atan2(-u[1], u[0]) * 180 / Math.PI;
  const ellipse = `${n(rho * radius)} ${n(rho * a[2] * radius)} ${n(turn)}`;
  const round = `${n(radius)} ${n(radius)} 0`;
  return `M${edge(1, -phi)}A${ellipse} ${phi > 0 ? 1 : 0} 0 ${edge(1, Math.PI + phi)}A${round} 0 1 ${edge(-1, Math.PI - phi)}`
    + `A${ellipse} 0 1 ${edge(-1, phi)}A${round} 0 1 ${edge(1, -phi)}Z`;
}
