// The first view: what waits, what was begun, and the round. It needs no runtime and no signal.
import { button, el, once } from "./elements.js";
import { codes, duration, names, say, speak, spoken, testName, time } from "./texts.js";
import { isStuck, states } from "./queue.js";

const shapes = { late: "▲", due: "◆", soon: "●", later: "○" };
const stateShapes = { device: "●", server: "✓", mailed: "✓✓", refused: "▲", conflict: "▲", settled: "○" };
const stateWords = { device: "onDevice", server: "onServer", mailed: "mailed", refused: "refused", conflict: "conflict", settled: "settled" };
const sentStates = new Set([states.server, states.mailed, states.settled]);
const problemWords = { unreadable: "unreadable", "no-signal": "noSignal", "signed-out": "signedOut", receipt: "receipt", photo: "photo", "photo-missing": "photoMissing", server: "server" };

const mark = (kind, shape, text) => el("span", { className: "mark " + kind }, el("span", { className: "shape", "data-shape": shape }), text);
const section = (title, ...children) => el("section", {}, el("h2", {}, title), ...children);

function queueRow(row, shift, open, goOnWithout) {
  const problem = row.state === states.device && problemWords[row.problem];
  return el("li", { className: "stop" },
    el("div", { className: "stop-head" },
      el("span", {}, el("b", {}, row.site), " ", row.siteName),
      mark(row.state, stateShapes[row.state], say(stateWords[row.state]))),
    el("p", { className: "facts" }, say("closedAt", time(row.closedAt + shift)), problem && " · " + say(problem, row.status ?? ""), row.without?.length > 0 && " · " + say("withoutPhotos", row.without.length)),
    el("p", { className: "acts" }, row.state === states.refused
      ? el("a", { className: "button main", href: open(row.site, row.id, row.person) }, say("goOn"))
      : el("a", { className: "button quiet", href: "#/closed/" + row.id }, say(row.state === states.conflict ? "compare" : "read")),
    isStuck(row) && button(say("withoutPhoto"), () => goOnWithout(row), { className: "quiet" })));
}

function draftRow(row, shift, people, open, throwAway) {
  const owner = people.find((person) => person.code === row.person)?.name ?? row.person;
  return el("li", { className: "stop" },
    el("div", { className: "stop-head" }, el("span", {}, el("b", {}, row.site), " ", row.siteName), el("span", {}, say("of", owner))),
    el("p", { className: "facts" }, say("lastKept", time(row.at + shift))),
    el("p", { className: "acts" },
      el("a", { className: "button main", href: open(row.site, row.id, row.person) }, say("goOn")),
      button(say("throwAway"), throwAway, { className: "quiet" })));
}

const stopRow = (stop, open) => el("li", { className: "stop" },
  el("div", { className: "stop-head" }, el("span", {}, el("b", {}, stop.site), " ", stop.name), mark(stop.urgency, shapes[stop.urgency], stop.due[spoken()])),
  el("p", { className: "facts" }, say("lastVisit", stop.last[spoken()])),
  stop.since.length > 0 && el("details", { open: stop.urgency !== "later" }, el("summary", {}, say("since", stop.since.length)), el("ul", {}, stop.since.map((entry) => el("li", {}, entry[spoken()])))),
  el("p", { className: "acts" }, el("a", { className: "button" + (stop.urgency === "later" ? "" : " main"), href: open(stop.site) }, say("start"), el("span", { className: "unseen" }, " " + stop.site))));

function resultRow(result, name, now, amend) {
  const passed = now - Date.parse(result.takenAt);
  const left = result.hours > 0 ? result.hours * 3_600_000 - passed : undefined;
  const shown = left > 0 ? mark("later", "○", say("resultLeft", duration(left))) : mark("due", "◆", left === undefined ? say("resultWaits") : say("resultOver"));
  return el("li", { className: "stop" },
    el("div", { className: "stop-head" }, el("span", {}, el("b", {}, result.site), " ", name, " · ", result.system), shown),
    el("p", { className: "facts" }, say("resultTaken", testName(result.test), time(Date.parse(result.takenAt)), duration(passed))),
    el("p", { className: "acts" }, el("a", { className: "button" + (left > 0 ? "" : " main"), href: amend(result.site, result.visit) }, say("enterResult"), el("span", { className: "unseen" }, " " + result.site + " " + testName(result.test)))));
}

