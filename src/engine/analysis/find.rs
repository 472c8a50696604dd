//! Looks for the findings of a harp: string by string, between neighbours, and along the lengths.

use super::{Harp, Limits, StringFigures};
use crate::engine::construction::MakeUp;
use crate::engine::findings::{AUDIBLE_TIMES, Finding, FindingKind, THIN_CORE_RATIO};
use crate::engine::limit::{is_above, is_below};
use crate::engine::mechanics::{Core, audible_inharmonicity, length_for_tension, tension};
use crate::engine::order::sort;
use crate::engine::units::{Force, Length, LinearDensity};

/// Two gauges are the same within what a micrometer tells apart: 0.005 mm, the error bar of
/// N. Lynch-Aird and J. Woodhouse, Mechanical properties of nylon harp strings, Materials 10 (2017)
/// 497, section 4.1.
const SAME_GAUGE: Length = Length::from_mm(0.005);

/// Every finding of a harp, the weightiest first; of one weight, from string 1 down.
pub(super) fn findings(harp: &Harp, strings: &[StringFigures]) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, figures) in strings.iter().enumerate() {
        let mut say = |kind| found.push(Finding { index, kind });
        let make_up = harp.strings[index].make_up.as_ref().ok();
        if let Some(make_up) = make_up {
            of_load(figures, make_up, &harp.limits, &mut say);
            of_tone(figures, make_up, &harp.limits, &mut say);
        }
        if let Some(above) = index.checked_sub(1) {
            let make_ups = (harp.strings[above].make_up.as_ref().ok(), make_up);
            of_neighbours(&strings[above], figures, make_ups, &harp.limits, &mut say);
        }
    }
    out_of_line(strings, &mut found);
    let place = |finding: &Finding| (finding.kind.weight(), finding.index);
    sort(&mut found, |one, other| place(one) > place(other));
    found
}

fn of_load(
    figures: &StringFigures,
    make_up: &MakeUp,
    limits: &Limits,
    say: &mut impl FnMut(FindingKind),
) {
    let (Ok(pull), Ok(frequency), Ok(density)) =
        (figures.tension, figures.frequency, figures.linear_density)
    else {
        return;
    };
    if let Ok(stiffness) = figures.pluck_stiffness {
        let (is, band) = (stiffness.to_n_per_m(), limits.stiffness_band);
        if is_below(is, band.0.to_n_per_m()) || is_above(is, band.1.to_n_per_m()) {
            say(FindingKind::Feel { stiffness, band });
        }
    }
    let least = limits.least_tension;
    if is_below(pull.to_n(), least.to_n()) {
        let thinnest = thinnest_gauge(figures, make_up, least);
        say(FindingKind::LittlePull { pull, least, thinnest });
    }
    let (Ok(load_percent), Ok(breaking)) = (figures.load_share_percent, figures.breaking_load)
    else {
        return;
    };
    let length_at = |percent: f64| {
        let wanted = Force::from_n(breaking.to_n() * percent / 100.0);
        length_for_tension(density, frequency, wanted, Core::of(make_up))
    };
    let (limit, slack) = (limits.working_share_percent, limits.slack_share_percent);
    if is_above(load_percent, 100.0) {
        say(FindingKind::Breaks { load_percent, longest: length_at(limit) });
    } else if is_above(load_percent, limit) {
        let longest = length_at(limit);
        say(FindingKind::Overworked { load_percent, limit_percent: limit, longest });
    } else if is_below(load_percent, slack) {
        let shortest = length_at(slack);
        say(FindingKind::Slack { load_percent, limit_percent: slack, shortest });
    }
}

fn of_tone(
    figures: &StringFigures,
    make_up: &MakeUp,
    limits: &Limits,
    say: &mut impl FnMut(FindingKind),
) {
    if let (Ok(b), Ok(partial_8_cents), Ok(frequency)) =
        (figures.inharmonicity_b, figures.partial_8_cents, figures.frequency)
    {
        let times_audible = b / audible_inharmonicity(frequency);
        let limit_cents = limits.partial_8_cents;
        if is_above(partial_8_cents, limit_cents) && times_audible > AUDIBLE_TIMES {
            say(FindingKind::Inharmonic { partial_8_cents, limit_cents, times_audible });
        }
    }
    if let (Ok(gauge), Ok(core), false) = (figures.gauge, figures.core, make_up.layers().is_empty())
    {
        let gauge_ratio = gauge.to_m() / core.to_m();
        if is_above(gauge_ratio, THIN_CORE_RATIO) {
            say(FindingKind::ThinCore { gauge_ratio, limit_ratio: THIN_CORE_RATIO });
        }
    }
}

