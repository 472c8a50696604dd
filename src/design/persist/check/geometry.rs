//! Limits of the shape of the harp.

use super::{CheckError, many, short, within};
use crate::design::document::{GapsSpec, GeometrySpec, MOST_NODES, MOST_SECTIONS, MOST_STRINGS};

/// The farthest that a measure may reach, in mm: wide, as [`resolve`](crate::design::resolve) says what makes
/// sense.
const FAR_MM: (f64, f64) = (-10_000.0, 10_000.0);
const TURN_DEG: (f64, f64) = (-360.0, 360.0);
/// The most plies and the highest number of a gap.
const COUNTED: (f64, f64) = (0.0, 10_000.0);
const SHARE_PERCENT: (f64, f64) = (-1_000.0, 1_000.0);

/// Whether the shape keeps within the limits of a document.
pub(super) fn geometry(spec: &GeometrySpec) -> Result<(), CheckError> {
    many("nodes on the curve of the pins", spec.nodes_mm.len(), MOST_NODES)?;
    many("sections of the neck", spec.neck.sections.len(), MOST_SECTIONS)?;
    let (neck, pillar, board) = (&spec.neck, &spec.pillar, &spec.board);
    let ranges = [
        ("the angle of strings and board in degrees", spec.board_angle_deg, TURN_DEG),
        ("the lean of the strings in degrees", spec.lean_deg, TURN_DEG),
        ("the height of the bar in mm", spec.start_mm, FAR_MM),
        ("the offset of the tuning pins in mm", spec.pin_sideways_mm, FAR_MM),
        ("the distance of strings and neck in mm", spec.strings_from_neck_mm, FAR_MM),
        ("the neck below the bridge pins in mm", neck.below_pins_mm, FAR_MM),
        ("the neck beyond the tuning pins in mm", neck.above_pins_mm, FAR_MM),
        ("the thickness of the neck in mm", neck.thickness_mm, FAR_MM),
        ("the plies of the neck", f64::from(neck.plies), COUNTED),
        ("the slope of the neck's grain in per cent", neck.grain_percent, SHARE_PERCENT),
        ("the gap to the pillar in mm", pillar.gap_mm, FAR_MM),
        ("the width of the pillar in mm", pillar.width_mm, FAR_MM),
        ("the depth of the pillar in mm", pillar.depth_mm, FAR_MM),
        ("the push beside the pillar's middle in mm", pillar.beside_mm, FAR_MM),
        ("the board below the lowest string in mm", board.below_mm, FAR_MM),
        ("the board beyond the highest string in mm", board.above_mm, FAR_MM),
        ("the width of the board in the bass in mm", board.bass_width_mm, FAR_MM),
        ("the width of the board in the treble in mm", board.treble_width_mm, FAR_MM),
        ("the thickness of the board in the bass in mm", board.bass_thickness_mm, FAR_MM),
        ("the thickness of the board in the treble in mm", board.treble_thickness_mm, FAR_MM),
        ("the plies of the board", f64::from(board.plies), COUNTED),
        ("the diameter of the bridge pins in mm", spec.drills.bridge_pin_mm, FAR_MM),
        ("the clearance of the string holes in mm", spec.drills.string_clearance_mm, FAR_MM),
        ("the diameter of the eyelets in mm", spec.drills.eyelet_mm, FAR_MM),
        ("the drill for levers and discs in mm", spec.drills.mechanism_mm, FAR_MM),
    ];
    for (name, got, range) in ranges {
        within(|| name.to_owned(), got, range)?;
    }
    for (place, section) in neck.sections.iter().enumerate() {
        let name = |what: &str| format!("the {what} of section {} of the neck", place + 1);
        within(|| name("place in per cent"), section.at_percent, SHARE_PERCENT)?;
        within(|| name("thickness in mm"), section.thickness_mm, FAR_MM)?;
        within(|| name("depth in mm"), section.depth_mm, FAR_MM)?;
    }
    for (place, (across, along)) in spec.nodes_mm.iter().enumerate() {
        for got in [*across, *along] {
            within(|| format!("node {} of the curve of the pins in mm", place + 1), got, FAR_MM)?;
        }
    }
    for (part, wood) in [("neck", &neck.wood), ("pillar", &pillar.wood), ("board", &board.wood)] {
        short(wood, || format!("the wood of the {part}"))?;
    }
    gaps(&spec.spacing.gaps)
}

fn gaps(spec: &GapsSpec) -> Result<(), CheckError> {
    let name = || "a gap between strings in mm".to_owned();
    match spec {
        GapsSpec::UniformMm(width) => within(name, *width, FAR_MM),
        GapsSpec::ZonesMm(zones) => {
            many("zones of the spacing", zones.len(), MOST_STRINGS)?;
            zones.iter().try_for_each(|(number, width)| {
                within(|| "the number of a gap".to_owned(), f64::from(*number), COUNTED)?;
                within(name, *width, FAR_MM)
            })
        }
        GapsSpec::EachMm(widths) => {
            many("gaps between strings", widths.len(), MOST_STRINGS)?;
            widths.iter().try_for_each(|width| within(name, *width, FAR_MM))
        }
    }
}
