//! Choosing: the best set of strings from a stock, and better lengths.

use super::Words;
use super::example::Worked;
use super::sources as from;
use super::symbols::Symbol;

macro_rules! symbols {
    ($($name:ident = $sign:literal, $meaning:literal, $unit:literal;)+) => {
        $(const $name: Symbol = Symbol::new($sign, $meaning, $unit, |_| None);)+
    };
}

symbols! {
    SUM = "Z", "what is least for the best set: how far it is from what is wanted", "";
    TO_TARGET = "w", "weight of the target", "";
    FEEL = "k", "pluck stiffness, or the tension where that is wanted", "";
    WANTED = "k₀", "what is wanted of it", "";
    TO_STEPS = "v", "weight of even steps, more where the material changes", "";
    NEXT = "k′", "pluck stiffness or tension of the next string", "";
    NEXT_WANTED = "k₁", "what is wanted of the next string", "";
    TO_CHANGES = "c", "weight of a change of material", "";
    CHANGES = "C", "changes of material", "";
    TO_ITEMS = "g", "weight of an item", "";
    ITEMS = "G", "different items but one", "";
    TO_PRICE = "m", "weight of the price", "";
    PRICE = "P", "price over a usual one", "";
    MOVED = "S", "what is least for better lengths", "";
    SHARE = "s", "2 where the tension is wanted, 1 for the pluck stiffness", "";
    SMOOTH = "λ", "weight of a smooth curve, from the wave that is halved", "";
    THIRD = "D", "third difference of ln L along the strings", "";
}

pub(super) const CHOOSING: Words = Words {
    title: "Choosing strings",
    lead: "The best set is found for all strings at once, not string by string: of every set that a stock allows, the one \
           for which one sum is least. It is no estimate; the program says where it could not prove it.",
    formula: &[(
        "of all sets that keep the limits, the one with the least",
        "Z = Σ w ln²(k/k₀) + Σ v ln²((k/k′)/(k₀/k₁)) + c C + g G + m P",
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
        "Each deviation counts by the square of its logarithm: half as much and twice as much weigh the same, and a large \
         one more than two small ones.",
        "Limits are never broken: load share, gauges of a zone, where a material may stand, the order of materials, no \
         thinner string below a thicker one of its material, total pull, number of items.",
        "A string that is locked stays and costs nothing, but its neighbours reckon with it.",
        "Strings of one make-up are one item, however often a stock lists them: each string gets the cheapest that is sold \
         for its note.",
        "The weights are ours and yours to change; nothing says what a step of feel is worth against a new gauge.",
    ],
    range: &[
        "Of sets that are as good as each other, the one with the earlier item of the list at the highest string is taken, \
         and that there was another is told.",
        "A limit of the total pull together with one of the items may take longer than it is given; then the sum is told \
         with the least that any set could have.",
        "Where no set keeps the limits, the ones that contradict are named, and the set that breaks them least.",
    ],
    sources: &[from::STEPWISE, from::CONSTRAINED],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const LENGTHS: Words = Words {
    title: "Better lengths",
    lead: "For given strings, lengths that come near what is wanted and still stand on a smooth curve of pins.",
    formula: &[(
        "of all lengths within their bounds, those with the least",
        "S = Σ w ln²(k/k₀)/s² + λ Σ D²",
    )],
    symbols: &[MOVED, TO_TARGET, FEEL, WANTED, SHARE, SMOOTH, THIRD],
    assumptions: &[
        "Straight lines and parabolas in the logarithm of the length pass freely: only what bends more than a good curve \
         is drawn smooth.",
        "Bounds hold: how far a pin may move, the load shares, the shortest and the longest string, locked strings.",
        "Tension and stiffness are those of the stiff string, reckoned again at every step.",
    ],
    range: &[
        "It stops where no small change makes the sum less. That there is no better one far away is not proven, and was \
         not seen in any harp that was tried.",
        "Beyond the last string for which something is wanted the curve runs on by itself, and should not be trusted far.",
    ],
    sources: &[from::GRADUATION, from::LEAST_SQUARES],
    missing: &[],
    worked: Worked::Nylon,
};
