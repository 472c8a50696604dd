//! What is worth saying of the parts: what comes too near to something else, what a hand cannot reach, what found no room,
//! and how the harp stands.

use kurbo::{BezPath, ParamCurveNearest as _};

use super::fits::clashes_of;
use super::knots::Knot;
use super::name::{Hand, Kind};
use super::part::{HoleKind, Part};
use super::solid::{Cell, Plane, Spot, meet, minus, size};
use super::walls::{Walls, spot};
use super::{Making, NoRoom, Whole, balance, weight};
use crate::engine::bearing::Part as Joint;
use crate::engine::geometry::{Contact, Placed};
use crate::engine::structure::joint::{Fastener, Fasteners};
use crate::engine::units::Length;

/// What a string keeps from a pin beside it, and from the face of the neck. Common practice, no source.
const STRING_ROOM_M: f64 = 0.001;
const NECK_ROOM_M: f64 = 0.003;
/// How wide a lever is across its string, how long along it, and the room between two. Common practice, no source.
const LEVER_M: (f64, f64) = (0.011, 0.030);
const LEVER_ROOM_M: f64 = 0.001;
/// From a pin to the edge to which it is pulled, and to the other, over its diameter. Source: EN 1995-1-1, table 8.4, for
/// dowels (from memory).
const PULLED_EDGE: f64 = 4.0;
const OTHER_EDGE: f64 = 3.0;
/// From one bolt to the next, over their thickness: a washer of ISO 7089 is about twice as wide as its bolt (from memory).
pub const BOLT_ROOM: f64 = 2.0;
/// Wood left between a sound hole and a brace. Common practice, no source.
const HOLE_ROOM_M: f64 = 0.002;
/// An opening through which a flat hand goes, long and wide. Source: MIL-STD-1472, access openings for a bare flat hand
/// (from memory).
pub const HAND_M: (f64, f64) = (0.100, 0.055);
/// How far one reaches with the hand through a hole, and with the fingers alone. Common practice, no source.
pub const REACH_M: (f64, f64) = (0.300, 0.080);
/// A soundboard thinner than this at an end is said to be. Common practice, no source.
pub const LEAST_BOARD_M: f64 = 0.002;
/// Sizes that differ by less are one. A choice of this program.
const SAME_M: f64 = 1e-4;
/// A harp that tips at less is said to. Common practice, no source.
pub const LEAST_TIP_RAD: f64 = 0.14;

/// Which way a harp tips.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Tip {
    /// Away from the player.
    Front,
    /// To the player.
    Back,
    /// To a side.
    Aside,
}

/// What is worth saying.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Finding {
    /// The strings come so near to the face of the neck; below 0 they would lie in it.
    StringsAtNeck { gap: Length },
    /// A string comes so near to a pin of another.
    StringAtPin { string: usize, other: usize, kind: HoleKind, gap: Length },
    /// The levers of two strings leave so little between them.
    LeversClose { string: usize, other: usize, gap: Length },
    /// A pin stands so far from the edge of the neck, and should stand so far.
    PinAtEdge { string: usize, kind: HoleKind, off: Length, asked: Length },
    /// A sound hole lies over a brace.
    HoleOnBrace { hole: usize, brace: usize },
    /// The back rises so far and not as asked, as it would be too steep at its sides.
    BackLower { from: Length, to: Length },
    /// A sound hole is cut from one width to the other, as the liners leave no more.
    HoleNarrowed { hole: usize, from: Length, to: Length },
    /// No flat hand goes through a sound hole of this size.
    HandTooWide { length: Length, width: Length },
    /// So many knots lie out of reach, from a string to another; the farthest so far from the nearest hole.
    OutOfReach { count: usize, first: usize, last: usize, far: Length, reach: Length },
    /// So many strings, from one to another, have no room for their knots beside a block, or run into it.
    InBlock { kind: Kind, count: usize, first: usize, last: usize },
    /// The board gets so thin past the highest or the lowest string, where it is so thick.
    BoardThin { string: usize, at_string: Length, at_end: Length },
    /// A joint is judged by a glued face of so many millimetres, across the harp or in the plane of the strings, where the
    /// parts have so many.
    FaceTooLarge { at: Joint, across: bool, given: Length, drawn: Length },
    /// Bolts of the shoulder stand so near to each other that their nuts and washers have no room beside each other.
    BoltsClose { gap: Length, asked: Length },
    /// The foot block is longer than asked, so that what is glued inside the board ends above the base.
    BlockLonger { from: Length, to: Length },
    /// The glue that holds the soundbox on the base bears such a share of what may be allowed.
    BaseOpens { ratio: f64 },
    /// The base, bent between pillar and foot block.
    BaseBends { ratio: f64 },
    /// The neck stands so far over the side of the soundbox, whose board would carry it if it were so wide there.
    NeckBeside { by: Length, wanted: Length },
    /// A pair of bars along the board runs into the string rib.
    BarAtRib { pair: usize },
    /// The string rib is cut from one width to the other, as the liners leave no more.
    RibNarrowed { from: Length, to: Length },
    /// The neck reaches so far into a part of the soundbox.
    NeckInBox { kind: Kind, deep: Length },
    /// Something that found no room.
    LeftOut(NoRoom),
    /// The harp tips at such an angle; below 0 it does not stand.
    Tips { tip: Tip, angle_rad: f64 },
}

