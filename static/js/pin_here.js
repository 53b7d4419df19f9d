/* A PIN where the server cannot be reached: it opens the key that its owner had made on this phone, or nothing. */

import { canonical } from "./canonical.js";
import { openKey, signatureOf } from "./phone_key.js";
import { get, meta, write } from "./phone_store.js";

const FREE_TRIES = 3;
const FIRST_WAIT_S = 5;
const LONGEST_WAIT_S = 900;
const HOUR_MS = 3_600_000;
const AWAY = "The server cannot be reached, and";
const NOBODY = `${AWAY} this person is not enrolled on this phone. Sign where the server is in reach, or on a phone with an enrolment.`;
const ANOTHER = `${AWAY} this phone was signed in anew since this person enrolled on it. Enrol again when the server is in reach.`;
const NOT_HERE = `${AWAY} on this phone only a sign-off can be given by somebody who is not signed in on it.`;
const WRONG = "This PIN does not open the key on this phone.";
const opened = new Map(); // id → key, from the PIN to the signature

function one(pairs, name) {
  return (pairs.find(([each]) => each === name)?.[1] ?? "").trim();
}

function waitMs(wrong) {
  if (wrong < FREE_TRIES) return 0;
  return Math.min(FIRST_WAIT_S * 2 ** Math.min(wrong - FREE_TRIES, 10), LONGEST_WAIT_S) * 1_000;
}

function span(ms) {
  const seconds = Math.ceil(ms / 1_000);
  return seconds < 60 ? `${seconds} seconds` : `${Math.ceil(seconds / 60)} minutes`;
}

/* Why nobody signs with this key now; empty when somebody may. Times are held against this phone's own clock. */
export function whyNot(kept, device, reached, now) {
  if (!kept) return NOBODY;
  if (kept.device !== device) return ANOTHER;
  const alone = now - (reached ?? 0);
  if (alone > kept.hours * HOUR_MS || alone < 0) {
    return `${AWAY} this phone has not reached it for more than ${kept.hours} hours. It signs again once it has.`;
  }
  return "";
}

/* A try counts before it is looked at. Gives what must still be waited, in milliseconds. */
async function countTry(person, now) {
  const found = await write(["keys"], ({ keys }) => {
    const told = {};
    keys.get(person).onsuccess = ({ target: { result: kept } }) => {
      told.wait = waitMs(kept.wrong) - Math.max(0, now - kept.tried_at);
      if (told.wait <= 0) keys.put({ ...kept, wrong: kept.wrong + 1, tried_at: now }, person);
    };
    return told;
  });
  return found.wait;
}

function forgetTries(person) {
  return write(["keys"], ({ keys }) => {
    keys.get(person).onsuccess = ({ target: { result: kept } }) => keys.put({ ...kept, wrong: 0 }, person);
  });
}

/* What a form with a PIN adds to its request: who was verified, with which key, or why nobody was. */
export async function signedHere(pairs) {
  const pin = one(pairs, "pin");
  if (!pin) return {};
  const person = await meta("person");
  const signer = one(pairs, "signer") || person || "";
  if (one(pairs, "act") !== "sign" && signer !== person) return { pin_fault: NOT_HERE };
  const [kept, device, reached] = await Promise.all([get("keys", signer), meta("device"), meta("reached_at")]);
  const fault = whyNot(kept, device, reached, Date.now());
  if (fault) return { pin_fault: fault };
  const wait = await countTry(signer, Date.now());
  if (wait > 0) return { pin_fault: `Too many wrong PINs. Try again in ${span(wait)}.` };
  const key = await openKey(kept, pin);
  if (!key) return { pin_fault: WRONG };
  await forgetTries(signer);
  opened.set(kept.id, key);
  return { verified: { person: kept.person, how: "phone-key", key: kept.id } };
}

async function signed(body, parts) {
  const said = JSON.parse(body);
  const key = opened.get(said.value.key);
  const [, statement] = parts.find(([name]) => name === said.value.statement) ?? [];
  if (!key || !statement) throw new Error("a signature without its key or its statement");
  said.value.signature = await signatureOf(key, statement);
  return canonical(said);
}

/* Sign-offs as the checks made them still lack the signature over their statement; it is made once, here. */
export async function withSignatures({ keep, parts, ...rest }) {
  try {
    const bodies = await Promise.all(keep.map((body) => {
      const { value } = JSON.parse(body);
      return value.type === "signature" && !value.signature ? signed(body, parts) : body;
    }));
    return { ...rest, parts, keep: bodies };
  } finally {
    opened.clear();
  }
}
