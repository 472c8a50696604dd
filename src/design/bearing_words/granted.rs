//! What the loads take for granted, with the woods and how well they are known.

use crate::design::document::{
    Design, GeometrySpec, MetalSpec, NeckLayerSpec, PLYWOOD, ServiceSpec,
};
use crate::design::letters::within;
use crate::design::resolve::timber::laminate;
use crate::design::thickness_map;
use crate::design::typed::cut;
use crate::design::wood_facts::{choices, own_name, own_words};
use crate::design::{display, explain};
use crate::engine::material::Standing;
use crate::engine::structure::wood::{said, woods};
use crate::engine::units::Length;
use crate::words::{Words, granted as say, semicolon};

/// What is assumed.
pub fn assumptions(design: &Design) -> Vec<String> {
    let shape = &design.geometry;
    let mut lines: Vec<String> = vec![say::PERMANENTLY.into()];
    let parts = [
        (say::NECK, &*shape.neck.wood, Some(shape.neck.plies)),
        (say::PILLAR, &*shape.pillar.wood, None),
        (say::BOARD, &*shape.board.wood, Some(shape.board.plies)),
    ];
    lines.extend(parts.map(|(part, key, plies)| made_of(shape, part, key, plies)));
    lines.extend(layers(shape));
    lines.extend(metal(design));
    let slope = shape.neck.grain_percent;
    lines.push(if shape.neck.wood == PLYWOOD && shape.neck.layers.is_empty() {
        say::GRAIN_PLIES.into()
    } else if slope > 0.0 {
        say::grain_slants(&display::decimals(slope, 1))
    } else {
        say::GRAIN_FOLLOWS.into()
    });
    lines.push(say::SOUND.into());
    lines.push(holes(design));
    lines.extend(making(shape));
    let offset = Length::from_mm(shape.pillar.beside_mm);
    lines.push(say::off_centre(&display::length_with_unit(offset, design.units.length)));
    let even = shape.neck.sections.is_empty();
    lines.push(if even { say::ONE_THICKNESS } else { say::SECTIONS }.into());
    lines.push(say::BOARD_PLATE.into());
    let map = thickness_map::text(shape);
    match thickness_map::read(map) {
        Some(rows) if rows.is_empty() => {}
        Some(_) => lines.push(say::BOARD_MAP.into()),
        None => lines.push(say::board_map_unusable(&cut(map))),
    }
    lines.push(say::STRING_HOLES.into());
    let board = &shape.board;
    let area =
        board.rib_width_mm * board.rib_height_mm + board.strip_width_mm * board.strip_height_mm;
    if area > 0.0 {
        lines.push(made_of(shape, say::RIB, &board.rib_wood, None));
        lines.push(say::RIB_AS_ONE.into());
    }
    let bars = &shape.bars;
    if bars.cross.count + bars.along.count > 0 {
        lines.push(made_of(shape, say::BARS, &bars.wood, None));
        lines.push(say::BARS_AS_ONE.into());
    }
    if is_sized(shape) {
        lines.push(say::LINERS.into());
    }
    let kept = match shape.service {
        ServiceSpec::Heated => say::HEATED,
        ServiceSpec::Covered => say::COVERED,
        ServiceSpec::Outdoors => say::OUTDOORS,
    };
    lines.push(kept.into());
    lines
}

/// What the neck is glued up of.
fn layers(shape: &GeometrySpec) -> Option<String> {
    let layers = &shape.neck.layers;
    if layers.is_empty() {
        return None;
    }
    if laminate(shape, 0.0).is_none() {
        return Some(say::LAYERS_UNUSABLE.into());
    }
    let layer = |spec: &NeckLayerSpec| {
        let key = if spec.wood.is_empty() { &shape.neck.wood } else { &spec.wood };
        let name = choices(false, &shape.woods).into_iter().find(|(own, _)| own == key);
        let name = name.map_or_else(|| key.clone(), |(_, name)| within(&name));
        let thick = display::decimals(spec.thickness_mm, 1);
        match display::decimals(spec.angle_deg, 0) {
            angle if angle == "0" => say::layer(&thick, &name),
            angle => say::layer_turned(&angle, &thick, &name),
        }
    };
    let named = layers.iter().map(layer).collect::<Vec<_>>().join(", ");
    Some(say::layers(&named))
}

