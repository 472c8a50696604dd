//! The numbers, explained: for each figure, and for a few things besides, what it means, how it is
//! worked out, what is assumed, how far it holds, where it comes from and how it was checked.
//!
//! What the engine knows is taken from the engine: headings and units, limits, usual settings, the
//! reasons for a missing figure, and a worked example that the engine itself works out.

mod board;
mod choosing;
mod example;
mod fill;
mod frame;
mod giving;
mod hand;
mod keys;
mod more;
mod ordering;
mod pull;
mod sheet;
mod sources;
mod symbols;
mod tone;
mod tuning;

use self::example::Worked;
use self::fill::Values;
use self::sheet::temperaments;
pub use self::sheet::{Table, materials};
use self::symbols::Symbol;
use super::checks::{CHECKS, Check};
use super::figures::{BY_PLACE, Group, row};
use super::letters::capital;
use crate::engine::analysis::Unknown;
use crate::engine::figure::Figure;
use crate::engine::material::Standing;
use crate::words::{Words, decimal_sign, numbers as say};

/// What there is a page about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Topic {
    /// A figure of a string.
    Figure(Figure),
    /// The partials of a stiff string, bare ends included.
    Partials,
    /// How far the figures may be off.
    Tolerance,
    /// What is known of each material.
    Materials,
    /// How the findings are found.
    Findings,
    /// Notes, octaves and temperaments.
    Pitch,
    /// Which keys a harp plays.
    Keys,
    /// What the frame bears.
    Loads,
    /// What is known of the woods.
    Woods,
    /// How far strings fall while others come up.
    Giving,
    /// What the years do.
    Years,
    /// The best set of strings from a stock.
    Choosing,
    /// Lengths that come nearer to what is wanted.
    Lengths,
}

const COUNT: usize = Figure::ALL.len() + BESIDES.len();
const BESIDES: [Topic; 12] = [
    Topic::Partials,
    Topic::Tolerance,
    Topic::Materials,
    Topic::Findings,
    Topic::Pitch,
    Topic::Keys,
    Topic::Loads,
    Topic::Woods,
    Topic::Giving,
    Topic::Years,
    Topic::Choosing,
    Topic::Lengths,
];

impl Topic {
    /// All of them: the figures as the page lists them, then the others.
    pub const ALL: [Self; COUNT] = {
        let mut all = [Self::Partials; COUNT];
        let mut place = 0;
        while place < COUNT {
            all[place] = if place < Figure::ALL.len() {
                Self::Figure(BY_PLACE[place])
            } else {
                BESIDES[place - Figure::ALL.len()]
            };
            place += 1;
        }
        all
    };

