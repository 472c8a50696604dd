//! The strings of the worked examples, and what the engine makes of them.

use std::f64::consts::PI;

use crate::design::document::{Design, MechanismKind, StringSpec};
use crate::design::make_up_text;
use crate::design::resolve::resolve;
use crate::engine::analysis::{Harp, HarpString, StringFigures, analyse};
use crate::engine::construction::MakeUp;
use crate::engine::material::{Material, Modulus, Pace};
use crate::engine::mechanics::{Core, inharmonicity};
use crate::engine::units::Stress;
use crate::words::{Words, numbers as say};

/// The string of an example.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Worked {
    /// Nylon, as in the middle of a harp, with a lever.
    Nylon,
    /// The same with one disc.
    Disc,
    /// The same with two discs.
    Discs,
    /// Music wire.
    Steel,
    /// Bronze on steel, with bare ends.
    Wound,
}

impl Worked {
    /// Note, length in millimetres, make-up as typed, and what raises the string.
    const fn typed(self) -> (&'static str, &'static str, &'static str, MechanismKind) {
        const NYLON: &str = "nylon 0.81";
        match self {
            Self::Nylon => ("A4", "448", NYLON, MechanismKind::Lever),
            Self::Disc => ("A4", "448", NYLON, MechanismKind::SingleDisc),
            Self::Discs => ("A4", "448", NYLON, MechanismKind::DoubleDisc),
            Self::Steel => ("A5", "250", "steel 0.30", MechanismKind::Lever),
            Self::Wound => (
                "A2",
                "900",
                "steel 0.50 + bronze 0.30, bare 12 board 15 pin",
                MechanismKind::Lever,
            ),
        }
    }

    /// The string in words.
    pub(super) const fn in_words(self) -> Words {
        match self {
            Self::Nylon => say::EXAMPLE_NYLON,
            Self::Disc => say::EXAMPLE_DISC,
            Self::Discs => say::EXAMPLE_DISCS,
            Self::Steel => say::EXAMPLE_STEEL,
            Self::Wound => say::EXAMPLE_WOUND,
        }
    }

    /// The string with its figures, all settings being the usual ones.
    pub(super) fn string(self) -> Strung {
        let (note, length, make_up, mechanism) = self.typed();
        let spec = StringSpec {
            note: note.to_owned(),
            length: length.to_owned(),
            make_up: make_up_text::read(make_up).unwrap_or_default(),
            mechanism: Some(mechanism),
            ..StringSpec::default()
        };
        let harp = resolve(&Design { strings: vec![spec], ..Design::default() }).harp;
        let figures = analyse(&harp).strings.swap_remove(0);
        Strung { harp, figures }
    }
}

/// A string with a lever or a disc pressing.
pub(super) struct Contact {
    pub(super) semitones: f64,
    pub(super) sounds_mm: f64,
    pub(super) stretch_mm: f64,
    pub(super) pull_n: f64,
}

/// A string of an example and its figures.
pub(super) struct Strung {
    pub(super) harp: Harp,
    pub(super) figures: StringFigures,
}

impl Strung {
    /// What lever or disc do, at the place that the engine found: geometry, as on the page.
    pub(super) fn contact(&self) -> Option<Contact> {
        let figures = &self.figures;
        let (length, push) = (figures.length.ok()?.to_mm(), self.harp.conditions.push.to_mm());
        let natural = figures.disc_natural.ok().map(|place| place.distance.to_mm());
        let sharp = figures.disc_sharp.ok().map(|place| place.distance.to_mm());
        let lever = figures.lever.ok().map(|place| place.distance.to_mm());
        let first = natural.or(lever)?;
        let place = sharp.unwrap_or(first);
        let sounds_mm = (length - place).hypot(push);
        let stretch_mm = first.hypot(push) + (place - first) + sounds_mm - length;
        let between = self.harp.conditions.allowance.between_fixings(figures.length.ok()?);
        let rigidity = 1e9 * self.modulus_gpa(Pace::Intermediate)? * self.area_m2()?;
        let pull_n = figures.tension.ok()?.to_n() + rigidity * stretch_mm / between.to_mm();
        let semitones = if sharp.is_some() { 2.0 } else { 1.0 };
        Some(Contact { semitones, sounds_mm, stretch_mm, pull_n })
    }

    fn string(&self) -> &HarpString {
        &self.harp.strings[0]
    }

    pub(super) fn make_up(&self) -> Option<&MakeUp> {
        self.string().make_up.as_ref().ok()
    }

    pub(super) fn material(&self) -> Option<&Material> {
        Some(self.make_up()?.core()?.0.as_ref())
    }

    /// Section of the core in square metres.
    pub(super) fn area_m2(&self) -> Option<f64> {
        self.figures.core.ok().map(|core| PI / 4.0 * core.to_m().powi(2))
    }

    pub(super) fn modulus(&self, pace: Pace) -> Option<Modulus> {
        self.material()?.modulus_at(pace)
    }

    /// The modulus at the stress of the string, in gigapascals.
    pub(super) fn modulus_gpa(&self, pace: Pace) -> Option<f64> {
        let stress: Stress = self.figures.stress.ok()?;
        Some(self.modulus(pace)?.at(stress).to_gpa())
    }

    /// Inharmonicity by the stiffness of the core alone.
    pub(super) fn stiffness_b(&self) -> Option<f64> {
        let (length, tension) = (self.figures.length.ok()?, self.figures.tension.ok()?);
        let core = Core { diameter: self.figures.core.ok()?, modulus: self.modulus(Pace::Fast)? };
        Some(inharmonicity(core, length, tension))
    }

    /// Share of the core in the mass per metre.
    pub(super) fn core_share(&self) -> Option<f64> {
        let core = self.make_up()?.core_linear_density()?;
        Some(core.to_kg_per_m() / self.figures.linear_density.ok()?.to_kg_per_m())
    }

    /// The sum of the two slopes of a plucked string for each metre, `κ`.
    pub(super) fn slopes_per_m(&self) -> Option<f64> {
        let ratio = self.harp.pluck_ratio;
        Some(1.0 / (self.figures.length.ok()?.to_m() * ratio * (1.0 - ratio)))
    }
}
