//! What sounds in a stretch of samples: the peaks of its spectrum, each with its frequency.
//!
//! The samples are weighted by Hann's window `h`. A second transform has the slope of the window in its place. A tone
//! that dies away, `e^((iω₀ − α)t)`, gives `X' = −(i(ω₀ − ω) − α) X` by parts, as the window vanishes at its ends. So
//! `ω₀ = ω − Im(X'/X)` in every bin near the peak, whatever its phase and however fast it decays. Only noise and
//! neighbours put it off.
//!
//! # Source
//!
//! F. Auger and P. Flandrin, Improving the readability of time-frequency and time-scale representations by the
//! reassignment method, IEEE Transactions on Signal Processing 43 (1995) 1068 (from memory); worked out as above.

use std::f64::consts::PI;

use super::fourier::Fourier;

/// Bins over which the noise is looked for.
const BLOCK: usize = 64;
/// A peak stands so far above the middle of the noise around it, in power. Of noise alone, one bin in a million does.
const ABOVE_NOISE: f64 = 20.0;
/// Below this share of the strongest power, the skirts of the window can pass for peaks.
const SKIRTS: f64 = 1e-7;
/// The most peaks that are kept, the strongest.
const MOST_PEAKS: usize = 90;
/// The scatter of a frequency by noise is this over `T √(power over noise)`: measured on noise, see the tests.
const SCATTER: f64 = 0.42;

/// A peak of the spectrum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Peak {
    /// Where it lies.
    pub hz: f64,
    /// Its power, in the square of the sample's unit.
    pub power: f64,
    /// How far off `hz` may be, one standard deviation: by noise, and by what lies near.
    pub off_hz: f64,
}

/// Works out spectra of one length after another, and keeps what it needs for the last.
#[derive(Clone, Debug, Default)]
pub(super) struct Analyser {
    fourier: Fourier,
    window: Vec<(f64, f64)>,
    values: Vec<(f64, f64)>,
}

impl Analyser {
    /// The peaks of some samples between two frequencies, from the lowest up.
    pub fn peaks(&mut self, samples: &[f64], rate_hz: f64, between_hz: (f64, f64)) -> Vec<Peak> {
        let count = samples.len();
        if count < BLOCK {
            return Vec::new();
        }
        self.transform(samples);
        let half = self.values.len() / 2;
        let bin_hz = rate_hz / self.values.len() as f64;
        // A tone of amplitude 1 has a peak of half the sum of the window, a quarter of the count.
        let unit = (4.0 / count as f64).powi(2);
        let powers: Vec<f64> = (0..half).map(|k| unit * square(self.pair(k).0)).collect();
        let noise = noise(&powers);
        let last = half.saturating_sub(2);
        let from = super::whole(between_hz.0 / bin_hz).max(2);
        let to = super::whole(between_hz.1 / bin_hz).min(last);
        let strongest = powers[from.min(to)..to].iter().copied().fold(0.0, f64::max);
        let seconds = count as f64 / rate_hz;
        let mut peaks = Vec::new();
        for k in from..to {
            let power = powers[k];
            let floor = noise[k / BLOCK];
            let is_peak = power >= powers[k - 1] && power > powers[k + 1];
            if !is_peak || power < ABOVE_NOISE * floor || power < SKIRTS * strongest {
                continue;
            }
            let near: Vec<(f64, f64)> =
                (k - 1..=k + 1).map(|bin| (powers[bin], self.hz(bin, bin_hz))).collect();
            let weight: f64 = near.iter().map(|(power, _)| power).sum();
            let hz = near.iter().map(|(power, hz)| power * hz).sum::<f64>() / weight;
            let spread =
                near.iter().map(|(power, own)| power * (own - hz).powi(2)).sum::<f64>() / weight;
            // The middle of the noise is ln 2 of its mean.
            let scatter = SCATTER / (seconds * (power * std::f64::consts::LN_2 / floor).sqrt());
            let off_hz = (scatter * scatter + spread).sqrt();
            if hz.is_finite() && off_hz.is_finite() && (hz / bin_hz - k as f64).abs() < 2.0 {
                peaks.push(Peak { hz, power, off_hz });
            }
        }
        strongest_of(peaks)
    }

    /// Window times samples, and its slope times samples, as one complex transform.
    fn transform(&mut self, samples: &[f64]) {
        let count = samples.len();
        if self.window.len() != count {
            // Twice as many bins as samples, so that a peak stands out in several.
            self.fourier = Fourier::of_at_least(count + count / 4);
            let at = |i: usize| PI * (i as f64 + 0.5) / count as f64;
            let weights = (0..count).map(|i| (at(i).sin().powi(2), (2.0 * at(i)).sin()));
            self.window = weights.collect();
        }
        self.values.clear();
        let weighted = samples.iter().zip(&self.window).map(|(x, w)| (x * w.0, x * w.1));
        self.values.extend(weighted);
        self.values.resize(self.fourier.size(), (0.0, 0.0));
        self.fourier.transform(&mut self.values);
    }

    /// The transforms by window and by slope, taken apart again; that of the slope in units of `π/count` for a sample.
    fn pair(&self, k: usize) -> ((f64, f64), (f64, f64)) {
        let size = self.values.len();
        let (a, b) = (self.values[k], self.values[(size - k) % size]);
        let by_window = (0.5 * (a.0 + b.0), 0.5 * (a.1 - b.1));
        let by_slope = (0.5 * (a.1 + b.1), 0.5 * (b.0 - a.0));
        (by_window, by_slope)
    }

