//! Listening to strings: which one sounds, how far it is off its target, and how far its pin must turn.
//!
//! A stiff string has partials that are sharp of the multiples of its first, so what repeats in the sound is not the
//! first partial, which is what is tuned. Therefore partials are looked for one by one (`spectrum`), it is worked out
//! of which string most of them are (`comb`), and the stiff string that fits them best gives the first partial
//! (`fit`), also where that itself is hardly heard, as in the bass.
//!
//! Samples come in as they are recorded; there is a reading every [`READING_S`]. After a string is struck, the tuner
//! waits until its pitch has settled: a hard pluck begins sharp.

mod comb;
mod fit;
mod fourier;
mod level;
mod note;
mod rate;
mod spectrum;
mod strings;
pub mod wire;

use self::comb::{HIGHEST, Likely, follow, guess};
use self::fit::Partial;
use self::level::{BLOCK_S, Levels, SILENCE_DB};
use self::note::Sounding;
use self::rate::Thinner;
use self::spectrum::{Analyser, Peak};
pub use self::strings::Sought;
use self::strings::Strings;
use super::units::Frequency;

/// There is a reading after each of these stretches, in seconds.
pub const READING_S: f64 = 0.05;
/// The lowest and the highest rate of samples, in hertz.
pub const RATES_HZ: (f64, f64) = (8_000.0, 400_000.0);
/// Cents for each unit of the natural logarithm of a pitch.
const CENTS_PER_RATIO: f64 = 1200.0 / std::f64::consts::LN_2;

/// The lowest and the highest first partial that is listened for, in hertz.
const FIRST_HZ: (f64, f64) = (22.0, 4_800.0);
/// Partials are looked for up to this, and up to this share of the rate, in hertz.
const HIGHEST_HZ: f64 = 8_000.0;
const HIGHEST_SHARE: f64 = 0.41;
/// What passes after a string is struck before it is listened to, in seconds.
const WAIT_S: f64 = 0.15;
/// The shortest stretch that is looked at, in seconds, and in periods of the first partial.
const LEAST_S: f64 = 0.1;
const LEAST_PERIODS: f64 = 6.0;
/// The longest stretch, in seconds: of most strings, and of those in the bass, below the pitch that follows.
const MOST_S: (f64, f64) = (0.4, 0.6);
const BASS_HZ: f64 = 140.0;
/// What lies within so many bins of what sounded before the string was struck, and has less than so many times its
/// power, belongs to that.
const STILL_S: f64 = 0.2;
const HUM_BINS: f64 = 1.0;
const HUM_POWERS: f64 = 4.0;
/// Once a string was heard, its pitch moves no further from one reading to the next, in cents: while its pin is turned.
/// What lies further off is another one that rings along.
const MOVES_CENTS: f64 = 100.0;
/// What has not fallen by so many decibels when it has sounded for so many seconds is no string, but hum.
const LASTS_DB: f64 = 2.0;
const LASTS_S: f64 = 3.0;
/// A string that is not heard for so long has ended, in seconds.
const LOST_S: f64 = 0.4;
/// A reading that is less sure than this is none, in cents.
const DOUBTFUL_CENTS: f64 = 4.0;

/// What is heard of a string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Heard {
    /// The place of the string in the list that the listener was given.
    pub string: Option<usize>,
    /// The first partial of the stiff string that fits all partials best.
    pub fit: Frequency,
    /// The first partial by itself, where it is heard.
    pub first: Option<Frequency>,
    /// The inharmonicity of that stiff string.
    pub inharmonicity_b: f64,
    /// How many partials were heard.
    pub partials: usize,
    /// How far off the fit may be, one standard deviation, in cents.
    pub off_cents: f64,
    /// How far the fit lies above the target, in cents.
    pub cents: Option<f64>,
    /// The same for a needle, which goes there in steps.
    pub needle_cents: Option<f64>,
    /// The last quarter of a second lies within a cent.
    pub is_steady: bool,
    /// How far to turn the pin, in degrees: above 0 tightens the string.
    pub pin_degrees: Option<f64>,
}

/// What is heard at a time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// Seconds since the first sample.
    pub time_s: f64,
    /// How loud it is, in decibels of full scale.
    pub level_db: f64,
    /// What sounds; `None` in silence, in noise, and until a string that was struck has settled.
    pub heard: Option<Heard>,
}

/// Partials from the first up, in hertz; 0 for one that is not heard.
pub type PartialsHz = [f64; HIGHEST as usize];

