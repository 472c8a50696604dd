//! Draws on a page of a PDF in millimetres from its lower left corner.

use pdf_writer::types::{LineCapStyle, LineJoinStyle};
use pdf_writer::{Content, Name, Str};

use crate::papers::measure::{POINT_MM, width_mm};

use super::letters::latin;
use super::model::{Anchor, Extent, Layer, PointMm, Shape, type_pt};
use super::plane::is_closed;

/// Names of the two fonts in the resources of every page.
pub(super) const FONTS: [(Name<'static>, Name<'static>); 2] =
    [(Name(b"F1"), Name(b"Helvetica")), (Name(b"F2"), Name(b"Helvetica-Bold"))];
/// Handles of four curves that make a circle, over its radius: off by less than 0.03 %, as in any
/// textbook of computer graphics; from memory.
const KAPPA: f64 = 0.552_284_75;

/// Where the drawing lies on the page: `page = scale * drawing + shift`.
#[derive(Clone, Copy, Debug)]
pub(super) struct View {
    pub scale: f64,
    pub shift: PointMm,
}

impl View {
    pub fn at(&self, point: PointMm) -> PointMm {
        PointMm::new(
            self.scale * point.x_mm + self.shift.x_mm,
            self.scale * point.y_mm + self.shift.y_mm,
        )
    }
}

/// The content of a page.
pub(super) struct Canvas {
    content: Content,
}

impl Canvas {
    pub fn new() -> Self {
        let mut content = Content::new();
        let unit = pdf(1.0 / POINT_MM);
        content.transform([unit, 0.0, 0.0, unit, 0.0, 0.0]);
        content.set_line_cap(LineCapStyle::ButtCap);
        content.set_line_join(LineJoinStyle::RoundJoin);
        Self { content }
    }

    pub fn finish(self) -> Vec<u8> {
        self.content.finish().into_vec()
    }

    pub fn pen(&mut self, width_mm: f64, dashes_mm: &[f64]) {
        self.content.set_line_width(pdf(width_mm));
        self.content.set_dash_pattern(dashes_mm.iter().map(|mm| pdf(*mm)), 0.0);
    }

    /// From black, 0, to white, 1.
    pub fn shade(&mut self, shade: f64) {
        self.content.set_stroke_gray(pdf(shade));
        self.content.set_fill_gray(pdf(shade));
    }

    pub fn line(&mut self, from: PointMm, to: PointMm) {
        self.path(&[from, to], false);
    }

    pub fn path(&mut self, points: &[PointMm], closed: bool) {
        self.trace(points);
        if closed {
            self.content.close_path();
        }
        self.content.stroke();
    }

    fn trace(&mut self, points: &[PointMm]) {
        for (index, at) in points.iter().enumerate() {
            if index == 0 {
                self.content.move_to(pdf(at.x_mm), pdf(at.y_mm));
            } else {
                self.content.line_to(pdf(at.x_mm), pdf(at.y_mm));
            }
        }
    }

    pub fn filled(&mut self, points: &[PointMm]) {
        self.trace(points);
        self.content.close_path();
        self.content.fill_nonzero();
    }

    fn curve(&mut self, [first, second, end]: [PointMm; 3]) {
        self.content.cubic_to(
            pdf(first.x_mm),
            pdf(first.y_mm),
            pdf(second.x_mm),
            pdf(second.y_mm),
            pdf(end.x_mm),
            pdf(end.y_mm),
        );
    }

    fn circle(&mut self, centre: PointMm, radius_mm: f64) {
        let at =
            |x: f64, y: f64| PointMm::new(centre.x_mm + radius_mm * x, centre.y_mm + radius_mm * y);
        self.trace(&[at(1.0, 0.0)]);
        self.curve([at(1.0, KAPPA), at(KAPPA, 1.0), at(0.0, 1.0)]);
        self.curve([at(-KAPPA, 1.0), at(-1.0, KAPPA), at(-1.0, 0.0)]);
        self.curve([at(-1.0, -KAPPA), at(-KAPPA, -1.0), at(0.0, -1.0)]);
        self.curve([at(KAPPA, -1.0), at(1.0, -KAPPA), at(1.0, 0.0)]);
        self.content.close_path();
        self.content.stroke();
    }

