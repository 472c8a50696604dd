//! The pillar of a design, in each case of its joints.

use super::{Judged, PillarParts, Stiff};
use crate::engine::structure::column::{Ends, Strut};
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::space::Cut;
use crate::engine::structure::verdict::{Pillar, Verdict, pillar, pillar_bent};
use crate::engine::units::{Force, Length, Stress};

/// The pillar.
#[derive(Clone, Debug, PartialEq)]
pub struct PillarBearing {
    /// Push along it in the case that counts in which the joints give most.
    pub push: Force,
    /// From foot to top.
    pub length: Length,
    /// Length over radius of gyration, in the plane of the strings and square to it.
    pub slenderness: Option<(f64, f64)>,
    /// The load at which a perfect pillar gives way, in the plane of the strings and square to it.
    pub gives_way: Option<(Force, Force)>,
    /// How far it is loaded.
    pub judged: Judged,
}

/// What a pillar bears in a case: its push, and the forces at both its ends, where joints bring more into it.
pub(super) struct Pushed {
    pub(super) push: Force,
    pub(super) ends: Option<[Cut; 2]>,
}

impl Pushed {
    pub(super) fn by(of: &Stiff) -> Self {
        Self { push: of.push(), ends: Some(of.pillar) }
    }
}

fn stands(free_length: Length, parts: &PillarParts) -> Option<Pillar> {
    let section = Rectangle::new(parts.depth, parts.width).ok()?;
    Some(Pillar { section, free_length, eccentricity: parts.beside })
}

impl PillarBearing {
    /// How it stands.
    pub fn stands(&self, parts: &PillarParts) -> Option<Pillar> {
        stands(self.length, parts)
    }

    /// The cases that count, that in which the joints give most first.
    pub(super) fn new(
        length: Length,
        cases: impl Iterator<Item = Pushed>,
        parts: &PillarParts,
    ) -> Self {
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
        let stands = stands(length, parts);
        let mut judged = Judged::default();
        let mut push = None;
        for case in cases {
            push.get_or_insert(case.push);
            // In every case its push is also taken beside its middle, whatever the joints bend.
            let mut uses = Vec::new();
            if let Some(stands) = stands {
                let pushed = pillar(case.push, stands, &parts.allowable);
                let bent = case.ends.into_iter().flatten();
                let bent = bent.filter_map(|cut| pillar_bent(cut, stands, &parts.allowable));
                uses = pushed.into_iter().chain(bent).flat_map(|end| end.uses).collect();
            }
            if !uses.is_empty() {
                judged.ends.push(Verdict { uses });
            }
        }
        Self {
            push: push.unwrap_or_default(),
            length,
            slenderness: struts.map(|(in_plane, square)| {
                (in_plane.slenderness_ratio(), square.slenderness_ratio())
            }),
            gives_way: struts.map(|(in_plane, square)| (in_plane.euler(), square.euler())),
            judged,
        }
    }
}
