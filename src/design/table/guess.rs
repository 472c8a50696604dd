//! Which column of a table of measurements is what: by its heading, by what stands under it, and by the rest of
//! the table.

use super::cells::Row;
use super::headings::{Column, Columns, Field, Said, is_german, known, material, said};
use super::measured_cell::{cleaned, is_missing, made_of};
use super::notes::Name;
use super::sheet::Sheet;
use crate::design::heading::{Size, bare, unit_of, words_of};
use crate::design::typed::{self, cut};
use crate::engine::order::sort;

/// How many rows may stand above the headings.
const MOST_TITLES: usize = 15;
/// The most columns that are looked at.
const MOST_COLUMNS: usize = 40;

/// A table in its parts.
pub(super) struct Parts {
    /// What stands above the strings.
    pub(super) titles: Vec<Row>,
    pub(super) headings: Option<Row>,
    /// Units that have a row of their own.
    units: Vec<Option<Size>>,
    pub(super) rows: Vec<Row>,
    pub(super) is_lines: bool,
}

impl Parts {
    pub(super) fn of(sheet: Sheet) -> Self {
        let Sheet { mut rows, is_lines, .. } = sheet;
        let place = if is_lines { None } else { heading_place(&rows) };
        let mut titles: Vec<Row> = Vec::new();
        let headings = place.map(|place| {
            titles.extend(rows.drain(..place));
            rows.remove(0)
        });
        let unit = |cell: &String| unit_of(&words_of(cell));
        let is_units = |row: &Row| {
            let mut filled = row.cells.iter().filter(|cell| !cell.is_empty()).peekable();
            filled.peek().is_some()
                && filled.all(|cell| {
                    unit(cell).is_some() && cell.chars().count() < 12 && !starts_with_digit(cell)
                })
        };
        let mut units = Vec::new();
        if headings.is_some() && rows.first().is_some_and(is_units) {
            units = rows.remove(0).cells.iter().map(unit).collect();
        }
        repeat(&mut rows);
        Self { titles, headings, units, rows, is_lines }
    }

    /// Whether its words are German.
    pub(super) fn is_german(&self) -> bool {
        let strings = self.headings.is_none().then_some(&self.rows).into_iter().flatten();
        let rows = self.titles.iter().chain(&self.headings).chain(strings);
        rows.flat_map(|row| &row.cells).any(|cell| is_german(cell))
    }
}

fn starts_with_digit(cell: &str) -> bool {
    cell.starts_with(|c: char| c.is_ascii_digit())
}

/// Where the headings are: the row that names most columns, among the first ones.
fn heading_place(rows: &[Row]) -> Option<usize> {
    let mut best: Option<(usize, usize)> = None;
    for (place, row) in rows.iter().take(MOST_TITLES).enumerate() {
        let is_data = |cell: &String| {
            bare(cell).is_some()
                || typed::length(cell).is_ok()
                || Name::read(cell).is_some_and(|_| cell.len() > 1)
        };
        let filled = row.cells.iter().filter(|cell| !cell.is_empty()).count();
        let count = known(&row.cells);
        if filled < 2 || count == 0 || row.cells.iter().any(is_data) {
            continue;
        }
        if best.is_none_or(|(most, _)| count > most) {
            best = Some((count, place));
        }
    }
    best.map(|(_, place)| place)
}

/// Puts what stands above in the place of a ditto.
fn repeat(rows: &mut [Row]) {
    const DITTO: [&str; 12] =
        ["\"", "''", "″", "”", "〃", "ditto", "do.", "dto.", "idem", "id.", "-\"-", "–\"–"];
    for at in 1..rows.len() {
        for place in 0..rows[at].cells.len() {
            let is_ditto =
                DITTO.iter().any(|ditto| rows[at].cells[place].eq_ignore_ascii_case(ditto));
            if is_ditto {
                rows[at].cells[place] = rows[at - 1].cells.get(place).cloned().unwrap_or_default();
            }
        }
    }
}

/// What stands under a heading.
struct Content<'a> {
    cells: Vec<&'a str>,
}

