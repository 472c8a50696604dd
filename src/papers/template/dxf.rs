//! Writes a template as DXF of release 12, the plainest form: every CAD program and cutter reads it.
//!
//! Curves become lines of many points, as release 12 has no free curves. `$INSUNITS` came later than
//! release 12: programs that know it take the drawing as millimetres, the others pass over it.

use std::fmt::{Display, Write as _};

use super::letters::ascii;
use super::model::{Anchor, Extent, LayerKind, PointMm, Shape, Stroke, Template, TemplateError};
use super::plane::{flattened, is_closed};

/// The line types that layers use. The first is one that every program has.
const STROKES: [Stroke; 3] = [Stroke::Full, Stroke::Dashed, Stroke::Chain];

/// The template as the text of a DXF file, in ASCII, with the line ends of DOS.
///
/// # Errors
///
/// When there is nothing to draw, or a number that cannot be drawn.
pub fn write(template: &Template) -> Result<String, TemplateError> {
    let extent = template.extent()?;
    let layers = template.drawn();
    let mut dxf = Dxf { out: String::with_capacity(64 * 1024) };
    dxf.tag(999, safe(&template.title));
    dxf.tag(999, "millimetres, x to the right, y up, full size");
    if !template.origin.is_empty() {
        dxf.tag(999, format_args!("origin 0, 0: {}", safe(&template.origin)));
    }
    dxf.header(&extent);
    dxf.section("TABLES", |dxf| dxf.tables(&extent, layers.iter().map(|layer| layer.kind)));
    dxf.section("BLOCKS", |_| ());
    dxf.section("ENTITIES", |dxf| {
        for layer in &layers {
            layer.shapes.iter().for_each(|shape| dxf.shape(layer.kind, shape));
        }
    });
    dxf.tag(0, "EOF");
    Ok(dxf.out)
}

/// The name of a layer in the file: release 12 has capitals only.
pub fn layer_name(kind: LayerKind) -> String {
    kind.name().to_ascii_uppercase()
}

/// Numbers of the palette that all CAD programs share; 7 is black on white and white on black.
const fn colour(kind: LayerKind) -> u8 {
    match kind {
        LayerKind::Outline => 7,
        LayerKind::Board => 30,
        LayerKind::Pillar => 32,
        LayerKind::Strings => 8,
        LayerKind::Pins => 1,
        LayerKind::Holes => 5,
        LayerKind::Levers => 3,
        LayerKind::DiscsNatural => 92,
        LayerKind::DiscsSharp => 200,
        LayerKind::FarEdge => 9,
        LayerKind::Openings => 10,
        LayerKind::Mortises => 11,
        LayerKind::Grain => 40,
        LayerKind::Marks => 6,
        LayerKind::Dimensions => 4,
        LayerKind::Text => 2,
    }
}

const fn line_type(stroke: Stroke) -> (&'static str, &'static str) {
    match stroke {
        Stroke::Full => ("CONTINUOUS", "Solid line"),
        Stroke::Dashed => ("DASHED", "__ __ __ __"),
        Stroke::Chain => ("CENTER", "____ _ ____ _"),
    }
}

/// A text in which nothing is a command: `%%` begins one, a caret begins a control sign, a backslash a
/// letter by its number.
fn safe(text: &str) -> String {
    let mut out = ascii(text).replace('\\', "/").replace('^', "'");
    while out.contains("%%") {
        out = out.replace("%%", "% %");
    }
    out
}

struct Dxf {
    out: String,
}

impl Dxf {
    /// A group: its code on a line, its value on the next.
    fn tag(&mut self, code: i32, value: impl Display) {
        let _ = write!(self.out, "{code:>3}\r\n{value}\r\n");
    }

    fn number(&mut self, code: i32, value: f64) {
        // Six digits: far below the thousandth of a millimetre that is asked for.
        let text = format!("{value:.6}");
        self.tag(code, if text == "-0.000000" { "0.000000" } else { &text });
    }

    fn point(&mut self, code: i32, at: PointMm) {
        self.number(code, at.x_mm);
        self.number(code + 10, at.y_mm);
        self.number(code + 20, 0.0);
    }

    fn section(&mut self, name: &str, inside: impl FnOnce(&mut Self)) {
        self.tag(0, "SECTION");
        self.tag(2, name);
        inside(self);
        self.tag(0, "ENDSEC");
    }

    fn header(&mut self, extent: &Extent) {
        self.section("HEADER", |dxf| {
            dxf.tag(9, "$ACADVER");
            dxf.tag(1, "AC1009");
            for (name, x_mm, y_mm) in [
                ("$EXTMIN", extent.left_mm, extent.bottom_mm),
                ("$EXTMAX", extent.right_mm, extent.top_mm),
            ] {
                dxf.tag(9, name);
                dxf.point(10, PointMm::new(x_mm, y_mm));
            }
            for (name, x_mm, y_mm) in [
                ("$LIMMIN", extent.left_mm, extent.bottom_mm),
                ("$LIMMAX", extent.right_mm, extent.top_mm),
            ] {
                dxf.tag(9, name);
                dxf.number(10, x_mm);
                dxf.number(20, y_mm);
            }
            // Decimal numbers with three digits; line types at full size; metric; millimetres.
            for (name, value) in
                [("$LUNITS", 2), ("$LUPREC", 3), ("$MEASUREMENT", 1), ("$INSUNITS", 4)]
            {
                dxf.tag(9, name);
                dxf.tag(70, value);
            }
            dxf.tag(9, "$LTSCALE");
            dxf.number(40, 1.0);
        });
    }

