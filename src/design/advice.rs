//! Findings as a maker would say them, and the edit that mends one where there is one.

mod cure;

pub use self::cure::{Cure, cure, with_code};
use super::display;
use super::document::{Design, GaugeUnit, LengthUnit, Units};
use crate::engine::analysis::{Analysis, StringFigures};
use crate::engine::figure::Figure;
use crate::engine::findings::{Finding, FindingKind, Misplaced};
use crate::engine::pitch::Note;
use crate::engine::units::{Length, Stiffness};
use crate::words::{findings as say, shown};

/// Gauges in thousandths of an inch in which nylon is usually sold. Common practice, no source.
const NYLON_THOU: [f64; 13] =
    [20.0, 22.0, 25.0, 28.0, 30.0, 32.0, 36.0, 40.0, 45.0, 50.0, 55.0, 60.0, 65.0];
/// Room for the last digits of a unit's conversion when a length or a gauge is rounded up or down.
const LAST_DIGITS: f64 = 1e-9;

/// The cautions that stand wherever loads, breaking or stringing are shown.
pub fn caution() -> &'static str {
    say::CAUTION.said()
}

/// The one string in which a design differs from the one before it, if it is one: that of the last change.
pub fn changed_row(before: &Design, now: &Design) -> Option<usize> {
    if before.strings.len() != now.strings.len() {
        return None;
    }
    let mut differ = (0..now.strings.len()).filter(|&row| before.strings[row] != now.strings[row]);
    let first = differ.next();
    first.filter(|_| differ.next().is_none())
}

/// Beyond these, a figure says no more than that something was typed wrong. Chosen for this project, no source.
const FAR_PERCENT: f64 = 1_000.0;
const FAR_TURNS: f64 = 40.0;
const FAR_CENTS: f64 = 1_200.0;

/// A finding in words: `String 9, F5: 92 % of its breaking load …`.
pub fn sentence(finding: &Finding, analysis: &Analysis, units: &Units) -> String {
    let figures = analysis.strings.get(finding.index);
    let name = figures.map_or_else(|| shown::string(&(finding.index + 1)), display::string_name);
    say::finding(&said(&finding.kind, figures, *units), &name)
}

