//! What neck, pillar and board are made of, as the engine takes it.

use crate::design::document::{Design, GeometrySpec, PLYWOOD, SectionSpec, ServiceSpec};
use crate::design::settings::{SECTION_AT, SECTION_DEPTH, SECTION_THICKNESS, Setting};
use crate::design::typed::cut;
use crate::engine::bearing::{BoardParts, Build, NeckParts, PillarParts};
use crate::engine::structure::duration::{
    LoadTime, Service, Timber, creep_ratio, material_divisor, permanent_ratio,
};
use crate::engine::structure::plate::Rib;
use crate::engine::structure::plywood::{Panel, Way, check_birch};
use crate::engine::structure::wood::{KEYS, Margins, POISSON, Wood, woods};
use crate::engine::units::{Length, Stress};

/// What a part is made of.
enum Made {
    Solid(Box<Wood>),
    Plywood(Panel),
}

/// A sentence for each setting of the parts that cannot be used. It asks no wood for its figures, which come with the
/// drawing.
pub(super) fn wrong(given: &GeometrySpec, errors: &mut Vec<String>) {
    let _ = sections(given, errors);
    let parts = [
        ("neck", &given.neck.wood, Some(given.neck.plies)),
        ("pillar", &given.pillar.wood, None),
        ("board", &given.board.wood, Some(given.board.plies)),
        ("string rib", &given.board.rib_wood, None),
    ];
    for (part, key, plies) in parts {
        if let (PLYWOOD, Some(plies)) = (key.as_str(), plies) {
            if let Err(error) = check_birch(count(plies)) {
                errors.push(format!("the plywood of the {part} cannot be used: {error}"));
            }
        } else if !KEYS.contains(&key.as_str()) {
            errors.push(format!(
                "the wood of the {part} must be one that is known here, got \"{}\" (choose one that is listed)",
                cut(key)
            ));
        }
    }
}

/// What was measured of the neck: where, how thick and how deep.
fn sections(given: &GeometrySpec, errors: &mut Vec<String>) -> Vec<(f64, Length, Length)> {
    let of = SectionSpec::default();
    let measured = given.neck.sections.iter().map(|section| {
        let at = SECTION_AT.take(section.at_percent, of.at_percent, errors);
        let thickness = SECTION_THICKNESS.take(section.thickness_mm, of.thickness_mm, errors);
        let depth = SECTION_DEPTH.take(section.depth_mm, of.depth_mm, errors);
        (at / 100.0, Length::from_mm(thickness), Length::from_mm(depth))
    });
    measured.collect()
}

/// The parts of a design; the usual wood where one makes no sense.
pub(super) fn build(design: &Design) -> Build {
    let (given, usual) = (&design.geometry, GeometrySpec::default());
    let mm = |setting: Setting| Length::from_mm(setting.number(design));
    let sections = sections(given, &mut Vec::new());
    let widths = (mm(Setting::BassWidth), mm(Setting::TrebleWidth));
    let thicknesses = (mm(Setting::BassThickness), mm(Setting::TrebleThickness));
    let slope = Setting::NeckGrain.number(design) / 100.0;
    let neck = neck(given, &usual, (mm(Setting::NeckThickness), sections, slope));
    let wood = made(&given.pillar.wood, None).or_else(|| made(&usual.pillar.wood, None));
    let (allowable, torsion_modulus) = match wood {
        Some(Made::Solid(wood)) => (wood.allowable(LoadTime::Permanent), wood.torsion_modulus()),
        _ => Default::default(),
    };
    let pillar = PillarParts {
        allowable,
        torsion_modulus,
        width: mm(Setting::PillarWidth),
        depth: mm(Setting::PillarDepth),
        beside: mm(Setting::PillarBeside),
    };
    let parts = |spec: &GeometrySpec| (spec.neck.clone(), spec.pillar.clone(), spec.board.clone());
    let is_given = parts(given) != parts(&usual);
    Build { neck, pillar, board: board(design, &usual, (widths, thicknesses)), is_given }
}

