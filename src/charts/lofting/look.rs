//! Which part of the drawing is in sight, and how large.

use std::fmt::Write as _;

use super::PlaceMm;
use super::svg::number;

/// The least and the greatest number of pixels for a millimetre.
const LEAST_PX: f64 = 0.02;
const MOST_PX: f64 = 40.0;
/// White around a drawing that fills the paper, in pixels.
const EDGE_PX: f64 = 30.0;
/// The paper fits what is rounded out to so many millimetres, so that it stays at rest while a pin is moved a little.
const STEP_MM: f64 = 20.0;

/// What a drawing covers, in millimetres with `y` up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extent {
    pub left: f64,
    pub right: f64,
    pub bottom: f64,
    pub top: f64,
}

impl Extent {
    /// Around places; `None` where none is a number.
    pub fn of(places: impl Iterator<Item = PlaceMm>) -> Option<Self> {
        let mut found: Option<Self> = None;
        for (x, y) in places.filter(|(x, y)| x.is_finite() && y.is_finite()) {
            let now = found.unwrap_or(Self { left: x, right: x, bottom: y, top: y });
            found = Some(Self {
                left: now.left.min(x),
                right: now.right.max(x),
                bottom: now.bottom.min(y),
                top: now.top.max(y),
            });
        }
        found
    }

    /// Around both.
    pub fn with(self, other: Self) -> Self {
        Self {
            left: self.left.min(other.left),
            right: self.right.max(other.right),
            bottom: self.bottom.min(other.bottom),
            top: self.top.max(other.top),
        }
    }

    fn rounded_out(self) -> Self {
        let down = |mm: f64| (mm / STEP_MM).floor() * STEP_MM;
        let up = |mm: f64| (mm / STEP_MM).ceil() * STEP_MM;
        Self {
            left: down(self.left),
            right: up(self.right),
            bottom: down(self.bottom),
            top: up(self.top),
        }
    }
}

/// Where the upper left corner of the paper lies in the drawing, and the size of a millimetre.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Look {
    pub left_mm: f64,
    pub top_mm: f64,
    pub px_per_mm: f64,
}

impl Look {
    /// The whole of a drawing in the middle of a paper of a size in pixels.
    pub fn fit(extent: Extent, (wide, high): (f64, f64)) -> Self {
        let Extent { left, right, bottom, top } = extent.rounded_out();
        let across = (wide - 2.0 * EDGE_PX).max(10.0) / (right - left).max(1.0);
        let up = (high - 2.0 * EDGE_PX).max(10.0) / (top - bottom).max(1.0);
        let px_per_mm = across.min(up).clamp(LEAST_PX, MOST_PX);
        Self {
            left_mm: (left + right) / 2.0 - wide / px_per_mm / 2.0,
            top_mm: f64::midpoint(bottom, top) + high / px_per_mm / 2.0,
            px_per_mm,
        }
    }

    /// The place under a pixel of the paper.
    pub fn place(self, (x, y): (f64, f64)) -> PlaceMm {
        (self.left_mm + x / self.px_per_mm, self.top_mm - y / self.px_per_mm)
    }

    /// The pixel over a place.
    pub fn pixel(self, (x, y): PlaceMm) -> (f64, f64) {
        ((x - self.left_mm) * self.px_per_mm, (self.top_mm - y) * self.px_per_mm)
    }

    /// Larger or smaller, with the place under a pixel left where it is.
    pub fn zoomed(self, times: f64, at: (f64, f64)) -> Self {
        let here = self.place(at);
        let px_per_mm = (self.px_per_mm * times).clamp(LEAST_PX, MOST_PX);
        Self { left_mm: here.0 - at.0 / px_per_mm, top_mm: here.1 + at.1 / px_per_mm, px_per_mm }
    }

    /// The drawing moved by pixels to the right and down.
    pub fn moved(self, (right, down): (f64, f64)) -> Self {
        Self {
            left_mm: self.left_mm - right / self.px_per_mm,
            top_mm: self.top_mm + down / self.px_per_mm,
            ..self
        }
    }

    /// The `viewBox` of a paper of a size in pixels.
    pub fn view_box(self, (wide, high): (f64, f64)) -> String {
        let mut text = String::new();
        for value in [self.left_mm, -self.top_mm, wide / self.px_per_mm, high / self.px_per_mm] {
            number(&mut text, value);
            let _ = text.write_char(' ');
        }
        text
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    const EXTENT: Extent = Extent { left: -100.0, right: 500.0, bottom: 0.0, top: 1_400.0 };

    #[test]
    fn the_whole_drawing_lies_on_the_paper_with_the_same_edge_on_both_sides() {
        for size in [(600.0, 500.0), (390.0, 560.0), (900.0, 200.0)] {
            let look = Look::fit(EXTENT, size);
            let low = look.pixel((EXTENT.left, EXTENT.bottom));
            let high = look.pixel((EXTENT.right, EXTENT.top));
            assert_close(low.0, size.0 - high.0, 1e-9, "left and right");
            assert_close(high.1, size.1 - low.1, 1e-9, "top and bottom");
            assert!(high.1 >= EDGE_PX - 1e-9 && low.0 >= EDGE_PX - 1e-9, "{look:?}");
        }
    }

    #[test]
    fn the_place_under_the_pointer_stays_when_the_drawing_grows() {
        let look = Look::fit(EXTENT, (600.0, 500.0));
        let at = (133.0, 71.0);
        let before = look.place(at);
        let after = look.zoomed(2.5, at).place(at);
        assert_close(after.0, before.0, 1e-9, "x");
        assert_close(after.1, before.1, 1e-9, "y");
        assert_close(look.zoomed(1e9, at).px_per_mm, MOST_PX, 1e-12, "the greatest");
    }

    #[test]
    fn the_drawing_follows_the_hand() {
        let look = Look::fit(EXTENT, (600.0, 500.0)).moved((30.0, -12.0));
        let before = Look::fit(EXTENT, (600.0, 500.0)).pixel((10.0, 20.0));
        let after = look.pixel((10.0, 20.0));
        assert_close(after.0 - before.0, 30.0, 1e-9, "to the right");
        assert_close(after.1 - before.1, -12.0, 1e-9, "down");
    }

    #[test]
    fn a_small_change_of_the_harp_leaves_the_paper_at_rest() {
        let taller = Extent { top: 1_386.0, ..EXTENT };
        assert_eq!(Look::fit(taller, (600.0, 500.0)), Look::fit(EXTENT, (600.0, 500.0)));
    }

    #[test]
    fn places_that_are_no_numbers_are_left_out() {
        assert_eq!(Extent::of([(f64::NAN, 1.0)].into_iter()), None);
        let one = Extent::of([(f64::INFINITY, 1.0), (2.0, 3.0)].into_iter()).expect("a place");
        assert_eq!((one.left, one.top), (2.0, 3.0));
    }
}
