//! The frame of a harp in space against a frame program.
//!
//! `scripts/space_values.py` wrote `space_values.json` from the measures in `scripts/space_frames.json`. These are those
//! of six kept designs, `space_designs.txt`: the samples as they were, and two that are drawn otherwise. Where the
//! program lays these out in another way, `FRAMES=1 cargo test --test published whole_frames` writes designs and
//! measures anew, and then the script is to be run again.

use serde::{Deserialize, Serialize};
use stringloft::design::checks::CHECKS;
use stringloft::design::document::Design;
use stringloft::design::persist;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::{Resolved, resolve};
use stringloft::engine::analysis::analyse;
use stringloft::engine::bearing::{Build, FrameBearing, bear};
use stringloft::engine::geometry::{Band, lay_out, loads};
use stringloft::engine::structure::frame::{Point, Pull};

use super::{assert_near, assert_same};

const FRAMES: &str =
    concat!(env!("CARGO_MANIFEST_DIR"), "/tests/published/scripts/space_frames.json");

const DESIGNS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/published/space_designs.txt");

/// What the script builds a frame of; metres, newtons, pascals.
#[derive(Debug, PartialEq, Serialize, Deserialize)]
pub struct Measures {
    pub name: String,
    /// Place, breadth and depth.
    axis: Vec<[f64; 4]>,
    foot: [f64; 2],
    /// Place and pull.
    strings: Vec<[f64; 4]>,
    offset: f64,
    /// Modulus and shear modulus.
    neck: [f64; 2],
    pillar: [f64; 2],
    /// In the plane and across.
    pillar_section: [f64; 2],
    board: [[f64; 2]; 2],
    /// From the lower end of the board to the lowest string, and on to the highest.
    strings_on_board: [f64; 2],
    width: [f64; 2],
}

#[derive(Deserialize)]
struct Values {
    opensees: String,
    harps: Vec<Solved>,
}

#[derive(Deserialize)]
struct Solved {
    name: String,
    stiff: [SolvedStiff; 2],
}

#[derive(Deserialize)]
struct SolvedStiff {
    neck: Vec<[f64; 6]>,
    pillar: [[f64; 6]; 2],
    soundbox: Vec<[f64; 6]>,
    top: [f64; 6],
}

fn place(at: Point) -> [f64; 2] {
    [at.x.to_m(), at.y.to_m()]
}

fn measures(name: &str, (resolved, band): (&Resolved, &Band), pulls: &[Pull]) -> Measures {
    let build = &resolved.build();
    let neck = band.neck.as_ref().expect("a neck");
    let thick = build.neck.thickness.to_m();
    let axis = neck.centre.iter().map(|cut| {
        let [x, y] = place(cut.at);
        [x, y, thick, cut.depth.to_m()]
    });
    let moduli = |allowable: &stringloft::engine::structure::wood::Allowable, shear: Option<_>| {
        let modulus = allowable.modulus.expect("a modulus").to_pa();
        let shear = shear.map(stringloft::engine::units::Stress::to_pa);
        [modulus, shear.unwrap_or(modulus / 16.0)]
    };
    let low = place(band.board.0);
    let up = |at: [f64; 2]| (at[0] - low[0]).hypot(at[1] - low[1]);
    let (lowest, highest) = (band.holes.last().expect("strings").board, band.holes[0].board);
    Measures {
        name: name.to_owned(),
        axis: axis.collect(),
        foot: place(band.pillar.0),
        strings: pulls
            .iter()
            .map(|pull| {
                let [x, y] = place(pull.at);
                [x, y, pull.x.to_n(), pull.y.to_n()]
            })
            .collect(),
        offset: resolved.geometry.strings_from_neck.to_m(),
        neck: moduli(&build.neck.allowable, build.neck.torsion_modulus),
        pillar: moduli(&build.pillar.allowable, build.pillar.torsion_modulus),
        pillar_section: [build.pillar.width.to_m(), build.pillar.depth.to_m()],
        board: [low, place(band.board.1)],
        strings_on_board: [up(place(lowest)), up(place(highest)) - up(place(lowest))],
        width: [build.board.width.0.to_m(), build.board.width.1.to_m()],
    }
}

/// The kept designs, one to a line with its name.
fn kept() -> Vec<(String, Design)> {
    let lines = include_str!("space_designs.txt").lines();
    let design = |line: &str| {
        let (name, text) = line.split_once(": ").expect("a name");
        (name.to_owned(), persist::read(text).expect("a design"))
    };
    lines.map(design).collect()
}

