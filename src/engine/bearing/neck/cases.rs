//! What the neck bears in each case of joints and soundbox, and which of these count.

use crate::engine::structure::frame::Station;
use crate::engine::structure::verdict::{Curve, Verdict};
use crate::engine::units::{Length, Stress};

/// A cut through the neck and how far it is loaded.
#[derive(Clone, Debug, PartialEq)]
pub struct Cut {
    /// The forces there.
    pub station: Station,
    /// The curve of the middle line there; `None` where it is as good as straight.
    pub curve: Option<Curve>,
    /// How far it is loaded.
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
    /// How far the line of a neck of straight planks turns from their grain at most, where that is more than a little: its
    /// strength is then less than judged.
    pub runs_out_rad: Option<f64>,
    /// The most that gathers at the rim of a hole in the cases that count, along the grain and across it; `None` where there are
    /// no holes, or the moduli are not known.
    pub rims: Option<(Stress, Stress)>,
    /// Those that count, with the place of the cut that is loaded most.
    pub(super) counts: Vec<(Case, Option<usize>)>,
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

    /// The cases that count, with the cut of each that is loaded most; `None` where no limit is known.
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

    /// The cut that is loaded most, whatever the joints do; `None` where no limit is known.
    pub fn worst(&self) -> Option<&Cut> {
        let most = self.range()?[1].0;
        self.worst_cuts().find_map(|(case, cut)| cut.filter(|_| case == most))
    }

    /// The case that counts in which the joints give most.
    pub fn softest(&self) -> Case {
        self.counts.first().map_or(Case::PillarPushes, |(case, _)| *case)
    }

    /// Whether the verdicts count a case.
    pub fn counts(&self, case: Case) -> bool {
        self.counts.iter().any(|(counted, _)| *counted == case)
    }

    /// All cuts of the cases that count, one case after the other.
    pub fn counted(&self) -> impl Iterator<Item = &Cut> {
        self.counts.iter().flat_map(|(case, _)| self.of(*case))
    }

    /// The greatest of a figure by its size, with its sign, in the cases that count.
    pub fn greatest(&self, of: impl Fn(&Station) -> f64) -> f64 {
        let bigger = |most: f64, next: f64| if next.abs() > most.abs() { next } else { most };
        self.counted().map(|cut| of(&cut.station)).fold(0.0, bigger)
    }
}

/// How far a cut is loaded, where a limit is known.
fn used_ratio(cut: &Cut) -> Option<f64> {
    cut.verdict.governing()?.ratio
}

pub(super) fn worst(cuts: &[Cut]) -> Option<usize> {
    let mut worst: Option<(usize, f64)> = None;
    for (place, cut) in cuts.iter().enumerate() {
        let Some(ratio) = used_ratio(cut) else { continue };
        if worst.is_none_or(|(_, most)| ratio > most) {
            worst = Some((place, ratio));
        }
    }
    worst.map(|(place, _)| place)
}
