//! From the analysis to what is drawn: points, breaks and limits of each panel, the same for every
//! screen and paper.

use std::ops::Range;

use crate::design::display;
use crate::design::document::Units;
use crate::design::figures::Scale;
use crate::engine::analysis::{Analysis, Harp, HarpString, StringFigures, is_soft};
use crate::engine::figure::Figure;
use crate::engine::pitch::Note;
use crate::engine::tolerance::Spreads;

use super::axis::{Axis, is_usable};
use super::marks::{LegendEntry, Mark, Marks};
use super::quantity::{self, TargetRange};
use crate::words::{charts as say, signed};

/// The value of one string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CurvePoint {
    /// Index of the string.
    pub index: usize,
    /// In the unit of the panel.
    pub value: f64,
    pub mark: Mark,
}

/// One quantity across the compass.
#[derive(Clone, Debug, PartialEq)]
pub struct Panel {
    pub figure: Figure,
    /// The name with the unit.
    pub title: String,
    /// What the band means, in a few words.
    pub band_words: String,
    pub axis: Axis,
    /// The strings whose value is known, from string 1 down.
    pub points: Vec<CurvePoint>,
    /// Ranges of `points` that one line joins: it breaks where the make-up changes to other
    /// materials and where a value is not known.
    pub segments: Vec<Range<usize>>,
    /// Index of the string in this harp and value in the design compared with.
    pub ghost: Vec<(usize, f64)>,
    /// Index of the string, and between which values it may be; of `points`, in their order, where it is
    /// known and asked for.
    pub range: Vec<(usize, f64, f64)>,
    pub band: TargetRange,
    /// The value at which a string breaks.
    pub breaks_at: Option<f64>,
}

impl Panel {
    /// Between which values a string may be.
    pub fn range_of(&self, index: usize) -> Option<(f64, f64)> {
        let place = self.range.binary_search_by_key(&index, |(index, ..)| *index).ok()?;
        self.range.get(place).map(|(_, low, high)| (*low, *high))
    }

    /// How far a string may be off to either side, with the one or two digits that such a figure bears.
    pub fn off_words(&self, index: usize) -> Option<String> {
        self.range_of(index).map(|(low, high)| few_digits(0.5 * (high - low)))
    }
}

/// A number of 0 or more in plain digits, with one that counts, or two where the first is a 1, but no more
/// than six decimals.
fn few_digits(value: f64) -> String {
    if value < 5e-7 {
        return "0".to_owned();
    }
    // From 1.95 up one digit is as near as two are for 1.
    let first = (0..6).find(|n| value * 10f64.powi(*n) >= 0.95).unwrap_or(6);
    let decimals = if value * 10f64.powi(first) < 1.95 { (first + 1).min(6) } else { first };
    signed(&format!("{value:.*}", usize::try_from(decimals).unwrap_or(0)))
}

/// Panels over one compass.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Curves {
    pub panels: Vec<Panel>,
    /// The note of each string, where there is one.
    pub notes: Vec<Option<Note>>,
    /// Each mark used, with what it means.
    pub legend: Vec<LegendEntry>,
}

impl Curves {
    /// The panels of some figures, in their order. `ghost` is the design compared with; `spreads` says
    /// for each string how far its figures may be off, where that is to be shown.
    pub fn build(
        analysis: &Analysis,
        harp: &Harp,
        units: &Units,
        of: &[Figure],
        ghost: Option<&Analysis>,
        spreads: Option<&[Spreads]>,
    ) -> Self {
        let marks = Marks::of(harp);
        let ground = Ground {
            analysis,
            harp,
            units,
            marks: &marks.of_string,
            changes: &changes(harp),
            ghost: &ghost.map(|ghost| matches(analysis, ghost)).unwrap_or_default(),
            ghost_analysis: ghost,
            spreads: spreads.unwrap_or_default(),
        };
        let panels = of.iter().map(|figure| panel(&ground, *figure)).collect();
        let notes = analysis.strings.iter().map(|figures| figures.note).collect();
        Self { panels, notes, legend: marks.legend }
    }
}

