//! How far the parts of a design are from breaking: what 100 % of the design allowance does not say.

use super::board::crept_when_it_bows;
use super::{Build, Part};
use crate::engine::structure::reserve::Reserve;
use crate::engine::structure::verdict::Aspect;
use crate::engine::structure::wood::{Margin, Margins};

/// How far breaking lies above what may be allowed of the woods of a board.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BoardMargins {
    /// Of the board, and so of the glue on it.
    pub board: Margins,
    /// Of string rib and strip.
    pub rib: Margins,
    /// Of the bars.
    pub bars: Margins,
}

impl Build {
    /// How far what is allowed of an aspect of a part lies from breaking; `None` where that is not known. What two things
    /// hold breaks with the first.
    pub fn reserve(&self, part: Part, aspect: Aspect) -> Option<Reserve> {
        let wood = match part {
            Part::Pillar => &self.pillar.allowable,
            Part::Foot => &self.pillar_wood.allowable,
            Part::Shoulder | Part::Head => &self.neck_wood.allowable,
            Part::Neck => &self.neck.allowable,
            Part::Soundbox => {
                let parts = self.soundbox.as_ref()?;
                match aspect {
                    Aspect::BackBent | Aspect::BackSheared => &parts.back.1.allowable,
                    Aspect::BoardPulled => &parts.board.allowable,
                    _ => &parts.side.1.allowable,
                }
            }
        };
        let margins = &wood.margins;
        match aspect {
            Aspect::OpeningOn(by) => by.reserve(true, margins),
            Aspect::SlidingOn(by) => by.reserve(false, margins),
            aspect => of_wood(margins, aspect),
        }
    }

    /// The same of the board with all that is glued on it.
    pub fn board_reserve(&self, aspect: Aspect) -> Option<Reserve> {
        let of = &self.board.margins;
        let bending = |of: &Margins| Reserve::of_wood(of.bending?);
        match aspect {
            Aspect::BoardBent => bending(&of.board),
            Aspect::RibBent => bending(&of.rib),
            Aspect::BarsBent => bending(&of.bars),
            Aspect::BarsSheared => Reserve::of_wood(of.bars.shear?),
            // The wood beside the glue, sheared or rolled.
            Aspect::RibGlue | Aspect::BarsGlue => Reserve::of_wood(rolled(&of.board)?),
            Aspect::EdgePeel => {
                let side = self.soundbox.as_ref()?.side.1.allowable.margins.tension_across;
                let board = of.board.tension_across?;
                Reserve::of_wood(side.map_or(board, |side| board.or(side)))
            }
            // The energy that breaks goes with the square of the load, as what is allowed does with that of a strength.
            Aspect::BarsEnds => Reserve::of_wood(of.board.tension_across?),
            Aspect::BoardBows => {
                Some(Reserve::of_board(of.board.buckling?, crept_when_it_bows(&self.board)?))
            }
            _ => None,
        }
    }
}

/// Of wood that rolls: of its tension across the grain, from which that limit comes, or of its shear.
fn rolled(margins: &Margins) -> Option<Margin> {
    Some(margins.tension_across?.or(margins.shear?))
}

fn of_wood(margins: &Margins, aspect: Aspect) -> Option<Reserve> {
    let breaks = |margin: Option<Margin>| Reserve::of_wood(margin?);
    match aspect {
        Aspect::BendingAndPush | Aspect::BendingAndPull => breaks(margins.bending),
        Aspect::SidesBent | Aspect::BackBent => breaks(margins.bending),
        Aspect::ShearAndTwist | Aspect::Sliding | Aspect::SidesSheared | Aspect::BackSheared => {
            breaks(margins.shear)
        }
        Aspect::AcrossTheCurve | Aspect::BoardPulled => breaks(margins.tension_across),
        Aspect::Rolling | Aspect::MetalGlue => breaks(rolled(margins)),
        Aspect::Buckling | Aspect::Bowing => Reserve::of_slender_wood(margins.buckling?),
        Aspect::BesideTheMiddle | Aspect::PressedAlong => breaks(margins.compression_along),
        Aspect::PressedAcross => Some(Reserve::of_crushed(margins.compression_across?)),
        Aspect::Splitting | Aspect::MetalScrews => Reserve::of_fastened(),
        Aspect::MetalBent => Some(Reserve::of_metal()),
        // Judged of the board, as what carries a joint, or not at all.
        Aspect::Opening
        | Aspect::OpeningOn(_)
        | Aspect::SlidingOn(_)
        | Aspect::BoardBent
        | Aspect::RibBent
        | Aspect::RibGlue
        | Aspect::BarsBent
        | Aspect::BarsGlue
        | Aspect::BarsSheared
        | Aspect::EdgePeel
        | Aspect::BarsEnds
        | Aspect::BoardBows => None,
    }
}
