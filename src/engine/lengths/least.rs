//! The least sum of squares over the logarithms of the lengths, each kept between two bounds.
//!
//! Gauss and Newton's method: the pulls are taken as straight lines, which leaves a bounded least-squares
//! problem with a band of four; an active-set method solves that exactly, each of its steps by Givens
//! rotations. A step is halved until the sum is no greater.
//!
//! # Source
//!
//! Å. Björck, *Numerical Methods for Least Squares Problems*, SIAM 1996, sections 5.2 (bounds) and 6.2
//! (banded QR), from memory. The optimum is checked against a library in `tests/published/`.

/// Coefficients of the first, second and third difference.
const DIFFERENCES: [[f64; BAND]; 3] =
    [[-1.0, 1.0, 0.0, 0.0], [1.0, -2.0, 1.0, 0.0], [-1.0, 3.0, -3.0, 1.0]];
const BAND: usize = 4;
/// Most steps of Gauss and Newton; strings of a harp take three to six.
const MOST_STEPS: usize = 60;
/// A step that moves no string by more than this share of its length is the last.
const NEAR: f64 = 1e-10;
/// A bound gives way when its string would move off it by more than this share of its length.
const GIVES_WAY: f64 = 1e-12;

/// What to minimise: `Σ rᵢ(xᵢ)² + stiff² Σ (difference of x)²`, `leastᵢ ≤ xᵢ ≤ mostᵢ`.
pub(super) struct Problem<'a> {
    pub least: Vec<f64>,
    pub most: Vec<f64>,
    /// Which difference is to be small, from 1 to 3.
    pub order: usize,
    pub stiff: f64,
    /// Weighted residual of a string at a logarithm and its slope; `None` where nothing pulls.
    pub pull: &'a dyn Fn(usize, f64) -> Option<(f64, f64)>,
}

/// Where the sum is least.
pub(super) struct Found {
    pub logs: Vec<f64>,
    /// How far any string would still move if it alone moved to its best place within its bounds.
    pub off: f64,
    pub steps: usize,
}

#[derive(Clone, Copy, PartialEq)]
enum Side {
    Free,
    Least,
    Most,
    Fixed,
}

/// One square: `(Σ coefs · x − rhs)²`, from the column `first` on.
struct Equation {
    first: usize,
    coefs: [f64; BAND],
    rhs: f64,
}

/// The difference of an order that begins at a place; `None` where it would pass the end.
pub(super) fn difference(logs: &[f64], order: usize, first: usize) -> Option<f64> {
    let logs = logs.get(first..first + order + 1)?;
    let coefs = DIFFERENCES.get(order.checked_sub(1)?)?;
    Some(logs.iter().zip(coefs).map(|(log, coef)| log * coef).sum())
}

