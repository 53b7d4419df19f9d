/* Enrols somebody on this phone: makes his key, has its public half registered beside his PIN, keeps the rest here. Then
   the phone's screen lock is offered, where there is one and he is the one signed in. */

import { isHere, makeLock } from "./lock.js";
import { makeKey } from "./phone_key.js";
import { write } from "./phone_store.js";

const CANNOT = "This browser keeps no keys at this address: open the page by https.";
const MAKING = "The key is being made …";
const DONE = "Enrolled on this phone.";
const AWAY = "The server cannot be reached. Enrolling needs it.";

function say(form, words, fault = false) {
  const place = form.querySelector("[data-enrol-says], [data-lock-says]");
  place.textContent = words;
  place.classList.toggle("fault", fault);
}

async function sent(address, body) {
  const headers = { Accept: "application/json" };
  const answer = await fetch(address, { method: "POST", headers, body }).catch(() => null);
  if (!answer) throw new Error(AWAY);
  const said = await answer.json().catch(() => ({}));
  if (!answer.ok) throw new Error(said.words ?? `The server said ${answer.status}.`);
  return said;
}

async function enrol(form) {
  if (!window.isSecureContext || !crypto.subtle) throw new Error(CANNOT);
  say(form, MAKING);
  const made = await makeKey(form.elements.pin.value.trim());
  const fields = new URLSearchParams(new FormData(form));
  fields.set("public", made.public);
  const { ask, ...said } = await sent(form.action, fields);
  const kept = { ...made.kept, ...said, wrong: 0, tried_at: 0, at: Date.now() };
  await write(["keys"], ({ keys }) => { keys.put(kept, kept.person.id); });
  return { ask, kept };
}

async function addLock({ ask, kept }, token) {
  const made = await makeLock(ask);
  const lock = await sent("/enrol/lock", new URLSearchParams({ form_token: token, key: kept.id, ...made }));
  await write(["keys"], ({ keys }) => { keys.put({ ...kept, lock: { ...lock, at: Date.now() } }, kept.person.id); });
}

/* A phone wants a tap of its own for its screen lock. */
function offer(form, found) {
  const box = document.querySelector("[data-lock-offer]");
  const make = box.querySelector("[data-lock-make]");
  form.hidden = true;
  box.hidden = false;
  box.querySelector("h2").focus();
  box.querySelector("[data-lock-not]").addEventListener("click", () => location.reload());
  make.addEventListener("click", async () => {
    make.disabled = true;
    try {
      await addLock(found, form.elements.form_token.value);
      location.reload();
    } catch (fault) {
      say(box, fault.message, true);
    } finally {
      make.disabled = false;
    }
  });
}

async function submitted(form) {
  const button = form.querySelector("button");
  button.disabled = true;
  try {
    const found = await enrol(form);
    say(form, DONE);
    form.elements.pin.value = "";
    if (found.ask && await isHere()) offer(form, found);
    else location.reload();
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
