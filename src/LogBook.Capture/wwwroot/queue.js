// The way of a closed visit: on this device, on the server, e-mailed. A state is written only after the step it tells of is done.
import { all, change, get, read, write } from "./store.js";
import { openBytesForDevice, openForDevice, sealForDevice, sha256 } from "./keys.js";
import { ask, clockShift } from "./round.js";

export const states = Object.freeze({ device: "device", server: "server", mailed: "mailed", refused: "refused", conflict: "conflict", settled: "settled" });
const keptDays = 7;

// Now by this device's clock and by the server's. Either may be wrong: the one is set right later, and by how much it is off was known
// at the last round. How long ago something was is the least that it can be, so that nothing is forgotten too soon and no time is negative.
async function moments() {
  const now = Date.now();
  return [now, now + await clockShift()];
}

export const latest = async () => Math.max(...await moments());
const earliest = async () => Math.min(...await moments());
const watchers = new Set();

export const watch = (told) => { watchers.add(told); return () => watchers.delete(told); };
const tell = () => { for (const told of watchers) told(); };
export const inOrder = (rows) => rows.sort((a, b) => b.closedAt - a.closedAt);
export const visits = async () => inOrder(await all("queue"));

const isDone = (row) => row.state === states.server || row.state === states.mailed || row.state === states.settled;

// Whether a visit waits for the server, or for its person.
export const isOpen = (row) => !isDone(row);

// Puts a closed visit into the queue and marks its draft as closed, both or neither. Refused while another text of it stands here:
// only one that came back, or the next version of one that arrived, takes its place.
export async function enqueue({ id, version, site, siteName, person, document, photos }) {
  const sealed = await sealForDevice(document);
  const hash = await sha256(document);
  await write(["queue", "drafts", "typed"], (queue, drafts, typed) => {
    queue.get(id).onsuccess = ({ target: { result: standing } }) => {
      const gives = !standing || standing.state === states.refused || (isDone(standing) && version > standing.version);
      if (!gives) return queue.transaction.abort();
      queue.put({ id, version, site, siteName, person, photos, sent: [], sealed, sha256: hash, state: states.device, closedAt: Date.now() });
      typed.delete(id);
      drafts.get(id).onsuccess = ({ target: { result: draft } }) => {
        if (draft) drafts.put({ ...draft, closed: true, issues: undefined, untouched: undefined });
      };
    };
  });
  tell();
}

// Notes what became of the very text that was sent: an answer to an older one says nothing of a newer one.
const note = async ({ id, sha256: sent }, more) => {
  await change("queue", id, (row) => row?.sha256 === sent && { ...row, ...more });
  tell();
};

const photosOf = (visit) => read("photos", (rows) => rows.index("visit").getAll(visit));

// Back to the form: what the server said stands beside the fields.
async function giveBack(row, issues) {
  const sealed = await sealForDevice(JSON.stringify(issues));
  await write(["queue", "drafts"], (queue, drafts) => {
    queue.get(row.id).onsuccess = ({ target: { result: standing } }) => {
      if (standing?.sha256 !== row.sha256) return;
      queue.put({ ...standing, state: states.refused, problem: undefined });
      drafts.get(row.id).onsuccess = ({ target: { result: draft } }) => {
        if (draft) drafts.put({ ...draft, closed: false, issues: sealed });
      };
    };
  });
  tell();
}

async function sendPhotos(row) {
  for (const photo of row.photos.filter((photo) => !row.sent.includes(photo))) {
    const kept = await get("photos", photo);
    if (!kept) return { problem: "photo-missing", photo };
    const answer = await ask(row.person, "/photos/" + photo, { method: "POST", headers: { "Content-Type": kept.type }, body: await openBytesForDevice(kept.sealed) });
    if (!answer.ok) return { problem: "photo", status: answer.status, photo };
    row = { ...row, sent: [...row.sent, photo] };
    await note(row, { sent: row.sent });
  }
  return {};
}

// Answers that another try may change; any other 4xx stands.
const mayPass = new Set([401, 408, 425, 429]);

// Whether a photo will never arrive by itself: lost here, or refused for good.
export const isStuck = (row) => row.state === states.device && Boolean(row.photo)
  && (row.problem === "photo-missing" || (row.problem === "photo" && row.status >= 400 && row.status < 500 && !mayPass.has(row.status)));

// The person goes on without the photo that is stuck; the others are sent, and the row says how many it went without.
export async function goOnWithout(id, photo) {
  await change("queue", id, (row) => row && isStuck(row) && row.photo === photo && {
    ...row, photos: row.photos.filter((other) => other !== photo), without: [...(row.without ?? []), photo], problem: undefined, status: undefined, photo: undefined,
  });
  tell();
}

const noSignal = Symbol("no signal");

async function post(row) {
  const body = await openForDevice(row.sealed);
  const headers = { "Content-Type": "application/json", "Idempotency-Key": row.id + "/" + row.version };
  return ask(row.person, "/visits", { method: "POST", headers, body }).catch(() => noSignal);
}