impl Problem<'_> {
    /// The sum of squares.
    pub(super) fn sum(&self, logs: &[f64]) -> f64 {
        let mut sum = 0.0;
        for (index, log) in logs.iter().enumerate() {
            let off = (self.pull)(index, *log).map_or(0.0, |(off, _)| off);
            let bend = self.stiff * difference(logs, self.order, index).unwrap_or(0.0);
            sum += off * off + bend * bend;
        }
        sum
    }

    /// The squares for a step from `logs`, ordered by their first columns.
    fn rows(&self, logs: &[f64]) -> Vec<Equation> {
        let mut rows = Vec::with_capacity(2 * logs.len());
        for (first, log) in logs.iter().enumerate() {
            if let Some((off, slope)) = (self.pull)(first, *log) {
                rows.push(Equation { first, coefs: [slope, 0.0, 0.0, 0.0], rhs: -off });
            }
            if let Some(bend) = difference(logs, self.order, first) {
                let coefs = DIFFERENCES[self.order - 1].map(|coef| self.stiff * coef);
                rows.push(Equation { first, coefs, rhs: -self.stiff * bend });
            }
        }
        rows
    }

    /// The least sum, from a start that is moved within the bounds.
    pub(super) fn minimise(&self, start: &[f64]) -> Found {
        let within = |index: usize, log: f64| log.max(self.least[index]).min(self.most[index]);
        let mut logs: Vec<f64> = start.iter().enumerate().map(|(i, log)| within(i, *log)).collect();
        let mut sides: Vec<Side> = (0..logs.len()).map(|index| self.side(index, &logs)).collect();
        let mut sum = self.sum(&logs);
        let mut steps = 0;
        while steps < MOST_STEPS {
            steps += 1;
            let bounds: Vec<(f64, f64)> = (0..logs.len())
                .map(|i| (self.least[i] - logs[i], self.most[i] - logs[i]))
                .collect();
            let step = bounded(&self.rows(&logs), &bounds, &mut sides);
            let mut share = 1.0;
            let taken = loop {
                let trial: Vec<f64> = logs
                    .iter()
                    .enumerate()
                    .map(|(i, log)| within(i, log + share * step[i]))
                    .collect();
                let there = self.sum(&trial);
                // As good as the digits of the sum allow.
                if there <= sum * (1.0 + 1e-14) {
                    break Some((trial, there));
                }
                share *= 0.5;
                if share < 1e-9 {
                    break None;
                }
            };
            let Some((next, there)) = taken else { break };
            (logs, sum) = (next, there);
            if step.iter().all(|step| step.abs() < NEAR) {
                break;
            }
        }
        let off = self.off(&logs);
        Found { logs, off, steps }
    }

    fn side(&self, index: usize, logs: &[f64]) -> Side {
        let (least, most) = (self.least[index], self.most[index]);
        if least >= most {
            Side::Fixed
        } else if logs[index] <= least {
            Side::Least
        } else if logs[index] >= most {
            Side::Most
        } else {
            Side::Free
        }
    }

    /// The Karush-Kuhn-Tucker conditions as a share of length: 0 where they hold.
    fn off(&self, logs: &[f64]) -> f64 {
        let (slope, bend) = slopes(&self.rows(logs), &vec![0.0; logs.len()]);
        let mut worst: f64 = 0.0;
        for (index, log) in logs.iter().enumerate() {
            if bend[index] > 0.0 {
                let to = log - slope[index] / bend[index];
                let to = to.max(self.least[index]).min(self.most[index]);
                worst = worst.max((to - log).abs());
            }
        }
        worst
    }
}

/// Half of the slope of the sum of squares along each column, and half of its bend.
fn slopes(rows: &[Equation], x: &[f64]) -> (Vec<f64>, Vec<f64>) {
    let (mut slope, mut bend) = (vec![0.0; x.len()], vec![0.0; x.len()]);
    for row in rows {
        let columns = row.first..(row.first + BAND).min(x.len());
        let off: f64 =
            columns.clone().zip(row.coefs).map(|(column, coef)| coef * x[column]).sum::<f64>()
                - row.rhs;
        for (column, coef) in columns.zip(row.coefs) {
            slope[column] += coef * off;
            bend[column] += coef * coef;
        }
    }
    (slope, bend)
}

