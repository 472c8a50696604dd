//! What it takes to bring a string to pitch, and what then moves it: stretch, turns of the pin, cents
//! for a degree of the pin and for a degree of temperature.
//!
//! A gut or plastic string has three moduli: a fast one in vibration, one of seconds under a lever or a
//! pin, and a slow one once it has settled. Each function says which it wants.

use std::f64::consts::PI;

use super::material::Modulus;
use super::mechanics::CENTS_PER_LOG;
use super::units::{Length, Stress};

/// Below this the logarithm is taken as its series, whose next term no longer counts.
const SERIES_BELOW: f64 = 1e-8;

/// Elastic strain of a string brought from slack to a stress: `ε = ln(1 + k σ/E₀)/k`, and `σ/E₀` for `k`
/// = 0.
///
/// The tangent modulus is `E₀ + k σ`, and `ε = ∫ dσ/(E₀ + k σ)`. For gut and plastics take the slow
/// modulus; what creeps on over days is left out. `None` where the modulus is not above 0 all the way,
/// or the stress is negative.
///
/// # Source
///
/// Hooke's law with a modulus that goes with the stress; worked out for this project.
///
/// # Example
///
/// 100 MPa stretch a string of 2 GPa by a twentieth.
///
/// ```
/// use stringloft::engine::{material::Modulus, take_up::strain, units::Stress};
///
/// let nylon = Modulus::constant(Stress::from_gpa(2.0));
/// let strain = strain(nylon, Stress::from_mpa(100.0)).expect("the modulus is above 0");
/// assert!((strain - 0.05).abs() < 1e-15);
/// ```
pub fn strain(modulus: Modulus, stress: Stress) -> Option<f64> {
    let (base, k) = (modulus.base.to_pa(), modulus.per_stress_ratio);
    let simple = stress.to_pa() / base;
    let rise = k * simple;
    // Also holds nothing that is no number.
    if !(base > 0.0 && simple >= 0.0 && rise > -1.0 && rise < f64::INFINITY) {
        return None;
    }
    let share = if rise.abs() < SERIES_BELOW { 1.0 - 0.5 * rise } else { rise.ln_1p() / rise };
    Some(simple * share).filter(|strain| strain.is_finite())
}

/// Length that goes onto the pin between slack and pitch: `ε L_tot`, with all string between the
/// fixings.
///
/// First order. What is wound up early keeps the lesser stretch that it had then, so that a string which
/// does not slip on the pin takes `L_tot ln(1 + ε)`: a fortieth less for a strain of a twentieth. Knots
/// that settle come on top.
///
/// # Source
///
/// Hooke's law; the exact form worked out for this project.
///
/// # Example
///
/// A twentieth of 700 mm is 35 mm.
///
/// ```
/// use stringloft::engine::{take_up::stretch, units::Length};
///
/// assert!((stretch(0.05, Length::from_mm(700.0)).to_mm() - 35.0).abs() < 1e-12);
/// ```
pub fn stretch(strain: f64, between_fixings: Length) -> Length {
    Length::from_m(strain * between_fixings.to_m())
}

/// Turns of a tuning pin that take up a stretch: `ΔL/(π (D + d))`, the middle of the string lying at
/// `D + d`.
///
/// One layer, the string lying turn beside turn. `pin` and `gauge` are the diameters of pin and string,
/// not both 0.
///
/// # Source
///
/// Geometry.
///
/// # Example
///
/// A pin of 4 mm takes up `5 π` mm of a string of 1 mm in a turn.
///
/// ```
/// use stringloft::engine::{take_up::pin_turns, units::Length};
///
/// let stretch = Length::from_mm(15.707_963_267_948_966);
/// let turns = pin_turns(stretch, Length::from_mm(4.0), Length::from_mm(1.0));
/// assert!((turns - 1.0).abs() < 1e-12);
/// ```
pub fn pin_turns(stretch: Length, pin: Length, gauge: Length) -> f64 {
    stretch.to_m() / (PI * (pin.to_m() + gauge.to_m()))
}

