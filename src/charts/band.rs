//! The lengths of the strings, to scale, standing on one line: not the real string band, whose
//! spacing and soundboard come from the geometry, but enough to see a kink in the lengths.

use plotters::coord::Shift;
use plotters::drawing::DrawingArea;
use plotters::prelude::DrawingBackend;
use plotters::style::{Color, RGBColor};

use crate::design::document::{LengthUnit, Units};
use crate::engine::analysis::{Analysis, Harp, HarpString, StringFigures};
use crate::engine::construction::MakeUp;
use crate::engine::order::sort;
use crate::engine::pitch::{Letter, Note};
use crate::engine::units::Length;

use super::axis::{is_usable, nice_step, robust_top};
use super::compass::Compass;
use super::layout::Plot;
use super::pen::{Anchor, Drawn, Pen, Style, safe_scale};
use crate::words::charts as say;

/// A length over this many times the 90th percentile is cut off, so that one slip of the pen does
/// not shrink all the others.
const OFF_SCALE: f64 = 3.0;
/// Height of the strip for the caption, in CSS pixels.
const CAPTION_STRIP: f64 = 20.0;
/// Height of the strip for the letters of C and F strings, in CSS pixels.
const LETTER_STRIP: f64 = 18.0;
/// Drawn width of a string for each millimetre of its gauge, in CSS pixels.
const WIDTH_PER_MM: f64 = 1.3;

/// One string that stands in the drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Upright {
    /// Index of the string.
    pub index: usize,
    pub length_mm: f64,
    /// Diameter, where it is known.
    pub gauge_mm: Option<f64>,
    /// Whether something is wound on it, as far as is known.
    pub wound: bool,
}

/// Strings standing side by side, to scale.
#[derive(Clone, Debug, PartialEq)]
pub struct Uprights {
    /// The strings whose length is known, from string 1 down.
    pub strings: Vec<Upright>,
    /// The note of each string, where there is one.
    pub notes: Vec<Option<Note>>,
    /// The length that fills the height.
    pub longest_mm: f64,
    pub unit: LengthUnit,
}

/// Where the drawing of the strings goes, in pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UprightsLayout {
    pub compass: Compass,
    /// The strings stand on its bottom edge.
    pub plot: Plot,
    /// Pixels for each millimetre of length.
    pub px_per_mm: f64,
}

/// Works out what stands where.
pub fn build(analysis: &Analysis, harp: &Harp, units: &Units) -> Uprights {
    let upright = |(index, (figures, string)): (usize, (&StringFigures, &HarpString))| {
        let length_mm = figures.length.ok().map(Length::to_mm)?;
        let gauge_mm = figures.gauge.ok().map(Length::to_mm).filter(|mm| is_usable(*mm));
        let wound = string.make_up.as_ref().is_ok_and(is_wound);
        let usable = is_usable(length_mm) && length_mm > 0.0;
        usable.then_some(Upright { index, length_mm, gauge_mm, wound })
    };
    let strings = analysis.strings.iter().zip(&harp.strings).enumerate();
    let strings: Vec<Upright> = strings.filter_map(upright).collect();
    let mut sorted: Vec<f64> = strings.iter().map(|string| string.length_mm).collect();
    sort(&mut sorted, |one, other| one > other);
    let notes = analysis.strings.iter().map(|figures| figures.note).collect();
    Uprights { longest_mm: robust_top(&sorted, OFF_SCALE), strings, notes, unit: units.length }
}

pub(super) fn is_wound(make_up: &MakeUp) -> bool {
    match (make_up, make_up.core(), make_up.gauge()) {
        (MakeUp::Plain { .. }, ..) => false,
        (MakeUp::Weighed(_), Some((_, core)), Some(gauge)) => core < gauge,
        (MakeUp::Weighed(_), ..) => false,
        _ => true,
    }
}

/// Works out where the strings stand in an area of a size in pixels, `scale` of them to a CSS pixel.
pub fn layout(width_px: f64, height_px: f64, scale: f64, band: &Uprights) -> UprightsLayout {
    let scale = safe_scale(scale);
    let compass = Compass::across(width_px, scale, band.notes.len());
    let top = (CAPTION_STRIP * scale).round();
    let bottom = (height_px - LETTER_STRIP * scale).round().max(top);
    let plot = Plot { left: compass.left, top, right: compass.right, bottom };
    let px_per_mm = if band.longest_mm > 0.0 { (bottom - top) / band.longest_mm } else { 0.0 };
    UprightsLayout { compass, plot, px_per_mm }
}

