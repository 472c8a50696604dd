//! What is drawn with: the style of a drawing, and a pen that puts lines, marks and words on any
//! plotters area without ever measuring a text.

use std::ops::Range;

use plotters::coord::Shift;
use plotters::drawing::{DrawingArea, DrawingAreaErrorKind};
use plotters::element::{Circle, PathElement, Polygon, Rectangle, Text};
use plotters::prelude::DrawingBackend;
use plotters::style::text_anchor::{HPos, Pos, VPos};
use plotters::style::{Color, FontDesc, FontFamily, FontStyle, RGBAColor, RGBColor, TextStyle};

use super::marks::{Fill, Mark, MarkShape};
use super::palette::Palette;

/// Whether drawing went well.
pub type Drawn<DB> = Result<(), DrawingAreaErrorKind<<DB as DrawingBackend>::ErrorType>>;

/// Size of titles, in CSS pixels.
pub const TITLE: f64 = 12.0;
/// Size of everything else that is read, in CSS pixels.
pub const SMALL: f64 = 11.0;

/// What a drawing is made on. The two take the size of a text differently.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Medium {
    /// A canvas of the page: the size is that of the font.
    Canvas,
    /// An SVG text: plotters takes the size as that of a line, 1.24 times the font's.
    Svg,
}

/// How a drawing looks and what it points out.
#[derive(Clone, Debug, PartialEq)]
pub struct Style<'a> {
    pub palette: Palette,
    /// Pixels of the area for each CSS pixel.
    pub scale: f64,
    pub medium: Medium,
    /// Indices of the strings that are selected.
    pub selected: Option<Range<usize>>,
    /// Indices of the strings with a grave finding.
    pub grave: &'a [usize],
    /// Indices of the strings with a warning.
    pub warned: &'a [usize],
}

impl Style<'_> {
    /// Nothing selected, nothing pointed out.
    pub const fn new(palette: Palette, scale: f64, medium: Medium) -> Self {
        Self { palette, scale, medium, selected: None, grave: &[], warned: &[] }
    }

    /// The scale, kept within reach.
    pub fn safe_scale(&self) -> f64 {
        safe_scale(self.scale)
    }
}

/// A scale that can be drawn at, whatever was asked.
pub fn safe_scale(scale: f64) -> f64 {
    if scale.is_finite() { scale.clamp(0.25, 16.0) } else { 1.0 }
}

/// Where a word stands to its point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Anchor {
    TopLeft,
    TopCentre,
    BottomLeft,
    Centre,
    Right,
    Left,
}

/// Draws on one area. Places and sizes are in its pixels.
pub(super) struct Pen<'a, DB: DrawingBackend> {
    area: &'a DrawingArea<DB, Shift>,
    pub palette: Palette,
    pub scale: f64,
    small: TextStyle<'static>,
    title: TextStyle<'static>,
}

impl<'a, DB: DrawingBackend> Pen<'a, DB> {
    pub fn new(area: &'a DrawingArea<DB, Shift>, style: &Style<'_>) -> Self {
        let scale = style.safe_scale();
        let text = |size: f64, weight| {
            let size = match style.medium {
                Medium::Canvas => size * scale,
                Medium::Svg => size * scale * 1.24,
            };
            let font = FontDesc::new(FontFamily::Name("system-ui, sans-serif"), size, weight);
            TextStyle::from(font)
        };
        let (small, title) = (text(SMALL, FontStyle::Normal), text(TITLE, FontStyle::Bold));
        Self { area, palette: style.palette, scale, small, title }
    }

    /// A length in CSS pixels as whole pixels, at least one.
    pub fn thick(&self, css: f64) -> f64 {
        (css * self.scale).round().max(1.0)
    }

    pub fn clear(&self) -> Drawn<DB> {
        self.area.fill(&self.palette.paper)
    }

    /// A filled rectangle.
    pub fn rect(&self, from: (f64, f64), to: (f64, f64), color: RGBAColor) -> Drawn<DB> {
        let corners = [(px(from.0), px(from.1)), (px(to.0), px(to.1))];
        self.area.draw(&Rectangle::new(corners, color.filled()))
    }

