//! What neck, pillar and board are made of, as the engine takes it.

mod board;

use self::board::board;
use super::timber::{Made, allowable_metal, laminate, layered, made, plates, solid_rim};
use crate::design::document::{
    Design, FastenerSpec, GeometrySpec, JointSpec, NeckLayerSpec, OwnWoodSpec, PLYWOOD,
    SectionSpec, ServiceSpec,
};
use crate::design::settings::{SECTION_AT, SECTION_DEPTH, SECTION_THICKNESS, Setting};
use crate::design::typed::cut;
use crate::engine::bearing::{
    BoardParts, BoxParts, Build, Drilled, JointParts, Layered, NeckParts, PillarParts,
};
use crate::engine::structure::duration::{
    LoadTime, Service, Timber, creep_ratio, damp_ratio, material_divisor, permanent_ratio,
};
use crate::engine::structure::holes;
use crate::engine::structure::joint::{Fastener, Fasteners, JointWood, Plates};
use crate::engine::structure::laminate::Rolling;
use crate::engine::structure::plywood::{Way, check_birch};
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::soundbox::Wall;
use crate::engine::structure::wood::{Allowable, KEYS, POISSON, WoodKind};
use crate::engine::units::{Length, Stress};
use crate::words::{Words, typed as say};

/// Plies of the thinnest plywood; that of the soundbox has as many as its thickness asks for.
const FEWEST_PLIES: u32 = 3;

/// A sentence for each setting of the parts that cannot be used. It asks no wood for its figures, which come with the
/// drawing.
pub(super) fn wrong(given: &GeometrySpec, errors: &mut Vec<String>) {
    let _ = sections(given, errors);
    let parts = [
        (say::THE_NECK, &given.neck.wood, Some(given.neck.plies)),
        (say::THE_PILLAR, &given.pillar.wood, None),
        (say::THE_BOARD, &given.board.wood, Some(given.board.plies)),
        (say::THE_RIB, &given.board.rib_wood, None),
        (say::THE_SIDES, &given.soundbox.side_wood, Some(FEWEST_PLIES)),
        (say::THE_BACK, &given.soundbox.back_wood, Some(FEWEST_PLIES)),
        (say::THE_BARS, &given.bars.wood, None),
    ];
    let is_known = |key: &str| KEYS.contains(&key) || given.woods.iter().any(|own| own.key == key);
    let unknown = |layer: &&NeckLayerSpec| !layer.wood.is_empty() && !is_known(&layer.wood);
    if let Some(layer) = given.neck.layers.iter().find(unknown) {
        errors.push(wrong_wood(say::A_LAYER_OF_NECK, &layer.wood));
    }
    if let Some(at) = given.neck.layers.iter().position(|layer| layer.thickness_mm <= 0.0) {
        errors.push(say::layer_of_neck_thin(&(at + 1)));
    }
    for (part, key, plies) in parts {
        if let (PLYWOOD, Some(plies)) = (key.as_str(), plies) {
            if let Err(error) = check_birch(count(plies)) {
                errors.push(say::plywood_unusable(&part, &error));
            }
        } else if !is_known(key) {
            errors.push(wrong_wood(part, key));
        }
    }
}

fn wrong_wood(part: Words, key: &str) -> String {
    say::wood_unknown(&cut(key), &part)
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
    let neck = neck(given, &usual, (mm(Setting::NeckThickness), sections, slope), drilled(design));
    let woods = &given.woods;
    let wood = made(&given.pillar.wood, None, woods);
    let wood = wood.or_else(|| made(&usual.pillar.wood, None, woods));
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
    let joints = given.joints.all().map(joint);
    let pillar_wood = joint_wood(&given.pillar.wood, 0, woods);
    let mut neck_wood = joint_wood(&given.neck.wood, given.neck.plies, woods);
    if let Some(laminate) = laminate(given, 0.0) {
        neck_wood.allowable = laminate.allowable().0;
    }
    let board = board(design, &usual, (widths, thicknesses));
    let soundbox = soundbox(given, &board);
    let is_proposed = !given.sizes.are_own();
    let build = Build {
        neck,
        pillar,
        board,
        joints,
        neck_wood,
        pillar_wood,
        soundbox,
        is_given,
        is_proposed,
    };
    build.times(damp_ratio(service(given)).value)
}

/// How damp the wood gets.
const fn service(given: &GeometrySpec) -> Service {
    match given.service {
        ServiceSpec::Heated => Service::Dry,
        ServiceSpec::Covered => Service::Covered,
        ServiceSpec::Outdoors => Service::Wet,
    }
}

