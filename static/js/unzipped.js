/* The files of a zip that was stored and not deflated, as ours are: name → bytes, read from its list at the end. */

const ENTRY = 0x02014b50;
const END = 0x06054b50;
const END_BYTES = 22;
const LOCAL_BYTES = 30;

export function unzipped(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = bytes.byteLength - END_BYTES; // ours has no comment
  if (end < 0 || view.getUint32(end, true) !== END) throw new Error("this is no zip of ours");
  const files = new Map();
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left -= 1) {
    if (view.getUint32(at, true) !== ENTRY || view.getUint16(at + 10, true) !== 0) throw new Error("a zip that was pressed");
    const [size, named, extra, said] = [view.getUint32(at + 24, true), ...[28, 30, 32].map((n) => view.getUint16(at + n, true))];
    const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + named));
    const local = view.getUint32(at + 42, true);
    const from = local + LOCAL_BYTES + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    files.set(name, bytes.subarray(from, from + size));
    at += 46 + named + extra + said;
  }
  return files;
}
