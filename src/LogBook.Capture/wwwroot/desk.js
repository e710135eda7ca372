// What the form asks of the device: its sheet, its draft, and what becomes of them.
import { all, change, get, put, write } from "./store.js";
import { openForDevice, openText, seal } from "./keys.js";
import { at, keyOf } from "./people.js";
import { actions as actionsOf, clockShift, firmName as nameOf, phrases as phrasesOf, settings as settingsOf, sheet as sheetOf } from "./round.js";
import { enqueue, latest, states } from "./queue.js";
import { save } from "./rescue.js";

export { keep as keepPhoto, thumbnail, drop as dropPhoto } from "./photos.js";

let closed = () => {};
let kept = () => {};

// Whoever shows the form hears when a visit was closed and when a draft was kept.
export const onClosed = (told) => { closed = told; };
export const onKept = (told) => { kept = told; };

export const sheet = (site) => sheetOf(at(), site);
export const phrases = () => phrasesOf(at());
export const settings = () => settingsOf(at());
export const actions = (site) => actionsOf(at(), site);
export const firmName = () => nameOf(at());
export const saveFile = (name, type, bytes) => save(name, new Blob([bytes], { type }));
export const shift = () => clockShift();
export const inOrder = (rows) => rows.sort((a, b) => b.at - a.at);
export const drafts = async () => inOrder(await all("drafts"));
export const isBegun = (row) => !row.closed && !row.thrownAway && !row.untouched;

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
  return row?.issues ? openForDevice(row.issues) : "[]";
}

// What was typed since the draft was last kept, by visit and field. Keys go to the disk by themselves, before the form has heard
// of them: a tablet that dies while the form is busy loses none.
const typing = new Map();

// Drafts in which nobody has entered anything yet; their rows say so, until the first key.
const untouched = new Set();

// Writes of notes and drafts go one after the other: a note on its way must not land behind the draft that holds a newer text.
let writing = Promise.resolve();

function inTurn(work) {
  const done = writing.then(work);
  writing = done.catch(() => {});
  return done;
}

// Done when all that was handed over is kept, or could not be.
export const settled = () => writing;

const sealNotes = (key, entries) => seal(key, JSON.stringify([...entries].map(([field, { text, unit }]) => ({ key: field, text, unit }))));

function note(id) {
  inTurn(async () => {
    const entries = typing.get(id);
    const key = keyOf(at());
    if (!entries?.size || !key) return;
    const notes = { id, sealed: await sealNotes(key, entries) };
    if (!untouched.has(id)) return put("typed", notes);
    // The first key makes a draft of it, also for whoever finds the tablet dead a moment later.
    await write(["typed", "drafts"], (typed, drafts) => {
      typed.put(notes);
      drafts.get(id).onsuccess = ({ target: { result: row } }) => { if (row) drafts.put({ ...row, untouched: undefined }); };
    });
    untouched.delete(id);
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
  // A field that is left has told the form: what it holds from now on, the draft knows better.
  place.addEventListener("change", ({ target }) => {
    const entry = typing.get(id)?.get(target.dataset?.key);
    if (entry) entry.left = true;
  });
}

// What was typed into a draft after it was last kept, as JSON.
export async function typed(id) {
  const row = await get("typed", id);
  return row ? openText(keyNow(), row.sealed) : "[]";
}

// Kept when this resolves: the transaction is complete by then. What the draft holds by now need not be noted any longer.
// Who is at the tablet counts when this is called: the person may be gone before the disk is done.
export function keep(id, site, siteName, json, isUntouched) {
  const row = { id, site, siteName, person: at(), untouched: isUntouched || undefined };
  const key = keyNow();
  const { fields } = JSON.parse(json);
  const entries = typing.get(id) ?? new Map();
  for (const [field, { text, left }] of entries) {
    if (left || (fields[field]?.typing ?? fields[field]?.text ?? "") === text) entries.delete(field);
  }
  return inTurn(() => keepDraft(row, key, json, entries));
}

async function keepDraft(row, key, json, entries) {
  const sealed = await seal(key, json);
  const notesLeft = entries.size > 0 && { id: row.id, sealed: await sealNotes(key, entries) };
  await write(["drafts", "typed"], (drafts, notes) => {
    drafts.get(row.id).onsuccess = ({ target: { result: standing } }) => {
      // Closed in another window: two texts of one visit must not come about.
      if (standing?.closed) return drafts.transaction.abort();
      drafts.put({ ...row, untouched: notesLeft ? undefined : row.untouched, at: Date.now(), sealed, issues: standing?.issues });
      if (notesLeft) notes.put(notesLeft);
      else notes.delete(row.id);
    };
  });
  if (row.untouched && !notesLeft) untouched.add(row.id);
  else untouched.delete(row.id);
  kept(Date.now());
}

// Drops what was opened at a site and left without an entry. Only for the window that holds the site: another one may have just opened a form.
export const dropUntouched = (site) => inTurn(() => write("drafts", (drafts) => {
  drafts.getAll().onsuccess = ({ target: { result: rows } }) => {
    for (const row of rows.filter((row) => row.untouched && !row.closed && row.site.toUpperCase() === site.toUpperCase())) {
      drafts.delete(row.id);
      untouched.delete(row.id);
    }
  };
}));

export async function close(id, version, site, siteName, document, photos) {
  await settled();
  typing.delete(id);
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

// Whether something is begun under this identity that nobody has thrown away, readable for whoever is at the tablet or not.
export async function hasBegun(id) {
  const row = await get("drafts", id);
  return Boolean(row && isBegun(row));
}

// The text of a closed visit, as it was or will be sent; null when none stands in the queue.
export async function closedText(id) {
  const row = await get("queue", id);
  return row ? openForDevice(row.sealed) : null;
}

export const openVisit = (site, id) => { location.hash = "#/amend/" + encodeURIComponent(site) + "/" + id + "/result"; };

export const isClosed = async (id) => Boolean((await get("drafts", id))?.closed);

// As with what arrived: by the later of both clocks, so that it is not forgotten too soon.
export async function discard(id) {
  const thrownAway = await latest();
  await change("drafts", id, (row) => row && { ...row, thrownAway });
}
export const restore = (id) => change("drafts", id, (row) => row && { ...row, thrownAway: undefined });
