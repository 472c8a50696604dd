//! A lever or a disc that shortens a string and pushes it aside: how much it raises the pitch, and where
//! it must stand.
//!
//! The string runs straight from the bridge pin to the contact, a push `δ` to the side, and straight on
//! to the soundboard. The detour stretches all string between its fixings, and only the part beyond the
//! contact sounds. The pitch is that of a stiff string pinned at both ends. Its mass per metre is taken
//! as unchanged: it falls by the strain that the contact adds, which is far below what the stretch does.

use std::f64::consts::PI;

use thiserror::Error;

use super::construction::area_m2;
use super::mechanics::{CENTS_PER_LOG, Core};
use super::units::{Force, Length};
use crate::words::{Words, engine as say, numeral};

/// The most semitones that one contact may be asked for.
pub const MOST_SEMITONES: u32 = 12;
/// Cents of a semitone.
const SEMITONE: f64 = 100.0;
/// A place is found when its error is below this.
const FOUND_CENTS: f64 = 1e-9;
/// Newton takes about four; many more only where the least rise is just what is asked.
const MOST_STEPS: usize = 64;
/// Room for the last digits when the whole string vibrates.
const FIXINGS_SLACK: f64 = 1e-9;

/// An open string at pitch, and the push of what stops it.
///
/// # Example
///
/// Without stiffness and with a contact that does not push, only the length counts. Half the string sounds an octave
/// higher, so twelve semitones are in the middle too, and a natural disc changes nothing for the sharp disc: that
/// leaves 600 mm less a sixth of an octave.
///
/// ```
/// use stringloft::engine::{lever::Stopped, units::{Force, Length}};
///
/// let string = Stopped {
///     length: Length::from_mm(600.0),
///     tension: Force::from_n(120.0),
///     core: None,
///     stretch_rigidity_n: 5_000.0,
///     between_fixings: Length::from_mm(700.0),
///     push: Length::from_mm(0.0),
/// };
/// let cents = string.raised_cents(Length::from_mm(300.0)).expect("on the string");
/// assert!((cents - 1200.0).abs() < 1e-9);
///
/// assert!((string.place(12)?.distance.to_mm() - 300.0).abs() < 1e-6);
///
/// let natural = string.place(1)?.distance;
/// let sharp = string.sharp_place(natural)?.distance;
/// assert!((sharp.to_mm() - (600.0 - 600.0 / 2_f64.powf(1.0 / 6.0))).abs() < 1e-6);
/// # Ok::<(), stringloft::engine::lever::LeverError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stopped {
    /// Vibrating length of the open string, from the bridge pin to the soundboard.
    pub length: Length,
    /// Pull of the open string.
    pub tension: Force,
    /// What resists bending, with the modulus in vibration; `None` for a flexible string.
    pub core: Option<Core>,
    /// `E A` in newton of the part that bears the pull, with the modulus of seconds, not of vibration.
    pub stretch_rigidity_n: f64,
    /// All string that shares the stretch, at least the vibrating length.
    pub between_fixings: Length,
    /// How far the contact pushes the string to the side.
    pub push: Length,
}

/// Where a lever or a disc must stand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ContactPlace {
    /// What it raises the open string by.
    pub semitones: u32,
    /// The natural disc that presses at the same time, for a sharp disc.
    pub natural: Option<Length>,
    /// From the bridge pin to the contact.
    pub distance: Length,
    /// Where it would stand if it only shortened a flexible string: `L (1 − 2^(−k/12))`.
    pub nominal: Length,
    /// How sharp the string is with the contact at the nominal place; negative for flat.
    pub nominal_error_cents: f64,
    /// How fast the pitch rises as the contact moves away from the bridge pin, at its place.
    pub cents_per_mm: f64,
}

/// Why there is no place for a lever or a disc.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum LeverError {
    /// The push alone does more than was asked, wherever the contact stands.
    #[error("{}", say::lever_push(&numeral(*.asked_cents), &numeral(*.push_mm)))]
    TooMuchPush { asked_cents: f64, push_mm: f64 },
    /// The natural disc alone raises the string by what the sharp disc should.
    #[error("{}", say::lever_natural(&numeral(*.asked_cents), &numeral((*.got_cents * 10.0).round() / 10.0)))]
    NaturalTooFar { asked_cents: f64, got_cents: f64 },
    /// No such number of semitones.
    #[error("{}", say::lever_semitones(.got, &MOST_SEMITONES))]
    Semitones { got: u32 },
    /// Less string shares the stretch than vibrates.
    #[error("{}", say::lever_fixings(&numeral(*.between_mm), &numeral(*.length_mm)))]
    Fixings { length_mm: f64, between_mm: f64 },
    /// A figure of the string or the push cannot be used.
    #[error("{}", .range.said_of(*.figure, *.got))]
    Figure { figure: Words, range: Range, got: f64 },
}

