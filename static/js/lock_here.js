/* The screen lock in place of a PIN, on or off the network: only for whom it was registered, while he is the one signed
   in here. */

import { contact } from "./contact.js";
import { learnNews } from "./learn_news.js";
import { NotConfirmed, NOT_CONFIRMED, signedByLock } from "./lock.js";
import { all, get, meta, write } from "./phone_store.js";
import { signerOf } from "./sign_alone.js";
import { tapped } from "./tapped.js";

const NEWS_MS = 1_500;
const PIN_ONLY = "For this person the screen lock of this phone does not sign. Use the PIN.";

/* What is kept of the lock of who is signed in; nothing if it signs for nobody, or for somebody else. */
export async function lockOf(person) {
  const [kept, device] = await Promise.all([get("keys", person), meta("device")]);
  return kept?.device === device ? kept?.lock : undefined;
}

/* Whoever else is signed in can unlock this phone: the server has ended those keys, and they are forgotten here. */
export async function forgetOthers(person) {
  for (const kept of await all("keys")) {
    if (!kept.lock || kept.person.id === person) continue;
    await write(["keys"], ({ keys }) => { keys.put({ ...kept, lock: undefined }, kept.person.id); });
  }
}

/* What others said meanwhile belongs into what is signed. */
function news() {
  const late = new Promise((done) => { setTimeout(done, NEWS_MS); });
  return contact.away ? null : Promise.race([learnNews().catch(() => {}), late]);
}

/* Who signs by the lock, and what signs for him; or why nobody does. */
export async function byLock(pairs) {
  await news();
  const { signer, person, kept, fault } = await signerOf(pairs);
  if (!fault && (signer !== person || !kept.lock)) return { fault: PIN_ONLY };
  if (fault) return { fault: `By the screen lock nobody signs now: ${fault}` };
  const { id, how } = kept.lock;
  const sign = async (statement, digest) => {
    if (!await tapped()) throw new NotConfirmed(NOT_CONFIRMED);
    return signedByLock(kept.lock, digest);
  };
  return { verified: { person: kept.person, how, key: id }, sign };
}
