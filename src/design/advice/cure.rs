//! The edit that mends a finding. Every edit is tried on the string and those around it before it is offered: the
//! finding must be gone then, and no new one may have come.

use std::borrow::Cow;
use std::{iter, mem};

use super::{longer, midway, shorter, thicker, usual_nylon};
use crate::design::display::kept;
use crate::design::document::{Design, GaugeUnit, MechanismKind, StockItem, StringSpec};
use crate::design::edit::{ChosenBy, Column, Edit, Made, Taken, cell_text};
use crate::design::resolve::resolve;
use crate::design::settings::Setting;
use crate::design::stock::{Shelf, is_same};
use crate::design::typed::{gauge, with_point, with_unit};
use crate::design::{display, make_up_text};
use crate::engine::analysis::{Analysis, analyse_changed, on_line};
use crate::engine::findings::{Finding, FindingKind};
use crate::engine::material::key_of;
use crate::engine::units::Length;
use crate::words::findings as say;

/// How many strings on each side of the one to mend are looked at: as far as findings and blame look.
const AROUND: usize = 4;
/// How far a length must lie from the line of the lengths around before it is taken for the cause, as the logarithm
/// of the ratio: 2 %. Common practice, no source.
const LENGTH_OFF: f64 = 0.02;

/// The most turns that are offered: more would lie over one another on most pins. Common practice, no source.
const MOST_TURNS_OFFERED: f64 = 8.0;

/// An edit that mends a finding, with the words for its button.
#[derive(Clone, Debug, PartialEq)]
pub struct Cure {
    /// What it does: `Shorten to 214 mm`.
    pub label: String,
    /// The edit.
    pub edit: Edit,
}

/// What may be put into a cell: the verb that its words are chosen by, the cell and the text.
type Try = (&'static str, Column, String);

const SET: &str = "set";
const SHORTEN: &str = "shorten";
const LENGTHEN: &str = "lengthen";
const USE: &str = "use";

/// The edit that mends a finding, where one does: of a setting, or of one cell. Of the edits that leave no finding around the string,
/// the first by what departs most: the make-up, the length, the gauge; else the one that leaves the fewest.
pub fn cure(finding: &Finding, design: &Design, analysis: &Analysis) -> Option<Cure> {
    let row = finding.index;
    design.strings.get(row)?;
    analysis.strings.get(row)?;
    match finding.kind {
        FindingKind::Turns { turns, .. } => {
            let number = turns.ceil();
            if number > MOST_TURNS_OFFERED {
                return None;
            }
            let label = say::cure_turns(&display::decimals(number, 0));
            return Some(Cure {
                label,
                edit: Edit::Setting { setting: Setting::Turns, number: Some(number) },
            });
        }
        FindingKind::Note { meant, .. } => {
            let edit = Edit::Cell { row, column: Column::Note, text: meant.to_string() };
            return Some(Cure { label: say::cure_note(&meant.printed()), edit });
        }
        FindingKind::TightRaise { .. } => {
            let (rows, kind) = (row..row + 1, Some(MechanismKind::None));
            let edit = Edit::StringMechanism { rows, kind };
            return Some(Cure { label: say::CURE_WITHOUT.into(), edit });
        }
        _ => {}
    }
    // What is found on a string with a wrong note goes with it.
    let is_note = |one: &&Finding| one.index == row && matches!(one.kind, FindingKind::Note { .. });
    if analysis.findings.iter().any(|one| is_note(&one)) {
        return None;
    }
    let trial = Trial::new(finding, design);
    let before = trial.findings(None)?;
    let mut best: Option<(usize, Try)> = None;
    for one in tries(finding, design, analysis) {
        let Some(after) = trial.findings(Some(&one)) else { continue };
        let is_rid =
            |found: &Finding| found.index != trial.index || !is_alike(&found.kind, &finding.kind);
        let is_old = |found: &Finding| {
            before.iter().any(|old| old.index == found.index && is_alike(&old.kind, &found.kind))
        };
        if !after.iter().all(|found| is_rid(found) && is_old(found)) {
            continue;
        }
        if best.as_ref().is_none_or(|(left, _)| after.len() < *left) {
            best = Some((after.len(), one));
        }
        if after.is_empty() {
            break;
        }
    }
    let (verb, column, text) = best?.1;
    let shown = match (column, make_up_text::read(&text)) {
        (Column::MakeUp, Ok(make_up)) => display::make_up(&make_up, design.units.gauge),
        (Column::MakeUp, _) => text.clone(),
        // On a page in inches, whatever the string that it is taken from was typed in.
        (Column::Gauge, _) if design.units.gauge == GaugeUnit::Thou => match gauge(&text) {
            Ok(gauge) => display::gauge_with_unit(gauge, GaugeUnit::Thou),
            Err(_) => text.clone(),
        },
        _ => display::as_said(&with_point(&with_unit(&text, "mm"))),
    };
    Some(Cure { label: say::cure(&shown, &verb), edit: Edit::Cell { row, column, text } })
}

/// An edit that makes a string another one, with the order code of a string of the design or an item of the stock
/// that is just so; else as it is.
pub fn with_code<'a>(edit: &'a Edit, design: &Design, stock: &[StockItem]) -> Cow<'a, Edit> {
    let Edit::Cell { row, column: Column::Gauge | Column::MakeUp, .. } = edit else {
        return Cow::Borrowed(edit);
    };
    let after = edit.apply(design);
    let Some(string) = after.strings.get(*row) else { return Cow::Borrowed(edit) };
    let is_like = |other: &&StringSpec| {
        !other.order_code.trim().is_empty()
            && is_same(&design.materials, &other.make_up, &string.make_up)
    };
    let mut made = Made::of(string);
    let mut item = None;
    if let Some(like) = after.strings.iter().find(is_like) {
        (made.order_code, made.stock_key) = (like.order_code.clone(), like.stock_key);
    } else if let Ok(found) = Shelf::new(&design.materials, stock).find(string) {
        let found = &stock[found.index];
        (made.order_code, made.stock_key) = (found.code.clone(), found.key);
        item = Some(found.clone());
    }
    if made.order_code.trim().is_empty() {
        return Cow::Borrowed(edit);
    }
    let strings = vec![Taken { row: *row, made: Some(made), length: None }];
    let stock = item.into_iter().collect();
    let chosen_by = ChosenBy::default();
    Cow::Owned(Edit::Take { strings, stock, materials: Vec::new(), chosen_by })
}

