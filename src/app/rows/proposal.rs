//! What is proposed for the strings, a set or lengths, in words and rows.

use std::sync::Arc;

use crate::charts::axis::Axis;
use crate::design::choose::both::Both;
use crate::design::choose::lengths::Lengths;
use crate::design::choose::{Alternative, Change, Line, Outcome, WORTH_PERCENT};
use crate::design::display::{self, NONE};
use crate::design::document::{Design, Units, WantsSpec};
use crate::design::edit::Edit;
use crate::design::figures::Scale;
use crate::design::letters::capital;
use crate::design::make_up_text;
use crate::engine::analysis::{Analysis, HarpString};
use crate::engine::pitch::Note;
use crate::words::{Words, proposal as say};

/// A string of a proposal, as a table shows it.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct ProposedRow {
    /// Its index.
    pub row: usize,
    /// `String 12, C4`.
    pub name: String,
    /// What is there now: make-up or length, or both.
    pub from: String,
    /// What is proposed.
    pub to: String,
    /// The pull, before and after.
    pub tension: String,
    /// The pluck stiffness, before and after.
    pub stiffness: String,
    /// The load share in per cent, before and after.
    pub share: String,
}

/// What the edit comes from.
#[derive(Clone, Debug)]
enum Source {
    Set(Box<Outcome>),
    Lengths(Box<Lengths>),
    Both(Box<Both>),
    Nothing,
}

/// Something that can be taken, wholly or for some strings.
#[derive(Clone, Debug)]
pub struct Proposal {
    /// What it is.
    pub title: String,
    /// What is said of it, in sentences: how sure it is, what holds it back.
    pub says: Vec<String>,
    /// Why there is none within the limits, in sentences.
    pub conflicts: Vec<String>,
    /// What this one breaks, in sentences.
    pub broken: Vec<String>,
    /// What could not be used, in sentences.
    pub left_out: Vec<String>,
    /// How good it is, before and after.
    pub lines: Vec<Line>,
    /// The strings that would change.
    pub rows: Vec<ProposedRow>,
    /// Whether it gains what its changes are worth; else it is not the first thing to do.
    pub is_worth: bool,
    /// The figures of the whole design with it; none where nothing is proposed.
    pub analysis: Option<Arc<Analysis>>,
    source: Source,
}

/// The title of what is not worth its changes.
const NO_GAIN: Words = say::NO_GAIN;

/// Why it is none.
fn no_gain() -> String {
    let (mean, most) = WORTH_PERCENT;
    say::no_gain_because(&mean, &most)
}

impl Proposal {
    /// A set of strings.
    pub fn of_set(outcome: Outcome, left_out: &[String], units: Units) -> Self {
        let is_there = outcome.changes.is_empty();
        let title = match outcome.conflicts.is_empty() {
            false => say::NEAREST,
            true if outcome.is_farther && !is_there => say::BEST_WITHIN,
            true if !outcome.is_worth => say::NO_GAIN_SET,
            true => say::BEST,
        };
        let mut says = sentences(&outcome.proof);
        if !outcome.is_worth {
            let (mean, most) = WORTH_PERCENT;
            says.insert(0, say::no_gain_set_because(&mean, &most));
        }
        Self {
            title: title.into(),
            says,
            conflicts: sentences(&outcome.conflicts),
            broken: sentences(&outcome.broken),
            left_out: sentences(left_out),
            lines: if outcome.changes.is_empty() { Vec::new() } else { outcome.lines.clone() },
            rows: rows(&outcome.changes, units),
            is_worth: outcome.is_worth,
            analysis: Some(Arc::new(outcome.analysis.clone())),
            source: Source::Set(Box::new(outcome)),
        }
    }

