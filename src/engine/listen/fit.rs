//! The stiff string that fits some partials best: its first partial and its inharmonicity, by least squares.
//!
//! Partials follow `f_n² = n² F (1 + B n²)`, so that `(f_n/n)²` over `n²` is a line: `F` where it begins, `F B` its
//! slope, and the square of the first partial is the sum of both. What the design says of `B` counts as one more
//! measurement, as sure as it is.

use super::CENTS_PER_RATIO;

/// A partial lies no closer than this to where a stiff string has it, in cents: ends that give, and neighbours.
const LEAST_OFF_CENTS: f64 = 0.15;
/// A partial counts half when it lies so many times its own doubt off the line.
const STRAYS: f64 = 2.0;
/// Rounds in which partials that stray lose their weight.
const ROUNDS: usize = 12;

/// What is known of the inharmonicity beforehand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Known {
    /// Its likeliest value.
    pub b: f64,
    /// How far off it may be, one standard deviation.
    pub off: f64,
}

impl Known {
    /// Where nothing is known: as on most strings of harps. Common practice, no source.
    pub const NOTHING: Self = Self { b: 1e-4, off: 3e-4 };

    /// Where a design gives it: modulus, gauge and length are off by a third at the worst. Common practice, no source.
    pub fn designed(b: f64) -> Self {
        Self { b, off: 0.2 * b + 3e-6 }
    }

    fn bounds(self) -> (f64, f64) {
        ((self.b - 3.0 * self.off).max(0.0), self.b + 3.0 * self.off)
    }
}

/// A partial that was found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Partial {
    /// Its number.
    pub n: u32,
    /// Its frequency.
    pub hz: f64,
    /// How far off `hz` may be, one standard deviation.
    pub off_hz: f64,
    /// Its power.
    pub power: f64,
}

/// A stiff string by its partials.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Series {
    /// The first partial.
    pub first_hz: f64,
    /// Inharmonicity.
    pub b: f64,
    /// How far off the first partial may be, one standard deviation, in cents.
    pub off_cents: f64,
}

impl Series {
    /// Where partial `n` lies.
    pub fn partial_hz(&self, n: u32) -> f64 {
        let n = f64::from(n);
        self.first_hz * n * ((1.0 + self.b * n * n) / (1.0 + self.b)).sqrt()
    }
}

/// The sums of a line through weighted points: of `v` over `x`.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Line {
    weight: f64,
    x: f64,
    xx: f64,
    v: f64,
    xv: f64,
}

impl Line {
    /// A line of which only the inharmonicity is known beforehand, around `first_hz`, which is as good as unknown.
    pub fn known(known: Known) -> Self {
        let weight = 1.0 / (known.off * known.off);
        Self {
            weight: weight * known.b * known.b,
            x: -weight * known.b,
            xx: weight,
            v: 0.0,
            xv: 0.0,
        }
    }

    /// Takes in a partial that lies at `hz`, with its frequency in units of about that of the first.
    pub fn add(&mut self, n: u32, hz_ratio: f64, off_ratio: f64) {
        let n = f64::from(n);
        let (x, v) = (n * n, (hz_ratio / n) * (hz_ratio / n));
        let weight = 1.0 / (2.0 * v * off_ratio).powi(2);
        self.weight += weight;
        self.x += weight * x;
        self.xx += weight * x * x;
        self.v += weight * v;
        self.xv += weight * x * v;
    }

    /// The best line, its inharmonicity kept within bounds: the square of the first partial, `B`, and how far off the
    /// square may be.
    fn best(&self, bounds: (f64, f64)) -> Option<(f64, f64, f64)> {
        let whole = self.weight * self.xx - self.x * self.x;
        let (start, slope) = (
            (self.v * self.xx - self.xv * self.x) / whole,
            (self.weight * self.xv - self.x * self.v) / whole,
        );
        let b = slope / start;
        if !(whole > 0.0 && start > 0.0 && b.is_finite()) {
            return None;
        }
        let off = ((self.xx - 2.0 * self.x + self.weight) / whole).max(0.0).sqrt();
        if b >= bounds.0 && b <= bounds.1 {
            return Some((start + slope, b, off));
        }
        // Along the bound, of all lines `s (1 + b x)` the best.
        let b = b.clamp(bounds.0, bounds.1);
        let own = self.weight + 2.0 * b * self.x + b * b * self.xx;
        let start = (self.v + b * self.xv) / own;
        Some((start * (1.0 + b), b, off))
    }

