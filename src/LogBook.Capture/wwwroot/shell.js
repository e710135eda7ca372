// The shell: shows at once what this device holds, sends what waits, and opens the form.
import { button, el, focusIn } from "./elements.js";
import * as desk from "./desk.js";
import { homeView } from "./home.js";
import * as people from "./people.js";
import * as queue from "./queue.js";
import { rescueFile } from "./rescue.js";
import { keepFresh } from "./fresh.js";
import { keepWorker } from "./offline.js";
import { bring, clockShift, sheet, today, visitOnServer } from "./round.js";
import { rehearse, start as startRuntime, show } from "./runtime.js";
import * as second from "./second.js";
import { forgottenView, pinView, registerView, unlockView } from "./sign.js";
import { get, put } from "./store.js";
import { clock, say, speak, spoken, time } from "./texts.js";

const view = document.getElementById("view");
const formPlace = document.getElementById("form");
const standing = document.getElementById("standing");
const who = document.getElementById("who");
const notices = document.getElementById("notices");

const longBegun = 8 * 3_600_000; // a working day: a visit that was left for longer is hardly the same one

let last; // code of the person whose round is shown
let isBringing = false;
let bringProblem;
let shown;
let persisted; // whether the browser promises to keep the store; unknown until it was asked
let startsOffline; // whether the worker that opens the form without signal is there; unknown until it was asked for
let drawn; // what the first view was last made of
let holding; // code of the site whose form is shown
let release; // lets go of it
let held; // done when it is let go
let offerVersion = () => {};
let reloadWhenLeft = false;
let turns = 0;
let isRouted = false; // whether any view but the first was asked for
let sendNow = () => queue.send();

const address = (site, draft, person) => "#/visit/" + encodeURIComponent(site) + (draft ? "/" + draft : "") + (person ? "/" + encodeURIComponent(person) : "");
const home = () => { location.hash = "#/"; };
const askWho = (code) => { location.hash = "#/who/" + encodeURIComponent(code); };
// Back must not lead to what is done.
const homeForGood = () => { location.replace("#/"); };

async function settings() {
  return (await get("device", "settings")) ?? { id: "settings" };
}

async function remember(more) {
  await put("device", { ...(await settings()), ...more });
}

// What came back, or stands twice, has not been sent.
const standingWords = { [queue.states.device]: "standing", [queue.states.refused]: "standingBack", [queue.states.conflict]: "standingTwice" };

async function tellStanding() {
  const open = (await queue.visits()).filter(queue.isOpen);
  const told = Object.entries(standingWords).map(([state, words]) => [words, open.filter((row) => row.state === state).length]).filter(([, count]) => count > 0);
  const parts = told.length > 0 ? told.map(([words, count]) => say(words, count)) : [say("allSent")];
  standing.textContent = [...parts, !navigator.onLine && say("offline")].filter(Boolean).join(" · ");
  standing.classList.toggle("waiting", open.length > 0);
}

async function tellWho() {
  const code = people.at() ?? last;
  const name = code && (await people.person(code))?.name;
  who.replaceChildren(...(name ? [
    el("span", {}, say(people.at() ? "me" : "locked", name)),
    button(say("changePerson"), () => { location.hash = "#/who"; }, { className: "quiet" }),
  ] : []));
}

async function showHome() {
  const place = location.hash;
  const known = await people.people();
  if (known.length === 0) return showRegister();
  last ??= (await settings()).last ?? known[0].code;
  const [rows, drafts, round, shift] = await Promise.all([queue.visits(), desk.drafts(), today(last), clockShift()]);
  persisted = await navigator.storage?.persisted?.();
  // Gone on meanwhile: what is shown by now is not the first view.
  if (location.hash !== place) return;
  drawHome({ known, rows, drafts, round, shift });
}

