//! What a string weighs and how stiff it is by its sound: from its length, what pulls at it, and what it sounds.
//!
//! Errors are carried to the first order: each reading is moved by its error, and what that does adds up by squares, for
//! errors that know nothing of each other (JCGM 100:2008, section 5.1: from memory).

use std::f64::consts::PI;

use super::creep::students_t;
use crate::engine::measured::Reading;
use crate::engine::units::{Force, Frequency, Length, LinearDensity, Stress};

/// Fewer partials say nothing of the inharmonicity.
pub const LEAST_PARTIALS: usize = 3;

/// The value of a formula and how far it may be off, from readings and their errors. `None` where it is no number.
fn carried<const N: usize>(
    readings: [(f64, f64); N],
    of: impl Fn([f64; N]) -> f64,
) -> Option<Reading<f64>> {
    let values = readings.map(|(value, _)| value);
    let value = of(values);
    let mut squares = 0.0;
    for (at, (reading, error)) in readings.into_iter().enumerate() {
        let moved = |to: f64| {
            let mut values = values;
            values[at] = to;
            of(values)
        };
        let half = 0.5 * (moved(reading + error) - moved(reading - error));
        squares += half * half;
    }
    let error = squares.sqrt();
    (value.is_finite() && error.is_finite()).then_some(Reading { value, error })
}

fn lengths(of: Reading<Length>) -> (f64, f64) {
    (of.value.to_m(), of.error.to_m())
}

fn forces(of: Reading<Force>) -> (f64, f64) {
    (of.value.to_n(), of.error.to_n())
}

fn pitches(of: Reading<Frequency>) -> (f64, f64) {
    (of.value.to_hz(), of.error.to_hz())
}

/// The mass per metre of a string that sounds a pitch under a known pull: `μ = T/(2 L f)²`.
///
/// For a string that is flexible; a stiff one seems lighter by the share `B`, and [`two_loads`] leaves stiffness out. `None`
/// where length or pitch is not above 0.
///
/// # Source
///
/// M. Mersenne's law, as in [`mechanics`](crate::engine::mechanics).
///
/// # Example
///
/// Waves run at 200 m/s on half a metre that sounds 200 Hz, so 40 N need 1 g/m. Errors of 2 % of the pull, 1 % of the
/// length and half a per cent of the pitch: √(2² + 2² + 1²) = 3 %.
///
/// ```
/// use stringloft::engine::measured::Reading;
/// use stringloft::engine::settling::by_ear::mass_per_metre;
/// use stringloft::engine::units::{Force, Frequency, Length};
///
/// let length = Reading { value: Length::from_mm(500.0), error: Length::from_mm(5.0) };
/// let pull = Reading { value: Force::from_n(40.0), error: Force::from_n(0.8) };
/// let pitch = Reading { value: Frequency::from_hz(200.0), error: Frequency::from_hz(1.0) };
/// let mass = mass_per_metre(length, pull, pitch).expect("a length and a pitch");
/// assert!((mass.value.to_g_per_m() - 1.0).abs() < 1e-12);
/// assert!((mass.error.to_g_per_m() - 0.03).abs() < 1e-5);
/// ```
pub fn mass_per_metre(
    length: Reading<Length>,
    pull: Reading<Force>,
    pitch: Reading<Frequency>,
) -> Option<Reading<LinearDensity>> {
    let readings = [lengths(length), forces(pull), pitches(pitch)];
    let mass = carried(readings, |[l, t, f]| t / (2.0 * l * f).powi(2))?;
    Some(densities(mass))
}

fn densities(of: Reading<f64>) -> Reading<LinearDensity> {
    let [value, error] = [of.value, of.error].map(LinearDensity::from_kg_per_m);
    Reading { value, error }
}

/// What the pitches under two pulls say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TwoLoads {
    /// Mass per metre, with stiffness left out.
    pub mass: Reading<LinearDensity>,
    /// Bending stiffness `E I`, in N m². Where its error is as large as it is, it says nothing.
    pub rigidity_n_m2: Reading<f64>,
}

