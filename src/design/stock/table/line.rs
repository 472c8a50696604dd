//! One line of a stock table: its cells as an item.

use super::columns::{Columns, Field, Size};
use super::{Row, StockItem, TableError, money};
use crate::design::cells::unguarded;
use crate::design::document::{LONGEST_CELL, MakeUpSpec, MaterialSpec, TypedMakeUp};
use crate::design::letters::small;
use crate::design::library::find;
use crate::design::measure::{LENGTHS_MM, Measure};
use crate::design::typed::{self, TypedError, cut};
use crate::engine::pitch::Note;
use crate::words::{Words, tables, typed as say};

const PACK: Measure = Measure {
    what: say::LENGTH_OF_PACK,
    example: Words::plain("5 m"),
    limits: (1.0, 10_000_000.0),
    unit: "mm",
    units: LENGTHS_MM,
    proposed: &["m", "cm"],
};

/// The length of a pack in millimetres, as typed: `5 m`, `5000`.
///
/// # Errors
///
/// When it is no length of a pack.
pub fn pack_mm(text: &str) -> Result<f64, TypedError> {
    PACK.figure(text)
}

/// The most strings that a bundle may hold.
const MOST_IN_BUNDLE: u32 = 10_000;
/// Words for packs, in the languages in which suppliers' lists are written.
const BUNDLE: [&str; 8] = ["bundle", "bund", "dozen", "box", "botte", "paquet", "packet", "set of"];
const COIL: [&str; 15] = [
    "coil", "spool", "reel", "roll", "metre", "meter", "bulk", "ring", "rolle", "spule", "bobine",
    "rouleau", "mètre", "hank", "rol",
];
const SINGLE: [&str; 10] =
    ["single", "string", "piece", "each", "stück", "stk", "einzel", "pièce", "pcs", "stuk"];
/// Words that say that something cannot be had.
const NO: [&str; 10] =
    ["no", "n", "0", "false", "out", "sold out", "out of stock", "none", "nein", "non"];

/// A make-up whose bare sizes get a unit.
fn sized(make_up: &MakeUpSpec, unit: &str) -> MakeUpSpec {
    let mut make_up = make_up.clone();
    for size in make_up.sizes_mut() {
        *size = typed::with_unit(size, unit);
    }
    make_up
}

pub(super) struct Line<'a> {
    row: &'a Row,
    columns: &'a Columns,
    pub(super) errors: Vec<TableError>,
    pub(super) doubts: Vec<TableError>,
}

impl<'a> Line<'a> {
    pub(super) const fn new(row: &'a Row, columns: &'a Columns) -> Self {
        Self { row, columns, errors: Vec::new(), doubts: Vec::new() }
    }

    /// The item; `None` with an error when there is nothing that says what it is.
    pub(super) fn item(&mut self, material: &str, materials: &[MaterialSpec]) -> Option<StockItem> {
        let most = self.columns.len();
        let got = self.row.cells.len();
        if self.row.cells.iter().skip(most).any(|cell| !cell.trim().is_empty()) {
            let message = tables::cells_many(&got, &most);
            self.errors.push(TableError { line: self.row.line, column: String::new(), message });
            return None;
        }
        let make_up = self.make_up(material, materials)?;
        let (price, currency) = self.price();
        let pack_mm = self.pack_mm();
        let (single, bundle) = self.sold_as(&make_up);
        Some(StockItem {
            key: 0,
            make_up,
            code: self.short(Field::Code),
            supplier: self.short(Field::Supplier),
            single,
            bundle,
            pack_mm,
            price,
            currency,
            sold_out: NO.contains(&&*small(self.cell(Field::InStock))),
            lowest: self.note(Field::Lowest),
            highest: self.note(Field::Highest),
            remark: self.short(Field::Remark),
        })
    }

    fn place(&self, field: Field) -> Option<usize> {
        self.columns.iter().position(|column| column.field == Some(field))
    }

