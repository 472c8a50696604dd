//! Which column of a table is what, by its heading and by what stands under it.

use super::{TableError, rows_of};
use crate::design::cells::unguarded;
pub use crate::design::heading::Size;
use crate::design::heading::{
    GAUGE, MATERIAL, REMARK, bare, has, has_all, is_code, is_make_up, unit_of, words_of,
};
use crate::design::letters::small;
use crate::design::typed::cut;
use crate::words::tables as say;

/// The most columns that are looked at.
const MOST_COLUMNS: usize = 100;
/// The most cells of a column that are looked at for its unit.
const LOOKED_AT: usize = 200;

/// What a column of a stock table can hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Field {
    /// The whole make-up in one line.
    MakeUp,
    Material,
    Gauge,
    Code,
    Supplier,
    /// Coil or single string.
    Pack,
    PackLength,
    Price,
    Currency,
    InStock,
    Lowest,
    Highest,
    Remark,
}

impl Field {
    /// In the order in which a list shows them.
    pub const ALL: [Self; 13] = [
        Self::MakeUp,
        Self::Material,
        Self::Gauge,
        Self::Code,
        Self::Supplier,
        Self::Pack,
        Self::PackLength,
        Self::Price,
        Self::Currency,
        Self::InStock,
        Self::Lowest,
        Self::Highest,
        Self::Remark,
    ];

    /// As a list shows it.
    pub fn name(self) -> &'static str {
        let words = match self {
            Self::MakeUp => say::WHOLE_MAKE_UP,
            Self::Material => say::MATERIAL,
            Self::Gauge => say::GAUGE,
            Self::Code => say::ORDER_CODE,
            Self::Supplier => say::SUPPLIER,
            Self::Pack => say::COIL_OR_SINGLE,
            Self::PackLength => say::PACK_LENGTH,
            Self::Price => say::PACK_PRICE,
            Self::Currency => say::CURRENCY,
            Self::InStock => say::IN_STOCK,
            Self::Lowest => say::LOWEST_NOTE,
            Self::Highest => say::HIGHEST_NOTE,
            Self::Remark => say::REMARK,
        };
        words.said()
    }

    /// Whether its bare numbers need a unit.
    pub const fn is_size(self) -> bool {
        matches!(self, Self::Gauge | Self::PackLength)
    }
}

/// A column of a table, and what it is taken for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Column {
    /// As it stands in the table.
    pub heading: String,
    /// The first cell under it that is not empty.
    pub example: String,
    /// `None` for a column that is left out.
    pub field: Option<Field>,
    /// The unit of its bare numbers.
    pub unit: Size,
    /// The currency that its heading names, for prices; empty for none.
    pub currency: String,
}

/// All columns of a table, from left to right.
pub type Columns = Vec<Column>;

/// What the columns of a table seem to be. No two are the same; the first one is taken.
///
/// # Errors
///
/// When the text is no table.
pub fn propose(text: &str) -> Result<Columns, TableError> {
    let rows = rows_of(text)?;
    let Some((headings, rows)) = rows.split_first() else { return Ok(Vec::new()) };
    let mut columns = Columns::new();
    for (place, heading) in headings.cells.iter().take(MOST_COLUMNS).enumerate() {
        let under = || rows.iter().filter_map(|row| row.cells.get(place)).map(|cell| cell.trim());
        let filled = || under().filter(|cell| !cell.is_empty()).take(LOOKED_AT);
        let (field, unit) = matched(heading);
        let is_new = |field: &Field| columns.iter().all(|column| column.field != Some(*field));
        let field = field.filter(is_new);
        let usual = || match field {
            Some(Field::Gauge) => gauge_unit(filled()),
            Some(Field::PackLength) => length_unit(filled()),
            _ => Size::Mm,
        };
        columns.push(Column {
            heading: cut(heading),
            example: filled().next().map(|cell| cut(unguarded(cell))).unwrap_or_default(),
            field,
            unit: unit.unwrap_or_else(usual),
            currency: if field == Some(Field::Price) {
                currency_in(heading)
            } else {
                String::new()
            },
        });
    }
    Ok(columns)
}