impl Content<'_> {
    fn mostly(&self, is: impl Fn(&str) -> bool) -> bool {
        let count = self.cells.iter().filter(|cell| is(cell)).count();
        count > 0 && 2 * count >= self.cells.len()
    }

    /// Whole numbers that rise or fall by one.
    fn counts(&self) -> bool {
        let number = |cell: &&str| cell.trim_end_matches(['.', ')', ':']).parse::<i32>().ok();
        let all: Vec<i32> = self.cells.iter().filter_map(number).collect();
        let steps = all.windows(2).filter(|pair| (pair[0] - pair[1]).abs() == 1).count();
        all.len() > 1 && 10 * (steps + 1) >= 8 * self.cells.len()
    }

    fn numbers(&self) -> Vec<f64> {
        let mut all: Vec<f64> = self.cells.iter().filter_map(|cell| bare(&cleaned(cell))).collect();
        sort(&mut all, |one, other| one > other);
        all
    }

    fn is_size(&self) -> bool {
        self.mostly(|cell| {
            let cell = cleaned(cell);
            bare(&cell).is_some() || typed::length(&cell).is_ok() || typed::is_size(&cell)
        })
    }

    fn is_note(&self) -> bool {
        self.mostly(|cell| Name::read(cell).is_some() || typed::pitch(cell).is_ok())
    }

    fn is_make_up(&self) -> bool {
        self.mostly(|cell| {
            let made = made_of(cell, Size::Mm);
            material(&made.material).is_some() && !made.diameter.is_empty()
        })
    }

    fn is_material(&self) -> bool {
        self.mostly(|cell| material(cell).is_some())
    }

    /// What the column is, going by its heading and by this.
    fn field(&self, said: &Said, heading: &str) -> Option<Field> {
        use Field::{
            Gauge, Length, MakeUp, Material, Note, Number, Octave, Pitch, Remark, Winding,
            WindingWire,
        };
        let free = heading.trim().is_empty() || said.is_string;
        let field = said.field;
        if self.cells.is_empty() {
            return field;
        }
        match field {
            Some(Pitch | Octave | Winding | Field::Code) => field,
            Some(Length | WindingWire) => field.filter(|_| self.is_size()),
            Some(Gauge | Material | MakeUp) if self.is_make_up() => Some(MakeUp),
            Some(Gauge) if self.is_size() => field,
            Some(Gauge | Material) if self.is_material() => Some(Material),
            Some(Gauge) => None,
            Some(Material) => field.filter(|_| !self.is_size()),
            Some(MakeUp) => field,
            Some(Number) if self.is_note() && !self.counts() => Some(Note),
            Some(Number) => field,
            Some(Remark) if self.is_note() && said.unit.is_none() => Some(Note),
            Some(Remark) => field,
            Some(Note) if self.is_note() => field,
            Some(Note) if self.counts() => Some(Number),
            Some(Note) => None,
            None if self.is_make_up() => Some(MakeUp),
            None if self.is_material() => Some(Material),
            None if free && self.counts() => Some(Number),
            None if free && self.is_note() => Some(Note),
            None if said.is_string && !self.is_size() => Some(MakeUp),
            None if heading.trim().is_empty() && self.mostly(is_hz) => Some(Pitch),
            None => None,
        }
    }
}

fn is_hz(cell: &str) -> bool {
    crate::design::letters::small(cell).ends_with("hz")
}

/// What the columns seem to be. No two are the same; the first one is taken.
pub(super) fn columns(parts: &Parts) -> Columns {
    if parts.is_lines {
        return of_lines(parts);
    }
    let heading = |place: usize| {
        parts.headings.as_ref().and_then(|row| row.cells.get(place)).cloned().unwrap_or_default()
    };
    let width = match &parts.headings {
        Some(row) => row.cells.len(),
        None => parts.rows.iter().map(|row| row.cells.len()).max().unwrap_or(0),
    };
    let is_full =
        |row: &&Row| row.cells.iter().filter(|cell| !cell.is_empty()).count() > 1 || width == 1;
    let is_heading =
        |row: &&Row| parts.headings.as_ref().is_none_or(|head| row.cells != head.cells);
    let full: Vec<&Row> = parts.rows.iter().filter(is_full).filter(is_heading).collect();
    let content = |place: usize| {
        let filled = full.iter().filter_map(|row| row.cells.get(place)).map(String::as_str);
        Content { cells: filled.filter(|cell| !is_missing(cell)).collect() }
    };
    let mut columns = Columns::new();
    let mut open = Vec::new();
    for place in 0..width.min(MOST_COLUMNS) {
        let (heading, content) = (heading(place), content(place));
        let said = said(&heading);
        let field = content.field(&said, &heading);
        let is_new =
            |field: &Field| columns.iter().all(|column: &Column| column.field != Some(*field));
        let names_nothing = said.field.is_none() && (heading.is_empty() || said.unit.is_some());
        if field.is_none() && names_nothing && content.is_size() {
            open.push((place, content.numbers().last().copied().unwrap_or(0.0)));
        }
        let in_row = parts.units.get(place).copied().flatten();
        columns.push(Column {
            example: content.cells.first().map(|cell| cut(cell)).unwrap_or_default(),
            field: field.filter(is_new),
            unit: said.unit.or(in_row).unwrap_or_default(),
            has_unit: said.unit.or(in_row).is_some(),
            looks_like: None,
            plain_b: None,
            material: said.material.unwrap_or_default().to_owned(),
            heading: cut(&heading),
        });
    }
    // Numbers of which nothing is said: the longest are lengths, the next gauges.
    sort(&mut open, |one, other| one.1 < other.1);
    let mut open = open.into_iter();
    for field in [Field::Length, Field::Gauge] {
        if columns.iter().all(|column| column.field != Some(field))
            && let Some((place, _)) = open.next()
        {
            columns[place].field = Some(field);
        }
    }
    // Words without a heading are remarks.
    if parts.headings.is_none()
        && let Some(column) = columns.iter_mut().find(|column| {
            column.field.is_none() && !column.example.is_empty() && bare(&column.example).is_none()
        })
    {
        column.field = Some(Field::Remark);
    }
    let contents: Vec<Content<'_>> = (0..columns.len()).map(content).collect();
    units(parts, &mut columns, &contents);
    columns
}