    fn cell(&self, field: Field) -> &'a str {
        let cell = self.place(field).and_then(|place| self.row.cells.get(place));
        unguarded(cell.map_or("", |cell| cell.trim())).trim()
    }

    fn error(&self, field: Field, message: String) -> TableError {
        let column = self.place(field).map(|place| self.columns[place].heading.clone());
        TableError { line: self.row.line, column: column.unwrap_or_default(), message }
    }

    fn wrong(&mut self, field: Field, message: String) {
        self.errors.push(self.error(field, message));
    }

    /// A cell as it stands, when it is not too long.
    fn short(&mut self, field: Field) -> String {
        let text = self.cell(field);
        let got = text.chars().count();
        if got > LONGEST_CELL {
            let message = tables::cell_long(&got, &LONGEST_CELL);
            self.wrong(field, message);
            return String::new();
        }
        text.to_owned()
    }

    fn unit(&self, field: Field) -> &'static str {
        self.place(field).map_or("mm", |place| self.columns[place].unit.name())
    }

    /// A size with the unit of its column behind it, where it is a bare number and not in millimetres.
    fn size(&self, field: Field) -> String {
        let unit = self.place(field).map_or(Size::Mm, |place| self.columns[place].unit);
        unit.behind(self.cell(field))
    }

    fn make_up(&mut self, material: &str, materials: &[MaterialSpec]) -> Option<TypedMakeUp> {
        let field =
            if self.cell(Field::MakeUp).is_empty() { Field::Material } else { Field::MakeUp };
        let text = self.cell(field);
        let text = if text.is_empty() { material.trim() } else { text };
        if text.is_empty() {
            self.wrong(Field::Material, tables::MATERIAL_MISSING.into());
            return None;
        }
        // A wound string may stand among the materials of plain ones; its own sizes say all.
        let read = TypedMakeUp::from(text);
        let make_up = match read.read() {
            Ok(make_up) if make_up.is_wound() => Some(make_up),
            Ok(make_up) if field == Field::MakeUp => Some(make_up),
            Err(error) if field == Field::MakeUp || text.contains('+') => {
                self.wrong(field, error.to_string());
                return None;
            }
            _ => None,
        };
        // The gauge that a list gives of a wound string is that of the whole, which follows from its parts.
        let is_whole = make_up.is_some_and(|make_up| {
            make_up.is_wound() || !make_up.diameter.is_empty() || self.cell(Field::Gauge).is_empty()
        });
        if let (true, Some(make_up)) = (is_whole, make_up) {
            self.know(field, make_up, materials);
            return Some(match self.unit(Field::Gauge) {
                unit @ ("thou" | "in") => sized(make_up, unit).into(),
                _ => read,
            });
        }
        let material = match make_up {
            Some(make_up) => make_up.material.clone(),
            None if self.cell(Field::Material).is_empty() => text.to_owned(),
            None => self.short(Field::Material),
        };
        let gauge = self.size(Field::Gauge);
        if let Err(error) = typed::gauge(&gauge) {
            self.wrong(Field::Gauge, error.to_string());
            return None;
        }
        let make_up = MakeUpSpec { material, diameter: gauge, ..MakeUpSpec::default() };
        self.know(field, &make_up, materials);
        Some(make_up.into())
    }

    /// Tells of materials that cannot be computed with.
    fn know(&mut self, field: Field, make_up: &MakeUpSpec, materials: &[MaterialSpec]) {
        let layers = make_up.layers.iter().map(|layer| &layer.material);
        for text in [&make_up.material].into_iter().chain(layers) {
            if !text.trim().is_empty() && find(materials, text).is_none() {
                let message = tables::material_unknown(&cut(text));
                self.doubts.push(self.error(field, message));
            }
        }
    }

    fn pack_mm(&mut self) -> Option<f64> {
        let text = self.size(Field::PackLength);
        if text.trim().is_empty() {
            return None;
        }
        pack_mm(&text).map_err(|error| self.wrong(Field::PackLength, error.to_string())).ok()
    }

    /// Whether a pack holds single strings, and how many. Where the list does not say it, a wound string is sold by
    /// the piece, as no other length can be cut from it.
    fn sold_as(&mut self, make_up: &TypedMakeUp) -> (bool, u32) {
        let text = small(self.cell(Field::Pack));
        let has = |words: &[&str]| words.iter().any(|word| text.contains(word));
        if text.is_empty() {
            return (make_up.read().is_ok_and(MakeUpSpec::is_wound), 0);
        }
        let number = text.split(|c: char| !c.is_ascii_digit()).find(|digits| !digits.is_empty());
        let number = number.and_then(|digits| digits.parse::<u32>().ok());
        if has(&BUNDLE) {
            let Some(count) = number.filter(|count| *count <= MOST_IN_BUNDLE) else {
                let message = tables::bundle_count(&cut(&text), &MOST_IN_BUNDLE);
                self.wrong(Field::Pack, message);
                return (true, 0);
            };
            return (true, count);
        }
        if has(&COIL) {
            return (false, 0);
        }
        if has(&SINGLE) {
            // As in `12 pieces`.
            return (
                true,
                number.filter(|count| (2..=MOST_IN_BUNDLE).contains(count)).unwrap_or(0),
            );
        }
        let message = tables::pack_kind(&cut(&text));
        self.wrong(Field::Pack, message);
        (false, 0)
    }

    fn price(&mut self) -> (Option<f64>, String) {
        let mut currency = self.short(Field::Currency);
        let text = self.cell(Field::Price);
        let head = self.place(Field::Price).map(|place| self.columns[place].currency.clone());
        if text.is_empty() {
            return (None, currency);
        }
        let Some((number, named)) = money(text) else {
            let message = tables::price_number(&cut(text));
            self.wrong(Field::Price, message);
            return (None, currency);
        };
        if currency.is_empty() {
            currency = if named.is_empty() { head.unwrap_or_default() } else { named };
        }
        (Some(number), currency)
    }

    fn note(&mut self, field: Field) -> String {
        let text = self.short(field);
        if !text.is_empty()
            && let Err(error) = text.parse::<Note>()
        {
            self.wrong(field, error.to_string());
        }
        text
    }
}
