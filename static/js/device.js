/* What this device remembers between pages: how many entries it has made, and the last one a person made at each
   prompt. Where nothing can be stored, a count that starts at the clock stays ahead of all counts before it. */

const COUNTER = "entries made";
const OWN = "own entries";
const MOST_REMEMBERED = 400;
let lastCounted = 0;

function meta(name) {
  return document.querySelector(`meta[name="${name}"]`)?.content ?? "";
}

export function device() {
  return meta("device");
}

export function person() {
  return meta("person");
}

function remembered(key) {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function remember(key, text) {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

/* Read and written in one go: two tabs count on from each other. A number used twice is marked, never lost. */
export function nextCounter() {
  const key = `${COUNTER} ${device()}`;
  const counted = Math.max(Number(remembered(key)) || 0, lastCounted);
  lastCounted = counted + 1;
  if (!remember(key, String(lastCounted))) lastCounted = Math.max(lastCounted, Date.now());
  return lastCounted;
}

function owned() {
  try {
    return new Map(JSON.parse(remembered(OWN) ?? "[]"));
  } catch {
    return new Map();
  }
}

function place(about, path) {
  return [person(), device(), ...about, ...path].join(" ");
}

/* The entry this person made last at this prompt, here or in another tab. */
export function ownEarlier(about, path) {
  const digest = owned().get(place(about, path));
  return digest ? [digest] : [];
}

export function rememberOwn(about, path, digest) {
  const known = owned();
  known.delete(place(about, path));
  known.set(place(about, path), digest);
  remember(OWN, JSON.stringify([...known].slice(-MOST_REMEMBERED)));
}
