//! A back that is bent round the box: its strips in space, and the flat sheet it is cut from.
//!
//! Over sides and liners it stays flat, sloping up from the outer edge of each side. Between the liners its cross-sections are
//! arcs of a circle, tangent to that slope, whose rise keeps its share of their chord, so that the inside is part of a cone
//! and unrolls without stretching; where the box is as wide all along, of a cylinder. The arcs are drawn as flat strips, so
//! many that none is farther from its arc than [`SAG_M`].

use super::outline::closed;
use super::solid::{Cell, Plane, Spot, cross, dot, meet, minus, plus, size, times, turn, unit};
use super::walls::ASIDE;

/// No strip is farther from its arc. A choice of this program.
pub const SAG_M: f64 = 5e-5;
/// The least and the most strips between the liners, so many that one lies in the middle.
const STRIPS: (u32, u32) = (9, 63);
/// Half of the angle of the arcs is no more: some 57°. A choice of this program.
const MOST_RAD: f64 = 1.0;
/// Half-way steps to the angle that rises as asked.
const HALVINGS: u32 = 60;
/// A back has at least so much between its liners, to each side of its middle. A choice of this program.
const LEAST_HALF_M: f64 = 0.010;

/// The box as it is with a flat back.
pub(super) struct Around {
    /// Inside of the flat back, pointing out of the box.
    pub(super) back: Plane,
    /// Both ends of the box.
    pub(super) low: Plane,
    pub(super) high: Plane,
    /// On the strings' side: the outside of the side, and how far inward the back rests on side and liner.
    pub(super) side: Plane,
    pub(super) rests: Plane,
    /// Along the box, upward.
    pub(super) along: Spot,
}

/// The inside of a bent back.
#[derive(Clone, Debug)]
pub(super) struct Bow {
    /// Its strips from the other side of the harp to the strings' side, pointing out of the box.
    pub(super) strips: Vec<Plane>,
    /// Before the first strip, between each two, and after the last.
    pub(super) edges: Vec<Plane>,
    /// What it rises over its outer edges at its lower end.
    pub(super) rise_m: f64,
    /// Radius of the arcs at the lower and at the upper end, square to the flat back.
    pub(super) radius_m: (f64, f64),
    /// Half of their angle.
    pub(super) half_rad: f64,
}

/// The arcs over one angle: half chord at the lower end, how far it falls with each metre, and how high its ends lie.
struct Arcs {
    half_m: f64,
    high_m: f64,
}

fn mirrored(plane: Plane) -> Plane {
    let [x, y, z] = plane.square;
    Plane { square: [x, y, -z], at: plane.at }
}

