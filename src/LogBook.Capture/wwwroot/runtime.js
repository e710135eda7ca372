// Brings the .NET runtime up, once, and shows the form in a place of the page.
let started;

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
  await start();
  return place.isConnected ? Blazor.rootComponents.add(place, name, parameters) : undefined;
}
