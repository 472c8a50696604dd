//! What the frame of a design bears: the strings' pull on neck, pillar, joints and board, how far each part is used
//! up, and the same while only part of the strings is up.
//!
//! It puts the formulas of [`structure`](super::structure) together for a harp that is laid out. Nothing fails: what
//! cannot be said has its reason, and a part that bears too much has a use above 1. The estimate is of sound, dry wood
//! whose grain follows the part, without knots; it compares designs and does not prove that a frame is safe.

mod board;
mod gives;
mod joints;
mod line;
mod neck;
mod part;
mod pillar;
mod reserve;
mod soundbox;
mod space;
mod stages;

use thiserror::Error;

use self::board::BoardKept;
pub use self::board::{BoardCut, BoardEnds, BoardParts, BoardState, StringHoles};
pub use self::gives::{Gives, Nearer, gives, nearer};
use self::joints::At;
pub use self::joints::JointParts;
pub use self::neck::{Case, Cut, Drilled, Layered, NeckBearing, NeckParts, NeckPlates};
pub use self::part::Part;
pub use self::pillar::PillarBearing;
use self::pillar::Pushed;
pub use self::reserve::BoardMargins;
pub use self::soundbox::{BoxBearing, BoxCut, BoxParts};
pub use self::space::Stiff;
pub use self::stages::{Order, Stage, some_stages, stages};
use super::analysis::{Analysis, Harp, Known};
use super::geometry::{Band, Geometry, Loads, loads, pulls};
use super::structure::frame::{FrameError, Point, Pull, Reactions, Resultant, resultant};
use super::structure::joint::JointWood;
use super::structure::section::SectionError;
use super::structure::verdict::{Aspect, Use, Verdict};
use super::structure::wood::Allowable;
use super::units::{Force, Length, Stress};
use crate::words::engine as say;

/// What the parts are made of. Any number may be given.
#[derive(Clone, Debug, PartialEq)]
pub struct Build {
    /// The neck.
    pub neck: NeckParts,
    /// The pillar.
    pub pillar: PillarParts,
    /// The soundboard.
    pub board: BoardParts,
    /// Shoulder, head and foot.
    pub joints: [JointParts; 3],
    /// The wood of the neck as joints ask for it.
    pub neck_wood: JointWood,
    /// That of the pillar.
    pub pillar_wood: JointWood,
    /// The soundbox, where its sizes are given.
    pub soundbox: Option<BoxParts>,
    /// Whether anyone gave the sizes; those of a new document are nobody's harp.
    pub is_given: bool,
    /// Whether the sizes are a proposal that nobody has taken as his own.
    pub is_proposed: bool,
}

impl Build {
    /// The same where only a share of every strength of wood may be allowed, as in damp air.
    #[must_use]
    pub fn times(mut self, ratio: f64) -> Self {
        let times = |stress: Option<Stress>| stress.map(|of| Stress::from_pa(ratio * of.to_pa()));
        let board = &mut self.board;
        for strength in [
            &mut board.bending,
            &mut board.rib_bending,
            &mut board.bars_bending,
            &mut board.sheared,
            &mut board.rolled,
            &mut board.peeled,
        ] {
            *strength = times(*strength);
        }
        board.ends = board.ends.map(|ends| ends.times(ratio));
        if let Some((shear, _)) = &mut board.bars_shear {
            *shear = Stress::from_pa(ratio * shear.to_pa());
        }
        let neck = &mut self.neck;
        neck.rolling = neck.rolling.take().map(|of| of.times(ratio));
        neck.plates.iter_mut().for_each(|of| of.held = of.held.times(ratio));
        for wood in [&mut self.neck_wood, &mut self.pillar_wood] {
            wood.rolling = times(wood.rolling);
        }
        let walls = self
            .soundbox
            .iter_mut()
            .flat_map(|soundbox| [&mut soundbox.board, &mut soundbox.side.1, &mut soundbox.back.1]);
        let walls = walls.map(|wall| &mut wall.allowable);
        let bars = [&mut self.neck.allowable, &mut self.pillar.allowable];
        let joints = [&mut self.neck_wood.allowable, &mut self.pillar_wood.allowable];
        for allowable in bars.into_iter().chain(joints).chain(walls) {
            *allowable = allowable.times(ratio);
        }
        self
    }
}

/// What a pillar is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct PillarParts {
    /// What its wood may bear for good.
    pub allowable: Allowable,
    /// Shear modulus of a bar along the grain that is twisted, where it is known.
    pub torsion_modulus: Option<Stress>,
    /// In the plane of the strings.
    pub width: Length,
    /// Square to that plane.
    pub depth: Length,
    /// How far beside its middle the push acts.
    pub beside: Length,
}

