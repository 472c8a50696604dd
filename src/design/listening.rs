//! The strings of a design as the tuner listens for them, and a recording that it hears.

pub mod wav;

use std::fmt::Write;

use self::wav::Recording;
use super::document::Design;
use super::resolve::{Resolved, resolve, tuning};
use super::settings::Setting;
use super::table::report;
use crate::engine::analysis::{Analysis, analyse};
use crate::engine::keys::reach;
use crate::engine::listen::{Listener, RATES_HZ, Sought};
use crate::engine::pitch::{Note, Tuning, cents, ratio};
use crate::engine::units::Frequency;
use crate::words::{numeral, tuner as say};

/// The widest octave that may be asked for, in cents beyond 1200. Common practice, no source.
pub const MOST_WIDER_CENTS: f64 = 20.0;

/// How the strings are to be tuned.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Aim {
    /// By how many semitones the lever or the discs of each string raise it now, in the design's order; none for those
    /// beyond the end.
    pub raised: Vec<u8>,
    /// By how much each octave is wider than 1200 cents, counted from A4 up and down: up to [`MOST_WIDER_CENTS`].
    pub wider_cents: f64,
    /// How far from its pitch each string is tuned for now, in cents, in the design's order: while a harp is brought up.
    pub off_cents: Vec<f64>,
}

/// What each string that has a pitch should sound, and what the design says of it; `number` tells which string it is.
///
/// A lever that is up makes the string sound the note that is a semitone higher, as the temperament has it. What then
/// sounds is shorter by `2^(1/12)`, and `B` goes with the inverse of its square.
pub fn sought(design: &Design, resolved: &Resolved, analysis: &Analysis, aim: &Aim) -> Vec<Sought> {
    let tuning = tuning(design);
    let wider = if aim.wider_cents.is_finite() { aim.wider_cents } else { 0.0 };
    let wider = wider.clamp(-MOST_WIDER_CENTS, MOST_WIDER_CENTS);
    let mut list = Vec::new();
    for (place, (string, figures)) in
        resolved.harp.strings.iter().zip(&analysis.strings).enumerate()
    {
        let Ok(open) = figures.frequency else { continue };
        let raised = aim.raised.get(place).copied().unwrap_or(0).min(reach(string.mechanism));
        let hz = raised_hz(string.note, open, raised, tuning);
        let off = aim.off_cents.get(place).copied().filter(|off| off.is_finite()).unwrap_or(0.0);
        let octaves = cents(hz / Setting::A4.number(design)) / 1200.0;
        let shorter = ratio(100.0 * f64::from(raised)).powi(2);
        list.push(Sought {
            number: figures.number,
            target: Frequency::from_hz(hz * ratio(wider * octaves + off)),
            inharmonicity_b: figures.inharmonicity_b.ok().map(|b| b * shorter),
            cents_per_degree: figures.cents_per_pin_degree.ok(),
            is_in_tune: false,
        });
    }
    list
}

/// The pitch of a string that is raised by some semitones: of the note, if it has one.
fn raised_hz(note: Option<Note>, open: Frequency, raised: u8, tuning: Tuning) -> f64 {
    let higher = |note: Note| {
        let alter = note.alter() + i8::try_from(raised).ok()?;
        Note::new(note.letter(), alter, note.octave()).ok()
    };
    match note.and_then(higher).filter(|_| raised > 0) {
        Some(note) => tuning.frequency(note).to_hz(),
        None => open.to_hz() * ratio(100.0 * f64::from(raised)),
    }
}

/// Samples that follow a recording: no more than a reading takes, at any rate.
const AFTER: usize = 400;
/// The headings of [`csv`].
const COLUMNS: &str = "kind,time_s,string,note,hertz,cents,level_db,first_hertz,inharmonicity_b,partials,off_cents,pin_degrees,until_s\n";

/// What the tuner hears in a recording, as CSV: a line of the kind `reading` for every 50 ms, empty where nothing is
/// heard, and after them one of the kind `note` for each string that was struck. `text` is a design or a table.
///
/// # Errors
///
/// What cannot be read, a sentence each.
pub fn csv(text: &str, likely: bool, recording: &Recording) -> Result<String, Vec<String>> {
    let design = report::design(text, likely)?;
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    let strings = sought(&design, &resolved, &analysis, &Aim::default());
    if strings.is_empty() {
        return Err(vec![say::NO_STRINGS.into()]);
    }
    let named = |place: Option<usize>| {
        let number = place.and_then(|place| strings.get(place)).map(|string| string.number);
        let note = number.and_then(|number| analysis.strings.get(number - 1)?.note);
        (text_of(number), text_of(note))
    };
    let (least, most) = RATES_HZ;
    let mut listener = Listener::new(recording.rate_hz, strings.clone()).ok_or_else(|| {
        vec![say::rate(&numeral(recording.rate_hz), &numeral(least), &numeral(most))]
    })?;
    let mut readings = listener.feed(&recording.samples);
    // The last reading waits for the moment that follows.
    readings.extend(listener.feed(&[0.0; AFTER]));
    listener.end();
    let mut csv = COLUMNS.to_owned();
    for reading in readings {
        let heard = reading.heard;
        let (number, note) = named(heard.and_then(|heard| heard.string));
        let _ = writeln!(
            csv,
            "reading,{:.3},{number},{note},{},{},{:.1},{},{},{},{},{},",
            reading.time_s,
            digits(heard.map(|heard| heard.fit.to_hz()), 5),
            digits(heard.and_then(|heard| heard.cents), 3),
            reading.level_db,
            digits(heard.and_then(|heard| Some(heard.first?.to_hz())), 5),
            text_of(heard.map(|heard| format!("{:.3e}", heard.inharmonicity_b))),
            text_of(heard.map(|heard| heard.partials)),
            digits(heard.map(|heard| heard.off_cents), 3),
            digits(heard.and_then(|heard| heard.pin_degrees), 1),
        );
    }
    for found in listener.notes_found() {
        let (number, note) = named(found.string);
        let _ = writeln!(
            csv,
            "note,{:.3},{number},{note},{},{},,,{:.3e},,{:.3},{},{:.3}",
            found.struck_s,
            digits(Some(found.fit.to_hz()), 5),
            digits(found.cents, 3),
            found.inharmonicity_b,
            found.scatter_cents,
            digits(found.pin_degrees, 1),
            found.until_s,
        );
    }
    Ok(csv)
}

/// A number with so many decimals; nothing where there is none.
fn digits(number: Option<f64>, places: usize) -> String {
    number.map(|number| format!("{number:.places$}")).unwrap_or_default()
}

fn text_of(value: Option<impl ToString>) -> String {
    value.map(|value| value.to_string()).unwrap_or_default()
}
