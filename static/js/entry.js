/* Answers become entries in the page. They are on this phone before the form leaves; the form only brings them along,
   so that the server can answer at once with what they change. */

import { bytes } from "./canonical.js";
import { changedPrompts, notYetEntered, noteAnswered, noteMade } from "./changed.js";
import { device, person } from "./device.js";
import { keepSaid } from "./keep.js";
import { entry, moment } from "./make.js";
import { countAhead } from "./plain_fields.js";
import { sha256 } from "./sha256.js";
import { markSent } from "./sync.js";
import { keepStanding, tellFull, tellTaken } from "./tell_full.js";
import { whileKeeping } from "./turn_page.js";
import { endTyping } from "./typing.js";

const unsent = new WeakMap(); // form → what no answer has confirmed: { entries, parts, complete, made }
const holding = new WeakMap(); // form → until its last answers are kept

/* A phone that cannot keep anything says so; the form still brings what was said, counted from the clock. */
function unkept(said, fault) {
  const made = said.map((item, n) => {
    const one = entry(item, Date.now() + n, null);
    return { item, ...one, digest: sha256(bytes(one.body)) };
  });
  tellFull(fault, made);
  return made;
}

/* One after the other: a form sent again while its first answers are still being kept must bring those along, or the
   server would read the same answers from its plain fields and make them a second time. */
function hold(form) {
  const next = (holding.get(form) ?? Promise.resolve()).then(() => holdNow(form));
  holding.set(form, next.catch(() => {}));
  return next;
}

/* Keep what was changed, and count ahead for a form that lets the server or the checks make entries. */
async function holdNow(form) {
  const { changed, complete } = changedPrompts(form);
  const held = unsent.get(form) ?? { entries: [], parts: [] };
  unsent.set(form, held);
  const speaks = form.querySelector("[data-prompt]") !== null;
  held.complete = speaks && complete;
  noteAnswered(changed);
  const said = changed.map(({ container, prompt, now }) => (
    { container, prompt, now, about: prompt.about, path: prompt.path, author: person(), device: device() }));
  await keepStanding().catch(() => {});
  const made = said.length ? await keepSaid(said, entry).catch((fault) => unkept(said, fault)) : [];
  for (const { item, body, digest, parts } of made) {
    held.entries.push(body);
    held.parts.push(...parts);
    noteMade(item.container, digest, item.now);
  }
  if (held.complete) held.made = "";
  else await countAhead(form, held);
}

/* The hidden fields that go with a form: entries, parts, the word that no plain field is to be read again, the counter,
   time and chance for what is made of the rest, and what this phone's clock says, for the server to hold against its own. */
function fields(form) {
  const held = unsent.get(form);
  if (!held) return [];
  const all = [...(held.complete ? [["entries", "made"]] : []), ...(held.made ? [["made", held.made]] : [])];
  return [...all, ["now", moment()], ...held.entries.map((text) => ["entry", text]), ...held.parts.map((text) => ["part", text])];
}

function speaks(form) {
  return form && person() && device();
}

document.addEventListener("htmx:confirm", (event) => {
  const { verb, elt, issueRequest, triggeringEvent } = event.detail;
  const form = verb === "post" ? elt.closest?.("form") : null;
  if (!speaks(form)) return;
  event.preventDefault();
  if (triggeringEvent?.type === "submit") endTyping(form);
  whileKeeping(hold(form).then(() => issueRequest(true)));
});

document.addEventListener("htmx:configRequest", ({ detail }) => {
  const form = detail.verb === "post" ? detail.elt.closest?.("form") : null;
  if (!form || !unsent.has(form)) return;
  for (const { path } of notYetEntered(form)) leaveOut(detail.formData, path.join("/"));
  for (const [name, text] of fields(form)) detail.formData.append(name, text);
});

function leaveOut(data, name) {
  const own = [...data.keys()].filter((key) => key === name || key.startsWith(`${name}.`));
  own.forEach((key) => data.delete(key));
}

document.addEventListener("htmx:afterRequest", ({ detail }) => {
  const held = unsent.get(detail.requestConfig?.elt?.closest?.("form"));
  if (!held || !(detail.successful || detail.xhr?.status === 422)) return;
  held.made = "";
  const sent = new Set([...detail.requestConfig.formData.getAll("entry"), ...detail.requestConfig.formData.getAll("part")]);
  if (!detail.xhr.fromPhone) {
    tellTaken([...sent]);
    markSent(held.entries.filter((text) => sent.has(text)));
  }
  held.entries = held.entries.filter((text) => !sent.has(text));
  held.parts = held.parts.filter((text) => !sent.has(text));
});

/* A form that htmx does not send waits as well, and is then sent by its own button. */
document.addEventListener("submit", (event) => {
  const { target: form, submitter } = event;
  if (window.htmx || form.method !== "post" || !speaks(form) || form.dataset.held) return;
  event.preventDefault();
  endTyping(form);
  hold(form).then(() => {
    for (const [name, value] of fields(form)) {
      form.append(Object.assign(document.createElement("input"), { type: "hidden", name, value }));
    }
    form.dataset.held = "yes";
    form.requestSubmit(submitter);
  });
}, true);
