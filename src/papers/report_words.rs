//! What a report says, in words: the rows of its tables and its lists.

use std::fmt::Display;

use super::measure::clean;
use super::rows::strings;
use super::sheet::{Column, Mark, TableKind};
use crate::design::advice;
use crate::design::bearing_words::{self, PartWords};
use crate::design::compare::{Comparison, Pair};
use crate::design::display;
use crate::design::document::{Design, ForceUnit, Units};
use crate::design::explain;
use crate::design::letters::capital;
use crate::design::resolve::Resolved;
use crate::engine::analysis::{Analysis, Harp};
use crate::engine::bearing::Bearing;
use crate::engine::figure::Figure;
use crate::engine::findings::{Finding, FindingKind, Weight};
use crate::engine::material::said;
use crate::engine::material::{Material, Sourced};
use crate::words::{Words, papers, report as say};

pub(super) use crate::design::bearing_words::assumptions;

/// The figures of a string in a report, after its make-up.
const FIGURES: [Figure; 7] = [
    Figure::Length,
    Figure::Gauge,
    Figure::Frequency,
    Figure::Tension,
    Figure::PluckStiffness,
    Figure::LoadShare,
    Figure::Partial8,
];
/// Their heads.
const HEADS: [Words; 7] = [
    papers::HEAD_VIBRATING,
    say::HEAD_GAUGE,
    say::HEAD_PITCH,
    say::HEAD_TENSION,
    say::HEAD_PLUCK,
    say::HEAD_LOAD_SHARE,
    say::HEAD_PARTIAL,
];

/// A row of a table.
pub(super) struct Row {
    pub mark: Option<Mark>,
    pub cells: Vec<String>,
}

impl Row {
    pub(super) fn of(cells: impl Into<Vec<String>>) -> Self {
        Self { mark: None, cells: cells.into() }
    }
}

/// The heads of a table of a report.
pub(super) fn heads(kind: TableKind, units: &Units) -> Vec<Column> {
    let words = |top: Words, bottom| Column { head: [top.said(), bottom], figures: false };
    let figures = |top: Words, bottom| Column { head: [top.said(), bottom], figures: true };
    let unit = |figure| display::figure_unit(figure, units);
    match kind {
        TableKind::Figures => {
            let first = [
                figures(papers::HEAD_NUMBER, ""),
                words(papers::HEAD_OCTAVE, ""),
                words(papers::HEAD_NOTE, ""),
                words(papers::HEAD_MAKE_UP, papers::HEAD_CORE_FIRST.said()),
            ];
            let rest = FIGURES.iter().zip(HEADS).map(|(of, head)| figures(head, unit(*of)));
            first.into_iter().chain(rest).collect()
        }
        TableKind::Loads => {
            vec![words(say::HEAD_PART, ""), words(say::HEAD_USED, ""), words(say::HEAD_LEADS, "")]
        }
        TableKind::Forces => {
            vec![words(say::HEAD_FORCE, ""), words(say::HEAD_HOW_MUCH, "")]
        }
        TableKind::Compared => vec![
            words(papers::HEAD_STRING, ""),
            words(papers::HEAD_NOTE, ""),
            words(papers::HEAD_MAKE_UP, ""),
            words(say::HEAD_LENGTH, unit(Figure::Length)),
            words(say::HEAD_GAUGE, unit(Figure::Gauge)),
            words(say::HEAD_TENSION, unit(Figure::Tension)),
            words(say::HEAD_PLUCK_LONG, unit(Figure::PluckStiffness)),
            words(say::HEAD_LOAD_SHARE, unit(Figure::LoadShare)),
        ],
        _ => {
            vec![words(say::HEAD_WHAT, ""), words(say::HEAD_BEFORE, ""), words(say::HEAD_AFTER, "")]
        }
    }
}

/// Every string, and what explains the words of the make-ups.
pub(super) fn string_rows(design: &Design, analysis: &Analysis) -> (Vec<Row>, String) {
    let said = strings(design, analysis);
    let rows = said.rows.into_iter().zip(&analysis.strings).map(|(words, figures)| {
        // Number, string, note and make-up as on the card.
        let first = words.cells.into_iter().take(4);
        let known = |of: &Figure| {
            display::figure(*of, figures, &design.units)
                .unwrap_or_else(|_| display::NONE.to_owned())
        };
        Row { mark: words.mark, cells: first.chain(FIGURES.iter().map(known)).collect() }
    });
    (rows.collect(), said.legend)
}

/// The harp in a few sentences.
pub(super) fn summary(design: &Design, analysis: &Analysis) -> Vec<String> {
    let total = analysis.total_tension;
    let in_units = [ForceUnit::Newton, ForceUnit::Kgf, ForceUnit::Lbf]
        .map(|unit| display::total_with_unit(total, unit));
    let count = design.strings.len();
    let [newton, kgf, lbf] = &in_units;
    let mut lines = vec![say::total(&count, kgf, lbf, &analysis.without_tension, newton)];
    let tightest = analysis.tightest.and_then(|index| {
        let figures = analysis.strings.get(index)?;
        let share = figures.load_share_percent.ok()?;
        Some((display::string_number(figures), display::percent(share)))
    });
    if let Some((name, share)) = tightest {
        lines.push(say::tightest(&share, &name));
    }
    lines.push(match analysis.findings.len() {
        0 => say::NO_FINDINGS.into(),
        count => say::findings_told(&count),
    });
    lines
}

