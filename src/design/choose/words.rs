//! The answer of the search in words.

use std::fmt::Display;

use super::limit_words::{limit, remedy, why_not};
use super::ranges::ranges;
use super::{Task, Totals};
use crate::design::display::{NONE, decimals, percent, total_with_unit};
use crate::design::document::{Design, ForceUnit, WantsSpec};
use crate::design::resolve::Resolved;
use crate::design::targets::{value_of, wanted};
use crate::engine::analysis::Analysis;
use crate::engine::choose::{Best, Broken, Conflict, LIMITS, LimitKind, NoItem, Refusal, Set};
use crate::engine::units::Force;
use crate::words::{Words, choose as say};

/// Two states side by side.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// What is told.
    pub what: String,
    /// Of the design as it is.
    pub before: String,
    /// Of the set proposed.
    pub after: String,
}

/// How good a set is: for each string that is wanted to have something and has it, how far off.
struct Off {
    /// Mean of the deviations, in per cent.
    mean: f64,
    /// The greatest, and on which string.
    most: Option<(usize, f64)>,
    /// The greatest step between neighbours, against that of the curve.
    step: Option<(usize, f64)>,
}

/// How far a ratio of what is to what is wanted is off, in per cent: the same above and below.
pub(super) fn off_percent(ratio: f64) -> f64 {
    100.0 * (ratio.ln().abs().exp() - 1.0)
}

fn off(wants: WantsSpec, wanted: &[Option<f64>], analysis: &Analysis) -> Off {
    let mut off = Off { mean: 0.0, most: None, step: None };
    let (mut count, mut above): (f64, Option<f64>) = (0.0, None);
    for (index, (wanted, figures)) in wanted.iter().zip(&analysis.strings).enumerate() {
        let (Some(wanted), Some(is)) = (wanted, value_of(wants, figures)) else { continue };
        let log = (is / wanted).ln();
        let percent = off_percent(is / wanted);
        off.mean += percent;
        count += 1.0;
        if off.most.is_none_or(|(_, most)| percent > most) {
            off.most = Some((index, percent));
        }
        let step = above.map(|above| 100.0 * ((log - above).abs().exp() - 1.0));
        if let Some(step) = step.filter(|step| off.step.is_none_or(|(_, most)| *step > most)) {
            off.step = Some((index, step));
        }
        above = Some(log);
    }
    off.mean /= count.max(1.0);
    off
}

/// From what gain pins are worth moving: by so many points of a per cent nearer to what is wanted, on average or at
/// most. Chosen for this project, no source.
pub const WORTH_PERCENT: (f64, f64) = (0.5, 1.0);

/// Whether other lengths, or strings and lengths, gain what is worth moving pins for: nearer to the curve of the design
/// as it is, a figure that was lacking, or fewer findings.
pub(super) fn is_worth(
    design: &Design,
    resolved: &Resolved,
    (before, after): (&Analysis, &Analysis),
) -> bool {
    let wants = design.targets.wants;
    let wanted = wanted(design, resolved);
    let (was, is) = (off(wants, &wanted, before), off(wants, &wanted, after));
    let most = |off: &Off| off.most.map_or(0.0, |(_, percent)| percent);
    was.mean - is.mean >= WORTH_PERCENT.0
        || is.mean <= was.mean && most(&was) - most(&is) >= WORTH_PERCENT.1
        || after.without_tension < before.without_tension
        || after.findings.len() < before.findings.len()
}

/// The same of other strings, which may also even out the steps between neighbours.
pub(super) fn is_worth_restringing(
    design: &Design,
    resolved: &Resolved,
    analyses: (&Analysis, &Analysis),
) -> bool {
    let wanted = wanted(design, resolved);
    let step = |analysis: &Analysis| {
        off(design.targets.wants, &wanted, analysis).step.map_or(0.0, |(_, step)| step)
    };
    is_worth(design, resolved, analyses) || step(analyses.0) - step(analyses.1) >= WORTH_PERCENT.1
}

/// How near the curve the strings are, before and after. The curve is that of the design as it is.
pub(super) fn off_lines(
    design: &Design,
    resolved: &Resolved,
    (before, after): (&Analysis, &Analysis),
) -> Vec<Line> {
    let wants = design.targets.wants;
    let mean_off = match wants {
        WantsSpec::Stiffness => say::LINE_OFF_FEEL,
        WantsSpec::Tension => say::LINE_OFF_TENSION,
    };
    let wanted = wanted(design, resolved);
    let (was, is) = (off(wants, &wanted, before), off(wants, &wanted, after));
    let at = |entry: Option<(usize, f64)>| match entry {
        Some((index, off)) => format!("{} %, {}", percent(off), within(before, index)),
        None => NONE.to_owned(),
    };
    let mean = |off: &Off| match off.most {
        Some(_) => format!("{} %", decimals(off.mean, 1)),
        None => NONE.to_owned(),
    };
    vec![
        line(mean_off, mean(&was), mean(&is)),
        line(say::LINE_OFF_MOST, at(was.most), at(is.most)),
        line(say::LINE_STEP, at(was.step), at(is.step)),
    ]
}

