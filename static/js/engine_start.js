/* Starts the checks on the phone once the page is usable, and says in the page while they are waited for: in words
   where checks stand, and in `data-checks` of the root. */

import { start, status } from "./engine.js";

const CLAIMED_MS = 1_500;
const WAITING = "Checks waiting.";
const soon = window.requestIdleCallback ?? ((run) => setTimeout(run, 50)); // Safari has none

function signedIn() {
  return Boolean(document.querySelector('meta[name="person"]')?.content);
}

/* Its files pass the service worker where there is one, so that they are kept; the wait for it has an end. */
async function startWhenUsable() {
  if (!signedIn() || status().state !== "off") return;
  if (navigator.serviceWorker) {
    const pause = new Promise((yes) => { setTimeout(yes, CLAIMED_MS); });
    await Promise.race([navigator.serviceWorker.ready, pause]);
  }
  soon(() => { if (status().state === "off") start(); }, { timeout: 200 });
}

function say() {
  const place = document.querySelector("#live [role='status']");
  const { state, waiting } = status();
  document.documentElement.dataset.checks = state;
  if (!place) return;
  if (state !== "ready" && waiting > 0) place.textContent = WAITING;
  else if (place.textContent === WAITING) place.textContent = "";
  place.classList.toggle("unseen", place.textContent !== WAITING);
}

document.addEventListener("engine:state", say);
document.addEventListener("htmx:afterSettle", () => {
  startWhenUsable();
  say();
});
if (document.readyState === "complete") startWhenUsable();
else addEventListener("load", startWhenUsable);
