//! The target curve along the compass: what it is at each string, and where its points come from.
//!
//! A curve is a list of points (place, value) from the bass to the treble; places are keys of the MIDI standard.
//! Between two points it runs straight in the logarithm, outside them it stays.

mod thin;

pub use self::thin::thin;
use super::document::{Design, MOST_POINTS, PitchSpec, WantsSpec};
use super::presets::TARGET_N_PER_MM;
use super::resolve::{Resolved, resolve};
use super::settings::Setting;
use crate::engine::analysis::{Analysis, HarpString, StringFigures, analyse};
use crate::engine::mechanics::{Core, pluck_stiffness, tension};
use crate::engine::order::sort;
use crate::engine::units::{Force, Stiffness};

/// A point of a curve: its place and its value in N/mm or N.
pub type Point = (f64, f64);

/// The most points that a curve gets which is made of another harp.
pub const THINNED: usize = 7;
/// The most points of the curve to begin with.
const BEGUN: usize = 5;
/// By what ratio the curve to begin with stays within the limits of the feel. Chosen for this project, no source.
const WITHIN: f64 = 1.10;
/// The least distance of two points, in keys.
pub const APART: f64 = 1.0;
/// The least and the greatest place that a point can be moved to.
pub const PLACES: Point = (0.0, 136.0);
/// The least and the greatest pluck stiffness that can be wanted, in N/mm.
pub const STIFFNESS_N_PER_MM: (f64, f64) = (0.05, 20.0);
/// The least and the greatest tension that can be wanted, in newtons.
pub const TENSION_N: (f64, f64) = (1.0, 2_000.0);
/// The key of A4, and of C7, where the usual curve begins to fall.
const A4_KEY: f64 = 69.0;
const C7_KEY: f64 = 96.0;

/// The least and the greatest value that can be wanted.
pub const fn reach(wants: WantsSpec) -> (f64, f64) {
    match wants {
        WantsSpec::Stiffness => STIFFNESS_N_PER_MM,
        WantsSpec::Tension => TENSION_N,
    }
}

/// Where a string lies on the compass: by its note, or by its frequency where it has none.
pub fn place(string: &HarpString, pitch: &PitchSpec) -> Option<f64> {
    if let Some(note) = string.note {
        return Some(f64::from(note.key_number()));
    }
    let usable = Setting::A4.row().takes(pitch.a4_hz);
    let a4_hz = if usable { pitch.a4_hz } else { PitchSpec::default().a4_hz };
    let hz = string.frequency.ok()?.to_hz();
    Some(A4_KEY + 12.0 * (hz / a4_hz).log2()).filter(|place| place.is_finite())
}

/// Where each string lies on the compass.
pub fn places(design: &Design, resolved: &Resolved) -> Vec<Option<f64>> {
    resolved.harp.strings.iter().map(|string| place(string, &design.pitch)).collect()
}

/// The value of a curve at a place; `None` for a curve without points.
pub fn value_at(points: &[Point], place: f64) -> Option<f64> {
    let after = points.iter().position(|point| point.0 >= place);
    let Some(after) = after else { return points.last().map(|point| point.1) };
    let (right, Some(before)) = (points[after], after.checked_sub(1)) else {
        return Some(points[after].1);
    };
    let left = points[before];
    let share = (place - left.0) / (right.0 - left.0);
    Some(((1.0 - share) * left.1.ln() + share * right.1.ln()).exp())
}

/// The points that hold: those of the document in order, without any that can mean nothing; where there are
/// none, the usual ones.
pub fn curve(design: &Design, resolved: &Resolved) -> Vec<Point> {
    let points = valid(design.targets.points());
    if points.is_empty() { usual(design, resolved) } else { points }
}

/// The points that can be used, in order; of two at one place the first.
fn valid(points: &[Point]) -> Vec<Point> {
    let usable = |point: &&Point| point.0.is_finite() && point.1.is_finite() && point.1 > 0.0;
    let mut points: Vec<Point> = points.iter().filter(usable).copied().collect();
    sort(&mut points, |one, other| one.0 > other.0);
    points.dedup_by(|later, first| later.0 <= first.0);
    points
}

