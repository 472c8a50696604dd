//! An ideal string in three pieces: bare core, wound middle, bare core. Its partials, exactly.
//!
//! On each piece the shape is `y = A sin φ` with a phase that grows by `k_i = ω √(μ_i/T)` for each
//! metre. Deflection and slope go on at a joint, so the phase steps there from `φ` to the `φ'` of the
//! same branch with `tan φ' = (k₂/k₁) tan φ`. Partial `n` is where the phase at the far end is `n π`.

use std::f64::consts::PI;

use super::units::Length;

/// Room for the last digits of two bare ends that fill the string.
const SHARE_SLACK: f64 = 1e-12;
/// Newton needs about five; halving the bracket in its place needs no more than this.
const MOST_STEPS: usize = 200;

/// The pitch of partial `n` over `n` times the first partial of the same string wound throughout:
/// `f_n/(n f₁,uniform)`, the tension and the length being the same.
///
/// `ends` are the bare lengths at the two ends, and `core_mass_ratio` is the mass per metre of the core
/// over that of the wound part, `r`. The phase at the far end,
/// `Φ(ω) = k₁a + [k₁→k₂] + k₂(L − a − b) + [k₂→k₁] + k₁b` with `k₁ = √r k₂`, rises with `ω`, so
/// `Φ = n π` has one root. It lies between the uniform wound string on one side, and on the other the
/// bare string or the wound part held fast at its joints, whichever is lower.
///
/// Holds for a flexible string: what the bending of the core adds is in
/// [`super::mechanics::partial_cents`]. `None` unless both ends are at least nothing and no longer than
/// the string together, `0 < r ≤ 1`, and the partial is at least 1.
///
/// # Source
///
/// The characteristic equation of a stepped ideal string, worked out for this project; for two equal
/// ends it is `k₁ cot k₁a = k₂ tan(k₂b/2)` or `k₁ cot k₁a = −k₂ cot(k₂b/2)`, `b` being the middle.
///
/// # Example
///
/// Bare all along, with a quarter of the mass, the string sounds an octave higher.
///
/// ```
/// use stringloft::engine::{stepped::stepped_partial, units::Length};
///
/// let ends = (Length::from_mm(200.0), Length::from_mm(400.0));
/// let octave = stepped_partial(ends, Length::from_mm(600.0), 0.25, 3).expect("the ends just meet");
/// assert!((octave - 2.0).abs() < 1e-12);
/// ```
pub fn stepped_partial(
    ends: (Length, Length),
    length: Length,
    core_mass_ratio: f64,
    partial: u32,
) -> Option<f64> {
    let whole = length.to_m();
    let (near, far) = (ends.0.to_m() / whole, ends.1.to_m() / whole);
    let usable = whole > 0.0
        && whole.is_finite()
        && near >= 0.0
        && far >= 0.0
        && near + far <= 1.0 + SHARE_SLACK
        && core_mass_ratio > 0.0
        && core_mass_ratio <= 1.0
        && partial > 0;
    if !usable {
        return None;
    }
    let string = Pieces { near, far, slowness: core_mass_ratio.sqrt() };
    Some(string.root(f64::from(partial) * PI) / (f64::from(partial) * PI))
}

/// How sharp partial `n` is against `n` times the first partial from the bare ends alone, in cents:
/// `1200 log₂(f_n/(n f₁))`, exact for a flexible string.
///
/// Arguments, and when there is none, as in [`stepped_partial`]. Negative where the ends are so long
/// that they raise the first partial more.
///
/// # Source
///
/// As [`stepped_partial`].
///
/// # Example
///
/// Wound to the very ends, all partials are in tune.
///
/// ```
/// use stringloft::engine::{stepped::bare_end_cents, units::Length};
///
/// let none = (Length::from_mm(0.0), Length::from_mm(0.0));
/// let cents = bare_end_cents(none, Length::from_mm(900.0), 0.3, 8).expect("figures of a string");
/// assert!(cents.abs() < 1e-9);
/// ```
pub fn bare_end_cents(
    ends: (Length, Length),
    length: Length,
    core_mass_ratio: f64,
    partial: u32,
) -> Option<f64> {
    let first = stepped_partial(ends, length, core_mass_ratio, 1)?;
    Some(1200.0 * (stepped_partial(ends, length, core_mass_ratio, partial)? / first).log2())
}

