//! The discrete Fourier transform of a power of two of complex numbers, in place.

use std::f64::consts::PI;

/// A transform of one size, with its sines worked out once.
#[derive(Clone, Debug, Default)]
pub(super) struct Fourier {
    /// `e^(−2πi k/size)` for the first half of `k`.
    turns: Vec<(f64, f64)>,
}

impl Fourier {
    /// A transform of at least so many numbers: of the next power of two, from 2 on.
    pub fn of_at_least(count: usize) -> Self {
        let half = count.max(2).next_power_of_two() / 2;
        let turn = |k: usize| {
            let (sine, cosine) = (PI * k as f64 / half as f64).sin_cos();
            (cosine, -sine)
        };
        Self { turns: (0..half).map(turn).collect() }
    }

    /// How many numbers it transforms.
    pub fn size(&self) -> usize {
        2 * self.turns.len()
    }

    /// Puts `Σ x_j e^(−2πi jk/size)` in the place of each `x_k`. What does not have its size stays as it is.
    ///
    /// # Source
    ///
    /// J. W. Cooley and J. W. Tukey, An algorithm for the machine calculation of complex Fourier series, Mathematics
    /// of Computation 19 (1965) 297 (from memory); written from the sum.
    pub fn transform(&self, values: &mut [(f64, f64)]) {
        let size = self.size();
        if values.len() != size {
            return;
        }
        let unused = usize::BITS - size.trailing_zeros();
        for place in 0..size {
            let other = place.reverse_bits() >> unused;
            if place < other {
                values.swap(place, other);
            }
        }
        let mut half = 1;
        while half < size {
            let stride = self.turns.len() / half;
            for block in values.chunks_exact_mut(2 * half) {
                let (low, high) = block.split_at_mut(half);
                let turns = self.turns.iter().step_by(stride);
                for ((one, other), turn) in low.iter_mut().zip(high).zip(turns) {
                    let turned =
                        (other.0 * turn.0 - other.1 * turn.1, other.0 * turn.1 + other.1 * turn.0);
                    *other = (one.0 - turned.0, one.1 - turned.1);
                    *one = (one.0 + turned.0, one.1 + turned.1);
                }
            }
            half *= 2;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The sum itself.
    #[test]
    fn a_transform_is_the_sum_that_defines_it() {
        for size in [2, 4, 8, 64, 256_usize] {
            let given: Vec<(f64, f64)> = (0..size)
                .map(|j| (((j * j * 7 + 3) % 11) as f64 - 5.0, ((j * 5 + 1) % 13) as f64 - 6.0))
                .collect();
            let mut got = given.clone();
            let fourier = Fourier::of_at_least(size);
            assert_eq!(fourier.size(), size);
            fourier.transform(&mut got);
            for (k, got) in got.iter().enumerate() {
                let (mut re, mut im) = (0.0, 0.0);
                for (j, x) in given.iter().enumerate() {
                    let (sine, cosine) =
                        (-2.0 * PI * (j * k % size) as f64 / size as f64).sin_cos();
                    re += x.0 * cosine - x.1 * sine;
                    im += x.0 * sine + x.1 * cosine;
                }
                assert!((got.0 - re).hypot(got.1 - im) < 1e-11 * size as f64, "{size}, {k}");
            }
        }
    }

    #[test]
    fn what_has_another_size_stays() {
        let mut three = vec![(1.0, 2.0); 3];
        Fourier::of_at_least(3).transform(&mut three);
        assert_eq!(three, [(1.0, 2.0); 3]);
        assert_eq!(Fourier::of_at_least(3).size(), 4);
    }
}
