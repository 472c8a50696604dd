//! The neck of a design: its middle line with its sections and curves, and how far each cut is used up.

use super::gives::Matrix;
use super::joints::Joints;
use super::space::{Base, Frames, Stiff, gives, stiff};
use super::{BearingError, BoxBearing, Build};
use crate::engine::geometry::Band;
use crate::engine::order;
use crate::engine::structure::frame::{
    AxisPoint, FrameError, HeldAgainstTwist, Neck, Point, Pull, Reactions, Station, Supports,
    greatest_twist_rad,
};
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::verdict::{Curve, Verdict, neck};
use crate::engine::structure::wood::Allowable;
use crate::engine::units::{Length, Stress};

/// Curves that are wider than this many times the depth count as straight: what they add is below a hundredth.
const STRAIGHT_DEPTHS: f64 = 50.0;
/// A curve is not taken tighter than this many times the depth. Beyond, the theory of curved bars ends, and the bend is
/// more of a corner.
const TIGHTEST_DEPTHS: f64 = 0.75;

/// What a neck is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct NeckParts {
    /// What it may bear for good.
    pub allowable: Allowable,
    /// Shear modulus of a bar along the grain that is twisted, where it is known.
    pub torsion_modulus: Option<Stress>,
    /// Through the neck.
    pub thickness: Length,
    /// Measured sections by the share of the way from shoulder to pillar, thickness and depth. Where there are none,
    /// the depth is that of the drawing.
    pub sections: Vec<(f64, Length, Length)>,
}

/// A cut through the neck and how far it is used up.
#[derive(Clone, Debug, PartialEq)]
pub struct Cut {
    /// The forces there.
    pub station: Station,
    /// The curve of the middle line there; `None` where it is as good as straight.
    pub curve: Option<Curve>,
    /// How far it is used up.
    pub verdict: Verdict,
}

/// The neck under the pull of strings.
#[derive(Clone, Debug, PartialEq)]
pub struct NeckBearing {
    /// If the pillar only pushes, and the shoulder turns freely in the plane of the strings but holds the neck against
    /// twist: in order from the shoulder, before and after each string.
    pub cuts: Vec<Cut>,
    /// The same cuts if no joint gives, with a usual soundbox.
    pub held: Vec<Cut>,
    /// The same cuts if neither joints nor soundbox give.
    pub solid: Vec<Cut>,
    /// The same cuts if the joints give as their sizes say; none where these do not say it.
    pub sprung: Vec<Cut>,
    /// Length of the middle line.
    pub length: Length,
    /// The greatest twist against the shoulder if no joint gives, and if the joints give as their sizes say, or if the
    /// pillar only pushes; `None` where no modulus is known.
    pub twist_rad: Option<(f64, f64)>,
    /// Those that count, with the place of the cut that is used up farthest.
    counts: Vec<(Case, Option<usize>)>,
}

/// What joints and soundbox do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Case {
    /// The pillar only pushes, and the shoulder turns freely. Counts where the stiffness of joints is not known.
    PillarPushes,
    /// The joints give twice as much as their sizes say.
    JointsGive,
    /// No joint gives.
    NoJointGives,
    /// Neither joints nor soundbox give. Counts where the sizes of the soundbox are not known.
    NothingGives,
}

impl NeckBearing {
    /// The cuts of a case.
    pub fn of(&self, case: Case) -> &[Cut] {
        match case {
            Case::PillarPushes => &self.cuts,
            Case::JointsGive => &self.sprung,
            Case::NoJointGives => &self.held,
            Case::NothingGives => &self.solid,
        }
    }

    /// The cases that count, with the cut of each that is used up farthest; `None` where no limit is known.
    pub fn worst_cuts(&self) -> impl Iterator<Item = (Case, Option<&Cut>)> {
        self.counts.iter().map(|(case, place)| {
            let cut = place.and_then(|place| self.of(*case).get(place));
            (*case, cut)
        })
    }

