//! Tests of the scene, its look and what lies over it.

use super::over::{Given, OVER, extent, kind};
use super::svg::{letters_text, marks_text, number, overlay_text, scene_text};
use super::*;
use crate::charts::overlay::Overlay;
use crate::design::edit::{Column, Edit};
use crate::design::presets::SAMPLES;
use crate::design::resolve::resolve;
use crate::engine::analysis::analyse;
use crate::engine::geometry::lay_out;
use crate::testing::assert_close;

pub(super) struct Laid {
    pub(super) design: Design,
    resolved: Resolved,
    analysis: Analysis,
    band: Band,
    pub(super) scene: Scene,
}

pub(super) fn laid(design: Design) -> Laid {
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let scene = scene(&design, &resolved, &analysis, &band);
    Laid { design, resolved, analysis, band, scene }
}

pub(super) fn sample(key: &str) -> Laid {
    laid(SAMPLES.iter().find(|sample| sample.key == key).expect("a sample").design())
}

fn over(laid: &Laid, key: &str) -> Overlay {
    let Laid { design, resolved, analysis, band, scene } = laid;
    (kind(key).2)(&Given { design, resolved, analysis, band, scene, bearing: None, marked: 11 })
}

pub(super) fn length(row: usize, text: &str) -> Edit {
    Edit::Cell { row, column: Column::Length, text: text.to_owned() }
}

#[test]
fn every_string_of_the_samples_is_in_the_scene_as_long_as_it_is() {
    for given in &SAMPLES {
        let laid = laid(given.design());
        assert_eq!(laid.scene.strings.len(), laid.design.strings.len(), "{}", given.key);
        for string in &laid.scene.strings {
            let long = laid.analysis.strings[string.index].length.expect("a length").to_mm();
            assert_close(apart(string.start, string.bridge), long, 1e-9, given.key);
        }
        let whole = laid.scene.extent.expect("an extent");
        assert!(whole.top - whole.bottom > 300.0 && whole.right - whole.left > 200.0);
        assert!(!laid.scene.neck.is_empty() && laid.scene.pillar.len() == 4, "{}", given.key);
    }
}

#[test]
fn each_c_and_f_has_its_letter_and_each_wound_string_two_strokes() {
    let laid = sample("pedal-47");
    let text = scene_text(&laid.scene, 0.3) + &letters_text(&laid.scene, 0.3);
    let count = |what: &str| text.matches(what).count();
    for (letter, class) in [('C', "string c\""), ('F', "string f\"")] {
        let of_letter = laid.scene.strings.iter().filter(|s| s.letter == Some(letter)).count();
        assert_eq!(count(class), of_letter, "{letter}");
        assert_eq!(count(&format!(">{letter}</text>")), of_letter, "{letter}");
    }
    let wound = laid.scene.strings.iter().filter(|string| string.wound).count();
    assert!(wound > 5);
    assert_eq!(count("class=\"core\""), wound);
    assert_eq!(count("class=\"string"), 47);
}

#[test]
fn all_strings_are_numbered_where_there_is_room() {
    let scene = sample("floor-36").scene;
    let texts = |px_per_mm: f64| letters_text(&scene, px_per_mm).matches("<text").count();
    let letters = scene.strings.iter().filter(|string| string.letter.is_some()).count();
    assert_eq!(texts(0.3), 2 * letters);
    assert_eq!(texts(3.0), 36 + letters);
}

#[test]
fn the_text_is_small_and_holds_numbers_only() {
    for given in &SAMPLES {
        let laid = laid(given.design());
        let mut texts = vec![
            scene_text(&laid.scene, 0.35),
            letters_text(&laid.scene, 0.35),
            marks_text(&laid.scene, 0.35, Some(3), Some(5), "a < b"),
        ];
        texts.extend(OVER.iter().map(|kind| overlay_text(&over(&laid, kind.0), 0.35)));
        for text in texts {
            assert!(
                !text.contains("NaN") && !text.contains("inf") && !text.contains("style"),
                "{}",
                given.key
            );
            assert!(text.len() < 32 * 1024, "{}: {} bytes", given.key, text.len());
        }
    }
}

