//! The soundbox: board with rib, strip and bars, sides, back with its sound holes, liners, braces and blocks.

mod bars;
mod holes;

use super::bent::Sheet;
use super::name::{Hand, Kind, Name};
use super::neck::{BEYOND_TENON_M, Stands, in_neck};
use super::part::{Hole, HoleKind, Part};
use super::solid::{Cell, Plane, Spot, cross, dot, meet, minus, plus, size, times, unit};
use super::walls::{ASIDE, UP, Walls, spot};
use super::{Making, NoRoom, PartsError, Stuff, planed};
use crate::engine::structure::joint::Fastener;
use crate::engine::units::Length;

/// The foot block takes no more than this share of the soundbox along the base. A choice of this program.
const MOST_FOOT_BLOCK: f64 = 0.5;
/// A tenon of the neck narrower than this is none. A choice of this program.
const LEAST_TENON_M: f64 = 0.015;
/// So many places to each side of the middle are tried for the fasteners of the shoulder.
const FASTENER_STEPS: u32 = 40;
/// Wood left before the far end of a blind hole. Common practice, no source.
const BEFORE_END_M: f64 = 0.008;

/// The soundbox being made.
struct Maker<'a> {
    making: &'a Making<'a>,
    walls: &'a Walls<'a>,
    /// The face of the foot block, away from the pillar; points away from it.
    block: Plane,
    /// The lower face of the knee block; points up.
    shoulder: Plane,
    /// Between which places along the board braces stand.
    free_m: (f64, f64),
    /// Where braces stand, along the board.
    braces_m: Vec<f64>,
    parts: Vec<Part>,
}

/// All parts of the soundbox.
pub(super) fn soundbox(
    making: &Making<'_>,
    walls: &Walls<'_>,
    stands: &Stands,
    neck: &Part,
    left_out: &mut Vec<NoRoom>,
) -> Result<Vec<Part>, PartsError> {
    let mut maker = Maker::new(making, walls)?;
    maker.board(stands)?;
    maker.sides_and_back()?;
    maker.liners()?;
    maker.bars()?;
    maker.braces()?;
    maker.blocks(stands, neck, left_out)?;
    maker.sound_holes();
    Ok(maker.parts)
}

const fn alone(kind: Kind) -> Name {
    Name { kind, hand: None, number: 0 }
}

const HANDS: [Hand; 2] = [Hand::Strings, Hand::Other];

impl<'a> Maker<'a> {
    fn new(making: &'a Making<'a>, walls: &'a Walls<'a>) -> Result<Self, PartsError> {
        let of = making.proportions;
        let crossed = PartsError::Crossed(Kind::FootBlock);
        let corner = |one, other| Walls::corner(one, other).ok_or(crossed);
        let (front, back) = (corner(walls.low, walls.board.1)?, corner(walls.low, walls.back.0)?);
        // What is glued to the inside of the board ends at the block, and must not reach the base before it.
        let board = &making.build.board;
        let tall = board.rib.inside.1.to_m().max(board.bars.pair_size.1.to_m());
        let tall = tall.max(walls.sizes.liner.1.to_m());
        let least = tall / walls.board.1.square[0];
        let block_m = of.foot_block.to_m().max(least).min(MOST_FOOT_BLOCK * (back[0] - front[0]));
        let block = Plane::through(plus(front, [block_m, 0.0, 0.0]), [1.0, 0.0, 0.0]);
        let joint = &making.build.joints[0];
        let tenon = joint.tenon.map_or(0.0, |(_, deep)| deep.to_m() + of.under_tenon.to_m());
        let shoulder = walls.high.moved(-of.knee_block.to_m().max(tenon));
        let block_top = walls.along_m(corner(block, walls.board.1)?);
        let back_low = walls.along_m(corner(walls.low, walls.crown().0)?);
        let high = walls.along_m(corner(shoulder, walls.board.1)?);
        let free_m = (block_top.max(back_low), high);
        if free_m.1 <= free_m.0 {
            return Err(PartsError::Crossed(Kind::Side));
        }
        let mut maker = Self {
            making,
            walls,
            block,
            shoulder,
            free_m,
            braces_m: Vec::new(),
            parts: Vec::new(),
        };
        maker.braces_m = maker.brace_places();
        Ok(maker)
    }

