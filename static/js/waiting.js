/* What of this phone the server has not confirmed: entries, photographs, and what it said about them. */

import { countOf } from "./offer.js";
import { partsAlone } from "./offer_parts.js";
import { all, meta } from "./phone_store.js";

/* Entries by their state; `photos` wait alone, because the server has the entries that name them. */
export async function counts() {
  const [kept, sent, refused] = await Promise.all(["kept", "sent", "refused"].map(countOf));
  const [photos, refusedPhotos] = await Promise.all(["kept", "refused"].map(partsAlone));
  return { kept, sent, refused, photos: photos.length, refusedPhotos: refusedPhotos.length };
}

/* When the oldest entry that waits was kept, and what the server wants first, by the names of people. */
export async function whatHolds() {
  const rows = (await all("entries")).filter(({ state }) => state === "kept" || state === "sent");
  const people = (await meta("people")) ?? [];
  const named = (words) => people.reduce((text, { id, name }) => text.replaceAll(id, name), words);
  return {
    since: Math.min(...rows.map(({ since }) => since)),
    words: [...new Set(rows.map(({ words }) => named(words)).filter(Boolean))],
  };
}
