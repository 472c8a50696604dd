//! What is wanted, by its parts; and taking what was proposed.

use crate::design::document::{Design, MakeUpSpec, MaterialSpec, StockItem};
use crate::design::library::find;
use crate::design::material_edit::uses;
use crate::design::persist::MOST_STOCK;
use crate::design::stock::used;

/// A part of what is wanted when strings are chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TargetsPart {
    /// The whole curve, or which curve: each change is a step of its own.
    Curve,
    /// A point of the curve.
    Point(usize),
    /// What matters how much.
    Weights,
    /// Load share, total pull, changes and counts.
    Limits,
    /// A zone of gauges.
    Zone(usize),
    /// A kind of string.
    Kind(usize),
}

/// What a string gets that is taken from a proposal.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Taken {
    /// Its index.
    pub row: usize,
    /// Its make-up and order code, where they change.
    pub make_up: Option<(MakeUpSpec, String)>,
    /// Its length as typed, where it changes.
    pub length: Option<String>,
}

/// Gives strings what was proposed for them, and the design the materials and the stock items that they are of.
pub(super) fn take(
    design: &mut Design,
    taken: &[Taken],
    stock: &[StockItem],
    materials: &[MaterialSpec],
) {
    for taken in taken {
        let Some(string) = design.strings.get_mut(taken.row) else { continue };
        if let Some((make_up, code)) = &taken.make_up {
            string.make_up = make_up.clone();
            string.order_code.clone_from(code);
        }
        if let Some(length) = &taken.length {
            string.length.clone_from(length);
        }
    }
    for material in materials {
        if find(&design.materials, &material.key).is_none() {
            design.materials.push(material.clone());
            if uses(design, &material.key) == 0 {
                design.materials.pop();
            }
        }
    }
    if !stock.is_empty() {
        let mut items = design.stock.clone();
        items.extend(stock.iter().filter(|item| !design.stock.contains(item)).cloned());
        items.truncate(MOST_STOCK);
        design.stock = used(design, &items);
    }
}
