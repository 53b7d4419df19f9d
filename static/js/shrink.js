/* A photograph is made small, turned upright and rid of what the camera hid in it. */

const LONGEST_SIDE = 1600;
export const MIME = "image/jpeg";
const QUALITY = 0.85;

const [START, SCAN, PLAIN, FRAME] = [0xd8, 0xda, 0xe0, [0xc0, 0xc1, 0xc2]];
const HIDING = (mark) => (mark > PLAIN && mark <= 0xef) || mark === 0xfe; // other people's segments, and remarks

/* Whether a picture is small and bare already: made so before, it stays as it is, so that a form that is sent twice
   names one picture. */
export function isSmall(data) {
  if (data[0] !== 0xff || data[1] !== START || data.at(-2) !== 0xff || data.at(-1) !== 0xd9) return false;
  let fits = false;
  for (let at = 2; at + 9 < data.length && data[at] === 0xff;) {
    const mark = data[at + 1];
    if (mark === SCAN) return fits;
    if (HIDING(mark) || (mark === PLAIN && data[at + 2] * 256 + data[at + 3] !== 16)) return false;
    const sides = [data[at + 5] * 256 + data[at + 6], data[at + 7] * 256 + data[at + 8]];
    if (FRAME.includes(mark)) fits = Math.max(...sides) <= LONGEST_SIDE;
    at += 2 + data[at + 2] * 256 + data[at + 3];
  }
  return false;
}

/* The bytes of a picture as they are kept. */
export async function shrunk(file) {
  const brought = new Uint8Array(await file.arrayBuffer());
  return isSmall(brought) ? brought : drawnSmall(file);
}

async function drawnSmall(file) {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const pen = canvas.getContext("2d");
  pen.fillStyle = "#fff";
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const blob = await new Promise((done) => { canvas.toBlob(done, MIME, QUALITY); });
  if (!blob) throw new Error("the picture cannot be written");
  return bared(new Uint8Array(await blob.arrayBuffer()));
}

/* Browsers add a profile of colours that every screen has anyway. */
function bared(data) {
  const kept = [data.subarray(0, 2)];
  let at = 2;
  while (at + 4 < data.length && data[at + 1] !== SCAN) {
    const next = at + 2 + data[at + 2] * 256 + data[at + 3];
    if (!HIDING(data[at + 1])) kept.push(data.subarray(at, next));
    at = next;
  }
  kept.push(data.subarray(at));
  const made = new Uint8Array(kept.reduce((sum, { length }) => sum + length, 0));
  kept.reduce((offset, piece) => { made.set(piece, offset); return offset + piece.length; }, 0);
  return made;
}