/// What a figure must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Range {
    /// More than nothing.
    Above0,
    /// Nothing or more.
    From0,
    /// More than nothing, and less than the vibrating length.
    WithinLength,
}

impl Range {
    fn said_of(self, figure: Words, got: f64) -> String {
        let said = match self {
            Self::Above0 => say::lever_above,
            Self::From0 => say::lever_from,
            Self::WithinLength => say::lever_within,
        };
        said(&figure, &numeral(got))
    }
}

/// What else touches the string.
#[derive(Clone, Copy)]
enum Path {
    /// Nothing.
    Alone,
    /// A natural disc at this many metres, which pushes as far.
    Beyond(f64),
}

/// The pitch over the open string, and how fast it rises as the contact moves away from the bridge pin.
#[derive(Clone, Copy)]
struct Raised {
    cents: f64,
    cents_per_m: f64,
}

impl Stopped {
    /// How far the contact at a distance from the bridge pin raises the string, in cents.
    ///
    /// With `x` the distance, `δ` the push, `L'` = `√((L − x)² + δ²)` the part that sounds and `L_tot`
    /// the string between its fixings: `ΔL = √(x² + δ²) + L' − L`, `T' = T + E A ΔL/L_tot`, and the
    /// pitch of the stiff string of [`super::mechanics::pitch`] at `T'`, `L'` over that at `T`, `L`. The
    /// string slides freely over bridge pin and contact. `None` outside the string, or where a figure
    /// cannot be used.
    ///
    /// # Source
    ///
    /// Geometry and Hooke's law; worked out for this project.
    pub fn raised_cents(&self, distance: Length) -> Option<f64> {
        self.check().ok()?;
        let x = distance.to_m();
        if !(x > 0.0 && x < self.length.to_m()) {
            return None;
        }
        Some(self.raised(x, Path::Alone).cents).filter(|cents| cents.is_finite())
    }

    /// Where a single contact raises the string by so many semitones of 100 cents.
    ///
    /// Near the bridge pin the detour is steep, so a pushing contact has two places. This is the outer
    /// one, where the pitch rises with the distance. The rise is convex in `x` as long as `L − x > δ`:
    /// `T'`, the stiffness and `1/L'` are then sums and products of log-convex functions. So Newton's
    /// method closes in from beyond, starting where the shortening alone gives the semitones. The error
    /// is below a millionth of a cent.
    ///
    /// # Errors
    ///
    /// [`LeverError::TooMuchPush`] where the push raises the string further at every place; the others
    /// where a figure or the number of semitones cannot be used.
    ///
    /// # Source
    ///
    /// As [`Stopped::raised_cents`].
    pub fn place(&self, semitones: u32) -> Result<ContactPlace, LeverError> {
        self.check()?;
        self.settle(semitones, Path::Alone)
    }

    /// Where the sharp disc raises the string by two semitones while the natural disc presses at
    /// `natural`.
    ///
    /// Both push equally far: the string runs from the bridge pin to the natural disc, along to the
    /// sharp disc, and back to the soundboard. The pitch rises with the distance all the way, so there
    /// is one place at most.
    ///
    /// # Errors
    ///
    /// [`LeverError::NaturalTooFar`] where the place would not lie beyond the natural disc; else as
    /// [`Stopped::place`].
    ///
    /// # Source
    ///
    /// As [`Stopped::raised_cents`].
    pub fn sharp_place(&self, natural: Length) -> Result<ContactPlace, LeverError> {
        self.check()?;
        let at = natural.to_m();
        if !(at > 0.0 && at < self.length.to_m()) {
            return Err(LeverError::Figure {
                figure: say::FIGURE_NATURAL,
                range: Range::WithinLength,
                got: natural.to_mm(),
            });
        }
        let (path, semitones) = (Path::Beyond(at), 2);
        let asked_cents = SEMITONE * f64::from(semitones);
        let got_cents = self.raised(at, path).cents;
        if got_cents >= asked_cents {
            return Err(LeverError::NaturalTooFar { asked_cents, got_cents });
        }
        self.settle(semitones, path)
    }

    /// How far the contact may be off its place, towards either side, for an error of at most so many
    /// cents; the nearer of the two sides.
    ///
    /// `None` where the error is not above 0 or is not reached on the string.
    pub fn room(&self, place: &ContactPlace, error_cents: f64) -> Option<Length> {
        self.check().ok()?;
        if !(error_cents > 0.0 && error_cents.is_finite()) {
            return None;
        }
        let (at, slope) = (place.distance.to_m(), place.cents_per_mm * 1e3);
        let (path, first) = match place.natural {
            None => (Path::Alone, 0.0),
            Some(natural) => (Path::Beyond(natural.to_m()), natural.to_m()),
        };
        let high = SEMITONE * f64::from(place.semitones) + error_cents;
        // The tangent lies below the curve, so its step ends beyond the place that is sought.
        let start = (at + error_cents / slope).min(self.length.to_m() - self.push.to_m());
        let outer = self.newton(start, high, path).map(|x| x - at);
        // The curve is convex, so on the near side it falls more slowly than it rises on the far side.
        // It only comes first where it has turned, close to the bridge pin, and is too high again.
        let near = outer.map_or(first, |off| (at - off).max(first));
        let inner = (self.raised(near, path).cents > high)
            .then(|| self.newton(near, high, path))
            .flatten()
            .map(|x| at - x);
        let off = match (outer, inner) {
            (Some(outer), Some(inner)) => outer.min(inner),
            (outer, inner) => outer.or(inner)?,
        };
        (off > 0.0 && off.is_finite()).then(|| Length::from_m(off))
    }