    /// What it is called.
    pub fn title(self) -> &'static str {
        let title = match self {
            Self::Figure(figure) => row(figure).called,
            Self::Partials => say::TITLE_PARTIALS,
            Self::Tolerance => say::TITLE_TOLERANCE,
            Self::Materials => say::TITLE_MATERIALS,
            Self::Findings => say::TITLE_FINDINGS,
            Self::Pitch => say::TITLE_PITCH,
            Self::Keys => say::TITLE_KEYS,
            Self::Loads => say::TITLE_LOADS,
            Self::Woods => say::TITLE_WOODS,
            Self::Giving => say::TITLE_GIVING,
            Self::Years => say::TITLE_YEARS,
            Self::Choosing => say::TITLE_CHOOSING,
            Self::Lengths => say::TITLE_LENGTHS,
        };
        title.said()
    }

    /// Where it stands in the list.
    pub const fn group(self) -> Group {
        match self {
            Self::Figure(figure) => row(figure).group,
            Self::Partials => Group::Tone,
            Self::Pitch | Self::Keys => Group::Tuning,
            Self::Choosing | Self::Lengths => Group::Ordering,
            Self::Tolerance | Self::Materials | Self::Findings => Group::More,
            Self::Loads | Self::Woods | Self::Giving | Self::Years => Group::More,
        }
    }

    /// Whether loads or breaking are spoken of, so that the cautions stand there too.
    pub const fn of_loads(self) -> bool {
        match self {
            Self::Figure(figure) => row(figure).caution,
            Self::Findings | Self::Materials | Self::Tolerance => true,
            Self::Loads | Self::Woods | Self::Giving | Self::Years => true,
            _ => false,
        }
    }

    /// The words by which the register of checks knows it.
    const fn known_as(self) -> &'static [&'static str] {
        match self {
            Self::Figure(_) => &[],
            Self::Partials => &["partials"],
            Self::Tolerance => &["tolerance"],
            Self::Materials => &["materials"],
            Self::Findings => &["findings"],
            Self::Pitch => &["harp_octave", "frequency_hz"],
            Self::Keys => &["keys"],
            Self::Loads => &["loads"],
            Self::Woods => &["woods"],
            Self::Giving => &["giving"],
            Self::Years => &["years"],
            Self::Choosing => &["choosing"],
            Self::Lengths => &["better-lengths"],
        }
    }

    const fn written(self) -> &'static Written {
        match self {
            Self::Figure(figure) => page_of(figure),
            Self::Partials => &tone::PARTIALS,
            Self::Tolerance => &more::TOLERANCE,
            Self::Materials => &more::MATERIALS,
            Self::Findings => &more::FINDINGS,
            Self::Pitch => &more::PITCH,
            Self::Keys => &keys::KEYS,
            Self::Loads => &frame::LOADS,
            Self::Woods => &frame::WOODS,
            Self::Giving => &giving::GIVING,
            Self::Years => &giving::YEARS,
            Self::Choosing => &choosing::CHOOSING,
            Self::Lengths => &choosing::LENGTHS,
        }
    }
}

/// What was written about a figure.
const fn page_of(figure: Figure) -> &'static Written {
    match figure {
        Figure::Frequency => &tuning::FREQUENCY,
        Figure::Length => &ordering::LENGTH,
        Figure::Gauge => &ordering::GAUGE,
        Figure::Core => &ordering::CORE,
        Figure::LinearDensity => &ordering::LINEAR_DENSITY,
        Figure::Tension => &pull::TENSION,
        Figure::Stress => &pull::STRESS,
        Figure::BreakingLoad => &pull::BREAKING_LOAD,
        Figure::LoadShare => &pull::LOAD_SHARE,
        Figure::SemitonesToBreak => &pull::SEMITONES_TO_BREAK,
        Figure::PluckStiffness => &pull::PLUCK_STIFFNESS,
        Figure::Inharmonicity => &tone::INHARMONICITY,
        Figure::Partial8 => &tone::PARTIAL_8,
        Figure::Impedance => &tone::IMPEDANCE,
        Figure::Damping => &tone::DAMPING,
        Figure::Stretch => &tuning::STRETCH,
        Figure::PinTurns => &tuning::PIN_TURNS,
        Figure::CentsPerPinDegree => &tuning::CENTS_PER_PIN_DEGREE,
        Figure::CentsPerKelvin => &tuning::CENTS_PER_KELVIN,
        Figure::Lever => &tuning::LEVER,
        Figure::DiscNatural => &tuning::DISC_NATURAL,
        Figure::DiscSharp => &tuning::DISC_SHARP,
        Figure::Lift => &board::LIFT,
        Figure::AlongBoard => &board::ALONG_BOARD,
        Figure::CutLength => &ordering::CUT_LENGTH,
        Figure::PluckForce => &pull::PLUCK_FORCE,
        Figure::Glide => &tone::GLIDE,
        Figure::NominalError => &tuning::NOMINAL_ERROR,
    }
}

/// A source and how well it is known.
pub type Source = (Words, Standing);

