//! The whole harp in words: summary, findings, the readout of the cross-hair, a make-up on trial.

use std::sync::Arc;

use super::chart::{number_of, sentence};
use crate::charts::series::{Curves, Panel};
use crate::design::bearing_words::FrameFinding;
use crate::design::document::{Design, ForceUnit, Units};
use crate::design::edit::Edit;
use crate::design::resolve::Resolved;
use crate::design::{advice, display};
use crate::engine::analysis::{Analysis, StringFigures, Unknown, analyse};
use crate::engine::findings::{Finding, FindingKind};
use crate::engine::pitch::{Letter, Note};
use crate::engine::tolerance::Spreads;
use crate::engine::units::Stiffness;
use crate::words::papers::titled;
use crate::words::{chart_page as say, numeral};

/// The harp in one line.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SummaryWords {
    pub strings: String,
    pub compass: String,
    pub newtons: String,
    pub other_units: String,
    /// Row of the tightest string, and the words for it.
    pub tightest: Option<(usize, String)>,
    /// How many strings the total lacks.
    pub missing: String,
}

/// Sums the harp up.
pub fn summary(design: &Design, analysis: &Analysis) -> SummaryWords {
    let total = analysis.total_tension;
    let named = |figures: &StringFigures| figures.note.map(|note| note.printed());
    let ends =
        analysis.strings.last().and_then(named).zip(analysis.strings.first().and_then(named));
    let tightest = analysis.tightest.and_then(|row| {
        let figures = analysis.strings.get(row)?;
        let share = figures.load_share_percent.ok()?;
        Some((row, format!("{}, {} %", display::string_name(figures), display::percent(share))))
    });
    let missing = match analysis.without_tension {
        0 => String::new(),
        count => say::without_tension(&count),
    };
    SummaryWords {
        strings: design.strings.len().to_string(),
        compass: ends.map_or_else(|| "–".to_owned(), |(low, high)| say::range(&low, &high)),
        newtons: display::total_with_unit(total, ForceUnit::Newton),
        other_units: format!(
            "{}, {}",
            display::total_with_unit(total, ForceUnit::Kgf),
            display::total_with_unit(total, ForceUnit::Lbf)
        ),
        tightest,
        missing,
    }
}

/// What the card's head says, in a line: maker, client, serial, date, tuning and pitch, as far as they are given.
pub fn facts(design: &Design) -> String {
    let client = match design.client.trim() {
        "" => String::new(),
        client => say::for_client(&client),
    };
    let a4 = Note::new(Letter::A, 0, 4).map_or_else(|_| String::new(), Note::printed);
    let pitch = format!("{a4} = {} Hz", numeral(design.pitch.a4_hz));
    let all = [&design.maker, &client, &design.serial, &design.date, &design.open_tuning, &pitch];
    let given: Vec<&str> =
        all.into_iter().map(|text| text.trim()).filter(|t| !t.is_empty()).collect();
    given.join(" · ")
}

/// A line of the list of findings.
#[derive(Clone, Debug)]
pub struct FindingWords {
    /// The string that it leads to.
    pub row: Option<usize>,
    /// Whether it is about the frame, and leads to the loads.
    pub frame: bool,
    /// 0 grave, 1 warning, 2 remark.
    pub weight: u8,
    /// A sign for the weight, beside its colour.
    pub sign: &'static str,
    pub sentence: String,
    /// What would mend it: the words of the button, and the edit.
    pub cure: Option<(String, Arc<Edit>)>,
}

/// What tells one line from another: all that it says, and what its edit does to a cell. Comparing whole edits would
/// bring the comparison of all that an edit can hold into the first screen.
type Told<'a> =
    (Option<usize>, bool, &'a str, &'a str, Option<&'a str>, Option<(usize, usize, &'a str)>);

impl FindingWords {
    /// Whether it is something that was found on a string, and not that its figures could not be worked out.
    pub fn is_on_string(&self) -> bool {
        !self.frame && SIGNS.contains(&self.sign)
    }

    fn told(&self) -> Told<'_> {
        let (label, edit) = self.cure.as_ref().map(|(label, edit)| (&**label, &**edit)).unzip();
        let cell = match edit {
            Some(Edit::Cell { row, column, text }) => Some((*row, *column as usize, &**text)),
            _ => None,
        };
        (self.row, self.frame, self.sign, &self.sentence, label, cell)
    }
}

