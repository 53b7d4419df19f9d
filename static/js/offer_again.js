/* A server that was set back, because a backup was put in its place, is offered everything again that was made here. */

import { write } from "./phone_store.js";

export function offerAgain() {
  return write(["entries", "parts", "meta"], ({ entries, parts, meta: kept }) => {
    kept.delete("cursor");
    kept.get("device").onsuccess = ({ target }) => {
      const made = (target.result ?? "").slice(1); // the server's entries for this phone bear the same name but its letter
      for (const store of [entries, parts]) again(store, (row) => !row.device || row.device.slice(1) === made);
    };
  });
}

function again(store, ours) {
  store.index("state").openCursor().onsuccess = ({ target: { result: at } }) => {
    if (!at) return;
    const { value } = at;
    if (value.state === "confirmed" && ours(value) && (value.data !== null)) at.update({ ...value, state: "kept", number: null });
    at.continue();
  };
}