    /// Lengths.
    pub fn of_lengths(lengths: Lengths, units: Units) -> Self {
        let mut says = sentences(&lengths.notes);
        let is_there = lengths.changes.is_empty();
        let title = match (is_there, lengths.is_worth) {
            (true, _) => say::NO_LENGTHS,
            (_, true) => say::LENGTHS,
            (_, false) => NO_GAIN,
        };
        if is_there {
            says.push(say::LENGTHS_THERE.into());
        } else if !lengths.is_worth {
            says.insert(0, no_gain());
        }
        Self {
            title: title.into(),
            says,
            conflicts: Vec::new(),
            broken: Vec::new(),
            left_out: Vec::new(),
            lines: if is_there { Vec::new() } else { lengths.lines.clone() },
            rows: rows(&lengths.changes, units),
            is_worth: lengths.is_worth,
            analysis: Some(Arc::new(lengths.analysis.clone())),
            source: Source::Lengths(Box::new(lengths)),
        }
    }

    /// Strings and lengths together.
    pub fn of_both(both: Both, units: Units) -> Self {
        let changes = both.changes();
        let ended = say::ended(&both.progress().round);
        let is_worth = both.is_worth();
        let title = match (changes.is_empty(), is_worth) {
            (true, _) => say::NO_BOTH,
            (_, true) => say::BOTH,
            (_, false) => NO_GAIN,
        };
        Self {
            title: title.into(),
            says: (!is_worth).then(no_gain).into_iter().chain([ended]).collect(),
            conflicts: sentences(both.conflicts()),
            broken: Vec::new(),
            left_out: Vec::new(),
            lines: if changes.is_empty() { Vec::new() } else { both.lines() },
            rows: rows(&changes, units),
            is_worth,
            analysis: Some(Arc::new(both.analysis().clone())),
            source: Source::Both(Box::new(both)),
        }
    }

    /// Nothing, and why.
    pub fn none(title: &str, conflicts: &[String], left_out: &[String]) -> Self {
        Self {
            title: title.into(),
            says: Vec::new(),
            conflicts: sentences(conflicts),
            broken: Vec::new(),
            left_out: sentences(left_out),
            lines: Vec::new(),
            rows: Vec::new(),
            is_worth: true,
            analysis: None,
            source: Source::Nothing,
        }
    }

    /// The whole design with it.
    pub fn preview(&self) -> Option<&Design> {
        match &self.source {
            Source::Set(outcome) => Some(&outcome.preview),
            Source::Lengths(lengths) => Some(&lengths.preview),
            Source::Both(both) => Some(both.preview()),
            Source::Nothing => None,
        }
    }

    /// With what the frame bears, now and then, as [`FrameVerdict::lead`] tells it; a frame of which nothing is said has
    /// no line.
    ///
    /// [`FrameVerdict::lead`]: crate::design::bearing_words::FrameVerdict::lead
    #[must_use]
    pub fn with_frame(mut self, before: String, after: String) -> Self {
        if !before.is_empty() || !after.is_empty() {
            let or_none = |text: String| if text.is_empty() { NONE.to_owned() } else { text };
            let what = say::FRAME.into();
            self.lines.push(Line { what, before: or_none(before), after: or_none(after) });
        }
        self
    }

    /// With another title.
    #[must_use]
    pub fn called(mut self, title: String) -> Self {
        self.title = title;
        self
    }

    /// The edit that takes it but for some strings; `None` where there is nothing to take.
    pub fn edit(&self, without: &[usize], strings: usize) -> Option<Edit> {
        let chosen: Vec<bool> = (0..strings).map(|row| !without.contains(&row)).collect();
        // Codes of strings that stay the same come along when all is taken.
        let rows = (!without.is_empty()).then_some(chosen.as_slice());
        match &self.source {
            Source::Set(outcome) => Some(outcome.edit(rows)),
            Source::Lengths(lengths) => Some(lengths.edit(rows)),
            Source::Both(both) => Some(both.edit(rows)),
            Source::Nothing => None,
        }
    }
}

/// An alternative among others, as a chart shows it.
#[derive(Clone, Debug, PartialEq)]
pub struct Choosable {
    /// Its place from the left and from above, from 0 to 1.
    pub at: (f64, f64),
    /// In words.
    pub text: String,
}

/// The marks of the two scales: places from the left and from above, from 0 to 1, with their numbers.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Marks {
    pub across: Vec<(f64, String)>,
    pub up: Vec<(f64, String)>,
}

/// The most marks of a scale.
const MARKS: (usize, usize) = (7, 4);

