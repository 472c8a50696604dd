//! The versions of a design in words: their list, what is compared with what, and whether anything differs.

use crate::design::compare::{Comparison, StringDiff};
use crate::design::display::{string_name, total_with_unit};
use crate::design::document::{Units, VersionSpec};
use crate::engine::analysis::Analysis;
use crate::words::{Words, versions as say};

const MONTHS: [Words; 12] = [
    say::JANUARY,
    say::FEBRUARY,
    say::MARCH,
    say::APRIL,
    say::MAY,
    say::JUNE,
    say::JULY,
    say::AUGUST,
    say::SEPTEMBER,
    say::OCTOBER,
    say::NOVEMBER,
    say::DECEMBER,
];

/// A version as the list tells it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct VersionWords {
    pub name: String,
    pub date: String,
    /// How many strings it has.
    pub strings: String,
    /// What they pull together.
    pub pull: String,
}

/// The versions with their figures, of which there is one for each.
pub fn versions(
    versions: &[VersionSpec],
    analyses: &[impl AsRef<Analysis>],
    units: &Units,
) -> Vec<VersionWords> {
    let line = |(version, analysis): (&VersionSpec, &_)| {
        let analysis: &Analysis = AsRef::as_ref(analysis);
        let total = total_with_unit(analysis.total_tension, units.force);
        VersionWords {
            name: version.name.clone(),
            date: version.date.clone(),
            strings: version.design.strings.len().to_string(),
            pull: match analysis.without_tension {
                0 => total,
                count => say::lacks(&count, &total),
            },
        }
    };
    versions.iter().zip(analyses).map(line).collect()
}

/// A side of a comparison, by its place in the list or `None` for the design as it is now: `spring, 4 March`.
pub fn side_words(versions: &[VersionSpec], side: Option<usize>) -> String {
    let Some(index) = side else { return say::NOW_SIDE.into() };
    let Some(version) = versions.get(index) else { return String::new() };
    let name =
        if version.name.is_empty() { say::unnamed(&(index + 1)) } else { version.name.clone() };
    if version.date.is_empty() { name } else { format!("{name}, {}", version.date) }
}

/// What the grey curves are: `Grey: spring, 4 March`.
pub fn ghost_words(what: &str) -> String {
    say::grey(&what)
}

/// A day of the calendar; the month is from 1 to 12.
pub fn day_words(day: u32, month: usize, year: u32) -> String {
    let name = month.checked_sub(1).and_then(|place| MONTHS.get(place));
    name.map_or(String::new(), |name| say::day(&day, name, &year))
}

/// Why an earlier state was noted, by the word that is kept with it.
pub fn noted_words(why: &str) -> &'static str {
    match why {
        "session" => say::SESSION.said(),
        "print" => say::PRINTED.said(),
        "link" => say::LINK.said(),
        "order" => say::ORDER.said(),
        "template" => say::TEMPLATE.said(),
        _ => say::WHILE_WORKING.said(),
    }
}

/// How much differs, in a sentence.
pub fn differing(found: &Comparison) -> String {
    let strings = found.strings.iter().filter(|string| string.differs()).count();
    let settings = found.settings.len();
    match (strings, settings) {
        (0, 0) => say::NOTHING_DIFFERS.into(),
        (strings, 0) => say::strings_differ(&strings),
        (0, settings) => say::settings_differ(&settings),
        (strings, settings) => say::both_differ(&settings, &strings),
    }
}