/// What may mend a finding, the likeliest first.
fn tries(finding: &Finding, design: &Design, analysis: &Analysis) -> Vec<Try> {
    let (row, units) = (finding.index, design.units);
    let Some(string) = design.strings.get(row) else { return Vec::new() };
    let mut all: Vec<Try> = Vec::new();
    if let FindingKind::LengthOff { line, .. } = finding.kind {
        return vec![(SET, Column::Length, kept(|| midway(line, units.length)))];
    }
    let above = row.checked_sub(1).and_then(|above| design.strings.get(above));
    let below = design.strings.get(row + 1);
    let make_up = |string: &StringSpec| cell_text(string, Column::MakeUp);
    let around: Vec<&StringSpec> = above.into_iter().chain(below).collect();
    let as_neighbours = || {
        let texts = around.iter().map(|other| make_up(other)).filter(|text| !text.is_empty());
        texts.map(|text| (USE, Column::MakeUp, text))
    };
    // A string that is made of other materials than both of its neighbours stands alone; one at an end if the next two
    // are alike.
    let is_of = |place: Option<usize>, other: &StringSpec| {
        let one = place.and_then(|place| design.strings.get(place));
        one.is_some_and(|one| materials(one) == materials(other))
    };
    let at_end = around.len() < 2;
    if around.iter().all(|other| materials(other) != materials(string))
        && (!at_end
            || around
                .iter()
                .all(|other| is_of(row.checked_sub(2), other) || is_of(Some(row + 2), other)))
    {
        all.extend(around.iter().filter_map(|other| of_its_materials(string, other)));
        all.extend(as_neighbours());
    }
    let length = |index: usize| Some(analysis.strings.get(index)?.length.ok()?.to_m());
    let says_midway = matches!(finding.kind, FindingKind::OutOfLine { between: Some(_), .. });
    if let (false, Some(is), Some(should)) =
        (says_midway, length(row), on_line(row, design.strings.len(), &length))
        && (is / should).ln().abs() > LENGTH_OFF
    {
        all.push((SET, Column::Length, kept(|| midway(Length::from_m(should), units.length))));
    }
    match finding.kind {
        FindingKind::Breaks { longest, .. } | FindingKind::Overworked { longest, .. } => {
            all.push((SHORTEN, Column::Length, kept(|| shorter(longest, units.length))));
        }
        FindingKind::Slack { shortest, .. } => {
            all.push((LENGTHEN, Column::Length, kept(|| longer(shortest, units.length))));
        }
        FindingKind::LittlePull { thinnest: Some(thinnest), .. } => {
            let nylon = key_of(&string.make_up.material) == Some("nylon");
            let usual = nylon.then(|| usual_nylon(thinnest, units.gauge)).flatten();
            all.push((
                USE,
                Column::Gauge,
                usual.unwrap_or_else(|| kept(|| thicker(thinnest, units.gauge))),
            ));
        }
        FindingKind::OutOfLine { between: Some(between), .. } => {
            all.push((SET, Column::Length, kept(|| midway(between, units.length))));
        }
        _ => {}
    }
    if !string.make_up.is_plain() {
        all.extend(as_neighbours());
        return all;
    }
    let gauges = around.iter().filter(|other| materials(other) == materials(string));
    let gauges = gauges.map(|other| other.make_up.diameter.trim()).filter(|text| !text.is_empty());
    all.extend(gauges.map(|text| (USE, Column::Gauge, text.to_owned())));
    let kin = |index: usize| {
        let other = design.strings.get(index)?;
        let gauge = analysis.strings.get(index)?.gauge.ok()?.to_m();
        (materials(other) == materials(string)).then_some(gauge)
    };
    if let Some(gauge) = on_line(row, design.strings.len(), &kin) {
        all.push((USE, Column::Gauge, kept(|| thicker(Length::from_m(gauge), units.gauge))));
    }
    all
}

