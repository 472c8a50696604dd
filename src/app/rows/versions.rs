//! The versions of a design in words: their list, what is compared with what, and whether anything differs.

use crate::design::compare::{Comparison, StringDiff};
use crate::design::display::{string_name, total_with_unit};
use crate::design::document::{Units, VersionSpec};
use crate::engine::analysis::Analysis;

const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
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
        let lacks = match analysis.without_tension {
            0 => String::new(),
            count => format!(", without {count}"),
        };
        VersionWords {
            name: version.name.clone(),
            date: version.date.clone(),
            strings: version.design.strings.len().to_string(),
            pull: format!("{}{lacks}", total_with_unit(analysis.total_tension, units.force)),
        }
    };
    versions.iter().zip(analyses).map(line).collect()
}

/// A side of a comparison, by its place in the list or `None` for the design as it is now: `spring, 4 March`.
pub fn side_words(versions: &[VersionSpec], side: Option<usize>) -> String {
    let Some(index) = side else { return "now".to_owned() };
    let Some(version) = versions.get(index) else { return String::new() };
    let name = if version.name.is_empty() {
        format!("version {}", index + 1)
    } else {
        version.name.clone()
    };
    if version.date.is_empty() { name } else { format!("{name}, {}", version.date) }
}

/// What the grey curves are: `Grey: spring, 4 March`.
pub fn ghost_words(what: &str) -> String {
    format!("Grey: {what}")
}

/// A day of the calendar; the month is from 1 to 12.
pub fn day_words(day: u32, month: usize, year: u32) -> String {
    let name = month.checked_sub(1).and_then(|place| MONTHS.get(place));
    name.map_or(String::new(), |name| format!("{day} {name} {year}"))
}

/// Why an earlier state was noted, by the word that is kept with it.
pub fn noted_words(why: &str) -> &'static str {
    match why {
        "session" => "End of a session",
        "print" => "Printed",
        "link" => "Link given away",
        "order" => "Order list saved",
        "template" => "Template saved",
        _ => "While you worked",
    }
}

/// How much differs, in a sentence.
pub fn differing(found: &Comparison) -> String {
    let count = |all: usize, one: &str, more: &str| match all {
        1 => format!("1 {one}"),
        _ => format!("{all} {more}"),
    };
    let strings = found.strings.iter().filter(|string| string.differs()).count();
    let settings = found.settings.len();
    let told = match (strings, settings) {
        (0, 0) => return "Nothing differs.".to_owned(),
        (strings, 0) => count(strings, "string differs", "strings differ"),
        (0, settings) => count(settings, "setting differs", "settings differ"),
        (strings, settings) => format!(
            "{} and {}",
            count(strings, "string", "strings"),
            count(settings, "setting differ", "settings differ")
        ),
    };
    format!("{told}.")
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
}
