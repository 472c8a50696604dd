//! What the columns of a table of measurements can hold, and what a heading says of it.

use super::cells::unguarded;
use super::notes::PlainB;
use crate::design::heading::{
    GAUGE, MATERIAL, REMARK, Size, has, has_all, is_code, is_make_up, unit_of, words_of,
};
use crate::design::letters::small;
use crate::engine::material::key_of;
use crate::words::tables as say;

/// What a column of measurements can hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Field {
    Number,
    Note,
    Octave,
    /// The pitch in hertz.
    Pitch,
    Length,
    Gauge,
    Material,
    /// The whole make-up in one line.
    MakeUp,
    /// Of a wound string: material and diameter of the wire that is wound on its core.
    Winding,
    WindingWire,
    Code,
    Remark,
}

impl Field {
    /// In the order in which a list shows them.
    pub const ALL: [Self; 12] = [
        Self::Number,
        Self::Note,
        Self::Octave,
        Self::Pitch,
        Self::Length,
        Self::Gauge,
        Self::Material,
        Self::MakeUp,
        Self::Winding,
        Self::WindingWire,
        Self::Code,
        Self::Remark,
    ];

    /// As a list shows it.
    pub fn name(self) -> &'static str {
        let words = match self {
            Self::Number => say::NUMBER,
            Self::Note => say::NOTE,
            Self::Octave => say::OCTAVE,
            Self::Pitch => say::PITCH_HZ,
            Self::Length => say::LENGTH,
            Self::Gauge => say::GAUGE,
            Self::Material => say::MATERIAL,
            Self::MakeUp => say::MATERIAL_AND_GAUGE,
            Self::Winding => say::WINDING_MATERIAL,
            Self::WindingWire => say::WINDING_GAUGE,
            Self::Code => say::ORDER_CODE,
            Self::Remark => say::REMARK,
        };
        words.said()
    }

    /// Whether its bare numbers need a unit.
    pub const fn is_size(self) -> bool {
        matches!(self, Self::Length | Self::Gauge | Self::MakeUp | Self::WindingWire)
    }
}

/// A column of a table, and what it is taken for.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Column {
    /// As it stands in the table.
    pub heading: String,
    /// The first cell under it that is filled.
    pub example: String,
    /// `None` for a column that is left out.
    pub field: Option<Field>,
    /// The unit of its bare numbers.
    pub unit: Size,
    /// Whether the table, or whoever was asked, says so.
    pub has_unit: bool,
    /// The unit that its bare numbers look like, where that is another one: a question.
    pub looks_like: Option<Size>,
    /// Of notes: what a B without a sign is, where whoever was asked said so.
    pub plain_b: Option<PlainB>,
    /// The material that its heading names; empty for none.
    pub material: String,
}

/// All columns of a table, from left to right.
pub type Columns = Vec<Column>;

/// What a heading says.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Said {
    pub(super) field: Option<Field>,
    pub(super) unit: Option<Size>,
    /// The material of the whole column, as in `Gut (mm)`.
    pub(super) material: Option<&'static str>,
    /// Whether it is a word such as `String`, which may head numbers, notes or strings.
    pub(super) is_string: bool,
}

const NUMBER: &[&str] = &[
    "no", "nr", "num", "number", "#", "n°", "nº", "№", "pos", "position", "nummer", "numéro", "lfd",
];
const STRING: &[&str] =
    &["string", "strings", "saite", "saiten", "corde", "cordes", "corda", "stringing"];
const NOTE: &[&str] =
    &["note", "ton", "tone", "pitch", "name", "letter", "key", "tonname", "nota", "noten"];
const LENGTH: &[&str] = &[
    "length",
    "lengths",
    "len",
    "länge",
    "längen",
    "saitenlänge",
    "mensur",
    "schwingende",
    "longueur",
    "longueurs",
    "lunghezza",
    "long",
    "speaking",
    "vibrating",
    "sounding",
];

