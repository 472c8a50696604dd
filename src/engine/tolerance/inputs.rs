//! What of a string may be off, by how much, and the string with it moved.

use std::sync::Arc;

use super::Cause;
use crate::engine::analysis::{Harp, HarpString, Mechanism, StringFigures, Unknown};
use crate::engine::construction::{MakeUp, Section};
use crate::engine::material::{Material, Sourced, Tolerance};
use crate::engine::pitch;
use crate::engine::units::{Density, Frequency, Length, LinearDensity};

/// One thing that may be off.
#[derive(Clone, Copy)]
pub(super) enum Input<'a> {
    /// Diameter of a plain string or a core, in metres.
    Core,
    /// Thickness of a layer, in metres.
    Layer(usize),
    /// Overall diameter of a weighed string, in metres.
    Gauge,
    /// Density of a material in all parts that are of it, as a share.
    Density(&'a Arc<Material>),
    /// Mass per metre of a weighed string, as a share.
    Mass,
    /// Vibrating length, in metres.
    Length,
    /// Pitch, in cents.
    Pitch,
    /// Push of a lever or a disc, in metres.
    Push,
}

/// What may be off, for which cause, and by how much.
pub(super) fn inputs<'a>(
    string: &'a HarpString,
    harp: &Harp,
    figures: &StringFigures,
) -> Vec<(Cause, Input<'a>, f64)> {
    let usual = harp.conditions.tolerances;
    let mut inputs = Vec::with_capacity(8);
    if string.length.is_ok() {
        inputs.push((Cause::Length, Input::Length, usual.length.to_m()));
    }
    if string.frequency.is_ok() {
        inputs.push((Cause::Pitch, Input::Pitch, usual.pitch_cents));
    }
    if string.mechanism != Mechanism::None {
        inputs.push((Cause::Push, Input::Push, usual.push.to_m()));
    }
    if let Ok(cents) = figures.cents_per_kelvin {
        inputs.push((Cause::Temperature, Input::Pitch, cents.abs() * usual.temperature_k));
    }
    let thickness = |material: &Material, diameter: Length| {
        let stated = material.diameter_tolerance.as_ref();
        stated.map_or(usual.diameter, |t: &Sourced<Tolerance>| t.value.at(diameter)).to_m()
    };
    let density = |material: &'a Arc<Material>| {
        let stated = material.density_tolerance_ratio.as_ref();
        (Cause::Density, Input::Density(material), stated.map_or(usual.density_ratio, |t| t.value))
    };
    let Ok(make_up) = &string.make_up else { return above_zero(inputs) };
    if let Some((material, diameter)) = make_up.core() {
        inputs.push((Cause::Diameter, Input::Core, thickness(material, diameter)));
    }
    match make_up {
        MakeUp::Plain { material, .. } => inputs.push(density(material)),
        MakeUp::Wound(wound) => {
            let mut materials = vec![&wound.core];
            for (place, layer) in wound.layers.iter().enumerate() {
                let off = thickness(&layer.material, layer.section.thickness());
                inputs.push((Cause::Diameter, Input::Layer(place), off));
                if !materials.iter().any(|other| is_same(other, &layer.material)) {
                    materials.push(&layer.material);
                }
            }
            inputs.extend(materials.into_iter().map(density));
        }
        MakeUp::Weighed(weighed) => {
            inputs.push((Cause::Density, Input::Mass, usual.density_ratio));
            if weighed.gauge.is_some() && weighed.gauge != make_up.core().map(|core| core.1) {
                inputs.push((Cause::Diameter, Input::Gauge, usual.diameter.to_m()));
            }
        }
    }
    above_zero(inputs)
}

