//! The keys that a harp plays, in words: which letters are raised, or why a key cannot be played.

use crate::engine::analysis::{HarpString, Mechanism};
use crate::engine::keys::{Key, KeySetting, Why, keys};
use crate::engine::pitch::Letter;

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
            let letters = setting.missing.iter().map(|letter| letter.name().to_string()).collect();
            parts.push(format!("no string for {}", listed(letters)));
        }
        KeyLine { name: name(setting.key), is_played: setting.is_played(), words: parts.join("; ") }
    };
    keys(strings).into_iter().map(line).collect()
}

/// `E♭ major, C minor`.
pub fn name(key: Key) -> String {
    let note = |(letter, sign): (Letter, i8)| format!("{}{}", letter.name(), printed(sign, ""));
    format!("{} major, {} minor", note(key.major()), note(key.minor()))
}

const fn printed(sign: i8, none: &'static str) -> &'static str {
    match sign {
        -1 => "♭",
        1 => "♯",
        _ => none,
    }
}

/// `up one semitone: B♮ and F♯`; a letter of which only some strings are raised says so.
fn raised(setting: &KeySetting) -> Vec<String> {
    let mut parts = Vec::new();
    for (step, how_far) in [(1, "up one semitone: "), (2, "up two semitones: ")] {
        let mut letters = Vec::new();
        for (letter, raised) in Letter::ALL.into_iter().zip(setting.raised) {
            let Some((least, most)) =
                raised.filter(|(least, most)| (*least..=*most).contains(&step))
            else {
                continue;
            };
            let some = if least < most { "some " } else { "" };
            let sign = printed(setting.key.sign(letter), "♮");
            letters.push(format!("{some}{}{sign}", letter.name()));
        }
        if !letters.is_empty() {
            parts.push(format!("{how_far}{}", listed(letters)));
        }
    }
    if parts.is_empty() {
        parts.push("as tuned".to_owned());
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
            let names = letters.iter().map(|letter| letter.name().to_string()).collect();
            parts.push(format!("every {} {}", listed(names), because(why, false)));
        }
        if !single.is_empty() {
            let more = single.len().saturating_sub(MOST_NAMED);
            let mut names: Vec<String> =
                single.iter().take(MOST_NAMED).map(ToString::to_string).collect();
            if more > 0 {
                names.push(format!("{more} more"));
            }
            let are_many = names.len() > 1;
            let head = if are_many { "strings" } else { "string" };
            parts.push(format!("{head} {} {}", listed(names), because(why, are_many)));
        }
    }
    parts
}

fn because(why: Why, are_many: bool) -> String {
    let (is, has) = if are_many { ("are", "have") } else { ("is", "has") };
    match why {
        Why::NoNote => format!("{has} no note"),
        Why::TooHigh(1) => format!("{is} tuned a semitone too high"),
        Why::TooHigh(by) => format!("{is} tuned {by} semitones too high"),
        Why::OutOfReach(_, Mechanism::None) => format!("{has} no lever or disc"),
        Why::OutOfReach(by, _) => format!("would have to go up {by} semitones"),
        Why::NotAlike => format!("{is} tuned unlike the others of the letter"),
    }
}

/// `A, B and C`.
fn listed(mut names: Vec<String>) -> String {
    match (names.pop(), names.is_empty()) {
        (None, _) => String::new(),
        (Some(only), true) => only,
        (Some(last), false) => format!("{} and {last}", names.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{Design, MechanismKind};
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;

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
