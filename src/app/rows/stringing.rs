//! One string in large letters for the day it is put on: the words of the stringing card, and what the hand at the
//! tuning key asks besides.

use crate::design::advice::sentence;
use crate::design::display;
use crate::design::document::Design;
use crate::design::letters::escape;
use crate::design::resolve::Resolved;
use crate::design::settings::Setting;
use crate::engine::analysis::{Analysis, Mechanism, StringFigures};
use crate::engine::limit::is_above;
use crate::engine::pitch::Letter;
use crate::papers::rows::{MAKE_UP, StringWords, strings};
use crate::papers::sheet::Mark;
use crate::words::{Words, details, figures, stringing as say};

/// Places among the cells of the card.
const NUMBER: usize = 0;
const HARP_NAME: usize = 1;
const NOTE: usize = 2;
const GAUGE_MM: usize = 4;
const GAUGE_IN: usize = 5;
const VIBRATING_MM: usize = 6;
/// Less of a turn than that is not told: wire hardly stretches.
const LEAST_TURNS: f64 = 0.05;

/// A string as it is shown on the day it is put on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StringingWords {
    /// Its number from the top.
    pub number: String,
    /// The note it is tuned to.
    pub note: String,
    /// As a harpist calls it.
    pub harp_name: String,
    /// Whether it is red or black.
    pub mark: Option<Mark>,
    /// What it is made of.
    pub make_up: String,
    /// Its gauge in both units.
    pub gauge: String,
    /// What it is ordered by; empty where there is nothing.
    pub code: String,
    /// Vibrating length.
    pub vibrating: String,
    /// How much to cut.
    pub cut: String,
    /// Turns on the pin at pitch.
    pub turns: String,
    /// How many of them take the stretch up; empty where that is not known.
    pub take_up: String,
    /// Its pitch.
    pub tune: String,
    /// How its lever or discs stand meanwhile; empty where it has none.
    pub tuned_with: &'static str,
    pub tension: String,
    /// What to beware of with this string.
    pub cautions: Vec<String>,
}

/// Every string of a design.
pub fn stringing(design: &Design, resolved: &Resolved, analysis: &Analysis) -> Vec<StringingWords> {
    let card = strings(design, analysis).rows;
    let all = card.iter().zip(&analysis.strings).enumerate();
    all.map(|(row, (card, figures))| {
        let mechanism = resolved.harp.strings.get(row).map(|string| string.mechanism);
        let mut words = of_card(card, figures, design);
        words.tuned_with = match mechanism {
            None | Some(Mechanism::None) => "",
            Some(Mechanism::Lever) => say::TUNE_LEVER.said(),
            Some(_) => say::TUNE_DISCS.said(),
        };
        let found = analysis.findings.iter().filter(|finding| finding.index == row);
        words.cautions.extend(found.map(|found| sentence(found, analysis, &design.units)));
        words
    })
    .collect()
}

