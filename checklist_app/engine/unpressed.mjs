// node unpressed.mjs <folder> <out>: the files of a folder as they were before they were pressed, checked by their sums.
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brotliDecompressSync } from "node:zlib";

const [folder, out] = process.argv.slice(2);
mkdirSync(out, { recursive: true });
for (const line of readFileSync(join(folder, "CHECKSUMS"), "utf8").trim().split("\n")) {
  const [sum, name] = line.split("  ");
  const raw = brotliDecompressSync(readFileSync(join(folder, `${name}.br`)));
  if (createHash("sha256").update(raw).digest("hex") !== sum) throw new Error(`${name} is not what CHECKSUMS says`);
  writeFileSync(join(out, name), raw);
}
