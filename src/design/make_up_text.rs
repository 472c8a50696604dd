//! A make-up as one line of text, for cells, the CSV column `make_up` and the clipboard.
//!
//! - plain: `nylon 0.81`, or `nylon` where no diameter is given yet;
//! - wound: the core, then the layers from the inside out: `steel 0.45 + silk 0.10 + bronze 0.25`;
//!   ribbon by thickness and width: `bronze 0.15 x 0.60`; turns that do not touch:
//!   `silk 0.10 at 90 %`; bare core ends: `, bare 12 board 15 pin`;
//! - weighed: `weighed 6.75 g/m, core steel 0.50, gauge 1.10, breaks 480 N`, all but the first
//!   optional.
//!
//! A size keeps the unit it was typed with. A text that would read as something else stands in square
//! brackets, `]` doubled: `[odd + name] [0.5]`. So [`read`] gives back exactly what [`write()`] was
//! given, but for more than [`MOST_LAYERS`] layers, a packing outside [`PACKING_PERCENT`], or texts
//! beyond [`LONGEST`] in all.

use thiserror::Error;

use super::decimal::decimal;
use super::document::{Bare, LayerSpec, MOST_LAYERS, MakeUpSpec, WeighedSpec};
use super::make_up_said::material as material_said;
use super::pieces::{CLAUSES, Piece, pieces};
use super::typed::{cut, gauge, is_size};
use crate::engine::material::key_of;
use crate::words::{Words, typed as words};

/// The longest text that is read, in bytes.
pub const LONGEST: usize = 20_000;
/// The lowest and the highest packing of a layer, in per cent.
pub const PACKING_PERCENT: (f64, f64) = (0.0, 1_000.0);
/// How many words the name of a known material, and a size, may have at most.
const WORDS: usize = 8;

