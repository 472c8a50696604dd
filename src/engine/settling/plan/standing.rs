//! A harp that gives as one elastic whole, while its pins are turned.

use crate::engine::giving::{Strung, wound};
use crate::engine::structure::banded::Split;

/// A harp as one elastic whole.
pub(super) struct Elastic {
    pub(super) gives: Vec<Vec<f64>>,
    pub(super) strings: Vec<Strung>,
}

impl Elastic {
    /// Midway between several: what gives, and what the strings stretch, is the mean.
    pub(super) fn midway(all: &[Self]) -> Option<Self> {
        let first = all.first()?;
        let size = first.strings.len();
        let share = 1.0 / f64::from(u32::try_from(all.len()).ok()?);
        let mean = |of: &dyn Fn(&Self) -> f64| share * all.iter().map(of).sum::<f64>();
        let row =
            |row: usize| (0..size).map(|column| mean(&|of: &Self| of.gives[row][column])).collect();
        let string = |at: usize| Strung {
            stiffness_n_per_m: 1.0 / mean(&|of: &Self| 1.0 / of.strings[at].stiffness_n_per_m),
            ..first.strings[at]
        };
        let gives = (0..size).map(row).collect();
        Some(Self { gives, strings: (0..size).map(string).collect() })
    }

    /// What is wound onto each pin when all have these tensions, in metres.
    pub(super) fn wound_m(&self, tensions_n: &[f64]) -> Vec<f64> {
        let rows = self.gives.iter().zip(&self.strings).zip(tensions_n);
        rows.map(|((row, string), tension)| {
            let nearer: f64 = row.iter().zip(tensions_n).map(|(c, t)| c * t).sum();
            tension / string.stiffness_n_per_m + nearer
        })
        .collect()
    }
}

/// A harp on the way up.
pub(super) struct Standing<'a> {
    pub(super) harp: &'a Elastic,
    /// What is wound onto each pin beyond slack, in metres.
    pub(super) wound_m: Vec<f64>,
    /// The strings that are up, as they came.
    pub(super) up: Vec<usize>,
    split: Option<Split>,
}

impl<'a> Standing<'a> {
    pub(super) fn slack(harp: &'a Elastic) -> Self {
        Self { harp, wound_m: vec![0.0; harp.strings.len()], up: Vec::new(), split: None }
    }

    /// All tensions, in newtons; 0 of what is not up.
    pub(super) fn tensions_n(&self) -> Vec<f64> {
        let mut tensions = vec![0.0; self.wound_m.len()];
        if let Some(split) = &self.split {
            let mut side: Vec<f64> = self.up.iter().map(|one| self.wound_m[*one]).collect();
            split.solve(&mut side);
            self.up.iter().zip(side).for_each(|(one, tension)| tensions[*one] = tension);
        }
        tensions
    }

    /// Counts a string among those that are up; its place among them. `None` where the harp does not hold itself up.
    pub(super) fn put_on(&mut self, one: usize) -> Option<usize> {
        if let Some(at) = self.up.iter().position(|up| *up == one) {
            return Some(at);
        }
        self.up.push(one);
        self.split = Some(wound(&self.harp.gives, &self.harp.strings, &self.up).split()?);
        Some(self.up.len() - 1)
    }

    /// Turns the pin of a string until it has a tension.
    pub(super) fn bring(&mut self, one: usize, tension_n: f64) -> Option<()> {
        let at = self.put_on(one)?;
        let now = self.tensions_n()[one];
        let mut answer = vec![0.0; self.up.len()];
        answer[at] = 1.0;
        self.split.as_ref()?.solve(&mut answer);
        self.wound_m[one] += (tension_n - now) / answer[at];
        Some(())
    }

    /// Turns the pin of a string until so much is wound onto it, but to no more than the highest tension. Gives the tension
    /// it has then, and whether that is the highest.
    pub(super) fn wind(&mut self, one: usize, wound_m: f64, most_n: f64) -> Option<(f64, bool)> {
        self.put_on(one)?;
        self.wound_m[one] = wound_m;
        let tension = self.tensions_n()[one];
        if tension > most_n {
            self.bring(one, most_n)?;
            return Some((most_n, true));
        }
        Some((tension, false))
    }
}
