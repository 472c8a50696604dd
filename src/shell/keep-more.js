// What keep.js can do without while the page opens: the undo steps of the open design, the words between pages, taking
// over what older programs kept in local storage, or a page that was left before it could write, and earlier states.

const PREFIX = "stringloft/";
const DESIGN = `${PREFIX}design/`;
const STEPS = `${PREFIX}steps/`;
const LAST = `${PREFIX}last/`;
const MOVED = `${PREFIX}moved`;
const EARLIER = `${PREFIX}earlier/`;
/** The most undo steps that are kept, and the most letters of them; as many again may lie ahead. */
const [MOST_STEPS, MOST_LETTERS] = [200, 1_000_000];
/** The most earlier states of a design, and the most letters of its states and of those of all designs. */
const [MOST_STATES, STATE_LETTERS, ALL_LETTERS] = [20, 1_000_000, 12_000_000];
/** How far apart states are kept while the work goes on, and after which pause the work before was a session. */
const [QUARTER_MS, PAUSE_MS] = [900_000, 1_800_000];

/** Fetches a script that stands beside this one, for whatever part of the program needs it. */
globalThis.bring = (file) => import(file);

const nameIn = (key) => key.slice(key.lastIndexOf("/") + 1);

/** A sum by which one text can be told from another. */
function sum(text) {
  let all = text.length;
  for (let at = 0; at < text.length; at++) all = (Math.imul(all, 31) + text.charCodeAt(at)) | 0;
  return all;
}

/** How the second text becomes the first: how much of their beginnings is alike, how much of their ends, what stood between. */
function stepFrom(before, after) {
  const least = Math.min(before.length, after.length);
  let [head, tail] = [0, 0];
  while (head < least && before[head] === after[head]) head++;
  while (tail < least - head && before.at(-1 - tail) === after.at(-1 - tail)) tail++;
  return [head, tail, before.slice(head, before.length - tail)];
}

/** The text that becomes of one by a step. */
const stepTo = (text, [head, tail, part]) =>
  part === null ? text : text.slice(0, head) + part + text.slice(text.length - tail);

/** Drops the first of some steps until they are as few and as short as they may be; how many went. */
function shorten(steps) {
  let letters = 0;
  const from = steps.findLastIndex(([, , part]) => (letters += 20 + (part?.length ?? 0)) > MOST_LETTERS) + 1;
  return steps.splice(0, Math.max(from, steps.length - MOST_STEPS)).length;
}

/** Whether a state was noted by the clock alone, and not as it was given away. */
const byClock = (why) => why === "session" || why === "time";

/**
 * Which states of a design go where there are too many of them, each by its name, its time, why it was noted and its
 * letters, the oldest first. The first and the last stay as long as they can; of the others those go first that have
 * close neighbours for their age, and those that were given away last.
 */
export function surplus(states, now) {
  const kept = [...states];
  const gone = [];
  const letters = () => kept.reduce((all, [, , , some]) => all + some, 0);
  while (kept.length > MOST_STATES || (kept.length > 1 && letters() > STATE_LETTERS)) {
    let [least, place] = [Infinity, 0];
    for (let at = 1; at < kept.length - 1; at++) {
      const [, time, why] = kept[at];
      const room = kept[at + 1][1] - kept[at - 1][1];
      const worth = ((byClock(why) ? 1 : 4) * room) / (Math.abs(now - time) + QUARTER_MS);
      if (worth < least) [least, place] = [worth, at];
    }
    gone.push(...kept.splice(place, 1));
  }
  return gone;
}

