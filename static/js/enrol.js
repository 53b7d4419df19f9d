/* Enrols somebody on this phone: makes his key, has its public half registered beside his PIN, keeps the rest here. */

import { makeKey } from "./phone_key.js";
import { write } from "./phone_store.js";

const CANNOT = "This browser keeps no keys at this address: open the page by https.";
const MAKING = "The key is being made …";
const DONE = "Enrolled on this phone.";
const AWAY = "The server cannot be reached. Enrolling needs it.";

function say(form, words, fault = false) {
  const place = form.querySelector("[data-enrol-says]");
  place.textContent = words;
  place.classList.toggle("fault", fault);
}

async function registered(form, open) {
  form.elements.public.value = open;
  const answer = await fetch(form.action, {
    method: "POST", headers: { Accept: "application/json" }, body: new URLSearchParams(new FormData(form)),
  }).catch(() => null);
  form.elements.public.value = "";
  if (!answer) throw new Error(AWAY);
  const said = await answer.json().catch(() => ({}));
  if (!answer.ok) throw new Error(said.words ?? `The server said ${answer.status}.`);
  return said;
}

async function enrol(form) {
  if (!window.isSecureContext || !crypto.subtle) throw new Error(CANNOT);
  say(form, MAKING);
  const made = await makeKey(form.elements.pin.value.trim());
  const said = await registered(form, made.public);
  await write(["keys"], ({ keys }) => {
    keys.put({ ...made.kept, ...said, wrong: 0, tried_at: 0 }, said.person.id);
  });
}

async function submitted(form) {
  const button = form.querySelector("button");
  button.disabled = true;
  try {
    await enrol(form);
    say(form, DONE);
    form.elements.pin.value = "";
    location.reload();
  } catch (fault) {
    say(form, fault.message, true);
  } finally {
    button.disabled = false;
  }
}

document.addEventListener("submit", (event) => {
  const form = event.target;
  if (form.matches?.('[data-behaviour="enrol"]')) {
    event.preventDefault();
    submitted(form);
  } else if (form.matches?.('[data-behaviour="unenrol"]')) {
    write(["keys"], ({ keys }) => { keys.delete(form.elements.person.value); });
  }
});
