// What the form asks of the device: its sheet, its draft, and what becomes of them.
import { all, change, get, put, write } from "./store.js";
import { openText, seal } from "./keys.js";
import { at, keyOf } from "./people.js";
import { clockShift, sheet as sheetOf } from "./round.js";
import { enqueue, states } from "./queue.js";

export { keep as keepPhoto, thumbnail, drop as dropPhoto } from "./photos.js";

let closed = () => {};
let kept = () => {};

// Whoever shows the form hears when a visit was closed and when a draft was kept.
export const onClosed = (told) => { closed = told; };
export const onKept = (told) => { kept = told; };

export const sheet = (site) => sheetOf(at(), site);
export const shift = () => clockShift();
export const drafts = async () => (await all("drafts")).sort((a, b) => b.at - a.at);

const keyNow = () => {
  const key = keyOf(at());
  if (!key) throw new Error("Nobody is at this tablet.");
  return key;
};

export async function draft(id) {
  const row = await get("drafts", id);
  return row ? openText(keyNow(), row.sealed) : null;
}

export async function issues(id) {
  const row = await get("drafts", id);
  return JSON.stringify(row?.issues ?? []);
}

// What was typed since the draft was last kept, by visit and field. Keys go to the disk by themselves, before the form has heard
// of them: a tablet that dies while the form is busy loses none.
const typing = new Map();
let noting = Promise.resolve();

function note(id) {
  noting = noting.then(async () => {
    const entries = typing.get(id);
    if (!entries?.size || !keyOf(at())) return;
    await put("typed", { id, sealed: await seal(keyNow(), JSON.stringify([...entries].map(([key, entry]) => ({ key, ...entry })))) });
  }).catch((error) => console.error(error));
}

// Listens to the keys of the form that is shown.
export function noteTyping(place, id) {
  place.addEventListener("input", ({ target }) => {
    const key = target.dataset?.key;
    if (!key) return;
    if (!typing.has(id)) typing.set(id, new Map());
    typing.get(id).set(key, { text: target.value, unit: target.dataset.unit ?? null });
    note(id);
  });
}

// What was typed into a draft after it was last kept, as JSON.
export async function typed(id) {
  const row = await get("typed", id);
  return row ? openText(keyNow(), row.sealed) : "[]";
}

// Kept when this resolves: the transaction is complete by then. What the draft holds by now need not be noted any longer.
export async function keep(id, site, siteName, json) {
  const entries = typing.get(id);
  const { fields } = JSON.parse(json);
  for (const [key, { text }] of entries ?? []) {
    if ((fields[key]?.typing ?? fields[key]?.text ?? "") === text) entries.delete(key);
  }
  const sealed = await seal(keyNow(), json);
  const person = at();
  await write(["drafts", "typed"], (drafts, notes) => {
    drafts.get(id).onsuccess = ({ target: { result: row } }) => {
      if (row?.closed) return;
      drafts.put({ id, site, siteName, person, at: Date.now(), sealed, issues: row?.issues });
      if (!entries?.size) notes.delete(id);
    };
  });
  kept(Date.now());
}

export async function close(id, version, site, siteName, document, photos) {
  await enqueue({ id, version, site, siteName, person: at(), document, photos });
  closed(id);
}

// Whether a visit may be opened again to amend it: one that still waits here has not arrived yet. The closed draft of one that has
// makes room; its text is on the server and among the last visits.
export async function mayAmend(id) {
  const sent = await get("queue", id);
  if (sent && sent.state !== states.server && sent.state !== states.mailed) return false;
  if ((await get("drafts", id))?.closed) await write(["drafts", "typed"], (rows, notes) => { rows.delete(id); notes.delete(id); });
  return true;
}

export const openVisit = (site, id) => { location.hash = "#/amend/" + encodeURIComponent(site) + "/" + id; };

export async function discard(id) {
  const row = await get("drafts", id);
  if (row) await put("drafts", { ...row, thrownAway: Date.now() });
}

export async function restore(id) {
  await change("drafts", id, (row) => row && { ...row, thrownAway: undefined });
}