/** Everything here, for a keep.js that lends what it works with. */
export function make({ texts, marks, lefts, put, putFresh, tell, know, read, waits, done, local }) {
  /**
   * The undo steps of the open design: how each state becomes the one before it, how many older ones are gone, and how
   * what was undone comes again, the next one last.
   */
  let chain = { steps: [], gone: 0, ahead: [] };

  const channel = globalThis.BroadcastChannel && new BroadcastChannel("stringloft");
  let asked = false;

  /** Takes in what another page has written. What this one has to write is compared when it is written. */
  async function takeIn(key) {
    const known = marks.get(key);
    if (key.startsWith(STEPS) || waits(key)) return;
    const found = await read(key);
    if (waits(key) || marks.get(key) !== known || found?.mark === known) return;
    const other = found?.text !== texts.get(key);
    know(key, found);
    if (other) tell("elsewhere", key);
  }

  if (local) {
    addEventListener("storage", ({ key, newValue }) => {
      if (!key?.startsWith(PREFIX) || waits(key)) return;
      know(key, newValue === null ? undefined : { text: newValue });
      tell("elsewhere", key);
    });
  } else if (channel) {
    channel.onmessage = ({ data }) => data.forEach((key) => takeIn(key).catch(() => {}));
  }

  /** Puts a text that comes from elsewhere; a design never in place of another one, but beside it. */
  function putBeside(key, text) {
    const other = texts.get(key);
    if (other === text) return;
    if (!key.startsWith(DESIGN) || other === undefined) return put(key, text);
    putFresh(text);
  }

  /** Takes over what older programs kept, which stays where it is, and is known again by its sum. */
  async function takeOlder(older) {
    const moved = JSON.parse((await read(MOVED))?.text ?? "{}");
    const sums = Object.fromEntries(older.map(([key, text]) => [key, sum(text)]));
    const fresh = older.filter(([key]) => moved[key] !== sums[key]);
    fresh.forEach(([key, text]) => putBeside(key, text));
    if (fresh.length) put(MOVED, JSON.stringify({ ...moved, ...sums }));
  }

  /**
   * Takes over what a page left that could not write it any more: each key with its text, the mark it knew, and the one
   * that it was just writing. `taken` are the designs that came from pages before: what a second page left of one is
   * another text beside the first, or a deletion that knew nothing of it.
   */
  function takeLeft(left, taken) {
    // What belongs to a design is of use only where the design still follows what is here.
    const astray = new Set();
    for (const [key, text, mark, coming] of left) {
      const now = marks.get(key);
      if (!key.startsWith(DESIGN)) continue;
      const isNext = now === (mark ?? undefined) || (now && now === coming);
      if (isNext && !taken.has(key)) {
        taken.add(key);
        continue;
      }
      astray.add(nameIn(key));
      if (text !== null) putBeside(key, text);
    }
    for (const [key, text] of left) if (!astray.has(nameIn(key))) put(key, text ?? undefined);
  }

  /** The earlier states stand in a storage of their own, so that keeping never waits for them or fails with them. */
  let past;
  async function inPast(mode, act) {
    if (local) throw new Error("no storage");
    if (!past) {
      const request = indexedDB.open("stringloft-earlier", 1);
      request.onupgradeneeded = () => request.result.createObjectStore("states");
      past = await done(request);
      past.onversionchange = () => past.close();
      past.onclose = () => (past = undefined);
    }
    const transaction = past.transaction("states", mode);
    const complete = new Promise((yes, no) => {
      transaction.oncomplete = yes;
      transaction.onabort = () => no(transaction.error);
    });
    complete.catch(() => {}); // it is told below
    const answer = await act(transaction.objectStore("states"));
    await complete;
    return answer;
  }
  /** The keys of a design's states: its name, the time, why it was noted, and how many letters it has. */
  const statesOf = (name) => IDBKeyRange.bound([name], [name, []]);
  const byTime = ([, one], [, other]) => one - other;

  /** Drops states of a design beyond what it may have, and the oldest beyond what all may have. */
  async function thin(store, name) {
    const mine = await done(store.getAllKeys(statesOf(name)));
    for (const key of surplus(mine.sort(byTime), Date.now())) store.delete(key);
    const all = (await done(store.getAllKeys())).sort(byTime);
    let letters = all.reduce((sum, [, , , some]) => sum + some, 0);
    for (const key of all) {
      if (letters <= ALL_LETTERS) break;
      letters -= key[3];
      store.delete(key);
    }
  }

  /** Notes a state, unless it is noted already, or by the clock too soon after the last one. */
  const note = (name, text, why, time) =>
    inPast("readwrite", async (store) => {
      const last = (await done(store.getAllKeys(statesOf(name)))).sort(byTime).at(-1);
      if (last) {
        if ((await done(store.get(last))) === text) {
          if (byClock(why)) return;
          if (byClock(last[2]) || last[2] === why) store.delete(last);
        } else if (why === "time" && Math.abs(time - last[1]) < QUARTER_MS) {
          return;
        }
      }
      store.put(text, [name, time, why, text.length]);
      await thin(store, name);
    });

  /** When each design was looked at last for a state to be noted. */
  const looked = new Map();
  /** Before a design is put: notes, when there is time, the state in which the work before ended, or the last quarter of an hour. */
  function noteWork(name) {
    const [text, now] = [texts.get(DESIGN + name), Date.now()];
    if (Math.abs(now - (looked.get(name) ?? 0)) < QUARTER_MS) return;
    looked.set(name, now);
    if (text === undefined) return;
    const time = Number(texts.get(`${PREFIX}changed/${name}`)) || now;
    const why = Math.abs(now - time) > PAUSE_MS ? "session" : "time";
    setTimeout(() => note(name, text, why, time).catch((error) => console.info(`no earlier state: ${error}`)), 2_000);
  }

  const acts = {
    /** Notes the state of a design as it is now. */
    note: (name, why) => texts.has(DESIGN + name) && note(name, texts.get(DESIGN + name), why, Date.now()),
    /** The states of a design, or of all, in the form of a backup. */
    list: (name) =>
      inPast("readonly", async (store) => {
        const range = name ? statesOf(name) : undefined;
        const [keys, found] = await Promise.all([done(store.getAllKeys(range)), done(store.getAll(range))]);
        const pairs = keys.map((key, at) => [EARLIER + key.slice(0, 3).join("/"), found[at]]);
        return JSON.stringify({ stringloft_backup: 1, texts: pairs });
      }),
    /** Takes in states of a backup beside those that are here. */
    take: (backup) =>
      inPast("readwrite", async (store) => {
        const names = new Set();
        for (const [key, text] of JSON.parse(backup).texts) {
          const [name, time, why] = key.slice(EARLIER.length).split("/");
          if (!why || !(time > 0)) continue;
          store.put(text, [name, Number(time), why, text.length]);
          names.add(name);
        }
        for (const name of names) await thin(store, name);
      }),
    forget: (name) => inPast("readwrite", (store) => done(store.delete(statesOf(name)))),
  };
  /** For the program: `earlier(act, ...)`; the answer is a text. */
  globalThis.earlier = async (act, ...given) => (await acts[act](...given)) || "";

  return {
    /** Tells other pages which keys were written. */
    say: (keys) => channel?.postMessage(keys),

    /** Asks the browser, once, not to clear this storage when it needs room. */
    askForGood() {
      if (!asked) navigator.storage?.persist?.().catch(() => {});
      asked = true;
    },

    async takeOver(ours) {
      const older = ours.filter(([key]) => !key.startsWith(LAST));
      if (older.length) await takeOlder(older);
      const taken = new Set();
      for (const [key, text] of ours) {
        if (!key.startsWith(LAST)) continue;
        takeLeft(JSON.parse(text), taken);
        lefts.push(key);
      }
    },

    /** Reads the undo steps of a design that is being opened; those of another text than the one that is kept are none. */
    async follow(name) {
      if (chain.name === name) return;
      const mine = { name, steps: [], gone: 0, ahead: [] };
      chain = mine;
      const found = await read(STEPS + name);
      if (!found?.text || chain !== mine || mine.begun) return;
      const { of, steps, ahead } = JSON.parse(found.text);
      if (of !== sum(texts.get(DESIGN + name) ?? "")) return;
      mine.steps = steps;
      mine.ahead = ahead ?? [];
      tell("steps", "");
    },

    /**
     * Adds to the undo steps of a design: it stands at the step `at`, no step up to `steady` has changed since it was put
     * last, and `before` is the state before this one, where there is one.
     */
    add(name, text, at, steady, before) {
      if (chain.name !== name) chain = { name, steps: [], gone: steady, ahead: [] };
      noteWork(name);
      const { steps, ahead } = chain;
      chain.begun = true;
      chain.gone = Math.min(chain.gone, steady);
      // Back to the last state that has not changed: what is left on the way lies ahead, and may come again.
      let was = texts.get(DESIGN + name) ?? text;
      while (steps.length > steady - chain.gone) {
        const older = stepTo(was, steps.pop());
        ahead.push(stepFrom(was, older));
        was = older;
      }
      const again = [];
      let prior;
      for (let turn = steady; turn < at && ahead.length; turn++) {
        const newer = stepTo(was, ahead.pop());
        again.push(stepFrom(was, newer));
        [prior, was] = [was, newer];
      }
      if (was === text && again.length === at - steady && (at === steady || prior === before)) {
        steps.push(...again);
      } else {
        ahead.length = 0;
        if (steady < at) {
          // Steps that came too fast to be put each are one.
          while (steps.length + chain.gone < at - 1) steps.push([0, 0, null]);
          if (before !== undefined) steps.push(stepFrom(before, text));
        }
      }
      chain.gone += shorten(steps);
      shorten(ahead);
      put(STEPS + name, JSON.stringify({ of: sum(text), steps, ahead }));
    },

    /** How many steps there are back, or forward again. */
    steps: (forward) => (forward ? chain.ahead.length : chain.steps.length + chain.gone),

    /** The state one step back, or one forward again; none where that is not known. */
    next(forward) {
      const step = (forward ? chain.ahead : chain.steps).at(-1);
      const text = texts.get(DESIGN + chain.name);
      if (step && text !== undefined) return stepTo(text, step);
    },
  };
}
