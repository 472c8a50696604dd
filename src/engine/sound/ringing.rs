//! A plucked string, rendered as far as it is asked for: a swing for each partial, without a jump anywhere.
//!
//! Each partial is a rotation that is carried from sample to sample by `y₂ = 2 d cos θ · y₁ − d² · y₀`; every few
//! milliseconds it begins anew from its phase and its height, which are known, so that no error grows and the pitch can
//! glide.

use std::f64::consts::{LN_2, PI, TAU};

use super::render::{RAMP_S, samples};
use super::voice::{Partial, Voice};

/// Fall at the end of what is cut off while it rings, in seconds.
const CUT_S: f64 = 0.5;
/// Samples from one fresh beginning of the partials to the next.
const BLOCK: usize = 256;
/// Partials that are worked out side by side.
const LANES: usize = 4;
/// What is smaller than this share of the loudest partial's beginning is left out: 100 dB below.
const SILENT: f64 = 1e-5;
/// A glide of fewer cents is none.
const STILL_CENTS: f64 = 1e-3;
/// Partials above this share of the sample rate are left out.
const HIGHEST_RATIO: f64 = 0.45;

/// A string from the moment when the finger lets go, in newtons, until it has died away or for some seconds. It rises
/// from nothing and falls to nothing as half a cosine.
pub struct Ringing {
    lanes: Vec<Lanes>,
    /// Partials that are no higher than this are silent.
    least: f64,
    sound: Vec<f32>,
    /// How many samples there are in all, and in the rise and the fall.
    count: usize,
    rise: usize,
    fall: usize,
}

impl Ringing {
    /// A string before anything of it is rendered; `most_s` is how long it is heard at most.
    pub fn new(voice: &Voice, rate_hz: f64, most_s: f64) -> Self {
        let whole_s = voice.rings_s(most_s);
        let loudest = voice.partials.iter().map(|one| one.force_n.abs()).fold(0.0, f64::max);
        let heard: Vec<&Partial> =
            voice.partials.iter().filter(|one| one.hz < HIGHEST_RATIO * rate_hz).collect();
        let lanes = heard.chunks(LANES).map(|few| Lanes::new(few, voice.glide_fall_s, rate_hz));
        let is_cut = whole_s >= most_s;
        Self {
            lanes: lanes.collect(),
            least: SILENT * loudest,
            sound: Vec::new(),
            count: samples(whole_s, rate_hz),
            rise: samples(RAMP_S, rate_hz),
            fall: samples(if is_cut { CUT_S.min(0.5 * whole_s) } else { RAMP_S }, rate_hz),
        }
    }

    /// How many samples there are in all.
    pub fn count(&self) -> usize {
        self.count
    }

    /// What is rendered.
    pub fn samples(&self) -> &[f32] {
        &self.sound
    }

    /// Renders the string up to a sample, or to its end.
    pub fn to(&mut self, count: usize) {
        let missing = count.min(self.count).saturating_sub(self.sound.len());
        // In whole blocks; only the last one is cut.
        let mut sum = vec![0.0_f64; missing.next_multiple_of(BLOCK)];
        let least = self.least;
        for lanes in &mut self.lanes {
            for block in sum.chunks_exact_mut(BLOCK) {
                if lanes.height() < least {
                    break;
                }
                lanes.add(block);
            }
        }
        self.lanes.retain(|lanes| lanes.height() >= least);
        let from = self.sound.len();
        sum.truncate(self.count - from.min(self.count));
        #[allow(clippy::cast_possible_truncation, reason = "samples are kept to seven digits")]
        let faded = sum
            .into_iter()
            .enumerate()
            .map(|(place, value)| (value * self.share(from + place)) as f32);
        let faded: Vec<f32> = faded.collect();
        self.sound.extend(faded);
        if self.sound.len() >= self.count {
            self.lanes = Vec::new();
        }
    }

    /// What the rise and the fall leave of a sample.
    fn share(&self, place: usize) -> f64 {
        #[allow(clippy::cast_precision_loss, reason = "a small number")]
        let ramp = |place: usize, count: usize| {
            if place < count { 0.5 - 0.5 * (PI * place as f64 / count as f64).cos() } else { 1.0 }
        };
        ramp(place, self.rise) * ramp(self.count - 1 - place, self.fall)
    }
}

