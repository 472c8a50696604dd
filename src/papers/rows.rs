//! The strings of a design as rows of words, one cell a column.

use crate::design::decimal::decimal;
use crate::design::display;
use crate::design::document::{
    Design, GaugeUnit, LayerSpec, LengthUnit, MakeUpSpec, MaterialSpec, StringSpec,
};
use crate::design::letters::small;
use crate::design::make_up_said;
use crate::design::resolve;
use crate::design::typed::{self, with_unit};
use crate::engine::analysis::{Analysis, StringFigures};
use crate::engine::cut::{Allowance, cut_length};
use crate::engine::material::said;
use crate::engine::material::{Material, built_in, key_of};
use crate::engine::pitch::{Letter, Note};
use crate::engine::units::Length;

use super::measure::clean;
use super::sheet::{Column, Mark};
use super::words::DASH;
use crate::words::{Words, papers as say, semicolon, signed};

/// One string in words, not yet broken into lines.
#[derive(Clone, Debug, PartialEq)]
pub struct StringWords {
    pub mark: Option<Mark>,
    pub harp_octave: Option<i8>,
    pub cells: Vec<String>,
}

/// The strings in words, and what explains the words.
#[derive(Clone, Debug, PartialEq)]
pub struct Strings {
    pub rows: Vec<StringWords>,
    /// Full names of the materials and the signs used in make-ups; empty where none is needed.
    pub legend: String,
}

/// Place of the note among the columns.
pub const NOTE: usize = 2;
/// Place of the make-up among the columns.
pub const MAKE_UP: usize = 3;

/// The heads of the table, from left to right.
pub fn columns(unit: LengthUnit) -> Vec<Column> {
    let figures = |top: Words, bottom| Column { head: [top.said(), bottom], figures: true };
    let words = |top: Words, bottom| Column { head: [top.said(), bottom], figures: false };
    let mut columns = vec![
        figures(say::HEAD_NUMBER, ""),
        words(say::HEAD_OCTAVE, ""),
        words(say::HEAD_NOTE, ""),
        words(say::HEAD_MAKE_UP, say::HEAD_CORE_FIRST.said()),
        figures(say::HEAD_GAUGE, "mm"),
        figures(say::HEAD_GAUGE, "in"),
        figures(say::HEAD_VIBRATING, "mm"),
    ];
    match unit {
        LengthUnit::Mm => columns.push(figures(say::HEAD_CUT_TO, "mm")),
        LengthUnit::Inch => {
            columns.extend([figures(say::HEAD_VIBRATING, "in"), figures(say::HEAD_CUT_TO, "in")]);
        }
    }
    columns.push(words(say::HEAD_ORDER, say::HEAD_CODE.said()));
    columns
}

/// Every string of a design in words. A string that the analysis lacks is left out.
pub fn strings(design: &Design, analysis: &Analysis) -> Strings {
    let names = Names { own: &design.materials, built_in: built_in() };
    // Allowances that cannot be used give no length to cut: the usual ones might be too short.
    let allowance = resolve::allowance(design);
    let inches = design.units.length == LengthUnit::Inch;
    let pairs = design.strings.iter().zip(&analysis.strings);
    let one = |(spec, figures)| string(spec, figures, &names, allowance.as_ref(), inches);
    let rows = pairs.map(one).collect();
    let taken = design.strings.len().min(analysis.strings.len());
    Strings { rows, legend: legend(&design.strings[..taken], &names) }
}

