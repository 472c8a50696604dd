//! Choosing: the best set of strings from a stock, and better lengths.

use super::Text::{Math, Said};
use super::Written;
use super::example::Worked;
use super::sources as from;
use super::symbols::Symbol;
use crate::words::numbers_choosing as say;

macro_rules! symbols {
    ($($name:ident = $sign:literal, $meaning:expr, $unit:literal;)+) => {
        $(const $name: Symbol = Symbol::new($sign, $meaning, $unit, |_| None);)+
    };
}

symbols! {
    SUM = "Z", say::LETTER_SUM, "";
    TO_TARGET = "w", say::LETTER_TO_TARGET, "";
    FEEL = "k", say::LETTER_FEEL, "";
    WANTED = "k₀", say::LETTER_WANTED, "";
    TO_STEPS = "v", say::LETTER_TO_STEPS, "";
    NEXT = "k′", say::LETTER_NEXT, "";
    NEXT_WANTED = "k₁", say::LETTER_NEXT_WANTED, "";
    TO_CHANGES = "c", say::LETTER_TO_CHANGES, "";
    CHANGES = "C", say::LETTER_CHANGES, "";
    TO_ITEMS = "g", say::LETTER_TO_ITEMS, "";
    ITEMS = "G", say::LETTER_ITEMS, "";
    TO_PRICE = "m", say::LETTER_TO_PRICE, "";
    PRICE = "P", say::LETTER_PRICE, "";
    MOVED = "S", say::LETTER_MOVED, "";
    SHARE = "s", say::LETTER_SHARE, "";
    SMOOTH = "λ", say::LETTER_SMOOTH, "";
    THIRD = "D", say::LETTER_THIRD, "";
}

pub(super) const CHOOSING: Written = Written {
    lead: Said(say::CHOOSING_LEAD),
    formula: &[(
        say::FORMULA_ALL_SETS_KEEP_LIMITS,
        Math("Z = Σ w ln²(k/k₀) + Σ v ln²((k/k′)/(k₀/k₁)) + c C + g G + m P"),
    )],
    symbols: &[
        SUM,
        TO_TARGET,
        FEEL,
        WANTED,
        TO_STEPS,
        NEXT,
        NEXT_WANTED,
        TO_CHANGES,
        CHANGES,
        TO_ITEMS,
        ITEMS,
        TO_PRICE,
        PRICE,
    ],
    assumptions: &[
        Said(say::CHOOSING_EACH_DEVIATION_COUNTS_SQUARE),
        Said(say::CHOOSING_LIMITS_NEVER_BROKEN_LOAD),
        Said(say::CHOOSING_STRING_LOCKED_STAYS_COSTS),
        Said(say::CHOOSING_STRINGS_MAKE_UP_ITEM),
        Said(say::CHOOSING_WEIGHTS_OURS_YOURS_CHANGE),
    ],
    range: &[
        Said(say::CHOOSING_SETS_GOOD_EACH_OTHER),
        Said(say::CHOOSING_LIMIT_TOTAL_PULL_TOGETHER),
        Said(say::CHOOSING_WHERE_NO_SET_KEEPS),
    ],
    sources: &[from::STEPWISE, from::CONSTRAINED],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const LENGTHS: Written = Written {
    lead: Said(say::LENGTHS_LEAD),
    formula: &[(say::FORMULA_ALL_LENGTHS_WITHIN_THEIR, Math("S = Σ w ln²(k/k₀)/s² + λ Σ D²"))],
    symbols: &[MOVED, TO_TARGET, FEEL, WANTED, SHARE, SMOOTH, THIRD],
    assumptions: &[
        Said(say::LENGTHS_STRAIGHT_LINES_PARABOLAS_LOGARITHM),
        Said(say::LENGTHS_BOUNDS_HOLD_FAR_PIN),
        Said(say::LENGTHS_TENSION_STIFFNESS_THOSE_STIFF),
    ],
    range: &[
        Said(say::LENGTHS_STOPS_WHERE_NO_SMALL),
        Said(say::LENGTHS_BEYOND_LAST_STRING_SOMETHING),
    ],
    sources: &[from::GRADUATION, from::LEAST_SQUARES],
    missing: &[],
    worked: Worked::Nylon,
};