pub(super) fn line(what: Words, before: String, after: String) -> Line {
    Line { what: what.into(), before, after }
}

/// Before and after, side by side.
pub(super) fn lines(
    task: &Task,
    design: &Design,
    resolved: &Resolved,
    (before, after): (&Totals, &Totals),
    analyses: (&Analysis, &Analysis),
) -> Vec<Line> {
    let whole = |number: usize| number.to_string();
    let mut lines = ranges(design, analyses);
    lines.extend(off_lines(design, resolved, analyses));
    lines.extend([
        line(say::LINE_CHANGES, whole(before.changes), whole(after.changes)),
        line(say::LINE_DIFFERENT, whole(before.different), whole(after.different)),
    ]);
    if task.search.stock.iter().any(|item| item.price.is_some()) {
        let price = |sum: f64, without: usize| {
            let text = money(task, sum);
            match without {
                0 => text,
                some => say::price_and_without(&some, &text),
            }
        };
        lines.push(line(
            say::LINE_PRICE,
            price(before.price, before.without_price),
            price(after.price, after.without_price),
        ));
    }
    lines
}

fn money(task: &Task, sum: f64) -> String {
    format!("{} {}", decimals(sum, 2), task.currency).trim_end().to_owned()
}

/// What is known of a set beside its proof.
pub(super) struct Says {
    /// The strings are that set already.
    pub is_there: bool,
    /// How many strings stay that are not in the stock.
    pub unlisted: usize,
    /// Where the strings that are there now are nearer to what is wanted: what limits they break.
    pub nearer: Option<Vec<String>>,
}

/// How sure it is that the set is the best, and how it stands to the strings that are there.
pub(super) fn proof(
    task: &Task,
    best: Option<&Best>,
    told: &Says,
    analysis: &Analysis,
) -> Vec<String> {
    let Some(best) = best else { return Vec::new() };
    let mut says = Vec::new();
    if told.is_there {
        says.push(say::IS_THERE.into());
    }
    match &told.nearer {
        Some(broken) if broken.is_empty() => {
            says.push(say::NEARER.into());
        }
        Some(broken) => says.push(say::nearer_but(&joined(broken, say::and))),
        None => {}
    }
    let from = if task.search.stock.len() > task.items.len() { "both" } else { "stock" };
    if best.proven {
        let total = task.search.rules.most_total.is_some();
        says.push(say::proved(&from, &total));
    } else {
        let sum = best.set.parts.sum();
        let share = if sum > 0.0 { 100.0 * best.gap() / sum } else { 0.0 };
        says.push(say::within(&decimals(share.max(0.1), 1)));
    }
    if told.unlisted > 0 {
        says.push(say::unlisted_stay(&told.unlisted));
    }
    if let Some(index) = best.tie {
        says.push(say::tie(&within(analysis, index)));
    }
    says
}

/// Why there is no set within the limits.
pub(super) fn conflicts(task: &Task, refusal: &Refusal, analysis: &Analysis) -> Vec<String> {
    let mut says = Vec::new();
    if task.items.is_empty() {
        says.push(say::STOCK_EMPTY.into());
        return says;
    }
    // Neighbours for the same reasons are told together.
    let mut at = 0;
    while let Some(first) = refusal.without_item.get(at) {
        let reason = reasons(first);
        let mut last = at;
        while refusal.without_item.get(last + 1).is_some_and(|next| {
            next.string == refusal.without_item[last].string + 1 && leading(next) == leading(first)
        }) {
            last += 1;
        }
        let strings = (first.string, refusal.without_item[last].string);
        let remedy = leading(first).map_or(say::DO_STOCK_STRINGS, remedy);
        says.push(say::nothing_for(&reason, &remedy, &span(analysis, strings)));
        at = last + 1;
    }
    for conflict in &refusal.conflicts {
        says.extend(of_conflict(conflict, refusal, analysis));
    }
    if says.is_empty() {
        says.push(say::NO_SET.into());
    }
    says
}