/// The columns of lines as people write them.
fn of_lines(parts: &Parts) -> Columns {
    let content = |place: usize| {
        let filled =
            parts.rows.iter().filter(|row| row.cells[1..3].iter().any(|cell| !cell.is_empty()));
        let filled = filled.map(|row| row.cells[place].as_str());
        Content { cells: filled.filter(|cell| !is_missing(cell)).collect() }
    };
    let contents: Vec<Content<'_>> = (0..4).map(content).collect();
    let fields = [Field::Number, Field::Note, Field::Length, Field::MakeUp];
    let column = |(content, field): (&Content<'_>, Field)| Column {
        example: content.cells.first().map(|cell| cut(cell)).unwrap_or_default(),
        field: Some(field),
        ..Column::default()
    };
    let mut columns: Columns = contents.iter().zip(fields).map(column).collect();
    units(parts, &mut columns, &contents);
    columns
}

/// The units of columns whose headings name none: what a title says, what fractions show, or millimetres; and
/// what the numbers look like where that is another one.
fn units(parts: &Parts, columns: &mut Columns, contents: &[Content<'_>]) {
    let above =
        parts.titles.iter().chain(parts.is_lines.then_some(&parts.rows).into_iter().flatten());
    let mut titles = above.flat_map(|row| row.cells.iter()).filter(|cell| bare(cell).is_none());
    let title = titles.find_map(|cell| {
        let words: Vec<String> = words_of(cell);
        let said = words
            .into_iter()
            .filter(|word| !matches!(word.as_str(), "m" | "in" | "ft" | "1" | "\"" | "″"));
        // Of a line that is a string's own, nothing is said of the others.
        let has_digits = cell.chars().any(|c| c.is_ascii_digit()) && parts.is_lines;
        unit_of(&said.collect::<Vec<_>>()).filter(|_| !has_digits)
    });
    let mut in_inches = title == Some(Size::Inch);
    for (column, content) in columns.iter_mut().zip(contents) {
        if column.field != Some(Field::Length) {
            continue;
        }
        let has_fraction =
            |cell: &&&str| cell.contains(['/', '½', '¼', '¾', '⅛', '⅜', '⅝', '⅞', '⁄']);
        let broken =
            content.cells.iter().filter(has_fraction).any(|cell| bare(&cleaned(cell)).is_some());
        if !column.has_unit {
            match title {
                Some(unit) if unit != Size::Thou => (column.unit, column.has_unit) = (unit, true),
                _ if broken => (column.unit, column.has_unit) = (Size::Inch, true),
                _ => column.looks_like = length_looks(&content.numbers()),
            }
        }
        let inch_cells =
            content.cells.iter().any(|cell| cell.ends_with(['"', '″']) || cell.ends_with("in"));
        in_inches |= column.unit == Size::Inch || inch_cells;
    }
    for (column, content) in columns.iter_mut().zip(contents) {
        let is_gauge =
            matches!(column.field, Some(Field::Gauge | Field::MakeUp | Field::WindingWire));
        if !is_gauge || column.has_unit {
            continue;
        }
        let numbers = if column.field == Some(Field::MakeUp) {
            let sizes =
                content.cells.iter().filter_map(|cell| bare(&made_of(cell, Size::Mm).diameter));
            let mut sizes: Vec<f64> = sizes.collect();
            sort(&mut sizes, |one, other| one > other);
            sizes
        } else {
            content.numbers()
        };
        match gauge_looks(&numbers) {
            Some(unit) if in_inches => (column.unit, column.has_unit) = (unit, true),
            looks_like => column.looks_like = looks_like,
        }
    }
}

/// What lengths look like that are no millimetres, from the shortest to the longest.
fn length_looks(numbers: &[f64]) -> Option<Size> {
    let (least, most) = (*numbers.first()?, *numbers.last()?);
    let count = numbers.len();
    match () {
        () if most < 3.0 => Some(Size::Metre),
        // A harp with several strings whose longest is below 80 mm is none.
        () if most <= 80.0 && (least < 20.0 || count > 2) => Some(Size::Inch),
        () if most <= 220.0 && least < 30.0 => Some(Size::Cm),
        () => None,
    }
}

/// What gauges look like that are no millimetres.
fn gauge_looks(numbers: &[f64]) -> Option<Size> {
    let middle = *numbers.get(numbers.len() / 2)?;
    let least = *numbers.first()?;
    match () {
        () if middle > 10.0 => Some(Size::Thou),
        () if middle < 0.13 && least < 0.05 => Some(Size::Inch),
        () => None,
    }
}
