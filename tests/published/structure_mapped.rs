//! Boards whose thickness is given from place to place, against a library of finite elements.
//!
//! `scripts/mapped_values.py` wrote `mapped_values.json` from `scripts/mapped_boards.json`, which are boards that nobody
//! built; it says the version that it used.

use serde::Deserialize;
use stringloft::engine::structure::plate::{
    Bars, Edges, Lift, Plate, PlateState, Rib, Sheet, Thick,
};
use stringloft::engine::units::{Force, Length, Stress};

use super::{assert_near, assert_within};

/// A board as the script takes it.
#[derive(Deserialize)]
struct Board {
    name: String,
    length_mm: f64,
    width_mm: (f64, f64),
    edges: String,
    across_mpa: f64,
    along_mpa: f64,
    shear_mpa: f64,
    poisson: f64,
    rows_percent_mm: Vec<[f64; 4]>,
    rib_mm: (f64, f64),
    strip_mm: (f64, f64),
    rib_mpa: f64,
    line_n_per_m: f64,
}

#[derive(Deserialize)]
struct Values {
    boards: Vec<Solved>,
}

/// Place, rise in mm, moments across at the middle and at the side in N, moment of the rib in N·m, the greatest stress from
/// middle to side in MPa.
#[derive(Deserialize)]
struct Solved {
    name: String,
    places: Vec<[f64; 6]>,
}

fn pair((one, other): (f64, f64)) -> (Length, Length) {
    (Length::from_mm(one), Length::from_mm(other))
}

impl Board {
    fn plate(&self) -> Plate {
        let mpa = Stress::from_mpa;
        let row = |[at, middle, half, side]: &[f64; 4]| {
            (0.01 * at, [*middle, *half, *side].map(Length::from_mm))
        };
        let rows: Vec<_> = self.rows_percent_mm.iter().map(row).collect();
        let thick = Thick::new(&rows).expect("a map");
        Plate {
            length: Length::from_mm(self.length_mm),
            width: pair(self.width_mm),
            thickness: thick.within(),
            side_ratio: 1.0,
            thick: Some(thick),
            sheet: Sheet {
                across: mpa(self.across_mpa),
                along: mpa(self.along_mpa),
                shear: mpa(self.shear_mpa),
                poisson: self.poisson,
            },
            rib: Rib {
                inside: pair(self.rib_mm),
                outside: pair(self.strip_mm),
                modulus: mpa(self.rib_mpa),
            },
            bars: Bars::default(),
        }
    }

    fn lifts(&self) -> Vec<Lift> {
        let apart = self.length_mm / 96.0;
        let lift = |of: u32| Lift {
            at: Length::from_mm((f64::from(of) + 0.5) * apart),
            over: Length::from_mm(apart),
            force: Force::from_n(self.line_n_per_m * 1e-3 * apart),
        };
        (0..96).map(lift).collect()
    }
}

/// The greatest stress at the surface from middle to side, in MPa, as a board is judged.
fn stress(plate: &Plate, at: Length, state: &PlateState) -> f64 {
    let surface = |moment: f64, thickness: Length| 6.0 * moment.abs() / thickness.to_m().powi(2);
    let middle = surface(state.middle_n_m_per_m, plate.thickness_at(at));
    let edge = surface(state.edge_n_m_per_m, plate.edge_thickness_at(at));
    let within = state.within.expect("a map").stress().to_pa();
    1e-6 * middle.max(edge).max(within)
}

/// Source: scikit-fem, with triangles of fifth degree. Rises and stresses are compared one by one, moments as shares of the
/// greatest of their kind on that board.
pub fn boards_with_a_map_bend_as_by_finite_elements() {
    let values: Values = serde_json::from_str(include_str!("mapped_values.json"))
        .expect("the script writes this form");
    let boards: Vec<Board> = serde_json::from_str(include_str!("scripts/mapped_boards.json"))
        .expect("the script's boards");
    assert_eq!(boards.len(), values.boards.len());
    for (board, solved) in boards.iter().zip(&values.boards) {
        assert_eq!(board.name, solved.name);
        let edges = if board.edges == "clamped" { Edges::CLAMPED } else { Edges::HINGED };
        let plate = board.plate();
        let places: Vec<Length> = solved.places.iter().map(|row| Length::from_mm(row[0])).collect();
        let states = plate.under(&board.lifts(), edges, &places).expect("a board that holds");
        let most =
            |column: usize| solved.places.iter().map(|row| row[column].abs()).fold(0.0, f64::max);
        for ((state, row), at) in states.iter().zip(&solved.places).zip(&places) {
            let what = |of: &str| format!("{}, {of} at {} mm", board.name, row[0]);
            assert_near(state.rise.to_mm(), row[1], 0.03, what("rise"));
            // Beside a step of the thickness the larger moment counts on the thinner wood, which is the careful way.
            let ratio = stress(&plate, *at, state) / row[5];
            if ratio > 1.05 {
                assert_within(ratio, 1.05..=1.11, what("stress"));
            } else {
                assert_near(ratio, 1.0, 0.05, what("stress"));
            }
            for (ours, column, of) in [
                (state.middle_n_m_per_m, 2, "middle"),
                (state.edge_n_m_per_m, 3, "side"),
                (state.rib_n_m, 4, "rib"),
            ] {
                // Hinged sides bend by nothing to speak of, and there may be no rib.
                if most(column) > 0.05 * most(2) || (column == 4 && most(4) > 0.0) {
                    let off = (ours - row[column]) / most(column);
                    assert_near(1.0 + off, 1.0, 0.06, what(of));
                }
            }
        }
    }
}
