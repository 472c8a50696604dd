//! The keys that a harp plays, in words: which letters are raised, or why a key cannot be played.

use crate::design::letters::small;
use crate::engine::analysis::{HarpString, Mechanism};
use crate::engine::keys::{Key, KeySetting, Why, keys};
use crate::engine::pitch::Letter;
use crate::engine::pitch::naming::name as name_of;
use crate::words::{Naming, kinds as say, naming, semicolon};

/// The most strings that are named for one reason.
const MOST_NAMED: usize = 4;

/// A key, and what a harp must do for it.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct KeyLine {
    /// `E♭ major, C minor`.
    pub name: String,
    /// Whether every string can sound a note of it.
    pub is_played: bool,
    /// What is raised, or what stands in the way.
    pub words: String,
}

/// The fifteen keys, from seven flats to seven sharps; none for a harp without a note.
pub fn key_lines(strings: &[HarpString]) -> Vec<KeyLine> {
    let line = |setting: KeySetting| {
        let mut parts =
            if setting.is_played() { raised(&setting) } else { in_the_way(&setting, strings) };
        if !setting.missing.is_empty() {
            let letters = setting.missing.iter().map(|letter| letter.printed()).collect();
            parts.push(say::no_string_for(&listed(letters)));
        }
        KeyLine {
            name: name(setting.key),
            is_played: setting.is_played(),
            words: parts.join(semicolon()),
        }
    };
    keys(strings).into_iter().map(line).collect()
}

/// A key with what each letter is set to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeyRow {
    /// `E♭ major, C minor`.
    pub name: String,
    /// Whether every string can sound a note of it.
    pub is_played: bool,
    /// The note of each letter in the order of [`letters`]; nothing where no string of it is raised and levers do that.
    pub notes: [String; 7],
}

/// The letters in the order of the pedals from left to right, of levers from C.
pub fn letters(strings: &[HarpString]) -> [Letter; 7] {
    use Letter::{A, B, C, D, E, F, G};
    if has_pedals(strings) { [D, C, B, E, F, G, A] } else { Letter::ALL }
}

fn has_pedals(strings: &[HarpString]) -> bool {
    let has = |kind| strings.iter().any(|string| string.mechanism == kind);
    has(Mechanism::SingleDisc) || has(Mechanism::DoubleDisc)
}

/// The keys of which every letter of the harp can sound its note, on all strings or on some.
pub fn key_rows(strings: &[HarpString]) -> Vec<KeyRow> {
    let (order, all) = (letters(strings), has_pedals(strings));
    let row = |setting: KeySetting| {
        let raised = |letter: Letter| {
            let at = Letter::ALL.into_iter().position(|other| other == letter)?;
            setting.raised.get(at).copied().flatten()
        };
        let is_set =
            |letter: &Letter| raised(*letter).is_some() || setting.missing.contains(letter);
        let note = |letter: Letter| match raised(letter) {
            Some((_, most)) if all || most > 0 => signed(letter, setting.key.sign(letter)),
            _ => String::new(),
        };
        order.iter().all(is_set).then(|| KeyRow {
            name: name(setting.key),
            is_played: setting.is_played(),
            notes: order.map(note),
        })
    };
    keys(strings).into_iter().filter_map(row).collect()
}

/// `E♭ major, C minor`.
pub fn name(key: Key) -> String {
    let (major, minor) = (tonic(key.major()), tonic(key.minor()));
    // German writes minor keys small.
    let minor = if naming() == Naming::German { small(&minor) } else { minor };
    say::key(&major, &minor)
}

/// The first note of a scale, its sign in words where the language has it so.
fn tonic((letter, sign): (Letter, i8)) -> String {
    match sign {
        _ if naming() == Naming::German => name_of(letter, sign, Naming::German),
        -1 => say::flat(&letter.printed()),
        1 => say::sharp(&letter.printed()),
        _ => letter.printed(),
    }
}

