//! The stock: lists of strings and wires that can be bought, which of them a string is, and what it costs.
//!
//! A list is a file of its own ([`write`], [`read`]); a design holds the items that its strings are
//! ([`used`]), so that a link opens with the same prices. An item keeps what its make-up reads as and a key, by
//! which a string that was taken from the stock is found again; any other string is the item of exactly its
//! make-up, or else the nearest. Two make-ups are the same string when their materials are the same and their
//! sizes as near as [`SAME_MM`].

mod file;
mod price;
mod starting;
pub mod table;

pub use self::file::{
    MOST_BYTES, MOST_ITEMS, StockError, StockList, VERSION, check, give_keys, merge, read, tidy,
    write,
};
pub use self::price::{NoPrice, bundle_of, is_same_currency, money, prices, share};
pub use self::starting::{USUAL_REMARK, starting_list};
use super::document::{Design, MakeUpSpec, MaterialSpec, StockItem, StringSpec};
use super::letters::small;
use super::library;
use super::make_up_text;
use super::typed::{self, cut};
use crate::engine::pitch::Note;
use crate::engine::units::{Length, LinearDensity};
use crate::words::stock as say;

/// How far two gauges of the same string may be apart, in millimetres: half of the hundredth that gauges are
/// written in, so that 0.81 mm and 0.032 inch are the same.
pub const SAME_MM: f64 = 0.005;
/// Room for the last digits of a unit's conversion.
const ROOM: f64 = 1e-9;

/// Why a string is no item of the stock.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum NoItem {
    /// Nothing was typed.
    #[error("{}", say::NO_MAKE_UP)]
    NoMakeUp,
    /// No item has the order code.
    #[error("{}", say::no_code(.code))]
    Code { code: String },
    /// The items with the order code are other strings.
    #[error("{}", say::other_make_up(.code, .item, .string))]
    OtherMakeUp { code: String, item: String, string: String },
    /// No item is such a string.
    #[error("{}", say::not_listed(.string))]
    NotListed { string: String },
}

/// A stock, to look many strings up in.
pub struct Shelf<'a> {
    materials: &'a [MaterialSpec],
    items: &'a [StockItem],
    meanings: Vec<Option<Meaning>>,
}

/// Which item a string is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Found {
    /// The index of the item.
    pub index: usize,
    /// Whether it is of exactly the sizes of the string, or of the same gauge in the other unit, such as .030 inch
    /// and 0.76 mm; and not only the nearest.
    pub is_exact: bool,
}

/// What a make-up means, as far as it matters for ordering: materials by key and sizes in millimetres.
#[derive(Clone, Debug, PartialEq)]
struct Meaning {
    parts: Vec<(String, Option<f64>)>,
    /// Mass per metre in grams; for weighed strings.
    g_per_m: Option<f64>,
    /// Widths of ribbons and packings.
    rest: Vec<f64>,
    /// Whether its gauges are typed in inches, or parts of them.
    in_inches: bool,
}

impl<'a> Shelf<'a> {
    /// Of these items; `materials` are those of the design, which come before the built-in ones.
    pub fn new(materials: &'a [MaterialSpec], items: &'a [StockItem]) -> Self {
        let meanings =
            items.iter().map(|item| meaning(materials, item.make_up.read().ok()?)).collect();
        Self { materials, items, meanings }
    }

    /// The items, in their order.
    pub const fn items(&self) -> &'a [StockItem] {
        self.items
    }

    /// The make-up of an item; `None` when it does not read as one.
    pub fn make_up(&self, index: usize) -> Option<&'a MakeUpSpec> {
        self.items.get(index)?.make_up.read().ok()
    }

    /// Which item a string is: by its order code, where it has one, and its make-up. Of several, the one with the key
    /// that the string names goes first, then one of exactly its sizes, then one that can be had and is sold for the
    /// note, then the nearest gauge, then the order of the list.
    ///
    /// # Errors
    ///
    /// Why it is none.
    pub fn find(&self, string: &StringSpec) -> Result<Found, NoItem> {
        if string.make_up.is_empty() {
            return Err(NoItem::NoMakeUp);
        }
        let code = small(string.order_code.trim());
        let has_code = |item: &StockItem| code.is_empty() || small(item.code.trim()) == code;
        let wanted = meaning(self.materials, &string.make_up);
        let note = string.note.parse::<Note>().ok();
        let text = || make_up_text::write(&string.make_up);
        let mut best: Option<(Found, (bool, bool, bool), f64)> = None;
        let mut other = None;
        for (index, item) in self.items.iter().enumerate() {
            if !has_code(item) {
                continue;
            }
            let Some(off) = self.off(index, wanted.as_ref(), &string.make_up) else {
                other.get_or_insert(index);
                continue;
            };
            let in_inches = |meaning: &Meaning| meaning.in_inches;
            let units = [self.meanings[index].as_ref(), wanted.as_ref()];
            let [item_unit, own_unit] = units.map(|meaning| meaning.map(in_inches));
            let is_exact = off <= ROOM || item_unit != own_unit;
            let is_other = string.stock_key == 0 || string.stock_key != item.key;
            let rank = (is_other, !is_exact, item.sold_out || !is_sold_for(item, note));
            let better = best
                .is_none_or(|(_, held, least)| rank < held || (rank == held && off < least - ROOM));
            if better {
                best = Some((Found { index, is_exact }, rank, off));
            }
        }
        match (best, other) {
            (Some((found, ..)), _) => Ok(found),
            (None, _) if code.is_empty() => Err(NoItem::NotListed { string: cut(&text()) }),
            (None, Some(other)) => Err(NoItem::OtherMakeUp {
                code: cut(&string.order_code),
                item: cut(&self.items[other].make_up),
                string: cut(&text()),
            }),
            (None, None) => Err(NoItem::Code { code: cut(&string.order_code) }),
        }
    }

    /// How far an item is from a make-up: see [`distance`]. `None` when it is another string.
    fn off(&self, index: usize, wanted: Option<&Meaning>, make_up: &MakeUpSpec) -> Option<f64> {
        match (self.meanings.get(index)?, wanted) {
            (Some(item), Some(wanted)) => distance(item, wanted),
            // What cannot be read is the same when it is written the same.
            (None, None) => (self.make_up(index)? == make_up).then_some(0.0),
            _ => None,
        }
    }
}

