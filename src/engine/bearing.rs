//! What the frame of a design bears: the strings' pull on neck, pillar, joints and board, how far each part is used
//! up, and the same while only part of the strings is up.
//!
//! It puts the formulas of [`structure`](super::structure) together for a harp that is laid out. Nothing fails: what
//! cannot be said has its reason, and a part that bears too much has a use above 1. The estimate is of sound, dry wood
//! whose grain follows the part, without knots or holes; it compares designs and does not prove that a frame is safe.

mod board;
mod neck;
mod stages;

use thiserror::Error;

pub use self::board::{BoardCut, BoardParts, BoardState};
pub use self::neck::{Cut, NeckBearing, NeckParts};
pub use self::stages::{Order, Stage, some_stages, stages};
use super::analysis::{Analysis, Harp, Known};
use super::geometry::{Band, Geometry, Loads, loads, pulls};
use super::structure::column::{Ends, Strut};
use super::structure::frame::{FrameError, Point, Pull, Reactions, Resultant, resultant};
use super::structure::section::{Rectangle, SectionError};
use super::structure::verdict::{Joint, Pillar, Use, Verdict, joint, pillar};
use super::structure::wood::Allowable;
use super::units::{Force, Length, Stress};

/// What the parts are made of. Any number may be given.
#[derive(Clone, Debug, PartialEq)]
pub struct Build {
    /// The neck.
    pub neck: NeckParts,
    /// The pillar.
    pub pillar: PillarParts,
    /// The soundboard.
    pub board: BoardParts,
}

/// What a pillar is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct PillarParts {
    /// What its wood may bear for good.
    pub allowable: Allowable,
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
    #[error("a neck needs three strings or more of known length (give the strings their lengths)")]
    NoNeck,
    /// A section that is none.
    #[error(transparent)]
    Section(#[from] SectionError),
    /// A frame that cannot stand, or bears nothing.
    #[error(transparent)]
    Frame(#[from] FrameError),
}

/// A joint of the frame.
#[derive(Clone, Debug, PartialEq)]
pub struct JointBearing {
    /// Where it is.
    pub at: Point,
    /// Square to the faces; below 0 they are pulled apart.
    pub push: Force,
    /// Along them.
    pub slide: Force,
    /// How far the wood beside it is used up; `None` where its measures are none.
    pub verdict: Option<Verdict>,
}

/// The pillar.
#[derive(Clone, Debug, PartialEq)]
pub struct PillarBearing {
    /// Push along it.
    pub push: Force,
    /// From foot to top.
    pub length: Length,
    /// Length over radius of gyration, in the plane of the strings and square to it.
    pub slenderness: Option<(f64, f64)>,
    /// The load at which a perfect pillar gives way, in the plane of the strings and square to it.
    pub gives_way: Option<(Force, Force)>,
    /// How far it is used up; `None` where no modulus is known.
    pub verdict: Option<Verdict>,
}

/// Neck, pillar and joints under the pull of strings.
#[derive(Clone, Debug, PartialEq)]
pub struct FrameBearing {
    /// All pulls on the neck as one.
    pub all: Resultant,
    /// What holds the neck.
    pub reactions: Reactions,
    /// The neck.
    pub neck: NeckBearing,
    /// The pillar.
    pub pillar: PillarBearing,
    /// Neck and soundbox: the end of the neck pressed along its grain, sliding on its whole section.
    pub shoulder: JointBearing,
    /// Neck and pillar: the neck pressed across its grain on the face of the pillar.
    pub head: JointBearing,
}

/// What a design bears.
#[derive(Clone, Debug, PartialEq)]
pub struct Bearing {
    /// Sum of the pulls of the strings that are reckoned with.
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
}

/// A part of the harp.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Part {
    /// The neck.
    Neck,
    /// The pillar.
    Pillar,
    /// The joint of neck and soundbox.
    Shoulder,
    /// The joint of neck and pillar.
    Head,
}

impl Part {
    /// All of them, in the order of a list.
    pub const ALL: [Self; 4] = [Self::Neck, Self::Pillar, Self::Shoulder, Self::Head];
}

impl FrameBearing {
    /// What is used up farthest in a part, where a limit is known; of the neck the worse of both ways to hold it.
    pub fn governing(&self, part: Part) -> Option<&Use> {
        match part {
            Part::Neck => self.neck.worst().and_then(|cut| cut.verdict.governing()),
            Part::Pillar => self.pillar.verdict.as_ref()?.governing(),
            Part::Shoulder => self.shoulder.verdict.as_ref()?.governing(),
            Part::Head => self.head.verdict.as_ref()?.governing(),
        }
    }

    /// How far a part is used up, least and most, where a limit is known: the neck with the pillar holding it against
    /// twist and with the shoulder alone; of the others both are the same.
    pub fn used(&self, part: Part) -> Option<(f64, f64)> {
        if part == Part::Neck {
            let [held, alone] = [self.neck.worst_held(), self.neck.worst_alone()]
                .map(|cut| cut.and_then(neck::used_ratio));
            let (held, alone) = (held?, alone?);
            return Some((held.min(alone), held.max(alone)));
        }
        let ratio = self.governing(part)?.ratio?;
        Some((ratio, ratio))
    }

    /// The part that is used up farthest at most, and how far, least and most.
    pub fn most_used(&self) -> Option<(Part, (f64, f64))> {
        let mut all = Part::ALL.into_iter().filter_map(|part| Some((part, self.used(part)?)));
        let first = all.next()?;
        Some(all.fold(first, |most, next| if next.1.1 > most.1.1 { next } else { most }))
    }
}