/// The parts of the frame, judged.
pub(super) fn part_rows(parts: &[PartWords]) -> Vec<Row> {
    let row = |part: &PartWords| {
        let why = format!("{} {}", part.why, part.mend.unwrap_or_default());
        Row::of([part.name.to_owned(), part.head(), why.trim().to_owned()])
    };
    parts.iter().map(row).collect()
}

/// The forces.
pub(super) fn forces(bearing: &Bearing, units: Units) -> Vec<Row> {
    let forces = bearing_words::forces(bearing, units);
    forces.into_iter().map(|(what, how_much)| Row::of([what.to_owned(), how_much])).collect()
}

/// What cannot be read, then what was found, the weightiest first as the analysis has them.
pub(super) fn findings(design: &Design, resolved: &Resolved, analysis: &Analysis) -> Vec<String> {
    let sentence = |error: &str| capital(&format!("{}.", error.trim_end_matches('.')));
    let mut all: Vec<String> = resolved.errors.iter().map(|error| sentence(error)).collect();
    for (index, errors) in resolved.cells.iter().enumerate() {
        let texts = [&errors.note, &errors.length, &errors.make_up, &errors.gauge];
        let texts = texts.into_iter().flatten();
        all.extend(texts.map(|error| say::of_string(&sentence(error), &(index + 1))));
    }
    let side = |finding: &Finding| match finding.kind {
        FindingKind::Feel { stiffness, band } => Some(stiffness < band.0),
        _ => None,
    };
    // Neighbours that all feel too soft, or all too stiff, share a line.
    let together = |one: &Finding, next: &Finding| {
        side(one).is_some() && side(one) == side(next) && next.index == one.index + 1
    };
    for run in analysis.findings.chunk_by(together) {
        let (first, last) = (&run[0], &run[run.len() - 1]);
        let words = match first.kind {
            FindingKind::Feel { stiffness, band } if run.len() > 1 => {
                let feel = advice::feel_of_several(stiffness, band, &design.units);
                say::of_strings(&feel, &(first.index + 1), &(last.index + 1))
            }
            _ => advice::sentence(first, analysis, &design.units),
        };
        all.push(match first.kind.weight() {
            Weight::Grave => say::grave(&words),
            Weight::Warning => say::warning(&words),
            Weight::Remark => words,
        });
    }
    all
}

/// The materials of the strings, each figure with its source and how well it is known.
pub(super) fn sources(harp: &Harp) -> Vec<String> {
    let mut used: Vec<&Material> = Vec::new();
    let made = harp.strings.iter().filter_map(|string| string.make_up.as_ref().ok());
    for make_up in made {
        let core = make_up.core().map(|(material, _)| material);
        for material in core.into_iter().chain(make_up.layers().iter().map(|layer| &layer.material))
        {
            if !used.iter().any(|other| other.key == material.key) {
                used.push(material);
            }
        }
    }
    if used.is_empty() {
        return vec![say::NO_MATERIAL.into()];
    }
    used.into_iter().map(of_material).collect()
}

fn of_material(material: &Material) -> String {
    /// What a fact rests on, ready to stand within a sentence, and how well it is known.
    fn rests<T>(fact: &Sourced<T>) -> (String, String) {
        let source = said(&fact.source).trim_end_matches('.');
        let source = source.replacen(SOUGHT.0, SOUGHT.1, 1);
        (source, explain::standing(fact.standing).to_string())
    }
    type Told = fn(&dyn Display, &dyn Display) -> String;
    fn told<T>(fact: &Option<Sourced<T>>, say: Told) -> String {
        let Some((source, standing)) = fact.as_ref().map(rests) else { return String::new() };
        say(&source, &standing)
    }
    let (source, standing) = rests(&material.density);
    let density = say::density(&display::density(material.density.value), &source, &standing);
    let more = [
        told(&material.strength, say::strength),
        told(&material.modulus, say::stiffness_sounding),
        told(&material.intermediate_modulus, say::stiffness_minutes),
        told(&material.slow_modulus, say::stiffness_weeks),
    ];
    say::material(&density, &more.concat(), &clean(said(&material.name)))
}

/// What was not found says so with a capital, as it stands alone in the list of the materials; and within a sentence.
const SOUGHT: (&str, &str) = ("Source: t", "source: t");

/// The strings that differ: where a figure does, both of it.
pub(super) fn differing(found: &Comparison) -> Vec<Row> {
    let rows = found.strings.iter().filter(|string| string.differs()).map(|string| {
        let number = string.after.or(string.before).map_or(0, |index| index + 1);
        let first = match (string.before, string.after) {
            (None, _) => say::new(&number),
            (_, None) => say::gone(&number),
            _ => number.to_string(),
        };
        let cell = |pair: &Pair| match (string.before, string.after) {
            (None, _) => pair.after.clone(),
            (_, None) => pair.before.clone(),
            _ if pair.differs() => format!("{} → {}", pair.before, pair.after),
            _ => pair.before.clone(),
        };
        Row::of([first].into_iter().chain(string.cells.iter().map(cell)).collect::<Vec<_>>())
    });
    rows.collect()
}
