//! Equations with a symmetric matrix whose numbers lie near its diagonal, as those of beams and plates do.

/// The lower half of a symmetric matrix, as far from the diagonal as `band` says.
#[derive(Clone, Debug)]
pub struct Banded {
    size: usize,
    /// How many numbers of a row are kept: the diagonal and those before it.
    width: usize,
    /// Row by row; the last of each is the diagonal.
    entries: Vec<f64>,
    /// Whether anything is held at 0, and which.
    held: Option<Vec<bool>>,
}

impl Banded {
    /// All zero, of so many rows, with so many numbers beside the diagonal.
    pub fn new(size: usize, band: usize) -> Self {
        let width = band + 1;
        Self { size, width, entries: vec![0.0; size * width], held: None }
    }

    fn at(&self, row: usize, column: usize) -> usize {
        row * self.width + self.width - 1 - (row - column)
    }

    /// Adds to the number at a row and a column, and so to that at column and row. The place above the diagonal is
    /// the one that is left out, and one beyond the band is ignored.
    pub fn add(&mut self, row: usize, column: usize, value: f64) {
        if column <= row && row < self.size && row - column < self.width {
            let at = self.at(row, column);
            self.entries[at] += value;
        }
    }

    /// Adds another of the same shape, so many times.
    pub fn add_all(&mut self, other: &Self, times: f64) {
        for (one, more) in self.entries.iter_mut().zip(&other.entries) {
            *one += times * more;
        }
    }

    /// The matrix times a vector of its size.
    pub fn times(&self, vector: &[f64]) -> Vec<f64> {
        let mut all = vec![0.0; self.size];
        for row in 0..self.size.min(vector.len()) {
            let first = row.saturating_sub(self.width - 1);
            let at = self.at(row, first);
            let own = &self.entries[at..at + row - first];
            let (before, from) = all.split_at_mut(row);
            let known = vector[row];
            for (entry, below) in own.iter().zip(&mut before[first..]) {
                *below += entry * known;
            }
            from[0] += inner(own, &vector[first..row]) + self.entries[self.at(row, row)] * known;
        }
        all
    }

    /// Holds an unknown at 0: its row and column no longer count. To be called before anything is solved.
    pub fn hold(&mut self, held: usize) {
        for row in held..self.size.min(held + self.width) {
            let at = self.at(row, held);
            self.entries[at] = 0.0;
        }
        for column in held.saturating_sub(self.width - 1)..held {
            let at = self.at(held, column);
            self.entries[at] = 0.0;
        }
        let at = self.at(held, held);
        self.entries[at] = 1.0;
        self.held.get_or_insert_with(|| vec![false; self.size])[held] = true;
    }

    /// The matrix of what is not held, with the places that its rows had.
    fn free(self) -> (Self, Option<Vec<usize>>) {
        let Some(held) = &self.held else { return (self, None) };
        let places: Vec<usize> = (0..self.size).filter(|place| !held[*place]).collect();
        // The first of each row that may be more than nought.
        let first = |of: &usize| places.partition_point(|place| place + self.width <= *of);
        let firsts: Vec<usize> = places.iter().map(first).collect();
        let band = firsts.iter().enumerate().map(|(row, first)| row - first).max().unwrap_or(0);
        let mut free = Self::new(places.len(), band);
        for (row, (place, first)) in places.iter().zip(firsts).enumerate() {
            let (own, from) = (self.at(*place, *place), free.at(row, first));
            for (to, column) in free.entries[from..].iter_mut().zip(&places[first..=row]) {
                *to = self.entries[own - (place - column)];
            }
        }
        (free, Some(places))
    }

    /// Splits the matrix into `L D Lᵀ`. `None` where a pivot is not above 0: what it describes does not stand.
    ///
    /// # Source
    ///
    /// The usual elimination without exchange, which a positive definite matrix allows; G. H. Golub and C. F. Van Loan,
    /// *Matrix Computations*, chapter 4 (from memory).
    pub fn split(self) -> Option<Split> {
        let (free, places) = self.free();
        Some(Split { matrix: free.eliminated()?, places })
    }

