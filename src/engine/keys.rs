//! The keys that a harp plays from its open tuning: which letters its levers or pedals raise, and which strings
//! stand in the way.
//!
//! A key is counted by its spelling: each of the seven letters has one sign in it, and every string must sound its
//! own letter with that sign. So F sharp and G flat major are two keys, though they sound alike in twelve equal steps.

use super::analysis::{HarpString, Mechanism};
use super::order::sort;
use super::pitch::{Letter, Note};

/// The greatest number of sharps or flats of a key.
pub const MOST_SIGNS: i8 = 7;
/// The letters in the order in which keys take their sharps; flats come from the other end.
const FIFTHS: [Letter; 7] =
    [Letter::F, Letter::C, Letter::G, Letter::D, Letter::A, Letter::E, Letter::B];

/// A major key and the minor one with the same notes, by their signs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Key {
    sharps: i8,
}

impl Key {
    /// The fifteen, from C flat, with seven flats, to C sharp, with seven sharps.
    pub fn all() -> impl Iterator<Item = Self> {
        (-MOST_SIGNS..=MOST_SIGNS).map(|sharps| Self { sharps })
    }

    /// Sharps; below 0 flats.
    pub const fn sharps(self) -> i8 {
        self.sharps
    }

    /// The sign of a letter: −1 for a flat, 1 for a sharp.
    ///
    /// # Example
    ///
    /// D major has two sharps, F and C.
    ///
    /// ```
    /// use stringloft::engine::keys::Key;
    /// use stringloft::engine::pitch::Letter;
    ///
    /// let d = Key::all().find(|key| key.sharps() == 2).unwrap();
    /// assert_eq!((d.sign(Letter::F), d.sign(Letter::C), d.sign(Letter::G)), (1, 1, 0));
    /// ```
    pub fn sign(self, letter: Letter) -> i8 {
        let place = FIFTHS.iter().position(|own| *own == letter).unwrap_or(0);
        let place = i8::try_from(place).unwrap_or(0);
        if place < self.sharps {
            1
        } else if place >= MOST_SIGNS + self.sharps {
            -1
        } else {
            0
        }
    }

    /// The first note of the major scale and its sign: F is one fifth below C, G one above.
    pub fn major(self) -> (Letter, i8) {
        on_the_line(self.sharps)
    }

    /// That of the minor scale with the same notes, three fifths further.
    pub fn minor(self) -> (Letter, i8) {
        on_the_line(self.sharps + 3)
    }
}

/// The note so many fifths above C.
fn on_the_line(fifths: i8) -> (Letter, i8) {
    let from_f = fifths + 1;
    let place = usize::try_from(from_f.rem_euclid(MOST_SIGNS)).unwrap_or(0);
    (FIFTHS[place], from_f.div_euclid(MOST_SIGNS))
}

/// Why a string cannot sound a note of a key.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Why {
    /// It has no note, or none that can be read.
    NoNote,
    /// It would have to sound so many semitones lower than it is tuned.
    TooHigh(u8),
    /// Its mechanism does not raise it by so many semitones.
    OutOfReach(u8, Mechanism),
    /// Discs of one letter turn together, and this string would need another step than most.
    NotAlike,
}

/// What a harp must do for a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeySetting {
    /// The key.
    pub key: Key,
    /// For each letter from C, by how many semitones its strings are raised: the fewest and the most. `None` where no
    /// string of the letter can sound its note.
    pub raised: [Option<(u8, u8)>; 7],
    /// Indices of the strings in the harp that stand in the way, and why.
    pub in_the_way: Vec<(usize, Why)>,
    /// Letters that no string has.
    pub missing: Vec<Letter>,
}

impl KeySetting {
    /// Whether every string can sound a note of the key.
    pub fn is_played(&self) -> bool {
        self.in_the_way.is_empty()
    }
}

/// By how many semitones a mechanism can raise a string.
pub const fn reach(mechanism: Mechanism) -> u8 {
    match mechanism {
        Mechanism::None => 0,
        Mechanism::Lever | Mechanism::SingleDisc => 1,
        Mechanism::DoubleDisc => 2,
    }
}

