/* Shows in every open page what the server last said was signed without knowing, and takes it away when a supervisor
   has given his word. A page made anew carries its alarms already. */

import { meta } from "./phone_store.js";

function made({ words, href }, number) {
  const alarm = Object.assign(document.createElement("aside"), { className: "halted" });
  alarm.setAttribute("role", "alert");
  alarm.setAttribute("aria-label", `Alarm ${number + 1}`);
  const said = document.createElement("p");
  said.append(Object.assign(document.createElement("b"), { textContent: "Signed without knowing." }), ` ${words}`);
  const way = Object.assign(document.createElement("a"), { className: "button", href, textContent: "What to do" });
  alarm.append(said, way);
  return alarm;
}

let pageSince = Date.now();

async function show() {
  const place = document.getElementById("alarms");
  const [alarms, heard] = await Promise.all([meta("alarms"), meta("reached_at")]);
  if (!place || !alarms || heard < pageSince) return; // what the page came with is newer
  const now = JSON.stringify(alarms);
  if (place.dataset.shown === now) return;
  place.dataset.shown = now;
  place.replaceChildren(...alarms.map(made));
}

function showAgain() {
  show().catch((fault) => console.error(fault));
}

document.addEventListener("phone:changed", showAgain);
document.addEventListener("htmx:afterSettle", ({ target }) => { if (target === document.body) pageSince = Date.now(); });
document.addEventListener("htmx:historyRestore", showAgain);
