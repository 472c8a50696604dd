//! What parts are made of, as the engine takes it: woods that come with the program and woods of one's own, plywood, layers
//! of the neck, and the metal beside it.

use super::build::{count, size};
use crate::design::document::{GeometrySpec, MetalSpec, NeckLayerSpec, OwnWoodSpec, PLYWOOD};
use crate::engine::bearing::{Layered, NeckPlates};
use crate::engine::structure::duration::LoadTime;
use crate::engine::structure::holes::{self, Rim};
use crate::engine::structure::joint::{Fastener, Fasteners, JointWood};
use crate::engine::structure::laminate::{Laminate, Layer};
use crate::engine::structure::plated::{Held, Plates, Slip};
use crate::engine::structure::plywood::Panel;
use crate::engine::structure::reserve::METAL;
use crate::engine::structure::wood::own::{Bar, bending_of_along, usual_ratios, wood};
use crate::engine::structure::wood::{Allowable, POISSON, Wood, WoodKind, woods};
use crate::engine::units::{Density, Force, Frequency, Length, Mass, Stress};

/// What a part is made of.
pub(super) enum Made {
    Solid(Box<Wood>),
    Plywood(Panel),
}

/// What a key names; `None` where it names nothing that can be used.
pub(super) fn made(key: &str, plies: Option<u32>, own: &[OwnWoodSpec]) -> Option<Made> {
    if let (PLYWOOD, Some(plies)) = (key, plies) {
        return Panel::birch(count(plies)).map(Made::Plywood).ok();
    }
    let listed = woods().into_iter().find(|wood| wood.key == key);
    let wood = listed.or_else(|| own_wood(own.iter().find(|wood| wood.key == key)?))?;
    Some(Made::Solid(Box::new(wood)))
}

const fn kind(spec: &OwnWoodSpec) -> WoodKind {
    if spec.softwood { WoodKind::Softwood } else { WoodKind::Hardwood }
}

/// Density and modulus of a bending test of a bar. Where it was both loaded and tapped, the load counts.
pub fn measured(spec: &OwnWoodSpec) -> (Option<Density>, Option<Stress>) {
    let mm = Length::from_mm;
    let bar = Bar {
        length: mm(spec.length_mm),
        width: mm(spec.width_mm),
        height: mm(spec.height_mm),
        mass: Mass::from_g(spec.weight_g),
    };
    let force = Force::from_kgf(spec.load_kg);
    let loaded = bar.modulus_by_load(mm(spec.span_mm), force, mm(spec.falls_mm));
    let tapped = || bar.modulus_by_tone(Frequency::from_hz(spec.tone_hz)).map(bending_of_along);
    (bar.density(), loaded.or_else(tapped))
}

/// A wood of one's own; `None` while its bar does not tell density and modulus.
pub fn own_wood(spec: &OwnWoodSpec) -> Option<Wood> {
    let (density, modulus) = measured(spec);
    Some(wood(kind(spec), density?, modulus?, spec.by_class))
}

/// What the neck is glued up of; `None` where it is of one piece, or a layer cannot be used.
pub fn laminate(given: &GeometrySpec, slope: f64) -> Option<Laminate> {
    let layer = |spec: &NeckLayerSpec| {
        let key = if spec.wood.is_empty() { &given.neck.wood } else { &spec.wood };
        let Made::Solid(wood) = made(key, None, &given.woods)? else { return None };
        layer(&wood, size(spec.thickness_mm)?, spec.angle_deg.to_radians(), slope)
    };
    let layers = given.neck.layers.iter().map(layer).collect::<Option<Vec<Layer>>>()?;
    Laminate::new(layers).ok()
}

fn layer(wood: &Wood, thickness: Length, angle_rad: f64, slope: f64) -> Option<Layer> {
    let allowable = wood.allowable(LoadTime::Permanent);
    let allowable = allowable.at_slope(slope).unwrap_or(allowable);
    let whole = wood.modulus_along()?.to_pa();
    let usual = usual_ratios(wood.kind);
    let ratios = wood.ratios.as_ref().map_or(usual, |ratios| ratios.value);
    let shear = ratios.torsion_ratio().unwrap_or(ratios.shear_radial);
    Some(Layer {
        thickness,
        angle_rad,
        along: allowable.modulus?,
        across: Stress::from_pa(whole * ratios.tangential.min(ratios.radial)),
        shear: Stress::from_pa(whole * shear),
        poisson: POISSON,
        allowable,
    })
}

