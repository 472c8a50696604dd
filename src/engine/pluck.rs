//! A string drawn aside and let go: the force that a finger meets, the pull at release, and how sharp
//! the sound begins.
//!
//! The string is drawn aside by `h` at the share `β` of its length, in a straight line on either side.
//! With `κ = 1/(β L) + 1/((1 − β) L)` it grows longer by `κ h²/2`, all of it within the vibrating
//! length. Holds for `h` well below both sides; friction at the bridge pin, and the slip of the string
//! over it, are left out.

use std::f64::consts::PI;

use super::units::{Force, Length};

/// Force of a finger that holds a string `h` aside: `F = T κ h + (E A/2L) κ² h³`.
///
/// The first part is [`super::mechanics::pluck_stiffness`] times `h`; the second comes from the stretch.
/// `stretch_rigidity_n` is `E A` in newton, of the part that bears the pull, with the fast modulus;
/// `pluck_ratio` lies between 0 and 1, neither of them.
///
/// # Source
///
/// Statics, with the stretch `ε ≈ ξ' + w'²/2` of J. Woodhouse, *Euphonics*, section 7.4.1, equations 1
/// to 4 (seen); worked out for this project.
///
/// # Example
///
/// In the middle of half a metre `κ` is 8 per metre, so 100 N meet 10 mm with 8 N. With `E A` = 10 kN
/// the string is 8 % tighter there, which makes it 8.64 N.
///
/// ```
/// use stringloft::engine::{pluck::pluck_force, units::{Force, Length}};
///
/// let (pull, length) = (Force::from_n(100.0), Length::from_mm(500.0));
/// let force = pluck_force(pull, length, 0.5, 1e4, Length::from_mm(10.0));
/// assert!((force.to_n() - 8.64).abs() < 1e-9);
/// ```
pub fn pluck_force(
    tension: Force,
    length: Length,
    pluck_ratio: f64,
    stretch_rigidity_n: f64,
    displacement: Length,
) -> Force {
    let rise_n = rise_n(length, pluck_ratio, stretch_rigidity_n, displacement);
    let slopes = bend_per_m(length, pluck_ratio) * displacement.to_m();
    Force::from_n((tension.to_n() + rise_n) * slopes)
}

/// The pull just as the finger lets go, over the pull at rest: `1 + E A κ h²/(2 L T)`.
///
/// Arguments as in [`pluck_force`].
///
/// # Source
///
/// As [`pluck_force`].
///
/// # Example
///
/// The string of [`pluck_force`] is 8 % tighter.
///
/// ```
/// use stringloft::engine::{pluck::release_tension_ratio, units::{Force, Length}};
///
/// let (pull, length) = (Force::from_n(100.0), Length::from_mm(500.0));
/// let ratio = release_tension_ratio(pull, length, 0.5, 1e4, Length::from_mm(10.0));
/// assert!((ratio - 1.08).abs() < 1e-12);
/// ```
pub fn release_tension_ratio(
    tension: Force,
    length: Length,
    pluck_ratio: f64,
    stretch_rigidity_n: f64,
    displacement: Length,
) -> f64 {
    1.0 + rise_n(length, pluck_ratio, stretch_rigidity_n, displacement) / tension.to_n()
}

/// How sharp a plucked string begins, in cents: `600 log₂(1 + g E A κ h²/(4 L T))` with
/// `g = 1 + sin²(πβ)/(π² β (1 − β))`.
///
/// While the string swings, half of the stretch of the pluck is left on average. The pull is greatest
/// whenever the string is farthest out, which tells on the first partial by the factor `g`, 1.405 in
/// the middle. Holds for a swing in one plane, as it begins after a pluck; a string that has turned to
/// circling sounds lower, and the rise falls as the sound dies. Arguments as in [`pluck_force`].
///
/// # Source
///
/// As [`pluck_force`], with the first partial averaged over a period as for a spring that hardens
/// (G. Duffing, 1918, from memory); worked out for this project. That the rise goes with the energy is
/// in J. Ripplinger's thesis, Brigham Young University, 2009 (abstract seen). Checked in `tests/`
/// against a string of thirty partials that swings.
///
/// # Example
///
/// A pull that rises by 2 % at release rises by 1 % on average, and 1.405 times that tells: half of
/// 1.4 % in pitch, about 12 cents.
///
/// ```
/// use stringloft::engine::{pluck::pluck_glide_cents, units::{Force, Length}};
///
/// let (pull, length) = (Force::from_n(100.0), Length::from_mm(500.0));
/// let cents = pluck_glide_cents(pull, length, 0.5, 2_500.0, Length::from_mm(10.0));
/// assert!((cents - 12.1).abs() < 0.05);
/// ```
pub fn pluck_glide_cents(
    tension: Force,
    length: Length,
    pluck_ratio: f64,
    stretch_rigidity_n: f64,
    displacement: Length,
) -> f64 {
    let rise_n = rise_n(length, pluck_ratio, stretch_rigidity_n, displacement);
    let first = (PI * pluck_ratio).sin() / PI;
    let in_step = 1.0 + first * first / (pluck_ratio * (1.0 - pluck_ratio));
    super::mechanics::CENTS_PER_LOG * (0.5 * in_step * rise_n / tension.to_n()).ln_1p()
}

/// `κ`: the sum of the two slopes for each metre of displacement.
fn bend_per_m(length: Length, pluck_ratio: f64) -> f64 {
    1.0 / (length.to_m() * pluck_ratio * (1.0 - pluck_ratio))
}

