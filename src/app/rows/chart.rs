//! The rows of the string chart in words, and what the cell under the cursor means.

use std::sync::Arc;

use crate::app::grid::{Shown, shown};
use crate::design::display;
use crate::design::document::{Design, StringSpec, Units};
use crate::design::edit::{Column, cell_text};
use crate::design::figures;
use crate::design::letters::capital;
use crate::design::make_up_said;
use crate::design::resolve::{CellErrors, Resolved};
use crate::engine::analysis::{Analysis, Known, StringFigures};
use crate::engine::figure::Figure;
use crate::engine::findings::Weight;
use crate::engine::pitch::Letter;
use crate::engine::pitch::naming;
use crate::words::chart_page as say;
use crate::words::papers::titled;
use crate::words::{Naming, naming};

/// A cell in words.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct CellWords {
    /// What stands in it.
    pub text: String,
    /// What is wrong with what was typed.
    pub error: Option<String>,
    /// Whether it is a figure that cannot be computed.
    pub unknown: bool,
    /// Why it cannot, or what was typed when that reads otherwise.
    pub reason: Option<String>,
    /// What is typed there, if it is no figure.
    pub typed: Option<Column>,
}

impl CellWords {
    /// What a pointer that rests on the cell is told.
    pub fn title(&self) -> Option<String> {
        self.error.clone().or_else(|| self.reason.clone())
    }

    /// The text as a spreadsheet takes it: plain signs, no blank inside a number.
    pub fn plain(&self) -> String {
        self.text.replace('−', "-").replace(['\u{2009}', '\u{202f}'], "")
    }
}

/// A row in words.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct RowWords {
    /// The harpist's octave.
    pub octave: String,
    /// `C` or `F` for the strings that are coloured.
    pub mark: Option<&'static str>,
    /// The weightiest finding: 0 grave, 1 warning, 2 remark.
    pub weight: Option<u8>,
    /// One for each of the columns.
    pub cells: Vec<CellWords>,
}

/// The head of a column.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Head {
    pub word: &'static str,
    pub unit: &'static str,
    /// What the column means.
    pub meaning: &'static str,
}

/// The heads of all the columns of a design, in the units of the page.
pub fn heads(design: &Design) -> Vec<Head> {
    shown(design).into_iter().map(|shown| head(shown, &design.units)).collect()
}

/// The head of a column.
pub fn head(shown: Shown, units: &Units) -> Head {
    let column = match shown {
        Shown::Figure(figure) => {
            let (row, unit) = (figures::row(figure), display::figure_unit(figure, units));
            return Head { word: row.word.said(), unit, meaning: row.meaning.said() };
        }
        Shown::Typed(column) => column,
    };
    let (word, unit, meaning) = match column {
        Column::Note => (say::NOTE.said(), "", say::NOTE_MEANING.said()),
        Column::Length => return head(Shown::Figure(Figure::Length), units),
        Column::MakeUp => (say::STRING.said(), "", say::STRING_MEANING.said()),
        Column::Gauge => {
            (say::GAUGE.said(), display::gauge_unit(units.gauge), say::GAUGE_MEANING.said())
        }
        Column::OrderCode => (say::CODE.said(), "", say::CODE_MEANING.said()),
    };
    Head { word, unit, meaning }
}

/// Every row of the chart with all its columns.
pub fn rows(design: &Design, resolved: &Resolved, analysis: &Analysis) -> Vec<Arc<RowWords>> {
    let (weights, columns) = (weights(analysis), shown(design));
    let count = design.strings.len().min(analysis.strings.len());
    let row = |index| row(design, resolved, analysis, &columns, &weights, index);
    (0..count).map(|index| Arc::new(row(index))).collect()
}

fn row(
    design: &Design,
    resolved: &Resolved,
    analysis: &Analysis,
    columns: &[Shown],
    weights: &[Option<u8>],
    index: usize,
) -> RowWords {
    let (string, figures) = (&design.strings[index], &analysis.strings[index]);
    let none = CellErrors::default();
    let errors = resolved.cells.get(index).unwrap_or(&none);
    let cells = columns.iter().map(|shown| cell(*shown, string, figures, errors, &design.units));
    RowWords {
        octave: figures.note.map(|note| note.harp_octave().to_string()).unwrap_or_default(),
        mark: figures.note.and_then(|note| mark(note.letter())),
        weight: weights.get(index).copied().flatten(),
        cells: cells.collect(),
    }
}

/// The rows of the chart with what they were worded from, so that after an edit only the rows are worded
/// again of which something changed.
pub struct ChartWords {
    /// Every row of the chart.
    pub rows: Vec<Arc<RowWords>>,
    from: (Arc<Design>, Arc<Resolved>, Arc<Analysis>),
    columns: Arc<Vec<Shown>>,
}

impl PartialEq for ChartWords {
    /// Whether they read the same.
    fn eq(&self, other: &Self) -> bool {
        self.rows == other.rows
    }
}