/// The string as markup, every text of the design in it escaped.
pub fn stringing_markup(words: &StringingWords) -> String {
    let mut out = String::from("<section class=\"strung-string\"><h3 class=\"strung-name\">");
    let mut put = |parts: &[&str]| parts.iter().for_each(|part| out.push_str(part));
    put(&["<span class=\"strung-number\">", &escape(&words.number), "</span>"]);
    let mark = match words.mark {
        Some(Mark::C) => Some(("c", Letter::C.printed(), say::STRING_C)),
        Some(Mark::F) => Some(("f", Letter::F.printed(), say::STRING_F)),
        None => None,
    };
    if let Some((class, letter, means)) = mark {
        put(&["<span class=\"strung-mark ", class, "\" role=\"img\" aria-label=\""]);
        put(&[&escape(means.said()), "\">", &letter, "</span>"]);
    }
    put(&["<span>", &escape(&words.note), "</span><span class=\"hint\">"]);
    put(&[&escape(&words.harp_name), "</span></h3><p class=\"strung-make-up\">"]);
    put(&[&escape(&words.make_up), "</p><dl class=\"strung-figures\">"]);
    let code = if words.code.is_empty() { say::NO_CODE.said() } else { &words.code };
    let figures: [(Words, &str, &str, bool); 7] = [
        (say::GAUGE, &words.gauge, "", false),
        (say::CUT, &words.cut, "", true),
        (say::TUNE, &words.tune, words.tuned_with, true),
        (say::TURNS, &words.turns, &words.take_up, false),
        (figures::TENSION, &words.tension, "", false),
        (say::VIBRATING, &words.vibrating, "", false),
        (say::CODE, code, "", false),
    ];
    for (label, value, more, is_main) in figures {
        put(&[if is_main { "<div class=\"strung-main\"><dt>" } else { "<div><dt>" }]);
        put(&[&escape(label.said()), "</dt><dd>", &escape(value), "</dd>"]);
        if !more.is_empty() {
            put(&["<dd class=\"hint\">", &escape(more), "</dd>"]);
        }
        put(&["</div>"]);
    }
    put(&["</dl>"]);
    if !words.cautions.is_empty() {
        put(&["<ul class=\"strung-cautions\">"]);
        words.cautions.iter().for_each(|said| put(&["<li>", &escape(said), "</li>"]));
        put(&["</ul>"]);
    }
    put(&["</section>"]);
    out
}

