//! The help: first steps, how to measure a harp, what the figures mean, care, and the words of the trade.

use leptos::prelude::*;

use super::asked::{ask_again, some_are_clear};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::letters::small;
use crate::engine::order::sort;
use crate::words::{Words, help as say, hints};

/// What stands under a head.
struct Section {
    head: Words,
    lines: &'static [Words],
    /// Whether its lines are steps, one after the other.
    steps: bool,
    /// Whether the drawing of what to measure stands above them.
    drawn: bool,
}

const fn section(head: Words, steps: bool, lines: &'static [Words]) -> Section {
    Section { head, lines, steps, drawn: false }
}

static SECTIONS: [Section; 7] = [
    section(
        say::FIRST,
        true,
        &[say::FIRST_1, say::FIRST_2, say::FIRST_3, say::FIRST_4, say::FIRST_5],
    ),
    section(
        say::RESTRING,
        true,
        &[say::RESTRING_1, say::RESTRING_2, say::RESTRING_3, say::RESTRING_4, say::RESTRING_5],
    ),
    Section {
        head: say::MEASURE,
        lines: &[say::MEASURE_1, say::MEASURE_2, say::MEASURE_3, say::MEASURE_4, say::MEASURE_5],
        steps: true,
        drawn: true,
    },
    section(
        say::MEANING,
        false,
        &[say::MEANING_FEEL, say::MEANING_SHARE, say::MEANING_MARGIN, say::MEANING_FRAME],
    ),
    section(
        say::MATERIALS,
        false,
        &[
            say::MATERIALS_NYLON,
            say::MATERIALS_GUT,
            say::MATERIALS_FLUOROCARBON,
            say::MATERIALS_WIRE,
            say::MATERIALS_WOUND,
            say::MATERIALS_STANDING,
        ],
    ),
    section(say::CARE, false, &[say::CARE_1, say::CARE_2, say::CARE_3, say::CARE_4]),
    section(say::KEPT, false, &[say::KEPT_1, say::KEPT_2, say::KEPT_3]),
];

