//! The energies of a few shapes of a board's rise, and where they rest together.

use super::Banded;
pub(super) use crate::engine::structure::banded::inner as dot;

/// Rounds of Newton's way, and how often a step is halved.
const ROUNDS: usize = 40;
const HALVES: usize = 30;

/// The energies of a few shapes.
pub(super) struct Few {
    pub(super) count: usize,
    pub(super) bent: Vec<f64>,
    pub(super) pushed: Vec<f64>,
    pub(super) load: Vec<f64>,
    pub(super) pairs: Vec<(usize, usize)>,
    pub(super) stretched: Vec<f64>,
}

impl Few {
    /// Energy, its slope, and its bend, at so much of each shape.
    pub(super) fn energy(
        &self,
        (times, push): (f64, f64),
        shares: &[f64],
    ) -> (f64, Vec<f64>, Vec<f64>) {
        let count = self.count;
        let twice = |of: &(usize, usize)| if of.0 == of.1 { 1.0 } else { 2.0 };
        let pairs: Vec<f64> =
            self.pairs.iter().map(|of| twice(of) * shares[of.0] * shares[of.1]).collect();
        let pulls: Vec<f64> = (0..pairs.len())
            .map(|row| dot(&self.stretched[row * pairs.len()..][..pairs.len()], &pairs))
            .collect();
        let (mut energy, mut slope, mut bend) =
            (0.5 * dot(&pairs, &pulls), vec![0.0; count], vec![0.0; count * count]);
        for i in 0..count {
            let mut sum = 0.0;
            for j in 0..count {
                let held = self.bent[i * count + j] - push * self.pushed[i * count + j];
                bend[i * count + j] += held;
                sum += held * shares[j];
            }
            energy += (0.5 * sum - times * self.load[i]) * shares[i];
            slope[i] += sum - times * self.load[i];
        }
        // How each pair changes with each shape.
        let mut turns = vec![0.0; pairs.len() * count];
        for (pair, (of, pull)) in self.pairs.iter().zip(&pulls).enumerate() {
            let (i, j) = *of;
            turns[pair * count + i] += 2.0 * shares[j];
            if i != j {
                turns[pair * count + j] += 2.0 * shares[i];
                bend[j * count + i] += 2.0 * pull;
            }
            bend[i * count + j] += 2.0 * pull;
        }
        for (pair, pull) in pulls.iter().enumerate() {
            for i in 0..count {
                slope[i] += pull * turns[pair * count + i];
            }
        }
        for (one, row) in turns.chunks(count.max(1)).enumerate() {
            for (other, column) in turns.chunks(count.max(1)).enumerate() {
                let by = self.stretched[one * pairs.len() + other];
                for i in 0..count {
                    for j in 0..count {
                        bend[i * count + j] += by * row[i] * column[j];
                    }
                }
            }
        }
        (energy, slope, bend)
    }

    /// Where the energy is least, from so much of each shape on.
    pub(super) fn rests(&self, times: (f64, f64), mut shares: Vec<f64>) -> Option<Vec<f64>> {
        let count = self.count;
        if count == 0 {
            return Some(shares);
        }
        let (mut energy, mut slope, mut bend) = self.energy(times, &shares);
        let size = times.0 * dot(&self.load, &self.load).sqrt();
        for _ in 0..ROUNDS {
            let mut matrix = Banded::new(count, count - 1);
            for i in 0..count {
                for j in 0..=i {
                    matrix.add(i, j, bend[i * count + j]);
                }
            }
            let mut step = slope.clone();
            matrix.split()?.solve(&mut step);
            let mut by = 1.0;
            for _ in 0..HALVES {
                let next: Vec<f64> =
                    shares.iter().zip(&step).map(|(share, step)| share - by * step).collect();
                let (lower, at, bent) = self.energy(times, &next);
                if lower <= energy {
                    (energy, slope, bend, shares) = (lower, at, bent, next);
                    break;
                }
                by *= 0.5;
            }
            if dot(&slope, &slope).sqrt() <= 1e-10 * size {
                break;
            }
        }
        shares.iter().all(|share| share.is_finite()).then_some(shares)
    }
}