    /// The series of a line whose partials were given in units of `unit_hz`.
    pub fn series(&self, unit_hz: f64, known: Known) -> Option<Series> {
        let (square, b, off) = self.best(known.bounds())?;
        let first_hz = unit_hz * square.sqrt();
        let off_cents = CENTS_PER_RATIO * off / (2.0 * square);
        let is_sound = first_hz.is_finite() && first_hz > 0.0 && off_cents.is_finite();
        is_sound.then_some(Series { first_hz, b, off_cents })
    }
}

/// How far a partial lies above where a series has it, in cents, and its doubt.
fn miss(series: &Series, partial: &Partial) -> (f64, f64) {
    let off = CENTS_PER_RATIO * partial.off_hz / partial.hz;
    let cents = CENTS_PER_RATIO * (partial.hz / series.partial_hz(partial.n)).ln();
    (cents, off.hypot(LEAST_OFF_CENTS))
}

/// The series that fits some partials best, beginning with one that is near. Partials that stray from all others count
/// less and less: hum, other strings.
pub(super) fn fit(near: Series, partials: &[Partial], known: Known) -> Option<Series> {
    let unit_hz = near.first_hz;
    let mut series = near;
    for _ in 0..ROUNDS {
        let mut line = Line::known(known);
        let (mut strays, mut weights) = (0.0, 0.0);
        for partial in partials {
            let (cents, off) = miss(&series, partial);
            let stray = cents / (STRAYS * off);
            let weight = 1.0 / (1.0 + stray * stray);
            line.add(partial.n, partial.hz / unit_hz, off / CENTS_PER_RATIO / weight.sqrt());
            strays += weight * (cents / off).powi(2);
            weights += weight;
        }
        series = line.series(unit_hz, known)?;
        // Where partials scatter more than they should, so does what follows from them.
        series.off_cents *= (strays / weights).sqrt().max(1.0);
    }
    Some(series)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn string(first_hz: f64, b: f64) -> Series {
        Series { first_hz, b, off_cents: 0.0 }
    }

    fn partials(of: &Series, numbers: &[u32], off_hz: f64) -> Vec<Partial> {
        let partial = |n: &u32| Partial { n: *n, hz: of.partial_hz(*n), off_hz, power: 1.0 };
        numbers.iter().map(partial).collect()
    }

    /// The partials of a stiff string, by which the line is drawn, give the string back.
    #[test]
    fn exact_partials_give_their_string_back() {
        for (hz, b, designed) in [(32.7, 3e-4, 2.5e-4), (440.0, 1e-5, 1.1e-5), (261.6, 0.0, 0.0)] {
            let own = string(hz, b);
            let partials = partials(&own, &[2, 3, 4, 5, 6, 7, 8, 9, 10, 12], 1e-4);
            let near = string(1.003 * hz, designed);
            let got = fit(near, &partials, Known::designed(designed)).unwrap();
            let cents = CENTS_PER_RATIO * (got.first_hz / hz).ln();
            assert!(cents.abs() < 0.02, "{hz} Hz: {cents} cents");
            assert!((got.b - b).abs() < 0.02 * b + 1e-7, "{hz} Hz: {} for {b}", got.b);
        }
    }

    #[test]
    fn a_partial_that_strays_counts_little() {
        let own = string(98.0, 1e-4);
        let mut heard = partials(&own, &[1, 2, 3, 4, 5, 6, 7, 8], 0.02);
        heard[3].hz *= 1.015;
        let got = fit(own, &heard, Known::designed(1e-4)).unwrap();
        let cents = CENTS_PER_RATIO * (got.first_hz / 98.0).ln();
        assert!(cents.abs() < 0.1, "{cents} cents, where one partial is 26 cents off");
    }

    /// One partial alone says nothing of `B`: the design does.
    #[test]
    fn what_the_partials_do_not_say_the_design_says() {
        let own = string(1_000.0, 2e-4);
        let heard = partials(&own, &[2], 0.05);
        let got = fit(string(1_001.0, 2e-4), &heard, Known::designed(2e-4)).unwrap();
        assert!((got.b / 2e-4 - 1.0).abs() < 1e-6, "{}", got.b);
        assert!(CENTS_PER_RATIO * (got.first_hz / 1_000.0).ln().abs() < 1e-3, "{}", got.first_hz);
        // Partials that ask for more than the design can be off are held to its bounds.
        let odd = partials(&string(1_000.0, 9e-3), &[1, 2, 3, 4, 5], 1e-3);
        let held = fit(string(1_000.0, 2e-4), &odd, Known::designed(2e-4)).unwrap();
        assert!(held.b <= 2e-4 + 3.0 * Known::designed(2e-4).off + 1e-12, "{}", held.b);
    }
}