    /// Pull of the string while a contact presses at its place, with the natural disc where there is
    /// one.
    ///
    /// `T' = T + E A ΔL/L_tot`, more than that of the open string: a string must bear it.
    ///
    /// # Source
    ///
    /// As [`Stopped::raised_cents`].
    pub fn pull(&self, place: &ContactPlace) -> Force {
        let path = place.natural.map_or(Path::Alone, |natural| Path::Beyond(natural.to_m()));
        let (stretch, _) = self.stretch_m(place.distance.to_m(), path);
        Force::from_n(self.tension.to_n() + self.pull_per_m() * stretch)
    }

    /// The figures with which every formula here is finite.
    fn check(&self) -> Result<(), LeverError> {
        let (length, between) = (self.length.to_m(), self.between_fixings.to_m());
        let above = |got: f64| got > 0.0 && got < f64::INFINITY;
        let (bend, rises) = self.bend_n_m2();
        let at_pull = bend + rises * self.tension.to_n();
        let (positive, least) = (Range::Above0, Range::From0);
        for (usable, figure, range, got) in [
            (above(length), say::FIGURE_LENGTH, positive, self.length.to_mm()),
            (above(self.tension.to_n()), say::FIGURE_TENSION, positive, self.tension.to_n()),
            (
                self.stretch_rigidity_n >= 0.0 && self.stretch_rigidity_n.is_finite(),
                say::FIGURE_RIGIDITY,
                least,
                self.stretch_rigidity_n,
            ),
            (
                self.push.to_m() >= 0.0 && self.push.to_m().is_finite(),
                say::FIGURE_PUSH,
                least,
                self.push.to_mm(),
            ),
            (
                bend >= 0.0 && rises >= 0.0 && at_pull.is_finite(),
                say::FIGURE_BENDING,
                least,
                at_pull,
            ),
        ] {
            if !usable {
                return Err(LeverError::Figure { figure, range, got });
            }
        }
        if !(between >= length * (1.0 - FIXINGS_SLACK) && between.is_finite()) {
            let between_mm = self.between_fixings.to_mm();
            return Err(LeverError::Fixings { length_mm: self.length.to_mm(), between_mm });
        }
        Ok(())
    }

    /// The place on a path, the figures being checked.
    fn settle(&self, semitones: u32, path: Path) -> Result<ContactPlace, LeverError> {
        if !(1..=MOST_SEMITONES).contains(&semitones) {
            return Err(LeverError::Semitones { got: semitones });
        }
        let (length, push) = (self.length.to_m(), self.push.to_m());
        let asked_cents = SEMITONE * f64::from(semitones);
        let too_much = LeverError::TooMuchPush { asked_cents, push_mm: self.push.to_mm() };
        let rest = length * super::pitch::ratio(-asked_cents);
        // The square of what is left of the string where the shortening alone gives the semitones.
        // Nearer to the soundboard than the push is wide, the rise is not convex.
        let left = (rest - push) * (rest + push);
        if left <= push * push {
            return Err(too_much);
        }
        let Some(x) = self.newton(length - left.sqrt(), asked_cents, path) else {
            return Err(too_much);
        };
        let nominal = length - rest;
        Ok(ContactPlace {
            semitones,
            natural: match path {
                Path::Alone => None,
                Path::Beyond(natural) => Some(Length::from_m(natural)),
            },
            distance: Length::from_m(x),
            nominal: Length::from_m(nominal),
            nominal_error_cents: self.raised(nominal, path).cents - asked_cents,
            cents_per_mm: self.raised(x, path).cents_per_m * 1e-3,
        })
    }

    /// Where the rise is `cents`, from a start that is on the convex part and not below. The steps all
    /// go one way; a slope that turns means that the curve stays above.
    fn newton(&self, start: f64, cents: f64, path: Path) -> Option<f64> {
        let mut x = start;
        let mut way = 0.0;
        for _ in 0..MOST_STEPS {
            if !(x >= 0.0 && x < self.length.to_m()) {
                return None;
            }
            let here = self.raised(x, path);
            let excess = here.cents - cents;
            if excess.abs() <= FOUND_CENTS {
                return Some(x);
            }
            let sign = here.cents_per_m.signum();
            // Rounding alone takes a step below the curve, and by no more than this.
            if excess < -1e3 * FOUND_CENTS || sign * way < 0.0 || here.cents_per_m == 0.0 {
                return None;
            }
            way = sign;
            x -= excess / here.cents_per_m;
        }
        None
    }

