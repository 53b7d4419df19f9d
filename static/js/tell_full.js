/* A phone that is full, or that keeps nothing, says so before anything is lost. */

const NEARLY = 0.9;
const FULL = "This phone is full. What you enter now is not kept on it: save what waits to a file, then make room";
const UNKEPT = "This browser keeps nothing on the phone: what you enter is safe only once the server has it";
const SOON_FULL = "This phone is nearly full: make room before it can keep no more";
let words = "";

export function fullWords() {
  return words;
}

function say(next) {
  if (next === words) return;
  words = next;
  document.dispatchEvent(new CustomEvent("phone:changed"));
}

/* Something could not be kept. */
export function tellFull(fault) {
  console.error(fault);
  say(fault?.name === "QuotaExceededError" ? FULL : UNKEPT);
}

/* How much room there is, where the browser says so; on plain http it does not. */
export async function watchRoom() {
  const found = await navigator.storage?.estimate?.().catch(() => null);
  if (!found?.quota || words === FULL) return;
  if (found.usage / found.quota > NEARLY) say(SOON_FULL);
  else if (words === SOON_FULL) say("");
}

/* Ask the browser not to clear what is kept here when it wants room for something else. */
export async function askToKeep() {
  if (!navigator.storage?.persist || await navigator.storage.persisted()) return;
  await navigator.storage.persist();
}