/// All of it, the strings first.
pub fn findings(making: &Making<'_>, whole: &Whole) -> Vec<Finding> {
    let mut all = at_strings(making);
    all.extend(at_pins(making));
    all.extend(at_joints(making));
    if let Some(shape) = &making.band.neck
        && let Ok(walls) = Walls::new(making, shape)
    {
        all.extend(at_box(making, whole, &walls));
    }
    for clash in clashes_of(whole, |kind| kind == Kind::Neck) {
        let deep = Length::from_m(clash.deep_m);
        all.push(Finding::NeckInBox { kind: clash.other.kind, deep });
    }
    all.extend(whole.left_out.iter().map(|what| Finding::LeftOut(*what)));
    all.extend(making.build.joints[0].fasteners.and_then(|of| bolts_close(&of)));
    let weight = weight(whole);
    if weight.left_out > 0 {
        return all;
    }
    let stands = balance(whole, &weight, [0.0; 3]);
    for (tip, angle_rad) in [Tip::Front, Tip::Back, Tip::Aside].into_iter().zip(stands.tips_rad) {
        if angle_rad < LEAST_TIP_RAD {
            all.push(Finding::Tips { tip, angle_rad });
        }
    }
    all
}

fn off_line(at: Spot, from: Spot, to: Spot) -> f64 {
    let way = minus(to, from);
    let share = super::solid::dot(minus(at, from), way) / super::solid::dot(way, way);
    size(minus(at, super::solid::plus(from, super::solid::times(share.clamp(0.0, 1.0), way))))
}