fn said(kind: &FindingKind, figures: Option<&StringFigures>, units: Units) -> String {
    let plain = figures.is_some_and(is_plain);
    let percent = |share, limit| display::against(Figure::LoadShare, share, limit, &units);
    let (length_unit, gauge_unit) =
        (display::length_unit(units.length), display::gauge_unit(units.gauge));
    match *kind {
        FindingKind::Breaks { load_percent, .. } if load_percent > FAR_PERCENT => {
            say::BREAKS_FAR.into()
        }
        FindingKind::Breaks { load_percent, longest, thinner_helps } => say::breaks(
            &of_overload(plain, thinner_helps, longest, units.length),
            &percent(load_percent, 100.0).0,
        ),
        FindingKind::Overworked { load_percent, limit_percent, longest, thinner_helps } => {
            let (share, limit) = percent(load_percent, limit_percent);
            let advice = of_overload(plain, thinner_helps, longest, units.length);
            say::overworked(&advice, &limit, &share)
        }
        FindingKind::Slack { load_percent, limit_percent, shortest } => {
            let (share, limit) = percent(load_percent, limit_percent);
            let length = longer(shortest, units.length);
            let advice = if plain { say::slack_plain(&length) } else { say::slack_wound(&length) };
            say::slack(&advice, &limit, &share)
        }
        FindingKind::LittlePull { pull, least, thinnest } => {
            let (pull, least) =
                display::against(Figure::Tension, pull.to_n(), least.to_n(), &units);
            let advice = match thinnest {
                Some(thinnest) => say::little_thicker(&thicker(thinnest, units.gauge)),
                None => say::LITTLE_OTHER.into(),
            };
            say::little_tension(&advice, &least, &pull, &display::force_unit(units.force))
        }
        FindingKind::Inharmonic { partial_8_cents, .. } if partial_8_cents > FAR_CENTS => {
            say::INHARMONIC_FAR.into()
        }
        FindingKind::Inharmonic { partial_8_cents, limit_cents, .. } => {
            let (cents, limit) =
                display::against(Figure::Partial8, partial_8_cents, limit_cents, &units);
            say::inharmonic(&cents, &limit)
        }
        FindingKind::ThinCore { gauge_ratio, limit_ratio } => {
            let (ratio, limit) = display::apart(gauge_ratio, limit_ratio, 1);
            say::thin_core(&limit, &ratio)
        }
        FindingKind::GaugeOrder { gauge, neighbour } => {
            let is_thinner = gauge < neighbour;
            let (own, neighbour) =
                display::against(Figure::Gauge, gauge.to_mm(), neighbour.to_mm(), &units);
            let said = if is_thinner { say::gauge_thinner } else { say::gauge_thicker };
            said(&own, &neighbour, &gauge_unit)
        }
        FindingKind::CoreOrder { core, neighbour } => {
            let (own, neighbour) =
                display::against(Figure::Gauge, core.to_mm(), neighbour.to_mm(), &units);
            say::core_thinner(&own, &neighbour, &gauge_unit)
        }
        FindingKind::OutOfLine { length: own, neighbour, between } => {
            let (own_mm, neighbour_mm) = (own.to_mm(), neighbour.to_mm());
            let (own, neighbour) = display::against(Figure::Length, own_mm, neighbour_mm, &units);
            let advice = match between {
                Some(between) => say::midway(&midway(between, units.length)),
                None => say::CHECK_LENGTH.into(),
            };
            let said = if own_mm > neighbour_mm {
                say::longer_than_below
            } else {
                say::shorter_than_above
            };
            said(&advice, &own, &neighbour, &length_unit)
        }
        FindingKind::Feel { stiffness, band } => feel(stiffness, band, &units),
        FindingKind::LengthOff { length, line } => {
            let (own, line) =
                display::against(Figure::Length, length.to_mm(), line.to_mm(), &units);
            say::length_off(&own, &line, &length_unit)
        }
        FindingKind::Note { note, meant, beside, why: Misplaced::Row } => {
            let (note, meant) = (note.printed(), meant.printed());
            let names: Vec<String> = beside.into_iter().flatten().map(Note::printed).collect();
            match &names[..] {
                [first, second, ..] => say::note_between(first, &meant, &note, second),
                names => say::note_beside(&names.concat(), &meant, &note),
            }
        }
        FindingKind::Note { meant, why: Misplaced::Sign, .. } => {
            let said = match meant.alter() {
                0 => say::note_natural,
                1.. => say::note_sharp,
                _ => say::note_flat,
            };
            said(&meant.letter().printed())
        }
        FindingKind::PitchOrder { pitch, neighbour } => {
            let is_higher = pitch > neighbour;
            let (own, neighbour) =
                display::against(Figure::Frequency, pitch.to_hz(), neighbour.to_hz(), &units);
            let said = if is_higher { say::pitch_higher } else { say::pitch_lower };
            said(&neighbour, &own)
        }
        FindingKind::Jump { step_percent, from_above, .. } if step_percent > FAR_PERCENT => {
            (if from_above { say::JUMP_FAR_FROM_ABOVE } else { say::JUMP_FAR_BELOW }).into()
        }
        FindingKind::Jump { step_percent, limit_percent, from_above } => {
            let (step, limit) = display::apart(step_percent.abs(), limit_percent, 0);
            let way = if step_percent > 0.0 { "stiffer" } else { "softer" };
            let said = if from_above { say::jump_from_above } else { say::jump_below };
            said(&limit, &step, &way)
        }
        FindingKind::TightRaise { distance, least } => {
            let (is, least) =
                display::against(Figure::Lever, distance.to_mm(), least.to_mm(), &units);
            say::tight_raise(&is, &least, &length_unit)
        }
        FindingKind::Turns { turns, .. } if turns > FAR_TURNS => say::TURNS_FAR.into(),
        FindingKind::Turns { turns, limit } => {
            let (turns, limit) = display::against(Figure::PinTurns, turns, limit, &units);
            say::turns(&limit, &turns)
        }
    }
}