/// Alternatives with their places in a chart: what is traded to the right, how far off upward.
pub fn choosables(found: &[Alternative], by_price: bool) -> (Vec<Choosable>, Marks) {
    let traded = |one: &Alternative| {
        if by_price { one.price } else { f64::from(u32::try_from(one.different).unwrap_or(0)) }
    };
    let values = |of: &dyn Fn(&Alternative) -> f64| found.iter().map(of).collect::<Vec<f64>>();
    let across = Axis::around(&values(&traded), &[], Scale::Free);
    let up = Axis::around(&values(&|one| one.off_percent), &[], Scale::Free);
    let choosable = |one: &Alternative| Choosable {
        at: (across.fraction(traded(one)), 1.0 - up.fraction(one.off_percent)),
        text: one.text.clone(),
    };
    // There is no half of a string.
    let whole = |tick: &(f64, String)| by_price || tick.0.fract() == 0.0;
    let at = |(tick, text): (f64, String)| (across.fraction(tick), text);
    let marks = Marks {
        across: across.ticks(MARKS.0).into_iter().filter(whole).map(at).collect(),
        up: up.ticks(MARKS.1).into_iter().map(|(t, text)| (1.0 - up.fraction(t), text)).collect(),
    };
    (found.iter().map(choosable).collect(), marks)
}

/// Which strings may change: all, or those from one to another, but none that is kept.
pub fn allowed(design: &Design, part: Option<(usize, usize)>) -> Vec<bool> {
    let within = |row: usize| part.is_none_or(|(first, last)| (first..=last).contains(&row));
    let strings = design.strings.iter().enumerate();
    strings.map(|(row, string)| within(row) && !string.locked).collect()
}

/// Strings from one to another by their names: `string 3, C6`, `strings 3, C6 to 9, D5`.
pub fn span(analysis: &Analysis, (first, last): (usize, usize)) -> String {
    let short =
        |row: usize| analysis.strings.get(row).map(display::string_number).unwrap_or_default();
    if first >= last {
        say::span_one(&short(first))
    } else {
        say::span(&short(first), &short(last))
    }
}

/// The runs of strings that stay as they are, as first and last.
pub fn kept(design: &Design) -> Vec<(usize, usize)> {
    let mut runs: Vec<(usize, usize)> = Vec::new();
    for (row, string) in design.strings.iter().enumerate() {
        match runs.last_mut() {
            _ if !string.locked => {}
            Some(run) if run.1 + 1 == row => run.1 = row,
            _ => runs.push((row, row)),
        }
    }
    runs
}

/// What a curve is of, and its unit.
pub fn wanted_words(wants: WantsSpec) -> (&'static str, &'static str) {
    match wants {
        WantsSpec::Stiffness => (say::STIFFNESS.said(), "N/mm"),
        WantsSpec::Tension => (say::TENSION.said(), "N"),
    }
}

/// A place on the compass as a note that can be typed: that of a string, or else with a sharp.
pub fn place_name(strings: &[HarpString], place: f64) -> String {
    const NAMES: [&str; 12] = ["C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"];
    let key = place.round();
    let notes = strings.iter().filter_map(|string| string.note);
    let same = |note: &Note| f64::from(note.key_number()) == key;
    if let Some(note) = notes.clone().find(same) {
        return note.to_string();
    }
    let octave = (key / 12.0).floor();
    let name = NAMES.iter().zip(0..).find(|(_, above)| f64::from(*above) == key - 12.0 * octave);
    format!("{}{}", name.map_or("C", |(name, _)| *name), octave - 1.0)
}

fn sentences(texts: &[String]) -> Vec<String> {
    texts.iter().map(|text| format!("{}.", capital(text))).collect()
}

