//! Strength of plain strings of gut and plastic, which falls with the diameter.

use super::{Sourced, Standing, Strength};
use crate::engine::units::{Length, Stress};
use crate::words::{Words, known as say};

/// The least diameter of a table of falling strength, in mm.
const THINNEST_MM: f64 = 0.01;
/// How the strength of a plain string of gut or plastic falls from a diameter on: times the diameter and times the
/// strength, which is `d^−0.43`, rounded down, with straight lines between.
///
/// Source: the least breaking forces of catgut by size in the United States Pharmacopeia, from memory: over the greatest
/// section of each size from 0.4 to 0.9 mm they fall as `d^−0.43`. Calculated strengths of thick polymer fibres fall as
/// `d^−0.42` to `d^−0.55` (Y. Termonia in M. Elices and J. Llorca (eds.), Fiber Fracture, 2002, read in an excerpt).
const FALLING: [(f64, f64); 9] = [
    (1.0, 1.0),
    (1.2, 0.924),
    (1.5, 0.839),
    (2.0, 0.742),
    (2.5, 0.674),
    (3.0, 0.623),
    (4.0, 0.550),
    (6.0, 0.462),
    (10.0, 0.371),
];

/// Strength that is the same up to a diameter in mm, and falls from there on.
pub(super) fn falling(mpa: f64, from_mm: f64) -> Strength {
    let row = |mm: f64, mpa: f64| (Length::from_mm(mm), Stress::from_mpa(mpa));
    let falls = FALLING.iter().map(|(wider, weaker)| row(wider * from_mm, weaker * mpa));
    Strength::Table(std::iter::once(row(THINNEST_MM, mpa)).chain(falls).collect())
}

pub(super) const NYLON_FALLS: Words = say::NYLON_FALLS;
pub(super) const GUT_FALLS: Words = say::GUT_FALLS;
pub(super) const FLUOROCARBON_FALLS: Words = say::FLUOROCARBON_FALLS;

/// The strength of a built-in material as it was before it fell with the diameter, as links of revisions 1 and 2 know it;
/// `None` for one whose strength is as it was.
pub fn flat_strength(key: &str) -> Option<Sourced<Strength>> {
    let (mpa, source, standing) = match key {
        "nylon" => (310.0, say::NYLON_FLAT, Standing::Computed),
        "gut" => (300.0, say::GUT_FLAT, Standing::Computed),
        "fluorocarbon" => (400.0, say::TO_BE_FOUND, Standing::FromMemory),
        _ => return None,
    };
    let value = Strength::Constant(Stress::from_mpa(mpa));
    Some(Sourced { value, source: source.english().to_owned(), standing })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn strength_is_flat_and_then_falls_by_its_power() {
        let gut = falling(300.0, 0.7);
        let at = |mm: f64| gut.at(Length::from_mm(mm)).unwrap().to_mpa();
        for mm in [0.05, 0.4, 0.7] {
            assert_close(at(mm), 300.0, 1e-12, mm);
        }
        let mut before = 300.0;
        for hundredths in 71..700 {
            let mm = f64::from(hundredths) / 100.0;
            let law = 300.0 * (mm / 0.7).powf(-0.43);
            // Rounded down, and straight lines over a curve that sags between the rows.
            assert!((at(mm) / law - 1.0).abs() < 0.02, "{mm} mm: {} for {law}", at(mm));
            assert!(at(mm) < before, "{mm} mm");
            before = at(mm);
        }
        assert_eq!(gut.at(Length::from_mm(7.1)), None);
    }

    /// Least mean breaking force of catgut with a knot by the greatest diameter of each size, in mm and kgf.
    ///
    /// Source: the United States Pharmacopeia, collagen suture, sizes 1 to 6 of the metric gauges 4 to 8 (from memory).
    #[test]
    fn the_power_is_that_of_the_minima_for_catgut() {
        let least = [(0.499, 2.77), (0.599, 3.80), (0.699, 4.51), (0.799, 5.90), (0.899, 7.00)];
        let logs = least.map(|(mm, kgf): (f64, f64)| (mm.ln(), (kgf / (mm * mm)).ln()));
        let mean = |of: fn(&(f64, f64)) -> f64| logs.iter().map(of).sum::<f64>() / 5.0;
        let (x, y) = (mean(|log| log.0), mean(|log| log.1));
        let slope = logs.iter().map(|log| (log.0 - x) * (log.1 - y)).sum::<f64>()
            / logs.iter().map(|log| (log.0 - x).powi(2)).sum::<f64>();
        assert!((slope + 0.43).abs() < 0.03, "{slope}");
    }
}
