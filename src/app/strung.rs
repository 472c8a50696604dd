//! Which strings are on the harp and tuned up, as it is ticked on the day it is strung. Plain data, no page.
//!
//! A tick goes by the note of its string, so that strings which come or go elsewhere in the chart leave it where it is,
//! and holds the make-up that was put on.

use crate::design::document::{Design, StringSpec};
use crate::design::make_up_text;

/// The most ticks that are read.
const MOST: usize = 2_000;

/// How a string stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Tick {
    /// Not on yet.
    Off,
    /// On and tuned up.
    On,
    /// Another make-up was on when it was ticked: this one.
    Other(String),
}

/// One string that was ticked.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Ticked {
    note: String,
    /// Which of the strings of that note, from 0.
    nth: usize,
    make_up: String,
}

/// The ticks of a harp.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Strung(Vec<Ticked>);

impl Strung {
    /// From the lines that [`write`](Self::write) gives; any other line is left out.
    pub fn read(text: &str) -> Self {
        let line = |line: &str| {
            let mut parts = line.splitn(3, '\t');
            let (nth, note) = (parts.next()?.parse().ok()?, parts.next()?.to_owned());
            Some(Ticked { note, nth, make_up: parts.next()?.to_owned() })
        };
        Self(text.lines().filter_map(line).take(MOST).collect())
    }

    /// A line for each tick.
    pub fn write(&self) -> String {
        let line = |Ticked { note, nth, make_up }: &Ticked| format!("{nth}\t{note}\t{make_up}\n");
        self.0.iter().map(line).collect()
    }

    /// How each string of a design stands, in its order.
    pub fn of(&self, design: &Design) -> Vec<Tick> {
        let strings = design.strings.iter().enumerate();
        strings
            .map(|(row, spec)| {
                let (note, nth) = place(design, row);
                match self.0.iter().find(|ticked| ticked.note == note && ticked.nth == nth) {
                    None => Tick::Off,
                    Some(ticked) if ticked.make_up == make_up(spec) => Tick::On,
                    Some(ticked) => Tick::Other(ticked.make_up.clone()),
                }
            })
            .collect()
    }

    /// Takes the tick of a string away if it has one for what it is now, and ticks it if not.
    pub fn turn(&mut self, design: &Design, row: usize) {
        let Some(spec) = design.strings.get(row) else { return };
        let (note, nth) = place(design, row);
        let make_up = make_up(spec);
        let now = Ticked { note, nth, make_up };
        let was_on = self.0.contains(&now);
        self.0.retain(|ticked| ticked.note != now.note || ticked.nth != now.nth);
        if !was_on {
            self.0.push(now);
        }
    }
}

/// What a string is made of, in a line.
pub fn make_up(spec: &StringSpec) -> String {
    in_a_line(&make_up_text::write(&spec.make_up))
}

/// The note of a string, and how many of the same stand above it.
pub(super) fn place(design: &Design, row: usize) -> (String, usize) {
    let note = |row: usize| design.strings.get(row).map(|spec| in_a_line(&spec.note));
    let own = note(row).unwrap_or_default();
    let nth = (0..row).filter(|above| note(*above).as_ref() == Some(&own)).count();
    (own, nth)
}

fn in_a_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;

    fn design() -> Design {
        SAMPLES[0].design()
    }

    #[test]
    fn a_tick_is_kept_and_taken_away_again() {
        let design = design();
        let mut strung = Strung::default();
        strung.turn(&design, 3);
        strung.turn(&design, 0);
        let again = Strung::read(&strung.write());
        assert_eq!(again, strung);
        let on: Vec<usize> =
            (0..design.strings.len()).filter(|row| again.of(&design)[*row] == Tick::On).collect();
        assert_eq!(on, [0, 3]);
        strung.turn(&design, 3);
        assert_eq!(strung.of(&design)[3], Tick::Off);
        strung.turn(&design, 99_999);
        assert_eq!(Strung::read(&strung.write()), strung);
    }

    #[test]
    fn another_gauge_makes_it_the_tick_of_another_string() {
        let mut design = design();
        let mut strung = Strung::default();
        strung.turn(&design, 5);
        let before = make_up(&design.strings[5]);
        design.strings[5].make_up.diameter = "0.77".to_owned();
        assert_eq!(strung.of(&design)[5], Tick::Other(before.clone()));
        // Its own gauge again, and it is on.
        let mut back = design.clone();
        back.strings[5] = self::design().strings[5].clone();
        assert_eq!(strung.of(&back)[5], Tick::On);
        // Ticked once more, it is on as it is now.
        strung.turn(&design, 5);
        assert_eq!(strung.of(&design)[5], Tick::On);
        assert_eq!(strung.of(&back)[5], Tick::Other(make_up(&design.strings[5])));
    }

    #[test]
    fn a_tick_stays_with_its_note_when_strings_come_above() {
        let mut design = design();
        let mut strung = Strung::default();
        strung.turn(&design, 4);
        design.strings.insert(0, StringSpec { note: "D9".to_owned(), ..StringSpec::default() });
        let ticks = strung.of(&design);
        assert_eq!((&ticks[4], &ticks[5]), (&Tick::Off, &Tick::On));
    }

    #[test]
    fn two_strings_of_one_note_have_a_tick_each() {
        let mut design = design();
        design.strings[1] = design.strings[0].clone();
        let mut strung = Strung::default();
        strung.turn(&design, 1);
        let ticks = strung.of(&design);
        assert_eq!((&ticks[0], &ticks[1]), (&Tick::Off, &Tick::On));
    }

    #[test]
    fn lines_that_say_nothing_are_left_out() {
        let strung = Strung::read("nothing\n-1\tC4\tnylon\n0\tC4\n0\tC4\tnylon 0.8\n");
        assert_eq!(strung.write(), "0\tC4\tnylon 0.8\n");
    }
}
