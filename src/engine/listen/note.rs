//! A string from when it was struck until it is heard no more.

use super::{HIGHEST, Heard, LASTS_DB, LASTS_S, NoteFound, PartialsHz};
use crate::engine::interval::{cents, ratio};
use crate::engine::units::Frequency;

/// Readings that make a note.
const LEAST_READINGS: usize = 3;
/// Readings within so many cents of each other are of one string.
const ONE_CENTS: f64 = 60.0;
/// The needle goes two thirds of the way in so many readings.
const NEEDLE_READINGS: f64 = 4.0;
/// The needle stands when the last readings lie within this, in cents.
const STEADY_CENTS: f64 = 1.0;
/// How many of them.
const STEADY_READINGS: usize = 5;
/// A reading counts no more than one of this doubt, in cents.
const LEAST_OFF_CENTS: f64 = 0.02;

/// The mains, in hertz; up to this multiple of them hum is strong enough to be taken for a string, and so many cents off
/// it may be found.
const MAINS_HZ: [f64; 2] = [50.0, 60.0];
const MAINS_MULTIPLE: f64 = 8.0;
const MAINS_CENTS: f64 = 15.0;
/// What lies at the mains is a string when it has fallen by so many decibels.
const FALLEN_DB: f64 = 1.0;

/// Whether a pitch is that of the mains or of one of its multiples.
fn is_of_mains(hz: f64) -> bool {
    MAINS_HZ.iter().any(|mains| {
        let multiple = (hz / mains).round();
        (1.0..=MAINS_MULTIPLE).contains(&multiple)
            && cents(hz / (multiple * mains)).abs() < MAINS_CENTS
    })
}

/// What was read of a string since it was struck.
#[derive(Clone, Debug)]
pub(super) struct Sounding {
    struck_s: f64,
    readings: Vec<(f64, Heard, PartialsHz)>,
    needle: Option<(usize, f64)>,
    first_db: Option<f64>,
}

impl Sounding {
    /// Of a string that was struck at a time.
    pub fn new(struck_s: f64) -> Self {
        Self { struck_s, readings: Vec::new(), needle: None, first_db: None }
    }

    /// When it was struck.
    pub fn struck_s(&self) -> f64 {
        self.struck_s
    }

    /// When it was last heard.
    pub fn last_s(&self) -> Option<f64> {
        self.readings.last().map(|(time, ..)| *time)
    }

    /// The pitch last heard.
    pub fn last_hz(&self) -> Option<f64> {
        self.readings.last().map(|(_, heard, _)| heard.fit.to_hz())
    }

    /// The pitch last heard, where the last readings agree on one string.
    pub fn agreed_hz(&self) -> Option<f64> {
        let from = self.readings.len().checked_sub(LEAST_READINGS)?;
        let hz = self.last_hz()?;
        let is_near = |(_, heard, _): &(f64, Heard, PartialsHz)| {
            cents(heard.fit.to_hz() / hz).abs() < ONE_CENTS
        };
        self.readings[from..].iter().all(is_near).then_some(hz)
    }

    /// Whether it sounds on as no string does.
    pub fn lasts(&self, now_s: f64, level_db: f64) -> bool {
        let is_loud = self.first_db.is_some_and(|first_db| level_db > first_db - LASTS_DB);
        is_loud && now_s - self.struck_s > LASTS_S
    }

