//! Strings whose every input is drawn at random within its tolerance: what the first order is checked
//! against. Nothing here uses the code that is checked; a string is built again for each draw, with the
//! public constructors, and tuned and warmed by the laws of the string themselves.

use std::sync::Arc;

use stringloft::engine::analysis::{Conditions, Harp, HarpString, StringFigures, analyse};
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::figure::Figure;
use stringloft::engine::material::{Class, Material, Pace, Sourced};
use stringloft::engine::mechanics::{Core, pitch, stress, tension};
use stringloft::engine::tolerance::Cause;
use stringloft::engine::units::{Density, Force, Frequency, Length, LinearDensity};

/// A generator of numbers that look random, the same ones from the same seed.
///
/// Source: `SplitMix64` of G. L. Steele, D. Lea and C. H. Flood, Fast splittable pseudorandom number
/// generators, OOPSLA 2014 (from memory); nothing here rests on more than its evenness, which
/// `the_draws_are_even` holds.
pub struct Draws(u64);

impl Draws {
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// Evenly from −1 to 1.
    pub fn side(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^= z >> 31;
        let upper = u32::try_from(z >> 32).expect("the upper half has 32 bits");
        f64::from(upper) / f64::from(u32::MAX) * 2.0 - 1.0
    }
}

/// Which causes take part in a draw.
pub struct Lot<'a> {
    draws: &'a mut Draws,
    only: Option<Cause>,
}

impl<'a> Lot<'a> {
    pub const fn new(draws: &'a mut Draws, only: Option<Cause>) -> Self {
        Self { draws, only }
    }

    /// How far off one input is, which may be off by `tolerance`.
    fn off(&mut self, cause: Cause, tolerance: f64) -> f64 {
        let side = self.draws.side();
        if self.only.is_none_or(|only| only == cause) { side * tolerance } else { 0.0 }
    }

    fn diameter(&mut self, material: &Material, nominal: Length, harp: &Harp) -> Length {
        let usual = harp.conditions.tolerances.diameter;
        let stated = material.diameter_tolerance.as_ref().map(|t| t.value.at(nominal));
        let off_mm = self.off(Cause::Diameter, stated.unwrap_or(usual).to_mm());
        Length::from_mm(nominal.to_mm() + off_mm)
    }

    fn material(&mut self, material: &Material, harp: &Harp) -> Arc<Material> {
        let usual = harp.conditions.tolerances.density_ratio;
        let ratio = material.density_tolerance_ratio.as_ref().map_or(usual, |t| t.value);
        let times = 1.0 + self.off(Cause::Density, ratio);
        let density = Density::from_kg_per_m3(material.density.value.to_kg_per_m3() * times);
        Arc::new(Material {
            density: Sourced { value: density, ..material.density.clone() },
            ..material.clone()
        })
    }
}

/// The figures of one string with its inputs drawn.
pub fn drawn(lot: &mut Lot<'_>, harp: &Harp) -> Vec<Option<f64>> {
    let string = &harp.strings[0];
    let off = harp.conditions.tolerances;
    let length_mm = string.length.expect("the length is given").to_mm();
    let length = Length::from_mm(length_mm + lot.off(Cause::Length, off.length.to_mm()));
    let cents = lot.off(Cause::Pitch, off.pitch_cents);
    let hz = string.frequency.expect("the pitch is given").to_hz() * (cents / 1200.0).exp2();
    let make_up = make_up(lot, string.make_up.as_ref().expect("the string can be made"), harp);
    let tuned = HarpString {
        note: None,
        frequency: Ok(Frequency::from_hz(hz)),
        length: Ok(length),
        make_up: Ok(make_up),
        mechanism: string.mechanism,
    };
    let warmth_k = lot.off(Cause::Temperature, off.temperature_k);
    let frequency = warmed(&tuned, warmth_k, harp);
    let push_mm = harp.conditions.push.to_mm() + lot.off(Cause::Push, off.push.to_mm());
    let push = Length::from_mm(push_mm);
    let cold = all_figures(harp, tuned.clone(), push);
    let warm = all_figures(harp, HarpString { frequency: Ok(frequency), ..tuned }, push);
    let values = Figure::ALL.into_iter().map(|figure| {
        // What was done while tuning is done.
        let then = matches!(figure, Figure::Stretch | Figure::PinTurns);
        figure.value(if then { &cold } else { &warm }).ok()
    });
    values.collect()
}