/// How stiff a string is under the finger, and what it is beside what is asked for.
fn feel(stiffness: Stiffness, band: (Stiffness, Stiffness), units: &Units) -> String {
    let [is, low, high] = [stiffness, band.0, band.1].map(Stiffness::to_n_per_mm);
    let against = |limit| display::against(Figure::PluckStiffness, is, limit, units);
    let asked = |limit| display::limit(Figure::PluckStiffness, limit, units);
    let unit = display::stiffness_unit(units.force);
    if is < low {
        let (feel, low) = against(low);
        say::softer(&feel, &asked(high), &low, &unit)
    } else {
        let (feel, high) = against(high);
        say::stiffer(&feel, &high, &asked(low), &unit)
    }
}

/// Several neighbours that are all too soft, or all too stiff, given the first of them.
pub fn feel_of_several(
    stiffness: Stiffness,
    band: (Stiffness, Stiffness),
    units: &Units,
) -> String {
    let unit = display::stiffness_unit(units.force);
    let asked =
        |limit: Stiffness| display::limit(Figure::PluckStiffness, limit.to_n_per_mm(), units);
    let said = if stiffness < band.0 { say::all_softer } else { say::all_stiffer };
    said(&asked(band.1), &asked(band.0), &unit)
}

/// What helps against too high a load share.
fn of_overload(plain: bool, thinner_helps: bool, longest: Length, unit: LengthUnit) -> String {
    let said = if plain && thinner_helps {
        say::overload_thinner
    } else if plain {
        say::overload_plain
    } else {
        say::overload_wound
    };
    said(&shorter(longest, unit))
}

/// A length midway, as it would be typed: to a millimetre, or a hundredth of an inch.
fn midway(length: Length, unit: LengthUnit) -> String {
    let (number, places) = match unit {
        LengthUnit::Mm => (length.to_mm(), 0),
        LengthUnit::Inch => (length.to_inch(), 2),
    };
    format!("{} {}", display::decimals(number, places), display::length_unit(unit))
}

/// Whether the whole of a string carries the pull.
fn is_plain(figures: &StringFigures) -> bool {
    matches!((figures.core, figures.gauge), (Ok(core), Ok(gauge)) if core == gauge)
}

/// The greatest length up to `longest` that a maker would mark out: half a millimetre, or a
/// hundredth of an inch.
fn shorter(longest: Length, unit: LengthUnit) -> String {
    let down = |number: f64, parts: f64| (number * parts * (1.0 + LAST_DIGITS)).floor() / parts;
    marked_out(longest, unit, down)
}

/// The least such length from `shortest` on.
fn longer(shortest: Length, unit: LengthUnit) -> String {
    let up = |number: f64, parts: f64| (number * parts * (1.0 - LAST_DIGITS)).ceil() / parts;
    marked_out(shortest, unit, up)
}

fn marked_out(length: Length, unit: LengthUnit, round: impl Fn(f64, f64) -> f64) -> String {
    let rounded = match unit {
        LengthUnit::Mm => Length::from_mm(round(length.to_mm(), 2.0)),
        LengthUnit::Inch => Length::from_inch(round(length.to_inch(), 100.0)),
    };
    display::length_with_unit(rounded, unit)
}

/// The least gauge from `thinnest` on: to a hundredth of a millimetre, or a thousandth of an inch.
fn thicker(thinnest: Length, unit: GaugeUnit) -> String {
    let up = |number: f64| (number * (1.0 - LAST_DIGITS)).ceil();
    let rounded = match unit {
        GaugeUnit::Mm => Length::from_mm(up(thinnest.to_mm() * 100.0) / 100.0),
        GaugeUnit::Thou => Length::from_thou(up(thinnest.to_thou())),
    };
    display::gauge_with_unit(rounded, unit)
}

/// The least usual gauge of nylon from `thinnest` on, as a cell keeps it; `None` past the last.
fn usual_nylon(thinnest: Length, unit: GaugeUnit) -> Option<String> {
    let written = NYLON_THOU.into_iter().map(|thou| match unit {
        GaugeUnit::Mm => {
            let mm = (Length::from_thou(thou).to_mm() * 100.0).round() / 100.0;
            Length::from_mm(mm)
        }
        GaugeUnit::Thou => Length::from_thou(thou),
    });
    let mut enough =
        written.filter(|gauge| gauge.to_mm() >= thinnest.to_mm() * (1.0 - LAST_DIGITS));
    enough.next().map(|gauge| display::kept(|| display::gauge_with_unit(gauge, unit)))
}