/// A text of a page.
#[derive(Clone, Copy, Debug)]
enum Text {
    /// As it stands.
    Said(Words),
    /// With numbers of the engine's.
    Filled(fn(&Values) -> String),
    /// A formula: the same in every language, but for the decimal sign.
    Math(&'static str),
}

impl Text {
    fn with(self, values: &Values) -> String {
        match self {
            Self::Said(words) => words.into(),
            Self::Filled(fill) => fill(values),
            Self::Math(formula) => formula.replace('.', decimal_sign().encode_utf8(&mut [0; 4])),
        }
    }
}

/// What was written about a topic.
#[derive(Debug)]
struct Written {
    lead: Text,
    /// What each formula is for, if that must be said, and the formula.
    formula: &'static [(Words, Text)],
    symbols: &'static [Symbol],
    assumptions: &'static [Text],
    range: &'static [Text],
    sources: &'static [Source],
    missing: &'static [&'static [Unknown]],
    worked: Worked,
}

/// A topic, explained.
#[derive(Clone, Debug, PartialEq)]
pub struct Page {
    /// What it is called.
    pub title: &'static str,
    /// The heading of its column in the string table; empty where it has none.
    pub heading: &'static str,
    /// The unit that the heading ends with; empty for a pure number.
    pub unit: &'static str,
    /// What it means for the maker.
    pub lead: String,
    /// What each formula is for, if that must be said, and the formula.
    pub formula: Vec<(&'static str, String)>,
    /// Every letter of the formulas: what it stands for, with its unit.
    pub symbols: Vec<(&'static str, String)>,
    /// What is assumed.
    pub assumptions: Vec<String>,
    /// Where it holds, and how far it can be off.
    pub range: Vec<String>,
    /// When there is no figure: each reason as the page tells it.
    pub missing: Vec<String>,
    /// Where it comes from.
    pub sources: &'static [Source],
    /// How it was checked.
    pub checks: Vec<&'static Check>,
    /// What belongs to it in columns.
    pub tables: Vec<Table>,
    /// The example, worked out by the engine.
    pub example: Example,
}

/// A string and what the engine makes of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Example {
    /// The string in words.
    pub string: &'static str,
    /// What each letter is in the example, in the order of [`Page::symbols`]; empty where it has none.
    pub given: Vec<String>,
    /// The figure with its unit; empty for a topic that is no figure.
    pub result: String,
}

/// The page about a topic.
pub fn page(topic: Topic) -> Page {
    let written = topic.written();
    let values = Values::new();
    let filled = |texts: &[Text]| texts.iter().map(|text| text.with(&values)).collect();
    let (heading, unit) = match topic {
        Topic::Figure(figure) => (row(figure).heading, row(figure).unit.of_heading()),
        _ => ("", ""),
    };
    let string = written.worked.string();
    let given = written.symbols.iter().map(|symbol| symbol.in_example(&string)).collect();
    let result = match topic {
        Topic::Figure(figure) => figure.value(&string.figures).map(|value| fill::with(value, unit)),
        _ => Ok(String::new()),
    };
    Page {
        title: topic.title(),
        heading,
        unit: fill::unit(unit),
        lead: written.lead.with(&values),
        formula: written
            .formula
            .iter()
            .map(|(what, text)| (what.said(), text.with(&values)))
            .collect(),
        symbols: written.symbols.iter().map(|symbol| (symbol.sign, symbol.meaning())).collect(),
        assumptions: filled(written.assumptions),
        range: filled(written.range),
        missing: written.missing.iter().flat_map(|some| *some).map(|why| sentence(*why)).collect(),
        sources: written.sources,
        checks: CHECKS.iter().filter(|check| covers(check, topic, heading)).collect(),
        tables: match topic {
            Topic::Pitch => vec![temperaments()],
            Topic::Loads => hand::tables(),
            Topic::Woods => vec![frame::table()],
            _ => Vec::new(),
        },
        example: Example {
            string: written.worked.in_words().said(),
            given,
            result: result.unwrap_or_else(sentence),
        },
    }
}

/// Whether a check covers a topic. A check may leave off the unit of a heading.
fn covers(check: &Check, topic: Topic, heading: &str) -> bool {
    check.figures.iter().any(|figure| {
        topic.known_as().contains(figure) || !figure.is_empty() && heading.starts_with(figure)
    })
}

/// How well something is known, in written.
pub fn standing(standing: Standing) -> &'static str {
    let words = match standing {
        Standing::Seen => say::STANDING_SEEN,
        Standing::SecondHand => say::STANDING_SECOND_HAND,
        Standing::Computed => say::STANDING_COMPUTED,
        Standing::FromMemory => say::STANDING_FROM_MEMORY,
        Standing::Own => say::STANDING_OWN,
    };
    words.said()
}