pub(super) fn size(mm: f64) -> Option<Length> {
    (mm > 0.0 && mm.is_finite()).then(|| Length::from_mm(mm))
}

/// What holds a joint. What lacks a size is left out, and so not judged.
fn joint(spec: &JointSpec) -> JointParts {
    let face = size(spec.face_width_mm).zip(size(spec.face_height_mm));
    let kind = match spec.fasteners {
        FastenerSpec::None => None,
        FastenerSpec::Dowels => Some(Fastener::Dowels),
        FastenerSpec::Bolts => Some(Fastener::Bolts),
        FastenerSpec::Screws => Some(Fastener::Screws),
    };
    let sizes = size(spec.diameter_mm).zip(size(spec.depth_mm)).filter(|_| spec.count > 0);
    let fasteners = kind.zip(sizes).map(|(kind, (diameter, depth))| Fasteners {
        kind,
        count: count(spec.count),
        diameter,
        depth,
        apart: Length::from_mm(spec.apart_mm.max(0.0)),
        across: Length::from_mm(spec.across_mm.max(0.0)),
    });
    let plates = size(spec.plate_mm).zip(size(spec.plate_width_mm));
    JointParts {
        face: face.and_then(|(width, height)| Rectangle::new(width, height).ok()),
        tenon: size(spec.tenon_mm).zip(size(spec.tenon_depth_mm)),
        fasteners,
        plates: plates.map(|(thickness, width)| Plates {
            thickness,
            width,
            allowable: allowable_metal(spec.metal),
        }),
    }
}

/// Shear between the plies of birch plywood, characteristic, in MPa. Source: *Handbook of Finnish Plywood* (from memory;
/// the least of its sizes).
const BETWEEN_PLIES_MPA: f64 = 1.78;

/// A wood as joints ask for it.
fn joint_wood(key: &str, plies: u32, own: &[OwnWoodSpec]) -> JointWood {
    match made(key, Some(plies), own) {
        Some(Made::Solid(wood)) => {
            let allowable = wood.allowable(LoadTime::Permanent);
            JointWood {
                allowable,
                density: wood.density.as_ref().map(|sourced| sourced.value),
                is_softwood: wood.kind == WoodKind::Softwood,
                rolling: JointWood::rolling(&allowable),
            }
        }
        Some(Made::Plywood(panel)) => {
            let factor = permanent_ratio().value / material_divisor(Timber::Plywood).value;
            JointWood {
                allowable: panel.allowable_edgewise(Way::Along),
                density: panel.density.as_ref().map(|sourced| sourced.value),
                is_softwood: false,
                rolling: Some(Stress::from_mpa(factor * BETWEEN_PLIES_MPA)),
            }
        }
        None => JointWood::default(),
    }
}

/// The soundbox; `None` while depth, sides or back have no size.
fn soundbox(given: &GeometrySpec, board: &BoardParts) -> Option<BoxParts> {
    let spec = &given.soundbox;
    let depth = size(spec.bass_depth_mm).zip(size(spec.treble_depth_mm))?;
    let (side, back) = (size(spec.side_mm)?, size(spec.back_mm)?);
    // Along the soundbox the board's grain runs across.
    let (along, shear, _) = board.along.unwrap_or_default();
    let board_wall = Wall {
        allowable: joint_wood(&given.board.wood, given.board.plies, &given.woods).allowable,
        along,
        across: board.modulus.unwrap_or_default(),
        shear,
    };
    let plain = |mm: f64| Length::from_mm(mm.max(0.0));
    Some(BoxParts {
        depth,
        board: board_wall,
        side: (side, wall(&spec.side_wood, side, &given.woods)?),
        side_bends: bends_across(&spec.side_wood, side, &given.woods)?,
        back: (back, wall(&spec.back_wood, back, &given.woods)?),
        liner: (plain(spec.liner_width_mm), plain(spec.liner_height_mm)),
        braces: size(spec.brace_gap_mm),
        holes: (count(spec.holes), plain(spec.hole_length_mm), plain(spec.hole_width_mm)),
        is_slotted: spec.slotted,
    })
}

/// Plies of plywood by its thickness.
fn plies(thickness: Length) -> u32 {
    let pairs = (0.5 * (thickness.to_mm() + 0.6) / 1.4 - 0.5).round().clamp(1.0, 50.0);
    let mut plies = FEWEST_PLIES;
    while f64::from(plies) < 2.0 * pairs + 1.0 {
        plies += 2;
    }
    plies
}

