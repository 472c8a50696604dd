//! Pitch, stretch, levers and discs.

use super::Text::{Filled, Math, Said};
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use super::{Text, Written};
use crate::engine::analysis::Unknown;
use crate::words::{Words, numbers_shared as shared, numbers_tuning as say};

const FREE: Text = Said(say::FREE);
const FIXINGS: Text = Filled(|v| say::fixings(&v.after));
const CORE_ALONE: Text = Said(say::CORE_ALONE);
const MASS_KEPT: Text = Said(say::MASS_KEPT);
const MINUTES: Text = Said(say::MINUTES);
const PUSHED: Text = Filled(|v| say::pushed(&v.push));
const SEMITONE: Text = Said(say::SEMITONE);
const PLACE_RANGE: Text = Filled(|v| say::place_range(&v.pushes));
const PLACE_TRUST: Text = Said(say::PLACE_TRUST);
const STOPPED: &[(Words, Text)] = &[
    (say::FORMULA_PLACE_WHERE, Math("1200 log₂(f′/f) = 100")),
    (say::FORMULA_PITCH_STILL_SOUNDS, Math("f′ = √((T′ + π² E I/L′²)/μ)/(2 L′)")),
    (say::FORMULA_LENGTH, Math("L′ = √((L − x)² + δ²)")),
    (say::FORMULA_TENSION, Math("T′ = T + Eₘ A ΔL/(L + a)")),
    (say::FORMULA_STRETCH, Math("ΔL = √(x² + δ²) + L′ − L")),
];

pub(super) const FREQUENCY: Written = Written {
    lead: Said(say::FREQUENCY_LEAD),
    formula: &[(Words::NONE, Math("f = fₐ · 2^(C/1200)"))],
    symbols: &[is::PITCH, is::REFERENCE, is::CENTS],
    assumptions: &[
        Filled(|v| shared::a4_hz_unless_you(&v.a4, &v.a4s)),
        Said(say::FREQUENCY_NOTES_THOSE_OPEN_STRINGS),
    ],
    range: &[Filled(|v| say::frequency_pitches(&v.pitches))],
    sources: &[from::STANDARD_PITCH, from::TEMPERAMENTS, from::ORGAN],
    missing: &[&[Unknown::Pitch]],
    worked: Worked::Nylon,
};

pub(super) const STRETCH: Written = Written {
    lead: Said(say::STRETCH_LEAD),
    formula: &[
        (Words::NONE, Math("ΔL = ε (L + a)")),
        (say::FORMULA_STRAIN_MODULUS_RISES_STRESS, Math("ε = ln(1 + k σ/Eₛ)/k")),
        (say::FORMULA_STRAIN_K, Math("ε = σ/Eₛ")),
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
        Said(say::STRETCH_MODULUS_SLOW_OVER_WEEKS),
        FIXINGS,
        CORE_ALONE,
        Said(say::STRETCH_KNOTS_DRAW_TIGHT_COME),
    ],
    range: &[
        Said(say::STRETCH_FIRST_ORDER_WOUND_UP),
        Said(say::STRETCH_SLOW_MODULUS_NYLON_FLUOROCARBON),
    ],
    sources: &[from::HOOKE, from::PACES],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::SlowModulus]],
    worked: Worked::Nylon,
};

pub(super) const PIN_TURNS: Written = Written {
    lead: Said(say::PIN_TURNS_LEAD),
    formula: &[(Words::NONE, Math("ΔL/(π (P + g))"))],
    symbols: &[is::STRETCH, is::PIN, is::GAUGE],
    assumptions: &[
        Said(say::PIN_TURNS_STRING_LIES_PIN_LAYER),
        Filled(|v| say::pin_turns_pin_mm_thick_unless(&v.pin)),
    ],
    range: &[Said(say::PIN_TURNS_UNCERTAIN_TAKE_UP)],
    sources: &[from::GEOMETRY, from::PACES],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::SlowModulus, Unknown::Gauge]],
    worked: Worked::Nylon,
};

