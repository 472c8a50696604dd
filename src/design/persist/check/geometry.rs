//! Limits of the shape of the harp.

use super::{CheckError, fits, held, many, short, within};
use crate::design::document::{
    GapsSpec, GeometrySpec, LONGEST_TEXT, MOST_NECK_LAYERS, MOST_NODES, MOST_SECTIONS,
    MOST_STRINGS, MOST_WOODS,
};
use crate::design::settings::{
    GAP, GAP_NUMBER, NODE_ACROSS, NODE_ALONG, SECTION_AT, SECTION_DEPTH, SECTION_THICKNESS,
};
use crate::words::{Words, files as say};

/// Whether the shape keeps within the limits of a document.
pub(super) fn geometry(spec: &GeometrySpec) -> Result<(), CheckError> {
    many(say::NODES, spec.nodes_mm.len(), MOST_NODES)?;
    many(say::SECTIONS, spec.neck.sections.len(), MOST_SECTIONS)?;
    for (place, section) in spec.neck.sections.iter().enumerate() {
        held(&SECTION_AT, section.at_percent, Some(place))?;
        held(&SECTION_THICKNESS, section.thickness_mm, Some(place))?;
        held(&SECTION_DEPTH, section.depth_mm, Some(place))?;
    }
    for (place, (across, along)) in spec.nodes_mm.iter().enumerate() {
        held(&NODE_ACROSS, *across, Some(place))?;
        held(&NODE_ALONG, *along, Some(place))?;
    }
    for joint in spec.joints.all() {
        sizes(&joint.numbers(), say::JOINT_SIZE)?;
    }
    sizes(&spec.soundbox.numbers(), say::SOUNDBOX_SIZE)?;
    many(say::NECK_LAYERS, spec.neck.layers.len(), MOST_NECK_LAYERS)?;
    for layer in &spec.neck.layers {
        sizes(&[layer.thickness_mm], say::NECK_LAYER)?;
        within(|| say::LAYER_ANGLE.into(), layer.angle_deg, (-360.0, 360.0))?;
        short(&layer.wood, || say::LAYER_WOOD.into())?;
    }
    sizes(&spec.neck.plates.numbers(), say::METAL_SIZE)?;
    many(say::WOODS, spec.woods.len(), MOST_WOODS)?;
    for wood in &spec.woods {
        sizes(&wood.numbers(), say::BAR_OF_WOOD_SIZE)?;
        short(&wood.key, || say::WOOD_KEY.into())?;
        short(&wood.name, || say::WOOD_NAME.into())?;
    }
    sizes(&spec.bars.numbers(), say::BARS_SIZE)?;
    fits(&spec.parts, LONGEST_TEXT, || say::PART_SIZES.into())?;
    let (neck, pillar, board) = (&spec.neck, &spec.pillar, &spec.board);
    let woods = [
        (say::WOOD_OF_NECK, &neck.wood),
        (say::WOOD_OF_PILLAR, &pillar.wood),
        (say::WOOD_OF_BOARD, &board.wood),
        (say::WOOD_OF_RIB, &board.rib_wood),
        (say::WOOD_OF_SIDES, &spec.soundbox.side_wood),
        (say::WOOD_OF_BACK, &spec.soundbox.back_wood),
        (say::WOOD_OF_BARS, &spec.bars.wood),
    ];
    for (what, wood) in woods {
        short(wood, || what.into())?;
    }
    match &spec.spacing.gaps {
        // A width of all gaps is a setting by itself.
        GapsSpec::UniformMm(_) => Ok(()),
        GapsSpec::ZonesMm(zones) => {
            many(say::ZONES, zones.len(), MOST_STRINGS)?;
            for (place, (number, width)) in zones.iter().enumerate() {
                held(&GAP_NUMBER, f64::from(*number), Some(place))?;
                held(&GAP, *width, Some(place))?;
            }
            Ok(())
        }
        GapsSpec::EachMm(widths) => {
            many(say::GAPS, widths.len(), MOST_STRINGS)?;
            let mut widths = widths.iter().enumerate();
            widths.try_for_each(|(place, width)| held(&GAP, *width, Some(place)))
        }
    }
}

/// Sizes of a part, in mm, and counts.
fn sizes(numbers: &[f64], what: Words) -> Result<(), CheckError> {
    numbers.iter().try_for_each(|number| within(|| what.into(), *number, (0.0, 10_000.0)))
}
