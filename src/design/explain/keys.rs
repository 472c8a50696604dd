//! Keys: the topic of what a harp plays from its open tuning.

use super::Text::{Math, Said};
use super::Written;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use crate::words::numbers_keys as say;

pub(super) const KEYS: Written = Written {
    lead: Said(say::KEYS_LEAD),
    formula: &[
        (say::FORMULA_LETTER_RAISED, Math("U = V − W")),
        (say::FORMULA_EVERY_STRING_CAN_FOLLOW, Math("0 ≤ U ≤ M")),
    ],
    symbols: &[is::STEPS_UP, is::SIGN_OF_KEY, is::SIGN_OPEN, is::MOST_RAISED],
    assumptions: &[
        Said(say::KEYS_LEVER_OR_SINGLE_DISC),
        Said(say::KEYS_EACH_STRING_SOUNDS_OWN),
        Said(say::KEYS_LEVERS_SET_DISCS_LETTER),
        Said(say::KEYS_MINOR_KEY_NATURAL_NOTES),
    ],
    range: &[Said(say::KEYS_STRING_WITHOUT_LEVER_OR), Said(say::KEYS_SAYS_NOTHING_TENSION_MUCH)],
    sources: &[from::SIGNS, from::PEDALS],
    missing: &[],
    worked: Worked::Nylon,
};