function otherSites(sites, open) {
  const list = el("ul", { className: "plain" });
  const fill = (typed) => list.replaceChildren(...sites
    .filter((site) => (site.code + " " + site.name).toLowerCase().includes(typed.trim().toLowerCase()))
    .map((site) => el("li", {}, el("a", { className: "button wide", href: open(site.code) }, el("b", {}, site.code), " " + site.name))));
  fill("");
  return el("details", { className: "card" },
    el("summary", {}, say("otherSites") + " (" + sites.length + ")"),
    el("label", { htmlFor: "find" }, say("search")),
    el("input", { id: "find", type: "search", autocomplete: "off", oninput: (event) => fill(event.target.value) }),
    list);
}

function languages(chosen) {
  return el("div", { className: "acts", role: "group", "aria-label": say("language") },
    codes.map((code) => button(names[code], () => { speak(code); chosen(code); }, { lang: code, "aria-pressed": String(code === spoken()) })));
}

export function homeView({ queue, drafts, round, people, shift, persisted, startsOffline, isBringing, isUnlocked, problem }, does) {
  const waiting = queue.filter((row) => !sentStates.has(row.state));
  const sent = queue.filter((row) => sentStates.has(row.state));
  // What came back stands in the queue already.
  const begun = drafts.filter((row) => !row.closed && !row.untouched && !waiting.some((visit) => visit.id === row.id));
  const open = begun.filter((row) => !row.thrownAway);
  const thrownAway = begun.filter((row) => row.thrownAway);
  const stops = round?.stops ?? [];
  const others = (round?.sites ?? []).filter((site) => !stops.some((stop) => stop.site === site.code));
  // Those whose result is on its way from here are not asked for again.
  const results = (round?.pending ?? []).filter((result) => !queue.some((row) => row.id === result.visit && row.version > result.version))
    .sort((a, b) => Date.parse(a.takenAt) - Date.parse(b.takenAt));
  const nameOf = (code) => round.sites.find((site) => site.code === code)?.name ?? "";
  return [
    el("h1", { className: "unseen", tabIndex: -1 }, say("title")),
    shift !== 0 && el("p", { className: "note" }, say("clockOff", duration(shift))),
    startsOffline === false && el("p", { className: "note", role: "status" }, say("offlineNotReady")),
    section(say("waiting"),
      waiting.length === 0 ? el("p", { className: "quiet" }, say("nothingWaits")) : el("ul", { className: "plain" }, waiting.map((row) => queueRow(row, shift, does.address, does.goOnWithout))),
      waiting.length > 0 && el("p", { className: "acts" }, button(say("sendNow"), once(does.send)))),
    open.length > 0 && section(say("drafts"), el("ul", { className: "plain" }, open.map((row) => draftRow(row, shift, people, does.address, () => does.throwAway(row))))),
    results.length > 0 && section(say("results"), el("ul", { className: "plain" }, results.map((result) => resultRow(result, nameOf(result.site), Date.now() + shift, does.amend)))),
    el("section", {},
      el("div", { className: "stop-head" },
        el("h2", {}, say("round")),
        button(isBringing ? say("bringing") : say("bring"), once(does.bring), { disabled: isBringing, className: "quiet" })),
      el("p", { className: "problem", role: "alert" }, problem ?? ""),
      round ? el("p", { className: "facts" }, say("roundAt", time(Date.parse(round.at)))) : el("p", { className: "quiet" }, say("noRound")),
      stops.length > 0 && el("ul", { className: "plain" }, stops.map((stop) => stopRow(stop, does.address))),
      others.length > 0 && otherSites(others, does.address)),
    sent.length > 0 && section(say("sent"), el("ul", { className: "plain" }, sent.map((row) => queueRow(row, shift, does.address)))),
    el("section", {},
      el("h2", {}, say("more")),
      languages(does.speak),
      persisted === false && el("p", { className: "note" }, say("persist"), " ", button(say("persistAsk"), does.persist)),
      thrownAway.length > 0 && el("details", {}, el("summary", {}, say("thrownAwayList")), el("ul", { className: "plain" }, thrownAway.map((row) => el("li", { className: "stop stop-head" },
        el("span", {}, el("b", {}, row.site), " ", row.siteName, ", ", time(row.at + shift)), button(say("undo"), () => does.restore(row)))))),
      (waiting.length > 0 || open.length > 0) && el("div", {}, el("p", { className: "facts" }, say("rescueWhy")), el("p", { className: "acts" },
        button(say("rescue"), once(does.rescue)),
        !isUnlocked && open.length > 0 && button(say("rescueSealed"), once(does.rescueSealed), { className: "quiet" }))),
      el("p", { className: "acts" }, button(say("changePin"), does.pin, { className: "quiet" }), button(say("someoneElse"), does.register, { className: "quiet" }), el("a", { className: "button quiet", href: "/help/capture" }, say("help")), el("a", { className: "button quiet", href: "/" }, say("desk")))),
  ].filter(Boolean);
}