/// Why a text is no make-up.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum MakeUpTextError {
    /// Longer than any make-up.
    #[error("{}", words::make_up_long(&LONGEST))]
    Long,
    /// Brackets that do not match, or more than two of them.
    #[error("{}", words::make_up_brackets(.got))]
    Brackets { got: String },
    /// Ribbon or packing where only a round core can be.
    #[error("{}", words::make_up_core(.got))]
    Core { got: String },
    /// Nothing after a plus sign.
    #[error("{}", words::MAKE_UP_NO_LAYER)]
    NoLayer,
    /// More layers than a string may have.
    #[error("{}", words::make_up_layers(.got))]
    Layers { got: usize },
    /// No number that can be meant after `at`.
    #[error("{}", words::make_up_packing(.got))]
    Packing { got: String },
    /// Bare ends without saying which.
    #[error("{}", words::make_up_bare(.got))]
    Bare { got: String },
    /// What only a weighed string has.
    #[error("{}", words::make_up_not_weighed(.got))]
    NotWeighed { got: &'static str },
    /// The same said twice.
    #[error("{}", words::make_up_twice(.got))]
    Twice { got: &'static str },
}

/// The make-up in one line.
pub fn write(make_up: &MakeUpSpec) -> String {
    let (text, _) = written(make_up);
    text
}

/// The make-up in one line, and whether its texts stand in brackets.
pub(super) fn written(make_up: &MakeUpSpec) -> (String, bool) {
    let text = compose(make_up, false, Words::english);
    match read(&text).as_ref() == Ok(make_up) {
        true => (text, false),
        false => (compose(make_up, true, Words::english), true),
    }
}

/// The make-up for a narrow cell: the materials without the sizes, `steel + silk + bronze`.
pub fn short(make_up: &MakeUpSpec) -> String {
    let name = |material: &str| {
        let text = material.trim();
        key_of(text).map_or_else(|| text.to_owned(), material_said)
    };
    let layers = make_up.layers.iter().map(|layer| name(&layer.material));
    let parts: Vec<String> = [name(&make_up.material)].into_iter().chain(layers).collect();
    let parts = parts.join(" + ");
    match make_up.weighed {
        Some(_) => format!("{} {parts}", words::WORD_WEIGHED).trim().to_owned(),
        None => parts,
    }
}

/// Reads what [`write()`] writes, and what people type.
///
/// # Errors
///
/// When the parts cannot be told apart. Whether a material exists and a size can be read is not
/// asked: the parts keep what was typed.
pub fn read(text: &str) -> Result<MakeUpSpec, MakeUpTextError> {
    if text.len() > LONGEST {
        return Err(MakeUpTextError::Long);
    }
    let brackets = |rest| MakeUpTextError::Brackets { got: format!("[{}", cut(rest)) };
    let pieces = pieces(text).map_err(brackets)?;
    let mut clauses = pieces.split(|piece| *piece == Piece::Comma);
    let mut make_up = MakeUpSpec::default();
    match clauses.next().unwrap_or_default() {
        [first, mass @ ..] if first.is("weighed") => {
            let g_per_m = whole(mass)?;
            make_up.weighed = Some(WeighedSpec { g_per_m, ..WeighedSpec::default() });
        }
        chain => read_chain(chain, &mut make_up)?,
    }
    let mut seen = Vec::new();
    for clause in clauses {
        let Some((name, rest)) = clause.split_first() else { continue };
        let Some(name) = CLAUSES.into_iter().find(|known| name.is(known)) else { continue };
        if seen.contains(&name) {
            return Err(MakeUpTextError::Twice { got: name });
        }
        seen.push(name);
        read_clause(name, rest, &mut make_up)?;
    }
    Ok(make_up)
}

fn read_clause(
    name: &'static str,
    rest: &[Piece],
    make_up: &mut MakeUpSpec,
) -> Result<(), MakeUpTextError> {
    if name == "bare" {
        make_up.bare = read_bare(rest)?;
        return Ok(());
    }
    let Some(weighed) = &mut make_up.weighed else {
        return Err(MakeUpTextError::NotWeighed { got: name });
    };
    match name {
        "gauge" => weighed.gauge = whole(rest)?,
        "breaks" => weighed.breaks_n = whole(rest)?,
        _ => read_chain(rest, make_up)?,
    }
    Ok(())
}

/// `steel 0.45 + silk 0.10 + bronze 0.25`
fn read_chain(pieces: &[Piece], make_up: &mut MakeUpSpec) -> Result<(), MakeUpTextError> {
    let mut parts = pieces.split(|piece| *piece == Piece::Plus);
    let core = parts.next().unwrap_or_default();
    if core.iter().any(|piece| piece.is("x") || piece.is("at")) {
        return Err(MakeUpTextError::Core { got: shown(core) });
    }
    (make_up.material, make_up.diameter) = read_part(core)?;
    make_up.layers = parts.map(read_layer).collect::<Result<_, _>>()?;
    match make_up.layers.len() {
        got if got > MOST_LAYERS => Err(MakeUpTextError::Layers { got }),
        _ => Ok(()),
    }
}

/// `bronze 0.15 x 0.60 at 90 %`
fn read_layer(pieces: &[Piece]) -> Result<LayerSpec, MakeUpTextError> {
    if pieces.is_empty() {
        return Err(MakeUpTextError::NoLayer);
    }
    let (pieces, packing) = cut_at(pieces, "at");
    let (pieces, width) = cut_at(pieces, "x");
    let (material, size) = read_part(pieces)?;
    let width = width.map(whole).transpose()?.unwrap_or_default();
    let packing_percent = packing.map_or(Ok(100.0), |pieces| {
        let got = shown(pieces);
        let number = got.trim_end_matches('%').trim_end().replace(',', ".");
        let (least, most) = PACKING_PERCENT;
        // A share too small to be meant would be written with more digits than are read.
        let is_meant = |percent: &f64| *percent == 0.0 || *percent > 1e-6;
        let number = decimal(&number).filter(|percent| (least..=most).contains(percent));
        let number = number.filter(is_meant);
        number.ok_or(MakeUpTextError::Packing { got: cut(&got) })
    })?;
    Ok(LayerSpec { material, size, width, packing_percent })
}

/// What stands before and after a word, where it is there.
fn cut_at<'a>(pieces: &'a [Piece], word: &str) -> (&'a [Piece], Option<&'a [Piece]>) {
    match pieces.iter().rposition(|piece| piece.is(word)) {
        Some(place) => (&pieces[..place], Some(&pieces[place + 1..])),
        None => (pieces, None),
    }
}