function drawHome({ known, rows, drafts, round, shift }) {
  // Made anew only for what has changed: a finger on its way, an open list or a search is left alone.
  const made = JSON.stringify([
    rows.map((row) => [row.id, row.state, row.problem, row.status, row.closedAt]), drafts.map((row) => [row.id, row.at, row.closed, row.thrownAway, row.untouched]), round?.pending?.length > 0 && Math.floor(Date.now() / 600_000),
    round?.at, round?.sites.length, shift, persisted === false, startsOffline === false, isBringing, bringProblem, spoken(), last, known.length, Boolean(people.at()),
  ]);
  if (made === drawn) return;
  drawn = made;
  const refocus = focusIn(view);
  view.replaceChildren(...homeView({ queue: rows, drafts, round, people: known, shift, persisted, startsOffline, isBringing, isUnlocked: Boolean(people.at()), problem: bringProblem }, {
    address,
    amend: (site, visit) => "#/amend/" + encodeURIComponent(site) + "/" + visit + "/result",
    send: async () => { await sendNow(); },
    bring: bringRound,
    register: () => { location.hash = "#/register"; },
    pin: () => { location.hash = "#/pin"; },
    persist: async () => { await navigator.storage.persist(); await refresh(); },
    rescue: () => (people.at() ? writeRescue() : askWho(last)),
    rescueSealed: writeRescue,
    speak: async (code) => { await remember({ language: code }); await people.prefer(last, code); await refresh(); await tellWho(); },
    goOnWithout: (row) => notice(say("withoutAsk", row.site), say("withoutPhoto"), async () => { await queue.goOnWithout(row.id, row.photo); await sendNow(); }),
    restore: async (row) => { await desk.restore(row.id); await refresh(); },
    throwAway: async (row) => {
      if (people.at() !== row.person) return askWho(row.person);
      await desk.discard(row.id);
      await refresh();
      notice(say("thrownAway"), say("undo"), async () => { await desk.restore(row.id); await refresh(); });
    },
  }));
  refocus();
}

// A line above the view that may offer one act; it stays until the next one, or until it is used. Its button goes with it and hands the focus on.
function notice(text, act, press) {
  const line = el("p", { className: "note" }, text, " ", act && button(act, async () => {
    line.remove();
    focusHeading();
    await press();
  }));
  notices.replaceChildren(line);
}

const focusHeading = () => (formPlace.hidden ? view : formPlace).querySelector("h1")?.focus();

async function writeRescue() {
  const { visits, drafts, photos, unreadable, files, left } = await rescueFile(await clockShift());
  notice([
    say("rescued", visits, drafts, photos),
    files > 1 && say("rescuedFiles", files),
    left.visits + left.photos > 0 && say("rescuedLeft", left.visits, left.photos),
    unreadable > 0 && say("rescuedUnreadable", unreadable),
  ].filter(Boolean).join(" "));
}

async function bringRound() {
  if (isBringing) return;
  isBringing = true;
  bringProblem = undefined;
  await refresh();
  try {
    await bring(last, refresh);
  } catch {
    bringProblem = say("bringFailed");
  } finally {
    isBringing = false;
    await refresh();
  }
}

// By itself and without a word: the view is left as it is while somebody searches in it, and nothing is said of a failure.
const keepRoundFresh = () => keepFresh({
  brought: async () => Date.parse((await today(last))?.at ?? 0),
  now: async () => Date.now() + await clockShift(),
  isFree: () => Boolean(last) && formPlace.hidden && !isBringing,
  bring: () => bring(last, async () => { if (!document.activeElement?.matches("input")) await refresh(); }),
});

async function showRegister() {
  const known = await people.people();
  const place = await registerView(async (code) => {
    last = code;
    const language = (await people.person(code)).language;
    speak(language);
    await remember({ last, language });
    await navigator.storage?.persist?.();
    arrangeSecond(code);
    home();
    await route();
    bringRound();
  }, known.length > 0 ? home : undefined);
  view.replaceChildren(place);
}

// Without signal it is seen to the next time.
const arrangeSecond = (code) => second.arrange(code).catch(() => {});

async function showUnlock(wanted, then) {
  const done = async (code) => {
    last = code;
    speak((await people.person(code)).language);
    await remember({ last, language: spoken() });
    arrangeSecond(code);
    then();
  };
  const forgotten = async (code) => {
    view.replaceChildren(await forgottenView(code, done, () => showUnlock(code, then)));
    view.querySelector("h1").focus();
  };
  view.replaceChildren(await unlockView(wanted, done, home, () => { location.hash = "#/register"; }, forgotten));
  view.querySelector("#pin")?.focus();
}

