//! What a log of one string says: how fast it falls now, and when it will hold.
//!
//! A string that is brought up goes on stretching about with the logarithm of time. Each time that it is tuned up again,
//! what is added to its tension begins to stretch anew, and what was there goes on as it did.

use crate::engine::order::sort;
use crate::engine::pitch::ratio;

/// The time from which the logarithm counts, in minutes. From memory, no source.
pub const BEGINNING_MIN: f64 = 1.0;
/// Nothing is foretold beyond so many times the time that was logged. Common practice, no source.
pub const FORETOLD_TIMES: f64 = 10.0;
/// Minutes of a day.
pub const DAY_MIN: f64 = 24.0 * 60.0;

/// One line of a log.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Entry {
    /// When, in minutes from any beginning.
    pub minutes: f64,
    /// How far the string was from its pitch, in cents; below 0 it was flat. Of a tuning, how it was left.
    pub cents: f64,
    /// Whether it was tuned then, and not only heard.
    pub is_tuning: bool,
    /// How warm it was, in degrees Celsius, where that was noted.
    pub celsius: Option<f64>,
}

/// Why a log says nothing yet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoFit {
    /// No line is a tuning, so that it is not known since when it falls.
    NoTuning,
    /// No reading stands after a tuning, or all at the same moment.
    NoReading,
}

/// A reading against the law.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Left {
    /// When.
    pub minutes: f64,
    /// After which tuning, from 0.
    pub tuning: usize,
    /// How far it lay above the law, in cents.
    pub cents: f64,
}

/// A log with its law.
#[derive(Clone, Debug, PartialEq)]
pub struct Fit {
    /// What it goes by while time grows tenfold, in cents; below 0 it falls.
    pub per_decade_cents: f64,
    /// How far that may be off to either side, 95 of 100 times; `None` where there are only as many readings as unknowns.
    pub error_cents: Option<f64>,
    /// The scatter of the readings about the law, in cents; `None` as above.
    pub scatter_cents: Option<f64>,
    /// Where the law begins at the last tuning, in cents.
    pub level_cents: f64,
    /// Each reading against the law.
    pub left: Vec<Left>,
    /// When it was tuned, in minutes, and the share of its tension that was put on then.
    tunings: Vec<(f64, f64)>,
    /// When the last line was noted, in minutes.
    last_min: f64,
}

/// From when on a string will hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Holds {
    /// It does already.
    Already,
    /// From then on, in minutes.
    From(f64),
    /// Later than can be foretold.
    NotForetold,
}

/// How long the tunings have stretched at a moment, in decades: `Σ s lg(1 + (t − τ)/t₀)` over those before it.
fn decades(tunings: &[(f64, f64)], minutes: f64) -> f64 {
    let since =
        |(at, share): &(f64, f64)| share * (1.0 + (minutes - at).max(0.0) / BEGINNING_MIN).log10();
    tunings.iter().map(since).sum()
}

impl Fit {
    /// Where the law puts the string at a moment, if it is left alone, in cents.
    pub fn at(&self, minutes: f64) -> f64 {
        let last = self.tunings.last().map_or(0.0, |(at, _)| *at);
        let grown = decades(&self.tunings, minutes) - decades(&self.tunings, last);
        self.level_cents + self.per_decade_cents * grown
    }

    /// How far it goes in a day at a moment, in cents for a day, and how far that may be off to either side.
    ///
    /// `b Σ s/((t − τ + t₀) ln 10)`, the law's slope.
    pub fn cents_per_day(&self, minutes: f64) -> (f64, Option<f64>) {
        let one = |(at, share): &(f64, f64)| {
            share / (((minutes - at).max(0.0) + BEGINNING_MIN) * std::f64::consts::LN_10)
        };
        let slope = DAY_MIN * self.tunings.iter().map(one).sum::<f64>();
        (self.per_decade_cents * slope, self.error_cents.map(|error| error * slope))
    }

    /// The last moment for which anything is foretold, in minutes.
    pub fn horizon_min(&self) -> f64 {
        let first = self.tunings.first().map_or(self.last_min, |(at, _)| *at);
        first + FORETOLD_TIMES * (self.last_min - first)
    }