/// A letter with the sign that a key gives it; a natural has one too, but not in German.
fn signed(letter: Letter, sign: i8) -> String {
    let name = name_of(letter, sign, naming());
    if sign == 0 && naming() != Naming::German { format!("{name}♮") } else { name }
}

/// `up one semitone: B♮ and F♯`; a letter of which only some strings are raised says so.
fn raised(setting: &KeySetting) -> Vec<String> {
    let mut parts = Vec::new();
    for step in [1, 2] {
        let mut letters = Vec::new();
        for (letter, raised) in Letter::ALL.into_iter().zip(setting.raised) {
            let Some((least, most)) =
                raised.filter(|(least, most)| (*least..=*most).contains(&step))
            else {
                continue;
            };
            let name = signed(letter, setting.key.sign(letter));
            letters.push(if least < most { say::some(&name) } else { name });
        }
        if !letters.is_empty() {
            let said = if step == 1 { say::up_one } else { say::up_two };
            parts.push(said(&listed(letters)));
        }
    }
    if parts.is_empty() {
        parts.push(say::AS_TUNED.into());
    }
    parts
}

/// What stands in the way: letters of which no string serves, and single strings.
fn in_the_way(setting: &KeySetting, strings: &[HarpString]) -> Vec<String> {
    let letter_of = |index: usize| Some(strings.get(index)?.note?.letter());
    let of_letter = |letter: Letter| {
        (0..strings.len()).filter(move |index| letter_of(*index) == Some(letter)).count()
    };
    let mut reasons: Vec<(Why, Vec<Letter>, Vec<usize>)> = Vec::new();
    for (index, why) in &setting.in_the_way {
        let place = reasons.iter().position(|(own, ..)| own == why).unwrap_or_else(|| {
            reasons.push((*why, Vec::new(), Vec::new()));
            reasons.len() - 1
        });
        let Some((_, letters, single)) = reasons.get_mut(place) else { continue };
        let alike = |letter: Letter| {
            let own = setting.in_the_way.iter().filter(|(_, own)| own == why);
            own.filter(|(index, _)| letter_of(*index) == Some(letter)).count()
        };
        match letter_of(*index) {
            // Of two strings or more: one alone is named by its number.
            Some(letter) if of_letter(letter) > 1 && alike(letter) == of_letter(letter) => {
                if !letters.contains(&letter) {
                    letters.push(letter);
                }
            }
            _ => single.push(*index + 1),
        }
    }
    let mut parts = Vec::new();
    for (why, letters, single) in reasons {
        if !letters.is_empty() {
            let names = letters.iter().map(|letter| letter.printed()).collect();
            parts.push(because(why, &say::every(&listed(names)), 1));
        }
        if !single.is_empty() {
            let more = single.len().saturating_sub(MOST_NAMED);
            let mut names: Vec<String> =
                single.iter().take(MOST_NAMED).map(ToString::to_string).collect();
            if more > 0 {
                names.push(say::more(&more));
            }
            let count = names.len();
            parts.push(because(why, &say::strings(&count, &listed(names)), count));
        }
    }
    parts
}

/// Why strings stand in the way, who they are being said already; `count` chooses the words for one or for many.
fn because(why: Why, who: &str, count: usize) -> String {
    match why {
        Why::NoNote => say::why_no_note(&count, &who),
        Why::TooHigh(by) => say::why_too_high(&by, &count, &who),
        Why::OutOfReach(_, Mechanism::None) => say::why_no_mechanism(&count, &who),
        Why::OutOfReach(by, _) => say::why_out_of_reach(&by, &who),
        Why::NotAlike => say::why_not_alike(&count, &who),
    }
}