impl Bow {
    /// A back that rises so far at its lower end, or as far as it can. `None` where its liners leave no room for arcs.
    ///
    /// # Source
    ///
    /// Geometry, worked out.
    pub(super) fn new(of: &Around, rise_m: f64) -> Option<Self> {
        let middle = Plane::new(ASIDE, 0.0);
        let out = of.back.square;
        let up = unit(cross(ASIDE, out));
        let up = if dot(up, of.along) < 0.0 { times(-1.0, up) } else { up };
        let origin = meet(of.back, of.low, middle)?;
        let own = |at: Spot| {
            let from = minus(at, origin);
            (dot(from, up), dot(from, ASIDE), dot(from, out))
        };
        let (low, high) =
            (own(meet(of.back, of.low, of.side)?), own(meet(of.back, of.high, of.side)?));
        let falls = (low.1 - high.1) / (high.0 - low.0);
        let place = |(u, v, w): (f64, f64, f64)| {
            plus(origin, plus(times(u, up), plus(times(v, ASIDE), times(w, out))))
        };
        // Through the outer edge of the strings' side, rising inward by an angle.
        let slope = |angle: f64| {
            let square = plus(out, times(angle.tan(), plus(times(falls, up), ASIDE)));
            Plane::through(place(low), square)
        };
        let arcs = |angle: f64| {
            let (u, v, w) = own(meet(slope(angle), of.rests, of.high)?);
            Some(Arcs { half_m: v + falls * u, high_m: w })
        };
        let rise = |angle: f64| {
            let arcs = arcs(angle)?;
            Some(arcs.high_m + arcs.half_m * (0.5 * angle).tan())
        };
        let (mut less, mut more) = (0.0, MOST_RAD);
        if rise(more)? > rise_m {
            for _ in 0..HALVINGS {
                let angle = 0.5 * (less + more);
                if rise(angle)? < rise_m { less = angle } else { more = angle }
            }
        }
        let half_rad = more;
        let Arcs { half_m, high_m } = arcs(half_rad)?;
        let long_m = high.0;
        if !(half_m > LEAST_HALF_M && half_m - falls * long_m > LEAST_HALF_M && long_m > 0.0) {
            return None;
        }
        let widest_m = half_m.max(half_m - falls * long_m);
        let bends = widest_m * half_rad * half_rad / (2.0 * half_rad.sin() * SAG_M);
        let mut count = STRIPS.0;
        while f64::from(count * count) < bends && count < STRIPS.1 {
            count += 2;
        }
        // A place of the inside, so far along and at a share of the angle.
        let at = |u: f64, angle: f64| {
            let radius = (half_m - falls * u) / half_rad.sin();
            place((u, radius * angle.sin(), high_m + radius * (angle.cos() - half_rad.cos())))
        };
        let angle = |step: u32| half_rad * (2.0 * f64::from(step) / f64::from(count) - 1.0);
        let flat = |step: u32| {
            let (one, two) = (angle(step), angle(step + 1));
            let three = [at(0.0, one), at(0.0, two), at(long_m, two)];
            let plane = Plane::of(&three);
            if dot(plane.square, out) > 0.0 {
                plane
            } else {
                Plane { square: times(-1.0, plane.square), at: -plane.at }
            }
        };
        let margin = slope(half_rad);
        let mut strips = vec![mirrored(margin)];
        strips.extend((0..count).map(flat));
        strips.push(margin);
        // Half-way between two strips, through the line in which they meet.
        let between = |step: u32| {
            let (one, two) = (strips[step as usize], strips[step as usize + 1]);
            Plane::through(at(0.0, angle(step)), minus(two.square, one.square))
        };
        let mut edges = vec![mirrored(of.side)];
        edges.extend((0..=count).map(between));
        edges.push(of.side);
        let radius = |u: f64| (half_m - falls * u) / half_rad.sin();
        let radius_m = (radius(0.0), radius(long_m));
        Some(Self { strips, edges, rise_m: rise(half_rad)?, radius_m, half_rad })
    }

    /// The strip in the middle.
    pub(super) fn crown(&self) -> Plane {
        self.strips[self.strips.len() / 2]
    }

    /// The strips as solids between both ends, so thick, with their outside near.
    pub(super) fn cells(&self, (low, high): (Plane, Plane), thick_m: f64) -> Option<Vec<Cell>> {
        let all = self.strips.iter().zip(self.edges.windows(2));
        all.map(|(inside, edges)| {
            let ring = [low, edges[1], high, edges[0]];
            Cell::between(inside.moved(thick_m), *inside, &ring)
        })
        .collect()
    }
}

/// A strip of the sheet: the corners of its outside, flat and in space: at the lower end on the strings' side, then round by
/// the upper end; and the way into the wood.
#[derive(Clone, Debug, PartialEq)]
struct Strip {
    flat: [(f64, f64); 4],
    space: [Spot; 4],
    into: Spot,
}

impl Strip {
    /// From the lower corner on the other side: upward along that edge, and square to it to the strings' side; flat and in
    /// space.
    fn axes(&self) -> ([(f64, f64); 2], [Spot; 2]) {
        let (a, b) = (self.flat[3], self.flat[2]);
        let long = (b.0 - a.0).hypot(b.1 - a.1);
        let e = ((b.0 - a.0) / long, (b.1 - a.1) / long);
        let along = unit(minus(self.space[2], self.space[3]));
        let over = minus(self.space[0], self.space[3]);
        let aside = unit(minus(over, times(dot(over, along), along)));
        ([e, (-e.1, e.0)], [along, aside])
    }