    /// From when on the string keeps within so many cents for so many days once it is tuned: as likely as not, and then as
    /// it is at the worst that the scatter allows. What the tuning itself adds is left out, as it is little.
    pub fn holds(&self, within_cents: f64, days: f64, from_min: f64) -> [Holds; 2] {
        let size = self.per_decade_cents.abs();
        let likely = self.holds_by(size, (within_cents, days), from_min);
        let surely = self.error_cents.map_or(Holds::NotForetold, |error| {
            self.holds_by(size + error, (within_cents, days), from_min)
        });
        [likely, surely]
    }

    fn holds_by(&self, size: f64, (within_cents, days): (f64, f64), from_min: f64) -> Holds {
        let while_min = days * DAY_MIN;
        let is_enough = |minutes: f64| {
            let grown =
                decades(&self.tunings, minutes + while_min) - decades(&self.tunings, minutes);
            size * grown.abs() <= within_cents
        };
        let latest = self.horizon_min() - while_min;
        if latest.is_nan() || from_min > latest {
            return Holds::NotForetold;
        }
        if is_enough(from_min) {
            return Holds::Already;
        }
        if !is_enough(latest) {
            return Holds::NotForetold;
        }
        let (mut too_soon, mut late) = (from_min, latest);
        // To the minute, and no more steps than a double has digits.
        for _ in 0..60 {
            let middle = 0.5 * (too_soon + late);
            if is_enough(middle) { late = middle } else { too_soon = middle }
        }
        Holds::From(late)
    }
}

/// Fits the law to a log by least squares: `c(t) = a + b (x(t) − x(τ))` with `x(t) = Σ s lg(1 + (t − τ)/t₀)`, one `b` for
/// the whole log and an `a` for each tuning.
///
/// A string that is first put on has all its tension new, `s = 1`; one that is tuned up by some cents has so much of it new as
/// the tension rose by, `s = 1 − 2^(−cents/600)`. Lines before the first tuning and numbers that are none are left out.
/// Where the drift with temperature is known, readings are brought to the first temperature that was noted.
///
/// The bounds are those of a straight line through readings that scatter evenly: 95 of 100 of them hold what is true.
///
/// # Source
///
/// That creep goes with the logarithm of time: from memory; superposition of steps, Boltzmann, from memory. Least squares
/// and Student's distribution, as in any textbook of statistics.
///
/// # Errors
///
/// Why the log says nothing.
///
/// # Example
///
/// Nine minutes after tuning ten times the first minute has gone, after 99 a hundred times: 3 cents each.
///
/// ```
/// use stringloft::engine::settling::creep::{Entry, fit};
///
/// let entry = |minutes, cents, is_tuning| Entry { minutes, cents, is_tuning, celsius: None };
/// let log = [entry(0.0, 0.0, true), entry(9.0, -3.0, false), entry(99.0, -6.0, false)];
/// let fit = fit(&log, None).expect("readings after a tuning");
/// assert!((fit.per_decade_cents + 3.0).abs() < 1e-12);
/// assert!(fit.error_cents.expect("three lines for two unknowns") < 1e-12);
/// ```
pub fn fit(log: &[Entry], cents_per_kelvin: Option<f64>) -> Result<Fit, NoFit> {
    let entries = in_order(log, cents_per_kelvin);
    let first = entries.iter().position(|entry| entry.is_tuning).ok_or(NoFit::NoTuning)?;
    let entries = &entries[first..];
    let tunings = tunings(entries);
    // Reading by reading: its tuning, how long all have stretched, how far off it was.
    let mut points: Vec<(usize, f64, f64)> = Vec::new();
    let mut count = 0;
    for entry in entries {
        count += usize::from(entry.is_tuning);
        points.push((count - 1, decades(&tunings[..count], entry.minutes), entry.cents));
    }
    let middles: Vec<(f64, f64)> = (0..count).map(|tuning| middle(&points, tuning)).collect();
    let (mut across, mut both) = (0.0, 0.0);
    for (tuning, x, cents) in &points {
        let (x, cents) = (x - middles[*tuning].0, cents - middles[*tuning].1);
        across += x * x;
        both += x * cents;
    }
    if across <= 0.0 {
        return Err(NoFit::NoReading);
    }
    let slope = both / across;
    let left = |((tuning, x, cents), entry): (&(usize, f64, f64), &Entry)| {
        let (middle_x, middle_cents) = middles[*tuning];
        let cents = cents - middle_cents - slope * (x - middle_x);
        Left { minutes: entry.minutes, tuning: *tuning, cents }
    };
    let left: Vec<Left> = points.iter().zip(entries).map(left).collect();
    let free = points.len().saturating_sub(count + 1);
    let squares: f64 = left.iter().map(|left| left.cents * left.cents).sum();
    let scatter =
        (free > 0).then(|| (squares / f64::from(u32::try_from(free).unwrap_or(u32::MAX))).sqrt());
    let last = tunings.last().map_or(0.0, |(at, _)| *at);
    let (middle_x, middle_cents) = middles.last().copied().unwrap_or_default();
    Ok(Fit {
        per_decade_cents: slope,
        error_cents: scatter.map(|scatter| students_t(free) * scatter / across.sqrt()),
        scatter_cents: scatter,
        level_cents: middle_cents + slope * (decades(&tunings, last) - middle_x),
        left,
        last_min: entries.last().map_or(last, |entry| entry.minutes),
        tunings,
    })
}

