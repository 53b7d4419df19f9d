/* One word with the server: who we are, whether it answered, and what its refusal means. */

import { device } from "./device.js";
import { meta, remember } from "./phone_store.js";

const LIMIT_MS = 20_000;
const LONGEST_WAIT_S = 300;
const STAYS = "What is kept here stays, and is sent again by itself";
export const contact = { away: false, signIn: false, words: "", unsent: "" };

/* The server cannot be reached, or asks to be left alone for a while. */
export class Wait extends Error {
  constructor(words, seconds = 0, status = 0) {
    super(words);
    this.seconds = Math.min(seconds, LONGEST_WAIT_S);
    this.status = status;
  }
}

/* Nobody is signed in on this phone any more: what it keeps stays until somebody is. */
export class SignIn extends Error {}

/* The batch was too large for the server. */
export class TooLarge extends Error {}

/* The server does not know what this phone last had from it. */
export class SetBack extends Error {}

/* What a refusal means for whoever holds the phone. */
function meant(status, words) {
  const own = status === 429 ? "The server asks to be left alone for a while" : `The server has a fault (${status})`;
  return `${(words || own).replace(/\.$/, "")}. ${STAYS}`;
}

const MEANS = { 401: SignIn, 409: SetBack, 413: TooLarge };

export async function reached(address, options) {
  const stop = new AbortController();
  const limit = setTimeout(() => stop.abort(), LIMIT_MS);
  try {
    const answer = await fetch(address, { cache: "no-store", redirect: "manual", ...options, signal: stop.signal });
    contact.away = false;
    return answer;
  } catch (fault) {
    contact.away = true;
    throw new Wait(fault.message);
  } finally {
    clearTimeout(limit);
  }
}

/* The secret of this device. A page of another device, or a server that no longer knows it, asks for a new one. */
async function credential(anew) {
  const known = await meta("credential");
  const here = device();
  if (known && !anew && (!here || (await meta("device")) === here)) return known;
  const answer = await reached("/device");
  if (!answer.ok) throw new SignIn();
  const said = await answer.json();
  await remember({ credential: said.credential, device: said.device });
  return said.credential;
}

async function send(address, options, anew) {
  const headers = { ...options.headers, Authorization: `Bearer ${await credential(anew)}` };
  return reached(address, { ...options, headers });
}

/* Ask as this device. Gives the answer, or says what stands against it. */
export async function asDevice(address, options = {}) {
  let answer = await send(address, options, false);
  if (answer.status === 401) answer = await send(address, options, true);
  if (answer.ok) return answer;
  if (answer.status === 422) return answer;
  const { words = "" } = await answer.json().catch(() => ({}));
  if (MEANS[answer.status]) throw new MEANS[answer.status](words || "too large for the server");
  throw new Wait(meant(answer.status, words), Number(answer.headers.get("Retry-After")) || 0, answer.status);
}