    /// Which of the cases that count use the neck up least and most, and how far. `None` where no limit is known.
    pub fn range(&self) -> Option<[(Case, f64); 2]> {
        let mut range: Option<[(Case, f64); 2]> = None;
        for (case, cut) in self.worst_cuts() {
            let used = (case, used_ratio(cut?)?);
            let [mut least, mut most] = range.unwrap_or([used; 2]);
            if used.1 < least.1 {
                least = used;
            }
            if used.1 > most.1 {
                most = used;
            }
            range = Some([least, most]);
        }
        range
    }

    /// The cut that is used up farthest, whatever the joints do; `None` where no limit is known.
    pub fn worst(&self) -> Option<&Cut> {
        let most = self.range()?[1].0;
        self.worst_cuts().find_map(|(case, cut)| cut.filter(|_| case == most))
    }

    /// The greatest of a figure by its size, with its sign, if the pillar only pushes.
    pub fn greatest(&self, of: impl Fn(&Station) -> f64) -> f64 {
        let bigger = |most: f64, next: f64| if next.abs() > most.abs() { next } else { most };
        self.cuts.iter().map(|cut| of(&cut.station)).fold(0.0, bigger)
    }
}

/// How far a cut is used up, where a limit is known.
fn used_ratio(cut: &Cut) -> Option<f64> {
    cut.verdict.governing()?.ratio
}

fn worst(cuts: &[Cut]) -> Option<usize> {
    let mut worst: Option<(usize, f64)> = None;
    for (place, cut) in cuts.iter().enumerate() {
        let Some(ratio) = used_ratio(cut) else { continue };
        if worst.is_none_or(|(_, most)| ratio > most) {
            worst = Some((place, ratio));
        }
    }
    worst.map(|(place, _)| place)
}

/// A neck that is ready to be loaded.
pub(super) struct Prepared {
    alone: Neck,
    supports: Supports,
    base: Base,
    joints: Joints,
    /// Along the middle line, and the curvature there in 1/m, to the left above 0.
    bends: Vec<(f64, f64)>,
}

/// What the neck bears on pins, and what the whole frame bears whose joints do not give, or as their sizes say.
pub(super) struct Solved {
    pub(super) neck: NeckBearing,
    pub(super) reactions: Reactions,
    pub(super) stiff: [Stiff; 2],
    pub(super) sprung: Option<Stiff>,
    pub(super) soundbox: Option<BoxBearing>,
}

impl Prepared {
    pub(super) fn new(band: &Band, build: &Build) -> Result<Self, BearingError> {
        let (shape, supports) =
            band.neck.as_ref().zip(band.supports()).ok_or(BearingError::NoNeck)?;
        let line = MiddleLine::new(shape.centre.iter().map(|station| (station.at, station.depth)));
        let axis = line.axis(&build.neck)?;
        let bends = axis
            .iter()
            .map(|(s_m, point)| (*s_m, line.curvature(*s_m, 0.5 * point.section.depth().to_m())));
        let bends = bends.collect();
        let axis: Vec<AxisPoint> = axis.into_iter().map(|(_, point)| point).collect();
        let ends = axis.first().zip(axis.last()).ok_or(BearingError::NoNeck)?;
        let joints = Joints::new(build, (ends.0.section, ends.1.section));
        let alone = Neck::new(axis, supports, HeldAgainstTwist::Shoulder)?;
        Ok(Self { alone, supports, base: Base::new(band, build), joints, bends })
    }

    pub(super) const fn supports(&self) -> Supports {
        self.supports
    }

    pub(super) const fn joints(&self) -> &Joints {
        &self.joints
    }

