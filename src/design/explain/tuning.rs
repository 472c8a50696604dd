//! Pitch, take-up, levers and discs.

use super::Words;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use crate::design::figures::row;
use crate::engine::analysis::Unknown;
use crate::engine::figure::Figure;

const FREE: &str = "The string slides freely over bridge pin, lever and disc. Friction there is left out: it keeps part of \
                    the change on one side until the string settles.";
const FIXINGS: &str = "All string between its fixings shares the stretch: the vibrating length and the {after} mm, or what \
                       you set, up to the tuning pin. The little inside the soundbox is left out.";
const CORE_ALONE: &str = "The core carries the whole tension. Windings carry none.";
const MASS_KEPT: &str = "The mass per metre is taken as unchanged. As nylon and gut grow thinner when they are stretched, the \
                         change given is 1 to 4 % too little.";
const MINUTES: &str = "The modulus is that over minutes. Metals have one modulus for every pace; for nylon and \
                       fluorocarbon it is taken as that in vibration, which gives an upper estimate.";
const PUSHED: &str = "The contact pushes the string {push} mm aside unless you set another push. That alone tightens it, so \
                      that lever and disc stand nearer to the bridge pin than by the shortening alone.";
const SEMITONE: &str = "A semitone is 100 cents, whatever the temperament: one lever must serve the string in any key.";
const PLACE_RANGE: &str =
    "Pushes of {pushes}. Where the push alone does more than was asked, there is no place.";
const PLACE_TRUST: &str = "The push is hard to measure and counts for much on short strings. Try one string before you drill \
                           them all.";
const STOPPED: &[(&str, &str)] = &[
    ("the place is where", "1200 log₂(f′/f) = 100"),
    ("pitch of what still sounds", "f′ = √((T′ + π² E I/L′²)/μ)/(2 L′)"),
    ("its length", "L′ = √((L − x)² + δ²)"),
    ("its tension", "T′ = T + Eₘ A ΔL/(L + a)"),
    ("the stretch", "ΔL = √(x² + δ²) + L′ − L"),
];

pub(super) const FREQUENCY: Words = Words {
    title: row(Figure::Frequency).title,
    lead: "How often the string swings in a second, from the note, the pitch of A4 and the temperament. A \
           frequency that was typed in place of a note is taken as it stands.",
    formula: &[("", "f = fₐ · 2^(C/1200)")],
    symbols: &[is::PITCH, is::REFERENCE, is::CENTS],
    assumptions: &[
        "A4 is {a4} Hz unless you set another pitch ({a4s}).",
        "The notes are those of the open strings, as they stand in the chart.",
    ],
    range: &["Pitches of {pitches}."],
    sources: &[from::STANDARD_PITCH, from::TEMPERAMENTS, from::ORGAN],
    missing: &[&[Unknown::Pitch]],
    worked: Worked::Nylon,
};

pub(super) const STRETCH: Words = Words {
    title: row(Figure::Stretch).title,
    lead: "How much string goes onto the pin between slack and settled at pitch. New strings of nylon and gut \
           need it again and again in the first weeks.",
    formula: &[
        ("", "ΔL = ε (L + a)"),
        ("strain, with a modulus that rises with the stress", "ε = ln(1 + k σ/Eₛ)/k"),
        ("strain, with k = 0", "ε = σ/Eₛ"),
    ],
    symbols: &[
        is::STRETCH,
        is::STRAIN,
        is::LENGTH,
        is::AFTER,
        is::SLOW_RISE,
        is::STRESS,
        is::MODULUS_SLOW,
    ],
    assumptions: &[
        "The modulus is the slow one, over weeks, creep included.",
        FIXINGS,
        CORE_ALONE,
        "Knots that draw tight come on top.",
    ],
    range: &[
        "First order: what is wound up early is stretched less. For a strain of a twentieth the figure is a fortieth \
         too much.",
        "The slow modulus of nylon and fluorocarbon is known only from memory, so take the figure as a guide.",
    ],
    sources: &[from::HOOKE, from::PACES],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::SlowModulus]],
    worked: Worked::Nylon,
};

