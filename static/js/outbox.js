/* Entries wait here until the server has answered for them, so that leaving a page loses nothing. What a form could
   not bring is offered by itself: when a page opens, when the network comes back, and from time to time. */

import { bytes } from "./canonical.js";
import { sha256 } from "./sha256.js";

const KEY = "entries kept on this phone";
const REFUSED = "entries not taken";
const BATCH = 20;
const AGAIN_MS = 20_000;
let words = "";
let sending = false;

function list(key) {
  try {
    return JSON.parse(localStorage.getItem(key) ?? "[]");
  } catch {
    return [];
  }
}

function write(key, items) {
  try {
    localStorage.setItem(key, JSON.stringify(items));
  } catch {
    /* No room or no storage: the form still brings what it made. */
  }
}

/* An entry and the texts of its parts, made just now. */
export function hold(body, parts) {
  const named = Object.fromEntries(parts.map((text) => [sha256(bytes(text)), text]));
  write(KEY, [...list(KEY), { body, parts: named, at: Date.now() }]);
}

/* The server has answered for these: they need not wait any more. */
export function settle(bodies) {
  const done = new Set(bodies);
  write(KEY, list(KEY).filter((item) => !done.has(item.body)));
  show();
}

function show() {
  const place = document.getElementById("sync");
  const said = place?.querySelector("span");
  if (!said) return;
  const count = list(KEY).length;
  if (place.dataset.sync !== "kept") words = said.textContent;
  if (count > 0) said.textContent = `${count} kept on this phone`;
  else if (place.dataset.sync === "kept") said.textContent = words;
  place.dataset.sync = count > 0 ? "kept" : "confirmed";
}

/* Those that no form under way is bringing. */
function waiting() {
  return list(KEY).filter((item) => Date.now() - item.at > AGAIN_MS).slice(0, BATCH);
}

async function answers(items) {
  const device = await fetch("/device");
  if (!device.ok) return [];
  const { credential } = await device.json();
  const headers = { Authorization: `Bearer ${credential}`, "Content-Type": "application/json" };
  const entries = items.map(({ body, parts }) => ({ body, parts }));
  const answer = await fetch("/entries", { method: "PUT", headers, body: JSON.stringify({ entries }) });
  return answer.ok ? (await answer.json()).entries : [];
}

/* What waits here: whoever leaves this address for another one must not leave it behind. */
export async function unsent() {
  return list(KEY);
}

/* All that waits, at once; a form under way may bring the same again, which changes nothing. */
export async function offerAll() {
  for (let before = Infinity; list(KEY).length > 0 && list(KEY).length < before;) {
    before = list(KEY).length;
    await offer(list(KEY).slice(0, BATCH));
  }
}

/* The text of a file with all that waits, the last resort. */
export async function asFile() {
  const entries = list(KEY).map(({ body, parts }) => ({ body, parts }));
  return JSON.stringify({ form: "kept on a phone/1", entries, photos: [] });
}

async function offer(items = waiting()) {
  show();
  if (sending || items.length === 0) return;
  sending = true;
  try {
    const said = await answers(items);
    const refused = items.filter((_, n) => said[n]?.state === "refused");
    if (refused.length > 0) write(REFUSED, [...list(REFUSED), ...refused]);
    settle(items.filter((_, n) => ["confirmed", "refused"].includes(said[n]?.state)).map((item) => item.body));
  } catch {
    /* No network: they go on waiting. */
  }
  sending = false;
}

offer();
setInterval(() => offer(), AGAIN_MS);
addEventListener("online", () => offer());
document.addEventListener("visibilitychange", () => offer());
document.addEventListener("htmx:afterSettle", show);
