//! Looks for the findings of a harp: string by string, between neighbours, and along the lengths.

use super::blame::Blame;
use super::pull::is_soft;
use super::slips::{of_lengths, of_notes};
use super::{Harp, Limits, StringFigures};
use crate::engine::construction::MakeUp;
use crate::engine::findings::{AUDIBLE_TIMES, Finding, FindingKind, Misplaced, THIN_CORE_RATIO};
use crate::engine::limit::{is_above, is_below};
use crate::engine::mechanics::{Core, audible_inharmonicity, length_for_tension, tension};
use crate::engine::order::sort;
use crate::engine::units::{Force, Length, LinearDensity};

/// Two gauges are the same within what a micrometer tells apart: 0.005 mm, the error bar of
/// N. Lynch-Aird and J. Woodhouse, Mechanical properties of nylon harp strings, Materials 10 (2017)
/// 497, section 4.1.
const SAME_GAUGE: Length = Length::from_mm(0.005);

/// The last digits of a temperament's sum are no difference of pitch.
const LAST_DIGITS: f64 = 1e-9;

/// Every finding of a harp: slips of the hand, then the weightiest first; of one weight, from string 1 down. Of two
/// neighbours between which something steps out of line, the one to blame has the finding; the string that was
/// `changed` last comes first.
pub(super) fn findings(
    harp: &Harp,
    strings: &[StringFigures],
    changed: Option<usize>,
) -> Vec<Finding> {
    let blame = Blame { harp, strings, changed };
    let mut found = Vec::new();
    for (index, figures) in strings.iter().enumerate() {
        let mut say = |kind| found.push(Finding { index, kind });
        let make_up = harp.strings[index].make_up.as_ref().ok();
        if let Some(make_up) = make_up {
            of_load(figures, make_up, &harp.limits, &mut say);
            of_tone(figures, make_up, &harp.limits, &mut say);
        }
        of_raise(figures, harp.limits.least_raise, &mut say);
        if let Some(upper) = index.checked_sub(1) {
            of_neighbours(&blame, upper, &mut found);
        }
    }
    found.extend(of_turns(strings, harp.conditions.allowance.turns()));
    let notes = of_notes(strings);
    // What follows from a wrong note, but not that the string is loaded too high.
    let follows = |one: &Finding| match one.kind {
        FindingKind::Breaks { .. } | FindingKind::Overworked { .. } => false,
        FindingKind::PitchOrder { .. } | FindingKind::Jump { .. } => {
            notes.iter().any(|wrong| wrong.index.abs_diff(one.index) <= 1)
        }
        _ => notes.iter().any(|wrong| {
            let is_row = matches!(wrong.kind, FindingKind::Note { why: Misplaced::Row, .. });
            is_row && wrong.index == one.index
        }),
    };
    found.retain(|one| !follows(one));
    let near = |one: &Finding, index: usize| {
        matches!(one.kind, FindingKind::OutOfLine { .. }) && one.index.abs_diff(index) <= 4
    };
    for length in of_lengths(strings, changed) {
        if !found.iter().any(|one| near(one, length.index)) {
            found.push(length);
        }
    }
    found.extend(notes);
    let place = |finding: &Finding| (!finding.kind.leads(), finding.kind.weight(), finding.index);
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
    let thinner_helps = |limit_percent: f64| thinner_holds(figures, make_up, limit_percent);
    let (limit, slack) = (limits.most_share_percent(is_soft(make_up)), limits.slack_share_percent);
    if is_above(load_percent, 100.0) {
        say(FindingKind::Breaks {
            load_percent,
            longest: length_at(limit),
            thinner_helps: thinner_helps(limit),
        });
    } else if is_above(load_percent, limit) {
        let longest = length_at(limit);
        let thinner_helps = thinner_helps(limit);
        say(FindingKind::Overworked { load_percent, limit_percent: limit, longest, thinner_helps });
    } else if is_below(load_percent, slack) {
        let shortest = length_at(slack);
        say(FindingKind::Slack { load_percent, limit_percent: slack, shortest });
    }
}

