/* A phone that is full, or that keeps nothing, says so before anything is lost. What it could not keep stands in the
   page: it goes with each form, and is put away as soon as there is room. */

import { keepAll, partOf } from "./keep.js";
import { bytes } from "./canonical.js";
import { estimated, isFull } from "./room.js";
import { sha256 } from "./sha256.js";

const NEARLY = 0.9;
const AGAIN_MS = 5_000; // room that was made is there a little later
const FULL = "This phone is full. What you enter now is not kept on it: save what waits to a file, then make room";
const UNKEPT = "This browser keeps nothing on the phone: what you enter is safe only once the server has it";
const SOON_FULL = "This phone is nearly full: make room before it can keep no more";
let words = "";
let standing = []; // { body, parts } that stand in this page alone

export function fullWords() {
  if (standing.length === 0) return words;
  const count = standing.length === 1 ? "1 answer stands" : `${standing.length} answers stand`;
  return `${words}. ${count} in this page only: leave it open`;
}

function say(next) {
  words = next;
  document.dispatchEvent(new CustomEvent("phone:changed"));
}

/* Something could not be kept. */
export function tellFull(fault, made = []) {
  console.error(fault);
  if (standing.length === 0 && made.length) setTimeout(() => keepStanding().catch(later), AGAIN_MS);
  standing.push(...made);
  say(isFull(fault) ? FULL : UNKEPT);
}

/* The server has these: they stand here for nothing any more. */
export function tellTaken(bodies) {
  if (standing.length === 0) return;
  standing = standing.filter(({ body }) => !bodies.includes(body));
  say(words);
}

function later() {
  if (standing.length) setTimeout(() => keepStanding().catch(later), AGAIN_MS);
}

/* There may be room again: what stands in the page is put away. */
export async function keepStanding() {
  const kept = standing;
  if (kept.length === 0) return;
  const parts = kept.flatMap((one) => one.parts.map((text) => partOf(sha256(bytes(text)), bytes(text))));
  await keepAll(kept.map(({ body }) => body), parts);
  standing = standing.filter((one) => !kept.includes(one));
  say("");
}

/* How much room there is, where the browser says so; on plain http it does not. */
export async function watchRoom() {
  await keepStanding().catch(() => {});
  const found = await estimated();
  const isNearly = found?.quota && found.usage / found.quota > NEARLY;
  if (standing.length || words === UNKEPT) return;
  if (isNearly ? words === "" : words) say(isNearly ? SOON_FULL : "");
}

addEventListener("beforeunload", (event) => { if (standing.length) event.preventDefault(); });
