/* The checks on the phone: a worker beside the page, started again when it dies; what it was asked is asked once more. */

const BOOT_MS = 90_000; // an old phone, the first time, over a weak network
const ANSWER_MS = 20_000;
const PAUSES_MS = [0, 2_000, 15_000, 60_000]; // before each further start; an answer brings back the first
const MOST_TRIES = 2;
export const NOT_HERE = "cannot be assessed on this phone";

let worker = null;
let state = "off"; // off, starting, ready, dead
let [deaths, asked, watch] = [0, 0, 0];
const open = new Map(); // id → { message, yes, no, sent, lost }
let recall = async () => null;

export const status = () => ({ state, waiting: open.size });

function tell(why = "") {
  document.dispatchEvent(new CustomEvent("engine:state", { detail: { ...status(), why } }));
}

const address = (name) => document.querySelector(`meta[name="${name}"]`)?.content ?? "";

/* Who keeps the entries says here how a new worker learns them: a promise of `{ entries, parts, sealed, cursor }`. */
export async function onReload(callback) {
  recall = callback;
  if (state === "ready") await known(worker);
}

export function start() {
  if (worker || !address("engine")) return;
  const name = JSON.stringify({ engine: address("engine"), floors: address("floors"), plain: deaths > 0 });
  const born = new Worker(new URL("./worker.js", import.meta.url), { type: "module", name });
  worker = born;
  state = "starting";
  const when = (name, act) => born.addEventListener(name, (event) => { if (born === worker) act(event); });
  when("message", ({ data }) => heard(data));
  when("error", (event) => died(event.message || "the worker stopped"));
  when("messageerror", () => died("a message was unreadable"));
  watched(BOOT_MS);
  tell();
}

function watched(limit) {
  clearTimeout(watch);
  watch = setTimeout(died, limit, "no answer in time");
}

function heard(data) {
  if (data.ready) begin(worker);
  else if (data.ready === false) died(data.error);
  else if (open.has(data.id)) settle(open.get(data.id), data);
}

function settle(each, data) {
  open.delete(data.id);
  deaths = 0;
  clearTimeout(watch);
  if ([...open.values()].some(({ sent }) => sent)) watched(ANSWER_MS);
  if (data.ok) each.yes(data);
  else each.no(refused(data.error, data.missing));
  tell();
}

/* A module that is not on the phone is a fault of the build: whoever listens may report it. */
function refused(why, missing = false) {
  console.error(`checks on this phone: ${why}`);
  if (missing) document.dispatchEvent(new CustomEvent("engine:fault", { detail: why }));
  return Object.assign(new Error(why), { words: NOT_HERE });
}

async function known(born) {
  const all = await recall().catch(() => null);
  if (all && born === worker) born.postMessage({ id: 0, do: "load", ...all });
}

async function begin(born) {
  clearTimeout(watch);
  await known(born);
  if (born !== worker) return;
  state = "ready";
  for (const [id, each] of open) send(id, each);
  tell();
}

function send(id, each) {
  each.sent = true;
  worker.postMessage({ ...each.message, id });
  watched(ANSWER_MS);
}

function died(why) {
  console.error(`checks on this phone: ${why}`);
  deaths += 1;
  for (const [id, each] of [...open].filter(([, { sent }]) => sent)) {
    each.sent = false;
    each.lost += 1;
    if (each.lost < MOST_TRIES) continue;
    open.delete(id);
    each.no(refused(why));
  }
  clearTimeout(watch);
  worker?.terminate();
  worker = null;
  state = "dead";
  tell(why);
  setTimeout(start, PAUSES_MS[Math.min(deaths - 1, PAUSES_MS.length - 1)]);
}

/* What the worker says; for `answer` that is { status, html, location, headers, keep, parts }. Refused with `words`. */
export function ask(message) {
  return new Promise((yes, no) => {
    asked += 1;
    const each = { message, yes, no, sent: false, lost: 0 };
    open.set(asked, each);
    if (state === "ready") send(asked, each);
    else if (state === "off") start();
    tell();
  });
}
