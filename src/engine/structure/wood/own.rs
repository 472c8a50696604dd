//! A wood of one's own: density and modulus of a bar that was weighed, loaded or tapped, and the strengths that a standard
//! gives the class which such a wood reaches.

use super::super::sourced;
use super::{ALONG_OVER_BENDING, Basis, ElasticRatios, Wood, WoodKind};
use crate::engine::material::{Sourced, Standing};
use crate::engine::units::{Density, Force, Frequency, Length, Mass, Stress};
use crate::words::{Words, woods as say};

const CLASSES: &str = say::FROM_CLASS.english();
const MEASURED: &str = say::FROM_OWN_BAR.english();

/// `48 π²/m⁴` with `m = 4.730`, the first root of `cos m cosh m = 1`.
const FREE_BAR: f64 = 48.0 * std::f64::consts::PI * std::f64::consts::PI / 500.563_901_740_435;
/// What bending with shear and turning of the sections makes of a free bar's first tone: `θ² + 6 θ` and `θ² − 2 θ` with
/// `θ = m tanh(m/2)` and so on. Source: E. Goens, 1931, as in R. F. S. Hearmon, 1958 (from memory).
const TURNING: f64 = 49.48;
const SHEARING: f64 = 12.30;
/// Area over shear area of a rectangle. Source: Timoshenko (from memory).
const SHEAR_AREA: f64 = 1.2;
/// `E/G` of wood along the grain. Source: EN 338 (from memory).
const OVER_SHEAR: f64 = 16.0;

/// A bar with a rectangular section, grain along it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bar {
    /// Its length.
    pub length: Length,
    /// Across the way it is bent.
    pub width: Length,
    /// The way it is bent.
    pub height: Length,
    /// What it weighs.
    pub mass: Mass,
}

impl Bar {
    /// Mass over volume; `None` where a size is not above 0.
    ///
    /// # Example
    ///
    /// ```
    /// use stringloft::engine::structure::wood::own::Bar;
    /// use stringloft::engine::units::{Length, Mass};
    ///
    /// let mm = Length::from_mm;
    /// let bar = Bar { length: mm(500.0), width: mm(40.0), height: mm(20.0), mass: Mass::from_g(180.0) };
    /// assert!((bar.density().expect("sizes").to_kg_per_m3() - 450.0).abs() < 1e-9);
    /// ```
    pub fn density(&self) -> Option<Density> {
        let volume = self.length.to_m() * self.width.to_m() * self.height.to_m();
        let density = Density::from_kg_per_m3(self.mass.to_kg() / volume);
        is_size(density.to_kg_per_m3()).then_some(density)
    }

    /// The modulus of a bending test: `E = F l³/(4 b h³ w)`, for a force in the middle between two supports. Shear makes it
    /// less than the modulus along the grain, as in the tables. `None` where a number is not above 0.
    ///
    /// # Source
    ///
    /// A beam on two supports, as in any textbook of strength of materials; the test of EN 408 is alike.
    ///
    /// # Example
    ///
    /// 100 N in the middle of 400 mm bend 20 × 10 mm by 8 mm: `100 · 0.4³/(4 · 0.02 · 0.01³ · 0.008)` Pa are 10 GPa.
    ///
    /// ```
    /// use stringloft::engine::structure::wood::own::Bar;
    /// use stringloft::engine::units::{Force, Length, Mass};
    ///
    /// let mm = Length::from_mm;
    /// let bar = Bar { length: mm(450.0), width: mm(20.0), height: mm(10.0), mass: Mass::from_g(40.0) };
    /// let modulus = bar.modulus_by_load(mm(400.0), Force::from_n(100.0), mm(8.0)).expect("sizes");
    /// assert!((modulus.to_gpa() - 10.0).abs() < 1e-9);
    /// ```
    pub fn modulus_by_load(&self, span: Length, force: Force, falls: Length) -> Option<Stress> {
        let (b, h) = (self.width.to_m(), self.height.to_m());
        let pascals = force.to_n() * span.to_m().powi(3) / (4.0 * b * h.powi(3) * falls.to_m());
        is_size(pascals).then(|| Stress::from_pa(pascals))
    }

    /// The modulus along the grain by the tone of the bar, hung or laid where it does not move, 22 % from each end:
    /// `E = 0.9464 ρ f² L⁴/h² · [1 + (h²/12 L²)(49.48 + 12.30 · 1.2 E/G)]` with `E/G = 16`.
    ///
    /// `None` where a number is not above 0.
    ///
    /// # Source
    ///
    /// A free bar, with the correction of Goens and Hearmon for shear; ASTM E1876 has the same for materials with
    /// `E/G = 2`, where the bracket becomes `1 + 6.585 h²/L²` (all from memory).
    pub fn modulus_by_tone(&self, tone: Frequency) -> Option<Stress> {
        let (l, h) = (self.length.to_m(), self.height.to_m());
        let slender = FREE_BAR * self.density()?.to_kg_per_m3() * tone.to_hz().powi(2) * l.powi(4);
        let pascals = slender / (h * h) * shape(h / l, OVER_SHEAR);
        is_size(pascals).then(|| Stress::from_pa(pascals))
    }
}