// The server holds these very words: it is there once the photos are, too.
async function finish(row) {
  const { problem, status, photo } = await sendPhotos(row);
  await note(row, problem ? { problem, status, photo } : { state: states.server, problem: undefined, status: undefined, photo: undefined, receivedAt: await latest() });
}

// Another text stands under this identity. The server keeps this one beside it, and takes its photos: they may be wanted.
async function contest(row) {
  await note(row, { state: states.conflict, problem: undefined });
  await sendPhotos(row);
}

// One visit as far as it goes now. Returns whether the server could be reached; what is wrong with one visit holds up no other.
async function sendOne(row) {
  try {
    const answer = await post(row);
    if (answer === noSignal) { await note(row, { problem: "no-signal" }); return false; }
    const said = await answer.json().catch(() => null);
    if (answer.status === 422) await giveBack(row, said?.issues ?? []);
    else if (answer.status === 409) await contest(row);
    else if (answer.status === 401 || answer.status === 403) await note(row, { problem: "signed-out" });
    else if (!answer.ok) await note(row, { problem: "server", status: answer.status });
    // The hash is the proof that the server holds these very words; without it the visit stays here.
    else if (said?.sha256 !== row.sha256) await note(row, { problem: "receipt" });
    else await finish(row);
  } catch (error) {
    console.error(error);
    await note(row, { problem: error instanceof TypeError ? "no-signal" : "unreadable" });
  }
  return true;
}

// What became of it later: mailed, or a conflict that a supervisor settled with the text of this device.
async function follow(row) {
  try {
    const answer = await ask(row.person, "/visits/" + row.id + "/standing");
    if (!answer.ok) return;
    const standing = await answer.json();
    if (row.state === states.conflict) {
      const { problem } = await sendPhotos(row);
      const decided = standing.settled?.[row.sha256];
      // Its words became the next version, or stay on the server beside those that stand: either way nothing waits here any more.
      // A picture that this device has lost cannot come any more.
      if (decided && (!problem || problem === "photo-missing")) return await note(row, { state: decided === "TakeOther" ? states.server : states.settled, problem: undefined, receivedAt: await latest() });
    }
    if (standing.sha256 !== row.sha256) return;
    if (row.state === states.conflict) await finish(row);
    else if (standing.mailsAccepted > 0 && standing.mailsWaiting === 0) await note(row, { state: states.mailed });
  } catch {
    // Told another time.
  }
}

async function forgetOld() {
  const before = await earliest() - keptDays * 86_400_000;
  const rows = await visits();
  const old = rows.filter((row) => isDone(row) && row.receivedAt < before).map((row) => row.id);
  const discarded = (await all("drafts")).filter((draft) => draft.thrownAway < before && !rows.some((row) => row.id === draft.id)).map((draft) => draft.id);
  for (const id of [...old, ...discarded]) {
    const photos = await photosOf(id);
    await write(["queue", "drafts", "photos", "typed"], (queue, drafts, pictures, typed) => {
      queue.get(id).onsuccess = ({ target: { result: row } }) => {
        if (row && !isDone(row)) return;
        drafts.get(id).onsuccess = ({ target: { result: draft } }) => {
          queue.delete(id);
          // Opened again since, to amend it: nothing of that has arrived. Which photos it names only its person can read; all stay.
          if (draft && !draft.closed && !(draft.thrownAway < before)) return;
          drafts.delete(id);
          typed.delete(id);
          for (const photo of photos) pictures.delete(photo.id);
        };
      };
    });
  }
}

// Sends what waits. One tab at a time does it; a second call meanwhile does nothing, and the server knows a visit that comes twice.
export function send() {
  return navigator.locks.request("logbook-send", { ifAvailable: true }, async (lock) => {
    if (!lock) return true;
    for (const row of (await visits()).reverse()) {
      if (row.state === states.device && !(await sendOne(row))) return false;
      if (row.state === states.server || row.state === states.conflict) await follow(row);
    }
    await forgetOld();
    return true;
  });
}

const soonest = 5_000;
const longest = 120_000;

// Tries again by itself: "online" may never be told.
export function keepSending() {
  let wait = soonest;
  let timer;
  const next = async () => {
    clearTimeout(timer);
    try {
      const reached = await send();
      const waiting = (await visits()).some((row) => row.state === states.device || row.state === states.server);
      wait = reached ? (waiting ? soonest * 6 : longest) : Math.min(wait * 2, longest);
    } catch (error) {
      console.error(error);
      wait = Math.min(wait * 2, longest);
    } finally {
      clearTimeout(timer);
      timer = setTimeout(next, wait);
    }
  };
  addEventListener("online", () => { wait = soonest; next(); });
  document.addEventListener("visibilitychange", () => { if (document.visibilityState === "visible") next(); });
  next();
  return next;
}
