/* Runs beside the page: boots Python, loads the same floors and templates as the server has, and answers the pages'
   requests as the server would. It keeps nothing: what it knows is sent to it, what is to be kept it sends back. */

import { boot, fault, heed } from "./phone_python.js";

const asked = new URL(import.meta.url).searchParams;
const engine = new URL(asked.get("engine"), location.origin).href;

async function bytes(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}

async function start() {
  const files = Promise.all([bytes(`${engine}packages.zip`), bytes(asked.get("floors"))]);
  files.catch(() => {}); // told where it is waited for
  const { loadPyodide } = await import(`${engine}pyodide.mjs`);
  return boot(loadPyodide, engine, files);
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
  () => self.postMessage({ ready: true }),
  (error) => self.postMessage({ ready: false, ...fault(error) }),
);