    fn table(&mut self, name: &str, count: usize, inside: impl FnOnce(&mut Self)) {
        self.tag(0, "TABLE");
        self.tag(2, name);
        self.tag(70, count);
        inside(self);
        self.tag(0, "ENDTAB");
    }

    fn tables(&mut self, extent: &Extent, kinds: impl Iterator<Item = LayerKind>) {
        self.table("VPORT", 1, |dxf| dxf.view(extent));
        self.table("LTYPE", STROKES.len(), |dxf| STROKES.into_iter().for_each(|s| dxf.dashes(s)));
        let kinds: Vec<LayerKind> = kinds.collect();
        self.table("LAYER", kinds.len() + 1, |dxf| {
            dxf.layer("0", 7, Stroke::Full);
            kinds.iter().for_each(|k| dxf.layer(&layer_name(*k), colour(*k), k.stroke()));
        });
        self.table("STYLE", 1, |dxf| {
            dxf.tag(0, "STYLE");
            dxf.tag(2, "STANDARD");
            dxf.tag(70, 0);
            dxf.number(40, 0.0);
            dxf.number(41, 1.0);
            dxf.number(50, 0.0);
            dxf.tag(71, 0);
            dxf.number(42, 2.5);
            dxf.tag(3, "txt");
            dxf.tag(4, "");
        });
    }

    /// The view in which the drawing opens: all of it.
    fn view(&mut self, extent: &Extent) {
        let middle = PointMm::new(
            0.5 * (extent.left_mm + extent.right_mm),
            0.5 * (extent.bottom_mm + extent.top_mm),
        );
        self.tag(0, "VPORT");
        self.tag(2, "*ACTIVE");
        self.tag(70, 0);
        let flat = |dxf: &mut Self, code: i32, x: f64, y: f64| {
            dxf.number(code, x);
            dxf.number(code + 10, y);
        };
        flat(self, 10, 0.0, 0.0);
        flat(self, 11, 1.0, 1.0);
        flat(self, 12, middle.x_mm, middle.y_mm);
        flat(self, 13, 0.0, 0.0);
        flat(self, 14, 10.0, 10.0);
        flat(self, 15, 10.0, 10.0);
        for (code, z) in [(16, 1.0), (17, 0.0)] {
            flat(self, code, 0.0, 0.0);
            self.number(code + 20, z);
        }
        let aspect = 1.5;
        let high_mm = extent.height_mm().max(extent.width_mm() / aspect);
        self.number(40, (1.05 * high_mm).max(1.0));
        self.number(41, aspect);
        self.number(42, 50.0);
        for code in [43, 44, 50, 51] {
            self.number(code, 0.0);
        }
        for (code, value) in
            [(71, 0), (72, 100), (73, 1), (74, 3), (75, 0), (76, 0), (77, 0), (78, 0)]
        {
            self.tag(code, value);
        }
    }

    fn dashes(&mut self, stroke: Stroke) {
        let (name, picture) = line_type(stroke);
        let dashes = stroke.dashes_mm();
        self.tag(0, "LTYPE");
        self.tag(2, name);
        self.tag(70, 0);
        self.tag(3, picture);
        self.tag(72, 65);
        self.tag(73, dashes.len());
        self.number(40, dashes.iter().sum());
        for (index, dash_mm) in dashes.iter().enumerate() {
            self.number(49, if index % 2 == 0 { *dash_mm } else { -dash_mm });
        }
    }

    fn layer(&mut self, name: &str, colour: u8, stroke: Stroke) {
        self.tag(0, "LAYER");
        self.tag(2, name);
        self.tag(70, 0);
        self.tag(62, colour);
        self.tag(6, line_type(stroke).0);
    }

    fn begin(&mut self, entity: &str, kind: LayerKind) {
        self.tag(0, entity);
        self.tag(8, layer_name(kind));
    }

    fn shape(&mut self, kind: LayerKind, shape: &Shape) {
        match shape {
            Shape::Line(from, to) => self.line(kind, *from, *to),
            Shape::Polyline { points, closed } => self.polyline(kind, points, *closed),
            Shape::Bezier { start, curves } => {
                let mut points = flattened(*start, curves);
                let closed = is_closed(*start, curves);
                if closed {
                    points.pop();
                }
                self.polyline(kind, &points, closed);
            }
            Shape::Circle { centre, radius_mm } => {
                self.begin("CIRCLE", kind);
                self.point(10, *centre);
                self.number(40, *radius_mm);
            }
            Shape::Cross { .. } => {
                for ends in shape.lines() {
                    if let [from, to] = ends[..] {
                        self.line(kind, from, to);
                    }
                }
            }
            Shape::Text { at, height_mm, text, angle_deg, anchor } => {
                self.begin("TEXT", kind);
                self.point(10, *at);
                self.number(40, *height_mm);
                self.tag(1, safe(text));
                self.number(50, angle_deg.rem_euclid(360.0));
                self.tag(7, "STANDARD");
                let side = match anchor {
                    Anchor::Start => return,
                    Anchor::Middle => 1,
                    Anchor::End => 2,
                };
                self.tag(72, side);
                self.point(11, *at);
            }
        }
    }

    fn line(&mut self, kind: LayerKind, from: PointMm, to: PointMm) {
        self.begin("LINE", kind);
        self.point(10, from);
        self.point(11, to);
    }

    fn polyline(&mut self, kind: LayerKind, points: &[PointMm], closed: bool) {
        self.begin("POLYLINE", kind);
        self.tag(66, 1);
        self.point(10, PointMm::default());
        self.tag(70, i32::from(closed));
        for at in points {
            self.begin("VERTEX", kind);
            self.point(10, *at);
        }
        self.begin("SEQEND", kind);
    }
}
