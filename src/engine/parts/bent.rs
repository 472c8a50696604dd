//! A back that is bent round the box, as the flat sheet it is cut from.
//!
//! Its cross-sections are arcs of a circle that rise over their chord by the same share everywhere, so that the sheet is part
//! of a cone, which unrolls without stretching; where the back is as wide at both ends, part of a cylinder.

use super::outline::flat;
use super::part::Part;

/// Panels of Simpson's rule from the middle to a place.
const PANELS: u32 = 64;
/// Places along each end.
const STEPS: u32 = 48;
/// A back whose half width changes by less with each metre is a cylinder.
const EVEN: f64 = 1e-9;
/// An arc rises by no more than its half chord.
const MOST_SHARE: f64 = 0.95;

/// The sheet, with the middle of its lower end at the origin and the first axis along the middle of the back.
#[derive(Clone, Debug, PartialEq)]
pub struct Unrolled {
    /// Its corners, in metres: along the lower end, then back along the upper one.
    pub outline: Vec<(f64, f64)>,
    /// Its sound holes.
    pub openings: Vec<Vec<(f64, f64)>>,
    /// Radius of the outside at the lower and at the upper end.
    pub radius_m: (f64, f64),
    /// Half of the angle of the arcs.
    pub half_rad: f64,
}

/// The arcs of a back.
struct Arcs {
    /// Half chord at the lower end, and how far it falls with each metre.
    half_m: f64,
    falls: f64,
    /// Radius over half chord, and half of the angle.
    ratio: f64,
    half_rad: f64,
}

impl Arcs {
    /// Where a place lies on the sheet: so far along the back, so far aside from its middle.
    fn sheet(&self, along_m: f64, aside_m: f64) -> (f64, f64) {
        let radius = self.ratio * (self.half_m - self.falls * along_m);
        self.at(along_m, (aside_m / radius).clamp(-1.0, 1.0).asin())
    }

    fn at(&self, along_m: f64, angle: f64) -> (f64, f64) {
        if self.falls.abs() < EVEN {
            return (along_m, self.ratio * self.half_m * angle);
        }
        // From the tip of the cone: places go with their distance along the middle, `D(φ) = (1, q sin φ, q (cos φ − C))`.
        let (q, c) = (self.ratio * self.falls, self.half_rad.cos());
        let square = |at: f64| 1.0 + q * q * (1.0 - 2.0 * c * at.cos() + c * c);
        // |D × D'| / |D|², how fast the sheet turns.
        let turns = |at: f64| {
            let off = q * q * c * at.sin();
            (square(at) * q * q - off * off).max(0.0).sqrt() / square(at)
        };
        let step = angle / f64::from(PANELS);
        let sum: f64 = (0..PANELS)
            .map(|panel| {
                let from = step * f64::from(panel);
                turns(from) + 4.0 * turns(from + 0.5 * step) + turns(from + step)
            })
            .sum();
        let turned = step / 6.0 * sum;
        let (tip, here) = (self.half_m / self.falls, self.half_m / self.falls - along_m);
        let reach = here * square(angle).sqrt();
        let along = tip * square(0.0).sqrt() - reach * turned.cos();
        (along, reach.abs() * turned.sin())
    }
}

/// The outside of a flat back of four corners, bent so that it rises by so much over its lower end. `None` where it does not
/// rise, or by more than an arc can.
///
/// # Source
///
/// Development of a cone; any textbook of differential geometry, from memory.
pub fn unrolled(back: &Part, rise_m: f64) -> Option<Unrolled> {
    let corners: Vec<[f64; 3]> =
        back.cells.first()?.near.iter().map(|at| back.face.own(*at)).collect();
    let [low, high, beyond, last] = corners.as_slice() else { return None };
    let middle = 0.5 * (low[1] + last[1]);
    let long = high[0] - low[0];
    let halves = (0.5 * (low[1] - last[1]).abs(), 0.5 * (high[1] - beyond[1]).abs());
    let share = rise_m / halves.0;
    if !(share > 0.0 && share < MOST_SHARE && long > 0.0) {
        return None;
    }
    let arcs = Arcs {
        half_m: halves.0,
        falls: (halves.0 - halves.1) / long,
        ratio: (1.0 + share * share) / (2.0 * share),
        half_rad: 2.0 * share.atan(),
    };
    let places = |along: f64, from: f64, to: f64| {
        let arcs = &arcs;
        (0..=STEPS).map(move |step| {
            arcs.at(along, from + (to - from) * f64::from(step) / f64::from(STEPS))
        })
    };
    let half = arcs.half_rad;
    let outline = places(0.0, half, -half).chain(places(long, -half, half)).collect();
    let opening = |path: &kurbo::BezPath| {
        flat(path).into_iter().map(|(u, v)| arcs.sheet(u - low[0], v - middle)).collect()
    };
    Some(Unrolled {
        outline,
        openings: back.openings.iter().map(opening).collect(),
        radius_m: (arcs.ratio * halves.0, arcs.ratio * halves.1),
        half_rad: half,
    })
}