/// The value that is wanted of each string, in N/mm or N.
pub fn wanted(design: &Design, resolved: &Resolved) -> Vec<Option<f64>> {
    let points = curve(design, resolved);
    places(design, resolved).into_iter().map(|place| value_at(&points, place?)).collect()
}

/// What each string has now, in N/mm or N.
pub fn present(wants: WantsSpec, analysis: &Analysis) -> Vec<Option<f64>> {
    analysis.strings.iter().map(|figures| value_of(wants, figures)).collect()
}

/// What a string has of what is wanted.
pub fn value_of(wants: WantsSpec, figures: &StringFigures) -> Option<f64> {
    match wants {
        WantsSpec::Stiffness => figures.pluck_stiffness.ok().map(Stiffness::to_n_per_mm),
        WantsSpec::Tension => figures.tension.ok().map(Force::to_n),
    }
}

/// The curve to begin with: that of the harp's own strings within its limits of the feel, in few points. Where fewer
/// than two strings have a figure, it is that of [`new_harp`].
pub fn usual(design: &Design, resolved: &Resolved) -> Vec<Point> {
    let wants = design.targets.wants;
    let ratio = resolved.harp.pluck_ratio;
    let band = band(resolved);
    let value = |string: &HarpString| {
        let (length, make_up) = (string.length.ok()?, string.make_up.as_ref().ok()?);
        let core = make_up.core().and_then(|(material, diameter)| {
            Some(Core { diameter, modulus: material.modulus.as_ref()?.value })
        });
        let pull = tension(make_up.linear_density(), length, string.frequency.ok()?, core);
        let feel = pluck_stiffness(pull, length, ratio).to_n_per_mm();
        let within = feel.clamp(band.0, band.1);
        let value = match wants {
            WantsSpec::Stiffness => within,
            WantsSpec::Tension => pull.to_n() * within / feel,
        };
        (value.is_finite() && value > 0.0).then_some(value)
    };
    let places = places(design, resolved);
    let strings = resolved.harp.strings.iter().zip(places);
    let values = strings.filter_map(|(string, place)| Some((place?, value(string)?)));
    let points = thin(&valid(&values.collect::<Vec<_>>()), BEGUN);
    if points.len() < 2 { new_harp(design, resolved) } else { points }
}

/// The limits of the feel in N/mm, a little within: so that a string near the curve keeps them.
fn band(resolved: &Resolved) -> (f64, f64) {
    let (low, high) = resolved.harp.limits.stiffness_band;
    let (low, high) = (low.to_n_per_mm() * WITHIN, high.to_n_per_mm() / WITHIN);
    if low < high { (low, high) } else { STIFFNESS_N_PER_MM }
}

/// The pluck stiffness at a place on the compass that new harps are given where nothing limits it, in N/mm: common
/// practice, no source.
pub fn usual_feel(place: f64) -> f64 {
    let (at_c7, fall) = TARGET_N_PER_MM;
    (at_c7 - fall * (C7_KEY - place) / 12.0).clamp(0.5, at_c7)
}

/// The stiffness of a new harp's strings within the limits of the feel, or the tension that gives it on these
/// lengths.
fn new_harp(design: &Design, resolved: &Resolved) -> Vec<Point> {
    let band = band(resolved);
    let stiffness = |place: f64| usual_feel(place).clamp(band.0, band.1);
    match design.targets.wants {
        WantsSpec::Stiffness => {
            [24.0, 60.0, C7_KEY].map(|key| (key, rounded(stiffness(key)))).into()
        }
        WantsSpec::Tension => {
            let ratio = resolved.harp.pluck_ratio;
            let places = places(design, resolved);
            let strings = resolved.harp.strings.iter().zip(places);
            let pulls = strings.filter_map(|(string, place)| {
                let (place, length) = (place?, string.length.ok()?);
                Some((place, stiffness(place) * length.to_mm() * ratio * (1.0 - ratio)))
            });
            thin(&valid(&pulls.collect::<Vec<_>>()), THINNED)
        }
    }
}

