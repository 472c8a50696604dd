//! What is drawn over the drawing of a harp: diagrams of forces, how the curve of the pins bends, measures.

/// A place in the coordinates of the drawing, in millimetres: `x` towards the treble, `y` up.
pub type Place = (f64, f64);

/// A word at a place.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    pub at: Place,
    pub text: String,
}

/// Lines, areas and words over a drawing.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Overlay {
    /// What is shown and in which unit, in a sentence.
    pub caption: String,
    /// Closed outlines that are tinted.
    pub areas: Vec<Vec<Place>>,
    /// Open lines.
    pub lines: Vec<Vec<Place>>,
    /// Words.
    pub labels: Vec<Label>,
}