impl ChartWords {
    /// The rows as they read now; `before` is how they read last.
    pub fn after(
        before: Option<&Self>,
        design: Arc<Design>,
        resolved: Arc<Resolved>,
        analysis: Arc<Analysis>,
        columns: Arc<Vec<Shown>>,
    ) -> Self {
        let weights = weights(&analysis);
        let usable = before
            .filter(|before| before.from.0.units == design.units && before.columns == columns);
        // A row that was moved has words of its own too, but is looked for at its place alone.
        let as_before = |index: usize| {
            let Self { rows, from: (its_design, its_resolved, its_analysis), .. } = usable?;
            let row = rows.get(index)?;
            let same = row.weight == weights.get(index).copied().flatten()
                && its_design.strings.get(index) == design.strings.get(index)
                && its_analysis.strings.get(index) == analysis.strings.get(index)
                && its_resolved.cells.get(index) == resolved.cells.get(index);
            same.then(|| row.clone())
        };
        let count = design.strings.len().min(analysis.strings.len());
        let again = |index| Arc::new(row(&design, &resolved, &analysis, &columns, &weights, index));
        let rows = (0..count).map(|index| as_before(index).unwrap_or_else(|| again(index)));
        Self { rows: rows.collect(), from: (design, resolved, analysis), columns }
    }
}

/// The weightiest finding of each string.
fn weights(analysis: &Analysis) -> Vec<Option<u8>> {
    let mut weights: Vec<Option<u8>> = vec![None; analysis.strings.len()];
    for finding in &analysis.findings {
        let weight = number_of(finding.kind.weight());
        if let Some(place) = weights.get_mut(finding.index) {
            *place = Some(place.map_or(weight, |before| before.min(weight)));
        }
    }
    weights
}

/// A weight as a number: 0 for the most serious.
pub(super) const fn number_of(weight: Weight) -> u8 {
    match weight {
        Weight::Grave => 0,
        Weight::Warning => 1,
        Weight::Remark => 2,
    }
}

const fn mark(letter: Letter) -> Option<&'static str> {
    match letter {
        Letter::C => Some("C"),
        Letter::F => Some("F"),
        _ => None,
    }
}

fn cell(
    shown: Shown,
    string: &StringSpec,
    figures: &StringFigures,
    errors: &CellErrors,
    units: &Units,
) -> CellWords {
    match shown {
        Shown::Typed(column) => typed_cell(column, string, figures, errors, units),
        Shown::Figure(figure) => known(display::figure(figure, figures, units)),
    }
}

fn known(figure: Known<String>) -> CellWords {
    match figure {
        Ok(text) => CellWords { text, ..CellWords::default() },
        Err(why) => CellWords {
            text: display::NONE.to_owned(),
            unknown: true,
            reason: Some(sentence(&why.to_string())),
            ..CellWords::default()
        },
    }
}

fn typed_cell(
    column: Column,
    string: &StringSpec,
    figures: &StringFigures,
    errors: &CellErrors,
    units: &Units,
) -> CellWords {
    let typed = cell_text(string, column);
    let (shown, error) = match column {
        Column::Note => (figures.note.map(|note| note.printed()), &errors.note),
        Column::Length => (
            figures.length.ok().map(|length| display::length(length, units.length)),
            &errors.length,
        ),
        Column::MakeUp => {
            let wound = string.make_up.is_wound();
            let shown = match wound {
                true => display::make_up(&string.make_up, units.gauge),
                false => make_up_said::line_said(&typed),
            };
            (Some(shown), &errors.make_up)
        }
        Column::Gauge => {
            (figures.gauge.ok().map(|gauge| display::gauge(gauge, units.gauge)), &errors.gauge)
        }
        Column::OrderCode => (None, &None),
    };
    if let Some(error) = error {
        let error = Some(sentence(error));
        return CellWords { text: typed, error, typed: Some(column), ..CellWords::default() };
    }
    // What is only said in the language of the page is no other than was typed.
    let typed = match column {
        Column::MakeUp => make_up_said::line_said(&typed),
        Column::Note if naming() != Naming::English => naming::shown(&typed),
        _ => typed,
    };
    let reason = shown.as_ref().filter(|shown| **shown != typed && !typed.is_empty());
    let reason = reason.map(|_| say::typed_as(&typed));
    CellWords { text: shown.unwrap_or(typed), reason, typed: Some(column), ..CellWords::default() }
}