/// What the stretch adds to the pull, `E A κ h²/(2 L)`.
fn rise_n(length: Length, pluck_ratio: f64, stretch_rigidity_n: f64, displacement: Length) -> f64 {
    let share = displacement.to_m() / length.to_m();
    stretch_rigidity_n * 0.5 * bend_per_m(length, pluck_ratio) * length.to_m() * share * share
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::mechanics::pluck_stiffness;
    use crate::testing::assert_close;

    fn n(value: f64) -> Force {
        Force::from_n(value)
    }

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    /// Source: worked out by hand from the formulas for a nylon string of 1 mm, 448 mm, 139.161 N and
    /// 11.41 GPa, plucked 4 mm in the middle; printed to the digits below.
    #[test]
    fn a_nylon_string_is_plucked_as_worked_out() {
        let rigidity = 11.41e9 * PI / 4.0 * 1e-6;
        let linear = pluck_force(n(139.161), mm(448.0), 0.5, 0.0, mm(4.0)).to_n();
        let whole = pluck_force(n(139.161), mm(448.0), 0.5, rigidity, mm(4.0)).to_n();
        assert!((linear - 4.970).abs() <= 5e-4, "{linear}");
        assert!((whole - linear - 0.051).abs() <= 5e-4, "{}", whole - linear);
        let rise = release_tension_ratio(n(139.161), mm(448.0), 0.5, rigidity, mm(4.0)) - 1.0;
        assert!((100.0 * rise - 1.03).abs() <= 5e-3, "{rise}");
        let glide = pluck_glide_cents(n(139.161), mm(448.0), 0.5, rigidity, mm(4.0));
        // By the mean pull alone 4.4 cents.
        let in_step = 1.0 + 4.0 / (PI * PI);
        assert!((glide / in_step - 4.4).abs() <= 0.05, "{glide}");
    }

    #[test]
    fn a_string_that_does_not_stretch_is_a_spring() {
        for ratio in [0.1, 0.25, 0.5, 0.8] {
            let k = pluck_stiffness(n(150.0), mm(600.0), ratio).to_n_per_m();
            let force = pluck_force(n(150.0), mm(600.0), ratio, 0.0, mm(3.0));
            assert_close(force.to_n(), k * 3e-3, 1e-12, ratio);
            assert_close(
                release_tension_ratio(n(150.0), mm(600.0), ratio, 0.0, mm(3.0)),
                1.0,
                1e-15,
                ratio,
            );
            assert_close(
                pluck_glide_cents(n(150.0), mm(600.0), ratio, 0.0, mm(3.0)),
                0.0,
                0.0,
                ratio,
            );
        }
    }

    /// Straight lines from the pluck to either end, their true length, and the pulls along them.
    #[test]
    fn small_plucks_follow_the_triangle_of_the_string() {
        for (ratio, h) in [(0.5, 4.0), (0.3, 3.0), (0.15, 1.0), (0.9, 0.5)] {
            let (length, pull, rigidity) = (0.448, 139.0, 8_960.0);
            let (a, b, h_m): (f64, f64, f64) = (ratio * length, (1.0 - ratio) * length, h * 1e-3);
            let stretch = a.hypot(h_m) + b.hypot(h_m) - length;
            let tight = pull + rigidity * stretch / length;
            let exact = tight * (h_m / a.hypot(h_m) + h_m / b.hypot(h_m));
            let slope = h_m / a.min(b);
            let got = pluck_force(n(pull), mm(448.0), ratio, rigidity, mm(h)).to_n();
            assert_close(got, exact, slope * slope, format_args!("{ratio}, {h} mm"));
            let got = release_tension_ratio(n(pull), mm(448.0), ratio, rigidity, mm(h));
            assert_close(got, tight / pull, slope * slope, format_args!("{ratio}, {h} mm"));
        }
    }

    /// The finger's work is what the stretch and the pull at rest store.
    #[test]
    fn the_work_of_the_finger_is_stored_in_the_string() {
        let (pull, length, ratio, rigidity, deepest) = (120.0, 500.0, 0.35, 9_000.0, 6.0);
        let steps = 20_000_u32;
        let pace = deepest / f64::from(steps);
        let work: f64 = (0..steps)
            .map(|i| {
                let h = (f64::from(i) + 0.5) * pace;
                pluck_force(n(pull), mm(length), ratio, rigidity, mm(h)).to_n() * pace * 1e-3
            })
            .sum();
        let rise =
            pull * (release_tension_ratio(n(pull), mm(length), ratio, rigidity, mm(deepest)) - 1.0);
        let stretch_m = rise * length * 1e-3 / rigidity;
        assert_close(work, (pull + 0.5 * rise) * stretch_m, 1e-8, "work");
    }

    #[test]
    fn the_two_sides_are_alike_and_the_force_turns_with_the_pluck() {
        let force = |ratio, h| pluck_force(n(90.0), mm(300.0), ratio, 7_000.0, mm(h)).to_n();
        assert_close(force(0.2, 2.0), force(0.8, 2.0), 1e-12, "sides");
        assert_close(force(0.3, -2.0), -force(0.3, 2.0), 1e-15, "the other way");
        assert_close(force(0.3, 0.0), 0.0, 0.0, "at rest");
    }

    #[test]
    fn the_glide_goes_with_the_square_of_a_small_pluck() {
        let glide = |h| pluck_glide_cents(n(90.0), mm(300.0), 0.4, 7_000.0, mm(h));
        assert_close(glide(0.02), 4.0 * glide(0.01), 1e-5, "twice as far");
        let ratio = release_tension_ratio(n(90.0), mm(300.0), 0.4, 7_000.0, mm(0.5));
        let in_step = 1.0 + (0.4 * PI).sin().powi(2) / (PI * PI * 0.4 * 0.6);
        let first_order = 600.0 / std::f64::consts::LN_2 * 0.5 * in_step * (ratio - 1.0);
        assert_close(glide(0.5), first_order, 1e-2, "first order");
    }
}
