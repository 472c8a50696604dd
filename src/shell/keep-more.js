// What keep.js can do without while the page opens: the undo steps of the open design, the words between pages, and
// taking over what older programs kept in local storage, or a page that was left before it could write.

const PREFIX = "stringloft/";
const DESIGN = `${PREFIX}design/`;
const STEPS = `${PREFIX}steps/`;
const LAST = `${PREFIX}last/`;
const MOVED = `${PREFIX}moved`;
/** The most undo steps that are kept, and the most letters of them. */
const [MOST_STEPS, MOST_LETTERS] = [200, 1_000_000];

const nameIn = (key) => key.slice(key.lastIndexOf("/") + 1);

/** A sum by which one text can be told from another. */
function sum(text) {
  let all = text.length;
  for (let at = 0; at < text.length; at++) all = (Math.imul(all, 31) + text.charCodeAt(at)) | 0;
  return all;
}

/** A name as all designs have: the time, and a part that is left to chance. */
const freshName = () => Date.now().toString(16) + Math.random().toString(16).slice(2, 7).padEnd(5, "0");

/** How the second text becomes the first: how much of their beginnings is alike, how much of their ends, what stood between. */
function stepFrom(before, after) {
  const least = Math.min(before.length, after.length);
  let [head, tail] = [0, 0];
  while (head < least && before[head] === after[head]) head++;
  while (tail < least - head && before.at(-1 - tail) === after.at(-1 - tail)) tail++;
  return [head, tail, before.slice(head, before.length - tail)];
}

/** Everything here, for a keep.js that lends what it works with. */
export function make({ texts, marks, lefts, put, tell, know, read, waits, local }) {
  /** The undo steps of the open design: how each state becomes the one before it, and how many older ones are gone. */
  let chain = { steps: [], gone: 0 };

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
    const name = freshName();
    put(DESIGN + name, text);
    put(`${PREFIX}changed/${name}`, String(Date.now()));
  }

  /** Takes over what older programs kept, which stays where it is, and is known again by its sum. */
  async function takeOlder(keys) {
    const moved = JSON.parse((await read(MOVED))?.text ?? "{}");
    const sums = Object.fromEntries(keys.map((key) => [key, sum(localStorage[key])]));
    const fresh = keys.filter((key) => moved[key] !== sums[key]);
    fresh.forEach((key) => putBeside(key, localStorage[key]));
    if (fresh.length) put(MOVED, JSON.stringify({ ...moved, ...sums }));
  }

  /** Takes over what a page left that could not write it any more: each key with its text and the mark it knew. */
  function takeLeft(left) {
    // What belongs to a design is of use only where the design still follows what is here.
    const astray = new Set();
    for (const [key, text, mark] of left) {
      if (!key.startsWith(DESIGN) || marks.get(key) === (mark ?? undefined)) continue;
      astray.add(nameIn(key));
      if (text !== null) putBeside(key, text);
    }
    for (const [key, text] of left) if (!astray.has(nameIn(key))) put(key, text ?? undefined);
  }

  return {
    /** Tells other pages which keys were written. */
    say: (keys) => channel?.postMessage(keys),

    /** Asks the browser, once, not to clear this storage when it needs room. */
    askForGood() {
      if (!asked) navigator.storage?.persist?.().catch(() => {});
      asked = true;
    },

    async takeOver(keys) {
      const older = keys.filter((key) => !key.startsWith(LAST));
      if (older.length) await takeOlder(older);
      for (const key of keys.filter((key) => key.startsWith(LAST))) {
        takeLeft(JSON.parse(localStorage[key]));
        lefts.push(key);
      }
    },

    /** Reads the undo steps of a design that is being opened; those of another text than the one that is kept are none. */
    async follow(name) {
      if (chain.name === name) return;
      const mine = { name, steps: [], gone: 0 };
      chain = mine;
      const found = await read(STEPS + name);
      if (!found?.text || chain !== mine || mine.begun) return;
      const { of, steps } = JSON.parse(found.text);
      if (of !== sum(texts.get(DESIGN + name) ?? "")) return;
      mine.steps = steps;
      tell("steps", "");
    },

    /**
     * Adds to the undo steps of a design: it stands at the step `at`, no step up to `steady` has changed since it was put
     * last, and `before` is the state before this one, where there is one.
     */
    add(name, text, at, steady, before) {
      if (chain.name !== name) chain = { name, steps: [], gone: steady };
      const { steps } = chain;
      chain.begun = true;
      chain.gone = Math.min(chain.gone, steady);
      steps.length = Math.min(steps.length, steady - chain.gone);
      if (steady < at) {
        // Steps that came too fast to be put each are one.
        while (steps.length + chain.gone < at - 1) steps.push([0, 0, null]);
        if (before !== undefined) steps.push(stepFrom(before, text));
      }
      let letters = 0;
      const from = steps.findLastIndex(([, , part]) => (letters += 20 + (part?.length ?? 0)) > MOST_LETTERS) + 1;
      const extra = Math.max(from, steps.length - MOST_STEPS);
      if (extra > 0) {
        steps.splice(0, extra);
        chain.gone += extra;
      }
      put(STEPS + name, JSON.stringify({ of: sum(text), steps }));
    },

    steps: () => chain.steps.length + chain.gone,

    before() {
      const [head, tail, part] = chain.steps.at(-1) ?? [];
      const text = texts.get(DESIGN + chain.name);
      if (head === undefined || text === undefined) return;
      return part === null ? text : text.slice(0, head) + part + text.slice(text.length - tail);
    },
  };
}