/// The neck as layers: what it may bear, its shear modulus, and what bending sideways makes of it.
pub(super) fn layered(laminate: &Laminate) -> (Allowable, Option<Stress>, Layered) {
    let (moduli, (allowable, stress_ratio)) = (laminate.moduli(), laminate.allowable());
    let modulus_ratio = moduli.sideways.to_pa() / moduli.along.to_pa();
    (allowable, Some(moduli.shear), Layered { modulus_ratio, stress_ratio })
}

/// The rim of a hole in solid wood, whose rings may lie either way: the way in which more gathers.
pub(super) fn solid_rim(wood: &Wood) -> Option<Rim> {
    let (whole, of) = (wood.modulus_along()?, wood.ratios.as_ref()?.value);
    let ratio = |ratio: f64| Stress::from_pa(ratio * whole.to_pa());
    let shear = of.shear_tangential.map_or(of.shear_radial, |other| other.min(of.shear_radial));
    holes::rim((whole, ratio(of.tangential.min(of.radial))), ratio(shear), POISSON)
}

/// Modulus and shear modulus of a metal. Source: EN 1993-1-1 and EN 1999-1-1, and the usual 100 GPa of brass (from memory).
const fn moduli(metal: MetalSpec) -> (Stress, Stress) {
    let (modulus, shear) = match metal {
        MetalSpec::Steel => (210.0, 81.0),
        MetalSpec::Brass => (100.0, 37.0),
        MetalSpec::Aluminium => (70.0, 27.0),
    };
    (Stress::from_gpa(modulus), Stress::from_gpa(shear))
}

/// What a plate may bear for good: its yield over 1.5. Steel S235 and aluminium EN AW-6082 T6 of 250 MPa, both from memory;
/// brass of 150 MPa, of sheet for which Copper Development Association, publication 120, table 16, has a proof stress from
/// 125 MPa soft to 550 MPa hard (read).
pub(super) const fn allowable_metal(metal: MetalSpec) -> Stress {
    match metal {
        MetalSpec::Aluminium => Stress::from_mpa(250.0 / METAL),
        MetalSpec::Steel => Stress::from_mpa(235.0 / METAL),
        MetalSpec::Brass => Stress::from_mpa(150.0 / METAL),
    }
}

/// The share of the slip modulus that counts where stresses are looked at, and how much stiffer a screw is between metal and
/// wood. Source: EN 1995-1-1, 2.2.2 and 7.1 (from memory).
const SLIP_SHARE: f64 = 2.0 / 3.0;
const METAL_TO_WOOD: f64 = 2.0;

/// The spacing of screws along the grain, over their diameter, below which a row of them bears less. Source: EN 1995-1-1,
/// 8.5.1.1 (from memory).
const ROW: f64 = 13.0;

/// What holds the metal: glue that is as strong as the wood at the face of the neck, or screws so deep in its wood.
fn held(given: &GeometrySpec, wood: &JointWood, face_shear: Option<Stress>) -> Held {
    let spec = &given.neck.plates;
    let Some(diameter) = size(spec.screw_mm) else { return Held::Glued(face_shear) };
    let each = size(spec.screw_depth_mm).and_then(|depth| {
        let none = Length::from_m(0.0);
        let kind = Fastener::Screws;
        let one = Fasteners { kind, count: 1, diameter, depth, apart: none, across: none };
        let row = (spec.screw_gap_mm / (ROW * diameter.to_mm())).min(1.0).powf(0.25);
        Some(Force::from_n(row * one.beside_plate(wood)?))
    });
    Held::Screwed { each, diameter }
}

