//! How far a part is from breaking, in words: what 100 % of the design allowance does not say.

use crate::design::display::decimals;
use crate::engine::bearing::{Build, Part};
use crate::engine::structure::duration::YEAR_S;
use crate::engine::structure::verdict::{Aspect, Use};
use crate::engine::structure::wood::{Margin, Margins};
use crate::words::frame as say;

/// For how long the later figure holds.
const LATER_S: f64 = 10.0 * YEAR_S;

/// Below this use nobody asks.
const LEAST_USED: f64 = 0.3;

/// The margin of what leads in a part; of wood that is pressed across its grain there is none.
pub(super) fn margin(build: &Build, part: Part, leads: &Use) -> Option<Margin> {
    let allowable = match part {
        Part::Pillar => &build.pillar.allowable,
        Part::Foot => &build.pillar_wood.allowable,
        Part::Neck | Part::Shoulder | Part::Head => &build.neck.allowable,
        Part::Soundbox => {
            let parts = build.soundbox.as_ref()?;
            let of_back = matches!(leads.aspect, Aspect::BackBent | Aspect::BackSheared);
            if of_back { &parts.back.1.allowable } else { &parts.side.1.allowable }
        }
    };
    of_aspect(&allowable.margins, leads.aspect)
}

const fn of_aspect(margins: &Margins, aspect: Aspect) -> Option<Margin> {
    match aspect {
        Aspect::BendingAndPush | Aspect::BendingAndPull | Aspect::Opening => margins.bending,
        Aspect::SidesBent | Aspect::BackBent => margins.bending,
        Aspect::ShearAndTwist | Aspect::Sliding | Aspect::SidesSheared | Aspect::BackSheared => {
            margins.shear
        }
        Aspect::AcrossTheCurve => margins.tension_across,
        Aspect::Buckling | Aspect::Bowing => margins.buckling,
        Aspect::BesideTheMiddle | Aspect::PressedAlong => margins.compression_along,
        // What leads in these is not the strength of the wood alone, or that of another wood.
        Aspect::PressedAcross
        | Aspect::OpeningOn(_)
        | Aspect::SlidingOn(_)
        | Aspect::Splitting
        | Aspect::Rolling
        | Aspect::MetalBent
        | Aspect::MetalGlue
        | Aspect::MetalScrews
        | Aspect::BoardPulled
        | Aspect::BoardBent
        | Aspect::RibBent
        | Aspect::RibGlue
        | Aspect::BarsBent
        | Aspect::BarsGlue
        | Aspect::BarsSheared
        | Aspect::EdgePeel
        | Aspect::BoardBows => None,
    }
}

/// Under how many times its load a part breaks that is loaded so far, at once and after years. Rounded down.
pub(super) fn words(used: f64, margin: Margin) -> Option<String> {
    let later = margin.after(LATER_S)?;
    if !(used >= LEAST_USED && used.is_finite()) {
        return None;
    }
    let times = |margin: f64| decimals((10.0 * margin / used).floor() / 10.0, 1);
    let weak = [margin.weak, later.weak].map(times);
    Some(match margin.mean.zip(later.mean) {
        Some((mean, later)) => say::reserve(&times(mean), &times(later), &weak[0], &weak[1]),
        None => say::reserve_weak(&weak[0], &weak[1]),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 3.17 times at once for the average, 2.33 for the weakest, 62 % of it after ten years.
    #[test]
    fn twice_the_use_is_half_the_reserve_and_never_rounded_up() {
        let margin = Margin { mean: Some(3.167), weak: 2.333 };
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
}