/// A reason of the engine's as a sentence.
fn sentence(why: Unknown) -> String {
    capital(&format!("{why}."))
}

#[cfg(test)]
mod tests {
    use std::f64::consts::PI;

    use super::*;
    use crate::design::document::{Design, MechanismKind, StringSpec};
    use crate::design::make_up_text;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::testing::assert_close;
    use crate::words::{Language, in_language};

    /// What a formula may hold besides the letters that are explained.
    const KNOWN: [&str; 6] = ["π", "Σ", "ln", "log₂", "sin", "cos"];

    /// The letters of a formula, each with its signs: `E₀`, `L′`, `F⁺`.
    fn letters(formula: &str) -> Vec<String> {
        let mut letters: Vec<String> = Vec::new();
        let mut open = false;
        for sign in formula.chars() {
            let hangs_on = matches!(sign, '₀'..='₉' | '′' | '⁺' | '⁻');
            match letters.last_mut() {
                Some(last) if open && (hangs_on || sign.is_alphabetic()) => last.push(sign),
                _ if sign.is_alphabetic() => letters.push(sign.to_string()),
                _ => {}
            }
            open = (open && hangs_on) || sign.is_alphabetic();
        }
        letters
    }

    #[test]
    fn every_topic_has_a_whole_page() {
        let every =
            Language::ALL.into_iter().flat_map(|language| Topic::ALL.map(|of| (language, of)));
        for (language, topic) in every {
            let page = in_language(language, || page(topic));
            let title = page.title;
            assert!(!page.lead.is_empty() && page.lead.ends_with('.'), "{title}");
            assert!(!page.formula.is_empty(), "{title} has a formula");
            assert!(!page.symbols.is_empty(), "{title} has letters");
            assert!(!page.assumptions.is_empty(), "{title} has assumptions");
            assert!(!page.range.is_empty(), "{title} says where it holds");
            assert!(!page.sources.is_empty(), "{title} has a source");
            assert!(matches!(topic, Topic::Figure(_)) != page.heading.is_empty(), "{title}");
            assert_eq!(page.example.given.len(), page.symbols.len(), "{title}");
            let texts = page.assumptions.iter().chain(&page.range).chain([&page.lead]);
            for text in texts.chain(page.formula.iter().map(|(_, text)| text)) {
                assert!(!text.contains(['{', '}']), "{title}: a number is missing in \"{text}\"");
                assert!(!text.contains("  "), "{title}: {text}");
            }
        }
    }

    #[test]
    fn titles_are_told_apart() {
        for (place, topic) in Topic::ALL.iter().enumerate() {
            for other in &Topic::ALL[place + 1..] {
                assert_ne!(topic.title(), other.title());
            }
        }
    }

    #[test]
    fn letters_of_a_formula_are_found() {
        assert_eq!(letters("−(600/ln 2) (Eₘ/σ) π L′²/x₁³"), ["ln", "Eₘ", "σ", "π", "L′", "x₁"]);
        assert_eq!(letters("1 + sin²(π β) F⁺ − n f₀"), ["sin", "π", "β", "F⁺", "n", "f₀"]);
    }

