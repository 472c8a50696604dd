//! The neck of a design: its middle line with its sections and curves, and how far each cut is loaded.

mod cases;

use kurbo::Vec2;

use self::cases::worst;
pub use self::cases::{Case, Cut, NeckBearing};
use super::gives::Matrix;
use super::joints::Joints;
use super::line::MiddleLine;
use super::space::{Base, Frames, Stiff, gives, nearer, stiff, stiffness};
use super::{BearingError, BoxBearing, Build};
use crate::engine::geometry::Band;
use crate::engine::structure::frame::{
    AxisPoint, FrameError, HeldAgainstTwist, Neck, Point, Pull, Reactions, Station, Supports,
    greatest_twist_rad,
};
use crate::engine::structure::holes::{Factors, Hole, Rim, left};
use crate::engine::structure::laminate::Rolling;
use crate::engine::structure::plated::{Held, Plated, Plates, Where};
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::space::Stiffness;
use crate::engine::structure::verdict::{Curve, Use, in_the_curve, metal, neck};
use crate::engine::structure::wood::Allowable;
use crate::engine::units::{Force, Length, Moment, Stress};

/// Curves that are wider than this many times the depth count as straight: what they add is below a hundredth.
const STRAIGHT_DEPTHS: f64 = 50.0;
/// A curve is not taken tighter than this many times the depth. Beyond, the theory of curved bars ends, and the bend is
/// more of a corner.
const TIGHTEST_DEPTHS: f64 = 0.75;
/// A neck whose line turns from its planks by less is taken as one whose grain follows it: 5°. A choice of this program.
const STRAIGHT_RAD: f64 = std::f64::consts::PI / 36.0;
/// A pillar that hardly stands on the base at all is judged as standing on this share of its width. A choice of this program.
const LEAST_STANDING: f64 = 0.1;

/// What a neck is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct NeckParts {
    /// What it may bear for good.
    pub allowable: Allowable,
    /// Shear modulus of a bar along the grain that is twisted, where it is known.
    pub torsion_modulus: Option<Stress>,
    /// Through the neck.
    pub thickness: Length,
    /// How much less or more it gives bent sideways than on edge, where it is glued up of layers.
    pub layered: Layered,
    /// Its crossed layers, where it has any, as they roll.
    pub rolling: Option<Rolling>,
    /// What a stress along it does at the rim of a hole, where the moduli are known.
    pub rim: Option<Rim>,
    /// Metal beside it.
    pub plates: Option<NeckPlates>,
    /// How much its wood gives in addition over the years, over its first movement.
    pub creep_ratio: f64,
    /// Whether it is of straight planks, whose grain runs out where its line turns from them.
    pub of_planks: bool,
    /// Holes for pins.
    pub drilled: Drilled,
    /// Measured sections by the share of the way from shoulder to pillar, thickness and depth. Where there are none,
    /// the depth is that of the drawing.
    pub sections: Vec<(f64, Length, Length)>,
}

/// What layers make of bending sideways, over their faces, against bending on edge: 1 for solid wood.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layered {
    /// Modulus.
    pub modulus_ratio: f64,
    /// Stress, as it counts against the limit of bending.
    pub stress_ratio: f64,
}

impl Default for Layered {
    /// Of one piece.
    fn default() -> Self {
        Self { modulus_ratio: 1.0, stress_ratio: 1.0 }
    }
}

impl NeckParts {
    /// The neck with its plates so far along its length, of wood that has its first stiffness or has crept; `None` where
    /// there are none.
    fn plated(
        &self,
        (s_m, length_m): (f64, f64),
        section: Rectangle,
        crept: bool,
    ) -> Option<Plated> {
        let metal = self.plates.as_ref()?;
        let modulus = self.allowable.modulus?.to_pa();
        let share = s_m / length_m;
        if !(metal.from <= share && share <= metal.to) {
            return None;
        }
        let left = if crept { 1.0 / (1.0 + self.creep_ratio) } else { 1.0 };
        let of = |ratio: f64| Stress::from_pa(ratio * left * modulus);
        let length = Length::from_m((metal.to - metal.from) * length_m);
        Some(metal.plates.on(section, length, (of(1.0), of(self.layered.modulus_ratio))))
    }

