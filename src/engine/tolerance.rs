//! How far each figure of a string may be off, because a string is never quite as thick, as heavy, as
//! long, as well tuned or as warm as the design says.
//!
//! Each thing that may be off is an input: the diameter of the plain string or of the core, the
//! thickness of each layer, the density of each material, the vibrating length, the pitch, the
//! temperature. Each is moved by its tolerance, up and down, all else staying as it is, and every figure
//! is worked out again; how far the figure goes is what this input does to it. As the whole string is
//! worked out again, what belongs together moves together: a thicker string pulls more and bears more, so
//! that its load share hardly moves. What the inputs do adds up by squares, as they know nothing of each
//! other: the root of the sum of the squares.
//!
//! What the result means is what the tolerances mean. If they are limits that 95 of 100 strings keep,
//! so is the range; it is no limit that no string can pass. If every input were off by its whole
//! tolerance at once, each to the worse side, the figure would be off by the sum of what they do, which
//! is up to the root of their number times as much. For a question of safety, that sum is the one to
//! take, as [`Spread::worst`] gives it.
//!
//! First order: a figure is taken to go straight from its value to its moved values, and to stay in the
//! middle. This is poor where it does not: near a step of a table of strengths, and where a tolerance is a
//! good part of the thing itself. It tells nothing of what is wrong with a formula or a modulus.
//!
//! The strings of a harp are not independent of each other: if a material is heavier than stated, it is so
//! in all of them. So the spreads of strings must not be added by squares.

mod inputs;

use self::inputs::{Input, inputs};
use super::analysis::{Harp, HarpString, Known, Unknown, figures};
use super::figure::Figure;
use super::units::Length;

/// What makes a figure be off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Cause {
    /// Diameter of the string or the core, and the thickness of each layer.
    Diameter,
    /// Density of each material, or the weighed mass per metre.
    Density,
    /// Vibrating length.
    Length,
    /// How well it is tuned.
    Pitch,
    /// Temperature since it was tuned.
    Temperature,
    /// How far a lever or a disc pushes it aside.
    Push,
}

impl Cause {
    /// All of them, in the order of [`Spread::causes`].
    pub const ALL: [Self; 6] =
        [Self::Diameter, Self::Density, Self::Length, Self::Pitch, Self::Temperature, Self::Push];
}

/// How far a figure may be off to either side, in the unit of its heading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// By all causes: the root of the sum of the squares.
    pub total: f64,
    /// By each cause alone, in the order of [`Cause::ALL`]; never below 0.
    pub causes: [f64; Cause::ALL.len()],
    /// By everything at once, each to the worse side: the sum. To first order, no string whose
    /// inputs all keep their tolerances is further off.
    pub worst: f64,
}

impl Spread {
    /// By one cause alone.
    pub const fn by(&self, cause: Cause) -> f64 {
        self.causes[cause as usize]
    }
}

/// How far each figure of one string may be off.
#[derive(Clone, Debug, PartialEq)]
pub struct Spreads {
    of: [Known<Spread>; Figure::ALL.len()],
    /// What temperature does is not known and counts as nothing: true for gut, silk and polymers, and
    /// where the expansion of a metal or the core of a weighed string is not known.
    pub without_temperature: bool,
}

impl Spreads {
    /// How far a figure may be off; why not, where the figure or its moved values are not known.
    pub const fn of(&self, figure: Figure) -> Known<Spread> {
        self.of[figure as usize]
    }
}

/// How far each figure of each string of a harp may be off, in the harp's order.
pub fn spreads_of_all(harp: &Harp) -> Vec<Spreads> {
    harp.strings.iter().map(|string| spreads(string, harp)).collect()
}

