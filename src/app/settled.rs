//! The log of a new harp: how far off its strings were found and how they were left, as this browser keeps it beside the
//! design. Plain data, no page.
//!
//! A line goes by the note of its string, as the ticks of [`strung`](super::strung) do.

use super::strung::place;
use crate::design::decimal::decimal;
use crate::design::document::Design;
use crate::engine::settling::creep::Entry;

/// The most lines that are read, and kept.
const MOST: usize = 20_000;
/// What a line may hold: minutes since the year 1970, cents, degrees Celsius.
const MINUTES: std::ops::RangeInclusive<f64> = 0.0..=1e9;
pub const CENTS: std::ops::RangeInclusive<f64> = -2_400.0..=2_400.0;
pub const CELSIUS: std::ops::RangeInclusive<f64> = -40.0..=60.0;
/// The signs of a tuning and of what was only heard.
const TUNED: &str = "t";
const HEARD: &str = "h";
/// What the line begins with that says how far the harp was brought up.
const COME: &str = "come";
/// More places no list has.
const PLACES: usize = 100;

/// A reading of one string.
#[derive(Clone, Debug, PartialEq)]
struct Line {
    note: String,
    /// Which of the strings of that note, from 0.
    nth: usize,
    entry: Entry,
}

/// How the harp is brought up: the place of the order, if one was chosen, of the first rounds, and of the round it has come
/// to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Come {
    pub order: Option<usize>,
    pub begins: usize,
    pub round: usize,
}

/// The log of a harp, and how far it was brought up.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Settled {
    lines: Vec<Line>,
    /// How far it was brought up, where that was ever chosen.
    pub come: Option<Come>,
}

impl Settled {
    /// From the lines that [`write`](Self::write) gives; any other line is left out.
    pub fn read(text: &str) -> Self {
        Self {
            lines: text.lines().filter_map(line).take(MOST).collect(),
            come: text.lines().find_map(come),
        }
    }

    /// A line for how far it was brought up, and one for each reading: minutes, which of the strings of a note, the note, whether it was tuned, cents, degrees.
    pub fn write(&self) -> String {
        let come = self.come.map(|Come { order, begins, round }| {
            let order = order.map(|at| at.to_string()).unwrap_or_default();
            format!("{COME}\t{order}\t{begins}\t{round}\n")
        });
        come.into_iter().chain(self.lines.iter().map(written)).collect()
    }

    /// The readings of each string of a design, in its order.
    pub fn of(&self, design: &Design) -> Vec<Vec<Entry>> {
        let rows = 0..design.strings.len();
        rows.map(|row| {
            let (note, nth) = place(design, row);
            let own = self.lines.iter().filter(|line| line.note == note && line.nth == nth);
            own.map(|line| line.entry).collect()
        })
        .collect()
    }

    /// Notes a reading of a string. Whether there was room for it, and it can be one.
    pub fn note(&mut self, design: &Design, row: usize, entry: Entry) -> bool {
        if design.strings.get(row).is_none() || !is_usable(&entry) || self.lines.len() >= MOST {
            return false;
        }
        let (note, nth) = place(design, row);
        self.lines.push(Line { note, nth, entry });
        true
    }

    /// Notes a reading of a string in place of the one before it, where that is the last line. Whether there was room
    /// for it, and it can be one.
    pub fn note_again(
        &mut self,
        design: &Design,
        row: usize,
        before: &Entry,
        entry: Entry,
    ) -> bool {
        if design.strings.get(row).is_some() && is_usable(&entry) {
            let (note, nth) = place(design, row);
            let before = written(&Line { note, nth, entry: *before });
            // Lines are kept to so many digits.
            self.lines.pop_if(|last| written(last) == before);
        }
        self.note(design, row, entry)
    }

    /// Takes the line back that was noted last. Whether there was one.
    pub fn take_back(&mut self) -> bool {
        self.lines.pop().is_some()
    }
}

fn is_usable(entry: &Entry) -> bool {
    MINUTES.contains(&entry.minutes)
        && CENTS.contains(&entry.cents)
        && entry.celsius.is_none_or(|celsius| CELSIUS.contains(&celsius))
}

fn come(text: &str) -> Option<Come> {
    let mut parts = text.strip_prefix(COME)?.strip_prefix('\t')?.split('\t');
    let place = |text: &str| text.parse().ok().filter(|place| *place < PLACES);
    let order = match parts.next()? {
        "" => None,
        text => Some(place(text)?),
    };
    Some(Come { order, begins: place(parts.next()?)?, round: place(parts.next()?)? })
}

fn written(Line { note, nth, entry }: &Line) -> String {
    let kind = if entry.is_tuning { TUNED } else { HEARD };
    let celsius = entry.celsius.map(|celsius| format!("{celsius:.1}")).unwrap_or_default();
    let Entry { minutes, cents, .. } = entry;
    format!("{minutes:.1}\t{nth}\t{note}\t{kind}\t{cents:.2}\t{celsius}\n")
}