/// Metal beside the neck; `None` while thickness or height have no size.
pub(super) fn plates(
    given: &GeometrySpec,
    wood: &JointWood,
    face_shear: Option<Stress>,
) -> Option<NeckPlates> {
    let spec = &given.neck.plates;
    let (modulus, shear) = moduli(spec.metal);
    let screws = size(spec.screw_mm).map(|diameter| {
        // K_ser = ρ^1.5 d/23 in N/mm; screws in a wood of unknown density hold nothing.
        let mean = wood.density.map_or(0.0, Density::to_kg_per_m3);
        let slip = 1e3 * mean.powf(1.5) * diameter.to_mm() / 23.0;
        Slip {
            spacing: Length::from_mm(spec.screw_gap_mm.max(1.0)),
            stiffness_n_per_m: SLIP_SHARE * METAL_TO_WOOD * slip,
        }
    });
    let plates = Plates {
        thickness: size(spec.thickness_mm)?,
        height: size(spec.height_mm)?,
        both: !spec.one_side,
        modulus,
        shear,
        allowable: allowable_metal(spec.metal),
        screws,
    };
    let reach = [spec.from_percent, spec.to_percent].map(|at| (at / 100.0).clamp(0.0, 1.0));
    let held = held(given, wood, face_shear);
    (reach[0] < reach[1]).then_some(NeckPlates { plates, held, from: reach[0], to: reach[1] })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::Design;
    use crate::testing::assert_close;

    /// A bar of 600 × 40 × 20 mm of 216 g; 50 N (5.0986 kgf) in the middle of 500 mm bend it by 0.5·10⁻³/…: 4.883 GPa·mm.
    #[test]
    fn a_bar_tells_density_and_modulus_by_load_before_tone() {
        let mut spec = OwnWoodSpec {
            length_mm: 600.0,
            width_mm: 40.0,
            height_mm: 20.0,
            weight_g: 216.0,
            span_mm: 500.0,
            load_kg: 10.0,
            falls_mm: 1.0,
            ..OwnWoodSpec::default()
        };
        let (density, modulus) = measured(&spec);
        assert_close(density.unwrap().to_kg_per_m3(), 450.0, 1e-12, "density");
        let by_hand = 98.0665 * 0.5_f64.powi(3) / (4.0 * 0.04 * 0.02_f64.powi(3) * 1e-3);
        assert_close(modulus.unwrap().to_pa(), by_hand, 1e-12, "modulus");
        spec.tone_hz = 300.0;
        assert_eq!(measured(&spec).1, modulus);
        spec.load_kg = 0.0;
        let tapped = measured(&spec).1.unwrap().to_gpa();
        assert!((8.0..14.0).contains(&tapped), "{tapped}");
        spec.weight_g = 0.0;
        assert!(own_wood(&spec).is_none());
    }

    #[test]
    fn layers_of_the_necks_own_wood_are_the_neck_itself() {
        let mut design = Design::default();
        let plain = super::super::build::build(&design).neck;
        design.geometry.neck.layers =
            vec![NeckLayerSpec { thickness_mm: 8.0, ..NeckLayerSpec::default() }; 5];
        let glued = super::super::build::build(&design).neck;
        let (one, other) = (plain.allowable, glued.allowable);
        for (one, other) in [
            (one.bending, other.bending),
            (one.compression_along, other.compression_along),
            (one.shear, other.shear),
            (one.tension_across, other.tension_across),
            (one.modulus, other.modulus),
            (plain.torsion_modulus, glued.torsion_modulus),
        ] {
            assert_close(other.unwrap().to_pa(), one.unwrap().to_pa(), 1e-9, "a figure");
        }
        design.geometry.neck.layers[2].angle_deg = 90.0;
        let crossed = super::super::build::build(&design).neck;
        assert!(crossed.allowable.tension_across > plain.allowable.tension_across);
        assert!(crossed.allowable.bending < plain.allowable.bending);
        // A layer without a thickness leaves the neck as it would be of one piece.
        design.geometry.neck.layers[2].thickness_mm = 0.0;
        assert_eq!(super::super::build::build(&design).neck.layered, Layered::default());
    }
}