/// The samples, and two of them drawn otherwise.
fn designs() -> Vec<(String, Design)> {
    let mut all: Vec<(String, Design)> =
        SAMPLES.iter().map(|sample| (sample.key.to_owned(), sample.design())).collect();
    for (at, offset_mm, thickness_mm, pillar_mm, lean) in
        [(0, 38.0, 44.0, (62.0, 34.0), 6.0), (2, 22.0, 70.0, (38.0, 80.0), -4.0)]
    {
        let (name, mut design) = all[at].clone();
        let geometry = &mut design.geometry;
        geometry.strings_from_neck_mm = offset_mm;
        geometry.neck.thickness_mm = thickness_mm;
        (geometry.pillar.width_mm, geometry.pillar.depth_mm) = pillar_mm;
        geometry.lean_deg = lean;
        geometry.pillar.wood = "black-walnut".to_owned();
        all.push((format!("{name}, drawn otherwise"), design));
    }
    all
}

pub fn framed(name: &str, design: &Design) -> (Measures, FrameBearing, Build) {
    let resolved = resolve(design);
    assert!(resolved.errors.is_empty(), "{name}: {:?}", resolved.errors);
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
    let bearing = bear(&band, &loads, &analysis, &resolved.geometry, &resolved.build());
    let measures = measures(name, (&resolved, &band), &loads.pulls);
    (measures, bearing.frame.expect("a frame"), resolved.build())
}

/// Shares of the greatest force or moment of a part; the program and the script go by the same rules.
const SAME: f64 = 1e-6;

/// Source: `OpenSees`. Every cut of neck, pillar and soundbox, and how the top of the pillar moves, with both soundboxes.
pub fn whole_frames_bear_what_a_frame_program_finds() {
    if std::env::var_os("FRAMES").is_some() {
        let (mut kept, mut all) = (String::new(), Vec::new());
        for (name, design) in designs() {
            let document = serde_json::from_str::<serde_json::Value>(&persist::write(&design));
            kept += &format!("{name}: {}\n", document.expect("JSON"));
            all.push(serde_json::to_string(&framed(&name, &design).0).expect("numbers"));
        }
        std::fs::write(DESIGNS, kept).expect("a folder");
        std::fs::write(FRAMES, format!("[\n{}\n]\n", all.join(",\n"))).expect("a folder");
        return;
    }
    let ours: Vec<(Measures, FrameBearing, Build)> =
        kept().iter().map(|(name, design)| framed(name, design)).collect();
    let read: Vec<Measures> =
        serde_json::from_str(include_str!("scripts/space_frames.json")).expect("measures");
    let values: Values = serde_json::from_str(include_str!("space_values.json"))
        .expect("the script writes this form");
    let check = CHECKS.iter().find(|check| check.id == "frame-in-space").expect("it is listed");
    assert!(
        check.source.english().contains(&format!("OpenSees {}", values.opensees)),
        "{}",
        check.source
    );
    assert_same(values.harps.len(), ours.len(), "harps");
    for (((measures, frame, _), read), solved) in ours.iter().zip(&read).zip(&values.harps) {
        assert_eq!((&*measures.name, &*read.name), (&*solved.name, &*solved.name));
        let run = "run tests/published/scripts/space_values.py again";
        let gap = |one: f64, other: f64| (one - other).abs() < 1e-9 * other.abs().max(1.0);
        assert!(gap(measures.foot[1], read.foot[1]), "{}: {run}", read.name);
        let last = measures.strings.len() - 1;
        assert!(gap(measures.strings[last][3], read.strings[last][3]), "{}: {run}", read.name);
        for (ours, theirs) in frame.stiff.iter().zip(&solved.stiff) {
            let neck: Vec<[f64; 6]> = ours.neck.iter().map(|cut| cut.forces()).collect();
            let soundbox: Vec<[f64; 6]> = ours.soundbox.iter().map(|(_, cut)| *cut).collect();
            same(&neck, &theirs.neck, SAME, &format!("{}, neck", solved.name));
            same(&ours.pillar, &theirs.pillar, SAME, &format!("{}, pillar", solved.name));
            same(&soundbox, &theirs.soundbox, SAME, &format!("{}, soundbox", solved.name));
            same(&[ours.top], &[theirs.top], SAME, &format!("{}, top", solved.name));
        }
    }
}

/// Forces among forces and moments among moments, as shares of the greatest of a part.
pub fn same(ours: &[[f64; 6]], theirs: &[[f64; 6]], near: f64, what: &str) {
    assert_same(ours.len(), theirs.len(), what);
    for kind in [0..3, 3..6] {
        let all = theirs.iter().flat_map(|cut| &cut[kind.clone()]);
        let greatest = all.fold(0.0, |most: f64, next| most.max(next.abs()));
        for (at, (one, other)) in ours.iter().zip(theirs).enumerate() {
            for number in kind.clone() {
                let off = one[number] - other[number];
                let what = format_args!("{what}, number {number} of cut {at}");
                assert_near(greatest + off, greatest, near, what);
            }
        }
    }
}
