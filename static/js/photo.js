/* Photographs are made small and without hidden data in the page, known by the digest of those bytes, and sent at
   once; the prompt then only names the digest. If that fails the file stays in its field and goes with the form. */

import { sha256 } from "./sha256.js";

const LONGEST_SIDE = 1600;
const MIME = "image/jpeg";
const QUALITY = 0.85;

async function shrunk(file) {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const pen = canvas.getContext("2d");
  pen.fillStyle = "#fff";
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const blob = await new Promise((done) => { canvas.toBlob(done, MIME, QUALITY); });
  if (!blob) throw new Error("the picture cannot be written");
  return new Uint8Array(await blob.arrayBuffer());
}

async function checked(answer) {
  if (!answer.ok) throw new Error(`the server said ${answer.status}`);
  return answer;
}

async function send(data) {
  const { credential } = await (await checked(await fetch("/device"))).json();
  const digest = sha256(data);
  const headers = { Authorization: `Bearer ${credential}`, "Content-Type": MIME };
  await checked(await fetch(`/parts/${digest}`, { method: "PUT", headers, body: data }));
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
  say(container, "Sending the photo …");
  try {
    container.dataset.part = await send(await shrunk(input.files[0]));
    container.dataset.mime = MIME;
  } catch {
    say(container, "The photo is not sent yet. It goes with the form.");
    return;
  }
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
