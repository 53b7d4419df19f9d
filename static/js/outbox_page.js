/* Fills the page of what is kept on this phone: how much waits, what the server did not take and why, and a file of
   it all. Nothing refused is taken away by itself: it is somebody's word. */

import { alone } from "./alone.js";
import { contact } from "./contact.js";
import { asFile, offerAll } from "./outbox.js";
import { all } from "./phone_store.js";
import { roomWords } from "./room.js";
import { changed } from "./sync.js";
import { counts, whatHolds } from "./waiting.js";

const ALONE = {
  ready: "This phone can go on with no network.",
  coming: "This phone cannot go on with no network yet: stay in reach until this line says so.",
  page: "By http only the page that is open goes on with no network.",
};
let file = "";

function count(number, one, many) {
  return number === 1 ? `1 ${one}` : `${number} ${many}`;
}

function said({ kept, sent, refused, photos, refusedPhotos }) {
  if (kept + sent + refused + photos + refusedPhotos === 0) return "Nothing waits: all entries are confirmed by the server.";
  const words = [
    kept ? `${count(kept, "entry is", "entries are")} kept here and not sent.` : "",
    sent ? `${count(sent, "entry is", "entries are")} sent and not confirmed yet.` : "",
    photos ? `${count(photos, "photograph is", "photographs are")} kept here and not sent.` : "",
    refused ? `${count(refused, "entry was", "entries were")} not taken by the server.` : "",
    refusedPhotos ? `${count(refusedPhotos, "photograph was", "photographs were")} too large for the server or no picture to it.` : "",
    kept + sent && contact.away ? "The server cannot be reached now." : "",
  ];
  return words.filter(Boolean).join(" ");
}

function line({ body, words, at }) {
  const { about, path } = JSON.parse(body);
  const made = document.createElement("p");
  made.className = "fault";
  made.textContent = `Not taken: ${path.join(", ").replaceAll("_", " ")} of ${about.join(" ")}, ${at.slice(0, 16).replace("T", " ")} UTC. ${words}`;
  return made;
}

/* A link that changes under the finger cannot be tapped: its address changes only with what is in it. */
async function offerFile(link, many) {
  link.hidden = many === 0;
  if (many === 0) return;
  const text = await asFile();
  if (text === file && link.href) return;
  file = text;
  if (link.href) URL.revokeObjectURL(link.href);
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = `kept-on-this-phone-${new Date().toISOString().slice(0, 16).replaceAll(":", "")}.json`;
}

async function show() {
  const place = document.querySelector('[data-behaviour~="outbox"]');
  if (!place) return;
  const part = (name) => place.querySelector(`[data-outbox-${name}]`);
  const found = await counts();
  const rows = (await all("entries")).filter(({ state }) => state === "refused");
  const { words } = await whatHolds();
  const waiting = found.kept + found.sent + found.photos;
  part("said").textContent = [said(found), ...(waiting ? words : [])].join(" ");
  part("room").textContent = await roomWords();
  part("alone").textContent = ALONE[alone()] ?? "";
  part("refused").replaceChildren(...rows.map(line));
  part("send").hidden = waiting === 0;
  part("send").onclick = () => offerAll().then(changed);
  part("install").hidden = !navigator.storage?.persisted || await navigator.storage.persisted();
  await offerFile(part("file"), waiting + found.refused + found.refusedPhotos);
}

function showAgain() {
  show().catch((fault) => console.error(fault));
}

document.addEventListener("phone:changed", showAgain);
document.addEventListener("htmx:afterSettle", showAgain);
showAgain();
