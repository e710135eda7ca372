// Keys. The device's own key cannot be taken out of the browser; each person's key is wrapped by a PIN and by the device's key.
// A lost tablet is answered by revoking its credential: a short PIN only holds up who has the device in hands, it is no vault.
import { get, put } from "./store.js";

const iterations = 600_000; // PBKDF2 with SHA-256, as the OWASP password storage cheat sheet asks for
const aes = { name: "AES-GCM", length: 256 };
const text = new TextEncoder();
let own;

async function deviceKey() {
  // Two windows at the first start must not make two keys.
  own ??= navigator.locks.request("logbook-key", async () => {
    const kept = (await globalThis.logbookFirst)?.key ?? (await get("device", "key"))?.key;
    if (kept) return kept;
    const key = await crypto.subtle.generateKey(aes, false, ["encrypt", "decrypt"]);
    await put("device", { id: "key", key });
    return key;
  });
  try {
    return await own;
  } catch (error) {
    own = undefined;
    throw error;
  }
}

export async function seal(key, content) {
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const data = await crypto.subtle.encrypt({ name: "AES-GCM", iv }, key, typeof content === "string" ? text.encode(content) : content);
  return { iv, data };
}

const openBytes = (key, sealed) => crypto.subtle.decrypt({ name: "AES-GCM", iv: sealed.iv }, key, sealed.data);
export const openText = async (key, sealed) => new TextDecoder().decode(await openBytes(key, sealed));

export const sealForDevice = async (content) => seal(await deviceKey(), content);
export const openForDevice = async (sealed) => openText(await deviceKey(), sealed);
export const openBytesForDevice = async (sealed) => openBytes(await deviceKey(), sealed);

export async function sha256(content) {
  const bytes = typeof content === "string" ? text.encode(content) : content;
  return [...new Uint8Array(await crypto.subtle.digest("SHA-256", bytes))].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

async function pinKey(pin, salt, rounds) {
  const material = await crypto.subtle.importKey("raw", text.encode(pin), "PBKDF2", false, ["deriveKey"]);
  return crypto.subtle.deriveKey({ name: "PBKDF2", hash: "SHA-256", salt, iterations: rounds }, material, aes, false, ["encrypt", "decrypt"]);
}

const pack = (sealed) => { const both = new Uint8Array(12 + sealed.data.byteLength); both.set(sealed.iv); both.set(new Uint8Array(sealed.data), 12); return both; };
const unpack = (both) => { const bytes = new Uint8Array(both); return { iv: bytes.slice(0, 12), data: bytes.slice(12) }; };

async function wrap(raw, pin) {
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const inner = await seal(await pinKey(pin, salt, iterations), raw);
  return { salt, iterations, wrapped: await sealForDevice(pack(inner)) };
}

const usable = (raw) => crypto.subtle.importKey("raw", raw, aes, false, ["encrypt", "decrypt"]);

// The same key once more, under a second key that only the server will keep: for a person who forgets the PIN.
async function seconded(raw) {
  const second = crypto.getRandomValues(new Uint8Array(32));
  const inner = await seal(await usable(second), raw);
  return { id: await sha256(second), key: btoa(String.fromCharCode(...second)), sealed: await sealForDevice(pack(inner)) };
}

// A new person's key: what is kept of it, the key, and how it is put under a second one.
export async function makeKey(pin) {
  const raw = crypto.getRandomValues(new Uint8Array(32));
  return { kept: await wrap(raw, pin), key: await usable(raw), second: () => seconded(raw) };
}

// The key out of its second seal, under another PIN; null when that is not its second key.
export async function reopen(sealed, secondKey, newPin) {
  const inner = unpack(await openBytesForDevice(sealed));
  try {
    const second = Uint8Array.from(atob(secondKey), (letter) => letter.charCodeAt(0));
    const raw = new Uint8Array(await openBytes(await usable(second), inner));
    return { kept: await wrap(raw, newPin), key: await usable(raw), second: () => seconded(raw) };
  } catch {
    return null;
  }
}

async function unwrap(kept, pin) {
  const inner = unpack(await openBytesForDevice(kept.wrapped));
  try {
    return await openBytes(await pinKey(pin, kept.salt, kept.iterations), inner);
  } catch {
    return null; // Not this PIN.
  }
}

// The key under a PIN and how it is put under a second one, or null when it is another PIN.
export async function unlock(kept, pin) {
  const raw = await unwrap(kept, pin);
  return raw && { key: await usable(raw), second: () => seconded(raw) };
}

// The same key under another PIN, or null when the old one is wrong.
export async function rewrap(kept, oldPin, newPin) {
  const raw = await unwrap(kept, oldPin);
  return raw && wrap(raw, newPin);
}