/// `A, B and C`.
fn listed(mut names: Vec<String>) -> String {
    match (names.pop(), names.is_empty()) {
        (None, _) => String::new(),
        (Some(only), true) => only,
        (Some(last), false) => say::and(&names.join(", "), &last),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{Design, MechanismKind};
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::words::{Language, in_language, in_naming};

    fn lines(design: &Design) -> Vec<KeyLine> {
        key_lines(&resolve(design).harp.strings)
    }

    fn sample(key: &str) -> Design {
        SAMPLES.iter().find(|sample| sample.key == key).unwrap().design()
    }

    fn words(lines: &[KeyLine], name: &str) -> String {
        let line = lines.iter().find(|line| line.name.starts_with(name)).unwrap();
        format!("{}{}", if line.is_played { "" } else { "not: " }, line.words)
    }

    #[test]
    fn a_lever_harp_in_e_flat_says_which_levers_go_up() {
        let lines = lines(&sample("floor-36"));
        assert_eq!(lines.len(), 15);
        assert_eq!(lines.iter().filter(|line| line.is_played).count(), 8);
        assert_eq!(words(&lines, "E♭ major, C minor"), "as tuned");
        assert_eq!(words(&lines, "C major"), "up one semitone: E♮, A♮ and B♮");
        assert_eq!(words(&lines, "E major"), "up one semitone: C♯, D♯, E♮, F♯, G♯, A♮ and B♮");
        assert_eq!(words(&lines, "A♭ major"), "not: every D is tuned a semitone too high");
        assert_eq!(words(&lines, "B major"), "not: every A would have to go up 2 semitones");
    }

    #[test]
    fn keys_and_letters_are_called_as_notes_are() {
        let key = |sharps: i8| Key::all().find(|key| key.sharps() == sharps).unwrap();
        let said = |language, sharps| in_language(language, || name(key(sharps)));
        assert_eq!(said(Language::German, -3), "Es-Dur, c-Moll");
        assert_eq!(said(Language::German, -2), "B-Dur, g-Moll");
        assert_eq!(said(Language::German, 2), "D-Dur, h-Moll");
        assert_eq!(said(Language::French, -3), "mi bémol majeur, do mineur");
        assert_eq!(said(Language::French, 3), "la majeur, fa dièse mineur");
        let chosen = in_naming(Naming::Syllables, || name(key(-2)));
        assert_eq!(chosen, "si♭ major, sol minor");
        let design = sample("floor-36");
        let line = |language, begins| in_language(language, || words(&lines(&design), begins));
        assert_eq!(line(Language::German, "C-Dur"), "um einen Halbton erhöht: E, A und H");
        assert_eq!(
            line(Language::French, "do majeur"),
            "haussées d’un demi-ton\u{a0}: mi♮, la♮ et si♮"
        );
    }

    /// The highest and the two lowest have no discs.
    #[test]
    fn a_pedal_harp_plays_all_keys_but_for_its_outer_strings() {
        let mut design = sample("pedal-47");
        let own = lines(&design);
        assert_eq!(words(&own, "C♭ major"), "as tuned");
        assert_eq!(words(&own, "C major"), "not: strings 1, 46 and 47 have no lever or disc");
        for string in &mut design.strings {
            string.mechanism = None;
        }
        design.mechanism.kind = MechanismKind::DoubleDisc;
        let all = lines(&design);
        assert!(all.iter().all(|line| line.is_played));
        assert_eq!(
            words(&all, "G major"),
            "up one semitone: C♮, D♮, E♮, G♮, A♮ and B♮; up two semitones: F♯"
        );
    }

    /// The choice for each string in the details.
    #[test]
    fn what_one_string_has_counts() {
        let mut design = sample("floor-36");
        let place = design.strings.iter().position(|string| string.note == "F4").unwrap();
        design.strings[place].mechanism = Some(MechanismKind::None);
        let lines = lines(&design);
        assert_eq!(
            words(&lines, "G major"),
            format!("not: string {} has no lever or disc", place + 1)
        );
        assert!(!words(&lines, "C major").starts_with("not"));
        for string in design.strings.iter_mut().take(12) {
            string.note = String::new();
        }
        let lines = self::lines(&design);
        assert!(words(&lines, "C major").contains("strings 1, 2, 3, 4 and 8 more have no note"));
        design.strings.clear();
        assert_eq!(self::lines(&design), []);
    }
}
