//! What a string does to the soundboard.

use super::Text::{Filled, Math, Said};
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use super::{Text, Written};
use crate::words::{Words, numbers_board as say};

const ANGLE: Text = Filled(|v| say::angle(&v.angle));
const FLAT: Text = Said(say::FLAT);
const WHOLE: Text = Said(say::WHOLE);
const SHARE: Text = Said(say::SHARE);

pub(super) const LIFT: Written = Written {
    lead: Said(say::LIFT_LEAD),
    formula: &[(Words::NONE, Math("Q = T sin θ"))],
    symbols: &[is::LIFT, is::PULL, is::BOARD_ANGLE],
    assumptions: &[ANGLE, FLAT, WHOLE],
    range: &[SHARE, Said(say::LIFT_DEGREES_DEGREE_MORE_OR)],
    sources: &[from::PARTS_OF_A_FORCE, from::PRACTICE],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};

pub(super) const ALONG_BOARD: Written = Written {
    lead: Said(say::ALONG_BOARD_LEAD),
    formula: &[(Words::NONE, Math("T cos θ"))],
    symbols: &[is::PULL, is::BOARD_ANGLE],
    assumptions: &[ANGLE, FLAT, WHOLE],
    range: &[SHARE, Said(say::ALONG_BOARD_DEGREES_DEGREE_MORE_OR)],
    sources: &[from::PARTS_OF_A_FORCE, from::PRACTICE],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};
