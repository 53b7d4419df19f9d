/* One answer makes one entry, to the byte as the server would make it. */

import { asTyped, bytes, canonical } from "./canonical.js";
import { chance } from "./chance.js";
import { sha256 } from "./sha256.js";

const FORM = 1;
export const SALT_BYTES = 16;
export const MOST_MADE = 400; // entries that one form may add by itself, such as a task begun with sixteen lashings

export function moment() {
  return `${new Date().toISOString().slice(0, 19)}Z`;
}

function words(text, parts) {
  const part = canonical({ salt: chance(SALT_BYTES), text: asTyped(text) });
  parts.push(part);
  return sha256(bytes(part));
}

/* The value that an answer is in an entry; its free text becomes a part. */
export function valueOf(answer, unit, parts) {
  if (answer === null) return { type: "withdrawn" };
  const { type, text } = answer;
  if (type === "dont_know" || type === "not_used") {
    return answer.reason ? { type, part: words(answer.reason, parts) } : { type };
  }
  if (type === "text") return { type, part: words(text, parts) };
  if (type === "photo") return answer;
  if (type !== "number") return { type, text };
  const value = { type, text, unit };
  if (answer.how) value.how = answer.how;
  if (answer.plus_minus) value.plus_minus = answer.plus_minus;
  return value;
}

/* The body of an entry and the texts of its parts; `earlier` is its author's last entry there on this phone. */
export function entry({ prompt, now, about, path, author, device: maker }, counter, earlier) {
  const parts = [];
  const value = valueOf(now, prompt.unit, parts);
  const replaces = [...new Set([...prompt.replaces, ...(earlier ? [earlier] : [])])].sort();
  return { parts, body: canonical({ form: FORM, about, path, value, replaces, author, device: maker, counter, at: moment() }) };
}
