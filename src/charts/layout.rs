//! Where the panels, the legend and the axis of the curves go: apart from the drawing, so that the
//! page can place its cross-hair and find the string under the mouse without drawing it again.

use super::axis::Axis;
use super::compass::{CHARACTER, Compass, as_f64};
use super::marks::Mark;
use super::pen::{SMALL, safe_scale};
use super::series::Curves;
use crate::words::charts as say;

/// Height of one row of the legend, in CSS pixels.
pub(super) const LEGEND_ROW: f64 = 18.0;
/// Most rows of the legend; what has no room in them is left out.
const LEGEND_ROWS: usize = 2;
/// Height of the strip above each plot for its title, in CSS pixels.
pub(super) const TITLE_STRIP: f64 = 22.0;
/// Height below the last plot for notes and string numbers, in CSS pixels.
pub(super) const AXIS_STRIP: f64 = 36.0;
/// Room above the first panel, in CSS pixels.
pub(super) const TOP: f64 = 3.0;

/// A plot's rectangle, in pixels of the drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plot {
    pub left: f64,
    pub top: f64,
    pub right: f64,
    pub bottom: f64,
}

impl Plot {
    /// The height of a value on an axis that spans the plot.
    pub fn y_of(&self, axis: &Axis, value: f64) -> f64 {
        self.bottom - axis.fraction(value) * (self.bottom - self.top)
    }
}

/// Where everything is, in pixels of the drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Layout {
    pub compass: Compass,
    /// One for each panel, from the top.
    pub plots: Vec<Plot>,
    /// Where the compass axis begins; it reaches to the bottom.
    pub axis_top: f64,
    /// For each legend entry that has room: its row, and where it begins.
    pub(super) legend: Vec<(usize, f64)>,
}

/// Works out where the panels go in an area of a size in pixels, `scale` of them to a CSS pixel.
pub fn layout(width_px: f64, height_px: f64, scale: f64, curves: &Curves) -> Layout {
    let scale = safe_scale(scale);
    let compass = Compass::across(width_px, scale, curves.notes.len());
    let legend = legend_places(curves, compass.left, compass.right, scale);
    let rows = legend.last().map_or(0, |(row, _)| row + 1);
    let top = (TOP + as_f64(rows) * LEGEND_ROW) * scale;
    let axis_top = (height_px - AXIS_STRIP * scale).round().max(top);
    let each = (axis_top - top) / as_f64(curves.panels.len().max(1));
    let plots = (0..curves.panels.len()).map(|n| {
        let above = top + as_f64(n) * each;
        let bottom = (above + each).round();
        let top = (above + TITLE_STRIP * scale).round().min(bottom);
        Plot { left: compass.left, top, right: compass.right, bottom }
    });
    Layout { compass, plots: plots.collect(), axis_top, legend }
}

/// The guessed width of a text, in CSS pixels.
pub(super) fn css_width(text: &str, size: f64) -> f64 {
    as_f64(text.chars().count()) * CHARACTER * size
}

fn has_ghost(curves: &Curves) -> bool {
    curves.panels.iter().any(|panel| !panel.ghost.is_empty())
}

fn has_range(curves: &Curves) -> bool {
    curves.panels.iter().any(|panel| !panel.range.is_empty())
}

/// What an entry of the legend explains.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Explained {
    Mark(Mark),
    /// The design compared with.
    Ghost,
    /// The range about a curve.
    Range,
}

/// What the legend explains, with its labels; the ghost and the range come last.
pub(super) fn legend_entries(curves: &Curves) -> impl Iterator<Item = (Explained, &str)> {
    let marks = curves.legend.iter().map(|e| (Explained::Mark(e.mark), e.label.as_str()));
    let ghost = has_ghost(curves).then_some((Explained::Ghost, say::COMPARED.said()));
    marks.chain(ghost).chain(has_range(curves).then_some((Explained::Range, say::RANGE.said())))
}

fn legend_places(curves: &Curves, left: f64, right: f64, scale: f64) -> Vec<(usize, f64)> {
    let (mut row, mut x) = (0, left);
    let mut places = Vec::new();
    for (_, label) in legend_entries(curves) {
        let wide = (css_width(label, SMALL) + 32.0) * scale;
        if x > left && x + wide > right {
            (row, x) = (row + 1, left);
        }
        if row == LEGEND_ROWS {
            break;
        }
        places.push((row, x));
        x += wide;
    }
    places
}
