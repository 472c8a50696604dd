//! Draws the curves: panels of equal height over each other, one compass axis below.

use plotters::coord::Shift;
use plotters::drawing::DrawingArea;
use plotters::prelude::DrawingBackend;
use plotters::style::Color;

use crate::engine::pitch::Letter;

use super::axis::Reach;
use super::compass::{Compass, LabelKind, as_f64};
use super::layout::{Explained, LEGEND_ROW, Layout, Plot, TOP, css_width, layout, legend_entries};
use super::pen::{Anchor, Drawn, Pen, SMALL, Style, TITLE, px};
use super::series::{CurvePoint, Curves, Panel};
use crate::words::charts as say;

/// Height of a plot below which its ticks would touch, in CSS pixels.
const TICK_ROOM: f64 = 24.0;
/// Height of the tint along the edge of an open band, in CSS pixels.
const EDGE_STRIP: f64 = 7.0;
/// Lowest plot that is still drawn, in CSS pixels.
const LOWEST_PLOT: f64 = 8.0;
/// Draws `curves` over the whole area.
///
/// # Errors
///
/// Only when the backend fails.
pub fn draw<DB: DrawingBackend>(
    area: &DrawingArea<DB, Shift>,
    curves: &Curves,
    style: &Style<'_>,
) -> Drawn<DB> {
    let pen = Pen::new(area, style);
    pen.clear()?;
    let (width, height) = area.dim_in_pixel();
    let (width, height) = (f64::from(width), f64::from(height));
    if curves.notes.is_empty() {
        let middle = (width / 2.0, height / 2.0);
        return pen.word(say::NO_STRINGS.said(), middle, Anchor::Centre, pen.palette.faint);
    }
    let layout = layout(width, height, style.scale, curves);
    if layout.compass.slot() <= 0.0 {
        return Ok(());
    }
    legend(&pen, curves, &layout)?;
    selection(&pen, &layout.compass, style, (layout.axis_top, height))?;
    for (panel, plot) in curves.panels.iter().zip(&layout.plots) {
        if plot.bottom - plot.top >= LOWEST_PLOT * pen.scale {
            tint(&pen, panel, plot)?;
            selection(&pen, &layout.compass, style, (plot.top, plot.bottom))?;
            ground(&pen, panel, plot, curves, &layout.compass)?;
            limits(&pen, panel, plot)?;
            ranges(&pen, panel, plot, &layout.compass)?;
            ghost(&pen, panel, plot, &layout.compass)?;
            line(&pen, panel, plot, &layout.compass)?;
            marks(&pen, panel, plot, &layout.compass, style)?;
        }
        titles(&pen, panel, plot)?;
    }
    axis(&pen, curves, &layout)
}

fn legend<DB: DrawingBackend>(pen: &Pen<'_, DB>, curves: &Curves, layout: &Layout) -> Drawn<DB> {
    let s = pen.scale;
    for (place, (explained, label)) in legend_entries(curves).enumerate() {
        let Some((row, x)) = layout.legend.get(place) else { break };
        let y = ((TOP + (as_f64(*row) + 0.5) * LEGEND_ROW) * s).round();
        match explained {
            Explained::Mark(mark) => pen.mark(mark, (x + 6.0 * s, y), 4.2 * s)?,
            Explained::Range => {
                let run = [1.0, 6.0, 11.0].map(|at| (x + at * s, y - 5.0 * s, y + 5.0 * s));
                range_run(pen, &run, 1.5 * s)?;
            }
            Explained::Ghost => {
                let dash = |from: f64, to: f64| {
                    pen.level((x + from * s, x + to * s), y, 1.0, pen.palette.ghost.to_rgba())
                };
                dash(-1.0, 4.0)?;
                dash(8.0, 13.0)?;
            }
        }
        pen.word(label, (x + 16.0 * s, y), Anchor::Left, pen.palette.ink)?;
    }
    Ok(())
}

/// The tint behind the selected strings, between two heights.
fn selection<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    compass: &Compass,
    style: &Style<'_>,
    y: (f64, f64),
) -> Drawn<DB> {
    let Some(selected) = style.selected.as_ref() else { return Ok(()) };
    match compass.span_of(selected) {
        Some((left, right)) => pen.rect((left, y.0), (right, y.1), pen.palette.accent.mix(0.16)),
        None => Ok(()),
    }
}

