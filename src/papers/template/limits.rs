//! How large a template may be, and why one is not written.

use thiserror::Error;

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
    #[error("a template must have something to draw, got no shape (add a layer)")]
    Empty,
    #[error(
        "every point of a template must be a number within {MOST_MM} mm of the origin, got \
         {x_mm} mm and {y_mm} mm in the layer {layer} (check the lengths)"
    )]
    Point { layer: &'static str, x_mm: f64, y_mm: f64 },
    #[error(
        "the drawing must be at most {MOST_MM} mm wide and high, got {width_mm:.0} mm by \
         {height_mm:.0} mm (check the lengths)"
    )]
    Size { width_mm: f64, height_mm: f64 },
    #[error(
        "a {what} in the layer {layer} must be greater than 0 and at most {most_mm} mm, got \
         {got_mm} mm (change it)"
    )]
    Measure { layer: &'static str, what: &'static str, most_mm: f64, got_mm: f64 },
    #[error("an angle in the layer {layer} must be a number, got {got_deg} (change it)")]
    Angle { layer: &'static str, got_deg: f64 },
    #[error(
        "a line in the layer {layer} must have at least two points, got fewer (leave the line out)"
    )]
    Short { layer: &'static str },
    #[error(
        "a template must have at most {MOST_SHAPES} shapes and {MOST_POINTS} points, got \
         {shapes} and {points} (draw fewer layers)"
    )]
    Many { shapes: usize, points: usize },
    #[error(
        "a text, a title and a note must have at most {MOST_LETTERS} letters, and there must be at most \
         {MOST_LETTERS} notes, got {got} (shorten it)"
    )]
    Letters { got: usize },
    #[error(
        "sheets must overlap by {least_mm} mm to {most_mm} mm, got {got_mm} mm (choose another \
         overlap)"
    )]
    Overlap { least_mm: f64, most_mm: f64, got_mm: f64 },
    #[error(
        "a template must fit on at most {most} sheets, got more (print on one large sheet instead, \
         or draw fewer layers)"
    )]
    Sheets { most: usize },
    #[error(
        "one large sheet must be at most {most_mm:.0} mm wide and high, got {width_mm:.0} mm by \
         {height_mm:.0} mm (print on small sheets instead)"
    )]
    LargeSheet { most_mm: f64, width_mm: f64, height_mm: f64 },
}