/// Cents for a degree of the tuning pin: `(600/ln 2) (E/σ) π (D + d)/L_tot/360`.
///
/// For a small turn, the string sliding freely over bridge pin and nut. `modulus` is that of seconds, at
/// the stress; for a wound string modulus and stress are those of the core. Stress and lengths are above
/// 0.
///
/// # Source
///
/// Hooke's law; worked out for this project.
///
/// # Example
///
/// A pin and string of `1/π` m together wind up a 360th of a metre in a degree. On a metre of string
/// with `E/σ` = 3.6 the pull rises by a hundredth, which is 8.656 cents.
///
/// ```
/// use stringloft::engine::{take_up::cents_per_pin_degree, units::{Length, Stress}};
///
/// let (modulus, stress) = (Stress::from_mpa(360.0), Stress::from_mpa(100.0));
/// let pin = Length::from_m(std::f64::consts::FRAC_1_PI);
/// let cents =
///     cents_per_pin_degree(modulus, stress, pin, Length::from_mm(0.0), Length::from_m(1.0));
/// assert!((cents - 8.656).abs() < 5e-4);
/// ```
pub fn cents_per_pin_degree(
    modulus: Stress,
    stress: Stress,
    pin: Length,
    gauge: Length,
    between_fixings: Length,
) -> f64 {
    let turn = PI * (pin.to_m() + gauge.to_m()) / between_fixings.to_m();
    CENTS_PER_LOG * (modulus.to_pa() / stress.to_pa()) * turn / 360.0
}