    pub(super) fn bear(&self, pulls: &[Pull], build: &Build) -> Result<Solved, BearingError> {
        let parts = &build.neck;
        let alone = self.alone.loads(pulls)?;
        let (feet, foot) = (self.alone.feet(pulls), self.supports.pillar_foot);
        let springs = self.joints.springs();
        let Frames { stiff, sprung, board_left } =
            stiff(&self.base, &alone, &feet, (foot, springs), build)
                .ok_or(FrameError::NotANumber { what: "frame" })?;
        let cuts = self.cuts(&alone.stations, parts)?;
        let solid = self.cuts(&stiff[0].neck, parts)?;
        let held = self.cuts(&stiff[1].neck, parts)?;
        let given = sprung.as_ref().map_or(&[][..], |sprung| &sprung.neck);
        let sprung_cuts = self.cuts(given, parts)?;
        let twist = |stations: &[Station]| greatest_twist_rad(stations, parts.torsion_modulus?);
        let length_m = cuts.last().map_or(0.0, |cut| cut.station.s_m);
        let free = sprung.as_ref().map_or(&*alone.stations, |sprung| &*sprung.neck);
        let mut counts = vec![if sprung.is_some() {
            (Case::JointsGive, worst(&sprung_cuts))
        } else {
            (Case::PillarPushes, worst(&cuts))
        }];
        counts.push((Case::NoJointGives, worst(&held)));
        if build.soundbox.is_none() {
            counts.push((Case::NothingGives, worst(&solid)));
        }
        let soundbox = build.soundbox.is_some().then(|| {
            let cases: Vec<&Stiff> = std::iter::once(&stiff[1]).chain(&sprung).collect();
            BoxBearing::new(&cases, &self.base.sections(), board_left)
        });
        let neck = NeckBearing {
            length: Length::from_m(length_m),
            twist_rad: twist(&stiff[1].neck).zip(twist(free)),
            counts,
            cuts,
            held,
            solid,
            sprung: sprung_cuts,
        };
        Ok(Solved { neck, reactions: alone.reactions, stiff, sprung, soundbox })
    }

    /// How much nearer the ends of each string come for each newton on another: [`gives`].
    pub(super) fn gives(&self, pulls: &[Pull], build: &Build) -> Option<Vec<(Case, Matrix)>> {
        let alone = self.alone.loads(pulls).ok()?;
        let (feet, foot) = (self.alone.feet(pulls), self.supports.pillar_foot);
        let springs = self.joints.springs();
        gives(&self.base, &alone.stations, &feet, (foot, springs), build)
    }

    fn cuts(&self, stations: &[Station], parts: &NeckParts) -> Result<Vec<Cut>, BearingError> {
        let cut = |station: &Station| {
            let curve = self.curve(station.s_m, station.section);
            let verdict = neck(station, &parts.allowable, curve)?;
            Ok(Cut { station: *station, curve, verdict })
        };
        stations.iter().map(cut).collect()
    }

    /// The curve at a place; `None` where it is as good as straight.
    fn curve(&self, s_m: f64, section: Rectangle) -> Option<Curve> {
        let next = self.bends.partition_point(|(at, _)| *at <= s_m).min(self.bends.len() - 1);
        let (from, to) = (self.bends[next.saturating_sub(1)], self.bends[next]);
        let share =
            if to.0 > from.0 { ((s_m - from.0) / (to.0 - from.0)).clamp(0.0, 1.0) } else { 1.0 };
        let bend = from.1 + share * (to.1 - from.1);
        let depth_m = section.depth().to_m();
        let radius_m = (1.0 / bend.abs()).max(TIGHTEST_DEPTHS * depth_m);
        let mean_radius = Length::from_m(radius_m);
        (radius_m < STRAIGHT_DEPTHS * depth_m)
            .then_some(Curve { mean_radius, to_the_left: bend > 0.0 })
    }
}

/// The middle line with its drawn depth.
struct MiddleLine {
    /// How far along, where, and how deep in metres.
    places: Vec<(f64, (f64, f64), f64)>,
}

impl MiddleLine {
    fn new(stations: impl Iterator<Item = (Point, Length)>) -> Self {
        let mut places: Vec<(f64, (f64, f64), f64)> = Vec::new();
        for (at, depth) in stations {
            let at = (at.x.to_m(), at.y.to_m());
            let s_m = match places.last() {
                Some((s_m, before, _)) => s_m + (at.0 - before.0).hypot(at.1 - before.1),
                None => 0.0,
            };
            // Places that repeat the one before are left out, as the neck does.
            if places.last().is_none_or(|(last, _, _)| s_m > *last) {
                places.push((s_m, at, depth.to_m()));
            }
        }
        Self { places }
    }

