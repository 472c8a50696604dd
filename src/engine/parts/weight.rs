//! What the parts weigh together, and how the harp stands.

use super::solid::{Spot, plus, times};
use super::{Kind, Part, Whole};
use crate::engine::units::Mass;

/// The weight of all parts whose wood has a known density.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Weight {
    /// Of the wood.
    pub mass: Mass,
    /// Its middle.
    pub middle: Spot,
    /// How many parts are left out, as the density of their wood is not known.
    pub left_out: usize,
}

impl Part {
    /// What it weighs, where the density of its wood is known.
    pub fn mass(&self) -> Option<Mass> {
        Some(Mass::from_kg(self.stuff.density?.to_kg_per_m3() * self.volume().0))
    }
}

/// The weight of the wood, without strings, pins, levers, glue and finish.
pub fn weight(whole: &Whole) -> Weight {
    let (mut all, mut sum, mut left_out) = (0.0, [0.0; 3], 0);
    for part in &whole.parts {
        match part.mass() {
            Some(mass) => {
                all += mass.to_kg();
                sum = plus(sum, times(mass.to_kg(), part.volume().1));
            }
            None => left_out += 1,
        }
    }
    Weight { mass: Mass::from_kg(all), middle: times(1.0 / all, sum), left_out }
}

/// The upper end of the back, which leans on the player's shoulder: the highest corner of its outer face. Without a back the
/// origin.
pub fn shoulder_of(whole: &Whole) -> Spot {
    let near = whole.of(Kind::Back).flat_map(|back| &back.cells).flat_map(|cell| &cell.near);
    let high =
        near.fold(
            None,
            |high: Option<Spot>, at| {
                if high.is_none_or(|high| at[1] > high[1]) { Some(*at) } else { high }
            },
        );
    high.unwrap_or_default()
}

/// How the harp stands on its feet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Balance {
    /// By what angle it may be tilted before it falls: to the front, to the player, and to either side, the lesser.
    pub tips_rad: [f64; 3],
    /// How high the upper end of the back lies above the floor where the harp balances on the edge of its rear foot.
    pub shoulder_m: f64,
}

/// Tipping about the edges of the feet: the angle between upright and the way from the edge to the middle of the weight.
/// Below 0 it does not stand by itself.
///
/// # Source
///
/// Statics, worked out.
pub fn balance(whole: &Whole, weight: &Weight, shoulder: Spot) -> Balance {
    let (front, rear) = whole.feet_m;
    let high = weight.middle[1] - whole.floor_m;
    let aside = whole.feet_half_m - weight.middle[2].abs();
    let back = rear - weight.middle[0];
    let tips_rad = [weight.middle[0] - front, back, aside].map(|off| off.atan2(high));
    // Turned about the rear edge, to the right, until the middle stands over it.
    let (sin, cos) = tips_rad[1].sin_cos();
    let (x, y) = (shoulder[0] - rear, shoulder[1] - whole.floor_m);
    Balance { tips_rad, shoulder_m: y * cos - x * sin }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    /// A weight 300 mm up, 300 mm behind the front edge and 100 mm before the rear one.
    #[test]
    fn it_tips_where_its_weight_passes_the_edge() {
        let whole = Whole {
            parts: Vec::new(),
            knots: Vec::new(),
            left_out: Vec::new(),
            heel_m: 0.0,
            floor_m: -0.1,
            feet_m: (0.0, 0.4),
            feet_half_m: 0.2,
        };
        let weight = Weight { middle: [0.3, 0.2, -0.05], ..Weight::default() };
        let balance = balance(&whole, &weight, [0.9, 0.9, 0.0]);
        assert_close(balance.tips_rad[0].to_degrees(), 45.0, 1e-12, "to the front");
        assert_close(balance.tips_rad[1].tan(), 1.0 / 3.0, 1e-12, "to the player");
        assert_close(balance.tips_rad[2].tan(), 0.5, 1e-12, "to the side");
        // (0.5, 1.0) turned to the right by an angle whose tangent is a third.
        let by_hand = (1.0 - 0.5 / 3.0) * (0.9_f64).sqrt();
        assert_close(balance.shoulder_m, by_hand, 1e-12, "shoulder");
    }
}