/// A string that was struck and heard.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoteFound {
    /// When it was struck, in seconds since the first sample.
    pub struck_s: f64,
    /// When it was last heard.
    pub until_s: f64,
    /// The place of the string in the list that the listener was given.
    pub string: Option<usize>,
    /// Its first partial: the mean over all readings, the surer ones counting more.
    pub fit: Frequency,
    /// Its inharmonicity.
    pub inharmonicity_b: f64,
    /// How far it lies above the target, in cents.
    pub cents: Option<f64>,
    /// How far the readings lie apart, one standard deviation, in cents.
    pub scatter_cents: f64,
    /// How many readings it is the mean of.
    pub readings: usize,
    /// Its partials from the first up, in hertz; 0 where one was not heard.
    pub partials_hz: PartialsHz,
    /// How far to turn the pin, in degrees: above 0 tightens the string.
    pub pin_degrees: Option<f64>,
}

/// Listens to strings.
#[derive(Clone, Debug)]
pub struct Listener {
    strings: Strings,
    thinner: Thinner,
    /// Samples in a second after thinning.
    rate_hz: f64,
    levels: Levels,
    analyser: Analyser,
    /// The last samples, thinned.
    held: Vec<f64>,
    /// How many samples came in all, thinned.
    count: usize,
    readings: usize,
    sounding: Option<Sounding>,
    /// What sounds by itself while no string does: hum.
    still: Vec<Peak>,
    notes: Vec<NoteFound>,
}

impl Listener {
    /// Listens for some strings at a rate of samples; `None` when the rate is outside [`RATES_HZ`].
    pub fn new(rate_hz: f64, strings: Vec<Sought>) -> Option<Self> {
        if !(RATES_HZ.0..=RATES_HZ.1).contains(&rate_hz) {
            return None;
        }
        let thinner = Thinner::new(rate_hz);
        let rate_hz = rate_hz / thinner.step() as f64;
        Some(Self {
            strings: Strings { all: strings, led: None },
            thinner,
            rate_hz,
            levels: Levels::new(rate_hz),
            analyser: Analyser::default(),
            held: Vec::new(),
            count: 0,
            readings: 0,
            sounding: None,
            still: Vec::new(),
            notes: Vec::new(),
        })
    }

    /// Changes what is listened for; what sounds goes on, but where another string is led: it would be taken for that.
    /// With `led`, a place in the list, only that string is meant.
    pub fn listen_for(&mut self, strings: Vec<Sought>, led: Option<usize>) {
        if led.is_some() && led != self.strings.led {
            self.end();
        }
        self.strings = Strings { all: strings, led };
    }

    /// Takes samples from −1 to 1 and gives the readings that they complete.
    pub fn feed(&mut self, samples: &[f32]) -> Vec<Reading> {
        let mut thinned = Vec::new();
        self.thinner.feed(samples, &mut thinned);
        let mut readings = Vec::new();
        for sample in thinned {
            self.held.push(sample);
            self.count += 1;
            if self.levels.feed(sample) {
                self.struck();
            }
            let due = whole((self.readings + 1) as f64 * READING_S * self.rate_hz);
            if self.count >= due {
                self.readings += 1;
                readings.push(self.reading());
            }
        }
        readings
    }

    /// The strings that were struck and have ended since this was last asked.
    pub fn notes_found(&mut self) -> Vec<NoteFound> {
        std::mem::take(&mut self.notes)
    }

    /// Ends what sounds, as there are no more samples.
    pub fn end(&mut self) {
        let Some(note) = self.sounding.take().and_then(|sounding| sounding.note()) else { return };
        let string = self.strings.meant(note.fit.to_hz());
        let cents = string.and_then(|place| self.strings.cents_of(place, note.fit.to_hz()));
        let pin_degrees = string.and_then(|place| self.strings.pin_degrees(place, cents?));
        self.notes.push(NoteFound { string, cents, pin_degrees, ..note });
    }

    fn now_s(&self) -> f64 {
        self.count as f64 / self.rate_hz
    }

    fn struck(&mut self) {
        self.end();
        // The block that is louder ends now.
        self.sounding = Some(Sounding::new(self.now_s() - BLOCK_S));
    }