/// All fifteen keys for the strings of a harp; none for a harp without a note.
///
/// A string of the letter `x`, tuned with the sign `o` and raised by at most `m` semitones, sounds the sign `b` of
/// the key if `0 ≤ b − o ≤ m`. Strings with discs are moved by pedals, one for a letter, so that all of a letter take
/// the same step; levers are set one by one.
///
/// # Source
///
/// Counting of signs, worked out. An encyclopaedia's article on the pedal harp: tuned in C flat no disc touches, the
/// upper discs give naturals, both give sharps.
pub fn keys(strings: &[HarpString]) -> Vec<KeySetting> {
    if strings.iter().all(|string| string.note.is_none()) {
        return Vec::new();
    }
    Key::all().map(|key| setting(key, strings)).collect()
}

fn setting(key: Key, strings: &[HarpString]) -> KeySetting {
    let mut in_the_way = Vec::new();
    let mut reached = Vec::new();
    for (index, string) in strings.iter().enumerate() {
        match step(key, string) {
            Ok((note, step)) => reached.push((index, note.letter(), step, string.mechanism)),
            Err(why) => in_the_way.push((index, why)),
        }
    }
    let is_disc = |kind| matches!(kind, Mechanism::SingleDisc | Mechanism::DoubleDisc);
    let mut raised = [None; 7];
    for (letter, raised) in Letter::ALL.into_iter().zip(&mut raised) {
        let own = || reached.iter().filter(|(_, own, ..)| *own == letter);
        let discs = |step: u8| own().filter(move |(.., own, kind)| is_disc(*kind) && *own == step);
        // The step of most; of two with as many, the smaller.
        let most = (0..=2).rev().max_by_key(|step| discs(*step).count()).unwrap_or(0);
        let fits = |kind: Mechanism, step: u8| !is_disc(kind) || step == most;
        for (index, _, step, kind) in own() {
            if fits(*kind, *step) {
                let (least, greatest) = raised.unwrap_or((*step, *step));
                *raised = Some((least.min(*step), greatest.max(*step)));
            } else {
                in_the_way.push((*index, Why::NotAlike));
            }
        }
    }
    sort(&mut in_the_way, |one, next| one.0 > next.0);
    let has = |letter: &Letter| {
        strings.iter().any(|string| string.note.is_some_and(|note| note.letter() == *letter))
    };
    let missing = Letter::ALL.into_iter().filter(|letter| !has(letter)).collect();
    KeySetting { key, raised, in_the_way, missing }
}

