//! What neck, pillar and board are made of, as the engine takes it.

use super::geometry::{AT_PERCENT, BESIDE_MM, GRAIN_PERCENT, SOLID_MM};
use super::within;
use crate::design::document::{GeometrySpec, PLYWOOD, SectionSpec, ServiceSpec};
use crate::design::typed::cut;
use crate::engine::bearing::{BoardParts, Build, NeckParts, PillarParts};
use crate::engine::structure::duration::{
    LoadTime, Service, Timber, creep_ratio, material_divisor, permanent_ratio,
};
use crate::engine::structure::plywood::{Panel, Way};
use crate::engine::structure::wood::{Wood, woods};
use crate::engine::units::{Length, Stress};

/// What a part is made of.
enum Made {
    Solid(Box<Wood>),
    Plywood(Panel),
}

/// The parts of a design, with a sentence for each setting that cannot be used.
pub(super) fn build(given: &GeometrySpec, errors: &mut Vec<String>) -> Build {
    let usual = GeometrySpec::default();
    let mut mm =
        |got, usual, what| Length::from_mm(within(got, usual, what, SOLID_MM, "mm", errors));
    let thickness = mm(given.neck.thickness_mm, usual.neck.thickness_mm, "thickness of the neck");
    let width = (given.pillar.width_mm, usual.pillar.width_mm);
    // The shape of the harp says what is wrong with it.
    let pillar_width = if (SOLID_MM.0..=SOLID_MM.1).contains(&width.0) { width.0 } else { width.1 };
    let depth = mm(given.pillar.depth_mm, usual.pillar.depth_mm, "depth of the pillar");
    let section = SectionSpec::default();
    let measured = given.neck.sections.iter().map(|given| {
        let what = "thickness of a section of the neck";
        let thickness = mm(given.thickness_mm, section.thickness_mm, what);
        let what = "depth of a section of the neck";
        (given.at_percent, thickness, mm(given.depth_mm, section.depth_mm, what))
    });
    let mut sections: Vec<(f64, Length, Length)> = measured.collect();
    let (board, of) = (&given.board, &usual.board);
    let widths = (
        mm(board.bass_width_mm, of.bass_width_mm, "width of the board in the bass"),
        mm(board.treble_width_mm, of.treble_width_mm, "width of the board in the treble"),
    );
    let what = ("thickness of the board in the bass", "thickness of the board in the treble");
    let thicknesses = (
        mm(board.bass_thickness_mm, of.bass_thickness_mm, what.0),
        mm(board.treble_thickness_mm, of.treble_thickness_mm, what.1),
    );
    for section in &mut sections {
        let what = "place of a section of the neck";
        section.0 = within(section.0, 0.0, what, AT_PERCENT, "%", errors) / 100.0;
    }
    let slope = given.neck.grain_percent;
    let slope = within(slope, 0.0, "slope of the neck's grain", GRAIN_PERCENT, "%", errors);
    let beside = (given.pillar.beside_mm, usual.pillar.beside_mm);
    let beside =
        within(beside.0, beside.1, "push beside the pillar's middle", BESIDE_MM, "mm", errors);
    let neck = neck(given, &usual, (thickness, sections, slope / 100.0), errors);
    let wood = made("pillar", &given.pillar.wood, None, errors)
        .or_else(|| made("pillar", &usual.pillar.wood, None, &mut Vec::new()));
    let allowable = match wood {
        Some(Made::Solid(wood)) => wood.allowable(LoadTime::Permanent),
        _ => crate::engine::structure::wood::Allowable::default(),
    };
    let pillar = PillarParts {
        allowable,
        width: Length::from_mm(pillar_width),
        depth,
        beside: Length::from_mm(beside),
    };
    Build { neck, pillar, board: self::board(given, &usual, (widths, thicknesses), errors) }
}

fn neck(
    given: &GeometrySpec,
    usual: &GeometrySpec,
    (thickness, sections, slope): (Length, Vec<(f64, Length, Length)>, f64),
    errors: &mut Vec<String>,
) -> NeckParts {
    let (neck, of) = (&given.neck, &usual.neck);
    let made = made("neck", &neck.wood, Some(neck.plies), errors)
        .or_else(|| made("neck", &of.wood, Some(of.plies), &mut Vec::new()));
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

fn board(
    given: &GeometrySpec,
    usual: &GeometrySpec,
    (width, thickness): (Pair, Pair),
    errors: &mut Vec<String>,
) -> BoardParts {
    let (board, of) = (&given.board, &usual.board);
    let service = match given.service {
        ServiceSpec::Heated => Service::Dry,
        ServiceSpec::Covered => Service::Covered,
        ServiceSpec::Outdoors => Service::Wet,
    };
    let creep = |timber| creep_ratio(timber, service).map(|sourced| sourced.value);
    let made = made("board", &board.wood, Some(board.plies), errors)
        .or_else(|| made("board", &of.wood, Some(of.plies), &mut Vec::new()));
    let (bending, modulus, creep_ratio) = match made {
        Some(Made::Solid(wood)) => {
            let allowable = wood.allowable(LoadTime::Permanent);
            (allowable.bending, allowable.modulus, creep(Timber::Solid))
        }
        // The grain of the faces runs from edge to edge, as that of a solid board.
        Some(Made::Plywood(panel)) => {
            let flat = panel.flatwise(Way::Along);
            let factor = permanent_ratio().value / material_divisor(Timber::Plywood).value;
            let bending = Stress::from_pa(factor * flat.bending.to_pa());
            (Some(bending), Some(flat.modulus), creep(Timber::Plywood))
        }
        None => Default::default(),
    };
    BoardParts { bending, modulus, creep_ratio, width, thickness }
}

/// What a key names; `None` with a sentence where it names nothing that can be used.
fn made(part: &str, key: &str, plies: Option<u32>, errors: &mut Vec<String>) -> Option<Made> {
    if let (PLYWOOD, Some(plies)) = (key, plies) {
        let panel = Panel::birch(usize::try_from(plies).unwrap_or(usize::MAX));
        return panel
            .map_err(|error| {
                errors.push(format!("the plywood of the {part} cannot be used: {error}"));
            })
            .map(Made::Plywood)
            .ok();
    }
    let wood = woods().into_iter().find(|wood| wood.key == key);
    if wood.is_none() {
        errors.push(format!(
            "the wood of the {part} must be one that is known here, got \"{}\" (choose one that is listed)",
            cut(key)
        ));
    }
    wood.map(|wood| Made::Solid(Box::new(wood)))
}
