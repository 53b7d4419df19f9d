// node templates.mjs <engine> <folder of floors> <out>: every template as a Python module, made by the engine's Jinja2.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";

const [engine, folder, out] = process.argv.slice(2).map((path) => resolve(path));
const { loadPyodide } = await import(join(engine, "pyodide.mjs"));
const py = await loadPyodide({ indexURL: `${engine}/`, stdLibURL: join(engine, "stdlib.zip") });
py.FS.writeFile("/packages.zip", readFileSync(join(engine, "packages.zip")));
py.mountNodeFS("/floors", folder);
py.runPython('import sys; sys.path[:0] = ["/floors", "/packages.zip"]');
py.runPython(readFileSync(new URL("templates.py", import.meta.url), "utf8"));
const made = JSON.parse(py.runPython("import json; json.dumps(templates())"));
mkdirSync(out, { recursive: true }); // only now: where it lies, the floors take their templates from it
for (const [name, text] of Object.entries(made)) writeFileSync(join(out, name), text);
process.exit(0);