/// Whether an item is sold for a note; one that names no range is sold for all.
pub fn is_sold_for(item: &StockItem, note: Option<Note>) -> bool {
    let Some(note) = note else { return true };
    let end = |text: &str| text.parse::<Note>().ok().map(Note::key_number);
    let key = note.key_number();
    end(&item.lowest).is_none_or(|low| low <= key)
        && end(&item.highest).is_none_or(|high| key <= high)
}

/// Whether two make-ups are the same string to buy. Bare ends are not asked for: they are made when the
/// string is.
pub fn is_same(materials: &[MaterialSpec], one: &MakeUpSpec, other: &MakeUpSpec) -> bool {
    match (meaning(materials, one), meaning(materials, other)) {
        (Some(one), Some(other)) => distance(&one, &other).is_some(),
        (None, None) => one == other,
        _ => false,
    }
}

/// The items of a stock that the strings of a design are, each once, in the order of the stock.
pub fn used(design: &Design, items: &[StockItem]) -> Vec<StockItem> {
    let shelf = Shelf::new(&design.materials, items);
    let mut is_used = vec![false; items.len()];
    for found in design.strings.iter().filter_map(|string| shelf.find(string).ok()) {
        is_used[found.index] = true;
    }
    items.iter().zip(is_used).filter(|(_, used)| *used).map(|(item, _)| item.clone()).collect()
}

/// The stock that a design should hold when these lists are at hand: what it holds already and uses goes
/// first, so that its prices stay; then what it uses of the lists, in their order.
pub fn embedded(design: &Design, lists: &[&StockList]) -> Vec<StockItem> {
    let mut items = design.stock.clone();
    items.extend(lists.iter().flat_map(|list| list.with_currency()));
    used(design, &items)
}

fn meaning(materials: &[MaterialSpec], make_up: &MakeUpSpec) -> Option<Meaning> {
    let key = |text: &str| match library::find(materials, text) {
        Some(material) => small(&material.key),
        None => small(text.trim()),
    };
    let size = |text: &str| typed::gauge(text).ok().map(Length::to_mm);
    let core = || (key(&make_up.material), size(&make_up.diameter));
    let mut rest = Vec::new();
    let layers = make_up.layers.iter().map(|layer| &layer.size);
    let in_inches = [&make_up.diameter].into_iter().chain(layers).any(|text| is_in_inches(text));
    if let Some(weighed) = &make_up.weighed {
        let mass = typed::mass_per_metre(&weighed.g_per_m).map(LinearDensity::to_g_per_m).ok()?;
        let gauge = (String::new(), size(&weighed.gauge));
        return Some(Meaning { parts: vec![core(), gauge], g_per_m: Some(mass), rest, in_inches });
    }
    let mut parts = vec![core()];
    for layer in &make_up.layers {
        parts.push((key(&layer.material), size(&layer.size)));
        rest.push(if layer.is_ribbon() { size(&layer.width)? } else { 0.0 });
        rest.push(layer.packing_percent);
    }
    // Without a size it cannot be bought.
    if parts.iter().any(|(key, size)| key.is_empty() || size.is_none()) {
        return None;
    }
    Some(Meaning { parts, g_per_m: None, rest, in_inches })
}

/// Whether a gauge is typed in inches or thousandths of them.
fn is_in_inches(text: &str) -> bool {
    let text = small(text.trim());
    text.ends_with(['"', '″'])
        || ["in", "inch", "inches", "thou", "mil", "mils"].iter().any(|unit| text.ends_with(unit))
}

/// How far two make-ups of one string are from each other: the greatest difference of a size in millimetres, of a
/// packing in per cent, or of a mass in grams per metre; 0 where they are exactly the same. `None` when they are two
/// strings.
fn distance(one: &Meaning, other: &Meaning) -> Option<f64> {
    let near = |one: f64, other: f64, most: f64| {
        let off = (one - other).abs();
        (off <= most + ROOM).then_some(off)
    };
    let mut off = match (one.g_per_m, other.g_per_m) {
        (Some(one), Some(other)) => near(one, other, 0.005 * one.max(other))?,
        (None, None) => 0.0,
        _ => return None,
    };
    if one.parts.len() != other.parts.len() || one.rest.len() != other.rest.len() {
        return None;
    }
    for (one, other) in one.rest.iter().zip(&other.rest) {
        off = off.max(near(*one, *other, SAME_MM)?);
    }
    for ((key, size), (other_key, other_size)) in one.parts.iter().zip(&other.parts) {
        if key != other_key {
            return None;
        }
        match (size, other_size) {
            (Some(size), Some(other)) => off = off.max(near(*size, *other, SAME_MM)?),
            (None, None) => {}
            _ => return None,
        }
    }
    Some(off)
}

#[cfg(test)]
mod tests;
