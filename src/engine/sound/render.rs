//! Samples of ringing strings: a swing for each partial, without a jump anywhere, and levels that can be compared.
//!
//! Each partial is a rotation that is carried from sample to sample by `y₂ = 2 d cos θ · y₁ − d² · y₀`; every few
//! milliseconds it begins anew from its phase and its height, which are known, so that no error grows and the pitch can
//! glide.

use std::f64::consts::{LN_2, PI, TAU};

use super::voice::{Partial, Voice};

/// The highest peak of anything that is played: 6 dB below the most that a file can hold.
pub const PEAK: f32 = 0.501_187_2;
/// Rise at the beginning and fall at the end, in seconds, so that neither clicks.
pub const RAMP_S: f64 = 5e-3;
/// Fall at the end of what is cut off while it rings, in seconds.
const CUT_S: f64 = 0.5;
/// Loudness is compared over this time, in seconds.
const COMPARED_S: f64 = 1.0;
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

/// A plucked string as samples in newtons, until it has died away or for `most_s` seconds, from the moment when the
/// finger lets go.
pub fn ring(voice: &Voice, rate_hz: f64, most_s: f64) -> Vec<f32> {
    let whole_s = voice.rings_s(most_s);
    let count = samples(whole_s, rate_hz);
    let mut sum = vec![0.0_f64; count.next_multiple_of(BLOCK)];
    let loudest = voice.partials.iter().map(|one| one.force_n.abs()).fold(0.0, f64::max);
    let heard: Vec<&Partial> =
        voice.partials.iter().filter(|one| one.hz < HIGHEST_RATIO * rate_hz).collect();
    for few in heard.chunks(LANES) {
        let mut lanes = Lanes::new(few, voice.glide_fall_s, rate_hz);
        for block in sum.chunks_exact_mut(BLOCK) {
            if lanes.height() < SILENT * loudest {
                break;
            }
            lanes.add(block);
        }
    }
    sum.truncate(count);
    let cut = whole_s >= most_s;
    fade(&mut sum, rate_hz, if cut { CUT_S.min(0.5 * whole_s) } else { RAMP_S });
    #[allow(clippy::cast_possible_truncation, reason = "samples are kept to seven digits")]
    let kept = sum.into_iter().map(|value| value as f32);
    kept.collect()
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

/// Samples in a time.
fn samples(time_s: f64, rate_hz: f64) -> usize {
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "times are not negative and no sound lasts for hours"
    )]
    let count = (time_s * rate_hz).round() as usize;
    count
}

/// Lets a sound rise from nothing in [`RAMP_S`] and fall to nothing in the last `end_s` seconds, as half a cosine.
fn fade(sound: &mut [f64], rate_hz: f64, end_s: f64) {
    let ramp = |count: usize| {
        #[allow(clippy::cast_precision_loss, reason = "a small number")]
        (0..count).map(move |place| 0.5 - 0.5 * (PI * place as f64 / count as f64).cos())
    };
    let (begin, end) = (samples(RAMP_S, rate_hz), samples(end_s, rate_hz));
    sound.iter_mut().zip(ramp(begin)).for_each(|(sample, share)| *sample *= share);
    sound.iter_mut().rev().zip(ramp(end)).for_each(|(sample, share)| *sample *= share);
}

/// Several sounds as one, each from its time on.
pub fn mixed(sounds: &[(&[f32], f64)], rate_hz: f64) -> Vec<f32> {
    let ends = sounds.iter().map(|(sound, start_s)| samples(*start_s, rate_hz) + sound.len());
    let mut sum = vec![0.0_f32; ends.max().unwrap_or(0)];
    for (sound, start_s) in sounds {
        let from = samples(*start_s, rate_hz);
        for (place, sample) in sum.iter_mut().skip(from).zip(*sound) {
            *place += sample;
        }
    }
    sum
}

/// Makes sounds equally loud and keeps all of them within [`PEAK`]; by one factor each, so that nothing is distorted.
///
/// Equally loud is what has the same energy in the first second. The sound with the highest peak then reaches
/// [`PEAK`]. What is silent stays so.
pub fn level(sounds: &mut [&mut Vec<f32>], rate_hz: f64) {
    let energies: Vec<f64> = sounds.iter().map(|sound| energy(sound, rate_hz)).collect();
    let peaks: Vec<f64> = sounds.iter().map(|sound| f64::from(peak(sound))).collect();
    let unit_peaks = energies.iter().zip(&peaks).filter(|(energy, _)| **energy > 0.0);
    let highest = unit_peaks.map(|(energy, peak)| peak / energy.sqrt()).fold(0.0, f64::max);
    if highest == 0.0 {
        return;
    }
    for (sound, energy) in sounds.iter_mut().zip(energies).filter(|(_, energy)| *energy > 0.0) {
        #[allow(clippy::cast_possible_truncation, reason = "samples are kept to seven digits")]
        let factor = (f64::from(PEAK) / highest / energy.sqrt()) as f32;
        // The last digit must not pass the limit.
        sound.iter_mut().for_each(|sample| *sample = (*sample * factor).clamp(-PEAK, PEAK));
    }
}

