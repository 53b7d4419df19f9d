/* A key that signs on this phone. It is made here and its private half never leaves: it is kept only wrapped under a
   key that follows from the PIN, and comes out for one signature as a key that no script can read. */

const ITERATIONS = 600_000; // PBKDF2 with SHA-256: what one guess of a PIN costs whoever holds the phone's storage
const CURVE = { name: "ECDSA", namedCurve: "P-256" };
const SIGNING = { name: "ECDSA", hash: "SHA-256" };

export function hex(data) {
  return Array.from(new Uint8Array(data), (byte) => byte.toString(16).padStart(2, "0")).join("");
}

export function unhex(text) {
  return Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}

async function wrapping(pin, salt, iterations) {
  const secret = await crypto.subtle.importKey("raw", new TextEncoder().encode(pin), "PBKDF2", false, ["deriveKey"]);
  const how = { name: "PBKDF2", hash: "SHA-256", salt, iterations };
  return crypto.subtle.deriveKey(how, secret, { name: "AES-GCM", length: 256 }, false, ["wrapKey", "unwrapKey"]);
}

/* A new key: the public point for the server, and what is kept here. */
export async function makeKey(pin) {
  const pair = await crypto.subtle.generateKey(CURVE, true, ["sign", "verify"]);
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const under = await wrapping(pin, salt, ITERATIONS);
  const wrapped = await crypto.subtle.wrapKey("pkcs8", pair.privateKey, under, { name: "AES-GCM", iv });
  const open = hex(await crypto.subtle.exportKey("raw", pair.publicKey));
  return { public: open, kept: { salt, iv, wrapped: new Uint8Array(wrapped), iterations: ITERATIONS } };
}

/* The key for one signature, or null: a wrong PIN opens nothing. */
export async function openKey({ salt, iv, wrapped, iterations }, pin) {
  const under = await wrapping(pin, salt, iterations);
  try {
    return await crypto.subtle.unwrapKey("pkcs8", wrapped, under, { name: "AES-GCM", iv }, CURVE, false, ["sign"]);
  } catch {
    return null;
  }
}

/* r and s, 32 bytes each, as hexadecimal text. */
export async function signatureOf(key, data) {
  return hex(await crypto.subtle.sign(SIGNING, key, data));
}