    #[test]
    fn every_letter_is_explained_and_no_other() {
        for topic in Topic::ALL {
            let page = page(topic);
            let used: Vec<String> =
                page.formula.iter().flat_map(|(_, formula)| letters(formula)).collect();
            for letter in used.iter().filter(|letter| !KNOWN.contains(&letter.as_str())) {
                let times = page.symbols.iter().filter(|(sign, _)| sign == letter).count();
                assert_eq!(times, 1, "{}: {letter}", page.title);
            }
            for (sign, _) in &page.symbols {
                assert!(used.iter().any(|letter| letter == sign), "{}: {sign}", page.title);
            }
        }
    }

    #[test]
    fn a_source_that_was_not_found_is_from_memory() {
        let shown = Topic::ALL.iter().flat_map(|topic| page(*topic).sources);
        for (source, known) in shown {
            let said = source.said();
            let unfound = said.contains("to be found") || said.contains("no source");
            assert!(!unfound || *known == Standing::FromMemory, "{said}");
        }
        for table in materials(&[]) {
            for row in table.groups.iter().flat_map(|(_, rows)| rows) {
                let unfound = row[2].starts_with("Source: to be found");
                assert!(!unfound || row[3].starts_with("from memory"), "{row:?}");
            }
        }
    }

    /// The words on the page name the very string that was worked out: its note, and every measure.
    #[test]
    fn an_example_is_worked_for_the_string_that_its_words_name() {
        for topic in Topic::ALL {
            let strung = topic.written().worked.string();
            let words = page(topic).example.string;
            let (note, measures) = words.split_once(", ").unwrap();
            assert_eq!(strung.figures.note.map(|note| note.to_string()).as_deref(), Some(note));
            let spoken: Vec<&str> = measures.split(' ').collect();
            let named = spoken.windows(2).filter(|pair| pair[1].trim_end_matches(',') == "mm");
            let named: Vec<f64> = named.map(|pair| pair[0].parse().unwrap()).collect();
            let make_up = strung.make_up().unwrap();
            let mut meant = vec![strung.figures.length.unwrap(), strung.figures.core.unwrap()];
            meant.extend(make_up.layers().iter().map(|layer| layer.section.thickness()));
            let (board, pin) = make_up.bare_ends();
            meant.extend([board, pin].into_iter().filter(|end| end.to_m() > 0.0));
            assert_eq!(named.len(), meant.len(), "{words}");
            for (named, meant) in named.into_iter().zip(meant) {
                assert_close(meant.to_mm(), named, 1e-12, words);
            }
        }
    }

    /// A number of a page in its basic unit.
    fn basic(text: &str) -> f64 {
        let (number, unit) = text.split_once(' ').unwrap_or((text, ""));
        let number = number.replace('−', "-").replace('\u{2009}', "");
        let (digits, power) = number.split_once("·10").unwrap_or((&number, ""));
        let power: String = power
            .chars()
            .map(|sign| "⁰¹²³⁴⁵⁶⁷⁸⁹".chars().position(|raised| raised == sign))
            .map(|digit| digit.map_or("-".to_owned(), |digit| digit.to_string()))
            .collect();
        let number = format!("{digits}e{}", if power.is_empty() { "0" } else { &power });
        let times = match unit {
            "mm" | "g/m" => 1e-3,
            "mm²" => 1e-6,
            "mm⁴" => 1e-12,
            "GPa" => 1e9,
            "MPa" => 1e6,
            "N/mm" => 1e3,
            _ => 1.0,
        };
        times * number.parse::<f64>().unwrap_or_else(|_| panic!("\"{text}\" is no number"))
    }

    /// What presses on the string; each has more than a formula to be held to.
    const CONTACTS: [Figure; 3] = [Figure::Lever, Figure::DiscNatural, Figure::DiscSharp];

