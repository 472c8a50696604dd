//! Samples of ringing strings: sounds as a whole, and levels that can be compared.

use super::ringing::Ringing;
use super::voice::Voice;

/// The highest peak of anything that is played: 6 dB below the most that a file can hold.
pub const PEAK: f32 = 0.501_187_2;
/// Rise at the beginning and fall at the end, in seconds, so that neither clicks.
pub const RAMP_S: f64 = 5e-3;
/// Loudness is compared over this time, in seconds.
pub(super) const COMPARED_S: f64 = 1.0;

/// A plucked string as samples in newtons, until it has died away or for `most_s` seconds, from the moment when the
/// finger lets go.
pub fn ring(voice: &Voice, rate_hz: f64, most_s: f64) -> Vec<f32> {
    let mut ringing = Ringing::new(voice, rate_hz, most_s);
    ringing.to(usize::MAX);
    ringing.samples().to_vec()
}

/// Samples in a time.
pub(super) fn samples(time_s: f64, rate_hz: f64) -> usize {
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "times are not negative and no sound lasts for hours"
    )]
    let count = (time_s * rate_hz).round() as usize;
    count
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
    use std::f64::consts::{LN_2, PI, TAU};

    use super::*;
    use crate::engine::sound::voice::Partial;
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
