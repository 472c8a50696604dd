//! What the loads take for granted, with the woods and how well they are known.

use crate::design::document::{
    Design, GeometrySpec, MetalSpec, NeckLayerSpec, PLYWOOD, ServiceSpec,
};
use crate::design::letters::small;
use crate::design::resolve::timber::laminate;
use crate::design::wood_facts::{choices, own_name, own_words};
use crate::design::{display, explain};
use crate::engine::material::Standing;
use crate::engine::structure::wood::woods;
use crate::engine::units::Length;

/// What is taken for granted.
pub fn assumptions(design: &Design) -> Vec<String> {
    let shape = &design.geometry;
    let mut lines = vec![
        "Every string is permanently at pitch. Limits are those for a lasting load, with the safety that the standards \
         put in; shocks and blows are not in them."
            .to_owned(),
    ];
    let parts = [
        ("Neck", &*shape.neck.wood, Some(shape.neck.plies)),
        ("Pillar", &*shape.pillar.wood, None),
        ("Board", &*shape.board.wood, Some(shape.board.plies)),
    ];
    lines.extend(parts.map(|(part, key, plies)| made_of(shape, part, key, plies)));
    lines.extend(layers(shape));
    lines.extend(metal(design));
    let slope = shape.neck.grain_percent;
    let grain = if shape.neck.wood == PLYWOOD && shape.neck.layers.is_empty() {
        "Half of the plies of the neck, more or less, run along it all the way, also in the curves."
            .to_owned()
    } else if slope > 0.0 {
        format!(
            "The grain of the neck slants by {} %. Where it slants more, as in a neck sawn from one straight plank, the \
             neck is weaker than this says.",
            display::decimals(slope, 1)
        )
    } else {
        "The grain of the neck follows its line. A neck sawn from one straight plank is weaker than this says where the \
         grain runs out."
            .to_owned()
    };
    lines.push(grain);
    lines.push("The wood is sound: no knots.".to_owned());
    lines.push(holes(design));
    lines.extend(making(shape));
    lines.push(format!(
        "The load acts {} off the pillar's centre if the pillar only pushes. Common practice, no source.",
        display::length_with_unit(Length::from_mm(shape.pillar.beside_mm), design.units.length)
    ));
    lines.push(if shape.neck.sections.is_empty() {
        "The neck has its drawn depth and one thickness.".to_owned()
    } else {
        "The neck has the sections that you gave, and even steps between them.".to_owned()
    });
    lines.push(
        "The board is a plate with its grain across and upright rings. Width and thickness go evenly from string to string, and \
         evenly from the middle to the sides where these have their own. As it rises it also hangs between its edges."
            .to_owned(),
    );
    let board = &shape.board;
    let area =
        board.rib_width_mm * board.rib_height_mm + board.strip_width_mm * board.strip_height_mm;
    if area > 0.0 {
        lines.push(made_of(shape, "String rib", &board.rib_wood, None));
        lines.push(
            "String rib, board and the strip outside are glued along the middle and bend as one."
                .to_owned(),
        );
    }
    let bars = &shape.bars;
    if bars.cross.count + bars.along.count > 0 {
        lines.push(made_of(shape, "Bars", &bars.wood, None));
        lines.push(
            "Bars are glued on over their whole length and bend as one with the board under them, between sides and ends that \
             hold them as they hold the board."
                .to_owned(),
        );
    }
    if is_sized(shape) {
        lines.push(
            "Liners and sides hold the edges of the board: at least with a side that turns at the back, at most with braces that hold \
             the liner. Their glue is as strong as the weaker wood across its grain. From memory."
                .to_owned(),
        );
    }
    lines.push(
        match shape.service {
            ServiceSpec::Heated => "The harp stands in heated rooms: that sets how far the wood creeps and what it bears.",
            ServiceSpec::Covered => {
                "The harp stands under a roof: the wood creeps more. Its strengths are those of dry rooms, as in EN 1995-1-1, table 3.1 \
                 (from memory)."
            }
            ServiceSpec::Outdoors => {
                "The harp stands in the open: the wood creeps much more, and five sixths of the strengths of dry rooms are \
                 allowed, as in EN 1995-1-1, table 3.1 (from memory). The moduli are those of dry wood."
            }
        }
        .to_owned(),
    );
    lines
}

