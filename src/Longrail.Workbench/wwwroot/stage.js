// Lets a drawing be grabbed: pointer, click and keyboard on the handles of one SVG. It knows no physics and no units; it says
// where on the sheet a handle is wanted, one message at a time, and always the newest.
const attached = new WeakMap();

const keys = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1],
};
const limits = { Home: "home", End: "end", PageUp: "up", PageDown: "down" };

export function attach(stage, bench) {
  const stop = new AbortController();
  const on = (type, act, options = {}) => stage.addEventListener(type, act, { signal: stop.signal, ...options });
  const queue = newest(bench);
  let drag = null;

  const resize = new ResizeObserver(entries => queue.send("Resized", [entries[0].contentRect.width], "size"));
  resize.observe(stage);
  stop.signal.addEventListener("abort", () => resize.disconnect());

  on("pointerdown", event => {
    const handle = event.target.closest("[data-handle]");
    if (!handle || event.button !== 0) return;
    event.preventDefault();
    handle.focus({ preventScroll: true });
    const at = onSheet(stage, event);
    drag = {
      pointer: event.pointerId, name: handle.dataset.handle, moved: false,
      dx: Number(handle.dataset.x) - at.x, dy: Number(handle.dataset.y) - at.y, x: event.clientX, y: event.clientY,
    };
    stage.setPointerCapture(event.pointerId);
    queue.send("Picked", [drag.name], "pick");
  });

  on("pointermove", event => {
    if (drag?.pointer !== event.pointerId) return;
    // A hand that only clicks trembles a little.
    if (!drag.moved && Math.hypot(event.clientX - drag.x, event.clientY - drag.y) < 3) return;
    drag.moved = true;
    stage.dataset.dragging = "";
    const at = onSheet(stage, event);
    queue.send("Dragged", [drag.name, at.x + drag.dx, at.y + drag.dy, event.altKey], "drag");
  });

  const end = (event, given) => {
    if (drag?.pointer !== event.pointerId) return;
    if (drag.moved) given ? queue.send("GivenUp", [], "end") : queue.send("Dropped", [drag.name], "end");
    delete stage.dataset.dragging;
    drag = null;
  };
  on("pointerup", event => end(event, false));
  on("pointercancel", event => end(event, true));

  on("click", event => {
    if (event.target.closest("[data-handle]") && !stage.classList.contains("placing")) return;
    if (!event.target.closest("svg")) return;
    const at = onSheet(stage, event);
    queue.send("Clicked", [at.x, at.y], "click");
  });

  let pointed = 0;
  on("pointerover", event => {
    const number = Number(event.target.closest("g.event")?.dataset.number ?? 0);
    if (number === pointed || drag || stage.classList.contains("tip-stage")) return;
    pointed = number;
    queue.send("Pointed", [number], "point");
  });

  on("focusin", event => {
    const handle = event.target.closest("[data-handle]");
    if (handle && !drag) queue.send("Picked", [handle.dataset.handle], "pick");
  });

  on("keydown", event => {
    const handle = event.target.closest("[data-handle]");
    if (event.key === "Escape" && drag) {
      end({ pointerId: drag.pointer }, true);
      return;
    }
    if (!handle || event.ctrlKey || event.metaKey || event.altKey) return;
    const times = event.shiftKey ? 10 : 1;
    if (keys[event.key]) {
      const [along, across] = keys[event.key];
      queue.add(handle.dataset.handle, along * times, across * times);
    } else if (limits[event.key]) {
      queue.send("Nudged", [handle.dataset.handle, 0, 0, limits[event.key]], "limit");
    } else return;
    event.preventDefault();
  });

  attached.set(stage, stop);
  stage.dataset.ready = "";
}

export function detach(stage) {
  attached.get(stage)?.abort();
}

function onSheet(stage, event) {
  const svg = stage.querySelector("svg.picture");
  return new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
}

// One message is under way at a time; of those that wait, a newer one of the same kind takes the place of the older, and
// nudges add up.
function newest(bench) {
  const waiting = [];
  let busy = false;

  async function pump() {
    if (busy) return;
    busy = true;
    try {
      while (waiting.length > 0) {
        const { method, args } = waiting.shift();
        await bench.invokeMethodAsync(method, ...args);
      }
    } catch {
      // The circuit is gone; the reconnect notice says so.
      waiting.length = 0;
    } finally {
      busy = false;
    }
  }

  return {
    send(method, args, kind) {
      const last = waiting.at(-1);
      if (last?.kind === kind) last.args = args;
      else waiting.push({ method, args, kind });
      pump();
    },
    add(name, along, across) {
      const last = waiting.at(-1);
      if (last?.kind === "nudge" && last.args[0] === name) {
        last.args[1] += along;
        last.args[2] += across;
      } else {
        waiting.push({ method: "Nudged", args: [name, along, across, null], kind: "nudge" });
      }
      pump();
    },
  };
}
