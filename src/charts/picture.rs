//! Curves and drawing as SVG pictures that stand alone: on paper, in a file, in a picture of pixels.
//!
//! Colours are attributes and not styles, as the page allows no style in its markup.

use std::fmt::Write as _;

use plotters::backend::SVGBackend;
use plotters::drawing::IntoDrawingArea;
use plotters::style::RGBColor;

use super::draw;
use super::lofting::look::Look;
use super::lofting::over::{self, Given};
use super::lofting::svg;
use super::palette::Palette;
use super::pen::{Medium, SMALL, Style};
use super::series::Curves;
use crate::design::letters::escape;

/// Steps of the curves' places for each pixel: plotters draws on whole ones.
const STEPS: u32 = 4;
/// White around a drawing, in pixels, for letters and measures beyond its lines.
const EDGE_PX: f64 = 34.0;
/// From a line of words to the next, in pixels.
const LINE_PX: f64 = 15.0;

/// A picture: what stands in it, and what its `viewBox` says.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    inside: String,
    /// Left, top, width and height of what is in sight.
    view: [f64; 4],
    /// The size of a pixel in the units of what stands in it.
    px: f64,
}

impl Picture {
    /// The whole picture, so wide and so high in a unit such as `mm`.
    pub fn svg(&self, width: f64, height: f64, unit: &str) -> String {
        let mut text = String::with_capacity(self.inside.len() + 200);
        text.push_str("<svg xmlns=\"http://www.w3.org/2000/svg\"");
        for (name, value) in [("width", width), ("height", height)] {
            let _ = write!(text, " {name}=\"");
            svg::number(&mut text, value);
            let _ = write!(text, "{unit}\"");
        }
        text.push_str(" viewBox=\"");
        for value in self.view {
            svg::number(&mut text, value);
            text.push(' ');
        }
        text.push_str("\">");
        text.push_str(&self.inside);
        text.push_str("</svg>");
        text
    }

    /// How high it is where it is so wide.
    pub fn height(&self, width: f64) -> f64 {
        width * self.view[3] / self.view[2]
    }

    /// Lines of words below the picture, which grows by them.
    pub fn with_words(mut self, lines: &[String], palette: Palette) -> Self {
        let [left, top, wide, high] = self.view;
        let step = LINE_PX * self.px;
        let count = f64::from(u16::try_from(lines.len()).unwrap_or(u16::MAX));
        let taller = (count + 1.0) * step;
        rect(&mut self.inside, [left, top + high, wide, taller], palette);
        let _ = write!(
            self.inside,
            "<g font-family=\"system-ui, sans-serif\" font-size=\"{}\" fill=\"{}\">",
            SMALL * self.px,
            hex(palette.ink)
        );
        let mut y = top + high;
        for line in lines {
            y += step;
            let _ = write!(self.inside, "<text x=\"{}\" y=\"{y}\">", left + 8.0 * self.px);
            self.inside.push_str(&escape(line));
            self.inside.push_str("</text>");
        }
        self.inside.push_str("</g>");
        self.view[3] += taller;
        self
    }
}

/// A rectangle of the colour of paper.
fn rect(out: &mut String, sides: [f64; 4], palette: Palette) {
    out.push_str("<rect");
    for (name, value) in ["x", "y", "width", "height"].into_iter().zip(sides) {
        let _ = write!(out, " {name}=\"");
        svg::number(out, value);
        out.push('"');
    }
    let _ = write!(out, " fill=\"{}\" stroke=\"none\"/>", hex(palette.paper));
}

/// The curves on paper of a size in pixels of a 96th of an inch.
pub fn curves(curves: &Curves, palette: Palette, (wide, high): (u32, u32)) -> Picture {
    let size = (wide * STEPS, high * STEPS);
    let mut text = String::new();
    let area = SVGBackend::with_string(&mut text, size).into_drawing_area();
    let style = Style::new(palette, f64::from(STEPS), Medium::Svg);
    // Only a file that is full could fail, and this is none.
    let _ = draw::draw(&area, curves, &style);
    drop(area);
    // Within the element that plotters opens and closes.
    let start = text.find('>').map_or(0, |at| at + 1);
    let end = text.rfind("</svg>").unwrap_or(text.len()).max(start);
    Picture {
        inside: text[start..end].to_owned(),
        view: [0.0, 0.0, f64::from(size.0), f64::from(size.1)],
        px: f64::from(STEPS),
    }
}

/// The drawing with something over it, on paper at most so large, in pixels; `None` where there is nothing to draw.
pub fn drawing(
    given: &Given<'_>,
    over: &str,
    palette: Palette,
    (wide, most_high): (f64, f64),
) -> Option<Picture> {
    let scene = given.scene;
    let overlay = over::kind(over).2(given);
    let extent = scene.extent?;
    let extent = over::extent(&overlay).map_or(extent, |over| over.with(extent));
    let (across, up) = (extent.right - extent.left, extent.top - extent.bottom);
    // No higher than it needs to be.
    let high = most_high.min((wide - 2.0 * EDGE_PX) * up / across.max(1.0) + 2.0 * EDGE_PX);
    let look = Look::fit(extent, (wide, high));
    let px = look.px_per_mm;
    let ink = hex(palette.ink);
    let mut inside = format!(
        "<g fill=\"none\" stroke=\"{ink}\" stroke-linejoin=\"round\" stroke-linecap=\"round\" \
         font-family=\"system-ui, sans-serif\">"
    );
    let view = [look.left_mm, -look.top_mm, wide / px, high / px];
    rect(&mut inside, view, palette);
    for text in
        [svg::scene_text(scene, px), svg::letters_text(scene, px), svg::overlay_text(&overlay, px)]
    {
        inked(&mut inside, &text, palette);
    }
    inside.push_str("</g>");
    Some(Picture { inside, view, px: 1.0 / px })
}