    /// A text whose capitals are `height_mm` high.
    pub fn text(&mut self, at: PointMm, height_mm: f64, text: &str) {
        self.set(at, height_mm, text, 0.0, Anchor::Start, 0);
    }

    pub fn bold(&mut self, at: PointMm, height_mm: f64, text: &str) {
        self.set(at, height_mm, text, 0.0, Anchor::Start, 1);
    }

    pub fn turned(
        &mut self,
        at: PointMm,
        height_mm: f64,
        text: &str,
        angle_deg: f64,
        anchor: Anchor,
    ) {
        self.set(at, height_mm, text, angle_deg, anchor, 0);
    }

    fn set(
        &mut self,
        at: PointMm,
        height_mm: f64,
        text: &str,
        angle_deg: f64,
        anchor: Anchor,
        font: usize,
    ) {
        let size_pt = type_pt(height_mm);
        let back_mm = match anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => 0.5 * width_mm(text, size_pt),
            Anchor::End => width_mm(text, size_pt),
        };
        let (sin, cos) = angle_deg.to_radians().sin_cos();
        self.content.begin_text();
        self.content.set_font(FONTS[font].0, pdf(size_pt * POINT_MM));
        self.content.set_text_matrix([
            pdf(cos),
            pdf(sin),
            pdf(-sin),
            pdf(cos),
            pdf(at.x_mm - back_mm * cos),
            pdf(at.y_mm - back_mm * sin),
        ]);
        self.content.show(Str(&latin(text)));
        self.content.end_text();
    }

    /// Draws only inside a rectangle of the page, until [`Canvas::unclip`].
    pub fn clip(&mut self, extent: &Extent) {
        self.content.save_state();
        self.content.rect(
            pdf(extent.left_mm),
            pdf(extent.bottom_mm),
            pdf(extent.width_mm()),
            pdf(extent.height_mm()),
        );
        self.content.clip_nonzero();
        self.content.end_path();
    }

    pub fn unclip(&mut self) {
        self.content.restore_state();
    }

    /// The shapes that reach into `shown`, a part of the drawing. A drawing that is made smaller has
    /// fine lines and no texts.
    pub fn layers(&mut self, layers: &[Layer], view: View, shown: &Extent) {
        let is_small = view.scale < 1.0;
        for layer in layers {
            if is_small {
                self.pen(0.5 * layer.kind.line_mm(), &[]);
            } else {
                self.pen(layer.kind.line_mm(), layer.kind.stroke().dashes_mm());
            }
            for shape in &layer.shapes {
                let reaches = Extent::of(shape.corners());
                if reaches.is_some_and(|reaches| reaches.padded(1.0).meets(shown)) {
                    self.shape(shape, view, is_small);
                }
            }
        }
    }

    fn shape(&mut self, shape: &Shape, view: View, is_small: bool) {
        match shape {
            Shape::Line(from, to) => self.line(view.at(*from), view.at(*to)),
            Shape::Polyline { points, closed } => {
                let points: Vec<PointMm> = points.iter().map(|at| view.at(*at)).collect();
                self.path(&points, *closed);
            }
            Shape::Bezier { start, curves } => {
                self.trace(&[view.at(*start)]);
                for curve in curves {
                    self.curve(curve.map(|at| view.at(at)));
                }
                if is_closed(*start, curves) {
                    self.content.close_path();
                }
                self.content.stroke();
            }
            Shape::Circle { centre, radius_mm } => {
                self.circle(view.at(*centre), view.scale * radius_mm);
            }
            Shape::Cross { .. } => {
                for ends in shape.lines() {
                    if let [from, to] = ends[..] {
                        self.line(view.at(from), view.at(to));
                    }
                }
            }
            Shape::Text { .. } if is_small => {}
            Shape::Text { at, height_mm, text, angle_deg, anchor } => {
                let height_mm = view.scale * height_mm;
                self.turned(view.at(*at), height_mm, text, *angle_deg, *anchor);
            }
        }
    }
}

/// A number as PDF writes it, to a hundred-thousandth.
#[expect(
    clippy::cast_possible_truncation,
    reason = "seven digits are enough: a ten-thousandth of a millimetre on a sheet"
)]
pub(super) fn pdf(value: f64) -> f32 {
    let rounded = (value * 1e5).round() / 1e5;
    // Nought has no sign.
    (rounded + 0.0) as f32
}