/// A few partials at the beginning of a block.
struct Lanes {
    /// Angle from sample to sample once the string has settled.
    step: [f64; LANES],
    /// What is left after a sample.
    kept: [f64; LANES],
    phase: [f64; LANES],
    height: [f64; LANES],
    glide_cents: [f64; LANES],
    /// What is left of a glide after a block, and after half a block.
    fall: (f64, f64),
}

impl Lanes {
    fn new(few: &[&Partial], glide_fall_s: f64, rate_hz: f64) -> Self {
        let of = |pick: fn(&Partial) -> f64, none: f64| {
            let mut list = [none; LANES];
            list.iter_mut().zip(few).for_each(|(place, partial)| *place = pick(partial));
            list
        };
        #[allow(clippy::cast_precision_loss, reason = "a small number")]
        let block_s = BLOCK as f64 / rate_hz;
        let left = |time_s: f64| {
            if glide_fall_s > 0.0 { (-time_s / glide_fall_s).exp() } else { 0.0 }
        };
        Self {
            step: of(|one| one.hz, 0.0).map(|hz| TAU * hz / rate_hz),
            kept: of(|one| one.decay_s, 1.0).map(|decay_s| (-1.0 / (decay_s * rate_hz)).exp()),
            phase: [0.0; LANES],
            height: of(|one| one.force_n, 0.0),
            glide_cents: of(|one| one.glide_cents, 0.0).map(|cents| cents * left(0.5 * block_s)),
            fall: (left(block_s), left(0.5 * block_s)),
        }
    }

    /// The highest of them.
    fn height(&self) -> f64 {
        self.height.iter().fold(0.0, |most, height| most.max(height.abs()))
    }

    /// Adds a block of all of them, and goes on to the next.
    fn add(&mut self, block: &mut [f64]) {
        let (mut y0, mut y1) = ([0.0; LANES], [0.0; LANES]);
        let (mut turn, mut shrink) = ([0.0; LANES], [0.0; LANES]);
        for lane in 0..LANES {
            let kept = self.kept[lane];
            let angle = self.step[lane] * glide_ratio(self.glide_cents[lane]);
            y0[lane] = self.height[lane] * self.phase[lane].cos();
            y1[lane] = self.height[lane] * kept * (self.phase[lane] + angle).cos();
            turn[lane] = 2.0 * kept * angle.cos();
            shrink[lane] = kept * kept;
            #[allow(clippy::cast_precision_loss, reason = "a small number")]
            let long = block.len() as f64;
            self.phase[lane] = (self.phase[lane] + long * angle) % TAU;
            self.height[lane] *= kept.powf(long);
            self.glide_cents[lane] *= self.fall.0;
        }
        for sample in block {
            // Two and two, as a machine adds them side by side.
            *sample += (y0[0] + y0[2]) + (y0[1] + y0[3]);
            for lane in 0..LANES {
                let y2 = turn[lane] * y1[lane] - shrink[lane] * y0[lane];
                (y0[lane], y1[lane]) = (y1[lane], y2);
            }
        }
    }
}

/// The ratio of a few cents.
fn glide_ratio(cents: f64) -> f64 {
    if cents.abs() < STILL_CENTS { 1.0 } else { (cents * LN_2 / 1200.0).exp() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_does_not_matter_in_which_pieces_a_string_is_rendered() {
        let of = |hz, force_n, decay_s| Partial { hz, force_n, decay_s, glide_cents: 3.0 };
        let partials = (1..=9_u32)
            .map(|n| of(110.2 * f64::from(n), 1.0 / f64::from(n), 0.4 / f64::from(n)))
            .collect();
        let voice = Voice { partials, glide_fall_s: 0.2 };
        let mut whole = Ringing::new(&voice, 44_100.0, 3.0);
        whole.to(usize::MAX);
        assert_eq!(whole.samples().len(), whole.count());
        let mut pieces = Ringing::new(&voice, 44_100.0, 3.0);
        for count in [1, 256, 257, 1_000, 5_000, 5_000, 90_000, whole.count(), usize::MAX] {
            pieces.to(count);
            assert!(pieces.samples().len() >= count.min(whole.count()));
        }
        assert_eq!(pieces.samples(), whole.samples());
    }
}