fn above_zero(mut inputs: Vec<(Cause, Input<'_>, f64)>) -> Vec<(Cause, Input<'_>, f64)> {
    inputs.retain(|(_, _, off)| *off > 0.0);
    inputs
}

/// Whether two parts are of one material.
fn is_same(one: &Arc<Material>, other: &Arc<Material>) -> bool {
    Arc::ptr_eq(one, other) || one.key == other.key
}

impl Input<'_> {
    /// The string with this input moved; `None` where it cannot be moved so far.
    pub(super) fn moved(self, string: &HarpString, by: f64) -> Option<HarpString> {
        let mut moved = string.clone();
        match self {
            Self::Length => moved.length = shifted(moved.length.ok()?, by).ok_or(Unknown::Length),
            Self::Pitch => {
                let hz = moved.frequency.ok()?.to_hz() * pitch::ratio(by);
                moved.frequency = Ok(Frequency::from_hz(hz));
            }
            Self::Core => match moved.make_up.as_mut().ok()? {
                MakeUp::Plain { diameter, .. } => *diameter = shifted(*diameter, by)?,
                MakeUp::Wound(wound) => wound.core_diameter = shifted(wound.core_diameter, by)?,
                MakeUp::Weighed(weighed) => {
                    let core = &mut weighed.core.as_mut()?.1;
                    let is_plain = weighed.gauge == Some(*core);
                    *core = shifted(*core, by)?;
                    if is_plain {
                        weighed.gauge = Some(*core);
                    }
                }
            },
            Self::Layer(place) => {
                if let MakeUp::Wound(wound) = moved.make_up.as_mut().ok()? {
                    match &mut wound.layers.get_mut(place)?.section {
                        Section::Round { diameter: t } | Section::Ribbon { thickness: t, .. } => {
                            *t = shifted(*t, by)?;
                        }
                    }
                }
            }
            Self::Density(material) => {
                let changed = with_density(material, 1.0 + by)?;
                match moved.make_up.as_mut().ok()? {
                    MakeUp::Plain { material, .. } => *material = changed,
                    MakeUp::Wound(wound) => {
                        let layers = wound.layers.iter_mut().map(|layer| &mut layer.material);
                        for part in layers.chain([&mut wound.core]) {
                            if is_same(part, material) {
                                *part = Arc::clone(&changed);
                            }
                        }
                    }
                    MakeUp::Weighed(_) => {}
                }
            }
            // Not of the string: it is moved with the conditions.
            Self::Push => {}
            Self::Gauge => {
                if let MakeUp::Weighed(weighed) = moved.make_up.as_mut().ok()? {
                    weighed.gauge = Some(shifted(weighed.gauge?, by)?);
                }
            }
            Self::Mass => {
                if let MakeUp::Weighed(weighed) = moved.make_up.as_mut().ok()? {
                    let kg_per_m = weighed.linear_density.to_kg_per_m() * (1.0 + by);
                    weighed.linear_density = LinearDensity::from_kg_per_m(kg_per_m);
                    if kg_per_m <= 0.0 {
                        return None;
                    }
                }
            }
        }
        Some(moved)
    }
}

/// A length that is longer by some metres; `None` where nothing would be left.
fn shifted(length: Length, by_m: f64) -> Option<Length> {
    let m = length.to_m() + by_m;
    (m > 0.0).then_some(Length::from_m(m))
}

/// A material of another density. The names and sources are left out, as no figure needs them and to
/// copy them takes longer than to work out a string.
fn with_density(material: &Material, factor: f64) -> Option<Arc<Material>> {
    fn plain<T: Clone>(fact: &Option<Sourced<T>>) -> Option<Sourced<T>> {
        let fact = fact.as_ref()?;
        Some(Sourced { value: fact.value.clone(), source: String::new(), standing: fact.standing })
    }
    let kg_per_m3 = material.density.value.to_kg_per_m3() * factor;
    (kg_per_m3 > 0.0).then(|| {
        Arc::new(Material {
            key: String::new(),
            name: String::new(),
            class: material.class,
            density: Sourced {
                value: Density::from_kg_per_m3(kg_per_m3),
                source: String::new(),
                standing: material.density.standing,
            },
            modulus: plain(&material.modulus),
            intermediate_modulus: plain(&material.intermediate_modulus),
            slow_modulus: plain(&material.slow_modulus),
            strength: plain(&material.strength),
            expansion_per_k: plain(&material.expansion_per_k),
            loss_factor: plain(&material.loss_factor),
            diameter_tolerance: None,
            density_tolerance_ratio: None,
        })
    })
}