    /// Eighth partial over the first of the flexible string of the page about inharmonicity: wound
    /// for 873 of its 900 mm, the rest bare. Both ends at rest, and at each joint the shape goes on
    /// without a kink.
    fn eighth_to_first() -> f64 {
        let page = page(Topic::Figure(Figure::Inharmonicity));
        let share = page.symbols.iter().position(|(sign, _)| *sign == "r").unwrap();
        let bare_rate = basic(&page.example.given[share]).sqrt();
        let far_end = |rate: f64| {
            let pieces = [(12.0, rate * bare_rate), (873.0, rate), (15.0, rate * bare_rate)];
            let along = |(height, slope): (f64, f64), (length, rate): (f64, f64)| {
                let (sin, cos) = (rate * length).sin_cos();
                (height * cos + slope * sin / rate, slope * cos - height * sin * rate)
            };
            pieces.into_iter().fold((0.0, 1.0), along).0
        };
        let partial = |number: f64| {
            let (mut low, mut high) = (PI * (number - 0.5) / 900.0, PI * (number + 0.5) / 900.0);
            for _ in 0..60 {
                let middle = f64::midpoint(low, high);
                let turned = far_end(low) * far_end(middle) <= 0.0;
                (low, high) = if turned { (low, middle) } else { (middle, high) };
            }
            low
        };
        partial(8.0) / partial(1.0)
    }

    /// The formula, worked out with the rounded numbers that stand on the page, gives the result that
    /// stands there: four digits, each letter off by half of its last.
    #[test]
    fn a_reader_comes_to_the_result_with_the_numbers_of_the_page() {
        type Formula = fn(&dyn Fn(&str) -> f64) -> f64;
        let formulas: [(Figure, Formula); 24] = [
            (Figure::Frequency, |v| v("fₐ") * (v("C") / 1200.0).exp2()),
            (Figure::Length, |v| {
                let bend = 16.0 * v("f").powi(2) * v("μ") * PI * PI * v("E") * v("I");
                let root = (v("T") * v("T") + bend).sqrt();
                ((v("T") + root) / (8.0 * v("f").powi(2) * v("μ"))).sqrt()
            }),
            (Figure::Gauge, |v| v("d") + 2.0 * v("t")),
            (Figure::Core, |v| (4.0 * v("T") / (PI * v("σ"))).sqrt()),
            (Figure::LinearDensity, |v| {
                let turn = (PI * (v("D") + v("t"))).hypot(v("p"));
                v("ρ") * PI * v("d").powi(2) / 4.0 + v("ρ₁") * v("S") * turn / v("p")
            }),
            (Figure::Tension, |v| {
                4.0 * v("L").powi(2) * v("f").powi(2) * v("μ")
                    - PI * PI * v("E") * v("I") / v("L").powi(2)
            }),
            (Figure::Stress, |v| v("T") / v("A")),
            (Figure::BreakingLoad, |v| v("R") * v("A")),
            (Figure::LoadShare, |v| 100.0 * v("T") / v("F")),
            (Figure::SemitonesToBreak, |v| 6.0 * (v("F") / v("T")).log2()),
            (Figure::PluckStiffness, |v| v("T") / (v("L") * v("β") * (1.0 - v("β")))),
            (Figure::Inharmonicity, |v| {
                let stiff = PI * PI * v("E") * v("I") / (v("T") * v("L").powi(2));
                let bare = |b: f64| 2.0 * PI * PI / 3.0 * (1.0 - v("r")) * (b / v("L")).powi(3);
                stiff + bare(0.012) + bare(0.015)
            }),
            (Figure::Partial8, |v| {
                let stiff = ((1.0 + 64.0 * v("B")) / (1.0 + v("B"))).log2();
                600.0 * stiff + 1200.0 * (eighth_to_first() / 8.0).log2()
            }),
            (Figure::Lift, |v| v("T") * v("θ").to_radians().sin()),
            (Figure::AlongBoard, |v| v("T") * v("θ").to_radians().cos()),
            (Figure::Impedance, |v| (v("T") * v("μ")).sqrt()),
            (Figure::Damping, |v| {
                let bend = v("B") * v("n").powi(2);
                v("ηₑ") * bend / (1.0 + bend)
            }),
            (Figure::Stretch, |v| v("σ") / v("Eₛ") * (v("L") + v("a"))),
            (Figure::PinTurns, |v| v("ΔL") / (PI * (v("P") + v("g")))),
            (Figure::CentsPerPinDegree, |v| {
                let turn = PI * (v("P") + v("g")) / (v("L") + v("a")) / 360.0;
                600.0 / 2_f64.ln() * v("Eₘ") / v("σ") * turn
            }),
            (Figure::CentsPerKelvin, |v| {
                -600.0 / 2_f64.ln() * v("Eₘ") / v("σ") * 1e-6 * (v("α") - v("α₀"))
            }),
            (Figure::CutLength, |v| {
                v("L") + v("a") + v("N") * PI * (v("P") + v("g")) + v("K") + v("e")
            }),
            (Figure::PluckForce, |v| {
                let stretched = v("E") * v("A") / (2.0 * v("L")) * v("κ").powi(2) * v("h").powi(3);
                v("T") * v("κ") * v("h") + stretched
            }),
            (Figure::Glide, |v| {
                let rise = v("E") * v("A") * v("κ") * v("h").powi(2) / (4.0 * v("L") * v("T"));
                600.0 * (1.0 + v("q") * rise).log2()
            }),
        ];
        let elsewhere = CONTACTS.into_iter().chain([Figure::NominalError]);
        let held: Vec<Figure> =
            formulas.iter().map(|(figure, _)| *figure).chain(elsewhere).collect();
        let missing: Vec<_> = Figure::ALL.iter().filter(|figure| !held.contains(figure)).collect();
        assert!(missing.is_empty(), "{missing:?} have no formula here");
        for (figure, formula) in formulas {
            let page = page(Topic::Figure(figure));
            let value = |sign: &str| {
                let place = page.symbols.iter().position(|(own, _)| *own == sign).unwrap();
                basic(&page.example.given[place])
            };
            assert_close(formula(&value), basic(&page.example.result), 2e-3, page.title);
        }
    }

