/* Whether somebody may sign on this phone by a key that is kept here: whose it is, and how long the phone was alone. */

import { get, meta } from "./phone_store.js";

const HOUR_MS = 3_600_000;
const NOBODY = "this person is not enrolled on this phone. Sign where the server is in reach, or on a phone with an enrolment.";
const ANOTHER = "this phone was signed in anew since this person enrolled on it. Enrol again when the server is in reach.";
const NOT_HERE = "on this phone only a sign-off can be given by somebody who is not signed in on it.";

export function one(pairs, name) {
  return (pairs.find(([each]) => each === name)?.[1] ?? "").trim();
}

/* Why nobody signs with this key now; empty when somebody may. Times are held against this phone's own clock. */
export function whyNot(kept, device, reached, now) {
  if (!kept) return NOBODY;
  if (kept.device !== device) return ANOTHER;
  const alone = now - (reached ?? 0);
  if (alone > kept.hours * HOUR_MS || alone < 0) {
    return `this phone has not reached it for more than ${kept.hours} hours. It signs again once it has.`;
  }
  return "";
}

/* Who signs, by a form, with what is kept for him here; `fault` if he does not. */
export async function signerOf(pairs) {
  const person = await meta("person");
  const signer = one(pairs, "signer") || person || "";
  if (one(pairs, "act") !== "sign" && signer !== person) return { signer, person, fault: NOT_HERE };
  const [kept, device, reached] = await Promise.all([get("keys", signer), meta("device"), meta("reached_at")]);
  return { signer, person, kept, fault: whyNot(kept, device, reached, Date.now()) };
}