/// What a heading means, and the unit that it names.
fn matched(heading: &str) -> (Option<Field>, Option<Size>) {
    let words = words_of(heading);
    // `Price in EUR` is no inch.
    let names_currency = !currency_in(heading).is_empty();
    let unit = unit_of(&words).filter(|unit| !names_currency || *unit != Size::Inch);
    let all = |names: &[&str]| has_all(&words, names);
    let has = |names: &[&str]| has(&words, names);
    let note = has(&["note", "notes", "string", "range", "octave"]);
    let field = if is_make_up(&words) || has(&["aufbau", "composition"]) {
        Some(Field::MakeUp)
    } else if has(&["currency", "curr", "währung", "devise", "monnaie", "valuta"]) {
        Some(Field::Currency)
    } else if has(&[
        "price", "prices", "cost", "costs", "amount", "preis", "preise", "prix", "prijs", "prezzo",
    ]) {
        // A price for each metre is no price of a pack: the user has to say so.
        if unit.is_some() { None } else { Some(Field::Price) }
    } else if is_code(&words) {
        Some(Field::Code)
    } else if all(&["in", "stock"])
        || has(&["stock", "available", "availability", "lieferbar", "vorrätig", "disponible"])
    {
        Some(Field::InStock)
    } else if has(&["supplier", "vendor", "shop", "dealer", "seller", "manufacturer", "brand"])
        || has(&["lieferant", "händler", "hersteller", "fournisseur", "marque"])
    {
        Some(Field::Supplier)
    } else if has(&["lowest", "low", "bass", "bottom", "from", "von"]) {
        Some(Field::Lowest)
    } else if has(&["highest", "high", "treble", "top"])
        || (has(&["to", "bis"]) && (note || words.len() == 1))
    {
        Some(Field::Highest)
    } else if has(GAUGE) {
        Some(Field::Gauge)
    } else if has(&["length", "len", "metres", "meters", "länge", "longueur", "lengte"]) {
        Some(Field::PackLength)
    } else if has(&[
        "pack",
        "packaging",
        "form",
        "sold",
        "packung",
        "verpackung",
        "gebinde",
        "conditionnement",
    ]) {
        Some(if unit.is_some() { Field::PackLength } else { Field::Pack })
    } else if has(&["coil", "spool", "reel", "roll", "rolle", "ring", "rouleau", "bobine"]) {
        Some(Field::PackLength)
    } else if has(MATERIAL) {
        Some(Field::Material)
    } else if has(REMARK) || has(&["notes"]) {
        Some(Field::Remark)
    } else {
        None
    };
    (field, unit)
}

/// Currencies that are known in any letters.
const CURRENCIES: [&str; 18] = [
    "eur", "euro", "euros", "usd", "gbp", "chf", "sek", "nok", "dkk", "pln", "czk", "huf", "cad",
    "aud", "nzd", "jpy", "fr", "kr",
];

/// The currency in the heading of prices: `Price (EUR)`, `price €`.
fn currency_in(heading: &str) -> String {
    if let Some(sign) = heading.chars().find(|c| matches!(c, '€' | '$' | '£' | '¥')) {
        return sign.to_string();
    }
    let words = || heading.split(|c: char| !c.is_alphanumeric());
    // In a heading of capitals any word of three letters would look like a code.
    let known = words().find(|word| CURRENCIES.contains(&small(word).as_str()));
    let is_code = |word: &&str| word.len() == 3 && word.bytes().all(|b| b.is_ascii_uppercase());
    let is_mixed = heading.bytes().any(|letter| letter.is_ascii_lowercase());
    let other = || words().filter(|_| is_mixed).find(is_code);
    known.or_else(other).unwrap_or_default().to_owned()
}

/// The unit of gauges whose heading names none, by how large most of them are.
fn gauge_unit<'a>(cells: impl Iterator<Item = &'a str>) -> Size {
    let (mut thou, mut inch, mut mm) = (0, 0, 0);
    for cell in cells {
        let Some(number) = bare(cell) else { continue };
        *match number {
            number if number > 10.0 => &mut thou,
            // Thinner than any string in millimetres, but for the thinnest wire.
            number if number < 0.1 => &mut inch,
            _ => &mut mm,
        } += 1;
    }
    match () {
        () if thou > inch + mm => Size::Thou,
        () if inch > 0 && inch >= thou + mm => Size::Inch,
        () => Size::Mm,
    }
}

/// The unit of pack lengths whose heading names none: metres when most are below 50, else millimetres.
fn length_unit<'a>(cells: impl Iterator<Item = &'a str>) -> Size {
    let (mut metres, mut others) = (0, 0);
    for cell in cells {
        let Some(number) = bare(cell) else { continue };
        *if number <= 50.0 { &mut metres } else { &mut others } += 1;
    }
    if metres > others { Size::Metre } else { Size::Mm }
}