/// The metal beside the neck.
fn metal(design: &Design) -> Option<String> {
    let spec = &design.geometry.neck.plates;
    if spec.thickness_mm <= 0.0 || spec.height_mm <= 0.0 {
        return None;
    }
    let length = |mm: f64| display::length_with_unit(Length::from_mm(mm), design.units.length);
    let of = match spec.metal {
        MetalSpec::Steel => say::METAL_STEEL,
        MetalSpec::Brass => say::METAL_BRASS,
        MetalSpec::Aluminium => say::METAL_ALUMINIUM,
    };
    let (thick, gap) = (length(spec.screw_mm), length(spec.screw_gap_mm));
    let held = if spec.screw_mm <= 0.0 {
        say::METAL_GLUE.into()
    } else if spec.screw_depth_mm > 0.0 {
        say::metal_screws(&length(spec.screw_depth_mm), &gap, &thick)
    } else {
        say::metal_screws_unjudged(&gap, &thick)
    };
    let sides = if spec.one_side { say::ONE_SIDE } else { say::BOTH_SIDES };
    let (high, thick) = (length(spec.height_mm), length(spec.thickness_mm));
    Some(say::metal(&held, &high, &of, &sides, &thick))
}

/// The holes of the neck.
fn holes(design: &Design) -> String {
    let drills = &design.geometry.drills;
    let rows = [
        (say::TUNING_PINS, design.allowances.pin_mm, drills.tuning_depth_mm),
        (say::BRIDGE_PINS, drills.bridge_pin_mm, drills.bridge_depth_mm),
        (say::LEVERS_OR_DISCS, drills.mechanism_mm, 0.0),
    ];
    let length = |mm: f64| display::length_with_unit(Length::from_mm(mm), design.units.length);
    let drilled = rows.into_iter().filter(|(_, wide, _)| *wide > 0.0);
    let named: Vec<String> = drilled
        .map(|(row, wide, deep)| match deep > 0.0 {
            true => say::hole_deep(&length(deep), &row, &length(wide)),
            false => say::hole_through(&row, &length(wide)),
        })
        .collect();
    if named.is_empty() {
        return say::HOLES_NONE.into();
    }
    say::holes(&named.join(semicolon()))
}

/// Whether the soundbox has its sizes.
fn is_sized(shape: &GeometrySpec) -> bool {
    let soundbox = &shape.soundbox;
    soundbox.bass_depth_mm * soundbox.side_mm * soundbox.back_mm > 0.0
}

/// Joints and soundbox.
fn making(shape: &GeometrySpec) -> Vec<String> {
    let soundbox = &shape.soundbox;
    let free = shape.joints.all().iter().any(|joint| joint.is_none());
    let mut lines: Vec<String> =
        vec![if free { say::JOINTS_FREE } else { say::JOINTS_SPRINGS }.into()];
    if shape.joints.all().iter().any(|joint| !joint.is_none()) {
        lines.push(say::JOINTS_BORNE.into());
    }
    if is_sized(shape) {
        lines.push(made_of(shape, say::SIDES, &soundbox.side_wood, Some(0)));
        lines.push(made_of(shape, say::BACK, &soundbox.back_wood, Some(0)));
        lines.push(say::BOX_TUBE.into());
    } else {
        lines.push(say::BOX_NONE.into());
    }
    lines
}

/// A wood with its source and how well that is known.
fn made_of(shape: &GeometrySpec, part: Words, key: &str, plies: Option<u32>) -> String {
    if let (PLYWOOD, Some(plies)) = (key, plies) {
        let standing = explain::standing(Standing::FromMemory);
        return match plies {
            0 => say::made_plywood(&part, &standing),
            plies => say::made_plywood_plies(&part, &plies, &standing),
        };
    }
    let listed = woods().into_iter().find(|wood| wood.key == key);
    if let Some(own) = shape.woods.iter().find(|own| own.key == key).filter(|_| listed.is_none()) {
        return say::made_own(&part, &own_words(own), &own_name(own));
    }
    let Some(wood) = listed else { return say::made_unknown(&part) };
    match wood.bending.as_ref().or(wood.modulus.as_ref()) {
        Some(figure) => {
            let standing = explain::standing(figure.standing);
            say::made_of_source(&part, &said(&figure.source), &standing, &wood.name)
        }
        None => say::made_of(&part, &wood.name),
    }
}