pub(super) const PIN_TURNS: Words = Words {
    title: row(Figure::PinTurns).title,
    lead: "How many turns of the tuning pin take up the stretch, from slack until the string has settled.",
    formula: &[("", "ΔL/(π (P + g))")],
    symbols: &[is::STRETCH, is::PIN, is::GAUGE],
    assumptions: &[
        "The string lies on the pin in one layer, turn beside turn, without slipping.",
        "The pin is {pin} mm thick unless you set another.",
    ],
    range: &["As uncertain as the take-up."],
    sources: &[from::GEOMETRY, from::PACES],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::SlowModulus, Unknown::Gauge]],
    worked: Worked::Nylon,
};

pub(super) const CENTS_PER_PIN_DEGREE: Words = Words {
    title: row(Figure::CentsPerPinDegree).title,
    lead: "How far a degree of the tuning pin moves the pitch. The higher, the finer the hand that is needed.",
    formula: &[("", "(600/ln 2) (Eₘ/σ) π (P + g)/(L + a)/360")],
    symbols: &[is::MODULUS_MINUTES, is::STRESS, is::PIN, is::GAUGE, is::LENGTH, is::AFTER],
    assumptions: &[MINUTES, FIXINGS, FREE, CORE_ALONE, MASS_KEPT],
    range: &["For small turns. After the turn, nylon and gut give way again for minutes to days."],
    sources: &[from::HOOKE, from::PACES],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::IntermediateModulus, Unknown::Gauge]],
    worked: Worked::Nylon,
};

pub(super) const CENTS_PER_KELVIN: Words = Words {
    title: row(Figure::CentsPerKelvin).title,
    lead: "How far a degree of warmth moves the pitch of a metal string; below nothing, it falls.",
    formula: &[("", "−(600/ln 2) (Eₘ/σ) (α − α₀)")],
    symbols: &[is::MODULUS_MINUTES, is::STRESS, is::EXPANSION, is::FRAME],
    assumptions: &[
        "Only for metals. Nylon and fluorocarbon soften as they warm, which offsets or reverses the drift; gut and \
         silk are moved more by the damp of the air. No published numbers were found, so they have no figure.",
        "The frame expands by {frame} millionths for each kelvin unless you set another number. Strings follow the \
         air in seconds, a soundboard in minutes.",
        CORE_ALONE,
    ],
    range: &[
        "For changes of some tens of kelvins. What damp does to a wooden frame is left out, and is often more.",
    ],
    sources: &[from::WARMTH, from::PACES],
    missing: &[
        from::NO_PULL,
        &[
            Unknown::Core,
            Unknown::PolymerDrift,
            Unknown::NaturalDrift,
            Unknown::Expansion,
            Unknown::Modulus,
        ],
    ],
    worked: Worked::Steel,
};

pub(super) const LEVER: Words = Words {
    title: row(Figure::Lever).title,
    lead: "Where the lever must touch the string to raise it by a semitone, from the bridge pin.",
    formula: STOPPED,
    symbols: &[
        is::PLACE,
        is::RAISED,
        is::PITCH,
        is::RAISED_PULL,
        is::MODULUS,
        is::INERTIA,
        is::SOUNDS,
        is::MASS,
        is::LENGTH,
        is::PUSH,
        is::PULL,
        is::MODULUS_MINUTES,
        is::AREA,
        is::CONTACT_STRETCH,
        is::AFTER,
    ],
    assumptions: &[SEMITONE, PUSHED, FIXINGS, FREE, MINUTES],
    range: &[PLACE_RANGE, PLACE_TRUST],
    sources: &[from::HOOKE, from::PACES, from::PRACTICE],
    missing: &[
        from::NO_PULL,
        &[Unknown::NoLever, Unknown::Core, Unknown::IntermediateModulus, Unknown::TooMuchPush],
    ],
    worked: Worked::Nylon,
};

