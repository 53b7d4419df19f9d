/* Photographs are made small and without hidden data in the page, known by the digest of those bytes, and kept on the
   phone; the prompt then only names the digest. They go to the server by themselves, before the entries that name
   them; where nothing can be kept the file stays in its field and goes with the form. */

import { contact } from "./contact.js";
import { keepPart } from "./keep.js";
import { sha256 } from "./sha256.js";
import { MIME, shrunk } from "./shrink.js";
import { sync } from "./sync.js";
import { tellFull } from "./tell_full.js";

const SENDING_MS = 4_000; // for the photo to be there before the answer that shows it

async function kept(data) {
  const digest = sha256(data);
  await keepPart(digest, new Blob([data], { type: MIME }), MIME);
  if (!contact.away) await Promise.race([sync(), new Promise((late) => { setTimeout(late, SENDING_MS); })]);
  return digest;
}

function say(container, words) {
  let place = container.querySelector("[data-photo-said]");
  if (!place) {
    place = Object.assign(document.createElement("p"), { className: "note" });
    place.dataset.photoSaid = "";
    place.setAttribute("role", "status");
    container.append(place);
  }
  place.textContent = words;
}

async function take(input, container) {
  say(container, "Keeping the photo …");
  let data = null;
  try {
    data = await shrunk(input.files[0]);
  } catch {
    say(container, "This phone cannot read the picture. It goes with the form.");
    return;
  }
  try {
    container.dataset.part = await kept(data);
  } catch (fault) {
    tellFull(fault);
    say(container, "The photo is not kept on this phone. It goes with the form.");
    return;
  }
  container.dataset.mime = MIME;
  input.value = "";
  say(container, "The photo is kept.");
  input.dispatchEvent(new Event("change", { bubbles: true }));
}

document.addEventListener("change", (event) => {
  const input = event.target;
  const container = input.closest?.("[data-prompt]");
  if (!container || !input.matches('[data-behaviour~="photo"]') || input.files.length === 0) return;
  event.stopPropagation();
  take(input, container);
}, true);
