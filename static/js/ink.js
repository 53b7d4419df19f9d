// Signs by pointer: strokes on a canvas become short lists of whole numbers in a hidden field.
// Without this script, or for those who cannot draw, the typed name below the pad does the same.

const WIDE = 330;
const HIGH = 130;
const APART = 3; // units between kept points: enough for a signature, small enough for a record
const MOST = 4000; // numbers in one signature

const PAD = "[data-behaviour~='ink']";

start(document);
document.addEventListener("htmx:load", (event) => { start(event.target); });

function start(root) {
  if (root.matches?.(PAD)) ready(root);
  root.querySelectorAll(PAD).forEach(ready);
}

function ready(pad) {
  if (pad.dataset.ready) return;
  pad.dataset.ready = "yes";
  const canvas = pad.querySelector("canvas");
  const kept = pad.querySelector("[data-ink]");
  const typed = pad.querySelector("[data-ink-typed]");
  const drawn = pad.querySelector("[data-ink-drawn]");
  const strokes = kept.value ? JSON.parse(kept.value) : [];

  const save = () => { kept.value = strokes.length ? JSON.stringify(strokes) : ""; };
  const show = (drawing) => {
    drawn.hidden = !drawing;
    if (typed) typed.hidden = drawing;
    if (!drawing) { strokes.length = 0; save(); }
    paint(canvas, strokes);
  };

  canvas.addEventListener("pointerdown", (event) => {
    if (!event.isPrimary) return;
    event.preventDefault();
    canvas.setPointerCapture(event.pointerId);
    strokes.push(place(canvas, event));
    paint(canvas, strokes);
  });
  canvas.addEventListener("pointermove", (event) => {
    const stroke = strokes.at(-1);
    if (!event.isPrimary || !stroke || !canvas.hasPointerCapture(event.pointerId)) return;
    const [x, y] = place(canvas, event);
    if (Math.hypot(x - stroke.at(-2), y - stroke.at(-1)) < APART || strokes.flat().length >= MOST) return;
    stroke.push(x, y);
    paint(canvas, strokes);
  });
  canvas.addEventListener("pointerup", save);
  canvas.addEventListener("pointercancel", save);
  pad.querySelector("[data-ink-again]").addEventListener("click", () => {
    strokes.length = 0;
    save();
    paint(canvas, strokes);
  });
  if (!typed) return void show(true); // whoever signs here draws
  pad.querySelector("[data-ink-type]").addEventListener("click", () => {
    show(false);
    typed.querySelector("input").focus();
  });
  pad.querySelector("[data-ink-draw]").addEventListener("click", () => show(true));
  pad.querySelector("[data-ink-draw]").hidden = false;
  show(strokes.length > 0 || !typed.querySelector("input").value);
}

/** Where the pointer is, in units of the pad: whole numbers, never outside. */
function place(canvas, event) {
  const box = canvas.getBoundingClientRect();
  const within = (share, most) => Math.min(most, Math.max(0, Math.round(share * most)));
  return [within((event.clientX - box.left) / box.width, WIDE), within((event.clientY - box.top) / box.height, HIGH)];
}

function paint(canvas, strokes) {
  const box = canvas.getBoundingClientRect();
  const dense = window.devicePixelRatio || 1;
  canvas.width = Math.round(box.width * dense);
  canvas.height = Math.round(box.height * dense);
  const pen = canvas.getContext("2d");
  pen.scale(canvas.width / WIDE, canvas.height / HIGH);
  pen.strokeStyle = getComputedStyle(canvas).color;
  pen.lineWidth = 3;
  pen.lineCap = "round";
  pen.lineJoin = "round";
  for (const stroke of strokes) {
    pen.beginPath();
    pen.moveTo(stroke[0], stroke[1]);
    if (stroke.length === 2) pen.lineTo(stroke[0] + 1, stroke[1]);
    for (let n = 2; n < stroke.length; n += 2) pen.lineTo(stroke[n], stroke[n + 1]);
    pen.stroke();
  }
}
