//! What is measured, bought and cut.

use super::Text::{Filled, Math, Said};
use super::Written;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use crate::engine::analysis::Unknown;
use crate::words::{Words, numbers_ordering as say};

pub(super) const LENGTH: Written = Written {
    lead: Said(say::LENGTH_LEAD),
    formula: &[(
        say::FORMULA_LENGTH_TENSION_REACHED_FINDINGS,
        Math("L = √((T + √(T² + 16 f² μ π² E I))/(8 f² μ))"),
    )],
    symbols: &[is::LENGTH, is::PULL, is::PITCH, is::MASS, is::MODULUS, is::INERTIA],
    assumptions: &[
        Said(say::LENGTH_MEASURED_HARP_UNDER_TENSION),
        Said(say::LENGTH_INCH_EXACTLY_MM),
    ],
    range: &[Filled(|v| say::length_lengths(&v.lengths))],
    sources: &[from::WAVES, from::FLETCHER],
    missing: &[&[Unknown::Length]],
    worked: Worked::Nylon,
};

pub(super) const GAUGE: Written = Written {
    lead: Said(say::GAUGE_LEAD),
    formula: &[(Words::NONE, Math("g = d + 2 Σ t"))],
    symbols: &[is::GAUGE, is::CORE, is::THICKNESS],
    assumptions: &[
        Said(say::GAUGE_EACH_LAYER_ADDS_FULL),
        Said(say::GAUGE_WEIGHED_STRING_GAUGE_WAS),
    ],
    range: &[
        Filled(|v| say::gauge_diameters(&v.diameters)),
        Said(say::GAUGE_NYLON_GUT_GROW_THINNER),
    ],
    sources: &[from::GEOMETRY],
    missing: &[&[Unknown::MakeUp, Unknown::Gauge]],
    worked: Worked::Wound,
};

pub(super) const CORE: Written = Written {
    lead: Said(say::CORE_LEAD),
    formula: &[(say::FORMULA_CORE_TENSION_PUTS_UNDER, Math("d = √(4 T/(π σ))"))],
    symbols: &[is::CORE, is::PULL, is::STRESS],
    assumptions: &[
        Said(say::CORE_CORE_ROUND_HEXAGONAL_CORE),
        Said(say::CORE_WINDINGS_CARRY_NONE_TENSION),
        Filled(|v| say::core_gauge_more_than_times(&v.thin)),
    ],
    range: &[Filled(|v| say::gauge_diameters(&v.diameters))],
    sources: &[from::GEOMETRY, from::PRACTICE],
    missing: &[&[Unknown::MakeUp, Unknown::Core]],
    worked: Worked::Wound,
};

pub(super) const LINEAR_DENSITY: Written = Written {
    lead: Said(say::LINEAR_DENSITY_LEAD),
    formula: &[
        (Words::NONE, Math("μ = ρ π d²/4 + Σ ρ₁ S √((π (D + t))² + p²)/p")),
        (say::FORMULA_SECTION_ROUND_WIRE, Math("S = π t²/4")),
        (say::FORMULA_SECTION_RIBBON, Math("S = t w")),
        (say::FORMULA_PITCH_ROUND_WIRE, Math("p = t/c")),
        (say::FORMULA_PITCH_RIBBON, Math("p = w/c")),
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
        Said(say::LINEAR_DENSITY_EACH_LAYER_EXACT_HELIX),
        Said(say::LINEAR_DENSITY_RIBBON_LIES_FLAT_KEEPS),
        Said(say::LINEAR_DENSITY_MASS_PER_METRE_WOUND),
        Said(say::LINEAR_DENSITY_WEIGHED_STRING_MASS_WAS),
    ],
    range: &[
        Filled(|v| {
            say::linear_density_diameters_turns_cover_string(&v.diameters, &v.masses, &v.packings)
        }),
        Said(say::LINEAR_DENSITY_WIRE_FLATTENS_OR_BITES),
        Said(say::LINEAR_DENSITY_NYLON_GUT_LOSE_STRETCHED),
    ],
    sources: &[from::GEOMETRY, from::PHYSICS],
    missing: &[&[Unknown::MakeUp, Unknown::OutOfReach]],
    worked: Worked::Wound,
};

pub(super) const CUT_LENGTH: Written = Written {
    lead: Said(say::CUT_LENGTH_LEAD),
    formula: &[(Words::NONE, Math("L + a + N π (P + g) + K + e"))],
    symbols: &[is::LENGTH, is::AFTER, is::TURNS, is::PIN, is::GAUGE, is::KNOT, is::TAIL],
    assumptions: &[
        Filled(|v| {
            say::cut_length_unless_you_set_others(&v.after, &v.knot, &v.pin, &v.tail, &v.turns)
        }),
        Said(say::CUT_LENGTH_TURNS_LIE_SIDE_SIDE),
        Said(say::CUT_LENGTH_TAKE_UP_NOT_ADDED),
    ],
    range: &[Said(say::CUT_LENGTH_GOOD_ALLOWANCES_CUT_STRING)],
    sources: &[from::GEOMETRY, from::PRACTICE],
    missing: &[&[Unknown::Length, Unknown::MakeUp, Unknown::Gauge]],
    worked: Worked::Nylon,
};
