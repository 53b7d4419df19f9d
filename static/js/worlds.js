/* What the checks on this phone know is what the phone keeps: all of it when they start, then what is new, whichever
   tab kept it. */

import { ask, onReload, status } from "./engine.js";
import { all, indexed, meta, REVISION } from "./phone_store.js";

let told = 0; // the last write that the worker knows

const counting = (rows) => rows.filter(({ powerless, state }) => !powerless && state !== "refused").map(({ body }) => body);
const isText = ({ data, mime }) => data instanceof Uint8Array && !mime;
const named = (rows) => rows.map((part) => [part.digest, isText(part) ? part.data : null]);

async function known() {
  const revision = (await meta(REVISION)) ?? 0;
  const [entries, parts, sealed, cursor] = await Promise.all([all("entries"), all("parts"), meta("sealed"), meta("cursor")]);
  told = revision;
  return { entries: counting(entries), parts: named(parts), sealed: sealed ?? {}, cursor: cursor ?? null };
}

async function news(since) {
  const range = IDBKeyRange.lowerBound(since, true);
  const [entries, parts] = await Promise.all([indexed("entries", "revision", range), indexed("parts", "revision", range)]);
  return { entries: counting(entries), parts: named(parts) };
}

/* Before anything is asked: the worker learns what was written since. */
export async function bringUpToDate() {
  const revision = (await meta(REVISION)) ?? 0;
  if (status().state !== "ready" || revision === told) return;
  const [more, sealed, cursor] = await Promise.all([news(told), meta("sealed"), meta("cursor")]);
  await ask({ do: "learn", ...more, sealed: sealed ?? {}, cursor: cursor ?? null });
  told = revision; // only now: what was not learned is told again
}

onReload(known);