fn of_conflict(conflict: &Conflict, refusal: &Refusal, analysis: &Analysis) -> Option<String> {
    // Those of a string without any item were told with their numbers.
    let (first, last) = conflict.strings;
    let told = |no: &NoItem| first == no.string && last == no.string;
    if refusal.without_item.iter().any(told) || conflict.limits.is_empty() {
        return None;
    }
    let said = |of: fn(LimitKind) -> Words| -> Vec<String> {
        conflict.limits.iter().map(|kind| of(*kind).into()).collect()
    };
    let (count, strings) = (conflict.limits.len(), span(analysis, conflict.strings));
    let limits = joined(&said(limit), say::and);
    let remedies = joined(&said(remedy), say::or);
    Some(match conflict.least_total.map(total_in_n) {
        Some(total) => say::cannot_keep_least(&count, &limits, &remedies, &strings, &total),
        None => say::cannot_keep(&count, &limits, &remedies, &strings),
    })
}

fn total_in_n(total: Force) -> String {
    total_with_unit(total, ForceUnit::Newton)
}

/// The rule that most items break on a string, those that break it alone first.
fn leading(no: &NoItem) -> Option<LimitKind> {
    let mut best: Option<(LimitKind, (usize, usize))> = None;
    for kind in LIMITS {
        let (all, alone) = of(no, kind);
        if all > 0 && best.is_none_or(|(_, held)| (alone, all) > held) {
            best = Some((kind, (alone, all)));
        }
    }
    best.map(|(kind, _)| kind)
}

fn of(no: &NoItem, kind: LimitKind) -> (usize, usize) {
    no.broken.get(kind as usize).copied().unwrap_or_default()
}

/// What is wrong with the items on a string, the commonest first.
fn reasons(no: &NoItem) -> String {
    // What breaks is too tight as well, and what is sold for other notes would be so at any pull.
    let mut counts: Vec<(LimitKind, usize)> = LIMITS
        .iter()
        .map(|kind| (*kind, of(no, *kind).0))
        .filter(|(_, count)| *count > 0)
        .collect();
    if counts.iter().any(|(kind, _)| *kind == LimitKind::MostShare) {
        counts.retain(|(kind, _)| *kind != LimitKind::Breaks);
    }
    crate::engine::order::sort(&mut counts, |one, other| one.1 < other.1);
    let said: Vec<String> =
        counts.iter().take(3).map(|(kind, count)| why_not(*kind, *count)).collect();
    if said.is_empty() {
        return say::NO_ITEM_THERE.into();
    }
    joined(&said, say::and)
}

/// What a nearest set breaks.
pub(super) fn broken(broken: &[Broken], analysis: &Analysis) -> Vec<String> {
    let mut told: Vec<(LimitKind, (usize, usize), f64)> = Vec::new();
    for entry in broken {
        let (kind, strings, amount) = (entry.limit.kind, entry.strings, entry.limit.amount);
        // Breaking is told as too tight.
        if kind == LimitKind::Breaks {
            continue;
        }
        match told.last_mut() {
            Some(last) if last.0 == kind && strings.0 <= last.1.1 + 1 => {
                last.1.1 = last.1.1.max(strings.1);
                last.2 = last.2.max(amount);
            }
            _ => told.push((kind, strings, amount)),
        }
    }
    let sentence = |(kind, strings, amount): (LimitKind, (usize, usize), f64)| {
        let over = percent(100.0 * (amount.exp() - 1.0));
        let on = span(analysis, strings);
        match kind {
            LimitKind::MostShare => say::passed_share(&over, &on),
            LimitKind::LeastShare => say::missed_share(&over, &on),
            LimitKind::Total => say::passed_total(&percent(100.0 * amount)),
            LimitKind::Changes | LimitKind::Items => say::passed(&limit(kind)),
            _ => say::not_kept(&limit(kind), &on),
        }
    };
    told.into_iter().map(sentence).collect()
}

/// An alternative in a line.
pub(super) fn alternative(task: &Task, set: &Set, off_percent: f64) -> String {
    let mut text = say::alternative(&set.different, &decimals(off_percent, 1));
    if set.price > 0.0 {
        text = format!("{text}, {}", money(task, set.price));
    }
    text
}

/// One string, or from one to another, within a sentence.
pub(super) fn span(analysis: &Analysis, (first, last): (usize, usize)) -> String {
    if first == last {
        return within(analysis, first);
    }
    let short = |index: usize| match note(analysis, index) {
        Some(note) => format!("{}, {note}", index + 1),
        None => (index + 1).to_string(),
    };
    say::strings_from_to(&short(first), &short(last))
}

/// A string by its number and note, within a sentence.
pub(super) fn within(analysis: &Analysis, index: usize) -> String {
    match note(analysis, index) {
        Some(note) => say::string_at(&note, &(index + 1)),
        None => say::string_numbered(&(index + 1)),
    }
}

fn note(analysis: &Analysis, index: usize) -> Option<String> {
    Some(analysis.strings.get(index)?.note?.printed())
}

/// `one, another and a third`, with the message for the last of them.
fn joined(texts: &[String], last_of: fn(&dyn Display, &dyn Display) -> String) -> String {
    match texts {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => last_of(last, &first.join(", ")),
    }
}
