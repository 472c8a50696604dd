//! The words on the stringing card that are about the whole harp.

use crate::design::advice::sentence;
use crate::design::document::{Design, PitchSpec, TemperamentSpec};
use crate::design::settings::Setting;
use crate::engine::analysis::Analysis;
use crate::engine::pitch::Note;

use super::measure::clean;
use crate::words::{Words, card as say, papers, signed};

/// Stands for what is not known.
pub const DASH: &str = "—";

/// How to replace a string, with as much slack as the cut lengths of the design count.
///
/// # Source
///
/// Articles and leaflets of harp technicians and makers: the octave as the commonest mistake, slack
/// and turns by material, the anchor in thin strings, turns toward the neck without overlap, the
/// tail of about 12 mm. How long strings take to settle is common practice, no source.
pub fn steps(design: &Design) -> [String; STEPS.len()] {
    let turns = Setting::Turns.number(design);
    let is_known = Setting::Turns.wrong(design).is_none() && turns > 0.0;
    STEPS.map(|step| match step {
        say::STEP_SLACK if is_known => say::step_turns(&hundredths(turns)),
        step => step.into(),
    })
}

/// The steps, of which [`say::STEP_SLACK`] says more where the turns are known.
const STEPS: [Words; 8] = [
    say::STEP_FIND,
    say::STEP_TAKE_OFF,
    say::STEP_KNOT,
    say::STEP_LEAD,
    say::STEP_SLACK,
    say::STEP_SIDE_BY_SIDE,
    say::STEP_PITCH,
    say::STEP_SETTLE,
];

/// A number in no more than hundredths, as typed where it has fewer.
pub(super) fn hundredths(number: f64) -> String {
    signed(&((number * 100.0).round() / 100.0).to_string())
}

/// That findings are still open, on the card itself; empty where there are none.
pub fn count_of_findings(analysis: &Analysis) -> String {
    let Some(first) = analysis.findings.first() else { return String::new() };
    say::findings(&analysis.findings.len(), &(first.index + 1))
}

/// The same with the most serious in full; `None` where nothing is open.
pub fn open_findings(design: &Design, analysis: &Analysis) -> Option<String> {
    let first = analysis.findings.first()?;
    let said = sentence(first, analysis, &design.units);
    Some(say::findings_gravest(&analysis.findings.len(), &said))
}

/// Several lines as one text, a full stop between them where none stands.
pub fn run_on(text: &str) -> String {
    let mut out = String::new();
    for line in text.lines().map(clean).filter(|line| !line.is_empty()) {
        if out.chars().last().is_some_and(char::is_alphanumeric) {
            out.push('.');
        }
        if !out.is_empty() {
            out.push(' ');
        }
        out.push_str(&line);
    }
    out
}

/// What the instrument is called.
pub fn title(design: &Design) -> String {
    let title = clean(&design.title);
    if title.is_empty() { papers::UNTITLED.into() } else { title }
}

/// Labels and what they say, in the order of the card; a dash where nothing was given.
pub fn facts(design: &Design, analysis: &Analysis, mark: String) -> [(&'static str, String); 8] {
    let given = |text: &str| {
        let text = clean(text);
        if text.is_empty() { DASH.to_owned() } else { text }
    };
    [
        (papers::MAKER.said(), given(&design.maker)),
        (papers::SERIAL.said(), given(&design.serial)),
        (papers::CLIENT.said(), given(&design.client)),
        (papers::DATE.said(), given(&design.date)),
        (papers::OPEN_TUNING.said(), given(&design.open_tuning)),
        (papers::STRINGS.said(), compass(analysis)),
        (papers::PITCH.said(), pitch(&design.pitch)),
        (papers::MARK.said(), mark),
    ]
}

/// Count and compass: `47, from C1 to G7`.
fn compass(analysis: &Analysis) -> String {
    let count = analysis.strings.len();
    let notes = || analysis.strings.iter().filter_map(|figures| figures.note);
    let lowest = notes().min_by_key(|note| note.key_number()).map(Note::printed);
    let highest = notes().max_by_key(|note| note.key_number()).map(Note::printed);
    match (lowest, highest) {
        (Some(lowest), Some(highest)) if count > 1 => papers::compass(&count, &highest, &lowest),
        _ => count.to_string(),
    }
}

/// `A4 = 440 Hz, equal temperament`.
fn pitch(pitch: &PitchSpec) -> String {
    if !pitch.a4_hz.is_finite() {
        return DASH.to_owned();
    }
    papers::pitch_is(&hundredths(pitch.a4_hz), &temperament(pitch.temperament))
}

const fn temperament(temperament: TemperamentSpec) -> Words {
    match temperament {
        TemperamentSpec::Equal => papers::EQUAL,
        TemperamentSpec::Pythagorean => papers::PYTHAGOREAN,
        TemperamentSpec::QuarterCommaMeantone => papers::MEANTONE,
        TemperamentSpec::WerckmeisterThree => papers::WERCKMEISTER,
        TemperamentSpec::Vallotti => papers::VALLOTTI,
        TemperamentSpec::YoungTwo => papers::YOUNG,
        TemperamentSpec::JustOnC => papers::JUST,
    }
}

/// Why there is no code to scan.
pub fn no_code(link: &str, mark: &str) -> String {
    if link.is_empty() {
        return say::no_link(&mark);
    }
    say::long_link(&link.chars().count(), &mark)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_slack_is_that_of_the_cut_lengths() {
        let slack = |turns: f64| {
            let mut design = Design::default();
            design.allowances.turns = turns;
            steps(&design)[4].clone()
        };
        assert!(slack(5.0).starts_with("Leave slack for about 5 turns on the pin"));
        assert!(slack(2.5).contains("about 2.5 turns"));
        assert!(slack(1.0).contains("about 1 turn on the pin"));
        assert_eq!(slack(f64::NAN), say::STEP_SLACK.said());
    }

    #[test]
    fn lines_run_on_with_a_stop_between_them() {
        assert_eq!(
            run_on("String 4, C6: torn\nString 9, F5: see\n"),
            "String 4, C6: torn. String 9, F5: see"
        );
        assert_eq!(run_on("One.\n\nTwo?\nThree"), "One. Two? Three");
        assert_eq!(run_on(" \n"), "");
    }
}