pub(super) const DISC_NATURAL: Words = Words {
    title: row(Figure::DiscNatural).title,
    lead: "Where the first disc must touch the string to raise it from flat to natural, from the bridge pin. Of a \
           single disc, this is the one.",
    formula: STOPPED,
    symbols: &[
        is::PLACE,
        is::RAISED,
        is::PITCH,
        is::RAISED_PULL,
        is::MODULUS,
        is::INERTIA,
        is::SOUNDS,
        is::MASS,
        is::LENGTH,
        is::PUSH,
        is::PULL,
        is::MODULUS_MINUTES,
        is::AREA,
        is::CONTACT_STRETCH,
        is::AFTER,
    ],
    assumptions: &[
        SEMITONE,
        PUSHED,
        "The pins of a disc touch the string at one point.",
        FIXINGS,
        FREE,
        MINUTES,
    ],
    range: &[PLACE_RANGE, PLACE_TRUST],
    sources: &[from::HOOKE, from::PACES, from::PRACTICE],
    missing: &[
        from::NO_PULL,
        &[Unknown::NoDisc, Unknown::Core, Unknown::IntermediateModulus, Unknown::TooMuchPush],
    ],
    worked: Worked::Disc,
};

pub(super) const DISC_SHARP: Words = Words {
    title: row(Figure::DiscSharp).title,
    lead: "Where the second disc must touch the string to raise it from natural to sharp, from the bridge pin, the \
           first disc still pressing.",
    formula: &[
        ("the place is where", "1200 log₂(f′/f) = 200"),
        STOPPED[1],
        STOPPED[2],
        STOPPED[3],
        ("the stretch", "ΔL = √(x₁² + δ²) + (x − x₁) + L′ − L"),
    ],
    symbols: &[
        is::PLACE,
        is::NATURAL,
        is::RAISED,
        is::PITCH,
        is::RAISED_PULL,
        is::MODULUS,
        is::INERTIA,
        is::SOUNDS,
        is::MASS,
        is::LENGTH,
        is::PUSH,
        is::PULL,
        is::MODULUS_MINUTES,
        is::AREA,
        is::CONTACT_STRETCH,
        is::AFTER,
    ],
    assumptions: &[
        "Two semitones are 200 cents, whatever the temperament.",
        "Both discs push equally far. The string runs from the bridge pin to the first disc, along to the second, \
         and on to the soundboard.",
        PUSHED,
        FIXINGS,
        FREE,
        MINUTES,
    ],
    range: &[PLACE_RANGE, PLACE_TRUST],
    sources: &[from::HOOKE, from::PACES, from::PRACTICE],
    missing: &[
        from::NO_PULL,
        &[Unknown::NoDisc, Unknown::Core, Unknown::IntermediateModulus, Unknown::TooMuchPush],
    ],
    worked: Worked::Discs,
};

pub(super) const NOMINAL_ERROR: Words = Words {
    title: row(Figure::NominalError).title,
    lead: "How sharp the first semitone would be if its lever or disc stood where it belongs on a string that is only \
           shortened. It is what the stretch of pressing adds: the more, the more each string wants a place of its own.",
    formula: &[
        ("in cents", "1200 log₂(f′/f) − 100"),
        ("the nominal place", "x₀ = L (1 − 2^(−1/12))"),
    ],
    symbols: &[is::RAISED_AT_NOMINAL, is::PITCH, is::NOMINAL, is::LENGTH],
    assumptions: &[
        "The pitch with the contact pressing is worked out as for the lever, with the contact at the nominal place.",
        SEMITONE,
        PUSHED,
        FIXINGS,
        FREE,
        MINUTES,
    ],
    range: &[
        PLACE_RANGE,
        "Of a string with two discs, it is the error of the first.",
        "Proportional to the square of the push on a long string, so that it is no more exact than the push.",
    ],
    sources: &[from::HOOKE, from::PACES, from::PRACTICE],
    missing: &[
        from::NO_PULL,
        &[Unknown::NoLever, Unknown::Core, Unknown::IntermediateModulus, Unknown::TooMuchPush],
    ],
    worked: Worked::Nylon,
};
