//! The settings of a design that are plain numbers: one row for each, with its words, its unit and its ranges.
//!
//! The door of the document, the meaning, the edits, the forms of the page and the pages that explain all read
//! the row. What is usual stands in `document`, once.

mod choices;
mod rows;

pub use self::choices::OneOf;
pub use self::rows::{
    GAP, GAP_NUMBER, NODE_ACROSS, NODE_ALONG, SECTION_AT, SECTION_DEPTH, SECTION_THICKNESS, Setting,
};
use super::decimal::with_power;
use super::document::{Design, GapsSpec, SparesSpec};
use crate::words::{Words, decimal_sign, settings as say};

/// Nearer to 0 no number of a setting is meant, in whatever unit: of a millimetre it is less than wood or wire is measured to.
const LEAST_MEANT: f64 = 1e-6;

/// What a number is called, and which numbers it may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NumberRow {
    /// What it is called in a sentence, after "the".
    pub name: Words,
    /// What it is called where it is typed.
    pub label: Words,
    /// Its unit, in sentences and beside its field; empty for none.
    pub unit: Words,
    /// The least and the greatest that make sense: the page takes no other, and another one in a document gives
    /// way to the usual one.
    pub sensible: (f64, f64),
    /// The least and the greatest that a document may hold. Never narrower than what makes sense, and never to be
    /// narrowed: a design that was saved must open.
    pub held: (f64, f64),
    /// Whether it is counted, without decimals.
    pub whole: bool,
    /// Whether it may be left out.
    pub optional: bool,
}

impl NumberRow {
    /// A number that may be any of its range, wherever it stands.
    pub const fn new(label: Words, unit: Words, range: (f64, f64)) -> Self {
        Self {
            name: label,
            label,
            unit,
            sensible: range,
            held: range,
            whole: false,
            optional: false,
        }
    }

    /// Whether a number makes sense. One that is hardly above 0 stands for nothing that can be made, and is none.
    pub fn takes(&self, number: f64) -> bool {
        let (least, most) = self.sensible;
        (least..=most).contains(&number)
            && (!self.whole || number == number.round())
            && (number == 0.0 || number.abs() >= LEAST_MEANT)
    }

    /// Which numbers a field asks for, in words: "a whole number from 1 to 64".
    pub fn asked(&self) -> String {
        let (least, most) = self.sensible;
        let (least, most) = (short(least), self.with_unit(most));
        if self.whole { say::asked_whole(&least, &most) } else { say::asked(&least, &most) }
    }

    fn with_unit(&self, number: f64) -> String {
        let number = short(number);
        if self.unit.is_empty() { number } else { say::with_unit(&number, &self.unit) }
    }

    /// What is wrong with a number, and what is taken for it.
    pub fn wrong(&self, got: f64, usual: Option<f64>) -> Option<String> {
        if self.takes(got) {
            return None;
        }
        let (least, most) = self.sensible;
        let (least, most, got) = (short(least), self.with_unit(most), self.with_unit(got));
        Some(match usual {
            None => say::wrong_left_out(&got, &least, &most, &self.name),
            Some(usual) => say::wrong(&got, &least, &most, &self.name, &self.with_unit(usual)),
        })
    }

    /// A number that makes sense: the one that was given, or else the usual one with a sentence.
    pub fn take(&self, got: f64, usual: f64, errors: &mut Vec<String>) -> f64 {
        match self.wrong(got, Some(usual)) {
            None => got,
            Some(error) => {
                errors.push(error);
                usual
            }
        }
    }
}

impl Setting {
    /// The number in a design; none where it is left out, or where something else stands in its place.
    pub fn of(self, design: &Design) -> Option<f64> {
        (self.entry().of)(design)
    }

    /// Puts a number into a design. One that must not be left out stays where none is given.
    pub fn put(self, design: &mut Design, number: Option<f64>) {
        (self.entry().put)(design, number);
    }

    /// The number that a design has where nothing was set.
    pub fn usual(self) -> Option<f64> {
        self.of(&Design::default())
    }

    /// The number in a design where it makes sense, else the usual one.
    pub fn meant(self, design: &Design) -> Option<f64> {
        match self.of(design) {
            Some(got) if !self.row().takes(got) => self.usual(),
            got => got,
        }
    }

    /// The same of a setting that is never left out.
    pub fn number(self, design: &Design) -> f64 {
        self.meant(design).unwrap_or_default()
    }

    /// What is wrong with the number in a design.
    pub fn wrong(self, design: &Design) -> Option<String> {
        // The usual number comes from a whole usual design: it is made only where there is something to say.
        let got = self.of(design).filter(|got| !self.row().takes(*got))?;
        self.row().wrong(got, self.usual())
    }
}

/// A number for a sentence: one that nobody typed may have hundreds of digits.
pub fn short(number: f64) -> String {
    let plain = number == 0.0 || (LEAST_MEANT..1e9).contains(&number.abs());
    let text = if plain { number.to_string() } else { with_power(number) };
    match decimal_sign() {
        '.' => text,
        sign => text.replace('.', sign.encode_utf8(&mut [0; 4])),
    }
}

/// Something in a document that holds a number.
trait Holds {
    const WHOLE: bool = false;
    const OPTIONAL: bool = false;
    fn number(&self) -> Option<f64>;
    fn put(&mut self, number: Option<f64>);
}

impl Holds for f64 {
    fn number(&self) -> Option<f64> {
        Some(*self)
    }
    fn put(&mut self, number: Option<f64>) {
        *self = number.unwrap_or(*self);
    }
}

impl Holds for u32 {
    const WHOLE: bool = true;
    fn number(&self) -> Option<f64> {
        Some(f64::from(*self))
    }
    fn put(&mut self, number: Option<f64>) {
        *self = number.map_or(*self, counted);
    }
}

impl Holds for Option<f64> {
    const OPTIONAL: bool = true;
    fn number(&self) -> Option<f64> {
        *self
    }
    fn put(&mut self, number: Option<f64>) {
        *self = number;
    }
}

impl Holds for Option<u32> {
    const WHOLE: bool = true;
    const OPTIONAL: bool = true;
    fn number(&self) -> Option<f64> {
        self.map(f64::from)
    }
    fn put(&mut self, number: Option<f64>) {
        *self = number.map(counted);
    }
}

/// The width of all gaps, while they are alike.
impl Holds for GapsSpec {
    fn number(&self) -> Option<f64> {
        match self {
            Self::UniformMm(width) => Some(*width),
            _ => None,
        }
    }
    fn put(&mut self, number: Option<f64>) {
        if let Some(width) = number {
            *self = Self::UniformMm(width);
        }
    }
}

/// The share of spares, where it is a share.
impl Holds for SparesSpec {
    fn number(&self) -> Option<f64> {
        match self {
            Self::Percent(percent) => Some(*percent),
            _ => None,
        }
    }
    fn put(&mut self, number: Option<f64>) {
        if let Some(percent) = number {
            *self = Self::Percent(percent);
        }
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a number below 0 counts as 0, and one beyond all counts as the highest"
)]
fn counted(number: f64) -> u32 {
    number.round() as u32
}

#[cfg(test)]
mod tests;
