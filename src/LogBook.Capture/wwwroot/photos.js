// Pictures of drafts: made small and without location before they are kept, since what is drawn anew carries nothing but its pixels.
import { get, put, remove } from "./store.js";
import { openBytesForDevice, sealForDevice, sha256 } from "./keys.js";

const longestSide = 1600;
const thumbSide = 160;
const type = "image/jpeg";

async function drawn(picture, side, quality) {
  const scale = Math.min(1, side / Math.max(picture.width, picture.height));
  const canvas = new OffscreenCanvas(Math.max(1, Math.round(picture.width * scale)), Math.max(1, Math.round(picture.height * scale)));
  canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
  return (await canvas.convertToBlob({ type, quality })).arrayBuffer();
}

const address = (bytes) => new Promise((resolve, reject) => {
  const reader = new FileReader();
  reader.onload = () => resolve(reader.result);
  reader.onerror = () => reject(reader.error);
  reader.readAsDataURL(new Blob([bytes], { type }));
});

// Keeps a picture; its hash, or null when it is none that this device can read.
export async function keep(id, visit, bytes) {
  let picture;
  try {
    picture = await createImageBitmap(new Blob([bytes]), { imageOrientation: "from-image" });
  } catch {
    return null;
  }
  const small = await drawn(picture, longestSide, 0.82);
  const thumb = await drawn(picture, thumbSide, 0.7);
  picture.close();
  await put("photos", { id, visit, type, sealed: await sealForDevice(small), thumb: await sealForDevice(thumb) });
  return sha256(small);
}

export async function thumbnail(id) {
  const kept = await get("photos", id);
  return kept ? address(await openBytesForDevice(kept.thumb)) : null;
}

export const drop = (id) => remove("photos", id);