/// The words of the trade, each with its one meaning.
static GLOSSARY: [(Words, Words); 66] = [
    (say::WORD_BACK, say::WORD_BACK_IS),
    (say::WORD_BAR, say::WORD_BAR_IS),
    (say::WORD_BARE_END, say::WORD_BARE_END_IS),
    (say::WORD_BELLY, say::WORD_BELLY_IS),
    (say::WORD_BRACE, say::WORD_BRACE_IS),
    (say::WORD_BREAKING_LOAD, say::WORD_BREAKING_LOAD_IS),
    (say::WORD_BRIDGE_PIN, say::WORD_BRIDGE_PIN_IS),
    (say::WORD_CENT, say::WORD_CENT_IS),
    (say::WORD_COMPASS, say::WORD_COMPASS_IS),
    (say::WORD_CORE, say::WORD_CORE_IS),
    (say::WORD_COVER, say::WORD_COVER_IS),
    (say::WORD_CREEP, say::WORD_CREEP_IS),
    (say::WORD_CUT_LENGTH, say::WORD_CUT_LENGTH_IS),
    (say::WORD_DAMPING, say::WORD_DAMPING_IS),
    (say::WORD_DISC, say::WORD_DISC_IS),
    (say::WORD_DRIFT, say::WORD_DRIFT_IS),
    (say::WORD_FEEL, say::WORD_FEEL_IS),
    (say::WORD_FINDING, say::WORD_FINDING_IS),
    (say::WORD_FRAME, say::WORD_FRAME_IS),
    (say::WORD_GAUGE, say::WORD_GAUGE_IS),
    (say::WORD_GLIDE, say::WORD_GLIDE_IS),
    (say::WORD_GROMMET, say::WORD_GROMMET_IS),
    (say::WORD_HARMONIC_CURVE, say::WORD_HARMONIC_CURVE_IS),
    (say::WORD_IMPEDANCE, say::WORD_IMPEDANCE_IS),
    (say::WORD_INHARMONICITY, say::WORD_INHARMONICITY_IS),
    (say::WORD_JUMP, say::WORD_JUMP_IS),
    (say::WORD_KNEE_BLOCK, say::WORD_KNEE_BLOCK_IS),
    (say::WORD_LEVER, say::WORD_LEVER_IS),
    (say::WORD_LIFT, say::WORD_LIFT_IS),
    (say::WORD_LINER, say::WORD_LINER_IS),
    (say::WORD_LOAD_SHARE, say::WORD_LOAD_SHARE_IS),
    (say::WORD_MAKE_UP, say::WORD_MAKE_UP_IS),
    (say::WORD_MARGIN, say::WORD_MARGIN_IS),
    (say::WORD_NATURAL_DISC, say::WORD_NATURAL_DISC_IS),
    (say::WORD_NECK, say::WORD_NECK_IS),
    (say::WORD_NOMINAL_PLACE, say::WORD_NOMINAL_PLACE_IS),
    (say::WORD_OPEN_TUNING, say::WORD_OPEN_TUNING_IS),
    (say::WORD_PARTIAL, say::WORD_PARTIAL_IS),
    (say::WORD_PILLAR, say::WORD_PILLAR_IS),
    (say::WORD_PLAIN, say::WORD_PLAIN_IS),
    (say::WORD_REGULATION, say::WORD_REGULATION_IS),
    (say::WORD_RIBBON, say::WORD_RIBBON_IS),
    (say::WORD_SHARP_DISC, say::WORD_SHARP_DISC_IS),
    (say::WORD_SHOULDER, say::WORD_SHOULDER_IS),
    (say::WORD_SIDE, say::WORD_SIDE_IS),
    (say::WORD_SOUNDBOARD, say::WORD_SOUNDBOARD_IS),
    (say::WORD_SOUNDBOX, say::WORD_SOUNDBOX_IS),
    (say::WORD_SPARE, say::WORD_SPARE_IS),
    (say::WORD_STOCK, say::WORD_STOCK_IS),
    (say::WORD_STRENGTH, say::WORD_STRENGTH_IS),
    (say::WORD_STRESS, say::WORD_STRESS_IS),
    (say::WORD_STRETCH, say::WORD_STRETCH_IS),
    (say::WORD_ANCHOR, say::WORD_ANCHOR_IS),
    (say::WORD_STRING_RIB, say::WORD_STRING_RIB_IS),
    (say::WORD_STRING_SPACING, say::WORD_STRING_SPACING_IS),
    (say::WORD_TAIL, say::WORD_TAIL_IS),
    (say::WORD_BAND, say::WORD_BAND_IS),
    (say::WORD_TARGET_CURVE, say::WORD_TARGET_CURVE_IS),
    (say::WORD_TEMPERAMENT, say::WORD_TEMPERAMENT_IS),
    (say::WORD_TENSION, say::WORD_TENSION_IS),
    (say::WORD_TOLERANCE, say::WORD_TOLERANCE_IS),
    (say::WORD_TOTAL_TENSION, say::WORD_TOTAL_TENSION_IS),
    (say::WORD_TUNING_PIN, say::WORD_TUNING_PIN_IS),
    (say::WORD_VIBRATING_LENGTH, say::WORD_VIBRATING_LENGTH_IS),
    (say::WORD_WINDING, say::WORD_WINDING_IS),
    (say::WORD_WOUND, say::WORD_WOUND_IS),
];

/// Whether a text has what is sought in it, however it is written.
fn has(text: &str, sought: &str) -> bool {
    sought.is_empty() || small(text).contains(sought)
}

impl Section {
    /// The lines that have what is sought; all of them where the head has it.
    fn found(&self, sought: &str) -> Vec<Words> {
        let all = has(self.head.said(), sought);
        self.lines.iter().copied().filter(|line| all || has(line.said(), sought)).collect()
    }
}