// Adds a late result or a correction to a visit that the device has among the last ones of its site.
async function showAmendment(site, visit, place) {
  if (!people.at()) return showUnlock(last, route);
  await showForm({ siteCode: site, draftId: visit, amends: true, atResult: place === "result" });
}

async function showVisit(site, draft, owner) {
  const wanted = owner ?? last;
  if (!people.at() || (draft && owner && people.at() !== owner)) return showUnlock(wanted, route);
  if (draft && await desk.isClosed(draft)) return location.replace("#/closed/" + draft);
  if (draft) return showForm({ siteCode: site, draftId: draft, amends: false });
  // One visit of a site at a time: what was begun goes on. What was begun long ago may be another visit, with another arrival: a person says.
  const begun = (await desk.drafts()).find((row) => row.site === site && row.person === people.at() && desk.isBegun(row));
  if (begun && Date.now() - begun.at > longBegun) return askGoOn(site, begun);
  await showForm({ siteCode: site, draftId: begun?.id ?? null, amends: false });
}

async function askGoOn(site, begun) {
  const open = (draftId) => async () => {
    await showForm({ siteCode: site, draftId, amends: false });
    formPlace.querySelector("h1")?.focus();
  };
  view.replaceChildren(
    el("h1", { tabIndex: -1 }, say("visit", site)),
    el("p", { className: "note" }, say("begunLongAgo", time(begun.at + await clockShift()))),
    el("p", { className: "acts" }, button(say("goOnWithIt"), open(begun.id)), button(say("arriveAnew"), open(null)), button(say("back"), home, { className: "quiet" })));
}

// Two windows on one draft would overwrite each other.
const hold = (site) => new Promise((resolve, reject) => {
  held = navigator.locks.request("logbook-visit-" + site.toUpperCase(), { ifAvailable: true }, (lock) => {
    resolve(Boolean(lock));
    return lock && new Promise((done) => { release = done; });
  });
  held.catch(reject);
});

async function showForm(parameters) {
  if (!(await hold(parameters.siteCode))) {
    view.replaceChildren(el("h1", { tabIndex: -1 }, say("visit", parameters.siteCode)), el("p", { className: "note" }, say("elsewhere")), el("p", {}, button(say("back"), home)));
    return;
  }
  holding = parameters.siteCode;
  // What a dead battery left of a form that nobody had typed into.
  await desk.dropUntouched(holding);
  desk.onClosed(() => { homeForGood(); sendNow(); });
  const kept = await showPart("logbook-visit", { ...parameters, person: people.at(), languageCode: spoken() });
  const shift = await clockShift();
  desk.onKept((at) => { kept.textContent = say("keptHere", clock(at + shift)); });
}

// A closed visit, and beside it the server's where the two differ.
async function showClosed(id) {
  const row = await get("queue", id);
  if (!row) return home();
  if (people.at() !== row.person) return showUnlock(row.person, route);
  const isConflict = row.state === queue.states.conflict;
  const other = isConflict ? await visitOnServer(row.person, id).catch(() => null) : null;
  if (isConflict && !other) notice(say("needsSignal"));
  await showPart("logbook-closed", { siteCode: row.site, draftId: id, languageCode: spoken(), other });
}

// Takes the whole page for a part of .NET; gives the place where its state is told.
async function showPart(name, parameters) {
  const turn = turns;
  view.replaceChildren();
  view.hidden = true;
  formPlace.hidden = false;
  const told = el("p", { className: "kept", role: "status" });
  const place = el("div", {}, el("p", { className: "quiet", role: "status" }, say("loadingForm")));
  formPlace.replaceChildren(el("h1", { className: "unseen", tabIndex: -1 }, say("visit", parameters.siteCode)), el("div", { className: "form-bar" }, el("a", { className: "button quiet", href: "#/" }, "‹ " + say("back")), told), place);
  try {
    const part = await show(place, name, parameters);
    // Gone on meanwhile: this part belongs to nobody.
    if (turn !== turns) await part?.dispose();
    else shown = part;
  } catch (error) {
    console.error(error);
    place.replaceChildren(el("p", { className: "problem", role: "alert" }, say("formFailed")));
  }
  return told;
}

async function showPin() {
  const code = people.at();
  if (!code) return showUnlock(last, route);
  view.replaceChildren(pinView(code, async () => { home(); await route(); notice(say("pinChanged")); }, home));
}

