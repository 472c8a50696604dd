// The sound of the strings: what the page plays, and the worker that renders it. One file for both: the page loads it as
// a script when sound is first asked for, and starts it again as a worker of its own. The build puts before it the
// script that binds the module, and the module's name in place of the one below.
//
// The page and its worker speak in messages with a number, a word and what it is about; each is answered under its
// number, with `error` where it failed:
//   {id, ask: "render", rate, most, sets: [[{numbers, start}]]} -> {id, sounds}   samples, equally loud
//   {id, ask: "file", sound, rate} -> {id, bytes}                                   a WAV file
// What else the worker learns, such as to listen to chunks of samples, is another word in ASKS.
//
// The program asks the page's half with one list of numbers, as bytes: which sound is played, whether it goes on where
// the other one is now, how many sounds there are to compare; of each how many strings; of each string its start in
// seconds, how many numbers it has, and these (see src/engine/sound/voice.rs).

const HEARING_WASM = "{hearing.wasm}";

/** What the worker does. The module comes with the first word. */
function work() {
  let renderer;
  let rate;
  const ready = wasm_bindgen({ module_or_path: HEARING_WASM });
  ready.catch(() => {}); // told to whoever asks
  const ASKS = {
    render({ rate: asked, most, sets }) {
      if (rate !== asked) {
        renderer?.free();
        renderer = new wasm_bindgen.Renderer((rate = asked), most);
      }
      for (const set of sets) {
        renderer.begin();
        for (const { numbers, start } of set) renderer.add(numbers, start);
      }
      const all = renderer.finish();
      let from = sets.length;
      const sounds = sets.map((_, place) => all.slice(from, (from += all[place])));
      return [{ sounds }, sounds.map((sound) => sound.buffer)];
    },
    file({ sound, rate }) {
      const bytes = wasm_bindgen.file(sound, rate);
      return [{ bytes }, [bytes.buffer]];
    },
  };
  self.onmessage = async ({ data }) => {
    try {
      await ready;
      const [answer, moved] = ASKS[data.ask](data);
      self.postMessage({ id: data.id, ...answer }, moved);
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
  const FADE_S = 0.005; // from one sound to the other, without a click
  let worker;
  let last = 0;
  const waiting = new Map();
  const kept = new Map(); // the newest last
  let context;
  let playing; // { source, gain, began }
  let wish = 0;

  /** Asks the worker; what comes back is its answer. */
  function ask(word, moved) {
    if (!worker) {
      worker = new Worker(ADDRESS);
      worker.onmessage = ({ data }) => {
        const { answered, failed } = waiting.get(data.id) ?? {};
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
      waiting.set(id, { answered, failed });
      worker.postMessage({ ...word, id }, moved ?? []);
    });
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

  /** The sounds of a request, from what is kept or from the worker. */
  function rendered({ key, sets }, rate) {
    const name = `${rate} ${key}`;
    let sounds = kept.get(name);
    if (!sounds) {
      sounds = ask({ ask: "render", rate, most: MOST_S, sets }).then(({ sounds }) => sounds);
      sounds.catch(() => kept.delete(name));
    }
    kept.delete(name);
    kept.set(name, sounds);
    if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value);
    return sounds;
  }

  function fade(now) {
    if (!playing) return;
    const { source, gain } = playing;
    gain.gain.setValueAtTime(1, now);
    gain.gain.linearRampToValueAtTime(0, now + FADE_S);
    source.stop(now + FADE_S);
    playing = undefined;
  }

  /** Starts a sound, from a place within it. */
  function start(sound, from) {
    const now = context.currentTime;
    fade(now);
    if (from >= sound.length / context.sampleRate) return;
    const buffer = context.createBuffer(1, sound.length, context.sampleRate);
    buffer.copyToChannel(sound, 0);
    const source = new AudioBufferSourceNode(context, { buffer });
    const gain = new GainNode(context, { gain: from ? 0 : 1 });
    if (from) gain.gain.setValueAtTime(0, now).linearRampToValueAtTime(1, now + FADE_S);
    source.connect(gain).connect(context.destination);
    source.start(now, from);
    const mine = (playing = { source, gain, began: now - from });
    source.onended = () => {
      if (playing === mine) playing = undefined;
    };
  }

  const hearing = (globalThis.hearing = {
    /** For whoever measures: milliseconds from the request to the start of the last sound, and its samples. */
    took: undefined,
    heard: undefined,
    /** Fetches module and worker, so that the first key need not wait for them. Nothing is played. */
    warm: () => ask({ ask: "render", rate: 48000, most: MOST_S, sets: [] }).then(() => true),
    /** Plays one of the sounds of a request: anew, or where the other one is now. */
    async play(bytes) {
      const asked = performance.now();
      const mine = (wish += 1);
      context ??= new AudioContext({ latencyHint: "interactive" });
      // It sleeps until something is asked of it, and again when the page was long out of sight.
      if (context.state !== "running") context.resume().catch(() => {});
      const request = read(bytes);
      const sounds = await rendered(request, context.sampleRate);
      if (mine !== wish) return false; // something else was asked for meanwhile
      const sound = sounds[request.which] ?? sounds[0];
      if (!sound?.length) return false;
      start(sound, request.goOn && playing ? context.currentTime - playing.began : 0);
      hearing.took = performance.now() - asked;
      hearing.heard = sound;
      return true;
    },
    stop() {
      wish += 1;
      if (context) fade(context.currentTime);
    },
    /** A sound of a request as a file. */
    async file(bytes) {
      const [request, rate] = [read(bytes), 48000];
      const sounds = await rendered(request, rate);
      const { bytes: file } = await ask({ ask: "file", sound: sounds[request.which] ?? sounds[0], rate });
      return new Blob([file], { type: "audio/wav" });
    },
  });
}

if (globalThis.document) play();
else work();
