//! Reading what a maker typed: lengths, gauges, pitches, masses and loads, with or without a unit.
//!
//! A bare number is in millimetres, newtons or grams per metre. A decimal comma, fractions (`24 1/8`,
//! `24-1/8`, `24⅛`), feet with inches, the signs of print and thin spaces between thousands are
//! read. What cannot be used says why, and where another unit would make sense of it, which.

use super::document::GaugeUnit;
use super::measure::{GAUGES, LENGTHS, MASSES_G_PER_M, Measure};
use super::number::{is_bare, plain, take_number};
pub use super::unusable::{TypedError, cut};
use crate::engine::construction::{DIAMETER_MM, WEIGHED_G_PER_M};
use crate::engine::pitch::Note;
use crate::engine::units::{Force, Frequency, Length, LinearDensity};
use crate::words::{Words, typed as say};

/// The shortest and the longest vibrating length, in millimetres.
pub const LENGTH_MM: (f64, f64) = (20.0, 3_000.0);
/// The shortest and the longest bare core end of a wound string, in millimetres.
pub const BARE_END_MM: (f64, f64) = (0.0, 300.0);
/// The lowest and the highest pitch given as a frequency, in hertz.
pub const FREQUENCY_HZ: (f64, f64) = (10.0, 8_000.0);
/// The least and the greatest breaking load, in newtons.
pub const LOAD_N: (f64, f64) = (0.1, 100_000.0);

/// What a pitch cell says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pitch {
    /// A note, whose frequency follows from the tuning.
    Note(Note),
    /// A frequency, whatever the tuning.
    Frequency(Frequency),
}

const LENGTH: Measure = Measure {
    what: say::VIBRATING_LENGTH,
    example: say::VIBRATING_LENGTH_LIKE,
    limits: LENGTH_MM,
    unit: "mm",
    units: LENGTHS,
    proposed: &["mm", "cm", "in", "m"],
};

const BARE_END: Measure = Measure {
    what: say::BARE_END,
    example: say::BARE_END_LIKE,
    limits: BARE_END_MM,
    proposed: &[],
    ..LENGTH
};

const GAUGE: Measure = Measure {
    what: say::GAUGE,
    example: say::GAUGE_LIKE,
    limits: DIAMETER_MM,
    unit: "mm",
    units: GAUGES,
    proposed: &["mm", "thou", "\""],
};

const FREQUENCY: Measure = Measure {
    what: say::PITCH,
    example: say::PITCH_LIKE,
    limits: FREQUENCY_HZ,
    unit: "Hz",
    units: &[(&["hz"], |n| n)],
    proposed: &[],
};

const MASS: Measure = Measure {
    what: say::MASS_PER_METRE,
    example: say::MASS_PER_METRE_LIKE,
    limits: WEIGHED_G_PER_M,
    unit: "g/m",
    units: MASSES_G_PER_M,
    proposed: &[],
};

const LOAD: Measure = Measure {
    what: say::LOAD,
    example: say::LOAD_LIKE,
    limits: LOAD_N,
    unit: "N",
    units: &[
        (&["n"], |n| n),
        (&["kgf", "kg"], |n| Force::from_kgf(n).to_n()),
        (&["lbf", "lb", "lbs"], |n| Force::from_lbf(n).to_n()),
    ],
    proposed: &[],
};

/// A vibrating length: `612`, `61,2 cm`, `24⅛ in`, `2' 3 1/4"`.
///
/// # Errors
///
/// When it cannot be read or lies outside [`LENGTH_MM`].
pub fn length(text: &str) -> Result<Length, TypedError> {
    LENGTH.read(text).map(Length::from_mm)
}

/// The length of bare core at an end of a wound string, read like a vibrating length.
///
/// # Errors
///
/// When it cannot be read or lies outside [`BARE_END_MM`].
pub fn bare_end(text: &str) -> Result<Length, TypedError> {
    BARE_END.read(text).map(Length::from_mm)
}