/// The note of a string and by how much it must be raised.
fn step(key: Key, string: &HarpString) -> Result<(Note, u8), Why> {
    let note = string.note.ok_or(Why::NoNote)?;
    let up = key.sign(note.letter()) - note.alter();
    let step = u8::try_from(up).map_err(|_| Why::TooHigh(up.unsigned_abs()))?;
    if step > reach(string.mechanism) {
        return Err(Why::OutOfReach(step, string.mechanism));
    }
    Ok((note, step))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::analysis::Unknown;

    fn string(note: &str, mechanism: Mechanism) -> HarpString {
        HarpString {
            note: note.parse().ok(),
            frequency: Err(Unknown::Pitch),
            length: Err(Unknown::Length),
            make_up: Err(Unknown::MakeUp),
            mechanism,
        }
    }

    /// Three octaves in the signs of a key.
    fn harp(sharps: i8, mechanism: Mechanism) -> Vec<HarpString> {
        let key = Key { sharps };
        let note = |step: i32| {
            let low: Note = "C2".parse().unwrap();
            low.moved(step, |letter| key.sign(letter)).unwrap()
        };
        (0..22).rev().map(|step| string(&note(step).to_string(), mechanism)).collect()
    }

    fn played(strings: &[HarpString]) -> Vec<i8> {
        let all = keys(strings).into_iter();
        all.filter(KeySetting::is_played).map(|setting| setting.key.sharps()).collect()
    }

    fn of(strings: &[HarpString], sharps: i8) -> KeySetting {
        keys(strings).into_iter().find(|setting| setting.key.sharps() == sharps).unwrap()
    }

    #[test]
    fn keys_have_their_names_and_signs() {
        for (sharps, major, minor) in [
            (0, (Letter::C, 0), (Letter::A, 0)),
            (1, (Letter::G, 0), (Letter::E, 0)),
            (6, (Letter::F, 1), (Letter::D, 1)),
            (7, (Letter::C, 1), (Letter::A, 1)),
            (-1, (Letter::F, 0), (Letter::D, 0)),
            (-3, (Letter::E, -1), (Letter::C, 0)),
            (-7, (Letter::C, -1), (Letter::A, -1)),
        ] {
            let key = Key { sharps };
            assert_eq!((key.major(), key.minor()), (major, minor), "{sharps}");
            let signs: i8 = Letter::ALL.into_iter().map(|letter| key.sign(letter)).sum();
            assert_eq!(signs, sharps);
            assert_eq!(key.sign(major.0), major.1, "{sharps}");
        }
    }

    #[test]
    fn every_mechanism_has_its_reach() {
        assert_eq!(played(&harp(0, Mechanism::None)), [0]);
        assert_eq!(played(&harp(0, Mechanism::Lever)), [0, 1, 2, 3, 4, 5, 6, 7]);
        assert_eq!(played(&harp(-3, Mechanism::SingleDisc)), [-3, -2, -1, 0, 1, 2, 3, 4]);
        assert_eq!(played(&harp(-7, Mechanism::DoubleDisc)).len(), 15);
    }

    #[test]
    fn letters_are_set_as_the_signs_ask() {
        let setting = of(&harp(-3, Mechanism::Lever), 2);
        // From three flats to two sharps: B, E and A to naturals, F and C to sharps.
        let raised: Vec<u8> = setting.raised.iter().map(|raised| raised.unwrap().1).collect();
        assert_eq!(raised, [1, 0, 1, 1, 0, 1, 1]);
        assert_eq!(of(&harp(-7, Mechanism::DoubleDisc), 7).raised, [Some((2, 2)); 7]);
    }

    #[test]
    fn strings_that_stand_in_the_way_are_named() {
        let mut strings = harp(0, Mechanism::Lever);
        // String 5 is F4, string 12 is F3.
        strings[4].mechanism = Mechanism::None;
        let setting = of(&strings, 1);
        assert_eq!(setting.in_the_way, [(4, Why::OutOfReach(1, Mechanism::None))]);
        assert_eq!(setting.raised[3], Some((1, 1)));
        assert!(of(&strings, 0).is_played());
        assert_eq!(of(&strings, -1).in_the_way[0].1, Why::TooHigh(1));
        let two = of(&harp(-1, Mechanism::Lever), 7);
        assert_eq!(two.in_the_way[0], (1, Why::OutOfReach(2, Mechanism::Lever)));
        strings[0].note = None;
        assert_eq!(of(&strings, 0).in_the_way, [(0, Why::NoNote)]);
        assert_eq!(keys(&strings[..1]), []);
    }

    #[test]
    fn doubled_strings_and_others_than_of_one_scale_are_taken_as_they_are() {
        let mut doubled = harp(0, Mechanism::Lever);
        doubled.extend(harp(0, Mechanism::Lever));
        assert_eq!(played(&doubled), [0, 1, 2, 3, 4, 5, 6, 7]);
        // One F is tuned sharp: its lever stays down where the others go up, and C major is out.
        let mut strings = harp(0, Mechanism::Lever);
        strings[4].note = "F#4".parse().ok();
        assert_eq!(of(&strings, 1).raised[3], Some((0, 1)));
        assert_eq!(of(&strings, 0).in_the_way, [(4, Why::TooHigh(1))]);
        // With discs they turn together.
        for string in &mut strings {
            string.mechanism = Mechanism::DoubleDisc;
        }
        assert_eq!(of(&strings, 1).in_the_way, [(4, Why::NotAlike)]);
        // Five notes in an octave.
        let five: Vec<HarpString> =
            ["A4", "G4", "E4", "D4", "C4"].map(|note| string(note, Mechanism::None)).to_vec();
        assert_eq!(played(&five), [-1, 0, 1]);
        assert_eq!(of(&five, 0).missing, [Letter::F, Letter::B]);
    }
}
