//! A list to start from: gauges that are usual in the trade, of no maker and without prices.

use super::{StockList, give_keys};
use crate::design::document::StockItem;

/// Said of the list and of each of its items.
pub const USUAL_REMARK: &str = "usual gauge; common practice, from memory";

/// Gauges of plain strings in millimetres, thinnest first. Common practice, no source: from memory.
const PLAIN: [(&str, &[f64]); 7] = [
    (
        "nylon",
        &[0.46, 0.51, 0.56, 0.64, 0.71, 0.76, 0.81, 0.91, 1.02, 1.14, 1.27, 1.40, 1.52, 1.65],
    ),
    (
        "gut",
        &[
            0.46, 0.50, 0.54, 0.58, 0.62, 0.66, 0.70, 0.74, 0.78, 0.82, 0.86, 0.90, 0.94, 0.98,
            1.02, 1.06, 1.10, 1.14, 1.18, 1.22, 1.26, 1.30, 1.36, 1.42, 1.48, 1.54, 1.60, 1.68,
            1.76, 1.84, 1.92, 2.00, 2.10, 2.20, 2.30, 2.40, 2.50,
        ],
    ),
    (
        "fluorocarbon",
        &[
            0.47, 0.52, 0.57, 0.62, 0.66, 0.70, 0.74, 0.78, 0.81, 0.85, 0.91, 0.97, 1.04, 1.12,
            1.20, 1.30, 1.40, 1.50, 1.60,
        ],
    ),
    (
        "steel",
        &[
            0.20, 0.225, 0.25, 0.275, 0.30, 0.325, 0.35, 0.375, 0.40, 0.425, 0.45, 0.475, 0.50,
            0.525, 0.55, 0.575, 0.60, 0.65, 0.70, 0.75, 0.80,
        ],
    ),
    ("bronze", &[0.30, 0.35, 0.40, 0.45, 0.50, 0.55, 0.60, 0.65, 0.70, 0.80, 0.90, 1.00]),
    (
        "yellow brass",
        &[0.30, 0.33, 0.36, 0.40, 0.43, 0.46, 0.50, 0.53, 0.56, 0.60, 0.64, 0.70, 0.80, 0.90, 1.00],
    ),
    ("red brass", &[0.40, 0.46, 0.50, 0.56, 0.60, 0.64, 0.70, 0.80, 0.90, 1.00, 1.10, 1.20]),
];

/// Core and wire of nylon wound on nylon, and of bronze wound over silk on steel. Common practice, no
/// source: from memory.
const NYLON_ON_NYLON: [(f64, f64); 9] = [
    (0.81, 0.20),
    (0.81, 0.25),
    (0.91, 0.25),
    (0.91, 0.30),
    (1.02, 0.30),
    (1.02, 0.35),
    (1.14, 0.40),
    (1.14, 0.45),
    (1.14, 0.51),
];
const BRONZE_ON_STEEL: [(f64, f64); 14] = [
    (0.40, 0.14),
    (0.40, 0.18),
    (0.45, 0.20),
    (0.45, 0.25),
    (0.50, 0.25),
    (0.50, 0.30),
    (0.55, 0.32),
    (0.60, 0.35),
    (0.60, 0.40),
    (0.65, 0.45),
    (0.70, 0.50),
    (0.75, 0.60),
    (0.80, 0.70),
    (0.80, 0.80),
];

/// Heavier ones for pedal harps, with more silk.
const PEDAL_BRONZE_ON_STEEL: [(f64, f64); 9] = [
    (0.65, 0.16),
    (0.70, 0.20),
    (0.70, 0.25),
    (0.75, 0.25),
    (0.75, 0.32),
    (0.75, 0.40),
    (0.80, 0.40),
    (0.85, 0.50),
    (0.85, 0.65),
];

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
    let nylon = NYLON_ON_NYLON.iter();
    let nylon = nylon.map(|(core, wire)| format!("nylon {} + nylon {}", size(*core), size(*wire)));
    let bronze = BRONZE_ON_STEEL
        .iter()
        .map(|(core, wire)| format!("steel {} + silk 0.10 + bronze {}", size(*core), size(*wire)));
    let pedal = PEDAL_BRONZE_ON_STEEL
        .iter()
        .map(|(core, wire)| format!("steel {} + silk 0.15 + bronze {}", size(*core), size(*wire)));
    let bronze = bronze.chain(pedal);
    let mut list = StockList {
        name: "Usual gauges".to_owned(),
        remark: "Gauges that are usual in the trade: common practice, no source, from memory. \
                 Ask your supplier what can be had, and fill in codes and prices."
            .to_owned(),
        items: plain.chain(nylon.chain(bronze).map(|make_up| item(make_up, true))).collect(),
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
