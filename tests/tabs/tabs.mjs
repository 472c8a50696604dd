//! Tabs of one browser, each with the scripts of the page that keep (`src/shell/keep.js`, `keep-more.js`), over one
//! storage that does nothing by itself: `tests/tabs.rs` says who does what, and which waiting step comes next.
//!
//! A line in is a command as JSON, a line out what came of it. What a tab tells its program goes out at once, and comes
//! back when the program has done what it does about it. Time and chance come from a seed.

import { readFileSync, readSync, writeSync } from "node:fs";

const source = (name) => readFileSync(new URL(`../../src/shell/${name}`, import.meta.url), "utf8");
/** With one thing in place of another that must be there. */
function put(text, one, other) {
  if (!text.includes(one)) throw new Error(`${one} is no longer there`);
  return text.replaceAll(one, other);
}
const script = (text) => new Function("page", `with (page) {${text}}`);
// A script of its own module cannot be given other surroundings, so it is read as a text that gives what it exports.
const KEEP = script(put(source("keep.js"), "import(", "load("));
const MORE = script(`${put(source("keep-more.js"), "export function", "function")}; return { make };`);

let clock, state, disk, local, tabs;
const random = () => {
  state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
  return Number(state >> 11n) / 2 ** 53;
};

/** Local storage: keys are its own, what it can do is not. */
class Local {
  setItem(key, text) {
    this[key] = String(text);
  }
  getItem(key) {
    return this[key] ?? null;
  }
  removeItem(key) {
    delete this[key];
  }
}

const failure = (name) => Object.assign(new Error(name), { name });

/** One transaction: what it has written counts when it is complete. */
class Transaction {
  constructor(tab, names, mode) {
    Object.assign(this, { tab, names: [names].flat(), writes: mode === "readwrite", asked: [], written: new Map() });
    disk.open.push(this);
  }
  objectStore(name) {
    const ask = (answer) => {
      if (this.ended) throw failure("TransactionInactiveError");
      const request = {};
      this.asked.push([request, answer]);
      return request;
    };
    const stored = disk.stores[name];
    return {
      get: (key) => ask(() => (this.written.has(`${name} ${key}`) ? this.written.get(`${name} ${key}`) : stored.get(key))),
      getAllKeys: () => ask(() => [...stored.keys()]),
      getAll: () => ask(() => [...stored.values()]),
      put: (value, key) => ask(() => void this.written.set(`${name} ${key}`, value)),
      delete: (key) => ask(() => void this.written.set(`${name} ${key}`, undefined)),
    };
  }
  abort(name = "AbortError") {
    if (this.ended) return;
    this.ended = true;
    this.error = failure(name);
    disk.open = disk.open.filter((one) => one !== this);
    this.tab?.later("abort", () => this.onabort?.());
  }
  /** Whether no earlier one stands in its way. */
  get may() {
    const before = disk.open.slice(0, disk.open.indexOf(this));
    return !before.some((one) => (one.writes || this.writes) && one.names.some((name) => this.names.includes(name)));
  }
  /** The next request, or the end. */
  step(fails) {
    const next = this.asked.shift();
    if (next) {
      const [request, answer] = next;
      request.result = answer();
      request.onsuccess?.();
    } else if (fails && this.writes) {
      this.abort("QuotaExceededError");
    } else {
      this.complete();
    }
  }
  complete() {
    this.ended = true;
    disk.open = disk.open.filter((one) => one !== this);
    for (const [place, value] of this.written) {
      const [name, key] = [place.slice(0, place.indexOf(" ")), place.slice(place.indexOf(" ") + 1)];
      if (value === undefined) disk.stores[name].delete(key);
      else disk.stores[name].set(key, value);
      if (name === "texts" && value) disk.ever.push([key, value.text]);
    }
    this.tab?.later("complete", () => this.oncomplete?.());
  }
}