/// A word as the alphabet places it: neither case nor accents count.
fn alphabetical(word: Words) -> String {
    let plain = |sign| match sign {
        'à' | 'â' | 'ä' | 'Ä' => 'a',
        'é' | 'è' | 'ê' | 'É' | 'È' => 'e',
        'ô' | 'ö' | 'œ' | 'Ö' | 'Œ' => 'o',
        'ü' | 'û' | 'Ü' => 'u',
        other => other,
    };
    small(word.said()).chars().map(plain).collect()
}

/// The entries of the glossary that have what is sought, in the order of the alphabet.
fn entries(sought: &str) -> Vec<(Words, Words)> {
    let all = has(say::WORDS.said(), sought);
    let found =
        |row: &&(Words, Words)| all || has(row.0.said(), sought) || has(row.1.said(), sought);
    let mut rows: Vec<_> = GLOSSARY.iter().filter(found).copied().collect();
    sort(&mut rows, |one, other| alphabetical(one.0) > alphabetical(other.0));
    rows
}

/// Help.
#[component]
pub fn HelpWindow(store: Store) -> impl IntoView {
    let sought = RwSignal::new(String::new());
    let key = move || small(sought.get().trim());
    let count = move || {
        let key = key();
        let lines: usize = SECTIONS.iter().map(|section| section.found(&key).len()).sum();
        lines + entries(&key).len()
    };
    let said = move || match count() {
        0 => say::NOTHING_FOUND.into(),
        _ if key().is_empty() => String::new(),
        count => say::found(&count),
    };
    let sections = move || {
        let key = key();
        let shown = |(place, section): (usize, &'static Section)| {
            let lines = section.found(&key);
            let whole = lines.len() == section.lines.len();
            (!lines.is_empty())
                .then(|| part(&(place, lines.clone()), move || shown(section, &lines, whole)))
        };
        SECTIONS.iter().enumerate().filter_map(shown).collect()
    };
    let glossary = move || {
        entries(&key())
            .into_iter()
            .map(|(word, means)| {
                part(&word, move || {
                    view! { <div><dt>{word.said()}</dt><dd>{means.said()}</dd></div> }.into_any()
                })
            })
            .collect()
    };
    let again = move || {
        button("tool", "hints-again", "", hints::AGAIN.said(), move || {
            ask_again();
            store.hint(hints::AGAIN_DONE.said());
        })
    };
    let any_word = move || !entries(&key()).is_empty();
    view! {
        <Window title=say::TITLE.said().to_owned() wide=true on_close=move || store.window.set(None)>
            <div class="help">
                <label class="field">
                    <span>{say::FIND.said()}</span>
                    <input type="search" id="help-find" on:input=move |event| sought.set(event_target_value(&event))/>
                </label>
                {while_so(some_are_clear, again)}
                <p role="status" class="hint">{words(said)}</p>
                {list(sections)}
                {while_so(any_word, move || view! {
                    <section aria-labelledby="help-words">
                        <h3 id="help-words">{say::WORDS.said()}</h3>
                        <p class="hint">{say::WORDS_STANDING.said()}</p>
                        <dl class="glossary">{list(glossary)}</dl>
                    </section>
                }.into_any())}
            </div>
        </Window>
    }
}

fn shown(section: &'static Section, lines: &[Words], whole: bool) -> AnyView {
    let items: Vec<AnyView> =
        lines.iter().map(|line| view! { <li>{line.said()}</li> }.into_any()).collect();
    let drawing = (section.drawn && whole).then(drawing);
    let all = if section.steps && whole {
        view! { <ol>{items}</ol> }.into_any()
    } else {
        view! { <ul>{items}</ul> }.into_any()
    };
    view! { <section><h3>{section.head.said()}</h3>{drawing}{all}</section> }.into_any()
}

