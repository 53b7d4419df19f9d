/* Whether this phone can go on with no network, told in the page: `data-alone` of the root is "coming" until the checks
   and all that the server had are kept here, then "ready"; by http "page", for only the page that is open goes on. */

import { person } from "./device.js";
import { status } from "./engine.js";
import { meta, remember } from "./phone_store.js";

const ANSWER_MS = 60_000;
let isKept = false; // all that the checks are made of
let asking = null;

export const alone = () => document.documentElement.dataset.alone ?? "";

function tell(state) {
  if (state === alone()) return;
  document.documentElement.dataset.alone = state;
  document.dispatchEvent(new CustomEvent("phone:changed"));
}

/* The service worker looks what it has; once the checks run it fetches what is missing, whichever way they came. */
function fromServiceWorker() {
  const worker = navigator.serviceWorker.controller;
  if (!worker) return false;
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => done(Boolean(data.complete));
    setTimeout(done, ANSWER_MS, false);
    worker.postMessage({ complete: true, fill: status().state === "ready" }, [port2]);
  });
}

async function look() {
  if (!person() && !await meta("person")) return tell("");
  const isHttp = !navigator.serviceWorker;
  isKept ||= isHttp ? status().state === "ready" : await fromServiceWorker();
  if (!isKept || !await meta("learned")) return tell("coming");
  tell(isHttp ? "page" : "ready");
}

function lookAgain() {
  asking = (asking ?? Promise.resolve()).then(look).catch((fault) => console.error(fault));
}

document.addEventListener("engine:state", lookAgain);
document.addEventListener("phone:synced", () => remember({ learned: true }).then(lookAgain, console.error));
navigator.serviceWorker?.addEventListener("controllerchange", lookAgain);
lookAgain();
