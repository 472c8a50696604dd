//! The thickness of a board from place to place: rows across it, each with its thickness in the middle, halfway to the
//! sides and at the sides, with even steps between.

use super::patch::Grid;
use super::{Plate, Rigidity, between};
use crate::engine::units::{Length, Stress};

/// The most rows that are counted.
pub const MOST_ROWS: usize = 16;

/// A row: at which share of the way from the lower end it lies, and its thickness in m in the middle, halfway and at the
/// sides.
type Row = (f64, [f64; 3]);

/// The thickness of a board from place to place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thick {
    rows: [Row; MOST_ROWS],
    count: usize,
}

impl Thick {
    /// From rows in any order, each with the share of the way from the lower end to the upper. Before the first and beyond
    /// the last it stays as it is there. `None` without any, with more than [`MOST_ROWS`], or where a number is none.
    ///
    /// # Example
    ///
    /// ```
    /// use stringloft::engine::structure::plate::Thick;
    /// use stringloft::engine::units::Length;
    ///
    /// let mm = Length::from_mm;
    /// let rows = [(0.0, [8.0, 6.0, 4.0].map(mm)), (1.0, [4.0, 4.0, 2.0].map(mm))];
    /// let thick = Thick::new(&rows).expect("rows");
    /// assert!((thick.at(0.5, 0.25).to_mm() - 5.5).abs() < 1e-12);
    /// assert!((thick.at(1.0, 0.75).to_mm() - 3.0).abs() < 1e-12);
    /// ```
    pub fn new(given: &[(f64, [Length; 3])]) -> Option<Self> {
        let is_one = |(share, row): &(f64, [Length; 3])| {
            share.is_finite() && row.iter().all(|of| of.to_m() > 0.0 && of.to_m().is_finite())
        };
        if given.is_empty() || given.len() > MOST_ROWS || !given.iter().all(is_one) {
            return None;
        }
        let mut rows = [(0.0, [0.0; 3]); MOST_ROWS];
        for (row, (share, thick)) in rows.iter_mut().zip(given) {
            *row = (*share, thick.map(Length::to_m));
        }
        let of_all = rows.get_mut(..given.len())?;
        crate::engine::order::sort(of_all, |one, other| one.0 > other.0);
        Some(Self { rows, count: given.len() })
    }

    /// The rows in their order.
    pub fn rows(&self) -> &[(f64, [f64; 3])] {
        self.rows.get(..self.count).unwrap_or(&self.rows)
    }

    /// Between the rows beside a share of the way, in m.
    fn row(&self, share: f64) -> [f64; 3] {
        let rows = self.rows();
        let next = rows.partition_point(|row| row.0 < share);
        let to = rows.get(next).or(rows.last()).map_or((0.0, [0.0; 3]), |row| *row);
        let from = next.checked_sub(1).and_then(|at| rows.get(at)).copied().unwrap_or(to);
        let way = to.0 - from.0;
        let part = if way > 0.0 { ((share - from.0) / way).clamp(0.0, 1.0) } else { 1.0 };
        std::array::from_fn(|at| from.1[at] + part * (to.1[at] - from.1[at]))
    }

    /// At a share of the way along and of the way from the middle to a side.
    pub fn at(&self, share: f64, aside: f64) -> Length {
        let [middle, half, side] = self.row(share);
        let twice = 2.0 * aside.clamp(0.0, 1.0);
        Length::from_m(if twice < 1.0 {
            middle + twice * (half - middle)
        } else {
            half + (twice - 1.0) * (side - half)
        })
    }

    /// On the average from side to side.
    pub fn mean(&self, share: f64) -> Length {
        let [middle, half, side] = self.row(share);
        Length::from_m(0.25 * (middle + 2.0 * half + side))
    }

    /// At both ends of a board of even taper that is as thick everywhere, with as little wood as such a board may have.
    pub fn within(&self) -> (Length, Length) {
        let most = |row: [f64; 3]| row.into_iter().fold(0.0, f64::max);
        let inside = self.rows().iter().filter(|row| row.0 > 0.0 && row.0 < 1.0);
        let mut spots = vec![(0.0, most(self.row(0.0))), (1.0, most(self.row(1.0)))];
        spots.extend(inside.map(|row| (row.0, most(row.1))));
        let mut best: Option<(f64, f64)> = None;
        for (at, one) in spots.iter().enumerate() {
            for other in &spots[at + 1..] {
                let grows = (other.1 - one.1) / (other.0 - one.0);
                let line = |share: f64| one.1 + grows * (share - one.0);
                let holds = |spot: &(f64, f64)| line(spot.0) >= spot.1 - 1e-12;
                let (low, high) = (line(0.0), line(1.0));
                let less = best.is_none_or(|best| low + high < best.0 + best.1);
                if spots.iter().all(holds) && less {
                    best = Some((low, high));
                }
            }
        }
        let thickest = spots.iter().map(|spot| spot.1).fold(0.0, f64::max);
        let (low, high) = best.unwrap_or((thickest, thickest));
        (Length::from_m(low), Length::from_m(high))
    }
}

/// A place of a board between its middle and its edge.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Within {
    /// Bending moment across the board, for each metre along it, in N·m/m.
    pub moment_n_m_per_m: f64,
    /// Pull across it, in N for each metre along it; above 0 where it is stretched.
    pub pull_n_per_m: f64,
    /// How thick the board is there.
    pub thickness: Length,
}

impl Within {
    /// Stress at the surface, of bending and of a pull.
    pub fn stress(&self) -> Stress {
        let t = self.thickness.to_m();
        Stress::from_pa(
            6.0 * self.moment_n_m_per_m.abs() / (t * t) + self.pull_n_per_m.max(0.0) / t,
        )
    }
}