/// Mass per metre and bending stiffness from the pitches of one length under two pulls.
///
/// The first partial of a stiff string between pinned ends goes by `4 L² μ f² = T + π² E I/L²`, so that
/// `μ = (T₂ − T₁)/(4 L² (f₂² − f₁²))`, and what the pull leaves of the pitch is stiffness. `None` where both pulls or
/// both pitches are the same.
///
/// # Source
///
/// N. H. Fletcher and T. D. Rossing, *The Physics of Musical Instruments*, 2nd ed., 1998, chapter 2: from memory; solved for
/// both here.
///
/// # Example
///
/// ```
/// use stringloft::engine::measured::Reading;
/// use stringloft::engine::settling::by_ear::two_loads;
/// use stringloft::engine::units::{Force, Frequency, Length};
///
/// let at = |newtons, hertz| {
///     let pull = Reading { value: Force::from_n(newtons), error: Force::default() };
///     let pitch = Reading { value: Frequency::from_hz(hertz), error: Frequency::default() };
///     (pull, pitch)
/// };
/// let length = Reading { value: Length::from_m(0.5), error: Length::default() };
/// // A flexible string: four times the pull sounds an octave higher.
/// let said = two_loads(length, at(10.0, 100.0), at(40.0, 200.0)).expect("two pulls");
/// assert!((said.mass.value.to_g_per_m() - 1.0).abs() < 1e-12);
/// assert!(said.rigidity_n_m2.value.abs() < 1e-12);
/// ```
pub fn two_loads(
    length: Reading<Length>,
    one: (Reading<Force>, Reading<Frequency>),
    other: (Reading<Force>, Reading<Frequency>),
) -> Option<TwoLoads> {
    let readings =
        [lengths(length), forces(one.0), pitches(one.1), forces(other.0), pitches(other.1)];
    let mass_of = |[l, t, f, u, g]: [f64; 5]| (u - t) / (4.0 * l * l * (g * g - f * f));
    let rigidity_of = |all: [f64; 5]| {
        let [l, t, f, ..] = all;
        (4.0 * l * l * mass_of(all) * f * f - t) * l * l / (PI * PI)
    };
    let mass = carried(readings, mass_of).filter(|mass| mass.value > 0.0)?;
    Some(TwoLoads { mass: densities(mass), rigidity_n_m2: carried(readings, rigidity_of)? })
}

/// The modulus of a plain string from its bending stiffness and its diameter: `E = 64 E I/(π d⁴)`.
///
/// The diameter counts four times. `None` where the diameter is not above 0.
///
/// # Source
///
/// The second moment of area of a circle, `I = π d⁴/64`.
///
/// # Example
///
/// ```
/// use stringloft::engine::measured::Reading;
/// use stringloft::engine::settling::by_ear::modulus;
/// use stringloft::engine::units::Length;
///
/// let diameter = Reading { value: Length::from_mm(1.0), error: Length::from_mm(0.01) };
/// let stiffness = Reading { value: std::f64::consts::PI / 64.0 * 1e-12 * 4e9, error: 0.0 };
/// let modulus = modulus(stiffness, diameter).expect("a diameter");
/// assert!((modulus.value.to_gpa() - 4.0).abs() < 1e-12);
/// assert!((modulus.error.to_gpa() - 0.16).abs() < 1e-3);
/// ```
pub fn modulus(rigidity_n_m2: Reading<f64>, diameter: Reading<Length>) -> Option<Reading<Stress>> {
    let readings = [(rigidity_n_m2.value, rigidity_n_m2.error), lengths(diameter)];
    let modulus = carried(readings, |[rigidity, d]| 64.0 * rigidity / (PI * d.powi(4)))?;
    let [value, error] = [modulus.value, modulus.error].map(Stress::from_pa);
    Some(Reading { value, error })
}

/// What the partials of a struck string say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Partials {
    /// Its first partial by all of them.
    pub first: Frequency,
    /// Its inharmonicity, and how far that may be off, 95 of 100 times.
    pub inharmonicity_b: Reading<f64>,
}

