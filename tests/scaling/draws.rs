//! Harps drawn at random, some of them hostile; the same ones in every run.

use std::sync::Arc;

use stringloft::engine::analysis::{HarpString, Known, Limits, Mechanism, Unknown};
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::material::Material;
use stringloft::engine::units::{Force, Frequency, Length, LinearDensity};

/// Numbers that no length and no pitch may have.
pub const HOSTILE: [f64; 10] = [
    0.0,
    -0.0,
    -1.0,
    f64::NAN,
    f64::INFINITY,
    f64::NEG_INFINITY,
    1e300,
    -1e300,
    f64::MIN_POSITIVE,
    1e-300,
];

/// A linear congruential generator: `x ← a x + c` modulo 2⁶⁴, of which the upper half is used.
///
/// Source: the constants are D. E. Knuth's for MMIX, from memory; nothing here rests on their quality.
pub struct Draws(u64);

impl Draws {
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    fn next(&mut self) -> u32 {
        const A: u64 = 6_364_136_223_846_793_005;
        const C: u64 = 1_442_695_040_888_963_407;
        self.0 = self.0.wrapping_mul(A).wrapping_add(C);
        u32::try_from(self.0 >> 32).expect("the upper half has 32 bits")
    }

    /// From 0 up to 1, without 1.
    fn share(&mut self) -> f64 {
        f64::from(self.next()) / 4_294_967_296.0
    }

    pub fn below(&mut self, count: usize) -> usize {
        self.next() as usize % count
    }

    pub fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * self.share()
    }

    /// Evenly over the logarithm.
    pub fn between_log(&mut self, least: f64, most: f64) -> f64 {
        least * (most / least).powf(self.share())
    }

    pub fn one_of(&mut self, materials: &[Arc<Material>]) -> Arc<Material> {
        Arc::clone(&materials[self.below(materials.len())])
    }

    /// A number of the instrument, or one far out of it, or a hostile one.
    fn number(&mut self, least: f64, most: f64) -> f64 {
        match self.below(10) {
            0 => HOSTILE[self.below(HOSTILE.len())],
            1 => self.between_log(1e-12, 1e12),
            _ => self.between_log(least, most),
        }
    }

    fn known<T>(&mut self, value: T, why: Unknown) -> Known<T> {
        if self.below(20) == 0 { Err(why) } else { Ok(value) }
    }

    pub fn harp_string(&mut self, materials: &[Arc<Material>]) -> HarpString {
        let frequency = Frequency::from_hz(self.number(30.0, 3200.0));
        let length = Length::from_mm(self.number(60.0, 1600.0));
        HarpString {
            note: None,
            frequency: self.known(frequency, Unknown::Pitch),
            length: self.known(length, Unknown::Length),
            make_up: self.make_up(materials),
            mechanism: self.mechanism(),
        }
    }

    fn mechanism(&mut self) -> Mechanism {
        let all = [Mechanism::None, Mechanism::Lever, Mechanism::SingleDisc, Mechanism::DoubleDisc];
        all[self.below(all.len())]
    }

    /// Whatever the constructors let through, and `MakeUp` where they let nothing through.
    fn make_up(&mut self, materials: &[Arc<Material>]) -> Known<MakeUp> {
        let core = self.one_of(materials);
        let diameter = Length::from_mm(self.number(0.05, 10.0));
        let made = match self.below(3) {
            0 => MakeUp::plain(core, diameter),
            1 => {
                let layers = (0..self.below(4)).map(|_| self.layer(materials)).collect();
                let bare = (
                    Length::from_mm(self.number(0.01, 60.0)),
                    Length::from_mm(self.number(0.01, 60.0)),
                );
                MakeUp::wound(core, diameter, layers, bare)
            }
            _ => {
                let mass = LinearDensity::from_g_per_m(self.number(0.001, 1000.0));
                let core = (self.below(2) == 0).then_some((core, diameter));
                let gauge =
                    (self.below(2) == 0).then_some(Length::from_mm(self.number(0.05, 10.0)));
                let load = (self.below(2) == 0).then_some(Force::from_n(self.number(1.0, 3000.0)));
                MakeUp::weighed(mass, core, gauge, load)
            }
        };
        made.map_err(|_| Unknown::MakeUp)
    }

    fn layer(&mut self, materials: &[Arc<Material>]) -> Layer {
        let thickness = Length::from_mm(self.number(0.05, 2.0));
        let section = if self.below(2) == 0 {
            Section::Round { diameter: thickness }
        } else {
            Section::Ribbon { thickness, width: Length::from_mm(self.number(0.05, 3.0)) }
        };
        Layer { material: self.one_of(materials), section, packing_ratio: self.number(0.05, 1.0) }
    }

    pub fn pluck_ratio(&mut self) -> f64 {
        self.number(0.05, 0.95)
    }

    /// What a maker may allow; always numbers, as the fields of a design are checked when typed.
    pub fn limits(&mut self) -> Limits {
        let mut limits = super::limits();
        limits.working_share_percent = self.between(1.0, 200.0);
        limits.slack_share_percent = self.between(0.1, 100.0);
        limits.least_tension = Force::from_n(self.between_log(1e-3, 1e4));
        limits.partial_8_cents = self.between(0.0, 100.0);
        limits.jump_percent = self.between(0.0, 100.0);
        limits
    }
}