fn make_up(lot: &mut Lot<'_>, nominal: &MakeUp, harp: &Harp) -> MakeUp {
    let core = nominal.core().map(|(material, diameter)| {
        let diameter = lot.diameter(material, diameter, harp);
        (lot.material(material, harp), diameter)
    });
    let made = match nominal {
        MakeUp::Plain { .. } => {
            let (material, diameter) = core.expect("a plain string is its own core");
            MakeUp::plain(material, diameter)
        }
        MakeUp::Wound(_) => {
            let (material, diameter) = core.expect("a wound string has a core");
            let layers = nominal.layers().iter().map(|layer| {
                let thickness = lot.diameter(&layer.material, layer.section.thickness(), harp);
                let section = match layer.section {
                    Section::Round { .. } => Section::Round { diameter: thickness },
                    Section::Ribbon { width, .. } => Section::Ribbon { thickness, width },
                };
                let material = lot.material(&layer.material, harp);
                Layer { material, section, packing_ratio: layer.packing_ratio }
            });
            MakeUp::wound(material, diameter, layers.collect(), nominal.bare_ends())
        }
        _ => {
            let off = harp.conditions.tolerances;
            let times = 1.0 + lot.off(Cause::Density, off.density_ratio);
            let mass = LinearDensity::from_g_per_m(nominal.linear_density().to_g_per_m() * times);
            let gauge_mm = nominal.gauge().expect("the gauge is given").to_mm();
            let gauge_mm = gauge_mm + lot.off(Cause::Diameter, off.diameter.to_mm());
            MakeUp::weighed(mass, core, Some(Length::from_mm(gauge_mm)), None)
        }
    };
    made.expect("the drawn string can be made")
}

/// The pitch of a tuned string after it has become warmer: it loses `E A (α − α_frame) θ` of its pull,
/// and sounds what the stiff string then sounds.
fn warmed(tuned: &HarpString, warmth_k: f64, harp: &Harp) -> Frequency {
    let (frequency, length) =
        (tuned.frequency.expect("drawn above"), tuned.length.expect("drawn above"));
    let make_up = tuned.make_up.as_ref().expect("drawn above");
    let Some((material, diameter)) = make_up.core() else { return frequency };
    if material.class != Class::Metal {
        return frequency;
    }
    let Some(expansion) = material.expansion_per_k.as_ref() else { return frequency };
    let modulus = material.modulus.as_ref().expect("the metals of this test have one").value;
    let core = Some(Core { diameter, modulus });
    let density = make_up.linear_density();
    let pull = tension(density, length, frequency, core);
    let seconds = material.modulus_at(Pace::Intermediate).expect("a metal has one modulus");
    let area_m2 = std::f64::consts::FRAC_PI_4 * diameter.to_m() * diameter.to_m();
    let rigidity_n = seconds.at(stress(pull, diameter)).to_pa() * area_m2;
    let expands = expansion.value - harp.conditions.frame_expansion_per_k;
    let left = Force::from_n(pull.to_n() - rigidity_n * expands * warmth_k);
    pitch(density, length, left, core)
}

fn all_figures(harp: &Harp, string: HarpString, push: Length) -> StringFigures {
    let harp = Harp {
        strings: vec![string],
        pluck_ratio: harp.pluck_ratio,
        conditions: Conditions { push, ..harp.conditions.clone() },
        limits: harp.limits.clone(),
    };
    analyse(&harp).strings.remove(0)
}
