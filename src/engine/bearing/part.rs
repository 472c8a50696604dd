//! The parts of the harp that bear, and how far each is loaded.

use super::{FrameBearing, Stiff};
use crate::engine::structure::frame::{Point, Pull, Reactions, Resultant};
use crate::engine::structure::verdict::Use;
use crate::engine::units::{Force, Length};

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
    /// The joint of pillar and base.
    Foot,
    /// The soundbox.
    Soundbox,
}

impl Part {
    /// All of them, in the order of a list.
    pub const ALL: [Self; 6] =
        [Self::Neck, Self::Pillar, Self::Shoulder, Self::Head, Self::Foot, Self::Soundbox];
}

impl FrameBearing {
    /// The frames in space that count: with a soundbox that does not give where its sizes are not known, with joints that
    /// do not give, and with joints that give as their sizes say.
    pub fn counted(&self) -> impl Iterator<Item = &Stiff> {
        self.firm().iter().chain(&self.sprung)
    }

    /// Those of them with joints that do not give.
    pub fn firm(&self) -> &[Stiff] {
        &self.stiff[usize::from(self.soundbox.is_some())..]
    }

    /// The forces at the foot of the pillar, in its own axes from top to foot, in two of the frames that count: with joints
    /// that do not give, and with joints that give as their sizes say, or again the first.
    pub fn at_the_foot(&self) -> [[f64; 6]; 2] {
        let firm = self.stiff[1].pillar[1];
        [firm, self.sprung.as_ref().map_or(firm, |of| of.pillar[1])]
    }

    /// What is loaded most in a part, where a limit is known.
    pub fn governing(&self, part: Part) -> Option<&Use> {
        match part {
            Part::Neck => self.neck.worst().and_then(|cut| cut.verdict.governing()),
            Part::Pillar => self.pillar.judged.governing(),
            Part::Shoulder => self.shoulder.judged.governing(),
            Part::Head => self.head.judged.governing(),
            Part::Foot => self.foot.judged.governing(),
            Part::Soundbox => Some(self.soundbox.as_ref()?.worst()?.1),
        }
    }

    /// How far a part is loaded, least and most, where a limit is known: with joints that turn freely and with joints
    /// that do not give.
    pub fn used(&self, part: Part) -> Option<(f64, f64)> {
        match part {
            Part::Neck => self.neck.range().map(|[least, most]| (least.1, most.1)),
            Part::Pillar => self.pillar.judged.used(),
            Part::Shoulder => self.shoulder.judged.used(),
            Part::Head => self.head.judged.used(),
            Part::Foot => self.foot.judged.used(),
            Part::Soundbox => self.soundbox.as_ref()?.used(),
        }
    }

    /// The part that is loaded most at most, and how far, least and most.
    pub fn most_used(&self) -> Option<(Part, (f64, f64))> {
        let mut all = Part::ALL.into_iter().filter_map(|part| Some((part, self.used(part)?)));
        let first = all.next()?;
        Some(all.fold(first, |most, next| if next.1.1 > most.1.1 { next } else { most }))
    }
}

impl Stiff {
    /// Push in the pillar along it.
    pub(super) fn push(&self) -> Force {
        Force::from_n(-self.pillar[0][0])
    }

    /// What shoulder and pillar give to the neck under all pulls, in the plane of the strings: the part of the neck beyond the
    /// shoulder gives the shoulder what its first cut says, and the pillar gives the rest.
    pub(super) fn holds(&self, all: Resultant, (shoulder, top): (Point, Point)) -> Reactions {
        let cuts = self.neck.first().zip(self.neck.get(1));
        let (x, y) = cuts.map_or((0.0, 0.0), |(first, next)| {
            let way = (next.at.x.to_m() - first.at.x.to_m(), next.at.y.to_m() - first.at.y.to_m());
            let length = way.0.hypot(way.1);
            let (x, y) = (way.0 / length, way.1 / length);
            (first.axial_n * x - first.shear_n * y, first.axial_n * y + first.shear_n * x)
        });
        let pull = |at: Point, x: f64, y: f64| Pull {
            at,
            x: Force::from_n(x),
            y: Force::from_n(y),
            offset: Length::from_m(0.0),
        };
        Reactions {
            pillar: self.push(),
            pillar_pull: pull(top, x - all.x.to_n(), y - all.y.to_n()),
            shoulder_pull: pull(shoulder, -x, -y),
        }
    }
}