/// A gauge: `0.81`, `0.81mm`, `.032"`, `32 thou`, `32 mil`.
///
/// # Errors
///
/// When it cannot be read or lies outside [`DIAMETER_MM`].
pub fn gauge(text: &str) -> Result<Length, TypedError> {
    GAUGE.read(text).map(Length::from_mm)
}

/// Whether a text reads as a gauge, be it of a diameter that can be made or not.
pub fn is_size(text: &str) -> bool {
    GAUGE.value(&plain(text)).is_some()
}

/// A note (`Eb3`) or a frequency (`443.2 Hz`).
///
/// # Errors
///
/// When it is neither, or a frequency outside [`FREQUENCY_HZ`].
pub fn pitch(text: &str) -> Result<Pitch, TypedError> {
    let typed = plain(text);
    let start = typed.len().saturating_sub(2);
    if typed.get(start..).is_some_and(|end| end.eq_ignore_ascii_case("hz")) {
        return FREQUENCY.read(text).map(|hz| Pitch::Frequency(Frequency::from_hz(hz)));
    }
    if is_bare(&typed) {
        return Err(TypedError::NoteNumber { got: cut(text) });
    }
    Ok(Pitch::Note(text.parse()?))
}

/// A mass per metre: `6.75` or `6.75 g/m`.
///
/// # Errors
///
/// When it cannot be read or lies outside [`WEIGHED_G_PER_M`].
pub fn mass_per_metre(text: &str) -> Result<LinearDensity, TypedError> {
    MASS.read(text).map(LinearDensity::from_g_per_m)
}

/// A load: `480`, `480 N`, `48 kgf`, `108 lbf`.
///
/// # Errors
///
/// When it cannot be read or lies outside [`LOAD_N`].
pub fn load(text: &str) -> Result<Force, TypedError> {
    LOAD.read(text).map(Force::from_n)
}

/// A plain number without a unit, from `least` to `most`; `what` names it in a message.
///
/// # Errors
///
/// When it cannot be read or lies outside.
pub fn positive(text: &str, what: Words, least: f64, most: f64) -> Result<f64, TypedError> {
    let limits = (least, most);
    Measure { what, limits, example: Words::plain("12.5"), unit: "", units: &[], proposed: &[] }
        .read(text)
}

/// The text with a unit behind it when it is a bare number; else as it is, trimmed. So a page that
/// shows inches keeps `24.1` as `24.1 in`.
pub fn with_unit(text: &str, unit: &str) -> String {
    let text = text.trim();
    if is_bare(&plain(text)) { format!("{text} {unit}") } else { text.to_owned() }
}

/// A gauge as it is kept of what was typed on a page that shows gauges in a unit: below 1 a bare number is in inches,
/// as in `.025`, else in thousandths of an inch.
pub fn gauge_kept(text: &str, unit: GaugeUnit) -> String {
    let below_1 = || take_number(&plain(text)).is_some_and(|(number, _)| number < 1.0);
    match unit {
        GaugeUnit::Mm => text.trim().to_owned(),
        GaugeUnit::Thou => with_unit(text, if below_1() { "in" } else { "thou" }),
    }
}

