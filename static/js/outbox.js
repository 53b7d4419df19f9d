/* What still waits on this phone, and the last resort when no server can be reached: a file of all that waits. */

import { countOf } from "./offer.js";
import { all, get, indexed } from "./phone_store.js";
import { partsNamed } from "./keep.js";
import { sync } from "./sync.js";

const WAITING = ["kept", "sent", "refused"];
const PHOTOS = ["kept", "refused"];
const FORM = "kept on a phone/1";

async function texts(body) {
  const parts = {};
  for (const digest of partsNamed(body)) {
    const part = await get("parts", digest);
    if (part?.data instanceof Uint8Array && !part.mime) parts[digest] = new TextDecoder().decode(part.data);
  }
  return parts;
}

/* What the server has not confirmed, with its texts; what it refused is not among it. */
export async function unsent() {
  const rows = (await all("entries")).filter(({ state }) => state === "kept" || state === "sent");
  return Promise.all(rows.map(async ({ body }) => ({ body, parts: await texts(body) })));
}

/* All that waits, at once, as far as the server takes it. */
export async function offerAll() {
  for (let before = Infinity; ;) {
    await sync();
    const left = (await countOf("kept")) + (await countOf("sent"));
    if (left === 0 || left >= before) return;
    before = left;
  }
}

function base64(data) {
  let text = "";
  for (let at = 0; at < data.length; at += 0x8000) text += String.fromCharCode(...data.subarray(at, at + 0x8000));
  return btoa(text);
}

async function picture({ digest, data, mime }) {
  return { digest, mime, data: base64(data instanceof Blob ? new Uint8Array(await data.arrayBuffer()) : data) };
}

/* The text of the file: entries with their texts, and photographs that the server does not have. */
export async function asFile() {
  const rows = (await all("entries")).filter(({ state }) => WAITING.includes(state));
  const photos = (await Promise.all(PHOTOS.map((state) => indexed("parts", "state", state)))).flat().filter(({ mime }) => mime);
  const entries = await Promise.all(rows.map(async ({ body }) => ({ body, parts: await texts(body) })));
  return JSON.stringify({ form: FORM, entries, photos: await Promise.all(photos.map(picture)) });
}
