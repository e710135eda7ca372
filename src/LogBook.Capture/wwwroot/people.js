// Who uses this tablet. One person at a time is unlocked; the key lives in memory only and is gone with the page.
import { all, change, get, put } from "./store.js";
import { makeKey, openForDevice, reopen as reopenKey, rewrap, sealForDevice, unlock as unlockKey } from "./keys.js";
import { spoken } from "./texts.js";

const freeTries = 5;
const waitAfterTries = 30_000;
let present; // { code, key, second }

export const pinIsLongEnough = (pin) => /^\d{6,12}$/.test(pin);
export const people = () => all("people");
export const person = (code) => get("people", code);
export const at = () => present?.code;
export const keyOf = (code) => (present?.code === code ? present.key : undefined);
export const leave = () => { present = undefined; };

// Registers the person who is signed in at the server. An earlier registration keeps its key, so that no draft becomes unreadable.
export async function register(tablet, pin) {
  const answer = await fetch("/api/v1/tablets", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ name: tablet }),
  });
  if (answer.status === 401) return { signedOut: true };
  if (!answer.ok) return { refused: (await answer.json().catch(() => null))?.title ?? String(answer.status) };
  const given = await answer.json();
  const about = { name: given.name, tablet, token: await sealForDevice(given.token) };
  if (await person(given.person)) {
    // The server knows the person, so what waits may be sent, whether or not the PIN that opens the drafts is known.
    await change("people", given.person, (row) => ({ ...row, ...about }));
    const opened = await unlock(given.person, pin);
    return opened.code ? opened : { wrongPin: given.name };
  }
  const made = await makeKey(pin);
  // The words that the person has just registered with: the account may have a language that nobody chose.
  await put("people", { ...made.kept, ...about, language: spoken(), code: given.person, tries: 0 });
  present = { code: given.person, key: made.key, second: made.second };
  return { code: given.person };
}

// Unlocks a person. After some wrong tries each further one has to wait, also over a reload.
export async function unlock(code, pin, now = Date.now()) {
  const kept = await person(code);
  if (!kept) return { unknown: true };
  if (kept.waitUntil > now) {
    // A clock that was set back would make a wait of seconds one of days.
    if (kept.waitUntil - now > kept.wait) await change("people", code, (row) => ({ ...row, waitUntil: now + row.wait }));
    return { wait: Math.ceil(Math.min(kept.waitUntil - now, kept.wait ?? Infinity) / 1000) };
  }
  const opened = await unlockKey(kept, pin);
  if (!opened) {
    const tries = (kept.tries ?? 0) + 1;
    const wait = tries < freeTries ? 0 : waitAfterTries * 2 ** Math.min(tries - freeTries, 7);
    await change("people", code, (row) => ({ ...row, tries, wait, waitUntil: now + wait }));
    return wait ? { wait: wait / 1000 } : { wrong: true };
  }
  await change("people", code, (row) => ({ ...row, tries: 0, waitUntil: 0 }));
  present = { code, ...opened };
  return { code };
}

// Puts the drafts' key under a second one that only the server will keep; the maker of that lives as long as the person is here.
export const secondOf = (code) => (present?.code === code ? present.second : undefined);

// A person who forgot the PIN, with the second key that a supervisor released: the same drafts under a new PIN.
export async function reopen(code, { id, key }, newPin) {
  const seconds = (await person(code))?.seconds ?? [];
  const opened = await reopenKey(seconds.find((second) => second.id === id)?.sealed, key, newPin);
  if (!opened) return false;
  await change("people", code, (row) => ({ ...row, ...opened.kept, tries: 0, waitUntil: 0 }));
  present = { code, key: opened.key, second: opened.second };
  return true;
}

export async function changePin(code, oldPin, newPin) {
  const kept = await rewrap(await person(code), oldPin, newPin);
  if (kept) await change("people", code, (row) => ({ ...row, ...kept, tries: 0 }));
  return Boolean(kept);
}

// The language a person chose on this tablet: it is spoken again when they come back.
export const prefer = (code, language) => change("people", code, (row) => row && { ...row, language });

// The credential by which this device speaks for a person.
export async function credential(code) {
  const kept = await person(code);
  return kept?.token ? openForDevice(kept.token) : undefined;
}