#[cfg(test)]
mod tests {
    use super::cure::is_alike;
    use super::*;
    use crate::design::document::{ForceUnit, LimitsSpec, StringSpec};
    use crate::design::make_up_text;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;

    fn design(strings: &[(&str, &str, &str)]) -> Design {
        let string = |(note, length, make_up): &(&str, &str, &str)| StringSpec {
            note: (*note).to_owned(),
            length: (*length).to_owned(),
            make_up: make_up_text::read(make_up).unwrap(),
            ..StringSpec::default()
        };
        Design { strings: strings.iter().map(string).collect(), ..Design::default() }
    }

    fn analysed(design: &Design) -> Analysis {
        analyse(&resolve(design).harp)
    }

    fn inches(mut design: Design) -> Design {
        design.units =
            Units { length: LengthUnit::Inch, gauge: GaugeUnit::Thou, force: ForceUnit::Lbf };
        design
    }

    /// The sentences of a design, the weightiest first, and the label of each cure.
    fn said_of(design: &Design) -> Vec<(String, Option<String>)> {
        let analysis = analysed(design);
        let say = |finding: &Finding| {
            let cure = cure(finding, design, &analysis).map(|cure| cure.label);
            (sentence(finding, &analysis, &design.units), cure)
        };
        analysis.findings.iter().map(say).collect()
    }

    #[test]
    fn an_overworked_string_says_how_short_it_must_be() {
        // 4 (0.36 m × 698.456 Hz)² × 1140 kg/m³ is 93 % of 310 MPa; at 0.3010 m it is 65 %.
        let harp = design(&[("F5", "360", "nylon 0.64")]);
        let (sentence, cure) = said_of(&harp).remove(0);
        assert_eq!(
            sentence,
            "String 1, F5: 93 % of its breaking load, above the 65 % you allow. A thinner gauge won't help: \
             how near a plain string is to breaking depends on its length and pitch. Shorten it to 300.5 mm \
             or less, or use a material that is stronger for its weight."
        );
        assert_eq!(cure.as_deref(), Some("Shorten to 300.5 mm"));
        let (sentence, cure) = said_of(&inches(harp)).remove(0);
        assert!(sentence.contains("Shorten it to 11.85 in or less"), "{sentence}");
        assert_eq!(cure.as_deref(), Some("Shorten to 11.85 in"));
    }

    #[test]
    fn gut_and_plastics_have_a_limit_of_their_own() {
        let shares = |design: &Design| -> Vec<bool> {
            let analysis = analysed(design);
            let over = |found: &Finding| matches!(found.kind, FindingKind::Overworked { .. });
            (0..design.strings.len())
                .map(|row| analysis.findings.iter().any(|f| f.index == row && over(f)))
                .collect()
        };
        // All three at 70 % of their strength.
        let harp = design(&[("F5", "312", "nylon 0.64"), ("F5", "293", "gut 0.64")]);
        let steel = design(&[("C4", "570", "steel 0.30 + bronze 0.10")]);
        let share = |design: &Design, row: usize| analysed(design).strings[row].load_share_percent;
        for (design, row) in [(&harp, 0), (&harp, 1), (&steel, 0)] {
            let percent = share(design, row).unwrap();
            assert!((65.0..75.0).contains(&percent), "{row}: {percent}");
        }
        assert_eq!((shares(&harp), shares(&steel)), (vec![true, true], vec![false]));
    }