    /// How far a place of the sheet lies beside the strip; 0 within it.
    fn beside(&self, at: (f64, f64)) -> f64 {
        let off = |from: (f64, f64), to: (f64, f64)| {
            let way = (to.0 - from.0, to.1 - from.1);
            ((at.1 - from.1) * way.0 - (at.0 - from.0) * way.1) / way.0.hypot(way.1)
        };
        let (left, right) = (off(self.flat[0], self.flat[1]), -off(self.flat[3], self.flat[2]));
        left.max(right).max(0.0)
    }

    fn place(&self, at: (f64, f64)) -> Spot {
        let ([e, n], [along, aside]) = self.axes();
        let from = (at.0 - self.flat[3].0, at.1 - self.flat[3].1);
        let own = (from.0 * e.0 + from.1 * e.1, from.0 * n.0 + from.1 * n.1);
        plus(self.space[3], plus(times(own.0, along), times(own.1, aside)))
    }

    fn flat_of(&self, at: Spot) -> (f64, f64) {
        let ([e, n], [along, aside]) = self.axes();
        let from = minus(at, self.space[3]);
        let own = (dot(from, along), dot(from, aside));
        (self.flat[3].0 + own.0 * e.0 + own.1 * n.0, self.flat[3].1 + own.0 * e.1 + own.1 * n.1)
    }
}

/// A bent part as the flat sheet it is cut from: its outside unrolled, with the middle of its lower end at the origin and the
/// first axis along its middle.
#[derive(Clone, Debug, PartialEq)]
pub struct Sheet {
    strips: Vec<Strip>,
    /// How thick.
    pub thick_m: f64,
    /// What its inside rises over its outer edges at its lower end.
    pub rise_m: f64,
    /// Radius of the inside at the lower and at the upper end, square to the flat back.
    pub radius_m: (f64, f64),
    /// Half of the angle of the arcs.
    pub half_rad: f64,
}

impl Sheet {
    /// Unrolls strips that meet in straight lines, from the middle one outward.
    ///
    /// # Source
    ///
    /// Development of a surface of flat strips; any textbook of descriptive geometry, from memory.
    pub(super) fn of(cells: &[Cell], bow: &Bow, thick_m: f64) -> Option<Self> {
        let corners: Vec<[Spot; 4]> =
            cells.iter().map(|cell| cell.near.as_slice().try_into().ok()).collect::<Option<_>>()?;
        let strips = unrolled(&corners);
        let into = |cell: &Cell| {
            let square = unit(turn(&cell.near));
            let inward = dot(square, minus(cell.far[0], cell.near[0])) > 0.0;
            if inward { square } else { times(-1.0, square) }
        };
        let all = corners.iter().zip(&strips).zip(cells);
        let strips =
            all.map(|((space, flat), cell)| Strip { flat: *flat, space: *space, into: into(cell) });
        let Bow { rise_m, radius_m, half_rad, .. } = *bow;
        Some(Self { strips: strips.collect(), thick_m, rise_m, radius_m, half_rad })
    }

    /// Its corners: along the lower end to the other side, then back along the upper one.
    pub(super) fn outline(&self) -> kurbo::BezPath {
        let low = self.strips.iter().rev().map(|strip| strip.flat[0]);
        let first = self.strips.first().map(|strip| [strip.flat[3], strip.flat[2]]);
        let high = self.strips.iter().map(|strip| strip.flat[1]);
        closed(&low.chain(first.into_iter().flatten()).chain(high).collect::<Vec<_>>())
    }

    /// The four corners: at the lower end on the strings' side, then round by the upper end.
    pub fn corners(&self) -> Option<[(f64, f64); 4]> {
        let (first, last) = (self.strips.first()?, self.strips.last()?);
        Some([last.flat[0], last.flat[1], first.flat[2], first.flat[3]])
    }

    /// The corners of each strip, flat.
    pub fn strips(&self) -> impl Iterator<Item = [(f64, f64); 4]> {
        self.strips.iter().map(|strip| strip.flat)
    }

    /// How wide what goes square through the wood is half-way in, as a share of the outside, so far along the sheet.
    pub(super) fn narrows(&self, along_m: f64) -> f64 {
        let long_m = self.corners().map_or(1.0, |at| 0.5 * (at[1].0 + at[2].0));
        let (low, high) = self.radius_m;
        let radius_m = low + (high - low) * along_m / long_m;
        (radius_m + 0.5 * self.thick_m) / (radius_m + self.thick_m)
    }

