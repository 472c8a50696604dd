//! A list to start from: gauges that are usual in the trade, of no maker and without prices.

use super::{StockList, give_keys};
use crate::design::document::StockItem;
use crate::design::usual_gauges::{HEAVY_WIRES, LIGHT_WIRES, NYLON_ON_NYLON, PLAIN};
use crate::words::stock as say;

/// Said of each of its items, in every language: lists are known by it.
pub const USUAL_REMARK: &str = "usual gauge; common practice, from memory";

/// Usual gauges of plain and wound strings, without makers, codes and prices. Common practice, no source:
/// from memory.
pub fn starting_list() -> StockList {
    let item = |make_up: String, single| StockItem {
        make_up: make_up.into(),
        single,
        remark: USUAL_REMARK.to_owned(),
        ..StockItem::default()
    };
    let plain = PLAIN.iter().flat_map(|(key, gauges)| gauges.iter().map(move |mm| (key, mm)));
    let plain = plain.map(|(key, mm)| item(format!("{key} {}", size(*mm)), false));
    let wound = [NYLON_ON_NYLON, LIGHT_WIRES, HEAVY_WIRES];
    let wound = wound.iter().flat_map(|one| {
        let silk = match one.silk_mm > 0.0 {
            true => format!(" + silk {}", size(one.silk_mm)),
            false => String::new(),
        };
        let text = move |(core, wrap)| {
            format!("{} {}{silk} + {} {}", one.core, size(core), one.wrap, size(wrap))
        };
        one.pairs().map(text)
    });
    let mut list = StockList {
        name: say::USUAL.into(),
        remark: say::USUAL_REMARK.into(),
        items: plain.chain(wound.map(|make_up| item(make_up, true))).collect(),
        ..StockList::default()
    };
    give_keys(&mut list.items);
    list
}

/// A hundredth of a millimetre, and a thousandth where there is one.
fn size(mm: f64) -> String {
    let three = format!("{mm:.3}");
    three.strip_suffix('0').map_or(three.clone(), str::to_owned)
}
