//! What lifts on a board do where others are.

use super::{Edges, Lift, Stiffness};
use crate::engine::structure::banded::Sparse;
use crate::engine::units::Force;

impl Stiffness {
    /// What each lift does where another one is: the work of the other on the rise under the first, in J, row by row.
    /// A rise counts over the length on which its lift is spread, so that rows and columns are alike.
    pub fn gives(&self, lifts: &[Lift], edges: Edges) -> Option<Vec<Vec<f64>>> {
        let edged = self.edged(edges);
        let split = edged.even()?;
        let loads: Vec<Vec<f64>> = lifts.chunks(1).map(|lift| self.loads(lift)).collect();
        let forces: Vec<Sparse> = loads.iter().map(|load| Sparse::of(load)).collect();
        let under = |load: &Vec<f64>| -> Vec<f64> {
            let mut rises = load.clone();
            split.solve(&mut rises);
            // Both halves of the board do as much.
            forces.iter().map(|force| 2.0 * force.times(&rises)).collect()
        };
        let all: Vec<Vec<f64>> = loads.iter().map(under).collect();
        all.iter().flatten().all(|number| number.is_finite()).then_some(all)
    }

    /// What all lifts together do where each of them is, each so many times: a row of [`gives`](Self::gives) times those.
    pub fn gives_under(&self, lifts: &[Lift], times: &[f64], edges: Edges) -> Option<Vec<f64>> {
        let edged = self.edged(edges);
        let of = |(lift, times): (&Lift, &f64)| {
            let force = Force::from_n(times * lift.force.to_n());
            Lift { force, ..*lift }
        };
        let all: Vec<Lift> = lifts.iter().zip(times).map(of).collect();
        let mut rises = self.loads(&all);
        edged.even()?.solve(&mut rises);
        let done = |lift: &[Lift]| 2.0 * Sparse::of(&self.loads(lift)).times(&rises);
        let all: Vec<f64> = lifts.chunks(1).map(done).collect();
        all.iter().all(|number| number.is_finite()).then_some(all)
    }
}