fn neck(
    given: &GeometrySpec,
    usual: &GeometrySpec,
    (thickness, sections, slope): (Length, Vec<(f64, Length, Length)>, f64),
) -> NeckParts {
    let (neck, of) = (&given.neck, &usual.neck);
    let made = made(&neck.wood, Some(neck.plies)).or_else(|| made(&of.wood, Some(of.plies)));
    let (allowable, torsion_modulus) = match made {
        Some(Made::Solid(wood)) => {
            let allowable = wood.allowable(LoadTime::Permanent);
            (allowable.at_slope(slope).unwrap_or(allowable), wood.torsion_modulus())
        }
        Some(Made::Plywood(panel)) => {
            let shear = panel.shear_modulus.as_ref().map(|sourced| sourced.value);
            (panel.allowable_edgewise(Way::Along), shear)
        }
        None => Default::default(),
    };
    NeckParts { allowable, torsion_modulus, thickness, sections }
}

type Pair = (Length, Length);

fn board(design: &Design, usual: &GeometrySpec, (width, thickness): (Pair, Pair)) -> BoardParts {
    let (board, of) = (&design.geometry.board, &usual.board);
    let service = match design.geometry.service {
        ServiceSpec::Heated => Service::Dry,
        ServiceSpec::Covered => Service::Covered,
        ServiceSpec::Outdoors => Service::Wet,
    };
    let creep = |timber| creep_ratio(timber, service).map(|sourced| sourced.value);
    let made = made(&board.wood, Some(board.plies)).or_else(|| made(&of.wood, Some(of.plies)));
    let (bending, margin, modulus, along, creep_ratio) = match made {
        // The grain runs from edge to edge, and the rings stand upright.
        Some(Made::Solid(wood)) => {
            let allowable = wood.allowable(LoadTime::Permanent);
            let along = wood.ratios.as_ref().zip(wood.modulus_along()).map(|(ratios, modulus)| {
                let of = |ratio: f64| Stress::from_pa(ratio * modulus.to_pa());
                (of(ratios.value.radial), of(ratios.value.shear_radial), POISSON)
            });
            let margin = allowable.margins.bending;
            (allowable.bending, margin, allowable.modulus, along, creep(Timber::Solid))
        }
        // The grain of the faces runs from edge to edge, as that of a solid board.
        Some(Made::Plywood(panel)) => {
            let flat = panel.flatwise(Way::Along);
            let factor = permanent_ratio().value / material_divisor(Timber::Plywood).value;
            let bending = Stress::from_pa(factor * flat.bending.to_pa());
            let along = panel
                .shear_modulus
                .as_ref()
                .map(|shear| (panel.flatwise(Way::Across).modulus, shear.value, 0.0));
            let margin = Margins::of_characteristic(factor).bending;
            (Some(bending), margin, Some(flat.modulus), along, creep(Timber::Plywood))
        }
        None => Default::default(),
    };
    let (rib, rib_bending) = rib(design);
    BoardParts { bending, margin, modulus, along, creep_ratio, width, thickness, rib, rib_bending }
}

/// String rib and strip outside, with what their wood may bear.
fn rib(design: &Design) -> (Rib, Option<Stress>) {
    let mm = |setting: Setting| Length::from_mm(setting.number(design));
    let usual = GeometrySpec::default().board.rib_wood;
    let wood = made(&design.geometry.board.rib_wood, None).or_else(|| made(&usual, None));
    let Some(Made::Solid(wood)) = wood else { return Default::default() };
    let allowable = wood.allowable(LoadTime::Permanent);
    let rib = Rib {
        inside: (mm(Setting::RibWidth), mm(Setting::RibHeight)),
        outside: (mm(Setting::StripWidth), mm(Setting::StripHeight)),
        modulus: allowable.modulus.unwrap_or_default(),
    };
    (rib, allowable.bending)
}

/// What a key names; `None` where it names nothing that can be used.
fn made(key: &str, plies: Option<u32>) -> Option<Made> {
    if let (PLYWOOD, Some(plies)) = (key, plies) {
        return Panel::birch(count(plies)).map(Made::Plywood).ok();
    }
    let wood = woods().into_iter().find(|wood| wood.key == key)?;
    Some(Made::Solid(Box::new(wood)))
}

fn count(plies: u32) -> usize {
    usize::try_from(plies).unwrap_or(usize::MAX)
}
