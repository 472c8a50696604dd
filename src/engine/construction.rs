//! How a string is made: plain, wound or weighed; its mass per metre, and what carries the pull.

use std::f64::consts::PI;
use std::sync::Arc;

use thiserror::Error;

use super::material::Material;
use super::units::{Force, Length, LinearDensity, Stress};
use crate::words::{Words, engine as say, numeral};

/// The least and the greatest diameter that a string, core or layer may have.
pub const DIAMETER_MM: (f64, f64) = (0.05, 10.0);
/// The least and the greatest packing of a layer: the share of its pitch that the wire covers.
pub const PACKING: (f64, f64) = (0.05, 1.0);
/// The least and greatest mass per metre of a weighed string.
pub const WEIGHED_G_PER_M: (f64, f64) = (0.001, 1_000.0);

/// What is wound, seen in section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Section {
    /// Round wire.
    Round { diameter: Length },
    /// Flat ribbon, its width along the string.
    Ribbon { thickness: Length, width: Length },
}

impl Section {
    /// How far the layer stands out from what is under it.
    pub const fn thickness(self) -> Length {
        match self {
            Self::Round { diameter } => diameter,
            Self::Ribbon { thickness, .. } => thickness,
        }
    }

    const fn width(self) -> Length {
        match self {
            Self::Round { diameter } => diameter,
            Self::Ribbon { width, .. } => width,
        }
    }

    fn area_m2(self) -> f64 {
        match self {
            Self::Round { diameter } => area_m2(diameter),
            Self::Ribbon { thickness, width } => thickness.to_m() * width.to_m(),
        }
    }
}

/// A layer wound on a core or on the layer below.
#[derive(Clone, Debug, PartialEq)]
pub struct Layer {
    /// What it is made of.
    pub material: Arc<Material>,
    /// Its section.
    pub section: Section,
    /// Width over pitch of the helix: 1 where the turns touch.
    pub packing_ratio: f64,
}

impl Layer {
    /// Mass of the layer for each metre of string, wound over the diameter `under`.
    ///
    /// The exact helix: `ρ a √((π(D + t))² + p²) / p` with section `a`, thickness `t` and pitch `p`;
    /// one turn is the diagonal of the mean circumference and the pitch. The area of the section is
    /// kept; a wire that flattens as it is wound is outside this.
    ///
    /// # Source
    ///
    /// Geometry. For close turns it goes over into the usual `ρ π²/4 · w (D + w)` (N. H. Fletcher and
    /// T. D. Rossing, *The Physics of Musical Instruments*, from memory) as the pitch grows small
    /// against the circumference.
    fn linear_density(&self, under: Length) -> LinearDensity {
        let pitch = self.section.width().to_m() / self.packing_ratio;
        let turn = PI * (under.to_m() + self.section.thickness().to_m());
        let density = self.material.density.value.to_kg_per_m3();
        LinearDensity::from_kg_per_m(density * self.section.area_m2() * turn.hypot(pitch) / pitch)
    }
}

/// A core with what is wound on it.
#[derive(Clone, Debug, PartialEq)]
pub struct Wound {
    pub(super) core: Arc<Material>,
    pub(super) core_diameter: Length,
    pub(super) layers: Vec<Layer>,
    bare: (Length, Length),
}

/// A bought string whose mass was found by weighing.
#[derive(Clone, Debug, PartialEq)]
pub struct Weighed {
    pub(super) linear_density: LinearDensity,
    pub(super) core: Option<(Arc<Material>, Length)>,
    pub(super) gauge: Option<Length>,
    breaking_load: Option<Force>,
}

/// What a string is made of. The constructors check; so every value can be computed with.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum MakeUp {
    /// One round filament or wire.
    Plain { material: Arc<Material>, diameter: Length },
    /// A core with layers.
    Wound(Wound),
    /// Known by its mass per metre.
    Weighed(Weighed),
}

/// Why a string cannot be made as it is written.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum ConstructionError {
    /// A diameter or thickness is out of reach.
    #[error("{}", say::diameter(&numeral(*.got_mm), &numeral(DIAMETER_MM.0), &numeral(DIAMETER_MM.1), .part))]
    Diameter { part: Words, got_mm: f64 },
    /// A packing out of reach.
    #[error(
        "{}",
        say::packing(&numeral(*.got_percent), &numeral(PACKING.0 * 100.0), &numeral(PACKING.1 * 100.0))
    )]
    Packing { got_percent: f64 },
    /// A wound string without a layer.
    #[error("{}", say::NO_LAYER)]
    NoLayer,
    /// A bare end that is negative or no number.
    #[error("{}", say::bare_end(&numeral(*.got_mm)))]
    BareEnd { got_mm: f64 },
    /// A weighed mass out of reach.
    #[error(
        "{}",
        say::mass(&numeral(*.got_g_per_m), &numeral(WEIGHED_G_PER_M.0), &numeral(WEIGHED_G_PER_M.1))
    )]
    Mass { got_g_per_m: f64 },
    /// A core as thick as the string or thicker.
    #[error("{}", say::core_too_thick(&numeral(*.core_mm), &numeral(*.gauge_mm)))]
    Core { core_mm: f64, gauge_mm: f64 },
    /// A breaking load that is not above nothing.
    #[error("{}", say::breaking_load(&numeral(*.got_n)))]
    BreakingLoad { got_n: f64 },
}

