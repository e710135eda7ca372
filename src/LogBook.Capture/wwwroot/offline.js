// Sees to it that the worker which keeps the form on this device gets there, however weak the signal is at first.
const soonest = 5_000;
const latest = 120_000;

// "online" may never be told.
const signalOr = (wait) => new Promise((resolve) => {
  const done = () => { clearTimeout(timer); removeEventListener("online", done); resolve(); };
  const timer = setTimeout(done, wait);
  addEventListener("online", done);
});

// False when its files could not all be brought: the browser then lets go of it, and does not try again by itself.
const isInstalled = (registration) => new Promise((resolve) => {
  const worker = registration.installing;
  if (registration.active || registration.waiting || !worker) return resolve(Boolean(registration.active ?? registration.waiting));
  worker.addEventListener("statechange", () => {
    if (worker.state === "redundant") resolve(Boolean(registration.active ?? registration.waiting));
    else if (worker.state !== "installing") resolve(true);
  });
});

// Tries until it is there. "found" is given each registration, "told" whether the form would open without signal.
export async function keepWorker(found, told) {
  for (let wait = soonest; ; wait = Math.min(wait * 2, latest)) {
    let isReady = false;
    try {
      const registration = await navigator.serviceWorker.register("worker.js", { scope: "/capture/", updateViaCache: "none" });
      found(registration);
      isReady = await isInstalled(registration);
    } catch (error) {
      // What this device keeps is not touched by it: whatever is shown stays.
      console.error(error);
    }
    await told(isReady || Boolean(navigator.serviceWorker.controller));
    if (isReady) return;
    await signalOr(wait);
  }
}
