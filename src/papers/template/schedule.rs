//! The schedule of a template: every point that is drilled or set, with its coordinates, as CSV.
//!
//! The origin is the first row, a point at 0, 0 with its own words in the last column. So the table
//! stays a plain rectangle that a spreadsheet sorts and filters, with no line of comment above it.

use crate::design::table::cells::{guarded, push};
use crate::papers::measure::clean;

/// The heading of every column, in order.
pub const COLUMNS: [&str; 10] =
    ["string", "note", "feature", "x_mm", "y_mm", "x_in", "y_in", "drill_mm", "drill_in", "remark"];
/// Millimetres in an inch, by definition.
const INCH_MM: f64 = 25.4;

/// What is made at a point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Feature {
    BridgePin,
    TuningPin,
    BoardHole,
    Lever,
    DiscNatural,
    DiscSharp,
}

impl Feature {
    pub const fn name(self) -> &'static str {
        match self {
            Self::BridgePin => "bridge pin",
            Self::TuningPin => "tuning pin",
            Self::BoardHole => "board hole",
            Self::Lever => "lever",
            Self::DiscNatural => "disc natural",
            Self::DiscSharp => "disc sharp",
        }
    }
}

/// The points of a template in the order in which they are listed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Schedule {
    /// What the point (0, 0) is on the harp.
    pub origin: String,
    pub rows: Vec<ScheduleRow>,
}

/// One point.
#[derive(Clone, Debug, PartialEq)]
pub struct ScheduleRow {
    /// Counted as in the chart.
    pub string: usize,
    pub note: String,
    pub feature: Feature,
    pub x_mm: f64,
    pub y_mm: f64,
    /// Diameter of the drill, where something is drilled.
    pub drill_mm: Option<f64>,
    pub remark: String,
}

/// The table: [`COLUMNS`], the origin, and a line for each point.
pub fn write(schedule: &Schedule) -> String {
    let mut out = String::with_capacity(64 * (schedule.rows.len() + 2));
    add(&mut out, &COLUMNS.map(str::to_owned));
    let origin = ["", "", "origin", "0.000", "0.000", "0.0000", "0.0000", "", ""];
    let mut cells: Vec<String> = origin.map(str::to_owned).to_vec();
    cells.push(words(&schedule.origin));
    add(&mut out, &cells);
    for row in &schedule.rows {
        let (drill_mm, drill_in) = match row.drill_mm {
            Some(drill_mm) => (mm(drill_mm), inch(drill_mm)),
            None => (String::new(), String::new()),
        };
        let cells = [
            row.string.to_string(),
            words(&row.note),
            row.feature.name().to_owned(),
            mm(row.x_mm),
            mm(row.y_mm),
            inch(row.x_mm),
            inch(row.y_mm),
            drill_mm,
            drill_in,
            words(&row.remark),
        ];
        add(&mut out, &cells);
    }
    out
}

fn add(out: &mut String, cells: &[String]) {
    for (index, cell) in cells.iter().enumerate() {
        if index > 0 {
            out.push(',');
        }
        push(out, cell, ',');
    }
    out.push('\n');
}

/// A text that no spreadsheet takes for a formula.
fn words(text: &str) -> String {
    guarded(&clean(text))
}

/// To a thousandth; empty for what is no number.
fn mm(value_mm: f64) -> String {
    fixed(value_mm, 3)
}

/// To a ten-thousandth of an inch, a four-hundredth of a millimetre.
fn inch(value_mm: f64) -> String {
    fixed(value_mm / INCH_MM, 4)
}

fn fixed(value: f64, digits: usize) -> String {
    if !value.is_finite() {
        return String::new();
    }
    let text = format!("{value:.digits$}");
    match text.strip_prefix('-') {
        Some(bare) if bare.bytes().all(|sign| matches!(sign, b'0' | b'.')) => bare.to_owned(),
        _ => text,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_origin_is_the_first_point() {
        let row = ScheduleRow {
            string: 7,
            note: "F\"6,".to_owned(),
            feature: Feature::BridgePin,
            x_mm: 127.0,
            y_mm: -0.0001,
            drill_mm: Some(5.08),
            remark: "=1+1".to_owned(),
        };
        let none = ScheduleRow { drill_mm: None, x_mm: f64::NAN, ..row.clone() };
        let schedule = Schedule { origin: "-end, bass".to_owned(), rows: vec![row, none] };
        assert_eq!(
            write(&schedule),
            "string,note,feature,x_mm,y_mm,x_in,y_in,drill_mm,drill_in,remark\n\
             ,,origin,0.000,0.000,0.0000,0.0000,,,\"'-end, bass\"\n\
             7,\"F\"\"6,\",bridge pin,127.000,0.000,5.0000,0.0000,5.080,0.2000,'=1+1\n\
             7,\"F\"\"6,\",bridge pin,,0.000,,0.0000,,,'=1+1\n"
        );
    }
}