/// The tint of what the limits allow: the band, or where one side is open a strip along the edge.
fn tint<DB: DrawingBackend>(pen: &Pen<'_, DB>, panel: &Panel, plot: &Plot) -> Drawn<DB> {
    let y = |value: f64| plot.y_of(&panel.axis, value);
    let strip = EDGE_STRIP * pen.scale;
    let (top, bottom) = match (panel.band.low.map(y), panel.band.high.map(y)) {
        (Some(low), Some(high)) => (high, low),
        (Some(low), None) => ((low - strip).max(plot.top), low),
        (None, Some(high)) => (high, (high + strip).min(plot.bottom)),
        (None, None) => return Ok(()),
    };
    if bottom <= top {
        return Ok(());
    }
    pen.rect((plot.left, top), (plot.right, bottom), pen.palette.band.to_rgba())
}

/// Level hairlines at the ticks with their labels, upright ones at the C strings.
fn ground<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    panel: &Panel,
    plot: &Plot,
    curves: &Curves,
    compass: &Compass,
) -> Drawn<DB> {
    let s = pen.scale;
    let across = (plot.left, plot.right);
    for (index, note) in curves.notes.iter().enumerate() {
        if note.is_some_and(|note| note.letter() == Letter::C) {
            let x = compass.x_of(index);
            pen.upright(x, (plot.top, plot.bottom), 1.0, pen.palette.grid.to_rgba())?;
        }
    }
    for (tick, label) in ticks(panel, plot, s) {
        let y = plot.y_of(&panel.axis, tick);
        pen.level(across, y, 1.0, pen.palette.grid.to_rgba())?;
        pen.word(&label, (plot.left - 6.0 * s, y), Anchor::Right, pen.palette.faint)?;
    }
    pen.level(across, plot.bottom, 1.0, pen.palette.faint.to_rgba())
}

fn ticks(panel: &Panel, plot: &Plot, scale: f64) -> Vec<(f64, String)> {
    let room = (plot.bottom - plot.top) / (TICK_ROOM * scale);
    let most = (1..6).take_while(|n| as_f64(*n) <= room).last().unwrap_or(1);
    panel.axis.ticks(most)
}

/// The edges of the band, and the line at which a string breaks.
fn limits<DB: DrawingBackend>(pen: &Pen<'_, DB>, panel: &Panel, plot: &Plot) -> Drawn<DB> {
    let across = (plot.left, plot.right);
    let seen = |value: &f64| panel.axis.reach(*value) == Reach::Within;
    for edge in [panel.band.low, panel.band.high].into_iter().flatten().filter(seen) {
        let y = plot.y_of(&panel.axis, edge);
        pen.level(across, y, 1.0, pen.palette.accent.mix(0.7))?;
    }
    if let Some(value) = panel.breaks_at.filter(seen) {
        let (y, s) = (plot.y_of(&panel.axis, value), pen.scale);
        pen.level(across, y, 2.0, pen.palette.warn.to_rgba())?;
        let under = y - plot.top < (SMALL + 4.0) * s;
        let (y, anchor) =
            if under { (y + 3.0 * s, Anchor::TopLeft) } else { (y - 2.0 * s, Anchor::BottomLeft) };
        pen.word(say::BREAKS.said(), (plot.left + 4.0 * s, y), anchor, pen.palette.warn)?;
    }
    Ok(())
}

/// The ranges about a curve, each run of strings by itself.
fn ranges<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    panel: &Panel,
    plot: &Plot,
    compass: &Compass,
) -> Drawn<DB> {
    let cap = (0.3 * compass.slot()).min(4.0 * pen.scale);
    for segment in &panel.segments {
        let points = panel.points.get(segment.clone()).unwrap_or_default();
        let place = |point: &CurvePoint| {
            let (low, high) = panel.range_of(point.index)?;
            let y = |value: f64| plot.y_of(&panel.axis, value);
            Some((compass.x_of(point.index), y(high), y(low)))
        };
        let places: Vec<_> = points.iter().map(place).collect();
        for run in places.split(Option::is_none) {
            let run: Vec<_> = run.iter().copied().flatten().collect();
            range_run(pen, &run, cap)?;
        }
    }
    Ok(())
}

