//! How a harp gives while it is strung, and what the years do to it.

use super::Text::{Math, Said};
use super::Written;
use super::example::Worked;
use super::sources as from;
use super::symbols::Symbol;
use crate::words::{numbers_giving as say, numbers_shared as shared, numbers_tuning};

macro_rules! symbols {
    ($($name:ident = $sign:literal, $meaning:expr, $unit:literal;)+) => {
        $(const $name: Symbol = Symbol::new($sign, $meaning, $unit, |_| None);)+
    };
}

symbols! {
    NEARER = "u", say::LETTER_NEARER, "m";
    GIVES = "C", say::LETTER_GIVES, "m/N";
    TENSION = "T", say::LETTER_TENSION, "N";
    THEN = "u₁", say::LETTER_THEN, "m";
    STIFF = "K", say::LETTER_STIFF, "N/m";
    LOST = "ΔT", say::LETTER_LOST, "N";
    CENTS = "c", say::LETTER_CENTS, "cents";
    AGED = "w", say::LETTER_AGED, "m";
    AT_ONCE = "v", say::LETTER_AT_ONCE, "m";
    CREEP = "k", say::LETTER_CREEP, "";
    YEARS_PAST = "t", say::LETTER_YEARS_PAST, "years";
    POWER = "m", say::LETTER_POWER, "";
    LENGTH = "L", shared::VIBRATING_LENGTH, "m";
    CONTACT = "x", say::LETTER_CONTACT, "m";
    SHARP = "s", say::LETTER_SHARP, "cents";
    SWELLS = "a", say::LETTER_SWELLS, "1/%";
    ASIDE = "f", say::LETTER_ASIDE, "m";
    MOISTURE = "n", say::LETTER_MOISTURE, "%";
    MOVED = "d", say::LETTER_MOVED, "m";
}

pub(super) const GIVING: Written = Written {
    lead: Said(say::GIVING_LEAD),
    formula: &[
        (say::FORMULA_NEAR_ENDS_STRING_HAVE, Math("u = Σ C T")),
        (say::FORMULA_HAS_LOST_SINCE_WAS, Math("ΔT = K (u − u₁)")),
        (numbers_tuning::FORMULA_CENTS, Math("c = −600 log₂(1 − ΔT/T)")),
    ],
    symbols: &[NEARER, GIVES, TENSION, THEN, STIFF, LOST, CENTS],
    assumptions: &[
        Said(say::GIVING_C_FRAME_BOARD_TOGETHER),
        Said(say::GIVING_ALL_STRINGS_UP_ANSWER),
        Said(say::GIVING_STRINGS_STIFF_OVER_WEEKS),
        Said(say::GIVING_STRING_OFF_TENSION_TAKEN),
    ],
    range: &[Said(say::GIVING_ELASTIC_WOOD_GLUE_KNOTS), Said(say::GIVING_BOARD_RISES_MORE_THAN)],
    sources: &[from::HOOKE, from::SPACE_FRAMES, from::PLATES, from::JOINTS],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const YEARS: Written = Written {
    lead: Said(say::YEARS_LEAD),
    formula: &[
        (say::FORMULA_MOVEMENT_HAS_GROWN_AFTER, Math("w = v k (t/50)^m")),
        (say::FORMULA_STRING_NOT_RETUNED_FALLS, Math("c = (600/ln 2) w (K/T − 2/L)")),
        (
            say::FORMULA_LEVER_OR_DISC_STAYS,
            Math("s = 1200 log₂((L − w)/(L − w − x)) − 1200 log₂(L/(L − x))"),
        ),
        (say::FORMULA_THROUGH_SEASONS_TUNING_PIN, Math("d = a f n")),
    ],
    symbols: &[
        AGED, AT_ONCE, CREEP, YEARS_PAST, POWER, CENTS, STIFF, TENSION, LENGTH, SHARP, CONTACT,
        MOVED, SWELLS, ASIDE, MOISTURE,
    ],
    assumptions: &[
        Said(say::YEARS_MOVEMENTS_ONCE_THOSE_LOADS),
        Said(say::YEARS_POWER_LIES_BETWEEN),
        Said(say::YEARS_STRINGS_KEPT_PITCH_MIDDLE),
        Said(say::YEARS_BOARD_TAKEN_QUARTER_SAWN),
    ],
    range: &[
        Said(say::YEARS_MOISTURE_STAYS_WITHIN_RANGE),
        Said(say::YEARS_JOINTS_SETTLE_GLUE_CREEPS),
    ],
    sources: &[from::CREEP, from::CREEP_POWER, from::SWELLING, from::HOOKE, from::PRACTICE],
    missing: &[],
    worked: Worked::Nylon,
};
