// node pressed.mjs <folder> <out>: every file as .br and .gz; CHECKSUMS lists what is inside them.
import { createHash } from "node:crypto";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

const [folder, out] = process.argv.slice(2);
const sums = [];
for (const name of readdirSync(folder).sort()) {
  const raw = readFileSync(join(folder, name));
  const params = {
    [constants.BROTLI_PARAM_QUALITY]: 11,
    [constants.BROTLI_PARAM_LGWIN]: 24,
    [constants.BROTLI_PARAM_SIZE_HINT]: raw.length,
  };
  const br = brotliCompressSync(raw, { params });
  const gz = gzipSync(raw, { level: 9 });
  writeFileSync(join(out, `${name}.br`), br);
  writeFileSync(join(out, `${name}.gz`), gz);
  sums.push(`${createHash("sha256").update(raw).digest("hex")}  ${name}\n`);
  console.log(`${name}: ${raw.length} bytes, br ${br.length}, gz ${gz.length}`);
}
writeFileSync(join(out, "CHECKSUMS"), sums.join(""));
