//! How a harp gives while it is strung, and what the years do to it.

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
    NEARER = "u", "how much nearer the ends of a string are than with no string on", "m";
    GIVES = "C", "how much nearer they come for each newton on another string", "m/N";
    TENSION = "T", "tension of a string", "N";
    THEN = "u₁", "the same when the string was brought up", "m";
    STIFF = "K", "tension of a string for each metre that its ends come apart: modulus times area over length", "N/m";
    LOST = "ΔT", "tension that a string has lost", "N";
    CENTS = "c", "how far it has fallen", "cents";
    AGED = "w", "what a movement has grown by", "m";
    AT_ONCE = "v", "the movement at once", "m";
    CREEP = "k", "creep of fifty years over the movement at once, by the standard", "";
    YEARS_PAST = "t", "time", "years";
    POWER = "m", "power with which creep grows", "";
    LENGTH = "L", "vibrating length", "m";
    CONTACT = "x", "distance of a lever or disc from the bridge pin", "m";
    SHARP = "s", "how sharp it becomes, left in place", "cents";
    SWELLS = "a", "how much the wood swells for each per cent of moisture", "1/%";
    ASIDE = "f", "distance of a tuning pin from the middle of the neck", "m";
    MOISTURE = "n", "moisture of the damp season less that of the dry one", "%";
    MOVED = "d", "how far the pin moves from the middle", "m";
}

pub(super) const GIVING: Words = Words {
    title: "Giving while it is strung",
    lead: "Each string that is brought up bends neck and board a little, so that those which are up already fall. How far, after \
           one round and after more, depends on the order. It is worked out for the frame of the loads: what its joints and its \
           soundbox give by their sizes counts here too.",
    formula: &[
        ("how near the ends of a string have come, by all strings that are up", "u = Σ C T"),
        ("what it has lost since it was brought up", "ΔT = K (u − u₁)"),
        ("in cents", "c = −600 log₂(1 − ΔT/T)"),
    ],
    symbols: &[NEARER, GIVES, TENSION, THEN, STIFF, LOST, CENTS],
    assumptions: &[
        "C is that of frame and board together. The frame is the one of the loads, solved for a newton on each string; where \
         joints have no sizes, the pillar only pushes at the far end of the estimate. The board is its plate, with edges that \
         cannot turn at least and edges that turn freely at most.",
        "All strings that are up answer each other at once: the sums are solved together. A string is brought up to its full \
         tension in its turn and then left, and in later rounds brought back to it.",
        "Strings are as stiff as over weeks at one end and as over minutes at the other.",
        "With one string off, its tension is taken from the whole, and the others rise by what that gives back.",
    ],
    range: &[
        "It is elastic: what wood, glue, knots and strings creep comes on top.",
        "A board that rises by more than its thickness gives less than is said here.",
    ],
    sources: &[from::HOOKE, from::SPACE_FRAMES, from::PLATES, from::JOINTS],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const YEARS: Words = Words {
    title: "What the years do",
    lead: "Wood under a lasting load goes on giving: what the harp gave at once grows, by less and less each year. And it swells \
           and shrinks with the seasons.",
    formula: &[
        ("what a movement has grown by after a time", "w = v k (t/50)^m"),
        (
            "a string that is not retuned falls, its length growing shorter by w",
            "c = (600/ln 2) w (K/T − 2/L)",
        ),
        (
            "a lever or disc that stays where it was raises the shorter string by more",
            "s = 1200 log₂((L − w)/(L − w − x)) − 1200 log₂(L/(L − x))",
        ),
        ("through the seasons a tuning pin moves", "d = a f n"),
    ],
    symbols: &[
        AGED, AT_ONCE, CREEP, YEARS_PAST, POWER, CENTS, STIFF, TENSION, LENGTH, SHARP, CONTACT,
        MOVED, SWELLS, ASIDE, MOISTURE,
    ],
    assumptions: &[
        "The movements at once are those of the loads and of giving, least and most, with joints and soundbox as their sizes \
         say. Neck, pillar and soundbox creep by the greater factor of neck and pillar, the board by its own.",
        "The power lies between 0.2 and 0.3.",
        "The strings are kept at pitch. The middle of the neck stays where it is in the seasons, and the pin goes with the wood \
         between.",
        "A board is taken as quarter-sawn, with its grain across: along it, it swells as wood does across its rings.",
    ],
    range: &[
        "For moisture that stays within the range that is told. Wood whose moisture comes and goes under load creeps more.",
        "Joints that settle, glue that creeps, and wood that is twisted or pressed across its grain add to it.",
    ],
    sources: &[from::CREEP, from::CREEP_POWER, from::SWELLING, from::HOOKE, from::PRACTICE],
    missing: &[],
    worked: Worked::Nylon,
};