    /// What still sounds has the pitch that was asked for. The stretch is a hundredth of a millimetre, so
    /// that its four digits come from the program and are not worked out again from rounded lengths.
    #[test]
    fn levers_and_discs_raise_the_string_of_the_example_as_asked() {
        for (figure, semitones) in CONTACTS.into_iter().zip([1.0, 1.0, 2.0]) {
            let page = page(Topic::Figure(figure));
            let v = |sign: &str| {
                let place = page.symbols.iter().position(|(own, _)| *own == sign).unwrap();
                basic(&page.example.given[place])
            };
            assert_eq!(v("x"), basic(&page.example.result), "{}", page.title);
            let pull = v("T") + v("Eₘ") * v("A") * v("ΔL") / (v("L") + v("a"));
            assert_close(pull, v("T′"), 2e-3, page.title);
            assert_close((v("L") - v("x")).hypot(v("δ")), v("L′"), 1e-3, page.title);
            let bend = PI * PI * v("E") * v("I") / v("L′").powi(2);
            let pitch = ((v("T′") + bend) / v("μ")).sqrt() / (2.0 * v("L′"));
            assert_close(pitch, v("f′"), 1e-3, page.title);
            assert_close(v("f′") / v("f"), (semitones / 12.0_f64).exp2(), 1e-3, page.title);
        }
    }

