// The way of a closed visit: on this device, on the server, e-mailed. A state is written only after the step it tells of is done.
import { all, change, get, read, write } from "./store.js";
import { openBytesForDevice, openForDevice, sealForDevice, sha256 } from "./keys.js";
import { ask } from "./round.js";

export const states = Object.freeze({ device: "device", server: "server", mailed: "mailed", refused: "refused", conflict: "conflict" });
const keptDays = 7;
const watchers = new Set();

export const watch = (told) => { watchers.add(told); return () => watchers.delete(told); };
const tell = () => { for (const told of watchers) told(); };
export const visits = async () => (await all("queue")).sort((a, b) => b.closedAt - a.closedAt);

// Puts a closed visit into the queue and marks its draft as closed, both or neither.
export async function enqueue({ id, version, site, siteName, person, document, photos }) {
  const sealed = await sealForDevice(document);
  const hash = await sha256(document);
  await write(["queue", "drafts"], (queue, drafts) => {
    queue.put({ id, version, site, siteName, person, photos, sent: [], sealed, sha256: hash, state: states.device, closedAt: Date.now() });
    drafts.get(id).onsuccess = (event) => {
      if (event.target.result) drafts.put({ ...event.target.result, closed: true });
    };
  });
  tell();
}

const note = async (id, more) => {
  await change("queue", id, (row) => row && { ...row, ...more });
  tell();
};

const photosOf = (visit) => read("photos", (rows) => rows.index("visit").getAll(visit));

// Back to the form: what the server said stands beside the fields.
async function giveBack(row, problem, issues) {
  await write(["queue", "drafts"], (queue, drafts) => {
    queue.put({ ...row, state: states.refused, problem, issues });
    drafts.get(row.id).onsuccess = (event) => {
      if (event.target.result) drafts.put({ ...event.target.result, closed: false, issues });
    };
  });
  tell();
}

async function sendPhotos(row) {
  for (const photo of row.photos.filter((photo) => !row.sent.includes(photo))) {
    const kept = await get("photos", photo);
    if (!kept) return { problem: "photo-missing" };
    const answer = await ask(row.person, "/photos/" + photo, { method: "POST", headers: { "Content-Type": kept.type }, body: await openBytesForDevice(kept.sealed) });
    if (!answer.ok) return { problem: "photo", status: answer.status };
    row = { ...row, sent: [...row.sent, photo] };
    await note(row.id, { sent: row.sent });
  }
  return {};
}

// One visit as far as it goes now. Returns whether the server could be reached.
async function sendOne(row) {
  let answer;
  try {
    answer = await ask(row.person, "/visits", {
      method: "POST",
      headers: { "Content-Type": "application/json", "Idempotency-Key": row.id + "/" + row.version },
      body: await openForDevice(row.sealed),
    });
    const said = await answer.json().catch(() => null);
    if (answer.status === 422) { await giveBack(row, "refused", said?.issues ?? []); return true; }
    if (answer.status === 409) { await note(row.id, { state: states.conflict, problem: "conflict", standing: said?.currentVersion }); return true; }
    if (!answer.ok) { await note(row.id, { problem: answer.status === 401 || answer.status === 403 ? "signed-out" : "server", status: answer.status }); return answer.status < 500; }
    // The hash is the proof that the server holds these very words; without it the visit stays here.
    if (said?.sha256 !== row.sha256) { await note(row.id, { problem: "receipt" }); return true; }
    const { problem, status } = await sendPhotos(row);
    if (problem) { await note(row.id, { problem, status }); return true; }
    await note(row.id, { state: states.server, problem: undefined, status: undefined, receivedAt: Date.now() });
    return true;
  } catch {
    await note(row.id, { problem: "no-signal" });
    return false;
  }
}

async function follow(row) {
  try {
    const answer = await ask(row.person, "/visits/" + row.id + "/standing");
    if (!answer.ok) return;
    const standing = await answer.json();
    if (standing.mailsAccepted > 0 && standing.mailsWaiting === 0) await note(row.id, { state: states.mailed });
  } catch {
    // Told another time.
  }
}

async function forgetOld(now) {
  for (const row of await visits()) {
    if ((row.state === states.server || row.state === states.mailed) && now - row.receivedAt > keptDays * 86_400_000) {
      const photos = await photosOf(row.id);
      await write(["queue", "drafts", "photos"], (queue, drafts, pictures) => {
        queue.delete(row.id);
        drafts.delete(row.id);
        for (const photo of photos) pictures.delete(photo.id);
      });
    }
  }
}

// Sends what waits. One tab at a time does it; a second call meanwhile does nothing, and the server knows a visit that comes twice.
export function send() {
  return navigator.locks.request("logbook-send", { ifAvailable: true }, async (lock) => {
    if (!lock) return true;
    for (const row of (await visits()).reverse()) {
      if (row.state === states.device && !(await sendOne(row))) return false;
      if (row.state === states.server) await follow(row);
    }
    await forgetOld(Date.now());
    return true;
  });
}

const soonest = 5_000;
const latest = 120_000;

// Tries again by itself: "online" may never be told.
export function keepSending() {
  let wait = soonest;
  let timer;
  const next = async () => {
    clearTimeout(timer);
    const reached = await send().catch(() => false);
    const waiting = (await visits()).some((row) => row.state === states.device || row.state === states.server);
    wait = reached ? (waiting ? soonest * 6 : latest) : Math.min(wait * 2, latest);
    timer = setTimeout(next, wait);
  };
  addEventListener("online", () => { wait = soonest; next(); });
  document.addEventListener("visibilitychange", () => { if (document.visibilityState === "visible") next(); });
  next();
  return next;
}