fn rows(changes: &[Change], units: Units) -> Vec<ProposedRow> {
    // Both gauges in the unit of the page, whatever they were typed in.
    let shown = |make_up: &str| match make_up_text::read(make_up) {
        Ok(read) => display::make_up(&read, units.gauge),
        Err(_) => make_up.to_owned(),
    };
    let of = |make_up: &str, length: &str| match (make_up.is_empty(), length.is_empty()) {
        (true, true) => NONE.to_owned(),
        (false, true) => make_up.to_owned(),
        (true, false) => length.to_owned(),
        (false, false) => format!("{make_up}, {length}"),
    };
    let row = |change: &Change| {
        let Change { row, name, from, to, tension, stiffness, share_percent, length } = change;
        ProposedRow {
            row: *row,
            name: name.clone(),
            from: of(&shown(from), &length.0),
            to: of(&shown(to), &length.1),
            tension: change_of(*tension, |force| display::tension(force, units.force)),
            stiffness: change_of(*stiffness, |one| display::stiffness(one, units.force)),
            share: change_of(*share_percent, display::percent),
        }
    };
    changes.iter().map(row).collect()
}

/// `41 → 39`; the one where both are alike.
fn change_of<T: Copy>(
    (before, after): (Option<T>, Option<T>),
    words: impl Fn(T) -> String,
) -> String {
    let words = |one: Option<T>| one.map_or_else(|| NONE.to_owned(), &words);
    let (before, after) = (words(before), words(after));
    if before == after { after } else { format!("{before} → {after}") }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::choose::{Shop, Task};
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::design::stock::starting_list;
    use crate::engine::analysis::analyse;
    use crate::words::{Language, in_language};

    #[test]
    fn a_set_can_be_taken_in_part() {
        let design = SAMPLES[1].design();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let stock = starting_list();
        let shop = Shop { items: &stock.items, materials: &stock.materials, own: false };
        let count = design.strings.len();
        let task = Task::new(&design, &resolved, &shop, &allowed(&design, None));
        let answer = task.search().finish();
        let outcome = task.outcome(&design, &resolved, &analysis, &answer).unwrap();
        let preview = outcome.preview.clone();
        let proposal = Proposal::of_set(outcome, &task.left_out, design.units);
        assert_eq!(proposal.title, "The best set");
        assert!(proposal.says[0].starts_with("This set is proved"), "{:?}", proposal.says);
        assert_eq!(proposal.edit(&[], count).unwrap().apply(&design), preview);
        let first = proposal.rows[0].row;
        let part = proposal.edit(&[first], count).unwrap().apply(&design);
        assert_eq!(part.strings[first], design.strings[first]);
        let second = proposal.rows[1].row;
        assert_eq!(part.strings[second], preview.strings[second]);
        let found = task.alternatives(&task.by_items().finish());
        let (shown, marks) = choosables(&found, false);
        assert!(shown[0].at.0 < 0.2 && shown.last().unwrap().at.0 > 0.8, "{shown:?}");
        assert!(marks.across.len() > 1 && marks.up.len() > 1, "{marks:?}");
        assert!(shown.iter().all(|one| (0.0..=1.0).contains(&one.at.1)), "{shown:?}");
    }

    #[test]
    fn strings_that_stay_are_told_in_runs() {
        let lock = |rows| Edit::Lock { rows, locked: true };
        let design = lock(7..8).apply(&lock(2..5).apply(&SAMPLES[1].design()));
        assert_eq!(kept(&design), [(2, 4), (7, 7)]);
        let analysis = analyse(&resolve(&design).harp);
        assert!(span(&analysis, (2, 4)).starts_with("strings 3, "));
        assert!(span(&analysis, (7, 7)).starts_with("string 8, "));
        let german = in_language(Language::German, || span(&analysis, (7, 7)));
        assert!(german.starts_with("Saite 8, "), "{german}");
        assert_eq!(allowed(&design, Some((1, 3)))[..5], [false, true, false, false, false]);
        assert!(allowed(&design, None)[25]);
    }

    #[test]
    fn a_place_is_named_as_it_can_be_typed() {
        for (place, name) in [(60.0, "C4"), (69.2, "A4"), (61.0, "C#4"), (24.0, "C1")] {
            assert_eq!(place_name(&[], place), name);
            let note: Note = name.parse().unwrap();
            assert_eq!(f64::from(note.key_number()), place.round());
        }
    }

    #[test]
    fn what_stays_is_written_once() {
        assert_eq!(change_of((Some(1.0), Some(1.0)), display::percent), display::percent(1.0));
        assert_eq!(change_of((None, Some(20.0)), display::percent), "– → 20");
    }
}
