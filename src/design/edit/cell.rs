//! What a cell of the string chart holds, and what typing into it does.

use std::mem;

use super::{Column, cut};
use crate::design::document::{LONGEST_CELL, LONGEST_TEXT, MakeUpSpec, StringSpec};
use crate::design::make_up_text;

/// What a cell holds, as it would be typed.
pub fn cell_text(string: &StringSpec, column: Column) -> String {
    match column {
        Column::Note => string.note.clone(),
        Column::Length => string.length.clone(),
        Column::MakeUp if string.make_up.is_plain() => string.make_up.material.clone(),
        Column::MakeUp => make_up_text::write(&string.make_up),
        Column::Gauge => match &string.make_up.weighed {
            Some(weighed) => weighed.gauge.clone(),
            None if string.make_up.is_wound() => String::new(),
            None => string.make_up.diameter.clone(),
        },
        Column::OrderCode => string.order_code.clone(),
    }
}

/// Puts a text into a cell. The gauge of a wound string follows from its make-up, so that a text
/// for it is left out.
pub(super) fn set_cell(string: &mut StringSpec, column: Column, text: &str) {
    // The line of a make-up holds many cells.
    let most = if column == Column::MakeUp { LONGEST_TEXT } else { LONGEST_CELL };
    let text = cut(text.trim(), most);
    let before = string.make_up.clone();
    match column {
        Column::Note => string.note = text,
        Column::Length => string.length = text,
        Column::OrderCode => {
            // The code that was typed says which item it is.
            if string.order_code != text {
                string.stock_key = 0;
            }
            string.order_code = text;
        }
        Column::Gauge => {
            let wound = string.make_up.is_wound();
            match &mut string.make_up.weighed {
                Some(weighed) => weighed.gauge = text,
                None if wound => {}
                None => string.make_up.diameter = text,
            }
        }
        Column::MakeUp => {
            let typed = read_make_up(&text);
            let diameter = mem::take(&mut string.make_up.diameter);
            let was_plain = string.make_up.is_plain();
            string.make_up = typed;
            if was_plain && string.make_up.is_plain() && string.make_up.diameter.is_empty() {
                string.make_up.diameter = diameter;
            }
        }
    }
    // A code stands for one string of a supplier: another string has another code.
    if string.make_up != before {
        string.order_code.clear();
        string.stock_key = 0;
    }
}

/// A text that does not read as a make-up is kept as the name of a material, to be mended.
fn read_make_up(text: &str) -> MakeUpSpec {
    make_up_text::read(text).unwrap_or_else(|_| MakeUpSpec {
        material: cut(text, LONGEST_CELL),
        ..MakeUpSpec::default()
    })
}
