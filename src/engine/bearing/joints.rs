//! The joints of a design: by their sizes where these are given, else as faces of wood.

use super::{Build, Judged, NeckBearing, PillarParts, Stiff};
use crate::engine::structure::frame::Station;
use crate::engine::structure::joint::{Fasteners, Joint, JointWood, Plates};
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::space::{Cut, Six};
use crate::engine::structure::verdict::{Faces, Verdict, joint};
use crate::engine::units::{Force, Length};

/// What holds a joint; nothing of it where nobody said.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct JointParts {
    /// The glued faces, across the harp and in the plane of the strings.
    pub face: Option<Rectangle>,
    /// Thickness across the harp and depth of a glued tenon.
    pub tenon: Option<(Length, Length)>,
    /// Dowels, bolts or screws.
    pub fasteners: Option<Fasteners>,
    /// Plates on both sides.
    pub plates: Option<Plates>,
}

/// A joint of the frame, with the part that ends there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum At {
    Shoulder,
    Head,
    Foot,
}

/// The joints of a frame in the order of [`Build::joints`], each with its sizes where they are given.
pub(super) struct Joints {
    all: [Option<Joint>; 3],
    /// That of the foot as it stands: on what of the pillar is not over the board, across the grain of the base.
    standing: Option<Joint>,
}

impl Joints {
    /// `neck` are the sections of the neck at the shoulder and at the pillar; `stands` is how wide the pillar stands on the
    /// base.
    pub(super) fn new(build: &Build, neck: (Rectangle, Rectangle), stands: Length) -> Self {
        let one = |at: At, parts: &JointParts| {
            let section = match at {
                At::Shoulder => Some(neck.0),
                At::Head => head_faces(&build.pillar, neck.1),
                At::Foot => Rectangle::new(build.pillar.depth, build.pillar.width).ok(),
            };
            let wood = if at == At::Foot { &build.pillar_wood } else { &build.neck_wood };
            let joint = Joint {
                section: parts.face.or(section)?,
                is_glued: parts.face.is_some(),
                across_the_grain: at == At::Head,
                tenon: parts.tenon,
                fasteners: parts.fasteners,
                plates: parts.plates,
                wood: JointWood::clone(wood),
            };
            joint.is_held().then_some(joint)
        };
        let [shoulder, head, foot] = &build.joints;
        let foot = one(At::Foot, foot);
        let standing = foot.as_ref().and_then(|foot| {
            let wide = foot.section.depth().to_m().min(stands.to_m());
            let section = Rectangle::new(foot.section.breadth(), Length::from_m(wide)).ok()?;
            Some(Joint { section, across_the_grain: true, ..foot.clone() })
        });
        Self { all: [one(At::Shoulder, shoulder), one(At::Head, head), foot], standing }
    }

    /// How stiff all of them are, where that is known of each.
    pub(super) fn springs(&self) -> Option<[Six; 3]> {
        let [shoulder, head, foot] = &self.all;
        let stiff = |joint: &Option<Joint>| joint.as_ref()?.stiffness();
        Some([stiff(shoulder)?, stiff(head)?, stiff(foot)?])
    }

    /// How far a joint is loaded. With its sizes by what holds it; with joints that turn freely only where their own
    /// stiffness is not known.
    pub(super) fn judged(
        &self,
        at: At,
        neck: &NeckBearing,
        (stiff, sprung): (&[Stiff], Option<&Stiff>),
        push: Force,
        build: &Build,
    ) -> Judged {
        let alone: Vec<Station> = neck.cuts.iter().map(|cut| cut.station).collect();
        let own = if at == At::Foot { &self.standing } else { &self.all[at as usize] };
        let Some(sized) = own else {
            if at == At::Foot {
                return Judged::default();
            }
            let all = std::iter::once(&*alone).chain(stiff.iter().map(|stiff| &*stiff.neck));
            let judge = |cuts: &[Station]| match at {
                At::Shoulder => shoulder(cuts.first()?, build),
                _ => head(cuts.last()?, build),
            };
            return Judged { ends: all.filter_map(judge).collect() };
        };
        let of = |end: &Stiff| match at {
            At::Shoulder => end.neck.first().map(Station::forces),
            At::Head => Some(end.pillar[0]),
            At::Foot => Some(end.pillar[1]),
        };
        let mut cuts: Vec<Cut> = stiff.iter().filter_map(of).collect();
        match sprung {
            Some(sprung) => cuts.extend(of(sprung)),
            None if at == At::Shoulder => cuts.extend(alone.first().map(Station::forces)),
            None => cuts.push([-push.to_n(), 0.0, 0.0, 0.0, 0.0, 0.0]),
        }
        Judged { ends: cuts.into_iter().map(|cut| sized.judge(cut)).collect() }
    }
}

/// The end of the neck on the soundbox.
fn shoulder(cut: &Station, build: &Build) -> Option<Verdict> {
    let faces = Faces { section: cut.section, across_the_grain: false };
    Some(joint(cut.forces(), faces, &build.neck.allowable))
}

/// Where the pillar meets the neck.
fn head_faces(pillar: &PillarParts, neck: Rectangle) -> Option<Rectangle> {
    let through = Length::from_m(pillar.depth.to_m().min(neck.breadth().to_m()));
    Rectangle::new(through, pillar.width).ok()
}

/// The neck on the pillar, whose end meets it from below: the shear of the neck pushes, the force along it slides, its
/// torque tips the face sideways, and its bending out of the plane turns it.
fn head(cut: &Station, build: &Build) -> Option<Verdict> {
    let [axial_n, shear_n, aside_n, torque_n_m, sideways_n_m, moment_n_m] = cut.forces();
    let section = head_faces(&build.pillar, cut.section)?;
    let faces = Faces { section, across_the_grain: true };
    let cut: Cut = [-shear_n.abs(), axial_n, aside_n, sideways_n_m, torque_n_m, moment_n_m];
    Some(joint(cut, faces, &build.neck.allowable))
}
