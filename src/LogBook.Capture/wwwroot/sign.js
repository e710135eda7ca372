// Who is at the tablet: registering a person with signal, opening by PIN without.
import { button, el, once } from "./elements.js";
import * as people from "./people.js";
import * as second from "./second.js";
import { say } from "./texts.js";

const field = (id, label, hint, more) => el("div", { className: "field" },
  el("label", { htmlFor: id }, label),
  el("input", { id, autocomplete: "off", "aria-describedby": hint ? id + "-hint" : undefined, ...more }),
  hint && el("p", { id: id + "-hint", className: "hint" }, hint));

const pinField = (id, label, hint) => field(id, label, hint, { type: "password", inputMode: "numeric", maxLength: 12 });

const problemPlace = () => el("p", { className: "problem", role: "alert" });

async function isSignedIn() {
  const answer = await fetch("/api/v1/round/stops", { cache: "no-store" });
  return answer.ok;
}

export async function registerView(done, cancel) {
  const place = el("section", { className: "card" }, el("h1", { tabIndex: -1 }, say("register")), el("p", {}, say("registerWhy")));
  const back = cancel && button(say("cancel"), cancel);
  let signedIn;
  try {
    signedIn = await isSignedIn();
  } catch {
    place.append(el("p", { className: "problem", role: "alert" }, say("needsSignal")), back ?? "");
    return place;
  }
  if (!signedIn) {
    place.append(el("p", {}, say("signInFirst")), el("p", { className: "acts" }, el("a", { className: "button main", href: "/account/sign-in?back=%2Fcapture%2F" }, say("signIn")), back));
    return place;
  }
  const problem = problemPlace();
  const form = el("form", { noValidate: true },
    field("tablet", say("tablet"), say("tabletHint"), { maxLength: 100 }),
    pinField("pin", say("pin"), say("pinHint")),
    pinField("pin-again", say("pinAgain")),
    problem,
    el("p", { className: "acts" }, el("button", { className: "main" }, say("register")), back));
  const wrong = (id, text) => { problem.textContent = text; form.querySelector("#" + id).focus(); };
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("submit", once(async () => {
    const [tablet, pin, again] = ["tablet", "pin", "pin-again"].map((id) => form.querySelector("#" + id).value.trim());
    problem.textContent = "";
    if (!tablet) return wrong("tablet", say("tabletMissing"));
    if (!people.pinIsLongEnough(pin)) return wrong("pin", say("pinShort", pin.length));
    if (pin !== again) return wrong("pin-again", say("pinDiffers"));
    try {
      const given = await people.register(tablet, pin);
      if (given.code) return await done(given.code);
      if (given.wrongPin) return wrong("pin", say("pinOther", given.wrongPin));
      problem.textContent = given.signedOut ? say("signInFirst") : say("refusedRegister", given.refused);
    } catch {
      problem.textContent = say("needsSignal");
    }
  }));
  place.append(form);
  return place;
}

// Another PIN for the same drafts.
export function pinView(code, done, cancel) {
  const problem = problemPlace();
  const form = el("form", { noValidate: true },
    pinField("pin-old", say("pinOld")), pinField("pin", say("pinNew"), say("pinHint")), pinField("pin-again", say("pinAgain")),
    problem,
    el("p", { className: "acts" }, el("button", { className: "main" }, say("changePin")), button(say("cancel"), cancel)));
  const wrong = (id, text) => { problem.textContent = text; form.querySelector("#" + id).focus(); };
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("submit", once(async () => {
    const [old, pin, again] = ["pin-old", "pin", "pin-again"].map((id) => form.querySelector("#" + id).value.trim());
    problem.textContent = "";
    if (!people.pinIsLongEnough(pin)) return wrong("pin", say("pinShort", pin.length));
    if (pin !== again) return wrong("pin-again", say("pinDiffers"));
    if (!(await people.changePin(code, old, pin))) return wrong("pin-old", say("pinWrong"));
    await done();
  }));
  return el("section", { className: "card" }, el("h1", { tabIndex: -1 }, say("changePin")), form);
}

