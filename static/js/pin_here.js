/* A PIN where the server cannot be reached: it opens the key that its owner had made on this phone, or nothing. */

import { openKey, signatureOf } from "./phone_key.js";
import { write } from "./phone_store.js";
import { one, signerOf } from "./sign_alone.js";

const FREE_TRIES = 3;
const FIRST_WAIT_S = 5;
const LONGEST_WAIT_S = 900;
const AWAY = "The server cannot be reached, and";
const WRONG = "This PIN does not open the key on this phone.";

function waitMs(wrong) {
  if (wrong < FREE_TRIES) return 0;
  return Math.min(FIRST_WAIT_S * 2 ** Math.min(wrong - FREE_TRIES, 10), LONGEST_WAIT_S) * 1_000;
}

function span(ms) {
  const seconds = Math.ceil(ms / 1_000);
  return seconds < 60 ? `${seconds} seconds` : `${Math.ceil(seconds / 60)} minutes`;
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

/* Who is verified by the PIN of a form, and what signs for him; or why nobody is. */
export async function byPin(pairs) {
  const { signer, kept, fault } = await signerOf(pairs);
  if (fault) return { fault: `${AWAY} ${fault}` };
  const wait = await countTry(signer, Date.now());
  if (wait > 0) return { fault: `Too many wrong PINs. Try again in ${span(wait)}.` };
  const key = await openKey(kept, one(pairs, "pin"));
  if (!key) return { fault: WRONG };
  await forgetTries(signer);
  const sign = async (statement) => ({ signature: await signatureOf(key, statement) });
  return { verified: { person: kept.person, how: "phone-key", key: kept.id }, sign };
}
