//! A stock list as a file: readable JSON with a version, and the care that a file from anywhere needs.

use serde::Serialize;
use serde_json::Value;
use thiserror::Error;

use crate::design::document::{LONGEST_CELL, LONGEST_TEXT, MaterialSpec, StockItem};
use crate::design::letters::small;
use crate::design::library::{MaterialError, material_of, sources_mut, sources_of};
use crate::design::make_up_text;
use crate::design::persist::{
    CheckError, MOST_MATERIALS, check_item, readable, tidy_item, tidy_text, told,
};
use crate::design::reading::{fields, parse, taken};
use crate::design::sum::crc_32;
use crate::design::writing::json_text;
use crate::words::{Words, stock as say};

/// The version of the file.
pub const VERSION: u64 = 1;
/// The field that holds the version, and says what kind of file it is.
const MARK: &str = "stringloft-stock";
/// The longest text that is read, in bytes.
pub const MOST_BYTES: usize = 4 << 20;
/// The most items of one list.
pub const MOST_ITEMS: usize = 2_000;

/// A list of what can be bought.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct StockList {
    /// What its maker calls it.
    pub name: String,
    /// The currency of prices that name none, as typed.
    pub currency: String,
    /// A remark: where the list comes from.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub remark: String,
    /// The materials of its items that do not come with the program, with their figures.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub materials: Vec<MaterialSpec>,
    /// In the order in which the maker keeps them.
    pub items: Vec<StockItem>,
}

fields!(StockList {
    name,
    currency,
    remark unless remark.is_empty(),
    materials unless materials.is_empty(),
    items,
});

impl StockList {
    /// The items, each with its currency.
    pub fn with_currency(&self) -> impl Iterator<Item = StockItem> {
        self.items.iter().map(|item| match (item.price, item.currency.trim()) {
            (Some(_), "") => StockItem { currency: self.currency.clone(), ..item.clone() },
            _ => item.clone(),
        })
    }
}

