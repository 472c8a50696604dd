//! Writes a template as SVG that opens at full size: its unit is the millimetre, y is turned round, as
//! SVG counts downwards. A point (x, y) stands in the file as (x, -y).

use std::fmt::Write as _;

use crate::design::letters::escape;
use crate::papers::measure::{POINT_MM, clean};
use crate::words::templates as say;

use super::model::{Anchor, LayerKind, PointMm, Shape, Template, TemplateError, type_pt};
use super::plane::is_closed;

/// White round the drawing.
pub const EDGE_MM: f64 = 5.0;

/// The template as the text of an SVG file.
///
/// # Errors
///
/// When there is nothing to draw, or a number that cannot be drawn.
pub fn write(template: &Template) -> Result<String, TemplateError> {
    let extent = template.extent()?.padded(EDGE_MM);
    let (wide, high) = (mm(extent.width_mm()), mm(extent.height_mm()));
    let mut out = String::with_capacity(64 * 1024);
    out.push_str("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    let _ = writeln!(
        out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"{wide}mm\" \
         height=\"{high}mm\" viewBox=\"{} {} {wide} {high}\">",
        mm(extent.left_mm),
        mm(-extent.top_mm)
    );
    let _ = writeln!(out, "<title>{}</title>", words(&template.title));
    let mut about = vec![String::from(say::UNIT)];
    if !template.origin.is_empty() {
        about.push(say::origin_is(&template.origin));
    }
    about.extend(template.notes.iter().cloned());
    let about: Vec<String> = about.iter().map(|note| words(note)).collect();
    let _ = writeln!(out, "<desc>{}</desc>", about.join("\n"));
    for layer in template.drawn() {
        group(&mut out, layer.kind);
        for shape in &layer.shapes {
            write_shape(&mut out, shape, colour(layer.kind));
        }
        out.push_str("</g>\n");
    }
    out.push_str("</svg>\n");
    Ok(out)
}

/// Dark colours, one for each kind, that a cutter's program can tell apart.
const fn colour(kind: LayerKind) -> &'static str {
    match kind {
        LayerKind::Outline | LayerKind::Text => "#000000",
        LayerKind::Board => "#7a4a00",
        LayerKind::Pillar => "#6b3f2a",
        LayerKind::Strings => "#777777",
        LayerKind::Pins => "#c00000",
        LayerKind::Holes => "#0040c0",
        LayerKind::Levers => "#007a33",
        LayerKind::DiscsNatural => "#4f7300",
        LayerKind::DiscsSharp => "#6a2fb0",
        LayerKind::FarEdge => "#555555",
        LayerKind::Openings => "#a02020",
        LayerKind::Mortises => "#b03060",
        LayerKind::Grain => "#8a6d00",
        LayerKind::Marks => "#a000a0",
        LayerKind::Dimensions => "#007a8a",
    }
}

fn group(out: &mut String, kind: LayerKind) {
    let name = kind.name();
    let _ = write!(
        out,
        "<g id=\"{name}\" class=\"layer layer-{name}\" fill=\"none\" stroke=\"{}\" \
         stroke-width=\"{}\" stroke-linejoin=\"round\"",
        colour(kind),
        mm(kind.line_mm())
    );
    let dashes: Vec<String> = kind.stroke().dashes_mm().iter().map(|dash| mm(*dash)).collect();
    if !dashes.is_empty() {
        let _ = write!(out, " stroke-dasharray=\"{}\"", dashes.join(" "));
    }
    out.push_str(">\n");
}

/// Millimetres to a ten-thousandth, without needless noughts.
fn mm(value: f64) -> String {
    let text = format!("{value:.4}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// A text with only the letters that XML allows.
fn words(text: &str) -> String {
    let allowed = |sign: &char| !matches!(sign, '\u{fffe}' | '\u{ffff}');
    escape(&clean(text).chars().filter(allowed).collect::<String>())
}

fn pair(at: PointMm) -> String {
    format!("{},{}", mm(at.x_mm), mm(-at.y_mm))
}

fn pairs(points: &[PointMm]) -> String {
    points.iter().map(|at| pair(*at)).collect::<Vec<_>>().join(" ")
}

fn write_shape(out: &mut String, shape: &Shape, colour: &str) {
    let _ = match shape {
        Shape::Line(from, to) => write_line(out, *from, *to),
        Shape::Polyline { points, closed: false } => {
            writeln!(out, "<polyline points=\"{}\"/>", pairs(points))
        }
        Shape::Polyline { points, closed: true } => {
            writeln!(out, "<polygon points=\"{}\"/>", pairs(points))
        }
        Shape::Bezier { start, curves } => {
            let end = if is_closed(*start, curves) { " Z" } else { "" };
            let curves: Vec<String> = curves.iter().map(|curve| pairs(curve)).collect();
            writeln!(out, "<path d=\"M{} C{}{end}\"/>", pair(*start), curves.join(" "))
        }
        Shape::Circle { centre, radius_mm } => {
            let (x, y) = (mm(centre.x_mm), mm(-centre.y_mm));
            writeln!(out, "<circle cx=\"{x}\" cy=\"{y}\" r=\"{}\"/>", mm(*radius_mm))
        }
        Shape::Cross { .. } => {
            for ends in shape.lines() {
                if let [from, to] = ends[..] {
                    let _ = write_line(out, from, to);
                }
            }
            Ok(())
        }
        Shape::Text { at, height_mm, text, angle_deg, anchor } => {
            let (x, y) = (mm(at.x_mm), mm(-at.y_mm));
            let size = mm(type_pt(*height_mm) * POINT_MM);
            let _ = write!(
                out,
                "<text x=\"{x}\" y=\"{y}\" font-family=\"Helvetica, Arial, sans-serif\" \
                 font-size=\"{size}\" fill=\"{colour}\" stroke=\"none\""
            );
            match anchor {
                Anchor::Start => {}
                Anchor::Middle => out.push_str(" text-anchor=\"middle\""),
                Anchor::End => out.push_str(" text-anchor=\"end\""),
            }
            let turn = mm(-angle_deg.rem_euclid(360.0));
            if turn != "0" {
                let _ = write!(out, " transform=\"rotate({turn} {x} {y})\"");
            }
            writeln!(out, ">{}</text>", words(text))
        }
    };
}

fn write_line(out: &mut String, from: PointMm, to: PointMm) -> std::fmt::Result {
    writeln!(
        out,
        "<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\"/>",
        mm(from.x_mm),
        mm(-from.y_mm),
        mm(to.x_mm),
        mm(-to.y_mm)
    )
}