/// Why nothing can be said of the frame.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum BearingError {
    /// There is no neck.
    #[error("{}", say::NO_NECK)]
    NoNeck,
    /// A section that is none.
    #[error(transparent)]
    Section(#[from] SectionError),
    /// A frame that cannot stand, or bears nothing.
    #[error(transparent)]
    Frame(#[from] FrameError),
}

/// A part judged at both ends of the estimate: with joints that turn freely, and with joints that do not give.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Judged {
    /// The first with a pillar that only pushes, the others with joints that do not give. Empty where its measures are
    /// none, or no modulus is known.
    pub ends: Vec<Verdict>,
}

impl Judged {
    /// What is loaded most, where a limit is known.
    pub fn governing(&self) -> Option<&Use> {
        let mut known = self.ends.iter().filter_map(Verdict::governing);
        let first = known.next()?;
        Some(known.fold(first, |most, next| if next.ratio > most.ratio { next } else { most }))
    }

    /// The greatest stress with which the faces of a joint would gape at an edge; `None` where they stay closed.
    pub fn opening(&self) -> Option<Stress> {
        let uses = self.ends.iter().flat_map(|end| &end.uses);
        let opened = uses.filter(|used| used.aspect == Aspect::Opening);
        let greatest = opened.map(|used| used.stress.to_pa()).fold(0.0, f64::max);
        (greatest > 0.0).then(|| Stress::from_pa(greatest))
    }

    /// How far it is loaded, least and most. Faces that gape are not judged, as what then holds them is not known,
    /// unless something else is over its limit already.
    pub fn used(&self) -> Option<(f64, f64)> {
        let ratios = self.ends.iter().filter_map(|end| end.governing()?.ratio);
        let used = ratios.fold(None, |all: Option<(f64, f64)>, next| {
            Some(all.map_or((next, next), |(least, most)| (least.min(next), most.max(next))))
        })?;
        (self.opening().is_none() || used.1 > 1.0).then_some(used)
    }
}

/// A joint of the frame.
#[derive(Clone, Debug, PartialEq)]
pub struct JointBearing {
    /// Where it is.
    pub at: Point,
    /// How far the wood beside it is loaded.
    pub judged: Judged,
}

/// Neck, pillar and joints under the pull of strings.
#[derive(Clone, Debug, PartialEq)]
pub struct FrameBearing {
    /// All pulls on the neck as one.
    pub all: Resultant,
    /// What holds the neck if the pillar only pushes.
    pub reactions: Reactions,
    /// What holds it in the plane of the strings in the case that counts in which the joints give most.
    pub holds: Reactions,
    /// The neck.
    pub neck: NeckBearing,
    /// The pillar.
    pub pillar: PillarBearing,
    /// Neck and soundbox: the end of the neck pressed along its grain, sliding on its whole section.
    pub shoulder: JointBearing,
    /// Neck and pillar: the neck pressed across its grain on the face of the pillar.
    pub head: JointBearing,
    /// Pillar and base; without any end where nothing is known that holds it.
    pub foot: JointBearing,
    /// The soundbox, where its sizes are given.
    pub soundbox: Option<BoxBearing>,
    /// What the frame bears if no joint gives: with a soundbox that does not give, and with one of its sizes or a usual
    /// one.
    pub stiff: [Stiff; 2],
    /// What it bears if the joints give twice as much as their sizes say, where these say it.
    pub sprung: Option<Stiff>,
}

/// What a design bears.
#[derive(Clone, Debug, PartialEq)]
pub struct Bearing {
    /// Sum of the pulls of the strings that count.
    pub pull: Force,
    /// Sum of their lifts on the board.
    pub lift: Force,
    /// Sum of their pulls along the board.
    pub along: Force,
    /// How many strings are left out, as pull or place is unknown.
    pub left_out: usize,
    /// Neck, pillar and joints.
    pub frame: Result<FrameBearing, BearingError>,
    /// The board at each string, in the harp's order.
    pub board: Vec<Known<BoardCut>>,
    /// Whether the sizes of the parts are those of this harp: [`Build::is_given`].
    pub is_given: bool,
    /// Whether they are a proposal: [`Build::is_proposed`].
    pub is_proposed: bool,
}

impl Bearing {
    /// The string at which the board is loaded most, by its place in the harp; where no limit is known, by the stress
    /// with soft edges.
    pub fn board_worst(&self) -> Option<(usize, &BoardCut)> {
        let known = self.board.iter().enumerate();
        let mut known = known.filter_map(|(place, cut)| Some((place, cut.as_ref().ok()?)));
        let size =
            |cut: &BoardCut| cut.used().map_or_else(|| cut.soft.stress.to_pa(), |used| used.1);
        let first = known.next()?;
        Some(known.fold(first, |most, next| if size(next.1) > size(most.1) { next } else { most }))
    }
}

