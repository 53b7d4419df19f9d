/* A request answered on this phone: the same function as on the server makes the page, what it wants kept is kept
   before the page is shown, and an address that it sends on to is followed here. */

import { chance } from "./chance.js";
import { ask } from "./engine.js";
import { giveBack, keepAll, partOf, reserve } from "./keep.js";
import { MOST_MADE, SALT_BYTES, moment } from "./make.js";
import { all, meta } from "./phone_store.js";
import { MIME, shrunk } from "./shrink.js";
import { answeredAndSigned, signedHere } from "./sign_here.js";
import { changed, soon } from "./sync.js";
import { bringUpToDate } from "./worlds.js";

const NOT_SENT_ON = ["pin", "form_token", "made", "now"];
const MOST_STEPS = 5;

/* The day on this phone's calendar. */
export function today() {
  const now = new Date();
  const two = (number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

async function who() {
  const [id, people] = await Promise.all([meta("person"), meta("people")]);
  return (people ?? []).find((one) => one.id === id) ?? null;
}

/* Texts of a form by name. */
function texts(pairs) {
  const form = {};
  for (const [name, text] of pairs) {
    if (typeof text === "string" && !NOT_SENT_ON.includes(name)) (form[name] ??= []).push(text);
  }
  return form;
}

function hex(data) {
  return Array.from(data, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/* Pictures of a form by name, made small; one that this phone cannot read stays in its field. */
async function pictures(pairs) {
  const files = {};
  for (const [name, file] of pairs) {
    if (typeof file === "string" || file.size === 0) continue;
    (files[name] ??= []).push({ mime: MIME, data: hex(await shrunk(file)) });
  }
  return files;
}

/* The counter, time and chance that went along with the form, or fresh ones: what is made twice is then the same. */
async function counting(pairs, device) {
  const brought = pairs.find(([name]) => name === "made")?.[1];
  if (brought) return JSON.parse(brought);
  return { counter: await reserve(device, MOST_MADE), at: moment(), salt: chance(SALT_BYTES) };
}

/* Whether a form that counted for itself was carried out before: only its answer was lost. Its counters are used. */
async function isCarriedOut(pairs, { device, counter }) {
  if (!pairs.some(([name]) => name === "made")) return false;
  return (await all("entries")).some((row) => row.device === device && row.counter === counter);
}

async function asked(method, address, pairs, fragment) {
  const url = new URL(address, location.origin);
  const named = ["device", "theme", "mark", "alarms", "notes", "after_seal", "https"].map(meta);
  const [person, device, theme, mark, alarms, notes, afterSeal, https] = await Promise.all([who(), ...named]);
  const made = method === "POST" ? await counting(pairs, device) : { counter: 1, at: moment(), salt: "" };
  return {
    method, path: url.pathname, query: Object.fromEntries(url.searchParams), form: texts(pairs),
    files: await pictures(pairs), fragment, person,
    device: device ?? "", today: today(), theme: theme ?? "", mark: mark ?? "", form_token: "",
    alarms: alarms ?? [], notes: notes ?? {}, after_seal: afterSeal ?? [],
    https_way: https ? https + (method === "POST" ? "/" : url.pathname + url.search) : "", ...made,
    ...await signedHere(pairs, person),
  };
}

function isJpeg(data) {
  return data[0] === 0xff && data[1] === 0xd8;
}

async function keep(request, said) {
  const reserved = request.counter + MOST_MADE - 1;
  const used = Math.max(request.counter - 1, ...said.keep.map((body) => JSON.parse(body))
    .filter(({ device }) => device === request.device).map(({ counter }) => counter));
  const rows = said.parts.map(([name, data]) => partOf(name, data, { mime: isJpeg(data) ? MIME : "" }));
  if (said.keep.length || rows.length) await keepAll(said.keep, rows);
  await giveBack(request.device, reserved, used);
  if (said.keep.length === 0) return;
  changed();
  soon();
}

/* While the checks were starting, news may have told that the server had carried the form out. */
async function answered(how, request, form) {
  const said = () => answeredAndSigned(request, (told) => ask({ do: "answer", request: told }));
  request.arrived = how === "POST" && await isCarriedOut(form, request);
  const first = await said();
  if (how !== "POST" || request.arrived || !(await isCarriedOut(form, request))) return first;
  request.arrived = true;
  return said();
}

/* The answer as the server would give it, and the address at which it ends. `pairs` are the fields of a form. */
export async function answerHere(method, address, pairs = [], fragment = false) {
  let [how, where, form] = [method, address, pairs];
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const request = await asked(how, where, form, fragment);
    await bringUpToDate();
    const said = await answered(how, request, form);
    if (how === "POST" && !request.arrived) await keep(request, said);
    if (!said.location) return { ...said, address: where };
    [how, where, form] = ["GET", said.location, []];
  }
  throw new Error(`${address} leads nowhere`);
}
