//! Small readers of what was written: the circles of a DXF and of an SVG, the rows of a CSV.

/// A circle of a layer: its centre, y upwards, and its radius.
#[derive(Clone, Debug)]
pub struct Circle {
    pub layer: String,
    pub x_mm: f64,
    pub y_mm: f64,
    pub radius_mm: f64,
}

/// Codes and values of a DXF.
pub fn tags(dxf: &str) -> Vec<(i32, &str)> {
    let lines: Vec<&str> = dxf.split("\r\n").collect();
    let pair = |pair: &[&'_ str]| -> i32 { pair[0].trim().parse().expect("a code is a number") };
    lines.chunks_exact(2).map(|two| (pair(two), two[1])).collect()
}

pub fn dxf_circles(dxf: &str) -> Vec<Circle> {
    let tags = tags(dxf);
    let starts = tags.iter().enumerate().filter(|(_, tag)| **tag == (0, "CIRCLE"));
    let circle = |(start, _)| {
        let own: Vec<&(i32, &str)> =
            tags.iter().skip(start + 1).take_while(|tag| tag.0 != 0).collect();
        let text = |code| own.iter().find(|tag| tag.0 == code).expect("a circle has it").1;
        let number = |code| text(code).parse().expect("a number");
        Circle {
            layer: text(8).to_lowercase(),
            x_mm: number(10),
            y_mm: number(20),
            radius_mm: number(40),
        }
    };
    starts.map(circle).collect()
}

/// An attribute of the element that a line of SVG holds.
pub fn attribute<'a>(line: &'a str, name: &str) -> Option<&'a str> {
    line.split(&format!(" {name}=\"")).nth(1)?.split('"').next()
}

pub fn svg_circles(svg: &str) -> Vec<Circle> {
    let mut layer = String::new();
    let mut circles = Vec::new();
    for line in svg.lines() {
        if line.starts_with("<g ") {
            layer = attribute(line, "id").expect("a layer has a name").to_owned();
        } else if line.starts_with("<circle ") {
            let number = |name| attribute(line, name).and_then(|text| text.parse::<f64>().ok());
            circles.push(Circle {
                layer: layer.clone(),
                x_mm: number("cx").expect("a number"),
                y_mm: -number("cy").expect("a number"),
                radius_mm: number("r").expect("a number"),
            });
        }
    }
    circles
}

/// Cells of a CSV whose cells hold no commas.
pub fn csv(text: &str) -> Vec<Vec<&str>> {
    text.lines().map(|line| line.split(',').collect()).collect()
}
