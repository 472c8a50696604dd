//! The wood of a harp, part by part: what follows from the strings that are laid out, the sizes of the frame and a few
//! proportions, as solids with outlines, holes and grain, so that each can be drawn, cut, weighed and put beside the others.
//!
//! The harp stands as it is drawn, with `y` up and its feet below the lower end of the board. Across it, the plane of the
//! strings and the middle of the board lie at 0, the neck and the pillar beside them on the side that is below 0, as the
//! frame is reckoned. The strings' side is above 0.
//!
//! In order, each using those before it: `name`, `solid`, `outline`, `bent`, `part`, `walls`, `soundbox`, `neck`, `base`, `knots`, then `weight`, `holding`,
//! `fits`, `findings`, `grips` and `cutting`, which look at all of it.

mod base;
pub mod bent;
pub mod cutting;
pub mod findings;
pub mod fits;
pub mod grips;
pub mod holding;
mod knots;
mod name;
mod neck;
mod outline;
mod part;
mod planed;
mod solid;
mod soundbox;
mod walls;
mod weight;

use thiserror::Error;

pub use self::bent::Sheet;
pub use self::knots::Knot;
pub use self::name::{Hand, Kind, Name};
pub use self::neck::{capital_m, layers};
pub use self::outline::{FLATNESS_M, area, flat, hull};
pub use self::part::{Face, Hole, HoleKind, Part, Stuff};
pub use self::solid::{Cell, Plane, Spot};
use self::walls::Walls;
pub use self::weight::{Balance, Weight, balance, shoulder_of, weight};
use super::bearing::Build;
use super::geometry::{Band, Geometry};
use super::units::Length;

/// What the frame does not say of the parts. Common practice, no source, where nothing else is said.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Proportions {
    /// Thickness of the base.
    pub base: Length,
    /// How far the base reaches beyond what stands on it.
    pub base_beyond: Length,
    /// How much farther it reaches behind the back, so that the harp does not tip to the player.
    pub base_behind: Length,
    /// Height of the feet, at least.
    pub feet: Length,
    /// Wood left below a tenon.
    pub under_tenon: Length,
    /// From the faces of a part to its tenon, in the plane of the strings.
    pub tenon_shoulder: Length,
    /// The foot block along the base.
    pub foot_block: Length,
    /// The knee block from the neck downward, at least.
    pub knee_block: Length,
    /// The braces along the soundbox; and how far they stand off the walls where there are no liners.
    pub brace: Length,
    /// Room for glue round a tenon and before its end.
    pub glue_room: Length,
    /// How far a bent back rises at its lower end; 0 for a flat one.
    pub back_rise: Length,
}

impl Default for Proportions {
    fn default() -> Self {
        let mm = Length::from_mm;
        Self {
            base: mm(20.0),
            base_beyond: mm(12.0),
            base_behind: mm(40.0),
            feet: mm(25.0),
            under_tenon: mm(8.0),
            tenon_shoulder: mm(5.0),
            foot_block: mm(25.0),
            knee_block: mm(45.0),
            brace: mm(10.0),
            glue_room: mm(0.0),
            back_rise: mm(0.0),
        }
    }
}

/// What the parts are of.
#[derive(Clone, Debug, PartialEq)]
pub struct Woods {
    /// The neck.
    pub neck: Stuff,
    /// What the neck is glued up of, from the strings' side, where it is not of one piece: in proportion to its thickness,
    /// and how far the grain of each is turned from the length of the neck, in radians.
    pub layers: Vec<(Length, f64, Stuff)>,
    /// The pillar, and so the blocks, the base and the feet.
    pub pillar: Stuff,
    /// The board.
    pub board: Stuff,
    /// String rib and strip.
    pub rib: Stuff,
    /// The bars of the board.
    pub bars: Stuff,
    /// The sides, and so liners and braces.
    pub sides: Stuff,
    /// The back.
    pub back: Stuff,
}

/// How wide the holes of the strings in the board are, in the harp's order; `None` where that is not known.
pub type StringDrills = Vec<Option<Length>>;

