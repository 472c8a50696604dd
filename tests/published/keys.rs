//! Keys: which a harp plays with full levers or pedals, from the tunings that makers use.

use stringloft::design::document::{Design, MechanismKind, StringSpec};
use stringloft::design::keys::name;
use stringloft::design::presets::{OPEN_TUNINGS, by_compass};
use stringloft::design::resolve::resolve;
use stringloft::engine::keys::{Key, KeySetting, keys};
use stringloft::engine::pitch::Letter;

use super::assert_same;

fn settings(open: &str, kind: MechanismKind) -> Vec<KeySetting> {
    let open = OPEN_TUNINGS.iter().find(|tuning| tuning.name.english() == open).expect("a tuning");
    let note = |text: &str| text.parse().expect("the test names a note");
    let strings = by_compass(note("C2"), note("C6"), |letter| open.sign(letter));
    let strings = strings.expect("a compass");
    let strings = strings.into_iter().map(|string| StringSpec { mechanism: Some(kind), ..string });
    let design = Design { strings: strings.collect(), ..Design::default() };
    keys(&resolve(&design).harp.strings)
}

fn major(key: Key) -> String {
    name(key).split(" major").next().expect("a name").to_owned()
}

fn played(open: &str, kind: MechanismKind) -> Vec<String> {
    let settings = settings(open, kind).into_iter().filter(KeySetting::is_played);
    settings.map(|setting| major(setting.key)).collect()
}

/// Source: the signs of the keys, counted apart from this code: a lever takes a flat to its natural or a natural to
/// its sharp. The open tunings C major and E flat major: a maker's page on strings and tuning. Worked out.
pub fn full_levers_give_the_keys_that_the_signs_allow() {
    let c = ["C", "G", "D", "A", "E", "B", "F♯", "C♯"];
    assert_same(played("C major", MechanismKind::Lever), c.map(str::to_owned).to_vec(), "C");
    let e_flat = ["E♭", "B♭", "F", "C", "G", "D", "A", "E"];
    let found = played("E flat major", MechanismKind::Lever);
    assert_same(found, e_flat.map(str::to_owned).to_vec(), "E flat");
}

/// Source: an encyclopaedia's article on the pedal harp: in C flat major, all flats, no disc touches; the upper discs
/// give the naturals, both discs the sharps. Read. That each key has each letter as one of the three follows.
pub fn pedals_give_flats_naturals_and_sharps() {
    let settings = settings("C flat major", MechanismKind::DoubleDisc);
    assert_same(settings.iter().filter(|setting| setting.is_played()).count(), 15, "all keys");
    for (name, step) in [("C♭", 0), ("C", 1), ("C♯", 2)] {
        let setting = settings.iter().find(|setting| major(setting.key) == name);
        let raised = setting.expect("a key").raised;
        for (letter, raised) in Letter::ALL.into_iter().zip(raised) {
            assert_same(raised, Some((step, step)), format!("{letter:?} in {name}"));
        }
    }
}