    fn eliminated(mut self) -> Option<Self> {
        let (size, width) = (self.size, self.width);
        let entries = self.entries.as_mut_slice();
        for row in 0..size {
            let first = row.saturating_sub(width - 1);
            let diagonal = row * width + width - 1;
            let (before, own) = entries.split_at_mut(diagonal - (row - first));
            let (own, pivot) = own.split_at_mut(row - first);
            for column in first..row {
                // Those before are L D in this row, and L in the row of the column.
                let its = column * width + width - 1;
                let (ours, from) = own.split_at_mut(column - first);
                from[0] -= inner(ours, &before[its - ours.len()..its]);
            }
            // The row is now divided by the pivots, and the diagonal follows.
            let mut left = pivot[0];
            for (step, entry) in own.iter_mut().enumerate() {
                let over = *entry / before[(first + step) * width + width - 1];
                left -= *entry * over;
                *entry = over;
            }
            if !(left > 0.0 && left.is_finite()) {
                return None;
            }
            pivot[0] = left;
        }
        Some(self)
    }
}

/// The sum of the products of two rows, in four sums side by side: in one, each product would wait for the one before.
pub(super) fn inner(one: &[f64], other: &[f64]) -> f64 {
    let ((ones, rest), (others, other_rest)) = (one.as_chunks::<4>(), other.as_chunks::<4>());
    let (mut first, mut second, mut third, mut fourth) = (0.0, 0.0, 0.0, 0.0);
    for ([a, b, c, d], [e, f, g, h]) in ones.iter().zip(others) {
        first += a * e;
        second += b * f;
        third += c * g;
        fourth += d * h;
    }
    let rest: f64 = rest.iter().zip(other_rest).map(|(one, other)| one * other).sum();
    ((first + second) + (third + fourth)) + rest
}

/// A matrix that is split, ready for any number of right-hand sides.
#[derive(Clone, Debug)]
pub struct Split {
    /// Of what is not held.
    matrix: Banded,
    /// The places of its rows, where some are held.
    places: Option<Vec<usize>>,
}

impl Split {
    /// The unknowns in place of the right-hand side. Those that are held stay what they are.
    pub fn solve(&self, side: &mut [f64]) {
        let Some(places) = &self.places else { return self.solve_free(side) };
        let of = |place: &usize| side.get(*place).copied().unwrap_or(0.0);
        let mut free: Vec<f64> = places.iter().map(of).collect();
        self.solve_free(&mut free);
        for (place, number) in places.iter().zip(free) {
            if let Some(to) = side.get_mut(*place) {
                *to = number;
            }
        }
    }

    fn solve_free(&self, side: &mut [f64]) {
        let Banded { size, width, entries, .. } = &self.matrix;
        let size = (*size).min(side.len());
        // What is nought before the first number that is none stays so on the way down.
        let start = side[..size].iter().position(|number| *number != 0.0).unwrap_or(size);
        for row in start..size {
            let first = row.saturating_sub(width - 1).max(start);
            let at = self.matrix.at(row, first);
            let (before, from) = side.split_at_mut(row);
            from[0] -= inner(&entries[at..at + row - first], &before[first..]);
        }
        for row in start..size {
            side[row] /= entries[self.matrix.at(row, row)];
        }
        for row in (0..size).rev() {
            let first = row.saturating_sub(width - 1);
            let at = self.matrix.at(row, first);
            let known = side[row];
            let own = &entries[at..at + row - first];
            for (entry, before) in own.iter().zip(&mut side[first..row]) {
                *before -= entry * known;
            }
        }
    }
}

/// Right-hand sides of which most numbers are nought, as forces at a place are.
#[derive(Clone, Debug)]
pub struct Sparse(Vec<(usize, f64)>);

impl Sparse {
    /// Those numbers that are not nought.
    pub fn of(side: &[f64]) -> Self {
        let numbers = side.iter().copied().enumerate();
        Self(numbers.filter(|(_, number)| *number != 0.0).collect())
    }