/// Why a text is no stock list that can be used.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum StockError {
    /// Longer than [`MOST_BYTES`].
    #[error("{}", say::list_too_large(&(MOST_BYTES >> 20)))]
    TooLarge,
    /// Nothing but blanks.
    #[error("{}", say::LIST_EMPTY)]
    Empty,
    /// No JSON, or a field that holds something else than it should.
    #[error("{}", say::list_unreadable(.what))]
    Unreadable { what: String },
    /// JSON of another kind.
    #[error("{}", say::LIST_OTHER_KIND)]
    OtherKind,
    /// A design.
    #[error("{}", say::LIST_IS_DESIGN)]
    Design,
    /// Written by a newer program.
    #[error("{}", say::list_too_new(.found, &VERSION))]
    TooNew { found: u64 },
    /// Too many of something.
    #[error("{}", say::list_many(.got, .most, .what))]
    Many { what: Words, most: usize, got: usize },
    /// A text that is too long.
    #[error("{}", say::list_long(.got, .most, .what))]
    Long { what: Words, most: usize, got: usize },
    /// An item that breaks a limit.
    #[error(transparent)]
    Item(#[from] CheckError),
    /// A material that cannot be used.
    #[error(transparent)]
    Material(#[from] MaterialError),
}

/// The text of a stock list: JSON for people to read, a line for each item.
pub fn write(list: &StockList) -> String {
    let text = json_text(list);
    let fields = text.strip_prefix('{').unwrap_or("}");
    readable(&format!("{{\"{MARK}\":{VERSION},{fields}"))
}

/// The stock list that a text holds.
///
/// # Errors
///
/// When the text is too large, no JSON, of another kind, of a newer version, or breaks one of the limits
/// that [`check`] holds.
pub fn read(text: &str) -> Result<StockList, StockError> {
    if text.len() > MOST_BYTES {
        return Err(StockError::TooLarge);
    }
    let text = text.trim_start_matches('\u{feff}');
    if text.trim().is_empty() {
        return Err(StockError::Empty);
    }
    let mut document =
        parse(text).map_err(|error| StockError::Unreadable { what: told(&error) })?;
    match document.get(MARK).and_then(Value::as_u64) {
        Some(VERSION) => {}
        Some(found) if found > VERSION => return Err(StockError::TooNew { found }),
        _ if document.get("stringloft").is_some() => return Err(StockError::Design),
        _ => return Err(StockError::OtherKind),
    }
    let mut list: StockList =
        taken(&mut document).map_err(|wrong| StockError::Unreadable { what: wrong.to_string() })?;
    tidy(&mut list);
    check(&list)?;
    Ok(list)
}

/// Takes out of every text what nobody types.
pub fn tidy(list: &mut StockList) {
    for text in [&mut list.name, &mut list.currency] {
        tidy_text(text, false);
    }
    tidy_text(&mut list.remark, true);
    for spec in &mut list.materials {
        tidy_text(&mut spec.key, false);
        tidy_text(&mut spec.name, false);
        sources_mut(spec).into_iter().for_each(|text| tidy_text(text, false));
    }
    list.items.iter_mut().for_each(tidy_item);
    give_keys(&mut list.items);
}

/// Gives a key of its own to every item that has none, or one that an item before it has. Once given, a key stays,
/// whatever is typed into the item; it begins as a sum of what the item is, so that two lists hardly give one key to
/// items that are alike. Items without a make-up get none.
pub fn give_keys(items: &mut [StockItem]) {
    let mut taken: Vec<u16> = items.iter().map(|item| item.key).collect();
    for at in 0..items.len() {
        let item = &mut items[at];
        let has_key = item.key != 0 && !taken[..at].contains(&item.key);
        if has_key || item.make_up.is_empty() {
            continue;
        }
        let (supplier, code, make_up) = name_of(item);
        let sum = crc_32(format!("{supplier}\n{code}\n{make_up}").as_bytes());
        // Three digits, as links hold it for each string; what two strings are made of is compared besides.
        let mut key = u16::try_from(1 + sum % 999).unwrap_or(1);
        // There are far fewer items than keys.
        while key == 0 || taken.contains(&key) {
            key = key.wrapping_add(1);
        }
        (item.key, taken[at]) = (key, key);
    }
}

/// Whether a stock list keeps within its limits. What its texts mean is not looked at.
///
/// # Errors
///
/// The first limit that is broken.
pub fn check(list: &StockList) -> Result<(), StockError> {
    let many = |what, got, most| match got {
        got if got <= most => Ok(()),
        got => Err(StockError::Many { what, most, got }),
    };
    let fits = |what, text: &str, most| match text.chars().count() {
        got if got <= most => Ok(()),
        got => Err(StockError::Long { what, most, got }),
    };
    many(say::WHAT_ITEMS, list.items.len(), MOST_ITEMS)?;
    many(say::WHAT_MATERIALS, list.materials.len(), MOST_MATERIALS)?;
    fits(say::WHAT_NAME, &list.name, LONGEST_CELL)?;
    fits(say::WHAT_CURRENCY, &list.currency, LONGEST_CELL)?;
    fits(say::WHAT_REMARK, &list.remark, LONGEST_TEXT)?;
    for spec in &list.materials {
        fits(say::WHAT_MATERIAL_NAME, &spec.name, LONGEST_CELL)?;
        for source in sources_of(spec) {
            fits(say::WHAT_MATERIAL_SOURCE, source, LONGEST_TEXT)?;
        }
        material_of(spec)?;
    }
    let mut bytes = 0;
    for (index, item) in list.items.iter().enumerate() {
        check_item(item, Some(index + 1))?;
        let texts = [&item.code, &item.supplier, &item.currency, &item.remark];
        bytes += item.make_up.len() + texts.iter().map(|text| text.len()).sum::<usize>();
    }
    // With quotes and names of fields it must still be short enough to be read again.
    if bytes > MOST_BYTES / 4 { Err(StockError::TooLarge) } else { Ok(()) }
}

/// A list with the items of another: an item of the same supplier, order code and make-up takes the place
/// of the one that is there, any other goes to the end. Gives the list, how many items are new, and how
/// many were changed. A material that the list has already stays as it is.
pub fn merge(list: &StockList, other: &StockList) -> (StockList, usize, usize) {
    let mut merged = list.clone();
    let (mut added, mut changed) = (0, 0);
    let mut names: Vec<Name> = merged.items.iter().map(name_of).collect();
    for mut item in other.with_currency() {
        if item.currency == merged.currency {
            item.currency.clear();
        }
        let name = name_of(&item);
        match names.iter().position(|known| *known == name) {
            Some(place) => {
                item.key = merged.items[place].key;
                changed += usize::from(merged.items[place] != item);
                merged.items[place] = item;
            }
            None => {
                added += 1;
                names.push(name);
                merged.items.push(item);
            }
        }
    }
    give_keys(&mut merged.items);
    for material in &other.materials {
        if !merged.materials.iter().any(|known| small(&known.key) == small(&material.key)) {
            merged.materials.push(material.clone());
        }
    }
    (merged, added, changed)
}

/// What tells an item from another: supplier, order code and make-up.
type Name = (String, String, String);

fn name_of(item: &StockItem) -> Name {
    let make_up = item.make_up.read().map(make_up_text::write);
    let make_up = make_up.unwrap_or_else(|_| item.make_up.to_string());
    (small(item.supplier.trim()), small(item.code.trim()), small(&make_up))
}