/// Cents for each kelvin that string and frame grow warmer: `−(600/ln 2) (E/σ) (α − α_frame)`.
///
/// For metal strings. Not for gut and plastics: their modulus changes with the temperature, which can undo or
/// turn the sign, and moisture moves them more. Positive where the frame expands more than the string.
/// `expansion_per_k` is the linear expansion of the string, `frame_expansion_per_k` that of the frame
/// along the string, both per kelvin; the stress is above 0.
///
/// # Source
///
/// T. D. Rossing (ed.), *The Science of String Instruments*, 2010, chapter 21, equation 21.1, page 379
/// (seen), which has a rigid frame; with a frame that expands, worked out for this project.
///
/// # Example
///
/// `E/σ` = 500 and 12 millionths per kelvin loosen the string by 0.6 %: −5.194 cents.
///
/// ```
/// use stringloft::engine::{take_up::cents_per_kelvin, units::Stress};
///
/// let cents = cents_per_kelvin(Stress::from_gpa(200.0), Stress::from_mpa(400.0), 12e-6, 0.0);
/// assert!((cents + 5.194).abs() < 5e-4);
/// ```
pub fn cents_per_kelvin(
    modulus: Stress,
    stress: Stress,
    expansion_per_k: f64,
    frame_expansion_per_k: f64,
) -> f64 {
    let ratio = modulus.to_pa() / stress.to_pa();
    -CENTS_PER_LOG * ratio * (expansion_per_k - frame_expansion_per_k)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    fn gpa(value: f64) -> Stress {
        Stress::from_gpa(value)
    }

    fn mpa(value: f64) -> Stress {
        Stress::from_mpa(value)
    }

    fn modulus(base_gpa: f64, per_stress_ratio: f64) -> Modulus {
        Modulus { base: gpa(base_gpa), per_stress_ratio }
    }

    /// Source: worked out from the formulas for 700 mm between the fixings and 5 mm across pin and
    /// string; half of the last printed digit.
    #[test]
    fn strings_are_taken_up_as_worked_out() {
        for (what, e, s, long, long_digit, turns, turn_digit, cents) in [
            ("steel", 207.0, 800.0, 2.705, 1e-3, 0.172, 1e-3, 13.96),
            ("gut", 6.0, 120.0, 14.0, 0.1, 0.891, 1e-3, 2.70),
            ("nylon", 2.0, 100.0, 35.0, 1.0, 2.23, 1e-2, 1.08),
        ] {
            let strain = strain(Modulus::constant(gpa(e)), mpa(s)).expect("above 0");
            let longer = stretch(strain, mm(700.0));
            assert!((longer.to_mm() - long).abs() <= 0.5 * long_digit, "{what}: {longer:?}");
            let got = pin_turns(longer, mm(4.2), mm(0.8));
            assert!((got - turns).abs() <= 0.5 * turn_digit, "{what}: {got} turns");
            let got = cents_per_pin_degree(gpa(e), mpa(s), mm(4.2), mm(0.8), mm(700.0));
            assert!((got - cents).abs() <= 5e-3, "{what}: {got} cents");
        }
    }

    /// Source: worked out from the formula for a rigid frame; half of the last printed digit.
    #[test]
    fn warm_metal_strings_fall_as_worked_out() {
        for (what, e, s, alpha, cents) in [
            ("tight steel", 207.0, 1000.0, 11.5e-6, -2.06),
            ("slack steel", 207.0, 500.0, 11.5e-6, -4.12),
            ("phosphor bronze", 110.0, 500.0, 17.8e-6, -3.39),
            ("brass", 110.0, 400.0, 19.9e-6, -4.74),
        ] {
            let got = cents_per_kelvin(gpa(e), mpa(s), alpha, 0.0);
            assert!((got - cents).abs() <= 5e-3, "{what}: {got} cents");
        }
    }

    /// Source: T. D. Rossing (ed.), *The Science of String Instruments*, 2010, page 379: 0.24 % for each
    /// degree for the slackest string, with 1.2e-5 per kelvin (seen). 500 MPa at 200 GPa follow from it.
    #[test]
    fn the_slackest_string_of_a_dulcimer_falls_by_a_quarter_of_a_percent() {
        let cents = cents_per_kelvin(gpa(200.0), mpa(500.0), 1.2e-5, 0.0);
        let percent = 100.0 * (1.0 - (cents / 1200.0).exp2());
        assert!((percent - 0.24).abs() <= 5e-3, "{percent} %");
    }

    #[test]
    fn a_frame_that_expands_alike_keeps_the_pitch() {
        assert_close(cents_per_kelvin(gpa(200.0), mpa(900.0), 4e-6, 4e-6), 0.0, 0.0, "alike");
        assert!(cents_per_kelvin(gpa(200.0), mpa(900.0), 4e-6, 9e-6) > 0.0);
    }

    /// Adds up small steps of stress over the modulus at each.
    #[test]
    fn strain_is_stress_over_modulus_added_up() {
        for (base, k, s) in [(4.5, 39.0, 170.0), (2.0, -8.0, 100.0), (0.5, 20.0, 300.0)] {
            let (modulus, steps) = (modulus(base, k), 100_000_u32);
            let pace = s / f64::from(steps);
            let sum: f64 = (0..steps)
                .map(|i| pace * 1e6 / modulus.at(mpa((f64::from(i) + 0.5) * pace)).to_pa())
                .sum();
            assert_close(strain(modulus, mpa(s)).expect("above 0"), sum, 1e-8, base);
        }
    }

    /// The series for a small `k` and the logarithm agree to the digits of `f64` on either side of their
    /// border.
    #[test]
    fn strain_goes_smoothly_to_a_constant_modulus() {
        let simple = 0.05;
        for rise in [0.0, 1e-300, -1e-300, 1e-17, 9e-9, 1.1e-8, -9e-9, -1.1e-8, 1e-6, -1e-6] {
            let got = strain(modulus(2.0, rise / simple), mpa(100.0)).expect("above 0");
            let series = simple * (1.0 - rise / 2.0 + rise * rise / 3.0);
            assert_close(got, series, 4e-16, format_args!("{rise:e}"));
        }
    }

    #[test]
    fn a_modulus_that_falls_to_nothing_gives_no_strain() {
        assert_eq!(strain(modulus(2.0, -20.0), mpa(100.0)), None);
        assert_eq!(strain(modulus(2.0, -30.0), mpa(100.0)), None);
        assert_eq!(strain(modulus(0.0, 39.0), mpa(100.0)), None);
        assert_eq!(strain(modulus(-1.0, 0.0), mpa(100.0)), None);
        assert_eq!(strain(modulus(2.0, f64::NAN), mpa(100.0)), None);
        assert_eq!(strain(modulus(2.0, 0.0), mpa(-1.0)), None);
        assert_eq!(strain(modulus(2.0, 0.0), mpa(f64::INFINITY)), None);
        assert_eq!(strain(modulus(2.0, 0.0), mpa(0.0)), Some(0.0));
    }

    /// What is wound up step by step keeps the stretch of its step.
    #[test]
    fn the_first_order_leaves_out_what_the_logarithm_adds() {
        let (end, steps) = (0.05, 100_000_u32);
        let pace = end / f64::from(steps);
        let wound: f64 =
            (0..steps).map(|i| 700.0 * pace / (1.0 + (f64::from(i) + 0.5) * pace)).sum();
        assert_close(wound, 700.0 * 1.05_f64.ln(), 1e-9, "step by step");
        assert_close(stretch(end, mm(700.0)).to_mm() / wound, 1.025, 1e-3, "a fortieth more");
    }

    /// A degree of the pin is a 360th of a turn, and a turn is that much stretch.
    #[test]
    fn a_degree_of_the_pin_is_its_stretch_in_cents() {
        let per_degree = cents_per_pin_degree(gpa(6.0), mpa(120.0), mm(5.5), mm(1.1), mm(900.0));
        let turned = mm(900.0 * 120e6 / 6e9 * 1e-6);
        let degrees = 360.0 * pin_turns(turned, mm(5.5), mm(1.1));
        assert_close(per_degree * degrees, 600.0 * (1.0 + 1e-6_f64).log2(), 1e-6, "a millionth");
    }
}
