//! What holes are drilled with.

use crate::design::document::Design;
use crate::design::settings::Setting;
use crate::engine::units::Length;

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

/// The drills of a design.
pub(super) fn drills(design: &Design) -> Drills {
    let drilled = |setting: Setting| {
        let mm = setting.number(design);
        (mm > 0.0).then(|| Length::from_mm(mm))
    };
    Drills {
        bridge_pin: drilled(Setting::BridgePin),
        tuning_pin: drilled(Setting::TuningPin),
        string_clearance: Length::from_mm(Setting::StringClearance.number(design)),
        eyelet: drilled(Setting::Eyelet),
        mechanism: drilled(Setting::MechanismDrill),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::resolve::resolve;
    use crate::testing::assert_close;

    #[test]
    fn a_hole_is_for_the_eyelet_or_for_the_string() {
        let mut design = Design::default();
        let usual = drills(&design);
        let hole = usual.hole(Some(Length::from_mm(0.81))).expect("a gauge");
        assert_close(hole.to_mm(), 1.21, 1e-12, "0.81 mm and 0.4 mm");
        assert_eq!(usual.hole(None), None);
        assert_eq!((usual.eyelet, usual.mechanism), (None, None));
        design.geometry.drills.eyelet_mm = 4.0;
        let bushed = drills(&design);
        assert_eq!(bushed.hole(None), Some(Length::from_mm(4.0)));
    }

    #[test]
    fn a_drill_out_of_reach_gives_way_to_the_usual_one() {
        let mut design = Design::default();
        design.geometry.drills.bridge_pin_mm = 90.0;
        design.geometry.drills.string_clearance_mm = -1.0;
        let taken = drills(&design);
        assert_eq!(taken, drills(&Design::default()));
        assert_eq!(
            resolve(&design).errors,
            [
                "the diameter of the bridge pins must be from 0 to 30 mm, got 90 mm (taken as 3 mm)",
                "the clearance of the string holes must be from 0 to 5 mm, got -1 mm (taken as 0.4 mm)"
            ]
        );
    }
}