    #[test]
    fn a_lever_in_its_pin_and_too_few_turns_are_told() {
        let mut harp = design(&[("G7", "66", "nylon 0.51"), ("C3", "760", "nylon 0.91")]);
        harp.mechanism.kind = crate::design::document::MechanismKind::Lever;
        harp.strings[1].make_up = make_up_text::read("nylon 0.91 + bronze 0.12").unwrap();
        let found = said_of(&harp);
        let has = |part: &str| found.iter().any(|(sentence, _)| sentence.contains(part));
        assert!(has("String 1, G7: its lever or natural disc would sit 2.93 "), "{found:#?}");
        assert!(has("mm from the bridge pin, nearer than the 3.30 mm you allow."), "{found:#?}");
        let turns = "turns of its pin to come up to pitch, more than the 3.00 that the cut lengths";
        assert!(has(turns), "{found:#?}");
        for _ in 0..2 {
            let analysis = analysed(&harp);
            let of_these = |found: &&Finding| {
                matches!(found.kind, FindingKind::Turns { .. } | FindingKind::TightRaise { .. })
            };
            let found = analysis.findings.iter().find(of_these).unwrap();
            harp = cure(found, &harp, &analysis).unwrap().edit.apply(&harp);
        }
        let found = said_of(&harp);
        let has = |part: &str| found.iter().any(|(sentence, _)| sentence.contains(part));
        assert!(!has("bridge pin") && !has("turns of its pin"), "{found:#?}");
    }

    #[test]
    fn a_breaking_string_says_so_first() {
        let harp =
            design(&[("E5", "100", "nylon 0.64"), ("C5", "560", "steel 0.30 + bronze 0.15")]);
        let (sentence, cure) = said_of(&harp).remove(0);
        assert!(sentence.starts_with("String 2, C5: "), "{sentence}");
        assert!(sentence.contains("it breaks before it is in tune. Shorten it to "), "{sentence}");
        assert!(sentence.ends_with("use a lighter winding or a stronger core."), "{sentence}");
        assert!(cure.unwrap().starts_with("Shorten to "));
    }

    #[test]
    fn a_slack_string_says_how_long_it_must_be() {
        let harp = design(&[("Eb3", "500", "nylon 1.0")]);
        let (sentence, cure) = said_of(&harp).remove(0);
        assert!(
            sentence.starts_with("String 1, E♭3: 9 % of its breaking load, below your 12 %"),
            "{sentence}"
        );
        assert!(sentence.contains("but not the share. Lengthen it to "), "{sentence}");
        assert!(cure.unwrap().starts_with("Lengthen to "));
    }

    #[test]
    fn a_weak_pull_asks_for_a_gauge_that_is_sold() {
        let harp = design(&[("G6", "90", "nylon 0.40")]);
        let (sentence, cure) = said_of(&harp).remove(0);
        assert!(sentence.starts_with("String 1, G6: its tension of "), "{sentence}");
        assert!(sentence.contains(" N is below your 20 N: "), "{sentence}");
        let label = cure.unwrap();
        assert!(
            ["0.51", "0.56", "0.64", "0.71", "0.76"]
                .iter()
                .any(|mm| label == format!("Use {mm} mm")),
            "{label}"
        );
        let (_, cure) = said_of(&inches(harp)).remove(0);
        let label = cure.unwrap();
        assert!(NYLON_THOU.iter().any(|thou| label == format!("Use .0{thou} in")), "{label}");
        let (sentence, cure) = said_of(&design(&[("G6", "90", "weighed 0.1")])).remove(0);
        assert!(sentence.ends_with("Use a heavier make-up or lengthen it."), "{sentence}");
        assert_eq!(cure, None);
    }

    #[test]
    fn a_thinner_string_may_take_the_gauge_above_as_it_was_typed() {
        let harp = design(&[("C5", "400", "nylon .030\""), ("B4", "420", "nylon 0.71")]);
        let found = said_of(&harp);
        let thinner = found.iter().find(|(sentence, _)| sentence.contains("thinner than")).unwrap();
        assert_eq!(
            thinner.0,
            "String 2, B4: its gauge of 0.71 mm is thinner than that of the string above it (0.762 mm)."
        );
        assert_eq!(thinner.1.as_deref(), Some("Use .030\""));
    }

