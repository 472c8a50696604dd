//! What is wanted, by its parts; and taking what was proposed.

use crate::design::document::{
    Design, MakeUpSpec, MaterialSpec, StockItem, StringSpec, TargetsSpec,
};
use crate::design::library::find;
use crate::design::material_edit::uses;
use crate::design::stock::used;

/// A part of what is wanted when strings are chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TargetsPart {
    /// The whole curve, or which curve: each change is a step of its own.
    Curve,
    /// A point of the curve.
    Point(usize),
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
    /// What it is made of, where that changes.
    pub made: Option<Made>,
    /// Its length as typed, where it changes.
    pub length: Option<String>,
}

/// What a string is made of, and which stock item that is.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Made {
    pub make_up: MakeUpSpec,
    /// The order code of the item; empty for none.
    pub order_code: String,
    /// The key of the item; 0 for none.
    pub stock_key: u16,
}

impl Made {
    /// What is on a string.
    pub fn of(string: &StringSpec) -> Self {
        let StringSpec { make_up, order_code, stock_key, .. } = string.clone();
        Self { make_up, order_code, stock_key }
    }
}

/// What a set was chosen by.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ChosenBy {
    /// The curve, as pairs of a place and a value.
    pub curve: Vec<(f64, f64)>,
    /// The note from which strings are wound at the latest; empty for none.
    pub wound_from: String,
}

/// Keeps with the design what a set was chosen by, where it has nothing of its own: so the same search gives the same
/// set again.
pub(super) fn remember(targets: &mut TargetsSpec, by: &ChosenBy) {
    if targets.points().is_empty() {
        *targets = targets.with_points(by.curve.clone());
    }
    if targets.wound_from.trim().is_empty() {
        targets.wound_from.clone_from(&by.wound_from);
    }
}

/// Gives strings what was proposed for them, and the design the materials and the stock items that they are of. What
/// no string is any more goes out of the stock of the design.
pub(super) fn take(
    design: &mut Design,
    taken: &[Taken],
    stock: &[StockItem],
    materials: &[MaterialSpec],
) {
    for taken in taken {
        let Some(string) = design.strings.get_mut(taken.row) else { continue };
        if let Some(Made { make_up, order_code, stock_key }) = &taken.made {
            string.make_up = make_up.clone();
            string.order_code.clone_from(order_code);
            string.stock_key = *stock_key;
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
    if taken.iter().any(|taken| taken.made.is_some()) {
        let mut items = design.stock.clone();
        items.extend(stock.iter().filter(|item| !design.stock.contains(item)).cloned());
        design.stock = used(design, &items);
    }
}