/// One value everywhere.
pub fn constant(wants: WantsSpec, value: f64) -> Vec<Point> {
    let (least, most) = reach(wants);
    vec![(60.0, value.clamp(least, most))]
}

/// Straight in the logarithm from one point to another.
pub fn slope(wants: WantsSpec, ends: [Point; 2]) -> Vec<Point> {
    let (least, most) = reach(wants);
    let ends =
        ends.map(|(place, value)| (place.clamp(PLACES.0, PLACES.1), value.clamp(least, most)));
    valid(&ends)
}

/// The curve of another harp, thinned: a sample, a kept version, or the design as it is. Empty where none of its
/// strings has a figure.
pub fn like(model: &Design, wants: WantsSpec) -> Vec<Point> {
    let resolved = resolve(model);
    of_harp(model, &resolved, &analyse(&resolved.harp), wants)
}

/// As [`like`], for a harp that was analysed.
pub fn of_harp(
    model: &Design,
    resolved: &Resolved,
    analysis: &Analysis,
    wants: WantsSpec,
) -> Vec<Point> {
    let places = places(model, resolved).into_iter().zip(present(wants, analysis));
    let values: Vec<Point> = places.filter_map(|(place, value)| Some((place?, value?))).collect();
    let (least, most) = reach(wants);
    let mut points = thin(&valid(&values), THINNED);
    points.iter_mut().for_each(|point| point.1 = point.1.clamp(least, most));
    points
}

/// The points with one at another place and value, between its neighbours and within reach.
pub fn moved(wants: WantsSpec, points: &[Point], index: usize, to: Point) -> Vec<Point> {
    let mut next = points.to_vec();
    let before = index.checked_sub(1).and_then(|before| points.get(before));
    let least = before.map_or(PLACES.0, |point| point.0 + APART);
    let most = points.get(index + 1).map_or(PLACES.1, |point| point.0 - APART);
    let values = reach(wants);
    if let Some(point) = next.get_mut(index) {
        // Two neighbours that lie close leave it where it is.
        if to.0.is_finite() && least <= most {
            point.0 = to.0.clamp(least, most);
        }
        if to.1.is_finite() {
            point.1 = to.1.clamp(values.0, values.1);
        }
    }
    next
}

/// The points with one more at a place, on the curve; `None` where there is no room for it.
pub fn added(points: &[Point], place: f64) -> Option<Vec<Point>> {
    let near = points.iter().any(|point| (point.0 - place).abs() < APART);
    if near || points.len() >= MOST_POINTS || !(PLACES.0..=PLACES.1).contains(&place) {
        return None;
    }
    let mut next = points.to_vec();
    let at = points.iter().filter(|point| point.0 < place).count();
    next.insert(at, (place, rounded(value_at(points, place)?)));
    Some(next)
}

/// The points without one; `None` for the last one there is.
pub fn removed(points: &[Point], index: usize) -> Option<Vec<Point>> {
    let mut next = points.to_vec();
    if points.len() < 2 || index >= points.len() {
        return None;
    }
    next.remove(index);
    Some(next)
}

