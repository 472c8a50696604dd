//! Boards that hang between their edges, that are pushed along, and that have bars, against a library of finite elements.
//!
//! `scripts/hanging_values.py` wrote `hanging_values.json` from `scripts/hanging_boards.json`, which are boards that nobody
//! built; it says the version that it used.

use serde::Deserialize;
use stringloft::engine::structure::plate::{
    Bars, Edges, Lift, MOST_PUSHED, Plate, Pulled, Push, Rib, Sheet, Support,
};
use stringloft::engine::units::{Force, Length, Stress};

use super::assert_near;

/// A board as the script takes it.
#[derive(Deserialize)]
struct Board {
    name: String,
    width_mm: (f64, f64),
    length_mm: f64,
    thickness_mm: (f64, f64),
    side_ratio: f64,
    across_mpa: f64,
    along_mpa: f64,
    shear_mpa: f64,
    poisson: f64,
    rib_mm: (f64, f64),
    strip_mm: (f64, f64),
    rib_mpa: f64,
    crosses_mm: Vec<f64>,
    cross_mm: (f64, f64),
    pair_mm: (f64, f64),
    pair_shares: Vec<f64>,
    bars_mpa: f64,
    edges: String,
    sides_n: f64,
    held: String,
    line_n_per_m: f64,
    shortened: f64,
}

#[derive(Deserialize)]
struct Values {
    boards: Vec<Solved>,
}

/// Pairs of a multiple of the load and the rise of the middle, and at how many times the push it bows: with halves that go
/// the same way, and with halves that go opposite ways.
#[derive(Deserialize)]
struct Solved {
    name: String,
    rises_mm: Vec<(f64, f64)>,
    bows_at: (f64, f64),
}

fn solved() -> Vec<(Board, Solved)> {
    let values: Values = serde_json::from_str(include_str!("hanging_values.json"))
        .expect("the script writes this form");
    let boards: Vec<Board> = serde_json::from_str(include_str!("scripts/hanging_boards.json"))
        .expect("the script's boards");
    let named = boards.iter().zip(&values.boards).all(|(one, other)| one.name == other.name);
    assert!(named && boards.len() == values.boards.len());
    boards.into_iter().zip(values.boards).collect()
}

fn pair((one, other): (f64, f64)) -> (Length, Length) {
    (Length::from_mm(one), Length::from_mm(other))
}

impl Board {
    /// Every plate has its bars across at places of their own, so that each is a plate with as many as it has, evenly apart.
    fn plate(&self) -> Plate {
        let mpa = Stress::from_mpa;
        let crosses = &self.crosses_mm;
        let apart = crosses.get(1).map_or(0.0, |second| second - crosses[0]);
        let even = crosses.windows(2).all(|pair| (pair[1] - pair[0] - apart).abs() < 1e-9);
        assert!(even, "{}", self.name);
        Plate {
            length: Length::from_mm(self.length_mm),
            width: pair(self.width_mm),
            thickness: pair(self.thickness_mm),
            side_ratio: self.side_ratio,
            thick: None,
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
            bars: Bars {
                cross: crosses.len(),
                cross_at: pair((crosses.first().copied().unwrap_or(0.0), apart)),
                cross_size: pair(self.cross_mm),
                pairs: self.pair_shares.len(),
                pair_shares: (
                    self.pair_shares.first().copied().unwrap_or(0.0),
                    self.pair_shares.last().copied().unwrap_or(0.0),
                ),
                pair_size: pair(self.pair_mm),
                modulus: mpa(self.bars_mpa),
            },
        }
    }

    fn support(&self) -> Support {
        let edges = match &*self.edges {
            "clamped" => Edges::CLAMPED,
            _ => Edges { sides_n: (self.sides_n, self.sides_n), ends_n: 0.0 },
        };
        let held = match &*self.held {
            "any way" => Pulled::AnyWay,
            "along" => Pulled::Along,
            _ => Pulled::No,
        };
        Support { edges, sides: held, sides_pa: f64::INFINITY, ends: held }
    }

    fn lifts(&self) -> Vec<Lift> {
        let apart = self.length_mm / 104.0;
        let lift = |of: u32| Lift {
            at: Length::from_mm((f64::from(of) + 0.5) * apart),
            over: Length::from_mm(apart),
            force: Force::from_n(self.line_n_per_m * 1e-3 * apart),
        };
        (0..104).map(lift).collect()
    }
}

/// Source: scikit-fem; rises of the middle up to nine times the thickness of the board.
pub fn boards_that_hang_rise_as_by_finite_elements() {
    for (board, solved) in solved() {
        let plate = board.plate();
        let stiffness = plate.stiffness().expect("a board that holds");
        let hanging = stiffness.hanging(&board.lifts(), board.support(), None);
        let mut hanging = hanging.expect("a board that holds");
        let middle = [Length::from_mm(0.5 * board.length_mm)];
        for (times, rise_mm) in solved.rises_mm {
            let ours = hanging.under(times, 1.0, &middle).expect("a board that holds").0[0];
            assert_near(ours.rise.to_mm(), rise_mm, 0.005, format!("{}, {times}", board.name));
        }
    }
}

/// Source: scikit-fem, as an eigenvalue; ours errs to the safe side by up to 1 % of its own.
pub fn boards_that_are_pushed_bow_as_by_finite_elements() {
    for (board, solved) in solved() {
        let plate = board.plate();
        let stiffness = plate.stiffness().expect("a board that holds");
        let pushed = [(0.0, board.shortened), (1.0, board.shortened)];
        let ours = stiffness.bows_at(board.support().edges, &Push(&pushed)).expect("it holds");
        let least = solved.bows_at.0.min(solved.bows_at.1);
        assert!(least < MOST_PUSHED, "{}", board.name);
        assert_near(ours, least, 0.012, &board.name);
    }
}