/// Whether a thinner gauge of a plain string would keep a load share: where its material is the stronger the thinner it
/// is. The stress hardly depends on the gauge.
fn thinner_holds(figures: &StringFigures, make_up: &MakeUp, limit_percent: f64) -> bool {
    let MakeUp::Plain { material, diameter } = make_up else { return false };
    let Ok(stress) = figures.stress else { return false };
    let holds = |part: i32| {
        let thinner = Length::from_m(diameter.to_m() * f64::from(part) / 10.0);
        let strength = material.strength.as_ref().and_then(|strength| strength.value.at(thinner));
        strength.is_some_and(|strength| 100.0 * stress.to_pa() <= limit_percent * strength.to_pa())
    };
    (1..10).any(holds)
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

/// A lever or a natural disc that would sit in the bridge pin, or against it.
fn of_raise(figures: &StringFigures, least: Length, say: &mut impl FnMut(FindingKind)) {
    if let Ok(place) = figures.lever.or(figures.disc_natural)
        && is_below(place.distance.to_m(), least.to_m())
    {
        say(FindingKind::TightRaise { distance: place.distance, least });
    }
}

/// The string that takes most turns of its pin, if they are more than the cut lengths allow for.
fn of_turns(strings: &[StringFigures], limit: f64) -> Option<Finding> {
    let turns = |string: &StringFigures| string.pin_turns.unwrap_or(0.0);
    let first = strings.first().map(|string| (0, turns(string)))?;
    let (index, turns) = strings.iter().enumerate().skip(1).fold(first, |most, (index, string)| {
        if turns(string) > most.1 { (index, turns(string)) } else { most }
    });
    is_above(turns, limit).then_some(Finding { index, kind: FindingKind::Turns { turns, limit } })
}

/// What steps out of line between a string and the one below it.
fn of_neighbours(blame: &Blame<'_>, upper: usize, found: &mut Vec<Finding>) {
    let lower = upper + 1;
    let strings = blame.strings;
    // Periods and not pitches, so that every value rises toward the bass.
    let period = |index: usize| Some(1.0 / strings.get(index)?.frequency.ok()?.to_hz());
    let length = |index: usize| Some(strings.get(index)?.length.ok()?.to_m());
    let mut falls = false;
    if let (Some(a), Some(b)) = (period(upper), period(lower)) {
        falls = b > a * (1.0 + LAST_DIGITS);
        if a > b * (1.0 + LAST_DIGITS) {
            let (index, other) = blamed(upper, blame.upper_breaks_order(upper, &period));
            if let (Ok(pitch), Ok(neighbour)) = (strings[index].frequency, strings[other].frequency)
            {
                found.push(Finding { index, kind: FindingKind::PitchOrder { pitch, neighbour } });
            }
        }
    }
    if let (true, Some(long), Some(short)) = (falls, length(upper), length(lower))
        && is_below(short, long)
    {
        let (index, other) = blamed(upper, blame.upper_breaks_order(upper, &length));
        let between = index.checked_sub(1).and_then(length).zip(length(index + 1));
        let kind = FindingKind::OutOfLine {
            length: Length::from_m(if index == upper { long } else { short }),
            neighbour: Length::from_m(if other == upper { long } else { short }),
            between: between.map(|(above, below)| Length::from_m((above * below).sqrt())),
        };
        found.push(Finding { index, kind });
    }
    let gauge = |index: usize| {
        let gauge = strings.get(index)?.gauge.ok()?.to_m();
        blame.are_alike(index, upper).then_some(gauge)
    };
    // A plain string is its own core: what is said of its gauge is not said again.
    let core = |index: usize| {
        let is_wound = strings[index].core != strings[index].gauge;
        strings[index].core.ok().filter(|_| is_wound)
    };
    if blame.are_alike(upper, lower) {
        if let (true, Some(above), Some(below)) = (falls, gauge(upper), gauge(lower))
            && below < above - SAME_GAUGE.to_m()
        {
            let (index, other) = blamed(upper, blame.upper_breaks_order(upper, &gauge));
            if let (Ok(gauge), Ok(neighbour)) = (strings[index].gauge, strings[other].gauge) {
                found.push(Finding { index, kind: FindingKind::GaugeOrder { gauge, neighbour } });
            }
        } else if let (true, Some(neighbour), Some(core)) = (falls, core(upper), core(lower))
            && core.to_m() < neighbour.to_m() - SAME_GAUGE.to_m()
        {
            found.push(Finding { index: lower, kind: FindingKind::CoreOrder { core, neighbour } });
        }
        return;
    }
    let both_known = |at: usize| blame.harp.strings[at].make_up.is_ok();
    if let (true, true, Ok(above), Ok(below)) = (
        both_known(upper),
        both_known(lower),
        strings[upper].pluck_stiffness,
        strings[lower].pluck_stiffness,
    ) {
        let limit_percent = blame.harp.limits.jump_percent;
        let step_percent = 100.0 * (below.to_n_per_m() / above.to_n_per_m() - 1.0);
        if is_above(step_percent.abs(), limit_percent) {
            let (index, other) = blamed(upper, blame.upper_jumps(upper));
            let from_above = other == upper;
            let kind = FindingKind::Jump { step_percent, limit_percent, from_above };
            // A string that jumps away from both of its neighbours is told once, by the greater step.
            let size = |kind: &FindingKind| match kind {
                FindingKind::Jump { step_percent, .. } => step_percent.abs(),
                _ => -1.0,
            };
            match found.iter_mut().find(|one| one.index == index && size(&one.kind) >= 0.0) {
                Some(one) if size(&kind) > size(&one.kind) => one.kind = kind,
                Some(_) => {}
                None => found.push(Finding { index, kind }),
            }
        }
    }
}

/// The one of two neighbours that is to blame, and the other.
const fn blamed(upper: usize, is_upper: bool) -> (usize, usize) {
    if is_upper { (upper, upper + 1) } else { (upper + 1, upper) }
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
