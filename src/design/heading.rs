//! The words of a table's headings: what matching of columns needs, be it of a stock list or of measurements.

use super::letters::small;
use super::number::{is_bare, plain, take_number};
use super::typed;
use crate::words::tables as say;

/// The unit of bare numbers in a column of sizes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Size {
    #[default]
    Mm,
    Cm,
    Metre,
    Inch,
    Thou,
    Foot,
    /// Hundredths of a millimetre.
    Hundredth,
}

impl Size {
    /// In the order in which a list shows them.
    pub const ALL: [Self; 7] =
        [Self::Mm, Self::Cm, Self::Metre, Self::Inch, Self::Thou, Self::Foot, Self::Hundredth];

    /// As a list shows it; all but the last are written so behind a number too.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Mm => "mm",
            Self::Cm => "cm",
            Self::Metre => "m",
            Self::Inch => "in",
            Self::Thou => "thou",
            Self::Foot => "ft",
            Self::Hundredth => "1/100 mm",
        }
    }

    /// As a sentence calls it.
    pub fn words(self) -> &'static str {
        let words = match self {
            Self::Mm => say::MILLIMETRES,
            Self::Cm => say::CENTIMETRES,
            Self::Metre => say::METRES,
            Self::Inch => say::INCHES,
            Self::Thou => say::THOUSANDTHS,
            Self::Foot => say::FEET,
            Self::Hundredth => say::HUNDREDTHS,
        };
        words.said()
    }

    /// How many millimetres it has.
    pub const fn mm(self) -> f64 {
        match self {
            Self::Mm => 1.0,
            Self::Cm => 10.0,
            Self::Metre => 1_000.0,
            Self::Inch => 25.4,
            Self::Thou => 0.0254,
            Self::Foot => 304.8,
            Self::Hundredth => 0.01,
        }
    }

    /// A cell with the unit behind it, where it is a bare number and not in millimetres.
    pub fn behind(self, cell: &str) -> String {
        match self {
            Self::Mm => cell.to_owned(),
            Self::Hundredth => match bare(cell) {
                Some(number) => (number / 100.0).to_string(),
                None => cell.to_owned(),
            },
            unit => typed::with_unit(cell, unit.name()),
        }
    }
}

/// The number that a cell is, if it is one without a unit.
pub fn bare(cell: &str) -> Option<f64> {
    let cell = plain(cell);
    take_number(&cell).filter(|_| is_bare(&cell)).map(|(number, _)| number)
}

/// The words of a heading, in small letters.
pub fn words_of(heading: &str) -> Vec<String> {
    let between = |c: char| c.is_whitespace() || "_-()[]{}:/.,;&".contains(c);
    let heading = small(heading);
    heading.split(between).filter(|word| !word.is_empty()).map(str::to_owned).collect()
}

/// Whether one of the words is one of the names.
pub fn has(words: &[String], names: &[&str]) -> bool {
    words.iter().any(|word| names.contains(&word.as_str()))
}

/// Whether all names are among the words.
pub fn has_all(words: &[String], names: &[&str]) -> bool {
    names.iter().all(|name| words.iter().any(|word| word == name))
}

/// The unit that the words of a heading name.
pub fn unit_of(words: &[String]) -> Option<Size> {
    if has_all(words, &["1", "100"]) || has(words, &["hundredths", "hundertstel", "centièmes"]) {
        return Some(Size::Hundredth);
    }
    words.iter().find_map(|word| match word.as_str() {
        "mm" | "millimetres" | "millimeters" | "millimeter" | "millimètres" => Some(Size::Mm),
        "cm" | "centimetres" | "centimeters" | "zentimeter" | "centimètres" => Some(Size::Cm),
        "m" | "metre" | "metres" | "meter" | "meters" => Some(Size::Metre),
        "inch" | "inches" | "\"" | "″" | "zoll" | "pouces" => Some(Size::Inch),
        "in" if !has(words, &["stock", "mm", "cm"]) && is_last_or_alone(words, word) => {
            Some(Size::Inch)
        }
        "thou" | "mil" | "mils" | "thousandths" => Some(Size::Thou),
        "ft" | "feet" => Some(Size::Foot),
        _ => None,
    })
}

/// `in` is the inch where nothing follows it but what stands in brackets at the end: `Length in`; in
/// `length in mm` it is a word like any other.
fn is_last_or_alone(words: &[String], word: &str) -> bool {
    words.last().is_some_and(|last| last == word) || words.len() <= 2
}

/// The names of headings that mean the same in every table, in English, German and French; some in Italian.
pub const GAUGE: &[&str] = &[
    "gauge",
    "gauges",
    "diameter",
    "dia",
    "diam",
    "ø",
    "thickness",
    "od",
    "stärke",
    "dicke",
    "durchmesser",
    "diamètre",
    "calibre",
    "épaisseur",
    "diametro",
];
pub const MATERIAL: &[&str] = &[
    "material",
    "mat",
    "kind",
    "type",
    "metal",
    "werkstoff",
    "matière",
    "matériau",
    "materiale",
    "materiaal",
];
pub const REMARK: &[&str] = &[
    "remark",
    "remarks",
    "comment",
    "comments",
    "description",
    "bemerkung",
    "bemerkungen",
    "anmerkung",
    "remarque",
    "remarques",
    "observations",
    "condition",
];

/// Whether a heading is that of a whole make-up.
pub fn is_make_up(words: &[String]) -> bool {
    has_all(words, &["make", "up"]) || has(words, &["makeup", "construction"])
}

/// Whether a heading is that of an order code.
pub fn is_code(words: &[String]) -> bool {
    has(
        words,
        &["code", "sku", "article", "ref", "reference", "art", "artikel", "référence", "réf"],
    ) || has(words, &["artikelnummer", "artikelnr", "bestellnummer", "bestellnr"])
        || (has(words, &["order", "part", "item", "product", "catalogue", "catalog"])
            && has(words, &["no", "nr", "number", "id"]))
}
