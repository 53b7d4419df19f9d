/* What a form says in its plain fields is made into entries by whoever carries it out: the server, or the checks on this
   phone. So that this comes to the same, also when its answer was lost and it is sent again, it brings counter, time and
   chance along, and its pictures as they will be kept. */

import { chance } from "./chance.js";
import { device } from "./device.js";
import { reserve } from "./keep.js";
import { MOST_MADE, SALT_BYTES, moment } from "./make.js";
import { MIME, shrunk } from "./shrink.js";

async function small(file) {
  try {
    return new File([await shrunk(file)], "photo.jpg", { type: MIME, lastModified: file.lastModified });
  } catch {
    return file; // no picture to this phone: the server says so at the field
  }
}

async function shrinkFiles(form) {
  for (const input of form.querySelectorAll('input[type="file"]')) {
    if (input.files.length === 0 || input.accept.includes("json")) continue;
    const files = new DataTransfer();
    for (const file of input.files) files.items.add(await small(file));
    input.files = files.files;
  }
}

/* The same again is the same form. A PIN is no part of it. */
function print(form) {
  const secret = new Set([...form.querySelectorAll('[type="password"]')].map(({ name }) => name));
  const told = (value) => (typeof value === "string" ? value : [value.size, value.lastModified]);
  return JSON.stringify([...new FormData(form)].filter(([name]) => !secret.has(name)).map(([name, value]) => [name, told(value)]));
}

export async function countAhead(form, held) {
  await shrinkFiles(form);
  const said = print(form);
  if (held.made && held.print === said) return;
  const counter = await reserve(device(), MOST_MADE).catch(() => 0);
  held.made = counter ? JSON.stringify({ at: moment(), counter, salt: chance(SALT_BYTES) }) : "";
  held.print = said;
}