/// Strings beside the neck, beside the pins of others, and levers beside each other.
fn at_strings(making: &Making<'_>) -> Vec<Finding> {
    let mut all = Vec::new();
    let drilled = &making.build.neck.drilled;
    let half = |wide: Option<(Length, Option<Length>)>| wide.map_or(0.0, |of| 0.5 * of.0.to_m());
    let pins = (half(drilled.bridge), half(drilled.tuning));
    let strings: Vec<&Placed> = making.band.strings.iter().flatten().collect();
    let thick = |placed: &Placed| {
        let wide = making.string_drills.get(placed.number.wrapping_sub(1)).copied().flatten();
        0.5 * wide.map_or(0.0, Length::to_m)
    };
    let most = strings.iter().map(|placed| thick(placed)).fold(0.0, f64::max);
    let off = making.geometry.strings_from_neck.to_m();
    let gap = off - 0.5 * making.build.neck.thickness.to_m() - most;
    if gap < NECK_ROOM_M && !strings.is_empty() {
        all.push(Finding::StringsAtNeck { gap: Length::from_m(gap) });
    }
    for one in &strings {
        let line = [one.hole.board, one.bridge, one.tuning].map(spot);
        let mut worst: Option<(f64, usize, HoleKind)> = None;
        for other in strings.iter().filter(|other| other.number != one.number) {
            let beside = [
                (other.bridge, pins.0, HoleKind::BridgePin),
                (other.tuning, pins.1, HoleKind::TuningPin),
            ];
            for (at, radius, kind) in beside {
                let off = line.windows(2).map(|pair| off_line(spot(at), pair[0], pair[1]));
                let gap = off.fold(f64::INFINITY, f64::min) - radius - thick(one);
                if gap < STRING_ROOM_M && worst.is_none_or(|worst| gap < worst.0) {
                    worst = Some((gap, other.number, kind));
                }
            }
        }
        if let Some((gap, other, kind)) = worst {
            let gap = Length::from_m(gap);
            all.push(Finding::StringAtPin { string: one.number, other, kind, gap });
        }
    }
    for pair in strings.windows(2) {
        let lever = |placed: &Placed| {
            let own = placed.contacts.iter().find(|(kind, _)| *kind == Contact::Lever);
            own.map(|(_, at)| making.band.across_along(*at))
        };
        if let (Some(one), Some(other)) = (lever(pair[0]), lever(pair[1])) {
            let beside = (one.0.to_m() - other.0.to_m()).abs() - LEVER_M.0;
            let along = (one.1.to_m() - other.1.to_m()).abs();
            if beside < LEVER_ROOM_M && along < LEVER_M.1 {
                let gap = Length::from_m(beside);
                let (string, other) = (pair[0].number, pair[1].number);
                all.push(Finding::LeversClose { string, other, gap });
            }
        }
    }
    all
}

/// Pins beside the edges of the neck: the nearest of each kind to each edge.
fn at_pins(making: &Making<'_>) -> Vec<Finding> {
    let Some(shape) = &making.band.neck else { return Vec::new() };
    let drilled = &making.build.neck.drilled;
    let mut all = Vec::new();
    let kinds = [(HoleKind::TuningPin, drilled.tuning), (HoleKind::BridgePin, drilled.bridge)];
    for (kind, wide) in kinds {
        let Some((wide, _)) = wide else { continue };
        for (edge, ratio) in [(&shape.lower, PULLED_EDGE), (&shape.upper, OTHER_EDGE)] {
            let asked_m = ratio * wide.to_m();
            let off = |placed: &Placed| {
                let at = if kind == HoleKind::TuningPin { placed.tuning } else { placed.bridge };
                let at = kurbo::Point::new(at.x.to_m(), at.y.to_m());
                let all = edge.segments().map(|piece| piece.nearest(at, 1e-6).distance_sq);
                (all.fold(f64::INFINITY, f64::min).sqrt(), placed.number)
            };
            let nearest = making.band.strings.iter().flatten().map(off);
            let worst =
                nearest.fold(
                    (f64::INFINITY, 0),
                    |worst, next| {
                        if next.0 < worst.0 { next } else { worst }
                    },
                );
            if worst.0 < asked_m - 1e-4 {
                let (off, asked) = (Length::from_m(worst.0), Length::from_m(asked_m));
                all.push(Finding::PinAtEdge { string: worst.1, kind, off, asked });
            }
        }
    }
    all
}

/// Glued faces that are larger than the parts have them. That of the pillar's top is made as high as is asked, by a capital;
/// that of its foot is judged no higher than it stands.
fn at_joints(making: &Making<'_>) -> Vec<Finding> {
    let (build, mut all) = (making.build, Vec::new());
    let neck = build.neck.thickness;
    let pillar = build.pillar.depth;
    let end = making.band.neck.as_ref().and_then(|shape| shape.centre.first());
    let deep = end.map_or(Length::from_m(f64::INFINITY), |end| end.depth);
    let drawn = [
        (Joint::Shoulder, (neck, Some(deep))),
        (Joint::Head, (Length::from_m(neck.to_m().min(pillar.to_m())), None)),
        (Joint::Foot, (pillar, None)),
    ];
    for (joint, (at, (wide, high))) in build.joints.iter().zip(drawn) {
        let Some(face) = joint.face else { continue };
        for (across, given, drawn) in
            [(true, face.breadth(), Some(wide)), (false, face.depth(), high)]
        {
            if let Some(drawn) = drawn.filter(|drawn| given.to_m() > drawn.to_m() + SAME_M) {
                all.push(Finding::FaceTooLarge { at, across, given, drawn });
            }
        }
    }
    all
}

