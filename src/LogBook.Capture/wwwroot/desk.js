// What the form asks of the device: its sheet, its draft, and what becomes of them.
import { all, change, get, put } from "./store.js";
import { openText, seal } from "./keys.js";
import { at, keyOf } from "./people.js";
import { clockShift, sheet as sheetOf } from "./round.js";
import { enqueue } from "./queue.js";

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

// Kept when this resolves: the transaction is complete by then.
export async function keep(id, site, siteName, json) {
  const sealed = await seal(keyNow(), json);
  const person = at();
  await change("drafts", id, (row) => (row?.closed ? null : { id, site, siteName, person, at: Date.now(), sealed, issues: row?.issues }));
  kept(Date.now());
}

export async function close(id, version, site, siteName, document, photos) {
  await enqueue({ id, version, site, siteName, person: at(), document, photos });
  closed(id);
}

export async function discard(id) {
  const row = await get("drafts", id);
  if (row) await put("drafts", { ...row, thrownAway: Date.now() });
}

export async function restore(id) {
  await change("drafts", id, (row) => row && { ...row, thrownAway: undefined });
}
