//! The thickness of the board from place to place, as the text of a document's parts holds it (`parts/sizes.rs`):
//! `thick=0 8 6.5 4, 100 3.5 3 2.5`, a row for each place along the board. In a row stand per cent of the way from the lower
//! end to the upper, then mm in the middle, halfway to the sides and at the sides.

use super::decimal::decimal;
use super::document::GeometrySpec;
use super::parts::sizes::{entry, with_entry};
use crate::engine::structure::plate::{MOST_ROWS, Thick};
use crate::engine::units::Length;

/// The thinnest and the thickest that a board may be, in mm.
pub const MM: (f64, f64) = (0.5, 60.0);
/// Where a row may lie, in per cent.
pub const PERCENT: (f64, f64) = (0.0, 100.0);

/// Its name in the text of the parts.
const KEY: &str = "thick";

/// A row: place, middle, halfway, side.
pub type Row = [f64; 4];

/// The rows of a text; none of one without any, and `None` of one that cannot be used.
pub fn read(text: &str) -> Option<Vec<Row>> {
    let rows = text.split(',').map(str::trim).filter(|row| !row.is_empty());
    let row = |row: &str| {
        let mut numbers = row.split_whitespace().map(decimal);
        let mut next = |(least, most): (f64, f64)| {
            numbers.next()?.filter(|number| (least..=most).contains(number))
        };
        let row = [next(PERCENT)?, next(MM)?, next(MM)?, next(MM)?];
        numbers.next().is_none().then_some(row)
    };
    let rows = rows.map(row).collect::<Option<Vec<Row>>>()?;
    (rows.len() <= MOST_ROWS).then_some(rows)
}

/// The text of a shape; empty where it has none.
pub fn text(geometry: &GeometrySpec) -> &str {
    entry(geometry, KEY).unwrap_or_default()
}

/// Puts other rows into a shape, or takes them away. Those for which a design has no room leave it as it is.
pub fn put(geometry: &mut GeometrySpec, rows: &[Row]) {
    let rows = (!rows.is_empty()).then(|| written(rows));
    with_entry(geometry, KEY, rows);
}

/// The text of rows.
fn written(rows: &[Row]) -> String {
    let row = |row: &Row| row.map(|number| number.to_string()).join(" ");
    rows.iter().map(row).collect::<Vec<_>>().join(", ")
}

/// The board of a shape; `None` where it has no rows, or they cannot be used.
pub fn thick(geometry: &GeometrySpec) -> Option<Thick> {
    let row =
        |[at, middle, half, side]: &Row| (at / 100.0, [*middle, *half, *side].map(Length::from_mm));
    let rows: Vec<_> = read(text(geometry))?.iter().map(row).collect();
    Thick::new(&rows)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read_again() {
        let rows = vec![[0.0, 8.0, 6.5, 4.0], [37.5, 6.1, 5.0, 4.25], [100.0, 3.5, 3.0, 2.5]];
        assert_eq!(written(&rows), "0 8 6.5 4, 37.5 6.1 5 4.25, 100 3.5 3 2.5");
        assert_eq!(read(&written(&rows)), Some(rows.clone()));
        assert_eq!(read(""), Some(Vec::new()));
        let mut shape =
            GeometrySpec { parts: "kerf=2.8; what later=7".into(), ..GeometrySpec::default() };
        assert_eq!(thick(&shape), None);
        put(&mut shape, &rows);
        assert_eq!(read(text(&shape)), Some(rows));
        assert!(
            thick(&shape).is_some() && shape.parts.starts_with("kerf=2.8; what later=7; thick=")
        );
        put(&mut shape, &[]);
        assert_eq!(shape.parts, "kerf=2.8; what later=7");
    }

    #[test]
    fn what_makes_no_sense_is_not_used() {
        for bad in
            ["0 8 6", "0 8 6 4 2", "101 4 4 4", "0 0 4 4", "0 4 4 61", "a b c d", "0 nan 4 4"]
        {
            assert_eq!(read(bad), None, "{bad}");
        }
        assert_eq!(read(&"0 4 4 4,".repeat(MOST_ROWS + 1)), None);
        assert_eq!(read(" 50  4 3 2 ,, "), Some(vec![[50.0, 4.0, 3.0, 2.0]]));
    }
}
