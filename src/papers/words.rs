//! The words on the stringing card that are about the whole harp.

use crate::design::advice::sentence;
use crate::design::document::{Design, PitchSpec, TemperamentSpec};
use crate::design::settings::Setting;
use crate::engine::analysis::Analysis;
use crate::engine::pitch::Note;

use super::measure::clean;

/// Stands for what is not known.
pub const DASH: &str = "—";
/// Explains [`DASH`] where it stands.
pub const DASH_NOTE: &str = "A dash means: not known.";
pub const STEPS_TITLE: &str = "Replacing a string";
pub const CAUTIONS_TITLE: &str = "Take care.";
pub const CAPTION: &str = "This design, to open in a browser";

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
        SLACK if is_known => {
            let turns = (turns * 100.0).round() / 100.0;
            let s = if turns == 1.0 { "" } else { "s" };
            format!("Leave slack for about {turns} turn{s} on the pin; wire needs two at least.")
        }
        step => step.to_owned(),
    })
}

/// The step of which a design says more.
const SLACK: &str = "Leave slack for some turns on the pin; wire needs two at least.";
const STEPS: [&str; 8] = [
    "Find the string in the table: the right note in the right octave. One octave out is the \
     commonest mistake.",
    "Put on eye protection. Let the old string down slowly, keep hold of its coil, and draw out \
     what is left.",
    "Knot the new string behind the soundboard. From middle C up, put a short piece of thick \
     string through the knot as an anchor; wires bring their own.",
    "Lead it through its hole, past its bridge pin and into the tuning pin.",
    SLACK,
    "Let the turns lie side by side toward the neck, none over another.",
    "Bring it to pitch slowly, a little at a time.",
    "Retune daily until it holds: wire takes one to three days, gut some days, nylon up to two \
     weeks. Then cut the tail to about 12 mm.",
];

/// What to beware of.
pub const CAUTIONS: &str = "Strings under load can hurt. Wear eye protection, let tension down slowly, and keep your face \
     out of the plane of the strings. Another gauge or material changes the load on the harp. Loads \
     worked out for this design are estimates, no approval of a structure: local rules and qualified \
     practice come first. If the soundboard, neck or pillar shows cracks or moves, ask a qualified \
     maker before raising the pitch.";

/// That findings are still open, on the card itself; empty where there are none.
pub fn count_of_findings(analysis: &Analysis) -> String {
    let Some(first) = analysis.findings.first() else { return String::new() };
    let gravest = match analysis.findings.len() {
        1 => "on",
        _ => "the gravest on",
    };
    let (count, number) = (analysis.findings.len(), first.index + 1);
    format!("This card has open findings: {count}, {gravest} string {number}.")
}

/// The same with the gravest in full; `None` where nothing is open.
pub fn open_findings(design: &Design, analysis: &Analysis) -> Option<String> {
    let first = analysis.findings.first()?;
    let count = analysis.findings.len();
    let gravest = if count == 1 { "" } else { " The gravest:" };
    let said = sentence(first, analysis, &design.units);
    Some(format!("This card has open findings: {count}.{gravest} {said}"))
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
    if title.is_empty() { "Untitled harp".to_owned() } else { title }
}

/// Labels and what they say, in the order of the card; a dash where nothing was given.
pub fn facts(design: &Design, analysis: &Analysis, mark: String) -> [(&'static str, String); 8] {
    let given = |text: &str| {
        let text = clean(text);
        if text.is_empty() { DASH.to_owned() } else { text }
    };
    [
        ("maker", given(&design.maker)),
        ("serial number", given(&design.serial)),
        ("made for", given(&design.client)),
        ("date", given(&design.date)),
        ("open tuning", given(&design.open_tuning)),
        ("strings", compass(analysis)),
        ("pitch", pitch(&design.pitch)),
        ("design mark", mark),
    ]
}

/// Count and compass: `47, from C1 to G7`.
fn compass(analysis: &Analysis) -> String {
    let count = analysis.strings.len();
    let notes = || analysis.strings.iter().filter_map(|figures| figures.note);
    let lowest = notes().min_by_key(|note| note.key_number()).map(Note::printed);
    let highest = notes().max_by_key(|note| note.key_number()).map(Note::printed);
    match (lowest, highest) {
        (Some(lowest), Some(highest)) if count > 1 => format!("{count}, {lowest} to {highest}"),
        _ => count.to_string(),
    }
}

/// `A4 = 440 Hz, equal temperament`.
fn pitch(pitch: &PitchSpec) -> String {
    if !pitch.a4_hz.is_finite() {
        return DASH.to_owned();
    }
    let hz = (pitch.a4_hz * 100.0).round() / 100.0;
    format!("A4 = {hz} Hz, {}", temperament(pitch.temperament))
}

const fn temperament(temperament: TemperamentSpec) -> &'static str {
    match temperament {
        TemperamentSpec::Equal => "equal temperament",
        TemperamentSpec::Pythagorean => "pure fifths (Pythagorean)",
        TemperamentSpec::QuarterCommaMeantone => "quarter-comma meantone",
        TemperamentSpec::WerckmeisterThree => "Werckmeister III",
        TemperamentSpec::Vallotti => "Vallotti",
        TemperamentSpec::YoungTwo => "Young II",
        TemperamentSpec::JustOnC => "just intonation on C",
    }
}

/// Why there is no code to scan.
pub fn no_code(link: &str, mark: &str) -> String {
    if link.is_empty() {
        return format!("No link was made for this card. Keep the design file with mark {mark}.");
    }
    let count = link.chars().count();
    format!(
        "The link of this design, {count} characters, is too long for a printed code. Keep the \
         design file with mark {mark}."
    )
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
        assert_eq!(slack(f64::NAN), SLACK);
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
