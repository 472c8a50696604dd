//! Writes numbers, lines and words as the text of an SVG picture.

use std::fmt::Write as _;

use super::super::Piece;
use crate::charts::overlay::PlaceMm;
use crate::design::letters::escape;

/// Height of letters, in pixels.
pub(super) const LETTERS_PX: f64 = 11.0;

/// A number to a hundredth, without needless noughts. Integers are written quicker than fractions.
pub fn number(out: &mut String, value: f64) {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a hundred times a size on the drawing; saturates"
    )]
    let hundredths = (value * 100.0).round() as i64;
    if hundredths < 0 {
        out.push('-');
    }
    let (whole, rest) = (hundredths.unsigned_abs() / 100, hundredths.unsigned_abs() % 100);
    let _ = write!(out, "{whole}");
    if rest > 0 {
        let digit = |digit: u64| char::from(b'0' + u8::try_from(digit % 10).unwrap_or(0));
        out.push('.');
        out.push(digit(rest / 10));
        if rest % 10 > 0 {
            out.push(digit(rest));
        }
    }
}

/// Writes the marks of an SVG picture.
pub(super) struct Writer {
    pub(super) out: String,
    /// The size of a pixel, in millimetres.
    pub(super) px: f64,
}

impl Writer {
    pub(super) fn new(px_per_mm: f64, room: usize) -> Self {
        Self { out: String::with_capacity(room), px: 1.0 / px_per_mm.max(1e-3) }
    }

    pub(super) fn pair(&mut self, at: PlaceMm) {
        number(&mut self.out, at.0);
        self.out.push(' ');
        number(&mut self.out, -at.1);
    }

    pub(super) fn attribute(&mut self, name: &str, value: f64) {
        self.out.push(' ');
        self.out.push_str(name);
        self.out.push_str("=\"");
        number(&mut self.out, value);
        self.out.push('"');
    }

    /// `<path class="…" stroke-width="…" d="`; the width is in millimetres.
    pub(super) fn open(&mut self, class: &str, width_mm: f64) {
        self.open_dashed(class, width_mm, 0.0);
    }

    /// The same, with dashes of a length in pixels.
    pub(super) fn open_dashed(&mut self, class: &str, width_mm: f64, dash_px: f64) {
        self.out.push_str("<path class=\"");
        self.out.push_str(class);
        self.out.push('"');
        if dash_px > 0.0 {
            self.attribute("stroke-dasharray", dash_px * self.px);
        }
        self.attribute("stroke-width", width_mm);
        self.out.push_str(" d=\"");
    }

    pub(super) fn close(&mut self) {
        self.out.push_str("\"/>");
    }

    pub(super) fn line(&mut self, places: &[PlaceMm], closed: bool) {
        for (place, at) in places.iter().enumerate() {
            self.out.push(if place == 0 { 'M' } else { 'L' });
            self.pair(*at);
        }
        if closed && !places.is_empty() {
            self.out.push('Z');
        }
    }

    pub(super) fn dot(&mut self, at: PlaceMm) {
        self.line(&[at], false);
        self.out.push_str("h0");
    }

    pub(super) fn circle(&mut self, at: PlaceMm, radius: f64) {
        self.out.push('M');
        self.pair((at.0 - radius, at.1));
        for by in [2.0 * radius, -2.0 * radius] {
            self.out.push('a');
            number(&mut self.out, radius);
            self.out.push(' ');
            number(&mut self.out, radius);
            self.out.push_str(" 0 1 0 ");
            number(&mut self.out, by);
            self.out.push_str(" 0");
        }
    }

    pub(super) fn pieces(&mut self, pieces: &[Piece]) {
        for piece in pieces {
            match *piece {
                Piece::Move(at) => self.line(&[at], false),
                Piece::Line(at) => {
                    self.out.push('L');
                    self.pair(at);
                }
                Piece::Curve(one, two, at) => {
                    self.out.push('C');
                    for place in [one, two, at] {
                        self.pair(place);
                        self.out.push(' ');
                    }
                }
            }
        }
        self.out.push('Z');
    }

    /// A word with its middle at a place.
    pub(super) fn word(&mut self, class: &str, at: PlaceMm, text: &str) {
        self.anchored(class, "", at, text);
    }

    /// A word with its middle, its start or its end at a place.
    pub(super) fn anchored(&mut self, class: &str, anchor: &str, at: PlaceMm, text: &str) {
        self.out.push_str("<text");
        for (name, value) in [("class", class), ("text-anchor", anchor)] {
            if !value.is_empty() {
                let _ = write!(self.out, " {name}=\"{value}\"");
            }
        }
        self.attribute("x", at.0);
        self.attribute("y", -at.1 + 0.36 * LETTERS_PX * self.px);
        self.out.push('>');
        self.out.push_str(&escape(text));
        self.out.push_str("</text>");
    }

    pub(super) fn words_open(&mut self, class: &str, height_px: f64) {
        let _ = write!(self.out, "<g class=\"{class}\" text-anchor=\"middle\"");
        self.attribute("font-size", height_px * self.px);
        self.attribute("stroke-width", 4.0 * self.px);
        self.out.push('>');
    }
}
