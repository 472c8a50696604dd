//! The strings' own axes: across and along them.

use crate::engine::structure::frame::Point;
use crate::engine::units::Length;

/// Turns places from the strings' own axes to those of the drawing and back; all in metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Axes {
    /// Sine and cosine of the angle between strings and board.
    board: (f64, f64),
    /// Sine and cosine of the lean.
    lean: (f64, f64),
}

impl Axes {
    pub(super) fn new(board_angle_rad: f64, lean_rad: f64) -> Self {
        Self { board: board_angle_rad.sin_cos(), lean: lean_rad.sin_cos() }
    }

    /// Sine of the angle between strings and board: across the strings over along the board.
    pub(super) const fn sine(&self) -> f64 {
        self.board.0
    }

    /// Cosine of that angle.
    pub(super) const fn cosine(&self) -> f64 {
        self.board.1
    }

    /// The place on the board's line at a distance along it.
    pub(super) const fn on_board(&self, along_board_m: f64) -> (f64, f64) {
        (along_board_m * self.board.0, along_board_m * self.board.1)
    }

    pub(super) fn point(&self, (across, along): (f64, f64)) -> Point {
        let (sine, cosine) = self.lean;
        let (x, y) = (across * cosine + along * sine, along * cosine - across * sine);
        Point { x: Length::from_m(x), y: Length::from_m(y) }
    }

    pub(super) fn own(&self, at: Point) -> (f64, f64) {
        let ((sine, cosine), (x, y)) = (self.lean, (at.x.to_m(), at.y.to_m()));
        (x * cosine - y * sine, x * sine + y * cosine)
    }
}
