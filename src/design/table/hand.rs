//! A table of measurements in anyone's hand: columns in any order and spelling, with or without headings, and what
//! each row becomes. Nothing is guessed that the table does not say: what it leaves open stays empty or is asked.

pub use super::asked::Question;
use super::asked::column_name;
use super::cells::Row;
use super::guess::{Parts, columns as guessed};
pub use super::headings::{Column, Columns};
use super::headings::{Field, known, material};
use super::measured_cell::{cleaned, is_missing, made_of, named};
pub use super::notes::PlainB;
use super::notes::{self, About, Name, octave_in};
use super::sheet::{MOST_CELLS, Sheet};
use super::tuned::tuning_of;
use crate::design::document::{
    LONGEST_CELL, LONGEST_TEXT, LayerSpec, MOST_STRINGS, PitchSpec, StringSpec,
};
use crate::design::heading::{Size, bare, has, words_of};
use crate::design::typed::{self, Pitch, cut};
use crate::engine::order::sort;
use crate::engine::pitch::{Note, Tuning, naming};

use thiserror::Error;

use crate::words::{findings, restring as say, shown, tables};

/// Words of a row that adds up.
const SUMS: [&str; 10] =
    ["total", "totals", "sum", "summe", "gesamt", "somme", "average", "mean", "mittel", "totale"];
/// The most rows that are told to be left out.
const MOST_TOLD: usize = 20;

/// What a table in anyone's hand holds.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Hand {
    /// As they were proposed, or as they were said to be.
    pub columns: Columns,
    /// From the highest string down, as far as that can be seen.
    pub strings: Vec<StringSpec>,
    /// The line of each string.
    pub lines: Vec<usize>,
    /// The remark of each string.
    pub remarks: Vec<String>,
    /// The pitch and the temperament of which frequencies beside the notes tell.
    pub pitch: Option<PitchSpec>,
    /// What was assumed, without a full stop.
    pub assumed: Vec<String>,
    /// Lines that hold no string, with their number.
    pub left_out: Vec<String>,
    /// Whether the table began with the lowest string and was turned round.
    pub turned: bool,
    /// Whether it must be asked what a B without a sign is.
    asks_b: bool,
}

/// The speed of a wave along a usual string, in metres a second: twice its length times its pitch, which gauge and
/// material do not change. From middle C up it is about the same for all; the bass falls short of it, by half two
/// octaves down. Common practice, no source.
fn usual_speed(hz: f64) -> f64 {
    280.0 * (hz / 262.0).min(1.0).sqrt()
}

/// Why there are no strings.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum HandError {
    /// No line has a note or a length.
    #[error("{}", say::NO_STRING)]
    NoString,
    /// More than a design may have.
    #[error("{}", say::too_many(&MOST_STRINGS))]
    TooMany,
}

impl Hand {
    /// The remarks of the strings, a line each, as far as a design has room for them.
    pub fn remarks_of_all(&self) -> String {
        let mut all = String::new();
        for (at, (string, remark)) in self.strings.iter().zip(&self.remarks).enumerate() {
            if remark.is_empty() {
                continue;
            }
            let name = shown::string_with_note(&naming::shown(&string.note), &(at + 1));
            let line = format!("{}\n", findings::finding(remark, &name));
            if all.chars().count() + line.chars().count() > LONGEST_TEXT {
                break;
            }
            all.push_str(&line);
        }
        all.trim_end().to_owned()
    }

    /// What must be asked before the strings can be used.
    pub fn questions(&self) -> Vec<Question> {
        let mut all = Vec::new();
        for (place, column) in self.columns.iter().enumerate() {
            if column.field == Some(Field::Note) && self.asks_b {
                all.push(Question::PlainB { place });
            }
            let size = column.field.is_some_and(Field::is_size);
            let Some(looks) = column.looks_like.filter(|_| size) else { continue };
            let said = column.unit;
            let mut answers = vec![looks];
            if column.field == Some(Field::Length) {
                answers.extend([Size::Cm, Size::Inch].into_iter().filter(|unit| *unit != looks));
            }
            answers.push(said);
            all.push(Question::Unit { place, said, answers });
        }
        all
    }