/// A wash from the upper to the lower ends, a thin line along each, and at every string an upright bar
/// with caps, so that it is not taken for the band of the limits. `run` is `x`, top and bottom of each
/// string.
fn range_run<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    run: &[(f64, f64, f64)],
    cap: f64,
) -> Drawn<DB> {
    let tops = run.iter().map(|(x, top, _)| (*x, *top));
    let bottoms = run.iter().map(|(x, _, bottom)| (*x, *bottom));
    if run.len() > 1 {
        let round = tops.clone().chain(bottoms.clone().rev());
        let corners = round.map(|(x, y)| (px(x), px(y))).collect();
        pen.wash(corners, pen.palette.ghost.mix(0.22))?;
        pen.path(tops, 1.0, pen.palette.ghost)?;
        pen.path(bottoms, 1.0, pen.palette.ghost)?;
    }
    let color = pen.palette.ghost.to_rgba();
    for (x, top, bottom) in run {
        pen.upright(*x, (*top, *bottom), 1.0, color)?;
        pen.level((x - cap, x + cap), *top, 1.0, color)?;
        pen.level((x - cap, x + cap), *bottom, 1.0, color)?;
    }
    Ok(())
}

/// One dash from string to string, or over every second step where they lie close.
fn ghost<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    panel: &Panel,
    plot: &Plot,
    compass: &Compass,
) -> Drawn<DB> {
    let at = |(index, value): (usize, f64)| (compass.x_of(index), plot.y_of(&panel.axis, value));
    let wide = compass.slot() >= 10.0 * pen.scale;
    for pair in panel.ghost.windows(2) {
        let [from, to] = [pair[0], pair[1]];
        if from.0 + 1 != to.0 || (!wide && from.0 % 2 == 1) {
            continue;
        }
        let (a, b) = (at(from), at(to));
        let between = |t: f64| (a.0 + t * (b.0 - a.0), a.1 + t * (b.1 - a.1));
        let share = if wide { 0.22 } else { 0.0 };
        pen.path([between(share), between(1.0 - share)].into_iter(), 1.4, pen.palette.ghost)?;
    }
    Ok(())
}

fn line<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    panel: &Panel,
    plot: &Plot,
    compass: &Compass,
) -> Drawn<DB> {
    for segment in &panel.segments {
        let points = panel.points.get(segment.clone()).unwrap_or_default();
        if points.len() > 1 {
            let at = |p: &CurvePoint| (compass.x_of(p.index), plot.y_of(&panel.axis, p.value));
            pen.path(points.iter().map(at), 1.5, pen.palette.accent)?;
        }
    }
    Ok(())
}

/// The radius of a mark, in pixels: as large as the slot allows.
fn mark_radius(compass: &Compass, scale: f64) -> f64 {
    (0.4 * compass.slot() / scale).clamp(1.8, 4.2) * scale
}

fn marks<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    panel: &Panel,
    plot: &Plot,
    compass: &Compass,
    style: &Style<'_>,
) -> Drawn<DB> {
    // A range is often no higher than a mark, which would hide it.
    let smaller = if panel.range.is_empty() { 1.0 } else { 0.7 };
    let radius = smaller * mark_radius(compass, pen.scale);
    for point in &panel.points {
        let at = (compass.x_of(point.index), plot.y_of(&panel.axis, point.value));
        let beyond = match panel.axis.reach(point.value) {
            Reach::Within => None,
            Reach::Above => Some(1.0),
            Reach::Below => Some(-1.0),
        };
        if let Some(down) = beyond {
            // The arrow says that something is wrong; there is no room for more.
            arrow(pen, at, radius.max(4.0 * pen.scale), down)?;
            continue;
        }
        pen.mark(point.mark, at, radius)?;
        if style.grave.contains(&point.index) {
            notice(pen, plot, at, radius, true)?;
        } else if style.warned.contains(&point.index) {
            notice(pen, plot, at, radius, false)?;
        }
    }
    Ok(())
}

/// An arrow at the edge of the plot, for a value beyond it: up when `down` is 1, else down.
fn arrow<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    at: (f64, f64),
    radius: f64,
    down: f64,
) -> Drawn<DB> {
    let corner = |x: f64, y: f64| (px(at.0 + x * radius), px(at.1 + y * down * radius));
    pen.polygon(vec![corner(0.0, 0.0), corner(1.2, 1.8), corner(-1.2, 1.8)], pen.palette.warn)?;
    let tail = at.1 + 4.0 * down * radius;
    pen.upright(at.0, (at.1.min(tail), at.1.max(tail)), 1.5, pen.palette.warn.to_rgba())
}