/// How many notches a liner needs to bend by an angle, and how far apart they are along it: each closes when the liner bends
/// by twice the angle whose tangent is half its width over its depth.
///
/// # Source
///
/// Geometry, worked out.
pub fn notches(arc_m: f64, angle_rad: f64, (wide_m, deep_m): (f64, f64)) -> Option<(u32, f64)> {
    let each = 2.0 * (0.5 * wide_m / deep_m).atan();
    let mut count = 0_u32;
    while f64::from(count) * each < angle_rad - 1e-12 {
        count += 1;
        if count > MOST_NOTCHES {
            return None;
        }
    }
    (count > 0).then(|| (count, arc_m / f64::from(count)))
}

/// No liner has more.
const MOST_NOTCHES: u32 = 1_000;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn long(places: &[(f64, f64)]) -> f64 {
        places.windows(2).map(|pair| (pair[1].0 - pair[0].0).hypot(pair[1].1 - pair[0].1)).sum()
    }

    /// A quarter of a cylinder of radius 0.2: as wide as its arc, and as long.
    #[test]
    fn a_cylinder_unrolls_to_a_rectangle() {
        let quarter = std::f64::consts::FRAC_PI_4;
        let half_m = 0.2 * quarter.sin();
        let arcs = Arcs { half_m, falls: 0.0, ratio: 0.2 / half_m, half_rad: quarter };
        let (along, aside) = arcs.at(0.7, quarter);
        assert_close(along, 0.7, 1e-12, "along");
        assert_close(aside, 0.2 * quarter, 1e-12, "aside");
        let (_, half) = arcs.sheet(0.1, 0.5 * half_m);
        assert_close(half, 0.2 * (0.5 * quarter.sin()).asin(), 1e-12, "half-way");
    }

    /// Half of a right cone: with the arcs a half circle over the chord plane, the sheet is a sector whose angle is π times
    /// the sine of the cone, for a plane through the axis.
    #[test]
    fn half_a_cone_unrolls_to_a_sector() {
        let falls = 0.25_f64;
        let half_rad = std::f64::consts::FRAC_PI_2;
        let arcs = Arcs { half_m: 0.2, falls, ratio: 1.0, half_rad };
        let sine = falls / (1.0 + falls * falls).sqrt();
        let slant = (1.0 + falls * falls).sqrt();
        let (tip, reach) = (0.8 * slant, 0.8 * slant);
        let (along, aside) = arcs.at(0.0, half_rad);
        assert_close(aside, reach * (half_rad * sine).sin(), 1e-9, "aside");
        assert_close(along, tip - reach * (half_rad * sine).cos(), 1e-9, "along");
    }

    /// Ends are as long on the sheet as the arcs they become, and sides as long as they are.
    #[test]
    fn nothing_is_stretched() {
        for (falls, share) in [(0.2, 0.3), (0.05, 0.1), (-0.1, 0.5), (0.3, 0.8)] {
            let (ratio, half_rad) = ((1.0 + share * share) / (2.0 * share), 2.0 * f64::atan(share));
            let arcs = Arcs { half_m: 0.16, falls, ratio, half_rad };
            for along in [0.0, 0.4] {
                let radius = ratio * (0.16 - falls * along);
                let step = |at: i32| arcs.at(along, half_rad * f64::from(at) / 2000.0);
                let end: Vec<(f64, f64)> = (-2000..=2000).map(step).collect();
                assert_close(long(&end), 2.0 * radius * half_rad, 1e-6, "an end");
            }
            let (from, to) = (arcs.at(0.0, half_rad), arcs.at(0.4, half_rad));
            let side = (0.4 * falls).hypot(0.4);
            assert_close(long(&[from, to]), side, 1e-9, "a side");
        }
    }

    /// Notches 3 mm wide and 10 mm deep close by 17.06° each: a quarter circle needs six.
    #[test]
    fn a_liner_has_as_many_notches_as_close_by_the_angle() {
        let quarter = std::f64::consts::FRAC_PI_2;
        let (count, apart) = notches(0.3, quarter, (0.003, 0.010)).expect("notches");
        assert_eq!(count, 6);
        assert_close(apart, 0.05, 1e-12, "apart");
        assert_eq!(notches(0.3, quarter, (0.0, 0.010)), None);
        assert_eq!(notches(0.3, 0.0, (0.003, 0.010)), None);
    }
}