    /// The pitch with the contact at the nominal place over the open one, both from the numbers on the
    /// page of the lever, so that what was rounded off them hardly tells.
    #[test]
    fn a_lever_at_its_nominal_place_is_as_sharp_as_its_page_says() {
        let (lever, error) =
            (page(Topic::Figure(Figure::Lever)), page(Topic::Figure(Figure::NominalError)));
        let v = |sign: &str| {
            let place = lever.symbols.iter().position(|(own, _)| *own == sign).unwrap();
            basic(&lever.example.given[place])
        };
        let place = v("L") * (1.0 - (-1.0_f64 / 12.0).exp2());
        assert_eq!(error.symbols[2].0, "x₀");
        assert_close(basic(&error.example.given[2]), place, 1e-3, "the nominal place");
        let sounds = (v("L") - place).hypot(v("δ"));
        let stretch = place.hypot(v("δ")) + sounds - v("L");
        let raised = v("T") + v("Eₘ") * v("A") * stretch / (v("L") + v("a"));
        let pitch = |pull: f64, length: f64| {
            (pull + PI * PI * v("E") * v("I") / length.powi(2)).sqrt() / length
        };
        let cents = 1200.0 * (pitch(raised, sounds) / pitch(v("T"), v("L"))).log2() - 100.0;
        assert_close(basic(&error.example.result), cents, 1e-2, "cents");
    }

    #[test]
    fn a_page_names_every_reason_that_can_occur() {
        let make_ups = [
            "",
            "nylon 0.81",
            "steel 5",
            "steel 3",
            "gut 0.9",
            "silk 0.5",
            "polyester 0.5",
            "red brass 0.3",
            "weighed 6.75",
            "weighed 6.75, core steel 0.50",
            "weighed 6.75, gauge 1.10",
            "steel 0.45 + bronze 0.3, bare 60 board 60 pin",
            "nylon 0.6 + copper 0.2",
        ];
        let lengths = ["", "60", "448", "1500"];
        let kinds = [MechanismKind::None, MechanismKind::Lever, MechanismKind::DoubleDisc];
        let mut strings = Vec::new();
        for make_up in make_ups {
            for length in lengths {
                for (note, kind) in ["", "A4", "A1"].into_iter().zip(kinds.into_iter().cycle()) {
                    let make_up = make_up_text::read(make_up).unwrap_or_default();
                    let (note, length) = (note.to_owned(), length.to_owned());
                    let mechanism = Some(kind);
                    strings.push(StringSpec {
                        note,
                        length,
                        make_up,
                        mechanism,
                        ..StringSpec::default()
                    });
                }
            }
        }
        let analysis = analyse(&resolve(&Design { strings, ..Design::default() }).harp);
        for figure in Figure::ALL {
            let page = page(Topic::Figure(figure));
            for why in analysis.strings.iter().filter_map(|string| figure.value(string).err()) {
                assert!(page.missing.contains(&sentence(why)), "{}: {why}", page.title);
            }
        }
    }

    #[test]
    fn a_check_is_shown_with_the_figures_it_covers() {
        let check = |figures| Check {
            id: "one",
            what: Words::plain("one thing against another"),
            source: Words::plain("a handbook"),
            standing: Standing::Seen,
            figures,
        };
        let of = |figures, topic| match topic {
            Topic::Figure(figure) => covers(&check(figures), topic, row(figure).heading),
            _ => covers(&check(figures), topic, ""),
        };
        assert!(of(&["stress_mpa", "tension_n"], Topic::Figure(Figure::Tension)));
        assert!(!of(&["tension_n"], Topic::Figure(Figure::Stress)));
        assert!(of(&["glide"], Topic::Figure(Figure::Glide)));
        assert!(of(&["harp_octave"], Topic::Pitch) && !of(&["harp_octave"], Topic::Partials));
    }

    #[test]
    fn numbers_have_four_digits() {
        for (value, text) in [
            (0.0, "0"),
            (0.81, "0.81"),
            (90.8765, "90.88"),
            (-2.0604, "−2.06"),
            (1234.56, "1235"),
            (0.000_347_4, "3.474·10⁻⁴"),
            (0.001, "0.001"),
            (0.012_345, "0.01235"),
            (1e9, "10⁹"),
        ] {
            assert_eq!(fill::number(value), text);
        }
    }
}
