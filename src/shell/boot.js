// Loads the app, or says in the page why it could not; and when the app stops later, has that told. A file of its own,
// since the page's policy allows no script inside the page. The build puts keep.js before it, and in a release build
// offline.js after it.

// The one door for markup and for the addresses of the workers. What users typed is escaped in the program's markup, so
// nothing in it runs or loads anything: markup that would is refused, wherever it comes from.
globalThis.trustedTypes?.createPolicy("default", {
  createHTML: (text) => (/<(script|iframe|object|embed|base|meta|link|form)/i.test(text) ? undefined : text),
  createScriptURL: (url) => (/^(sw|\.\/hearing-\w+)\.js$/.test(url) ? url : undefined),
});

const { js, wasm, link, build, fault, sums, later, words, first } = document.querySelector("script[data-wasm]").dataset;
const files = [js, wasm];

// The languages beside English, which is in the program: their codes, the one to begin with, and its sentences.
const packs = Object.fromEntries(words ? words.split(" ").map((pair) => pair.split("=")) : []);
const tongues = (globalThis.tongues = {
  codes: Object.keys(packs),
  code: "en",
  text: "",
  async fetch(code) {
    const answer = await fetch(packs[code]);
    if (!answer.ok) throw new Error(answer.statusText);
    return answer.text();
  },
});
/** The message of shell.ftl with that place, filled: English stands beside it, any other language in its pack. */
const told = (tongues.told = (place, english, value) =>
  (tongues.text.split("\n")[+first + place] || english || "").replace(/\x01a|\{ \$\w+ \}/, value));
const spoken = keeping.ready
  .then(async () => {
    const wanted = [keeping.get("stringloft/language"), ...navigator.languages].map((code) => code?.slice(0, 2));
    const code = wanted.find((one) => one === "en" || packs[one]);
    if (!packs[code]) return;
    tongues.text = await tongues.fetch(code);
    document.documentElement.lang = tongues.code = code;
    ["shell-about", "shell-state"].forEach((id, place) => {
      const said = document.getElementById(id);
      if (said) said.textContent = told(place, said.textContent);
    });
  })
  .catch(() => {}); // English is always there

/** What became of a file: fetched again, past every cache, and held against its sum. */
async function stateOf(file, integrity) {
  try {
    const answer = await fetch(file, { cache: "reload", integrity });
    return answer.ok ? "whole" : "missing";
  } catch {
    const plain = await fetch(file, { cache: "reload" }).catch(() => undefined);
    return plain?.ok ? "damaged" : "missing";
  }
}

/** What is wrong and what to do, for someone who only wants to open the page. */
async function explain(error) {
  await Promise.race([spoken, new Promise((then) => setTimeout(then, 3000))]);
  const old = told(2, "This browser is too old for Stringloft, or forbids WebAssembly. Update it, or use another one.");
  if (typeof WebAssembly !== "object") return old;
  // A new build that the service worker keeps and that did not start: the one before it opens next time.
  if (await say({ build, started: false })) {
    return told(3, "The newest version of Stringloft did not start. Reload the page: the version before it opens. Your saved designs are untouched.");
  }
  if (error instanceof WebAssembly.RuntimeError) {
    return told(4, "Stringloft stopped while opening. Reload the page. Your saved designs are untouched.");
  }
  const known = sums?.split(" ") ?? [];
  const states = await Promise.all(files.map((file, place) => stateOf(file, known[place])));
  if (states.includes("missing")) {
    return told(5, "A part of Stringloft did not arrive. Check the connection, then reload the page.");
  }
  if (states.includes("damaged")) {
    return told(6, "A part of Stringloft arrived damaged, perhaps amid an update: wait a minute, then reload the page. Your saved designs are untouched.");
  }
  return old;
}

/** Tells the service worker how this build did, and asks whether there is another one; within a second. */
function say(word) {
  const worker = navigator.serviceWorker?.controller;
  if (!worker) return false;
  return new Promise((answered) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => answered(data);
    setTimeout(answered, 1000, false);
    worker.postMessage(word, [port2]);
  });
}

// An error that went through the program leaves it half way through what it did, and nothing can be trusted after it.
let stopped = false;
async function stop(error) {
  if (stopped || document.getElementById("shell")) return; // while it opens, it is explained below
  stopped = true;
  // What it would still do, by a timer or when the page is left, must not spoil what is kept.
  const ended = keeping.stop();
  try {
    await ended;
    (await import(fault)).tell(error, build);
  } catch {
    alert(told(7, "Stringloft has stopped. Reload the page. Your saved designs are untouched."));
  }
}
const trapped = (error) => error instanceof WebAssembly.RuntimeError;
addEventListener("error", ({ error }) => (trapped(error) || /wasm/.test(error?.stack ?? "")) && stop(error));
// A promise that the browser breaks may have been asked for by the program, and harms nothing.
addEventListener("unhandledrejection", ({ reason }) => trapped(reason) && stop(reason));

// Whoever comes with a link needs what reads it at once; it would be asked for only when the program runs.
if (location.hash.length > 1) {
  for (const href of link ? link.split(" ") : []) {
    const early = Object.assign(document.createElement("link"), { rel: "preload", as: "fetch", crossOrigin: "anonymous", href });
    document.head.append(early);
  }
}
try {
  const { default: init } = await import(js);
  await keeping.ready; // it reads what is kept as soon as it runs
  await spoken;
  await init({ module_or_path: wasm });
} catch (error) {
  const words = await explain(error);
  const state = document.getElementById("shell-state");
  if (state) {
    state.textContent = words;
    state.setAttribute("role", "alert");
  }
  throw error; // for the console
}
// What papers and later views look like: the first screen does not wait for it.
if (later) document.head.append(Object.assign(document.createElement("link"), { rel: "stylesheet", href: later }));

