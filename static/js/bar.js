/* Says in every page, in words, where this phone's entries are: kept here, sent, confirmed; and below the bar what
   stands in their way. */

import { alone } from "./alone.js";
import { aloneWords, clockWords, reachedWords, whyWords } from "./bar_words.js";
import { contact } from "./contact.js";
import { meta } from "./phone_store.js";
import { fullWords } from "./tell_full.js";
import { counts, whatHolds } from "./waiting.js";

const AGAIN_MS = 30_000;
const SIGN_IN = "Sign in again: what is kept here waits for it";
let drawn = 0;

function state({ kept, sent, photos }) {
  if (kept > 0) return ["kept", `${kept} kept on this phone`];
  if (sent > 0) return ["sent", `${sent} sent`];
  if (photos > 0) return ["kept", photos === 1 ? "1 photo kept on this phone" : `${photos} photos kept on this phone`];
  return ["confirmed", "all confirmed"];
}

async function lines({ kept, sent, refused, photos, refusedPhotos }) {
  const waiting = kept + sent + photos;
  const [reached, skew, trust] = await Promise.all([meta("reached_at"), meta("skew_s"), meta("trust")]);
  const { since, words } = kept + sent ? await whatHolds() : { since: Infinity, words: [] };
  return [
    fullWords(),
    refused + refusedPhotos ? `${refused + refusedPhotos} not taken: see what the server says` : "",
    waiting && contact.signIn ? SIGN_IN : "",
    ...words,
    contact.unsent,
    contact.words,
    contact.away || waiting ? reachedWords(reached, Date.now()) : "",
    waiting ? whyWords(Date.now() - since, location.protocol, trust) : "",
    clockWords(skew ?? 0),
    aloneWords(alone(), contact.away),
  ].filter(Boolean);
}

function strip(bar) {
  const place = document.getElementById("phone-says");
  if (place) return place;
  const made = Object.assign(document.createElement("div"), { id: "phone-says", className: "phone-says" });
  made.setAttribute("role", "status");
  bar.after(made);
  return made;
}

function draw(place, said) {
  const words = said.join("\n");
  if (place.dataset.said !== words) write(place, said, words);
  document.documentElement.style.setProperty("--says", `${place.offsetHeight}px`);
}

function write(place, said, words) {
  place.dataset.said = words;
  place.hidden = said.length === 0;
  place.replaceChildren(...said.map((text) => {
    const line = Object.assign(document.createElement("p"), { textContent: text });
    if (text === SIGN_IN) line.append(" ", Object.assign(document.createElement("a"), { className: "button", href: "/sign-in", textContent: "Sign in" }));
    return line;
  }));
}

async function show() {
  const turn = drawn += 1;
  const found = await counts();
  const said = await lines(found);
  const bar = document.querySelector(".bar");
  if (!bar || turn !== drawn) return;
  count(bar.querySelector("#sync"), found);
  draw(strip(bar), said);
}

/* Pages on which nobody is signed in, and the phone's own page of what waits, count nothing in the bar. */
function count(sync, found) {
  if (!sync) return;
  const [where, words] = state(found);
  sync.dataset.sync = where;
  sync.dataset.counted = "";
  sync.querySelector("span").textContent = words;
}

function showAgain() {
  show().catch((fault) => console.error(fault));
}

document.addEventListener("phone:changed", showAgain);
document.addEventListener("htmx:afterSettle", showAgain);
document.addEventListener("htmx:historyRestore", showAgain);
setInterval(showAgain, AGAIN_MS);
showAgain();
