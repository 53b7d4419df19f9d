/* A photograph that the server cannot show is shown from this phone, if it was taken here. */

import { get } from "./phone_store.js";

const ADDRESS = /^\/parts\/([0-9a-f]{64})$/;

async function show(picture) {
  const [, digest] = ADDRESS.exec(new URL(picture.src, location.href).pathname) ?? [];
  const part = digest ? await get("parts", digest) : null;
  if (!part?.data) return;
  const address = URL.createObjectURL(part.data instanceof Blob ? part.data : new Blob([part.data], { type: part.mime }));
  picture.addEventListener("load", () => URL.revokeObjectURL(address), { once: true });
  picture.src = address;
}

document.addEventListener("error", ({ target }) => {
  if (target.matches?.("img")) show(target).catch((fault) => console.error(fault));
}, true);