/// The three pieces; length, tension and wound mass per metre of the string are 1.
#[derive(Clone, Copy)]
struct Pieces {
    near: f64,
    far: f64,
    /// `√r`: wave number on the core over that on the wound part.
    slowness: f64,
}

impl Pieces {
    fn middle(self) -> f64 {
        (1.0 - self.near - self.far).max(0.0)
    }

    /// The phase at the far end and its slope in `omega`.
    fn phase(self, omega: f64) -> (f64, f64) {
        let light = self.slowness * omega;
        let (onto_wound, stretch) = step(light * self.near, 1.0 / self.slowness);
        let slope = self.slowness * self.near * stretch + self.middle();
        let (onto_core, stretch) = step(onto_wound + omega * self.middle(), self.slowness);
        (onto_core + light * self.far, slope * stretch + self.slowness * self.far)
    }

    /// Where the phase is `target`: Newton, kept inside a bracket that only shrinks.
    fn root(self, target: f64) -> f64 {
        let mut low = target;
        let mut high = (target / self.slowness).min(target / self.middle());
        let mut omega = low;
        for _ in 0..MOST_STEPS {
            let (phase, slope) = self.phase(omega);
            if phase < target {
                low = omega.max(low);
            } else {
                high = omega.min(high);
            }
            let newton = omega - (phase - target) / slope;
            // A wide bracket is halved in its logarithm, so that no ratio of masses takes long.
            let half =
                if high > 2.0 * low { low.sqrt() * high.sqrt() } else { low + 0.5 * (high - low) };
            let next = if newton > low && newton < high { newton } else { half };
            if (next - omega).abs() <= 1e-15 * omega || high - low <= 1e-15 * low {
                return next;
            }
            omega = next;
        }
        omega
    }
}

