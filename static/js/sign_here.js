/* A signature made on this phone: the checks make statement and entry, the key that was opened signs the statement, and
   what it signed goes into the entry. */

import { canonical } from "./canonical.js";
import { NotConfirmed } from "./lock.js";
import { byLock } from "./lock_here.js";
import { byPin } from "./pin_here.js";
import { one } from "./sign_alone.js";

const opened = new Map(); // id → what signs, from the PIN or the tap to the signature

/* What a form adds to its request: who was verified, with which key, or why nobody was. */
export async function signedHere(pairs) {
  const found = one(pairs, "by") === "lock" ? await byLock(pairs) : one(pairs, "pin") ? await byPin(pairs) : {};
  if (found.fault) return { pin_fault: found.fault };
  if (!found.verified) return {};
  opened.set(found.verified.key, found.sign);
  return { verified: found.verified };
}

async function signed(body, parts) {
  const said = JSON.parse(body);
  const sign = opened.get(said.value.key);
  const [digest, statement] = parts.find(([name]) => name === said.value.statement) ?? [];
  if (!sign || !statement) throw new Error("a signature without its key or its statement");
  return canonical({ ...said, value: { ...said.value, ...await sign(statement, digest) } });
}

/* Sign-offs as the checks made them still lack the signature over their statement; it is made once, here. */
async function withSignatures({ keep, parts, ...rest }) {
  const bodies = [];
  for (const body of keep) {
    const { value } = JSON.parse(body);
    bodies.push(value.type === "signature" && !value.signature ? await signed(body, parts) : body);
  }
  return { ...rest, parts, keep: bodies };
}

/* What the checks answer, with its signatures. Where nobody confirmed, they answer once more and nothing is signed. */
export async function answeredAndSigned(request, answer) {
  try {
    return await withSignatures(await answer(request));
  } catch (fault) {
    if (!(fault instanceof NotConfirmed)) throw fault;
    return answer({ ...request, verified: null, pin_fault: fault.message });
  } finally {
    opened.clear();
  }
}
