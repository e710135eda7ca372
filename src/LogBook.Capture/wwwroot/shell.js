// The shell: shows at once what this device holds, sends what waits, and opens the form.
import { button, el } from "./elements.js";
import * as desk from "./desk.js";
import { homeView } from "./home.js";
import * as people from "./people.js";
import * as queue from "./queue.js";
import { rescueFile } from "./rescue.js";
import { bring, clockShift, today, visitOnServer } from "./round.js";
import { start as startRuntime, show } from "./runtime.js";
import { pinView, registerView, unlockView } from "./sign.js";
import { get, put } from "./store.js";
import { clock, say, speak, spoken } from "./texts.js";

const view = document.getElementById("view");
const formPlace = document.getElementById("form");
const standing = document.getElementById("standing");
const who = document.getElementById("who");

let last; // code of the person whose round is shown
let isBringing = false;
let bringProblem;
let shown;
let sendNow = () => queue.send();

const address = (site, draft, person) => "#/visit/" + encodeURIComponent(site) + (draft ? "/" + draft : "") + (person ? "/" + encodeURIComponent(person) : "");
const home = () => { location.hash = "#/"; };

async function settings() {
  return (await get("device", "settings")) ?? { id: "settings" };
}

async function remember(more) {
  await put("device", { ...(await settings()), ...more });
}

const isWaiting = (row) => row.state !== queue.states.server && row.state !== queue.states.mailed;

async function tellStanding() {
  const waiting = (await queue.visits()).filter(isWaiting).length;
  standing.textContent = [waiting > 0 ? say("standing", waiting) : say("allSent"), navigator.onLine ? null : say("offline")].filter(Boolean).join(" · ");
  standing.classList.toggle("waiting", waiting > 0);
}

async function tellWho() {
  const code = people.at() ?? last;
  const name = code && (await people.person(code))?.name;
  who.replaceChildren(...(name ? [
    el("span", {}, say(people.at() ? "me" : "locked", name)),
    button(say("changePerson"), () => { people.leave(); location.hash = "#/who"; }, { className: "quiet" }),
  ] : []));
}

async function showHome() {
  const known = await people.people();
  if (known.length === 0) return showRegister();
  last ??= (await settings()).last ?? known[0].code;
  const [rows, drafts, round, shift] = await Promise.all([queue.visits(), desk.drafts(), today(last), clockShift()]);
  const persisted = await navigator.storage?.persisted?.();
  view.replaceChildren(...homeView({ queue: rows, drafts, round, people: known, shift, persisted, isBringing, problem: bringProblem }, {
    address,
    send: async () => { await sendNow(); },
    bring: bringRound,
    register: () => { location.hash = "#/register"; },
    pin: () => { location.hash = "#/pin"; },
    persist: async () => { await navigator.storage.persist(); await refresh(); },
    rescue: () => rescueFile(),
    speak: async (code) => { await remember({ language: code }); await refresh(); await tellWho(); },
    throwAway: async (row) => {
      await desk.discard(row.id);
      await refresh();
      notice(say("thrownAway"), say("undo"), async () => { await desk.restore(row.id); await refresh(); });
    },
  }));
}

