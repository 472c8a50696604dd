//! The harp in space: whatever the eye, each place of the picture shows the face that a ray from the eye meets first, which is
//! found here without the tree, by going through all faces of all parts.

use std::fs;
use std::path::Path;

use stringloft::charts::space::{Eye, Mark, Of, Space, svg};
use stringloft::engine::parts::{Cell, Plane, Spot, Whole};
use stringloft::engine::pitch::Letter;

use stringloft::design::parts::{Parts, parts};
use stringloft::design::presets::SAMPLES;

use crate::made::{bent, samples};

/// Places that are looked at from each eye.
const PLACES: usize = 80;
const SIZE: (f64, f64) = (600.0, 800.0);
/// A place this near to an edge of a face may show either side of it, in pixels.
const NEAR_PX: f64 = 0.75;

/// The samples, and two of them with a back that is bent.
fn with_bent() -> impl Iterator<Item = (String, Parts)> {
    let round = SAMPLES[1..3].iter().map(|sample| {
        let made = parts(&bent(&sample.design(), 25.0)).expect("parts");
        (format!("{}-bent", sample.key), made)
    });
    samples().map(|(key, made)| (key.to_owned(), made)).chain(round)
}

fn eyes() -> impl Iterator<Item = Eye> {
    let turns = (0..6_u8).map(|at| (f64::from(at) * 1.1 - 1.0, f64::from(at % 5) * 0.5 - 1.0));
    turns.map(|(round, up)| Eye::default().turned(round, up))
}

/// Whether a place lies within outlines by the rule of odd and even, and how far it is from their edges.
fn within(rings: &[Vec<(f64, f64)>], (x, y): (f64, f64)) -> (bool, f64) {
    let (mut inside, mut near) = (false, f64::INFINITY);
    for ring in rings {
        for (at, one) in ring.iter().enumerate() {
            let two = ring[(at + 1) % ring.len()];
            if (one.1 > y) != (two.1 > y)
                && x < (two.0 - one.0) * (y - one.1) / (two.1 - one.1) + one.0
            {
                inside = !inside;
            }
            let way = (two.0 - one.0, two.1 - one.1);
            let long = way.0.mul_add(way.0, way.1 * way.1).max(1e-12);
            let share = (((x - one.0) * way.0 + (y - one.1) * way.1) / long).clamp(0.0, 1.0);
            near = near.min((x - one.0 - share * way.0).hypot(y - one.1 - share * way.1));
        }
    }
    (inside, near)
}

/// A face of a part, with its plane.
struct Face {
    part: usize,
    ring: Vec<Spot>,
    plane: Plane,
}

/// The faces of all parts.
fn faces(whole: &Whole) -> Vec<Face> {
    let all = whole.parts.iter().enumerate();
    let all = all
        .flat_map(|(at, part)| part.cells.iter().flat_map(Cell::faces).map(move |ring| (at, ring)));
    all.map(|(part, ring)| Face { part, plane: Plane::of(&ring), ring }).collect()
}

/// A place of a face that is off its middle.
fn spot((step, face): (usize, &Face)) -> Spot {
    let ring = &face.ring;
    let corners = [ring[0], ring[step % ring.len()], ring[ring.len() / 2]];
    [0, 1, 2].map(|axis| corners.iter().map(|at| at[axis]).sum::<f64>() / 3.0)
}