/// How far each figure of a string may be off: `√Σ ½ (u² + v²)` over its inputs `x` with their tolerances
/// `Δx`, with `u` = `F(x + Δx) − F(x)` and `v` = `F(x − Δx) − F(x)`.
///
/// Where the figure goes straight, `u` = `−v`, and each term is the square of `½ (u − v)`, half of the
/// difference. Where it bends or steps, half of the difference could vanish although the figure moves; the
/// squares of the two sides cannot.
///
/// - The diameter of a plain string or a core and the thickness of a layer are off by what their
///   material states, else by [`Tolerances::diameter`](super::analysis::Tolerances), each by itself. A
///   layer keeps its packing, and so its turns lie wider apart as its wire gets thicker.
/// - The density of a material is off by what it states, else by `density_ratio`; the parts of one
///   material are off together.
/// - A weighed string has its mass per metre off by `density_ratio`, and its overall diameter by
///   `diameter`; where it is as thick as its core, it is a plain string, and the two are off together.
/// - The push of a lever or a disc is off by `push`; it moves their places and nothing else.
/// - Temperature moves the pitch, and with it the pull, by [`Figure::CentsPerKelvin`] times
///   `temperature_k`, the string having been at pitch before: `ΔT = −E A (α − α_frame) θ`. What was done
///   while tuning, the stretch and the turns of the pin, stays. See [`Spreads::without_temperature`].
///
/// An input that cannot go one way, as at the end of a table of strengths, counts by what it does the
/// other way. A tolerance that is not above 0 counts as 0.
///
/// # Source
///
/// JCGM 100:2008, *Guide to the expression of uncertainty in measurement*, section 5.1: the law of
/// propagation for uncorrelated inputs, with differences in place of the derivatives as a note there
/// has it (from memory). To take the two sides by squares is of this project. Checked in `tests/` against
/// strings drawn at random.
///
/// # Example
///
/// The pull of a flexible string goes with the square of its diameter, so that a hundredth of a
/// millimetre in one is 2 %.
///
/// ```
/// use std::sync::Arc;
/// use stringloft::engine::analysis::{Conditions, Harp, HarpString, Limits, Mechanism, analyse};
/// use stringloft::engine::construction::MakeUp;
/// use stringloft::engine::figure::Figure;
/// use stringloft::engine::material::{Tolerance, built_in};
/// use stringloft::engine::tolerance::{Cause, spreads};
/// use stringloft::engine::units::{Force, Frequency, Length, Stiffness};
///
/// let mut nylon = built_in().swap_remove(0);
/// nylon.modulus = None;
/// if let Some(stated) = &mut nylon.diameter_tolerance {
///     stated.value = Tolerance::Constant(Length::from_mm(0.01));
/// }
/// let string = HarpString {
///     note: None,
///     frequency: Ok(Frequency::from_hz(200.0)),
///     length: Ok(Length::from_mm(500.0)),
///     make_up: Ok(MakeUp::plain(Arc::new(nylon), Length::from_mm(1.0))?),
///     mechanism: Mechanism::None,
/// };
/// let harp = Harp {
///     strings: vec![string],
///     pluck_ratio: 0.5,
///     conditions: Conditions::default(),
///     limits: Limits {
///         working_share_percent: 75.0,
///         soft_share_percent: 75.0,
///         slack_share_percent: 20.0,
///         least_tension: Force::from_n(10.0),
///         stiffness_band: (Stiffness::from_n_per_m(200.0), Stiffness::from_n_per_m(1500.0)),
///         partial_8_cents: 30.0,
///         jump_percent: 25.0,
///         least_raise: Length::from_mm(0.0),
///     },
/// };
/// let pull_n = analyse(&harp).strings[0].tension?.to_n();
/// let off_n = spreads(&harp.strings[0], &harp).of(Figure::Tension)?.by(Cause::Diameter);
/// assert!((off_n / pull_n - 0.02).abs() < 1e-6);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn spreads(string: &HarpString, harp: &Harp) -> Spreads {
    let at_rest = figures(0, string, harp);
    let values = Figure::ALL.map(|figure| figure.value(&at_rest));
    let mut sums = values.map(|value| value.map(|_| Sum::default()));
    for (cause, input, off) in inputs(string, harp, &at_rest) {
        let moved = |by: f64| {
            let moved = match input {
                Input::Push => figures(0, string, &pushed(harp, by)?),
                _ => figures(0, &input.moved(string, by)?, harp),
            };
            Some(Figure::ALL.map(|figure| figure.value(&moved).ok()))
        };
        let (up, down) = (moved(off), moved(-off));
        for (place, figure) in Figure::ALL.into_iter().enumerate() {
            let (Ok(value), Ok(sum)) = (values[place], sums[place].as_mut()) else { continue };
            if cause == Cause::Temperature && done_while_tuning(figure) {
                continue;
            }
            let side = |moved: &Option<[Option<f64>; Figure::ALL.len()]>| (*moved)?[place];
            let (square, worst) = match (side(&up), side(&down)) {
                (Some(up), Some(down)) => {
                    let (up, down) = ((up - value).abs(), (down - value).abs());
                    (0.5 * (up * up + down * down), up.max(down))
                }
                (Some(moved), None) | (None, Some(moved)) => {
                    ((moved - value).powi(2), (moved - value).abs())
                }
                (None, None) => (f64::NAN, f64::NAN),
            };
            sum.squares[cause as usize] += square;
            sum.worst += worst;
        }
    }
    let of = sums.map(|sum| sum.and_then(Sum::spread));
    Spreads { of, without_temperature: at_rest.cents_per_kelvin.is_err() }
}

/// The conditions of a harp with another push; `None` for a push below nothing.
fn pushed(harp: &Harp, by_m: f64) -> Option<Harp> {
    let mut conditions = harp.conditions.clone();
    let push_m = conditions.push.to_m() + by_m;
    conditions.push = Length::from_m(push_m);
    let Harp { pluck_ratio, limits, .. } = harp;
    let (pluck_ratio, limits) = (*pluck_ratio, limits.clone());
    (push_m >= 0.0).then_some(Harp { strings: Vec::new(), pluck_ratio, conditions, limits })
}

/// Whether a figure is of what is done while the string is brought to pitch, which temperature cannot undo.
const fn done_while_tuning(figure: Figure) -> bool {
    matches!(figure, Figure::Stretch | Figure::PinTurns)
}

/// What the inputs looked at so far do to one figure.
#[derive(Clone, Copy, Default)]
struct Sum {
    squares: [f64; Cause::ALL.len()],
    worst: f64,
}

impl Sum {
    fn spread(self) -> Known<Spread> {
        let total = self.squares.iter().sum::<f64>().sqrt();
        let Self { squares, worst } = self;
        let is_number = total.is_finite() && worst.is_finite();
        let spread = Spread { total, causes: squares.map(f64::sqrt), worst };
        if is_number { Ok(spread) } else { Err(Unknown::OutOfReach) }
    }
}
