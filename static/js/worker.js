/* Runs beside the page: boots Python, loads the same floors and templates as the server has, and answers the pages'
   requests as the server would. It keeps nothing of anybody's work: what it knows is sent to it, what is to be kept it
   sends back. What it does keep is its own started memory, before it knows anything: the next start goes on from there. */

import { boot, fault, heed } from "./phone_python.js";

const asked = JSON.parse(self.name); // not in the address: the script is kept under that
const engine = new URL(asked.engine, location.origin).href;
const MEMORY = `${asked.floors}.memory`; // a digest of floors and engine is in this address
const isPlain = asked.plain || !self.caches; // after one that died, and by http

async function bytes(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}

async function memory() {
  return isPlain ? null : caches.match(MEMORY).catch(() => null);
}

async function keep(frozen) {
  const kept = await caches.open("engine");
  await kept.put(MEMORY, new Response(frozen, { headers: { "Content-Type": "application/octet-stream" } }));
}

async function start() {
  const files = Promise.all([bytes(`${engine}packages.zip`), bytes(asked.floors)]);
  files.catch(() => {}); // told where it is waited for
  const [{ loadPyodide }, found] = await Promise.all([import(`${engine}pyodide.mjs`), memory()]);
  try {
    return await boot(loadPyodide, engine, files, { heap: found?.arrayBuffer(), freeze: !isPlain }); // read meanwhile
  } catch (error) {
    if (!found) throw error;
    console.error(`the kept start does not go on: ${error}`);
    await caches.open("engine").then((kept) => kept.delete(MEMORY));
    return boot(loadPyodide, engine, files);
  }
}

const booted = start();

self.addEventListener("message", async ({ data }) => {
  try {
    self.postMessage(heed(await booted, data));
  } catch (error) {
    self.postMessage({ id: data.id, ok: false, ...fault(error) });
  }
});
booted.then(
  (here) => {
    const { frozen } = here;
    here.frozen = null; // 20 MB that nobody needs twice
    self.postMessage({ ready: true });
    if (frozen) keep(frozen).catch((error) => console.error(`the started checks are not kept: ${error}`)); // a full phone
  },
  (error) => self.postMessage({ ready: false, ...fault(error) }),
);
