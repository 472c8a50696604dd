//! The shapes in which a string swings, exactly, also where it ends in bare core: what part of a finger's force reaches
//! the soundboard in each partial, and how fast the soundboard takes it.
//!
//! Length, tension and mass per metre of the wound part are 1 here. From the soundboard on, each piece has the shape
//! `y = y₀ cos kx + (y₀'/k) sin kx`; it begins with slope 1 at the soundboard.

use std::f64::consts::PI;

use crate::engine::stepped::stepped_partial;
use crate::engine::units::Length;

/// A string as its shapes take it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stepped {
    /// Bare at the soundboard and at the bridge pin, as shares of the length.
    pub bare: (f64, f64),
    /// Mass per metre of the core over that of the wound part; 1 for a plain string.
    pub mass_ratio: f64,
}

/// One partial.
#[derive(Clone, Copy, Debug)]
pub(super) struct Shape {
    /// Its pitch over `n` times that of the same string wound throughout.
    pub raised_ratio: f64,
    /// Amplitude of the force on the soundboard over the force of a finger that let go.
    pub force_ratio: f64,
    /// How fast a soundboard takes its energy, over how fast it does of a uniform string.
    pub loss_ratio: f64,
    /// `k` where it is plucked, over one over the length.
    pub wave_number: f64,
}

impl Stepped {
    /// Partial `n` of a string that is plucked at `at`, a share of the length from the soundboard. `None` where the
    /// string has no partials.
    ///
    /// A force `F` that is let go leaves partial `n` with the amplitude `F y(at)/(m ω²)`, `m = ∫ μ y² dx`, and at the
    /// soundboard it pulls with the tension times the slope. Of a uniform string that is `2 sin(nπβ)/(nπ)`.
    pub fn partial(self, n: u32, at: f64) -> Option<Shape> {
        let whole = Length::from_m(1.0);
        let ends = (Length::from_m(self.bare.0), Length::from_m(self.bare.1));
        let raised_ratio = stepped_partial(ends, whole, self.mass_ratio, n)?;
        let omega = f64::from(n) * PI * raised_ratio;
        let light = omega * self.mass_ratio.sqrt();
        let middle = (1.0 - self.bare.0 - self.bare.1).max(0.0);
        let pieces = [
            (light, self.bare.0, self.mass_ratio),
            (omega, middle, 1.0),
            (light, self.bare.1, self.mass_ratio),
        ];
        let (mut y, mut slope, mut before) = (0.0, 1.0, 0.0);
        let (mut mass, mut plucked) = (0.0, None);
        for (k, long, density) in pieces {
            let over = slope / k;
            if plucked.is_none() && at <= before + long {
                let (sine, cosine) = (k * (at - before)).sin_cos();
                plucked = Some((y * cosine + over * sine, k));
            }
            let (sine, cosine) = (k * long).sin_cos();
            let squares = 0.5 * (y * y + over * over) * long
                + 0.5 * (y * y - over * over) * sine * cosine / k
                + y * over * sine * sine / k;
            mass += density * squares;
            (y, slope) = (y * cosine + over * sine, slope * cosine - y * k * sine);
            before += long;
        }
        let (deflection, wave_number) = plucked?;
        let stiffness = mass * omega * omega;
        let force_ratio = deflection / stiffness;
        Some(Shape { raised_ratio, force_ratio, loss_ratio: 0.5 / stiffness, wave_number })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn a_uniform_string_has_the_shapes_of_the_textbook() {
        let plain = Stepped { bare: (0.0, 0.0), mass_ratio: 1.0 };
        for n in [1, 2, 7, 40] {
            for at in [0.1, 0.4, 0.5] {
                let shape = plain.partial(n, at).expect("a string");
                let k = f64::from(n) * PI;
                assert_close(shape.loss_ratio, 1.0, 1e-12, n);
                assert_close(shape.wave_number, k, 1e-14, n);
                let expected = 2.0 * (k * at).sin() / k;
                assert!((shape.force_ratio - expected).abs() < 1e-14, "{n}, {at}");
            }
        }
    }

    /// A force at rest at `at` leaves `1 − at` of itself to the soundboard, however the mass is spread: all partials
    /// together must give it. The sum of a jump closes in as one over the number of partials, so that the mean of the
    /// sums is taken.
    #[test]
    fn all_partials_together_begin_with_the_force_at_rest() {
        for (bare, mass_ratio) in
            [((0.0, 0.0), 1.0), ((0.05, 0.03), 0.25), ((0.2, 0.0), 0.5), ((0.0, 0.45), 0.1)]
        {
            let string = Stepped { bare, mass_ratio };
            for at in [0.12, 0.4, 0.5, 0.77] {
                let (mut sum, mut mean, count) = (0.0, 0.0, 4_000);
                for n in 1..=count {
                    sum += string.partial(n, at).expect("a string").force_ratio;
                    mean += sum / f64::from(count);
                }
                assert!((mean - (1.0 - at)).abs() < 1.5e-3, "{bare:?}, {at}: {mean}");
            }
        }
    }

    /// The ends see the same energy from either side, and turning the string round swaps them.
    #[test]
    fn the_far_end_holds_while_the_near_end_swings_with_slope_one() {
        let string = Stepped { bare: (0.08, 0.02), mass_ratio: 0.3 };
        let turned = Stepped { bare: (0.02, 0.08), mass_ratio: 0.3 };
        for n in [1, 3, 12, 33] {
            let (one, other) = (string.partial(n, 0.4), turned.partial(n, 0.6));
            let (one, other) = (one.expect("a string"), other.expect("a string"));
            // What is plucked at the same place swings alike: force and loss differ by the slopes at the two ends.
            let slopes = (one.loss_ratio / other.loss_ratio).sqrt();
            let forces = (one.force_ratio / other.force_ratio).abs();
            assert_close(forces, slopes, 1e-9, n);
        }
    }
}
