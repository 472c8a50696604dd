// What the tuner hears: the microphone, or a recording. And its reference tone. Fetched when one of them is used first.
// The same file runs where the browser works on sound, and hands the samples over from there; the worker of hearing.js
// listens to them. Nothing is kept of them, and nothing is sent.

/** Samples that are handed over at once. */
const PIECE = 2048;

if (globalThis.registerProcessor) {
  const gather = class extends AudioWorkletProcessor {
    piece = new Float32Array(PIECE);
    filled = 0;
    process([[samples = []]]) {
      for (const sample of samples) {
        this.piece[this.filled++] = sample;
        if (this.filled < PIECE) continue;
        this.port.postMessage(this.piece);
        this.filled = 0;
      }
      return true;
    }
  };
  registerProcessor("gather", gather);
}

let context;
/** What is heard now: a number for each asking, and what ends it. */
let turn = 0;
let end = () => {};
let sounding;

/** Has the worker listen to some samples; one that stopped is told of by whoever asks it next. */
const hand = (samples) => {
  if (sounding) return; // its own tone is no string
  return globalThis.hearing.listen(samples, context.sampleRate).catch(() => {});
};

const desk = () => (context ??= new AudioContext());

/** The desk, awake: only what the user asked for may wake it. */
async function awake() {
  await desk().resume();
  return context;
}

/** Asks for the microphone, untouched by what makes speech clearer, and hears it until it is told to stop. */
export async function hear() {
  stop();
  const own = turn;
  const untouched = { echoCancellation: false, noiseSuppression: false, autoGainControl: false };
  const stream = await navigator.mediaDevices.getUserMedia({ audio: untouched });
  const letGo = () => stream.getTracks().forEach((track) => track.stop());
  try {
    const at = await awake();
    await at.audioWorklet.addModule(import.meta.url);
    if (own !== turn) return letGo(); // stopped meanwhile
    const source = at.createMediaStreamSource(stream);
    const node = new AudioWorkletNode(at, "gather");
    node.port.onmessage = ({ data }) => own === turn && hand(data);
    source.connect(node).connect(at.destination); // it is silent: a node that leads nowhere may not be asked
    end = () => {
      source.disconnect();
      node.disconnect();
      letGo();
    };
  } catch (error) {
    letGo();
    throw error;
  }
}

/** Hears a recording, quicker than it sounds; `true` when it came to its end. */
export async function read(file) {
  stop();
  const own = turn;
  const sound = await desk().decodeAudioData(await file.arrayBuffer());
  const all = Array.from({ length: sound.numberOfChannels }, (_, channel) => sound.getChannelData(channel));
  for (let from = 0; from < sound.length && own === turn; from += PIECE) {
    const piece = all[0].slice(from, from + PIECE);
    for (const other of all.slice(1)) for (let i = 0; i < piece.length; i++) piece[i] += other[from + i];
    // What is listened for may change with what was heard.
    await hand(piece.map((sample) => sample / all.length));
  }
  return own === turn;
}

/** Ends what is heard and gives the microphone back. */
export function stop() {
  turn++;
  end();
  end = () => {};
}

/** A tone of so many hertz in place of the one before; of 0, none. */
export async function tone(hz) {
  sounding?.fade();
  sounding = undefined;
  if (!(hz > 0)) return;
  const at = await awake();
  const [source, loud] = [at.createOscillator(), at.createGain()];
  source.frequency.value = hz;
  source.connect(loud).connect(at.destination);
  loud.gain.setTargetAtTime(0.25, at.currentTime, 0.02);
  source.start();
  const fade = () => {
    loud.gain.setTargetAtTime(0, at.currentTime, 0.02);
    source.stop(at.currentTime + 0.2);
  };
  sounding?.fade();
  sounding = { fade };
}
