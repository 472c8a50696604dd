//! What a string does to the soundboard.

use super::Words;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use crate::design::figures::row;
use crate::engine::figure::Figure;

const ANGLE: &str = "All strings meet the board at one angle: {angle} degrees unless you set another. It is \
                     measured between the string and the line along which the strings leave the board.";
const FLAT: &str = "The board is flat. As it rises under the strings, the angle grows by a little.";
const WHOLE: &str =
    "The string leaves the board at its full tension; what a bar or an eyelet takes is left out.";
const SHARE: &str = "As exact as the tension and the angle.";

pub(super) const LIFT: Words = Words {
    title: row(Figure::Lift).title,
    lead: "The part of the pull that is square to the soundboard and lifts it. The board must bear the sum, and \
           the lift for each length of it.",
    formula: &[("", "Q = T sin θ")],
    symbols: &[is::LIFT, is::PULL, is::BOARD_ANGLE],
    assumptions: &[ANGLE, FLAT, WHOLE],
    range: &[SHARE, "At 34 degrees, one degree more or less is about 2.6 % of the lift."],
    sources: &[from::PARTS_OF_A_FORCE, from::PRACTICE],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};

pub(super) const ALONG_BOARD: Words = Words {
    title: row(Figure::AlongBoard).title,
    lead: "The part of the pull that runs along the soundboard, towards its treble end. The string rib and the \
           glue under it must bear it.",
    formula: &[("", "T cos θ")],
    symbols: &[is::PULL, is::BOARD_ANGLE],
    assumptions: &[ANGLE, FLAT, WHOLE],
    range: &[SHARE, "At 34 degrees, one degree more or less is about 1.2 % of it."],
    sources: &[from::PARTS_OF_A_FORCE, from::PRACTICE],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};
