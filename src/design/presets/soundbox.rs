//! The soundbox of a new harp, and what of it makes room for neck, strings and hands. Sizes are common practice, no source.

use super::frame::{FLOOR_MM, size_class};
use crate::design::document::{GeometrySpec, SoundboxSpec};
use crate::design::parts::sizes::{PartSize, with_entry};
use crate::engine::geometry::Band;
use crate::engine::parts::Proportions;
use crate::engine::parts::findings::LEAST_BOARD_M;
use crate::engine::structure::frame::Point;

/// Wood between a sound hole and a liner, how far apart braces are about, in mm, and how many sound holes are usual at
/// most. Common practice, no source.
const HOLE_BESIDE_MM: f64 = 3.0;
const BAY_MM: f64 = 185.0;
const MOST_HOLES: u32 = 6;
/// From the middle of the lowest string to the foot block where it lies along the base, at least, in mm. Common
/// practice, no source.
const STRING_OFF_BLOCK_MM: f64 = 6.0;

/// How thick the board must be at the highest string, so that it is not worked too thin at its upper end.
pub(super) fn least_treble_mm(bass_mm: f64, band: &Band) -> f64 {
    let (Some(first), Some(last)) = (band.holes.first(), band.holes.last()) else { return 0.0 };
    let beyond = apart_mm(first.board, band.board.1) / apart_mm(last.board, first.board).max(1.0);
    let least_mm = 1e3 * LEAST_BOARD_M;
    (2.0 * (least_mm + bass_mm * beyond) / (1.0 + beyond)).ceil() / 2.0
}

/// How long the foot block of a pedal harp is along the base, in mm, which the strings pull up hardest. Common practice, no source.
const PEDAL_BLOCK_MM: f64 = 30.0;

/// Takes the usual foot block, or as much of it as leaves room to the knot of the lowest string.
pub(super) fn take_foot_block(geometry: &mut GeometrySpec, band: &Band, is_pedal: bool) {
    let (Some(first), Some(last)) = (band.holes.first(), band.holes.last()) else { return };
    let board = &geometry.board;
    let below = apart_mm(last.board, band.board.0) / apart_mm(last.board, first.board).max(1.0);
    let (bass, treble) = (board.bass_thickness_mm, board.treble_thickness_mm);
    let thick_mm = board.strip_height_mm + bass + below * (bass - treble);
    let (sin, cos) = geometry.board_angle_deg.to_radians().sin_cos();
    let string_mm = sin * apart_mm(last.board, band.board.0);
    let free_mm = (string_mm - thick_mm / cos - STRING_OFF_BLOCK_MM).floor();
    let usual = PartSize::FootBlock.usual();
    let least = PartSize::FootBlock.row().sensible.0;
    let long_mm = free_mm.min(if is_pedal { PEDAL_BLOCK_MM } else { usual }).max(least);
    let other = (long_mm - usual).abs() > 0.0;
    with_entry(geometry, PartSize::FootBlock.key(), other.then(|| long_mm.to_string()));
}

/// Makes the board so wide at its upper end that it carries the whole neck with what holds it, and that a hand goes through
/// the highest sound hole between the liners; whether it was too narrow.
pub(super) fn widen_end(geometry: &mut GeometrySpec, band: &Band) -> bool {
    let (Some(first), Some(last)) = (band.holes.first(), band.holes.last()) else { return false };
    let strings_mm = apart_mm(last.board, first.board).max(1.0);
    // The board tapers from the lowest string past the highest one to its end.
    let at_string = |asked: f64, farther_mm: f64| {
        let beyond = (apart_mm(first.board, band.board.1) + farther_mm) / strings_mm;
        (asked + geometry.board.bass_width_mm * beyond) / (1.0 + beyond)
    };
    let (of_box, joint) = (&geometry.soundbox, &geometry.joints.shoulder);
    let off_mm = geometry.strings_from_neck_mm;
    let neck = 2.0 * off_mm + geometry.neck.thickness_mm + 1.0;
    let held = 2.0 * (off_mm + joint.diameter_mm + of_box.side_mm);
    // Behind the board the upper end may lie farther up, where the box is narrower: bolts go through its middle, a tenon
    // nearly to the back.
    let behind_mm = end_rises(band).max(0.0) * of_box.treble_depth_mm;
    let bolted = at_string(held + joint.across_mm, 0.5 * behind_mm + 2.0 * joint.diameter_mm);
    let tenoned = at_string(held + joint.tenon_mm, behind_mm);
    let hole =
        of_box.hole_width_mm + 2.0 * (of_box.side_mm + of_box.liner_width_mm + HOLE_BESIDE_MM);
    let by_joint = if joint.tenon_mm > 0.0 { tenoned } else { bolted };
    let asked = at_string(neck, 0.0).max(by_joint).max(hole);
    let board = &mut geometry.board;
    if board.treble_width_mm >= asked {
        return false;
    }
    board.treble_width_mm = 2.0 * (0.5 * asked).ceil();
    let deep = usual_depth(board.treble_width_mm);
    geometry.soundbox.treble_depth_mm = geometry.soundbox.treble_depth_mm.max(deep);
    true
}