    /// A level line. It is a filled rectangle, whose edges stay crisp at every width.
    pub fn level(&self, x: (f64, f64), y: f64, css: f64, color: RGBAColor) -> Drawn<DB> {
        let thick = self.thick(css);
        let top = (y - thick / 2.0).round();
        self.rect((x.0, top), (x.1, top + thick), color)
    }

    /// An upright line.
    pub fn upright(&self, x: f64, y: (f64, f64), css: f64, color: RGBAColor) -> Drawn<DB> {
        let thick = self.thick(css);
        let left = (x - thick / 2.0).round();
        self.rect((left, y.0), (left + thick, y.1), color)
    }

    /// One line through all the points.
    pub fn path(
        &self,
        points: impl Iterator<Item = (f64, f64)>,
        css: f64,
        color: RGBColor,
    ) -> Drawn<DB> {
        let points: Vec<_> = points.map(|(x, y)| (px(x), px(y))).collect();
        let width = u32::try_from(px(self.thick(css))).unwrap_or(1);
        self.area.draw(&PathElement::new(points, color.stroke_width(width)))
    }

    pub fn ring(&self, at: (f64, f64), radius: f64, css: f64, color: RGBColor) -> Drawn<DB> {
        let width = u32::try_from(px(self.thick(css))).unwrap_or(1);
        self.area.draw(&Circle::new((px(at.0), px(at.1)), px(radius), color.stroke_width(width)))
    }

    pub fn disc(&self, at: (f64, f64), radius: f64, color: RGBColor) -> Drawn<DB> {
        self.area.draw(&Circle::new((px(at.0), px(at.1)), px(radius).max(1), color.filled()))
    }

    pub fn polygon(&self, points: Vec<(i32, i32)>, color: RGBColor) -> Drawn<DB> {
        self.area.draw(&Polygon::new(points, color.filled()))
    }

    /// A filled region that shows what lies under it.
    pub fn wash(&self, points: Vec<(i32, i32)>, color: RGBAColor) -> Drawn<DB> {
        self.area.draw(&Polygon::new(points, color.filled()))
    }

    /// A word in the small size.
    pub fn word(&self, text: &str, at: (f64, f64), anchor: Anchor, color: RGBColor) -> Drawn<DB> {
        self.write(text, at, anchor, color, &self.small)
    }

    /// A title.
    pub fn title(&self, text: &str, at: (f64, f64), color: RGBColor) -> Drawn<DB> {
        self.write(text, at, Anchor::TopLeft, color, &self.title)
    }

    fn write(
        &self,
        text: &str,
        at: (f64, f64),
        anchor: Anchor,
        color: RGBColor,
        style: &TextStyle<'_>,
    ) -> Drawn<DB> {
        let pos = match anchor {
            Anchor::TopLeft => Pos::new(HPos::Left, VPos::Top),
            Anchor::TopCentre => Pos::new(HPos::Center, VPos::Top),
            Anchor::BottomLeft => Pos::new(HPos::Left, VPos::Bottom),
            Anchor::Centre => Pos::new(HPos::Center, VPos::Center),
            Anchor::Right => Pos::new(HPos::Right, VPos::Center),
            Anchor::Left => Pos::new(HPos::Left, VPos::Center),
        };
        let style = style.color(&color).pos(pos);
        self.area.draw(&Text::new(text, (px(at.0), px(at.1)), style))
    }

    /// The mark of a string, `radius` from its middle to its edge.
    pub fn mark(&self, mark: Mark, at: (f64, f64), radius: f64) -> Drawn<DB> {
        let (ink, paper) = (self.palette.ink, self.palette.paper);
        let ground = if mark.fill == Fill::Solid { ink } else { paper };
        match mark.shape {
            MarkShape::Dot => self.disc(at, radius * 0.5, ink)?,
            MarkShape::Circle => {
                self.disc(at, radius, ground)?;
                if mark.fill != Fill::Solid {
                    self.ring(at, radius, 1.4, ink)?;
                }
            }
            shape => {
                let outline = outline(shape, at, radius);
                if mark.fill == Fill::Solid {
                    self.polygon(outline, ink)?;
                } else {
                    self.polygon(outline.clone(), paper)?;
                    // Round once more, so that the last corner is as sharp as the others.
                    let closed = outline.iter().chain(outline.iter().take(2)).copied();
                    let width = u32::try_from(px(self.thick(1.4))).unwrap_or(1);
                    let closed: Vec<_> = closed.collect();
                    self.area.draw(&PathElement::new(closed, ink.stroke_width(width)))?;
                }
            }
        }
        if mark.fill == Fill::Dotted { self.disc(at, radius * 0.3, ink) } else { Ok(()) }
    }
}

