/* Leaving for another address of this server, https above all. What a phone keeps belongs to the address under which
   it was kept: so the outbox is emptied first, and as long as it cannot be, nobody leaves it behind. */

import { asFile, offerAll, unsent } from "./outbox.js";

const FILE = "entries-kept-on-this-phone.json";
const AGAIN_MS = 3000;

function place(link) {
  const next = link.nextElementSibling;
  if (next?.matches("[data-kept]")) return next;
  const made = document.createElement("div");
  made.dataset.kept = "";
  made.className = "stack";
  made.setAttribute("role", "alert");
  link.after(made);
  return made;
}

async function file() {
  const link = document.createElement("a");
  link.className = "button button-wide";
  link.download = FILE;
  link.href = URL.createObjectURL(new Blob([await asFile()], { type: "application/json" }));
  link.setAttribute("hx-boost", "false");
  link.textContent = "Save them to a file";
  return link;
}

/* Said once for a count: a file link that changes under the finger cannot be tapped. */
async function say(link, items) {
  const kept = place(link);
  if (kept.dataset.kept === String(items.length)) return;
  kept.dataset.kept = String(items.length);
  const words = document.createElement("p");
  words.textContent = `${items.length} ${items.length === 1 ? "entry is" : "entries are"} still kept on this phone, `
    + "under this address. They must reach the server before you leave it: wait here near the network.";
  kept.replaceChildren(words, await file());
}

/* What waits; where nothing can be stored, nothing is kept here either. */
async function kept() {
  try {
    await offerAll();
    return await unsent();
  } catch {
    return [];
  }
}

async function untilLeft(link) {
  link.dataset.waiting = "";
  for (let items = await kept(); items.length > 0 && link.isConnected; items = await kept()) {
    await say(link, items);
    await new Promise((go) => setTimeout(go, AGAIN_MS));
  }
  delete link.dataset.waiting;
  if (link.isConnected) location.assign(link.href);
}

document.addEventListener("click", (event) => {
  const link = event.target.closest?.('[data-behaviour="move"]');
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  if (!("waiting" in link.dataset)) untilLeft(link);
});

const atOnce = document.querySelector('[data-behaviour="move"][data-at-once]');
if (atOnce) untilLeft(atOnce);