/** A tab: one page with its own surroundings. What waits in it comes when it is told to. */
class Tab {
  waiting = [];
  constructor(session) {
    this.session = session;
    this.load();
  }
  tell(what, key) {
    if (this.gone) return;
    say({ tells: [tabs.indexOf(this), what, key] });
    for (;;) {
      const command = heard();
      if (command.do === "heard") return;
      say({ answer: commands[command.do](command) ?? null });
    }
  }
  later(what, act) {
    if (!this.gone) this.waiting.push([what, act]);
  }
  load() {
    const tab = this;
    const base = { transaction: (names, mode) => new Transaction(tab, names, mode), close() {} };
    const page = {
      localStorage: local,
      sessionStorage: this.session,
      indexedDB: {
        open(name) {
          if (name !== "stringloft") throw failure("NotFoundError"); // earlier states are no part of this
          const request = {};
          tab.later("open", () => ((request.result = base), request.onsuccess()));
          return request;
        },
      },
      document: {
        querySelector: () => ({ dataset: { more: "" } }),
        documentElement: { dataset: {} },
      },
      navigator: {},
      addEventListener() {},
      // How long the browser may take is not played: a storage that never opens has tests of its own.
      setTimeout: (act, ms, ...given) => (ms === 4000 ? undefined : tab.later("timer", () => act(...given))),
      clearTimeout() {},
      load: () => (tab.more = new Promise((then) => tab.later("more", () => then(MORE(page))))),
      console: { info() {} },
      Date: { now: () => ++clock },
      Math: Object.assign(Object.create(Math), { random, imul: Math.imul, max: Math.max, min: Math.min, abs: Math.abs }),
      IDBKeyRange: {},
      BroadcastChannel: class {
        postMessage(data) {
          for (const other of tabs) if (other && other !== tab) other.later("message", () => other.channel?.onmessage?.({ data }));
        }
        constructor() {
          tab.channel = this;
        }
      },
    };
    page.globalThis = page;
    KEEP(page);
    this.keeping = page.keeping;
    // The program comes after both scripts.
    this.keeping.ready.then(() => this.more).then(() => this.tell("ready", ""));
    this.keeping.listen((what, key) => this.tell(what, key));
  }
  /** Is gone, as after a kill: nothing more happens in it. A write under way is complete or lost. */
  end(completes) {
    this.gone = true;
    this.waiting = [];
    this.channel = undefined;
    for (const one of disk.open.filter(({ tab }) => tab === this)) {
      one.tab = undefined;
      if (completes && one.may && !one.asked.length) one.complete();
      else one.abort();
    }
  }
}

/** What may happen next, in any tab; where there is no room, of what writes its end alone. */
function steps(fails) {
  const may = disk.open.filter((one) => one.may);
  const full = may.filter((one) => fails && one.writes && !one.asked.length);
  if (full.length) return full.map((one) => () => one.step(true));
  const all = may.map((one) => () => one.step(false));
  for (const tab of tabs) {
    // Messages, and what else waits, each in its order.
    const messages = tab?.waiting.find(([what]) => what === "message");
    const others = tab?.waiting.find(([what]) => what !== "message");
    for (const next of [messages, others]) {
      if (next) all.push(() => (tab.waiting.splice(tab.waiting.indexOf(next), 1), next[1]()));
    }
  }
  return all;
}

const rest = () => new Promise(setImmediate);

const commands = {
  begin({ seed, count }) {
    clock = 1_800_000_000_000;
    state = BigInt(seed);
    local = new Local();
    disk = { open: [], ever: [], stores: { texts: new Map(), aside: new Map() } };
    tabs = [];
    for (let at = 0; at < count; at++) tabs.push(new Tab(new Local()));
  },
  /** Some waiting step; whether there was one. */
  step({ which, fails }) {
    const all = steps(fails);
    if (all.length) all[which % all.length]();
    return all.length > 0;
  },
  put: ({ tab, key, text }) => void tabs[tab].keeping.put(key, text ?? undefined),
  keep: ({ tab, name, text, at, steady, before }) =>
    void tabs[tab].keeping.putDesign(name, text, at, steady, before ?? undefined),
  open: ({ tab, name }) => void tabs[tab].keeping.open(name),
  get: ({ tab, key }) => tabs[tab].keeping.get(key) ?? null,
  keys: ({ tab, prefix }) => tabs[tab].keeping.keys(prefix),
  steps: ({ tab, forward }) => tabs[tab].keeping.steps(forward),
  next: ({ tab, forward }) => tabs[tab].keeping.next(forward) ?? null,
  failed: ({ tab }) => tabs[tab].keeping.failed(),
  waits: ({ tab, key }) => tabs[tab].keeping.waits(key),
  opened: ({ tab }) => tabs[tab].keeping.opened() ?? null,
  leave: ({ tab }) => tabs[tab].keeping.leave(),
  reload({ tab, completes }) {
    const { session } = tabs[tab];
    tabs[tab].end(completes);
    tabs[tab] = new Tab(session);
  },
  /** Every text that stands on the disk or was left in local storage, and whether a text was ever there under a key. */
  all: () => [...disk.stores.texts].map(([key, { text }]) => [key, text]),
  ever: ({ key, text }) => disk.ever.some(([one, other]) => one === key && other === text),
};

let ahead = "";
/** The next line that comes in. */
function heard() {
  const piece = Buffer.alloc(65_536);
  while (!ahead.includes("\n")) {
    const count = readSync(0, piece);
    if (!count) process.exit();
    ahead += piece.toString("utf8", 0, count);
  }
  const end = ahead.indexOf("\n");
  const line = ahead.slice(0, end);
  ahead = ahead.slice(end + 1);
  return JSON.parse(line);
}
const say = (all) => writeSync(1, `${JSON.stringify(all)}\n`);

for (;;) {
  const command = heard();
  const answer = commands[command.do](command) ?? null;
  await rest();
  say({ answer });
}
