/* Photographs and long texts go to the server by themselves, before the entries that name them. */

import { TooLarge, asDevice } from "./contact.js";
import { indexed, write } from "./phone_store.js";

const LARGEST_INLINE_BYTES = 60_000;
const FAILED = 500;

/* A text goes along with its entry; what is larger, or no text, goes before. */
export function goesAlong(part) {
  return !part.mime && part.data instanceof Uint8Array && part.data.length <= LARGEST_INLINE_BYTES;
}

/* Photographs and long texts that the server does not have, or has refused. */
export async function partsAlone(state) {
  return (await indexed("parts", "state", state)).filter((part) => part.data && !goesAlong(part));
}

/* One that the server fails over or finds too large does not hold back the others: gives the failure to tell. */
export async function offerParts() {
  let failure = null;
  for (const part of await partsAlone("kept")) {
    try {
      await partsAre([part.digest], (await offered(part)).ok ? "confirmed" : "refused");
    } catch (fault) {
      if (fault instanceof TooLarge) await partsAre([part.digest], "refused");
      else if (fault.status === FAILED) failure ??= fault;
      else throw fault;
    }
  }
  return failure;
}

function offered({ digest, mime, data }) {
  const headers = { "Content-Type": mime || "application/octet-stream" };
  return asDevice(`/parts/${digest}`, { method: "PUT", headers, body: data });
}

function partsAre(digests, state) {
  return write(["parts"], ({ parts }) => settleParts(parts, digests, state));
}

export function settleParts(parts, digests, state) {
  for (const digest of digests) {
    parts.get(digest).onsuccess = ({ target }) => {
      if (target.result?.state === "kept") parts.put({ ...target.result, state });
    };
  }
}
