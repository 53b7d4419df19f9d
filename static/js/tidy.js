/* What a phone need not keep: entries of sealed tasks, its own only after thirty days, because until then a server that
   was set back may have to be offered them again. */

import { partsNamed } from "./keep.js";
import { all, meta, read, write } from "./phone_store.js";

const OWN_KEPT_MS = 30 * 86_400_000;

/* Digests that entries name and that nobody has brought yet. */
export async function partsMissing() {
  const here = new Set(await read("parts", (parts) => parts.getAllKeys()));
  const named = (await all("entries")).flatMap(({ body }) => partsNamed(body));
  return [...new Set(named)].filter((digest) => !here.has(digest));
}

export async function tidy(sealed) {
  const gone = new Set(Object.keys(sealed).map((task) => `task/${task}`));
  const ours = ((await meta("device")) ?? "").slice(1);
  const old = (row) => row.device.slice(1) !== ours || Date.now() - row.since > OWN_KEPT_MS;
  const rows = (await all("entries")).filter((row) => row.state === "confirmed" && gone.has(row.about) && old(row));
  if (rows.length === 0) return;
  const left = new Set((await all("entries")).filter((row) => !rows.some(({ digest }) => digest === row.digest))
    .flatMap(({ body }) => partsNamed(body)));
  await write(["entries", "parts"], ({ entries, parts }) => {
    for (const { digest, body } of rows) {
      entries.delete(digest);
      for (const part of partsNamed(body)) if (!left.has(part)) parts.delete(part);
    }
  });
}
