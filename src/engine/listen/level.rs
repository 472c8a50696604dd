//! How loud it is, and when a string was struck.

/// A stretch whose loudness is taken as one number.
pub(super) const BLOCK_S: f64 = 0.01;
/// Blocks that count as now, and those before them that they are held against.
const NOW: usize = 4;
const BEFORE: usize = 12;
/// A string was struck when it is so much louder now than before, in amplitude.
const STRUCK: f64 = 1.6;
/// Blocks after a string was struck in which no other one is.
const REST: usize = 12;

/// What is quieter than this counts as silence, in decibels of full scale.
pub(super) const SILENCE_DB: f64 = -66.0;

/// Follows the loudness block by block.
#[derive(Clone, Debug)]
pub(super) struct Levels {
    in_block: usize,
    sum: f64,
    count: usize,
    last: [f64; NOW + BEFORE],
    rest: usize,
}

impl Levels {
    /// For so many samples in a second.
    pub fn new(rate_hz: f64) -> Self {
        let in_block = super::whole(rate_hz * BLOCK_S).max(1);
        Self { in_block, sum: 0.0, count: 0, last: [0.0; NOW + BEFORE], rest: 0 }
    }

    /// Takes a sample; `true` when a string was struck in the block that it ends.
    pub fn feed(&mut self, sample: f64) -> bool {
        self.sum += sample * sample;
        self.count += 1;
        if self.count < self.in_block {
            return false;
        }
        self.last.rotate_left(1);
        self.last[NOW + BEFORE - 1] = (self.sum / self.count as f64).sqrt();
        (self.sum, self.count) = (0.0, 0);
        self.rest = self.rest.saturating_sub(1);
        let most = |blocks: &[f64]| blocks.iter().copied().fold(0.0, f64::max);
        let (before, now) = self.last.split_at(BEFORE);
        let is_struck =
            self.rest == 0 && decibels(most(now)) > SILENCE_DB && most(now) > STRUCK * most(before);
        if is_struck {
            self.rest = REST;
        }
        is_struck
    }

    /// Loudness of the last 50 ms in decibels: 0 for a square wave of full scale. At least −200.
    pub fn decibels(&self) -> f64 {
        let last = &self.last[NOW + BEFORE - 5..];
        let square = last.iter().map(|block| block * block).sum::<f64>() / last.len() as f64;
        decibels(square.sqrt())
    }
}

fn decibels(amplitude: f64) -> f64 {
    20.0 * amplitude.max(1e-10).log10()
}
