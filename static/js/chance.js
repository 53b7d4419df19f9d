/* Chance that nobody can guess, as hexadecimal text. Also on plain http, where randomUUID is missing. */

export function chance(count) {
  const drawn = crypto.getRandomValues(new Uint8Array(count));
  return Array.from(drawn, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