impl PartialEq for FindingWords {
    fn eq(&self, other: &Self) -> bool {
        self.told() == other.told()
    }
}

impl Eq for FindingWords {}

impl std::hash::Hash for FindingWords {
    fn hash<H: std::hash::Hasher>(&self, state: &mut H) {
        self.told().hash(state);
    }
}

/// What cannot be read first, then slips of the hand, then the findings by weight; that of the frame is the first of its
/// weight.
pub fn findings(
    design: &Design,
    resolved: &Resolved,
    analysis: &Analysis,
    frame: Option<&FrameFinding>,
) -> Vec<FindingWords> {
    let unread = |row: Option<usize>, words: String| FindingWords {
        row,
        frame: false,
        weight: 0,
        sign: "?",
        sentence: words,
        cure: None,
    };
    let whole = resolved.errors.iter().map(|error| unread(None, sentence(error)));
    // Strings of which the same is said share a line.
    let mut told: Vec<(String, Vec<usize>)> = Vec::new();
    for (row, errors) in resolved.cells.iter().enumerate() {
        let all = [&errors.note, &errors.length, &errors.make_up, &errors.gauge];
        for error in all.into_iter().flatten().map(|error| sentence(error)) {
            match told.iter_mut().find(|(other, _)| *other == error) {
                Some((_, rows)) => rows.push(row),
                None => told.push((error, vec![row])),
            }
        }
    }
    let cells = told.into_iter().map(|(error, rows)| {
        unread(rows.first().copied(), say::all_say(&rows.len(), &error, &numbered(&rows)))
    });
    let whole = whole.chain(cells).chain(not_computed(resolved, analysis));
    let mut found = found(design, analysis);
    if let Some(FrameFinding { weight, sentence }) = frame {
        let sign = SIGNS[usize::from(*weight)];
        // A slip of the hand may be what loads the frame.
        let slips = analysis.findings.iter().take_while(|one| one.kind.leads()).count();
        let others = found.iter().skip(slips);
        let place = slips + others.take_while(|line| line.weight < *weight).count();
        let sentence = sentence.clone();
        let line =
            FindingWords { row: None, frame: true, weight: *weight, sign, sentence, cure: None };
        found.insert(place, line);
    }
    whole.chain(found).collect()
}

/// A sign for each weight.
const SIGNS: [&str; 3] = ["!", "!", "i"];

/// The findings on strings, those together that share a line: neighbours that all feel too soft, or all too stiff.
pub fn runs(analysis: &Analysis) -> impl Iterator<Item = &[Finding]> {
    let side = |finding: &Finding| match finding.kind {
        FindingKind::Feel { stiffness, band } => Some(stiffness < band.0),
        _ => None,
    };
    analysis.findings.chunk_by(move |one: &Finding, next: &Finding| {
        side(one).is_some() && side(one) == side(next) && next.index == one.index + 1
    })
}

/// The findings in words.
fn found(design: &Design, analysis: &Analysis) -> Vec<FindingWords> {
    let line = |run: &[Finding]| {
        let (first, last) = (&run[0], &run[run.len() - 1]);
        let weight = number_of(first.kind.weight());
        let sentence = match &first.kind {
            FindingKind::Feel { stiffness, band } if run.len() > 1 => say::strings_say(
                &(first.index + 1),
                &(last.index + 1),
                &advice::feel_of_several(*stiffness, *band, &design.units),
            ),
            _ => advice::sentence(first, analysis, &design.units),
        };
        FindingWords {
            row: Some(first.index),
            frame: false,
            weight,
            sign: SIGNS[usize::from(weight)],
            sentence,
            // One edit does not mend several strings.
            cure: (run.len() == 1)
                .then(|| advice::cure(first, design, analysis))
                .flatten()
                .map(|cure| (cure.label, Arc::new(cure.edit))),
        }
    };
    runs(analysis).map(line).collect()
}

