// The service worker: keeps one whole build and answers from it, so the app opens without a network.
// scripts/precache.sh writes VERSION and FILES above this line; a build with any change is a new worker.

// The storage belongs to the whole origin, so the scope keeps copies at other addresses apart.
const PREFIX = `stringloft ${registration.scope} `;
const CACHE = PREFIX + VERSION;
const HOME = new URL("./", location).pathname;
// Some servers say that an answer varies with headers that change nothing here.
const LOOSELY = { ignoreVary: true };

/** Takes every file past the browser's own cache; if one is missing, nothing is kept and the old build stays. */
async function keep() {
  const cache = await caches.open(CACHE);
  await cache.addAll(FILES.map((file) => new Request(file, { cache: "reload" })));
  // An open page has all its files already, so this changes nothing under it; the next one opened is new.
  await skipWaiting();
}

/** Drops older builds but the last, which a page that is just opening may still need. */
async function tidy() {
  const builds = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(builds.slice(0, -1).map((name) => caches.delete(name)));
  await clients.claim();
}

async function answer(request) {
  const { pathname } = new URL(request.url);
  const home = pathname === HOME || pathname === `${HOME}index.html`;
  const cache = await caches.open(CACHE);
  const kept = (await cache.match(home ? "./" : request, LOOSELY)) ?? (await older(request));
  return kept ?? fetch(request);
}

/** A file of the build before this one. */
async function older(request) {
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX)) {
      const kept = await (await caches.open(name)).match(request, LOOSELY);
      if (kept) return kept;
    }
  }
}

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(tidy()));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && new URL(request.url).origin === location.origin) {
    event.respondWith(answer(request));
  }
});
