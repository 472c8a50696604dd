//! The target curve along the compass as a small picture: the bass at the left, values in their logarithm.

use crate::design::display;
use crate::design::targets::Point;

/// Room for the numbers at the left and for the notes below, and a margin, in pixels.
const LEFT: f64 = 40.0;
const BELOW: f64 = 18.0;
const MARGIN: f64 = 13.0;
/// Values beyond the curve and the strings that are in sight, as a logarithm.
const ROOM: f64 = 0.18;
/// The marks of an axis in a decade, wide apart and ever closer, and how many there should be.
const MARKS: [&[f64]; 3] = [
    &[1.0, 2.0, 5.0],
    &[1.0, 1.5, 2.0, 3.0, 5.0, 7.0],
    &[1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0],
];
const ENOUGH: usize = 4;

/// What is drawn.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Given {
    /// The points of the target curve, from the bass.
    pub points: Vec<Point>,
    /// Each string's place and value now.
    pub present: Vec<Point>,
    /// Each string's place and the least and greatest value that the stock can give, from the bass.
    pub reach: Vec<(f64, Point)>,
    /// Each string's place and value in the set proposed.
    pub proposed: Vec<Point>,
}

/// Where values stand in the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plot {
    size: Point,
    places: Point,
    logs: Point,
}

impl Plot {
    /// A picture of so many pixels for what is given.
    pub fn new(given: &Given, size: Point) -> Self {
        let strings = || given.present.iter().chain(&given.proposed);
        let mut places = bounds(strings().map(|point| point.0));
        if places.0 > places.1 {
            places = (36.0, 96.0);
        }
        // A point beyond the strings stands at the edge.
        places = (places.0 - 2.0, places.1 + 2.0);
        let values = strings().chain(&given.points).map(|point| point.1.ln());
        let mut logs = bounds(values.filter(|log| log.is_finite()));
        if logs.0 > logs.1 {
            logs = (0.0, 1.0);
        }
        Self { size, places, logs: (logs.0 - ROOM, logs.1 + ROOM) }
    }

    /// Where a place stands, in pixels from the left.
    pub fn x(&self, place: f64) -> f64 {
        let share = (place - self.places.0) / (self.places.1 - self.places.0);
        LEFT + share.clamp(0.0, 1.0) * (self.size.0 - LEFT - MARGIN)
    }

    /// Where a value stands, in pixels from above.
    pub fn y(&self, value: f64) -> f64 {
        let share = (value.ln() - self.logs.0) / (self.logs.1 - self.logs.0);
        MARGIN + (1.0 - share.clamp(0.0, 1.0)) * (self.size.1 - BELOW - MARGIN)
    }

    /// By how much a value is multiplied, and how far a place moves, over a distance in pixels to the right and down.
    pub fn moved(&self, by: Point) -> Point {
        let places = by.0 / (self.size.0 - LEFT - MARGIN).max(1.0);
        let logs = -by.1 / (self.size.1 - BELOW - MARGIN).max(1.0);
        (
            places * (self.places.1 - self.places.0),
            (logs * (self.logs.1 - self.logs.0)).clamp(-20.0, 20.0).exp(),
        )
    }

    /// The picture as SVG, without its outermost element.
    pub fn svg(&self, given: &Given) -> String {
        let mut svg = String::new();
        self.axes(&mut svg);
        let at = |(place, value): &Point| format!("{},{}", px(self.x(*place)), px(self.y(*value)));
        if given.reach.len() > 1 {
            let upper = given.reach.iter().map(|(place, (_, most))| at(&(*place, *most)));
            let lower = given.reach.iter().rev().map(|(place, (least, _))| at(&(*place, *least)));
            let corners: Vec<String> = upper.chain(lower).collect();
            svg.push_str(&format!(
                "<polygon class=\"wish-reach\" points=\"{}\"/>",
                corners.join(" ")
            ));
        }
        let mut dots = |points: &[Point], class: &str, radius: &str| {
            for (place, value) in points {
                let (x, y) = (px(self.x(*place)), px(self.y(*value)));
                svg.push_str(&format!(
                    "<circle class=\"{class}\" cx=\"{x}\" cy=\"{y}\" r=\"{radius}\"/>"
                ));
            }
        };
        dots(&given.present, "wish-now", "2.2");
        dots(&given.proposed, "wish-next", "2.6");
        if let (Some(first), Some(last)) = (given.points.first(), given.points.last()) {
            let ends = [(self.places.0, first.1), (self.places.1, last.1)];
            let inside = given.points.iter();
            let line: Vec<String> =
                ends[..1].iter().chain(inside).chain(&ends[1..]).map(at).collect();
            svg.push_str(&format!("<polyline class=\"wish-line\" points=\"{}\"/>", line.join(" ")));
        }
        svg
    }

