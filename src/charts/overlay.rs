//! What is drawn over the drawing of a harp: diagrams of forces, how the harmonic curve bends, measures.

/// A place in the coordinates of the drawing, in millimetres: `x` towards the treble, `y` up.
pub type PlaceMm = (f64, f64);

/// On which side of its place a word stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Side {
    #[default]
    Middle,
    Left,
    Right,
}

/// A word at a place; each of its lines below the one before.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    pub at: PlaceMm,
    pub text: String,
    pub side: Side,
}

impl Label {
    /// A word with its middle at a place.
    pub const fn new(at: PlaceMm, text: String) -> Self {
        Self { at, text, side: Side::Middle }
    }
}

/// Lines, areas and words over a drawing.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Overlay {
    /// What is shown and in which unit, in a sentence.
    pub caption: String,
    /// Closed outlines that are tinted.
    pub areas: Vec<Vec<PlaceMm>>,
    /// Open lines.
    pub lines: Vec<Vec<PlaceMm>>,
    /// Open lines that are dashed: the same under another condition.
    pub dashed: Vec<Vec<PlaceMm>>,
    /// Open lines of limits.
    pub limits: Vec<Vec<PlaceMm>>,
    /// Words.
    pub labels: Vec<Label>,
}
