/* Keys that have ended at the server: by a new PIN, by somebody else's sign-in, by a copy that was found. What was left
   of them on this phone would go on giving signatures that count for nothing. */

import { all, write } from "./phone_store.js";

/* `good` are the ids that the server knows as good on this device; what was made here since `asked` it may not know yet. */
export async function forgetEnded(good, device, asked) {
  if (!good) return; // a server that does not tell
  const ended = (key) => key && !good.includes(key.id) && (key.at ?? 0) < asked;
  for (const kept of await all("keys")) {
    if (kept.device !== device || !(ended(kept) || ended(kept.lock))) continue;
    await write(["keys"], ({ keys }) => {
      if (ended(kept)) keys.delete(kept.person.id);
      else keys.put({ ...kept, lock: undefined }, kept.person.id);
    });
  }
}