/// Draws the strings over the whole area.
///
/// # Errors
///
/// Only when the backend fails.
pub fn draw<DB: DrawingBackend>(
    area: &DrawingArea<DB, Shift>,
    band: &Uprights,
    style: &Style<'_>,
) -> Drawn<DB> {
    let pen = Pen::new(area, style);
    pen.clear()?;
    let (width, height) = area.dim_in_pixel();
    let (width, height) = (f64::from(width), f64::from(height));
    let layout = layout(width, height, style.scale, band);
    let (plot, s, p) = (&layout.plot, pen.scale, pen.palette);
    if band.strings.is_empty() {
        let middle = (width / 2.0, height / 2.0);
        return pen.word(say::NO_LENGTHS.said(), middle, Anchor::Centre, p.faint);
    }
    if layout.compass.slot() <= 0.0 || plot.bottom - plot.top < 8.0 * s {
        return Ok(());
    }
    selection(&pen, &layout, style)?;
    pen.level((plot.left, plot.right), plot.bottom, 1.5, p.ink.to_rgba())?;
    for string in &band.strings {
        upright(&pen, band, &layout, string)?;
    }
    pin_line(&pen, band, &layout)?;
    for string in band.strings.iter().filter(|string| string.length_mm > band.longest_mm) {
        cut_off(&pen, &layout, string)?;
    }
    letters(&pen, band, &layout)?;
    scale_bar(&pen, band, &layout)?;
    pen.title(say::TO_SCALE.said(), (plot.left, 3.0 * s), p.ink)
}

fn top_of(layout: &UprightsLayout, string: &Upright) -> f64 {
    let tall = string.length_mm * layout.px_per_mm;
    (layout.plot.bottom - tall).max(layout.plot.top).round()
}

fn selection<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    layout: &UprightsLayout,
    style: &Style<'_>,
) -> Drawn<DB> {
    let Some(selected) = style.selected.as_ref() else { return Ok(()) };
    let Some((left, right)) = layout.compass.span_of(selected) else { return Ok(()) };
    let bottom = layout.plot.bottom + LETTER_STRIP * pen.scale;
    pen.rect((left, layout.plot.top), (right, bottom), pen.palette.accent.mix(0.16))
}

fn color_of<DB: DrawingBackend>(pen: &Pen<'_, DB>, note: Option<Note>) -> RGBColor {
    match note.map(Note::letter) {
        Some(Letter::C) => pen.palette.c_mark,
        Some(Letter::F) => pen.palette.f_mark,
        _ => pen.palette.ink,
    }
}

/// A string: a stroke that widens with the gauge; of a wound one, two strokes with paper between.
fn upright<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    band: &Uprights,
    layout: &UprightsLayout,
    string: &Upright,
) -> Drawn<DB> {
    let color = color_of(pen, band.notes.get(string.index).copied().flatten()).to_rgba();
    let (x, y) = (layout.compass.x_of(string.index), (top_of(layout, string), layout.plot.bottom));
    let slot = layout.compass.slot() / pen.scale;
    // No wider than leaves a gap between neighbours, no thinner than can be seen.
    let width = (string.gauge_mm.unwrap_or(0.0) * WIDTH_PER_MM).min(0.6 * slot).max(1.0);
    if !string.wound {
        return pen.upright(x, y, width, color);
    }
    // Two hairlines and a gap: three pixels at least.
    let width = pen.thick(width.max(3.0)).max(3.0);
    let edge = pen.thick(0.28 * width / pen.scale).min(((width - 1.0) / 2.0).floor());
    let left = (x - width / 2.0).round();
    pen.rect((left, y.0), (left + edge, y.1), color)?;
    pen.rect((left + width - edge, y.0), (left + width, y.1), color)
}

/// Joins the upper ends, so that a kink shows; broken where a length is missing.
fn pin_line<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    band: &Uprights,
    layout: &UprightsLayout,
) -> Drawn<DB> {
    for run in band.strings.chunk_by(|a, b| a.index + 1 == b.index) {
        if run.len() > 1 {
            let at = |string: &Upright| {
                (layout.compass.x_of(string.index), top_of(layout, string) - pen.thick(1.0))
            };
            pen.path(run.iter().map(at), 1.0, pen.palette.accent)?;
        }
    }
    Ok(())
}

/// A gap in a string that is longer than the drawing is high.
fn cut_off<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    layout: &UprightsLayout,
    string: &Upright,
) -> Drawn<DB> {
    let (x, s) = (layout.compass.x_of(string.index), pen.scale);
    let y = layout.plot.top + 10.0 * s;
    pen.rect((x - 4.0 * s, y), (x + 4.0 * s, y + 4.0 * s), pen.palette.paper.to_rgba())?;
    pen.level((x - 4.0 * s, x + 4.0 * s), y, 1.5, pen.palette.warn.to_rgba())?;
    pen.level((x - 4.0 * s, x + 4.0 * s), y + 4.0 * s, 1.5, pen.palette.warn.to_rgba())
}

/// C and F under their strings, as far as there is room.
fn letters<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    band: &Uprights,
    layout: &UprightsLayout,
) -> Drawn<DB> {
    let (s, compass) = (pen.scale, &layout.compass);
    let y = layout.plot.bottom + 4.0 * s;
    // From F down to C are three strings, from C down to F four.
    let with_f = 3.0 * compass.slot() >= 11.0 * s;
    for (index, note) in band.notes.iter().enumerate() {
        let (letter, color) = match note.map(Note::letter) {
            Some(Letter::C) => (Letter::C, pen.palette.c_mark),
            Some(Letter::F) if with_f => (Letter::F, pen.palette.f_mark),
            _ => continue,
        };
        pen.word(&letter.printed(), (compass.x_of(index), y), Anchor::TopCentre, color)?;
    }
    Ok(())
}