/// The strings that have no tension, or no load share, for a reason that no cell tells: a line for
/// each reason.
fn not_computed(resolved: &Resolved, analysis: &Analysis) -> Vec<FindingWords> {
    let mut reasons: Vec<(Unknown, Vec<usize>)> = Vec::new();
    for (index, figures) in analysis.strings.iter().enumerate() {
        let told = resolved.cells.get(index).is_some_and(|errors| !errors.is_empty());
        let missing = figures.tension.err().or(figures.load_share_percent.err());
        if let (Some(why), false) = (missing, told) {
            match reasons.iter_mut().find(|(other, _)| *other == why) {
                Some((_, strings)) => strings.push(index),
                None => reasons.push((why, vec![index])),
            }
        }
    }
    let line = |(why, strings): (Unknown, Vec<usize>)| FindingWords {
        row: strings.first().copied(),
        frame: false,
        weight: 1,
        sign: "–",
        sentence: say::all_say(&strings.len(), &sentence(&why.to_string()), &numbered(&strings)),
        cure: None,
    };
    reasons.into_iter().map(line).collect()
}

/// `3`, or `3 to 5, 9`, from indices in their order.
pub(super) fn numbered(indices: &[usize]) -> String {
    let runs = indices.chunk_by(|one, next| *next == one + 1);
    let words = runs.map(|run| match run {
        [one] => (one + 1).to_string(),
        [one, two] => format!("{}, {}", one + 1, two + 1),
        _ => say::range(&(run[0] + 1), &(run[run.len() - 1] + 1)),
    });
    words.collect::<Vec<_>>().join(", ")
}

/// The figures of one string, for the figures whose curves are shown, each with how far off it may
/// be where the curves show that.
pub fn readout(analysis: &Analysis, units: &Units, curves: &Curves, index: usize) -> String {
    let Some(figures) = analysis.strings.get(index) else { return String::new() };
    let figure = |panel: &Panel| {
        let value = display::figure(panel.figure, figures, units).ok()?;
        let off = panel.off_words(index).map(|off| format!(" ± {off}")).unwrap_or_default();
        Some(match display::figure_unit(panel.figure, units) {
            "" => format!("{value}{off}"),
            unit => format!("{value}{off} {unit}"),
        })
    };
    let name = display::string_name(figures);
    let words: Vec<String> = curves.panels.iter().filter_map(figure).collect();
    let words = if words.is_empty() { "–".to_owned() } else { words.join(" · ") };
    titled(&name, &words)
}

/// What the ranges about the curves mean, and what they leave out.
pub fn tolerance_words(spreads: &[Spreads]) -> String {
    let left_out = spreads.iter().filter(|spreads| spreads.without_temperature).count();
    let all = say::TOLERANCES;
    match left_out {
        0 => all.into(),
        _ if left_out == spreads.len() => format!("{all} {}", say::TEMPERATURE_LEFT_OUT),
        _ => format!("{all} {}", say::temperature_left_out_for(&left_out)),
    }
}

fn stiffness_words(stiffness: Stiffness, units: &Units) -> String {
    let unit = display::stiffness_unit(units.force);
    format!("{} {unit}", display::stiffness(stiffness, units.force))
}

/// What a make-up on trial comes to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TriedWords {
    pub wrong: Option<String>,
    pub figures: Vec<(&'static str, String)>,
}

