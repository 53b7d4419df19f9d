/* What this phone offers the server: entries in batches, short texts along with them. The server's word on each is written
   beside it before the next batch goes. */

import { TooLarge, asDevice } from "./contact.js";
import { partsNamed } from "./keep.js";
import { moment } from "./make.js";
import { goesAlong, settleParts } from "./offer_parts.js";
import { counted, get, meta, read, write } from "./phone_store.js";

const BATCH = 50;
const SETTLED = ["confirmed", "refused"];
const LARGEST_BATCH_BYTES = 600_000;
export const putOff = new Set(); // digests that the server will take later, such as after a sign-in
let most = BATCH;

const stateRange = (state) => IDBKeyRange.bound([state, 0], [state, Infinity]);

export async function countOf(state) {
  return counted("entries", "state", stateRange(state));
}

/* The next entries to offer, those first that the server may not have seen at all. */
async function waiting() {
  const found = [];
  for (const state of ["kept", "sent"]) {
    const rows = await read("entries", (kept) => kept.index("state").getAll(stateRange(state), most + putOff.size));
    found.push(...rows.filter(({ digest }) => !putOff.has(digest)));
  }
  return found.slice(0, most);
}

async function item({ body }) {
  const parts = {};
  for (const digest of partsNamed(body)) {
    const part = await get("parts", digest);
    if (part?.data && goesAlong(part)) parts[digest] = new TextDecoder().decode(part.data);
  }
  return { body, parts };
}

async function batch() {
  const rows = [];
  const entries = [];
  let size = 0;
  for (const row of await waiting()) {
    const one = await item(row);
    size += JSON.stringify(one).length;
    if (rows.length && size > LARGEST_BATCH_BYTES) break;
    rows.push(row);
    entries.push(one);
  }
  return { rows, entries };
}

/* Offer one batch; whether there may be more. */
export async function offerEntries() {
  const { rows, entries } = await batch();
  if (rows.length === 0) return false;
  const cursor = (await meta("cursor")) ?? { number: 0, head: "" };
  try {
    const headers = { "Content-Type": "application/json" };
    const answer = await asDevice("/entries", { method: "PUT", headers, body: JSON.stringify({ cursor, now: moment(), entries }) });
    await note(rows, entries, (await answer.json()).entries);
    most = BATCH;
  } catch (fault) {
    if (!(fault instanceof TooLarge)) throw fault;
    if (rows.length === 1) await note(rows, entries, [{ state: "refused", words: fault.message }]);
    most = Math.max(1, Math.floor(rows.length / 2));
  }
  return true;
}

/* The server's words on each entry of a batch, and its texts with it. */
function note(rows, sent, said) {
  return write(["entries", "parts"], ({ entries, parts }) => rows.forEach(({ digest }, n) => {
    const { state, number = null, words = "" } = said[n] ?? {};
    const settled = SETTLED.includes(state);
    if (!settled) putOff.add(digest);
    entries.get(digest).onsuccess = ({ target: { result: row } }) => {
      if (row) entries.put({ ...row, state: settled ? state : row.state, number, words,
        since: settled ? Date.now() : row.since });
    };
    if (state === "confirmed") settleParts(parts, Object.keys(sent[n].parts), "confirmed");
  }));
}
