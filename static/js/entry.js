/* Answers become entries in the page: before a form leaves, each changed prompt's exact bytes go into it. */

import { asTyped, bytes, canonical } from "./canonical.js";
import { device, nextCounter, ownEarlier, person, rememberOwn } from "./device.js";
import { hold, settle } from "./outbox.js";
import { promptOf, said, same } from "./said.js";
import { sha256 } from "./sha256.js";

const FORM = 1;
const answered = new WeakMap(); // container → what it said when its last entry was made
const unsent = new WeakMap(); // form → texts of entries and parts that no answer has confirmed

function hex(count) {
  const chance = crypto.getRandomValues(new Uint8Array(count));
  return Array.from(chance, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

function words(text, parts) {
  const part = canonical({ salt: hex(16), text: asTyped(text) });
  parts.push(part);
  return sha256(bytes(part));
}

/* The value that an answer is in an entry; its free text becomes a part. */
export function valueOf(answer, unit, parts) {
  if (answer === null) return { type: "withdrawn" };
  const { type, text } = answer;
  if (type === "dont_know" || type === "not_used") {
    return answer.reason ? { type, part: words(answer.reason, parts) } : { type };
  }
  if (type === "text") return { type, part: words(text, parts) };
  if (type === "photo") return answer;
  if (type !== "number") return { type, text };
  const value = { type, text, unit };
  if (answer.how) value.how = answer.how;
  if (answer.plus_minus) value.plus_minus = answer.plus_minus;
  return value;
}

function entry(prompt, value, replaces) {
  return canonical({
    form: FORM, about: prompt.about, path: prompt.path, value, replaces, author: person(), device: device(),
    counter: nextCounter(), at: `${new Date().toISOString().slice(0, 19)}Z`,
  });
}

/* What a prompt said before: at its last entry, or when the page came. A disagreement shows no answer. */
function before(container) {
  return answered.has(container) ? answered.get(container) : said(container, null, true);
}

/* The changed prompts, and whether all could be read here; the server reads the others. */
function changes(form) {
  const found = { changed: [], complete: true };
  for (const container of form.querySelectorAll("[data-prompt]")) {
    try {
      const was = before(container);
      const now = said(container, was);
      const untouched = now === null && promptOf(container).type === "photo";
      if (!same(now, was) && !untouched) found.changed.push({ container, now });
    } catch {
      found.complete = false;
    }
  }
  return found;
}

function make({ container, now }, made) {
  const prompt = promptOf(container);
  const replaces = [...new Set([...prompt.replaces, ...ownEarlier(prompt.about, prompt.path)])].sort();
  const parts = [];
  const text = entry(prompt, valueOf(now, prompt.unit, parts), replaces);
  const digest = sha256(bytes(text));
  hold(text, parts);
  made.entries.push(text);
  made.parts.push(...parts);
  rememberOwn(prompt.about, prompt.path, digest);
  answered.set(container, now);
  container.dataset.prompt = JSON.stringify({ ...prompt, replaces: [digest] });
  const seen = container.querySelector(`[name="${CSS.escape(`${prompt.path.join("/")}.seen`)}"]`);
  if (seen) seen.value = container.dataset.prompt;
}

/* The hidden fields that go with a form: entries, parts, and the word that no plain field is to be read again. */
function fields(form) {
  if (!person() || !device() || !form.querySelector("[data-prompt]")) return [];
  const { changed, complete } = changes(form);
  const made = unsent.get(form) ?? { entries: [], parts: [] };
  unsent.set(form, made);
  for (const change of changed) make(change, made);
  const all = complete ? [["entries", "made"]] : [];
  return [...all, ...made.entries.map((text) => ["entry", text]), ...made.parts.map((text) => ["part", text])];
}

document.addEventListener("htmx:configRequest", ({ detail }) => {
  const form = detail.verb === "post" ? detail.elt.closest?.("form") : null;
  for (const [name, text] of form ? fields(form) : []) detail.formData.append(name, text);
});

document.addEventListener("htmx:afterRequest", ({ detail }) => {
  const made = unsent.get(detail.requestConfig?.elt?.closest?.("form"));
  if (!made || !(detail.successful || detail.xhr?.status === 422)) return;
  const sent = new Set([...detail.requestConfig.formData.getAll("entry"), ...detail.requestConfig.formData.getAll("part")]);
  settle(made.entries.filter((text) => sent.has(text)));
  made.entries = made.entries.filter((text) => !sent.has(text));
  made.parts = made.parts.filter((text) => !sent.has(text));
});

document.addEventListener("submit", (event) => {
  for (const [name, value] of window.htmx ? [] : fields(event.target)) {
    event.target.append(Object.assign(document.createElement("input"), { type: "hidden", name, value }));
  }
}, true);