/// `12 board 15 pin`
fn read_bare(pieces: &[Piece]) -> Result<Bare, MakeUpTextError> {
    let mut bare = Bare::default();
    let mut rest = pieces;
    while !rest.is_empty() {
        let end = rest.iter().position(|piece| piece.is("board") || piece.is("pin"));
        let end = end.ok_or_else(|| MakeUpTextError::Bare { got: shown(pieces) })?;
        let (at, twice) = match &rest[end] {
            piece if piece.is("board") => (&mut bare.board, "board"),
            _ => (&mut bare.pin, "pin"),
        };
        if !at.is_empty() {
            return Err(MakeUpTextError::Twice { got: twice });
        }
        *at = whole(&rest[..end])?;
        rest = &rest[end + 1..];
    }
    Ok(bare)
}

/// A material and a size: `brass 70/30 0.5`, `[odd name] 0.5`.
fn read_part(pieces: &[Piece]) -> Result<(String, String), MakeUpTextError> {
    match pieces {
        [Piece::Held(material), size @ ..] => Ok((material.clone(), whole(size)?)),
        [material @ .., Piece::Held(size)] => Ok((whole(material)?, size.clone())),
        _ if pieces.iter().any(|piece| matches!(piece, Piece::Held(_))) => {
            Err(MakeUpTextError::Brackets { got: shown(pieces) })
        }
        _ => Ok(split(&pieces.iter().map(Piece::text).collect::<Vec<_>>())),
    }
}

/// Parts the words of a material from those of its size. A known material takes as many words as
/// it can, if nothing or a number follows; of an unknown one the size is the longest end that reads
/// as a gauge that can be made, else as any gauge, and without such an end there is no size.
fn split(words: &[&str]) -> (String, String) {
    let at = |place: usize| (words[..place].join(" "), words[place..].join(" "));
    let known = (1..=words.len().min(WORDS)).rev().map(at).find(|(material, size)| {
        (size.is_empty() || size.starts_with(begins_number)) && key_of(material).is_some()
    });
    let ends = || (words.len().saturating_sub(WORDS)..words.len()).map(at);
    known
        .or_else(|| ends().find(|(_, size)| gauge(size).is_ok()))
        .or_else(|| ends().find(|(_, size)| is_size(size)))
        .unwrap_or_else(|| at(words.len()))
}

fn begins_number(c: char) -> bool {
    c.is_numeric() || matches!(c, '.' | ',' | '-' | '−')
}

/// A text that is one field: its words, or what the brackets hold.
fn whole(pieces: &[Piece]) -> Result<String, MakeUpTextError> {
    let held = pieces.iter().any(|piece| matches!(piece, Piece::Held(_)));
    if (held && pieces.len() > 1) || pieces.contains(&Piece::Plus) {
        return Err(MakeUpTextError::Brackets { got: shown(pieces) });
    }
    Ok(pieces.iter().map(Piece::text).collect::<Vec<_>>().join(" "))
}

fn shown(pieces: &[Piece]) -> String {
    cut(&pieces.iter().map(Piece::text).collect::<Vec<_>>().join(" "))
}