/// What a harp that is laid out bears with all its strings at pitch.
///
/// The frame is worked out at both ends of what its joints may be: with a pillar that only pushes and a neck that the
/// shoulder alone holds against twist, as in [`Neck::loads`](super::structure::frame::Neck::loads), and as a frame in
/// space whose joints do not give. The truth lies between, the nearer to the second the firmer the joints are.
///
/// # Source
///
/// Statics, beams in space, and the standards named beside the limits; worked out.
pub fn bear(
    band: &Band,
    loads: &Loads,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
) -> Bearing {
    bear_again(&mut Kept::default(), band, loads, analysis, geometry, build)
}

fn bear_again(
    kept: &mut Kept,
    band: &Band,
    loads: &Loads,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
) -> Bearing {
    let (pulls, frame) = bear_frame(band, analysis, geometry, build);
    let size = |pull: &Pull| pull.x.to_n().hypot(pull.y.to_n());
    let soundbox = frame.as_ref().ok().and_then(|frame| frame.soundbox.as_ref());
    let of_board = (&build.board, build.soundbox.as_ref());
    let board = board::cuts(&mut kept.board, band, loads, of_board, (geometry, analysis), soundbox);
    Bearing {
        pull: Force::from_n(pulls.iter().map(size).sum()),
        lift: loads.lift,
        along: loads.along,
        left_out: loads.left_out,
        frame,
        board,
        is_given: build.is_given,
        is_proposed: build.is_proposed,
    }
}

/// What the board alone bears at each string, in the harp's order, without the push of the soundbox along it.
pub fn bear_board(
    band: &Band,
    harp: &Harp,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
) -> Vec<Known<BoardCut>> {
    let of_board = (&build.board, build.soundbox.as_ref());
    let loads = loads(band, harp, analysis, geometry);
    board::cuts(&mut BoardKept::default(), band, &loads, of_board, (geometry, analysis), None)
}

/// The pulls on the neck, and what neck, pillar and joints bear of them.
pub fn bear_frame(
    band: &Band,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
) -> (Vec<Pull>, Result<FrameBearing, BearingError>) {
    let pulls: Vec<Pull> = pulls(band, analysis, geometry).into_iter().flatten().collect();
    let prepared = neck::Prepared::new(band, build);
    let frame = prepared.and_then(|prepared| frame(&prepared, &pulls, build));
    (pulls, frame)
}

/// What the strings of a harp that is laid out do, and what its frame bears of them.
#[derive(Clone, Debug, PartialEq)]
pub struct Borne {
    /// What the strings do.
    pub loads: Loads,
    /// What the frame bears.
    pub bearing: Bearing,
}

/// [`loads`] and [`bear`] in one.
pub fn borne(
    band: &Band,
    harp: &Harp,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
) -> Borne {
    borne_again(&mut Kept::default(), band, harp, analysis, geometry, build)
}

/// What was worked out of a harp and need not be worked out again for the next one where that has the same board, as
/// while a pin is pulled.
#[derive(Default)]
pub struct Kept {
    board: BoardKept,
}

/// [`borne`] with what is kept of the harp before, which changes no figure, only how long it takes.
pub fn borne_again(
    kept: &mut Kept,
    band: &Band,
    harp: &Harp,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
) -> Borne {
    let loads = loads(band, harp, analysis, geometry);
    let bearing = bear_again(kept, band, &loads, analysis, geometry, build);
    Borne { loads, bearing }
}

fn frame(
    prepared: &neck::Prepared,
    pulls: &[Pull],
    build: &Build,
) -> Result<FrameBearing, BearingError> {
    let neck::Solved { neck, reactions, stiff, sprung, soundbox } = prepared.bear(pulls, build)?;
    let supports = prepared.supports();
    let length = between(supports.pillar_foot, supports.pillar_top);
    let push = reactions.pillar;
    // Of a soundbox whose sizes are known there is no other end.
    let ends = &stiff[usize::from(build.soundbox.is_some())..];
    let joint = |at: At, place: Point| JointBearing {
        at: place,
        judged: prepared.joints().judged(at, &neck, (ends, sprung.as_ref()), push, build),
    };
    let shoulder = joint(At::Shoulder, supports.shoulder);
    let head = joint(At::Head, supports.pillar_top);
    let foot = joint(At::Foot, supports.pillar_foot);
    let softest = match &sprung {
        Some(sprung) => Pushed::by(sprung),
        None => Pushed { push, ends: None },
    };
    let cases = std::iter::once(softest).chain(ends.iter().map(Pushed::by));
    let pillar = PillarBearing::new(length, cases, &build.pillar);
    let all = resultant(pulls);
    let holds = match &sprung {
        Some(sprung) => sprung.holds(all, (supports.shoulder, supports.pillar_top)),
        None => reactions,
    };
    Ok(FrameBearing {
        all,
        reactions,
        holds,
        neck,
        pillar,
        shoulder,
        head,
        foot,
        soundbox,
        stiff,
        sprung,
    })
}

fn between(from: Point, to: Point) -> Length {
    let (x, y) = (to.x.to_m() - from.x.to_m(), to.y.to_m() - from.y.to_m());
    Length::from_m(x.hypot(y))
}
