//! A beam under tension between two pins, by cubic Hermite elements: an independent judge of the engine.
//!
//! Each node has a deflection and a slope. Stiffness is `∫ EI w″² + T w′²`, mass `∫ μ w²`, both integrated
//! exactly over each element. Eigenvalues come by bisection on the count of negative pivots of `K − λM`
//! (Sylvester's law of inertia), so no library and no engine formula takes part.

use std::f64::consts::TAU;

use crate::assert_near;

/// Entries beside the diagonal: a node couples with the next one, two unknowns each.
const BAND: usize = 3;

/// Stiffness and mass of a beam; row `i` holds the entries `i` to `i + 3` of the upper half.
pub struct Beam {
    stiffness: Vec<[f64; BAND + 1]>,
    mass: Vec<[f64; BAND + 1]>,
}

/// An element: its length and its mass per metre.
type Element = (f64, f64);

impl Beam {
    /// A beam of one mass per metre, in equal elements.
    pub fn uniform(length_m: f64, count: usize, kg_per_m: f64, rigidity: f64, pull_n: f64) -> Self {
        let share = 1.0 / f64::from(u32::try_from(count).expect("a few elements"));
        Self::of(&vec![(length_m * share, kg_per_m); count], rigidity, pull_n)
    }

    /// A beam whose ends, each a `share` of the length, have the second of the two masses per metre.
    pub fn stepped(
        length_m: f64,
        share: f64,
        (middle, ends): (f64, f64),
        rigidity: f64,
        pull_n: f64,
    ) -> Self {
        let end = vec![(length_m * share / 8.0, ends); 8];
        let wound = vec![(length_m * (1.0 - 2.0 * share) / 96.0, middle); 96];
        Self::of(&[end.clone(), wound, end].concat(), rigidity, pull_n)
    }

    fn of(elements: &[Element], rigidity: f64, pull_n: f64) -> Self {
        let unknowns = 2 * (elements.len() + 1);
        let mut whole = Self {
            stiffness: vec![[0.0; BAND + 1]; unknowns],
            mass: vec![[0.0; BAND + 1]; unknowns],
        };
        for (at, element) in elements.iter().enumerate() {
            whole.add(2 * at, *element, rigidity, pull_n);
        }
        whole.hold_ends()
    }

    fn add(&mut self, first: usize, (h, kg_per_m): Element, rigidity: f64, pull_n: f64) {
        let h2 = h * h;
        let bending = [
            [12.0, 6.0 * h, -12.0, 6.0 * h],
            [6.0 * h, 4.0 * h2, -6.0 * h, 2.0 * h2],
            [-12.0, -6.0 * h, 12.0, -6.0 * h],
            [6.0 * h, 2.0 * h2, -6.0 * h, 4.0 * h2],
        ];
        let stretching = [
            [36.0, 3.0 * h, -36.0, 3.0 * h],
            [3.0 * h, 4.0 * h2, -3.0 * h, -h2],
            [-36.0, -3.0 * h, 36.0, -3.0 * h],
            [3.0 * h, -h2, -3.0 * h, 4.0 * h2],
        ];
        let inertia = [
            [156.0, 22.0 * h, 54.0, -13.0 * h],
            [22.0 * h, 4.0 * h2, 13.0 * h, -3.0 * h2],
            [54.0, 13.0 * h, 156.0, -22.0 * h],
            [-13.0 * h, -3.0 * h2, -22.0 * h, 4.0 * h2],
        ];
        for row in 0..4 {
            for column in row..4 {
                let place = column - row;
                self.stiffness[first + row][place] += rigidity / (h2 * h) * bending[row][column]
                    + pull_n / (30.0 * h) * stretching[row][column];
                self.mass[first + row][place] += kg_per_m * h / 420.0 * inertia[row][column];
            }
        }
    }

    /// The pins: the deflection of the first and of the last node is cut from the rest, with stiffness and no
    /// mass of its own, so that it has no eigenvalue.
    fn hold_ends(mut self) -> Self {
        let last = self.mass.len() - 2;
        for end in [0, last] {
            for row in end.saturating_sub(BAND)..=end {
                self.stiffness[row][end - row] = 0.0;
                self.mass[row][end - row] = 0.0;
            }
            self.stiffness[end] = [1.0, 0.0, 0.0, 0.0];
            self.mass[end] = [0.0; BAND + 1];
        }
        self
    }

    /// How many eigenvalues lie below `lambda`: the negative pivots of `K − λM = L D Lᵀ`.
    fn count_below(&self, lambda: f64) -> usize {
        let less = |(k, m): (&[f64; BAND + 1], &[f64; BAND + 1])| {
            let mut row = *k;
            row.iter_mut().zip(m).for_each(|(k, m)| *k -= lambda * m);
            row
        };
        let mut rows: Vec<_> = self.stiffness.iter().zip(&self.mass).map(less).collect();
        let mut negative = 0;
        for at in 0..rows.len() {
            let pivot_row = rows[at];
            let pivot = pivot_row[0];
            negative += usize::from(pivot < 0.0);
            for below in 1..=BAND.min(rows.len() - 1 - at) {
                let factor = pivot_row[below] / pivot;
                for place in below..=BAND {
                    rows[at + below][place - below] -= factor * pivot_row[place];
                }
            }
        }
        negative
    }

    /// The frequency of partial `n`, counted from 1, in hertz.
    pub fn partial(&self, n: usize) -> f64 {
        let (mut low, mut high) = (0.0, 1.0);
        while self.count_below(high) < n {
            high *= 4.0;
        }
        for _ in 0..80 {
            let middle = 0.5 * (low + high);
            if self.count_below(middle) < n { low = middle } else { high = middle }
        }
        (0.5 * (low + high)).sqrt() / TAU
    }
}

pub fn a_beam_without_pull_sounds_as_euler_and_bernoulli_have_it() {
    // Pinned at both ends: `f_n = (π/2) n² √(EI/μ)/L²`, a closed form. Cubic elements sound sharp by the share
    // `(kh)⁴/1440`, half of what is known of their eigenvalues, with `kh = nπ` over the count of elements.
    let beam = Beam::uniform(2.0, 64, 0.5, 3.0, 0.0);
    for n in 1..=6_u32 {
        let closed = TAU / 4.0 * f64::from(n * n) * (3.0_f64 / 0.5).sqrt() / 4.0;
        let known = (f64::from(n) * TAU / 128.0).powi(4) / 1440.0;
        let room = 0.02 * known + 1e-9;
        assert_near(beam.partial(n as usize), closed * (1.0 + known), room, format_args!("{n}"));
    }
}