pub(super) const CENTS_PER_PIN_DEGREE: Written = Written {
    lead: Said(say::CENTS_PER_PIN_DEGREE_LEAD),
    formula: &[(Words::NONE, Math("(600/ln 2) (Eₘ/σ) π (P + g)/(L + a)/360"))],
    symbols: &[is::MODULUS_MINUTES, is::STRESS, is::PIN, is::GAUGE, is::LENGTH, is::AFTER],
    assumptions: &[MINUTES, FIXINGS, FREE, CORE_ALONE, MASS_KEPT],
    range: &[Said(say::CENTS_PER_PIN_DEGREE_SMALL_TURNS_AFTER_TURN)],
    sources: &[from::HOOKE, from::PACES],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::IntermediateModulus, Unknown::Gauge]],
    worked: Worked::Nylon,
};

pub(super) const CENTS_PER_KELVIN: Written = Written {
    lead: Said(say::CENTS_PER_KELVIN_LEAD),
    formula: &[(Words::NONE, Math("−(600/ln 2) (Eₘ/σ) (α − α₀)"))],
    symbols: &[is::MODULUS_MINUTES, is::STRESS, is::EXPANSION, is::FRAME],
    assumptions: &[
        Said(say::CENTS_PER_KELVIN_ONLY_METALS_NYLON_FLUOROCARBON),
        Filled(|v| say::cents_per_kelvin_frame_expands_millionths_each(&v.frame)),
        CORE_ALONE,
    ],
    range: &[Said(say::CENTS_PER_KELVIN_CHANGES_SOME_TENS_KELVINS)],
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

pub(super) const LEVER: Written = Written {
    lead: Said(say::LEVER_LEAD),
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

pub(super) const DISC_NATURAL: Written = Written {
    lead: Said(say::DISC_NATURAL_LEAD),
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
        Said(say::DISC_NATURAL_PINS_DISC_TOUCH_STRING),
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

pub(super) const DISC_SHARP: Written = Written {
    lead: Said(say::DISC_SHARP_LEAD),
    formula: &[
        (say::FORMULA_PLACE_WHERE, Math("1200 log₂(f′/f) = 200")),
        STOPPED[1],
        STOPPED[2],
        STOPPED[3],
        (say::FORMULA_STRETCH, Math("ΔL = √(x₁² + δ²) + (x − x₁) + L′ − L")),
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
        Said(say::DISC_SHARP_TWO_SEMITONES_CENTS_WHATEVER),
        Said(say::DISC_SHARP_BOTH_DISCS_PUSH_EQUALLY),
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

pub(super) const NOMINAL_ERROR: Written = Written {
    lead: Said(say::NOMINAL_ERROR_LEAD),
    formula: &[
        (say::FORMULA_CENTS, Math("1200 log₂(f′/f) − 100")),
        (say::FORMULA_NOMINAL_PLACE, Math("x₀ = L (1 − 2^(−1/12))")),
    ],
    symbols: &[is::RAISED_AT_NOMINAL, is::PITCH, is::NOMINAL, is::LENGTH],
    assumptions: &[
        Said(say::NOMINAL_ERROR_PITCH_CONTACT_PRESSING_WORKED),
        SEMITONE,
        PUSHED,
        FIXINGS,
        FREE,
        MINUTES,
    ],
    range: &[
        PLACE_RANGE,
        Said(say::NOMINAL_ERROR_STRING_TWO_DISCS_ERROR),
        Said(say::NOMINAL_ERROR_PROPORTIONAL_SQUARE_PUSH_LONG),
    ],
    sources: &[from::HOOKE, from::PACES, from::PRACTICE],
    missing: &[
        from::NO_PULL,
        &[Unknown::NoLever, Unknown::Core, Unknown::IntermediateModulus, Unknown::TooMuchPush],
    ],
    worked: Worked::Nylon,
};