    /// Where a place of the sheet lies in space, so deep in the wood.
    pub fn place(&self, at: (f64, f64), deep_m: f64) -> Spot {
        self.near(|strip| strip.beside(at))
            .map(|strip| plus(strip.place(at), times(deep_m, strip.into)))
            .unwrap_or_default()
    }

    /// The same for a place that is taken as one of a strip.
    pub fn place_in(&self, strip: usize, at: (f64, f64), deep_m: f64) -> Spot {
        let own = self.strips.get(strip);
        own.map(|own| plus(own.place(at), times(deep_m, own.into))).unwrap_or_default()
    }

    /// Where a place in space lies on the sheet, square to the wood.
    pub fn flat_of(&self, at: Spot) -> (f64, f64) {
        self.near(|strip| strip.beside(strip.flat_of(at)))
            .map(|strip| strip.flat_of(at))
            .unwrap_or_default()
    }

    fn near(&self, off: impl Fn(&Strip) -> f64) -> Option<&Strip> {
        let all = self.strips.iter().map(|strip| (off(strip), strip));
        let best = all.reduce(|one, next| if next.0 < one.0 { next } else { one });
        best.map(|(_, strip)| strip)
    }
}

/// The corners of strips laid flat, each beside the one that is nearer to the middle.
fn unrolled(strips: &[[Spot; 4]]) -> Vec<[(f64, f64); 4]> {
    let mut out = vec![[(0.0, 0.0); 4]; strips.len()];
    let middle = strips.len() / 2;
    let Some(own) = strips.get(middle) else { return out };
    let half = |one: Spot, other: Spot| times(0.5, plus(one, other));
    let (from, to) = (half(own[0], own[3]), half(own[1], own[2]));
    let along = unit(minus(to, from));
    let over = minus(own[0], from);
    let aside = unit(minus(over, times(dot(over, along), along)));
    out[middle] = own.map(|at| (dot(minus(at, from), along), dot(minus(at, from), aside)));
    // The corners of the edge that is shared, and to which side of it the strip lies.
    let mut lay = |at: usize, [low, high]: [usize; 2], (a, b): ((f64, f64), (f64, f64)), side| {
        let own = strips[at];
        let along = unit(minus(own[high], own[low]));
        let long = (b.0 - a.0).hypot(b.1 - a.1);
        let e = ((b.0 - a.0) / long, (b.1 - a.1) / long);
        out[at] = own.map(|place| {
            let from = minus(place, own[low]);
            let far = dot(from, along);
            let away: f64 = side * size(minus(from, times(far, along)));
            (a.0 + far * e.0 - away * e.1, a.1 + far * e.1 + away * e.0)
        });
        out[at]
    };
    let mut last = own.map(|at| (dot(minus(at, from), along), dot(minus(at, from), aside)));
    let first = last;
    for at in middle + 1..strips.len() {
        last = lay(at, [3, 2], (last[0], last[1]), 1.0);
    }
    last = first;
    for at in (0..middle).rev() {
        last = lay(at, [0, 1], (last[3], last[2]), -1.0);
    }
    out
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

    /// Strips between two ends on the surface `at(along, angle)`, from one angle to another.
    fn strips(count: u32, most: f64, at: impl Fn(f64, f64) -> Spot) -> Vec<[Spot; 4]> {
        let angle = |step: u32| most * (2.0 * f64::from(step) / f64::from(count) - 1.0);
        let one = |step: u32| {
            let (one, two) = (angle(step), angle(step + 1));
            [at(0.0, two), at(1.0, two), at(1.0, one), at(0.0, one)]
        };
        (0..count).map(one).collect()
    }

    /// A quarter of a cylinder of radius 0.2, 0.7 long: as wide as its arc, and as long.
    #[test]
    fn a_cylinder_unrolls_to_a_rectangle() {
        let quarter = std::f64::consts::FRAC_PI_4;
        let at = |far: f64, angle: f64| [0.7 * far, 0.2 * angle.cos(), 0.2 * angle.sin()];
        let flat = unrolled(&strips(501, quarter, at));
        let corner = flat[500][1];
        assert_close(corner.0, 0.7, 1e-12, "along");
        assert_close(corner.1, 0.2 * quarter, 1e-6, "aside");
        assert_close(flat[0][2].1, -corner.1, 1e-12, "to the other side");
    }

    /// Half of a right cone unrolls to a sector whose angle is π times the sine of the cone.
    #[test]
    fn half_a_cone_unrolls_to_a_sector() {
        let half = std::f64::consts::FRAC_PI_2;
        // The tip lies 0.8 from the lower end along the axis; the upper end is half-way.
        let at = |far: f64, angle: f64| {
            let (along, radius) = (0.4 * far, 0.2 * (1.0 - 0.5 * far));
            [along, radius * angle.cos(), radius * angle.sin()]
        };
        let flat = unrolled(&strips(1001, half, at));
        let slant = 0.8_f64.hypot(0.2);
        let turned = half * 0.2 / slant;
        let corner = flat[1000][0];
        assert_close(corner.1, slant * turned.sin(), 1e-6, "aside");
        assert_close(corner.0, slant - slant * turned.cos(), 1e-5, "along");
    }

    /// A box 0.3 wide at its lower end and 0.14 at its upper one, 0.9 long, whose ends stand square to it.
    fn around() -> Around {
        let falls = 0.08 / 0.9;
        let side = Plane::through([0.0, 0.0, 0.15], [falls, 0.0, 1.0]);
        Around {
            back: Plane::new([0.0, 1.0, 0.0], 0.0),
            low: Plane::new([-1.0, 0.0, 0.0], 0.0),
            high: Plane::new([1.0, 0.0, 0.0], 0.9),
            side,
            rests: side.moved(-0.02),
            along: [1.0, 0.0, 0.0],
        }
    }

    #[test]
    fn a_back_rises_as_asked_and_meets_the_sides_where_a_flat_one_does() {
        let of = around();
        for rise_m in [0.001, 0.012, 0.040] {
            let bow = Bow::new(&of, rise_m).expect("a bent back");
            assert_close(bow.rise_m, rise_m, 1e-9, "rise");
            let cells = bow.cells((of.low, of.high), 0.004).expect("strips");
            let most = cells.iter().flat_map(|cell| &cell.far).filter(|at| at[0].abs() < 1e-9);
            let most = most.map(|at| at[1]).fold(0.0, f64::max);
            assert!(most <= rise_m + 1e-9 && most > rise_m - SAG_M, "{most} of {rise_m}");
            let edge = cells.last().expect("one").far[0];
            assert!(edge[1].abs() < 1e-12 && (edge[2] - 0.15).abs() < 1e-12, "{edge:?}");
        }
        assert!(Bow::new(&of, 0.3).expect("as far as it can").rise_m < 0.12);
    }

    /// What is laid flat comes back to its place, and nothing is longer than it was.
    #[test]
    fn the_sheet_knows_where_each_of_its_places_is() {
        let of = around();
        let bow = Bow::new(&of, 0.030).expect("a bent back");
        let cells = bow.cells((of.low, of.high), 0.004).expect("strips");
        let sheet = Sheet::of(&cells, &bow, 0.004).expect("a sheet");
        for at in [(0.1, 0.0), (0.4, 0.07), (0.6, -0.1), (0.2, 0.149)] {
            let there = sheet.place(at, 0.0);
            let back = sheet.flat_of(there);
            assert!((back.0 - at.0).hypot(back.1 - at.1) < 1e-9, "{at:?} {back:?}");
            let inside = sheet.place(at, 0.004);
            assert_close(size(minus(inside, there)), 0.004, 1e-12, "deep");
            assert!(inside[1] < there[1], "into the wood");
        }
        for (strip, flat) in cells.iter().zip(sheet.strips()) {
            for at in 0..4 {
                let next = (at + 1) % 4;
                let there = size(minus(strip.near[next], strip.near[at]));
                let here = (flat[next].0 - flat[at].0).hypot(flat[next].1 - flat[at].1);
                assert_close(here, there, 1e-9, "an edge of a strip");
            }
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