/// The lines that can be used, by time and at one temperature; a reading of a moment comes before a tuning of the same.
fn in_order(log: &[Entry], cents_per_kelvin: Option<f64>) -> Vec<Entry> {
    let is_number = |entry: &&Entry| entry.minutes.is_finite() && entry.cents.is_finite();
    let mut entries: Vec<Entry> = log.iter().filter(is_number).copied().collect();
    sort(&mut entries, |one, next| {
        (one.minutes > next.minutes)
            || (one.minutes == next.minutes && one.is_tuning && !next.is_tuning)
    });
    let first = entries.iter().find_map(|entry| entry.celsius);
    if let (Some(drift), Some(first)) = (cents_per_kelvin, first) {
        for entry in &mut entries {
            entry.cents -= drift * entry.celsius.map_or(0.0, |celsius| celsius - first);
        }
    }
    entries
}

/// When a string was tuned, and the share of its tension that was put on.
fn tunings(entries: &[Entry]) -> Vec<(f64, f64)> {
    let mut before: Option<f64> = None;
    let mut tunings = Vec::new();
    for entry in entries {
        if entry.is_tuning {
            let share = before.map_or(1.0, |before| {
                let lower = ratio(before - entry.cents);
                1.0 - lower * lower
            });
            tunings.push((entry.minutes, share));
        }
        before = Some(entry.cents);
    }
    tunings
}

/// The middle of the readings after a tuning.
fn middle(points: &[(usize, f64, f64)], tuning: usize) -> (f64, f64) {
    let own = || points.iter().filter(move |(of, ..)| *of == tuning);
    let count = f64::from(u32::try_from(own().count().max(1)).unwrap_or(u32::MAX));
    let sum = |of: fn(&(usize, f64, f64)) -> f64| own().map(of).sum::<f64>() / count;
    (sum(|point| point.1), sum(|point| point.2))
}

/// Student's t for bounds that hold 95 of 100 times, both sides together.
///
/// Exact for one and two degrees of freedom, beyond by the first terms of its series in `1/n`: within 0.13 %.
///
/// # Source
///
/// M. Abramowitz and I. A. Stegun, *Handbook of Mathematical Functions*, 26.7.5: from memory. Held to `SciPy`'s values by the
/// tests.
pub fn students_t(freedom: usize) -> f64 {
    const Z: f64 = 1.959_963_984_540_054;
    match freedom {
        0 => f64::INFINITY,
        1 => (0.475 * std::f64::consts::PI).tan(),
        2 => 0.95 * (2.0 / (1.0 - 0.95 * 0.95_f64)).sqrt(),
        more => {
            let n = f64::from(u32::try_from(more).unwrap_or(u32::MAX));
            let (z3, z5, z7, z9) = (Z.powi(3), Z.powi(5), Z.powi(7), Z.powi(9));
            Z + (z3 + Z) / (4.0 * n)
                + (5.0 * z5 + 16.0 * z3 + 3.0 * Z) / (96.0 * n * n)
                + (3.0 * z7 + 19.0 * z5 + 17.0 * z3 - 15.0 * Z) / (384.0 * n.powi(3))
                + (79.0 * z9 + 776.0 * z7 + 1_482.0 * z5 - 1_920.0 * z3 - 945.0 * Z)
                    / (92_160.0 * n.powi(4))
        }
    }
}

#[cfg(test)]
mod tests;
