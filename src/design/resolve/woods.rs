//! What the parts of a harp are made of, with their densities, and what their string holes are drilled with.

use super::Resolved;
use super::timber::{Made, made};
use crate::design::document::{GeometrySpec, PLYWOOD};
use crate::engine::analysis::Analysis;
use crate::engine::parts::{Stuff, Woods};
use crate::engine::units::Length;

/// Plies of a plywood that does not say: only its density is asked for, which hardly depends on them.
const PLIES: u32 = 7;

impl Resolved {
    /// The woods of the parts.
    pub fn woods(&self) -> Woods {
        let given = &self.parts;
        let layer =
            |key: &String| stuff(if key.is_empty() { &given.neck.wood } else { key }, given);
        let layers = given.neck.layers.iter().filter(|layer| layer.thickness_mm > 0.0);
        Woods {
            neck: stuff(&given.neck.wood, given),
            layers: layers
                .map(|own| {
                    let turned = own.angle_deg.to_radians();
                    (Length::from_mm(own.thickness_mm), turned, layer(&own.wood))
                })
                .collect(),
            pillar: stuff(&given.pillar.wood, given),
            board: stuff(&given.board.wood, given),
            rib: stuff(&given.board.rib_wood, given),
            bars: stuff(&given.bars.wood, given),
            sides: stuff(&given.soundbox.side_wood, given),
            back: stuff(&given.soundbox.back_wood, given),
        }
    }

    /// How wide the holes of the strings in the board are, in the design's order.
    pub fn string_drills(&self, analysis: &Analysis) -> Vec<Option<Length>> {
        analysis.strings.iter().map(|figures| self.drills.hole(figures.gauge.ok())).collect()
    }
}

fn stuff(key: &str, given: &GeometrySpec) -> Stuff {
    let density = made(key, Some(PLIES), &given.woods).and_then(|made| match made {
        Made::Solid(wood) => wood.density.as_ref().map(|sourced| sourced.value),
        Made::Plywood(panel) => panel.density.as_ref().map(|sourced| sourced.value),
    });
    Stuff { key: key.to_owned(), density, is_sheet: key == PLYWOOD }
}
