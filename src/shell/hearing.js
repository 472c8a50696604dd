// The sound of the strings: what the page plays, and the worker that renders it and listens. One file for both: the page loads it as
// a script when sound is first asked for, and starts it again as a worker of its own. The build puts before it the
// script that binds the module, and the module's name in place of the one below.
//
// The page and its worker speak in messages with a number, a word and what it is about; each is answered under its
// number, with `error` where it failed:
//   {id, ask: "render", rate, most, sets: [[{numbers, start}]]} -> {id, counts}     how many samples each sound has
//                                          then {id, pieces} as often as it takes   the next samples, equally loud
//                                                                 and {id, over}
//   {id, ask: "ahead", rate, most, numbers} -> {id}                                 the beginning of a string, for later
//   {id, ask: "file", sound, rate} -> {id, bytes}                                   a WAV file
//   {id, ask: "listen", seek} -> {id}                                               what to listen for from now on
//   {id, ask: "listen", samples, rate} -> {id, heard}                               what is heard in them
//   {id, ask: "listen"} -> {id, heard}                                              what is left, as no more is heard
// What is listened for and what is heard are lists of numbers (see src/engine/listen/wire.rs).
// What else the worker learns is another word in ASKS.
//
// The program asks the page's half with one list of numbers, as bytes: which sound is played, whether it goes on where
// the other one is now, how many sounds there are to compare; of each how many strings; of each string its start in
// seconds, how many numbers it has, and these (see src/engine/sound/voice.rs).

const HEARING_WASM = "{hearing.wasm}";

/** What the worker does. The module comes with the first word. */
function work() {
  const AHEAD = 16384; // samples of each string
  let renderer;
  let rate;
  let tuner;
  const ready = wasm_bindgen({ module_or_path: HEARING_WASM });
  ready.catch(() => {}); // told to whoever asks
  const jobs = []; // what comes in pieces: the newest is last, and done first
  let atWork = false;
  const pause = new MessageChannel(); // lets words in between two pieces
  const bring = ({ rate: asked, most }) => {
    if (rate !== asked) {
      renderer?.free();
      renderer = new wasm_bindgen.Renderer((rate = asked), most);
    }
    return renderer;
  };
  const ASKS = {
    render(data) {
      const renderer = bring(data);
      for (const set of data.sets) {
        renderer.begin();
        for (const { numbers, start } of set) renderer.add(numbers, start);
      }
      const mix = renderer.mix();
      const next = () => {
        const all = mix.piece();
        let from = data.sets.length;
        const pieces = all.length ? data.sets.map((_, place) => all.slice(from, (from += all[place]))) : undefined;
        if (!pieces) mix.free();
        return pieces ? [{ pieces }, pieces.map(({ buffer }) => buffer)] : [{ over: true }];
      };
      return [{ counts: mix.counts() }, [], next];
    },
    ahead(data) {
      bring(data).ahead(data.numbers, AHEAD);
      return [{}];
    },
    file({ sound, rate }) {
      const bytes = wasm_bindgen.file(sound, rate);
      return [{ bytes }, [bytes.buffer]];
    },
    listen({ seek, samples, rate: heardAt }) {
      tuner ??= new wasm_bindgen.Tuner();
      if (seek) return [tuner.seek(seek)];
      const heard = samples ? tuner.hear(samples, heardAt) : tuner.end();
      return [{ heard }, [heard.buffer]];
    },
  };
  /** Does a piece of the newest job, and has the next one done after what was asked meanwhile. */
  const doNext = () => {
    const job = jobs.at(-1);
    if (!(atWork = Boolean(job))) return;
    try {
      const [answer, moved] = job.next();
      if (answer.over) jobs.splice(jobs.indexOf(job), 1);
      self.postMessage({ id: job.id, ...answer }, moved ?? []);
    } catch (error) {
      jobs.splice(jobs.indexOf(job), 1);
      self.postMessage({ id: job.id, error: String(error) });
    }
    pause.port2.postMessage(0);
  };
  pause.port1.onmessage = doNext;
  self.onmessage = async ({ data }) => {
    try {
      await ready;
      const [answer, moved, next] = ASKS[data.ask](data);
      self.postMessage({ id: data.id, ...answer }, moved ?? []);
      if (!next) return;
      jobs.push({ id: data.id, next });
      if (!atWork) doNext();
    } catch (error) {
      self.postMessage({ id: data.id, error: String(error) });
    }
  };
}