/// What a heading says.
pub(super) fn said(heading: &str) -> Said {
    let heading = unguarded(heading);
    let words = words_of(heading);
    let unit = unit_of(&words);
    let has = |names: &[&str]| has(&words, names);
    let material = words.iter().find_map(|word| material(word));
    let is_string = has(STRING) && !has(LENGTH) && !has(GAUGE) && !has(NUMBER) && !has(NOTE);
    let field = if is_make_up(&words) {
        Some(Field::MakeUp)
    } else if has(&["hz", "frequency", "frequenz", "fréquence", "hertz"]) {
        Some(Field::Pitch)
    } else if has(&["winding", "wrap", "overspun", "umspinnung", "filage"]) {
        let is_size = unit.is_some() || has(GAUGE) || has(&["wire", "draht"]);
        Some(if is_size { Field::WindingWire } else { Field::Winding })
    } else if is_code(&words) {
        Some(Field::Code)
    } else if has(REMARK) || has(&["notes", "notiz", "notizen"]) {
        Some(Field::Remark)
    } else if has(LENGTH) {
        Some(Field::Length)
    } else if has(MATERIAL) || has_all(&words, &["made", "of"]) {
        Some(Field::Material)
    } else if has(GAUGE) || has(&["thou", "core", "kern"]) {
        Some(Field::Gauge)
    } else if has(NUMBER) {
        Some(Field::Number)
    } else if has(NOTE) {
        Some(Field::Note)
    } else if has(&["octave", "oktave", "octaves", "oct", "okt"]) {
        Some(if is_string { Field::Note } else { Field::Octave })
    } else if material.is_some() || (has(&["wire", "draht"]) && unit.is_some()) {
        Some(Field::Gauge)
    } else {
        None
    };
    let material = material.filter(|_| field == Some(Field::Gauge));
    Said { field, unit, material, is_string }
}

/// Words of which one shows that a list is German.
const GERMAN: [&str; 25] = [
    "ton",
    "tonname",
    "noten",
    "länge",
    "längen",
    "saitenlänge",
    "mensur",
    "schwingende",
    "stärke",
    "dicke",
    "durchmesser",
    "werkstoff",
    "bemerkung",
    "bemerkungen",
    "anmerkung",
    "saite",
    "saiten",
    "nummer",
    "oktave",
    "umspinnung",
    "umsponnen",
    "darm",
    "stahl",
    "maße",
    "harfe",
];

/// Whether a cell has a German word.
pub(super) fn is_german(cell: &str) -> bool {
    has(&words_of(cell), &GERMAN)
}

/// How many cells of a row are headings that say what stands under them.
pub(super) fn known(cells: &[String]) -> usize {
    let is_known = |cell: &&String| {
        let said = said(cell);
        let letters = cell.chars().any(|c| c.is_alphabetic() || "#øØ№".contains(c));
        letters
            && !is_spoken(cell)
            && (said.field.is_some() || said.is_string || said.unit.is_some())
    };
    cells.iter().filter(is_known).count()
}

/// Whether a cell is too long for a heading, or holds a number that is none of its unit.
fn is_spoken(cell: &str) -> bool {
    let numbers = cell.split(|c: char| !c.is_ascii_digit()).filter(|digits| !digits.is_empty());
    cell.chars().count() > 40
        || numbers.filter(|digits| !matches!(*digits, "1" | "100")).count() > 0
}

/// Materials as they are called in German and French.
const FOREIGN: [(&str, &str); 23] = [
    ("darm", "gut"),
    ("darmsaite", "gut"),
    ("boyau", "gut"),
    ("budello", "gut"),
    ("karbon", "fluorocarbon"),
    ("carbone", "fluorocarbon"),
    ("fluorkarbon", "fluorocarbon"),
    ("fluorcarbon", "fluorocarbon"),
    ("fluorocarbone", "fluorocarbon"),
    ("stahl", "steel"),
    ("acier", "steel"),
    ("acciaio", "steel"),
    ("messing", "yellow brass"),
    ("laiton", "yellow brass"),
    ("ottone", "yellow brass"),
    ("kupfer", "copper"),
    ("cuivre", "copper"),
    ("silber", "silver"),
    ("argent", "silver"),
    ("seide", "silk"),
    ("soie", "silk"),
    ("eisen", "iron"),
    ("fer", "iron"),
];

/// Whether a material is called so in German or French.
pub(super) fn is_foreign(text: &str) -> bool {
    let text = small(text.trim());
    FOREIGN.iter().any(|(word, _)| *word == text)
}

/// The material that a word or two mean, by its key.
pub(super) fn material(text: &str) -> Option<&'static str> {
    let text = small(text.trim().trim_end_matches([':', '.']));
    if let Some(key) = key_of(&text) {
        return Some(key);
    }
    let of = |text: &str| {
        let foreign = FOREIGN.iter().find(|(word, _)| *word == text);
        foreign.and_then(|(_, key)| key_of(key)).or_else(|| key_of(text))
    };
    let bare = ["strings", "string", "wire", "saiten", "strung"];
    let stem = bare.iter().find_map(|end| text.strip_suffix(end)).unwrap_or(&text).trim();
    of(&text).or_else(|| of(stem))
}