    /// Evenly, so that no way between two of them, or to a block, is longer than asked.
    fn brace_places(&self) -> Vec<f64> {
        let Some(gap) = self.walls.sizes.braces else { return Vec::new() };
        let whole = self.free_m.1 - self.free_m.0;
        let bays = (whole / gap.to_m()).ceil().clamp(1.0, 100.0);
        let mut places = Vec::new();
        let mut at = 1.0;
        while at < bays {
            places.push(self.free_m.0 + whole * at / bays);
            at += 1.0;
        }
        places
    }

    #[inline(never)]
    fn add(
        &mut self,
        name: Name,
        stuff: &Stuff,
        (near, far): (Plane, Plane),
        ring: &[Plane],
        along: Spot,
    ) -> Result<&mut Part, PartsError> {
        let crossed = PartsError::Crossed(name.kind);
        let cell = Cell::between(near, far, ring).ok_or(crossed)?;
        self.parts.push(Part::of(name, stuff, cell, along));
        self.parts.last_mut().ok_or(crossed)
    }

    /// Drills the holes of the strings through a part between two planes.
    fn drill_strings(making: &Making<'_>, part: &mut Part, (near, far): (Plane, Plane)) {
        for (at, hole) in making.band.holes.iter().enumerate() {
            let wide = making.string_drills.get(at).copied().flatten();
            let from = spot(hole.board);
            // Along the string, into the box.
            let (sin, cos) = making.geometry.lean_rad.sin_cos();
            let way = [-sin, -cos, 0.0];
            if let (Some(enters), Some(leaves)) = (near.met(from, way), far.met(from, way)) {
                let deep = size(minus(leaves, enters));
                part.drill((HoleKind::String, at + 1), (enters, way), wide, deep);
            }
        }
    }

    fn board(&mut self, stands: &Stands) -> Result<(), PartsError> {
        let (making, walls) = (self.making, self.walls);
        let (out, inner) = walls.board;
        let ring = [walls.low, walls.side(1.0), walls.high, walls.side(-1.0)];
        let planed = match making.build.board.thick {
            Some(thick) => {
                let (low, high) = making.band.board;
                let length_m = size(minus(spot(high), spot(low)));
                HANDS.map(|hand| planed::to(walls, &thick, length_m, hand.sign())).concat()
            }
            None => HANDS.map(|hand| self.planed(hand.sign())).into_iter().flatten().collect(),
        };
        let part = self.add(alone(Kind::Board), &making.woods.board, (out, inner), &ring, ASIDE)?;
        part.planed = planed;
        Self::drill_strings(making, part, (out, inner));
        let rib = &making.build.board.rib;
        let aside = |at: f64| Plane::new(ASIDE, at);
        let (wide, high) = (0.5 * rib.outside.0.to_m(), rib.outside.1.to_m());
        if wide > 0.0 && high > 0.0 {
            let ring = [stands.rear, aside(wide), walls.high, aside(-wide)];
            let faces = (out.moved(-high), out);
            let part =
                self.add(alone(Kind::Strip), &making.woods.rib, faces, &ring, walls.along)?;
            Self::drill_strings(making, part, faces);
        }
        let (wide, high) = (0.5 * rib.inside.0.to_m(), rib.inside.1.to_m());
        if wide > 0.0 && high > 0.0 {
            // Towards the treble the liners may leave less room; there the rib follows them.
            let liners = (walls.liner_in(1.0), walls.liner_in(-1.0));
            let top = meet(inner, self.shoulder, liners.0).map_or(wide, |at| at[2]);
            let mut ring = vec![self.block, aside(wide), self.shoulder, aside(-wide)];
            if top < wide {
                ring = vec![ring[0], ring[1], liners.0, ring[2], liners.1, ring[3]];
            }
            let faces = (inner, inner.moved(high));
            let part = self.add(alone(Kind::Rib), &making.woods.rib, faces, &ring, walls.along)?;
            Self::drill_strings(making, part, faces);
        }
        Ok(())
    }

