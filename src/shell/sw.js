// The service worker: keeps one whole build and answers from it, so the app opens without a network.
// The build writes above this line VERSION, FILES (the first screen) and PARTS (what is fetched later), with the sum
// of each file's bytes; a build with any change is a new worker.
// A build must prove itself. It is taken only whole and with the right sums, and once a page of it has stood it
// counts as good. One that did not start gives way to the last good one until the next build comes.

// The storage belongs to the whole origin, so the scope keeps copies at other addresses apart.
const PREFIX = `stringloft ${registration.scope} `;
const CACHE = PREFIX + VERSION;
const HOME = new URL("./", location).pathname;
// Some servers say that an answer varies with headers that change nothing here.
const LOOSELY = { ignoreVary: true };
// What is noted beside the files of a build: no file has such a name.
const [GOOD, FAILED, TRIED] = ["./noted/good", "./noted/failed", "./noted/tried"];
/** How often a new build may be opened without a word from it before the last good one is taken for it. */
const TRIES = 2;

/** Whether each byte costs the user money; then parts are kept when they are asked for. */
const sparing = () => navigator.connection?.saveData || navigator.connection?.type === "cellular";

/** The files of a list with their sums, which have 44 letters each; a star in a name stands for how its sum begins. */
function listed(text) {
  return text.split(" ").map((one) => {
    const [sum, name] = [one.slice(0, 44), one.slice(44)];
    const hex = Array.from(atob(sum).slice(0, 8), (byte) => byte.charCodeAt().toString(16).padStart(2, "0"));
    return ["./" + name.replace("*", hex.join("")), "sha256-" + sum];
  });
}

/** The sum of a file of this build; none for what is not of it. */
const sumOf = (url) => {
  for (const [file, sum] of [...FILES, ...PARTS]) {
    if (new URL(file, location).href === url) return sum;
  }
};

/** Takes every file past the browser's own cache; if one is missing or damaged, nothing is kept and the old build stays. */
async function keep() {
  const known = await caches.has(CACHE); // a build that comes back
  const cache = await caches.open(CACHE);
  const wanted = sparing() ? FILES : [...FILES, ...PARTS];
  try {
    await cache.addAll(wanted.map(([file, integrity]) => new Request(file, { cache: "reload", integrity })));
  } catch (error) {
    if (!known) await caches.delete(CACHE);
    throw error;
  }
  // An open page has all its files already, so this changes nothing under it; the next one opened is new.
  await skipWaiting();
}

/** The builds before this one, the oldest first. */
const before = async () => (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);

const has = async (name, note) => !!(await (await caches.open(name)).match(note));
const write = async (name, note, words = "") => (await caches.open(name)).put(note, new Response(words));

/** The build to fall back on: the last that stood, or the last there is, from a worker that took no notes. */
async function lastGood() {
  const builds = await before();
  for (const name of [...builds].reverse()) if (await has(name, GOOD)) return name;
  for (const name of [...builds].reverse()) if (!(await has(name, FAILED))) return name;
}

/** Drops older builds but the last good one, which a page that is just opening may still need too. */
async function tidy() {
  const good = await lastGood();
  await Promise.all((await before()).filter((name) => name !== good).map((name) => caches.delete(name)));
  await clients.claim();
}

/** The build whose page is shown. */
async function shown() {
  if (await has(CACHE, GOOD)) return CACHE;
  const good = await lastGood();
  if (!good) return CACHE;
  if (await has(CACHE, FAILED)) return good;
  const noted = await (await caches.open(CACHE)).match(TRIED);
  const tries = noted ? Number(await noted.text()) : 0;
  if (tries >= TRIES) return good;
  await write(CACHE, TRIED, tries + 1);
  return CACHE;
}

/** What is kept for a request: of the build that is shown, else of another; a page's files have names of their own. */
async function kept(request) {
  const { pathname } = new URL(request.url);
  if (pathname === HOME || pathname === `${HOME}index.html`) {
    return (await caches.open(await shown())).match("./", LOOSELY);
  }
  for (const name of [CACHE, ...(await before()).reverse()]) {
    const found = await (await caches.open(name)).match(request, LOOSELY);
    if (found) return found;
  }
}

/** Fetches what is not kept; a part stays. */
async function fetched(request) {
  const integrity = sumOf(request.url);
  const answer = await fetch(integrity ? new Request(request, { integrity }) : request);
  // Where the browser has no room for it, it is fetched again next time.
  if (integrity && answer.ok) (await caches.open(CACHE)).put(request, answer.clone()).catch(() => {});
  return answer;
}

// Where the browser's storage fails, the network answers.
const answer = async (request) => (await kept(request).catch(() => undefined)) ?? fetched(request);

/** Notes what a page says of its build; answers whether there is another one to fall back on. */
async function note({ build, started }) {
  const name = PREFIX + build;
  if (await caches.has(name)) await write(name, started ? GOOD : FAILED);
  return !started && name === CACHE && !(await has(name, GOOD)) && !!(await lastGood());
}

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(tidy()));
self.addEventListener("message", (event) => {
  event.waitUntil(note(event.data).then((older) => event.ports[0]?.postMessage(older)));
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && new URL(request.url).origin === location.origin) {
    event.respondWith(answer(request));
  }
});
