//! What parts and aspects are called, and what may be done about them.

use crate::engine::bearing::{BoardCut, Part};
use crate::engine::structure::verdict::{Aspect, Carrier};
use crate::words::{Words, frame as say};

/// What of a part was looked at, in a sentence.
pub fn aspect(aspect: Aspect) -> &'static str {
    aspect_words(aspect).said()
}

pub(super) const fn aspect_words(aspect: Aspect) -> Words {
    match aspect {
        Aspect::BendingAndPush => say::BENDING_PUSH,
        Aspect::BendingAndPull => say::BENDING_PULL,
        Aspect::ShearAndTwist => say::SHEAR_TWIST,
        Aspect::AcrossTheCurve => say::ACROSS_CURVE,
        Aspect::Buckling => say::BUCKLING,
        Aspect::BesideTheMiddle => say::BESIDE_MIDDLE,
        Aspect::PressedAlong => say::PRESSED_ALONG,
        Aspect::PressedAcross => say::PRESSED_ACROSS,
        Aspect::Sliding => say::SLIDING,
        Aspect::Opening => say::OPENING,
        Aspect::OpeningOn(carrier) => match carrier {
            Carrier::Glue => say::OPENING_GLUE,
            Carrier::Tenon => say::OPENING_TENON,
            Carrier::Dowels => say::OPENING_DOWELS,
            Carrier::Bolts => say::OPENING_BOLTS,
            Carrier::Screws => say::OPENING_SCREWS,
            Carrier::Plates => say::OPENING_PLATES,
        },
        Aspect::SlidingOn(carrier) => match carrier {
            Carrier::Glue => say::SLIDING_GLUE,
            Carrier::Tenon => say::SLIDING_TENON,
            Carrier::Dowels => say::SLIDING_DOWELS,
            Carrier::Bolts => say::SLIDING_BOLTS,
            Carrier::Screws => say::SLIDING_SCREWS,
            Carrier::Plates => say::SLIDING_PLATES,
        },
        Aspect::Splitting => say::SPLITTING,
        Aspect::SidesBent => say::SIDES_BENT,
        Aspect::BackBent => say::BACK_BENT,
        Aspect::BoardPulled => say::BOARD_PULLED,
        Aspect::SidesSheared => say::SIDES_SHEARED,
        Aspect::BackSheared => say::BACK_SHEARED,
        Aspect::Bowing => say::BOWING_SIDES,
        Aspect::Rolling => say::ROLLING,
        Aspect::MetalBent => say::METAL_BENT,
        Aspect::MetalGlue => say::METAL_GLUE,
        Aspect::MetalScrews => say::METAL_SCREWS,
        Aspect::BoardBent => say::BOARD_BENT,
        Aspect::RibBent => say::RIB_BENT,
        Aspect::RibGlue => say::RIB_GLUE,
        Aspect::BarsBent => say::BARS_BENT,
        Aspect::BarsGlue => say::BARS_GLUE,
        Aspect::BarsSheared => say::BARS_SHEARED,
        Aspect::EdgePeel => say::EDGE_PEEL,
        Aspect::BarsEnds => say::BARS_ENDS,
        Aspect::BoardBows => say::BOARD_BOWS,
    }
}

pub(super) const fn mend(part: Part, aspect: Aspect) -> Words {
    match aspect {
        _ if matches!(part, Part::Pillar) => say::MEND_PILLAR,
        Aspect::BendingAndPush | Aspect::BendingAndPull => say::MEND_NECK,
        Aspect::ShearAndTwist => say::MEND_TWIST,
        Aspect::AcrossTheCurve => say::MEND_CURVE,
        Aspect::SidesBent | Aspect::SidesSheared => say::MEND_SIDES,
        Aspect::BackBent | Aspect::BackSheared => say::MEND_BACK,
        Aspect::BoardPulled => say::MEND_BOARD_PULLED,
        Aspect::Bowing => say::MEND_BOWING,
        Aspect::Rolling => say::MEND_ROLLING,
        Aspect::MetalGlue => say::MEND_METAL_GLUE,
        Aspect::MetalScrews => say::MEND_METAL_SCREWS,
        Aspect::MetalBent => say::MEND_METAL,
        Aspect::OpeningOn(_) | Aspect::SlidingOn(_) => say::MEND_HELD,
        _ => say::MEND_JOINT,
    }
}

/// What may be done for the board.
pub(super) const fn mend_board(aspect: Aspect) -> Words {
    match aspect {
        Aspect::RibBent => say::MEND_RIB,
        Aspect::RibGlue => say::MEND_RIB_GLUE,
        Aspect::BarsBent => say::MEND_BARS,
        Aspect::BarsGlue | Aspect::BarsSheared => say::MEND_BARS_GLUE,
        Aspect::EdgePeel => say::MEND_EDGES,
        Aspect::BarsEnds => say::MEND_BARS_ENDS,
        Aspect::BoardBows => say::MEND_BOARD_BOWS,
        _ => say::MEND_BOARD,
    }
}

/// What the board is called.
pub fn board_name(cut: &BoardCut) -> &'static str {
    let name = if cut.has_rib { say::BOARD_WITH_RIB } else { say::BOARD_WITHOUT_RIB };
    name.said()
}

/// What a part is called.
pub fn part_name(part: Part) -> &'static str {
    part_words(part).said()
}

pub(super) const fn part_words(part: Part) -> Words {
    match part {
        Part::Neck => say::PART_NECK,
        Part::Pillar => say::PART_PILLAR,
        Part::Shoulder => say::PART_SHOULDER,
        Part::Head => say::PART_HEAD,
        Part::Foot => say::PART_FOOT,
        Part::Soundbox => say::PART_SOUNDBOX,
    }
}

/// What a part is called within a sentence.
pub(super) fn part_within(part: Part) -> &'static str {
    match part {
        Part::Neck => say::IN_NECK,
        Part::Pillar => say::IN_PILLAR,
        Part::Shoulder => say::IN_SHOULDER,
        Part::Head => say::IN_HEAD,
        Part::Foot => say::IN_FOOT,
        Part::Soundbox => say::IN_SOUNDBOX,
    }
    .said()
}

/// What the board is called within a sentence.
pub(super) fn board_within(cut: &BoardCut) -> &'static str {
    let name = if cut.has_rib { say::IN_BOARD_WITH_RIB } else { say::IN_BOARD_WITHOUT_RIB };
    name.said()
}

/// What was looked at of the board, by itself.
pub(super) fn of_board(of: Aspect) -> &'static str {
    match of {
        Aspect::BoardBent => say::OF_BOARD_BENT,
        Aspect::RibBent => say::OF_RIB_BENT,
        Aspect::RibGlue => say::OF_RIB_GLUE,
        Aspect::BarsBent => say::OF_BARS_BENT,
        Aspect::BarsGlue => say::OF_BARS_GLUE,
        Aspect::BarsSheared => say::OF_BARS_SHEARED,
        Aspect::EdgePeel => say::OF_EDGE_PEEL,
        Aspect::BarsEnds => say::OF_BARS_ENDS,
        other => aspect_words(other),
    }
    .said()
}