    /// Rise and slope at `x` metres.
    fn raised(&self, x: f64, path: Path) -> Raised {
        let (length, tension) = (self.length.to_m(), self.tension.to_n());
        let (stretch, stretch_slope) = self.stretch_m(x, path);
        let pull = tension + self.pull_per_m() * stretch;
        let pull_slope = self.pull_per_m() * stretch_slope;
        // The part that sounds, and its slope.
        let rest = length - x;
        let sounds = rest.hypot(self.push.to_m());
        let sounds_slope = -rest / sounds;
        // Pull and bending stiffness together are `T' + π² E I/L'²`, with `E I` linear in `T'`.
        let (bend, rises) = self.bend_n_m2();
        let at = |pull: f64, long: f64| pull + (bend + rises * pull) / (long * long);
        let holds = at(pull, sounds);
        let holds_slope = pull_slope * (1.0 + rises / (sounds * sounds))
            - 2.0 * (bend + rises * pull) / sounds.powi(3) * sounds_slope;
        let open = at(tension, length);
        Raised {
            cents: CENTS_PER_LOG * ((holds / open).ln() + 2.0 * (length / sounds).ln()),
            cents_per_m: CENTS_PER_LOG * (holds_slope / holds - 2.0 * sounds_slope / sounds),
        }
    }

    /// How much longer the way is than the straight string, in metres, and its slope.
    fn stretch_m(&self, x: f64, path: Path) -> (f64, f64) {
        let push = self.push.to_m();
        let (far, far_slope) = detour(self.length.to_m() - x, push);
        match path {
            Path::Alone => {
                let (near, near_slope) = detour(x, push);
                (near + far, near_slope - far_slope)
            }
            Path::Beyond(natural) => (detour(natural, push).0 + far, -far_slope),
        }
    }

    /// What each metre of detour adds to the pull, in N/m.
    fn pull_per_m(&self) -> f64 {
        self.stretch_rigidity_n / self.between_fixings.to_m()
    }

    /// `π² E I` without a pull in N·m², and what each newton of pull adds to it in m².
    fn bend_n_m2(&self) -> (f64, f64) {
        self.core.map_or((0.0, 0.0), |core| {
            let inertia = PI.powi(2) * core.inertia_m4();
            let rises = core.modulus.per_stress_ratio * inertia / area_m2(core.diameter);
            (core.modulus.base.to_pa() * inertia, rises)
        })
    }
}

/// `√(s² + δ²) − s` without loss of digits, and its slope in `s`.
fn detour(span: f64, push: f64) -> (f64, f64) {
    if push == 0.0 {
        return (0.0, 0.0);
    }
    let slant = span.hypot(push);
    let longer = push * (push / (slant + span));
    (longer, -longer / slant)
}

#[cfg(test)]
mod tests {
    use std::f64::consts::LN_2;

    use super::*;
    use crate::engine::material::Modulus;
    use crate::engine::mechanics::pitch;
    use crate::engine::units::{LinearDensity, Stress};
    use crate::testing::assert_close;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    /// A plain string under a stress, with moduli of vibration and of seconds.
    fn plain(
        (length_mm, d_mm): (f64, f64),
        stress_mpa: f64,
        (base_gpa, per_stress_ratio): (f64, f64),
        seconds_gpa: f64,
        between_ratio: f64,
        push_mm: f64,
    ) -> Stopped {
        let area = area_m2(mm(d_mm));
        let modulus = Modulus { base: Stress::from_gpa(base_gpa), per_stress_ratio };
        Stopped {
            length: mm(length_mm),
            tension: Force::from_n(stress_mpa * 1e6 * area),
            core: Some(Core { diameter: mm(d_mm), modulus }),
            stretch_rigidity_n: seconds_gpa * 1e9 * area,
            between_fixings: mm(length_mm * between_ratio),
            push: mm(push_mm),
        }
    }

    /// A flexible string of which only the ratio of modulus to stress counts.
    fn flexible(
        length_mm: f64,
        modulus_over_stress: f64,
        between_mm: f64,
        push_mm: f64,
    ) -> Stopped {
        Stopped {
            length: mm(length_mm),
            tension: Force::from_n(100.0),
            core: None,
            stretch_rigidity_n: 100.0 * modulus_over_stress,
            between_fixings: mm(between_mm),
            push: mm(push_mm),
        }
    }

