//! The planes of the soundbox: its board, sides and back, each with two faces, and its ends.

use super::bent::{Around, Bow};
use super::name::Kind;
use super::solid::{Plane, Spot, dot, meet, minus, plus, size, times, unit};
use super::{Making, PartsError};
use crate::engine::bearing::BoxParts;
use crate::engine::geometry::NeckShape;
use crate::engine::structure::frame::Point;

/// Across the harp, to the strings' side.
pub(super) const ASIDE: Spot = [0.0, 0.0, 1.0];
/// Upward.
pub(super) const UP: Spot = [0.0, 1.0, 0.0];
/// How steep the board must be, at least, for the harp to stand on the lower end of its soundbox: rise over length. A
/// choice of this program.
const LEAST_RISE: f64 = 0.4;

/// A size that goes evenly along the board: at its lower end, and how much it grows with each metre.
#[derive(Clone, Copy)]
pub(super) struct Even {
    pub(super) start: f64,
    pub(super) grows: f64,
}

impl Even {
    /// Of what it is at two places; the same all along where these are one.
    fn through((low_m, high_m): (f64, f64), (at_low, at_high): (f64, f64)) -> Self {
        let grows = if high_m > low_m { (at_high - at_low) / (high_m - low_m) } else { 0.0 };
        Self { start: at_low - low_m * grows, grows }
    }

    fn plus(self, other: Self) -> Self {
        Self { start: self.start + other.start, grows: self.grows + other.grows }
    }
}

/// The soundbox as planes. Those of the walls point outward from the board and inward to the back as said; the ends point
/// outward.
pub(super) struct Walls<'a> {
    /// Its sizes.
    pub(super) sizes: &'a BoxParts,
    /// Where the outer face of the board begins, in the plane of the strings.
    pub(super) start: Spot,
    /// Along the board, upward.
    pub(super) along: Spot,
    /// Square to it, to the strings.
    pub(super) out: Spot,
    /// How far along the board the lowest and the highest string are.
    pub(super) strings_m: (f64, f64),
    /// Half the width of the board.
    pub(super) half: Even,
    /// Outer and inner face of the board; the inner points into the box.
    pub(super) board: (Plane, Plane),
    /// Inner and outer face of the back; both point out of the box.
    pub(super) back: (Plane, Plane),
    /// The lower end.
    pub(super) low: Plane,
    /// The upper end, on which the neck stands.
    pub(super) high: Plane,
    /// The inside of a back that is bent; `back` is then the flat one in its place.
    pub(super) bow: Option<Bow>,
}

pub(super) fn spot(at: Point) -> Spot {
    [at.x.to_m(), at.y.to_m(), 0.0]
}

impl<'a> Walls<'a> {
    pub(super) fn new(making: &Making<'a>, shape: &NeckShape) -> Result<Self, PartsError> {
        let (band, build) = (making.band, making.build);
        let sizes = build.soundbox.as_ref().ok_or(PartsError::NoBox)?;
        let ends = (spot(band.board.0), spot(band.board.1));
        let along = unit(minus(ends.1, ends.0));
        let out = [-along[1], along[0], 0.0];
        if along[1] < LEAST_RISE {
            return Err(PartsError::TooFlat);
        }
        let strip = build.board.rib.outside.1.to_m();
        let begins = making.geometry.start.to_m() * making.geometry.board_angle_rad.sin();
        let start = minus(ends.0, times((strip - begins).max(0.0), out));
        let reach = |hole: Option<&crate::engine::geometry::Hole>| {
            hole.map_or(0.0, |hole| dot(minus(spot(hole.board), ends.0), along))
        };
        let strings = (reach(band.holes.last()), reach(band.holes.first()));
        let even = |(low, high): (f64, f64)| Even::through(strings, (low, high));
        let board = &build.board;
        let half = even((0.5 * board.width.0.to_m(), 0.5 * board.width.1.to_m()));
        let thick = match &board.thick {
            // As thick as its thickest places; the rest is planed off its outside.
            Some(of) => {
                let (low, high) = of.within();
                let length = size(minus(ends.1, ends.0));
                Even::through((0.0, length), (low.to_m(), high.to_m()))
            }
            None => even((board.thickness.0.to_m(), board.thickness.1.to_m())),
        };
        let depth = even((sizes.depth.0.to_m(), sizes.depth.1.to_m()));
        // Behind the board by an even size: `q = f(s)`, with `q` against the way out.
        let behind = |size: Even| {
            let square = minus(times(-1.0, out), times(size.grows, along));
            Plane::through(minus(start, times(size.start, out)), square)
        };
        let none = Even { start: 0.0, grows: 0.0 };
        let back = behind(thick.plus(depth));
        let (joint, far) = match (first(&shape.lower), first(&shape.upper)) {
            (Some(joint), Some(far)) => (joint, far),
            _ => return Err(PartsError::NoNeck),
        };
        let face = unit(minus(far, joint));
        let mut walls = Self {
            sizes,
            start,
            along,
            out,
            strings_m: strings,
            half,
            board: (behind(none), behind(thick)),
            back: (back, back.moved(sizes.back.0.to_m())),
            low: Plane::through(ends.0, times(-1.0, UP)),
            high: Plane::through(joint, [-face[1], face[0], 0.0]),
            bow: None,
        };
        let rise_m = making.proportions.back_rise.to_m();
        if rise_m > 0.0 {
            let around = Around {
                back,
                low: walls.low,
                high: walls.high,
                side: walls.side(1.0),
                rests: if walls.has_liners() { walls.liner_in(1.0) } else { walls.side_in(1.0) },
                along,
            };
            let bow = Bow::new(&around, rise_m).ok_or(PartsError::Crossed(Kind::Back))?;
            walls.bow = Some(bow);
        }
        Ok(walls)
    }

