//! Everything that changes a design, and the one place where it is applied.

use std::ops::Range;

use super::document::{
    Allowances, Design, LimitsSpec, MakeUpSpec, MaterialSpec, PitchSpec, StringSpec, Units,
};

/// A column of the string chart that can be typed into.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Column {
    Note,
    Length,
    MakeUp,
    Gauge,
    OrderCode,
}

impl Column {
    /// From left to right.
    pub const ALL: [Self; 5] =
        [Self::Note, Self::Length, Self::MakeUp, Self::Gauge, Self::OrderCode];
}

/// A text about the whole instrument.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Field {
    Title,
    Maker,
    Client,
    Serial,
    Date,
    OpenTuning,
    Remarks,
}

/// A change of a design. Rows count from 0, the highest string.
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// One cell gets a text.
    Cell { row: usize, column: Column, text: String },
    /// A block of cells gets texts; rows past the last string are added.
    Block { row: usize, column: Column, texts: Vec<Vec<String>> },
    /// The strings of a range get a make-up.
    MakeUp { rows: Range<usize>, make_up: MakeUpSpec },
    /// Strings are put in before a row.
    Insert { row: usize, strings: Vec<StringSpec> },
    /// The strings of a range go.
    Delete { rows: Range<usize> },
    /// The strings of a range change places with the one above (`up`) or below.
    Move { rows: Range<usize>, up: bool },
    /// Strings are added above the highest, each the next note up.
    ExtendUp { count: usize },
    /// Strings are added below the lowest, each the next note down.
    ExtendDown { count: usize },
    /// A text about the whole instrument.
    Text { field: Field, text: String },
    /// Reference pitch and temperament.
    Pitch(PitchSpec),
    /// The units that the page shows.
    Units(Units),
    /// Where the finger plucks.
    Pluck { percent: f64 },
    /// What counts as a finding.
    Limits(LimitsSpec),
    /// What a string needs beyond its vibrating length.
    Allowances(Allowances),
    /// One material is added, or takes the place of the one with its key.
    Material(MaterialSpec),
    /// Another design takes the place of this one.
    Whole(Box<Design>),
}
