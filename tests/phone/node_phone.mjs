// node node_phone.mjs <scripts> <engine> <floors.zip> <assessed.py> <visit>: a phone without a screen. One JSON message
// a line comes in, one answer a line goes out; the messages are those of the page's worker, and what `assessed.py` does.
// On its second visit it goes on from the memory that the first has kept, as phones do.
import { readFileSync } from "node:fs";
import { createInterface } from "node:readline";

const [scripts, engine, floors, assessed, visit] = process.argv.slice(2);
const { boot, heed } = await import(`${scripts}/phone_python.js`);
const { loadPyodide } = await import(`${engine}/pyodide.mjs`);
const files = Promise.resolve([readFileSync(`${engine}/packages.zip`), readFileSync(floors)]);
const booted = await boot(loadPyodide, `${engine}/`, files, visit === "second" ? { heap: await frozen() } : {});
booted.python.runPython(readFileSync(assessed, "utf8"));
const assess = booted.python.globals.get("assessed");
const takeAway = booted.python.globals.get("take_away");
const absent = booted.python.globals.get("absent");

async function frozen() {
  const first = await boot(loadPyodide, `${engine}/`, files, { freeze: true });
  if (!first.frozen) throw new Error("the first visit kept no memory");
  return first.frozen;
}

const parts = (list) => (list ?? []).map(([name, text]) => [name, text === null ? null : Uint8Array.from(Buffer.from(text, "base64"))]);
const said_to = (message) => {
  if (message.do === "assess") return { told: message.inputs.map((input) => assess(input)) };
  if (message.do === "import") return { absent: JSON.parse(absent(JSON.stringify(message.modules))) };
  if (message.do === "take away") return { taken: String(takeAway(message.module)) };
  return heed(booted, { ...message, parts: parts(message.parts) });
};

for await (const line of createInterface({ input: process.stdin })) {
  const message = JSON.parse(line);
  const said = said_to(message);
  if (said.parts) said.parts = said.parts.map(([name, data]) => [name, Buffer.from(data).toString("base64")]);
  process.stdout.write(`${JSON.stringify(said)}\n`);
}