/// Materials whose row shows less than the full name, then the signs of open turns and bare ends.
fn legend(strings: &[StringSpec], names: &Names<'_>) -> String {
    let mut materials: Vec<String> = Vec::new();
    let mut note = |typed: &str, wound: bool| {
        let name = names.of(typed);
        let shown = if wound { &name.key } else { &name.short };
        // The short name of a plain string begins the full one.
        let words = if wound { say::named(shown, &name.full) } else { name.full.clone() };
        if small(shown) != small(&name.full) && !materials.contains(&words) {
            materials.push(words);
        }
    };
    for string in strings {
        note(&string.make_up.material, is_composed(&string.make_up));
        string.make_up.layers.iter().for_each(|layer| note(&layer.material, true));
    }
    let make_ups = || strings.iter().map(|string| &string.make_up);
    let mut parts = Vec::new();
    if !materials.is_empty() {
        parts.push(format!("{}.", materials.join(semicolon())));
    }
    if make_ups().flat_map(|m| &m.layers).any(|layer| layer.packing_percent < 100.0) {
        parts.push(say::COVERED.into());
    }
    if make_ups().any(|make_up| make_up.is_wound() && !make_up.bare.is_empty()) {
        parts.push(say::BARE.into());
    }
    parts.join(" ")
}

/// Whether the make-up needs more words than a material.
fn is_composed(make_up: &MakeUpSpec) -> bool {
    make_up.is_wound() || make_up.weighed.is_some()
}

fn string(
    spec: &StringSpec,
    figures: &StringFigures,
    names: &Names<'_>,
    allowance: Option<&Allowance>,
    inches: bool,
) -> StringWords {
    let (length, gauge) = (figures.length.ok(), figures.gauge.ok());
    // A gauge of which nothing follows, as the material is not known, is printed as it was typed.
    let is_plain = !is_composed(&spec.make_up);
    let typed_gauge = || typed::gauge(&spec.make_up.diameter).ok().filter(|_| is_plain);
    let shown = gauge.or_else(typed_gauge);
    let as_typed = |cell: String, text: &str| {
        let is_nothing = decimal(&text.replace(',', ".")).is_some_and(|number| number <= 0.0);
        if cell == DASH && !is_nothing { or_dash(clean(text)) } else { cell }
    };
    let plain_text = if is_plain { spec.make_up.diameter.as_str() } else { "" };
    let cut = length.zip(gauge).zip(allowance).map(|((l, g), a)| cut_length(l, g, a));
    let mut cells = vec![
        figures.number.to_string(),
        figures.note.map_or_else(|| DASH.to_owned(), harp_name),
        note_name(spec, figures),
        make_up(spec, figures, names),
        as_typed(known(shown.map(Length::to_mm), 2), plain_text),
        shown.map_or_else(|| DASH.to_owned(), |gauge| display::gauge(gauge, GaugeUnit::Thou)),
        as_typed(known(length.map(Length::to_mm), 1), &spec.length),
    ];
    if inches {
        cells.push(known(length.map(Length::to_inch), 2));
        // Rounded up: a string may be cut too long, never too short.
        cells.push(known(cut.map(|cut| (cut.to_inch() * 2.0).ceil() / 2.0), 1));
    } else {
        cells.push(known(cut.map(|cut| cut.to_mm().ceil()), 0));
    }
    cells.push(or_dash(clean(&spec.order_code)));
    let (mark, harp_octave) = (figures.note.and_then(mark), figures.note.map(Note::harp_octave));
    StringWords { mark, harp_octave, cells }
}

const fn mark(note: Note) -> Option<Mark> {
    match note.letter() {
        Letter::C => Some(Mark::C),
        Letter::F => Some(Mark::F),
        _ => None,
    }
}

/// As a harpist calls the string: `4C`, whatever it is tuned to.
fn harp_name(note: Note) -> String {
    format!("{}{}", note.harp_octave(), note.letter().printed())
}

/// The scientific name, or the frequency where there is no note but a pitch.
fn note_name(spec: &StringSpec, figures: &StringFigures) -> String {
    match (figures.note, figures.frequency) {
        (Some(note), _) => note.printed(),
        (None, _) => or_dash(clean(&spec.note)),
    }
}

