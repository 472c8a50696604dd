//! What holes are drilled with.

use super::within;
use crate::design::document::{Design, DrillsSpec};
use crate::engine::units::Length;

/// The least and the greatest drill, in millimetres; 0 where nothing is drilled.
pub const DRILL_MM: (f64, f64) = (0.0, 30.0);
/// The least and the greatest clearance of a string in its hole, in millimetres.
pub const CLEARANCE_MM: (f64, f64) = (0.0, 5.0);

/// What holes are drilled with, each where one is drilled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drills {
    /// For a bridge pin.
    pub bridge_pin: Option<Length>,
    /// For a tuning pin: its diameter at the wood.
    pub tuning_pin: Option<Length>,
    /// How much wider than its string a hole of the soundboard is.
    pub string_clearance: Length,
    /// For the eyelets of the soundboard.
    pub eyelet: Option<Length>,
    /// For the screw of a lever or the axle of a disc.
    pub mechanism: Option<Length>,
}

impl Drills {
    /// For the hole of a string in the soundboard; `None` where it depends on a gauge that is unknown.
    pub fn hole(&self, gauge: Option<Length>) -> Option<Length> {
        let loose = |gauge: Length| Length::from_m(gauge.to_m() + self.string_clearance.to_m());
        self.eyelet.or_else(|| gauge.map(loose))
    }
}

/// The drills of a design, with a sentence for each that cannot be used.
pub(super) fn drills(design: &Design, errors: &mut Vec<String>) -> Drills {
    let (given, usual) = (&design.geometry.drills, DrillsSpec::default());
    let mut take = |got, usual, what, limits| within(got, usual, what, limits, "mm", errors);
    let bridge_pin_mm =
        take(given.bridge_pin_mm, usual.bridge_pin_mm, "diameter of the bridge pins", DRILL_MM);
    let clearance = (given.string_clearance_mm, usual.string_clearance_mm);
    let string_clearance =
        take(clearance.0, clearance.1, "clearance of the string holes", CLEARANCE_MM);
    let eyelet_mm = take(given.eyelet_mm, usual.eyelet_mm, "diameter of the eyelets", DRILL_MM);
    let mechanism_mm =
        take(given.mechanism_mm, usual.mechanism_mm, "drill for levers and discs", DRILL_MM);
    // What is wrong with the tuning pins is said of the allowances.
    let pin_mm = design.allowances.pin_mm;
    let drilled = |mm: f64| (mm > 0.0).then(|| Length::from_mm(mm));
    Drills {
        bridge_pin: drilled(bridge_pin_mm),
        tuning_pin: drilled(if pin_mm.is_finite() { pin_mm } else { 0.0 }),
        string_clearance: Length::from_mm(string_clearance),
        eyelet: drilled(eyelet_mm),
        mechanism: drilled(mechanism_mm),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn a_hole_is_for_the_eyelet_or_for_the_string() {
        let mut design = Design::default();
        let usual = drills(&design, &mut Vec::new());
        let hole = usual.hole(Some(Length::from_mm(0.81))).expect("a gauge");
        assert_close(hole.to_mm(), 1.21, 1e-12, "0.81 mm and 0.4 mm");
        assert_eq!(usual.hole(None), None);
        assert_eq!((usual.eyelet, usual.mechanism), (None, None));
        design.geometry.drills.eyelet_mm = 4.0;
        let bushed = drills(&design, &mut Vec::new());
        assert_eq!(bushed.hole(None), Some(Length::from_mm(4.0)));
    }

    #[test]
    fn a_drill_out_of_reach_gives_way_to_the_usual_one() {
        let mut design = Design::default();
        design.geometry.drills.bridge_pin_mm = 90.0;
        design.geometry.drills.string_clearance_mm = -1.0;
        let mut errors = Vec::new();
        let taken = drills(&design, &mut errors);
        assert_eq!(taken, drills(&Design::default(), &mut Vec::new()));
        assert_eq!(
            errors,
            [
                "the diameter of the bridge pins must be from 0 to 30 mm, got 90 mm (taken as 3 mm)",
                "the clearance of the string holes must be from 0 to 5 mm, got -1 mm (taken as 0.4 mm)"
            ]
        );
    }
}
