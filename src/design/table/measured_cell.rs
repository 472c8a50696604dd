//! One cell of measurements: whether anything was measured, the number, and what a string is made of.

use super::headings::{is_foreign, material};
use crate::design::document::{LONGEST_CELL, MakeUpSpec};
use crate::design::heading::Size;
use crate::design::letters::small;
use crate::design::{make_up_text, typed};
use crate::engine::material::key_of;

/// What stands for what was not measured.
const MISSING: [&str; 17] = [
    "-",
    "–",
    "—",
    "?",
    "??",
    "x",
    "n/a",
    "na",
    "missing",
    "unknown",
    "none",
    "not measured",
    "fehlt",
    "unbekannt",
    "manque",
    "inconnu",
    "broken",
];
/// Whether a cell says that nothing was measured.
pub(super) fn is_missing(cell: &str) -> bool {
    let cell = cell.trim();
    cell.is_empty() || MISSING.contains(&&*small(cell))
}

/// A measured number without what says that it is none too sure.
pub(super) fn cleaned(cell: &str) -> String {
    if is_missing(cell) {
        return String::new();
    }
    let mut text = cell.trim();
    for before in
        ["~", "≈", "ca.", "ca ", "c.", "circa", "about", "approx.", "approx", "abt.", "env."]
    {
        let begins =
            text.get(..before.len()).is_some_and(|start| start.eq_ignore_ascii_case(before));
        if begins {
            text = text[before.len()..].trim_start();
        }
    }
    for behind in ["±", "+/-", "+-", "("] {
        text = text.split(behind).next().unwrap_or_default();
    }
    text.trim().chars().take(LONGEST_CELL).collect()
}

/// What a cell says that a string is made of; bare sizes are in a unit.
pub(super) fn made_of(cell: &str, unit: Size) -> MakeUpSpec {
    if is_missing(cell) {
        return MakeUpSpec::default();
    }
    let read = |text: &str| make_up_text::read(text).ok();
    let kept = || MakeUpSpec {
        material: cell.chars().take(LONGEST_CELL).collect(),
        ..MakeUpSpec::default()
    };
    let mut made = read(cell).unwrap_or_else(kept);
    // `0.90 gut`: the size before the material.
    if made.is_plain() && made.diameter.is_empty() {
        let words: Vec<&str> = cell.split_whitespace().collect();
        let turned = (1..words.len()).rev().find(|at| {
            typed::is_size(&words[..*at].join(" ")) && material(&words[*at..].join(" ")).is_some()
        });
        if let Some(at) = turned {
            made.material = words[at..].join(" ");
            made.diameter = words[..at].join(" ");
        }
    }
    let layers = made.layers.iter_mut().map(|layer| (&mut layer.material, Some(&mut layer.size)));
    let core = (&mut made.material, Some(&mut made.diameter));
    for (text, size) in layers.chain([core]) {
        *text = named(text);
        if let Some(size) = size
            && !size.is_empty()
        {
            *size = unit.behind(size);
        }
    }
    made
}

/// A material as the design has it: the key of one that is written in another language, else as typed.
pub(super) fn named(text: &str) -> String {
    match material(text) {
        Some(key) if key_of(text).is_none() || is_foreign(text) => key.to_owned(),
        _ => text.trim().chars().take(LONGEST_CELL).collect(),
    }
}
