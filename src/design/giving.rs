//! How far the strings fall while a harp is strung and gives, in words and as CSV.

use std::fmt::Write;

use super::display;
use super::document::Design;
use super::letters::capital;
use super::resolve::{Resolved, resolve};
use crate::engine::analysis::{Analysis, StringFigures, analyse};
use crate::engine::bearing::{Gives, Order, gives};
use crate::engine::geometry::{Band, Loads, lay_out, loads};
use crate::engine::giving::{Fall, falls};
use crate::words::{Words, giving as say};

/// What least and most are of, and what is left out.
pub fn meaning(gives: Option<&Gives>) -> String {
    let joints = if gives.is_some_and(Gives::by_joints) { "sized" } else { "none" };
    let soundbox = if gives.is_some_and(Gives::by_soundbox) { "sized" } else { "none" };
    say::meaning(&joints, &soundbox)
}

/// The heads of the table of falls.
pub const HEADS: [Words; 6] = [
    say::HEAD_STRING,
    say::HEAD_CENTS,
    say::HEAD_HZ,
    say::HEAD_ROUND_2,
    say::HEAD_ROUND_3,
    say::HEAD_OFF,
];

const COLUMNS: &str = "order,turn,string,note,tension_n,frequency_hz,fall_least_cents,fall_most_cents,fall_least_hz,fall_most_hz,\
     after_round_2_least_cents,after_round_2_most_cents,after_round_3_least_cents,after_round_3_most_cents,\
     off_others_rise_least_cents,off_others_rise_most_cents\n";

/// A range in words, with so many decimals; falls that round to nothing are 0.
fn range((least, most): (f64, f64), places: usize) -> String {
    let shown = |number: f64| {
        if number.is_finite() { display::decimals(number, places) } else { say::SLACK.into() }
    };
    let (least, most) = (shown(least), shown(most));
    if least == most { most } else { say::range(&least, &most) }
}

/// Cents to a tenth, beyond a hundred of them to a whole one.
fn cents(both: (f64, f64)) -> String {
    range(both, if both.1 < 100.0 { 1 } else { 0 })
}

/// How a design gives; `None` where nothing can be said, as where its frame has no sizes of its own.
pub fn gives_of(
    band: &Band,
    loads: &Loads,
    analysis: &Analysis,
    resolved: &Resolved,
) -> Option<Gives> {
    let build = resolved.build();
    if !build.is_given {
        return None;
    }
    gives(band, loads, analysis, &resolved.geometry, &build)
}

/// How far each string falls, in an order of stringing.
pub fn in_order(
    gives: Option<&Gives>,
    resolved: &Resolved,
    analysis: &Analysis,
    order: Order,
) -> Vec<Fall> {
    let Some(gives) = gives else { return Vec::new() };
    falls(gives, &resolved.harp, analysis, &order.places(analysis.strings.len()))
}

/// A string within a sentence; nothing where there is none.
pub(super) fn named(analysis: &Analysis, place: usize) -> String {
    match analysis.strings.get(place) {
        Some(StringFigures { number, note: Some(note), .. }) => {
            say::string_noted(&note.printed(), number)
        }
        Some(StringFigures { number, .. }) => say::string_numbered(number),
        None => String::new(),
    }
}

/// The cells of a string, below [`HEADS`].
pub fn row(fall: &Fall, analysis: &Analysis) -> [String; 6] {
    // The head of the column says that it is a string.
    let name = match analysis.strings.get(fall.place) {
        Some(StringFigures { number, note: Some(note), .. }) => {
            format!("{number}, {}", note.printed())
        }
        Some(StringFigures { number, .. }) => number.to_string(),
        None => String::new(),
    };
    [
        name,
        cents(fall.first_cents),
        range(fall.first_hz(), 1),
        cents(fall.later_cents[0]),
        cents(fall.later_cents[1]),
        cents(fall.off_cents),
    ]
}

/// The one that has most of something, by its most.
fn farthest(falls: &[Fall], of: fn(&Fall) -> (f64, f64)) -> Option<&Fall> {
    let first = falls.first()?;
    Some(falls.iter().fold(first, |most, next| if of(next).1 > of(most).1 { next } else { most }))
}