/// Bolts that stand too near to each other, along a row or from row to row.
fn bolts_close(of: &Fasteners) -> Option<Finding> {
    let asked_m = BOLT_ROOM * of.diameter.to_m();
    let gaps = [of.apart, of.across].map(Length::to_m).into_iter().filter(|gap| *gap > 0.0);
    let gap_m = gaps.fold(f64::INFINITY, f64::min);
    let close = of.kind == Fastener::Bolts && of.count > 1 && gap_m < asked_m - SAME_M;
    let [gap, asked] = [gap_m, asked_m].map(Length::from_m);
    close.then_some(Finding::BoltsClose { gap, asked })
}

/// Strings to whose knots a block leaves no room.
fn in_blocks(whole: &Whole) -> Vec<Finding> {
    let of = |kind: Kind| {
        let all = whole.knots.iter().enumerate();
        let strings: Vec<usize> =
            all.filter(|(_, knot)| **knot == Knot::Blocked(kind)).map(|(at, _)| at + 1).collect();
        let (first, last) = (*strings.first()?, *strings.last()?);
        Some(Finding::InBlock { kind, count: strings.len(), first, last })
    };
    [Kind::FootBlock, Kind::KneeBlock].into_iter().filter_map(of).collect()
}

/// A board that gets thinner past an end string than wood is worked.
fn board_ends(making: &Making<'_>, walls: &Walls<'_>) -> Vec<Finding> {
    if making.build.board.thick.is_some() {
        return Vec::new();
    }
    let (out, inner) = walls.board;
    let ends = [
        (making.band.holes.first(), 1, walls.high),
        (making.band.holes.last(), making.band.holes.len(), walls.low),
    ];
    let thin = |(hole, string, end): (Option<&crate::engine::geometry::Hole>, usize, Plane)| {
        let thick = |cut: Plane| Some(Length::from_m(-inner.off(Walls::corner(out, cut)?)));
        let at_end = thick(end)?;
        let at_string = thick(walls.cut(walls.along_m(spot(hole?.board))))?;
        let thinner = at_end.to_m() < at_string.to_m();
        (thinner && at_end.to_m() < LEAST_BOARD_M - SAME_M).then_some(Finding::BoardThin {
            string,
            at_string,
            at_end,
        })
    };
    ends.into_iter().filter_map(thin).collect()
}

/// What there is to say of the soundbox.
fn at_box(making: &Making<'_>, whole: &Whole, walls: &Walls<'_>) -> Vec<Finding> {
    let mut all = Vec::new();
    let half = meet(walls.high, walls.board.0, walls.side(1.0)).map_or(0.0, |at| at[2]);
    let out = making.geometry.strings_from_neck.to_m() + 0.5 * making.build.neck.thickness.to_m();
    if out > half + 1e-6 {
        let (by, wanted) = (Length::from_m(out - half), Length::from_m(2.0 * out));
        all.push(Finding::NeckBeside { by, wanted });
    }
    if let Some(block) = whole.of(Kind::FootBlock).next() {
        let (from, to) = (making.proportions.foot_block, Length::from_m(block.sizes_m()[2]));
        if to.to_m() > from.to_m() + SAME_M {
            all.push(Finding::BlockLonger { from, to });
        }
    }
    all.extend(in_blocks(whole));
    all.extend(board_ends(making, walls));
    if let Some(rib) = whole.of(Kind::Rib).next() {
        let from = making.build.board.rib.inside.0;
        let top =
            rib.cells.iter().flat_map(|cell| &cell.near).map(|at| (walls.along_m(*at), at[2]));
        let last = top.fold((f64::NEG_INFINITY, 0.0), |last: (f64, f64), next| {
            if next.0 > last.0 + 1e-9 || (next.0 > last.0 - 1e-9 && next.1 > last.1) {
                next
            } else {
                last
            }
        });
        let to = Length::from_m(2.0 * last.1);
        if to.to_m() < from.to_m() - 1e-6 {
            all.push(Finding::RibNarrowed { from, to });
        }
    }
    let half = 0.5 * making.build.board.rib.inside.0.to_m();
    for bar in whole.of(Kind::LongBar).filter(|bar| bar.name.hand == Some(Hand::Strings)) {
        let near = bar.cells.iter().flat_map(|cell| &cell.near).map(|at| at[2]);
        if near.fold(f64::INFINITY, f64::min) < half - 1e-4 {
            all.push(Finding::BarAtRib { pair: bar.name.number });
        }
    }
    if let Some(bow) = &walls.bow {
        let (from, to) = (making.proportions.back_rise, Length::from_m(bow.rise_m));
        if to.to_m() < from.to_m() - 1e-6 {
            all.push(Finding::BackLower { from, to });
        }
    }
    if let Some(back) = whole.of(Kind::Back).next() {
        all.extend(at_holes(whole, walls, back));
    }
    all
}

