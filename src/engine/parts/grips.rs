//! Places of the whole harp at which a size can be pulled, the way it grows, and how large it is drawn.

use super::neck::Stands;
use super::solid::{Cell, Plane, Spot, dot, meet, minus, plus, times, unit};
use super::walls::{ASIDE, UP, Walls};
use super::{Kind, Making, Part, Whole};
use crate::engine::units::Length;

/// A size that can be pulled.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Pull {
    /// The pillar, in the plane of the strings and across it.
    PillarWidth,
    PillarDepth,
    /// The neck, across the harp.
    NeckThickness,
    /// The board, at its lowest and at its highest string.
    BoardLow,
    BoardHigh,
    /// The soundbox from board to back, at the lowest and at the highest string.
    DepthLow,
    DepthHigh,
    /// What a bent back rises at its lower end.
    BackRise,
    /// The sound holes, along the back and across it.
    HoleLength,
    HoleWidth,
    /// Thickness of the base, and height of its feet.
    Base,
    Feet,
    /// The base beyond what stands on it, and farther behind the back.
    BaseBeyond,
    BaseBehind,
    /// The foot block along the base, and the height of the knee block.
    FootBlock,
    KneeBlock,
}

impl Pull {
    /// All of them, those that are seen from the side first.
    pub const ALL: [Self; 16] = [
        Self::PillarWidth,
        Self::DepthLow,
        Self::DepthHigh,
        Self::BackRise,
        Self::HoleLength,
        Self::BaseBeyond,
        Self::FootBlock,
        Self::KneeBlock,
        Self::PillarDepth,
        Self::BoardLow,
        Self::BoardHigh,
        Self::HoleWidth,
        Self::Base,
        Self::Feet,
        Self::NeckThickness,
        Self::BaseBehind,
    ];
}

/// Where a size is pulled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grip {
    /// What it changes.
    pub pull: Pull,
    /// Where it is.
    pub at: Spot,
    /// The way in which the size grows, as long as 1.
    pub way: Spot,
    /// How much it grows about when pulled by 1 along it; the rest of the harp may give way.
    pub rate: f64,
    /// How large it is drawn now, which may be more or less than was asked.
    pub size: Length,
}

/// Grips at base and feet stand beside the middle, so that each is free: so much of half their width.
const ASIDE_OF_FEET: f64 = 0.6;

/// A place, a way, a rate and a size.
type Found = (Spot, Spot, f64, f64);

/// The grips of the sizes that are there.
pub fn grips(making: &Making<'_>, whole: &Whole) -> Vec<Grip> {
    let Some(shape) = &making.band.neck else { return Vec::new() };
    let Ok(walls) = Walls::new(making, shape) else { return Vec::new() };
    let Ok(stands) = Stands::new(making, shape, &walls) else { return Vec::new() };
    let of = Of { making, whole, walls: &walls, stands: &stands };
    let grip = |pull: Pull| {
        let (at, way, rate, size_m) = of.found(pull)?;
        let is_there = at.iter().chain(&way).all(|part| part.is_finite()) && size_m.is_finite();
        let size = Length::from_m(size_m);
        is_there.then_some(Grip { pull, at, way: unit(way), rate, size })
    };
    Pull::ALL.into_iter().filter_map(grip).collect()
}

struct Of<'a> {
    making: &'a Making<'a>,
    whole: &'a Whole,
    walls: &'a Walls<'a>,
    stands: &'a Stands,
}