fn is_size(number: f64) -> bool {
    number > 0.0 && number.is_finite()
}

/// What height over length makes of the modulus that a free bar's tone tells.
///
/// # Source
///
/// E. Goens, 1931, as in R. F. S. Hearmon, 1958 (from memory).
pub fn shape(height_ratio: f64, over_shear: f64) -> f64 {
    1.0 + height_ratio * height_ratio / 12.0 * (TURNING + SHEARING * SHEAR_AREA * over_shear)
}

/// The modulus of a bending test by that along the grain.
pub const fn bending_of_along(along: Stress) -> Stress {
    Stress::from_pa(along.to_pa() / ALONG_OVER_BENDING)
}

/// A strength class: name, then strength in bending, tension across, compression along and across, and shear in MPa; mean
/// modulus in GPa, and mean density in kg/m³.
type Class = (&'static str, [f64; 5], f64, f64);

/// Source: EN 338:2016, tables 1 and 3 (from memory; where editions differ, the lower strength and the higher density).
const SOFTWOODS: [Class; 9] = [
    ("C14", [14.0, 0.4, 16.0, 2.0, 3.0], 7.0, 350.0),
    ("C16", [16.0, 0.4, 17.0, 2.2, 3.2], 8.0, 370.0),
    ("C18", [18.0, 0.4, 18.0, 2.2, 3.4], 9.0, 380.0),
    ("C20", [20.0, 0.4, 19.0, 2.3, 3.6], 9.5, 400.0),
    ("C22", [22.0, 0.4, 20.0, 2.4, 3.8], 10.0, 410.0),
    ("C24", [24.0, 0.4, 21.0, 2.5, 4.0], 11.0, 420.0),
    ("C27", [27.0, 0.4, 22.0, 2.5, 4.0], 11.5, 450.0),
    ("C30", [30.0, 0.4, 23.0, 2.7, 4.0], 12.0, 460.0),
    ("C35", [35.0, 0.4, 25.0, 2.7, 4.0], 13.0, 480.0),
];
const HARDWOODS: [Class; 7] = [
    ("D18", [18.0, 0.6, 18.0, 4.8, 3.5], 9.5, 570.0),
    ("D24", [24.0, 0.6, 21.0, 4.9, 3.7], 10.0, 580.0),
    ("D30", [30.0, 0.6, 24.0, 5.3, 3.9], 11.0, 640.0),
    ("D35", [35.0, 0.6, 25.0, 5.4, 4.1], 12.0, 650.0),
    ("D40", [40.0, 0.6, 27.0, 5.5, 4.2], 13.0, 660.0),
    ("D50", [50.0, 0.6, 30.0, 6.2, 4.5], 14.0, 740.0),
    ("D60", [60.0, 0.6, 33.0, 10.5, 4.8], 17.0, 840.0),
];

/// The highest class that density and modulus both reach. A hardwood that reaches none of its own takes one of softwoods,
/// as the standard has poplar.
fn class(kind: WoodKind, density: Density, modulus: Stress) -> Option<&'static Class> {
    let reached = |of: &'static [Class]| {
        of.iter()
            .rev()
            .find(|(_, _, gpa, kg)| modulus.to_gpa() >= *gpa && density.to_kg_per_m3() >= *kg)
    };
    match kind {
        WoodKind::Hardwood => reached(&HARDWOODS).or_else(|| reached(&SOFTWOODS)),
        WoodKind::Softwood => reached(&SOFTWOODS),
    }
}

/// The name of the class that a wood reaches; `None` where it reaches none.
pub fn class_name(kind: WoodKind, density: Density, modulus: Stress) -> Option<&'static str> {
    class(kind, density, modulus).map(|class| class.0)
}

/// A wood by its measured density and modulus of a bending test. Its strengths are those of the class that it reaches, where
/// that is asked for: a class holds for planks with knots, so that straight and clear wood of such weight and stiffness bears
/// more; for a wood that is brash, or slants, it is too high. Moduli across the grain and in shear are the usual shares.
///
/// # Source
///
/// EN 338:2016 and EN 384 (from memory).
pub fn wood(kind: WoodKind, density: Density, modulus: Stress, by_class: bool) -> Wood {
    let class = class(kind, density, modulus).filter(|_| by_class);
    let figure = |at: usize| -> Option<Sourced<Stress>> {
        let mpa = class?.1[at];
        Some(sourced(Stress::from_mpa(mpa), CLASSES, Standing::FromMemory))
    };
    Wood {
        key: "own",
        name: say::OWN,
        botanical: Words::NONE,
        kind,
        basis: Basis::Characteristic,
        density: Some(sourced(density, MEASURED, Standing::Own)),
        bending: figure(0),
        modulus: Some(sourced(modulus, MEASURED, Standing::Own)),
        compression_along: figure(2),
        compression_across: figure(3),
        shear: figure(4),
        tension_across: figure(1),
        ratios: Some(sourced(usual_ratios(kind), say::FROM_SHARES.english(), Standing::FromMemory)),
    }
}