    fn end_m(&self) -> f64 {
        self.places.last().map_or(0.0, |(s_m, _, _)| *s_m)
    }

    /// The place and the drawn depth so far along.
    fn at(&self, s_m: f64) -> ((f64, f64), f64) {
        let next = self.places.partition_point(|(at, _, _)| *at <= s_m);
        let last = self.places.len().saturating_sub(1);
        let (Some(from), Some(to)) =
            (self.places.get(next.saturating_sub(1)), self.places.get(next.min(last)))
        else {
            return ((0.0, 0.0), 0.0);
        };
        let share =
            if to.0 > from.0 { ((s_m - from.0) / (to.0 - from.0)).clamp(0.0, 1.0) } else { 0.0 };
        let between = |from: f64, to: f64| from + share * (to - from);
        ((between(from.1.0, to.1.0), between(from.1.1, to.1.1)), between(from.2, to.2))
    }

    /// The points of the neck with how far along they are: those of the drawing, and those of the sections.
    fn axis(&self, parts: &NeckParts) -> Result<Vec<(f64, AxisPoint)>, BearingError> {
        let mut sections = parts.sections.clone();
        order::sort(&mut sections, |one, next| one.0 > next.0);
        let end_m = self.end_m();
        let mut along: Vec<f64> = self.places.iter().map(|(s_m, _, _)| *s_m).collect();
        along.extend(sections.iter().map(|(share, _, _)| (share * end_m).clamp(0.0, end_m)));
        order::sort(&mut along, |one, next| one > next);
        along.dedup_by(|next, last| *next - *last <= 1e-9);
        let point = |s_m: f64| {
            let (at, drawn_m) = self.at(s_m);
            let (thickness, depth) = if sections.is_empty() {
                (parts.thickness, Length::from_m(drawn_m))
            } else {
                measured(&sections, s_m / end_m)
            };
            let at = Point { x: Length::from_m(at.0), y: Length::from_m(at.1) };
            Ok((s_m, AxisPoint { at, section: Rectangle::new(thickness, depth)? }))
        };
        along.into_iter().map(point).collect()
    }

    /// How much the line bends about a place, in 1/m: of the circle through it and two places half of the depth to
    /// either side, as a bend that is short beside the depth is none for the wood.
    fn curvature(&self, s_m: f64, reach_m: f64) -> f64 {
        let reach_m = reach_m.min(0.5 * self.end_m());
        let middle = s_m.clamp(reach_m, self.end_m() - reach_m);
        let [a, b, c] = [middle - reach_m, middle, middle + reach_m].map(|s_m| self.at(s_m).0);
        let (one, two, whole) =
            ((b.0 - a.0, b.1 - a.1), (c.0 - b.0, c.1 - b.1), (c.0 - a.0, c.1 - a.1));
        let sides = one.0.hypot(one.1) * two.0.hypot(two.1) * whole.0.hypot(whole.1);
        let bend = 2.0 * (one.0 * two.1 - one.1 * two.0) / sides;
        if bend.is_finite() { bend } else { 0.0 }
    }
}

/// Thickness and depth at a share of the way, with even steps between sections that rise.
fn measured(sections: &[(f64, Length, Length)], share: f64) -> (Length, Length) {
    let next = sections.partition_point(|section| section.0 <= share);
    let last = sections.len() - 1;
    let (from, to) = (sections[next.saturating_sub(1)], sections[next.min(last)]);
    let part =
        if to.0 > from.0 { ((share - from.0) / (to.0 - from.0)).clamp(0.0, 1.0) } else { 0.0 };
    let between =
        |from: Length, to: Length| Length::from_m(from.to_m() + part * (to.to_m() - from.to_m()));
    (between(from.1, to.1), between(from.2, to.2))
}
