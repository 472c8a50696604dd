//! How far the figures of all strings reach, before and after.

use super::words::{Line, line};
use crate::design::display::{NONE, figure_unit, percent, stiffness, total_with_unit};
use crate::design::document::Design;
use crate::engine::analysis::{Analysis, StringFigures};
use crate::engine::figure::Figure;
use crate::words::choose as say;

/// The tension of all strings, and how far feel and load share reach, before and after.
pub(super) fn ranges(design: &Design, (before, after): (&Analysis, &Analysis)) -> Vec<Line> {
    let units = &design.units;
    let total = |analysis: &Analysis| {
        let text = total_with_unit(analysis.total_tension, units.force);
        let all = analysis.strings.len();
        match analysis.without_tension {
            0 => text,
            none => say::total_of_some(&all, &text, &(all - none)),
        }
    };
    let feel = |analysis: &Analysis| {
        let figure = |figures: &StringFigures| figures.pluck_stiffness.ok();
        let unit = figure_unit(Figure::PluckStiffness, units);
        match range(analysis, figure) {
            Some((low, high)) => {
                say::from_to(&stiffness(high, units.force), &stiffness(low, units.force), &unit)
            }
            None => NONE.to_owned(),
        }
    };
    let share = |analysis: &Analysis| {
        let figure = |figures: &StringFigures| figures.load_share_percent.ok();
        match range(analysis, figure) {
            Some((low, high)) => say::from_to(&percent(high), &percent(low), &"%"),
            None => NONE.to_owned(),
        }
    };
    vec![
        line(say::LINE_TOTAL, total(before), total(after)),
        line(say::LINE_FEEL, feel(before), feel(after)),
        line(say::LINE_SHARE, share(before), share(after)),
    ]
}

/// The lowest and the highest of a figure.
fn range<T: Copy + PartialOrd>(
    analysis: &Analysis,
    figure: impl Fn(&StringFigures) -> Option<T>,
) -> Option<(T, T)> {
    let mut range: Option<(T, T)> = None;
    for value in analysis.strings.iter().filter_map(figure) {
        let (low, high) = range.unwrap_or((value, value));
        range =
            Some((if value < low { value } else { low }, if value > high { value } else { high }));
    }
    range
}