fn of_neighbours(
    above: &StringFigures,
    this: &StringFigures,
    make_ups: (Option<&MakeUp>, Option<&MakeUp>),
    limits: &Limits,
    say: &mut impl FnMut(FindingKind),
) {
    let lower = match (above.frequency, this.frequency) {
        // The last digits of a temperament's sum are no difference of pitch.
        (Ok(a), Ok(b)) if b.to_hz() > a.to_hz() * (1.0 + 1e-9) => {
            say(FindingKind::Higher { pitch: b, above: a });
            false
        }
        (Ok(a), Ok(b)) => b.to_hz() < a.to_hz() * (1.0 - 1e-9),
        _ => false,
    };
    let (Some(upper_make_up), Some(make_up)) = make_ups else { return };
    if upper_make_up.has_materials_of(make_up) {
        if let (true, Ok(above), Ok(gauge)) = (lower, above.gauge, this.gauge)
            && gauge.to_m() < above.to_m() - SAME_GAUGE.to_m()
        {
            say(FindingKind::Thinner { gauge, above });
        }
    } else if let (Ok(upper), Ok(stiffness)) = (above.pluck_stiffness, this.pluck_stiffness) {
        let step_percent = 100.0 * (stiffness.to_n_per_m() / upper.to_n_per_m() - 1.0);
        let limit_percent = limits.jump_percent;
        if is_above(step_percent.abs(), limit_percent) {
            say(FindingKind::Jump { step_percent, limit_percent });
        }
    }
}

/// Finds lengths that step out of line. Of the two strings at such a step, the one is blamed without
/// which the lengths would run on; where that is both or neither, the one that is farther from the
/// middle of its neighbours.
fn out_of_line(strings: &[StringFigures], found: &mut Vec<Finding>) {
    let length = |index: usize| Some(strings.get(index)?.length.ok()?.to_m());
    let pitch = |index: usize| Some(strings.get(index)?.frequency.ok()?.to_hz());
    for upper in 0..strings.len().saturating_sub(1) {
        let lower = upper + 1;
        let (Some(long), Some(short)) = (length(upper), length(lower)) else { continue };
        let falls =
            matches!((pitch(upper), pitch(lower)), (Some(a), Some(b)) if b < a * (1.0 - 1e-9));
        if !falls || !is_below(short, long) {
            continue;
        }
        let above = upper.checked_sub(1).and_then(length);
        let below = length(lower + 1);
        let without_upper = above.is_none_or(|above| above <= short);
        let without_lower = below.is_none_or(|below| long <= below);
        let middle = |a: Option<f64>, b: Option<f64>| Some((a? * b?).sqrt());
        let (for_upper, for_lower) = (middle(above, Some(short)), middle(Some(long), below));
        let off = |is: f64, should: Option<f64>| should.map_or(0.0, |s: f64| (is / s).ln().abs());
        let blame_upper = match (without_upper, without_lower) {
            (true, false) => true,
            (false, true) => false,
            _ => off(long, for_upper) > off(short, for_lower),
        };
        let (index, is, neighbour, between) = if blame_upper {
            (upper, long, short, for_upper)
        } else {
            (lower, short, long, for_lower)
        };
        let kind = FindingKind::OutOfLine {
            length: Length::from_m(is),
            neighbour: Length::from_m(neighbour),
            between: between.map(Length::from_m),
        };
        found.push(Finding { index, kind });
    }
}

/// The thinnest plain string that pulls `least`; `None` for a string that is not plain.
///
/// The flexible string's square law, repeated on the stiff string until it holds to a micrometre.
fn thinnest_gauge(figures: &StringFigures, make_up: &MakeUp, least: Force) -> Option<Length> {
    let MakeUp::Plain { material, diameter } = make_up else { return None };
    let (length, frequency) = (figures.length.ok()?, figures.frequency.ok()?);
    let mut gauge = *diameter;
    for _ in 0..40 {
        let thicker = MakeUp::plain(material.clone(), gauge).ok()?;
        let density: LinearDensity = thicker.linear_density();
        let pull = tension(density, length, frequency, Core::of(&thicker)).to_n();
        if pull <= 0.0 {
            return None;
        }
        let next = Length::from_m(gauge.to_m() * (least.to_n() / pull).sqrt());
        if (next.to_mm() - gauge.to_mm()).abs() < 1e-3 {
            return Some(next);
        }
        gauge = next;
    }
    None
}