/// The bounded least squares of a step, beginning at no step at all, which is within the bounds. `sides`
/// says which bounds are held at first and at last.
fn bounded(rows: &[Equation], bounds: &[(f64, f64)], sides: &mut [Side]) -> Vec<f64> {
    let mut x = vec![0.0; bounds.len()];
    for (x, (side, (least, most))) in x.iter_mut().zip(sides.iter().zip(bounds)) {
        match side {
            Side::Least => *x = *least,
            Side::Most => *x = *most,
            Side::Free | Side::Fixed => {}
        }
    }
    // Each step either reaches a bound or ends at the least sum on a face, none of which comes twice; the
    // count only stops rounding from going round.
    for _ in 0..20 * bounds.len() + 20 {
        let best = on_face(rows, &x, sides);
        let mut share = 1.0;
        let mut blocking = None;
        for (index, (least, most)) in bounds.iter().enumerate() {
            let (from, to) = (x[index], best[index]);
            let (bound, side) =
                if to < *least { (*least, Side::Least) } else { (*most, Side::Most) };
            if sides[index] == Side::Free && (to < *least || to > *most) {
                let until = ((bound - from) / (to - from)).clamp(0.0, 1.0);
                if until < share || blocking.is_none() {
                    share = until;
                    blocking = Some((index, bound, side));
                }
            }
        }
        for (x, best) in x.iter_mut().zip(&best) {
            *x = if blocking.is_some() { *x + share * (best - *x) } else { *best };
        }
        if let Some((index, bound, side)) = blocking {
            (x[index], sides[index]) = (bound, side);
            continue;
        }
        let (slope, bend) = slopes(rows, &x);
        let mut worst = GIVES_WAY;
        let mut freed = None;
        for (index, side) in sides.iter().enumerate() {
            let inward = match side {
                Side::Least => -slope[index],
                Side::Most => slope[index],
                Side::Free | Side::Fixed => continue,
            };
            if inward > worst * bend[index] {
                (worst, freed) = (inward / bend[index], Some(index));
            }
        }
        match freed {
            Some(index) => sides[index] = Side::Free,
            None => break,
        }
    }
    x
}

/// The least sum over the free columns, the others staying where they are.
fn on_face(rows: &[Equation], x: &[f64], sides: &[Side]) -> Vec<f64> {
    let mut place = Vec::with_capacity(x.len());
    let mut count = 0;
    for side in sides {
        place.push(count);
        count += usize::from(*side == Side::Free);
    }
    // The triangle, each line from its diagonal on, with its right side last.
    let mut triangle = vec![[0.0; BAND + 1]; count];
    for row in rows {
        let mut line = [0.0; BAND + 1];
        line[BAND] = row.rhs;
        let mut used = 0;
        for (column, coef) in (row.first..x.len()).zip(row.coefs) {
            if sides[column] == Side::Free {
                line[used] = coef;
                used += 1;
            } else {
                line[BAND] -= coef * x[column];
            }
        }
        rotate_in(&mut triangle[place[row.first]..], line);
    }
    let mut free = vec![0.0; count];
    for at in (0..count).rev() {
        let line = &triangle[at];
        let known: f64 = (1..BAND.min(count - at)).map(|k| line[k] * free[at + k]).sum();
        free[at] = if line[0] == 0.0 { 0.0 } else { (line[BAND] - known) / line[0] };
    }
    let mut all = x.to_vec();
    for (index, side) in sides.iter().enumerate() {
        if *side == Side::Free {
            all[index] = free[place[index]];
        }
    }
    all
}

/// Turns a line into a triangle by Givens rotations, until a line of it is still empty.
fn rotate_in(triangle: &mut [[f64; BAND + 1]], mut line: [f64; BAND + 1]) {
    for own in triangle {
        if own[..BAND].iter().all(|coef| *coef == 0.0) {
            if line[0] != 0.0 {
                *own = line;
                return;
            }
        } else if line[0] != 0.0 {
            // A root is much quicker than a hypotenuse, which is left to what squares do not hold.
            let square = own[0] * own[0] + line[0] * line[0];
            let long = if (1e-200..1e200).contains(&square) {
                square.sqrt()
            } else {
                own[0].hypot(line[0])
            };
            let (cosine, sine) = (own[0] / long, line[0] / long);
            for (own, line) in own.iter_mut().zip(&mut line) {
                (*own, *line) = (cosine * *own + sine * *line, cosine * *line - sine * *own);
            }
        }
        if line[..BAND].iter().all(|coef| *coef == 0.0) {
            return;
        }
        line.copy_within(1..BAND, 0);
        line[BAND - 1] = 0.0;
    }
}