/// The line, with every text in brackets or none, and its words as `say` has them.
pub(super) fn compose(make_up: &MakeUpSpec, held: bool, say: fn(Words) -> &'static str) -> String {
    let field = |text: &str| match held {
        true => format!("[{}]", text.replace(']', "]]")),
        false => text.to_owned(),
    };
    let part = |material: &str, size: &str| match (held, size.is_empty()) {
        (false, true) => material.to_owned(),
        _ => format!("{} {}", field(material), field(size)),
    };
    let mut chain = part(&make_up.material, &make_up.diameter);
    for layer in &make_up.layers {
        chain.push_str(" + ");
        chain.push_str(&part(&layer.material, &layer.size));
        if layer.is_ribbon() {
            chain.push_str(&format!(" x {}", field(&layer.width)));
        }
        if layer.packing_percent != 100.0 {
            let percent = layer.packing_percent;
            chain.push_str(&format!(" {} {percent} %", say(words::WORD_AT)));
        }
    }
    let mut line = match &make_up.weighed {
        None => chain,
        Some(weighed) => compose_weighed(weighed, &chain, field, say),
    };
    if !make_up.bare.is_empty() {
        line.push_str(&format!(", {}", say(words::WORD_BARE)));
        let (board, pin) = (&make_up.bare.board, &make_up.bare.pin);
        for (text, end) in [(board, words::WORD_BOARD), (pin, words::WORD_PIN)] {
            if !text.is_empty() {
                line.push_str(&format!(" {} {}", field(text), say(end)));
            }
        }
    }
    line.trim().to_owned()
}