    /// What is planed off the outside of the board from its middle to a side, where it is thinner there: so its inside stays
    /// flat for all that is glued to it.
    fn planed(&self, sign: f64) -> Option<Cell> {
        let walls = self.walls;
        let off = 1.0 - self.making.build.board.side_ratio;
        let (out, inner) = walls.board;
        let (middle, side) = (Plane::new(ASIDE, 0.0), walls.side(sign));
        let corner = |plane, end, edge| meet(plane, end, edge);
        let edge = [corner(out, walls.low, side)?, corner(out, walls.high, side)?];
        let spine = [corner(out, walls.high, middle)?, corner(out, walls.low, middle)?];
        let deep = |at: Spot| plus(at, times(-off * inner.off(at), inner.square));
        let near = vec![edge[0], edge[1], spine[0], spine[1]];
        let far = vec![deep(edge[0]), deep(edge[1]), spine[0], spine[1]];
        (off > 0.0 && off < 1.0).then_some(Cell { near, far })
    }

    fn sides_and_back(&mut self) -> Result<(), PartsError> {
        let (making, walls) = (self.making, self.walls);
        for hand in HANDS {
            let sign = hand.sign();
            let name = Name { kind: Kind::Side, hand: Some(hand), number: 0 };
            let ring = [walls.low, walls.board.1, walls.high, walls.back_at(sign)];
            let faces = (walls.side(sign), walls.side_in(sign));
            self.add(name, &making.woods.sides, faces, &ring, walls.along)?;
        }
        let ring = [walls.low, walls.side(1.0), walls.high, walls.side(-1.0)];
        let faces = (walls.back.1, walls.back.0);
        let back = self.add(alone(Kind::Back), &making.woods.back, faces, &ring, walls.along)?;
        if let Some(bow) = &walls.bow {
            let thick_m = walls.sizes.back.0.to_m();
            let cells = bow.cells((walls.low, walls.high), thick_m);
            let sheet = cells.as_ref().and_then(|cells| Sheet::of(cells, bow, thick_m));
            let (cells, sheet) = cells.zip(sheet).ok_or(PartsError::Crossed(Kind::Back))?;
            back.bend(cells, sheet);
        }
        Ok(())
    }

    fn liners(&mut self) -> Result<(), PartsError> {
        let (making, walls) = (self.making, self.walls);
        let high = walls.sizes.liner.1.to_m();
        if !walls.has_liners() {
            return Ok(());
        }
        let (board, back) = (walls.board.1, walls.back.0);
        // The back goes another way than the board where the box tapers.
        let along_back = cross(ASIDE, back.square);
        for hand in HANDS {
            let sign = hand.sign();
            let faces = (walls.side_in(sign), walls.liner_in(sign));
            let name = |kind| Name { kind, hand: Some(hand), number: 0 };
            let front = [self.block, board, self.shoulder, board.moved(high)];
            let stuff = &making.woods.sides;
            self.add(name(Kind::FrontLiner), stuff, faces, &front, walls.along)?;
            let behind = [walls.low, walls.back_at(sign), self.shoulder, back.moved(-high)];
            self.add(name(Kind::BackLiner), stuff, faces, &behind, along_back)?;
        }
        Ok(())
    }

