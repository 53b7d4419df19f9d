/* SHA-256 (FIPS 180-4), at once and without a promise. The browser's own is missing on plain http, and waiting for
   it would let a form be sent before its entries are made. */

const PRIMES = [];
for (let n = 2; PRIMES.length < 64; n += 1) if (PRIMES.every((prime) => n % prime !== 0)) PRIMES.push(n);

/* The first 32 bits of the fraction of a root, found in whole numbers so that no rounding can touch them. */
function fraction(prime, root) {
  const power = BigInt(root);
  const wanted = BigInt(prime) << (32n * power);
  let low = 0n;
  let high = 1n << 40n;
  while (high - low > 1n) {
    const middle = (low + high) >> 1n;
    if (middle ** power <= wanted) low = middle;
    else high = middle;
  }
  return Number(low & 0xffffffffn);
}

const START = PRIMES.slice(0, 8).map((prime) => fraction(prime, 2));
const ROUNDS = Int32Array.from(PRIMES, (prime) => fraction(prime, 3) | 0);

const turn = (word, by) => (word >>> by) | (word << (32 - by));

/* Hexadecimal digest of a Uint8Array. */
export function sha256(data) {
  const view = new DataView(padded(data).buffer);
  const state = Int32Array.from(START, (word) => word | 0);
  const words = new Int32Array(64);
  for (let at = 0; at < view.byteLength; at += 64) block(state, words, view, at);
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
}

/* The message, one bit, zeros, and its length in bits as the last 64 bits of a whole number of blocks. */
function padded(data) {
  const whole = new Uint8Array(Math.ceil((data.length + 9) / 64) * 64);
  whole.set(data);
  whole[data.length] = 0x80;
  const end = new DataView(whole.buffer, whole.length - 8);
  end.setUint32(0, Math.floor(data.length / 0x20000000));
  end.setUint32(4, (data.length << 3) >>> 0);
  return whole;
}

function block(state, words, view, at) {
  for (let t = 0; t < 16; t += 1) words[t] = view.getInt32(at + 4 * t);
  for (let t = 16; t < 64; t += 1) {
    const early = words[t - 15];
    const late = words[t - 2];
    const low = turn(early, 7) ^ turn(early, 18) ^ (early >>> 3);
    const high = turn(late, 17) ^ turn(late, 19) ^ (late >>> 10);
    words[t] = words[t - 16] + low + words[t - 7] + high;
  }
  let [a, b, c, d, e, f, g, h] = state;
  for (let t = 0; t < 64; t += 1) {
    const mixed = turn(e, 6) ^ turn(e, 11) ^ turn(e, 25);
    const chosen = (e & f) ^ (~e & g);
    const first = (h + mixed + chosen + ROUNDS[t] + words[t]) | 0;
    const second = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((word, n) => { state[n] += word; });
}
