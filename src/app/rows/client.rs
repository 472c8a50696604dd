//! What a client reads of a harp: what it is, in plain sentences.

use crate::design::display;
use crate::design::document::{Design, ForceUnit};
use crate::design::resolve::Resolved;
use crate::design::targets::{place, usual_feel};
use crate::engine::analysis::{Analysis, HarpString, Mechanism};
use crate::engine::construction::MakeUp;
use crate::engine::material::Class;
use crate::engine::units::Stiffness;
use crate::papers::measure::clean;
use crate::papers::words::{facts, title};
use crate::words::client as say;

/// Within so many per cent of the usual feel nothing is said of firmer or softer. Chosen for this project, no source.
const ALIKE_PERCENT: f64 = 12.0;
/// Where open tuning and pitch stand among the facts of the card.
const TUNING: usize = 4;
const PITCH: usize = 6;

/// A harp as its client reads it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ClientWords {
    /// What it is called.
    pub title: String,
    /// Who made it, for whom, and when; empty where nothing is given.
    pub by: String,
    /// Whole sentences.
    pub sentences: Vec<String>,
    /// What the maker adds.
    pub remarks: String,
}

/// The words for a client.
pub fn client(design: &Design, resolved: &Resolved, analysis: &Analysis) -> ClientWords {
    let given = |text: &str, said: fn(&dyn std::fmt::Display) -> String| {
        let text = clean(text);
        (!text.is_empty()).then(|| said(&text))
    };
    let by: Vec<String> = [
        given(&design.maker, say::made_by),
        given(&design.client, say::made_for),
        given(&design.date, |date| date.to_string()),
    ]
    .into_iter()
    .flatten()
    .collect();
    let mut sentences = vec![strings(analysis)];
    sentences.extend(raised(resolved));
    let facts = facts(design, analysis, String::new());
    if !clean(&design.open_tuning).is_empty() {
        sentences.push(say::tuning(&facts[TUNING].1));
    }
    sentences.push(say::pitch(&facts[PITCH].1));
    if analysis.strings.is_empty() {
        sentences.truncate(1);
    } else {
        sentences.push(materials(resolved));
        sentences.extend(feel(design, resolved, analysis));
        sentences.extend(total(analysis));
    }
    ClientWords {
        title: title(design),
        by: by.join(" · "),
        sentences,
        remarks: clean(&design.remarks),
    }
}

/// How many strings, and from where to where.
fn strings(analysis: &Analysis) -> String {
    let count = analysis.strings.len();
    let notes = || analysis.strings.iter().filter_map(|figures| figures.note);
    let lowest = notes().min_by_key(|note| note.key_number());
    let highest = notes().max_by_key(|note| note.key_number());
    match (lowest, highest) {
        (Some(low), Some(high)) if count > 1 => {
            say::strings_from_to(&count, &high.printed(), &low.printed())
        }
        _ => say::strings(&count),
    }
}

/// What raises strings by semitones.
fn raised(resolved: &Resolved) -> Option<String> {
    let strings = &resolved.harp.strings;
    let levers = strings.iter().filter(|string| string.mechanism == Mechanism::Lever).count();
    let discs = strings
        .iter()
        .filter(|string| !matches!(string.mechanism, Mechanism::Lever | Mechanism::None))
        .count();
    match (levers, discs) {
        (0, 0) => None,
        (0, discs) => Some(say::discs(&discs)),
        (levers, _) if levers > 1 && levers == strings.len() => Some(say::LEVERS_ALL.into()),
        (levers, _) => Some(say::levers(&levers)),
    }
}

/// What the strings are made of, in four heaps.
fn materials(resolved: &Resolved) -> String {
    let mut counts = [0_usize; 5];
    for string in &resolved.harp.strings {
        let heap = match &string.make_up {
            Err(_) => 4,
            Ok(make_up) if !make_up.layers().is_empty() => 3,
            Ok(make_up) => match make_up.core().map(|(material, _)| material.class) {
                Some(Class::Polymer) => 0,
                Some(Class::Natural) => 1,
                Some(Class::Metal) => 2,
                None => 4,
            },
        };
        counts[heap] += 1;
    }
    let said = [say::plain_nylon, say::plain_gut, say::plain_wire, say::wound, say::unknown];
    let list: Vec<String> = counts
        .iter()
        .zip(said)
        .filter(|(count, _)| **count > 0)
        .map(|(count, said)| said(count))
        .collect();
    say::materials(&list.join(", "))
}