    /// The sum of its numbers times those of `other` in the same places.
    pub fn times(&self, other: &[f64]) -> f64 {
        self.0.iter().map(|(place, number)| number * other[*place]).sum()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    /// A chain of springs `1, 2, 3, …` from a wall, pulled at its end by 1: each stretches by 1 over its number.
    #[test]
    fn a_chain_of_springs_stretches_by_the_sum_of_its_links() {
        let mut chain = Banded::new(6, 1);
        let mut stiffness = 1.0;
        for link in 0..6 {
            chain.add(link, link, stiffness);
            if link > 0 {
                chain.add(link - 1, link - 1, stiffness);
                chain.add(link, link - 1, -stiffness);
            }
            stiffness += 1.0;
        }
        let mut ends = [0.0, 0.0, 0.0, 0.0, 0.0, 1.0];
        chain.clone().split().unwrap().solve(&mut ends);
        assert_close(ends[5], 1.0 + 0.5 + 1.0 / 3.0 + 0.25 + 0.2 + 1.0 / 6.0, 1e-14, "the end");
        assert_close(ends[1], 1.5, 1e-14, "the second");
        chain.hold(1);
        let mut held = [0.0, 7.0, 0.0, 0.0, 0.0, 1.0];
        held[1] = 0.0;
        chain.split().unwrap().solve(&mut held);
        assert_eq!((held[0], held[1]), (0.0, 0.0));
        assert_close(held[5], 1.0 / 3.0 + 0.25 + 0.2 + 1.0 / 6.0, 1e-14, "beyond the held one");
    }

    /// What is put together from a known answer gives it back, for a full band.
    #[test]
    fn a_known_answer_comes_back() {
        let size = 40;
        let mut matrix = Banded::new(size, 7);
        let mut full = vec![vec![0.0; size]; size];
        let mut add = |row: usize, column: usize, value: f64| {
            matrix.add(row, column, value);
            full[row][column] = value;
            full[column][row] = value;
        };
        for row in 0..size {
            for column in row.saturating_sub(7)..row {
                add(row, column, f64::sin((3 * row + 5 * column) as f64));
            }
            add(row, row, 16.0 + f64::cos(row as f64));
        }
        let answer: Vec<f64> = (0..size).map(|at| 1.0 + f64::sin(at as f64)).collect();
        let times = |row: &Vec<f64>| row.iter().zip(&answer).map(|(one, other)| one * other).sum();
        let mut side: Vec<f64> = full.iter().map(times).collect();
        for (ours, wanted) in matrix.times(&answer).iter().zip(&side) {
            assert!((ours - wanted).abs() < 1e-12, "times: {ours} for {wanted}");
        }
        matrix.split().unwrap().solve(&mut side);
        for (ours, wanted) in side.iter().zip(&answer) {
            assert!((ours - wanted).abs() < 1e-12, "{ours} for {wanted}");
        }
    }

    /// What is held leaves the equations of the others as they are without it, and a right-hand side of its own alone.
    #[test]
    fn the_others_are_as_if_what_is_held_were_not_there() {
        let (size, band) = (30, 5);
        let value = |row: usize, column: usize| {
            if row == column { 9.0 } else { f64::sin((2 * row + 7 * column) as f64) }
        };
        let is_held = |place: usize| place % 7 == 3 || place == 0 || place + 1 == size;
        let left: Vec<usize> = (0..size).filter(|place| !is_held(*place)).collect();
        let (mut whole, mut part) = (Banded::new(size, band), Banded::new(left.len(), band));
        for row in 0..size {
            for column in row.saturating_sub(band)..=row {
                whole.add(row, column, value(row, column));
            }
        }
        for (row, place) in left.iter().enumerate() {
            for (column, other) in left.iter().enumerate().take(row + 1) {
                if place - other <= band {
                    part.add(row, column, value(*place, *other));
                }
            }
        }
        (0..size).filter(|place| is_held(*place)).for_each(|place| whole.hold(place));
        let mut side: Vec<f64> = (0..size).map(|place| f64::cos(place as f64)).collect();
        let mut own: Vec<f64> = left.iter().map(|place| side[*place]).collect();
        whole.split().unwrap().solve(&mut side);
        part.split().unwrap().solve(&mut own);
        for (place, wanted) in left.iter().zip(&own) {
            assert_close(side[*place], *wanted, 1e-14, "a free one");
        }
        for place in (0..size).filter(|place| is_held(*place)) {
            assert_close(side[place], f64::cos(place as f64), 1e-15, "a held one");
        }
    }

    #[test]
    fn what_does_not_stand_is_none() {
        let mut loose = Banded::new(2, 1);
        loose.add(0, 0, 1.0);
        loose.add(1, 1, 1.0);
        loose.add(1, 0, -1.0);
        assert!(loose.split().is_none());
        assert!(Banded::new(3, 2).split().is_none());
        let mut odd = Banded::new(1, 0);
        odd.add(0, 0, f64::NAN);
        assert!(odd.split().is_none());
    }
}