/// What all panels of a harp share.
struct Ground<'a> {
    analysis: &'a Analysis,
    harp: &'a Harp,
    units: &'a Units,
    marks: &'a [Mark],
    /// Whether the string is of other materials than the one above it.
    changes: &'a [bool],
    /// Index here and index there of the strings compared.
    ghost: &'a [(usize, usize)],
    ghost_analysis: Option<&'a Analysis>,
    /// For each string, or empty.
    spreads: &'a [Spreads],
}

/// What the band means, and what metals may bear, where it ends at what gut and plastics may.
fn metals_apart(words: String, figure: Figure, harp: &Harp) -> String {
    let has = |soft: bool| {
        let made = harp.strings.iter().filter_map(|string| string.make_up.as_ref().ok());
        made.into_iter().any(|make_up| is_soft(make_up) == soft)
    };
    let [soft, metals] = [true, false].map(|soft| harp.limits.most_share_percent(soft));
    if figure == Figure::LoadShare && soft < metals && has(true) && has(false) {
        say::metals_to(&display::percent(metals), &words)
    } else {
        words
    }
}

fn panel(ground: &Ground<'_>, figure: Figure) -> Panel {
    let Ground { analysis, harp, units, .. } = *ground;
    let strings = analysis.strings.iter().zip(ground.marks).enumerate();
    let point = |(index, (figures, mark)): (usize, (_, &Mark))| {
        quantity::value(figure, figures, units).map(|value| CurvePoint {
            index,
            value,
            mark: *mark,
        })
    };
    let points: Vec<CurvePoint> = strings.filter_map(point).collect();
    let there = |index: usize| ground.ghost_analysis?.strings.get(index);
    let ghost_point = |(here, index): &(usize, usize)| {
        there(*index)
            .and_then(|figures| quantity::value(figure, figures, units))
            .map(|value| (*here, value))
    };
    let ghost: Vec<(usize, f64)> = ground.ghost.iter().filter_map(ghost_point).collect();
    let range = range(ground, figure, &points);
    let limits = harp.limits_for_all();
    let band = quantity::band(figure, &limits, units);
    let breaks_at = quantity::breaks_at(figure);
    // A range that reaches below nothing would cost an axis of ratios its ratios.
    let is_log = quantity::scale(figure) == Scale::Log;
    let ends = range.iter().flat_map(|(_, low, high)| [*low, *high]);
    let ends = ends.filter(|value| !is_log || *value > 0.0);
    let ghosts = ghost.iter().map(|(_, value)| *value);
    let values: Vec<f64> = points.iter().map(|p| p.value).chain(ghosts).chain(ends).collect();
    let wanted: Vec<f64> = [band.low, band.high, breaks_at].into_iter().flatten().collect();
    Panel {
        figure,
        title: quantity::title(figure, units),
        band_words: metals_apart(quantity::band_words(figure, &limits, units), figure, harp),
        axis: Axis::around(&values, &wanted, quantity::scale(figure)),
        segments: segments(&points, ground.changes),
        points,
        ghost,
        range,
        band,
        breaks_at,
    }
}

/// Between which values each string may be, in the unit of the panel.
fn range(ground: &Ground<'_>, figure: Figure, points: &[CurvePoint]) -> Vec<(usize, f64, f64)> {
    let strings = &ground.analysis.strings;
    // Every unit is a factor, the same for all strings; one that is at 0 does not show it.
    let factor = points.iter().find_map(|point| {
        let factor = point.value / figure.value(strings.get(point.index)?).ok()?;
        (factor.is_finite() && factor > 0.0).then_some(factor)
    });
    let end = |point: &CurvePoint| {
        let off = factor.unwrap_or(1.0) * ground.spreads.get(point.index)?.of(figure).ok()?.total;
        // What is above nothing by its nature stays there, however far off it may be.
        let low = point.value - off;
        let low = if quantity::scale(figure) == Scale::Signed { low } else { low.max(0.0) };
        let high = point.value + off;
        (is_usable(low) && is_usable(high)).then_some((point.index, low, high))
    };
    points.iter().filter_map(end).collect()
}

