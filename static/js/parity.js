/* After the server was reached: what this phone worked out for the task in sight, with all that it was made from, is
   held against what the server makes of it. The server keeps the outcome, and alarms where it is not the same. */

import { bytes } from "./canonical.js";
import { today } from "./answer_here.js";
import { asDevice } from "./contact.js";
import { ask, status } from "./engine.js";
import { meta, remember } from "./phone_store.js";
import { sha256 } from "./sha256.js";
import { bringUpToDate } from "./worlds.js";

const LONGEST_FAULT = 200;
let under = false;

const taskInSight = () => /^\/tasks\/([^/?]+)/.exec(location.pathname)?.[1] ?? "";
const code = () => document.querySelector('meta[name="floors"]')?.content.split("/").pop() ?? "";

async function compare(task) {
  await bringUpToDate();
  const { claim } = await ask({ do: "parity", task, today: today() });
  const name = sha256(bytes(claim));
  if (!claim || (await meta("compared")) === name) return;
  const headers = { "Content-Type": "application/json" };
  const body = `{"code":${JSON.stringify(code())},"claim":${claim}}`;
  await asDevice("/parity", { method: "PUT", headers, body });
  await remember({ compared: name });
}

/* What the checks said of their own build; nothing that somebody entered goes along. */
async function tellFault() {
  const words = await meta("fault");
  if (!words) return;
  const headers = { "Content-Type": "application/json" };
  await asDevice("/parity/fault", { method: "PUT", headers, body: JSON.stringify({ code: code(), words }) });
  await remember({ fault: null });
}

document.addEventListener("engine:fault", ({ detail }) => {
  remember({ fault: String(detail).slice(-LONGEST_FAULT) }).catch((fault) => console.error(fault));
});

document.addEventListener("phone:synced", () => tellFault().catch((fault) => console.error(fault)));
document.addEventListener("phone:synced", async () => {
  const task = taskInSight();
  if (under || !task || status().state !== "ready") return;
  under = true;
  try {
    await compare(task);
  } catch (fault) {
    console.error(fault); // the next sync tries again
  } finally {
    under = false;
  }
});
