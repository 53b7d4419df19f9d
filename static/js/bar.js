/* Says in every page, in words, where this phone's entries are: kept here, sent, confirmed; and below the bar what
   stands in their way. */

import { alone } from "./alone.js";
import { aloneWords, clockWords, reachedWords, whyWords } from "./bar_words.js";
import { contact } from "./contact.js";
import { countOf } from "./offer.js";
import { all, meta } from "./phone_store.js";
import { fullWords } from "./tell_full.js";

const AGAIN_MS = 30_000;
let drawn = 0;

async function counts() {
  const [kept, sent, refused] = await Promise.all(["kept", "sent", "refused"].map(countOf));
  return { kept, sent, refused };
}

function state({ kept, sent }) {
  if (kept > 0) return ["kept", `${kept} kept on this phone`];
  if (sent > 0) return ["sent", `${sent} sent`];
  return ["confirmed", "all confirmed"];
}

/* When the oldest entry that waits was kept. */
async function oldest() {
  const rows = (await all("entries")).filter(({ state: where }) => where === "kept" || where === "sent");
  return Math.min(...rows.map(({ since }) => since));
}

async function lines({ kept, sent, refused }) {
  const waiting = kept + sent;
  const [reached, skew, trust] = await Promise.all([meta("reached_at"), meta("skew_s"), meta("trust")]);
  const since = waiting ? await oldest() : Infinity;
  return [
    fullWords(),
    refused ? `${refused} not taken: see what the server says` : "",
    waiting && contact.signIn ? "Sign in again: what is kept here waits for it" : "",
    contact.unsent,
    contact.words,
    contact.away || waiting ? reachedWords(reached, Date.now()) : "",
    waiting ? whyWords(Date.now() - since, location.protocol, trust) : "",
    clockWords(skew ?? 0),
    aloneWords(alone(), contact.away),
  ].filter(Boolean);
}

function strip(sync) {
  const place = document.getElementById("phone-says");
  if (place) return place;
  const made = Object.assign(document.createElement("div"), { id: "phone-says", className: "phone-says" });
  made.setAttribute("role", "status");
  sync.closest(".bar").after(made);
  return made;
}

function draw(place, said) {
  const words = said.join("\n");
  if (place.dataset.said === words) return;
  place.dataset.said = words;
  place.hidden = said.length === 0;
  place.replaceChildren(...said.map((text) => Object.assign(document.createElement("p"), { textContent: text })));
}

async function show() {
  const turn = drawn += 1;
  const found = await counts();
  const said = await lines(found);
  const sync = document.getElementById("sync");
  if (!sync || turn !== drawn) return;
  const [where, words] = state(found);
  sync.dataset.sync = where;
  sync.querySelector("span").textContent = words;
  draw(strip(sync), said);
}

function showAgain() {
  show().catch((fault) => console.error(fault));
}

document.addEventListener("phone:changed", showAgain);
document.addEventListener("htmx:afterSettle", showAgain);
document.addEventListener("htmx:historyRestore", showAgain);
setInterval(showAgain, AGAIN_MS);
showAgain();
