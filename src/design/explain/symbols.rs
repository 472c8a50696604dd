//! The letters of the formulas: what each stands for, its unit, and what it is in an example.

use std::f64::consts::PI;

use super::example::Strung;
use super::fill;
use crate::design::document::{Allowances, PitchSpec};
use crate::engine::construction::Section;
use crate::engine::figure::Figure;
use crate::engine::material::Pace;
use crate::engine::pitch::{self, cents};
use crate::words::{Words, numbers_letters as say, numbers_shared as shared};

/// A letter of a formula.
#[derive(Debug)]
pub(super) struct Symbol {
    pub(super) sign: &'static str,
    meaning: Words,
    unit: &'static str,
    value: fn(&Strung) -> Option<f64>,
}

impl Symbol {
    pub(super) const fn new(
        sign: &'static str,
        meaning: Words,
        unit: &'static str,
        value: fn(&Strung) -> Option<f64>,
    ) -> Self {
        Self { sign, meaning, unit, value }
    }

    /// What it stands for, with its unit.
    pub(super) fn meaning(&self) -> String {
        let Self { meaning, unit, .. } = self;
        match fill::unit(unit) {
            "" => (*meaning).into(),
            unit => format!("{meaning}, {unit}"),
        }
    }

    /// What it is in an example; empty where it is nothing there.
    pub(super) fn in_example(&self, string: &Strung) -> String {
        (self.value)(string).map(|value| fill::with(value, self.unit)).unwrap_or_default()
    }
}

/// A figure of the example.
fn of(string: &Strung, figure: Figure) -> Option<f64> {
    figure.value(&string.figures).ok()
}

fn allowances() -> Allowances {
    Allowances::default()
}

/// What is wound on the core first.
fn layer(string: &Strung) -> Option<(Section, f64, f64)> {
    let layer = string.make_up()?.layers().first()?;
    Some((layer.section, layer.packing_ratio, layer.material.density.value.to_kg_per_m3()))
}

fn wire_mm(string: &Strung) -> Option<f64> {
    Some(layer(string)?.0.thickness().to_mm())
}

const NONE: fn(&Strung) -> Option<f64> = |_| None;

macro_rules! symbols {
    ($($name:ident = $sign:literal, $meaning:expr, $unit:literal, $value:expr;)+) => {
        $(pub(super) const $name: Symbol = Symbol::new($sign, $meaning, $unit, $value);)+
    };
}