impl MakeUp {
    /// A plain string.
    ///
    /// # Errors
    ///
    /// When the diameter is outside [`DIAMETER_MM`].
    pub fn plain(material: Arc<Material>, diameter: Length) -> Result<Self, ConstructionError> {
        check_diameter(say::PART_STRING, diameter)?;
        Ok(Self::Plain { material, diameter })
    }

    /// A core with layers from the inside out, and bare core at the board end and at the pin end.
    ///
    /// # Errors
    ///
    /// When there is no layer, or a diameter, packing or bare end is out of reach.
    pub fn wound(
        core: Arc<Material>,
        core_diameter: Length,
        layers: Vec<Layer>,
        bare: (Length, Length),
    ) -> Result<Self, ConstructionError> {
        check_diameter(say::PART_CORE, core_diameter)?;
        if layers.is_empty() {
            return Err(ConstructionError::NoLayer);
        }
        for layer in &layers {
            check_diameter(say::PART_WIRE, layer.section.thickness())?;
            check_diameter(say::PART_RIBBON, layer.section.width())?;
            if !(PACKING.0..=PACKING.1).contains(&layer.packing_ratio) {
                let got_percent = layer.packing_ratio * 100.0;
                return Err(ConstructionError::Packing { got_percent });
            }
        }
        for end in [bare.0, bare.1] {
            if !(end.to_mm() >= 0.0 && end.to_mm().is_finite()) {
                return Err(ConstructionError::BareEnd { got_mm: end.to_mm() });
            }
        }
        Ok(Self::Wound(Wound { core, core_diameter, layers, bare }))
    }

    /// A string known by its mass per metre; what else was measured is optional.
    ///
    /// # Errors
    ///
    /// When the mass or a diameter is out of reach, the core as thick as the string, or the breaking
    /// load not above 0.
    pub fn weighed(
        linear_density: LinearDensity,
        core: Option<(Arc<Material>, Length)>,
        gauge: Option<Length>,
        breaking_load: Option<Force>,
    ) -> Result<Self, ConstructionError> {
        let got_g_per_m = linear_density.to_g_per_m();
        if !(WEIGHED_G_PER_M.0..=WEIGHED_G_PER_M.1).contains(&got_g_per_m) {
            return Err(ConstructionError::Mass { got_g_per_m });
        }
        if let Some((_, diameter)) = &core {
            check_diameter(say::PART_CORE, *diameter)?;
        }
        if let Some(gauge) = gauge {
            check_diameter(say::PART_STRING, gauge)?;
            if let Some((_, diameter)) = &core {
                let (core_mm, gauge_mm) = (diameter.to_mm(), gauge.to_mm());
                // A plain string may be weighed too: then the two are the same.
                if core_mm > gauge_mm {
                    return Err(ConstructionError::Core { core_mm, gauge_mm });
                }
            }
        }
        match breaking_load.map(Force::to_n) {
            Some(got_n) if !(got_n > 0.0 && got_n.is_finite()) => {
                Err(ConstructionError::BreakingLoad { got_n })
            }
            _ => Ok(Self::Weighed(Weighed { linear_density, core, gauge, breaking_load })),
        }
    }

    /// Mass per metre: `ρ π d²/4` of the core and the exact helix of each layer.
    pub fn linear_density(&self) -> LinearDensity {
        match self {
            Self::Plain { material, diameter } => solid(material, *diameter),
            Self::Wound(wound) => {
                let mut sum = solid(&wound.core, wound.core_diameter).to_kg_per_m();
                let mut outer = wound.core_diameter;
                for layer in &wound.layers {
                    sum += layer.linear_density(outer).to_kg_per_m();
                    outer = over(outer, layer);
                }
                LinearDensity::from_kg_per_m(sum)
            }
            Self::Weighed(weighed) => weighed.linear_density,
        }
    }

    /// Diameter of a plain string, overall diameter of a wound one.
    pub fn gauge(&self) -> Option<Length> {
        match self {
            Self::Plain { diameter, .. } => Some(*diameter),
            Self::Wound(wound) => Some(wound.layers.iter().fold(wound.core_diameter, over)),
            Self::Weighed(weighed) => weighed.gauge,
        }
    }