impl Of<'_> {
    fn found(&self, pull: Pull) -> Option<Found> {
        let (build, walls, stands) = (self.making.build, self.walls, self.stands);
        let of = self.making.proportions;
        let middle = Plane::new(ASIDE, 0.0);
        let board = |s: f64, wide: Length| {
            let at = meet(walls.board.0, walls.cut(s), walls.side(1.0))?;
            Some((at, ASIDE, 2.0, wide.to_m()))
        };
        let depth = |s: f64, deep: Length| {
            let at = meet(walls.crown().1, walls.cut(s), middle)?;
            Some((at, times(-1.0, walls.out), 1.0, deep.to_m()))
        };
        let strings = walls.strings_m;
        match pull {
            Pull::PillarWidth => {
                let at = self.on_pillar(0.5, stands.front)?;
                Some((at, stands.front.square, 2.0, build.pillar.width.to_m()))
            }
            Pull::PillarDepth => {
                let at = self.on_pillar(0.75, stands.sides.1)?;
                Some((at, stands.sides.1.square, 2.0, build.pillar.depth.to_m()))
            }
            Pull::NeckThickness => {
                let neck = self.part(Kind::Neck)?;
                let far = neck.place(centre(neck), neck.thick_m());
                Some((far, neck.face.w, 2.0, build.neck.thickness.to_m()))
            }
            Pull::BoardLow => board(strings.0, build.board.width.0),
            Pull::BoardHigh => board(strings.1, build.board.width.1),
            Pull::DepthLow => depth(strings.0, walls.sizes.depth.0),
            Pull::DepthHigh => depth(strings.1, walls.sizes.depth.1),
            Pull::BackRise => {
                let half = |s: f64| Some(meet(walls.back.0, walls.cut(s), walls.side(1.0))?[2]);
                let s = 0.5 * (strings.0 + strings.1);
                let low = meet(walls.back.0, walls.low, walls.side(1.0))?[2];
                let at = meet(walls.crown().1, walls.cut(s), middle)?;
                let rise_m = walls.bow.as_ref().map_or(0.0, |bow| bow.rise_m);
                Some((at, walls.back.0.square, low / half(s)?, rise_m))
            }
            Pull::HoleLength | Pull::HoleWidth => self.hole(pull),
            Pull::Base => {
                let high = self.under_base()?;
                let at = [self.whole.feet_m.0, high, ASIDE_OF_FEET * self.whole.feet_half_m];
                Some((at, times(-1.0, UP), 1.0, of.base.to_m()))
            }
            Pull::Feet => {
                let floor_m = self.whole.floor_m;
                let high = self.under_base()?;
                let at = [self.whole.feet_m.0, floor_m, -ASIDE_OF_FEET * self.whole.feet_half_m];
                Some((at, times(-1.0, UP), 1.0, high - floor_m))
            }
            Pull::BaseBeyond => {
                let at = [self.whole.feet_m.0, -walls.low.at, 0.0];
                Some((at, [-1.0, 0.0, 0.0], 1.0, of.base_beyond.to_m()))
            }
            Pull::BaseBehind => {
                let at =
                    [self.whole.feet_m.1, -walls.low.at, ASIDE_OF_FEET * self.whole.feet_half_m];
                Some((at, [1.0, 0.0, 0.0], 1.0, of.base_behind.to_m()))
            }
            Pull::FootBlock => {
                let front = Walls::corner(walls.low, walls.board.1)?;
                let block = self.part(Kind::FootBlock)?;
                let far = farthest(block.body(), |at| at[0]);
                let at = average(&far)?;
                Some(([at[0], at[1], 0.0], [1.0, 0.0, 0.0], 1.0, at[0] - front[0]))
            }
            Pull::KneeBlock => {
                let block = self.part(Kind::KneeBlock)?;
                // Its lower corner at the board, where no other grip is near.
                let low = farthest(&block.body()[..1], |at| -walls.high.off(at));
                let at = average(&farthest_of(low, |at| -at[0]))?;
                let deep_m = -walls.high.off(at);
                Some(([at[0], at[1], 0.0], times(-1.0, walls.high.square), 1.0, deep_m))
            }
        }
    }

    fn part(&self, kind: Kind) -> Option<&Part> {
        self.whole.of(kind).next()
    }

    /// A place of a face of the pillar, at a share of its height.
    fn on_pillar(&self, share: f64, face: Plane) -> Option<Spot> {
        let stands = self.stands;
        let pillar = self.part(Kind::Pillar)?;
        let all = pillar.cells.first()?.corners().map(|at| dot(at, stands.axis));
        let (low, high) = all.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| {
            (low.min(at), high.max(at))
        });
        let cut = Plane::new(stands.axis, low + share * (high - low));
        // The middle of it, in the plane of the strings and across it.
        let beside = Plane::new(ASIDE, stands.middle_m);
        if face.square[2].abs() > 0.5 {
            let (front, rear) = (meet(cut, stands.front, face)?, meet(cut, stands.rear, face)?);
            return Some(times(0.5, plus(front, rear)));
        }
        meet(cut, face, beside)
    }

    /// How high the underside of the base lies.
    fn under_base(&self) -> Option<f64> {
        let far = farthest(self.part(Kind::Base)?.body(), |at| -at[1]);
        Some(average(&far)?[1])
    }

    /// The sound hole in the middle of the row.
    fn hole(&self, pull: Pull) -> Option<Found> {
        if self.walls.sizes.is_slotted && pull == Pull::HoleLength {
            return None;
        }
        let back = self.part(Kind::Back)?;
        let hole = back.openings.get(back.openings.len() / 2)?.control_box();
        let (end, beside) = ((hole.x1, hole.center().y), (hole.center().x, hole.y1));
        let middle = (hole.center().x, hole.center().y);
        let (to, size_m) =
            if pull == Pull::HoleLength { (end, hole.width()) } else { (beside, hole.height()) };
        let (from, at) = (back.place(middle, 0.0), back.place(to, 0.0));
        // The second axis of a part may go to either side of the harp.
        let way = minus(at, from);
        Some((at, way, 2.0, size_m))
    }
}

fn centre(part: &Part) -> (f64, f64) {
    let around = part.outline.control_box().center();
    (around.x, around.y)
}

/// The corners that lie farthest by a measure.
fn farthest(cells: &[Cell], by: impl Fn(Spot) -> f64) -> Vec<Spot> {
    farthest_of(cells.iter().flat_map(Cell::corners).collect(), by)
}

fn farthest_of(all: Vec<Spot>, by: impl Fn(Spot) -> f64) -> Vec<Spot> {
    let most = all.iter().map(|at| by(*at)).fold(f64::NEG_INFINITY, f64::max);
    all.into_iter().filter(|at| by(*at) > most - 1e-9).collect()
}

fn average(all: &[Spot]) -> Option<Spot> {
    let sum = all.iter().fold([0.0; 3], |sum, at| plus(sum, *at));
    (!all.is_empty()).then(|| times(1.0 / all.len() as f64, sum))
}
