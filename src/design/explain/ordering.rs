//! What is measured, bought and cut.

use super::Words;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use crate::design::figures::row;
use crate::engine::analysis::Unknown;
use crate::engine::figure::Figure;

pub(super) const LENGTH: Words = Words {
    title: row(Figure::Length).title,
    lead: "The part of the string that sounds, from the soundboard or string bar to the bridge pin. It is typed, \
           or read off the drawn curve of the neck where a design has one.",
    formula: &[(
        "the length at which a tension is reached, as findings propose it",
        "L = √((T + √(T² + 16 f² μ π² E I))/(8 f² μ))",
    )],
    symbols: &[is::LENGTH, is::PULL, is::PITCH, is::MASS, is::MODULUS, is::INERTIA],
    assumptions: &[
        "Measured with the harp under tension: soundboard and neck give way and shorten the strings.",
        "An inch is exactly 25.4 mm.",
    ],
    range: &["Lengths of {lengths}."],
    sources: &[from::WAVES, from::FLETCHER],
    missing: &[&[Unknown::Length]],
    worked: Worked::Nylon,
};

pub(super) const GAUGE: Words = Words {
    title: row(Figure::Gauge).title,
    lead: "How thick the string is over all: typed for a plain string, from the make-up for a wound one.",
    formula: &[("", "g = d + 2 Σ t")],
    symbols: &[is::GAUGE, is::CORE, is::THICKNESS],
    assumptions: &[
        "Each layer adds its full thickness on both sides. Silk beds down under a winding, so give its thickness \
         as it is when wound over.",
        "For a weighed string the gauge that was measured is taken.",
    ],
    range: &[
        "Diameters of {diameters}.",
        "Nylon and gut grow thinner under tension. The gauge is that of the string as it is bought.",
    ],
    sources: &[from::GEOMETRY],
    missing: &[&[Unknown::MakeUp, Unknown::Gauge]],
    worked: Worked::Wound,
};

pub(super) const CORE: Words = Words {
    title: row(Figure::Core).title,
    lead: "How thick the part is that carries the pull: the core of a wound string, the whole of a plain one. It is \
           typed, never computed.",
    formula: &[("the core that a tension puts under a stress", "d = √(4 T/(π σ))")],
    symbols: &[is::CORE, is::PULL, is::STRESS],
    assumptions: &[
        "The core is round. A hexagonal core has more section than a round one of its width.",
        "Windings carry none of the tension.",
        "A gauge of more than {thin} times the core is a finding. Common practice, no source.",
    ],
    range: &["Diameters of {diameters}."],
    sources: &[from::GEOMETRY, from::PRACTICE],
    missing: &[&[Unknown::MakeUp, Unknown::Core]],
    worked: Worked::Wound,
};

pub(super) const LINEAR_DENSITY: Words = Words {
    title: row(Figure::LinearDensity).title,
    lead: "What a metre of the string weighs. With length and pitch it decides the tension.",
    formula: &[
        ("", "μ = ρ π d²/4 + Σ ρ₁ S √((π (D + t))² + p²)/p"),
        ("section of round wire", "S = π t²/4"),
        ("section of ribbon", "S = t w"),
        ("pitch of round wire", "p = t/c"),
        ("pitch of ribbon", "p = w/c"),
    ],
    symbols: &[
        is::MASS,
        is::DENSITY,
        is::CORE,
        is::LAYER_DENSITY,
        is::SECTION,
        is::UNDER,
        is::THICKNESS,
        is::TURN_PITCH,
        is::WIDTH,
        is::COVER,
    ],
    assumptions: &[
        "Each layer is the exact helix of its wire: one turn is the diagonal of the mean circumference and the \
         pitch.",
        "Ribbon lies flat and keeps its section. Silk bedding is a layer like any other, with the share of its pitch \
         that it covers.",
        "The mass per metre is that of the wound part. Bare ends are lighter: that is not taken off here, but it \
         counts in the inharmonicity and the partials.",
        "For a weighed string the mass that was typed is taken as it stands.",
    ],
    range: &[
        "Diameters of {diameters}, turns that cover {packings} of the string, weighed strings of {masses}.",
        "A wire that flattens or bites into the core as it is wound weighs a little less for its gauge. Weigh a \
         string if it matters.",
        "Nylon and gut lose 1 to 4 % as they are stretched, which is left out.",
    ],
    sources: &[from::GEOMETRY, from::PHYSICS],
    missing: &[&[Unknown::MakeUp, Unknown::OutOfReach]],
    worked: Worked::Wound,
};

pub(super) const CUT_LENGTH: Words = Words {
    title: row(Figure::CutLength).title,
    lead: "How much string to cut: what sounds, and all that lies beyond it.",
    formula: &[("", "L + a + N π (P + g) + K + e")],
    symbols: &[is::LENGTH, is::AFTER, is::TURNS, is::PIN, is::GAUGE, is::KNOT, is::TAIL],
    assumptions: &[
        "Unless you set others: {after} mm to the tuning pin, {turns} turns on a pin of {pin} mm, {knot} mm for \
         board, rib and knot, {tail} mm of tail. All common practice, no source.",
        "The turns lie side by side in one layer.",
        "The take-up is not added: the turns are those at pitch, and what is taken up ends on the pin.",
    ],
    range: &["As good as the allowances. Cut one string and string it before you cut a set."],
    sources: &[from::GEOMETRY, from::PRACTICE],
    missing: &[&[Unknown::Length, Unknown::MakeUp, Unknown::Gauge]],
    worked: Worked::Nylon,
};