/// What a row of the comparison is called: the string as it is after, or as it was, if it went.
pub fn row_name(
    string: &StringDiff,
    before: Option<&Analysis>,
    after: Option<&Analysis>,
) -> String {
    let of = |analysis: Option<&Analysis>, index: Option<usize>| {
        analysis?.strings.get(index?).map(string_name)
    };
    of(after, string.after).or_else(|| of(before, string.before)).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::design::compare::compare;
    use crate::design::document::Design;
    use crate::design::edit::{Column, Edit, Field};
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::words::{Language, in_language};

    fn kept(name: &str, date: &str) -> Design {
        let edit = Edit::KeepVersion { name: name.to_owned(), date: date.to_owned() };
        edit.apply(&SAMPLES[0].design())
    }

    #[test]
    fn a_version_is_told_with_its_strings_and_its_pull() {
        let design = kept("spring", "4 March");
        let analysis = Arc::new(analyse(&resolve(&design).harp));
        let told = versions(&design.versions, std::slice::from_ref(&analysis), &design.units);
        assert_eq!(told[0].strings, design.strings.len().to_string());
        assert_eq!(
            told[0].pull,
            total_with_unit(analysis.total_tension, design.units.force),
            "the tension of the same strings"
        );
    }

    #[test]
    fn a_side_has_a_name_whatever_was_typed() {
        for (name, date, words) in [
            ("spring", "4 March", "spring, 4 March"),
            ("spring", "", "spring"),
            ("", "4 March", "version 1, 4 March"),
            ("", "", "version 1"),
        ] {
            let versions = kept(name, date).versions;
            assert_eq!(side_words(&versions, Some(0)), words);
        }
        assert_eq!(side_words(&[], None), "now");
        assert_eq!(side_words(&[], Some(3)), "");
        assert_eq!(ghost_words("spring, 4 March"), "Grey: spring, 4 March");
    }

    #[test]
    fn a_day_is_written_out() {
        assert_eq!(day_words(4, 3, 2026), "4 March 2026");
        assert_eq!((day_words(4, 0, 2026), day_words(4, 13, 2026)), (String::new(), String::new()));
    }

    #[test]
    fn what_differs_is_counted() {
        let design = kept("spring", "");
        let told = |edit: Option<Edit>| {
            let after = edit.map_or_else(|| design.clone(), |edit| edit.apply(&design));
            differing(&compare(&design, &after))
        };
        let title = Edit::Text { field: Field::Title, text: "Other".to_owned() };
        let gauge =
            |text: &str| Edit::Cell { row: 0, column: Column::Gauge, text: text.to_owned() };
        assert_eq!(told(None), "Nothing differs.");
        assert_eq!(told(Some(title.clone())), "1 setting differs.");
        assert_eq!(told(Some(gauge("0.5"))), "1 string differs.");
        let both = title.apply(&gauge("0.5").apply(&design));
        assert_eq!(differing(&compare(&design, &both)), "1 string and 1 setting differ.");
    }

    #[test]
    fn a_row_is_named_after_the_string_that_is_there() {
        let design = SAMPLES[0].design();
        let shorter = Edit::Delete { rows: 0..1 }.apply(&design);
        let found = compare(&design, &shorter);
        let [before, after] = [&design, &shorter].map(|d| analyse(&resolve(d).harp));
        let gone = found.strings.iter().find(|string| string.after.is_none()).unwrap();
        assert_eq!(row_name(gone, Some(&before), Some(&after)), string_name(&before.strings[0]));
        let stayed = found.strings.iter().find(|string| string.before == Some(1)).unwrap();
        assert_eq!(row_name(stayed, Some(&before), Some(&after)), string_name(&after.strings[0]));
    }

    #[test]
    fn what_differs_is_said_in_each_language() {
        let said = |language| in_language(language, || say::both_differ(&1, &2));
        assert_eq!(said(Language::English), "2 strings and 1 setting differ.");
        assert_eq!(said(Language::German), "2 Saiten und 1 Einstellung unterscheiden sich.");
        assert_eq!(said(Language::French), "2 cordes et 1 réglage diffèrent.");
        assert_eq!(in_language(Language::German, || day_words(4, 3, 2026)), "4. März 2026");
        assert_eq!(in_language(Language::French, || day_words(1, 3, 2026)), "1er mars 2026");
        assert_eq!(in_language(Language::French, || day_words(11, 8, 2026)), "11 août 2026");
    }
}