/// A ring round a mark and a stroke with a point over it: the finding is seen without its colour.
fn notice<DB: DrawingBackend>(
    pen: &Pen<'_, DB>,
    plot: &Plot,
    at: (f64, f64),
    radius: f64,
    grave: bool,
) -> Drawn<DB> {
    let (s, color) = (pen.scale, pen.palette.warn);
    let round = radius + 3.0 * s;
    pen.ring(at, round, if grave { 2.0 } else { 1.0 }, color)?;
    // Over the ring, or under it where there is no room.
    let up = at.1 - round - 9.0 * s >= plot.top - 4.0 * s;
    let sign = if up { -1.0 } else { 1.0 };
    let span = |from: f64, to: f64| {
        let (a, b) = (at.1 + sign * (round + from * s), at.1 + sign * (round + to * s));
        (a.min(b), a.max(b))
    };
    let thick = if grave { 2.0 } else { 1.0 };
    let (stroke, point) =
        if up { (span(4.0, 9.0), span(1.0, 3.0)) } else { (span(1.0, 6.0), span(7.0, 9.0)) };
    pen.upright(at.0, stroke, thick, color.to_rgba())?;
    pen.upright(at.0, point, thick, color.to_rgba())
}

fn titles<DB: DrawingBackend>(pen: &Pen<'_, DB>, panel: &Panel, plot: &Plot) -> Drawn<DB> {
    let s = pen.scale;
    let y = plot.top - 16.0 * s;
    pen.title(&panel.title, (plot.left, y), pen.palette.ink)?;
    // Beside the title and not at the right edge, where the highest string is pointed out.
    let title = css_width(&panel.title, TITLE * 1.15) + 14.0;
    let needed = title + css_width(&panel.band_words, SMALL);
    if !panel.band_words.is_empty() && needed * s <= plot.right - plot.left {
        let at = (plot.left + title * s, y + 1.0 * s);
        pen.word(&panel.band_words, at, Anchor::TopLeft, pen.palette.faint)?;
    }
    if panel.points.is_empty() && panel.ghost.is_empty() {
        let middle = ((plot.left + plot.right) / 2.0, (plot.top + plot.bottom) / 2.0);
        pen.word(say::NO_FIGURE.said(), middle, Anchor::Centre, pen.palette.faint)?;
    }
    Ok(())
}

/// Ticks and names of the notes, and the numbers of the strings.
fn axis<DB: DrawingBackend>(pen: &Pen<'_, DB>, curves: &Curves, layout: &Layout) -> Drawn<DB> {
    let (s, p, compass) = (pen.scale, pen.palette, &layout.compass);
    let top = layout.axis_top;
    for label in compass.note_labels(&curves.notes, s) {
        let (color, tick) = match label.kind {
            LabelKind::C => (p.c_mark, 5.0),
            LabelKind::F => (p.f_mark, 3.0),
            LabelKind::Note => (p.ink, 3.0),
        };
        let x = compass.x_of(label.index);
        pen.upright(x, (top, top + tick * s), 1.0, color.to_rgba())?;
        pen.word(&label.text, (x, top + 6.0 * s), Anchor::TopCentre, color)?;
    }
    let row = top + 21.0 * s;
    for index in compass.number_labels(s) {
        let number = (index + 1).to_string();
        pen.word(&number, (compass.x_of(index), row), Anchor::TopCentre, p.faint)?;
    }
    pen.word(say::STRING.said(), (3.0 * s, row), Anchor::TopLeft, p.faint)
}

#[cfg(test)]
mod tests {
    use plotters::prelude::{IntoDrawingArea, SVGBackend};

    use super::*;
    use crate::charts::palette::Palette;
    use crate::charts::pen::Medium;
    use crate::charts::{band, samples};
    use crate::design::document::Units;
    use crate::design::figures::WITH_CURVE;
    use crate::engine::analysis::{Analysis, Harp, Unknown, analyse};
    use crate::engine::figure::Figure;
    use crate::engine::tolerance::spreads_of_all;
    use crate::engine::units::Length;
    use crate::testing::assert_close;

    const THREE: [Figure; 3] = [Figure::Tension, Figure::PluckStiffness, Figure::LoadShare];

    fn curves(harp: &Harp, of: &[Figure], ghost: Option<&Analysis>) -> Curves {
        Curves::build(&analyse(harp), harp, &Units::default(), of, ghost, None)
    }

