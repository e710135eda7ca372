// Brings the .NET runtime up, once, and shows the form in a place of the page.
let started;
let isWanted = false; // whether a form was asked for
let rehearsed;

function load() {
  const looks = document.createElement("link");
  looks.rel = "stylesheet";
  looks.href = "_content/LogBook.Entry/entry.css";
  document.head.append(looks);
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = "_framework/blazor.webassembly.js";
    script.setAttribute("autostart", "false");
    script.onload = resolve;
    script.onerror = () => reject(new Error("The runtime is not here."));
    document.head.append(script);
  });
}

export function start() {
  started ??= load().then(async () => {
    // The runtime stands well before the form may be asked for; .NET calls this once it may.
    const ready = new Promise((resolve) => { globalThis.logbookFormIsReady = resolve; });
    await Blazor.start();
    await ready;
  });
  started.catch(() => { started = undefined; });
  return started;
}

// Shows the form, or a closed visit; what comes back takes it away again. Nothing is shown when the place is gone by then.
export async function show(place, name, parameters) {
  isWanted = true;
  await start();
  return place.isConnected ? Blazor.rootComponents.add(place, name, parameters) : undefined;
}

// Lets .NET do, out of sight, what takes it long for the first time; once, and not for whoever waits for a form already.
export function rehearse(parameters) {
  rehearsed ??= start().then(() => isWanted || Blazor.rootComponents.add(document.createElement("div"), "logbook-rehearsal", parameters));
  return rehearsed;
}

// Done when the page has nothing else to do; tells whether a rehearsal goes on. An idle callback would not do: a page on which nothing
// moves gets one only with the next key, and the rehearsal would not be done by then.
export const isFree = async () => {
  await (globalThis.scheduler?.postTask(() => {}, { priority: "background" }) ?? new Promise((resolve) => { setTimeout(resolve); }));
  return !isWanted;
};

// Told for whoever measures.
export const endRehearsal = () => performance.mark("form-rehearsed");