#[test]
fn what_is_nearer_hides_what_lies_behind_it() {
    let (mut seen, mut wrong, mut unsure) = (0_u32, Vec::new(), 0_u32);
    for (key, made) in with_bent() {
        let none: Vec<Option<Letter>> = made.band.strings.iter().map(|_| None).collect();
        // Sound holes show what lies behind them; here all faces are whole.
        let mut whole = made.whole.clone();
        whole.parts.iter_mut().for_each(|part| part.openings.clear());
        let space = Space::new(&whole, &made.band, &none);
        let all = faces(&whole);
        for eye in eyes() {
            let marks = space.seen(eye, SIZE);
            let camera = space.camera(eye, SIZE);
            for step in 0..PLACES {
                let face = (step * 7919 + 31) % all.len();
                let place = camera.place(spot((step, &all[face])));
                let on_top = marks.iter().rev().find_map(|mark| match mark {
                    Mark::Face { of: Of::Part(at, _), rings, .. } => {
                        let (inside, near) = within(rings, place);
                        (inside || near < NEAR_PX).then_some((*at, near))
                    }
                    _ => None,
                });
                let (from, way) = camera.ray(place);
                let first = all
                    .iter()
                    .filter_map(|face| Some((face.part, met(face, from, way)?)))
                    .min_by(|one, other| one.1.total_cmp(&other.1));
                match (on_top, first) {
                    (Some((_, near)), _) if near < NEAR_PX => unsure += 1,
                    (Some((shown, _)), Some((part, _))) => {
                        seen += 1;
                        if shown != part {
                            let names = [shown, part].map(|at| whole.parts[at].name.to_string());
                            wrong.push(format!("{key} {place:?}: shows {names:?}"));
                        }
                    }
                    (None, None) => {}
                    other => wrong.push(format!("{key} {place:?}: {other:?}")),
                }
            }
        }
    }
    assert!(seen > 700, "{seen} places, {unsure} near an edge");
    // Faces of parts that touch lie in one plane, and either may be on top.
    let most = usize::try_from(seen / 500).expect("a count");
    assert!(wrong.len() <= most, "{} of {seen}: {:#?}", wrong.len(), &wrong[..wrong.len().min(12)]);
}

/// How far along a ray it meets a face, if it does; a ring that is not flat by its triangles.
fn met(face: &Face, from: Spot, way: Spot) -> Option<f64> {
    let plane = face.plane;
    let at = plane.met(from, way)?;
    let share = (0..3)
        .find(|axis| way[*axis].abs() > 0.3)
        .map(|axis| (at[axis] - from[axis]) / way[axis])?;
    let (one, two) = (0..3)
        .max_by(|one, two| plane.square[*one].abs().total_cmp(&plane.square[*two].abs()))
        .map(|axis| ((axis + 1) % 3, (axis + 2) % 3))?;
    let ring: Vec<(f64, f64)> = face.ring.iter().map(|at| (at[one], at[two])).collect();
    (share > 0.0 && within(&[ring], (at[one], at[two])).0).then_some(share)
}

#[test]
fn the_picture_stands_alone_and_is_the_same_for_the_same_eye() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("parts-views");
    fs::create_dir_all(&folder).expect("a folder for what is written");
    for (key, made) in with_bent() {
        let none: Vec<Option<Letter>> = made.band.strings.iter().map(|_| Some(Letter::C)).collect();
        let space = Space::new(&made.whole, &made.band, &none);
        let drawn = svg(&space, Eye::default(), SIZE, "A <harp>");
        fs::write(folder.join(format!("{key}-space.svg")), &drawn).expect("a file can be written");
        assert!(drawn.contains("<title>A &lt;harp&gt;</title>") && !drawn.contains("NaN"), "{key}");
        assert_eq!(drawn, svg(&space, Eye::default(), SIZE, "A <harp>"), "{key}");
        let marks: Vec<Mark> = eyes().flat_map(|eye| space.seen(eye, SIZE)).collect();
        let inside =
            |at: &(f64, f64)| (0.0..=SIZE.0).contains(&at.0) && (0.0..=SIZE.1).contains(&at.1);
        for mark in &marks {
            let all = match mark {
                Mark::Face { rings, .. } => rings.iter().flatten().all(inside),
                Mark::Lines { ends, .. } => ends.iter().flatten().all(inside),
            };
            assert!(all, "{key}: {mark:?}");
        }
        eprintln!("{key}: {} pieces", space.seen(Eye::default(), SIZE).len());
    }
}