impl Plate {
    /// At a place `(ξ, y)`.
    pub(super) fn thickness_of(&self, (x, y): (f64, f64)) -> f64 {
        let share = y / self.length.to_m();
        if let Some(thick) = &self.thick {
            return thick.at(share, x).to_m();
        }
        between(self.thickness, share) * (1.0 - x * (1.0 - self.side_ratio))
    }

    pub(super) fn rigidity_at(&self, place: (f64, f64)) -> Rigidity {
        self.sheet.rigidity(self.thickness_of(place))
    }

    /// From side to side at a place of the middle line, from the lower end.
    pub fn width_at(&self, at: Length) -> Length {
        Length::from_m(between(self.width, at.to_m() / self.length.to_m()))
    }

    /// How thick the board is at a place of the middle line.
    pub fn thickness_at(&self, at: Length) -> Length {
        Length::from_m(self.thickness_of((0.0, at.to_m())))
    }

    /// How thick it is at the edge beside a place.
    pub fn edge_thickness_at(&self, at: Length) -> Length {
        Length::from_m(self.thickness_of((1.0, at.to_m())))
    }

    /// What is stressed most between middle and edge at a place, where bends are known best.
    pub(super) fn within(
        &self,
        grid: &Grid,
        (rises, pulls): (&[f64], Option<&[f64]>),
        at: f64,
    ) -> Option<Within> {
        self.thick.as_ref()?;
        let place = |x: f64| {
            let patch = grid.beside(at, x);
            let bends = grid.bends(patch, (x, at));
            let freedoms = Grid::freedoms(patch);
            let bent = |of: &[f64], way: usize| -> f64 {
                freedoms.iter().zip(&bends).map(|(freedom, parts)| parts[way] * of[*freedom]).sum()
            };
            let stiff = self.rigidity_at((x, at));
            Within {
                moment_n_m_per_m: -(stiff.across * bent(rises, 0) + stiff.both * bent(rises, 1)),
                pull_n_per_m: pulls.map_or(0.0, |of| bent(of, 1)),
                thickness: Length::from_m(self.thickness_of((x, at))),
            }
        };
        let mut all: Vec<Within> = grid.best_across().map(place).collect();
        // Where the thickness turns, halfway, the moment is the larger of both places beside it.
        let count = grid.best_across().take_while(|x| *x < 0.5).count();
        if let Some([one, other]) = count.checked_sub(1).and_then(|at| all.get(at..at + 2)) {
            let larger = |one: f64, other: f64| if other.abs() > one.abs() { other } else { one };
            let halfway = Within {
                moment_n_m_per_m: larger(one.moment_n_m_per_m, other.moment_n_m_per_m),
                pull_n_per_m: one.pull_n_per_m.max(other.pull_n_per_m),
                thickness: Length::from_m(self.thickness_of((0.5, at))),
            };
            all.push(halfway);
        }
        all.into_iter().reduce(|most, next| if next.stress() > most.stress() { next } else { most })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn thick(rows: &[(f64, [f64; 3])]) -> Option<Thick> {
        let rows: Vec<_> = rows.iter().map(|(at, row)| (*at, row.map(Length::from_mm))).collect();
        Thick::new(&rows)
    }

    #[test]
    fn what_is_no_map_is_none() {
        assert_eq!(thick(&[]), None);
        assert_eq!(thick(&[(0.0, [4.0, 0.0, 4.0])]), None);
        assert_eq!(thick(&[(f64::NAN, [4.0; 3])]), None);
        assert_eq!(thick(&[(0.5, [4.0; 3]); MOST_ROWS + 1]), None);
        assert!(thick(&[(0.5, [4.0; 3]); MOST_ROWS]).is_some());
    }

    #[test]
    fn rows_in_any_order_have_even_steps_between_and_stay_beyond() {
        let map = thick(&[(0.8, [4.0, 3.0, 2.0]), (0.2, [8.0, 7.0, 2.0])]).unwrap();
        for (share, aside, mm) in
            [(0.5, 0.0, 6.0), (0.5, 0.5, 5.0), (0.5, 1.0, 2.0), (0.0, 0.0, 8.0), (1.0, 0.25, 3.5)]
        {
            assert_close(map.at(share, aside).to_mm(), mm, 1e-12, format_args!("{share} {aside}"));
        }
        assert_close(map.mean(0.5).to_mm(), 4.5, 1e-12, "mean");
    }

    /// A bump in the middle is held by a line through it; an even taper by itself.
    #[test]
    fn a_tapered_board_holds_the_map_with_the_least_wood() {
        let (low, high) = thick(&[(0.0, [8.0, 6.0, 4.0]), (1.0, [4.0; 3])]).unwrap().within();
        assert_close(low.to_mm(), 8.0, 1e-12, "low");
        assert_close(high.to_mm(), 4.0, 1e-12, "high");
        let map = thick(&[(0.0, [6.0; 3]), (0.5, [5.0, 8.0, 5.0]), (1.0, [4.0; 3])]).unwrap();
        let (low, high) = map.within();
        for place in 0..=20 {
            let share = f64::from(place) / 20.0;
            let line = low.to_mm() + share * (high.to_mm() - low.to_mm());
            for aside in [0.0, 0.5, 1.0] {
                assert!(map.at(share, aside).to_mm() <= line + 1e-9, "{share} {aside}");
            }
        }
        assert_close(0.5 * (low.to_mm() + high.to_mm()), 8.0, 1e-12, "through the bump");
    }
}
