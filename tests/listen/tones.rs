//! The tones of `tones.json`, made again from their numbers: plucked stiff strings, hum and noise.

use std::f64::consts::{PI, TAU};

use serde_json::Value;

const LEAD_S: f64 = 0.25;
const SECONDS: f64 = 1.5;
const MOST_PARTIALS: u32 = 40;
/// The root of the mean square over the first second.
const LOUDNESS: f64 = 0.1;
const HUM: [(f64, f64); 6] =
    [(1.0, 1.0), (2.0, 0.6), (3.0, 0.5), (4.0, 0.2), (5.0, 0.35), (7.0, 0.2)];

/// A tone by its numbers, as `scripts/tones.py` has them.
pub struct Tone<'a>(pub &'a Value);

impl Tone<'_> {
    pub fn number(&self, name: &str) -> f64 {
        self.0[name].as_f64().unwrap_or_else(|| panic!("{name} of {}", self.0))
    }

    pub fn word(&self, name: &str) -> &str {
        self.0[name].as_str().unwrap_or_else(|| panic!("{name} of {}", self.0))
    }

    fn seed(&self) -> u64 {
        self.0["seed"].as_u64().expect("a seed")
    }

    /// The samples.
    pub fn made(&self) -> Vec<f32> {
        let rate = self.number("rate");
        let (lead, count) = (
            (LEAD_S * rate).round_ties_even() as usize,
            ((LEAD_S + SECONDS) * rate).round_ties_even() as usize,
        );
        let own = self.string(
            self.number("first_hz"),
            self.number("weak_first_db"),
            1_000 * self.seed(),
            count - lead,
        );
        let scale = LOUDNESS / loudness(&own, rate);
        let mut sound: Vec<f64> = own.iter().map(|x| scale * x).collect();
        let other_hz = self.number("other_hz");
        if other_hz > 0.0 {
            let other = self.string(other_hz, 0.0, 1_000 * self.seed() + 500, count - lead);
            let scale =
                LOUDNESS * 10_f64.powf(self.number("other_db") / 20.0) / loudness(&other, rate);
            sound.iter_mut().zip(&other).for_each(|(x, other)| *x += scale * other);
        }
        let mut samples = vec![0.0; lead];
        samples.extend(sound);
        self.add_hum(&mut samples);
        let quiet = LOUDNESS * 10_f64.powf(-self.number("noise_db") / 20.0);
        samples
            .iter()
            .enumerate()
            .map(|(i, x)| (x + quiet * noise(self.seed(), i)) as f32)
            .collect()
    }

    fn string(&self, first_hz: f64, weak_first_db: f64, seed: u64, count: usize) -> Vec<f64> {
        let (rate, b) = (self.number("rate"), self.number("b"));
        let mut sound = vec![0.0; count];
        for n in 1..=MOST_PARTIALS {
            let order = f64::from(n);
            let hz = order * first_hz * ((1.0 + b * order * order) / (1.0 + b)).sqrt();
            if hz > 0.45 * rate {
                break;
            }
            let tilt_db =
                self.number("tilt_db") * order.log2() + if n == 1 { weak_first_db } else { 0.0 };
            let amplitude =
                (order * PI * self.number("pluck")).sin() / order * 10_f64.powf(-tilt_db / 20.0);
            let decay = self.number("decay") + self.number("decay_n2") * order * order;
            let fade = (-decay / rate).exp();
            let (sine, cosine) = (TAU * hz / rate).sin_cos();
            let turn = (fade * cosine, fade * sine);
            let (sine, cosine) =
                (TAU * (hashed(seed, n as usize - 1) as f64 / 2_f64.powi(64))).sin_cos();
            let mut now = (amplitude * cosine, amplitude * sine);
            for x in &mut sound {
                *x += now.1;
                now = (now.0 * turn.0 - now.1 * turn.1, now.0 * turn.1 + now.1 * turn.0);
            }
        }
        for (i, x) in sound.iter_mut().enumerate() {
            *x *= 1.0 - (-(i as f64) / rate / 0.002).exp();
        }
        sound
    }

    fn add_hum(&self, samples: &mut [f64]) {
        let (rate, hz) = (self.number("rate"), self.number("hum_hz"));
        if hz > 0.0 {
            add_hum(samples, rate, hz, self.number("hum_db"));
        }
    }
}

/// Adds hum of the mains that is there from the first sample.
pub fn add_hum(samples: &mut [f64], rate: f64, hz: f64, hum_db: f64) {
    let size = (0.5 * HUM.iter().map(|(_, a)| a * a).sum::<f64>()).sqrt();
    let scale = LOUDNESS * 10_f64.powf(hum_db / 20.0) / size;
    for (i, x) in samples.iter_mut().enumerate() {
        let turn = TAU * hz * i as f64 / rate;
        *x += scale * HUM.iter().map(|(n, a)| a * (n * turn + n).sin()).sum::<f64>();
    }
}

fn loudness(sound: &[f64], rate: f64) -> f64 {
    let first = &sound[..rate as usize];
    (first.iter().map(|x| x * x).sum::<f64>() / rate).sqrt()
}

/// The mixing of `SplitMix64` (G. L. Steele and others, 2014; from memory).
fn hashed(seed: u64, place: usize) -> u64 {
    let mut z = seed
        .wrapping_mul(0xD134_2543_DE82_EF95)
        .wrapping_add((place as u64 + 1).wrapping_mul(0x9E37_79B9_7F4A_7C15));
    z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    z ^ (z >> 31)
}

/// Nearly normal noise of standard deviation 1: the sum of four even numbers.
fn noise(seed: u64, place: usize) -> f64 {
    let bits = hashed(seed, place);
    let sum: u64 = [0, 16, 32, 48].iter().map(|shift| (bits >> shift) & 0xFFFF).sum();
    (sum as f64 / 65_536.0 - 2.0 + 2.0 / 65_536.0) * 3_f64.sqrt()
}
