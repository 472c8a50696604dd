//! Lengths that are pulled with the hand in the drawing.

use crate::design::display;
use crate::design::document::{LengthUnit, Units};
use crate::design::typed;
use crate::engine::analysis::Analysis;
use crate::engine::units::Length;
use crate::words::papers::titled;

/// A length as it is typed when a pin is pulled there: to half a millimetre or to a 64th of an inch; `fine` to a tenth
/// of a millimetre or a hundredth of an inch. `None` where no string can be so long.
pub fn pulled(length: Length, fine: bool, unit: LengthUnit) -> Option<String> {
    let text = match (unit, fine) {
        (LengthUnit::Mm, false) => tenths((2.0 * length.to_mm()).round() / 2.0),
        (LengthUnit::Mm, true) => tenths(length.to_mm()),
        (LengthUnit::Inch, false) => format!("{} in", in_64ths(length)?),
        (LengthUnit::Inch, true) => {
            format!("{} in", display::kept(|| display::decimals(length.to_inch(), 2)))
        }
    };
    typed::length(&text).is_ok().then_some(text)
}

/// Millimetres to a tenth, without one that is 0.
fn tenths(mm: f64) -> String {
    let text = display::kept(|| display::decimals(mm, 1));
    text.strip_suffix(".0").map_or(text.clone(), str::to_owned)
}

/// Inches with a fraction whose lower number is as small as can be.
fn in_64ths(length: Length) -> Option<String> {
    let all = (64.0 * length.to_inch()).round();
    if !(1.0..64e4).contains(&all) {
        return None;
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole, in the range just asked for"
    )]
    let all = all as u32;
    let (whole, mut over, mut under) = (all / 64, all % 64, 64);
    while over > 0 && over % 2 == 0 {
        (over, under) = (over / 2, under / 2);
    }
    Some(match (whole, over) {
        (whole, 0) => whole.to_string(),
        (0, over) => format!("{over}/{under}"),
        (whole, over) => format!("{whole} {over}/{under}"),
    })
}

/// A length one step of [`pulled`] longer or shorter, or so many steps.
pub fn stepped(length: Length, steps: f64, unit: LengthUnit) -> Option<String> {
    let by = match unit {
        LengthUnit::Mm => Length::from_mm(0.5 * steps),
        LengthUnit::Inch => Length::from_inch(steps / 64.0),
    };
    pulled(Length::from_m(length.to_m() + by.to_m()), false, unit)
}

/// A string with its length and its pull, beside the drawing.
pub fn in_short(analysis: &Analysis, units: &Units, index: usize) -> String {
    let Some(figures) = analysis.strings.get(index) else { return String::new() };
    let length = figures.length.map(|length| display::length_with_unit(length, units.length));
    let pull = figures.tension.map(|pull| display::tension_with_unit(pull, units.force));
    let or_none = |known: Result<String, _>| known.unwrap_or_else(|_| display::NONE.to_owned());
    titled(&display::string_name(figures), &format!("{}, {}", or_none(length), or_none(pull)))
}

/// A string's number, note and length, at its pin.
pub fn number_and_length(analysis: &Analysis, unit: LengthUnit, index: usize) -> String {
    let Some(figures) = analysis.strings.get(index) else { return String::new() };
    let note = figures.note.map(|note| format!(" {}", note.printed())).unwrap_or_default();
    let name = format!("{}{note}", figures.number);
    match figures.length {
        Ok(length) => titled(&name, &display::length_with_unit(length, unit)),
        Err(_) => name,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pin_is_pulled_to_half_millimetres_or_64ths_of_an_inch() {
        let mm = |mm: f64, fine| pulled(Length::from_mm(mm), fine, LengthUnit::Mm);
        assert_eq!(mm(612.26, false).as_deref(), Some("612.5"));
        assert_eq!(mm(612.26, true).as_deref(), Some("612.3"));
        assert_eq!(mm(-3.0, false), None);
        let inch = |inch: f64, fine| pulled(Length::from_inch(inch), fine, LengthUnit::Inch);
        assert_eq!(inch(24.14, false).as_deref(), Some("24 9/64 in"));
        assert_eq!(inch(24.5, false).as_deref(), Some("24 1/2 in"));
        assert_eq!(inch(24.001, false).as_deref(), Some("24 in"));
        assert_eq!(inch(24.137, true).as_deref(), Some("24.14 in"));
    }

    #[test]
    fn what_was_pulled_is_read_as_it_was_meant() {
        for number in 100_u32..200 {
            let length = Length::from_inch(f64::from(number) / 64.0 * 7.0);
            let text = pulled(length, false, LengthUnit::Inch).expect("a length");
            let read = typed::length(&text).expect("a length").to_inch();
            assert!((read - length.to_inch()).abs() < 1e-9, "{text}: {read}");
        }
    }

    #[test]
    fn a_step_is_half_a_millimetre_or_a_64th() {
        let length = Length::from_mm(612.0);
        assert_eq!(stepped(length, 1.0, LengthUnit::Mm).as_deref(), Some("612.5"));
        assert_eq!(stepped(length, -10.0, LengthUnit::Mm).as_deref(), Some("607"));
        let length = Length::from_inch(24.0);
        assert_eq!(stepped(length, 1.0, LengthUnit::Inch).as_deref(), Some("24 1/64 in"));
    }
}