/// How the strings feel beside those of most harps, as the mean of the ratios of all strings that can be compared.
fn feel(design: &Design, resolved: &Resolved, analysis: &Analysis) -> Option<String> {
    let ratios: Vec<f64> = resolved
        .harp
        .strings
        .iter()
        .zip(&analysis.strings)
        .filter_map(|(string, figures)| {
            let is = figures.pluck_stiffness.ok().map(Stiffness::to_n_per_mm)?;
            let ratio = is / usual_feel(place(string, &design.pitch)?);
            (ratio > 0.0 && ratio.is_finite()).then(|| ratio.ln())
        })
        .collect();
    // What is usual is known of harps with strings of nylon and gut, and not of those with strings of wire.
    let is_wire = |string: &HarpString| {
        let make_up = string.make_up.as_ref().ok();
        let core = make_up.filter(|make_up| make_up.layers().is_empty()).and_then(MakeUp::core);
        core.is_some_and(|(material, _)| material.class == Class::Metal)
    };
    let wires = resolved.harp.strings.iter().filter(|string| is_wire(string)).count();
    if ratios.is_empty() || 2 * wires > resolved.harp.strings.len() {
        return None;
    }
    let count = f64::from(u32::try_from(ratios.len()).ok()?);
    let percent = 100.0 * ((ratios.iter().sum::<f64>() / count).exp() - 1.0);
    let shown = display::percent(percent.abs());
    Some(match percent {
        percent if percent > ALIKE_PERCENT => say::feel_firmer(&shown),
        percent if percent < -ALIKE_PERCENT => say::feel_softer(&shown),
        _ => say::FEEL_LIKE.into(),
    })
}

/// The tension of all strings.
fn total(analysis: &Analysis) -> Option<String> {
    let all = analysis.strings.len();
    let with = all - analysis.without_tension;
    let newtons = display::total_with_unit(analysis.total_tension, ForceUnit::Newton);
    let other = display::total_with_unit(analysis.total_tension, ForceUnit::Kgf);
    match with {
        0 => None,
        with if with < all => Some(say::total_of_some(&all, &newtons, &other, &with)),
        _ => Some(say::total(&newtons, &other)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::StringSpec;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::words::{Language, in_language};

    fn read(design: &Design) -> ClientWords {
        let resolved = resolve(design);
        client(design, &resolved, &analyse(&resolved.harp))
    }

    #[test]
    fn a_sample_is_told_in_whole_sentences_of_every_language() {
        for sample in &SAMPLES {
            let design = sample.design();
            for language in Language::ALL {
                let words = in_language(language, || read(&design));
                assert_eq!(words.title, design.title.trim());
                assert!(words.by.contains(design.maker.trim()), "{}", words.by);
                assert!(words.sentences.len() >= 4, "{:?}", words.sentences);
                for sentence in &words.sentences {
                    assert!(
                        sentence.ends_with('.') && !sentence.contains(['{', '\u{1}']),
                        "{sentence}"
                    );
                }
                let count = design.strings.len().to_string();
                assert!(words.sentences[0].contains(&count), "{}", words.sentences[0]);
            }
        }
    }

    #[test]
    fn the_heaps_of_strings_add_up() {
        for sample in &SAMPLES {
            let design = sample.design();
            let said = materials(&resolve(&design));
            let counts = said.split([' ', ',']).filter_map(|word| word.parse::<usize>().ok());
            assert_eq!(counts.sum::<usize>(), design.strings.len(), "{said}");
        }
    }

    #[test]
    fn a_harp_without_strings_or_tensions_promises_nothing() {
        assert_eq!(read(&Design::default()).sentences, ["It has 0 strings."]);
        let string = StringSpec { note: "C4".to_owned(), ..StringSpec::default() };
        let words = read(&Design { strings: vec![string], ..Design::default() });
        assert!(words.sentences.iter().all(|s| !s.contains("tension of") && !s.contains("finger")));
        assert!(words.sentences.contains(&"Its strings: 1 not yet decided.".to_owned()));
    }

    #[test]
    fn half_as_firm_is_said_to_be_softer() {
        let wire = SAMPLES[0].design();
        let resolved = resolve(&wire);
        let strung = analyse(&resolved.harp);
        assert_eq!(feel(&wire, &resolved, &strung), None, "nothing is known of wire");
        let design = SAMPLES[1].design();
        let resolved = resolve(&design);
        let mut analysis = analyse(&resolved.harp);
        for figures in &mut analysis.strings {
            figures.pluck_stiffness =
                figures.pluck_stiffness.map(|is| Stiffness::from_n_per_mm(0.25 * is.to_n_per_mm()));
        }
        let said = feel(&design, &resolved, &analysis).unwrap();
        assert!(said.contains("softer"), "{said}");
    }
}
