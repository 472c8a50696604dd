//! Frames in space with joints and soundboxes of their sizes, against a frame program.
//!
//! `scripts/space_joints.py` wrote `space_joints.json` from the measures in `scripts/space_joints_frames.json`: those of
//! twelve kept designs, `space_joints_designs.txt`, as links. Where the program lays these out in another way,
//! `FRAMES=1 cargo test --test published joints_and_soundbox` writes designs and measures anew, and then the script is to
//! be run again.

use serde::{Deserialize, Serialize};
use stringloft::design::checks::CHECKS;
use stringloft::design::document::{Design, FastenerSpec, JointSpec};
use stringloft::design::link;
use stringloft::design::presets::SAMPLES;
use stringloft::engine::bearing::{Build, JointParts};
use stringloft::engine::structure::joint::{Fastener, JointWood};
use stringloft::engine::structure::section::Rectangle;
use stringloft::engine::structure::soundbox::Wall;
use stringloft::engine::units::{Density, Length, Stress};

use super::space_frames::{Measures, framed, same};
use super::{assert_near, assert_same};

const FRAMES: &str =
    concat!(env!("CARGO_MANIFEST_DIR"), "/tests/published/scripts/space_joints_frames.json");
const DESIGNS: &str =
    concat!(env!("CARGO_MANIFEST_DIR"), "/tests/published/space_joints_designs.txt");

/// What the script builds a frame of; metres, newtons, pascals, kg/m³.
#[derive(Serialize, Deserialize)]
struct Whole {
    #[serde(flatten)]
    frame: Measures,
    joints: Vec<Held>,
    /// Modulus and density at each joint.
    woods: Vec<[f64; 2]>,
    soundbox: Tube,
}

#[derive(Serialize, Deserialize)]
struct Held {
    face: Option<[f64; 2]>,
    tenon: Option<[f64; 2]>,
    fasteners: Option<Through>,
    plate: Option<f64>,
}

#[derive(Serialize, Deserialize)]
struct Through {
    kind: String,
    count: usize,
    d: f64,
    l: f64,
    apart: f64,
    across: f64,
}

#[derive(Serialize, Deserialize)]
struct Tube {
    depth: [f64; 2],
    board: [f64; 2],
    board_along: f64,
    board_shear: f64,
    side: OfWall,
    back: OfWall,
    liner: [f64; 2],
    holes: (usize, f64, f64),
    slotted: bool,
}

#[derive(Serialize, Deserialize)]
struct OfWall {
    t: f64,
    along: f64,
    across: f64,
    shear: f64,
}

#[derive(Deserialize)]
struct Values {
    opensees: String,
    harps: Vec<Solved>,
}

#[derive(Deserialize)]
struct Solved {
    name: String,
    /// The number of the cut, and its forces.
    neck: Vec<(usize, f64, f64, f64, f64, f64, f64)>,
    pillar: [[f64; 6]; 2],
    soundbox: Vec<[f64; 6]>,
    top: [f64; 6],
}

fn pair((one, other): (Length, Length)) -> [f64; 2] {
    [one.to_m(), other.to_m()]
}

fn held(parts: &JointParts) -> Held {
    let kind = |kind: Fastener| if kind == Fastener::Bolts { "bolts" } else { "others" };
    Held {
        face: parts.face.map(|face: Rectangle| pair((face.breadth(), face.depth()))),
        tenon: parts.tenon.map(pair),
        fasteners: parts.fasteners.map(|all| Through {
            kind: kind(all.kind).to_owned(),
            count: all.count,
            d: all.diameter.to_m(),
            l: all.depth.to_m(),
            apart: all.apart.to_m(),
            across: all.across.to_m(),
        }),
        plate: parts.plates.map(|plates| plates.thickness.to_m()),
    }
}

fn of_wall((thickness, wall): (Length, Wall)) -> OfWall {
    let [along, across, shear] = [wall.along, wall.across, wall.shear].map(Stress::to_pa);
    OfWall { t: thickness.to_m(), along, across, shear }
}

fn whole(frame: Measures, build: &Build) -> Whole {
    let soundbox = build.soundbox.as_ref().expect("a soundbox with its sizes");
    let wood = |wood: &JointWood| {
        let modulus = wood.allowable.modulus.expect("a modulus").to_pa();
        [modulus, wood.density.map(Density::to_kg_per_m3).expect("a density")]
    };
    let (count, length, width) = soundbox.holes;
    Whole {
        frame,
        joints: build.joints.iter().map(held).collect(),
        woods: [&build.neck_wood, &build.neck_wood, &build.pillar_wood].map(wood).into(),
        soundbox: Tube {
            depth: pair(soundbox.depth),
            board: pair(build.board.thickness),
            board_along: soundbox.board.along.to_pa(),
            board_shear: soundbox.board.shear.to_pa(),
            side: of_wall(soundbox.side),
            back: of_wall(soundbox.back),
            liner: pair(soundbox.liner),
            holes: (count, length.to_m(), width.to_m()),
            slotted: soundbox.is_slotted,
        },
    }
}

