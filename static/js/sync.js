/* Brings what is kept on this phone to the server, and news back: parts before the entries that name them, fifty
   entries at a time, in the order they were made, again and again until each is confirmed or refused in words. */

import { bytes } from "./canonical.js";
import { SetBack, SignIn, Wait, contact } from "./contact.js";
import { learnNews } from "./learn_news.js";
import { offerEntries, putOff } from "./offer.js";
import { offerAgain } from "./offer_again.js";
import { offerParts } from "./offer_parts.js";
import { write } from "./phone_store.js";
import { isFull } from "./room.js";
import { sha256 } from "./sha256.js";
import { tellFull } from "./tell_full.js";

const SOON_MS = 300;
const FIRST_PAUSE_MS = 1_000;
const LONGEST_PAUSE_MS = 30_000;
const LOOK_AGAIN_MS = 45_000; // for news of other phones, while this one is looked at
const LOCK = "workshop sync";

let running = null;
let again = false;
let pause = FIRST_PAUSE_MS;
let timer = 0;
const others = "BroadcastChannel" in window ? new BroadcastChannel("workshop") : null;

/* Something on this phone has changed: the bar of every tab counts again. */
export function changed() {
  document.dispatchEvent(new CustomEvent("phone:changed"));
  others?.postMessage("changed");
}

/* The server took a form with these bodies; it will confirm each by its number. */
export async function markSent(bodies) {
  if (bodies.length === 0) return;
  await write(["entries"], ({ entries }) => {
    for (const digest of bodies.map((body) => sha256(bytes(body)))) {
      entries.get(digest).onsuccess = ({ target }) => {
        if (target.result?.state === "kept") entries.put({ ...target.result, state: "sent" });
      };
    }
  });
  changed();
  soon();
}

async function round() {
  try {
    const failure = await offerParts();
    while (await offerEntries()) changed();
    while (await learnNews()) changed();
    if (failure) throw failure;
  } catch (fault) {
    if (!(fault instanceof SetBack)) throw fault;
    await offerAgain();
    again = true;
  }
}

/* Only one tab at a time where the browser can tell; elsewhere twice is no harm, for the server knows each entry. */
function alone(work) {
  if (!navigator.locks) return work();
  return navigator.locks.request(LOCK, { ifAvailable: true }, (lock) => (lock ? work() : null));
}

async function attempt() {
  try {
    await alone(round);
    contact.signIn = false;
    contact.words = "";
    pause = FIRST_PAUSE_MS;
    document.dispatchEvent(new CustomEvent("phone:synced"));
    later(again ? SOON_MS : LOOK_AGAIN_MS);
  } catch (fault) {
    contact.signIn = fault instanceof SignIn;
    contact.words = fault instanceof Wait && !contact.away ? fault.message : "";
    if (isFull(fault)) tellFull(fault);
    later(Math.max(pause, (fault.seconds ?? 0) * 1_000));
    pause = Math.min(pause * 2, LONGEST_PAUSE_MS);
    if (!(fault instanceof Wait || fault instanceof SignIn)) console.error(fault);
  }
  changed();
}

export function sync() {
  if (running) {
    again = true;
    return running;
  }
  again = false;
  clearTimeout(timer);
  running = attempt().finally(() => { running = null; });
  return running;
}

function later(ms) {
  clearTimeout(timer);
  timer = setTimeout(() => {
    if (document.visibilityState === "visible") sync();
    else later(LONGEST_PAUSE_MS);
  }, ms);
}

/* After an entry: at once, but not for each of several that are made together. */
export function soon() {
  if (running) again = true;
  else later(SOON_MS);
}

/* A look at the phone, the network coming back: what was put off is offered again. */
function afresh() {
  if (document.visibilityState !== "visible") return;
  putOff.clear();
  pause = FIRST_PAUSE_MS;
  sync();
}

others?.addEventListener("message", () => document.dispatchEvent(new CustomEvent("phone:changed")));
addEventListener("online", afresh);
document.addEventListener("visibilitychange", afresh);
