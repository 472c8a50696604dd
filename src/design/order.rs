//! The order list: which stock items the strings of a design are, how much of each, how many packs, and what
//! they cost. A string that the stock does not have is ordered by what it is.
//!
//! Pieces are whole millimetres, rounded up, as they are cut. How many coils they take is a problem of
//! cutting stock ([`cutting`]).

pub mod cutting;
mod words;

use thiserror::Error;

use self::cutting::coils;
pub use self::words::{
    COLUMNS, csv, cut_words, money_words, numbers_words, pack_words, remarks, sold_as, sum_words,
};
use super::document::{Design, OrderSpec, SparesSpec, StockItem};
use super::stock::{Found, NoItem, Shelf, bundle_of, is_same_currency, is_sold_for};
use crate::engine::analysis::Analysis;
use crate::engine::order::sort;
use crate::engine::units::Length;
use crate::words::stock as say;

/// What to order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct OrderList {
    /// By supplier, in the order in which the strings come to them; of one supplier by the highest string. What the
    /// stock does not have comes last.
    pub lines: Vec<OrderLine>,
    /// Numbers of the strings of which it is not said what they are made of.
    pub unknown: Vec<usize>,
}

/// One stock item, or strings of one make-up that the stock does not have.
#[derive(Clone, Debug, PartialEq)]
pub struct OrderLine {
    /// What the stock does not have holds its make-up and the order code of the strings.
    pub item: StockItem,
    /// Why it is no item of the stock; none where it is one.
    pub outside: Option<NoItem>,
    /// Numbers of the strings, the highest being 1.
    pub strings: Vec<usize>,
    /// The lengths to cut these strings to, in whole millimetres, as far as they are known.
    pub cuts_mm: Vec<Option<u32>>,
    /// The same for the pieces that are ordered beyond them.
    pub spares_mm: Vec<Option<u32>>,
    /// All pieces together, spares too, as far as their lengths are known.
    pub length_mm: u64,
    /// How many pieces have no known length.
    pub without_length: usize,
    /// How many packs they take.
    pub packs: Result<Packs, NoPacks>,
    /// The price of these packs; none where packs or price are not known.
    pub price: Option<f64>,
    /// Numbers of the strings whose note the item is not sold for.
    pub out_of_range: Vec<usize>,
    /// Numbers of the strings whose sizes are not exactly those of the item, but nearest to it.
    pub nearest: Vec<usize>,
}

impl OrderLine {
    /// How many pieces are needed, spares too.
    pub const fn count(&self) -> usize {
        self.strings.len() + self.spares_mm.len()
    }
}

/// How many packs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Packs {
    /// So many suffice.
    pub count: usize,
    /// Fewer than this cannot suffice; the same as `count` where it is sure that fewer will not do.
    pub at_least: usize,
}

/// Why the number of packs is not known.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum NoPacks {
    /// What the stock does not have.
    #[error("{}", say::PACKS_OUTSIDE)]
    Outside,
    /// A coil whose length is not known.
    #[error("{}", say::PACKS_LENGTH)]
    PackLength,
    /// The length of a string is not known.
    #[error("{}", say::packs_cut(.number))]
    CutLength { number: usize },
    /// A pack is shorter than a string.
    #[error("{}", say::packs_short(.cut_mm, .number))]
    Short { number: usize, cut_mm: u32 },
}

/// What a line of the order is.
#[derive(PartialEq)]
enum Source {
    /// The item at this index.
    Stock(usize),
    /// Something that the stock does not have, and why.
    Outside(Box<StockItem>, NoItem),
}

/// One piece to cut.
#[derive(Clone, Copy)]
struct Piece {
    number: usize,
    cut_mm: Option<u32>,
    is_exact: bool,
}

/// The order list of a design, from the stock that it holds.
pub fn order_list(design: &Design, analysis: &Analysis) -> OrderList {
    let shelf = Shelf::new(&design.materials, &design.stock);
    let mut groups: Vec<(Source, Vec<Piece>)> = Vec::new();
    let mut unknown = Vec::new();
    for (spec, figures) in design.strings.iter().zip(&analysis.strings) {
        let number = figures.number;
        let cut_mm = figures.cut_length.ok().and_then(whole_mm);
        let (source, is_exact) = match shelf.find(spec) {
            Err(NoItem::NoMakeUp) => {
                unknown.push(number);
                continue;
            }
            Err(why) => {
                let item = StockItem {
                    make_up: super::make_up_text::write(&spec.make_up).into(),
                    code: spec.order_code.clone(),
                    ..StockItem::default()
                };
                (Source::Outside(Box::new(item), why), true)
            }
            Ok(Found { index, is_exact }) => (Source::Stock(index), is_exact),
        };
        let piece = Piece { number, cut_mm, is_exact };
        match groups.iter_mut().find(|group| group.0 == source) {
            Some(group) => group.1.push(piece),
            None => groups.push((source, vec![piece])),
        }
    }
    // Suppliers in the order in which they come, whatever comes between.
    let supplier = |source: &Source| match source {
        Source::Stock(index) => Some(design.stock[*index].supplier.trim()),
        Source::Outside(..) => None,
    };
    let firsts: Vec<usize> = groups
        .iter()
        .map(|(source, _)| {
            let own = supplier(source);
            let same = |group: &(Source, Vec<Piece>)| supplier(&group.0) == own;
            if own.is_none() { usize::MAX } else { groups.iter().position(same).unwrap_or(0) }
        })
        .collect();
    let mut ordered: Vec<(usize, (Source, Vec<Piece>))> = firsts.into_iter().zip(groups).collect();
    sort(&mut ordered, |one, other| one.0 > other.0);
    let line = |(_, (source, pieces)): (usize, (Source, Vec<Piece>))| {
        let (item, outside) = match source {
            Source::Stock(index) => (design.stock[index].clone(), None),
            Source::Outside(item, why) => (*item, Some(why)),
        };
        let note = |number: usize| analysis.strings.get(number - 1).and_then(|string| string.note);
        let out = pieces.iter().map(|piece| piece.number);
        let out_of_range = out.filter(|number| !is_sold_for(&item, note(*number))).collect();
        line(item, outside, pieces, &design.order, out_of_range)
    };
    OrderList { lines: ordered.into_iter().map(line).collect(), unknown }
}

