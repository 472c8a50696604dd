//! What parts and aspects are called, and what may be done about them.

use crate::engine::bearing::{BoardCut, Part};
use crate::engine::structure::verdict::{Aspect, Carrier};

/// What of a part was looked at, in a sentence.
pub const fn aspect(aspect: Aspect) -> &'static str {
    match aspect {
        Aspect::BendingAndPush => "bending with the push along it",
        Aspect::BendingAndPull => "bending with the pull along it",
        Aspect::ShearAndTwist => "shear and twist together",
        Aspect::AcrossTheCurve => "tension across the grain where the curve is opened",
        Aspect::Buckling => "buckling",
        Aspect::BesideTheMiddle => "off-centre load",
        Aspect::PressedAlong => "pressing along the grain",
        Aspect::PressedAcross => "pressing across the grain",
        Aspect::Sliding => "sliding and twist",
        Aspect::Opening => "bending that opens an edge of the joint",
        Aspect::OpeningOn(carrier) => match carrier {
            Carrier::Glue => "opening held by the glue of its faces",
            Carrier::Tenon => "opening held by the tenon",
            Carrier::Dowels => "opening held by the dowels",
            Carrier::Bolts => "opening held by the bolts",
            Carrier::Screws => "opening held by the screws",
            Carrier::Plates => "opening held by the plates",
        },
        Aspect::SlidingOn(carrier) => match carrier {
            Carrier::Glue => "sliding and twist held by the glue of its faces",
            Carrier::Tenon => "sliding and twist held by the tenon",
            Carrier::Dowels => "sliding and twist held by the dowels",
            Carrier::Bolts => "sliding and twist held by the bolts",
            Carrier::Screws => "sliding and twist held by the screws",
            Carrier::Plates => "sliding and twist held by the plates",
        },
        Aspect::Splitting => "splitting beside what holds the joint",
        Aspect::SidesBent => "bending of the sides with the force along them",
        Aspect::BackBent => "bending of the back with the force along it",
        Aspect::BoardPulled => "the board pulled across its grain by the bending of the soundbox",
        Aspect::SidesSheared => "shear and twist in the sides",
        Aspect::BackSheared => "shear and twist in the back",
        Aspect::Bowing => "bowing of the sides between the braces",
        Aspect::MetalBent => "bending of the metal beside the neck",
        Aspect::BoardBent => "bending across, with the pull of the risen board",
        Aspect::RibBent => "bending of its string rib",
        Aspect::RibGlue => "shear in the glue of its string rib",
        Aspect::BarsBent => "bending of its bars",
        Aspect::BarsGlue => "shear in the glue of its bars",
        Aspect::EdgePeel => "the glue of its edges pulled open",
        Aspect::BoardBows => "bowing under the push along it, ten years on",
    }
}

pub(super) const fn mend(part: Part, aspect: Aspect) -> &'static str {
    match aspect {
        _ if matches!(part, Part::Pillar) => "Make the pillar wider and deeper.",
        Aspect::BendingAndPush | Aspect::BendingAndPull => {
            "Make the neck deeper there, or thicker, or choose a stronger wood."
        }
        Aspect::ShearAndTwist => {
            "Make the neck thicker, hang the strings nearer to its middle, and join it firmly to a stiff pillar."
        }
        Aspect::AcrossTheCurve => "Widen the curve, or glue the neck up of plies that follow it.",
        Aspect::SidesBent | Aspect::SidesSheared => {
            "Make the sides thicker or the soundbox deeper, or give it larger liners."
        }
        Aspect::BackBent | Aspect::BackSheared => "Make the back thicker, or its holes smaller.",
        Aspect::BoardPulled => "Make the soundbox deeper, or its sides and liners stiffer.",
        Aspect::Bowing => "Put the braces nearer to each other, or make the sides thicker.",
        Aspect::MetalBent => "Make the plates thicker or higher, or the neck stiffer.",
        Aspect::OpeningOn(_) | Aspect::SlidingOn(_) => {
            "Make what holds the joint larger, deeper or farther apart."
        }
        _ => "Make the joint larger, or strengthen it.",
    }
}

/// What may be done for the board.
pub(super) const fn mend_board(aspect: Aspect) -> &'static str {
    match aspect {
        Aspect::RibBent => "Make the string rib wider or higher, or the board thicker.",
        Aspect::RibGlue => "Make the string rib wider, or the board thicker.",
        Aspect::BarsBent => "Make the bars higher, or the board thicker.",
        Aspect::BarsGlue => "Make the bars wider, or more of them.",
        Aspect::EdgePeel => "Make the liners wider, or the board narrower or thicker.",
        Aspect::BoardBows => {
            "Make the board or its string rib thicker, give it bars along, or make the soundbox deeper."
        }
        _ => "Make the board thicker or narrower, or give it a stiffer string rib.",
    }
}

/// What the board is called.
pub const fn board_name(cut: &BoardCut) -> &'static str {
    if cut.has_rib { "Board with its string rib" } else { "Board without a string rib" }
}

/// What a part is called.
pub const fn part_name(part: Part) -> &'static str {
    match part {
        Part::Neck => "Neck",
        Part::Pillar => "Pillar",
        Part::Shoulder => "Joint of neck and box",
        Part::Head => "Joint of neck and pillar",
        Part::Foot => "Joint of pillar and base",
        Part::Soundbox => "Soundbox",
    }
}