symbols! {
    BOARD_ANGLE = "θ", say::LETTER_BOARD_ANGLE, "degrees", |s| {
        Some(s.harp.conditions.board_angle_rad.to_degrees())
    };
    LIFT = "Q", say::LETTER_LIFT, "N", |s| of(s, Figure::Lift);
    PULL = "T", say::LETTER_PULL, "N", |s| of(s, Figure::Tension);
    LENGTH = "L", shared::VIBRATING_LENGTH, "mm", |s| of(s, Figure::Length);
    PITCH = "f", say::LETTER_PITCH, "Hz", |s| of(s, Figure::Frequency);
    MASS = "μ", say::LETTER_MASS, "g/m", |s| of(s, Figure::LinearDensity);
    CORE = "d", say::LETTER_CORE, "mm", |s| of(s, Figure::Core);
    GAUGE = "g", say::LETTER_GAUGE, "mm", |s| of(s, Figure::Gauge);
    AREA = "A", say::LETTER_AREA, "mm²", |s| s.area_m2().map(|area| 1e6 * area);
    INERTIA = "I", say::LETTER_INERTIA, "mm⁴", |s| {
        of(s, Figure::Core).map(|mm| PI / 64.0 * mm.powi(4))
    };
    DENSITY = "ρ", say::LETTER_DENSITY, "kg/m³", |s| {
        Some(s.material()?.density.value.to_kg_per_m3())
    };
    MODULUS = "E", say::LETTER_MODULUS, "GPa", |s| {
        s.modulus_gpa(Pace::Fast)
    };
    MODULUS_SLACK = "E₀", say::LETTER_MODULUS_SLACK, "GPa", |s| {
        Some(s.modulus(Pace::Fast)?.base.to_gpa())
    };
    MODULUS_RISE = "k", say::LETTER_MODULUS_RISE, "", |s| {
        Some(s.modulus(Pace::Fast)?.per_stress_ratio)
    };
    MODULUS_MINUTES = "Eₘ", say::LETTER_MODULUS_MINUTES, "GPa", |s| {
        s.modulus_gpa(Pace::Intermediate)
    };
    MODULUS_SLOW = "Eₛ", say::LETTER_MODULUS_SLOW, "GPa", |s| {
        Some(s.modulus(Pace::Slow)?.base.to_gpa())
    };
    SLOW_RISE = "k", say::LETTER_SLOW_RISE, "", |s| {
        Some(s.modulus(Pace::Slow)?.per_stress_ratio)
    };
    STRESS = "σ", say::LETTER_STRESS, "MPa", |s| of(s, Figure::Stress);
    STRENGTH = "R", say::LETTER_STRENGTH, "MPa", |s| {
        Some(of(s, Figure::BreakingLoad)? / (1e6 * s.area_m2()?))
    };
    BREAKS = "F", say::LETTER_BREAKS, "N", |s| of(s, Figure::BreakingLoad);
    PLUCK_AT = "β", say::LETTER_PLUCK_AT, "", |s| {
        Some(s.harp.pluck_ratio)
    };
    ASIDE = "h", say::LETTER_ASIDE, "mm", |s| {
        Some(s.harp.conditions.pluck.to_mm())
    };
    SLOPES = "κ", say::LETTER_SLOPES, "1/m", Strung::slopes_per_m;
    IN_STEP = "q", say::LETTER_IN_STEP, "", |s| {
        let (at, first) = (s.harp.pluck_ratio, (PI * s.harp.pluck_ratio).sin() / PI);
        Some(1.0 + first * first / (at * (1.0 - at)))
    };
    SHARPNESS = "B", say::LETTER_SHARPNESS, "", |s| of(s, Figure::Inharmonicity);
    SHARPNESS_OF_CORE = "B", say::LETTER_SHARPNESS_OF_CORE, "", Strung::stiffness_b;
    BARE = "b", say::LETTER_BARE, "mm", NONE;
    CORE_SHARE = "r", say::LETTER_CORE_SHARE, "", Strung::core_share;
    PARTIAL = "n", say::LETTER_PARTIAL, "", |s| Some(f64::from(s.harp.conditions.damping_partial));
    PARTIAL_ANY = "n", say::LETTER_PARTIAL, "", NONE;
    OF_PARTIAL = "fₙ", say::LETTER_OF_PARTIAL, "Hz", NONE;
    FLEXIBLE = "f₀", say::LETTER_FLEXIBLE, "Hz", NONE;
    EIGHTH = "f₈", say::LETTER_EIGHTH, "Hz", NONE;
    FIRST = "f₁", say::LETTER_FIRST, "Hz", NONE;
    DAMPING = "η", say::LETTER_DAMPING, "", |s| of(s, Figure::Damping);
    LOSS = "ηₑ", say::LETTER_LOSS, "", |s| {
        Some(s.material()?.loss_factor.as_ref()?.value)
    };
    STRAIN = "ε", say::LETTER_STRAIN, "", |s| {
        Some(of(s, Figure::Stretch)? / (of(s, Figure::Length)? + allowances().after_length_mm))
    };
    STRETCH = "ΔL", say::LETTER_STRETCH, "mm", |s| of(s, Figure::Stretch);
    CONTACT_STRETCH = "ΔL", say::LETTER_CONTACT_STRETCH, "mm", |s| Some(s.contact()?.stretch_mm);
    AFTER = "a", say::LETTER_AFTER, "mm", |_| Some(allowances().after_length_mm);
    PIN = "P", say::LETTER_PIN, "mm", |_| Some(allowances().pin_mm);
    TURNS = "N", say::LETTER_TURNS, "", |_| Some(allowances().turns);
    KNOT = "K", say::LETTER_KNOT, "mm", |_| Some(allowances().knot_mm);
    TAIL = "e", say::LETTER_TAIL, "mm", |_| Some(allowances().tail_mm);
    EXPANSION = "α", say::LETTER_EXPANSION, "", |s| {
        Some(1e6 * s.material()?.expansion_per_k.as_ref()?.value)
    };
    FRAME = "α₀", say::LETTER_FRAME, "", |s| {
        Some(1e6 * s.harp.conditions.frame_expansion_per_k)
    };
    PLACE = "x", say::LETTER_PLACE, "mm", |s| {
        of(s, Figure::DiscSharp).or_else(|| of(s, Figure::DiscNatural)).or_else(|| of(s, Figure::Lever))
    };
    NATURAL = "x₁", say::LETTER_NATURAL, "mm", |s| {
        of(s, Figure::DiscNatural)
    };
    PUSH = "δ", say::LETTER_PUSH, "mm", |s| {
        Some(s.harp.conditions.push.to_mm())
    };
    SOUNDS = "L′", say::LETTER_SOUNDS, "mm", |s| Some(s.contact()?.sounds_mm);
    RAISED_PULL = "T′", say::LETTER_RAISED_PULL, "N", |s| Some(s.contact()?.pull_n);
    RAISED = "f′", say::LETTER_RAISED, "Hz", |s| {
        Some(of(s, Figure::Frequency)? * pitch::ratio(100.0 * s.contact()?.semitones))
    };
    NOMINAL = "x₀", say::LETTER_NOMINAL, "mm", |s| {
        s.figures.disc_natural.or(s.figures.lever).ok().map(|place| place.nominal.to_mm())
    };
    RAISED_AT_NOMINAL = "f′", say::LETTER_RAISED_AT_NOMINAL, "Hz", |s| {
        let cents = 100.0 + of(s, Figure::NominalError)?;
        Some(of(s, Figure::Frequency)? * pitch::ratio(cents))
    };
    UNDER = "D", say::LETTER_UNDER, "mm", |s| {
        layer(s).and_then(|_| of(s, Figure::Core))
    };
    THICKNESS = "t", say::LETTER_THICKNESS, "mm", wire_mm;
    WIDTH = "w", say::LETTER_WIDTH, "mm", NONE;
    TURN_PITCH = "p", say::LETTER_TURN_PITCH, "mm", |s| {
        Some(wire_mm(s)? / layer(s)?.1)
    };
    COVER = "c", say::LETTER_COVER, "", |s| Some(layer(s)?.1);
    SECTION = "S", say::LETTER_SECTION, "mm²", |s| {
        Some(PI / 4.0 * wire_mm(s)?.powi(2))
    };
    LAYER_DENSITY = "ρ₁", say::LETTER_LAYER_DENSITY, "kg/m³", |s| Some(layer(s)?.2);
    REFERENCE = "fₐ", say::LETTER_REFERENCE, "Hz", |_| Some(PitchSpec::default().a4_hz);
    CENTS = "C", say::LETTER_CENTS, "", |s| {
        Some(cents(of(s, Figure::Frequency)? / PitchSpec::default().a4_hz))
    };
    HARP_OCTAVE = "H", say::LETTER_HARP_OCTAVE, "", NONE;
    OCTAVE = "O", say::LETTER_OCTAVE, "", NONE;
    STEPS_UP = "U", say::LETTER_STEPS_UP, "semitones", NONE;
    SIGN_OF_KEY = "V", say::LETTER_SIGN_OF_KEY, "", NONE;
    SIGN_OPEN = "W", say::LETTER_SIGN_OPEN, "", NONE;
    MOST_RAISED = "M", say::LETTER_MOST_RAISED, "semitones", NONE;
    AUDIBLE = "Bₕ", shared::INHARMONICITY_LISTENERS_BEGIN_HEAR, "", NONE;
    MOVED_UP = "u", say::LETTER_MOVED_UP, "", NONE;
    MOVED_DOWN = "v", say::LETTER_MOVED_DOWN, "", NONE;
    MOVED_MOST = "m", say::LETTER_MOVED_MOST, "", NONE;
    SPREAD = "U", say::LETTER_SPREAD, "", NONE;
    WORST = "W", say::LETTER_WORST, "", NONE;
}