/// A colour as an attribute has it.
fn hex(RGBColor(red, green, blue): RGBColor) -> String {
    format!("#{red:02x}{green:02x}{blue:02x}")
}

/// Adds a part of a drawing with colours in place of its classes.
fn inked(out: &mut String, text: &str, palette: Palette) {
    const CLASS: &str = " class=\"";
    let mut rest = text;
    while let Some(at) = rest.find(CLASS) {
        out.push_str(&rest[..at]);
        let after = &rest[at + CLASS.len()..];
        let (class, behind) = after.split_once('"').unwrap_or((after, ""));
        out.push_str(&colours(class, palette));
        rest = behind;
    }
    out.push_str(rest);
}

/// The attributes for a class of the drawing: the same as `style/later.css` gives it on the page.
fn colours(class: &str, palette: Palette) -> String {
    let [ink, faint, grid, paper] =
        [palette.ink, palette.faint, palette.grid, palette.paper].map(hex);
    let [accent, c, f] = [palette.accent, palette.c_mark, palette.f_mark].map(hex);
    let string = |stroke: &str| format!(" stroke=\"{stroke}\" stroke-linecap=\"butt\"");
    let both = |color: &str| format!(" fill=\"{color}\" stroke=\"{color}\"");
    match class {
        "wood" => format!(" fill=\"{paper}\" stroke=\"{faint}\""),
        "board" => format!(" fill=\"{grid}\""),
        "string" => string(&faint),
        "string c" => string(&c),
        "string f" => string(&f),
        "core" => string(&paper),
        "c-mark" => both(&c),
        "f-mark" => both(&f),
        "tuning" => format!(" fill=\"{paper}\""),
        "lever" => format!(" fill=\"{ink}\" stroke=\"none\""),
        "disc" => format!(" fill=\"{paper}\" fill-opacity=\"0.7\""),
        "words" => format!(" fill=\"{ink}\" stroke=\"{paper}\" paint-order=\"stroke\""),
        "mark" => format!(" fill=\"{paper}\" stroke=\"none\" font-weight=\"700\""),
        "line" => format!(" stroke=\"{accent}\""),
        "area" => format!(" fill=\"{accent}\" fill-opacity=\"0.14\" stroke=\"none\""),
        _ => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::charts::lofting;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::engine::figure::Figure;
    use crate::engine::geometry::lay_out;

    fn drawn(over: &str, palette: Palette) -> String {
        let design = SAMPLES[0].design();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let scene = lofting::scene(&design, &resolved, &analysis, &band);
        let given = Given {
            design: &design,
            resolved: &resolved,
            analysis: &analysis,
            band: &band,
            scene: &scene,
            bearing: None,
            marked: 0,
        };
        drawing(&given, over, palette, (700.0, 900.0)).unwrap().svg(180.0, 200.0, "mm")
    }

    #[test]
    fn a_drawing_alone_has_colours_and_no_class() {
        for palette in [Palette::light(), Palette::dark(), Palette::print()] {
            let text = drawn("measures", palette);
            assert!(!text.contains("class=") && !text.contains("style"), "{text}");
            assert!(text.starts_with("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"180mm\""));
            assert!(text.contains(&hex(palette.c_mark)) && text.contains(" mm</text>"));
        }
    }

    #[test]
    fn measures_lie_over_the_drawing_that_asks_for_them() {
        let count = |text: &str| text.matches(" mm</text>").count();
        assert_eq!(count(&drawn("none", Palette::print())), 0);
        assert!(count(&drawn("measures", Palette::print())) >= 5);
    }

    #[test]
    fn words_below_make_a_picture_taller_by_their_lines() {
        let design = SAMPLES[0].design();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let shown = [Figure::Tension];
        let made = Curves::build(&analysis, &resolved.harp, &design.units, &shown, None, None);
        let bare = curves(&made, Palette::print(), (400, 200));
        let lines = ["less < more".to_owned(), "and".to_owned()];
        let told = bare.clone().with_words(&lines, Palette::print());
        assert!((told.height(400.0) - bare.height(400.0) - 3.0 * LINE_PX).abs() < 1e-9);
        assert!(told.svg(400.0, 245.0, "").contains(">less &lt; more</text>"));
    }

    #[test]
    fn a_picture_keeps_its_shape() {
        let design = SAMPLES[0].design();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let shown = [Figure::Tension, Figure::LoadShare];
        let made = Curves::build(&analysis, &resolved.harp, &design.units, &shown, None, None);
        let picture = curves(&made, Palette::print(), (700, 350));
        assert!((picture.height(190.0) - 95.0).abs() < 1e-12);
        let text = picture.svg(190.0, 95.0, "mm");
        assert!(
            text.contains("viewBox=\"0 0 2800 1400 \"") && text.contains("Load share"),
            "{text}"
        );
        assert_eq!(text.matches("<svg").count(), 1);
        assert_eq!(text.matches("</svg>").count(), 1);
        assert!(text.contains("<polyline") && !text.contains("style="));
    }
}