    /// What carries the pull: material and diameter of the core, or of the whole plain string. The
    /// layers carry none.
    pub fn core(&self) -> Option<(&Arc<Material>, Length)> {
        match self {
            Self::Plain { material, diameter } => Some((material, *diameter)),
            Self::Wound(wound) => Some((&wound.core, wound.core_diameter)),
            Self::Weighed(weighed) => weighed.core.as_ref().map(|(m, d)| (m, *d)),
        }
    }

    /// Whether the two are one string to buy: of the same materials, with all that was measured the same but for the
    /// last digits of a unit's conversion. Bare ends are not asked about, as they are made when a string is wound for
    /// its harp.
    pub fn is_alike(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Plain { .. }, Self::Plain { .. }) => same_core(self.core(), other.core()),
            (Self::Wound(one), Self::Wound(two)) => {
                let same = |(one, two): (&Layer, &Layer)| {
                    let (section, second) = (one.section, two.section);
                    let kind = matches!(section, Section::Ribbon { .. })
                        == matches!(second, Section::Ribbon { .. });
                    kind && same_length(section.thickness(), second.thickness())
                        && same_length(section.width(), second.width())
                        && near(one.packing_ratio, two.packing_ratio)
                        && one.material == two.material
                };
                one.layers.len() == two.layers.len()
                    && same_core(self.core(), other.core())
                    && one.layers.iter().zip(&two.layers).all(same)
            }
            (Self::Weighed(one), Self::Weighed(two)) => {
                let gauges = (one.gauge.map(Length::to_m), two.gauge.map(Length::to_m));
                let loads =
                    (one.breaking_load.map(Force::to_n), two.breaking_load.map(Force::to_n));
                let mass = |weighed: &Weighed| weighed.linear_density.to_kg_per_m();
                near(mass(one), mass(two))
                    && same_core(self.core(), other.core())
                    && both_near(gauges)
                    && both_near(loads)
            }
            _ => false,
        }
    }

    /// Layers from the inside out; none for a plain or a weighed string.
    pub fn layers(&self) -> &[Layer] {
        match self {
            Self::Wound(wound) => &wound.layers,
            _ => &[],
        }
    }

    /// Whether two strings are of the same materials in the same order.
    pub fn has_materials_of(&self, other: &Self) -> bool {
        let keys = |make_up: &Self| {
            let layers = make_up.layers().iter().map(|layer| layer.material.key.clone());
            let core = make_up.core().map(|(material, _)| material.key.clone());
            core.into_iter().chain(layers).collect::<Vec<_>>()
        };
        keys(self) == keys(other)
    }

    /// Bare core at the board end and at the pin end.
    pub fn bare_ends(&self) -> (Length, Length) {
        match self {
            Self::Wound(wound) => wound.bare,
            _ => (Length::from_m(0.0), Length::from_m(0.0)),
        }
    }

    /// Mass per metre of the core alone, where the core is known.
    pub fn core_linear_density(&self) -> Option<LinearDensity> {
        self.core().map(|(material, diameter)| solid(material, diameter))
    }

    /// Least load that breaks the core; `None` where no strength is known at its diameter.
    pub fn breaking_load(&self) -> Option<Force> {
        if let Self::Weighed(Weighed { breaking_load: Some(load), .. }) = self {
            return Some(*load);
        }
        let (material, diameter) = self.core()?;
        let strength = material.strength.as_ref()?.value.at(diameter)?;
        Some(pull_of(strength, diameter))
    }
}

/// Area of a circle in square metres.
pub(super) fn area_m2(diameter: Length) -> f64 {
    PI / 4.0 * diameter.to_m() * diameter.to_m()
}

/// The pull that puts a round section under a stress.
pub fn pull_of(stress: Stress, diameter: Length) -> Force {
    Force::from_n(stress.to_pa() * area_m2(diameter))
}

fn solid(material: &Material, diameter: Length) -> LinearDensity {
    LinearDensity::from_kg_per_m(material.density.value.to_kg_per_m3() * area_m2(diameter))
}

fn over(under: Length, layer: &Layer) -> Length {
    Length::from_m(under.to_m() + 2.0 * layer.section.thickness().to_m())
}

fn check_diameter(part: Words, diameter: Length) -> Result<(), ConstructionError> {
    let got_mm = diameter.to_mm();
    if (DIAMETER_MM.0..=DIAMETER_MM.1).contains(&got_mm) {
        Ok(())
    } else {
        Err(ConstructionError::Diameter { part, got_mm })
    }
}

/// What carries the pull of a string.
type Core<'a> = Option<(&'a Arc<Material>, Length)>;

fn same_core(one: Core<'_>, other: Core<'_>) -> bool {
    let materials = one.map(|core| core.0) == other.map(|core| core.0);
    both_near((one.map(|core| core.1.to_m()), other.map(|core| core.1.to_m()))) && materials
}

