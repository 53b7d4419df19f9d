/* Opened from the phone with no server: the page that was asked for is worked out here and put in place. */

import { answerHere } from "./answer_here.js";
import { trueAddresses } from "./service.js";
import { contact } from "./contact.js";
import { start } from "./engine.js";
import { meta } from "./phone_store.js";

const UNSENT = "This form was not sent: the server is away and the checks were not ready. Go back and send it again.";
const NOBODY = "Nobody is signed in on this phone, and the server cannot be reached.";

function say(words) {
  document.querySelector("#main [role=status]").textContent = words;
}

function set(name, content) {
  document.querySelector(`meta[name="${name}"]`).content = content ?? "";
}

/* The whole page is put in place of this one's body; its scripts are these and run already. */
function put(html) {
  const page = new DOMParser().parseFromString(trueAddresses(html), "text/html");
  document.title = page.title;
  document.documentElement.dataset.theme = page.documentElement.dataset.theme ?? "";
  htmx.swap(document.body, page.body.innerHTML, { swapStyle: "innerHTML", swapDelay: 0, settleDelay: 0 });
  contact.from = "phone";
  document.dispatchEvent(new CustomEvent("phone:changed"));
}

async function open() {
  contact.away = true;
  if (document.getElementById("main").dataset.unsent) return say(UNSENT);
  const [person, device] = await Promise.all([meta("person"), meta("device")]);
  if (!person) return say(NOBODY);
  set("person", person);
  set("device", device);
  start();
  const said = await answerHere("GET", location.pathname + location.search);
  if (said.address !== location.pathname + location.search) history.replaceState(null, "", said.address);
  put(said.html);
}

open().catch((fault) => {
  console.error(fault);
  say("The checks do not start on this phone. What is kept on it stays, and is sent when the server is there.");
});
