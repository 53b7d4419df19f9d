/* Python on the phone, from files that the caller has: what the worker boots, and a test in Node just the same. */

import { unzipped } from "./unzipped.js";

const PLACES = `
import sys
sys.path[:0] = ["/floors", "/packages.zip"]
from checklist_app.checklists.phone import Phone
`;
/* Whatever is read once and stays, so that a heap that is kept brings it along. It knows no entry and no person. */
const WARM = `
import gc
from checklist_app.checklists.warm import warm
warm()
gc.collect()
`;

function lay(files, zip) {
  const made = new Set(); // to be told that a folder is there takes longer than to write a file
  for (const [name, data] of unzipped(zip)) {
    const path = `/floors/${name}`;
    const folder = path.slice(0, path.lastIndexOf("/"));
    if (!made.has(folder)) files.mkdirTree(folder);
    made.add(folder);
    files.writeFile(path, data);
  }
}

/* `files`: a promise of the bytes of packages.zip and of the floors, fetched while the engine starts. `heap`: the
   memory of an engine that had started before with these very files, or a promise of it; it goes on from there. With `freeze` such a
   memory is made here and given back. Neither is an official part of the engine: whoever asks must be able to go
   without. */
export async function boot(loadPyodide, engine, files, { heap = null, freeze = false } = {}) {
  const how = heap ? { _loadSnapshot: heap } : { _makeSnapshot: freeze };
  const python = await loadPyodide({ indexURL: engine, stdLibURL: `${engine}stdlib.zip`, env: { PYTHONHASHSEED: "0" }, ...how });
  const [packages, floors] = await files;
  python.FS.writeFile("/packages.zip", packages);
  lay(python.FS, floors);
  if (!heap) python.runPython(PLACES);
  const frozen = freeze && !heap ? frozenNow(python) : null;
  return { python, phone: python.runPython("Phone()"), frozen };
}

function frozenNow(python) {
  try {
    python.runPython(WARM);
    return python.makeMemorySnapshot();
  } catch (fault) {
    console.error(`the started checks cannot be kept: ${fault}`);
    return null;
  }
}

/* Parts go in as [digest, bytes]; a picture lies elsewhere, and null says that it is there. */
function taught({ python, phone }, how, { entries = [], parts = [], sealed = {}, cursor = null }) {
  const given = python.toPy(parts.map(([digest, data]) => [digest, data ?? undefined])); // null would not be None
  try {
    phone[how](JSON.stringify({ entries, sealed, cursor }), given);
  } finally {
    given.destroy();
  }
  return {};
}

function answered({ phone }, { request }) {
  const said = phone.answer(JSON.stringify(request));
  const [text, parts] = said.toJs();
  said.destroy();
  return { ...JSON.parse(text), parts };
}

const DOES = {
  load: (booted, message) => taught(booted, "load", message),
  learn: (booted, message) => taught(booted, "learn", message),
  answer: answered,
  parity: ({ phone }, { task, today }) => ({ claim: phone.parity(JSON.stringify({ task, today })) }),
  evaluate: ({ phone }, { task, today }) => ({ evaluation: phone.evaluate(JSON.stringify({ task, today })) }),
};

/* What a message comes to: what it asked for, or why not. The last line of Python's words says what was wrong. */
export function heed(booted, message) {
  try {
    return { id: message.id, ok: true, ...DOES[message.do](booted, message) };
  } catch (error) {
    return { id: message.id, ok: false, ...fault(error) };
  }
}

export function fault(error) {
  return { error: String(error.message ?? error), missing: error.type === "ModuleNotFoundError" };
}
