/* An answer that changes which questions are asked brings the whole page anew. It comes when the hand rests: while an
   answer is being typed, kept or sent, a new page would show what stood before it, and take the field from the hand. */

import { isAnyTyping } from "./typing.js";

const WAY = "hx-location";
let next = "";
let keeping = 0;
let gone = 0; // how often somebody went elsewhere by himself
const sentBefore = new WeakMap();

/* The answers of a form are being kept until `done`. */
export async function whileKeeping(done) {
  keeping += 1;
  try {
    await done;
  } finally {
    keeping -= 1;
    soon();
  }
}

function isBusy() {
  return keeping > 0 || isAnyTyping() || document.querySelector("form.htmx-request, form .htmx-request") !== null;
}

function turn() {
  if (!next || isBusy()) return;
  const way = next;
  next = "";
  htmx.ajax("GET", way, { push: "true" });
}

function soon() {
  setTimeout(turn, 0); // a request that waited for the last one has begun by then
}

/* htmx would go there at once. */
function hideWay(xhr) {
  const lines = xhr.getAllResponseHeaders().split("\r\n").filter((line) => !line.toLowerCase().startsWith(`${WAY}:`));
  const of = xhr.getResponseHeader.bind(xhr);
  const laid = {
    getAllResponseHeaders: () => lines.join("\r\n"),
    getResponseHeader: (name) => (name.toLowerCase() === WAY ? null : of(name)),
  };
  for (const [name, value] of Object.entries(laid)) Object.defineProperty(xhr, name, { value, configurable: true });
}

document.addEventListener("htmx:beforeOnLoad", ({ detail: { xhr } }) => {
  const way = xhr.getResponseHeader("HX-Location");
  if (!way) return;
  if (sentBefore.get(xhr) === gone) next = way; // else the page that sent it has been left since
  hideWay(xhr);
});

/* Somebody answered more while the new page was on its way: it is fetched once more when he rests. Who went elsewhere
   meanwhile is not brought back by it. */
document.addEventListener("htmx:beforeSwap", ({ detail }) => {
  const { xhr, requestConfig: { verb, elt, path } } = detail;
  if (verb !== "get" || elt !== document.body) return;
  const left = sentBefore.get(xhr) !== gone;
  if (!left && !isBusy()) return;
  if (!left) next ||= path;
  detail.shouldSwap = false;
});

/* Whoever goes elsewhere by himself is not brought back. */
document.addEventListener("htmx:beforeSend", ({ detail: { xhr, requestConfig } }) => {
  if (requestConfig.boosted) {
    next = "";
    gone += 1;
  }
  sentBefore.set(xhr, gone);
});
document.addEventListener("htmx:afterRequest", soon);
document.addEventListener("hand:rests", soon);