/// A harp from the side with what is measured on it.
fn drawing() -> AnyView {
    view! {
        <svg class="help-drawing" viewBox="0 0 320 270" role="img" aria-label=say::MEASURE_DRAWING.said() inner_html=picture()></svg>
    }
    .into_any()
}

/// Where the board is under a string, and the bridge pin and the tuning pin above it, from the top of the picture.
fn places(x: f64) -> (f64, f64, f64) {
    let board = 100.0 + 0.72 * (x - 40.0);
    let pin = 84.0 - 0.2 * (x - 40.0) + 14.0 * ((x - 40.0) / 210.0 * std::f64::consts::PI).sin();
    (board, pin, pin - 26.0)
}

fn picture() -> String {
    const STRINGS: [f64; 9] = [64.0, 84.0, 104.0, 124.0, 144.0, 164.0, 184.0, 204.0, 224.0];
    const MARKED: f64 = 184.0;
    let mut out = String::new();
    let (low, ..) = places(244.0);
    // The board, the pillar, and the neck through the pins.
    out += &format!("<path class=\"wood\" d=\"M40 100 L244 {low:.1} M256 {low:.1} L256 34\"/>");
    let line = |of: fn((f64, f64, f64)) -> f64| -> String {
        let point = |x: f64| format!("L{x} {:.1} ", of(places(x)));
        let through: String =
            [44.0].iter().chain(&STRINGS).chain(&[252.0]).map(|x| point(*x)).collect();
        through.replacen('L', "M", 1)
    };
    out +=
        &format!("<path class=\"neck\" d=\"{}\"/>", line(|(_, pin, tuning)| (pin + tuning) / 2.0));
    for x in STRINGS {
        let (board, pin, tuning) = places(x);
        let class = if x == MARKED { "string marked" } else { "string" };
        out += &format!(
            "<path class=\"{class}\" d=\"M{x} {board:.1} L{x} {pin:.1} L{:.1} {tuning:.1}\"/><circle cx=\"{x}\" cy=\"{pin:.1}\" r=\"2\"/><circle cx=\"{:.1}\" cy=\"{tuning:.1}\" r=\"3\"/>",
            x - 3.0,
            x - 3.0
        );
    }
    let (board, pin, tuning) = places(MARKED);
    let beside = MARKED + 10.0;
    let middle = (board + pin) / 2.0;
    let mark = |x: f64, y: f64, number: u8| {
        format!(
            "<circle class=\"mark\" cx=\"{x:.1}\" cy=\"{y:.1}\" r=\"9\"/><text x=\"{x:.1}\" y=\"{:.1}\">{number}</text>",
            y + 4.0
        )
    };
    out += &format!(
        "<path class=\"measure\" d=\"M{beside} {board:.1} L{beside} {pin:.1} M{:.1} {board:.1} h8 M{:.1} {pin:.1} h8 M{beside} {pin:.1} L{beside} {tuning:.1} M{:.1} {tuning:.1} h8\"/>",
        beside - 4.0,
        beside - 4.0,
        beside - 4.0
    );
    out += &format!(
        "<path class=\"measure\" d=\"M{:.1} {:.1} h8 m6 0 h8\"/>",
        MARKED - 11.0,
        middle + 30.0
    );
    // The angle at the board, to the side of the treble.
    let (x, y) = (124.0, places(124.0).0);
    out += &format!(
        "<path class=\"measure\" d=\"M{:.1} {:.1} A26 26 0 0 1 {x} {:.1}\"/>",
        x - 21.1,
        y - 15.2,
        y - 26.0
    );
    out += &mark(beside + 14.0, middle, 1);
    out += &mark(MARKED - 24.0, middle + 30.0, 2);
    out += &mark(beside + 14.0, (pin + tuning) / 2.0, 3);
    out += &mark(x - 20.0, y - 34.0, 4);
    out
}
