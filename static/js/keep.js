/* Entries and parts go onto the phone before anything is sent: the count of the device, the entry and the texts it
   names in one transaction, so that there is never one without the other, in however many tabs. */

import { bytes } from "./canonical.js";
import { nextRevision, write } from "./phone_store.js";
import { leaveRoom, withRoom } from "./room.js";
import { sha256 } from "./sha256.js";

const STORES = ["entries", "parts", "meta"];
const PARTS_NAMED = ["part", "statement", "ink"];
const EARLIER = "entries made"; // where the count stood before it moved into the store

export const counterOf = (device) => `counter ${device}`;

export function placeOf({ author, device, about, path }) {
  return [author, device, ...about, ...path].join(" ");
}

/* Digests of the parts that a body names. */
export function partsNamed(body) {
  const { value } = JSON.parse(body);
  return PARTS_NAMED.map((name) => value[name]).filter((digest) => typeof digest === "string");
}

export function rowOf(body, more = {}) {
  const said = JSON.parse(body);
  return {
    digest: sha256(bytes(body)), body, place: placeOf(said), about: said.about.join("/"), counter: said.counter,
    at: said.at, device: said.device, author: said.author, state: "kept", number: null, words: "", since: Date.now(),
    ...more,
  };
}

export function partOf(digest, data, more = {}) {
  return { digest, data, mime: "", state: "kept", since: Date.now(), ...more };
}

function countFrom(meta, device, then) {
  meta.get(counterOf(device)).onsuccess = ({ target }) => then(Math.max(target.result ?? 0, countedEarlier(device)));
}

function countedEarlier(device) {
  try {
    return Number(localStorage.getItem(`${EARLIER} ${device}`)) || 0;
  } catch {
    return 0;
  }
}

/* The last entry that was made at a place on this phone, given to `then`; nothing if there is none. */
function lastAt(entries, place, then) {
  const range = IDBKeyRange.bound([place, 0], [place, Infinity]);
  entries.index("place").openKeyCursor(range, "prev").onsuccess = ({ target }) => then(target.result?.primaryKey);
}

/* Make an entry of each item of `said` ({ about, path, author, device }) and keep it. `make(item, counter, earlier)`
   gives its body and the texts of its parts. Gives back [{ item, body, digest, parts }] when all is on the disk. */
export function keepSaid(said, make) {
  const device = said[0].device;
  return withRoom(() => write(STORES, ({ entries, parts, meta }) => {
    const made = [];
    nextRevision(meta, (revision) => countFrom(meta, device, (counted) => {
      meta.put(counted + said.length, counterOf(device));
      said.forEach((item, n) => lastAt(entries, placeOf(item), (earlier) => {
        const one = { item, ...make(item, counted + n + 1, earlier) };
        const row = rowOf(one.body, { revision });
        entries.put(row);
        for (const text of one.parts) keepText(parts, text, revision);
        made.push({ ...one, digest: row.digest });
      }));
    }));
    return made;
  }));
}

function keepText(parts, text, revision) {
  const data = bytes(text);
  parts.put(partOf(sha256(data), data, { revision }));
}

/* Keep bodies and parts made elsewhere: by the checks on this phone, by the server, by an earlier version. What is
   here already stays as it is. `parts` are rows; `more` is laid over each new entry. */
export async function keepAll(bodies, parts, more = {}) {
  await leaveRoom(parts);
  return withRoom(() => write(STORES, ({ entries, parts: kept, meta }) => nextRevision(meta, (revision) => {
    for (const row of bodies.map((body) => rowOf(body, { ...more, revision }))) addOnce(entries, row);
    for (const part of parts) addOnce(kept, { ...part, revision });
  })));
}

function addOnce(store, row) {
  store.getKey(row.digest).onsuccess = ({ target }) => { if (target.result === undefined) store.add(row); };
}

/* A photograph or another part by itself. */
export function keepPart(digest, data, mime) {
  return keepAll([], [partOf(digest, data, { mime })]);
}

/* Counters for what a page is going to make: the first of them. What is not used is given back. */
export function reserve(device, many) {
  return write(["meta"], ({ meta }) => {
    const first = {};
    countFrom(meta, device, (counted) => {
      first.counter = counted + 1;
      meta.put(counted + many, counterOf(device));
    });
    return first;
  }).then(({ counter }) => counter);
}

export function giveBack(device, reserved, used) {
  return write(["meta"], ({ meta }) => {
    meta.get(counterOf(device)).onsuccess = ({ target }) => {
      if (target.result === reserved) meta.put(used, counterOf(device));
    };
  });
}
