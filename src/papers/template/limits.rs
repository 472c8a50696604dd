//! How large a template may be, and why one is not written.

use thiserror::Error;

use crate::words::{Words, templates as say};

/// No coordinate is further from the origin, and no side of the drawing longer.
pub const MOST_MM: f64 = 20_000.0;
/// Shapes in all layers together.
pub const MOST_SHAPES: usize = 20_000;
/// Points in all shapes together, those of curves counted as lines.
pub const MOST_POINTS: usize = 100_000;
/// Letters of one text, of the title or of a note, and the number of notes.
pub const MOST_LETTERS: usize = 400;
/// The highest letters that are drawn.
pub const MOST_LETTER_MM: f64 = 200.0;

/// Why a template is not written.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum TemplateError {
    #[error("{}", say::EMPTY)]
    Empty,
    #[error("{}", say::point(.layer, &MOST_MM, .x_mm, .y_mm))]
    Point { layer: Words, x_mm: f64, y_mm: f64 },
    #[error("{}", say::size(&whole(*.height_mm), &MOST_MM, &whole(*.width_mm)))]
    Size { width_mm: f64, height_mm: f64 },
    #[error("{}", say::measure(.got_mm, .layer, .most_mm, .what))]
    Measure { layer: Words, what: Words, most_mm: f64, got_mm: f64 },
    #[error("{}", say::angle(.got_deg, .layer))]
    Angle { layer: Words, got_deg: f64 },
    #[error("{}", say::short(.layer))]
    Short { layer: Words },
    #[error("{}", say::many(&MOST_POINTS, &MOST_SHAPES, .points, .shapes))]
    Many { shapes: usize, points: usize },
    #[error("{}", say::letters(.got, &MOST_LETTERS))]
    Letters { got: usize },
    #[error("{}", say::overlap(.got_mm, .least_mm, .most_mm))]
    Overlap { least_mm: f64, most_mm: f64, got_mm: f64 },
    #[error("{}", say::too_many_sheets(.most))]
    Sheets { most: usize },
    #[error("{}", say::large_sheet(&whole(*.height_mm), &whole(*.most_mm), &whole(*.width_mm)))]
    LargeSheet { most_mm: f64, width_mm: f64, height_mm: f64 },
}

fn whole(mm: f64) -> String {
    format!("{mm:.0}")
}