/// The phase beyond a joint where the wave number grows by `ratio`, on the same branch, and its slope in
/// the phase before the joint.
fn step(phase: f64, ratio: f64) -> (f64, f64) {
    let (sine, cosine) = phase.sin_cos();
    let turn = ((ratio - 1.0) * sine * cosine).atan2(cosine * cosine + ratio * sine * sine);
    (phase + turn, ratio / (cosine * cosine + (ratio * sine).powi(2)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::mechanics::bare_end_inharmonicity;
    use crate::testing::assert_close;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    /// On a string of 1000 mm.
    fn partial(near_mm: f64, far_mm: f64, mass_ratio: f64, n: u32) -> f64 {
        stepped_partial((mm(near_mm), mm(far_mm)), mm(1000.0), mass_ratio, n)
            .expect("the sample can be computed")
    }

    /// Deflection at the far end of three pieces that start with slope 1, by transfer; nothing of the
    /// phase is used.
    fn deflection(omega: f64, near: f64, far: f64, mass_ratio: f64) -> f64 {
        let light = omega * mass_ratio.sqrt();
        let pieces = [(light, near), (omega, 1.0 - near - far), (light, far)];
        let (mut y, mut slope) = (0.0, 1.0);
        for (k, long) in pieces {
            let (sine, cosine) = (k * long).sin_cos();
            (y, slope) = (y * cosine + slope * sine / k, slope * cosine - y * k * sine);
        }
        y
    }

    /// The first `count` roots by a scan and by halving.
    fn scanned(near: f64, far: f64, mass_ratio: f64, count: usize) -> Vec<f64> {
        let miss = |omega| deflection(omega, near, far, mass_ratio);
        let (mut roots, mut at, pace) = (Vec::new(), 1e-3, 0.004);
        while roots.len() < count {
            if miss(at) * miss(at + pace) <= 0.0 {
                let (mut low, mut high) = (at, at + pace);
                for _ in 0..60 {
                    let middle = 0.5 * (low + high);
                    if miss(low) * miss(middle) <= 0.0 { high = middle } else { low = middle }
                }
                roots.push(0.5 * (low + high));
            }
            at += pace;
        }
        roots
    }

    /// Source: worked out from the characteristic equation, printed to four or five digits.
    #[test]
    fn partials_one_six_and_twelve_shift_as_worked_out() {
        for (n, shift, digit) in [(1, 3.678e-5, 1e-8), (6, 1.2471e-3, 1e-7), (12, 4.2509e-3, 1e-7)]
        {
            let got = partial(20.0, 20.0, 0.3, n) - 1.0;
            assert!((got - shift).abs() <= 0.5 * digit, "partial {n}: {got:e}");
        }
    }

    /// Odd and even shapes about the centre, each with its own equation multiplied out.
    #[test]
    fn equal_ends_solve_the_equation_of_odd_and_even_shapes() {
        for (share, mass_ratio) in [(0.002, 0.05), (0.02, 0.3), (0.15, 0.5), (0.3, 0.9)] {
            for n in 1..=24 {
                let omega = f64::from(n) * PI * partial(1e3 * share, 1e3 * share, mass_ratio, n);
                let light = omega * mass_ratio.sqrt();
                let (sine, cosine) = (light * share).sin_cos();
                let (half_sine, half_cosine) = (omega * (1.0 - 2.0 * share) / 2.0).sin_cos();
                let miss = if n % 2 == 1 {
                    light * cosine * half_cosine - omega * sine * half_sine
                } else {
                    light * cosine * half_sine + omega * sine * half_cosine
                };
                assert!(miss.abs() < 1e-12 * omega, "{share}, {mass_ratio}, partial {n}: {miss:e}");
            }
        }
    }

    #[test]
    fn unequal_ends_give_the_roots_that_a_scan_finds() {
        for (near, far, mass_ratio) in [
            (0.01, 0.03, 0.2),
            (0.0, 0.05, 0.6),
            (0.2, 0.1, 0.04),
            (0.45, 0.5, 0.3),
            (0.7, 0.0, 0.1),
            (0.3, 0.6, 0.01),
        ] {
            for (index, root) in scanned(near, far, mass_ratio, 20).into_iter().enumerate() {
                let n = u32::try_from(index + 1).expect("few roots");
                let got = partial(1e3 * near, 1e3 * far, mass_ratio, n);
                let what = format!("{near}, {far}, {mass_ratio}: partial {n}");
                assert_close(got, root / (f64::from(n) * PI), 1e-12, what);
            }
        }
    }

    #[test]
    fn a_uniform_string_has_harmonic_partials() {
        for n in [1, 2, 7, 40, 1_000_000, u32::MAX] {
            assert_close(partial(30.0, 50.0, 1.0, n), 1.0, 1e-14, "a core without winding");
            assert_close(partial(0.0, 0.0, 0.2, n), 1.0, 1e-14, "wound throughout");
            assert_close(partial(400.0, 600.0, 0.04, n), 5.0, 1e-14, "bare throughout");
        }
    }

    #[test]
    fn the_string_may_be_turned_round_and_enlarged() {
        for n in 1..=30 {
            let here = partial(12.0, 45.0, 0.25, n);
            assert_close(partial(45.0, 12.0, 0.25, n), here, 1e-14, "turned round");
            let large = stepped_partial((mm(36.0), mm(135.0)), mm(3000.0), 0.25, n);
            assert_close(large.expect("a string"), here, 1e-14, "enlarged");
        }
    }

    #[test]
    fn bare_ends_raise_partials_more_the_lighter_and_longer_they_are() {
        for n in 1..=30 {
            let here = partial(20.0, 10.0, 0.3, n);
            assert!(here > 1.0 && here < 1.0 / 0.3_f64.sqrt());
            assert!(partial(20.0, 10.0, 0.2, n) > here);
            assert!(partial(21.0, 10.0, 0.3, n) > here);
            assert!(partial(20.0, 11.0, 0.3, n) > here);
        }
    }

    /// Where the cubic law holds, `n a ≪ L`; its own error there is of the order of `a/L`.
    #[test]
    fn short_ends_raise_partials_by_the_cubic_law() {
        for (near, far) in [(0.4, 0.4), (0.8, 0.2), (0.5, 0.0)] {
            let law = bare_end_inharmonicity(mm(near), mm(1000.0), 0.3)
                + bare_end_inharmonicity(mm(far), mm(1000.0), 0.3);
            for n in 1..=4_u32 {
                let n2 = f64::from(n * n);
                assert_close(partial(near, far, 0.3, n) - 1.0, 0.5 * law * n2, 3e-3, "cubic law");
            }
        }
    }

    #[test]
    fn cents_are_counted_from_the_first_partial() {
        let ends = (mm(20.0), mm(20.0));
        let cents = |n| bare_end_cents(ends, mm(1000.0), 0.3, n).expect("a string");
        assert_close(cents(1).abs(), 0.0, 0.0, "the first");
        let shift: f64 = (1.0 + 4.2509e-3) / (1.0 + 3.678e-5);
        assert!((cents(12) - 1200.0 * shift.log2()).abs() < 1e-4, "{}", cents(12));
    }

    #[test]
    fn extreme_masses_and_ends_give_a_finite_figure() {
        for mass_ratio in [f64::MIN_POSITIVE, 1e-30, 1e-6, 1.0 - 1e-16] {
            for (near, far) in [(0.0, 1e-12), (1e-9, 500.0), (500.0, 500.0), (300.0, 699.999_999)] {
                for n in [1, 2, 33, u32::MAX] {
                    let got = partial(near, far, mass_ratio, n);
                    let most = 1.0 / mass_ratio.sqrt();
                    let what = format!("{mass_ratio:e}, {near}, {far}, partial {n}: {got:e}");
                    assert!(got >= 1.0 - 1e-14 && got <= most * (1.0 + 1e-14), "{what}");
                }
            }
        }
    }

    #[test]
    fn what_is_no_string_has_no_partials() {
        let none = |near, far, long, mass_ratio, n| {
            assert_eq!(stepped_partial((mm(near), mm(far)), mm(long), mass_ratio, n), None);
            assert_eq!(bare_end_cents((mm(near), mm(far)), mm(long), mass_ratio, n), None);
        };
        none(-1.0, 0.0, 900.0, 0.3, 1);
        none(0.0, f64::NAN, 900.0, 0.3, 1);
        none(500.0, 401.0, 900.0, 0.3, 1);
        none(0.0, 0.0, 0.0, 0.3, 1);
        none(0.0, 0.0, f64::INFINITY, 0.3, 1);
        none(10.0, 10.0, 900.0, 0.0, 1);
        none(10.0, 10.0, 900.0, 1.1, 1);
        none(10.0, 10.0, 900.0, f64::NAN, 1);
        none(10.0, 10.0, 900.0, 0.3, 0);
    }

    /// What Numbers says of the pull, which leaves the bare ends out: with 6 and 4.5 % of the length bare, a string
    /// whose core has a tenth to half of its mass sounds up to 1.6 cents above its note.
    #[test]
    fn the_pull_leaves_out_little_of_the_bare_ends() {
        let ends = (Length::from_mm(60.0), Length::from_mm(45.0));
        let most = [0.1, 0.2, 0.3, 0.5].into_iter().map(|ratio| {
            let first = stepped_partial(ends, Length::from_mm(1000.0), ratio, 1).unwrap();
            1200.0 * first.log2()
        });
        let most = most.fold(0.0, f64::max);
        assert!((1.5..=1.6).contains(&most), "{most}");
    }
}