/// A size with a decimal point instead of a comma, and the signs of print made plain.
pub fn with_point(text: &str) -> String {
    plain(text).into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn length_mm(text: &str) -> f64 {
        length(text).unwrap_or_else(|error| panic!("{text}: {error}")).to_mm()
    }

    fn gauge_mm(text: &str) -> f64 {
        gauge(text).unwrap_or_else(|error| panic!("{text}: {error}")).to_mm()
    }

    #[test]
    fn a_length_is_read_in_every_unit() {
        for (text, mm) in [
            ("612", 612.0),
            (" 612 mm ", 612.0),
            ("612mm", 612.0),
            ("612,5", 612.5),
            ("61,2cm", 612.0),
            ("0.612 m", 612.0),
            ("1\u{2009}204,5 mm", 1204.5),
            ("24 1/8 in", 24.125 * 25.4),
            ("24-1/8\"", 24.125 * 25.4),
            ("24⅛ in", 24.125 * 25.4),
            ("24.125″", 24.125 * 25.4),
            ("24 1/8 inches", 24.125 * 25.4),
            ("1 inch", 25.4),
            ("2 ft", 24.0 * 25.4),
            ("2 ft 3 in", 27.0 * 25.4),
            ("2ft3in.", 27.0 * 25.4),
            ("2' 3 1/4\"", 27.25 * 25.4),
            ("2′3¼″", 27.25 * 25.4),
            ("2' 3", 27.0 * 25.4),
            ("2'-3 1/4\"", 27.25 * 25.4),
            ("20", 20.0),
            ("3 m", 3000.0),
            ("3000", 3000.0),
        ] {
            assert_close(length_mm(text), mm, 1e-12, text);
        }
    }

    #[test]
    fn a_gauge_is_read_in_every_unit() {
        for (text, mm) in [
            ("0.81", 0.81),
            (".81", 0.81),
            ("0,81", 0.81),
            ("0.81mm", 0.81),
            (".032\"", 0.8128),
            ("0.032in", 0.8128),
            ("32 thou", 0.8128),
            ("32 mil", 0.8128),
            ("1/32\"", 0.79375),
            ("10", 10.0),
            ("0.05", 0.05),
        ] {
            assert_close(gauge_mm(text), mm, 1e-12, text);
        }
    }

    #[test]
    fn what_is_no_number_says_so() {
        for text in [
            "abc",
            "NaN",
            "inf",
            "-inf",
            "1e999",
            "1e3",
            "612 furlongs",
            "6 1 2",
            "1/0",
            "1.2.3",
            "612 mm mm",
        ] {
            for error in [length(text).unwrap_err(), gauge(text).unwrap_err()] {
                assert!(matches!(error, TypedError::Unreadable { .. }), "{text}: {error}");
                assert!(error.to_string().contains(&format!("got \"{text}\"")), "{error}");
            }
            assert!(positive(text, Words::plain("share"), 1.0, 100.0).is_err(), "{text}");
            assert!(mass_per_metre(text).is_err(), "{text}");
            assert!(load(text).is_err(), "{text}");
            assert!(pitch(text).is_err(), "{text}");
        }
        for text in ["2 in 3 ft", "2 ft --3 in", "2 ft 3 in 4", "2 ft 3 cm"] {
            assert!(matches!(length(text), Err(TypedError::Unreadable { .. })), "{text}");
        }
        for text in ["", "  ", "\u{2009}\u{feff}"] {
            assert!(matches!(length(text), Err(TypedError::Empty { .. })), "{text:?}");
            assert!(matches!(gauge(text), Err(TypedError::Empty { .. })), "{text:?}");
            assert!(matches!(load(text), Err(TypedError::Empty { .. })), "{text:?}");
        }
        let long = "9".repeat(400);
        assert!(matches!(length(&long), Err(TypedError::Range { .. })));
        assert!(length(&long).unwrap_err().to_string().len() < 200);
    }

    #[test]
    fn a_length_out_of_reach_asks_what_was_meant() {
        let says = |text: &str| length(text).unwrap_err().to_string();
        assert_eq!(
            says("12"),
            "the vibrating length must be from 20 to 3000 mm, got \"12\" (did you mean 12 cm or 12 in?)"
        );
        assert!(
            says("1,2").ends_with("got \"1,2\" (did you mean 1.2 in or 1.2 m?)"),
            "{}",
            says("1,2")
        );
        assert!(says("800 in").ends_with("got \"800 in\" (did you mean 800 mm?)"));
        assert!(says(".032\"").ends_with("got \".032\"\""), "{}", says(".032\""));
        assert!(says("0.5 in").ends_with("got \"0.5 in\""), "{}", says("0.5 in"));
        assert!(says("5000").ends_with("got \"5000\""));
        assert!(says("-612").ends_with("got \"-612\""));
        assert!(says("0").ends_with("got \"0\""));
    }

    #[test]
    fn a_gauge_out_of_reach_asks_what_was_meant() {
        let says = |text: &str| gauge(text).unwrap_err().to_string();
        assert_eq!(
            says("32"),
            "the gauge must be from 0.05 to 10 mm, got \"32\" (did you mean 0.32 mm or 32 thou?)"
        );
        assert!(says(".032").ends_with("got \".032\" (did you mean .032\"?)"));
        assert!(says(".032 thou").ends_with("(did you mean .032\"?)"));
        assert!(says("0.81 thou").ends_with("(did you mean 0.81 mm?)"), "{}", says("0.81 thou"));
        assert!(says("5000").ends_with("got \"5000\""));
    }

    #[test]
    fn a_pitch_is_a_note_or_a_frequency() {
        assert_eq!(pitch("eb3"), Ok(Pitch::Note("Eb3".parse().unwrap())));
        for text in ["443.2 Hz", "443,2hz", " 443.2 HZ "] {
            assert_eq!(pitch(text), Ok(Pitch::Frequency(Frequency::from_hz(443.2))), "{text}");
        }
        let says = |text: &str| pitch(text).unwrap_err().to_string();
        assert!(says("443.2").ends_with("(for a pitch write 443.2 Hz)"));
        assert_eq!(says("9000 Hz"), "the pitch must be from 10 to 8000 Hz, got \"9000 Hz\"");
        assert!(says("9 Hz").starts_with("the pitch must be from 10"));
        assert!(says("Hz").starts_with("the pitch must be a number"));
        assert!(says("").starts_with("a note is missing"));
        assert!(says("H4").starts_with("a note begins"));
    }

    #[test]
    fn masses_and_loads_take_their_units() {
        for (text, g_per_m) in [("6.75", 6.75), ("6,75 g/m", 6.75), ("0.00675 kg/m", 6.75)] {
            assert_close(mass_per_metre(text).unwrap().to_g_per_m(), g_per_m, 1e-12, text);
        }
        for (text, newtons) in [
            ("480", 480.0),
            ("480 N", 480.0),
            ("48 kgf", 48.0 * 9.806_65),
            ("48kg", 48.0 * 9.806_65),
            ("108 lbf", 108.0 * 0.453_592_37 * 9.806_65),
            ("108 lb.", 108.0 * 0.453_592_37 * 9.806_65),
        ] {
            assert_close(load(text).unwrap().to_n(), newtons, 1e-12, text);
        }
        assert!(load("0").is_err());
        assert!(mass_per_metre("6.75 mm").is_err());
    }

    #[test]
    fn a_plain_number_has_no_unit_and_keeps_its_limits() {
        let working = Words::plain("working share");
        assert_eq!(positive("75", working, 1.0, 100.0), Ok(75.0));
        let says = |text: &str| positive(text, working, 1.0, 100.0).unwrap_err().to_string();
        assert_eq!(says("120"), "the working share must be from 1 to 100, got \"120\"");
        assert!(says("75 mm").starts_with("the working share must be a number"));
    }

    #[test]
    fn a_unit_is_added_to_a_bare_number_only() {
        for (text, unit, kept) in [
            (" 24.1 ", "in", "24.1 in"),
            ("24 1/8", "in", "24 1/8 in"),
            ("24⅛", "in", "24⅛ in"),
            ("24 mm", "in", "24 mm"),
            ("2' 3", "in", "2' 3"),
            ("32", "thou", "32 thou"),
            ("", "in", ""),
            ("abc", "in", "abc"),
        ] {
            assert_eq!(with_unit(text, unit), kept, "{text}");
        }
    }

    #[test]
    fn a_message_repeats_no_more_than_its_share() {
        assert_eq!(cut(" abc "), "abc");
        assert_eq!(cut("a\nb"), "a b");
        assert_eq!(cut(&"é".repeat(41)), format!("{}…", "é".repeat(40)));
    }

    #[test]
    fn no_text_makes_it_panic() {
        let signs =
            ["1", "/", "½", "-", "'", "\"", ".", ",", "\u{2009}", "é", "in", "ft", " ", "𝄫", "0"];
        for a in signs {
            for b in signs {
                for c in signs {
                    for d in signs {
                        let text = format!("{a}{b}{c}{d}");
                        let (_, _, _) = (length(&text), gauge(&text), pitch(&text));
                    }
                }
            }
        }
    }
}
