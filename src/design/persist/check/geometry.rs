//! Limits of the shape of the harp.

use super::{CheckError, held, many, short, within};
use crate::design::document::{
    GapsSpec, GeometrySpec, MOST_NECK_LAYERS, MOST_NODES, MOST_SECTIONS, MOST_STRINGS, MOST_WOODS,
};
use crate::design::settings::{
    GAP, GAP_NUMBER, NODE_ACROSS, NODE_ALONG, SECTION_AT, SECTION_DEPTH, SECTION_THICKNESS,
};

/// Whether the shape keeps within the limits of a document.
pub(super) fn geometry(spec: &GeometrySpec) -> Result<(), CheckError> {
    many("nodes on the curve of the pins", spec.nodes_mm.len(), MOST_NODES)?;
    many("sections of the neck", spec.neck.sections.len(), MOST_SECTIONS)?;
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
        sizes(&joint.numbers(), "a size of a joint")?;
    }
    sizes(&spec.soundbox.numbers(), "a size of the soundbox")?;
    many("layers of the neck", spec.neck.layers.len(), MOST_NECK_LAYERS)?;
    for layer in &spec.neck.layers {
        sizes(&[layer.thickness_mm], "a layer of the neck")?;
        within(|| "the angle of a layer".to_owned(), layer.angle_deg, (-360.0, 360.0))?;
        short(&layer.wood, || "the wood of a layer".to_owned())?;
    }
    sizes(&spec.neck.plates.numbers(), "a size of the metal beside the neck")?;
    many("woods of its own", spec.woods.len(), MOST_WOODS)?;
    for wood in &spec.woods {
        sizes(&wood.numbers(), "a size of a bar of wood")?;
        short(&wood.key, || "the key of a wood".to_owned())?;
        short(&wood.name, || "the name of a wood".to_owned())?;
    }
    sizes(&spec.bars.numbers(), "a size of the bars")?;
    let (neck, pillar, board) = (&spec.neck, &spec.pillar, &spec.board);
    let woods = [
        ("neck", &neck.wood),
        ("pillar", &pillar.wood),
        ("board", &board.wood),
        ("string rib", &board.rib_wood),
        ("sides", &spec.soundbox.side_wood),
        ("back", &spec.soundbox.back_wood),
        ("bars", &spec.bars.wood),
    ];
    for (part, wood) in woods {
        short(wood, || format!("the wood of the {part}"))?;
    }
    match &spec.spacing.gaps {
        // A width of all gaps is a setting by itself.
        GapsSpec::UniformMm(_) => Ok(()),
        GapsSpec::ZonesMm(zones) => {
            many("zones of the spacing", zones.len(), MOST_STRINGS)?;
            for (place, (number, width)) in zones.iter().enumerate() {
                held(&GAP_NUMBER, f64::from(*number), Some(place))?;
                held(&GAP, *width, Some(place))?;
            }
            Ok(())
        }
        GapsSpec::EachMm(widths) => {
            many("gaps between strings", widths.len(), MOST_STRINGS)?;
            let mut widths = widths.iter().enumerate();
            widths.try_for_each(|(place, width)| held(&GAP, *width, Some(place)))
        }
    }
}

/// Sizes of a part, in mm, and counts.
fn sizes(numbers: &[f64], what: &str) -> Result<(), CheckError> {
    numbers.iter().try_for_each(|number| within(|| what.to_owned(), *number, (0.0, 10_000.0)))
}