/// Energy of the first second: the sum of the squares.
pub fn energy(sound: &[f32], rate_hz: f64) -> f64 {
    let compared = sound.iter().take(samples(COMPARED_S, rate_hz));
    compared.map(|sample| f64::from(*sample).powi(2)).sum()
}

/// The farthest from nothing.
pub fn peak(sound: &[f32]) -> f32 {
    sound.iter().fold(0.0, |most, sample| most.max(sample.abs()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    const RATE: f64 = 48_000.0;

    fn one(hz: f64, decay_s: f64, glide_cents: f64) -> Voice {
        let partial = Partial { hz, force_n: 2.0, decay_s, glide_cents };
        Voice { partials: vec![partial], glide_fall_s: 0.3 }
    }

    /// A swing in closed form, at a sample that is past the ramp.
    #[test]
    fn a_partial_is_a_cosine_that_dies_away() {
        let sound = ring(&one(441.3, 0.8, 0.0), RATE, 3.0);
        for place in [300_usize, 4_711, 48_000, 100_001] {
            #[allow(clippy::cast_precision_loss, reason = "a small number")]
            let time = place as f64 / RATE;
            let expected = 2.0 * (-time / 0.8).exp() * (TAU * 441.3 * time).cos();
            let got = f64::from(sound[place]);
            assert!((got - expected).abs() < 1e-6, "{place}: {got} against {expected}");
        }
    }

    /// The phase of a glide `f 2^(c(t)/1200)` with `c` falling as `e^(−t/τ)`: the sum of many small steps.
    #[test]
    fn a_glide_begins_sharp_and_settles() {
        let (hz, cents, fall) = (330.0, 40.0, 0.3);
        let sound = ring(&one(hz, 2.0, cents), RATE, 3.0);
        let fine = 16_u32;
        let (mut phase, mut time) = (0.0_f64, 0.0_f64);
        let pace = 1.0 / (RATE * f64::from(fine));
        for place in 0..60_000_u32 {
            if [480, 9_600, 59_999].contains(&place) {
                let expected = 2.0 * (-time / 2.0).exp() * phase.cos();
                let got = f64::from(sound[usize::try_from(place).expect("small")]);
                assert!((got - expected).abs() < 2e-3, "{place}: {got} against {expected}");
            }
            for _ in 0..fine {
                let now = cents * (-(time + 0.5 * pace) / fall).exp();
                phase += TAU * hz * (now * LN_2 / 1200.0).exp() * pace;
                time += pace;
            }
        }
    }

    #[test]
    fn it_begins_and_ends_in_silence_and_nothing_jumps() {
        for (voice, most_s) in [(one(100.0, 0.2, 5.0), 4.0), (one(1_000.0, 9.0, 0.0), 1.0)] {
            let sound = ring(&voice, RATE, most_s);
            assert_eq!(sound[0], 0.0);
            assert_eq!(sound[sound.len() - 1], 0.0);
            // The steepest of the swing and of the ramp together.
            let hz = voice.partials[0].hz;
            let most = 2.0 * (TAU * hz / RATE + 0.5 * PI / (RAMP_S * RATE));
            let steps = sound.windows(2).map(|two| f64::from((two[1] - two[0]).abs()));
            assert!(steps.fold(0.0, f64::max) <= most, "{hz}");
        }
    }

    #[test]
    fn what_the_rate_cannot_hold_is_left_out() {
        let sound = ring(&one(30_000.0, 1.0, 0.0), RATE, 1.0);
        assert_eq!(peak(&sound), 0.0);
        assert_eq!(ring(&Voice::default(), RATE, 1.0), [0.0_f32; 0]);
    }

    #[test]
    fn levels_are_equal_and_the_highest_peak_is_six_decibels_below_full() {
        let mut soft = ring(&one(200.0, 0.1, 0.0), RATE, 2.0);
        let mut loud: Vec<f32> =
            ring(&one(900.0, 2.0, 0.0), RATE, 2.0).iter().map(|sample| 7.0 * sample).collect();
        let mut silent = vec![0.0; 100];
        level(&mut [&mut soft, &mut loud, &mut silent], RATE);
        assert_close(energy(&soft, RATE), energy(&loud, RATE), 1e-5, "energy");
        let highest = peak(&soft).max(peak(&loud));
        assert_close(20.0 * f64::from(highest).log10(), -6.0, 1e-5, "decibels");
        assert_eq!(peak(&silent), 0.0);
    }

    #[test]
    fn a_mix_is_the_sum_of_what_sounds() {
        let (one, other) = (vec![0.1_f32; 5], vec![0.2_f32; 2]);
        let mix = mixed(&[(&one, 0.0), (&other, 4.0 / RATE)], RATE);
        assert_eq!(mix, [0.1, 0.1, 0.1, 0.1, 0.1 + 0.2, 0.2]);
        assert_eq!(mixed(&[], RATE), [0.0_f32; 0]);
    }
}