/// A round length in the unit of the page, at most about half of the height.
fn scale_bar<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    band: &Uprights,
    layout: &UprightsLayout,
) -> Drawn<DB> {
    let (unit_mm, unit) = match band.unit {
        LengthUnit::Mm => (1.0, "mm"),
        LengthUnit::Inch => (Length::from_inch(1.0).to_mm(), "in"),
    };
    let (s, plot) = (pen.scale, &layout.plot);
    let round = nice_step(0.2 * band.longest_mm / unit_mm);
    let (x, top) = (plot.left - 8.0 * s, plot.bottom - round * unit_mm * layout.px_per_mm);
    let ink = pen.palette.faint;
    pen.upright(x, (top, plot.bottom), 1.0, ink.to_rgba())?;
    for y in [top, plot.bottom] {
        pen.level((x - 3.0 * s, x + 4.0 * s), y, 1.0, ink.to_rgba())?;
    }
    // In two lines, as the room beside the bar is narrow.
    let (left, middle) = (x - 6.0 * s, (top + plot.bottom) / 2.0);
    pen.word(&round.to_string(), (left, middle - 6.0 * s), Anchor::Right, ink)?;
    pen.word(unit, (left, middle + 6.0 * s), Anchor::Right, ink)
}

#[cfg(test)]
mod tests {
    use plotters::prelude::{IntoDrawingArea, SVGBackend};

    use super::*;
    use crate::charts::palette::Palette;
    use crate::charts::pen::Medium;
    use crate::charts::samples;
    use crate::engine::analysis::{Unknown, analyse};
    use crate::testing::assert_close;

    fn of(harp: &Harp) -> Uprights {
        build(&analyse(harp), harp, &Units::default())
    }

    fn svg(band: &Uprights) -> String {
        let mut text = String::new();
        let area = SVGBackend::with_string(&mut text, (900, 260)).into_drawing_area();
        draw(&area, band, &Style::new(Palette::light(), 1.0, Medium::Svg)).unwrap();
        area.present().unwrap();
        drop(area);
        text
    }

    fn count(text: &str, what: &str) -> usize {
        text.matches(what).count()
    }

    #[test]
    fn every_string_stands_at_its_length() {
        let band = of(&samples::harp(47));
        let layout = layout(900.0, 260.0, 1.0, &band);
        for string in &band.strings {
            let tall = layout.plot.bottom - top_of(&layout, string);
            let gap = (tall - string.length_mm * layout.px_per_mm).abs();
            assert!(gap <= 0.5, "string {}: off by {gap} px", string.index + 1);
        }
        let bass = band.strings.last().unwrap();
        assert_close(top_of(&layout, bass), layout.plot.top, 1e-12, "the longest fills the height");
    }

    #[test]
    fn wound_strings_have_two_strokes_and_plain_ones_one() {
        let band = of(&samples::harp(47));
        let wound = band.strings.iter().filter(|string| string.wound).count();
        assert_eq!(wound, 4 + 12);
        let text = svg(&band);
        // The ground and the paper, and a bar with its two ends.
        assert_eq!(count(&text, "<rect"), 47 + wound + 2 + 3);
        assert_eq!(count(&text, "<polyline"), 1);
    }

    #[test]
    fn c_and_f_have_their_letters_and_the_drawing_its_caption_and_scale() {
        let text = svg(&of(&samples::harp(47)));
        let words: Vec<&str> = text.lines().filter(|line| !line.starts_with('<')).collect();
        assert_eq!(words.iter().filter(|word| **word == "C").count(), 7);
        assert_eq!(words.iter().filter(|word| **word == "F").count(), 7);
        for word in ["Lengths to scale", "500", "mm"] {
            assert!(words.contains(&word), "{word} is not among {words:?}");
        }
    }

    #[test]
    fn an_unknown_length_leaves_a_gap() {
        let mut harp = samples::harp(22);
        harp.strings[9].length = Err(Unknown::Length);
        let band = of(&harp);
        assert_eq!(band.strings.len(), 21);
        assert_eq!(count(&svg(&band), "<polyline"), 2);
        assert!(svg(&of(&samples::unknown(5))).contains("No string has a length yet"));
    }

    #[test]
    fn one_slip_does_not_shrink_the_others() {
        let mut harp = samples::harp(33);
        let longest_mm = of(&harp).longest_mm;
        harp.strings[9].length = Ok(Length::from_mm(61_200.0));
        let band = of(&harp);
        assert_close(band.longest_mm, longest_mm, 1e-12, "the longest of the others");
        let layout = layout(900.0, 260.0, 1.0, &band);
        assert_close(top_of(&layout, &band.strings[9]), layout.plot.top, 1e-12, "cut off");
    }

    #[test]
    fn the_scale_bar_is_in_the_unit_of_the_page() {
        let harp = samples::harp(22);
        let units = Units { length: LengthUnit::Inch, ..Units::default() };
        let text = svg(&build(&analyse(&harp), &harp, &units));
        assert!(text.lines().any(|line| line == "in"), "{text}");
    }
}