    #[test]
    fn neighbours_are_compared_in_words() {
        let limits = LimitsSpec { jump_percent: 1.0, ..LimitsSpec::default() };
        let strings =
            [("C5", "400", "nylon 0.76"), ("443 Hz", "380", "gut 0.9"), ("D5", "390", "gut 0.9")];
        let found = said_of(&Design { limits, ..design(&strings) });
        let has = |part: &str| found.iter().any(|(sentence, _)| sentence.contains(part));
        assert!(
            has(
                "String 1, C5: 400 mm is longer than the string below it (380 mm). Check the length."
            ),
            "{found:#?}"
        );
        assert!(
            has("String 3, D5: 587.33 Hz is higher than the string above it (443.00 Hz)"),
            "{found:#?}"
        );
        assert!(has("String 1, C5: under the finger the string below it is "), "{found:#?}");
        assert!(
            has("stiffer than this one, where the make-up changes (you allow 1 %)."),
            "{found:#?}"
        );
    }

    #[test]
    fn a_length_out_of_line_is_found_where_it_is() {
        for (wrong, word) in [("292", "longer than the string below it"), ("120", "shorter than")] {
            let strings = [
                ("C6", "155", "nylon 0.64"),
                ("B5", "175", "nylon 0.64"),
                ("A5", wrong, "nylon 0.64"),
                ("G5", "210", "nylon 0.64"),
                ("F5", "230", "nylon 0.64"),
            ];
            let found = said_of(&design(&strings));
            let lengths: Vec<_> =
                found.iter().filter(|(sentence, _)| sentence.contains(word)).collect();
            assert_eq!(lengths.len(), 1, "{found:#?}");
            assert!(lengths[0].0.starts_with("String 3, A5: "), "{found:#?}");
            assert_eq!(lengths[0].1.as_deref(), Some("Set it to 192 mm"));
        }
    }

    /// What lies a little beyond a limit reads so, and what was worked out for the limit is not found.
    #[test]
    fn a_string_just_beyond_a_limit_reads_as_beyond_it() {
        let harp = design(&[("E4", "500", "nylon 0.81")]);
        let feel = analysed(&harp).strings[0].pluck_stiffness.unwrap().to_n_per_mm();
        let share = analysed(&harp).strings[0].load_share_percent.unwrap();
        let with = |least_stiffness_n_per_mm: f64, slack_share_percent: f64| {
            let limits = LimitsSpec {
                least_stiffness_n_per_mm,
                slack_share_percent,
                ..LimitsSpec::default()
            };
            said_of(&Design { limits, ..harp.clone() })
        };
        assert_eq!(with(feel, share), []);
        assert_eq!(with(feel * (1.0 + 1e-12), share * (1.0 + 1e-12)), []);
        for times in [1.0 + 1e-7, 1.0004, 1.003] {
            let found = with(feel * times, share * times);
            assert_eq!(found.len(), 2, "{found:?}");
            let number = |text: &str| text.parse::<f64>().unwrap();
            let between = |text: &str, before: &str, after: &str| {
                let from = text.find(before).unwrap() + before.len();
                number(&text[from..from + text[from..].find(after).unwrap()])
            };
            let (slack, soft) = (&found[0].0, &found[1].0);
            let is = between(slack, "E4: ", " % of its");
            assert!(is < between(slack, "below your ", " %"), "{slack}");
            let is = between(soft, "E4: ", " N/mm under");
            assert!(is < between(soft, "softer than the ", " to "), "{soft}");
        }
    }

    #[test]
    fn lengths_that_differ_by_their_last_digits_are_in_line() {
        let strings = [("C5", "400", "nylon 0.76"), ("B4", "399.9999999999", "nylon 0.81")];
        let found = said_of(&design(&strings));
        assert!(found.iter().all(|(sentence, _)| !sentence.contains("shorter")), "{found:?}");
    }

    #[test]
    fn tone_is_put_in_words() {
        let found = said_of(&design(&[
            ("C3", "300", "steel 1.2"),
            ("B2", "900", "steel 0.20 + bronze 0.5"),
        ]));
        let has = |part: &str| found.iter().any(|(sentence, _)| sentence.contains(part));
        assert!(
            has("String 1, C3: its partial 8 is ") && has("it will sound false."),
            "{found:#?}"
        );
        assert!(has("String 2, B2: it is 6.0 times as thick as its core, above 4.0"), "{found:#?}");
    }