    fn with_range(harp: &Harp, of: &[Figure]) -> Curves {
        let spreads = spreads_of_all(harp);
        let units = Units::default();
        Curves::build(&analyse(harp), harp, &units, of, None, Some(&spreads))
    }

    fn plain(scale: f64) -> Style<'static> {
        Style::new(Palette::light(), scale, Medium::Svg)
    }

    fn svg(curves: &Curves, size: (u32, u32), style: &Style<'_>) -> String {
        let mut text = String::new();
        let area = SVGBackend::with_string(&mut text, size).into_drawing_area();
        draw(&area, curves, style).unwrap();
        area.present().unwrap();
        drop(area);
        text
    }

    fn count(text: &str, what: &str) -> usize {
        text.matches(what).count()
    }

    #[test]
    fn each_panel_names_its_quantity_and_unit_and_each_mark_its_material() {
        let text = svg(&curves(&samples::harp(47), &THREE, None), (900, 700), &plain(1.0));
        let words: Vec<&str> = text.lines().filter(|line| !line.starts_with('<')).collect();
        for word in [
            "Tension (N)",
            "Pluck stiffness (N/mm)",
            "Load share (%)",
            "target 0.70 to 1.90",
            "slack under 12, working to 75",
            "steel, wound",
            "nylon",
            "C4",
            "string",
            "47",
        ] {
            assert!(words.contains(&word), "{word} is not among {words:?}");
        }
        assert!(!text.contains("NaN") && !text.contains("inf"));
    }

    #[test]
    fn every_string_has_its_mark_and_every_run_its_line() {
        let curves = curves(&samples::harp(47), &[Figure::Length], None);
        let text = svg(&curves, (900, 300), &plain(1.0));
        // Plain and wound nylon are round: 15 and 4 discs, and one each in the legend.
        let solid = count(&text, "stroke=\"none\" stroke-width=\"1\"");
        assert_eq!(solid, 15 + 4 + 2, "discs, of wound strings with paper in them");
        // Gut squares, steel triangles, in the panel and in the legend.
        assert_eq!(count(&text, "<polygon"), 16 + 12 + 2);
        let line = "stroke=\"#0F6B62\" stroke-width=\"2\"";
        assert_eq!(count(&text, line), curves.panels[0].segments.len());
    }

    #[test]
    fn a_finding_is_pointed_out_by_ring_and_stroke() {
        let curves = curves(&samples::harp(22), &[Figure::Tension], None);
        let bare = svg(&curves, (640, 300), &plain(1.0));
        let style = Style { grave: &[3], warned: &[3, 8, 900], ..plain(1.0) };
        let marked = svg(&curves, (640, 300), &style);
        assert_eq!(count(&marked, "<circle") - count(&bare, "<circle"), 2);
        assert_eq!(count(&marked, "<rect") - count(&bare, "<rect"), 4);
    }

    #[test]
    fn a_value_beyond_the_axis_is_an_arrow_at_its_edge() {
        let mut harp = samples::harp(34);
        harp.strings[12].length = Ok(Length::from_mm(48_000.0));
        let curves = curves(&harp, &[Figure::Tension], None);
        let style = Style { grave: &[12], ..plain(1.0) };
        let text = svg(&curves, (640, 300), &style);
        assert_eq!(count(&text, "<polygon opacity=\"1\" fill=\"#B3402A\""), 1);
        assert_eq!(count(&text, "stroke=\"#B3402A\""), 0, "no ring round it");
    }

    #[test]
    fn a_selection_is_a_tint_behind_each_panel_and_the_axis() {
        let curves = curves(&samples::harp(22), &THREE, None);
        let bare = svg(&curves, (640, 300), &plain(1.0));
        for (selected, more) in [(2..5, 4), (2..2, 0), (30..40, 0), (20..400, 4)] {
            let style = Style { selected: Some(selected.clone()), ..plain(1.0) };
            let more_found =
                count(&svg(&curves, (640, 300), &style), "<rect") - count(&bare, "<rect");
            assert_eq!(more_found, more, "{selected:?}");
        }
    }

    #[test]
    fn the_ghost_is_dashed_and_named() {
        let (harp, mut other) = (samples::harp(22), samples::harp(22));
        other.strings[5].length = Ok(Length::from_mm(300.0));
        let ghost = analyse(&other);
        let text = svg(&curves(&harp, &[Figure::Tension], Some(&ghost)), (900, 300), &plain(1.0));
        assert_eq!(count(&text, "<polyline fill=\"none\" opacity=\"1\" stroke=\"#7A7F84\""), 21);
        assert!(text.contains("for comparison"));
    }

    #[test]
    fn a_range_is_washed_edged_barred_and_named() {
        let mut harp = samples::harp(47);
        // A string alone between two of other materials has a bar and no wash.
        harp.strings[20].make_up = harp.strings[0].make_up.clone();
        let (bare, ranged) =
            (curves(&harp, &[Figure::Tension], None), with_range(&harp, &[Figure::Tension]));
        let runs = ranged.panels[0].segments.iter().filter(|run| run.len() > 1).count();
        assert_eq!(runs + 1, ranged.panels[0].segments.len());
        for palette in [Palette::light(), Palette::dark(), Palette::print()] {
            let style = Style { palette, ..plain(1.0) };
            let (bare, ranged) = (svg(&bare, (900, 400), &style), svg(&ranged, (900, 400), &style));
            let more = |what: &str| count(&ranged, what) - count(&bare, what);
            // One more of each is the sample in the legend.
            assert_eq!(more("<polygon opacity=\"0.22\""), runs + 1);
            assert_eq!(more("<polyline"), 2 * (runs + 1));
            assert_eq!(more("<rect"), 3 * (47 + 3));
            assert_eq!(more("tolerance"), 1);
        }
    }

    #[test]
    fn a_range_lies_under_line_and_marks() {
        let text =
            svg(&with_range(&samples::harp(22), &[Figure::Tension]), (640, 300), &plain(1.0));
        let (_, plot) =
            text.split_once("Tension (N)").map_or(("", text.as_str()), |(a, _)| ("", a));
        let last_wash = plot.rfind("opacity=\"0.22\"").unwrap();
        let first_line = plot.find("stroke=\"#0F6B62\" stroke-width=\"2\"").unwrap();
        assert!(last_wash < first_line);
    }

    #[test]
    fn nothing_typed_is_said_quietly() {
        let none = svg(&curves(&samples::harp(0), &THREE, None), (640, 300), &plain(1.0));
        assert!(none.contains("No strings yet"));
        let unknown = svg(&curves(&samples::unknown(12), &THREE, None), (640, 300), &plain(1.0));
        assert_eq!(count(&unknown, "No string has this figure yet"), 3);
    }

    #[test]
    fn any_size_scale_and_harp_can_be_drawn() {
        let mut odd = samples::harp(40);
        odd.strings[3].length = Ok(Length::from_mm(1e7));
        odd.strings[9].length = Err(Unknown::Length);
        let harps = [samples::harp(0), samples::harp(1), samples::harp(150), odd];
        for harp in &harps {
            let curves = with_range(harp, &WITH_CURVE);
            let strings = band::build(&analyse(harp), harp, &Units::default());
            for size in [(0, 0), (1, 1), (40, 30), (90, 700), (900, 60), (640, 520)] {
                for scale in [0.0, 1.0, 3.0, f64::NAN] {
                    svg(&curves, size, &plain(scale));
                    let mut text = String::new();
                    let area = SVGBackend::with_string(&mut text, size).into_drawing_area();
                    band::draw(&area, &strings, &plain(scale)).unwrap();
                }
            }
        }
    }

    #[test]
    fn the_layout_divides_the_height() {
        let curves = curves(&samples::harp(34), &THREE, None);
        let layout = layout(640.0, 520.0, 1.0, &curves);
        let heights: Vec<f64> = layout.plots.iter().map(|plot| plot.bottom - plot.top).collect();
        assert!(heights.iter().all(|height| (height - heights[0]).abs() <= 1.0), "{heights:?}");
        assert_close(layout.plots[2].bottom, layout.axis_top, 1e-12, "the axis is at the foot");
    }

    #[test]
    fn curves_and_band_share_the_compass() {
        let harp = samples::harp(34);
        let curves = curves(&harp, &THREE, None);
        let strings = band::build(&analyse(&harp), &harp, &Units::default());
        let (one, other) =
            (layout(700.0, 500.0, 2.0, &curves), band::layout(700.0, 200.0, 2.0, &strings));
        assert_eq!(one.compass, other.compass);
    }
}
