//! Pull and feel.

use super::Text::{Filled, Math, Said};
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use super::{Text, Written};
use crate::engine::analysis::Unknown;
use crate::words::{Words, numbers_pull as say, numbers_shared as shared};

const CORE_ALONE: Text = Said(say::CORE_ALONE);
const SMALL: Text = Said(say::SMALL);

pub(super) const TENSION: Written = Written {
    lead: Said(say::TENSION_LEAD),
    formula: &[
        (Words::NONE, Math("T = 4 L² f² μ − π² E I/L²")),
        (
            say::FORMULA_WHERE_MODULUS_RISES_STRESS,
            Math("T = (4 L² f² μ − π² E₀ I/L²)/(1 + π² k I/(A L²))"),
        ),
    ],
    symbols: &[
        is::PULL,
        is::LENGTH,
        is::PITCH,
        is::MASS,
        is::MODULUS,
        is::MODULUS_SLACK,
        is::MODULUS_RISE,
        is::INERTIA,
        is::AREA,
    ],
    assumptions: &[
        Said(say::TENSION_FIRST_PARTIAL_STIFF_STRING),
        Said(say::TENSION_STRING_TURNS_FREELY_SOUNDBOARD),
        Said(say::TENSION_TENSION_SAME_ALONG_WHOLE),
        CORE_ALONE,
        Said(say::TENSION_BARE_CORE_ENDS_WOUND),
        Said(say::TENSION_MASS_PER_METRE_STRING),
    ],
    range: &[
        Filled(|v| say::tension_lengths_pitches(&v.lengths, &v.pitches)),
        Said(say::TENSION_GAUGE_COUNTS_TWICE_HUNDREDTH),
    ],
    sources: &[from::WAVES, from::FLETCHER],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};

pub(super) const STRESS: Written = Written {
    lead: Said(say::STRESS_LEAD),
    formula: &[(Words::NONE, Math("σ = T/A")), (Words::NONE, Math("A = π d²/4"))],
    symbols: &[is::STRESS, is::PULL, is::AREA, is::CORE],
    assumptions: &[
        CORE_ALONE,
        Said(say::STRESS_TENSION_SPREAD_EVENLY_OVER),
        Said(say::STRESS_SECTION_STRING_BEFORE_STRETCHED),
    ],
    range: &[Said(say::STRESS_EXACT_TENSION_DIAMETER_CORE)],
    sources: &[from::GEOMETRY, from::STRESS_LAW],
    missing: &[from::NO_PULL, &[Unknown::Core]],
    worked: Worked::Wound,
};

pub(super) const BREAKING_LOAD: Written = Written {
    lead: Said(say::BREAKING_LOAD_LEAD),
    formula: &[(Words::NONE, Math("F = R A")), (Words::NONE, Math("A = π d²/4"))],
    symbols: &[is::BREAKS, is::STRENGTH, is::AREA, is::CORE],
    assumptions: &[
        CORE_ALONE,
        Said(say::BREAKING_LOAD_STRENGTH_LEAST_SOURCE_GIVES),
        Said(say::BREAKING_LOAD_WEIGHED_STRING_BREAKING_LOAD),
    ],
    range: &[
        Said(say::BREAKING_LOAD_ONLY_DIAMETERS_SOURCE_HAS),
        Said(say::BREAKING_LOAD_SOME_STRENGTHS_ONLY_KNOWN),
        Filled(|v| say::breaking_load_loads(&v.loads)),
    ],
    sources: &[from::MATERIALS, from::GEOMETRY],
    missing: &[&[Unknown::MakeUp, Unknown::Strength, Unknown::OutOfReach]],
    worked: Worked::Steel,
};

pub(super) const LOAD_SHARE: Written = Written {
    lead: Said(say::LOAD_SHARE_LEAD),
    formula: &[(say::FORMULA_PER_CENT, Math("100 T/F"))],
    symbols: &[is::PULL, is::BREAKS],
    assumptions: &[
        CORE_ALONE,
        Filled(|v| say::load_share_findings_begin_above_below(&v.slack, &v.working)),
    ],
    range: &[Said(say::LOAD_SHARE_UNCERTAIN_BREAKING_LOAD_PULL)],
    sources: &[from::MATERIALS, from::PRACTICE],
    missing: &[from::NO_PULL, &[Unknown::Strength]],
    worked: Worked::Steel,
};

pub(super) const SEMITONES_TO_BREAK: Written = Written {
    lead: Said(say::SEMITONES_TO_BREAK_LEAD),
    formula: &[(Words::NONE, Math("6 log₂(F/T)"))],
    symbols: &[is::BREAKS, is::PULL],
    assumptions: &[
        Said(say::SEMITONES_TO_BREAK_MASS_PER_METRE_STAYS),
        Said(say::SEMITONES_TO_BREAK_STIFFNESS_LEFT_OUT_TENSION),
        CORE_ALONE,
    ],
    range: &[Said(say::SEMITONES_TO_BREAK_UNCERTAIN_BREAKING_LOAD_TENTH)],
    sources: &[from::WAVES, from::MATERIALS],
    missing: &[from::NO_PULL, &[Unknown::Strength]],
    worked: Worked::Steel,
};

pub(super) const PLUCK_STIFFNESS: Written = Written {
    lead: Said(say::PLUCK_STIFFNESS_LEAD),
    formula: &[(Words::NONE, Math("T/(L β (1 − β))"))],
    symbols: &[is::PULL, is::LENGTH, is::PLUCK_AT],
    assumptions: &[
        Filled(|v| say::pluck_stiffness_finger_plucks_same_share(&v.at)),
        SMALL,
        Said(say::PLUCK_STIFFNESS_STRETCH_PLUCK_ITSELF_STIFFNESS),
    ],
    range: &[
        Filled(|v| say::pluck_stiffness_plucks_from_length(&v.places)),
        Said(say::PLUCK_STIFFNESS_WITHIN_FEW_PER_CENT),
    ],
    sources: &[from::STATICS],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};

pub(super) const PLUCK_FORCE: Written = Written {
    lead: Said(say::PLUCK_FORCE_LEAD),
    formula: &[
        (Words::NONE, Math("T κ h + (E A/(2 L)) κ² h³")),
        (Words::NONE, Math("κ = 1/(L β (1 − β))")),
    ],
    symbols: &[is::PULL, is::SLOPES, is::ASIDE, is::MODULUS, is::AREA, is::LENGTH, is::PLUCK_AT],
    assumptions: &[
        Filled(|v| shared::string_pulled_mm_aside(&v.most_pluck, &v.pluck)),
        Said(shared::ALL_STRETCH_STAYS_WITHIN),
        SMALL,
        CORE_ALONE,
    ],
    range: &[Filled(|v| say::pluck_force_ways_second_part_right(&v.plucks))],
    sources: &[from::STRETCHING, from::STATICS],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::Modulus]],
    worked: Worked::Nylon,
};