/// What the neck is glued up of.
fn layers(shape: &GeometrySpec) -> Option<String> {
    let layers = &shape.neck.layers;
    if layers.is_empty() {
        return None;
    }
    if laminate(shape, 0.0).is_none() {
        return Some(
            "The neck counts as one piece, as its layers cannot be used: each needs a thickness, and a wood that is no plywood."
                .to_owned(),
        );
    }
    let layer = |spec: &NeckLayerSpec| {
        let key = if spec.wood.is_empty() { &shape.neck.wood } else { &spec.wood };
        let name = choices(false, &shape.woods).into_iter().find(|(own, _)| own == key);
        let name = name.map_or_else(|| key.clone(), |(_, name)| small(&name));
        let turned = display::decimals(spec.angle_deg, 0);
        let turned = if turned == "0" { String::new() } else { format!(" at {turned}°") };
        format!("{} mm {name}{turned}", display::decimals(spec.thickness_mm, 1))
    };
    let named = layers.iter().map(layer).collect::<Vec<_>>().join(", ");
    Some(format!(
        "The neck is glued up of {named}, in proportion to its thickness, by classical laminate theory. The layers that run within \
         45° of a load bear it alone, and the weakest of them ends it: so crossed layers carry what pulls across the neck. Shear \
         that rolls crossed layers between their neighbours, and the glue, are not judged."
    ))
}

/// The metal beside the neck.
fn metal(design: &Design) -> Option<String> {
    let spec = &design.geometry.neck.plates;
    if spec.thickness_mm <= 0.0 || spec.height_mm <= 0.0 {
        return None;
    }
    let length = |mm: f64| display::length_with_unit(Length::from_mm(mm), design.units.length);
    let of = match spec.metal {
        MetalSpec::Steel => "steel (S235: 235 MPa at yield, from memory)",
        MetalSpec::Brass => {
            "brass (150 MPa at its proof stress, soft sheet has 125, hard sheet more)"
        }
        MetalSpec::Aluminium => {
            "aluminium (EN AW-6082 T6: 250 MPa at its proof stress, from memory)"
        }
    };
    let held = if spec.screw_mm > 0.0 {
        format!(
            "Its screws slip as in EN 1995-1-1, 7.1 and annex B (from memory), so that it helps less along the neck and sideways; \
             whether they hold is not judged. They are {} thick, one every {}.",
            length(spec.screw_mm),
            length(spec.screw_gap_mm)
        )
    } else {
        "Its glue is not judged.".to_owned()
    };
    Some(format!(
        "Metal beside the neck: plates {} thick and {} high of {of}, on {}. Two thirds of that stress are allowed. Wood and metal \
         bend as one; shear and twist stay with the wood. The metal is judged with wood that has crept, as that leaves more to it. \
         {held}",
        length(spec.thickness_mm),
        length(spec.height_mm),
        if spec.one_side { "one side" } else { "both sides" },
    ))
}

