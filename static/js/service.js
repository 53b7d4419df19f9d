/* The service worker opens pages with no network; it asks this page to work them out. A new version waits until
   somebody taps: nothing is exchanged in the middle of a task. */

import { answerHere } from "./answer_here.js";

const OFFER = "A new version of the app is here.";
const edition = new URL(import.meta.url).pathname.split("/")[2];
let taken = false;

function address(name) {
  return document.querySelector(`meta[name="${name}"]`)?.content ?? "";
}

/* Pages made here name plain addresses; only a page that came from the server knows the true ones. */
export function trueAddresses(html) {
  return html.replaceAll('="/static/engine/pyodide/', `="${address("engine")}`)
    .replaceAll('="/static/engine/floors.zip', `="${address("floors")}`)
    .replaceAll('="/static/', (found) => (edition === "js" ? found : `="/static/${edition}/`))
    .replaceAll(`="/static/${edition}/engine/`, '="/static/engine/')
    .replace("<html ", '<html data-from="phone" ');
}

async function heard({ data, ports }) {
  if (!data.ask) return;
  const { method, address: asked, pairs } = data.ask;
  try {
    const said = await answerHere(method, asked, pairs);
    ports[0].postMessage({ status: said.status, html: trueAddresses(said.html), address: said.address });
  } catch (fault) {
    ports[0].postMessage({ fault: String(fault) });
  }
}

function offer(waiting) {
  if (document.getElementById("new-version")) return;
  const place = Object.assign(document.createElement("div"), { id: "new-version", className: "phone-says" });
  place.setAttribute("role", "status");
  const button = Object.assign(document.createElement("button"), { className: "button", textContent: "Take it now" });
  button.addEventListener("click", () => {
    taken = true;
    waiting.postMessage({ take: true });
  });
  place.append(Object.assign(document.createElement("p"), { textContent: OFFER }), button);
  document.querySelector(".bar")?.after(place);
}

/* Offered on every page until it is taken. */
function watch(registration) {
  const look = () => { if (registration.waiting && navigator.serviceWorker.controller) offer(registration.waiting); };
  registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", look));
  document.addEventListener("htmx:afterSettle", look);
  look();
}

/* A page that was on its way while the service worker took over the others is taken by name. */
async function joined() {
  const { active } = await navigator.serviceWorker.ready;
  if (!navigator.serviceWorker.controller) active.postMessage({ claim: true });
}

async function register() {
  if (!navigator.serviceWorker) return; // plain http has none
  navigator.serviceWorker.addEventListener("message", heard);
  navigator.serviceWorker.addEventListener("controllerchange", () => { if (taken) location.reload(); });
  watch(await navigator.serviceWorker.register("/sw.js", { updateViaCache: "none" }));
  await joined();
}

register().catch((fault) => console.error(fault));
