//! What the loads take for granted, with the woods and how well they are known.

use crate::design::document::{Design, GeometrySpec, PLYWOOD, ServiceSpec};
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
    lines.extend(parts.map(|(part, key, plies)| made_of(part, key, plies)));
    let slope = shape.neck.grain_percent;
    let grain = if shape.neck.wood == PLYWOOD {
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
    lines.push("The wood is sound and dry: no knots, no holes for pins.".to_owned());
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
        "The board is a plate with its grain across and upright rings. Width and thickness go evenly from string to string; \
         bars are left out."
            .to_owned(),
    );
    let board = &shape.board;
    let area =
        board.rib_width_mm * board.rib_height_mm + board.strip_width_mm * board.strip_height_mm;
    if area > 0.0 {
        lines.push(made_of("String rib", &board.rib_wood, None));
        lines.push(
            "String rib, board and the strip outside are glued along the middle and bend as one."
                .to_owned(),
        );
    }
    lines.push(
        match shape.service {
            ServiceSpec::Heated => "The harp stands in heated rooms: that sets how far the board creeps.",
            ServiceSpec::Covered => {
                "The harp stands under a roof: the board creeps more. The strengths are those of dry wood."
            }
            ServiceSpec::Outdoors => {
                "The harp stands in the open: the board creeps much more. The strengths are those of dry wood, and damp \
                 wood has less."
            }
        }
        .to_owned(),
    );
    lines
}

/// Joints and soundbox.
fn making(shape: &GeometrySpec) -> Vec<String> {
    let soundbox = &shape.soundbox;
    let is_sized = soundbox.bass_depth_mm * soundbox.side_mm * soundbox.back_mm > 0.0;
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
    if is_sized {
        lines.push(made_of("Sides", &soundbox.side_wood, Some(0)));
        lines.push(made_of("Back", &soundbox.back_wood, Some(0)));
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
fn made_of(part: &str, key: &str, plies: Option<u32>) -> String {
    if let (PLYWOOD, Some(plies)) = (key, plies) {
        let count = if plies > 0 { format!(" of {plies} plies") } else { String::new() };
        return format!(
            "{part}: birch plywood{count}, handbook of Finnish plywood ({}).",
            explain::standing(Standing::FromMemory)
        );
    }
    let Some(wood) = woods().into_iter().find(|wood| wood.key == key) else {
        return format!("{part}: the usual wood, as the one named is not known here.");
    };
    let figure = wood.bending.as_ref().or(wood.modulus.as_ref());
    let source = figure.map_or_else(String::new, |figure| {
        format!(", {} ({})", figure.source, explain::standing(figure.standing))
    });
    format!("{part}: {}{source}.", wood.name)
}
