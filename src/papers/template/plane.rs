//! Points, rectangles and curves in millimetres, x to the right and y up.

use super::limits::MOST_MM;

/// How far a line that stands for a curve may be from it.
pub const FLATNESS_MM: f64 = 0.005;

/// A place in millimetres from the origin, x to the right and y up.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PointMm {
    pub x_mm: f64,
    pub y_mm: f64,
}

impl PointMm {
    pub const fn new(x_mm: f64, y_mm: f64) -> Self {
        Self { x_mm, y_mm }
    }

    pub(super) fn is_usable(self) -> bool {
        // Not a number is in no range.
        [self.x_mm, self.y_mm].iter().all(|mm| mm.abs() <= MOST_MM)
    }
}

/// A rectangle with its sides along the axes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extent {
    pub left_mm: f64,
    pub bottom_mm: f64,
    pub right_mm: f64,
    pub top_mm: f64,
}

impl Extent {
    pub const fn new(left_mm: f64, bottom_mm: f64, right_mm: f64, top_mm: f64) -> Self {
        Self { left_mm, bottom_mm, right_mm, top_mm }
    }

    pub const fn width_mm(&self) -> f64 {
        self.right_mm - self.left_mm
    }

    pub const fn height_mm(&self) -> f64 {
        self.top_mm - self.bottom_mm
    }

    /// Larger by `mm` on each side.
    pub const fn padded(self, mm: f64) -> Self {
        Self::new(self.left_mm - mm, self.bottom_mm - mm, self.right_mm + mm, self.top_mm + mm)
    }

    pub const fn meets(&self, other: &Self) -> bool {
        self.left_mm <= other.right_mm
            && other.left_mm <= self.right_mm
            && self.bottom_mm <= other.top_mm
            && other.bottom_mm <= self.top_mm
    }

    /// The least that holds all points; `None` for none.
    pub fn of(points: impl IntoIterator<Item = PointMm>) -> Option<Self> {
        points.into_iter().fold(None, |extent: Option<Self>, at| {
            let old = extent.unwrap_or(Self::new(at.x_mm, at.y_mm, at.x_mm, at.y_mm));
            Some(Self::new(
                old.left_mm.min(at.x_mm),
                old.bottom_mm.min(at.y_mm),
                old.right_mm.max(at.x_mm),
                old.top_mm.max(at.y_mm),
            ))
        })
    }
}

/// The curves as one line of many points, at most [`FLATNESS_MM`] off.
///
/// A cubic of `n` even steps is off by at most `max|B''| / (8 n²)`, and
/// `max|B''| = 6 max(|P0 - 2 P1 + P2|, |P1 - 2 P2 + P3|)`.
///
/// # Source
///
/// The error of linear interpolation, any textbook of numerical analysis; from memory.
pub fn flattened(start: PointMm, curves: &[[PointMm; 3]]) -> Vec<PointMm> {
    let mut points = vec![start];
    let mut from = start;
    for curve in curves {
        let [first, second, end] = curve;
        let steps = steps(from, curve);
        for step in 1..steps {
            let t = step as f64 / steps as f64;
            let u = 1.0 - t;
            let mix = |p: f64, q: f64, r: f64, s: f64| {
                u * u * u * p + 3.0 * u * u * t * q + 3.0 * u * t * t * r + t * t * t * s
            };
            points.push(PointMm::new(
                mix(from.x_mm, first.x_mm, second.x_mm, end.x_mm),
                mix(from.y_mm, first.y_mm, second.y_mm, end.y_mm),
            ));
        }
        points.push(*end);
        from = *end;
    }
    points
}

/// How many even steps of a curve keep within [`FLATNESS_MM`]; see [`flattened`].
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the cast saturates, and NaN becomes 0"
)]
pub(super) fn steps(from: PointMm, [first, second, end]: &[PointMm; 3]) -> usize {
    let bend = |a: PointMm, b: PointMm, c: PointMm| {
        (a.x_mm - 2.0 * b.x_mm + c.x_mm).hypot(a.y_mm - 2.0 * b.y_mm + c.y_mm)
    };
    let bend_mm = bend(from, *first, *second).max(bend(*first, *second, *end));
    // Wide of any curve that is allowed, and small enough to be added up.
    let steps = (0.75 * bend_mm / FLATNESS_MM).sqrt().ceil().clamp(1.0, 1e9);
    steps as usize
}

/// Whether curves end where they began, so that they go round an area.
pub(super) fn is_closed(start: PointMm, curves: &[[PointMm; 3]]) -> bool {
    curves.last().is_some_and(|curve| curve[2] == start)
}

/// Points on a circle, whose sides are at most a tenth of a millimetre inside it. Only to find the sheets
/// that it touches.
#[expect(clippy::cast_possible_truncation, reason = "at most a thousand, by the greatest radius")]
pub(super) fn round(centre: PointMm, radius_mm: f64) -> Vec<PointMm> {
    let half_turn = (1.0 - 0.1 / radius_mm).clamp(-1.0, 1.0).acos();
    let steps = (std::f64::consts::PI / half_turn).ceil().clamp(8.0, 1_000.0);
    let at = |step: i32| {
        let (sin, cos) = (std::f64::consts::TAU * f64::from(step) / steps).sin_cos();
        PointMm::new(centre.x_mm + radius_mm * cos, centre.y_mm + radius_mm * sin)
    };
    (0..steps as i32).map(at).collect()
}