impl Bearing {
    /// The string at which the board is used up farthest, by its place in the harp, with hinged edges; where no limit
    /// is known, by the stress.
    pub fn board_worst(&self) -> Option<(usize, &BoardCut)> {
        let known = self.board.iter().enumerate();
        let mut known = known.filter_map(|(place, cut)| Some((place, cut.as_ref().ok()?)));
        let size =
            |cut: &BoardCut| cut.used().map_or_else(|| cut.hinged.stress.to_pa(), |used| used.1);
        let first = known.next()?;
        Some(known.fold(first, |most, next| if size(next.1) > size(most.1) { next } else { most }))
    }
}

/// What a harp that is laid out bears with all its strings at pitch.
///
/// The neck is held as in [`Neck::loads`](super::structure::frame::Neck::loads), once against twist by the shoulder
/// alone and once by both ends. The truth lies between, the nearer to the second the firmer the neck sits on a firm
/// pillar.
///
/// # Source
///
/// Statics, and the standards named beside the limits; worked out.
pub fn bear(
    band: &Band,
    loads: &Loads,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
) -> Bearing {
    let (pulls, frame) = bear_frame(band, analysis, geometry, build);
    let size = |pull: &Pull| pull.x.to_n().hypot(pull.y.to_n());
    Bearing {
        pull: Force::from_n(pulls.iter().map(size).sum()),
        lift: loads.lift,
        along: loads.along,
        left_out: loads.left_out,
        frame,
        board: board::cuts(band, loads, &build.board, geometry),
    }
}

/// The pulls on the neck, and what neck, pillar and joints bear of them.
pub fn bear_frame(
    band: &Band,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
) -> (Vec<Pull>, Result<FrameBearing, BearingError>) {
    let pulls: Vec<Pull> = pulls(band, analysis, geometry).into_iter().flatten().collect();
    let prepared = neck::Prepared::new(band, &build.neck);
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
    let loads = loads(band, harp, analysis, geometry);
    let bearing = bear(band, &loads, analysis, geometry, build);
    Borne { loads, bearing }
}

fn frame(
    prepared: &neck::Prepared,
    pulls: &[Pull],
    build: &Build,
) -> Result<FrameBearing, BearingError> {
    let neck = prepared.bear(pulls, &build.neck)?;
    let reactions = prepared.reactions(pulls)?;
    let supports = prepared.supports();
    let shoulder = JointBearing::shoulder(&neck, build, supports.shoulder);
    let head = JointBearing::head(&neck, build, supports.pillar_top);
    let length = between(supports.pillar_foot, supports.pillar_top);
    let pillar = PillarBearing::new(reactions.pillar, length, &build.pillar);
    Ok(FrameBearing { all: resultant(pulls), reactions, neck, pillar, shoulder, head })
}

fn between(from: Point, to: Point) -> Length {
    let (x, y) = (to.x.to_m() - from.x.to_m(), to.y.to_m() - from.y.to_m());
    Length::from_m(x.hypot(y))
}

impl PillarBearing {
    /// A pillar whose ends turn freely.
    fn new(push: Force, length: Length, parts: &PillarParts) -> Self {
        let sections = [(parts.depth, parts.width), (parts.width, parts.depth)];
        // The depth of the first section lies in the plane of the strings.
        let sections = sections.map(|(breadth, depth)| Rectangle::new(breadth, depth).ok());
        let strut = |section: Rectangle, modulus: Stress| {
            let edge = Length::from_m(0.5 * section.depth().to_m());
            let free = Length::from_m(Ends::Pinned.length_ratio() * length.to_m());
            Strut::new(section.area_m2(), section.inertia_m4(), edge, free, modulus).ok()
        };
        let both = |section: Option<Rectangle>| strut(section?, parts.allowable.least_modulus?);
        let struts = both(sections[0]).zip(both(sections[1]));
        let verdict = sections[0].and_then(|section| {
            let stands = Pillar { section, free_length: length, eccentricity: parts.beside };
            pillar(push, stands, &parts.allowable)
        });
        Self {
            push,
            length,
            slenderness: struts.map(|(in_plane, square)| {
                (in_plane.slenderness_ratio(), square.slenderness_ratio())
            }),
            gives_way: struts.map(|(in_plane, square)| (in_plane.euler(), square.euler())),
            verdict,
        }
    }
}

impl JointBearing {
    /// The end of the neck on the soundbox.
    fn shoulder(neck: &NeckBearing, build: &Build, at: Point) -> Self {
        let first = neck.cuts.first().map(|cut| cut.station);
        let (push_n, slide_n) = first.map_or((0.0, 0.0), |cut| (-cut.axial_n, cut.shear_n));
        let area = first.map_or(0.0, |cut| cut.section.area_m2());
        Self::new(at, (push_n, slide_n), area, false, &build.neck.allowable)
    }

    /// The neck on the pillar.
    fn head(neck: &NeckBearing, build: &Build, at: Point) -> Self {
        let last = neck.cuts.last().map(|cut| cut.station);
        let (push_n, slide_n) = last.map_or((0.0, 0.0), |cut| (cut.shear_n.abs(), cut.axial_n));
        let thick_m = last.map_or(0.0, |cut| cut.section.breadth().to_m());
        let area = build.pillar.width.to_m() * build.pillar.depth.to_m().min(thick_m);
        Self::new(at, (push_n, slide_n), area, true, &build.neck.allowable)
    }

    fn new(
        at: Point,
        (push_n, slide_n): (f64, f64),
        area_m2: f64,
        across_the_grain: bool,
        allowable: &Allowable,
    ) -> Self {
        let (push, slide) = (Force::from_n(push_n), Force::from_n(slide_n));
        let held = Joint { push, pressed_m2: area_m2, across_the_grain, slide, held_m2: area_m2 };
        Self { at, push, slide, verdict: joint(held, allowable) }
    }
}
