/* A photograph is made small, turned upright and rid of what the camera hid in it. */

const LONGEST_SIDE = 1600;
export const MIME = "image/jpeg";
const QUALITY = 0.85;

/* The bytes of a picture as they are kept. */
export async function shrunk(file) {
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
  return new Uint8Array(await blob.arrayBuffer());
}
