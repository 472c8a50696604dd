//! Small readers of what was written: circles and lines of a DXF and of an SVG, the rows of a CSV.

/// A circle of a layer: its centre, y upwards, and its radius.
#[derive(Clone, Debug)]
pub struct Circle {
    pub layer: String,
    pub x_mm: f64,
    pub y_mm: f64,
    pub radius_mm: f64,
}

/// A line of a layer, y upwards.
#[derive(Clone, Debug)]
pub struct Line {
    pub layer: String,
    pub from_mm: (f64, f64),
    pub to_mm: (f64, f64),
}

impl Line {
    /// Whether its middle lies at a place.
    pub fn is_round(&self, x_mm: f64, y_mm: f64, room_mm: f64) -> bool {
        let middle = |one: f64, other: f64| 0.5 * (one + other);
        let (x, y) = (middle(self.from_mm.0, self.to_mm.0), middle(self.from_mm.1, self.to_mm.1));
        (x - x_mm).hypot(y - y_mm) < room_mm
    }
}

/// Codes and values of a DXF.
pub fn tags(dxf: &str) -> Vec<(i32, &str)> {
    let lines: Vec<&str> = dxf.split("\r\n").collect();
    let pair = |pair: &[&'_ str]| -> i32 { pair[0].trim().parse().expect("a code is a number") };
    lines.chunks_exact(2).map(|two| (pair(two), two[1])).collect()
}

/// The layer and the numbers by their codes of each entity of a kind.
fn dxf_entities(dxf: &str, kind: &str, codes: [i32; 4]) -> Vec<(String, [f64; 4])> {
    let tags = tags(dxf);
    let starts = tags.iter().enumerate().filter(|(_, tag)| **tag == (0, kind));
    let entity = |(start, _)| {
        let own: Vec<&(i32, &str)> =
            tags.iter().skip(start + 1).take_while(|tag| tag.0 != 0).collect();
        let text = |code| own.iter().find(|tag| tag.0 == code).expect("it is there").1;
        (text(8).to_lowercase(), codes.map(|code| text(code).parse().expect("a number")))
    };
    starts.map(entity).collect()
}

pub fn dxf_circles(dxf: &str) -> Vec<Circle> {
    let circle = |(layer, [x_mm, y_mm, radius_mm, _]): (String, [f64; 4])| Circle {
        layer,
        x_mm,
        y_mm,
        radius_mm,
    };
    dxf_entities(dxf, "CIRCLE", [10, 20, 40, 10]).into_iter().map(circle).collect()
}

pub fn dxf_lines(dxf: &str) -> Vec<Line> {
    let line = |(layer, [x, y, to_x, to_y]): (String, [f64; 4])| Line {
        layer,
        from_mm: (x, y),
        to_mm: (to_x, to_y),
    };
    dxf_entities(dxf, "LINE", [10, 20, 11, 21]).into_iter().map(line).collect()
}

/// An attribute of the element that a line of SVG holds.
pub fn attribute<'a>(line: &'a str, name: &str) -> Option<&'a str> {
    line.split(&format!(" {name}=\"")).nth(1)?.split('"').next()
}

/// The layer and some attributes of each element of a kind.
fn svg_elements<const N: usize>(
    svg: &str,
    kind: &str,
    names: [&str; N],
) -> Vec<(String, [f64; N])> {
    let mut layer = String::new();
    let mut elements = Vec::new();
    for line in svg.lines() {
        if line.starts_with("<g ") {
            layer = attribute(line, "id").expect("a layer has a name").to_owned();
        } else if line.starts_with(&format!("<{kind} ")) {
            let number = |name| attribute(line, name).and_then(|text| text.parse::<f64>().ok());
            elements.push((layer.clone(), names.map(|name| number(name).expect("a number"))));
        }
    }
    elements
}

pub fn svg_circles(svg: &str) -> Vec<Circle> {
    let circle = |(layer, [x_mm, y, radius_mm]): (String, [f64; 3])| Circle {
        layer,
        x_mm,
        y_mm: -y,
        radius_mm,
    };
    svg_elements(svg, "circle", ["cx", "cy", "r"]).into_iter().map(circle).collect()
}

pub fn svg_lines(svg: &str) -> Vec<Line> {
    let line = |(layer, [x, y, to_x, to_y]): (String, [f64; 4])| Line {
        layer,
        from_mm: (x, -y),
        to_mm: (to_x, -to_y),
    };
    svg_elements(svg, "line", ["x1", "y1", "x2", "y2"]).into_iter().map(line).collect()
}

/// Cells of a CSV whose cells hold no commas.
pub fn csv(text: &str) -> Vec<Vec<&str>> {
    text.lines().map(|line| line.split(',').collect()).collect()
}