/// The inharmonicity of a string from its partials, by least squares: `(fₙ/n)² = F (1 + B n²)` is a straight line in `n²`.
///
/// `None` with fewer than three partials, or where they do not come from a string.
///
/// # Source
///
/// H. Fletcher, *Normal vibration frequencies of a stiff piano string*, 1964: from memory. Least squares and the error of a
/// ratio, as in any textbook of statistics.
///
/// # Example
///
/// ```
/// use stringloft::engine::settling::by_ear::inharmonicity;
/// use stringloft::engine::units::Frequency;
///
/// let sound = |n: u32| {
///     let n2 = f64::from(n * n);
///     (n, Frequency::from_hz(f64::from(n) * 100.0 * (1.0 + 1e-4 * n2).sqrt()))
/// };
/// let heard = inharmonicity(&[sound(1), sound(2), sound(5), sound(8)]).expect("four partials");
/// assert!((heard.inharmonicity_b.value - 1e-4).abs() < 1e-12);
/// ```
pub fn inharmonicity(partials: &[(u32, Frequency)]) -> Option<Partials> {
    let points: Vec<(f64, f64)> = partials
        .iter()
        .filter(|(number, frequency)| *number > 0 && frequency.to_hz() > 0.0)
        .map(|(number, frequency)| {
            let number = f64::from(*number);
            (number * number, (frequency.to_hz() / number).powi(2))
        })
        .collect();
    if points.len() < LEAST_PARTIALS {
        return None;
    }
    let count = f64::from(u32::try_from(points.len()).ok()?);
    let mean = |of: fn(&(f64, f64)) -> f64| points.iter().map(of).sum::<f64>() / count;
    let (mean_x, mean_y) = (mean(|point| point.0), mean(|point| point.1));
    let sum = |of: &dyn Fn(f64, f64) -> f64| {
        points.iter().map(|(x, y)| of(x - mean_x, y - mean_y)).sum::<f64>()
    };
    let across = sum(&|x, _| x * x);
    let slope = sum(&|x, y| x * y) / across;
    let level = mean_y - slope * mean_x;
    let b = slope / level;
    if !(across > 0.0 && level > 0.0 && b.is_finite() && 1.0 + b > 0.0) {
        return None;
    }
    let free = points.len() - 2;
    let variance = sum(&|x, y| (y - slope * x).powi(2)) / f64::from(u32::try_from(free).ok()?);
    // B = slope/level; slope and level are tied by the mean.
    let of_slope = variance / across;
    let of_level = variance / count + mean_x * mean_x * of_slope;
    let tied = -mean_x * of_slope;
    let of_b = (of_slope - 2.0 * b * tied + b * b * of_level) / (level * level);
    Some(Partials {
        first: Frequency::from_hz((level * (1.0 + b)).sqrt()),
        inharmonicity_b: Reading { value: b, error: students_t(free) * of_b.max(0.0).sqrt() },
    })
}

/// The bending stiffness that an inharmonicity means: `E I = B T L²/π²`, in N m².
///
/// `None` where a reading is no number.
///
/// # Source
///
/// As [`inharmonicity`]: `B = π² E I/(T L²)`.
///
/// # Example
///
/// ```
/// use stringloft::engine::measured::Reading;
/// use stringloft::engine::settling::by_ear::rigidity_n_m2;
/// use stringloft::engine::units::{Force, Length};
///
/// let b = Reading { value: std::f64::consts::PI.powi(2) * 1e-5, error: 0.0 };
/// let pull = Reading { value: Force::from_n(100.0), error: Force::default() };
/// let length = Reading { value: Length::from_m(1.0), error: Length::default() };
/// let stiffness = rigidity_n_m2(b, pull, length).expect("numbers");
/// assert!((stiffness.value - 1e-3).abs() < 1e-15);
/// ```
pub fn rigidity_n_m2(
    inharmonicity_b: Reading<f64>,
    pull: Reading<Force>,
    length: Reading<Length>,
) -> Option<Reading<f64>> {
    let b = (inharmonicity_b.value, inharmonicity_b.error);
    carried([b, forces(pull), lengths(length)], |[b, t, l]| b * t * l * l / (PI * PI))
}

#[cfg(test)]
mod tests;
