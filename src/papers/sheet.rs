//! What stands on a printed sheet, in words, whatever will write it.

use super::code::Code;
use crate::words::Language;

/// A paper size, always upright.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Paper {
    #[default]
    A4,
    A5,
    Letter,
}

impl Paper {
    /// In the order in which a list shows them.
    pub const ALL: [Self; 3] = [Self::A4, Self::A5, Self::Letter];

    /// As shown.
    pub const fn name(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::A5 => "A5",
            Self::Letter => "Letter",
        }
    }

    /// Width and height (ISO 216; Letter is 8.5 by 11 inches).
    pub const fn size_mm(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::A5 => (148.0, 210.0),
            Self::Letter => (215.9, 279.4),
        }
    }

    /// White at the sides, and at top and bottom.
    pub const fn margin_mm(self) -> (f64, f64) {
        match self {
            Self::A4 => (10.0, 10.0),
            Self::A5 => (8.0, 8.0),
            Self::Letter => (10.0, 8.0),
        }
    }

    /// Width and height between the margins.
    pub fn inside_mm(self) -> (f64, f64) {
        let (size, margin) = (self.size_mm(), self.margin_mm());
        (size.0 - 2.0 * margin.0, size.1 - 2.0 * margin.1)
    }
}

/// Pages of one paper.
#[derive(Clone, Debug, PartialEq)]
pub struct Sheet {
    pub paper: Paper,
    /// What its words are in.
    pub language: Language,
    /// What the whole is, for a heading read aloud or the name of a file.
    pub title: String,
    pub pages: Vec<Page>,
}

/// One side of paper.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Page {
    /// From the top down.
    pub blocks: Vec<Block>,
    /// `page 1 of 2`; empty where there is but one.
    pub page_number: String,
}

/// A part of a page.
#[derive(Clone, Debug, PartialEq)]
pub enum Block {
    /// Opens the sheet.
    Heading(Heading),
    /// Opens every later page: which sheet this page belongs to.
    Running(String),
    /// A heading within the sheet.
    Title(String),
    /// The strings, or what is ordered.
    Table(Table),
    /// What the words in the table mean, a text for each line.
    Legend(Vec<String>),
    /// The maker's remarks, a text for each line.
    Remarks(Vec<String>),
    /// What to beware of, a text for each line.
    Caution(Vec<String>),
    /// A picture.
    Figure(Figure),
    /// How to go about it, what to beware of, and the code to scan.
    Closing(Closing),
}

/// What the sheet is about.
#[derive(Clone, Debug, PartialEq)]
pub struct Heading {
    /// What sheet it is.
    pub kind: &'static str,
    /// The instrument, in lines.
    pub title: Vec<String>,
    /// Whether the title is so long that it is set smaller.
    pub long_title: bool,
    pub facts: Vec<Fact>,
    /// How many facts stand beside each other.
    pub in_a_row: usize,
}

/// A label and what it says, in lines.
#[derive(Clone, Debug, PartialEq)]
pub struct Fact {
    pub label: &'static str,
    pub lines: Vec<String>,
}

/// A picture with its measures in millimetres.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// As SVG that is our own: every text in it is escaped.
    pub svg: String,
    /// What it shows, for who cannot see it.
    pub label: String,
}

/// What a table lists, which says how wide its columns are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TableKind {
    /// The strings of a card.
    Strings,
    /// The same, with a column of lengths in inches.
    StringsWithInches,
    /// What is ordered.
    Order,
    /// The strings of a report with their figures.
    Figures,
    /// The strings of two designs.
    Compared,
    /// The parts of a frame, judged.
    Loads,
    /// Forces.
    Forces,
    /// What differs, before and after.
    Pairs,
    /// The strings of a tuning sheet.
    Tuning,
    /// Keys, with their levers or pedals.
    Keys,
}

impl TableKind {
    /// Whether the second cell of a row bears the mark of its string.
    pub const fn has_marks(self) -> bool {
        matches!(self, Self::Strings | Self::StringsWithInches | Self::Figures | Self::Tuning)
    }
}

/// Rows under column heads.
#[derive(Clone, Debug, PartialEq)]
pub struct Table {
    pub kind: TableKind,
    pub columns: Vec<Column>,
    pub rows: Vec<TableRow>,
    /// Index into the layout's list of row spacings; the greater, the tighter.
    pub spacing: usize,
    /// Index into the layout's list of widths for the last column; the greater, the wider.
    pub last_width: usize,
}

/// The head of a column, in two lines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Column {
    pub head: [&'static str; 2],
    /// Figures stand flush right.
    pub figures: bool,
}

/// One string. A cell holds its lines.
#[derive(Clone, Debug, PartialEq)]
pub struct TableRow {
    pub mark: Option<Mark>,
    /// Whether a harpist's octave begins with this string, so that a stronger line stands above.
    pub opens_octave: bool,
    pub cells: Vec<Vec<String>>,
}

impl TableRow {
    /// Lines of the tallest cell, at least one.
    pub fn lines(&self) -> usize {
        self.cells.iter().map(Vec::len).max().unwrap_or(1).max(1)
    }
}

/// The strings that a harpist finds the others by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// A filled disc with its letter.
    C,
    /// A filled square with its letter.
    F,
}

/// The last part of a card.
#[derive(Clone, Debug, PartialEq)]
pub struct Closing {
    pub steps_title: &'static str,
    /// Numbered through, in one or two columns.
    pub steps: Vec<Vec<String>>,
    pub cautions_title: &'static str,
    pub cautions: &'static str,
    /// The code, or in words why there is none.
    pub code: Result<Code, String>,
    pub caption: &'static str,
}