const lookEvery = 5_000;

// For a person who forgot the PIN: asks a supervisor for the second key, and takes a new PIN once it is there.
export async function forgottenView(code, done, cancel) {
  const name = (await people.person(code))?.name ?? code;
  const told = el("p", { className: "note", role: "status" });
  const problem = problemPlace();
  const rest = el("div", {});
  const place = el("section", { className: "card" }, el("h1", { tabIndex: -1 }, say("forgot")), el("p", {}, say("forgotWhy", name)), told, problem, rest);
  const acts = (...buttons) => rest.replaceChildren(el("p", { className: "acts" }, ...buttons, button(say("cancel"), cancel)));
  told.hidden = true;

  const look = async () => {
    const found = await second.released(code).catch(() => undefined);
    if (found) takePin(found);
    else if (place.isConnected) setTimeout(look, lookEvery);
  };

  const takePin = (found) => {
    told.hidden = false;
    told.textContent = say("forgotReleased");
    const form = el("form", { noValidate: true },
      pinField("pin", say("pinNew"), say("pinHint")), pinField("pin-again", say("pinAgain")),
      el("p", { className: "acts" }, el("button", { className: "main" }, say("changePin")), button(say("cancel"), cancel)));
    form.addEventListener("submit", (event) => event.preventDefault());
    form.addEventListener("submit", once(async () => {
      const [pin, again] = ["pin", "pin-again"].map((id) => form.querySelector("#" + id).value.trim());
      const wrong = (id, text) => { problem.textContent = text; form.querySelector("#" + id).focus(); };
      if (!people.pinIsLongEnough(pin)) return wrong("pin", say("pinShort", pin.length));
      if (pin !== again) return wrong("pin-again", say("pinDiffers"));
      if (!(await second.renew(code, found, pin))) return void (problem.textContent = say("forgotFailed"));
      await done(code);
    }));
    rest.replaceChildren(form);
    form.querySelector("#pin").focus();
  };

  acts(button(say("forgotAsk"), once(async () => {
    problem.textContent = "";
    try {
      if (!(await second.request(code))) return void (problem.textContent = say("forgotNone"));
      told.hidden = false;
      told.textContent = say("forgotAsked");
      acts();
      // The pressed button is gone.
      place.querySelector("h1").focus();
      look();
    } catch {
      problem.textContent = say("needsSignal");
    }
  }), { className: "main" }));
  return place;
}

// Asks for the PIN of one of the people of this tablet.
export async function unlockView(wanted, done, cancel, another, forgotten) {
  const known = await people.people();
  let code = wanted ?? known[0]?.code;
  const problem = problemPlace();
  const choice = el("div", { className: "acts", role: "group", "aria-label": say("who") }, known.map((person) => button(person.name, (event) => {
    code = person.code;
    for (const one of choice.children) one.setAttribute("aria-pressed", String(one === event.currentTarget));
    form.querySelector("#pin").focus();
  }, { "aria-pressed": String(person.code === code) })));
  const form = el("form", { noValidate: true },
    choice,
    pinField("pin", say("pin")),
    problem,
    el("p", { className: "acts" }, el("button", { className: "main" }, say("unlock")), cancel && button(say("cancel"), cancel), button(say("forgot"), () => forgotten(code), { className: "quiet" }), button(say("someoneElse"), another, { className: "quiet" })));
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("submit", once(async () => {
    const pin = form.querySelector("#pin");
    const given = await people.unlock(code, pin.value.trim());
    if (given.code) return done(given.code);
    problem.textContent = given.wait ? say("pinWait", given.wait) : say("pinWrong");
    pin.value = "";
    pin.focus();
  }));
  return el("section", { className: "card" }, el("h1", { tabIndex: -1 }, say("who")), form);
}
