/* The phone's screen lock as a signer (WebAuthn): its own authenticator keeps the key, looks at the finger, the face or
   the code, and signs a digest that it is given as the challenge. No network is needed for a signature. */

import { hex, unhex } from "./phone_key.js";

const ES256 = -7; // ECDSA over P-256 with SHA-256, in the list of COSE
const WAIT_MS = 120_000;
const KIND = "public-key";
export const NOT_CONFIRMED = "The screen lock was not confirmed, and nothing was signed. Try again, or use the PIN.";

/* Nobody confirmed, or the phone would not ask. Browsers do not tell which of the two. */
export class NotConfirmed extends Error {}

/* Whether this phone verifies who holds it, at an address where it may be asked. */
export async function isHere() {
  if (!window.isSecureContext || !window.PublicKeyCredential) return false;
  return PublicKeyCredential.isUserVerifyingPlatformAuthenticatorAvailable().catch(() => false);
}

async function confirmed(asking) {
  try {
    return (await asking()).response;
  } catch (fault) {
    console.warn(`screen lock: ${fault.name}: ${fault.message}`);
    throw new NotConfirmed(NOT_CONFIRMED);
  }
}

/* A key for signing, made and kept by the phone: what the server looks at before it believes it. */
export async function makeLock({ rp_id: id, site, challenge, name, user }) {
  const publicKey = {
    rp: { id, name: site }, user: { id: unhex(user), name, displayName: name }, challenge: unhex(challenge),
    pubKeyCredParams: [{ type: KIND, alg: ES256 }], attestation: "none", timeout: WAIT_MS,
    authenticatorSelection: { authenticatorAttachment: "platform", userVerification: "required", residentKey: "discouraged" },
  };
  const made = await confirmed(() => navigator.credentials.create({ publicKey }));
  return { attestation: hex(made.attestationObject), client: hex(made.clientDataJSON) };
}

/* The signature over a statement, known by its digest: what goes into the entry beside it. */
export async function signedByLock({ rp_id: rpId, credential }, digest) {
  const allowCredentials = [{ type: KIND, id: unhex(credential), transports: ["internal"] }];
  const publicKey = { challenge: unhex(digest), rpId, allowCredentials, userVerification: "required", timeout: WAIT_MS };
  const said = await confirmed(() => navigator.credentials.get({ publicKey }));
  return {
    authenticator: hex(said.authenticatorData), client: hex(said.clientDataJSON), signature: hex(said.signature), credential,
  };
}
