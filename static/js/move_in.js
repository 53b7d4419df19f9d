/* What an earlier version kept in the browser's small store moves into the phone's own. It is taken away there only
   after it is on the disk here. */

import { bytes } from "./canonical.js";
import { keepAll, partOf } from "./keep.js";

const FROM = { "entries kept on this phone": "kept", "entries not taken": "refused" };

function list(key) {
  try {
    return JSON.parse(localStorage.getItem(key) ?? "[]");
  } catch {
    return [];
  }
}

export async function moveIn() {
  for (const [key, state] of Object.entries(FROM)) {
    const items = list(key);
    if (items.length === 0) continue;
    const parts = items.flatMap((item) => Object.entries(item.parts).map(([name, text]) => partOf(name, bytes(text))));
    await keepAll(items.map(({ body }) => body), parts, { state });
    localStorage.removeItem(key);
  }
}