    fn reading(&mut self) -> Reading {
        let most = whole(MOST_S.1 * self.rate_hz);
        let spare = self.held.len().saturating_sub(most);
        self.held.drain(..spare);
        let (time_s, level_db) = (self.now_s(), self.levels.decibels());
        if self.sounding.is_none() {
            self.still = self.peaks(STILL_S);
        }
        let heard = if level_db > SILENCE_DB { self.heard() } else { None };
        let heard = heard.and_then(|(heard, partials_hz)| {
            self.sounding.as_mut()?.take((time_s, level_db), heard, partials_hz)
        });
        if self.sounding.as_ref().is_some_and(|sounding| sounding.lasts(time_s, level_db)) {
            self.sounding = None;
        }
        if let Some(sounding) = &self.sounding {
            let last_s = sounding.last_s().unwrap_or(sounding.struck_s() + WAIT_S + MOST_S.1);
            if time_s - last_s > LOST_S {
                self.end();
            }
        }
        Reading { time_s, level_db, heard }
    }

    /// The peaks of the last so many seconds.
    fn peaks(&mut self, long_s: f64) -> Vec<Peak> {
        let count = whole(long_s * self.rate_hz);
        let Some(from) = self.held.len().checked_sub(count) else { return Vec::new() };
        let highest_hz = HIGHEST_HZ.min(HIGHEST_SHARE * self.rate_hz);
        self.analyser.peaks(&self.held[from..], self.rate_hz, (FIRST_HZ.0, highest_hz))
    }

    /// What sounds now, of what was struck, and its partials.
    fn heard(&mut self) -> Option<(Heard, PartialsHz)> {
        let sounding = self.sounding.as_ref()?;
        let agreed_hz = sounding.agreed_hz();
        let most_s = match sounding.last_hz() {
            Some(hz) if hz < BASS_HZ => MOST_S.1,
            _ => MOST_S.0,
        };
        let long_s = (self.now_s() - sounding.struck_s() - WAIT_S).min(most_s);
        if long_s < LEAST_S {
            return None;
        }
        let mut peaks = self.peaks(long_s);
        let is_hum = |peak: &Peak| {
            let near = |still: &&Peak| (still.hz - peak.hz).abs() * long_s < HUM_BINS;
            self.still.iter().filter(near).any(|still| peak.power < HUM_POWERS * still.power)
        };
        peaks.retain(|peak| !is_hum(peak));
        let strings = &self.strings;
        let least_hz = FIRST_HZ.0.max(LEAST_PERIODS / long_s);
        let known = |hz: f64| strings.known(hz);
        let is_other = |hz: f64| {
            agreed_hz.is_some_and(|agreed| (hz / agreed).ln().abs() * CENTS_PER_RATIO > MOVES_CENTS)
        };
        let share = |hz: f64| {
            let is_out = hz < least_hz || hz > FIRST_HZ.1 || is_other(hz);
            if is_out { 0.0 } else { strings.share(hz) }
        };
        let (near, partials) = guess(&peaks, &Likely { known: &known, share: &share })?;
        let known = strings.known(near.first_hz);
        let series = fit::fit(near, &partials, known)?;
        // Once more from where they were found, as the first guess may have missed some.
        let (_, partials) = follow(&peaks, series, known)?;
        let series = fit::fit(series, &partials, known)?;
        if series.off_cents > DOUBTFUL_CENTS {
            return None;
        }
        let hz = series.first_hz;
        let string = strings.meant(hz);
        let off = string.and_then(|place| strings.cents_of(place, hz));
        let first = |partials: &[Partial]| {
            partials.first().filter(|partial| partial.n == 1).map(|p| Frequency::from_hz(p.hz))
        };
        let mut partials_hz = [0.0; HIGHEST as usize];
        for (place, own_hz) in (1..).zip(&mut partials_hz) {
            *own_hz = partials.iter().find(|one| one.n == place).map_or(0.0, |one| one.hz);
        }
        let heard = Heard {
            string,
            fit: Frequency::from_hz(hz),
            first: first(&partials),
            inharmonicity_b: series.b,
            partials: partials.len(),
            off_cents: series.off_cents,
            cents: off,
            needle_cents: off,
            is_steady: false,
            pin_degrees: string.and_then(|place| strings.pin_degrees(place, off?)),
        };
        Some((heard, partials_hz))
    }
}

/// The whole part of a number from 0 on.
fn whole(number: f64) -> usize {
    #[expect(clippy::cast_possible_truncation, reason = "cut off on purpose; below 0 it is 0")]
    let whole = number as usize;
    whole
}
