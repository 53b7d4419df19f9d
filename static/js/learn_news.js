/* What the server has that this phone has not: other phones' entries, texts, names, what was sealed, and the time. */

import { bytes } from "./canonical.js";
import { asDevice } from "./contact.js";
import { forgetEnded } from "./ended_keys.js";
import { counterOf, partOf, rowOf } from "./keep.js";
import { meta, nextRevision, write } from "./phone_store.js";
import { partsMissing, tidy } from "./tidy.js";

const MOST_WANTED = 50;
const STORES = ["entries", "parts", "meta"];

/* One page of news; whether there is more. */
export async function learnNews() {
  const cursor = (await meta("cursor")) ?? { number: 0, head: "" };
  const wanted = cursor.number ? (await partsMissing()).slice(0, MOST_WANTED).join(",") : "";
  const asked = Date.now();
  const answer = await asDevice(`/entries?${new URLSearchParams({ ...cursor, wanted })}`);
  const said = await answer.json();
  const middle = (asked + Date.now()) / 2;
  await keep(said, { skew_s: Math.round((middle - Date.parse(said.now)) / 1_000), reached_at: Date.now() });
  await forgetEnded(said.keys, said.device, asked);
  if (!said.more) await tidy(said.sealed);
  return said.more;
}

function keep(said, more) {
  return write(STORES, ({ entries, parts, meta: kept }) => nextRevision(kept, (revision) => {
    for (const { body, number } of said.entries) confirm(entries, rowOf(body, { state: "confirmed", number, revision }));
    for (const digest of said.powerless) leaveOut(entries, digest);
    for (const [digest, text] of Object.entries(said.parts)) arrive(parts, digest, text, revision);
    const { cursor, sealed, people, code, device, trust, alarms, notes, after_seal, https } = said;
    const whole = { cursor, sealed, people, code, trust, alarms, notes, after_seal, https, ...more };
    for (const [key, value] of Object.entries(whole)) kept.put(value ?? null, key);
    countOn(kept, device, said.counted);
  }));
}

/* An entry of our own comes back with its number; another one is new here. */
function confirm(entries, row) {
  entries.get(row.digest).onsuccess = ({ target: { result: known } }) => {
    if (!known) entries.add(row);
    else if (known.state !== "confirmed") entries.put({ ...known, state: "confirmed", number: row.number, words: "" });
  };
}

/* Kept by the server, and counting for nothing: the checks here must not count it either. */
function leaveOut(entries, digest) {
  entries.get(digest).onsuccess = ({ target: { result: known } }) => {
    if (known && !known.powerless) entries.put({ ...known, state: "confirmed", powerless: true });
  };
}

function arrive(parts, digest, text, revision) {
  parts.get(digest).onsuccess = ({ target: { result: known } }) => {
    const data = text === null ? null : bytes(text);
    if (known && (known.data !== null || data === null)) return;
    parts.put(partOf(digest, data, { state: "confirmed", revision }));
  };
}

/* A phone that lost what it kept counts on from where the server saw it last. */
function countOn(kept, device, counted) {
  kept.get(counterOf(device)).onsuccess = ({ target }) => {
    if ((target.result ?? 0) < counted) kept.put(counted, counterOf(device));
  };
}
