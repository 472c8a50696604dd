//! The module of a worker: it renders strings and listens to them, away from the page. It knows nothing of the page and
//! of the design; what it gets are lists of numbers ([`Voice::numbers`], [`Wanted::numbers`]) and samples, and what it
//! gives are samples and lists ([`Told::numbers`]). `src/shell/hearing.js` drives it.

use std::cell::RefCell;
use std::rc::Rc;

use wasm_bindgen::prelude::wasm_bindgen;

use self::engine::listen::Listener;
use self::engine::listen::wire::{Told, Wanted};
use self::engine::sound::mix::{Mix, Strung};
use self::engine::sound::ringing::Ringing;
use self::engine::sound::voice::Voice;
use self::engine::sound::wav::wav;

// These files of the engine use nothing else of it, so that this module is made in seconds and holds nothing but sound.
#[path = "../../../src/engine"]
pub mod engine {
    pub mod interval;
    pub mod listen;
    pub mod units;
    pub mod sound {
        pub mod mix;
        pub mod render;
        pub mod ringing;
        pub mod voice;
        pub mod wav;
    }
}
// What their unit tests use.
#[cfg(test)]
#[path = "../../../src/testing.rs"]
mod testing;

/// Strings that are kept rendered: a harp, twice.
const KEPT: usize = 100;
/// Samples that are kept, 60 MB of them.
const KEPT_SAMPLES: usize = 15_000_000;

/// A string that was rendered, and from what.
struct Rung {
    numbers: Vec<f64>,
    voice: Rc<Voice>,
    string: Rc<RefCell<Ringing>>,
}

/// Renders strings at one sample rate.
#[wasm_bindgen]
pub struct Renderer {
    rate_hz: f64,
    most_s: f64,
    kept: Vec<Rung>,
    sets: Vec<Vec<Strung>>,
}

#[wasm_bindgen]
impl Renderer {
    /// For so many samples in each second; a string is heard for `most_s` seconds at most.
    #[wasm_bindgen(constructor)]
    pub fn new(rate_hz: f64, most_s: f64) -> Self {
        Self { rate_hz, most_s, kept: Vec::new(), sets: Vec::new() }
    }

    /// Begins another sound, which is compared with those before it.
    pub fn begin(&mut self) {
        self.sets.push(Vec::new());
    }

    /// Adds a string to the sound that was begun last, from a time on.
    pub fn add(&mut self, numbers: &[f64], start_s: f64) {
        let (voice, string) = self.rung(numbers);
        if let Some(set) = self.sets.last_mut() {
            set.push(Strung { string, voice, start_s });
        }
    }

    /// The sounds that were begun.
    pub fn mix(&mut self) -> Sounds {
        Sounds(Mix::new(std::mem::take(&mut self.sets), self.rate_hz))
    }

    /// Renders so many samples of a string before it is asked for.
    pub fn ahead(&mut self, numbers: &[f64], samples: usize) {
        let (_, string) = self.rung(numbers);
        string.borrow_mut().to(samples);
    }

    /// A string, as far as it was rendered.
    fn rung(&mut self, numbers: &[f64]) -> (Rc<Voice>, Rc<RefCell<Ringing>>) {
        if let Some(rung) = self.kept.iter().find(|rung| rung.numbers == numbers) {
            return (rung.voice.clone(), rung.string.clone());
        }
        let voice = Rc::new(Voice::of_numbers(numbers));
        let string = Rc::new(RefCell::new(Ringing::new(&voice, self.rate_hz, self.most_s)));
        let held = |kept: &[Rung]| -> usize {
            kept.iter().map(|rung| rung.string.borrow().samples().len()).sum()
        };
        while self.kept.len() >= KEPT || (held(&self.kept) > KEPT_SAMPLES && self.kept.len() > 1) {
            self.kept.remove(0);
        }
        let numbers = numbers.to_vec();
        self.kept.push(Rung { numbers, voice: voice.clone(), string: string.clone() });
        (voice, string)
    }
}

/// Sounds that come piece by piece.
#[wasm_bindgen]
pub struct Sounds(Mix);

#[wasm_bindgen]
impl Sounds {
    /// How many samples each of them has.
    pub fn counts(&self) -> Vec<usize> {
        self.0.counts()
    }

    /// The next piece of each: how long it is of each, then the samples. Nothing when they are over.
    pub fn piece(&mut self) -> Vec<f32> {
        let Some(pieces) = self.0.next() else { return Vec::new() };
        #[allow(clippy::cast_precision_loss, reason = "a piece has fewer samples than 2 to the 24")]
        let mut all: Vec<f32> = pieces.iter().map(|piece| piece.len() as f32).collect();
        pieces.iter().for_each(|piece| all.extend(piece));
        all
    }
}

/// The WAV file of a sound.
#[wasm_bindgen]
pub fn file(sound: &[f32], rate_hz: u32) -> Vec<u8> {
    wav(sound, rate_hz)
}

/// Listens to strings: what is listened for, and what listens as long as something is heard.
#[wasm_bindgen]
#[derive(Default)]
pub struct Tuner {
    wanted: Wanted,
    listener: Option<(f64, Listener)>,
}

#[wasm_bindgen]
impl Tuner {
    /// Nothing is listened for yet.
    #[wasm_bindgen(constructor)]
    pub fn new() -> Self {
        Self::default()
    }

    /// Listens for something else from now on.
    pub fn seek(&mut self, wanted: &[f64]) {
        self.wanted = Wanted::of_numbers(wanted);
        if let Some((_, listener)) = &mut self.listener {
            listener.listen_for(self.wanted.strings.clone(), self.wanted.led);
        }
    }

    /// What is heard in some samples; nothing at a rate that is out of reach.
    pub fn hear(&mut self, samples: &[f32], rate_hz: f64) -> Vec<f64> {
        if self.listener.as_ref().is_none_or(|(rate, _)| (rate - rate_hz).abs() > 0.5) {
            let made = Listener::new(rate_hz, Vec::new()).map(|mut listener| {
                listener.listen_for(self.wanted.strings.clone(), self.wanted.led);
                (rate_hz, listener)
            });
            self.listener = made;
        }
        let Some((_, listener)) = &mut self.listener else { return Vec::new() };
        let readings = listener.feed(samples);
        Told { readings, notes: listener.notes_found() }.numbers()
    }

    /// What was still sounding, as no more is heard; what comes then is something else.
    pub fn end(&mut self) -> Vec<f64> {
        let Some((_, mut listener)) = self.listener.take() else { return Vec::new() };
        listener.end();
        Told { readings: Vec::new(), notes: listener.notes_found() }.numbers()
    }
}