fn same_length(one: Length, other: Length) -> bool {
    near(one.to_m(), other.to_m())
}

fn both_near(pair: (Option<f64>, Option<f64>)) -> bool {
    match pair {
        (Some(one), Some(other)) => near(one, other),
        (one, other) => one.is_none() && other.is_none(),
    }
}

/// The same number but for the last digits.
fn near(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * one.abs().max(other.abs())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::material::built_in;
    use crate::testing::assert_close;

    fn material(key: &str) -> Arc<Material> {
        Arc::new(built_in().into_iter().find(|m| m.key == key).unwrap())
    }

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    fn round(key: &str, diameter: f64, packing_ratio: f64) -> Layer {
        let section = Section::Round { diameter: mm(diameter) };
        Layer { material: material(key), section, packing_ratio }
    }

    fn wound(layers: Vec<Layer>) -> Result<MakeUp, ConstructionError> {
        MakeUp::wound(material("steel"), mm(0.5), layers, (mm(0.0), mm(0.0)))
    }

    #[test]
    fn twice_the_diameter_is_four_times_the_mass() {
        for key in ["nylon", "gut", "steel"] {
            let mass =
                |d| MakeUp::plain(material(key), mm(d)).unwrap().linear_density().to_kg_per_m();
            assert_close(mass(1.0), 4.0 * mass(0.5), 1e-12, key);
        }
    }

    #[test]
    fn a_thin_wire_wound_close_weighs_as_an_annulus_times_pi_over_four() {
        let thin = wound(vec![round("copper", 0.05, 1.0)]).unwrap();
        let core = thin.core_linear_density().unwrap().to_kg_per_m();
        let wrap = thin.linear_density().to_kg_per_m() - core;
        let annulus = 8920.0 * PI / 4.0 * (0.6e-3_f64.powi(2) - 0.5e-3_f64.powi(2));
        // The pitch is 1/35 of the circumference, so the helix is longer by half its square.
        assert_close(wrap, annulus * PI / 4.0, 1e-3, "thin wrap");
    }

    #[test]
    fn half_the_packing_weighs_a_little_over_half() {
        let wrap = |packing| {
            let string = wound(vec![round("bronze", 0.3, packing)]).unwrap();
            string.linear_density().to_kg_per_m()
                - string.core_linear_density().unwrap().to_kg_per_m()
        };
        let share = wrap(0.5) / wrap(1.0);
        assert!(share > 0.5 && share < 0.52, "{share}");
    }

    #[test]
    fn each_layer_adds_twice_its_thickness() {
        let ribbon = Section::Ribbon { thickness: mm(0.15), width: mm(0.6) };
        let ribbon = Layer { material: material("bronze"), section: ribbon, packing_ratio: 1.0 };
        let string = wound(vec![round("silk", 0.1, 0.9), ribbon]).unwrap();
        assert_close(string.gauge().unwrap().to_mm(), 1.0, 1e-12, "gauge");
        assert_close(string.core().unwrap().1.to_mm(), 0.5, 1e-12, "core");
    }

    #[test]
    fn layers_carry_no_pull() {
        let plain = MakeUp::plain(material("steel"), mm(0.5)).unwrap();
        let string = wound(vec![round("bronze", 0.3, 1.0)]).unwrap();
        assert_eq!(plain.breaking_load(), string.breaking_load());
    }

    #[test]
    fn what_cannot_be_made_says_why() {
        for got in [0.0, -1.0, 0.049, 10.1, f64::NAN, f64::INFINITY] {
            assert!(MakeUp::plain(material("nylon"), mm(got)).is_err(), "{got}");
            assert!(wound(vec![round("bronze", got, 1.0)]).is_err(), "{got}");
        }
        assert_eq!(wound(vec![]), Err(ConstructionError::NoLayer));
        let error = wound(vec![round("bronze", 0.3, 1.2)]).unwrap_err();
        assert!(error.to_string().ends_with("got 120 %"), "{error}");
        let weighed = |mass: f64, core: f64, gauge: f64, load: f64| {
            MakeUp::weighed(
                LinearDensity::from_g_per_m(mass),
                Some((material("steel"), mm(core))),
                Some(mm(gauge)),
                Some(Force::from_n(load)),
            )
        };
        assert!(weighed(6.75, 0.5, 1.1, 480.0).is_ok());
        assert!(matches!(weighed(0.0, 0.5, 1.1, 480.0), Err(ConstructionError::Mass { .. })));
        assert!(matches!(weighed(6.75, 1.2, 1.1, 480.0), Err(ConstructionError::Core { .. })));
        assert!(matches!(
            weighed(6.75, 0.5, 1.1, 0.0),
            Err(ConstructionError::BreakingLoad { .. })
        ));
    }
}
