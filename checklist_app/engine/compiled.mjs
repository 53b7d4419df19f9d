// node compiled.mjs <engine> <folder> <modules.json> <out>: bytecode of the listed modules, made by that engine.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";

const [engine, folder, listed, out] = process.argv.slice(2);
const { loadPyodide } = await import(resolve(engine, "pyodide.mjs"));
const own = resolve(engine, "stdlib.zip"); // as published it is called otherwise, and found
const options = existsSync(own) ? { stdLibURL: own } : {};
const py = await loadPyodide({ indexURL: `${resolve(engine)}/`, ...options });
py.runPython(readFileSync(new URL("bytecode.py", import.meta.url), "utf8"));
const bytecode = py.globals.get("bytecode");

for (const name of JSON.parse(readFileSync(listed, "utf8"))) {
  const code = bytecode(readFileSync(join(folder, name), "utf8"), name);
  const path = join(out, `${name}c`);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, code.toJs());
  code.destroy();
}
process.exit(0);
