// node imported.mjs <engine> <packages> <floors> <shop> <demo data>: prints what a walk through every page imports.
import { readFileSync } from "node:fs";
import { resolve } from "node:path";

const [engine, packages, floors, shop, demo] = process.argv.slice(2);
const { loadPyodide } = await import(resolve(engine, "pyodide.mjs"));
const py = await loadPyodide({ indexURL: `${resolve(engine)}/` });
py.mountNodeFS("/packages", resolve(packages));
py.mountNodeFS("/floors", resolve(floors));
py.FS.mkdirTree("/walk/tests");
py.FS.mkdirTree("/walk/demo_data");
py.mountNodeFS("/walk/tests/checklists", resolve(shop));
py.mountNodeFS("/walk/demo_data", resolve(demo));
for (const script of ["walk.py", "wanted.py"]) {
  py.FS.writeFile(`/walk/${script}`, readFileSync(new URL(script, import.meta.url)));
}
console.log(py.runPython(`
import json, sys
sys.path[:0] = ["/packages", "/floors", "/walk"]
from walk import kept
from wanted import wanted
found = kept()
json.dumps(found | {"wanted": wanted(found)})
`));
process.exit(0);