    /// Where along the neck its wood rolls, its metal is bent and held: what is looked at besides wood of one piece.
    fn beside_wood(
        &self,
        stations: &[Station],
        (place, length_m): (usize, f64),
        curve: Option<Curve>,
        more: f64,
    ) -> Result<Vec<Use>, BearingError> {
        let mut uses = Vec::new();
        let Some(station) = stations.get(place) else { return Ok(uses) };
        if let Some(rolling) = &self.rolling {
            let forces = (Force::from_n(station.aside_n), Moment::from_n_m(station.torque_n_m));
            uses.extend(rolling.used(station.section, forces, more));
        }
        let plated = |at: &Station| self.plated((at.s_m, length_m), at.section, true);
        let (Some(crept), Some(of)) = (plated(station), &self.plates) else { return Ok(uses) };
        uses.push(metal(station, &crept, curve)?);
        // Before and after a string, and the neighbours that have no plates.
        let beside = [place.checked_sub(1), Some(place + 1)].map(|at| stations.get(at?));
        let near = |other: &Station| (other.s_m - station.s_m).abs() < 1e-9;
        let twin = beside.into_iter().flatten().find(|other| near(other)).unwrap_or(station);
        let bare: Vec<&Station> =
            beside.into_iter().flatten().filter(|other| plated(other).is_none()).collect();
        let ends = !bare.is_empty() || beside.iter().any(Option::is_none);
        let modulus = self.allowable.modulus.unwrap_or_default();
        let at = Where {
            length: Length::from_m((of.to - of.from) * length_m),
            ends,
            step: (
                Force::from_n(station.axial_n - twin.axial_n),
                Force::from_n(station.shear_n - twin.shear_n),
            ),
            curved: in_the_curve(station, curve)?,
            shear: self.torsion_modulus.unwrap_or(Stress::from_pa(modulus.to_pa() / 16.0)),
        };
        let cuts = std::iter::once(station).chain(bare);
        let held = cuts.map(|cut| crept.held(&of.held, cut, &at));
        uses.extend(held.reduce(|most, next| if next.stress > most.stress { next } else { most }));
        Ok(uses)
    }

    /// The most that gathers at the rims of holes through so many cuts: along the grain and across it.
    fn rims(&self, cuts: &[Cut], holes: &[Hole]) -> Option<(Stress, Stress)> {
        let rim = self.rim?;
        let mut most = 0.0_f64;
        for cut in cuts {
            let at = &cut.station;
            let (b, h) = (at.section.breadth().to_m(), at.section.depth().to_m());
            let even = at.axial_n.abs() / (b * h) + 6.0 * at.sideways_n_m.abs() / (h * b * b);
            let near = |hole: &&Hole| {
                (hole.along.to_m() - at.s_m).abs()
                    <= 0.5 * hole.pitch.unwrap_or(hole.diameter).to_m()
            };
            for hole in holes.iter().filter(near) {
                let off = hole.off.to_m().abs().min(0.5 * h);
                most = most.max(even + at.moment_n_m.abs() * off / at.section.inertia_m4());
            }
        }
        let of = |times: f64| Stress::from_pa(times * most);
        (most > 0.0).then(|| (of(rim.along), of(rim.across)))
    }

    /// How stiff the neck is at a place.
    pub(super) fn stiffness(&self, along: (f64, f64), section: Rectangle) -> Stiffness {
        let mut wood = stiffness(section, self.allowable.modulus, self.torsion_modulus);
        wood.bending[1] *= self.layered.modulus_ratio;
        let plated = self.plated(along, section, false);
        plated.map_or(wood, |plated| plated.stiffness(wood))
    }
}

/// Metal beside the neck, from where to where, by the share of the way from shoulder to pillar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NeckPlates {
    /// The plates.
    pub plates: Plates,
    /// What holds them, and what that bears.
    pub held: Held,
    /// Where they begin.
    pub from: f64,
    /// Where they end.
    pub to: f64,
}

/// Holes across the neck: how wide, and how deep where they do not go through. None for what is not drilled.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Drilled {
    /// For the tuning pins.
    pub tuning: Option<(Length, Option<Length>)>,
    /// For the bridge pins.
    pub bridge: Option<(Length, Option<Length>)>,
    /// For the screws of levers and the axles of discs.
    pub mechanism: Option<Length>,
}

impl Drilled {
    /// Whether anything is.
    pub const fn any(&self) -> bool {
        self.tuning.is_some() || self.bridge.is_some() || self.mechanism.is_some()
    }
}

/// A neck that is ready to be loaded.
pub(super) struct Prepared {
    alone: Neck,
    supports: Supports,
    base: Base,
    joints: Joints,
    /// Along the middle line, and the curvature there in 1/m, to the left above 0.
    bends: Vec<(f64, f64)>,
    /// How far the line turns from straight planks between its ends, in radians; 0 where it is of none.
    turns_rad: f64,
    holes: Vec<Hole>,
}

/// What the neck bears on pins, and what the whole frame bears whose joints do not give, or as their sizes say.
pub(super) struct Solved {
    pub(super) neck: NeckBearing,
    pub(super) reactions: Reactions,
    pub(super) stiff: [Stiff; 2],
    pub(super) sprung: Option<Stiff>,
    pub(super) soundbox: Option<BoxBearing>,
}