fn at_holes(whole: &Whole, walls: &Walls<'_>, back: &Part) -> Vec<Finding> {
    let mut all = Vec::new();
    let boxes: Vec<kurbo::Rect> = back.openings.iter().map(BezPath::control_box).collect();
    // From where to where along the board.
    let along = |places: &mut dyn Iterator<Item = Spot>| {
        places
            .map(|at| walls.along_m(at))
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)))
    };
    for (at, hole) in boxes.iter().enumerate() {
        let ends = [hole.x0, hole.x1].map(|u| (u, hole.center().y));
        let deep = [0.0, back.thick_m()];
        let (from, to) =
            along(&mut ends.iter().flat_map(|end| deep.map(|deep_m| back.place(*end, deep_m))));
        for brace in whole.of(Kind::BackBrace) {
            let (low, high) = along(&mut brace.cells.iter().flat_map(Cell::corners));
            if from < high + HOLE_ROOM_M && to > low - HOLE_ROOM_M {
                all.push(Finding::HoleOnBrace { hole: at + 1, brace: brace.name.number });
            }
        }
        let from = walls.sizes.holes.2;
        if hole.height() < from.to_m() - 1e-6 {
            let to = Length::from_m(hole.height());
            all.push(Finding::HoleNarrowed { hole: at + 1, from, to });
        }
    }
    let goes = |hole: &kurbo::Rect| {
        let (long, wide) = (hole.width().max(hole.height()), hole.width().min(hole.height()));
        long >= HAND_M.0 - 1e-9 && wide >= HAND_M.1 - 1e-9
    };
    let reach = if boxes.iter().any(goes) { REACH_M.0 } else { REACH_M.1 };
    if let Some(hole) = boxes.first().filter(|_| !boxes.iter().any(goes)) {
        let (length, width) = (Length::from_m(hole.width()), Length::from_m(hole.height()));
        all.push(Finding::HandTooWide { length, width });
    }
    let (mut out, mut far_m) = (Vec::new(), 0.0_f64);
    for (at, knot) in whole.knots.iter().enumerate() {
        let Some(knot) = knot.at() else { continue };
        let off = |hole: &kurbo::Rect| {
            // Of a bent back the place square over the knot is hardly nearer than any other.
            let own = back.flat_of(knot);
            let at = (own.0.clamp(hole.x0, hole.x1), own.1.clamp(hole.y0, hole.y1));
            size(minus(knot, back.place(at, 0.0)))
        };
        let nearest = boxes.iter().filter(|hole| reach < REACH_M.0 || goes(hole)).map(off);
        let nearest = nearest.fold(f64::INFINITY, f64::min);
        if nearest > reach {
            out.push(at + 1);
            far_m = far_m.max(nearest);
        }
    }
    if let (Some(first), Some(last), true) = (out.first(), out.last(), far_m.is_finite()) {
        all.push(Finding::OutOfReach {
            count: out.len(),
            first: *first,
            last: *last,
            far: Length::from_m(far_m),
            reach: Length::from_m(reach),
        });
    }
    all
}