#[test]
fn levers_and_discs_are_drawn_apart() {
    let levers = scene_text(&sample("floor-36").scene, 1.0);
    assert!(levers.contains("class=\"lever\"") && !levers.contains("class=\"disc\""));
    let discs = scene_text(&sample("pedal-47").scene, 1.0);
    assert!(!discs.contains("class=\"lever\"") && discs.matches("class=\"disc\"").count() == 2);
}

#[test]
fn the_nearest_string_and_the_nearest_pin_are_found() {
    let scene = sample("floor-36").scene;
    for string in &scene.strings {
        let beside = (string.bridge.0 + 2.0, string.bridge.1 - 1.0);
        assert_eq!(pin_at(&scene, beside, 6.0), Some(string.index));
        let on = between(string.hole, string.bridge);
        assert_eq!(string_at(&scene, (on.0 + 1.0, on.1), 6.0), Some(string.index));
    }
    assert_eq!(string_at(&scene, (-1_000.0, 0.0), 6.0), None);
}

#[test]
fn a_harp_without_lengths_has_an_empty_scene() {
    let none = laid(Design::default());
    assert_eq!(none.scene, Scene::default());
    assert_eq!(scene_text(&none.scene, 1.0), "");
    assert!(OVER.iter().all(|kind| over(&none, kind.0) == Overlay::default()));
    let mut broken = SAMPLES[0].design();
    broken = length(4, "?").apply(&broken);
    let scene = laid(broken.clone()).scene;
    assert_eq!(
        (scene.strings.len(), scene.holes.len()),
        (broken.strings.len() - 1, broken.strings.len())
    );
}

#[test]
fn a_harp_of_one_or_two_strings_has_no_path_without_a_beginning() {
    for count in [1, 2] {
        let mut few = SAMPLES[2].design();
        few.strings.truncate(count);
        let few = laid(few);
        let mut texts =
            vec![scene_text(&few.scene, 1.0), marks_text(&few.scene, 1.0, Some(0), None, "")];
        texts.extend(OVER.iter().map(|kind| overlay_text(&over(&few, kind.0), 1.0)));
        assert!(texts.iter().all(|text| !text.contains("d=\"Z")), "{count}: {texts:?}");
        assert_eq!(over(&few, "measures").caption.contains("bass and treble"), count > 1);
    }
}

#[test]
fn the_measures_say_the_longest_and_the_shortest_string() {
    let laid = sample("floor-36");
    let measures = over(&laid, "measures");
    let words: Vec<&str> = measures.labels.iter().map(|label| label.text.as_str()).collect();
    let said = |index: usize| {
        let length = laid.analysis.strings[index].length.expect("a length");
        crate::design::display::length_with_unit(length, laid.design.units.length)
    };
    assert!(words.contains(&said(0).as_str()) && words.contains(&said(35).as_str()), "{words:?}");
    assert!(words.iter().any(|word| word.ends_with('°')), "{words:?}");
    let (drawn, whole) = (extent(&measures).expect("lines"), laid.scene.extent.expect("a harp"));
    assert!(drawn.left < whole.left && drawn.bottom < whole.bottom);
}

#[test]
fn a_kink_is_named_with_its_string() {
    let smooth = sample("floor-36");
    assert!(over(&smooth, "bend").caption.ends_with("No string stands out."));
    let long = smooth.analysis.strings[15].length.expect("a length").to_mm() + 12.0;
    let bent = laid(length(15, &format!("{long:.1}")).apply(&smooth.design));
    let bend = over(&bent, "bend");
    assert!(
        bend.caption.contains("string 16 looks") && bend.caption.contains("too long"),
        "{}",
        bend.caption
    );
    assert_eq!(bend.labels.len(), 1);
    assert_eq!(bend.lines.len(), 36 + 1 + 1);
}

#[test]
fn a_number_is_written_to_a_hundredth_without_needless_noughts() {
    for (value, text) in [
        (0.0, "0"),
        (1.0, "1"),
        (-2.5, "-2.5"),
        (0.05, "0.05"),
        (-0.001, "0"),
        (12.346, "12.35"),
        (-0.5, "-0.5"),
    ] {
        let mut out = String::new();
        number(&mut out, value);
        assert_eq!(out, text);
    }
}
