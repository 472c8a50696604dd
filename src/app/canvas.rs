//! The canvas on which plotters draws: its own backend, but for words, whose font is set only when it
//! changes. A browser reads a font's name anew each time it is set, which would take longer than all the
//! rest of a drawing.

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

/// A canvas to draw on.
pub struct Canvas {
    inner: CanvasBackend,
    context: CanvasRenderingContext2d,
    font: String,
}

impl Canvas {
    /// Takes an element of the page; `None` where the browser gives no context to draw with.
    pub fn on(element: &HtmlCanvasElement) -> Option<Self> {
        let context = element.get_context("2d").ok()??.dyn_into().ok()?;
        let inner = CanvasBackend::with_canvas_object(element.clone())?;
        Some(Self { inner, context, font: String::new() })
    }

    fn set_font(&mut self, style: &impl BackendTextStyle) {
        let (name, size) = (style.family(), style.size());
        let font = format!("{} {size}px {}", style.style().as_str(), name.as_str());
        if font != self.font {
            self.context.set_font(&font);
            self.font = font;
        }
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
        self.inner.draw_pixel(point, color)
    }

    fn draw_line<S: BackendStyle>(
        &mut self,
        from: BackendCoord,
        to: BackendCoord,
        style: &S,
    ) -> Result<(), Failed> {
        self.inner.draw_line(from, to, style)
    }

    fn draw_rect<S: BackendStyle>(
        &mut self,
        upper_left: BackendCoord,
        bottom_right: BackendCoord,
        style: &S,
        fill: bool,
    ) -> Result<(), Failed> {
        self.inner.draw_rect(upper_left, bottom_right, style, fill)
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Result<(), Failed> {
        self.inner.draw_path(path, style)
    }

    fn draw_circle<S: BackendStyle>(
        &mut self,
        center: BackendCoord,
        radius: u32,
        style: &S,
        fill: bool,
    ) -> Result<(), Failed> {
        self.inner.draw_circle(center, radius, style, fill)
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        corners: I,
        style: &S,
    ) -> Result<(), Failed> {
        self.inner.fill_polygon(corners, style)
    }

    fn draw_text<S: BackendTextStyle>(
        &mut self,
        text: &str,
        style: &S,
        at: BackendCoord,
    ) -> Result<(), Failed> {
        if !matches!(style.transform(), FontTransform::None) {
            self.font.clear();
            return self.inner.draw_text(text, style, at);
        }
        self.set_font(style);
        let BackendColor { alpha, rgb: (r, g, b) } = style.color();
        self.context.set_fill_style_str(&format!("rgba({r},{g},{b},{alpha})"));
        self.context.set_text_baseline(match style.anchor().v_pos {
            VPos::Top => "top",
            VPos::Center => "middle",
            VPos::Bottom => "bottom",
        });
        self.context.set_text_align(match style.anchor().h_pos {
            HPos::Left => "start",
            HPos::Right => "end",
            HPos::Center => "center",
        });
        // The context refuses no text; a canvas that is gone draws nothing.
        let _ = self.context.fill_text(text, f64::from(at.0), f64::from(at.1));
        Ok(())
    }
}