    fn braces(&mut self) -> Result<(), PartsError> {
        let (making, walls) = (self.making, self.walls);
        let of = making.proportions.brace.to_m();
        let (wide, high) = (walls.sizes.liner.0.to_m(), walls.sizes.liner.1.to_m());
        let has_liners = walls.has_liners();
        let off = if has_liners { (wide, high) } else { (of, of) };
        let (board, back) = (walls.board.1, walls.back.0);
        let between = if has_liners {
            (board.moved(high), back.moved(-high))
        } else {
            (board, back.moved(-of))
        };
        for (at, s) in self.braces_m.clone().into_iter().enumerate() {
            let (low, up) = (walls.cut(s - 0.5 * of), walls.cut(s + 0.5 * of));
            let name = |kind, hand| Name { kind, hand, number: at + 1 };
            let stuff = &making.woods.sides;
            let inside = |sign: f64| walls.side_in(sign).moved(-off.0);
            for hand in HANDS {
                let sign = hand.sign();
                let faces = (walls.side_in(sign), inside(sign));
                let ring = [low, between.0, up, between.1];
                self.add(name(Kind::SideBrace, Some(hand)), stuff, faces, &ring, walls.out)?;
            }
            let edge = |sign: f64| if has_liners { inside(sign) } else { walls.side_in(sign) };
            let under = back.moved(-off.1);
            let name = name(Kind::BackBrace, None);
            if let Some(arched) = walls.arched() {
                // Its upper edge is that of the back.
                let mut ring = vec![edge(1.0)];
                ring.extend(arched);
                ring.extend([edge(-1.0), under]);
                self.add(name, stuff, (low, up), &ring, ASIDE)?;
                continue;
            }
            let ring = [low, edge(1.0), up, edge(-1.0)];
            self.add(name, stuff, (back, under), &ring, ASIDE)?;
        }
        Ok(())
    }

    /// The foot block, and the knee block with what holds the neck in it.
    fn blocks(
        &mut self,
        stands: &Stands,
        neck: &Part,
        left_out: &mut Vec<NoRoom>,
    ) -> Result<(), PartsError> {
        let (making, walls) = (self.making, self.walls);
        let faces = (walls.side_in(1.0), walls.side_in(-1.0));
        let stuff = &making.woods.pillar;
        let ring = [walls.low, self.block, walls.board.1];
        // Its grain lies across the harp, so that glue holds it on base and board.
        self.add(alone(Kind::FootBlock), stuff, faces, &ring, UP)?.grain_across = true;
        let ring = [self.shoulder, walls.board.1, walls.high, walls.back.0];
        let room = self.room(making, stands, |hole| in_neck(making, neck, hole).is_some());
        let (tenon, holes) = room.unwrap_or_default();
        let joint = &making.build.joints[0];
        if joint.tenon.is_some() && tenon.is_none() {
            left_out.push(NoRoom::ShoulderTenon);
        }
        let wanted = joint.fasteners.map_or(0, |fasteners| fasteners.count);
        let shoulder = self.shoulder;
        let block = self.add(alone(Kind::KneeBlock), stuff, faces, &ring, walls.along)?;
        if let Some(arched) = walls.arched() {
            // What rises over the flat back.
            let mut ring = vec![faces.0, walls.back_at(1.0)];
            ring.extend(arched);
            ring.extend([walls.back_at(-1.0), faces.1, walls.back.0]);
            let above = Cell::between(walls.high, shoulder, &ring);
            block.crown(above.ok_or(PartsError::Crossed(Kind::KneeBlock))?);
        }
        block.cuts.extend(tenon);
        block.holes = holes;
        if block.holes.len() < wanted {
            left_out.push(NoRoom::ShoulderFastener);
        }
        Ok(())
    }