fn line(
    item: StockItem,
    outside: Option<NoItem>,
    mut pieces: Vec<Piece>,
    order: &OrderSpec,
    out_of_range: Vec<usize>,
) -> OrderLine {
    let strings: Vec<usize> = pieces.iter().map(|piece| piece.number).collect();
    let nearest = pieces.iter().filter(|piece| !piece.is_exact).map(|piece| piece.number).collect();
    let cuts = |pieces: &[Piece]| pieces.iter().map(|piece| piece.cut_mm).collect();
    let cuts_mm = cuts(&pieces);
    let spares = spares(&pieces, order);
    pieces.extend(&spares);
    let known = pieces.iter().filter_map(|piece| piece.cut_mm);
    let packs = if outside.is_some() { Err(NoPacks::Outside) } else { packs(&item, &pieces) };
    let price = match (&packs, item.price) {
        (Ok(packs), Some(price)) => Some(price * as_f64(packs.count)),
        _ => None,
    };
    OrderLine {
        item,
        outside,
        strings,
        cuts_mm,
        spares_mm: cuts(&spares),
        length_mm: known.map(u64::from).sum(),
        without_length: pieces.iter().filter(|piece| piece.cut_mm.is_none()).count(),
        packs,
        price,
        out_of_range,
        nearest,
    }
}

/// The pieces ordered beyond those of one item.
fn spares(pieces: &[Piece], order: &OrderSpec) -> Vec<Piece> {
    let number_of = |number: u32, none: usize| match usize::try_from(number) {
        Ok(0) | Err(_) => none,
        Ok(number) => number,
    };
    let range = number_of(order.from_string, 1)..=number_of(order.to_string, usize::MAX);
    let within: Vec<Piece> =
        pieces.iter().filter(|piece| range.contains(&piece.number)).copied().collect();
    let count = match order.spares {
        SparesSpec::None => 0,
        SparesSpec::OneOfEachString => return within,
        SparesSpec::OneOfEachItem => usize::from(!within.is_empty()),
        SparesSpec::Percent(percent) => share_of(within.len(), percent),
    };
    // As long as the longest, so that a spare fits every string; of unknown length if one is.
    let longest = within.iter().copied().max_by_key(|piece| piece.cut_mm.unwrap_or(u32::MAX));
    longest.into_iter().flat_map(|piece| vec![piece; count]).collect()
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "0 to ten times the count of strings: persist::check holds the per cent to 1000"
)]
fn share_of(count: usize, percent: f64) -> usize {
    // Room for the last digit: 10 % of 10 is 1 and not 2.
    (as_f64(count) * percent.clamp(0.0, 1_000.0) / 100.0 - 1e-9).ceil().max(0.0) as usize
}

fn packs(item: &StockItem, pieces: &[Piece]) -> Result<Packs, NoPacks> {
    let pack_mm = item.pack_mm.map(|mm| mm.floor().clamp(0.0, f64::from(u32::MAX)));
    let short =
        |piece: &&Piece| piece.cut_mm.zip(pack_mm).is_some_and(|(cut, pack)| f64::from(cut) > pack);
    if let Some(Piece { number, cut_mm: Some(cut_mm), .. }) = pieces.iter().find(short) {
        return Err(NoPacks::Short { number: *number, cut_mm: *cut_mm });
    }
    if item.single {
        let count = pieces.len().div_ceil(usize::try_from(bundle_of(item)).unwrap_or(1));
        return Ok(Packs { count, at_least: count });
    }
    let pack_mm = pack_mm.ok_or(NoPacks::PackLength)?;
    let cut = |piece: &Piece| piece.cut_mm.ok_or(NoPacks::CutLength { number: piece.number });
    let lengths: Vec<u32> = pieces.iter().map(cut).collect::<Result<_, _>>()?;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a whole number that was clamped to the range"
    )]
    let pack_mm = pack_mm as u32;
    // None is longer than a pack, as was looked at above.
    coils(&lengths, pack_mm).ok_or(NoPacks::PackLength)
}

/// What lines cost together, in each currency. Those without a price are left out.
pub fn sums<'a>(lines: &[&'a OrderLine]) -> Vec<(&'a str, f64)> {
    let mut sums: Vec<(&str, f64)> = Vec::new();
    for line in lines {
        let currency = line.item.currency.trim();
        let Some(price) = line.price else { continue };
        match sums.iter_mut().find(|sum| is_same_currency(sum.0, currency)) {
            Some(sum) => sum.1 += price,
            None => sums.push((currency, price)),
        }
    }
    sums
}

/// Whole millimetres, rounded up.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "lengths of strings are far within the range, and what is not is left out"
)]
fn whole_mm(length: Length) -> Option<u32> {
    // A length that is whole but for its last digit is not rounded up.
    let mm = (length.to_mm() - 1e-6).ceil();
    (0.0..=f64::from(u32::MAX)).contains(&mm).then_some(mm as u32)
}

fn as_f64(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::from(u32::MAX), f64::from)
}

#[cfg(test)]
mod tests;
