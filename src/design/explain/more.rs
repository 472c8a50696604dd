//! Tolerance, materials, findings, pitch: topics that are no figure of a string.

use super::Text::{Filled, Math, Said};
use super::Written;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use crate::words::{Words, numbers_more as say, numbers_shared as shared};

pub(super) const TOLERANCE: Written = Written {
    lead: Said(say::TOLERANCE_LEAD),
    formula: &[
        (Words::NONE, Math("U = √(Σ (u² + v²)/2)")),
        (say::FORMULA_EVERYTHING_WORST_ONCE, Math("W = Σ m")),
    ],
    symbols: &[is::SPREAD, is::MOVED_UP, is::MOVED_DOWN, is::MOVED_MOST, is::WORST],
    assumptions: &[
        Said(say::TOLERANCE_EACH_THING_MOVED_TOLERANCE),
        Said(say::TOLERANCE_EFFECTS_COMBINED_ROOT_SUM),
        Filled(|v| {
            say::tolerance_unless_you_set_others(
                &v.off_density,
                &v.off_diameter,
                &v.off_kelvins,
                &v.off_length,
                &v.off_pitch,
                &v.off_push,
            )
        }),
    ],
    range: &[
        Said(say::TOLERANCE_POOR_WHERE_FIGURE_STEPS),
        Said(say::TOLERANCE_TELLS_NOTHING_WRONG_FORMULA),
        Said(say::TOLERANCE_STRINGS_HARP_NOT_INDEPENDENT),
        Said(say::TOLERANCE_QUESTION_SAFETY_TAKE_WORST),
    ],
    sources: &[from::UNCERTAINTY, from::PRACTICE],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const MATERIALS: Written = Written {
    lead: Said(say::MATERIALS_LEAD),
    formula: &[
        (say::FORMULA_MODULUS_UNDER_STRESS, Math("E = E₀ + k σ")),
        (say::FORMULA_BREAKING_LOAD, Math("F = R A")),
    ],
    symbols: &[
        is::MODULUS,
        is::MODULUS_SLACK,
        is::MODULUS_RISE,
        is::STRESS,
        is::BREAKS,
        is::STRENGTH,
        is::AREA,
    ],
    assumptions: &[
        Said(say::MATERIALS_NYLON_FLUOROCARBON_GUT_HAVE),
        Said(say::MATERIALS_STRENGTH_LEAST_SOURCE_GIVES),
        Said(say::MATERIALS_YOU_ENTER_YOURSELF_MARKED),
    ],
    range: &[
        Said(say::MATERIALS_BATCHES_DIFFER_STRING_WEIGHED),
        Said(say::MATERIALS_NYLON_SETTLES_ABOUT_DENSITY),
    ],
    sources: &[from::PACES, from::STRESS_LAW],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const FINDINGS: Written = Written {
    lead: Said(say::FINDINGS_LEAD),
    formula: &[
        (say::FORMULA_BREAKS, Math("100 T/F > 100")),
        (
            shared::INHARMONICITY_LISTENERS_BEGIN_HEAR,
            Filled(|v| say::formula_heard(&v.offset, &v.slope)),
        ),
    ],
    symbols: &[is::PULL, is::BREAKS, is::AUDIBLE, is::PITCH],
    assumptions: &[
        Said(say::FINDINGS_GRAVE_TENSION_OVER_BREAKING),
        Filled(|v| {
            say::findings_overworked_over_breaking_load(&v.creeping, &v.least, &v.slack, &v.working)
        }),
        Filled(|v| say::findings_inharmonic_partial_more_than(&v.sharp, &v.times)),
        Filled(|v| say::findings_thin_core_gauge_more(&v.thin)),
        Filled(|v| say::findings_feel_pluck_stiffness_outside(&v.hard, &v.jump, &v.soft)),
        Filled(|v| say::findings_tight_lever_or_first(&v.least_raise)),
        Said(say::FINDINGS_OUT_LINE_STRING_SHORTER),
    ],
    range: &[
        Said(say::FINDINGS_FINDING_HINT_NO_VERDICT),
        Said(say::FINDINGS_THRESHOLD_HEARING_AVERAGE_LISTENERS),
    ],
    sources: &[from::AUDIBLE, from::GUITARS, from::RULE_OF_FEEL, from::PRACTICE],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const PITCH: Written = Written {
    lead: Said(say::PITCH_LEAD),
    formula: &[
        (say::FORMULA_PITCH, Math("f = fₐ · 2^(C/1200)")),
        (say::FORMULA_HARPIST_OCTAVE_C_D, Math("H = 8 − O")),
        (say::FORMULA_F_G_B, Math("H = 7 − O")),
    ],
    symbols: &[is::PITCH, is::REFERENCE, is::CENTS, is::HARP_OCTAVE, is::OCTAVE],
    assumptions: &[
        Filled(|v| shared::a4_hz_unless_you(&v.a4, &v.a4s)),
        Said(say::PITCH_PYTHAGOREAN_MEANTONE_FLAT_SHARP),
        Said(say::PITCH_OCTAVES_PURE_NOT_STRETCHED),
    ],
    range: &[Said(say::PITCH_CENTS_GIVEN_TENTH_TUNING)],
    sources: &[from::STANDARD_PITCH, from::TEMPERAMENTS, from::ORGAN, from::HARP_OCTAVES],
    missing: &[],
    worked: Worked::Nylon,
};