/// How wide the pillar stands on the base: it is cut back where it would come to lie over the lower end of the board.
fn stands(band: &Band, build: &Build) -> Length {
    let point = |at: Point| Vec2::new(at.x.to_m(), at.y.to_m());
    let wide = build.pillar.width;
    let (foot, low) = (point(band.pillar.0), point(band.board.0));
    let along = (point(band.board.1) - low).normalize();
    let Ok(top) = band.pillar.1 else { return wide };
    let axis = (point(top) - foot).normalize();
    // The outside of the board lies below its line where the strip is higher than a string begins.
    let begins = band
        .holes
        .first()
        .map_or(0.0, |hole| (point(hole.start) - point(hole.board)).cross(along).abs());
    let below = (build.board.rib.outside.1.to_m() - begins).max(0.0);
    let corner = low + Vec2::new(below / along.y, 0.0);
    let to_board = (corner - foot).cross(axis);
    let stands = 0.5 * wide.to_m() + to_board;
    if !stands.is_finite() {
        return wide;
    }
    Length::from_m(stands.clamp(LEAST_STANDING * wide.to_m(), wide.to_m()))
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
        let turns_rad = if build.neck.of_planks { line.turns_rad() } else { 0.0 };
        let holes = line.holes(band, &axis, &build.neck.drilled);
        let axis: Vec<AxisPoint> = axis.into_iter().map(|(_, point)| point).collect();
        let ends = axis.first().zip(axis.last()).ok_or(BearingError::NoNeck)?;
        let joints = Joints::new(build, (ends.0.section, ends.1.section), stands(band, build));
        let alone = Neck::new(axis, supports, HeldAgainstTwist::Shoulder)?;
        Ok(Self { alone, supports, base: Base::new(band, build), joints, bends, turns_rad, holes })
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
                .ok_or(FrameError::NotANumber { what: crate::words::structure::IN_FRAME })?;
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
        let mut neck = NeckBearing {
            length: Length::from_m(length_m),
            twist_rad: twist(&stiff[1].neck).zip(twist(free)),
            runs_out_rad: Some(self.turns_rad).filter(|turns| *turns > STRAIGHT_RAD),
            rims: None,
            counts,
            cuts,
            held,
            solid,
            sprung: sprung_cuts,
        };
        let rims = neck.counts.iter();
        let rims = rims.filter_map(|(case, _)| parts.rims(neck.of(*case), &self.holes));
        neck.rims = rims.reduce(|most, next| if next > most { next } else { most });
        Ok(Solved { neck, reactions: alone.reactions, stiff, sprung, soundbox })
    }

    /// How much nearer the ends of each string come for each newton on another: [`gives`].
    pub(super) fn gives(&self, pulls: &[Pull], build: &Build) -> Option<Vec<(Case, Matrix)>> {
        let alone = self.alone.loads(pulls).ok()?;
        let (feet, foot) = (self.alone.feet(pulls), self.supports.pillar_foot);
        let springs = self.joints.springs();
        gives(&self.base, &alone.stations, &feet, (foot, springs), build)
    }

    /// How much nearer they come under the tensions of all: [`nearer`].
    pub(super) fn nearer(
        &self,
        (pulls, tensions_n): (&[Pull], &[f64]),
        build: &Build,
    ) -> Option<Vec<Vec<f64>>> {
        let alone = self.alone.loads(pulls).ok()?;
        let (feet, foot) = (self.alone.feet(pulls), self.supports.pillar_foot);
        let joined = (foot, self.joints.springs());
        nearer(&self.base, &alone.stations, (&feet, tensions_n), joined, build)
    }

    fn cuts(&self, stations: &[Station], parts: &NeckParts) -> Result<Vec<Cut>, BearingError> {
        let cut = |(place, station): (usize, &Station)| {
            let curve = self.curve(station.s_m, station.section);
            let mut factors = left(station.section, &self.holes, Length::from_m(station.s_m));
            let along = (station.s_m, self.length_m());
            let wood = parts.plated(along, station.section, false);
            factors = factors.and(wood.map_or_else(Factors::default, |of| of.wood()));
            factors.sideways *= parts.layered.stress_ratio;
            let mut verdict = neck(station, &parts.allowable, curve, &factors)?;
            let along = (place, self.length_m());
            verdict.uses.extend(parts.beside_wood(stations, along, curve, factors.shear)?);
            Ok(Cut { station: *station, curve, verdict })
        };
        stations.iter().enumerate().map(cut).collect()
    }

    fn length_m(&self) -> f64 {
        self.bends.last().map_or(1.0, |(s_m, _)| *s_m)
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
