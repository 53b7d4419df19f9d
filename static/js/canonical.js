/* One value has one text: the very same bytes as the server makes. The text is written out by hand, because sorting
   a copy and handing it to JSON.stringify would put a key like "10" first, lose "__proto__" and call toJSON. */

const KEY = /^[a-z][a-z0-9_]*$/;
const DEEPEST = 8;

export class NotCanonical extends TypeError {}

export function canonical(value, depth = 0) {
  if (depth > DEEPEST) throw new NotCanonical(`nested more than ${DEEPEST} deep`);
  if (value === null || typeof value === "boolean") return String(value);
  if (typeof value === "number") return whole(value);
  if (typeof value === "string") return quoted(value);
  if (Array.isArray(value)) return `[${Array.from(value, (item) => canonical(item, depth + 1)).join(",")}]`;
  if (typeof value === "object") return object(value, depth);
  throw new NotCanonical(`${typeof value} has no text`);
}

function object(value, depth) {
  const keys = Object.keys(value).sort();
  const wrong = keys.find((key) => !KEY.test(key));
  if (wrong !== undefined) throw new NotCanonical(`the key ${JSON.stringify(wrong)} is not a plain name`);
  return `{${keys.map((key) => `"${key}":${canonical(value[key], depth + 1)}`).join(",")}}`;
}

function whole(value) {
  if (!Number.isSafeInteger(value)) throw new NotCanonical("a measured number goes in as text");
  return String(value === 0 ? 0 : value);
}

function quoted(text) {
  if (/\p{Surrogate}/u.test(text)) throw new NotCanonical("half a character stands alone");
  return JSON.stringify(text);
}

/* Composed once, where the text is made; nobody composes it again. */
export function asTyped(text) {
  return text.normalize("NFC");
}

export function bytes(text) {
  return new TextEncoder().encode(text);
}