/// For each string, whether its materials differ from those of the string above it.
fn changes(harp: &Harp) -> Vec<bool> {
    let differ = |pair: &[HarpString]| match (&pair[0].make_up, &pair[1].make_up) {
        (Ok(above), Ok(this)) => !above.has_materials_of(this),
        (Err(_), Err(_)) => false,
        _ => true,
    };
    std::iter::once(false).chain(harp.strings.windows(2).map(differ)).collect()
}

fn segments(points: &[CurvePoint], changes: &[bool]) -> Vec<Range<usize>> {
    let mut segments: Vec<Range<usize>> = Vec::new();
    for (place, point) in points.iter().enumerate() {
        let follows = place.checked_sub(1).is_some_and(|p| points[p].index + 1 == point.index);
        let changed = changes.get(point.index).copied().unwrap_or(true);
        match segments.last_mut() {
            Some(open) if follows && !changed => open.end = place + 1,
            _ => segments.push(place..place + 1),
        }
    }
    segments
}

/// The strings of two designs that belong together: those of one letter and octave, whatever is
/// added at the ends; where a note is missing, those of one number. In this harp's order.
fn matches(here: &Analysis, there: &Analysis) -> Vec<(usize, usize)> {
    let step = |figures: Option<&StringFigures>| figures.and_then(|f| f.note).map(Note::step);
    let partner = |(index, figures)| {
        let same_number = there.strings.get(index);
        let Some(wanted) = step(Some(figures)) else { return same_number.map(|_| (index, index)) };
        if step(same_number) == Some(wanted) {
            return Some((index, index));
        }
        let found = there.strings.iter().position(|other| step(Some(other)) == Some(wanted));
        found.map(|found| (index, found))
    };
    here.strings.iter().enumerate().filter_map(partner).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::charts::samples;
    use crate::design::document::ForceUnit;
    use crate::design::figures::WITH_CURVE;
    use crate::engine::analysis::{Unknown, analyse};
    use crate::engine::tolerance::spreads_of_all;
    use crate::engine::units::Length;
    use crate::testing::assert_close;

    fn build(
        analysis: &Analysis,
        harp: &Harp,
        units: &Units,
        figure: Figure,
        ghost: Option<&Analysis>,
    ) -> Panel {
        let curves = Curves::build(analysis, harp, units, &[figure], ghost, None);
        curves.panels.into_iter().next().expect("one quantity was asked for, so there is one panel")
    }

    fn build_one(harp: &Harp, figure: Figure) -> Panel {
        build(&analyse(harp), harp, &Units::default(), figure, None)
    }

    #[test]
    fn the_line_breaks_where_the_materials_change() {
        let harp = samples::harp(47);
        let panel = build_one(&harp, Figure::Tension);
        assert_eq!(panel.points.len(), 47);
        assert_eq!(panel.segments, [0..15, 15..31, 31..35, 35..47]);
    }

    #[test]
    fn the_line_breaks_where_a_value_is_unknown() {
        let mut harp = samples::harp(12);
        harp.strings[4].length = Err(Unknown::Length);
        let panel = build_one(&harp, Figure::Tension);
        assert_eq!(panel.points.len(), 11);
        assert_eq!(panel.segments[..2], [0..4, 4..8]);
        assert!(panel.points.iter().all(|point| point.index != 4));
        assert_eq!(build_one(&harp, Figure::Gauge).points.len(), 12, "the gauge is known");
    }

    #[test]
    fn a_string_without_make_up_still_has_its_length() {
        let mut harp = samples::harp(12);
        harp.strings[4].make_up = Err(Unknown::MakeUp);
        let panel = build_one(&harp, Figure::Length);
        assert_eq!(panel.points.len(), 12);
        assert_eq!(panel.segments[..3], [0..4, 4..5, 5..9]);
    }

    #[test]
    fn a_design_is_compared_note_by_note() {
        let (harp, mut other) = (samples::harp(30), samples::harp(30));
        other.strings.drain(..2);
        let panel = build(
            &analyse(&harp),
            &harp,
            &Units::default(),
            Figure::Tension,
            Some(&analyse(&other)),
        );
        let same: Vec<_> = panel.points.iter().skip(2).map(|p| (p.index, p.value)).collect();
        assert_eq!(panel.ghost, same);
    }

    #[test]
    fn strings_without_notes_are_compared_by_number() {
        let mut harp = samples::harp(9);
        harp.strings.iter_mut().for_each(|string| string.note = None);
        let analysis = analyse(&harp);
        let units = Units::default();
        let panel = build(&analysis, &harp, &units, Figure::Length, Some(&analysis));
        assert_eq!(panel.ghost.len(), 9);
    }

    fn with_range(harp: &Harp, units: &Units, figure: Figure) -> Panel {
        let (analysis, spreads) = (analyse(harp), spreads_of_all(harp));
        let curves = Curves::build(&analysis, harp, units, &[figure], None, Some(&spreads));
        curves.panels.into_iter().next().expect("one quantity was asked for, so there is one panel")
    }

    #[test]
    fn a_range_lies_about_its_string_in_the_unit_of_the_panel() {
        let harp = samples::harp(34);
        let spreads = spreads_of_all(&harp);
        let pounds = Units { force: ForceUnit::Lbf, ..Units::default() };
        for (units, newtons) in [(Units::default(), 1.0), (pounds, 4.448_221_615_260_5)] {
            let panel = with_range(&harp, &units, Figure::Tension);
            assert_eq!(panel.range.len(), 34);
            for (point, (index, low, high)) in panel.points.iter().zip(&panel.range) {
                assert_eq!(point.index, *index);
                let total_n = spreads[*index].of(Figure::Tension).unwrap().total;
                assert_close(0.5 * (high - low) * newtons, total_n, 1e-9, index);
                assert_close(0.5 * (high + low), point.value, 1e-12, index);
                assert_eq!(panel.range_of(*index), Some((*low, *high)));
            }
        }
        assert_eq!(build_one(&harp, Figure::Tension).range, [], "only when asked for");
    }

    #[test]
    fn the_axis_makes_room_for_the_range() {
        let mut harp = samples::harp(34);
        harp.conditions.tolerances.length = Length::from_mm(20.0);
        for figure in WITH_CURVE {
            let panel = with_range(&harp, &Units::default(), figure);
            let (low, high) = panel.axis.range();
            assert!(
                panel.range.iter().all(|(_, least, most)| low <= *least && *most <= high),
                "{figure:?}"
            );
        }
    }

    #[test]
    fn a_range_down_to_nothing_leaves_equal_ratios() {
        let mut harp = samples::harp(34);
        harp.conditions.tolerances.length = Length::from_mm(200.0);
        let panel = with_range(&harp, &Units::default(), Figure::Length);
        assert!(panel.range.iter().any(|(_, low, _)| *low == 0.0));
        assert!(panel.axis.is_log());
    }

    #[test]
    fn what_a_string_may_be_off_has_few_digits() {
        for (value, words) in [
            (0.0, "0"),
            (0.001_234, "0.0012"),
            (0.055, "0.06"),
            (0.0996, "0.10"),
            (0.14, "0.14"),
            (0.36, "0.4"),
            (1.3, "1.3"),
            (3.44, "3"),
            (9.96, "10"),
            (31.4, "31"),
            (1234.0, "1234"),
        ] {
            assert_eq!(few_digits(value), words);
        }
    }

    #[test]
    fn any_number_of_strings_makes_panels_of_numbers() {
        for harp in [samples::harp(0), samples::harp(1), samples::harp(150), samples::unknown(8)] {
            let analysis = analyse(&harp);
            let units = Units::default();
            let spreads = spreads_of_all(&harp);
            let (ghost, spreads) = (Some(&analysis), Some(spreads.as_slice()));
            let all = &WITH_CURVE;
            let curves = Curves::build(&analysis, &harp, &units, all, ghost, spreads);
            assert_eq!(curves.panels.len(), WITH_CURVE.len());
            for panel in &curves.panels {
                assert!(panel.points.iter().all(|point| point.value.is_finite()));
                assert!(panel.range.iter().all(|(_, low, high)| low <= high && high.is_finite()));
                let joined: usize = panel.segments.iter().map(Range::len).sum();
                assert_eq!(joined, panel.points.len());
                let (low, high) = panel.axis.range();
                assert!(low < high);
            }
        }
    }
}
