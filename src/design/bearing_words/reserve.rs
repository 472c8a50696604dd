//! How far a part is from breaking, in words: what 100 % of the design allowance does not say.

use super::names::aspect;
use crate::design::display::decimals;
use crate::engine::bearing::{FrameBearing, Part};
use crate::engine::structure::reserve::{Ending, Reserve};
use crate::engine::structure::verdict::{Aspect, Carrier, Use, Verdict};
use crate::words::frame as say;

/// Below this use nobody asks.
const LEAST_USED: f64 = 0.3;

/// All that is looked at in a part in the cases that count.
pub(super) fn uses(frame: &FrameBearing, part: Part) -> Vec<&Use> {
    let verdicts: Vec<&Verdict> = match part {
        Part::Neck => frame.neck.counted().map(|cut| &cut.verdict).collect(),
        Part::Pillar => frame.pillar.judged.ends.iter().collect(),
        Part::Shoulder => frame.shoulder.judged.ends.iter().collect(),
        Part::Head => frame.head.judged.ends.iter().collect(),
        Part::Foot => frame.foot.judged.ends.iter().collect(),
        Part::Soundbox => {
            let cuts = frame.soundbox.iter().flat_map(|of| &of.cases).flatten();
            cuts.map(|cut| &cut.verdict).collect()
        }
    };
    verdicts.into_iter().flat_map(|verdict| &verdict.uses).collect()
}

/// The reserve of what leads in a part, and of what is nearer to breaking than that, where anything is. `of` says how far
/// what is allowed of an aspect lies from breaking. Nothing where the part is hardly loaded or gives way already.
pub(super) fn words(
    leads: &Use,
    uses: &[&Use],
    of: impl Fn(Aspect) -> Option<Reserve>,
) -> Option<String> {
    let used = leads.ratio.filter(|used| *used >= LEAST_USED && used.is_finite())?;
    let lead = of(leads.aspect);
    let mut text = told(used, leads.aspect, lead);
    let breaks = |reserve: &Reserve| reserve.ending != Ending::Crushed;
    let mut nearest: Option<(f64, Aspect, f64, Reserve)> = None;
    for other in uses.iter().filter(|other| other.aspect != leads.aspect) {
        let Some((used, reserve)) = other.ratio.zip(of(other.aspect).filter(breaks)) else {
            continue;
        };
        let least = reserve.least(used);
        if used >= LEAST_USED && nearest.is_none_or(|(nearest, ..)| least < nearest) {
            nearest = Some((least, other.aspect, used, reserve));
        }
    }
    let bound = lead.filter(breaks).map_or(f64::INFINITY, |reserve| reserve.least(used));
    if let Some((_, what, used, reserve)) = nearest.filter(|(least, ..)| *least < bound) {
        text +=
            &format!(" {} {}", say::reserve_nearer(&aspect(what)), told(used, what, Some(reserve)));
    }
    Some(text)
}

/// Under how many times its load a part ends that is loaded so far, at once and over ten years. Rounded down.
fn told(used: f64, aspect: Aspect, reserve: Option<Reserve>) -> String {
    let Some(Reserve { ending, now, later }) = reserve else {
        return say::RESERVE_UNJUDGED.into();
    };
    let times = |margin: f64| decimals((10.0 * margin / used).floor() / 10.0, 1);
    let weak = [now.weak, later.weak].map(times);
    let mean = now.mean.zip(later.mean).map(|(now, later)| [now, later].map(times));
    let mut text = match (ending, mean) {
        (Ending::Breaks, Some([mean, later])) => say::reserve(&mean, &later, &weak[0], &weak[1]),
        (Ending::Breaks, None) => say::reserve_weak(&weak[0], &weak[1]),
        (Ending::Buckles, Some([mean, later])) => {
            say::reserve_buckles(&mean, &later, &weak[0], &weak[1])
        }
        (Ending::Buckles, None) => say::reserve_buckles_weak(&weak[0], &weak[1]),
        (Ending::Yields, _) => say::reserve_yields(&weak[0]),
        (Ending::Crushed, Some([mean, _])) => say::reserve_crushed(&mean, &weak[0]),
        (Ending::Crushed, None) => say::reserve_crushed_weak(&weak[0]),
    };
    if is_glued(aspect) {
        text += &format!(" {}", say::RESERVE_GLUE);
    }
    text
}

/// Whether glue holds it.
const fn is_glued(aspect: Aspect) -> bool {
    matches!(
        aspect,
        Aspect::RibGlue
            | Aspect::BarsGlue
            | Aspect::EdgePeel
            | Aspect::BarsEnds
            | Aspect::MetalGlue
            | Aspect::OpeningOn(Carrier::Tenon | Carrier::Dowels)
            | Aspect::SlidingOn(Carrier::Tenon)
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::structure::wood::Margin;
    use crate::engine::units::Stress;

    fn used(aspect: Aspect, ratio: f64) -> Use {
        Use { aspect, stress: Stress::from_mpa(1.0), limit: None, ratio: Some(ratio) }
    }

    /// 3.17 times at once for the average, 2.33 for the weakest, 62 % of it after ten years.
    #[test]
    fn twice_the_use_is_half_the_reserve_and_never_rounded_up() {
        let margin = Margin { mean: Some(3.167), weak: 2.333 };
        let of = |margin: Margin| move |_| Reserve::of_wood(margin);
        let words = |ratio: f64, margin: Margin| {
            words(&used(Aspect::BendingAndPull, ratio), &[], of(margin))
        };
        assert_eq!(
            words(1.0, margin).unwrap(),
            "At the highest figure, a piece of average strength breaks under about 3.1 times this load at once and 1.9 \
             times over ten years, the weakest of twenty under 2.3 and 1.4."
        );
        assert!(
            words(2.0, margin).unwrap().contains("about 1.5 times this load at once and 0.9 times")
        );
        let weakest = Margin { mean: None, ..margin };
        assert!(
            words(1.0, weakest)
                .unwrap()
                .starts_with("At the highest figure, the weakest of twenty")
        );
        assert_eq!(words(f64::INFINITY, margin), None);
        assert_eq!(words(0.0, margin), None);
    }

    /// Wood at 100 % breaks at 1.4 times its load in the end, metal at 90 % is bent at 1.6; at 120 % at 1.2.
    #[test]
    fn what_is_nearer_to_breaking_than_what_leads_is_told() {
        let wood = used(Aspect::BendingAndPull, 1.0);
        let of = |aspect| match aspect {
            Aspect::MetalBent => Some(Reserve::of_metal()),
            Aspect::PressedAcross => None,
            _ => Reserve::of_wood(Margin { mean: None, weak: 2.333 }),
        };
        let metal = |ratio: f64| words(&wood, &[&used(Aspect::MetalBent, ratio)], of).unwrap();
        assert!(!metal(0.9).contains("Nearer"), "{}", metal(0.9));
        assert!(metal(1.2).contains("the metal bends for good under about 1.2 times"));
        let pressed = used(Aspect::PressedAcross, 0.9);
        let unknown = words(&pressed, &[&wood], of).unwrap();
        assert!(
            unknown.starts_with("How far that is from breaking is not judged. Nearer to breaking")
        );
        let glue = words(&used(Aspect::RibGlue, 0.5), &[], of).unwrap();
        assert!(glue.contains("the glue itself"), "{glue}");
    }
}
