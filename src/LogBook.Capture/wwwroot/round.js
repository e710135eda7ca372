// Brings the round onto the device: today's stops in words, and for each site its set-up and last visits as the form needs them.
import { all, get, put, write } from "./store.js";
import { openForDevice, sealForDevice } from "./keys.js";
import { credential } from "./people.js";

const visitsOfOthers = 6; // enough for the usual value of a test, which is the median of six
const clockSlack = 60_000;
const same = (a, b) => a.toLowerCase() === b.toLowerCase();

export async function ask(person, path, more = {}) {
  const token = await credential(person);
  return fetch("/api/v1" + path, { cache: "no-store", credentials: "omit", ...more, headers: { Authorization: "Bearer " + token, ...more.headers } });
}

// A visit as the server holds it.
export const visitOnServer = async (person, id) => JSON.stringify(await json(person, "/visits/" + id));

async function json(person, path) {
  const answer = await ask(person, path);
  if (!answer.ok) throw Object.assign(new Error("The server answered " + answer.status + "."), { status: answer.status });
  return answer.json();
}

const siteKey = (person, site) => "site:" + person + "/" + site.toUpperCase();

async function keep(id, value, more) {
  await put("round", { id, ...more, sealed: await sealForDevice(JSON.stringify(value)) });
}

async function kept(id) {
  const row = await get("round", id);
  return row && JSON.parse(await openForDevice(row.sealed));
}

// The set-up goes to every site alike; a site's part is what only its form needs.
async function keepSites(person, document, except) {
  const { sites = [], systems = [], visits = [], ...firm } = document;
  await keep("firm:" + person, firm);
  for (const site of sites.filter((site) => !except.has(site.code.toUpperCase()))) {
    await keep(siteKey(person, site.code), {
      sites: [site],
      systems: systems.filter((system) => same(system.site, site.code)),
      visits: visits.filter((visit) => same(visit.site, site.code)),
    });
  }
  return sites.map((site) => ({ code: site.code, name: site.name, zone: site.timeZone }));
}

// A visit that was begun needs its site, whoever has it on their round by now.
async function dropSites(person, codes) {
  const begun = [...await all("drafts"), ...await all("queue")].filter((row) => row.person === person).map((row) => row.site);
  const wanted = new Set([...codes, ...begun].map((code) => siteKey(person, code)));
  const rows = await all("round");
  const gone = rows.map((row) => row.id).filter((id) => id.startsWith("site:" + person + "/") && !wanted.has(id));
  await write("round", (round) => { for (const id of gone) round.delete(id); });
}

// Results of slides and bottles that are still to come, so that the first view can offer them.
const pendingOf = (document, except = new Set()) => (document.visits ?? []).filter((visit) => !except.has(visit.site.toUpperCase())).flatMap((visit) =>
  (visit.systems ?? []).flatMap((system) => (system.readings ?? []).filter((reading) => reading.notTaken === "result pending").map((reading) => ({
    site: visit.site, visit: visit.id, version: visit.version ?? 1, system: system.system, test: reading.test, takenAt: reading.takenAt ?? visit.arrived, hours: reading.incubation?.hours,
  }))));

// Brings everything; today's round first, so that a lost signal leaves the most useful part.
export async function bring(person, told = () => {}) {
  const asked = Date.now();
  const today = await json(person, "/round/stops");
  const answered = Date.now();
  const shift = Date.parse(today.now) - (asked + answered) / 2;
  await put("device", { id: "clock", shift: Math.abs(shift) > clockSlack ? Math.round(shift) : 0 });
  await keep("own:" + person, { phrases: today.phrases ?? {}, firm: today.firm ?? "", settings: today.settings ?? [], actions: today.actions ?? [] });
  const first = await json(person, "/round");
  const own = await keepSites(person, first, new Set());
  const pending = pendingOf(first);
  await keep("today:" + person, { stops: today.stops, sites: own, at: today.now, pending });
  told();
  const here = new Set(own.map((site) => site.code.toUpperCase()));
  const rest = await json(person, "/round?whole=true&visits=" + visitsOfOthers);
  const whole = await keepSites(person, rest, here);
  await keep("today:" + person, { stops: today.stops, sites: whole, at: today.now, pending: [...pending, ...pendingOf(rest, here)] });
  await dropSites(person, whole.map((site) => site.code));
  told();
}

export const today = (person) => kept("today:" + person);

// One document with all that the form of a site needs; undefined when it is not on this device.
export async function sheet(person, site) {
  const [firm, part] = await Promise.all([kept("firm:" + person), kept(siteKey(person, site))]);
  return firm && part && JSON.stringify({ ...firm, ...part });
}

// What is the firm's own beside its set-up: its name, and as JSON its quick phrases, the thresholds it has set and a site's actions that stand.
export const firmName = async (person) => (await kept("own:" + person))?.firm ?? "";
export const phrases = async (person) => JSON.stringify((await kept("own:" + person))?.phrases ?? {});
export const settings = async (person) => JSON.stringify((await kept("own:" + person))?.settings ?? []);

export async function actions(person, site) {
  return JSON.stringify(((await kept("own:" + person))?.actions ?? []).filter((action) => same(action.site, site)));
}

// By how much the server's clock is ahead of this device's, in ms; 0 while they agree.
export const clockShift = async () => (await get("device", "clock"))?.shift ?? 0;
