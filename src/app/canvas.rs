//! Puts a recorded drawing on a canvas of the page: only where it differs from the one that is there, and with
//! a colour or a font set only when it changes. A browser reads the name of a font or a colour again each time
//! it is set, which takes longer than the drawing. Polygons, of which there are few, are left to plotters' own
//! backend.

use std::f64::consts::TAU;

use plotters_backend::{BackendColor, DrawingBackend};
use plotters_canvas::CanvasBackend;
use wasm_bindgen::JsCast;
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement};

use crate::charts::recorded::{Area, Ink, Recorded, Shape, Stroke, Word};

/// Paints a drawing on a canvas, which gets its size; `before` is what is on it.
pub fn paint(element: &HtmlCanvasElement, drawing: &Recorded, before: Option<&Recorded>) {
    let (width, height) = drawing.size;
    if width == 0 || height == 0 {
        return;
    }
    let resized = (element.width(), element.height()) != (width, height);
    if resized {
        element.set_width(width);
        element.set_height(height);
    }
    let changed = before.filter(|_| !resized).and_then(|before| drawing.differs(before));
    if changed.as_ref().is_some_and(Vec::is_empty) {
        return;
    }
    let context = element.get_context("2d").ok().flatten();
    let Some(context) = context.and_then(|context| context.dyn_into().ok()) else { return };
    let plain = CanvasBackend::with_canvas_object(element.clone());
    let (font, strokes) = (base_font(before.filter(|_| changed.is_some())), &drawing.strokes);
    let brush = Brush { context, plain, fill: None, stroke: None, word: None, font };
    brush.paint(strokes, base_font(Some(drawing)), changed);
}

/// The font that stays on a canvas once a drawing is on it: one of its words', always the same. A font that is set makes the browser
/// style the whole page anew before it goes on, if anything of it has changed.
fn base_font(drawing: Option<&Recorded>) -> Option<&str> {
    let fonts = drawing?.strokes.iter().filter_map(|stroke| match &stroke.shape {
        Shape::Word(word) => Some(&*word.font),
        _ => None,
    });
    fonts.min()
}

/// A context with what it draws with now, as far as it is known.
struct Brush<'a> {
    context: CanvasRenderingContext2d,
    plain: Option<CanvasBackend>,
    fill: Option<Ink>,
    stroke: Option<(Ink, u32)>,
    word: Option<&'a Word>,
    font: Option<&'a str>,
}

/// What a canvas calls a colour, in the form that is read soonest.
fn css((r, g, b, alpha): Ink) -> String {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "an opacity between 0 and 1"
    )]
    let alpha = (255.0 * f64::from_bits(alpha)).round() as u8;
    let digit = |half: u8| char::from(b"0123456789abcdef"[usize::from(half)]);
    let mut name = String::from("#");
    for part in [r, g, b, alpha] {
        name.extend([digit(part >> 4), digit(part & 15)]);
    }
    name
}

impl<'a> Brush<'a> {
    fn paint(mut self, strokes: &'a [Stroke], base: Option<&'a str>, changed: Option<Vec<Area>>) {
        let Some(areas) = changed else {
            strokes.iter().for_each(|stroke| self.draw(stroke));
            base.into_iter().for_each(|font| self.letter(font));
            return;
        };
        // What is set from here on is undone.
        base.into_iter().for_each(|font| self.letter(font));
        self.context.save();
        self.context.begin_path();
        for Area { left, top, right, bottom } in &areas {
            let (wide, high) = (f64::from(right - left), f64::from(bottom - top));
            self.context.rect(f64::from(*left), f64::from(*top), wide, high);
        }
        self.context.clip();
        let seen = |stroke: &&Stroke| {
            stroke.area().is_some_and(|its| areas.iter().any(|area| area.meets(&its, 0)))
        };
        strokes.iter().filter(seen).for_each(|stroke| self.draw(stroke));
        self.context.restore();
    }

    fn draw(&mut self, stroke: &'a Stroke) {
        match &stroke.shape {
            Shape::Block((left, top), (right, bottom)) => {
                self.fill_with(stroke.ink);
                let (wide, high) = (f64::from(right - left), f64::from(bottom - top));
                self.context.fill_rect(f64::from(*left), f64::from(*top), wide, high);
            }
            Shape::Path(points, width) => {
                self.lay(points);
                self.stroke_with(stroke.ink, *width);
                self.context.stroke();
            }
            Shape::Disc(at, radius) => {
                self.round(*at, *radius);
                self.fill_with(stroke.ink);
                self.context.fill();
            }
            Shape::Ring(at, radius, width) => {
                self.round(*at, *radius);
                self.stroke_with(stroke.ink, *width);
                self.context.stroke();
            }
            Shape::Polygon(corners) => {
                let (r, g, b, alpha) = stroke.ink;
                let style = BackendColor { alpha: f64::from_bits(alpha), rgb: (r, g, b) };
                if let Some(plain) = &mut self.plain {
                    // A canvas refuses no path.
                    let _ = plain.fill_polygon(corners.iter().copied(), &style);
                }
                self.fill = None;
            }
            Shape::Word(word) => {
                self.write_with(word);
                self.fill_with(stroke.ink);
                // The context refuses no text.
                let _ =
                    self.context.fill_text(&word.text, f64::from(word.at.0), f64::from(word.at.1));
            }
        }
    }

    fn fill_with(&mut self, ink: Ink) {
        if self.fill != Some(ink) {
            self.context.set_fill_style_str(&css(ink));
            self.fill = Some(ink);
        }
    }

    fn stroke_with(&mut self, ink: Ink, width: u32) {
        if self.stroke != Some((ink, width)) {
            self.context.set_stroke_style_str(&css(ink));
            self.context.set_line_width(f64::from(width));
            self.stroke = Some((ink, width));
        }
    }

    fn letter(&mut self, font: &'a str) {
        if self.font != Some(font) {
            self.context.set_font(font);
            self.font = Some(font);
        }
    }

    fn write_with(&mut self, word: &'a Word) {
        self.letter(&word.font);
        let place = |word: &Word| (word.baseline, word.align);
        if self.word.is_none_or(|before| place(before) != place(word)) {
            self.context.set_text_baseline(word.baseline);
            self.context.set_text_align(word.align);
        }
        self.word = Some(word);
    }

    /// Lays a path through points.
    fn lay(&self, points: &[(i32, i32)]) {
        self.context.begin_path();
        for (place, (x, y)) in points.iter().enumerate() {
            let (x, y) = (f64::from(*x), f64::from(*y));
            if place == 0 {
                self.context.move_to(x, y);
            } else {
                self.context.line_to(x, y);
            }
        }
    }

    fn round(&self, (x, y): (i32, i32), radius: u32) {
        self.context.begin_path();
        // An arc fails for a negative radius only, and this one has no sign.
        let _ = self.context.arc(f64::from(x), f64::from(y), f64::from(radius), 0.0, TAU);
    }
}
