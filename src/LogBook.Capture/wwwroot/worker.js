// Keeps the whole form on the device: everything named in assets.js is brought when a version is installed, all or nothing.
importScripts("./assets.js");

const prefix = "logbook-capture-";
const cacheName = prefix + self.assetsManifest.version;
const wanted = /\.(?:wasm|pdb|js|json|html|css|svg|png|webmanifest|dat|blat)$/; // a build for development asks for its symbols too
const home = "/capture/index.html";
const start = "/capture/";
const skipped = new Set(["capture/worker.js", "worker.js"]);

// The list names files by their place under the root of the host.
const addresses = self.assetsManifest.assets
  .filter((asset) => wanted.test(asset.url) && !skipped.has(asset.url))
  .map((asset) => ({ url: "/" + (asset.url.startsWith("capture/") ? asset.url : "capture/" + asset.url), hash: asset.hash }));

self.addEventListener("install", (event) => event.waitUntil((async () => {
  const cache = await caches.open(cacheName);
  await cache.addAll(addresses.map(({ url, hash }) => new Request(url, { integrity: hash, cache: "no-cache", credentials: "omit" })));
  await cache.put(start, await cache.match(home));
  // Where the browser can, it takes the files from the cache without waking this worker, which costs a cold tablet half a second.
  // Everything else comes to the fetch handler below, which knows the one page.
  await event.addRoutes?.(["/capture/*.*", start].map((pathname) => ({
    condition: { urlPattern: { pathname, search: "" }, requestMethod: "get" }, source: { cacheName },
  })));
})()));

self.addEventListener("activate", (event) => event.waitUntil((async () => {
  const old = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== cacheName);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
})()));

// A new version waits until the person says so: pages of two versions at once would write each other's drafts.
self.addEventListener("message", (event) => { if (event.data === "load-new-version") self.skipWaiting(); });

// A page that was on its way while this worker began belongs to none, and asks to be taken.
self.addEventListener("message", (event) => { if (event.data === "take-me") event.waitUntil(self.clients.claim()); });

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== location.origin || !url.pathname.startsWith("/capture/")) return;
  event.respondWith((async () => {
    const cache = await caches.open(cacheName);
    const kept = await cache.match(request.mode === "navigate" ? home : request, { ignoreSearch: true });
    return kept ?? fetch(request);
  })());
});