/// Everything that the parts follow from.
#[derive(Clone, Debug)]
pub struct Making<'a> {
    /// Where everything stands.
    pub band: &'a Band,
    /// The shape.
    pub geometry: &'a Geometry,
    /// The sizes of the frame.
    pub build: &'a Build,
    /// What it is made of.
    pub woods: &'a Woods,
    /// The holes of the strings.
    pub string_drills: &'a [Option<Length>],
    /// What the frame does not say.
    pub proportions: &'a Proportions,
}

/// Why there are no parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum PartsError {
    /// There is no neck.
    #[error("{}", crate::words::parts::NO_NECK)]
    NoNeck,
    /// The soundbox has no sizes.
    #[error("{}", crate::words::parts::NO_BOX)]
    NoBox,
    /// The board lies so flat that the harp does not stand on the lower end of its soundbox.
    #[error("{}", crate::words::parts::TOO_FLAT)]
    TooFlat,
    /// A part whose faces cross.
    #[error("{}", crate::words::parts::crossed(&.0.said()))]
    Crossed(Kind),
}

/// What was wanted and found no room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NoRoom {
    /// The tenon of the neck in the knee block.
    ShoulderTenon,
    /// A fastener of the shoulder, which would leave the block.
    ShoulderFastener,
    /// A fastener of the shoulder, which would leave the neck.
    NeckFastener,
    /// The tenon at the top of the pillar, which would come through the neck.
    HeadTenon,
    /// The tenon at the foot of the pillar.
    FootTenon,
}

/// All parts of a harp.
#[derive(Clone, Debug, PartialEq)]
pub struct Whole {
    /// The parts, the frame first, then the soundbox from outside inward.
    pub parts: Vec<Part>,
    /// What found no room and was left out.
    pub left_out: Vec<NoRoom>,
    /// Where each string ends, from the top.
    pub knots: Vec<Knot>,
    /// How far the neck reaches down at its seat on the pillar, as its lower edge slopes there and the seat is square.
    pub heel_m: f64,
    /// The floor, below 0: how high it lies.
    pub floor_m: f64,
    /// From the front of the front foot to the back of the rear one, along the floor.
    pub feet_m: (f64, f64),
    /// To each side.
    pub feet_half_m: f64,
}

impl Whole {
    /// The parts of a kind.
    pub fn of(&self, kind: Kind) -> impl Iterator<Item = &Part> {
        self.parts.iter().filter(move |part| part.name.kind == kind)
    }
}

/// The parts of a harp that is laid out.
///
/// The board's outer face lies so far below the line of the board that strings leave the strip outside where their
/// vibrating length begins; without a strip the line is the face. Depths of the soundbox are those of its sides, between
/// board and back.
///
/// # Errors
///
/// Why they cannot be made.
///
/// # Source
///
/// Geometry, worked out.
pub fn whole(making: &Making<'_>) -> Result<Whole, PartsError> {
    let shape = making.band.neck.as_ref().ok_or(PartsError::NoNeck)?;
    let walls = Walls::new(making, shape)?;
    let stands = neck::Stands::new(making, shape, &walls)?;
    let (mut parts, mut left_out) = neck::neck_and_pillar(making, shape, &walls, &stands)?;
    let feet = base::base(making, &walls, &stands, &mut parts)?;
    let of_box = match parts.first() {
        Some(neck) => soundbox::soundbox(making, &walls, &stands, neck, &mut left_out)?,
        None => return Err(PartsError::NoNeck),
    };
    parts.extend(of_box);
    neck::on_shoulder(making, &mut parts, &mut left_out);
    leave_glue_room(&mut parts, making.proportions.glue_room.to_m());
    let mut whole = Whole {
        parts,
        knots: Vec::new(),
        left_out,
        heel_m: stands.heel_m,
        floor_m: feet.floor_m,
        feet_m: feet.along_m,
        feet_half_m: feet.half_m,
    };
    whole.knots = knots::knots(making, &walls, &whole);
    Ok(whole)
}

/// Makes mortises so much larger than their tenons, where they are not open.
fn leave_glue_room(parts: &mut [Part], by_m: f64) {
    if by_m <= 0.0 {
        return;
    }
    for part in parts {
        let open = part.cells.first().map(Cell::planes).unwrap_or_default();
        for cut in &mut part.cuts {
            if let Some(looser) = cut.loosened(by_m, &open) {
                *cut = looser;
            }
        }
    }
}
