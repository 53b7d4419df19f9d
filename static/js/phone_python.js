/* Python on the phone, from files that the caller has: what the worker boots, and a test in Node just the same. */

const GLUE = `
import sys, zipfile
sys.path[:0] = ["/floors", "/packages.zip"]
zipfile.ZipFile("/floors.zip").extractall("/floors")
from checklist_app.checklists.phone import Phone
Phone()
`;

/* `files`: a promise of the bytes of packages.zip and of the floors, fetched while the engine starts. */
export async function boot(loadPyodide, engine, files) {
  const python = await loadPyodide({ indexURL: engine, stdLibURL: `${engine}stdlib.zip`, env: { PYTHONHASHSEED: "0" } });
  const [packages, floors] = await files;
  python.FS.writeFile("/packages.zip", packages);
  python.FS.writeFile("/floors.zip", floors);
  return { python, phone: python.runPython(GLUE) };
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