fn apart_mm(one: Point, other: Point) -> f64 {
    1e3 * (one.x.to_m() - other.x.to_m()).hypot(one.y.to_m() - other.y.to_m())
}

/// How far the upper end of the soundbox rises along the board for each millimetre behind it, as the end of the neck lies
/// there.
fn end_rises(band: &Band) -> f64 {
    let first = |path: &kurbo::BezPath| path.segments().next().map(|piece| piece.to_cubic().p0);
    let ends = band.neck.as_ref().and_then(|neck| Some((first(&neck.lower)?, first(&neck.upper)?)));
    let Some((joint, far)) = ends else { return 0.0 };
    let (low, high) = band.board;
    let board = kurbo::Vec2::new(high.x.to_m() - low.x.to_m(), high.y.to_m() - low.y.to_m());
    let face = far - joint;
    let behind = face.cross(board);
    if behind.abs() > 0.0 { face.dot(board) / behind } else { 0.0 }
}

/// Braces so far apart that a sound hole lies between any two, and a hole in every bay, up to a usual number.
pub(super) fn take_braces(geometry: &mut GeometrySpec, band: &Band) {
    let length_mm = apart_mm(band.board.0, band.board.1);
    let (sin, cos) = geometry.board_angle_deg.to_radians().sin_cos();
    let usual = Proportions::default();
    // The back comes to the floor farther up than the foot block, or less far.
    let foot_mm = (PartSize::FootBlock.number(geometry) / sin)
        .max(geometry.soundbox.bass_depth_mm * sin / cos);
    let free_mm = (length_mm - foot_mm - usual.knee_block.to_mm()).max(BAY_MM);
    let bays = (free_mm / BAY_MM).round().max(1.0);
    let of_box = &mut geometry.soundbox;
    of_box.brace_gap_mm = 5.0 * (free_mm / bays / 5.0).ceil() + 5.0;
    of_box.holes = (1..=MOST_HOLES).rev().find(|holes| f64::from(*holes) <= bays).unwrap_or(1);
}

/// The soundbox of a design with usual sizes where it has none.
pub fn filled_soundbox(geometry: &GeometrySpec, longest_mm: f64) -> SoundboxSpec {
    let (mut given, usual) = (geometry.soundbox.clone(), usual_soundbox(geometry, longest_mm));
    if given == SoundboxSpec::default() {
        return usual;
    }
    for (given, usual) in [
        (&mut given.bass_depth_mm, usual.bass_depth_mm),
        (&mut given.treble_depth_mm, usual.treble_depth_mm),
        (&mut given.side_mm, usual.side_mm),
        (&mut given.back_mm, usual.back_mm),
    ] {
        if *given > 0.0 {
            continue;
        }
        *given = usual;
    }
    given
}

/// How deep a soundbox is at its upper end, by the width of its board there.
fn usual_depth(width_mm: f64) -> f64 {
    (0.65 * width_mm).round()
}

/// The usual soundbox for a board and its longest string: sides of solid wood and a back of plywood with some holes. Sizes
/// are common practice, no source.
pub(super) fn usual_soundbox(geometry: &GeometrySpec, longest_mm: f64) -> SoundboxSpec {
    let (board, size) = (&geometry.board, size_class(longest_mm));
    SoundboxSpec {
        bass_depth_mm: (if longest_mm > FLOOR_MM { 0.6 } else { 0.55 } * board.bass_width_mm)
            .round(),
        treble_depth_mm: usual_depth(board.treble_width_mm),
        side_mm: 6.0 + size,
        back_mm: 4.0 + size,
        // Wide and low liners turn with the edge of the board and do not tear its glue.
        liner_width_mm: 16.0 + 6.0 * size,
        liner_height_mm: 12.0 + 3.0 * size,
        brace_gap_mm: 230.0,
        holes: if size > 1.0 { 4 } else { 3 },
        // A flat hand goes through, so that every knot can be reached.
        hole_length_mm: 100.0 + 10.0 * size,
        hole_width_mm: 56.0,
        ..SoundboxSpec::default()
    }
}
