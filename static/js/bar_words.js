/* The words below the bar. Times are of this phone's clock, read from a clock that is held against the server's. */

const QUIET_MS = 3 * 60_000;
const DAY_MS = 86_400_000;
const SKEW_S = 120;

function clock(at, now) {
  const time = new Date(at).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  if (now - at < DAY_MS) return time;
  return `${new Date(at).toLocaleDateString("en-GB", { day: "numeric", month: "long" })}, ${time}`;
}

/* When the server was last reached, once that is some minutes ago. */
export function reachedWords(at, now) {
  if (!at) return "The server has not been reached yet";
  return now - at < QUIET_MS ? "" : `Last reached the server ${clock(at, now)}`;
}

/* After a day: an expired certificate looks just like no network. */
export function whyWords(waited, protocol, trust) {
  if (waited < DAY_MS || protocol !== "https:") return "";
  const where = trust ? ` Open ${trust} to see.` : "";
  return `Unsent for a day. If the network is there, the server's certificate may be the reason.${where}`;
}

/* Who walks off too early finds no checks behind the shed. */
export function aloneWords(state, away) {
  if (state !== "coming") return "";
  if (away) return "The checks are not all on this phone yet. What you enter is kept; go back into reach";
  return "Stay in reach for now: the checks are still coming onto this phone";
}

function span(seconds) {
  if (seconds < 5_400) return `${Math.round(seconds / 60)} minutes`;
  if (seconds < 129_600) return `${Math.round(seconds / 3_600)} hours`;
  return `${Math.round(seconds / 86_400)} days`;
}

/* The times of entries are the phone's; one that is far off is said. */
export function clockWords(skew) {
  if (Math.abs(skew) < SKEW_S) return "";
  return `This phone's clock is ${span(Math.abs(skew))} ${skew > 0 ? "ahead of" : "behind"} the server's: set it`;
}
