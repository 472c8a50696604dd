// The service worker: keeps one whole build and answers from it, so the app opens without a network.
// The build writes VERSION, FILES (the first screen) and PARTS (what is fetched later) above this line; a build with
// any change is a new worker.

// The storage belongs to the whole origin, so the scope keeps copies at other addresses apart.
const PREFIX = `stringloft ${registration.scope} `;
const CACHE = PREFIX + VERSION;
const HOME = new URL("./", location).pathname;
// Some servers say that an answer varies with headers that change nothing here.
const LOOSELY = { ignoreVary: true };

/** Whether each byte costs the user money; then parts are kept when they are asked for. */
const sparing = () => navigator.connection?.saveData || navigator.connection?.type === "cellular";

/** Takes every file past the browser's own cache; if one is missing, nothing is kept and the old build stays. */
async function keep() {
  const cache = await caches.open(CACHE);
  const wanted = sparing() ? FILES : [...FILES, ...PARTS];
  await cache.addAll(wanted.map((file) => new Request(file, { cache: "reload" })));
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
  return kept ?? keptNow(request, cache);
}

/** Fetches what is not kept; a part stays. */
async function keptNow(request, cache) {
  const answer = await fetch(request);
  const isPart = PARTS.some((file) => new URL(file, location).href === request.url);
  if (isPart && answer.ok) await cache.put(request, answer.clone());
  return answer;
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