/// The holes of the neck.
fn holes(design: &Design) -> String {
    let drills = &design.geometry.drills;
    let rows = [
        ("tuning pins", design.allowances.pin_mm, drills.tuning_depth_mm),
        ("bridge pins", drills.bridge_pin_mm, drills.bridge_depth_mm),
        ("levers or discs", drills.mechanism_mm, 0.0),
    ];
    let length = |mm: f64| display::length_with_unit(Length::from_mm(mm), design.units.length);
    let drilled = rows.into_iter().filter(|(_, wide, _)| *wide > 0.0);
    let named: Vec<String> = drilled
        .map(|(row, wide, deep)| {
            let deep = if deep > 0.0 { length(deep) + " deep" } else { "through".to_owned() };
            format!("{row} {} wide and {deep}", length(wide))
        })
        .collect();
    if named.is_empty() {
        return "No holes for pins are counted, as none are drilled.".to_owned();
    }
    format!(
        "Holes in the neck are counted: {}. Bending, push, shear and twist act on what they leave of the section, and what pulls \
         across the grain goes between the holes of a row: EN 1995-1-1, 5.2 (from memory). Stress that gathers at the rim of a \
         hole, pins that split the wood as they are driven, and what a tight pin helps are left out.",
        named.join("; ")
    )
}

/// Whether the soundbox has its sizes.
fn is_sized(shape: &GeometrySpec) -> bool {
    let soundbox = &shape.soundbox;
    soundbox.bass_depth_mm * soundbox.side_mm * soundbox.back_mm > 0.0
}

/// Joints and soundbox.
fn making(shape: &GeometrySpec) -> Vec<String> {
    let soundbox = &shape.soundbox;
    let mut lines = vec![if shape.joints.all().iter().any(|joint| joint.is_none()) {
        "At one end of the estimate the pillar only pushes, and the shoulder turns freely in the plane of the strings and \
         alone holds the neck against twist. At the other no joint gives."
            .to_owned()
    } else {
        "At one end of the estimate the joints give twice as much as their sizes say, at the other they do not give. \
         Slip of fasteners after EN 1995-1-1, along their axis as approvals of screws have it, tenons by the shear of their \
         glue line (from memory)."
            .to_owned()
    }];
    if shape.joints.all().iter().any(|joint| !joint.is_none()) {
        lines.push(
            "A joint is pressed together on half of its faces at least; what is left of its bending, and all sliding and \
             twist, is borne by one thing alone, the one with the lowest share. Glue on end grain counts for a tenth of the \
             wood. Fasteners by the formulas of EN 1995-1-1 (second-hand and from memory), in end grain with what is left \
             of them there."
                .to_owned(),
        );
    }
    if is_sized(shape) {
        lines.push(made_of(shape, "Sides", &soundbox.side_wood, Some(0)));
        lines.push(made_of(shape, "Back", &soundbox.back_wood, Some(0)));
        lines.push(
            "The soundbox is a tube of thin walls from the foot to the shoulder, as wide as the board, with liners of the \
             wood of its sides. Between sound holes the back holds as a ladder. The plywood has the plies that its \
             thickness asks for."
                .to_owned(),
        );
    } else {
        lines.push(
            "The soundbox has no sizes: it does not give, or it is a tube 0.6 times as deep as it is wide with walls of a \
             fiftieth of its width. Common practice, no source."
                .to_owned(),
        );
    }
    lines
}

/// A wood with its source and how well that is known.
fn made_of(shape: &GeometrySpec, part: &str, key: &str, plies: Option<u32>) -> String {
    if let (PLYWOOD, Some(plies)) = (key, plies) {
        let count = if plies > 0 { format!(" of {plies} plies") } else { String::new() };
        return format!(
            "{part}: birch plywood{count}, handbook of Finnish plywood ({}).",
            explain::standing(Standing::FromMemory)
        );
    }
    let listed = woods().into_iter().find(|wood| wood.key == key);
    if let Some(own) = shape.woods.iter().find(|own| own.key == key).filter(|_| listed.is_none()) {
        let told = own_words(own);
        return format!("{part}: {}, by a bar of yours. {told}", own_name(own));
    }
    let Some(wood) = listed else {
        return format!("{part}: the usual wood, as the one named is not known here.");
    };
    let figure = wood.bending.as_ref().or(wood.modulus.as_ref());
    let source = figure.map_or_else(String::new, |figure| {
        format!(", {} ({})", figure.source, explain::standing(figure.standing))
    });
    format!("{part}: {}{source}.", wood.name)
}