/// Three digits, as nobody wants more.
pub fn rounded(value: f64) -> f64 {
    if !(value > 0.0 && value.is_finite()) {
        return value;
    }
    // A whole power of ten: multiplied or divided by, so that the digits come out as typed ones.
    let digits = 2.0 - value.log10().floor();
    let power = 10.0_f64.powf(digits.abs().round());
    if digits >= 0.0 { (value * power).round() / power } else { (value / power).round() * power }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;
    use crate::testing::assert_close;

    #[test]
    fn a_curve_is_straight_in_the_logarithm_and_flat_outside() {
        let points = [(48.0, 0.5), (72.0, 2.0), (84.0, 1.0)];
        for (place, value) in [
            (20.0, 0.5),
            (48.0, 0.5),
            (60.0, 1.0),
            (66.0, 2.0_f64.sqrt()),
            (72.0, 2.0),
            (84.0, 1.0),
            (99.0, 1.0),
        ] {
            assert_close(value_at(&points, place).unwrap(), value, 1e-12, format_args!("{place}"));
        }
        assert_eq!(value_at(&[], 60.0), None);
    }

    #[test]
    fn a_place_is_a_key_and_does_not_follow_the_reference_pitch() {
        let mut design = SAMPLES[1].design();
        design.strings[0].note = "880 Hz".to_owned();
        let resolved = resolve(&design);
        let at = places(&design, &resolved);
        assert_close(at[0].unwrap(), 81.0, 1e-12, "880 Hz");
        design.pitch.a4_hz = 415.0;
        let later = places(&design, &resolve(&design));
        assert_eq!(at[1..], later[1..]);
        assert!(later[0].unwrap() > 81.5);
    }

    #[test]
    fn points_that_mean_nothing_are_passed_over() {
        let mut design = SAMPLES[0].design();
        design.targets.points_n_per_mm =
            vec![(80.0, 1.0), (60.0, 0.0), (50.0, -2.0), (70.0, 0.8), (70.0, 0.3)];
        let resolved = resolve(&design);
        assert_eq!(curve(&design, &resolved), [(70.0, 0.8), (80.0, 1.0)]);
        design.targets.points_n_per_mm.clear();
        assert_eq!(curve(&design, &resolved), usual(&design, &resolved));
        assert!(wanted(&design, &resolved).iter().all(Option::is_some));
    }

    #[test]
    fn a_wanted_tension_follows_from_the_lengths() {
        for sample in SAMPLES {
            let mut design = sample.design();
            design.targets.wants = WantsSpec::Tension;
            let resolved = resolve(&design);
            let points = curve(&design, &resolved);
            assert!((2..=THINNED).contains(&points.len()), "{}: {points:?}", sample.key);
            assert!(points.iter().all(|point| (10.0..600.0).contains(&point.1)), "{points:?}");
        }
    }

    #[test]
    fn a_point_stays_between_its_neighbours() {
        let points = [(40.0, 1.0), (60.0, 1.0), (80.0, 1.0)];
        let wants = WantsSpec::Stiffness;
        assert_eq!(moved(wants, &points, 1, (20.0, 2.0))[1], (41.0, 2.0));
        assert_eq!(moved(wants, &points, 1, (90.0, 99.0))[1], (79.0, 20.0));
        assert_eq!(moved(wants, &points, 2, (999.0, f64::NAN))[2], (136.0, 1.0));
        assert_eq!(moved(wants, &points, 3, (50.0, 1.0)), points);
        assert_eq!(added(&points, 70.0).unwrap()[2], (70.0, 1.0));
        assert_eq!(added(&points, 60.5), None);
        assert_eq!(removed(&points, 0).unwrap(), points[1..]);
        assert_eq!(removed(&points[..1], 0), None);
    }

    #[test]
    fn like_a_harp_is_near_that_harp() {
        for sample in SAMPLES {
            let design = sample.design();
            for wants in [WantsSpec::Stiffness, WantsSpec::Tension] {
                let points = like(&design, wants);
                assert!((2..=THINNED).contains(&points.len()), "{}: {points:?}", sample.key);
                let resolved = resolve(&design);
                let is = present(wants, &analyse(&resolved.harp));
                let off: Vec<f64> = places(&design, &resolved)
                    .iter()
                    .zip(is)
                    .map(|(at, is)| (is.unwrap() / value_at(&points, at.unwrap()).unwrap()).ln())
                    .collect();
                let count = f64::from(u32::try_from(off.len()).unwrap());
                let mean = off.iter().map(|off| off.abs()).sum::<f64>() / count;
                assert!(mean < 0.08, "{} {wants:?}: {mean}", sample.key);
            }
        }
    }
}