/// The samples, and two of each drawn otherwise: with screws, dowels or plates at the joints, and a back that is closed or
/// open.
fn designs() -> Vec<(String, Design)> {
    let mut all = Vec::new();
    for sample in SAMPLES {
        let design = sample.design();
        all.push((sample.key.to_owned(), design.clone()));
        for otherwise in ["closed", "open"] {
            let mut design = design.clone();
            let geometry = &mut design.geometry;
            let joint =
                JointSpec { count: 3, diameter_mm: 7.0, depth_mm: 42.0, ..JointSpec::default() };
            if otherwise == "closed" {
                geometry.soundbox.holes = 0;
                geometry.lean_deg = 5.0;
                geometry.joints.shoulder =
                    JointSpec { fasteners: FastenerSpec::Screws, apart_mm: 27.0, ..joint };
                geometry.joints.foot = JointSpec {
                    fasteners: FastenerSpec::Dowels,
                    count: 4,
                    apart_mm: 18.0,
                    across_mm: 21.0,
                    face_width_mm: 41.0,
                    face_height_mm: 57.0,
                    ..joint
                };
            } else {
                geometry.soundbox.slotted = true;
                geometry.strings_from_neck_mm += 7.0;
                geometry.neck.thickness_mm *= 1.2;
                geometry.pillar.wood = "black-walnut".to_owned();
                geometry.joints.head = JointSpec {
                    fasteners: FastenerSpec::Screws,
                    apart_mm: 22.0,
                    plate_mm: 2.5,
                    plate_width_mm: 30.0,
                    ..joint
                };
            }
            all.push((format!("{}, {otherwise}", sample.key), design));
        }
    }
    all
}

/// Shares of the greatest force or moment of a part. Joints are pressed together as stiffly as the arms of the script,
/// which costs some digits.
const SAME: f64 = 1e-5;

/// Source: `OpenSees`. Cuts of neck, pillar and soundbox, and how the top of the pillar moves.
pub fn frames_with_joints_and_soundbox_bear_what_a_frame_program_finds() {
    if std::env::var_os("FRAMES").is_some() {
        let (mut kept, mut all) = (String::new(), Vec::new());
        for (name, design) in designs() {
            kept += &format!("{name}: {}\n", link::write(&design).expect("a link"));
            let (frame, _, build) = framed(&name, &design);
            all.push(serde_json::to_string(&whole(frame, &build)).expect("numbers"));
        }
        std::fs::write(DESIGNS, kept).expect("a folder");
        std::fs::write(FRAMES, format!("[\n{}\n]\n", all.join(",\n"))).expect("a folder");
        return;
    }
    let lines = include_str!("space_joints_designs.txt").lines();
    let designs = lines.map(|line| line.split_once(": ").expect("a name"));
    let read: Vec<Whole> =
        serde_json::from_str(include_str!("scripts/space_joints_frames.json")).expect("measures");
    let values: Values = serde_json::from_str(include_str!("space_joints.json"))
        .expect("the script writes this form");
    let check = CHECKS.iter().find(|check| check.id == "frame-joints").expect("it is listed");
    assert!(
        check.source.english().contains(&format!("OpenSees {}", values.opensees)),
        "{}",
        check.source
    );
    assert_same(values.harps.len(), 12, "harps");
    for (((name, text), read), solved) in designs.zip(&read).zip(&values.harps) {
        assert_eq!((name, name), (&*read.frame.name, &*solved.name));
        let design = link::read(text).expect("a design");
        let (measures, frame, build) = framed(name, &design);
        let run = "run tests/published/scripts/space_joints.py again";
        // By way of a text, which costs the last digit.
        let text = serde_json::to_string(&whole(measures, &build)).expect("numbers");
        let ours: serde_json::Value = serde_json::from_str(&text).expect("JSON");
        let theirs = serde_json::to_value(read).expect("numbers");
        for part in ["joints", "woods", "soundbox"] {
            assert_eq!(ours[part], theirs[part], "{name}: {run}");
        }
        let sprung = frame.sprung.as_ref().expect("joints with their stiffness");
        let neck: Vec<[f64; 6]> =
            solved.neck.iter().map(|cut| sprung.neck[cut.0].forces()).collect();
        let theirs: Vec<[f64; 6]> =
            solved.neck.iter().map(|cut| [cut.1, cut.2, cut.3, cut.4, cut.5, cut.6]).collect();
        let soundbox: Vec<[f64; 6]> = sprung.soundbox.iter().map(|(_, cut)| *cut).collect();
        same(&neck, &theirs, SAME, &format!("{name}, neck"));
        same(&sprung.pillar, &solved.pillar, SAME, &format!("{name}, pillar"));
        same(&soundbox, &solved.soundbox, SAME, &format!("{name}, soundbox"));
        same(&[sprung.top], &[solved.top], SAME, &format!("{name}, top"));
        let sway = solved.top[2];
        assert_near(sprung.top[2], sway, SAME, format_args!("{name}, sway"));
    }
}