    /// Takes a reading, and gives it back with what the needle shows. What lies at the mains is hum, and no reading, until
    /// it has fallen as hum does not.
    pub fn take(
        &mut self,
        (time_s, level_db): (f64, f64),
        mut heard: Heard,
        partials_hz: PartialsHz,
    ) -> Option<Heard> {
        let first_db = *self.first_db.get_or_insert(level_db);
        let is_new = self.readings.is_empty();
        if is_new && is_of_mains(heard.fit.to_hz()) && level_db > first_db - FALLEN_DB {
            return None;
        }
        if let (Some(place), Some(now)) = (heard.string, heard.cents) {
            let before =
                self.needle.filter(|(of, was)| *of == place && (now - was).abs() < ONE_CENTS);
            let shown = before.map_or(now, |(_, was)| was + (now - was) / NEEDLE_READINGS);
            self.needle = Some((place, shown));
            heard.needle_cents = Some(shown);
        }
        self.readings.push((time_s, heard, partials_hz));
        let from = self.readings.len().checked_sub(STEADY_READINGS);
        let last = from.map(|from| &self.readings[from..]);
        let off =
            |(_, other, _): &(f64, Heard, PartialsHz)| cents(other.fit.to_hz() / heard.fit.to_hz());
        let within = last.map(|last| {
            let (low, high) = last
                .iter()
                .map(off)
                .fold((0.0_f64, 0.0_f64), |(low, high), off| (low.min(off), high.max(off)));
            high - low <= STEADY_CENTS
        });
        heard.is_steady = within.unwrap_or(false);
        Some(heard)
    }

    /// The note, if it was heard long enough: the mean of the readings that agree with most others, the surer ones
    /// counting more. Which string it is remains to be said.
    pub fn note(&self) -> Option<NoteFound> {
        let off = |one: &Heard, other: &Heard| cents(one.fit.to_hz() / other.fit.to_hz());
        let weight = |heard: &Heard| 1.0 / heard.off_cents.max(LEAST_OFF_CENTS).powi(2);
        let agree = |with: &Heard| {
            let near =
                self.readings.iter().filter(|(_, other, _)| off(other, with).abs() < ONE_CENTS);
            near.count()
        };
        let (_, middle, _) = self.readings.iter().max_by_key(|(_, heard, _)| agree(heard))?;
        let own: Vec<&(f64, Heard, PartialsHz)> = self
            .readings
            .iter()
            .filter(|(_, other, _)| off(other, middle).abs() < ONE_CENTS)
            .collect();
        if own.len() < LEAST_READINGS {
            return None;
        }
        let mean = |of: &dyn Fn(&Heard) -> f64, trusted: &dyn Fn(&Heard) -> f64| {
            let weights: f64 = own.iter().map(|(_, heard, _)| trusted(heard)).sum();
            own.iter().map(|(_, heard, _)| trusted(heard) * of(heard)).sum::<f64>() / weights
        };
        let from_middle = |heard: &Heard| off(heard, middle);
        let mut off_cents = mean(&from_middle, &weight);
        // Again with those that stray counting less.
        for _ in 0..5 {
            let trusted = |heard: &Heard| {
                let stray = (off(heard, middle) - off_cents) / (2.0 * heard.off_cents.max(0.2));
                weight(heard) / (1.0 + stray * stray)
            };
            off_cents = mean(&from_middle, &trusted);
        }
        let scatter = mean(&|heard| (off(heard, middle) - off_cents).powi(2), &weight).sqrt();
        let hz = middle.fit.to_hz() * ratio(off_cents);
        Some(NoteFound {
            struck_s: self.struck_s,
            until_s: self.last_s().unwrap_or(self.struck_s),
            string: None,
            fit: Frequency::from_hz(hz),
            inharmonicity_b: mean(&|heard| heard.inharmonicity_b, &weight),
            cents: None,
            scatter_cents: scatter,
            pin_degrees: None,
            readings: own.len(),
            partials_hz: means(&own).map(|over_first| over_first * hz),
        })
    }
}

/// How far each partial lies above the first in the mean, so that it does not tell that those which die away soon were
/// heard while the string was still sharp; 0 for one that was not heard in half of the readings.
fn means(readings: &[&(f64, Heard, PartialsHz)]) -> PartialsHz {
    let mut means = [0.0; HIGHEST as usize];
    for (place, mean) in means.iter_mut().enumerate() {
        let heard = readings.iter().filter(|(_, _, partials)| partials[place] > 0.0);
        let over_first = heard.map(|(_, heard, partials)| partials[place] / heard.fit.to_hz());
        let (count, sum) = over_first.fold((0_usize, 0.0), |(n, sum), ratio| (n + 1, sum + ratio));
        if 2 * count > readings.len() {
            *mean = sum / count as f64;
        }
    }
    means
}