    /// Of a column of lengths that names no unit, the unit with which its strings are most like usual ones, where
    /// their notes are known; none where they are so in millimetres.
    fn weigh_units(&mut self) {
        let is_open =
            |column: &&mut Column| column.field == Some(Field::Length) && !column.has_unit;
        let Some(column) = self.columns.iter_mut().find(is_open) else { return };
        let share = |string: &StringSpec| {
            let hz = match typed::pitch(&string.note).ok()? {
                Pitch::Frequency(hz) => hz.to_hz(),
                Pitch::Note(note) => Tuning::default().frequency(note).to_hz(),
            };
            let metres = bare(&string.length)? / 1_000.0;
            Some(2.0 * metres * hz / usual_speed(hz)).filter(|share| *share > 0.0)
        };
        let mut shares: Vec<f64> = self.strings.iter().filter_map(share).collect();
        sort(&mut shares, |one, other| one > other);
        let Some(middle) = shares.get(shares.len() / 2) else { return };
        if (0.25..4.0).contains(middle) {
            column.looks_like = None;
            return;
        }
        let off = |unit: Size| (middle * unit.mm()).ln().abs();
        let units = [Size::Cm, Size::Inch, Size::Metre, Size::Foot];
        column.looks_like =
            units.into_iter().min_by(|one, other| off(*one).total_cmp(&off(*other)));
    }

    /// What each column was taken for, without a full stop.
    pub fn taken_for(&self) -> Vec<String> {
        // Columns that hold nothing, as that of the numbers where none are written, do not count.
        let filled = self.columns.iter().filter(|column| !column.example.is_empty());
        let said = |(place, column): (usize, &Column)| {
            let heading = column_name(place, &column.heading);
            match column.field {
                Some(field) if field.is_size() => {
                    tables::taken_size(&heading, &field.name(), &column.unit.name())
                }
                Some(field) => tables::taken(&heading, &field.name()),
                None => tables::left_out(&heading),
            }
        };
        filled.enumerate().map(said).collect()
    }
}

/// Reads a table. `by_hand` says what the columns are, where somebody has looked at what was proposed.
///
/// # Errors
///
/// When there is no string in it, or there are too many.
pub fn read(text: &str, by_hand: Option<&Columns>) -> Result<Hand, HandError> {
    let sheet = Sheet::of(text);
    let is_cut = sheet.is_cut;
    let parts = Parts::of(sheet);
    let columns = match by_hand {
        Some(columns) => columns.clone(),
        None => guessed(&parts),
    };
    let mut hand = Hand { columns, ..Hand::default() };
    let mut names: Vec<(String, Option<i8>)> = Vec::new();
    let mut pitches: Vec<String> = Vec::new();
    let (mut octave, mut group) = (None, String::new());
    let titles = parts.titles.iter().filter(|row| row.cells.iter().any(|cell| !cell.is_empty()));
    let mut left_out: Vec<(usize, String)> =
        titles.map(|row| (row.line, row.cells.join(" "))).collect();
    for row in &parts.rows {
        let reader = Reader { row, columns: &hand.columns };
        match reader.kind(&parts) {
            Kind::String => {}
            Kind::Octave(number) => {
                octave = Some(number);
                continue;
            }
            Kind::Material(material) => {
                group = material;
                continue;
            }
            Kind::Heading => continue,
            Kind::Words => {
                left_out.push((row.line, row.cells.join(" ")));
                continue;
            }
        }
        if hand.strings.len() == MOST_STRINGS {
            return Err(HandError::TooMany);
        }
        let (name, remark) = reader.note();
        let own: Option<i8> = reader
            .cell(Field::Octave)
            .trim()
            .parse()
            .ok()
            .or_else(|| octave_in(reader.cell(Field::Octave)));
        names.push((name, own.or(octave)));
        pitches.push(reader.pitch());
        hand.strings.push(reader.string(&group));
        hand.lines.push(row.line);
        hand.remarks.push(remark);
    }
    finish(&mut hand, &names, &pitches, parts.is_german());
    if by_hand.is_none() {
        hand.weigh_units();
    }
    let has_nothing = |string: &StringSpec| {
        string.note.is_empty()
            && bare(&string.length).is_none()
            && typed::length(&string.length).is_err()
    };
    if hand.strings.iter().all(has_nothing) {
        return Err(HandError::NoString);
    }
    if is_cut {
        hand.left_out.push(tables::cells_cut(&MOST_CELLS));
    }
    for (line, words) in left_out.iter().take(MOST_TOLD) {
        hand.left_out.push(tables::no_string_in_line(line, &cut(words.trim())));
    }
    Ok(hand)
}