/// The corners of a shape; sized so that all look about equally heavy.
fn outline(shape: MarkShape, at: (f64, f64), radius: f64) -> Vec<(i32, i32)> {
    const SQUARE: [(f64, f64); 4] = [(-0.9, -0.9), (0.9, -0.9), (0.9, 0.9), (-0.9, 0.9)];
    const DIAMOND: [(f64, f64); 4] = [(0.0, -1.3), (1.3, 0.0), (0.0, 1.3), (-1.3, 0.0)];
    const UP: [(f64, f64); 3] = [(0.0, -1.2), (1.2, 0.9), (-1.2, 0.9)];
    const DOWN: [(f64, f64); 3] = [(0.0, 1.2), (1.2, -0.9), (-1.2, -0.9)];
    const BAR: [(f64, f64); 4] = [(-1.4, -0.55), (1.4, -0.55), (1.4, 0.55), (-1.4, 0.55)];
    const PLUS: [(f64, f64); 12] = [
        (-0.4, -1.2),
        (0.4, -1.2),
        (0.4, -0.4),
        (1.2, -0.4),
        (1.2, 0.4),
        (0.4, 0.4),
        (0.4, 1.2),
        (-0.4, 1.2),
        (-0.4, 0.4),
        (-1.2, 0.4),
        (-1.2, -0.4),
        (-0.4, -0.4),
    ];
    const CROSS: [(f64, f64); 12] = [
        (0.0, -0.55),
        (0.6, -1.15),
        (1.15, -0.6),
        (0.55, 0.0),
        (1.15, 0.6),
        (0.6, 1.15),
        (0.0, 0.55),
        (-0.6, 1.15),
        (-1.15, 0.6),
        (-0.55, 0.0),
        (-1.15, -0.6),
        (-0.6, -1.15),
    ];
    let corners: &[(f64, f64)] = match shape {
        MarkShape::Square | MarkShape::Circle | MarkShape::Dot => &SQUARE,
        MarkShape::Diamond => &DIAMOND,
        MarkShape::Up => &UP,
        MarkShape::Down => &DOWN,
        MarkShape::Bar => &BAR,
        MarkShape::Plus => &PLUS,
        MarkShape::Cross => &CROSS,
    };
    // The middle is rounded first, so that a shape is the same wherever it stands.
    let middle = (at.0.round(), at.1.round());
    let place = |(x, y): &(f64, f64)| (px(middle.0 + x * radius), px(middle.1 + y * radius));
    corners.iter().map(place).collect()
}

/// To a whole pixel.
#[expect(clippy::cast_possible_truncation, reason = "the cast saturates, and NaN becomes 0")]
pub(super) fn px(value: f64) -> i32 {
    // Within reach of the sums that backends do.
    value.round().clamp(-1e6, 1e6) as i32
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn any_scale_can_be_drawn_at() {
        for (asked, got) in [(1.5, 1.5), (0.0, 0.25), (-3.0, 0.25), (1e9, 16.0), (f64::NAN, 1.0)] {
            assert!((safe_scale(asked) - got).abs() < 1e-12, "{asked}");
        }
    }

    #[test]
    fn any_number_is_a_pixel() {
        assert_eq!([f64::NAN, f64::INFINITY, -1e300, 2.5].map(px), [0, 1_000_000, -1_000_000, 3]);
    }

    #[test]
    fn a_shape_is_the_same_wherever_it_stands() {
        for shape in [
            MarkShape::Square,
            MarkShape::Up,
            MarkShape::Diamond,
            MarkShape::Down,
            MarkShape::Cross,
        ] {
            let at = |x: f64| outline(shape, (x, 20.0), 4.2);
            let moved: Vec<_> = at(10.2).iter().map(|(x, y)| (x + 7, *y)).collect();
            assert_eq!(at(17.4), moved, "{shape:?}");
        }
    }
}