/// The figures of the first string of a design, or what is wrong with its make-up.
pub fn tried(design: &Design, resolved: &Resolved) -> TriedWords {
    let analysis = analyse(&resolved.harp);
    let Some(figures) = analysis.strings.first() else { return TriedWords::default() };
    let errors = resolved.cells.first();
    let wrong = errors.and_then(|errors| errors.make_up.as_ref().or(errors.gauge.as_ref()));
    let units = &design.units;
    let mut lines: Vec<(&'static str, Option<String>)> = vec![
        (say::OVERALL.said(), figures.gauge.ok().map(|d| display::gauge_with_unit(d, units.gauge))),
        (say::CORE.said(), figures.core.ok().map(|d| display::gauge_with_unit(d, units.gauge))),
        (
            say::MASS.said(),
            figures
                .linear_density
                .ok()
                .map(|mass| format!("{} g/m", display::linear_density(mass))),
        ),
        (
            say::BREAKING_LOAD.said(),
            figures.breaking_load.ok().map(|load| display::tension_with_unit(load, units.force)),
        ),
        (
            say::TENSION_AT_PITCH.said(),
            figures.tension.ok().map(|pull| display::tension_with_unit(pull, units.force)),
        ),
        (
            say::LOAD_SHARE.said(),
            figures.load_share_percent.ok().map(|share| format!("{} %", display::percent(share))),
        ),
        (say::STIFFNESS.said(), figures.pluck_stiffness.ok().map(|k| stiffness_words(k, units))),
    ];
    lines.retain(|line| line.1.is_some());
    TriedWords {
        wrong: wrong.map(|words| sentence(words)),
        figures: lines.into_iter().map(|(name, text)| (name, text.unwrap_or_default())).collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::figure::Figure;
    use crate::engine::tolerance::spreads_of_all;

    #[test]
    fn the_summary_gives_the_total_in_three_units() {
        let design = SAMPLES[1].design();
        let analysis = analyse(&resolve(&design).harp);
        let words = summary(&design, &analysis);
        assert_eq!(words.strings, design.strings.len().to_string());
        let total = analysis.total_tension;
        assert!(words.newtons.ends_with(" N"), "{}", words.newtons);
        let kgf = format!("{:.0} kgf", total.to_kgf());
        assert!(words.other_units.contains(&kgf), "{} in {}", kgf, words.other_units);
        assert!(words.tightest.is_some() && words.missing.is_empty());
    }

    #[test]
    fn the_readout_says_how_far_off_a_figure_may_be_when_the_curves_show_it() {
        let design = SAMPLES[1].design();
        let harp = resolve(&design).harp;
        let (analysis, spreads) = (analyse(&harp), spreads_of_all(&harp));
        let units = &design.units;
        let words = |spreads: Option<&[Spreads]>| {
            let shown = [Figure::Tension, Figure::SemitonesToBreak];
            let curves = Curves::build(&analysis, &harp, units, &shown, None, spreads);
            readout(&analysis, units, &curves, 3)
        };
        let (bare, off) = (words(None), words(Some(&spreads)));
        assert!(!bare.contains('±') && bare.ends_with(" semit."), "{bare}");
        assert_eq!(off.matches(" ± ").count(), 2, "{off}");
        assert_eq!(off.matches(" N ·").count(), 1, "{off}");
    }

    #[test]
    fn what_is_missing_is_told_in_one_line() {
        let mut design = SAMPLES[0].design();
        for index in [3, 4, 5, 9] {
            design.strings[index].length.clear();
        }
        let resolved = resolve(&design);
        let list = findings(&design, &resolved, &analyse(&resolved.harp), None);
        assert!(
            list[0].sentence.starts_with("Strings 4 to 6, 10: No vibrating length"),
            "{}",
            list[0].sentence
        );
        assert_eq!((list[0].row, list[0].weight), (Some(3), 1));
    }

    #[test]
    fn neighbours_out_of_the_band_share_a_line() {
        let mut design = SAMPLES[1].design();
        design.limits.least_stiffness_n_per_mm = 20.0;
        design.limits.most_stiffness_n_per_mm = 30.0;
        let resolved = resolve(&design);
        let list = findings(&design, &resolved, &analyse(&resolved.harp), None);
        assert_eq!(list.len(), 1, "{list:?}");
        assert!(
            list[0].sentence.starts_with("Strings 1 to 26: softer under the finger"),
            "{}",
            list[0].sentence
        );
    }

    #[test]
    fn the_frame_has_a_line_like_a_string() {
        let design = SAMPLES[1].design();
        let resolved = resolve(&design);
        let finding = FrameFinding { weight: 1, sentence: "Frame: over.".to_owned() };
        let list = findings(&design, &resolved, &analyse(&resolved.harp), Some(&finding));
        assert!(list[0].frame && list[0].row.is_none(), "{list:?}");
        assert_eq!((list[0].sign, &*list[0].sentence), ("!", "Frame: over."));
        assert!(list.windows(2).all(|pair| pair[0].weight <= pair[1].weight));
    }

    #[test]
    fn what_cannot_be_read_stands_before_the_findings() {
        let mut design = SAMPLES[0].design();
        design.strings[3].length = "a foot or so".to_owned();
        design.strings[5].length = "900".to_owned();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let list = findings(&design, &resolved, &analysis, None);
        assert_eq!((list[0].row, list[0].sign), (Some(3), "?"));
        assert!(list[0].sentence.contains("a foot or so"));
        // The length that is out of line, and then that its string breaks.
        assert!(
            list[1].row == Some(5) && list[1].sentence.contains("longer than the string below")
        );
        assert!(list[2..].iter().any(|line| line.row == Some(5) && line.weight == 0));
        assert!(list[2..].windows(2).all(|pair| pair[0].weight <= pair[1].weight));
        assert_eq!(
            summary(&design, &analysis).missing,
            "The total leaves out 1 string without a tension."
        );
    }
}
