//! Fewer samples in a second, where there are more than a tuner needs.

use std::f64::consts::PI;

/// Enough for the second partial of the highest strings.
const ENOUGH_HZ: f64 = 16_000.0;
/// Half the length of the filter in samples that come out: past the edge it is down by 70 dB.
const REACH: usize = 16;
/// What passes, as a share of what comes out; what folds back onto it is stopped.
const PASSES: f64 = 0.42;

/// Keeps one of so many samples; what would fold back is filtered out first.
#[derive(Clone, Debug)]
pub(super) struct Thinner {
    step: usize,
    filter: Vec<f64>,
    held: Vec<f64>,
}

impl Thinner {
    /// For samples at a rate.
    pub fn new(rate_hz: f64) -> Self {
        let step = super::whole(rate_hz / ENOUGH_HZ).max(1);
        let half = REACH * step;
        let tap = |i: usize| {
            let from_middle = i as f64 - half as f64;
            let turn = 2.0 * PI * (PASSES / step as f64) * from_middle;
            let sinc = if i == half { 1.0 } else { turn.sin() / turn };
            // Blackman's window.
            let around = PI * (from_middle / (half + 1) as f64);
            sinc * (0.42 + 0.5 * around.cos() + 0.08 * (2.0 * around).cos())
        };
        let taps: Vec<f64> = (0..=2 * half).map(tap).collect();
        let sum: f64 = taps.iter().sum();
        let filter = if step == 1 { vec![1.0] } else { taps.iter().map(|tap| tap / sum).collect() };
        // Before the first sample there is silence, so that nothing comes late.
        Self { step, held: vec![0.0; (filter.len() - 1) / 2], filter }
    }

    /// One of how many samples is kept.
    pub fn step(&self) -> usize {
        self.step
    }

    /// Takes samples and adds what is kept of them to `kept`.
    pub fn feed(&mut self, samples: &[f32], kept: &mut Vec<f64>) {
        // What is no number is silence.
        let sound = |x: &f32| if x.is_finite() { f64::from(*x) } else { 0.0 };
        self.held.extend(samples.iter().map(sound));
        let mut at = 0;
        while at + self.filter.len() <= self.held.len() {
            let under = &self.held[at..at + self.filter.len()];
            kept.push(under.iter().zip(&self.filter).map(|(x, tap)| x * tap).sum());
            at += self.step;
        }
        self.held.drain(..at.min(self.held.len()));
    }
}
