//! The canvas on which plotters draws. It is plotters' own backend, but for the shapes and words of
//! which our drawings are made: for these a colour or a font is set only when it changes. A browser
//! reads the name of a font or a colour anew each time it is set, which takes longer than the drawing.

use std::f64::consts::TAU;

use plotters_backend::text_anchor::{HPos, VPos};
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
    FontTransform,
};
use plotters_canvas::CanvasBackend;
use wasm_bindgen::JsCast;
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement};

/// What can go wrong in drawing.
type Failed = DrawingErrorKind<<CanvasBackend as DrawingBackend>::ErrorType>;

/// What the context draws with now, as far as it is known.
#[derive(Default)]
struct Tools {
    fill: Option<Ink>,
    stroke: Option<(Ink, u32)>,
    font: String,
    place: Option<(&'static str, &'static str)>,
}

/// A colour that can be compared: red, green, blue, and the bits of its opacity.
type Ink = (u8, u8, u8, u64);

fn ink(color: BackendColor) -> Ink {
    let (r, g, b) = color.rgb;
    (r, g, b, color.alpha.to_bits())
}

fn css((r, g, b, alpha): Ink) -> String {
    format!("rgba({r},{g},{b},{})", f64::from_bits(alpha))
}

/// A canvas to draw on.
pub struct Canvas {
    inner: CanvasBackend,
    context: CanvasRenderingContext2d,
    now: Tools,
}

impl Canvas {
    /// Takes an element of the page; `None` where the browser gives no context to draw with.
    pub fn on(element: &HtmlCanvasElement) -> Option<Self> {
        let context = element.get_context("2d").ok()??.dyn_into().ok()?;
        let inner = CanvasBackend::with_canvas_object(element.clone())?;
        Some(Self { inner, context, now: Tools::default() })
    }

    fn fill_with(&mut self, color: BackendColor) {
        let ink = ink(color);
        if self.now.fill != Some(ink) {
            self.context.set_fill_style_str(&css(ink));
            self.now.fill = Some(ink);
        }
    }

    fn stroke_with(&mut self, style: &impl BackendStyle) {
        let (ink, width) = (ink(style.color()), style.stroke_width());
        if self.now.stroke != Some((ink, width)) {
            self.context.set_stroke_style_str(&css(ink));
            self.context.set_line_width(f64::from(width));
            self.now.stroke = Some((ink, width));
        }
    }

    fn write_with(&mut self, style: &impl BackendTextStyle) {
        let (name, size) = (style.family(), style.size());
        let font = format!("{} {size}px {}", style.style().as_str(), name.as_str());
        if font != self.now.font {
            self.context.set_font(&font);
            self.now.font = font;
        }
        let baseline = match style.anchor().v_pos {
            VPos::Top => "top",
            VPos::Center => "middle",
            VPos::Bottom => "bottom",
        };
        let align = match style.anchor().h_pos {
            HPos::Left => "start",
            HPos::Right => "end",
            HPos::Center => "center",
        };
        if self.now.place != Some((baseline, align)) {
            self.context.set_text_baseline(baseline);
            self.context.set_text_align(align);
            self.now.place = Some((baseline, align));
        }
    }

    /// Lays a path through points; false when there is none.
    fn lay(&self, points: impl IntoIterator<Item = BackendCoord>) -> bool {
        self.context.begin_path();
        let mut any = false;
        for (x, y) in points {
            let (x, y) = (f64::from(x), f64::from(y));
            if any {
                self.context.line_to(x, y);
            } else {
                self.context.move_to(x, y);
            }
            any = true;
        }
        any
    }

    /// plotters' own backend, which sets what it needs and leaves it set.
    fn plain(&mut self) -> &mut CanvasBackend {
        self.now = Tools::default();
        &mut self.inner
    }
}

impl DrawingBackend for Canvas {
    type ErrorType = <CanvasBackend as DrawingBackend>::ErrorType;

    fn get_size(&self) -> (u32, u32) {
        self.inner.get_size()
    }

    fn ensure_prepared(&mut self) -> Result<(), Failed> {
        self.inner.ensure_prepared()
    }

    fn present(&mut self) -> Result<(), Failed> {
        self.inner.present()
    }

    fn draw_pixel(&mut self, point: BackendCoord, color: BackendColor) -> Result<(), Failed> {
        self.plain().draw_pixel(point, color)
    }

    fn draw_line<S: BackendStyle>(
        &mut self,
        from: BackendCoord,
        to: BackendCoord,
        style: &S,
    ) -> Result<(), Failed> {
        self.plain().draw_line(from, to, style)
    }

    fn draw_rect<S: BackendStyle>(
        &mut self,
        upper_left: BackendCoord,
        bottom_right: BackendCoord,
        style: &S,
        fill: bool,
    ) -> Result<(), Failed> {
        if !fill {
            return self.plain().draw_rect(upper_left, bottom_right, style, fill);
        }
        self.fill_with(style.color());
        let (left, top) = (f64::from(upper_left.0), f64::from(upper_left.1));
        let (right, bottom) = (f64::from(bottom_right.0), f64::from(bottom_right.1));
        self.context.fill_rect(left, top, right - left, bottom - top);
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Result<(), Failed> {
        if self.lay(path) {
            self.stroke_with(style);
            self.context.stroke();
        }
        Ok(())
    }

    fn draw_circle<S: BackendStyle>(
        &mut self,
        center: BackendCoord,
        radius: u32,
        style: &S,
        fill: bool,
    ) -> Result<(), Failed> {
        let (x, y) = (f64::from(center.0), f64::from(center.1));
        self.context.begin_path();
        // An arc fails for a negative radius only, and this one has no sign.
        let _ = self.context.arc(x, y, f64::from(radius), 0.0, TAU);
        if fill {
            self.fill_with(style.color());
            self.context.fill();
        } else {
            self.stroke_with(style);
            self.context.stroke();
        }
        Ok(())
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        corners: I,
        style: &S,
    ) -> Result<(), Failed> {
        if self.lay(corners) {
            self.fill_with(style.color());
            self.context.close_path();
            self.context.fill();
        }
        Ok(())
    }

    fn draw_text<S: BackendTextStyle>(
        &mut self,
        text: &str,
        style: &S,
        at: BackendCoord,
    ) -> Result<(), Failed> {
        if !matches!(style.transform(), FontTransform::None) {
            return self.plain().draw_text(text, style, at);
        }
        self.write_with(style);
        self.fill_with(style.color());
        // The context refuses no text.
        let _ = self.context.fill_text(text, f64::from(at.0), f64::from(at.1));
        Ok(())
    }
}
