//! Tone: partials, impedance, damping, glide.

use super::Text::{Filled, Math, Said};
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use super::{Text, Written};
use crate::engine::analysis::Unknown;
use crate::words::{Words, numbers_shared as shared, numbers_tone as say};

const PINNED: Text = Said(say::PINNED);
const NO_WINDING: Text = Said(say::NO_WINDING);
const BARE_RANGE: Text = Said(say::BARE_RANGE);

pub(super) const INHARMONICITY: Written = Written {
    lead: Said(say::INHARMONICITY_LEAD),
    formula: &[
        (say::FORMULA_STIFFNESS, Math("B = π² E I/(T L²)")),
        (say::FORMULA_EACH_BARE_END, Math("(2 π²/3) (1 − r) (b/L)³")),
    ],
    symbols: &[
        is::SHARPNESS,
        is::MODULUS,
        is::INERTIA,
        is::PULL,
        is::LENGTH,
        is::CORE_SHARE,
        is::BARE,
    ],
    assumptions: &[
        PINNED,
        NO_WINDING,
        Said(say::INHARMONICITY_CORE_ROUND_MODULUS_VIBRATION),
        Said(say::INHARMONICITY_WHERE_WOUND_STRING_HAS),
    ],
    range: &[
        BARE_RANGE,
        Said(say::INHARMONICITY_MEASURED_WOUND_STRINGS_MORE),
        Said(say::INHARMONICITY_UNCERTAIN_MODULUS_LAW_NYLON),
    ],
    sources: &[from::FLETCHER, from::YOUNG, from::STEPPED, from::KEMP],
    missing: &[from::NO_PULL, &[Unknown::Modulus]],
    worked: Worked::Wound,
};

pub(super) const PARTIAL_8: Written = Written {
    lead: Said(say::PARTIAL_8_LEAD),
    formula: &[
        (say::FORMULA_STIFFNESS, Math("600 log₂((1 + 64 B)/(1 + B))")),
        (say::FORMULA_BARE_ENDS, Math("1200 log₂(f₈/(8 f₁))")),
    ],
    symbols: &[is::SHARPNESS_OF_CORE, is::EIGHTH, is::FIRST],
    assumptions: &[
        PINNED,
        NO_WINDING,
        Said(say::PARTIAL_8_SET_AGAINST_EIGHT_TIMES),
        Said(say::PARTIAL_8_BARE_ENDS_TAKEN_EXACTLY),
    ],
    range: &[
        Said(say::PARTIAL_8_RIGHT_STRING_GIVEN_ADDING),
        Filled(|v| say::partial_8_finding_begins_above_cents(&v.sharp)),
    ],
    sources: &[from::FLETCHER, from::STEPPED],
    missing: &[from::NO_PULL, &[Unknown::Modulus]],
    worked: Worked::Wound,
};

pub(super) const PARTIALS: Written = Written {
    lead: Said(say::PARTIALS_LEAD),
    formula: &[
        (say::FORMULA_FREQUENCY_PARTIAL, Math("fₙ = n f₀ √(1 + B n²)")),
        (say::FORMULA_STRING_WITHOUT_STIFFNESS, Math("f₀ = √(T/μ)/(2 L)")),
        (say::FORMULA_TUNED, Math("f = f₀ √(1 + B)")),
        (say::FORMULA_SHARP_CENTS, Math("600 log₂((1 + B n²)/(1 + B))")),
    ],
    symbols: &[
        is::OF_PARTIAL,
        is::PARTIAL_ANY,
        is::FLEXIBLE,
        is::SHARPNESS_OF_CORE,
        is::PULL,
        is::MASS,
        is::LENGTH,
        is::PITCH,
    ],
    assumptions: &[PINNED, NO_WINDING, Said(say::PARTIALS_BARE_ENDS_COME_TOP)],
    range: &[
        Said(say::PARTIALS_RIGHT_WHILE_STRING_LONG),
        Said(say::PARTIALS_SOUNDBOARD_NECK_MOVE_TOO),
    ],
    sources: &[from::FLETCHER, from::YOUNG, from::STEPPED, from::KEMP],
    missing: &[from::NO_PULL, &[Unknown::Modulus]],
    worked: Worked::Wound,
};

pub(super) const IMPEDANCE: Written = Written {
    lead: Said(say::IMPEDANCE_LEAD),
    formula: &[(Words::NONE, Math("√(T μ)"))],
    symbols: &[is::PULL, is::MASS],
    assumptions: &[
        Said(say::IMPEDANCE_STRING_FLEXIBLE_UNIFORM_BARE),
        Said(say::IMPEDANCE_SOUNDBOARD_DOES_NOT_TOLD),
    ],
    range: &[Said(say::IMPEDANCE_EXACT_TENSION_MASS_PER)],
    sources: &[from::PHYSICS],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};

pub(super) const DAMPING: Written = Written {
    lead: Said(say::DAMPING_LEAD),
    formula: &[(Words::NONE, Math("η = ηₑ B n²/(1 + B n²)"))],
    symbols: &[is::DAMPING, is::SHARPNESS_OF_CORE, is::PARTIAL, is::LOSS],
    assumptions: &[
        Filled(|v| say::damping_given_partial_unless_you(&v.most_partial, &v.partial)),
        Said(say::DAMPING_ONLY_BENDING_COUNTS_LOSSES),
        Said(say::DAMPING_INHARMONICITY_STIFFNESS_ALONE),
        Said(say::DAMPING_WOUND_STRINGS_GET_NO),
    ],
    range: &[
        Said(say::DAMPING_RIGHT_EVERY_PARTIAL_FAR),
        Said(say::DAMPING_NYLON_STRINGS_WERE_FOUND),
        Said(say::DAMPING_LOSS_FACTORS_GUT_MOST),
    ],
    sources: &[from::BENDING_LAW, from::BENDING],
    missing: &[
        from::NO_PULL,
        &[Unknown::Core, Unknown::WoundDamping, Unknown::Modulus, Unknown::LossFactor],
    ],
    worked: Worked::Nylon,
};

pub(super) const GLIDE: Written = Written {
    lead: Said(say::GLIDE_LEAD),
    formula: &[
        (Words::NONE, Math("600 log₂(1 + q E A κ h²/(4 L T))")),
        (Words::NONE, Math("κ = 1/(L β (1 − β))")),
        (Words::NONE, Math("q = 1 + sin²(π β)/(π² β (1 − β))")),
    ],
    symbols: &[
        is::IN_STEP,
        is::MODULUS,
        is::AREA,
        is::SLOPES,
        is::ASIDE,
        is::LENGTH,
        is::PULL,
        is::PLUCK_AT,
    ],
    assumptions: &[
        Filled(|v| shared::string_pulled_mm_aside(&v.most_pluck, &v.pluck)),
        Said(say::GLIDE_WHILE_SWINGS_HALF_STRETCH),
        Said(say::GLIDE_SWINGS_PLANE_DOES_AFTER),
        Said(shared::ALL_STRETCH_STAYS_WITHIN),
    ],
    range: &[Said(say::GLIDE_ESTIMATE_VERY_BEGINNING_RISE), Filled(|v| say::glide_ways(&v.plucks))],
    sources: &[from::STRETCHING, from::HARDENING, from::ENERGY],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::Modulus]],
    worked: Worked::Nylon,
};
