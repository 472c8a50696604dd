//! The letters of the formulas: what each stands for, its unit, and what it is in an example.

use std::f64::consts::PI;

use super::example::Strung;
use super::fill;
use crate::design::document::{Allowances, PitchSpec};
use crate::engine::construction::Section;
use crate::engine::figure::Figure;
use crate::engine::material::Pace;
use crate::engine::pitch::{self, cents};

/// A letter of a formula.
#[derive(Debug)]
pub(super) struct Symbol {
    pub(super) sign: &'static str,
    meaning: &'static str,
    unit: &'static str,
    value: fn(&Strung) -> Option<f64>,
}

impl Symbol {
    pub(super) const fn new(
        sign: &'static str,
        meaning: &'static str,
        unit: &'static str,
        value: fn(&Strung) -> Option<f64>,
    ) -> Self {
        Self { sign, meaning, unit, value }
    }

    /// What it stands for, with its unit.
    pub(super) fn meaning(&self) -> String {
        let Self { meaning, unit, .. } = self;
        if unit.is_empty() { (*meaning).to_owned() } else { format!("{meaning}, {unit}") }
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
    ($($name:ident = $sign:literal, $meaning:literal, $unit:literal, $value:expr;)+) => {
        $(pub(super) const $name: Symbol = Symbol::new($sign, $meaning, $unit, $value);)+
    };
}

symbols! {
    BOARD_ANGLE = "θ", "angle between string and soundboard", "degrees", |s| {
        Some(s.harp.conditions.board_angle_rad.to_degrees())
    };
    LIFT = "Q", "force square to the soundboard", "N", |s| of(s, Figure::Lift);
    PULL = "T", "tension of the string at pitch", "N", |s| of(s, Figure::Tension);
    LENGTH = "L", "vibrating length", "mm", |s| of(s, Figure::Length);
    PITCH = "f", "pitch, that of the first partial", "Hz", |s| of(s, Figure::Frequency);
    MASS = "μ", "mass per metre", "g/m", |s| of(s, Figure::LinearDensity);
    CORE = "d", "diameter of the core, or of the plain string", "mm", |s| of(s, Figure::Core);
    GAUGE = "g", "gauge: diameter over all", "mm", |s| of(s, Figure::Gauge);
    AREA = "A", "section of the core, π d²/4", "mm²", |s| s.area_m2().map(|area| 1e6 * area);
    INERTIA = "I", "second moment of area of the core", "mm⁴", |s| {
        of(s, Figure::Core).map(|mm| PI / 64.0 * mm.powi(4))
    };
    DENSITY = "ρ", "density of the core, or of the plain string", "kg/m³", |s| {
        Some(s.material()?.density.value.to_kg_per_m3())
    };
    MODULUS = "E", "modulus of elasticity in vibration, at the stress of the string", "GPa", |s| {
        s.modulus_gpa(Pace::Fast)
    };
    MODULUS_SLACK = "E₀", "modulus in vibration of the slack string", "GPa", |s| {
        Some(s.modulus(Pace::Fast)?.base.to_gpa())
    };
    MODULUS_RISE = "k", "rise of the modulus with the stress, a pure number", "", |s| {
        Some(s.modulus(Pace::Fast)?.per_stress_ratio)
    };
    MODULUS_MINUTES = "Eₘ", "modulus over minutes, at the stress of the string", "GPa", |s| {
        s.modulus_gpa(Pace::Intermediate)
    };
    MODULUS_SLOW = "Eₛ", "modulus over weeks of the slack string", "GPa", |s| {
        Some(s.modulus(Pace::Slow)?.base.to_gpa())
    };
    SLOW_RISE = "k", "rise of the modulus over weeks with the stress, a pure number", "", |s| {
        Some(s.modulus(Pace::Slow)?.per_stress_ratio)
    };
    STRESS = "σ", "stress in the core, T/A", "MPa", |s| of(s, Figure::Stress);
    STRENGTH = "R", "least strength of the core's material at its diameter", "MPa", |s| {
        Some(of(s, Figure::BreakingLoad)? / (1e6 * s.area_m2()?))
    };
    BREAKS = "F", "least load that breaks the core", "N", |s| of(s, Figure::BreakingLoad);
    PLUCK_AT = "β", "where the finger plucks, as a share of the length", "", |s| {
        Some(s.harp.pluck_ratio)
    };
    ASIDE = "h", "how far the finger pulls the string aside", "mm", |s| {
        Some(s.harp.conditions.pluck.to_mm())
    };
    SLOPES = "κ", "slopes of the two sides for each metre pulled aside", "1/m", Strung::slopes_per_m;
    IN_STEP = "q", "how much the swing of the tension tells on the first partial", "", |s| {
        let (at, first) = (s.harp.pluck_ratio, (PI * s.harp.pluck_ratio).sin() / PI);
        Some(1.0 + first * first / (at * (1.0 - at)))
    };
    SHARPNESS = "B", "inharmonicity coefficient, a pure number", "", |s| of(s, Figure::Inharmonicity);
    SHARPNESS_OF_CORE = "B", "inharmonicity by the stiffness of the core alone", "", Strung::stiffness_b;
    BARE = "b", "bare core at one end", "mm", NONE;
    CORE_SHARE = "r", "mass per metre of the core over that of the whole string", "", Strung::core_share;
    PARTIAL = "n", "number of the partial", "", |s| Some(f64::from(s.harp.conditions.damping_partial));
    PARTIAL_ANY = "n", "number of the partial", "", NONE;
    OF_PARTIAL = "fₙ", "frequency of partial n", "Hz", NONE;
    FLEXIBLE = "f₀", "first partial if the string had no stiffness", "Hz", NONE;
    EIGHTH = "f₈", "eighth partial of the flexible string in its three pieces", "Hz", NONE;
    FIRST = "f₁", "first partial of the flexible string in its three pieces", "Hz", NONE;
    DAMPING = "η", "loss factor of the partial", "", |s| of(s, Figure::Damping);
    LOSS = "ηₑ", "loss factor of the core's material", "", |s| {
        Some(s.material()?.loss_factor.as_ref()?.value)
    };
    STRAIN = "ε", "strain: share by which the string is longer than slack", "", |s| {
        Some(of(s, Figure::Stretch)? / (of(s, Figure::Length)? + allowances().after_length_mm))
    };
    STRETCH = "ΔL", "what the string is stretched by", "mm", |s| of(s, Figure::Stretch);
    CONTACT_STRETCH = "ΔL", "how much longer the way of the string is with the contact pressing", "mm", |s| Some(s.contact()?.stretch_mm);
    AFTER = "a", "string between bridge pin and tuning pin", "mm", |_| Some(allowances().after_length_mm);
    PIN = "P", "diameter of the tuning pin", "mm", |_| Some(allowances().pin_mm);
    TURNS = "N", "turns on the tuning pin", "", |_| Some(allowances().turns);
    KNOT = "K", "what board, rib and knot take", "mm", |_| Some(allowances().knot_mm);
    TAIL = "e", "tail to pull by", "mm", |_| Some(allowances().tail_mm);
    EXPANSION = "α", "expansion of the string, millionths for each kelvin", "", |s| {
        Some(1e6 * s.material()?.expansion_per_k.as_ref()?.value)
    };
    FRAME = "α₀", "expansion of the frame along the string, millionths for each kelvin", "", |s| {
        Some(1e6 * s.harp.conditions.frame_expansion_per_k)
    };
    PLACE = "x", "distance from the bridge pin to the lever or disc", "mm", |s| {
        of(s, Figure::DiscSharp).or_else(|| of(s, Figure::DiscNatural)).or_else(|| of(s, Figure::Lever))
    };
    NATURAL = "x₁", "distance from the bridge pin to the natural disc", "mm", |s| {
        of(s, Figure::DiscNatural)
    };
    PUSH = "δ", "how far lever or disc pushes the string aside", "mm", |s| {
        Some(s.harp.conditions.push.to_mm())
    };
    SOUNDS = "L′", "part of the string that still sounds", "mm", |s| Some(s.contact()?.sounds_mm);
    RAISED_PULL = "T′", "tension with the contact pressing", "N", |s| Some(s.contact()?.pull_n);
    RAISED = "f′", "pitch with the contact pressing", "Hz", |s| {
        Some(of(s, Figure::Frequency)? * pitch::ratio(100.0 * s.contact()?.semitones))
    };
    NOMINAL = "x₀", "distance from the bridge pin to the nominal place", "mm", |s| {
        s.figures.disc_natural.or(s.figures.lever).ok().map(|place| place.nominal.to_mm())
    };
    RAISED_AT_NOMINAL = "f′", "pitch with the contact pressing at the nominal place", "Hz", |s| {
        let cents = 100.0 + of(s, Figure::NominalError)?;
        Some(of(s, Figure::Frequency)? * pitch::ratio(cents))
    };
    UNDER = "D", "diameter that the layer is wound on", "mm", |s| {
        layer(s).and_then(|_| of(s, Figure::Core))
    };
    THICKNESS = "t", "thickness of a layer: the wire, or the flat of a ribbon", "mm", wire_mm;
    WIDTH = "w", "width of a ribbon", "mm", NONE;
    TURN_PITCH = "p", "pitch of the winding: from turn to turn", "mm", |s| {
        Some(wire_mm(s)? / layer(s)?.1)
    };
    COVER = "c", "how much of the pitch the wire covers", "", |s| Some(layer(s)?.1);
    SECTION = "S", "section of the wire or ribbon", "mm²", |s| {
        Some(PI / 4.0 * wire_mm(s)?.powi(2))
    };
    LAYER_DENSITY = "ρ₁", "density of the layer", "kg/m³", |s| Some(layer(s)?.2);
    REFERENCE = "fₐ", "pitch of A4", "Hz", |_| Some(PitchSpec::default().a4_hz);
    CENTS = "C", "cents from A4 to the note in the temperament", "", |s| {
        Some(cents(of(s, Figure::Frequency)? / PitchSpec::default().a4_hz))
    };
    HARP_OCTAVE = "H", "the harpist's octave", "", NONE;
    OCTAVE = "O", "octave of the scientific name, as the 4 in A4", "", NONE;
    STEPS_UP = "U", "by how far a string is raised", "semitones", NONE;
    SIGN_OF_KEY = "V", "sign of its letter in the key: −1 for a flat, 1 for a sharp", "", NONE;
    SIGN_OPEN = "W", "sign to which the string is tuned", "", NONE;
    MOST_RAISED = "M", "the most that its lever or its discs raise it", "semitones", NONE;
    AUDIBLE = "Bₕ", "inharmonicity that listeners begin to hear", "", NONE;
    MOVED_UP = "u", "what the figure moves by with one thing off to one side", "", NONE;
    MOVED_DOWN = "v", "what it moves by with the same thing off to the other side", "", NONE;
    MOVED_MOST = "m", "the greater of the two, whatever its sign", "", NONE;
    SPREAD = "U", "how far the figure may be off, to either side", "", NONE;
    WORST = "W", "how far it may be off with everything at its worst at once", "", NONE;
}