    /// Steel, gut and nylon from 60 to 1500 mm, pushed aside by 0 to 3 mm; dimensions chosen for the
    /// test.
    fn sweep() -> impl Iterator<Item = Stopped> {
        let lengths = [60.0, 85.0, 120.0, 200.0, 350.0, 600.0, 1000.0, 1500.0];
        let pushes = [0.0, 0.05, 0.3, 0.7, 1.0, 1.5, 2.2, 3.0];
        lengths.into_iter().flat_map(move |long| {
            pushes.into_iter().flat_map(move |push| {
                let steel = |d, stress| plain((long, d), stress, (206.0, 0.0), 206.0, 1.12, push);
                let gut = |d, stress| plain((long, d), stress, (6.0, 0.0), 5.5, 1.2, push);
                let nylon = |d, stress| plain((long, d), stress, (4.5, 39.0), 5.0, 1.15, push);
                [
                    steel(0.3, 400.0),
                    steel(0.5, 1400.0),
                    gut(0.6, 60.0),
                    gut(2.0, 220.0),
                    nylon(0.6, 40.0),
                    nylon(1.2, 200.0),
                ]
            })
        })
    }

    /// The rise by Pythagoras and by the pitches of the engine's stiff string, for a contact at `x`
    /// beyond another.
    fn raised_by_pitches(string: &Stopped, natural_mm: Option<f64>, x_mm: f64) -> f64 {
        let (long, push) = (string.length.to_mm(), string.push.to_mm());
        let sounds = (long - x_mm).hypot(push);
        let first = natural_mm.unwrap_or(x_mm);
        let way = first.hypot(push) + (x_mm - first) + sounds;
        let pull = string.tension.to_n()
            + string.stretch_rigidity_n * (way - long) / string.between_fixings.to_mm();
        let density = LinearDensity::from_g_per_m(1.7);
        let stopped = pitch(density, mm(sounds), Force::from_n(pull), string.core);
        let open = pitch(density, string.length, string.tension, string.core);
        1200.0 * (stopped.to_hz() / open.to_hz()).log2()
    }

