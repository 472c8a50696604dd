//! What a string costs: a single string its price, a string cut from a coil its share.

use thiserror::Error;

use super::{NoItem, Shelf};
use crate::design::decimal::decimal;
use crate::design::document::{Design, StockItem};
use crate::design::letters::small;
use crate::engine::analysis::Analysis;
use crate::engine::units::Length;
use crate::words::{numeral, stock as say};

/// Why a string has no price.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum NoPrice {
    /// It is no stock item.
    #[error(transparent)]
    Item(#[from] NoItem),
    /// The item has no price.
    #[error("{}", say::NO_PRICE)]
    Price,
    /// A coil whose length is not known.
    #[error("{}", say::NO_PACK_LENGTH)]
    PackLength,
    /// The length to cut is not known.
    #[error("{}", say::NO_CUT_LENGTH)]
    CutLength,
    /// The pack is shorter than the string.
    #[error("{}", say::pack_short(&numeral(*.cut_mm), &numeral(*.pack_mm)))]
    Short { cut_mm: f64, pack_mm: f64 },
}

/// How many strings a pack of single strings holds.
pub fn bundle_of(item: &StockItem) -> u32 {
    item.bundle.max(1)
}

/// Whether two currencies are the same, however they are written: `€`, `EUR` and `Euro`.
pub fn is_same_currency(one: &str, other: &str) -> bool {
    let name = |text: &str| match small(text.trim()).as_str() {
        "€" | "euro" | "euros" => "eur".to_owned(),
        "£" => "gbp".to_owned(),
        name => name.to_owned(),
    };
    name(one) == name(other)
}

/// The price of one string of an item: of a single string the price, of a bundle its share, of a coil
/// `price · cut / pack`.
///
/// # Errors
///
/// Why there is none.
pub fn share(item: &StockItem, cut: Option<Length>) -> Result<f64, NoPrice> {
    let price = item.price.ok_or(NoPrice::Price)?;
    let cut_mm = cut.map(|cut| cut.to_mm().ceil());
    if let (Some(pack_mm), Some(cut_mm)) = (item.pack_mm, cut_mm)
        && cut_mm > pack_mm
    {
        return Err(NoPrice::Short { cut_mm, pack_mm });
    }
    if item.single {
        return Ok(price / f64::from(bundle_of(item)));
    }
    let pack_mm = item.pack_mm.ok_or(NoPrice::PackLength)?;
    let cut = cut.ok_or(NoPrice::CutLength)?;
    Ok(price * cut.to_mm() / pack_mm)
}

/// The price of every string of a design and its currency, from the stock that the design holds.
pub fn prices(design: &Design, analysis: &Analysis) -> Vec<Result<(f64, String), NoPrice>> {
    let shelf = Shelf::new(&design.materials, &design.stock);
    let price = |(string, figures): (_, &crate::engine::analysis::StringFigures)| {
        let item = &design.stock[shelf.find(string)?.index];
        Ok((share(item, figures.cut_length.ok())?, item.currency.trim().to_owned()))
    };
    design.strings.iter().zip(&analysis.strings).map(price).collect()
}

/// A price as typed, and its currency, which may be empty: `12.50`, `12,50 EUR`, `€ 1.234,50`. `None` when
/// it is no number from 0 up, could be read two ways (`1,234`) or is for something else than a pack (`3 EUR/m`).
pub fn money(text: &str) -> Option<(f64, String)> {
    let of_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',');
    let start = text.find(of_number)?;
    let end = text.rfind(of_number)? + 1;
    let blank = |c: &char| !c.is_whitespace() && !matches!(c, '\'' | '’');
    let number: String = text[start..end].chars().filter(blank).collect();
    // Swiss prices end in a dash, and a point may be left over from an abbreviation.
    let currency = format!("{} {}", &text[..start], &text[end..]);
    let currency = currency.replace(".–", "").replace(".-", "");
    let currency =
        currency.trim_matches(|c: char| c.is_whitespace() || matches!(c, '-' | '–' | '.'));
    // A price for each metre is not that of a pack.
    let for_each = currency.contains('/') || currency.split_whitespace().any(|word| word == "per");
    if for_each || currency.contains(of_number) || text[..start].contains(['-', '−']) {
        return None;
    }
    let number = number.trim_end_matches(['.', ',']);
    let parts = |mark| number.matches(mark).count();
    let plain = match (parts('.'), parts(',')) {
        (_, 0) if parts('.') <= 1 => number.to_owned(),
        (0, 1) => {
            let decimals = number.len() - number.find(',')? - 1;
            if decimals == 3 {
                return None;
            }
            number.replace(',', ".")
        }
        // Of both, the last one is the decimal mark.
        (_, 1) if number.rfind(',') > number.rfind('.') => {
            number.replace('.', "").replace(',', ".")
        }
        (1, _) if number.rfind('.') > number.rfind(',') => number.replace(',', ""),
        _ => return None,
    };
    decimal(&plain).map(|number| (number, currency.to_owned()))
}