/** What the page does: it plays, and keeps what was rendered. */
function play() {
  const ADDRESS = document.currentScript.getAttribute("src");
  const MOST_S = 5;
  const MOST_KEPT = 24;
  const RATE = 48000; // of files, and until it is known at which rate this machine plays
  const FADE_S = 0.005; // from one sound to the other, and from piece to piece, without a click
  const LEAD_S = 0.015; // from the first piece to its sound, so that it begins when it should
  let worker;
  let last = 0;
  const waiting = new Map();
  const kept = new Map(); // the newest last
  let context;
  let playing; // { take, which, gain, began, until, sources }
  let wish = 0;

  /** Asks the worker; what comes back is its answer, the last one where `came` takes those before. */
  function ask(word, moved, came) {
    if (!worker) {
      worker = new Worker(ADDRESS);
      worker.onmessage = ({ data }) => {
        const { answered, failed, came } = waiting.get(data.id) ?? {};
        if (came && !data.error && !data.over) return came(data);
        waiting.delete(data.id);
        data.error ? failed?.(new Error(data.error)) : answered?.(data);
      };
      worker.onerror = (event) => {
        event.preventDefault?.();
        waiting.forEach(({ failed }) => failed(new Error(event.message)));
        waiting.clear();
        worker = undefined;
      };
    }
    const id = (last += 1);
    return new Promise((answered, failed) => {
      waiting.set(id, { answered, failed, came });
      worker.postMessage({ ...word, id }, moved ?? []);
    });
  }

  const heard = []; // what the tuner made of what it heard, until the program takes it

  /** Has the worker listen, and tells the program when there is something to take. */
  async function listen(word, moved) {
    const { heard: list } = await ask({ ask: "listen", ...word }, moved);
    if (!list?.length) return;
    heard.push(new Uint8Array(list.buffer));
    hearing.told();
  }

  /** What a list of numbers asks for; its key is the sum of all that is rendered. */
  function read(bytes) {
    const numbers = new Float64Array(bytes.slice().buffer);
    const [which, goOn, count] = numbers;
    let at = 3;
    const sets = Array.from({ length: count }, () =>
      Array.from({ length: numbers[at++] }, () => {
        const [start, size] = numbers.subarray(at, (at += 2));
        return { start, numbers: numbers.slice(at, (at += size)) };
      }),
    );
    let [one, other] = [0, 0];
    for (const word of new Uint32Array(numbers.buffer, 16)) {
      one = Math.imul(one ^ word, 0x01000193) + 0x9e37;
      other = Math.imul(other + word, 0x85ebca6b) ^ (other >>> 13);
    }
    return { which, goOn, sets, key: `${numbers.length} ${one} ${other}` };
  }

  /**
   * The sounds of a request, from what is kept or from the worker: the samples, how many of them have come, and what
   * waits for the first and for the last of them.
   */
  function rendered({ key, sets }, rate) {
    const name = `${rate} ${key}`;
    let take = kept.get(name);
    if (!take) {
      const mine = (take = { sounds: [], filled: 0 });
      mine.begun = new Promise((begun, failed) => {
        mine.whole = ask({ ask: "render", rate, most: MOST_S, sets }, [], ({ counts, pieces }) => {
          if (counts) mine.sounds = Array.from(counts, (count) => new Float32Array(count));
          else {
            pieces.forEach((piece, place) => mine.sounds[place].set(piece, Math.min(mine.filled, mine.sounds[place].length)));
            mine.filled += Math.max(...pieces.map(({ length }) => length));
            begun();
            if (playing?.take === mine) follow();
          }
        });
        mine.whole.then(begun, failed);
      });
      mine.begun.catch(() => kept.delete(name));
      mine.whole.catch(() => kept.delete(name));
    }
    kept.delete(name);
    kept.set(name, take);
    if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value);
    return take;
  }

  /** What plays, which sleeps until something is asked of it, and again when the page was long out of sight. */
  function awake() {
    context ??= new AudioContext({ latencyHint: "interactive" });
    if (context.state !== "running") context.resume().catch(() => {});
  }

  function fade(now) {
    if (!playing) return;
    const { sources, gain } = playing;
    gain.gain.cancelScheduledValues(now);
    gain.gain.setValueAtTime(1, now);
    gain.gain.linearRampToValueAtTime(0, now + FADE_S);
    for (const source of sources) source.stop(now + FADE_S);
    playing = undefined;
  }

  /**
   * Has what came meanwhile follow what plays. Each piece begins while the one before it ends: both have the same
   * samples there, one rising as the other falls.
   */
  function follow() {
    const { take, which, gain, began, until, sources } = playing;
    const { sampleRate: rate } = context;
    const sound = take.sounds[which];
    const to = Math.min(take.filled, sound.length);
    const shared = Math.round(FADE_S * rate);
    if (to <= until || (to < sound.length && to - until <= 2 * shared)) return;
    const from = sources.size ? until - shared : until;
    const piece = sound.slice(from, to);
    // What should sound by now is left out.
    const late = Math.max(0, Math.ceil(context.currentTime * rate - (began * rate + from)));
    for (let i = 0; i < shared; i++) {
      const share = (i + 0.5) / shared;
      if (sources.size || late) piece[late + i] *= share;
      if (to < sound.length) piece[piece.length - 1 - i] *= share;
    }
    const buffer = context.createBuffer(1, piece.length, rate);
    buffer.copyToChannel(piece, 0);
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(gain);
    source.start(began + (from + late) / rate, late / rate);
    const mine = playing;
    mine.until = to;
    sources.add(source);
    source.onended = () => {
      sources.delete(source);
      if (playing === mine && mine.until === sound.length && !sources.size) playing = undefined;
    };
  }

  /** Starts a sound, from a place within it. */
  function start(take, which, from) {
    const { sampleRate: rate, currentTime } = context;
    const now = Math.ceil((currentTime + LEAD_S) * rate) / rate;
    fade(now);
    const until = Math.round(from * rate);
    if (until >= take.sounds[which].length) return;
    const gain = new GainNode(context, { gain: from ? 0 : 1 });
    if (from) gain.gain.setValueAtTime(0, now).linearRampToValueAtTime(1, now + FADE_S);
    gain.connect(context.destination);
    playing = { take, which, gain, began: now - until / rate, until, sources: new Set() };
    follow();
  }

  const hearing = (globalThis.hearing = {
    /** For whoever measures: milliseconds from the request to the start of the last sound and to its end being rendered,
     * and all its samples. */
    took: undefined,
    whole: undefined,
    heard: undefined,
    /** Fetches module and worker, so that the first key need not wait for them. Nothing is played. */
    warm: () => ask({ ask: "render", rate: RATE, most: MOST_S, sets: [] }, [], () => {}).then(() => true),
    /** Renders the beginning of a string for when it is asked for; its numbers are those of a request. */
    ahead(bytes) {
      if (navigator.userActivation?.hasBeenActive) awake();
      const numbers = new Float64Array(bytes.slice().buffer);
      return ask({ ask: "ahead", rate: context?.sampleRate ?? RATE, most: MOST_S, numbers }).then(() => true);
    },
    /** Plays one of the sounds of a request: anew, or where the other one is now. */
    async play(bytes) {
      const asked = performance.now();
      const mine = (wish += 1);
      awake();
      const request = read(bytes);
      const take = rendered(request, context.sampleRate);
      await take.begun;
      if (mine !== wish) return false; // something else was asked for meanwhile
      const which = take.sounds[request.which]?.length ? request.which : 0;
      if (!take.sounds[which]?.length) return false;
      start(take, which, request.goOn && playing ? Math.max(0, context.currentTime + LEAD_S - playing.began) : 0);
      hearing.took = performance.now() - asked + 1000 * LEAD_S;
      take.whole.then(
        () => {
          if (mine !== wish) return;
          hearing.whole = performance.now() - asked;
          hearing.heard = take.sounds[which];
        },
        () => {},
      );
      return true;
    },
    stop() {
      wish += 1;
      if (context) fade(context.currentTime);
    },
    /** Nothing is played for a while. */
    rest() {
      hearing.stop();
      setTimeout(() => playing || context?.suspend().catch(() => {}), 1000 * FADE_S + 50);
    },
    /** Called when there is something that was heard. */
    told: () => {},
    /** What to listen for from now on, as bytes. */
    seek: (bytes) => listen({ seek: new Float64Array(bytes.slice().buffer) }),
    /** Listens to some samples; done when they are heard and the program has been told. */
    listen: (samples, rate) => listen({ samples, rate }, [samples.buffer]),
    /** No more is heard; done when the program has been told of the last. */
    hush: () => listen({}),
    /** The oldest of what was heard, as bytes of numbers; nothing where there is none. */
    take: () => heard.shift(),
    /** A sound of a request as a file. */
    async file(bytes) {
      const [request, rate] = [read(bytes), RATE];
      const take = rendered(request, rate);
      await take.whole;
      const { sounds } = take;
      const { bytes: file } = await ask({ ask: "file", sound: sounds[request.which] ?? sounds[0], rate });
      return new Blob([file], { type: "audio/wav" });
    },
  });
}

if (globalThis.document) play();
else work();