/// Modulus of a wall as it bends from board to back.
fn bends_across(key: &str, thickness: Length, own: &[OwnWoodSpec]) -> Option<Stress> {
    match made(key, Some(plies(thickness)), own)? {
        Made::Solid(_) => Some(wall(key, thickness, own)?.across),
        Made::Plywood(panel) => Some(panel.flatwise(Way::Across).modulus),
    }
}

/// A wall of the soundbox, whose grain runs along it and whose rings lie flat. Plywood has the plies that its thickness
/// asks for.
fn wall(key: &str, thickness: Length, own: &[OwnWoodSpec]) -> Option<Wall> {
    match made(key, Some(plies(thickness)), own)? {
        Made::Solid(wood) => {
            let modulus = wood.modulus_along()?;
            let ratios = wood.ratios.as_ref()?.value;
            let of = |ratio: f64| Stress::from_pa(ratio * modulus.to_pa());
            let shear = of(ratios.shear_tangential.unwrap_or(ratios.shear_radial));
            let allowable: Allowable = wood.allowable(LoadTime::Permanent);
            Some(Wall { allowable, along: modulus, across: of(ratios.tangential), shear })
        }
        Made::Plywood(panel) => Some(Wall {
            allowable: panel.allowable_edgewise(Way::Along),
            along: panel.edgewise(Way::Along).modulus,
            across: panel.edgewise(Way::Across).modulus,
            shear: panel.shear_modulus.as_ref()?.value,
        }),
    }
}

fn neck(
    given: &GeometrySpec,
    usual: &GeometrySpec,
    (thickness, sections, slope): (Length, Vec<(f64, Length, Length)>, f64),
    drilled: Drilled,
) -> NeckParts {
    let (neck, of) = (&given.neck, &usual.neck);
    let woods = &given.woods;
    let wood = made(&neck.wood, Some(neck.plies), woods);
    let wood = wood.or_else(|| made(&of.wood, Some(of.plies), woods));
    let timber = if neck.wood == PLYWOOD { Timber::Plywood } else { Timber::Solid };
    let creep = creep_ratio(timber, service(given)).map_or(1.0, |sourced| sourced.value);
    let (mut allowable, mut torsion_modulus, mut rim) = match wood {
        Some(Made::Solid(wood)) => {
            let allowable = wood.allowable(LoadTime::Permanent);
            let allowable = allowable.at_slope(slope).unwrap_or(allowable);
            (allowable, wood.torsion_modulus(), solid_rim(&wood))
        }
        Some(Made::Plywood(panel)) => {
            let shear = panel.shear_modulus.as_ref().map(|sourced| sourced.value);
            let both = [Way::Along, Way::Across].map(|way| panel.edgewise(way).modulus);
            let rim = shear.and_then(|shear| holes::rim((both[0], both[1]), shear, 0.0));
            (panel.allowable_edgewise(Way::Along), shear, rim)
        }
        None => Default::default(),
    };
    let wood = joint_wood(&neck.wood, neck.plies, woods);
    let is_plywood = neck.wood == PLYWOOD;
    let mut layers = Layered::default();
    let mut rolling = is_plywood.then(|| Rolling::of_plywood(wood.rolling));
    let mut face_shear = if is_plywood { wood.rolling } else { allowable.shear };
    let laminate = laminate(given, slope);
    let of_planks = laminate.is_some() || !is_plywood;
    if let Some(laminate) = &laminate {
        let moduli = laminate.moduli();
        rim = holes::rim((moduli.along, moduli.across), moduli.shear, POISSON);
        (allowable, torsion_modulus, layers) = layered(laminate);
        (rolling, face_shear) = (laminate.rolling(), laminate.face_shear());
    }
    NeckParts {
        allowable,
        torsion_modulus,
        thickness,
        layered: layers,
        rolling,
        rim,
        plates: plates(given, &wood, face_shear),
        creep_ratio: creep,
        of_planks,
        drilled,
        sections,
    }
}

/// The holes of the neck. What has no depth goes through, which is the careful way.
fn drilled(design: &Design) -> Drilled {
    let of = |setting: Setting| size(setting.number(design));
    Drilled {
        tuning: of(Setting::TuningPin).map(|wide| (wide, of(Setting::TuningPinDepth))),
        bridge: of(Setting::BridgePin).map(|wide| (wide, of(Setting::BridgePinDepth))),
        mechanism: of(Setting::MechanismDrill),
    }
}

pub(super) fn count(plies: u32) -> usize {
    usize::try_from(plies).unwrap_or(usize::MAX)
}
