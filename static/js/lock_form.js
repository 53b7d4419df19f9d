/* Where a signature is asked for and this phone's screen lock signs for whoever is chosen, it stands in place of the PIN.
   Without this script, or for anybody else, it is the PIN. */

import { person } from "./device.js";
import { isHere } from "./lock.js";
import { forgetOthers, lockOf } from "./lock_here.js";

const BOX = '[data-behaviour="lock"]';

async function ready(box) {
  if (box.dataset.ready) return;
  box.dataset.ready = "yes";
  if (!person() || !await lockOf(person()) || !await isHere()) return;
  const form = box.closest("form");
  const [pin, use] = [form.querySelector("[data-pin]"), form.querySelector("[data-lock-use]")];
  const signer = form.elements.signer;
  let byPin = Boolean(pin.querySelector("[aria-invalid]"));

  const show = () => {
    const his = signer.value === person();
    const byLock = his && !byPin;
    box.hidden = !byLock;
    form.elements.by.disabled = !byLock;
    pin.hidden = byLock;
    use.hidden = !his;
  };
  const turn = (to) => () => { byPin = to; show(); };
  box.querySelector("[data-lock-pin]").addEventListener("click", turn(true));
  use.addEventListener("click", turn(false));
  signer.addEventListener("change", show);
  show();
}

function look() {
  document.querySelectorAll(BOX).forEach((box) => { ready(box).catch((fault) => console.error(fault)); });
}

if (window.indexedDB && person()) forgetOthers(person()).catch((fault) => console.error(fault));
document.addEventListener("htmx:load", look);
look();