fn compose_weighed(
    weighed: &WeighedSpec,
    chain: &str,
    field: impl Fn(&str) -> String,
    say: fn(Words) -> &'static str,
) -> String {
    let mass = field(&weighed.g_per_m);
    let mut line = format!("{} {mass}", say(words::WORD_WEIGHED)).trim_end().to_owned();
    if !chain.trim().is_empty() {
        line.push_str(&format!(", {} {chain}", say(words::WORD_CORE)));
    }
    let (gauge, breaks) = (&weighed.gauge, &weighed.breaks_n);
    for (name, text) in [(words::WORD_GAUGE, gauge), (words::WORD_BREAKS, breaks)] {
        if !text.is_empty() {
            line.push_str(&format!(", {} {}", say(name), field(text)));
        }
    }
    line
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plain(material: &str, diameter: &str) -> MakeUpSpec {
        let (material, diameter) = (material.to_owned(), diameter.to_owned());
        MakeUpSpec { material, diameter, ..MakeUpSpec::default() }
    }

    fn layer(material: &str, size: &str, width: &str, packing_percent: f64) -> LayerSpec {
        let [material, size, width] = [material, size, width].map(str::to_owned);
        LayerSpec { material, size, width, packing_percent }
    }

    /// Writes as `text` and reads back.
    #[track_caller]
    fn check(make_up: &MakeUpSpec, text: &str) {
        assert_eq!(write(make_up), text);
        assert_eq!(read(text).as_ref(), Ok(make_up), "{text}");
    }

    #[test]
    fn a_plain_string_is_its_material_and_its_gauge() {
        for (material, diameter, text) in [
            ("nylon", "0.81", "nylon 0.81"),
            ("nylon", "", "nylon"),
            ("", "0.81", "0.81"),
            ("", "", ""),
            ("Nylon", ".032\"", "Nylon .032\""),
            ("nylon", "32 thou", "nylon 32 thou"),
            ("nylon", "1/32 in", "nylon 1/32 in"),
            ("nylon", "0,81", "nylon 0,81"),
            ("nylon", "0.8l", "nylon 0.8l"),
            ("nylon", "32", "nylon 32"),
            ("brass 70/30", "0.5", "brass 70/30 0.5"),
            ("brass 70/30", "", "brass 70/30"),
            ("brass", "1/32\"", "brass 1/32\""),
            ("red brass", "0.33", "red brass 0.33"),
            ("red brass", "", "red brass"),
            ("Copper, soft wire", "0.4", "Copper, soft wire 0.4"),
            ("silver plated copper", "0.4", "silver plated copper 0.4"),
            ("mithril", "0.5", "mithril 0.5"),
            ("mithril", "", "mithril"),
            ("alloy 260", "0.5", "alloy 260 0.5"),
            ("own 2", "1/32 in", "own 2 1/32 in"),
            ("alloy 260", "", "[alloy 260] []"),
            ("odd + name", "0.5", "[odd + name] [0.5]"),
            ("two  blanks", "0.5", "[two  blanks] [0.5]"),
            ("weighed", "", "[weighed] []"),
            ("a]b[", " 1", "[a]]b[] [ 1]"),
        ] {
            check(&plain(material, diameter), text);
        }
    }

    #[test]
    fn a_wound_string_is_its_core_and_its_layers() {
        let mut wound = plain("steel", "0.45");
        wound.layers = vec![layer("silk", "0.10", "", 100.0), layer("bronze", "0.25", "", 100.0)];
        check(&wound, "steel 0.45 + silk 0.10 + bronze 0.25");
        wound.layers = vec![layer("silk", "0.10", "", 90.0), layer("bronze", "0.15", "0.60", 97.5)];
        check(&wound, "steel 0.45 + silk 0.10 at 90 % + bronze 0.15 x 0.60 at 97.5 %");
        wound.bare = Bare { board: "12".to_owned(), pin: "1/2 in".to_owned() };
        wound.layers = vec![layer("brass 70/30", "6 thou", ".024\"", 100.0)];
        check(&wound, "steel 0.45 + brass 70/30 6 thou x .024\", bare 12 board 1/2 in pin");
        wound.bare.board.clear();
        wound.layers = vec![layer("", "", "", 100.0)];
        check(&wound, "[steel] [0.45] + [] [], bare [1/2 in] pin");
    }

    #[test]
    fn a_weighed_string_is_what_was_measured() {
        let mut weighed = plain("steel", "0.50");
        weighed.weighed = Some(WeighedSpec {
            g_per_m: "6.75 g/m".to_owned(),
            gauge: "1.10".to_owned(),
            breaks_n: "480 N".to_owned(),
        });
        check(&weighed, "weighed 6.75 g/m, core steel 0.50, gauge 1.10, breaks 480 N");
        weighed.layers = vec![layer("bronze", "0.3", "", 100.0)];
        weighed.weighed =
            Some(WeighedSpec { g_per_m: "6,75".to_owned(), ..WeighedSpec::default() });
        check(&weighed, "weighed 6,75, core steel 0.50 + bronze 0.3");
        let bare = MakeUpSpec { weighed: Some(WeighedSpec::default()), ..MakeUpSpec::default() };
        check(&bare, "weighed");
    }

    #[test]
    fn typing_is_read_with_some_freedom() {
        for (typed, same) in [
            ("  nylon   0.81 ", "nylon 0.81"),
            ("steel 0.45+silk 0.10+bronze 0.25", "steel 0.45 + silk 0.10 + bronze 0.25"),
            ("steel 0.45 + bronze 0.15x0.60", "steel 0.45 + bronze 0.15 x 0.60"),
            ("steel 0.45 + bronze 0.15 x0.60", "steel 0.45 + bronze 0.15 x 0.60"),
            ("steel 0.45 + bronze 0.15×0.60", "steel 0.45 + bronze 0.15 x 0.60"),
            ("steel 0.45 + bronze .006\" X .024\"", "steel 0.45 + bronze .006\" x .024\""),
            ("steel 0.45 + silk 0.1 AT 90%", "steel 0.45 + silk 0.1 at 90 %"),
            ("steel 0.45 + silk 0.1 at 90,5", "steel 0.45 + silk 0.1 at 90.5 %"),
            (
                "steel 0.45 + silk 0.1,bare 15 pin 12 board",
                "steel 0.45 + silk 0.1, bare 12 board 15 pin",
            ),
            (
                "Weighed 6.75 g/m, breaks 480 N, core steel 0.5",
                "weighed 6.75 g/m, core steel 0.5, breaks 480 N",
            ),
            ("steel 0.45 + wax 0.1", "steel 0.45 + wax 0.1"),
            ("xenon 0.45", "xenon 0.45"),
        ] {
            assert_eq!(read(typed).map(|make_up| write(&make_up)).as_deref(), Ok(same), "{typed}");
        }
    }

    #[test]
    fn what_cannot_be_taken_apart_says_why() {
        let says = |text: &str| read(text).unwrap_err();
        assert_eq!(says("steel 0.45 +"), MakeUpTextError::NoLayer);
        assert_eq!(says("a + b + c + d + e"), MakeUpTextError::Layers { got: 4 });
        assert!(matches!(says("[steel 0.45"), MakeUpTextError::Brackets { .. }));
        assert!(matches!(says("[a] b [c]"), MakeUpTextError::Brackets { .. }));
        assert!(matches!(says("a [b] c"), MakeUpTextError::Brackets { .. }));
        assert!(matches!(says("bronze 0.15 x 0.60"), MakeUpTextError::Core { .. }));
        for packing in ["inf", "NaN", "much", "1e999", "1e308", "1001", "-1", ""] {
            let text = format!("steel 0.45 + silk 0.1 at {packing} %");
            assert!(matches!(says(&text), MakeUpTextError::Packing { .. }), "{text}");
        }
        assert!(matches!(says("steel 0.45 + silk 0.1, bare 12"), MakeUpTextError::Bare { .. }));
        assert_eq!(says("steel, bare 1 pin 2 pin"), MakeUpTextError::Twice { got: "pin" });
        assert_eq!(says("steel, bare 1 pin, bare 2 pin"), MakeUpTextError::Twice { got: "bare" });
        assert_eq!(says("steel, gauge 1"), MakeUpTextError::NotWeighed { got: "gauge" });
        assert_eq!(says(&"a ".repeat(10_001)), MakeUpTextError::Long);
    }

    #[test]
    fn a_narrow_cell_shows_the_materials_only() {
        let short_of = |text: &str| short(&read(text).unwrap());
        assert_eq!(short_of("Nylon monofilament 0.81"), "nylon");
        assert_eq!(short_of("mithril 0.81"), "mithril");
        assert_eq!(short_of("music wire 0.45 + silk 0.1 + bronze 0.25"), "steel + silk + bronze");
        assert_eq!(short_of("weighed 6.75, core steel 0.5"), "weighed steel");
        assert_eq!(short_of("weighed 6.75"), "weighed");
        assert_eq!(short_of(""), "");
    }

    /// Every mix of these texts in the fields of plain, wound and weighed strings.
    #[test]
    fn whatever_was_typed_comes_back() {
        let texts = [
            "",
            "nylon",
            "brass 70/30",
            "0.81",
            "32 thou",
            ".032\"",
            "alloy 3",
            "a + b",
            "x",
            "at",
            "[",
            "]",
            ", bare 1 pin",
            "board",
            "pin",
            "weighed",
            "0.8l",
            "½ in",
            "\u{2009}",
            "é, core",
            "1x2",
            "core",
            "90 %",
        ];
        for (i, material) in texts.iter().enumerate() {
            for (j, size) in texts.iter().enumerate() {
                let third = texts[(7 * i + 3 * j) % texts.len()];
                let fourth = texts[(5 * i + 11 * j + 1) % texts.len()];
                let string = plain(material, size);
                let mut wound = plain(third, fourth);
                wound.layers =
                    vec![layer(material, size, third, 12.3), layer(size, fourth, "", 100.0)];
                let mut weighed = string.clone();
                let [g_per_m, gauge, breaks_n] =
                    [third, fourth, size].map(|text| (*text).to_owned());
                weighed.weighed = Some(WeighedSpec { g_per_m, gauge, breaks_n });
                weighed.bare = Bare { board: third.to_owned(), pin: (*material).to_owned() };
                for make_up in [string, wound, weighed] {
                    let text = write(&make_up);
                    assert_eq!(read(&text).as_ref(), Ok(&make_up), "{text}");
                }
            }
        }
    }
}
