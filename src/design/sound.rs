//! The sound of a design: which strings are asked for, in words, and a file of them.

use super::table::report::read;
use crate::engine::analysis::{Harp, Unknown};
use crate::engine::pitch::Note;
use crate::engine::sound::pattern::Pattern;
use crate::engine::sound::render::{level, mixed, ring};
use crate::engine::sound::wav::wav;
use crate::engine::sound::{Ask, Voice, voice};
use crate::words::sound as say;

use super::resolve::resolve;

/// Samples in each second of a file, unless another number is asked for.
pub const RATE_HZ: u32 = 48_000;
/// How long a string is heard at most, in seconds, unless another time is asked for.
pub const MOST_S: f64 = 6.0;

/// What a file of sound is to hold.
#[derive(Clone, Debug, PartialEq)]
pub struct Wish {
    /// A string by its number or by its note.
    pub string: String,
    /// What is played from it.
    pub pattern: Pattern,
    /// Samples in each second.
    pub rate_hz: u32,
    /// How long a string is heard at most.
    pub most_s: f64,
}

/// A file of sound.
#[derive(Clone, Debug, PartialEq)]
pub struct File {
    /// WAV.
    pub bytes: Vec<u8>,
    /// What was left out, a sentence each.
    pub told: Vec<String>,
}

/// Plays a design file or a table of strings; `change` sets how the strings are plucked.
///
/// # Errors
///
/// What cannot be read, that there is no such string, and why it has no sound.
pub fn file(text: &str, wish: &Wish, change: impl Fn(&mut Ask)) -> Result<File, Vec<String>> {
    let (design, _) = read(text, false)?;
    let harp = resolve(&design).harp;
    let chosen = string_of(&harp, &wish.string).map_err(|why| vec![why])?;
    let mut ask = Ask::of(&harp);
    change(&mut ask);
    let rate_hz = f64::from(wish.rate_hz);
    let (mut sounds, mut told) = (Vec::new(), Vec::new());
    for (index, start_s) in wish.pattern.strings(chosen, harp.strings.len()) {
        match voice(&harp, index, &ask) {
            Ok(voice) => sounds.push((ring(&voice, rate_hz, wish.most_s), start_s)),
            Err(why) => told.push(no_sound(index, why)),
        }
    }
    if sounds.is_empty() {
        return Err(told);
    }
    let sounds: Vec<(&[f32], f64)> =
        sounds.iter().map(|(sound, start_s)| (sound.as_slice(), *start_s)).collect();
    let mut mix = mixed(&sounds, rate_hz);
    level(&mut [&mut mix], rate_hz);
    Ok(File { bytes: wav(&mix, wish.rate_hz), told })
}

/// Why a string has no sound.
pub fn no_sound(index: usize, why: Unknown) -> String {
    say::no_sound(&(index + 1), &why)
}

/// The voices of some strings; none where a string has no sound.
pub fn voices(harp: &Harp, strings: &[(usize, f64)], ask: &Ask) -> Vec<Option<Voice>> {
    strings.iter().map(|(index, _)| voice(harp, *index, ask).ok()).collect()
}

/// The string with a number, or the highest with a note; by its place from 0.
fn string_of(harp: &Harp, asked: &str) -> Result<usize, String> {
    let asked = asked.trim();
    let count = harp.strings.len();
    if let Ok(number) = asked.parse::<usize>() {
        let place = number.checked_sub(1).filter(|place| *place < count);
        return place.ok_or_else(|| say::no_number(&count, &number));
    }
    let note: Note = asked.parse().map_err(|_| say::no_string(&asked))?;
    let place = harp.strings.iter().position(|string| string.note == Some(note));
    place.ok_or_else(|| say::no_note(&asked))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;

    fn wish(string: &str, pattern: Pattern) -> Wish {
        Wish { string: string.to_owned(), pattern, rate_hz: 8_000, most_s: 0.5 }
    }

    #[test]
    fn a_string_is_found_by_its_number_and_by_its_note() {
        let harp = resolve(&SAMPLES[2].design()).harp;
        let note = harp.strings[12].note.expect("a string with a note").to_string();
        assert_eq!(string_of(&harp, " 13 "), Ok(12));
        assert_eq!(string_of(&harp, &note), Ok(12));
    }

    #[test]
    fn what_is_not_there_is_said() {
        let json = SAMPLES[2].json;
        let errors = |string: &str| file(json, &wish(string, Pattern::One), |_| {}).unwrap_err();
        assert_eq!(errors("0"), ["there is no string 0 (give a number from 1 to 36, or a note)"]);
        assert_eq!(errors("37"), ["there is no string 37 (give a number from 1 to 36, or a note)"]);
        assert_eq!(errors("C9"), ["no string has the note C9 (give its number instead)"]);
        assert_eq!(
            errors("loud"),
            ["\"loud\" is neither the number of a string nor a note such as A4"]
        );
        assert!(file("{}", &wish("1", Pattern::One), |_| {}).is_err());
    }

    #[test]
    fn every_string_of_every_sample_sounds() {
        for sample in SAMPLES {
            let harp = resolve(&sample.design()).harp;
            let ask = Ask::of(&harp);
            for index in 0..harp.strings.len() {
                let voice = voice(&harp, index, &ask);
                assert!(voice.is_ok(), "{}, string {}: {voice:?}", sample.key, index + 1);
            }
        }
    }
}
