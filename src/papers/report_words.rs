//! What a report says, in words: the rows of its tables and its lists.

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
use crate::engine::material::{Material, Sourced, Standing};

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
const HEADS: [&str; 7] =
    ["vibrating", "gauge", "pitch", "tension", "pluck stiffn.", "load share", "partial 8"];

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
    let words = |top, bottom| Column { head: [top, bottom], figures: false };
    let figures = |top, bottom| Column { head: [top, bottom], figures: true };
    let unit = |figure| display::figure_unit(figure, units);
    match kind {
        TableKind::Figures => {
            let first = [
                figures("no.", ""),
                words("string", ""),
                words("note", ""),
                words("make-up", "core first, mm"),
            ];
            let rest = FIGURES.iter().zip(HEADS).map(|(of, head)| figures(head, unit(*of)));
            first.into_iter().chain(rest).collect()
        }
        TableKind::Loads => {
            vec![
                words("part", ""),
                words("used, estimated", ""),
                words("what leads, and where", ""),
            ]
        }
        TableKind::Forces => vec![words("force", ""), words("how much", "")],
        TableKind::Compared => vec![
            words("string", ""),
            words("note", ""),
            words("make-up", ""),
            words("length", unit(Figure::Length)),
            words("gauge", unit(Figure::Gauge)),
            words("tension", unit(Figure::Tension)),
            words("pluck stiffness", unit(Figure::PluckStiffness)),
            words("load share", unit(Figure::LoadShare)),
        ],
        _ => vec![words("what", ""), words("before", ""), words("after", "")],
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
    let missing = match analysis.without_tension {
        0 => String::new(),
        1 => " One string without a tension is not in it.".to_owned(),
        count => format!(" {count} strings without a tension are not in it."),
    };
    let mut lines = vec![format!(
        "{} strings. Total tension {} ({}, {}).{missing}",
        design.strings.len(),
        in_units[0],
        in_units[1],
        in_units[2]
    )];
    let tightest = analysis.tightest.and_then(|index| {
        let figures = analysis.strings.get(index)?;
        let share = figures.load_share_percent.ok()?;
        Some((display::string_name(figures), display::percent(share)))
    });
    if let Some((name, share)) = tightest {
        lines.push(format!("Tightest: {name}, at {share} % of its breaking load."));
    }
    let count = analysis.findings.len();
    lines.push(match count {
        0 => "No findings on the strings.".to_owned(),
        1 => "One finding on the strings, told below.".to_owned(),
        _ => format!("{count} findings on the strings, told below."),
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
        all.extend(texts.map(|error| format!("String {}: {}", index + 1, sentence(error))));
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
            FindingKind::Feel { stiffness, band } if run.len() > 1 => format!(
                "Strings {} to {}: {}",
                first.index + 1,
                last.index + 1,
                advice::feel_of_several(stiffness, band, &design.units)
            ),
            _ => advice::sentence(first, analysis, &design.units),
        };
        let weight = match first.kind.weight() {
            Weight::Grave => "Grave. ",
            Weight::Warning => "Warning. ",
            Weight::Remark => "",
        };
        all.push(format!("{weight}{words}"));
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
        return vec!["No string has a material whose figures are used.".to_owned()];
    }
    used.into_iter().map(of_material).collect()
}

fn of_material(material: &Material) -> String {
    let told = |what: &str, source: &str, standing| {
        // What was not found says so with a capital, as it stands alone in the list of the materials.
        let source = source.trim_end_matches('.').replacen("Source: to be", "source to be", 1);
        format!("{what}: {source} ({})", explain::standing(standing))
    };
    fn of<T>(fact: &Option<Sourced<T>>) -> Option<(&str, Standing)> {
        fact.as_ref().map(|fact| (&*fact.source, fact.standing))
    }
    let density = format!("density {} kg/m³", display::density(material.density.value));
    let mut parts = vec![told(&density, &material.density.source, material.density.standing)];
    for (what, fact) in [
        ("strength", of(&material.strength)),
        ("stiffness when it sounds", of(&material.modulus)),
        ("stiffness over minutes", of(&material.intermediate_modulus)),
        ("stiffness over weeks", of(&material.slow_modulus)),
    ] {
        if let Some((source, standing)) = fact {
            parts.push(told(what, source, standing));
        }
    }
    format!("{}. {}.", clean(&material.name), capital(&parts.join("; ")))
}

/// The strings that differ: where a figure does, both of it.
pub(super) fn differing(found: &Comparison) -> Vec<Row> {
    let rows = found.strings.iter().filter(|string| string.differs()).map(|string| {
        let number = string.after.or(string.before).map_or(0, |index| index + 1);
        let sign = match (string.before, string.after) {
            (None, _) => ", new",
            (_, None) => ", gone",
            _ => "",
        };
        let cell = |pair: &Pair| match (string.before, string.after) {
            (None, _) => pair.after.clone(),
            (_, None) => pair.before.clone(),
            _ if pair.differs() => format!("{} → {}", pair.before, pair.after),
            _ => pair.before.clone(),
        };
        let first = [format!("{number}{sign}")];
        Row::of(first.into_iter().chain(string.cells.iter().map(cell)).collect::<Vec<_>>())
    });
    rows.collect()
}