    /// The values that are marked: the coarsest marks of which there are enough.
    fn marks(&self) -> Vec<f64> {
        let mut found = Vec::new();
        for marks in MARKS {
            found.clear();
            let mut decade = (self.logs.0 / std::f64::consts::LN_10).floor();
            while decade * std::f64::consts::LN_10 < self.logs.1 {
                let values = marks.iter().map(|mark| mark * 10.0_f64.powf(decade));
                found.extend(values.filter(|v| (self.logs.0..=self.logs.1).contains(&v.ln())));
                decade += 1.0;
            }
            if found.len() >= ENOUGH {
                break;
            }
        }
        found
    }

    fn axes(&self, svg: &mut String) {
        let (right, foot) = (px(self.size.0 - MARGIN), px(self.size.1 - BELOW));
        for value in self.marks() {
            let y = px(self.y(value));
            let words = display::significant(value, 2);
            svg.push_str(&format!(
                "<path class=\"wish-rule\" d=\"M{LEFT} {y}H{right}\"/><text x=\"{}\" y=\"{y}\" dy=\"4\" \
                 text-anchor=\"end\">{words}</text>",
                LEFT - 5.0
            ));
        }
        let mut octave = (self.places.0 / 12.0).ceil();
        while octave * 12.0 <= self.places.1 {
            let x = px(self.x(octave * 12.0));
            svg.push_str(&format!(
                "<path class=\"wish-rule\" d=\"M{x} {MARGIN}V{foot}\"/><text x=\"{x}\" y=\"{}\" \
                 text-anchor=\"middle\">C{}</text>",
                px(self.size.1 - 4.0),
                display::decimals(octave - 1.0, 0)
            ));
            octave += 1.0;
        }
    }
}

fn bounds(values: impl Iterator<Item = f64>) -> Point {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), value| {
        (least.min(value), most.max(value))
    })
}

/// A tenth of a pixel, with the signs that SVG reads in any language.
fn px(value: f64) -> String {
    display::kept(|| display::decimals(value, 1)).replace('−', "-")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn given() -> Given {
        Given {
            points: vec![(40.0, 1.0), (90.0, 2.0)],
            present: vec![(36.0, 0.5), (60.0, 1.0), (96.0, 2.0)],
            reach: vec![(36.0, (0.3, 3.0)), (96.0, (0.4, 2.0))],
            proposed: Vec::new(),
        }
    }

    #[test]
    fn the_bass_is_at_the_left_and_the_stiff_above() {
        let plot = Plot::new(&given(), (400.0, 200.0));
        assert!(plot.x(36.0) < plot.x(96.0));
        assert!(plot.y(2.0) < plot.y(0.5));
        assert!(plot.x(0.0) >= LEFT && plot.x(136.0) <= 400.0 - MARGIN);
    }

    #[test]
    fn a_way_in_pixels_is_a_way_in_keys_and_a_ratio() {
        let plot = Plot::new(&given(), (400.0, 200.0));
        let by = (plot.x(70.0) - plot.x(60.0), plot.y(1.5) - plot.y(1.0));
        let (keys, times) = plot.moved(by);
        assert_close(keys, 10.0, 1e-9, "keys");
        assert_close(times, 1.5, 1e-9, "ratio");
    }

    #[test]
    fn a_picture_has_a_dot_for_each_string_and_notes_below() {
        let svg = Plot::new(&given(), (400.0, 200.0)).svg(&given());
        assert_eq!(svg.matches("wish-now").count(), 3);
        assert_eq!(svg.matches("wish-line").count(), 1);
        assert!(svg.contains(">C4<") && svg.contains(">0.50<"), "{svg}");
        assert!(!svg.contains("NaN"), "{svg}");
    }

    #[test]
    fn nothing_given_is_no_reason_to_fail() {
        let plot = Plot::new(&Given::default(), (0.0, 0.0));
        assert!(!plot.svg(&Given::default()).contains("NaN"));
    }
}