fn line(text: &str) -> Option<Line> {
    let mut parts = text.splitn(6, '\t');
    let minutes = decimal(parts.next()?)?;
    let nth = parts.next()?.parse().ok()?;
    let note = parts.next()?.to_owned();
    let is_tuning = match parts.next()? {
        TUNED => true,
        HEARD => false,
        _ => return None,
    };
    let cents = decimal(parts.next()?)?;
    let celsius = match parts.next().unwrap_or_default() {
        "" => None,
        text => Some(decimal(text)?),
    };
    let entry = Entry { minutes, cents, is_tuning, celsius };
    is_usable(&entry).then_some(Line { note, nth, entry })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::StringSpec;
    use crate::design::presets::SAMPLES;

    fn entry(minutes: f64, cents: f64) -> Entry {
        Entry { minutes, cents, is_tuning: cents == 0.0, celsius: (minutes > 1.0).then_some(19.5) }
    }

    #[test]
    fn readings_come_back_as_they_were_noted_and_stay_with_their_note() {
        let mut design = SAMPLES[0].design();
        let mut log = Settled::default();
        assert!(log.note(&design, 3, entry(1.0, 0.0)));
        assert!(log.note(&design, 3, entry(61.5, -7.25)));
        assert!(log.note(&design, 0, entry(62.0, 1.0)));
        let again = Settled::read(&log.write());
        assert_eq!(again, log);
        design.strings.insert(0, StringSpec { note: "D9".to_owned(), ..StringSpec::default() });
        let all = again.of(&design);
        assert_eq!(all[4], [entry(1.0, 0.0), entry(61.5, -7.25)]);
        assert_eq!((all[0].len(), all[1].len()), (0, 1));
    }

    #[test]
    fn the_last_line_is_taken_back() {
        let design = SAMPLES[0].design();
        let mut log = Settled::default();
        assert!(!log.take_back());
        log.note(&design, 1, entry(5.0, -1.0));
        assert!(log.take_back());
        assert_eq!(log, Settled::default());
    }

    #[test]
    fn a_string_that_is_plucked_again_takes_the_place_of_its_last_line_alone() {
        let design = SAMPLES[0].design();
        let mut log = Settled::default();
        let first = entry(10.04, -9.0);
        assert!(log.note_again(&design, 3, &first, first), "there was none before");
        // As another page finds it.
        let mut log = Settled::read(&log.write());
        assert!(log.note_again(&design, 3, &first, entry(10.5, -3.0)));
        assert_eq!(log.of(&design)[3], [entry(10.5, -3.0)]);
        // Neither another string's nor one that stands further up.
        assert!(log.note_again(&design, 4, &entry(10.5, -3.0), entry(11.0, 1.0)));
        assert!(log.note_again(&design, 3, &entry(10.5, -3.0), entry(12.0, -2.0)));
        let all = log.of(&design);
        assert_eq!((all[3].len(), all[4].len()), (2, 1));
        // What cannot be noted takes nothing away.
        assert!(!log.note_again(&design, 3, &entry(12.0, -2.0), entry(13.0, f64::NAN)));
        assert_eq!(log.of(&design)[3].len(), 2);
        assert!(!log.note_again(&design, 99_999, &first, first));
    }

    #[test]
    fn how_far_the_harp_has_come_stays_beside_its_readings() {
        let design = SAMPLES[0].design();
        for order in [None, Some(2)] {
            let come = Some(Come { order, begins: 1, round: 4 });
            let mut log = Settled { come, ..Settled::default() };
            log.note(&design, 1, entry(5.0, -1.0));
            assert_eq!(Settled::read(&log.write()), log);
            assert!(log.take_back() && log.come == come);
        }
        for text in ["come", "come\t\t1", "come\tx\t0\t0", "come\t\t0\t-1", "come\t\t0\t1000"] {
            assert_eq!(Settled::read(text), Settled::default(), "{text}");
        }
    }

    #[test]
    fn what_is_no_reading_is_neither_noted_nor_read() {
        let design = SAMPLES[0].design();
        let mut log = Settled::default();
        for (minutes, cents) in [(f64::NAN, 0.0), (1.0, f64::INFINITY), (-1.0, 0.0), (1.0, 9e9)] {
            assert!(!log.note(&design, 0, entry(minutes, cents)), "{minutes} {cents}");
        }
        assert!(!log.note(&design, 99_999, entry(1.0, 0.0)));
        for text in [
            "",
            "nonsense",
            "1\t0\tC4",
            "1\t0\tC4\tx\t3\t",
            "1\t-1\tC4\th\t3\t",
            "NaN\t0\tC4\th\t3\t",
            "1\t0\tC4\th\t1e9\t",
            "1\t0\tC4\th\t3\t900",
            "1\t0\tC4\th\t3\twarm",
        ] {
            assert_eq!(Settled::read(text), Settled::default(), "{text}");
        }
        let one = Settled::read("junk\n1\t0\tC4\th\t3\t\n\0\t\t\t\t\t\n");
        assert_eq!(one.write(), "1.0\t0\tC4\th\t3.00\t\n");
    }

    #[test]
    fn no_more_lines_are_read_than_are_kept() {
        let text = "1\t0\tC4\th\t3\t\n".repeat(MOST + 5);
        assert_eq!(Settled::read(&text).lines.len(), MOST);
    }
}