/// Moduli across the grain and in shear over that along it, where none are known.
///
/// # Source
///
/// EN 384: a thirtieth and a fifteenth across the grain, a sixteenth in shear (from memory).
pub const fn usual_ratios(kind: WoodKind) -> ElasticRatios {
    let across = match kind {
        WoodKind::Softwood => 1.0 / 30.0,
        WoodKind::Hardwood => 1.0 / 15.0,
    };
    let shear = 1.0 / OVER_SHEAR;
    ElasticRatios {
        tangential: across,
        radial: across,
        shear_radial: shear,
        shear_tangential: Some(shear),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn bar() -> Bar {
        let mm = Length::from_mm;
        Bar { length: mm(600.0), width: mm(40.0), height: mm(20.0), mass: Mass::from_g(216.0) }
    }

    /// The first root of `cos m cosh m = 1`, found by halving, gives the numbers of the formula.
    #[test]
    fn the_numbers_of_a_free_bar_follow_from_its_root() {
        let (mut low, mut high) = (4.5_f64, 5.0_f64);
        for _ in 0..60 {
            let m = f64::midpoint(low, high);
            if m.cos() * m.cosh() < 1.0 { low = m } else { high = m }
        }
        assert_close(FREE_BAR, 48.0 * std::f64::consts::PI.powi(2) / low.powi(4), 1e-12, "m");
        // θ = m (sinh m + sin m)/(cosh m − cos m), as for the free bar.
        let theta = low * (low.sinh() + low.sin()) / (low.cosh() - low.cos());
        assert!((TURNING - (theta * theta + 6.0 * theta)).abs() < 0.005 * TURNING, "{theta}");
        assert!((SHEARING - (theta * theta - 2.0 * theta)).abs() < 0.005 * SHEARING, "{theta}");
    }

    /// Of a free bar of a known modulus the tone is worked out from its root, and back.
    #[test]
    fn a_slender_bar_tells_its_modulus() {
        let slender = Bar { height: Length::from_mm(0.6), ..bar() };
        let (rho, l, h) = (slender.density().unwrap().to_kg_per_m3(), 0.6, 0.6e-3_f64);
        let m = 4.730_040_744_862_704_f64;
        let hz = m * m / (2.0 * std::f64::consts::PI * l * l) * h * (11e9 / (12.0 * rho)).sqrt();
        let back = slender.modulus_by_tone(Frequency::from_hz(hz)).unwrap();
        assert_close(back.to_gpa(), 11.0, 3e-5, "slender");
        assert!(bar().modulus_by_tone(Frequency::from_hz(0.0)).is_none());
    }

    #[test]
    fn a_wood_has_the_class_that_it_reaches_in_weight_and_stiffness() {
        let of =
            |kind, kg, gpa| class_name(kind, Density::from_kg_per_m3(kg), Stress::from_gpa(gpa));
        assert_eq!(of(WoodKind::Softwood, 420.0, 11.0), Some("C24"));
        assert_eq!(of(WoodKind::Softwood, 419.0, 14.0), Some("C22"));
        assert_eq!(of(WoodKind::Hardwood, 700.0, 13.5), Some("D40"));
        assert_eq!(of(WoodKind::Hardwood, 460.0, 10.9), Some("C22"));
        assert_eq!(of(WoodKind::Softwood, 300.0, 9.0), None);
    }

    #[test]
    fn without_a_class_no_strength_is_made_up() {
        let none =
            wood(WoodKind::Softwood, Density::from_kg_per_m3(420.0), Stress::from_gpa(11.0), false);
        assert!(none.bending.is_none() && none.shear.is_none() && none.modulus.is_some());
        let light =
            wood(WoodKind::Softwood, Density::from_kg_per_m3(200.0), Stress::from_gpa(5.0), true);
        assert!(light.bending.is_none());
    }

    #[test]
    fn stronger_classes_are_stronger_in_everything() {
        for classes in [&SOFTWOODS[..], &HARDWOODS[..]] {
            for pair in classes.windows(2) {
                assert!(pair[0].2 < pair[1].2 && pair[0].3 < pair[1].3, "{pair:?}");
                for at in 0..5 {
                    assert!(pair[0].1[at] <= pair[1].1[at], "{pair:?}");
                }
            }
        }
    }
}
