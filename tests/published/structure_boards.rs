//! The boards of the samples against a library of finite elements.
//!
//! `scripts/board_values.py` wrote `board_values.json` from `scripts/sample_boards.json`, which are the boards of the samples
//! with the lifts of their strings; it says the version that it used.

use serde::Deserialize;
use stringloft::design::checks::CHECKS;
use stringloft::engine::structure::plate::{Bars, Edges, Lift, Plate, PlateState, Rib, Sheet};
use stringloft::engine::units::{Force, Length, Stress};

use super::assert_near;

/// A board as the script takes it.
#[derive(Deserialize)]
struct Board {
    name: String,
    below_mm: f64,
    above_mm: f64,
    strings_mm: f64,
    width_mm: (f64, f64),
    thickness_mm: (f64, f64),
    across_mpa: f64,
    along_mpa: f64,
    shear_mpa: f64,
    poisson: f64,
    rib_mm: (f64, f64),
    strip_mm: (f64, f64),
    rib_mpa: f64,
    lifts_mm_n: Vec<(f64, f64, f64)>,
}

#[derive(Deserialize)]
struct Values {
    versions: Versions,
    boards: Vec<Solved>,
}

#[derive(Deserialize)]
struct Versions {
    scikit_fem: String,
}

/// Place, rise in mm, moments across at the middle and at the side in N, moment of the rib in N·m.
#[derive(Deserialize)]
struct Solved {
    name: String,
    rib: bool,
    clamped: bool,
    places: Vec<[f64; 5]>,
    /// Shear of the rib, in N, half its breadth from the lower end and from the upper.
    shear_near_ends: Vec<f64>,
}

fn values() -> Values {
    serde_json::from_str(include_str!("board_values.json")).expect("the script writes this form")
}

fn boards() -> Vec<Board> {
    serde_json::from_str(include_str!("scripts/sample_boards.json")).expect("the script's boards")
}

impl Board {
    fn plate(&self, with_rib: bool) -> Plate {
        let mpa = Stress::from_mpa;
        let pair = |(one, other): (f64, f64)| (Length::from_mm(one), Length::from_mm(other));
        // The measures are those at the lowest and the highest string, and the taper goes on to the ends.
        let ends = |(low, high): (f64, f64)| {
            let slope = (high - low) / self.strings_mm;
            pair((low - slope * self.below_mm, high + slope * self.above_mm))
        };
        let rib = Rib {
            inside: pair(self.rib_mm),
            outside: pair(self.strip_mm),
            modulus: mpa(self.rib_mpa),
        };
        Plate {
            length: Length::from_mm(self.below_mm + self.strings_mm + self.above_mm),
            width: ends(self.width_mm),
            thickness: ends(self.thickness_mm),
            sheet: Sheet {
                across: mpa(self.across_mpa),
                along: mpa(self.along_mpa),
                shear: mpa(self.shear_mpa),
                poisson: self.poisson,
            },
            side_ratio: 1.0,
            thick: None,
            rib: if with_rib { rib } else { Rib::default() },
            bars: Bars::default(),
        }
    }

    fn lifts(&self) -> Vec<Lift> {
        let lift = |(at, over, n): &(f64, f64, f64)| Lift {
            at: Length::from_mm(self.below_mm + at),
            over: Length::from_mm(*over),
            force: Force::from_n(*n),
        };
        self.lifts_mm_n.iter().map(lift).collect()
    }
}

/// What is looked at, its column, and the room.
type Kind = (fn(&PlateState) -> f64, usize, f64);

#[test]
fn the_register_names_the_version_of_the_board_values() {
    let named = format!("scikit-fem {}", values().versions.scikit_fem);
    assert!(CHECKS.iter().any(|check| check.source.english().contains(&named)));
}

/// Source: scikit-fem, with triangles of fifth degree. Each difference is a share of the greatest of its kind on that board.
pub fn boards_with_and_without_rib_bend_as_by_finite_elements() {
    let boards = boards();
    for solved in values().boards {
        let board = boards.iter().find(|board| board.name == solved.name).expect("a board");
        let edges = if solved.clamped { Edges::CLAMPED } else { Edges::HINGED };
        let places: Vec<Length> = solved.places.iter().map(|row| Length::from_mm(row[0])).collect();
        let plate = board.plate(solved.rib);
        let states = plate.under(&board.lifts(), edges, &places).expect("a board that holds");
        // Kinds of figures, and how far off each may be: the rise, moments at middle and side, the rib's moment.
        let kinds: [Kind; 4] = [
            (|state| state.rise.to_mm(), 1, ROOM[0]),
            (|state| state.middle_n_m_per_m, 2, ROOM[1]),
            (|state| state.edge_n_m_per_m, 3, ROOM[1]),
            (|state| state.rib_n_m, 4, ROOM[2]),
        ];
        for (of, column, room) in kinds {
            let greatest = solved.places.iter().map(|row| row[column].abs()).fold(0.0, f64::max);
            // Hinged sides bend by nothing to speak of, and a board without a rib has no moment of one.
            if greatest == 0.0 || (column == 3 && !solved.clamped) {
                continue;
            }
            for (state, row) in states.iter().zip(&solved.places) {
                let what = format!(
                    "{}, rib {}, clamped {}, at {} mm",
                    solved.name, solved.rib, solved.clamped, row[0]
                );
                assert_near(1.0 + (of(state) - row[column]) / greatest, 1.0, room, what);
            }
        }
    }
}

/// A rise may be off by so much of the greatest on its board, a moment across, a moment of the rib.
const ROOM: [f64; 3] = [0.005, 0.02, 0.02];

/// Right at an end that is held the shear of a rib without breadth grows without bound, so both are asked half its breadth
/// from the end. At the end itself the program may not fall back to nothing.
pub fn a_rib_is_sheared_at_the_ends_of_a_board_as_by_finite_elements() {
    let boards = boards();
    for solved in values().boards.iter().filter(|solved| solved.rib) {
        let board = boards.iter().find(|board| board.name == solved.name).expect("a board");
        let edges = if solved.clamped { Edges::CLAMPED } else { Edges::HINGED };
        let plate = board.plate(true);
        let (whole, half) = (plate.length.to_m(), 0.5 * board.rib_mm.0.max(board.strip_mm.0));
        let near = [Length::from_mm(half), Length::from_m(whole - 1e-3 * half)];
        let places = [near[0], near[1], Length::from_m(0.0)];
        let states = plate.under(&board.lifts(), edges, &places).expect("a board that holds");
        let greatest = solved.shear_near_ends.iter().map(|n| n.abs()).fold(0.0, f64::max);
        let what = |end| format!("{}, clamped {}, {end} end", solved.name, solved.clamped);
        for ((state, wanted), end) in
            states.iter().zip(&solved.shear_near_ends).zip(["lower", "upper"])
        {
            let off = (state.rib_shear_n - wanted) / greatest;
            assert_near(1.0 + off, 1.0, 0.05, what(end));
        }
        let at_end = states[2].rib_shear_n / solved.shear_near_ends[0];
        assert!((0.75..1.1).contains(&at_end), "{}: {at_end} at the end", what("lower"));
    }
}