/// Notes, pitch and order of the strings, which all of them together tell.
fn finish(hand: &mut Hand, names: &[(String, Option<i8>)], pitches: &[String], is_german: bool) {
    let mm = |string: &StringSpec| typed::length(&string.length).ok().map(|length| length.to_mm());
    let mut known = hand.strings.iter().filter_map(mm);
    let ends = known.next().zip(known.next_back());
    let down = ends.map(|(first, last)| first < last);
    let plain_b = hand.columns.iter().find(|column| column.field == Some(Field::Note));
    let plain_b = plain_b.and_then(|column| column.plain_b);
    let notes = notes::read(names, About { down, is_german, plain_b });
    hand.asks_b = notes.asks_b;
    hand.assumed.extend(notes.told);
    for (string, text) in hand.strings.iter_mut().zip(notes.texts) {
        string.note = text;
    }
    let (pitch, told) = tuning_of(&mut hand.strings, pitches);
    hand.pitch = pitch;
    hand.assumed.extend(told);
    let step = |string: &StringSpec| string.note.parse::<Note>().ok().map(Note::step);
    let mut steps = hand.strings.iter().filter_map(step);
    let rises = match steps.next().zip(steps.next_back()) {
        Some((first, last)) if first != last => first < last,
        _ => down == Some(false),
    };
    if rises {
        hand.strings.reverse();
        hand.lines.reverse();
        hand.remarks.reverse();
        hand.turned = true;
        hand.assumed.push(tables::TURNED_ROUND.into());
    }
    let is_repeated =
        |pair: &[StringSpec]| !pair[0].note.is_empty() && pair[0].note == pair[1].note;
    let doubles = hand.strings.windows(2).filter(|pair| is_repeated(pair)).count();
    if doubles > 0 {
        hand.assumed.push(tables::doubles(&doubles));
    }
}

/// What a row is.
enum Kind {
    String,
    Octave(i8),
    Material(String),
    Heading,
    Words,
}

struct Reader<'a> {
    row: &'a Row,
    columns: &'a Columns,
}