    /// Harps of three strings, sound and unsound, in both units.
    fn many_harps() -> Vec<Design> {
        let mut harps = Vec::new();
        let wound = "steel 0.4 + bronze 0.2, bare 10 pin";
        for make_up in ["nylon 0.46", "nylon 1.2", "gut 0.7", "steel 0.3", wound] {
            for note in ["G6", "C5", "A4", "D3", "C2"] {
                for length in ["72", "140.3", "310", "575", "1 in", "1290"] {
                    let (top, bottom) = (("A6", "70", "nylon 0.5"), ("C1", "1500", make_up));
                    let harp = design(&[top, (note, length, make_up), bottom]);
                    harps.extend([harp.clone(), inches(harp)]);
                }
            }
        }
        harps
    }

    #[test]
    fn every_cure_mends_what_it_is_for() {
        let mut cures = 0;
        for harp in many_harps() {
            let analysis = analysed(&harp);
            for finding in &analysis.findings {
                let Some(cure) = cure(finding, &harp, &analysis) else { continue };
                cures += 1;
                let after = analysed(&cure.edit.apply(&harp));
                let index = finding.index;
                let still = |f: &&Finding| f.index == index && is_alike(&f.kind, &finding.kind);
                assert_eq!(after.findings.iter().find(still), None, "{finding:?}: {cure:?}");
                assert!(after.strings[index].tension.is_ok(), "{cure:?}");
                assert!(after.findings.len() < analysis.findings.len(), "{finding:?}: {cure:?}");
            }
        }
        assert!(cures > 200, "{cures}");
    }

    #[test]
    fn a_finding_of_no_string_has_no_cure() {
        let harp = design(&[("F5", "360", "nylon 0.64")]);
        let analysis = analysed(&harp);
        let finding = Finding { index: 7, ..analysis.findings[0].clone() };
        assert_eq!(cure(&finding, &harp, &analysis), None);
        assert!(sentence(&finding, &analysis, &harp.units).starts_with("String 8: "));
    }

    #[test]
    fn the_row_of_the_last_change_is_one_row_or_none() {
        let before = design(&[("C5", "400", "nylon 0.76"), ("B4", "420", "nylon 0.76")]);
        let mut now = before.clone();
        assert_eq!(changed_row(&before, &now), None);
        now.strings[1].length = "430".to_owned();
        assert_eq!(changed_row(&before, &now), Some(1));
        now.strings[0].length = "410".to_owned();
        assert_eq!(changed_row(&before, &now), None);
        now.strings.pop();
        assert_eq!(changed_row(&before, &now), None);
    }

    #[test]
    fn lengths_are_rounded_to_the_safe_side() {
        for (mm, down, up) in [
            (214.37, "214 mm", "214.5 mm"),
            (214.5, "214.5 mm", "214.5 mm"),
            (300.0, "300 mm", "300 mm"),
        ] {
            assert_eq!(shorter(Length::from_mm(mm), LengthUnit::Mm), down);
            assert_eq!(longer(Length::from_mm(mm), LengthUnit::Mm), up);
        }
        assert_eq!(shorter(Length::from_inch(9.429), LengthUnit::Inch), "9.42 in");
        assert_eq!(longer(Length::from_inch(9.421), LengthUnit::Inch), "9.43 in");
        assert_eq!(thicker(Length::from_mm(0.701), GaugeUnit::Mm), "0.71 mm");
        assert_eq!(thicker(Length::from_thou(28.0), GaugeUnit::Thou), ".028 in");
        assert_eq!(usual_nylon(Length::from_mm(0.711), GaugeUnit::Mm).as_deref(), Some("0.76 mm"));
        assert_eq!(
            usual_nylon(Length::from_mm(0.711), GaugeUnit::Thou).as_deref(),
            Some(".028 in")
        );
        assert_eq!(usual_nylon(Length::from_mm(1.7), GaugeUnit::Mm), None);
    }

    #[test]
    fn the_cautions_name_eyes_face_and_tension() {
        for word in ["eye protection", "face", "tension down slowly", "estimates"] {
            assert!(caution().contains(word), "{word}");
        }
    }
}