    /// The tenon of the neck in the block, and the holes of its fasteners, those that lie within it.
    fn room(
        &self,
        making: &Making<'_>,
        stands: &Stands,
        meets_neck: impl Fn(&Hole) -> bool,
    ) -> Option<(Option<Cell>, Vec<Hole>)> {
        let walls = self.walls;
        let joint = &making.build.joints[0];
        let into = times(-1.0, walls.high.square);
        let level = unit([walls.high.square[1], -walls.high.square[0], 0.0]);
        let front = Walls::corner(walls.high, walls.board.1)?;
        let block_m = walls.high.at - self.shoulder.at;
        // What lies straight below the neck and within the block so deep.
        let across = |deep: f64| -> Option<(f64, f64)> {
            let below = walls.high.moved(-deep);
            let (left, right) =
                (Walls::corner(below, walls.board.1)?, Walls::corner(below, walls.back.0)?);
            Some((dot(minus(left, front), level), dot(minus(right, front), level)))
        };
        let within = |deep: f64| -> Option<(f64, f64)> {
            let (top, bottom) = (across(0.0)?, across(deep)?);
            Some((top.0.max(bottom.0), top.1.min(bottom.1)))
        };
        let aside = |at: f64| Plane::new(ASIDE, at);
        let tenon = joint.tenon.and_then(|(thick, deep)| {
            let (left, right) = within(deep.to_m())?;
            let (left, right) = (left + BEYOND_TENON_M, right - BEYOND_TENON_M);
            let half = 0.5 * thick.to_m();
            let at = |far: f64| Plane::through(plus(front, times(far, level)), level);
            let ring =
                [at(left), aside(stands.middle_m - half), at(right), aside(stands.middle_m + half)];
            let wide = right - left;
            let cell = Cell::between(walls.high, walls.high.moved(-deep.to_m()), &ring);
            cell.filter(|_| wide > LEAST_TENON_M)
        });
        let mut holes = Vec::new();
        if let Some(of) = joint.fasteners {
            let through = of.kind == Fastener::Bolts;
            let deep = if through { block_m } else { of.depth.to_m().min(block_m - BEFORE_END_M) };
            let (left, right) = within(deep)?;
            let rows = if of.across.to_m() > 0.0 { 2 } else { 1 };
            let in_row = of.count.div_ceil(rows);
            let hole = |at: usize, middle: f64| {
                let (row, place) = (at / in_row, at % in_row);
                let along = middle + (place as f64 - 0.5 * (in_row as f64 - 1.0)) * of.apart.to_m();
                let beside = (row as f64 - 0.5 * (rows as f64 - 1.0)) * of.across.to_m();
                let spot = plus(front, times(along, level));
                Hole {
                    kind: HoleKind::Fastener,
                    string: 0,
                    at: plus(spot, times(stands.middle_m + beside, ASIDE)),
                    way: into,
                    diameter: of.diameter,
                    deep: Length::from_m(deep),
                    through,
                }
            };
            let placed = |middle: f64| -> Vec<Hole> {
                let all = (0..of.count).map(|at| hole(at, middle));
                all.filter(|hole| self.holds(hole)).collect()
            };
            // Where most of them stay within block and neck, as near to the middle as can be.
            let middle = 0.5 * (left + right);
            let mut most = None;
            for step in 0..=FASTENER_STEPS {
                for side in [1.0, -1.0] {
                    let off =
                        side * 0.5 * (right - left) * f64::from(step) / f64::from(FASTENER_STEPS);
                    let some = placed(middle + off);
                    let count = some.iter().filter(|hole| meets_neck(hole)).count();
                    if most.as_ref().is_none_or(|(best, _)| count > *best) {
                        most = Some((count, some));
                    }
                }
            }
            holes = most.map(|(_, holes)| holes).unwrap_or_default();
        }
        Some((tenon, holes))
    }

    /// Whether a hole keeps as much wood round it as it is thick, within the block.
    fn holds(&self, hole: &Hole) -> bool {
        let walls = self.walls;
        let end = plus(hole.at, times(hole.deep.to_m(), hole.way));
        let room = hole.diameter.to_m();
        [hole.at, end].into_iter().all(|spot| {
            let sides = [1.0, -1.0].map(|sign| walls.side_in(sign).off(spot));
            let deep = [-walls.board.1.off(spot), walls.back.0.off(spot)];
            sides.into_iter().chain(deep).all(|off| off < -room)
        })
    }
}
