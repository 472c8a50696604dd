//! What of the neck is told beside what leads in it: its crossed layers, the metal beside it, and the rims of its holes.

use super::{aspect, mpa, percents};
use crate::design::letters::capital;
use crate::engine::bearing::FrameBearing;
use crate::engine::structure::verdict::{Aspect, Use};
use crate::words::{frame as say, semicolon};

/// What is told of a neck wherever it has it.
const TOLD: [Aspect; 4] =
    [Aspect::Rolling, Aspect::MetalBent, Aspect::MetalGlue, Aspect::MetalScrews];

/// Each of these at its highest in the cases that count; one without a limit before all others.
fn highest(frame: &FrameBearing) -> impl Iterator<Item = Use> {
    let cuts = || frame.neck.worst_cuts().flat_map(|(case, _)| frame.neck.of(case));
    TOLD.into_iter().filter_map(move |told| {
        let uses = cuts().flat_map(|cut| &cut.verdict.uses).filter(|used| used.aspect == told);
        let size = |used: &Use| used.ratio.unwrap_or(f64::INFINITY);
        uses.reduce(|most, next| if size(next) > size(most) { next } else { most }).copied()
    })
}

/// What of these has no limit that is known.
pub(super) fn not_judged(frame: &FrameBearing) -> impl Iterator<Item = Aspect> {
    highest(frame).filter(|used| used.ratio.is_none()).map(|used| used.aspect)
}

/// All of these that do not lead, in a sentence or two, and what gathers at the rims of holes.
pub(super) fn others(frame: &FrameBearing, leads: Option<Aspect>) -> String {
    let told = |used: Use| {
        let name = aspect(used.aspect);
        match used.ratio.zip(used.limit) {
            Some((ratio, limit)) => {
                let share = percents((ratio, ratio));
                say::shares_list(&mpa(limit), &share, &mpa(used.stress), &name)
            }
            None if used.ratio.is_some() => say::none_of(&name),
            None => say::stress_unjudged(&mpa(used.stress), &name),
        }
    };
    let all: Vec<String> =
        highest(frame).filter(|used| Some(used.aspect) != leads).map(told).collect();
    let mut text = String::new();
    if !all.is_empty() {
        text += &format!(" {}.", capital(&all.join(semicolon())));
    }
    if let Some((along, across)) = frame.neck.rims {
        text += &format!(" {}", say::neck_rims(&mpa(across), &mpa(along)));
    }
    text
}
