//! The base with its feet, on which pillar and soundbox stand.

use super::name::{Kind, Name};
use super::neck::Stands;
use super::part::Part;
use super::solid::{Cell, Plane};
use super::walls::{ASIDE, Walls};
use super::{Making, PartsError};

/// A foot is at least so long, from front to back. Common practice, no source.
const LEAST_FOOT_M: f64 = 0.050;

/// Where the harp stands.
pub(super) struct Feet {
    pub(super) floor_m: f64,
    pub(super) along_m: (f64, f64),
    pub(super) half_m: f64,
}

/// Adds the base and both feet.
pub(super) fn base(
    making: &Making<'_>,
    walls: &Walls<'_>,
    stands: &Stands,
    parts: &mut Vec<Part>,
) -> Result<Feet, PartsError> {
    let of = making.proportions;
    let beyond = of.base_beyond.to_m();
    let crossed = PartsError::Crossed(Kind::Base);
    let corner = |plane: Plane| Walls::corner(walls.low, plane).ok_or(crossed);
    let (front, back) = (corner(stands.front)?[0], corner(walls.crown().1)?[0]);
    let (from, to) = (front - beyond, back + beyond + of.base_behind.to_m());
    let pillar_half = stands.sides.0.at.abs().max(stands.sides.1.at.abs());
    let at_low = super::solid::meet(walls.low, walls.board.0, walls.side(1.0)).ok_or(crossed)?[2];
    let half = at_low.max(pillar_half) + beyond;
    let across = |at: f64| Plane::new([1.0, 0.0, 0.0], at);
    let aside = |at: f64| Plane::new(ASIDE, at);
    let ring = |from: f64, to: f64| [across(from), aside(half), across(to), aside(-half)];
    let base_m = of.base.to_m();
    let under = walls.low.moved(base_m);
    let deep = stands.foot.as_ref().map_or(0.0, |(_, deep)| *deep);
    let feet_m = of.feet.to_m().max(deep - base_m + of.under_tenon.to_m());
    let floor = under.moved(feet_m);
    let foot_m = LEAST_FOOT_M.max(making.build.pillar.width.to_m() + 2.0 * beyond);
    let foot_m = foot_m.min(0.5 * (to - from));
    let stuff = &making.woods.pillar;
    let mut add = |kind: Kind, near: Plane, far: Plane, (from, to): (f64, f64)| {
        let cell = Cell::between(near, far, &ring(from, to)).ok_or(PartsError::Crossed(kind))?;
        let name = Name { kind, hand: None, number: 0 };
        // The base is bent between pillar and soundbox, the feet from side to side.
        let along = if kind == Kind::Base { [1.0, 0.0, 0.0] } else { ASIDE };
        let mut part = Part::of(name, stuff, cell, along);
        // What of the tenon goes into it.
        let tip = walls.low.moved(deep);
        let end = if tip.at < far.at { tip } else { far };
        if let (Some((ring, _)), true) = (&stands.foot, end.at > near.at) {
            part.cuts.extend(Cell::between(near, end, ring));
        }
        if kind == Kind::RearFoot {
            part.cuts.clear();
        }
        parts.push(part);
        Ok(())
    };
    add(Kind::Base, walls.low, under, (from, to))?;
    add(Kind::FrontFoot, under, floor, (from, from + foot_m))?;
    add(Kind::RearFoot, under, floor, (to - foot_m, to))?;
    Ok(Feet { floor_m: -floor.at, along_m: (from, to), half_m: half })
}
