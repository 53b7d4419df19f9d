/* What the server does not answer, this phone answers: the failed request is filled in, and htmx goes on as if nothing
   had happened. While the server is away nobody waits for it again. */

import { answerHere } from "./answer_here.js";
import { contact } from "./contact.js";
import { person } from "./device.js";
import { start, status } from "./engine.js";
import { learnNews } from "./learn_news.js";
import { isFull } from "./room.js";
import { soon } from "./sync.js";

const LIMIT_MS = 6_000; // a network that is half there hangs instead of failing
const NEWS_MS = 1_500;
const TAKES_LONGER = ["multipart/form-data"];
const SERVER_GONE = new Set([502, 503, 504, 507]);
const UNSENT = "Not sent: this phone cannot work it out now. The page is as you left it; try again";
const FULL = "This phone is full and could not keep this. What you entered stands in the page: leave it open, and save what waits to a file.";
const CANNOT = "This cannot be worked out on this phone now. What you entered is kept on it.";

/* Whether there are checks on this phone at all: a page that names none has none. */
function isEngine() {
  if (status().state === "off") start();
  return status().state !== "off";
}

function travels(detail) {
  return Boolean(person()) && isEngine() && new URL(detail.pathInfo.finalRequestPath, location.origin).origin === location.origin;
}

/* A fragment is asked for by a part of a page; a link, a form and a step back ask for the whole. */
function wantsFragment(headers) {
  return Boolean(headers["HX-Request"]) && !headers["HX-Boosted"];
}

function fill(xhr, said, loaded) {
  const headers = Object.fromEntries(Object.entries(said.headers ?? {}).map(([name, text]) => [name.toLowerCase(), text]));
  const laid = {
    status: said.status, statusText: "", response: said.html, responseText: said.html, fromPhone: true,
    responseURL: new URL(said.address, location.origin).href,
    getResponseHeader: (name) => headers[name.toLowerCase()] ?? null,
    getAllResponseHeaders: () => Object.entries(headers).map(([name, text]) => `${name}: ${text}`).join("\r\n"),
  };
  for (const [name, value] of Object.entries(laid)) Object.defineProperty(xhr, name, { value, configurable: true });
  contact.from = "phone";
  contact.unsent = "";
  loaded.call(xhr);
}

/* In place of an answer that cannot be given here: the page stays as it is, and says so. */
function cannot(fault, address) {
  console.error(fault);
  const words = isFull(fault) ? FULL : fault.words ? `${fault.words}. ${CANNOT}` : CANNOT;
  return { status: 503, address, html: `<div class="stack" id="live" role="alert"><p class="fault">${words}</p></div>` };
}

async function here(detail, loaded, failed) {
  soon();
  const { xhr, requestConfig: config, pathInfo } = detail;
  const address = pathInfo.finalRequestPath;
  const fragment = wantsFragment(config.headers);
  try {
    const pairs = config.verb === "post" ? [...config.formData.entries()] : [];
    fill(xhr, await answerHere(config.verb.toUpperCase(), address, pairs, fragment), loaded);
  } catch (fault) {
    if (fragment) return void fill(xhr, cannot(fault, address), loaded);
    contact.unsent = UNSENT;
    failed.call(xhr);
    document.dispatchEvent(new CustomEvent("phone:changed"));
  }
}

/* What the server made of a form comes onto this phone before the page that goes on from it: the network may be gone
   at the next step. */
function learned() {
  const late = new Promise((done) => { setTimeout(done, NEWS_MS); });
  return Promise.race([learnNews().catch(() => {}), late]);
}

document.addEventListener("htmx:configRequest", ({ detail }) => {
  const long = TAKES_LONGER.includes(detail.elt.closest?.("form")?.enctype) && detail.elt.closest("form").querySelector("[type=file]");
  if (person() && status().state === "ready" && !long) detail.timeout = LIMIT_MS;
});

document.addEventListener("htmx:beforeSend", ({ detail }) => {
  if (!travels(detail)) return;
  const { xhr } = detail;
  const { onload: loaded, onerror: failed } = xhr;
  const local = () => here(detail, loaded, failed);
  xhr.onerror = xhr.ontimeout = () => {
    contact.away = true;
    local();
  };
  xhr.onload = () => {
    const unsigned = xhr.status === 401 && detail.requestConfig.verb === "post";
    if (SERVER_GONE.has(xhr.status) || unsigned) return void local();
    contact.away = false;
    contact.from = "server";
    contact.unsent = "";
    if (detail.requestConfig.formData?.has("made")) learned().then(() => loaded.call(xhr));
    else loaded.call(xhr);
  };
  const byLock = detail.requestConfig.formData?.get("by") === "lock"; // signed here, also while the server is in reach
  if (contact.away || byLock) xhr.send = local; // the breaker: a sync that succeeds closes it
});

/* Back and forward are worked out afresh, on or off the network. */
document.addEventListener("htmx:historyCacheMiss", (event) => {
  const { xhr, path } = event.detail;
  if (!person() || !isEngine()) return;
  const loaded = xhr.onload;
  const local = () => answerHere("GET", path).then((said) => fill(xhr, said, loaded), (fault) => console.error(fault));
  xhr.onerror = xhr.ontimeout = () => {
    contact.away = true;
    local();
  };
  if (!contact.away) return;
  event.preventDefault();
  local();
});
