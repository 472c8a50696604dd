//! Keys: the topic of what a harp plays from its open tuning.

use super::Words;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;

pub(super) const KEYS: Words = Words {
    title: "Keys",
    lead: "Which keys a harp plays from its open tuning, what its levers or pedals raise for each, and which strings \
           stand in the way.",
    formula: &[
        ("a letter is raised by", "U = V − W"),
        ("and every string of it can follow, if", "0 ≤ U ≤ M"),
    ],
    symbols: &[is::STEPS_UP, is::SIGN_OF_KEY, is::SIGN_OPEN, is::MOST_RAISED],
    assumptions: &[
        "A lever or a single disc raises a string by one semitone, two discs by two.",
        "Each string sounds its own letter. F sharp major and G flat major are two keys, as their letters differ.",
        "Levers are set one by one. Discs of one letter turn together, as one pedal moves them.",
        "The minor key is the natural one, with the notes of the major key beside it. Other scales need more levers.",
    ],
    range: &[
        "A string without a lever or disc may be tuned by hand for a piece; the table says which ones these are.",
        "It says nothing of tension: how much a string bears when it is raised stands under findings.",
    ],
    sources: &[from::SIGNS, from::PEDALS],
    missing: &[],
    worked: Worked::Nylon,
};