async function leaveForm() {
  const leaving = shown;
  shown = undefined;
  // A field that is still being typed in tells the form first.
  if (leaving) document.activeElement?.blur();
  await leaving?.dispose();
  await desk.settled();
  if (holding) await desk.dropUntouched(holding).catch((error) => console.error(error));
  holding = undefined;
  release?.();
  release = undefined;
  await held;
  formPlace.replaceChildren();
  formPlace.hidden = true;
  view.hidden = false;
  if (reloadWhenLeft) location.reload();
}

async function route() {
  const turn = ++turns;
  await leaveForm();
  if (turn !== turns) return;
  if (isRouted) drawn = undefined;
  isRouted = true;
  const [page, ...given] = location.hash.replace(/^#\/?/, "").split("/").map(decodeURIComponent);
  if (page === "visit" && given[0]) await showVisit(...given);
  else if (page === "register") await showRegister();
  else if (page === "amend" && given[1]) await showAmendment(...given);
  else if (page === "closed" && given[0]) await showClosed(given[0]);
  else if (page === "pin") await showPin();
  else if (page === "who") { people.leave(); await showUnlock(given[0], home); }
  else await showHome();
  await Promise.all([tellStanding(), tellWho()]);
  offerVersion();
  // Where a PIN is asked for, it can be typed at once.
  if (document.activeElement?.id !== "pin") focusHeading();
}

// Shows anew what a change of the store concerns; the form is left alone.
async function refresh() {
  await tellStanding();
  const page = location.hash.replace(/^#\/?/, "");
  if (page === "") await showHome();
}

// While the person reads, taps and types the PIN. Any site of the round will do.
async function prepareForm() {
  await startRuntime();
  const site = (await today(last))?.sites[0]?.code;
  const held = site && await sheet(last, site);
  if (held) await rehearse({ siteCode: site, sheet: held });
}

async function keepOffline() {
  if (!("serviceWorker" in navigator)) return;
  // Not at the first install, where the page is of the same version as the worker.
  let hadWorker = Boolean(navigator.serviceWorker.controller);
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (hadWorker && formPlace.hidden) location.reload();
    reloadWhenLeft = hadWorker;
    hadWorker = true;
  });
  navigator.serviceWorker.ready.then(({ active }) => { if (!navigator.serviceWorker.controller) active.postMessage("take-me"); });
  await keepWorker((registration) => {
    offerVersion = () => {
      if (registration.waiting && navigator.serviceWorker.controller && formPlace.hidden) {
        notice(say("newVersion"), say("load"), () => registration.waiting?.postMessage("load-new-version"));
      }
    };
    registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", () => offerVersion()));
    offerVersion();
  }, async (isReady) => {
    const wasTold = startsOffline === false;
    startsOffline = isReady;
    if (wasTold === isReady) await refresh();
  });
}

async function begin() {
  // What first.js has read is painted before anything else is asked of the device.
  const first = (await globalThis.logbookFirst)?.view;
  const kept = first?.settings ?? (await settings());
  last = kept.last;
  if (kept.language) speak(kept.language); else speak(spoken());
  if (first && /^#?\/?$/.test(location.hash)) {
    drawHome({ known: first.people, rows: queue.inOrder(first.queue), drafts: desk.inOrder(first.drafts), round: first.round, shift: first.shift });
    // Told once it is on the screen, for whoever measures.
    requestAnimationFrame(() => setTimeout(() => { performance.mark("shell-painted"); }));
  }
  // Before the first view is made: whoever taps on what first.js has painted is not left there.
  addEventListener("hashchange", route);
  await route();
  document.documentElement.dataset.ready = "shell";
  queue.watch(refresh);
  sendNow = queue.keepSending();
  for (const event of ["online", "offline"]) addEventListener(event, tellStanding);
  if (last) prepareForm().catch((error) => console.error(error));
  keepRoundFresh();
  // Not waited for: it may take until the signal is better, and nothing that is shown depends on it.
  keepOffline().catch((error) => console.error(error));
}

begin().catch((error) => {
  console.error(error);
  view.replaceChildren(el("p", { className: "problem", role: "alert" }, say("storeFailed")));
});