/// What stringing in an order comes to, a sentence each; the reason where nothing can be said.
pub fn told(falls: &[Fall], analysis: &Analysis, order: Order) -> Vec<String> {
    let named = |fall: &Fall| named(analysis, fall.place);
    let (Some(first), Some(second), Some(third), Some(off)) = (
        farthest(falls, |fall| fall.first_cents),
        farthest(falls, |fall| fall.later_cents[0]),
        farthest(falls, |fall| fall.later_cents[1]),
        farthest(falls, |fall| fall.off_cents),
    ) else {
        return vec![capital(&format!("{}.", say::NOTHING))];
    };
    let strung = match order {
        Order::LowestFirst => say::strung_lowest_first,
        Order::HighestFirst => say::strung_highest_first,
        Order::MiddleFirst => say::strung_middle_first,
        Order::InTurns => say::strung_in_turns,
    };
    vec![
        strung(&cents(first.first_cents), &named(first)),
        say::rounds(
            &cents(second.later_cents[0]),
            &named(second),
            &cents(third.later_cents[1]),
            &named(third),
        ),
        say::one_off(&cents(off.off_cents), &named(off)),
    ]
}

/// What an order of stringing is called in a table for programs.
const fn key(order: Order) -> &'static str {
    match order {
        Order::LowestFirst => "from the longest string up",
        Order::HighestFirst => "from the shortest string down",
        Order::MiddleFirst => "from the middle outwards",
        Order::InTurns => "in-turns",
    }
}

/// How far each string falls in every order of stringing.
///
/// # Errors
///
/// Why nothing can be said.
pub fn csv(design: &Design) -> Result<String, String> {
    let resolved = resolve(design);
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
    let gives = gives_of(&band, &loads, &analysis, &resolved);
    let mut csv = COLUMNS.to_owned();
    for order in Order::ALL {
        let all = in_order(gives.as_ref(), &resolved, &analysis, order);
        if all.is_empty() {
            return Err(say::NOTHING.into());
        }
        for fall in &all {
            let figures = analysis.strings.get(fall.place);
            let note = figures.and_then(|figures| figures.note);
            let note = note.map(|note| note.to_string()).unwrap_or_default();
            let number = figures.map_or(0, |figures| figures.number);
            let _ = write!(csv, "{},{},{number},{note}", key(order), fall.turn);
            let _ = write!(csv, ",{:.3},{:.3}", fall.tension.to_n(), fall.frequency.to_hz());
            let [second, third] = fall.later_cents;
            for (least, most) in [fall.first_cents, fall.first_hz(), second, third, fall.off_cents]
            {
                let shown = |number: f64| {
                    if number.is_finite() { format!("{:.3}", number + 0.0) } else { String::new() }
                };
                let _ = write!(csv, ",{},{}", shown(least), shown(most));
            }
            csv.push('\n');
        }
    }
    Ok(csv)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;

    #[test]
    fn every_sample_has_a_row_for_each_string_in_each_order() {
        for sample in SAMPLES {
            let csv = csv(&sample.design()).unwrap();
            let count = sample.design().strings.len();
            assert_eq!(csv.lines().count(), 1 + Order::ALL.len() * count, "{}", sample.key);
            for line in csv.lines() {
                assert_eq!(line.matches(',').count(), 15, "{line}");
                assert!(!line.contains("NaN") && !line.contains("inf"), "{line}");
            }
        }
    }

    #[test]
    fn what_is_off_most_is_named_and_ranges_that_are_one_number_are_one() {
        assert_eq!(cents((3.04, 3.01)), "3.0");
        assert_eq!(cents((12.0, 140.2)), "12 to 140");
        assert_eq!(cents((12.0, f64::INFINITY)), "12 to slack");
        let design = SAMPLES[0].design();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let none = told(&[], &analysis, Order::LowestFirst);
        assert_eq!(none.len(), 1);
        assert!(none[0].starts_with("How the frame flexes cannot"), "{none:?}");
    }

    #[test]
    fn without_a_frame_there_is_the_reason() {
        assert_eq!(csv(&Design::default()).unwrap_err(), say::NOTHING.said());
    }

    #[test]
    fn of_a_frame_whose_sizes_nobody_gave_nothing_is_foretold() {
        for sample in SAMPLES {
            let mut design = sample.design();
            design.geometry = Design::default().geometry;
            assert_eq!(csv(&design).unwrap_err(), say::NOTHING.said(), "{}", sample.key);
            let years = crate::design::years::csv(&design).unwrap_err();
            assert_eq!(years, crate::words::years::NOTHING.said(), "{}", sample.key);
        }
    }
}
