// Writes what waits and what was begun into a file that a supervisor takes in on the server, for when a tablet cannot send it any more.
import { openBytesForDevice, openForDevice, openText, sha256 } from "./keys.js";
import { at, keyOf, people } from "./people.js";
import { isOpen, states, visits } from "./queue.js";
import { all, get, read } from "./store.js";

const mostOfOne = 40_000_000; // characters of one file: the server takes 100 MiB, and a tablet has to hold it in memory twice

// Hands a file to the browser.
export function save(name, content) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // The browser reads it after this returns.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function base64(bytes) {
  const view = new Uint8Array(bytes);
  let text = "";
  for (let begin = 0; begin < view.length; begin += 0x8000) text += String.fromCharCode(...view.subarray(begin, begin + 0x8000));
  return btoa(text);
}

const packed = ({ iv, data }) => {
  const both = new Uint8Array(iv.length + data.byteLength);
  both.set(iv);
  both.set(new Uint8Array(data), iv.length);
  return base64(both);
};

const moment = (ms) => new Date(ms).toISOString();

async function visitOf(row, shift) {
  const document = await openForDevice(row.sealed);
  return { id: row.id, site: row.site, siteName: row.siteName, person: row.person, closedAt: moment(row.closedAt + shift), sha256: await sha256(document), document };
}

// As text for whoever is at the tablet; the drafts of others as they lie here, with their key as the server alone can open it.
async function draftOf(row, owner, shift) {
  const notes = await get("typed", row.id);
  const about = { id: row.id, site: row.site, siteName: row.siteName, person: row.person, name: owner?.name, keptAt: moment(row.at + shift) };
  const key = keyOf(row.person);
  if (!key) {
    const keys = await Promise.all((owner?.seconds ?? []).map(async ({ id, sealed }) => ({ id, sealed: base64(await openBytesForDevice(sealed)) })));
    return { ...about, sealed: packed(row.sealed), sealedTyped: notes && packed(notes.sealed), keys };
  }
  const text = await openText(key, row.sealed);
  return { ...about, text, typed: notes && await openText(key, notes.sealed), sha256: await sha256(text) };
}

async function photosOf(id) {
  const rows = await read("photos", (photos) => photos.index("visit").getAll(id));
  return Promise.all(rows.map(async (row) => {
    const bytes = await openBytesForDevice(row.sealed);
    return { id: row.id, visit: id, sha256: await sha256(bytes), data: base64(bytes) };
  }));
}

async function countPhotos(ids) {
  let count = 0;
  for (const id of ids) count += await read("photos", (photos) => photos.index("visit").count(id));
  return count;
}

// One visit or draft with its photos, or its site where this device cannot read it: the rest must not be lost for that.
async function tried(row, work) {
  try {
    return await work();
  } catch (error) {
    console.error(error);
    return { unreadable: row.site };
  }
}

const sizeOf = ({ visit, draft, photos }) => JSON.stringify(visit ?? draft).length + photos.reduce((sum, photo) => sum + photo.data.length, 0);

function shared(parts, most) {
  const files = [];
  let room = 0;
  for (const part of parts) {
    const size = sizeOf(part);
    if (files.length === 0 || size > room) {
      files.push([]);
      room = most;
    }
    files.at(-1).push(part);
    room -= size;
  }
  return files;
}

// Without anybody's PIN the file holds sealed drafts alone: what can be read in it, a finder must not get by a tap. What it lacks for
// that is counted.
export async function rescueFile(shift = 0, most = mostOfOne) {
  const [queue, drafts, known] = await Promise.all([visits(), all("drafts"), people()]);
  const open = drafts.filter((row) => !row.closed && !row.thrownAway && !row.untouched);
  // What came back is corrected in its draft, which may be newer than the text that was sent.
  const waiting = queue.filter((row) => isOpen(row) && !(row.state === states.refused && open.some((draft) => draft.id === row.id)));
  const present = at();
  const left = present ? { visits: 0, photos: 0 } : { visits: waiting.length, photos: await countPhotos(new Set([...waiting, ...open].map((row) => row.id))) };
  const parts = [];
  for (const row of present ? waiting : []) parts.push(await tried(row, async () => ({ visit: await visitOf(row, shift), photos: await photosOf(row.id) })));
  for (const row of open) {
    const hasVisit = parts.some((part) => part.visit?.id === row.id);
    parts.push(await tried(row, async () => ({
      draft: await draftOf(row, known.find((person) => person.code === row.person), shift),
      photos: present && !hasVisit ? await photosOf(row.id) : [],
    })));
  }
  const whole = parts.filter((part) => !part.unreadable);
  const unreadable = parts.map((part) => part.unreadable).filter(Boolean);
  const files = whole.length > 0 ? shared(whole, most) : [[]];
  // One moment for all of them: the page that takes them in knows by it that they belong together.
  const writtenAt = moment(Date.now() + shift);
  const day = writtenAt.slice(0, 10);
  files.forEach((file, index) => {
    const text = JSON.stringify({
      format: "logbook-rescue",
      version: 1,
      writtenAt,
      tablet: known.find((person) => person.code === present)?.tablet ?? known[0]?.tablet,
      by: present,
      part: index + 1,
      of: files.length,
      visitsLeft: left.visits,
      photosLeft: left.photos,
      unreadable: index === 0 ? unreadable : [],
      visits: file.map((part) => part.visit).filter(Boolean),
      drafts: file.map((part) => part.draft).filter(Boolean),
      photos: file.flatMap((part) => part.photos),
    });
    save("logbook-rescue-" + day + (files.length > 1 ? "-" + (index + 1) : "") + ".json", new Blob([text], { type: "application/json" }));
  });
  return {
    visits: whole.filter((part) => part.visit).length,
    drafts: whole.filter((part) => part.draft).length,
    photos: whole.reduce((sum, part) => sum + part.photos.length, 0),
    unreadable: unreadable.length,
    files: files.length,
    left,
  };
}
