//! A design file or a plain table in, the string table out: what the command line prints, without
//! touching a file itself.

use crate::design::advice::sentence;
use crate::design::bearing_words::csv;
use crate::design::document::Design;
use crate::design::giving;
use crate::design::library::find;
use crate::design::parts;
use crate::design::persist;
use crate::design::resolve::{CellErrors, resolve};
use crate::design::years;
use crate::engine::analysis::analyse;

use super::{TableRead, open, write};
use crate::words::tables;

/// What there is to print.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Report {
    /// The string table.
    pub csv: String,
    /// What is worth saying, the weightiest first, a sentence each.
    pub findings: Vec<String>,
    /// Headings of a plain table that were not used.
    pub ignored: Vec<String>,
    /// What each column of a table was taken for, what was assumed, and what could not be read of a
    /// table in anyone's hand; without a full stop.
    pub told: Vec<String>,
}

/// The report of a text: of a design when it begins as JSON does, else of a table. Of a table in anyone's hand
/// what cannot be read is left out and told. `likely` takes numbers without a unit for what they look like.
///
/// # Errors
///
/// Everything that cannot be read, a sentence each, with its line and column
/// (`line 3, column length_mm: …`) or its string.
pub fn report(text: &str, likely: bool) -> Result<Report, Vec<String>> {
    let (design, table) = read(text, likely)?;
    let resolved = resolve(&design);
    let mut errors = resolved.errors;
    for (index, cells) in resolved.cells.iter().enumerate() {
        let layer = table.as_ref().and_then(|table| layer_at_fault(index, &design, table));
        errors.extend(of_cells(index, cells, table.as_ref(), layer));
    }
    let mut told = table.as_ref().map(|table| table.told.clone()).unwrap_or_default();
    if table.as_ref().is_some_and(|table| table.is_by_hand) {
        told.append(&mut errors);
    }
    if !errors.is_empty() {
        return Err(errors);
    }
    let analysis = analyse(&resolved.harp);
    let say = |finding| sentence(finding, &analysis, &design.units);
    Ok(Report {
        csv: write(&design, &analysis),
        findings: analysis.findings.iter().map(say).collect(),
        ignored: table.map(|table| table.ignored).unwrap_or_default(),
        told,
    })
}

/// The design of a text: as it was saved, or with the strings of a table and the usual frame.
pub(in crate::design) fn read(
    text: &str,
    likely: bool,
) -> Result<(Design, Option<TableRead>), Vec<String>> {
    if text.trim_start_matches('\u{feff}').trim_start().starts_with(['{', '[']) {
        return Ok((persist::read(text).map_err(|error| vec![error.to_string()])?, None));
    }
    let table = open(text, likely)
        .map_err(|errors| errors.iter().map(ToString::to_string).collect::<Vec<_>>())?;
    Ok((table.clone().into_design(&Design::default()), Some(table)))
}

/// The design of a text, whatever cannot be read in its cells.
///
/// # Errors
///
/// What cannot be read at all.
pub(in crate::design) fn design(text: &str, likely: bool) -> Result<Design, Vec<String>> {
    Ok(read(text, likely)?.0)
}

/// What the frame of a text bears, as [`csv::frame`] writes it; of a table with the usual frame.
///
/// # Errors
///
/// What cannot be read, and why there is no frame.
pub fn frame(text: &str, likely: bool) -> Result<String, Vec<String>> {
    csv::frame(&read(text, likely)?.0).map_err(|error| vec![error])
}

/// How far the strings of a text fall while it is strung, as [`giving::csv`] writes it.
///
/// # Errors
///
/// What cannot be read, and why nothing can be said.
pub fn falls(text: &str, likely: bool) -> Result<String, Vec<String>> {
    giving::csv(&read(text, likely)?.0).map_err(|error| vec![error])
}

/// What the years do to the harp of a text, as [`years::csv`] writes it.
///
/// # Errors
///
/// What cannot be read, and why nothing can be said.
pub fn aged(text: &str, likely: bool) -> Result<String, Vec<String>> {
    years::csv(&read(text, likely)?.0).map_err(|error| vec![error])
}

/// The parts of the harp of a text, as [`parts::csv`] writes them; of a table with the
/// usual frame, which lacks a soundbox.
///
/// # Errors
///
/// What cannot be read, and why there are no parts.
pub fn cut(text: &str, likely: bool) -> Result<String, Vec<String>> {
    parts::csv(&read(text, likely)?.0).map_err(|error| vec![error])
}

/// What is worth saying of the parts of a text, a sentence each.
///
/// # Errors
///
/// As [`cut`].
pub fn cut_told(text: &str, likely: bool) -> Result<Vec<String>, Vec<String>> {
    let parts = parts::parts(&read(text, likely)?.0).map_err(|error| vec![error.to_string()])?;
    Ok(parts::words::told(&parts))
}

/// The heading of the layer whose material is not known, where the core's is known or not given.
fn layer_at_fault(index: usize, design: &Design, table: &TableRead) -> Option<&'static str> {
    let make_up = &design.strings.get(index)?.make_up;
    let unknown = |text: &str| !text.is_empty() && find(&design.materials, text).is_none();
    if unknown(&make_up.material) {
        return None;
    }
    let fault = make_up.layers.iter().position(|layer| unknown(&layer.material))?;
    table.layers.get(index)?.get(fault).copied()
}

/// The sentences about the cells of one string, each with its place; `layer` is the heading of the
/// layer that is at fault.
fn of_cells<'a>(
    index: usize,
    cells: &'a CellErrors,
    table: Option<&'a TableRead>,
    layer: Option<&'static str>,
) -> impl Iterator<Item = String> + 'a {
    let has = |column: &str| table.is_some_and(|table| table.columns.contains(&column));
    let length = if has("length_mm") { "length_mm" } else { "length" };
    let make_up = match table {
        Some(table) if table.string_is_make_up => "string",
        _ if has("make_up") => "make_up",
        _ => "material",
    };
    let gauge = ["diameter_mm", "gauge"].into_iter().find(|column| has(column)).unwrap_or(make_up);
    let line = table.and_then(|table| table.lines.get(index));
    [
        ("note", &cells.note),
        (length, &cells.length),
        (layer.unwrap_or(make_up), &cells.make_up),
        (gauge, &cells.gauge),
    ]
    .into_iter()
    .filter_map(move |(column, sentence)| {
        let sentence = sentence.as_ref()?;
        Some(match line {
            Some(line) => tables::in_column(&column, &line, &sentence),
            None => tables::of_string(&column, &(index + 1), &sentence),
        })
    })
}
