/* How much room this phone has, whether the browser promises to keep what is on it, and how room is made. */

import { indexed, write } from "./phone_store.js";

const FOR_ENTRIES = 1_000_000; // photographs leave this much for entries, which are small
const MB = 1_000_000;
const FIXED = 10 * 2 ** 30;
const NEVER_PROMISED = "By http the browser does not say whether it keeps what is here for good";
const PROMISED = "The browser has promised to keep what is on this phone";
const NOT_PROMISED = "The browser has not promised to keep it: short of room, it may clear what is here";

export const isFull = (fault) => fault?.name === "QuotaExceededError";

/* Some browsers tell every page the same figure beyond what it uses, whatever room there is. */
function isTrue({ quota, usage }) {
  return Math.abs(quota - usage - FIXED) > MB;
}

export function estimated() {
  return navigator.storage?.estimate?.().catch(() => null) ?? Promise.resolve(null);
}

/* Ask the browser not to clear what is kept here when it wants room for something else. */
export async function askToKeep() {
  if (!navigator.storage?.persist || await navigator.storage.persisted()) return;
  await navigator.storage.persist();
}

/* What it answered, and how full it is, in words. */
export async function roomWords() {
  const found = await estimated();
  const told = navigator.storage?.persisted ? (await navigator.storage.persisted() ? PROMISED : NOT_PROMISED) : NEVER_PROMISED;
  if (!found?.quota) return `${told}.`;
  const most = isTrue(found) ? ` of about ${Math.round(found.quota / MB)} MB` : "";
  return `${told}. ${Math.ceil(found.usage / MB)} MB${most} are used.`;
}

/* A photograph is refused before it takes the room that entries need. */
export async function leaveRoom(parts) {
  const size = parts.reduce((sum, { data, mime }) => sum + (mime ? data?.size ?? data?.length ?? 0 : 0), 0);
  const found = size ? await estimated() : null;
  if (found?.quota && found.quota - found.usage < size + FOR_ENTRIES) {
    throw new DOMException("no room for a photograph", "QuotaExceededError");
  }
}

/* Photographs that the server has are shown from there: they make room for what only this phone has. They are deleted,
   because a full store takes no smaller row in place of a larger one. */
async function makeRoom() {
  const rows = (await indexed("parts", "state", "confirmed")).filter(({ mime, data }) => mime && data);
  if (rows.length) await write(["parts"], ({ parts }) => rows.forEach(({ digest }) => parts.delete(digest)));
  return rows.length > 0;
}

/* Do it, and once more after room was made. */
export async function withRoom(work) {
  try {
    return await work();
  } catch (fault) {
    if (!isFull(fault) || !(await makeRoom().catch(() => false))) throw fault;
    return work();
  }
}