/// What the string is made of, written as the chart does: of a wound string the layers from the core
/// outward, of a weighed one its mass and, where it is known, the core.
fn make_up(spec: &StringSpec, figures: &StringFigures, names: &Names<'_>) -> String {
    let make_up = &spec.make_up;
    let name = names.of(&make_up.material);
    if !is_composed(make_up) {
        return or_dash(name.short);
    }
    let typed = || size(&make_up.diameter);
    let core = figures.core.map_or_else(|_| typed(), |core| size(&fixed(core.to_mm(), 3)));
    let mut words = format!("{} {core}", name.key).trim().to_owned();
    for layer in &make_up.layers {
        words.push_str(&format!(" + {}", layer_words(layer, names)));
    }
    if let Some(weighed) = &make_up.weighed {
        words = weighed_words(&clean(&weighed.g_per_m), &words);
    }
    if make_up.is_wound() && !make_up.bare.is_empty() {
        let (board, pin) = (clean(&make_up.bare.board), clean(&make_up.bare.pin));
        words = match (board.is_empty(), pin.is_empty()) {
            (true, true) => words,
            (false, true) => say::bare_board(&board, &words),
            (true, false) => say::bare_pin(&pin, &words),
            (false, false) => say::bare_both(&board, &pin, &words),
        };
    }
    words
}

/// `weighed, 3.4 g/m, core steel 0.50`; mass and core only where they are known.
fn weighed_words(g_per_m: &str, core: &str) -> String {
    let mass = with_unit(g_per_m, "g/m");
    match (g_per_m.is_empty(), core.is_empty()) {
        (true, true) => say::WEIGHED.into(),
        (false, true) => say::weighed_mass(&mass),
        (true, false) => say::weighed_core(&core),
        (false, false) => say::weighed_mass_core(&core, &mass),
    }
}

fn layer_words(layer: &LayerSpec, names: &Names<'_>) -> String {
    let mut words = format!("{} {}", names.of(&layer.material).key, size(&layer.size));
    if layer.is_ribbon() {
        words.push_str(&format!(" x {}", size(&layer.width)));
    }
    if layer.packing_percent < 100.0 {
        words = say::packed(&fixed(layer.packing_percent, 0), &words);
    }
    words
}

/// A size as typed; a bare number, which is in millimetres, with two decimals or three.
fn size(text: &str) -> String {
    let typed = clean(text);
    match decimal(&typed.replace(',', ".")) {
        Some(mm) if mm.is_finite() && mm.abs() < 1_000.0 => {
            let (two, three) = (fixed(mm, 2), fixed(mm, 3));
            if three.ends_with('0') { two } else { three }
        }
        _ => typed,
    }
}

fn or_dash(text: String) -> String {
    if text.is_empty() { DASH.to_owned() } else { text }
}

fn known(number: Option<f64>, decimals: usize) -> String {
    number.filter(|number| number.is_finite()).map_or(DASH.to_owned(), |n| fixed(n, decimals))
}

fn fixed(number: f64, decimals: usize) -> String {
    signed(&format!("{number:.decimals$}"))
}

/// The materials that a design can mean.
struct Names<'a> {
    own: &'a [MaterialSpec],
    built_in: Vec<Material>,
}

/// How a material may be called.
struct Name {
    /// Shortest, for wound strings.
    key: String,
    /// The name up to its first comma or bracket.
    short: String,
    full: String,
}

impl Name {
    fn new(key: &str, name: &str) -> Self {
        let full = clean(said(name));
        let end = full.find([',', '(']).filter(|end| *end > 0).unwrap_or(full.len());
        Self {
            key: clean(&make_up_said::material(key)),
            short: full[..end].trim_end().to_owned(),
            full,
        }
    }
}

impl Names<'_> {
    /// The material that a cell means; as typed where it means none.
    fn of(&self, typed: &str) -> Name {
        let typed = clean(typed);
        let wanted = small(&typed);
        let same = |text: &str| small(text.trim()) == wanted;
        if let Some(own) = self.own.iter().find(|own| same(&own.key) || same(&own.name)) {
            return Name::new(&own.key, &own.name);
        }
        let Some(key) = key_of(&typed) else { return Name::new(&typed, &typed) };
        if let Some(own) = self.own.iter().find(|own| own.key == key) {
            return Name::new(&own.key, &own.name);
        }
        let built_in = self.built_in.iter().find(|material| material.key == key);
        built_in.map_or_else(|| Name::new(&typed, &typed), |m| Name::new(&m.key, &m.name))
    }
}
