// What the browser keeps for the program: texts under keys. They stand in IndexedDB, and what the program may ask for at
// any time also stands here in memory, so that it reads without waiting. The build puts this file before boot.js, which
// has it open while the program is on its way.
//
// What is put is in memory at once, and all that waits is written in one strict transaction: when the browser says that
// it is complete, it is on the disk and counts as kept. Every text has a mark that changes with it. A design is only
// written over the one that this page knows, so that a page never wipes out what another one did.

globalThis.keeping = (() => {
  const PREFIX = "stringloft/";
  const DESIGN = `${PREFIX}design/`;
  const OPEN = `${PREFIX}open`;
  const STEPS = `${PREFIX}steps/`;
  /** What a page could not write before it was left; each page has a key of its own. */
  const LAST = `${PREFIX}last/`;
  /** The sums of what was taken over from local storage. */
  const MOVED = `${PREFIX}moved`;
  /** How long the browser may take to open its storage, and how long after a failure the next try comes. */
  const [PATIENCE_MS, AGAIN_MS] = [4_000, 5_000];

  const texts = new Map();
  const marks = new Map();
  let waiting = new Map();
  let flying = new Map();
  let sent = new Map(); // the marks of what flies, or flew last
  let base; // the open database
  let local = false; // whether local storage stands in for it, where the browser refuses it
  let failed = ""; // the name of the last failure, while it lasts
  let stopped = false;
  let again; // the timer of the next try
  const listeners = [];
  const tell = (what, key) => listeners.forEach((told) => told(what, key));
  let more; // what keep-more.js made, once it is here
  const last = LAST + Math.random();
  /** What is taken out of local storage once all is written. */
  const lefts = [last];

  /** Texts that are read only when they are asked for. */
  const isAside = (key) => key.startsWith(STEPS) || key === MOVED;
  const stores = (key) => (isAside(key) ? "aside" : "texts");
  /** The last part of a key: the name of the design, which its date and its steps have too. */
  const nameIn = (key) => key.slice(key.lastIndexOf("/") + 1);
  const done = (request) =>
    new Promise((yes, no) => {
      request.onsuccess = () => yes(request.result);
      request.onerror = () => no(request.error);
    });

  async function open() {
    if (base || local) return;
    const request = indexedDB.open("stringloft", 1);
    request.onupgradeneeded = () => ["texts", "aside"].forEach((name) => request.result.createObjectStore(name));
    const slow = new Promise((_, no) => setTimeout(no, PATIENCE_MS, new DOMException("", "TimeoutError")));
    const opened = await Promise.race([done(request), slow]);
    opened.onversionchange = () => opened.close(); // a later build is not to wait for this page
    opened.onclose = () => (base = undefined);
    base = opened;
  }

  /** What stands under a key on the disk, or is on its way there. */
  function read(key) {
    for (const put of [waiting, flying]) if (put.has(key)) return { text: put.get(key) };
    if (local) return { text: localStorage[key] };
    return done(base.transaction(stores(key)).objectStore(stores(key)).get(key));
  }

  const waits = (key) => waiting.has(key) || flying.has(key);

  /** The name of the design that was open last, in this tab or in any. */
  function opened() {
    try {
      return sessionStorage.getItem(OPEN) ?? texts.get(OPEN);
    } catch {
      return texts.get(OPEN); // cookies are blocked
    }
  }

  function know(key, found) {
    if (found) {
      texts.set(key, found.text);
      marks.set(key, found.mark);
    } else {
      texts.delete(key);
      marks.delete(key);
    }
  }

  /** Reads what is kept. Where the browser refuses IndexedDB, local storage is read and written in its place. */
  async function start() {
    // Before the rest: what another page takes over meanwhile is found in one place or the other.
    const ours = [];
    try {
      for (const key of Object.keys(localStorage)) if (key.startsWith(PREFIX)) ours.push([key, localStorage[key]]);
    } catch {
      // Cookies are blocked.
    }
    try {
      await open();
      const all = base.transaction("texts").objectStore("texts");
      const [keys, found] = await Promise.all([done(all.getAllKeys()), done(all.getAll())]);
      keys.forEach((key, at) => know(key, found[at]));
    } catch (error) {
      local = true;
      console.info(`IndexedDB is refused: ${error}`);
    }
    try {
      if (local) for (const [key, text] of ours) texts.set(key, text);
      const coming = import(document.querySelector("[data-more]").dataset.more).then(async ({ make }) => {
        more = make({ texts, marks, lefts, put, putFresh, tell, know, read: (key) => open().then(() => read(key)), waits, done, local });
        if (ours.length && !local) await more.takeOver(ours);
        if (opened()) await more.follow(opened());
      });
      coming.catch((error) => console.info(`without what was before: ${error}`));
      if (ours.length) await coming;
    } catch (error) {
      console.info(`not all that was kept before could be read: ${error}`);
    }
    put(`${PREFIX}tried`, ""); // whether this browser keeps anything is known before anyone relies on it
  }

  function put(key, text) {
    if (stopped) return;
    if (!isAside(key)) text === undefined ? texts.delete(key) : texts.set(key, text);
    waiting.set(key, text);
    // What belongs together is put in one go.
    queueMicrotask(write);
  }

  /** Puts a design, or one of the bin, under a name of its own, as all have: the time, and a part that is left to chance. */
  function putFresh(text, place = "design", dated = "changed") {
    const name = Date.now().toString(16) + Math.random().toString(16).slice(2, 7).padEnd(5, "0");
    put(`${PREFIX}${place}/${name}`, text);
    put(`${PREFIX}${dated}/${name}`, String(Date.now()));
  }

  /** Writes all that waits, then what came meanwhile. After a failure it waits again, and is tried again. */
  async function write() {
    if (flying.size) return;
    while (waiting.size) {
      [flying, waiting] = [waiting, new Map()];
      let clashes = [];
      try {
        clashes = await (local ? writeLocally() : transact());
        failed = "";
      } catch (error) {
        waiting = new Map([...flying, ...waiting]);
        flying = new Map();
        clearTimeout(again);
        again = setTimeout(write, AGAIN_MS);
        failed = error?.name || "Error";
        if (failed === "InvalidStateError") base = undefined; // closed under our hands
        tell("failed", "");
        return;
      }
      const written = [...flying.keys()];
      const mine = new Map([...flying, ...waiting]);
      flying = new Map();
      // Nothing is waited for here: another turn of writing would come between.
      for (const [key, found] of clashes) {
        for (const other of [...waiting.keys()]) if (nameIn(other) === nameIn(key)) waiting.delete(other);
        know(key, found);
      }
      for (const [key] of clashes) {
        if (!key.startsWith(DESIGN)) continue;
        const text = mine.get(key);
        // What was typed into a design that is open no more goes into a copy here; of the open one the program makes one.
        const isBeside = text !== undefined && nameIn(key) !== opened();
        if (isBeside) putFresh(text);
        // One that was to be deleted stays as another tab has it; what this one had is in the bin all the same.
        const binned = mine.get(`${PREFIX}bin/${nameIn(key)}`);
        if (text === undefined && binned !== undefined) putFresh(binned, "bin", "binned");
        tell(isBeside ? "beside" : "clash", key);
      }
      if (written.some((key) => key.startsWith(DESIGN))) {
        document.documentElement.dataset.kept = Date.now(); // for fault.js
        more?.askForGood();
      }
    }
    try {
      for (const key of lefts.splice(1).concat(last)) localStorage.removeItem(key);
    } catch {
      // Then nothing was left there.
    }
    tell("kept", "");
  }

  function writeLocally() {
    for (const [key, text] of flying) text === undefined ? localStorage.removeItem(key) : localStorage.setItem(key, text);
    return [];
  }

  /** Writes what flies in one transaction, but for the designs that another page wrote meanwhile: those are the answer. */
  async function transact() {
    await open();
    const transaction = base.transaction(["texts", "aside"], "readwrite", { durability: "strict" });
    const complete = new Promise((yes, no) => {
      transaction.oncomplete = yes;
      transaction.onabort = () => no(transaction.error);
    });
    const clashes = new Map();
    sent = new Map();
    try {
      const names = new Set();
      for (const [key, text] of flying) {
        if (!key.startsWith(DESIGN)) continue;
        const found = await done(transaction.objectStore("texts").get(key));
        if (found?.mark === marks.get(key) || found?.text === text) continue;
        names.add(nameIn(key));
      }
      for (const [key, text] of flying) {
        const store = transaction.objectStore(stores(key));
        if (names.has(nameIn(key))) {
          // What belongs to such a design is not written either, and is as it was again.
          if (!isAside(key)) clashes.set(key, await done(store.get(key)));
          continue;
        }
        const mark = text === undefined ? undefined : Math.random();
        if (text === undefined) store.delete(key);
        else store.put({ text, mark }, key);
        sent.set(key, mark);
      }
    } catch (error) {
      complete.catch(() => {}); // it is told below
      try {
        transaction.abort();
      } catch {
        // It has ended already.
      }
      throw error;
    }
    await complete;
    for (const [key, mark] of sent) {
      if (isAside(key)) continue;
      marks.set(key, mark);
      if (!mark) lefts.push(key); // else an older program's copy would come back
    }
    more?.say([...sent.keys()]);
    return clashes;
  }

  return {
    get: (key) => texts.get(key),
    keys: (prefix) => [...texts.keys()].filter((key) => key.startsWith(prefix)),
    put,
    /** Puts a design with its undo steps; keep-more.js says what the numbers are. */
    putDesign(name, text, ...step) {
      more?.add(name, text, ...step);
      put(DESIGN + name, text);
      put(`${PREFIX}changed/${name}`, String(Date.now()));
    },
    /** Notes which design is open, for this tab and for the next one. */
    open(name) {
      try {
        sessionStorage.setItem(OPEN, name);
      } catch {
        // The next one opens with what was open in any tab.
      }
      if (texts.get(OPEN) !== name) put(OPEN, name);
      more?.follow(name).catch(() => {});
    },
    opened,
    /** Whether the page is to open with nothing, once: so asked for where the program has stopped. */
    blank() {
      try {
        const asked = "stringloft/with-nothing" in sessionStorage;
        delete sessionStorage["stringloft/with-nothing"];
        return asked;
      } catch {
        return false;
      }
    },
    /** How many steps there are back from the open design, or forward again. */
    steps: (forward) => more?.steps(forward) ?? 0,
    /** The state one step back from the open design as it was put last, or one forward; none where that is not known. */
    next: (forward) => more?.next(forward),
    listen: (told) => void listeners.push(told),
    failed: () => failed,
    space: () => navigator.storage?.estimate?.(),
    waits,
    /** Leaves what waits in local storage, where the next page finds it; whether all is safe then. */
    leave() {
      const all = new Map([...flying, ...waiting]);
      all.delete(`${PREFIX}tried`);
      if (!all.size) return true;
      try {
        const left = [...all].map(([key, text]) => [key, text, marks.get(key), sent.get(key)]);
        localStorage.setItem(last, JSON.stringify(left));
        for (const key of lefts.splice(1)) localStorage.removeItem(key); // it is in this one now
        return true;
      } catch {
        return false;
      }
    },
    /** Takes nothing more, and is done when all is written that waits, or is not going to be. */
    async stop() {
      stopped = true;
      for (let turns = 0; (flying.size || waiting.size) && !failed && turns < 40; turns++) {
        await new Promise((then) => setTimeout(then, 50));
      }
    },
    ready: start(),
  };
})();