    /// The outermost place from `least_mm` on by a scan from far beyond and by halving; else the least
    /// excess.
    fn scanned(string: &Stopped, cents: f64, natural_mm: Option<f64>) -> Result<f64, f64> {
        let (long, push, steps) = (string.length.to_mm(), string.push.to_mm(), 3_000_u32);
        let miss = |x| raised_by_pitches(string, natural_mm, x) - cents;
        let least = natural_mm.unwrap_or(0.0);
        let most = (long - push).min(0.25 * long);
        let at = |i: u32| least + (most - least) * f64::from(i) / f64::from(steps);
        let crossed = (1..steps).rev().find(|i| miss(at(*i)) <= 0.0);
        let Some(crossed) = crossed else {
            return Err((1..steps).map(|i| miss(at(i))).fold(f64::INFINITY, f64::min));
        };
        let (mut low, mut high) = (at(crossed), at(crossed + 1));
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if miss(middle) <= 0.0 { low = middle } else { high = middle }
        }
        Ok(0.5 * (low + high))
    }

    #[test]
    fn the_rise_is_that_of_the_pitches_of_a_stiff_string() {
        for string in sweep() {
            for share in [0.002, 0.02, 0.056, 0.11, 0.3] {
                let x_mm = share * string.length.to_mm();
                let got = string.raised_cents(mm(x_mm)).expect("on the string");
                let expected = raised_by_pitches(&string, None, x_mm);
                assert!(
                    (got - expected).abs() < 1e-8,
                    "{string:?} at {x_mm} mm: {got}, {expected}"
                );
            }
        }
    }

    #[test]
    fn the_slope_is_that_of_the_rise() {
        for string in sweep() {
            for path in [Path::Alone, Path::Beyond(0.04 * string.length.to_m())] {
                for share in [0.01, 0.056, 0.11] {
                    let x = share * string.length.to_m();
                    let step = 1e-4 * x;
                    let rise =
                        string.raised(x + step, path).cents - string.raised(x - step, path).cents;
                    let slope = string.raised(x, path).cents_per_m;
                    let scale = slope.abs() + 1e3 / string.length.to_m();
                    assert!(
                        (rise / (2.0 * step) - slope).abs() < 1e-5 * scale,
                        "{string:?} at {share}"
                    );
                }
            }
        }
    }

    /// The error in cents at what each finds must be below a hundredth; where one finds none, neither
    /// does the other.
    #[test]
    fn places_are_those_of_a_scan_over_the_string() {
        let (mut found, mut none) = (0, 0);
        for string in sweep() {
            for semitones in [1, 2] {
                let cents = 100.0 * f64::from(semitones);
                match (string.place(semitones), scanned(&string, cents, None)) {
                    (Ok(place), Ok(x_mm)) => {
                        found += 1;
                        let x = place.distance.to_mm();
                        let off = raised_by_pitches(&string, None, x) - cents;
                        assert!(off.abs() < 1e-7, "{string:?}: off by {off} cents");
                        assert!(place.cents_per_mm > 0.0, "{string:?}: the outer place");
                        let apart = (x - x_mm).abs() * place.cents_per_mm;
                        assert!(apart < 0.01, "{string:?}: {x} and {x_mm} mm");
                    }
                    // The scan may step over a pair of places that nearly meet.
                    (Ok(_), Err(least)) => assert!(least < 0.01, "{string:?}: {least}"),
                    (Err(error), Err(_)) => {
                        none += 1;
                        let push_mm = string.push.to_mm();
                        let wanted = LeverError::TooMuchPush { asked_cents: cents, push_mm };
                        assert_eq!(error, wanted);
                    }
                    (Err(error), Ok(x_mm)) => panic!("{string:?}: {error}, but {x_mm} mm"),
                }
            }
        }
        assert!(found > 500 && none > 30, "{found} places, {none} without");
    }

    #[test]
    fn sharp_discs_stand_where_a_scan_finds_them() {
        let mut found = 0;
        for string in sweep() {
            let Ok(natural) = string.place(1) else { continue };
            let natural_mm = natural.distance.to_mm();
            let place = string.sharp_place(natural.distance).expect("beyond the natural disc");
            let x = place.distance.to_mm();
            assert!(x > natural_mm, "{string:?}");
            let off = raised_by_pitches(&string, Some(natural_mm), x) - 200.0;
            assert!(off.abs() < 1e-7, "{string:?}: off by {off} cents");
            let x_mm = scanned(&string, 200.0, Some(natural_mm)).expect("the discs are in order");
            assert!((x - x_mm).abs() * place.cents_per_mm < 0.01, "{string:?}: {x}, {x_mm} mm");
            found += 1;
        }
        assert!(found > 250, "{found} places");
    }

    #[test]
    fn without_push_and_stiffness_the_place_is_the_nominal_one() {
        for long in [60.0, 480.0, 1500.0] {
            for semitones in 1..=MOST_SEMITONES {
                let place =
                    flexible(long, 260.0, 1.1 * long, 0.0).place(semitones).expect("no push");
                assert_close(place.distance.to_mm(), place.nominal.to_mm(), 1e-11, long);
                assert!(place.nominal_error_cents.abs() < 1e-9);
                let slope = 1200.0 / LN_2 / (long - place.nominal.to_mm());
                assert_close(place.cents_per_mm, slope, 1e-11, long);
            }
        }
    }

    /// A string that does not pull back is only shortened, by a little less as it runs askew.
    #[test]
    fn a_push_that_does_not_stretch_asks_for_a_place_farther_out() {
        let place = flexible(300.0, 0.0, 300.0, 3.0).place(1).expect("nothing is stretched");
        let rest = 300.0 / (1.0_f64 / 12.0).exp2();
        assert_close(place.distance.to_mm(), 300.0 - (rest * rest - 9.0).sqrt(), 1e-12, "askew");
        assert!(place.nominal_error_cents < 0.0);
    }

    /// Source: worked out to first order, `865.62 (E/σ) ΔL/L_tot`, for 500 mm of which 560 mm are
    /// stretched, pushed 1 mm aside at 28.063 mm. What follows the first order, and the longer way of
    /// the part that sounds, are taken off here.
    #[test]
    fn a_push_at_the_nominal_place_sharpens_as_worked_out() {
        let (near, far): (f64, f64) = (28.063, 471.937);
        for (what, e, s, printed) in
            [("nylon", 9.0, 0.1, 2.63), ("gut", 6.0, 0.12, 1.46), ("steel", 207.0, 0.8, 7.55)]
        {
            let string = flexible(500.0, e / s, 560.0, 1.0);
            let (stretch, _) = string.stretch_m(near * 1e-3, Path::Alone);
            assert!((stretch * 1e6 - 18.871).abs() <= 5e-4, "{stretch}");
            let place = string.place(1).expect("a little push");
            let askew = 1200.0 * (far.hypot(1.0) / far).log2();
            let first_order =
                ((place.nominal_error_cents + askew) / CENTS_PER_LOG).exp_m1() * CENTS_PER_LOG;
            assert!((first_order - printed).abs() <= 5e-3, "{what}: {first_order} cents");
            assert_close(place.nominal.to_mm(), near, 0.5e-3 / near, what);
        }
    }

    /// Source: worked out for `E/σ` = 5 GPa/150 MPa and `L_tot` = 1.15 `L`: length, push, cents too
    /// sharp at the nominal place from the pull alone, nominal and corrected place. The corrected places
    /// there take the strain at the nominal place, once; nearer to the bridge pin the detour is steeper,
    /// so the exact ones lie nearer still, by 0.09 mm in the second row and 0.8 mm in the third.
    #[test]
    fn levers_move_towards_the_bridge_pin_as_worked_out() {
        for (long, push, sharp, nominal, corrected) in [
            (150.0, 0.5, 2.63, 8.42, 8.20),
            (150.0, 1.0, 10.43, 8.42, 7.56),
            (150.0, 1.5, 23.19, 8.42, 6.51),
            (300.0, 0.5, 0.66, 16.84, 16.73),
            (300.0, 1.0, 2.63, 16.84, 16.41),
            (300.0, 1.5, 5.89, 16.84, 15.87),
            (600.0, 1.0, 0.66, 33.68, 33.46),
            (600.0, 1.5, 1.48, 33.68, 33.19),
            (1000.0, 1.0, 0.24, 56.13, 56.00),
            (1000.0, 1.5, 0.53, 56.13, 55.84),
        ] {
            let what = format!("{long} mm, pushed {push} mm");
            let place = flexible(long, 5.0 / 0.15, 1.15 * long, push).place(1).expect("a place");
            assert!((place.nominal.to_mm() - nominal).abs() <= 5.01e-3, "{what}");
            let rest = long - place.nominal.to_mm();
            let askew = 1200.0 * (rest.hypot(push) / rest).log2();
            let got = place.nominal_error_cents + askew;
            assert!((got - sharp).abs() <= 5.01e-3, "{what}: {got} cents");
            // One step with the strain at the nominal place.
            let once = long - rest * (got / 1200.0).exp2();
            assert!((once - corrected).abs() <= 5.01e-3, "{what}: {once} mm");
            // The same step over and over, with the strain where it led and the way askew.
            let mut x = once;
            for _ in 0..200 {
                let pull = 100.0
                    + 100.0 * 5.0 / 0.15 * (x.hypot(push) + (long - x).hypot(push) - long)
                        / (1.15 * long);
                x = long - (rest * rest * pull / 100.0 - push * push).sqrt();
            }
            assert_close(place.distance.to_mm(), x, 1e-9, &what);
            assert!(x < once + 0.005, "{what}: {x} mm");
        }
    }

    #[test]
    fn a_string_may_be_enlarged_with_all_its_lengths() {
        let small = plain((150.0, 0.6), 150.0, (6.0, 0.0), 5.0, 1.15, 0.8);
        let large = plain((450.0, 1.8), 150.0, (6.0, 0.0), 5.0, 1.15, 2.4);
        let (here, there) = (small.place(1).expect("a place"), large.place(1).expect("a place"));
        assert_close(there.distance.to_mm(), 3.0 * here.distance.to_mm(), 1e-11, "place");
        assert_close(there.cents_per_mm, here.cents_per_mm / 3.0, 1e-9, "slope");
        let room = |string: &Stopped, place| string.room(place, 2.0).expect("reached").to_mm();
        assert_close(room(&large, &there), 3.0 * room(&small, &here), 1e-8, "room");
    }

    #[test]
    fn both_discs_at_one_place_pull_like_one() {
        let string = plain((300.0, 0.8), 150.0, (4.5, 39.0), 5.0, 1.15, 1.2);
        let one = string.raised(0.02, Path::Alone).cents;
        assert_close(string.raised(0.02, Path::Beyond(0.02)).cents, one, 1e-14, "one place");
    }

    #[test]
    fn a_pressed_string_pulls_harder() {
        let string = plain((300.0, 0.8), 150.0, (4.5, 39.0), 5.0, 1.15, 1.2);
        let natural = string.place(1).expect("a place");
        let sharp = string.sharp_place(natural.distance).expect("a place");
        let (open, one, two) = (string.tension, string.pull(&natural), string.pull(&sharp));
        assert!(one > open && two.to_n() > open.to_n());
        let loose = Stopped { push: mm(0.0), ..string };
        let place = loose.place(1).expect("a place");
        assert_close(loose.pull(&place).to_n(), open.to_n(), 1e-15, "no push");
    }

    /// Every place nearer than the room has a smaller error, and on one side the error is reached there.
    #[test]
    fn room_is_the_nearest_place_where_the_error_is_reached() {
        let mut turned = 0;
        for string in sweep() {
            let Ok(place) = string.place(1) else { continue };
            for error in [2.0, 5.0] {
                let room = string.room(&place, error).expect("reached").to_mm();
                let at = |share: f64| {
                    raised_by_pitches(&string, None, place.distance.to_mm() + share * room) - 100.0
                };
                let (near, far) = (at(-1.0), at(1.0));
                assert!(
                    (near.abs() - error).abs() < 1e-6 || (far.abs() - error).abs() < 1e-6,
                    "{string:?}: {near}, {far}"
                );
                for step in 1..50 {
                    let share = f64::from(step) / 50.0;
                    for share in [-share, share] {
                        assert!(at(share).abs() < error, "{string:?}: {share} of {room} mm");
                    }
                }
                turned += u32::from((far.abs() - error).abs() > 1e-6);
            }
        }
        assert!(turned < 20, "{turned} have the nearest error towards the pin");
        let string = flexible(400.0, 0.0, 400.0, 0.0);
        let place = string.place(1).expect("a place");
        let exact = place.distance.to_mm() - 400.0 * (1.0 - (-105.0_f64 / 1200.0).exp2());
        assert_close(string.room(&place, 5.0).expect("reached").to_mm(), -exact, 1e-9, "5 cents");
        for error in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert_eq!(string.room(&place, error), None);
        }
    }

    /// Close to the pin a steep detour comes before the far side does.
    #[test]
    fn room_sees_the_place_where_the_push_is_too_much_again() {
        // Raise the push until there is hardly a place left.
        let (mut low, mut high) = (0.0, 10.0);
        for _ in 0..40 {
            let push = 0.5 * (low + high);
            if flexible(150.0, 260.0, 170.0, push).place(1).is_ok() {
                low = push;
            } else {
                high = push;
            }
        }
        let string = flexible(150.0, 260.0, 170.0, low);
        let place = string.place(1).expect("the last push with a place");
        assert!(place.cents_per_mm < 0.5 && place.cents_per_mm > 0.0, "{place:?}");
        for error in [2.0, 5.0] {
            let room = string.room(&place, error).expect("reached").to_mm();
            let at = |x| raised_by_pitches(&string, None, place.distance.to_mm() + x) - 100.0;
            let reached = at(room).max(at(-room));
            assert!((reached - error).abs() < 1e-6, "{room} mm: {reached} cents");
        }
    }

    #[test]
    fn sharp_discs_have_room_too() {
        let string = plain((200.0, 0.6), 150.0, (4.5, 39.0), 5.0, 1.15, 1.0);
        let natural = string.place(1).expect("a place").distance;
        let place = string.sharp_place(natural).expect("a place");
        let room = string.room(&place, 5.0).expect("reached").to_mm();
        let far = raised_by_pitches(&string, Some(natural.to_mm()), place.distance.to_mm() + room);
        assert_close(far, 205.0, 1e-9, "far side");
    }

    #[test]
    fn figures_that_cannot_be_used_are_refused() {
        let good = plain((300.0, 0.8), 150.0, (4.5, 39.0), 5.0, 1.15, 1.0);
        let thick =
            Core { diameter: mm(f64::NAN), modulus: Modulus::constant(Stress::from_gpa(5.0)) };
        let bad = [
            Stopped { length: mm(0.0), ..good },
            Stopped { length: mm(f64::INFINITY), ..good },
            Stopped { tension: Force::from_n(-1.0), ..good },
            Stopped { tension: Force::from_n(f64::NAN), ..good },
            Stopped { core: Some(thick), ..good },
            Stopped { stretch_rigidity_n: -1.0, ..good },
            Stopped { between_fixings: mm(200.0), ..good },
            Stopped { between_fixings: mm(f64::NAN), ..good },
            Stopped { push: mm(-0.1), ..good },
            Stopped { push: mm(f64::INFINITY), ..good },
        ];
        let place = good.place(1).expect("a place");
        for string in bad {
            assert!(string.place(1).is_err(), "{string:?}");
            assert!(string.sharp_place(mm(16.0)).is_err(), "{string:?}");
            assert_eq!(string.raised_cents(mm(16.0)), None, "{string:?}");
            assert_eq!(string.room(&place, 2.0), None, "{string:?}");
        }
        for x in [0.0, -1.0, 300.0, f64::NAN] {
            assert_eq!(good.raised_cents(mm(x)), None);
            assert!(good.sharp_place(mm(x)).is_err());
        }
        for got in [0, 13, u32::MAX] {
            assert_eq!(good.place(got), Err(LeverError::Semitones { got }));
        }
        let late = good.sharp_place(mm(60.0)).expect_err("three semitones away");
        assert!(matches!(late, LeverError::NaturalTooFar { .. }), "{late}");
    }

    #[test]
    fn absurd_figures_end_in_an_error_or_a_finite_place() {
        for rigidity in [0.0, 1e-300, 1e6, 1e150, 1e300] {
            for push in [1e-300, 1e-9, 1.0, 40.0, 150.0, 1e9, 1e200] {
                for long in [1e-100, 1e-3, 100.0, 1e9, 1e150] {
                    let string = Stopped {
                        stretch_rigidity_n: rigidity,
                        push: mm(push),
                        ..flexible(long, 1.0, long, 0.0)
                    };
                    if let Ok(place) = string.place(1) {
                        assert!(place.distance.to_mm() > 0.0 && place.distance.to_mm() < long);
                        assert!(
                            place.nominal_error_cents.is_finite() && place.cents_per_mm.is_finite()
                        );
                        assert!(string.room(&place, 2.0).is_none_or(|room| room.to_mm() > 0.0));
                    }
                }
            }
        }
    }
}