// A line at the top of the view that may offer one act; the next view takes it away.
function notice(text, act, press) {
  const line = el("p", { className: "note", role: "status" }, text, " ", act && button(act, async () => { line.remove(); await press(); }));
  view.prepend(line);
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

async function showRegister() {
  const known = await people.people();
  const place = await registerView(async (code) => {
    last = code;
    const language = (await people.person(code)).language;
    speak(language);
    await remember({ last, language });
    await navigator.storage?.persist?.();
    home();
    await route();
    bringRound();
  }, known.length > 0 ? home : undefined);
  view.replaceChildren(place);
}

async function showUnlock(wanted, then) {
  view.replaceChildren(await unlockView(wanted, async (code) => {
    last = code;
    speak((await people.person(code)).language);
    await remember({ last, language: spoken() });
    then();
  }, home, () => { location.hash = "#/register"; }));
  view.querySelector("#pin")?.focus();
}

// Adds a late result or a correction to a visit that the device has among the last ones of its site.
async function showAmendment(site, visit) {
  if (!people.at()) return showUnlock(last, route);
  await showForm({ siteCode: site, draftId: visit, amends: true });
}

async function showVisit(site, draft, owner) {
  const wanted = owner ?? last;
  if (!people.at() || (draft && owner && people.at() !== owner)) return showUnlock(wanted, route);
  // One visit of a site at a time: what was begun goes on.
  const begun = draft ?? (await desk.drafts()).find((row) => row.site === site && row.person === people.at() && !row.closed && !row.thrownAway)?.id;
  await showForm({ siteCode: site, draftId: begun ?? null, amends: false });
}

async function showForm(parameters) {
  desk.onClosed(() => { home(); sendNow(); });
  const kept = await showPart("logbook-visit", { ...parameters, person: people.at(), languageCode: spoken() });
  const shift = await clockShift();
  desk.onKept((at) => { kept.textContent = say("keptHere", clock(at + shift)); });
}

// A closed visit, and beside it the server's where the two differ.
async function showClosed(id) {
  const row = await get("queue", id);
  if (!row) return home();
  if (people.at() !== row.person) return showUnlock(row.person, route);
  const other = row.state === queue.states.conflict ? await visitOnServer(row.person, id).catch(() => null) : null;
  await showPart("logbook-closed", { siteCode: row.site, draftId: id, languageCode: spoken(), other });
}

// Takes the whole page for a part of .NET; gives the place where its state is told.
async function showPart(name, parameters) {
  view.replaceChildren();
  view.hidden = true;
  formPlace.hidden = false;
  const told = el("p", { className: "kept", role: "status" });
  const place = el("div", {}, el("p", { className: "quiet", role: "status" }, say("loadingForm")));
  formPlace.replaceChildren(el("div", { className: "form-bar" }, el("a", { className: "button quiet", href: "#/" }, "‹ " + say("back")), told), place);
  try {
    shown = await show(place, name, parameters);
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
  await leaving?.dispose();
  formPlace.replaceChildren();
  formPlace.hidden = true;
  view.hidden = false;
}

async function route() {
  await leaveForm();
  const [page, ...given] = location.hash.replace(/^#\/?/, "").split("/").map(decodeURIComponent);
  if (page === "visit" && given[0]) await showVisit(...given);
  else if (page === "register") await showRegister();
  else if (page === "amend" && given[1]) await showAmendment(...given);
  else if (page === "closed" && given[0]) await showClosed(given[0]);
  else if (page === "pin") await showPin();
  else if (page === "who") await showUnlock(undefined, home);
  else await showHome();
  await Promise.all([tellStanding(), tellWho()]);
  (formPlace.hidden ? view : formPlace).querySelector("h1")?.focus();
}

// Shows anew what a change of the store concerns; the form is left alone.
async function refresh() {
  await tellStanding();
  const page = location.hash.replace(/^#\/?/, "");
  if (page === "") await showHome();
}

async function keepOffline() {
  if (!("serviceWorker" in navigator)) return;
  const registration = await navigator.serviceWorker.register("worker.js", { scope: "/capture/", updateViaCache: "none" });
  const offer = () => {
    if (registration.waiting && navigator.serviceWorker.controller && formPlace.hidden) {
      notice(say("newVersion"), say("load"), () => registration.waiting?.postMessage("load-new-version"));
    }
  };
  registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", offer));
  offer();
  // Not at the first install, where the page is of the same version as the worker.
  let hadWorker = Boolean(navigator.serviceWorker.controller);
  navigator.serviceWorker.addEventListener("controllerchange", () => { if (hadWorker) location.reload(); hadWorker = true; });
}

async function begin() {
  const kept = await settings();
  last = kept.last;
  if (kept.language) speak(kept.language); else speak(spoken());
  await route();
  document.documentElement.dataset.ready = "shell";
  queue.watch(refresh);
  sendNow = queue.keepSending();
  addEventListener("hashchange", route);
  for (const event of ["online", "offline"]) addEventListener(event, tellStanding);
  await keepOffline();
  // The runtime is brought up while the person reads, so that the form opens at once.
  if (last) (window.requestIdleCallback ?? setTimeout)(() => startRuntime().catch(() => {}));
}

begin().catch((error) => {
  console.error(error);
  view.replaceChildren(el("p", { className: "problem", role: "alert" }, say("storeFailed")));
});
