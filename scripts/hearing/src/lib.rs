//! The module of a worker: it renders strings, away from the page. It knows nothing of the page and of the design; what
//! it gets are lists of numbers ([`Voice::numbers`]), and what it gives are samples. `src/shell/hearing.js` drives it.

use std::rc::Rc;

use wasm_bindgen::prelude::wasm_bindgen;

use self::render::{level, mixed, ring};
use self::voice::Voice;
use self::wav::wav;

// These files of the engine use nothing else of it, so that this module is made in seconds and holds nothing but sound.
#[path = "../../../src/engine/sound/render.rs"]
pub mod render;
#[path = "../../../src/engine/sound/voice.rs"]
pub mod voice;
#[path = "../../../src/engine/sound/wav.rs"]
pub mod wav;
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
    sound: Rc<Vec<f32>>,
}

/// Renders strings at one sample rate.
#[wasm_bindgen]
pub struct Renderer {
    rate_hz: f64,
    most_s: f64,
    kept: Vec<Rung>,
    sets: Vec<Vec<(Rc<Vec<f32>>, f64)>>,
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
        let sound = self.rung(numbers);
        if let Some(set) = self.sets.last_mut() {
            set.push((sound, start_s));
        }
    }

    /// The sounds that were begun, equally loud and within the limit, one after another; how long each is comes first.
    pub fn finish(&mut self) -> Vec<f32> {
        let sets = std::mem::take(&mut self.sets);
        let mut sounds: Vec<Vec<f32>> = sets
            .iter()
            .map(|set| {
                let parts: Vec<(&[f32], f64)> =
                    set.iter().map(|(sound, start_s)| (sound.as_slice(), *start_s)).collect();
                mixed(&parts, self.rate_hz)
            })
            .collect();
        level(&mut sounds.iter_mut().collect::<Vec<_>>(), self.rate_hz);
        #[allow(clippy::cast_precision_loss, reason = "a sound has fewer samples than 2 to the 24")]
        let mut all: Vec<f32> = sounds.iter().map(|sound| sound.len() as f32).collect();
        sounds.iter().for_each(|sound| all.extend(sound));
        all
    }

    /// The samples of a string, rendered once.
    fn rung(&mut self, numbers: &[f64]) -> Rc<Vec<f32>> {
        if let Some(rung) = self.kept.iter().find(|rung| rung.numbers == numbers) {
            return rung.sound.clone();
        }
        let sound = Rc::new(ring(&Voice::of_numbers(numbers), self.rate_hz, self.most_s));
        let samples = |kept: &[Rung]| kept.iter().map(|rung| rung.sound.len()).sum::<usize>();
        while !self.kept.is_empty()
            && (self.kept.len() >= KEPT || samples(&self.kept) + sound.len() > KEPT_SAMPLES)
        {
            self.kept.remove(0);
        }
        self.kept.push(Rung { numbers: numbers.to_vec(), sound: sound.clone() });
        sound
    }
}

/// The WAV file of a sound.
#[wasm_bindgen]
pub fn file(sound: &[f32], rate_hz: u32) -> Vec<u8> {
    wav(sound, rate_hz)
}