    /// The frequency of what sounds in a bin.
    fn hz(&self, k: usize, bin_hz: f64) -> f64 {
        let (x, slope) = self.pair(k);
        let turned = (slope.1 * x.0 - slope.0 * x.1) / square(x);
        let per_sample = PI / self.window.len() as f64 * turned;
        bin_hz * (k as f64 - per_sample * self.values.len() as f64 / (2.0 * PI))
    }
}

fn square(x: (f64, f64)) -> f64 {
    x.0 * x.0 + x.1 * x.1
}

/// The middle power of each block and its two neighbours: partials take few bins of them.
fn noise(powers: &[f64]) -> Vec<f64> {
    let blocks = powers.len().div_ceil(BLOCK);
    let mut near = Vec::new();
    let middle = |block: usize| {
        near.clear();
        let (from, to) = (block.saturating_sub(1) * BLOCK, (block + 2) * BLOCK);
        near.extend_from_slice(&powers[from..to.min(powers.len())]);
        let place = near.len() * 2 / 5;
        // Two fifths up lies 0.74 of the middle: `ln(1 − 0.4)/ln(1 − 0.5)`.
        near.select_nth_unstable_by(place, f64::total_cmp).1.max(f64::MIN_POSITIVE) / 0.737
    };
    (0..blocks).map(middle).collect()
}

/// The strongest, in the order of their frequencies.
fn strongest_of(mut peaks: Vec<Peak>) -> Vec<Peak> {
    let least = least_of_strongest(&peaks, MOST_PEAKS);
    peaks.retain(|peak| peak.power >= least);
    peaks
}

/// The power of the weakest among the strongest `count` peaks; of all, if there are no more.
pub(super) fn least_of_strongest(peaks: &[Peak], count: usize) -> f64 {
    let mut powers: Vec<f64> = peaks.iter().map(|peak| peak.power).collect();
    match powers.len().checked_sub(count) {
        Some(place) if place > 0 => *powers.select_nth_unstable_by(place, f64::total_cmp).1,
        _ => 0.0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const RATE_HZ: f64 = 16_000.0;

    fn tone(hz: f64, decay: f64, i: usize) -> f64 {
        let t = i as f64 / RATE_HZ;
        (-decay * t).exp() * (2.0 * PI * hz * t + 0.7).sin()
    }

    /// Exact but for rounding and for the skirts of what lies below 0 Hz: whatever the phase, the decay and the place
    /// between the bins.
    #[test]
    fn a_tone_that_dies_away_lies_where_it_is() {
        for (hz, decay) in [(440.0, 0.0), (97.3, 3.0), (1_234.567, 12.0), (3_135.96, 40.0)] {
            let samples: Vec<f64> = (0..6_000).map(|i| tone(hz, decay, i)).collect();
            let peaks = Analyser::default().peaks(&samples, RATE_HZ, (20.0, 6_000.0));
            let strongest = peaks.iter().max_by(|a, b| a.power.total_cmp(&b.power)).unwrap();
            assert!((strongest.hz / hz - 1.0).abs() < 1e-6, "{hz}: {}", strongest.hz);
            if decay == 0.0 {
                assert!((strongest.power - 1.0).abs() < 0.35, "{}", strongest.power);
            }
        }
    }

    /// The doubt is told from a single peak; what it should be, from how far 200 of them scatter.
    #[test]
    fn the_doubt_is_how_far_noise_puts_a_peak_off() {
        let mut seed = 7_u64;
        let mut noise = || {
            let mut even = || {
                seed = seed
                    .wrapping_mul(6_364_136_223_846_793_005)
                    .wrapping_add(1_442_695_040_888_963_407);
                (seed >> 11) as f64 / (1_u64 << 53) as f64 - 0.5
            };
            (even() + even() + even() + even()) * 3_f64.sqrt()
        };
        for quiet in [0.03, 0.3] {
            let (mut square, mut told) = (0.0, 0.0);
            for round in 0..200 {
                let hz = 600.0 + 0.37 * f64::from(round);
                let samples: Vec<f64> =
                    (0..3_200).map(|i| tone(hz, 0.0, i) + quiet * noise()).collect();
                let peaks = Analyser::default().peaks(&samples, RATE_HZ, (500.0, 800.0));
                let peak = peaks.iter().max_by(|a, b| a.power.total_cmp(&b.power)).unwrap();
                square += (peak.hz - hz).powi(2);
                told += peak.off_hz.powi(2);
            }
            let ratio = (told / square).sqrt();
            assert!((0.7..1.8).contains(&ratio), "{quiet}: {ratio}");
        }
    }

    #[test]
    fn noise_alone_has_no_peaks() {
        let mut seed = 3_u64;
        let samples: Vec<f64> = (0..60_000)
            .map(|_| {
                seed = seed
                    .wrapping_mul(6_364_136_223_846_793_005)
                    .wrapping_add(1_442_695_040_888_963_407);
                (seed >> 11) as f64 / (1_u64 << 53) as f64 - 0.5
            })
            .collect();
        for stretch in samples.chunks_exact(6_000) {
            assert_eq!(Analyser::default().peaks(stretch, RATE_HZ, (20.0, 6_000.0)), []);
        }
    }
}
