/* The start of everything that makes this phone go on alone. The page is usable before any of it runs. */

import { device, person } from "./device.js";
import { moveIn } from "./move_in.js";
import { remember } from "./phone_store.js";
import { changed, sync } from "./sync.js";
import { askToKeep } from "./room.js";
import { tellFull, watchRoom } from "./tell_full.js";
import "./alarm.js";
import "./alone.js";
import "./bar.js";
import "./offline.js";
import "./parity.js";
import "./photo_here.js";
import "./service.js";
import "./token.js";

const ROOM_MS = 60_000;

/* Who this page belongs to, for the pages that this phone makes by itself. A page made here says nothing new. */
async function noteWho() {
  if (document.documentElement.dataset.from === "phone" || document.querySelector("main.on-phone")) return;
  await remember({
    person: person(), theme: document.documentElement.dataset.theme ?? "",
    mark: document.querySelector(".page-mark")?.textContent ?? "",
  });
  if (!window.caches) return; // plain http has no service worker either
  const who = await caches.open("who"); // all that the service worker knows of people: whether there is one
  await (person() ? who.put("/who", new Response()) : who.delete("/who"));
}

async function begin() {
  try {
    await moveIn();
    await noteWho();
  } catch (fault) {
    tellFull(fault);
  }
  changed();
  if (!device()) return;
  askToKeep();
  watchRoom();
  setInterval(watchRoom, ROOM_MS);
  sync();
}

if (document.readyState === "complete") begin();
else addEventListener("load", begin);
