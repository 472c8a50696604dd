//! Frequencies that stand beside the notes of a table: the pitch and the temperament of which they tell.

use crate::design::document::{PitchSpec, StringSpec, TemperamentSpec};
use crate::design::heading::bare;
use crate::design::typed::{self, Pitch};
use crate::engine::pitch::{A4_HZ, Note, Temperament, Tuning, naming};
use crate::engine::units::Frequency;
use crate::words::{Words, numeral, shown, tables as say};

/// The last digits of a number in full, as a share.
const NEAR: f64 = 1e-12;

/// The temperaments of a document and of the engine, the usual one first.
const ALL: [(TemperamentSpec, Temperament, Words); 7] = [
    (TemperamentSpec::Equal, Temperament::Equal, say::EQUAL),
    (TemperamentSpec::Pythagorean, Temperament::Pythagorean, say::PYTHAGOREAN),
    (TemperamentSpec::QuarterCommaMeantone, Temperament::QuarterCommaMeantone, say::MEANTONE),
    (TemperamentSpec::WerckmeisterThree, Temperament::WerckmeisterThree, shown::WERCKMEISTER_THREE),
    (TemperamentSpec::Vallotti, Temperament::Vallotti, shown::VALLOTTI),
    (TemperamentSpec::YoungTwo, Temperament::YoungTwo, shown::YOUNG_TWO),
    (TemperamentSpec::JustOnC, Temperament::JustOnC, say::JUST_ON_C),
];

/// A note with the frequency that stands beside it.
struct Beside {
    row: usize,
    note: Note,
    hz: f64,
    /// By how much it may be rounded.
    room: f64,
}

/// The pitch of which the frequencies tell, `pitches` being those of the strings as texts. A string whose frequency
/// fits no such pitch keeps the frequency in the place of its note, and so does one without a note. What was taken
/// for granted comes with it.
pub(super) fn tuning_of(
    strings: &mut [StringSpec],
    pitches: &[String],
) -> (Option<PitchSpec>, Vec<String>) {
    let mut beside = Vec::new();
    for (row, (string, text)) in strings.iter_mut().zip(pitches).enumerate() {
        let Ok(Pitch::Frequency(hz)) = typed::pitch(text) else { continue };
        match string.note.parse() {
            Ok(note) => {
                beside.push(Beside { row, note, hz: hz.to_hz(), room: room(text, hz.to_hz()) });
            }
            Err(_) if string.note.is_empty() => string.note.clone_from(text),
            Err(_) => {}
        }
    }
    // Where one stands in full, all do: then 55 Hz are not what was rounded to it.
    if beside.iter().any(|one| one.room <= NEAR * one.hz) {
        beside.iter_mut().for_each(|one| one.room = NEAR * one.hz);
    }
    let mut best: Option<(usize, f64, usize)> = None;
    for (place, (_, temperament, _)) in ALL.iter().enumerate() {
        let Ok(usual) = Tuning::new(Frequency::from_hz(440.0), *temperament) else { continue };
        let shares: Vec<f64> =
            beside.iter().map(|one| one.hz / usual.frequency(one.note).to_hz()).collect();
        for a4 in candidates(&beside, &shares) {
            let fits = |(one, share): (&Beside, &f64)| {
                let expected = one.hz / share / 440.0 * a4;
                (expected - one.hz).abs() <= one.room
            };
            let count = beside.iter().zip(&shares).filter(|pair| fits(*pair)).count();
            if best.is_none_or(|(most, ..)| count > most) {
                best = Some((count, a4, place));
            }
        }
    }
    // Two that agree may be chance; half of the strings are none.
    let Some((_, a4_hz, place)) = best.filter(|(count, ..)| 2 * count > beside.len()) else {
        return (None, keep(strings, pitches, beside.iter()));
    };
    let (spec, temperament, words) = ALL[place];
    let tuning = Tuning::new(Frequency::from_hz(a4_hz), temperament).unwrap_or_default();
    let is_off =
        |one: &&Beside| (tuning.frequency(one.note).to_hz() - one.hz).abs() > one.room * 2.0;
    let mut told = vec![say::tuned_as(&numeral(a4_hz), &words)];
    told.extend(keep(strings, pitches, beside.iter().filter(is_off)));
    (Some(PitchSpec { a4_hz, temperament: spec }), told)
}

/// Gives strings their frequency in place of their note, and tells of it.
fn keep<'a>(
    strings: &mut [StringSpec],
    pitches: &[String],
    kept: impl Iterator<Item = &'a Beside>,
) -> Vec<String> {
    let mut told = Vec::new();
    for one in kept {
        let (string, text) = (&mut strings[one.row], &pitches[one.row]);
        told.push(say::tuned_apart(text, &naming::shown(&string.note)));
        string.note.clone_from(text);
    }
    told
}

/// Half of the last digit, or what a number in full may be off.
fn room(text: &str, hz: f64) -> f64 {
    let number = text.trim_end_matches(|c: char| !c.is_ascii_digit());
    let decimals = number.split_once(['.', ',']).map_or(0, |(_, decimals)| decimals.len());
    let step = 0.1_f64.powi(i32::try_from(decimals).unwrap_or(i32::MAX));
    (0.5 * step * 1.000_001).max(NEAR * hz)
}

/// Pitches of A4 that may be meant: the roundest within the room of each frequency.
fn candidates(beside: &[Beside], shares: &[f64]) -> Vec<f64> {
    let mut all = vec![440.0];
    for (one, share) in beside.iter().zip(shares) {
        let (a4, room) = (440.0 * share, 440.0 * share * one.room / one.hz);
        let round = |parts: f64| (a4 * parts).round() / parts;
        let near = [1.0, 2.0, 10.0, 100.0, 1000.0].map(round);
        let found = near.into_iter().find(|near| (near - a4).abs() <= room).unwrap_or(a4);
        if (A4_HZ.0..=A4_HZ.1).contains(&found) && !all.contains(&found) {
            all.push(found);
        }
    }
    all
}

/// Whether a text is a number without a unit, as a table in full has frequencies.
pub(super) fn in_hz(text: &str) -> String {
    if bare(text).is_some() { format!("{} Hz", text.trim()) } else { text.to_owned() }
}