/// A string's own make-up of a neighbour's materials, where both have as many layers.
fn of_its_materials(string: &StringSpec, other: &StringSpec) -> Option<Try> {
    let mut changed = string.clone();
    let (own, its) = (&mut changed.make_up, &other.make_up);
    if own.weighed.is_some() || its.weighed.is_some() || own.layers.len() != its.layers.len() {
        return None;
    }
    own.material.clone_from(&its.material);
    for (layer, its) in own.layers.iter_mut().zip(&its.layers) {
        layer.material.clone_from(&its.material);
    }
    Some((USE, Column::MakeUp, cell_text(&changed, Column::MakeUp)))
}

/// The materials of a string by their keys, from the core outwards.
fn materials(string: &StringSpec) -> Vec<&str> {
    let layers = string.make_up.layers.iter().map(|layer| &*layer.material);
    let all = iter::once(&*string.make_up.material).chain(layers);
    all.map(|text| key_of(text).unwrap_or_else(|| text.trim())).collect()
}

/// A string with those around it, on which an edit is tried.
struct Trial {
    part: Design,
    /// The place of the string in the part.
    index: usize,
}

impl Trial {
    fn new(finding: &Finding, design: &Design) -> Self {
        let first = finding.index.saturating_sub(AROUND);
        let end = (finding.index + AROUND + 1).min(design.strings.len());
        let part = Design {
            pitch: design.pitch.clone(),
            pluck_percent: design.pluck_percent,
            pluck_mm: design.pluck_mm,
            mechanism: design.mechanism.clone(),
            limits: design.limits.clone(),
            allowances: design.allowances.clone(),
            materials: design.materials.clone(),
            strings: design.strings[first..end].to_vec(),
            ..Design::default()
        };
        Self { part, index: finding.index - first }
    }

    /// The findings with a text in a cell of the string; `None` where the string then has no tension or its gauge
    /// follows from other things.
    fn findings(&self, tried: Option<&Try>) -> Option<Vec<Finding>> {
        let edited = match tried {
            None => None,
            Some((_, Column::Gauge, _)) if !self.part.strings[self.index].make_up.is_plain() => {
                return None;
            }
            Some((_, column, text)) => {
                let edit = Edit::Cell { row: self.index, column: *column, text: text.clone() };
                Some(edit.apply(&self.part))
            }
        };
        let resolved = resolve(edited.as_ref().unwrap_or(&self.part));
        let analysis = analyse_changed(&resolved.harp, Some(self.index));
        analysis.strings[self.index].tension.is_ok().then_some(analysis.findings)
    }
}

/// Whether two findings are of one kind; breaking and overworked are.
pub(super) fn is_alike(one: &FindingKind, other: &FindingKind) -> bool {
    use FindingKind::{Breaks, Overworked};
    let overload = |kind: &FindingKind| matches!(kind, Breaks { .. } | Overworked { .. });
    mem::discriminant(one) == mem::discriminant(other) || (overload(one) && overload(other))
}