fn of_card(card: &StringWords, figures: &StringFigures, design: &Design) -> StringingWords {
    let cell = |place: usize| card.cells.get(place).cloned().unwrap_or_default();
    // The last but one is what to cut, in the unit of lengths.
    let (cut, code) = match &*card.cells {
        [.., cut, code] => (cut.as_str(), code.as_str()),
        _ => ("", ""),
    };
    let none = crate::papers::words::DASH;
    let with = |number: &str, unit: &str| match number {
        number if number == none || number.is_empty() => none.to_owned(),
        number => format!("{number}\u{a0}{unit}"),
    };
    let unit = match design.units.length {
        crate::design::document::LengthUnit::Mm => "mm",
        crate::design::document::LengthUnit::Inch => "in",
    };
    let wound = Setting::Turns.number(design);
    let mut cautions = Vec::new();
    let take_up = match figures.pin_turns {
        Ok(turns) if is_above(turns, wound) => {
            let (turns, wound) = display::apart(turns, wound, 1);
            cautions.push(details::few_turns(&turns, &wound));
            String::new()
        }
        Ok(turns) if turns >= LEAST_TURNS => say::turns_take_up(&display::decimals(turns, 1)),
        _ => String::new(),
    };
    let inches = with(&cell(GAUGE_IN), "in");
    let gauge = match with(&cell(GAUGE_MM), "mm") {
        mm if inches == none => mm,
        mm => format!("{mm}, {inches}"),
    };
    StringingWords {
        number: cell(NUMBER),
        note: cell(NOTE),
        harp_name: cell(HARP_NAME),
        mark: card.mark,
        make_up: cell(MAKE_UP),
        gauge,
        code: if code == none { String::new() } else { code.to_owned() },
        vibrating: with(&cell(VIBRATING_MM), "mm"),
        cut: with(cut, unit),
        turns: display::trimmed(display::decimals(wound, 2), 0),
        take_up,
        tune: figures
            .frequency
            .map_or(none.to_owned(), |pitch| format!("{}\u{a0}Hz", display::frequency(pitch))),
        tuned_with: "",
        tension: figures
            .tension
            .map_or(none.to_owned(), |force| display::tension_with_unit(force, design.units.force)),
        cautions,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::LengthUnit;
    use crate::design::presets::{FLOOR_36, SAMPLES};
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::papers::card::card;
    use crate::papers::sheet::{Block, Paper};

    fn words(design: &Design) -> Vec<StringingWords> {
        let resolved = resolve(design);
        stringing(design, &resolved, &analyse(&resolved.harp))
    }

    /// The rows of the printed card, each a line of text.
    fn card_rows(design: &Design) -> Vec<Vec<String>> {
        let sheet = card(design, &analyse(&resolve(design).harp), "", Paper::A4);
        let blocks = sheet.pages.into_iter().flat_map(|page| page.blocks);
        let tables = blocks.filter_map(|block| match block {
            Block::Table(table) => Some(table.rows),
            _ => None,
        });
        let cells = |cells: Vec<Vec<String>>| {
            cells.into_iter().map(|lines| lines.join(" ")).collect::<Vec<_>>()
        };
        tables.flatten().map(|row| cells(row.cells)).collect()
    }

    #[test]
    fn the_figures_are_those_of_the_card() {
        for sample in SAMPLES {
            for unit in [LengthUnit::Mm, LengthUnit::Inch] {
                let mut design = sample.design();
                design.units.length = unit;
                let (all, card) = (words(&design), card_rows(&design));
                assert_eq!(all.len(), design.strings.len());
                assert_eq!(card.len(), all.len(), "{}", sample.key);
                for (shown, printed) in all.iter().zip(&card) {
                    let bare = |text: &str| text.split(['\u{a0}', ',']).next().unwrap().to_owned();
                    assert_eq!(&shown.number, &printed[0]);
                    assert_eq!(&shown.harp_name, &printed[1]);
                    assert_eq!(&shown.note, &printed[2]);
                    assert_eq!(&shown.make_up, &printed[3]);
                    assert_eq!(bare(&shown.gauge), printed[4]);
                    assert!(shown.gauge.contains(&printed[5]), "{shown:?}");
                    assert_eq!(bare(&shown.vibrating), printed[6]);
                    assert_eq!(bare(&shown.cut), printed[printed.len() - 2], "{shown:?}");
                    let in_unit = if unit == LengthUnit::Mm { "mm" } else { "in" };
                    assert!(shown.cut.ends_with(in_unit), "{shown:?}");
                    assert!(shown.tune.ends_with("Hz") && shown.tension.ends_with('N'));
                }
            }
        }
    }

    #[test]
    fn markup_holds_every_figure_and_nothing_of_a_design_as_markup() {
        let mut design = FLOOR_36.design();
        design.strings[0].order_code = "<b>&7".to_owned();
        let all = words(&design);
        let text = stringing_markup(&all[0]);
        assert!(text.contains("&lt;b&gt;&amp;7") && !text.contains("<b>"), "{text}");
        for words in &all {
            let text = stringing_markup(words);
            for figure in [&words.cut, &words.tune, &words.turns, &words.tension, &words.gauge] {
                assert!(text.contains(figure.as_str()), "{figure}: {text}");
            }
            assert_eq!(text.matches("strung-mark").count(), usize::from(words.mark.is_some()));
        }
    }

    #[test]
    fn what_is_found_about_a_string_stands_with_it_alone() {
        let mut design = SAMPLES[0].design();
        design.strings[8].length = "900".to_owned();
        let all = words(&design);
        assert!(all[8].cautions.iter().any(|said| said.contains('9')), "{:?}", all[8].cautions);
        assert!(all[20].cautions.is_empty(), "{:?}", all[20].cautions);
    }

    #[test]
    fn a_string_that_takes_more_turns_than_were_cut_for_is_warned_of() {
        let mut design = FLOOR_36.design();
        design.allowances.turns = 0.5;
        let all = words(&design);
        assert!(all[0].take_up.is_empty() && !all[0].cautions.is_empty(), "{:?}", all[0]);
        design.allowances.turns = 12.0;
        assert!(!words(&design)[0].take_up.is_empty());
    }

    #[test]
    fn a_string_of_which_nothing_is_known_has_dashes_and_no_figure() {
        let mut design = Design::default();
        design.strings.push(Default::default());
        let all = words(&design);
        assert_eq!((&*all[0].cut, &*all[0].tune, &*all[0].tension), ("—", "—", "—"));
        assert!(all[0].code.is_empty());
    }
}