/// What the cell under the cursor means, and whether it says what is wrong.
pub fn explained(
    design: &Design,
    resolved: &Resolved,
    analysis: &Analysis,
    row: usize,
    shown: Option<Shown>,
) -> (String, bool) {
    let (Some(shown), Some(string), Some(figures)) =
        (shown, design.strings.get(row), analysis.strings.get(row))
    else {
        return (String::new(), false);
    };
    let none = CellErrors::default();
    let errors = resolved.cells.get(row).unwrap_or(&none);
    let words = cell(shown, string, figures, errors, &design.units);
    let Head { word, meaning, .. } = head(shown, &design.units);
    let place = match figures.note {
        Some(note) => say::place_noted(&note.printed(), &(row + 1)),
        None => say::place(&(row + 1)),
    };
    let (text, is_wrong) = match words {
        CellWords { error: Some(error), .. } => (error, true),
        CellWords { reason: Some(reason), .. } => (reason, false),
        _ => (meaning.to_owned(), false),
    };
    (titled(&format!("{place}, {word}"), &text), is_wrong)
}

/// An engine's message as a sentence of the page.
pub fn sentence(message: &str) -> String {
    let end = if message.ends_with(['.', '?', '!']) { "" } else { "." };
    capital(&format!("{message}{end}"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::grid::SHOWN;
    use crate::design::document::{ForceUnit, LengthUnit, MakeUpSpec};
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;

    fn design() -> Design {
        let string = |note: &str, length: &str, diameter: &str| StringSpec {
            note: note.to_owned(),
            length: length.to_owned(),
            make_up: MakeUpSpec {
                material: "nylon".to_owned(),
                diameter: diameter.to_owned(),
                ..MakeUpSpec::default()
            },
            ..StringSpec::default()
        };
        Design {
            strings: vec![
                string("Eb5", "300", "0.64"),
                string("C5", "about", ".032\""),
                string("", "", ""),
            ],
            ..Design::default()
        }
    }

    fn words(design: &Design) -> Vec<Arc<RowWords>> {
        let resolved = resolve(design);
        let analysis = analyse(&resolved.harp);
        rows(design, &resolved, &analysis)
    }

    fn place(figure: Figure) -> usize {
        SHOWN.iter().position(|one| *one == Shown::Figure(figure)).unwrap()
    }

    #[test]
    fn a_row_shows_what_it_means_in_the_units_of_the_page() {
        let mut design = design();
        let first = words(&design)[0].clone();
        assert_eq!(first.cells[0].text, "E♭5");
        assert_eq!(first.cells[0].reason.as_deref(), Some("Typed: Eb5"));
        assert_eq!(first.octave, "3");
        assert_eq!(first.mark, None);
        let metric = first.cells[place(Figure::Tension)].text.clone();
        design.units.length = LengthUnit::Inch;
        design.units.force = ForceUnit::Kgf;
        let inches = words(&design)[0].clone();
        assert_eq!(inches.cells[1].text, "11.81");
        assert_ne!(inches.cells[place(Figure::Tension)].text, metric);
        assert_eq!(heads(&design)[1].unit, "in");
    }

    #[test]
    fn what_was_typed_stays_and_says_what_is_wrong() {
        let row = words(&design())[1].clone();
        assert_eq!(row.cells[1].text, "about");
        assert!(row.cells[1].error.as_ref().unwrap().contains("about"));
        assert_eq!(row.mark, Some("C"));
        let tension = &row.cells[place(Figure::Tension)];
        assert!(tension.unknown && tension.text == "–");
        assert_eq!(
            tension.reason.as_deref(),
            Some("No vibrating length: it is missing or cannot be read.")
        );
    }

    #[test]
    fn the_line_below_the_chart_tells_the_error_of_the_cell() {
        let design = design();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let line = |row, column: usize| {
            explained(&design, &resolved, &analysis, row, SHOWN.get(column).copied())
        };
        assert!(line(1, 1).1 && line(1, 1).0.starts_with("String 2, C5, Length: "));
        assert!(!line(0, 4).1 && line(0, 4).0.contains("first partial"));
        assert_eq!(line(9, 0), (String::new(), false));
    }

    #[test]
    fn after_an_edit_only_the_rows_that_read_otherwise_are_worded_again() {
        let told = |before: Option<&ChartWords>, design: &Design| {
            let resolved = resolve(design);
            let analysis = analyse(&resolved.harp);
            let words = ChartWords::after(
                before,
                design.clone().into(),
                resolved.into(),
                analysis.into(),
                shown(design).into(),
            );
            assert_eq!(words.rows, tests::words(design));
            words
        };
        let mut design = design();
        let before = told(None, &design);
        design.strings[0].length = "310".to_owned();
        let after = told(Some(&before), &design);
        let kept = |words: &ChartWords| {
            let pairs = before.rows.iter().zip(&words.rows);
            pairs.map(|(was, is)| Arc::ptr_eq(was, is)).collect::<Vec<_>>()
        };
        assert_eq!(kept(&after), [false, true, true]);
        design.units.length = LengthUnit::Inch;
        assert_eq!(kept(&told(Some(&after), &design)), [false; 3]);
        design.strings.remove(0);
        assert_eq!(told(Some(&after), &design).rows.len(), 2);
    }

    #[test]
    fn an_empty_row_is_no_error() {
        assert!(words(&design())[2].cells.iter().all(|cell| cell.error.is_none()));
    }
}