    /// Whether there are liners.
    pub(super) fn has_liners(&self) -> bool {
        self.sizes.liner.0.to_m() > 0.0 && self.sizes.liner.1.to_m() > 0.0
    }

    /// The inside of the back over a side; points out of the box.
    pub(super) fn back_at(&self, sign: f64) -> Plane {
        let ends =
            self.bow.as_ref().and_then(|bow| Some((bow.strips.last()?, bow.strips.first()?)));
        ends.map_or(self.back.0, |(last, first)| if sign > 0.0 { *last } else { *first })
    }

    /// Inside and outside of the back in its middle; both point out of the box.
    pub(super) fn crown(&self) -> (Plane, Plane) {
        let thick_m = self.sizes.back.0.to_m();
        self.bow.as_ref().map_or(self.back, |bow| (bow.crown(), bow.crown().moved(thick_m)))
    }

    /// The inside of a bent back between the liners, from the strings' side to the other.
    pub(super) fn arched(&self) -> Option<Vec<Plane>> {
        let bow = self.bow.as_ref()?;
        Some(bow.strips.get(1..bow.strips.len() - 1)?.iter().rev().copied().collect())
    }

    /// The outer face of a side, pointing outward; `sign` is that of its hand.
    pub(super) fn side(&self, sign: f64) -> Plane {
        let square = minus(times(sign, ASIDE), times(self.half.grows, self.along));
        Plane::through(plus(self.start, times(sign * self.half.start, ASIDE)), square)
    }

    /// The inner face of a side.
    pub(super) fn side_in(&self, sign: f64) -> Plane {
        self.side(sign).moved(-self.sizes.side.0.to_m())
    }

    /// The inner face of the liners of a side.
    pub(super) fn liner_in(&self, sign: f64) -> Plane {
        self.side_in(sign).moved(-self.sizes.liner.0.to_m())
    }

    /// A plane beside the middle of the board that goes to so great a share of its half width, so far off.
    pub(super) fn fanned(&self, share: f64, off_m: f64) -> Plane {
        let square = minus(ASIDE, times(share * self.half.grows, self.along));
        let from = plus(self.start, times(share * self.half.start, ASIDE));
        Plane::through(from, square).moved(off_m)
    }

    /// Square to the board, so far along it; points upward.
    pub(super) fn cut(&self, s_m: f64) -> Plane {
        Plane::through(plus(self.start, times(s_m, self.along)), self.along)
    }

    /// How far along the board a place is.
    pub(super) fn along_m(&self, at: Spot) -> f64 {
        dot(minus(at, self.start), self.along)
    }

    /// Where two planes that hold the way across meet in the plane of the strings.
    #[inline(never)]
    pub(super) fn corner(one: Plane, other: Plane) -> Option<Spot> {
        meet(one, other, Plane::new(ASIDE, 0.0))
    }
}

fn first(path: &kurbo::BezPath) -> Option<Spot> {
    let at = kurbo::PathSeg::to_cubic(&path.segments().next()?).p0;
    Some([at.x, at.y, 0.0])
}