impl Reader<'_> {
    fn column(&self, field: Field) -> Option<(usize, &Column)> {
        self.columns.iter().enumerate().find(|(_, column)| column.field == Some(field))
    }

    fn cell(&self, field: Field) -> &str {
        let place = self.column(field).map(|(place, _)| place);
        place.and_then(|place| self.row.cells.get(place)).map_or("", |cell| cell.trim())
    }

    fn kind(&self, parts: &Parts) -> Kind {
        let cells = &self.row.cells;
        let mut filled = cells.iter().filter(|cell| !cell.is_empty());
        let first = filled.next().map_or("", |cell| cell.trim());
        let is_alone = filled.next().is_none();
        if has(&words_of(first), &SUMS)
            || cells.len() > self.columns.len().max(1) && self.overflows()
        {
            return Kind::Words;
        }
        let named = self.cell(Field::Note);
        let is_name = Name::read(named).is_some() || typed::pitch(named).is_ok();
        let starts = |cell: &str| cell.starts_with(|c: char| c.is_numeric() || c == '.');
        let length = cleaned(self.cell(Field::Length));
        let measured = starts(&length);
        let is_said = !self.cell(Field::Length).is_empty() && is_missing(self.cell(Field::Length));
        let counted = starts(self.cell(Field::Number)) && !is_alone;
        if is_alone && !measured {
            if let Some(number) = octave_in(first)
                && Name::read(first).is_none()
            {
                return Kind::Octave(number);
            }
            if let Some(key) = material(first.trim_matches(|c: char| !c.is_alphanumeric())) {
                return Kind::Material(key.to_owned());
            }
        }
        // A letter alone, in a line of its own, is no string; nor is a sentence that begins with one.
        let is_sentence = parts.is_lines
            && is_name
            && !measured
            && !is_said
            && !named.chars().any(|c| c.is_ascii_digit());
        if is_name && !is_sentence || measured || is_said || counted {
            return Kind::String;
        }
        if known(cells) > 1 || parts.headings.as_ref().is_some_and(|row| row.cells == *cells) {
            return Kind::Heading;
        }
        Kind::Words
    }

    /// Whether there are cells beyond the last column.
    fn overflows(&self) -> bool {
        self.row.cells.iter().skip(self.columns.len()).any(|cell| !cell.is_empty())
    }

    /// The name of the note as written, and the remark of the row.
    fn note(&self) -> (String, String) {
        let cell = self.cell(Field::Note);
        let behind = Name::read(cell).map(|name| name.remark).unwrap_or_default();
        let said = self.cell(Field::Remark);
        let both = [behind.as_str(), said].into_iter().filter(|text| !text.is_empty());
        (cell.to_owned(), both.collect::<Vec<_>>().join(", "))
    }

    fn pitch(&self) -> String {
        let cell = cleaned(self.cell(Field::Pitch));
        if bare(&cell).is_some() { format!("{cell} Hz") } else { cell }
    }

    fn size(&self, field: Field) -> String {
        let unit = self.column(field).map_or(Size::Mm, |(_, column)| column.unit);
        unit.behind(&cleaned(self.cell(field)))
    }

    fn string(&self, group: &str) -> StringSpec {
        let whole = self.cell(Field::MakeUp);
        let own = self.cell(Field::Material);
        let unit = self.column(Field::MakeUp).or_else(|| self.column(Field::Gauge));
        let unit = unit.map_or(Size::Mm, |(_, column)| column.unit);
        // A make-up among materials is taken whole.
        let mut make_up = made_of(if is_missing(whole) { own } else { whole }, unit);
        if make_up.is_plain() && make_up.diameter.is_empty() {
            let gauge = cleaned(self.cell(Field::Gauge));
            let with_word = made_of(&gauge, unit);
            if with_word.is_plain()
                && !with_word.material.is_empty()
                && !with_word.diameter.is_empty()
            {
                // `wound .060` among gauges.
                make_up.material = format!("{} {}", make_up.material, with_word.material);
                make_up.material = make_up.material.trim().to_owned();
                make_up.diameter = with_word.diameter;
            } else {
                make_up.diameter = self.size(Field::Gauge);
            }
        }
        if make_up.material.is_empty() && make_up.weighed.is_none() {
            let by_heading = self.column(Field::Gauge).map_or("", |(_, column)| &column.material);
            make_up.material = match () {
                () if !is_missing(own) => made_of(own, Size::Mm).material,
                () if !own.is_empty() => String::new(),
                () if !by_heading.is_empty() => by_heading.to_owned(),
                () => group.to_owned(),
            };
        }
        let winding = self.cell(Field::Winding);
        if make_up.layers.is_empty() && !is_missing(winding) {
            let size = self.size(Field::WindingWire);
            make_up.layers.push(LayerSpec {
                material: named(winding),
                size,
                ..LayerSpec::default()
            });
        }
        let short = |text: &str| text.chars().take(LONGEST_CELL).collect::<String>();
        StringSpec {
            length: self.size(Field::Length),
            make_up,
            order_code: short(self.cell(Field::Code)),
            ..StringSpec::default()
        }
    }
}
