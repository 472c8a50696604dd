//! Rolling shear: how far the wood of crossed layers is loaded that rolls between its neighbours.

use super::{Laminate, inverse, product, times};
use crate::engine::structure::joint::JointWood;
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::verdict::{Aspect, Use};
use crate::engine::units::{Force, Moment, Stress};

/// A layer whose grain runs no farther than this off the bar does not roll: its sine.
const STRAIGHT: f64 = 1e-3;

/// What shear over the faces of the layers does at a place: of the shear force over the section, and of the stress of a twist.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Place {
    /// Shear that rolls the wood, and shear along its grain, for each Pa of `V/A`.
    bent: [f64; 2],
    /// The same for each Pa of the twist.
    twisted: [f64; 2],
    /// What may be allowed of both.
    limits: [Option<Stress>; 2],
}

impl Place {
    /// The shear that rolls, and the share; `None` of that where no limit is known.
    fn used(&self, mean: f64, twist: f64) -> (f64, Option<f64>) {
        let [rolls, along] = [0, 1].map(|of| mean * self.bent[of] + twist * self.twisted[of]);
        let share = |stress: f64, limit: Option<Stress>| {
            if stress <= 0.0 {
                return Some(0.0);
            }
            limit.map(Stress::to_pa).filter(|limit| *limit > 0.0).map(|limit| stress / limit)
        };
        let ratio = share(rolls, self.limits[0]).zip(share(along, self.limits[1]));
        (rolls, ratio.map(|(rolls, along)| rolls.hypot(along)))
    }
}

/// The crossed layers of a bar, as shear over their faces rolls them.
#[derive(Clone, Debug, PartialEq)]
pub struct Rolling {
    places: Vec<Place>,
}

impl Rolling {
    /// Plywood whose strength in that shear was measured over its whole thickness, by `1.5 V/A`.
    pub fn of_plywood(limit: Option<Stress>) -> Self {
        let place = Place { bent: [1.5, 0.0], twisted: [1.0, 0.0], limits: [limit, None] };
        Self { places: vec![place] }
    }

    /// The same where only a share of every strength may be allowed.
    #[must_use]
    pub fn times(mut self, ratio: f64) -> Self {
        for place in &mut self.places {
            place.limits =
                place.limits.map(|limit| limit.map(|of| Stress::from_pa(ratio * of.to_pa())));
        }
        self
    }

    /// How far the layer is loaded that is loaded most, under a shear force square to the layers and a twist; `more` is
    /// how much greater stresses are than in a plain bar, as by holes. Where a limit is not known, neither is how far.
    ///
    /// The twist counts in every layer with what it does in the middle of the edge that shows the layers, in a bar of one piece
    /// ([`Rectangle::torsion_stress_over`]). Crossed layers give more and bear less of it, so that this is the careful way.
    pub fn used(
        &self,
        section: Rectangle,
        (aside, torque): (Force, Moment),
        more: f64,
    ) -> Option<Use> {
        let mean = more * aside.to_n().abs() / section.area_m2();
        let twist = more * section.torsion_stress_over(torque).to_pa().abs();
        let uses = self.places.iter().map(|place| place.used(mean, twist));
        let (mut stress, mut most, mut known) = (0.0_f64, 0.0_f64, true);
        for (rolls, ratio) in uses {
            match ratio {
                Some(ratio) if known && ratio >= most => (stress, most) = (rolls, ratio),
                Some(_) => {}
                None => {
                    stress = if known { rolls } else { stress.max(rolls) };
                    known = false;
                }
            }
        }
        (!self.places.is_empty()).then(|| Use {
            aspect: Aspect::Rolling,
            stress: Stress::from_pa(stress),
            limit: (known && most > 0.0).then(|| Stress::from_pa(stress / most)),
            ratio: known.then_some(most),
        })
    }
}

impl Laminate {
    /// Its crossed layers, as shear over their faces rolls them; `None` where every layer runs along.
    ///
    /// Bent over its faces, `σ` in every layer is that of the laminate; what is missing to its balance from the one cut to the
    /// next goes over the faces of the layers, `τ = −∫ ∂σ/∂x dz`, which is nothing at the outer faces. In the axes of a layer
    /// it parts into shear along its grain and shear that rolls it. Where layers end at the edges of the bar more comes on top,
    /// which is not looked at.
    ///
    /// # Source
    ///
    /// Balance of a layer, as in R. M. Jones, *Mechanics of Composite Materials*, chapter 4; the limit is that of EN 1995-1-1,
    /// 6.1.7, twice the tension across the grain (both from memory).
    pub fn rolling(&self) -> Option<Rolling> {
        let h = self.thickness().to_m();
        let abd = self.abd();
        let soft = inverse(&abd.a);
        let coupled = product(&abd.b, &product(&soft, &abd.b));
        let mut bent = abd.d;
        for (row, less) in bent.iter_mut().zip(coupled) {
            row.iter_mut().zip(less).for_each(|(number, less)| *number -= less);
        }
        // Under a moment of 1 N·m for each metre of width.
        let curved = times(&inverse(&bent), [1.0, 0.0, 0.0]);
        let stretched = times(&soft, times(&abd.b, curved)).map(|number| -number);
        let mut places = Vec::new();
        // Shear along the bar and across it, times the thickness, for each Pa of V/A.
        let mut before = [0.0, 0.0];
        for (layer, low, high) in self.placed() {
            let (sine, cosine) = layer.angle_rad.sin_cos();
            let stiff = layer.stiffness();
            let (flat, steep) = (times(&stiff, stretched), times(&stiff, curved));
            let until = |z: f64| {
                let sum = |of: usize| flat[of] * (z - low) + steep[of] * 0.5 * (z * z - low * low);
                [before[0] + h * sum(0), before[1] + h * sum(2)]
            };
            let turns = -flat[0] / steep[0];
            for z in [low, high, turns] {
                if sine.abs() <= STRAIGHT || !(low..=high).contains(&z) {
                    continue;
                }
                let [along, across] = until(z);
                places.push(Place {
                    bent: [
                        (cosine * across - sine * along).abs(),
                        (cosine * along + sine * across).abs(),
                    ],
                    twisted: [sine.abs(), cosine.abs()],
                    limits: [JointWood::rolling(&layer.allowable), layer.allowable.shear],
                });
            }
            before = until(high);
        }
        (!places.is_empty()).then_some(Rolling { places })
    }

    /// What a layer at the outer faces may bear in shear along the bar, the weaker of both.
    pub fn face_shear(&self) -> Option<Stress> {
        let of = |layer: &super::Layer| {
            let (sine, cosine) = layer.angle_rad.sin_cos();
            let shear = layer.allowable.shear?.to_pa();
            let rolls = if sine.abs() > STRAIGHT {
                sine / JointWood::rolling(&layer.allowable)?.to_pa()
            } else {
                0.0
            };
            Some(1.0 / rolls.hypot(cosine / shear))
        };
        let (first, last) = (of(self.layers.first()?)?, of(self.layers.last()?)?);
        Some(Stress::from_pa(first.min(last)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::structure::laminate::Layer;
    use crate::engine::structure::wood::Allowable;
    use crate::engine::units::Length;
    use crate::testing::assert_close;

    fn layer(mm: f64, deg: f64) -> Layer {
        Layer {
            thickness: Length::from_mm(mm),
            angle_rad: deg.to_radians(),
            along: Stress::from_gpa(12.0),
            across: Stress::from_gpa(0.8),
            shear: Stress::from_gpa(0.9),
            poisson: 0.37,
            allowable: Allowable {
                shear: Some(Stress::from_mpa(2.0)),
                tension_across: Some(Stress::from_mpa(0.5)),
                ..Allowable::default()
            },
        }
    }

    fn section() -> Rectangle {
        Rectangle::new(Length::from_mm(60.0), Length::from_mm(100.0)).unwrap()
    }

    fn used(layers: &[Layer], aside: f64, torque: f64) -> Option<Use> {
        let rolling = Laminate::new(layers.to_vec()).unwrap().rolling()?;
        rolling.used(section(), (Force::from_n(aside), Moment::from_n_m(torque)), 1.0)
    }

    /// Layers all at one angle are of one piece: `1.5 V/A` in the middle, of which the sine rolls. Turned by 90°, that is all.
    #[test]
    fn one_crossed_piece_rolls_by_the_shear_of_a_beam() {
        let crossed = used(&[layer(10.0, 90.0); 6], 4_000.0, 0.0).unwrap();
        assert_close(crossed.stress.to_mpa(), 1.0, 1e-9, "1.5 V/A");
        assert_close(crossed.limit.unwrap().to_mpa(), 1.0, 1e-9, "twice the tension across");
        assert_close(crossed.ratio.unwrap(), 1.0, 1e-9, "use");
        assert_eq!(used(&[layer(10.0, 0.0); 6], 4_000.0, 10.0), None);
    }

    /// Three layers, the crossed one in the middle, by hand: `τ = V ∫ E z/(Σ E I)` at its face, in cells of E.
    #[test]
    fn a_crossed_heart_rolls_by_what_its_faces_bring() {
        let layers = [layer(20.0, 0.0), layer(20.0, 90.0), layer(20.0, 0.0)];
        let crossed = used(&layers, 4_000.0, 0.0).unwrap();
        // The narrowing of the layers is left out by hand: a thousandth.
        let (e, ec) = (12e9, 0.8e9);
        let rigid =
            0.1 * (e * (0.06_f64.powi(3) - 0.02_f64.powi(3)) + ec * 0.02_f64.powi(3)) / 12.0;
        let flow = e * 0.02 * 0.02 + ec * 0.01 * 0.005;
        assert_close(crossed.stress.to_pa(), 4_000.0 * flow / rigid, 5e-3, "in its middle");
        let twisted = used(&layers, 0.0, 50.0).unwrap();
        let edge = section().torsion_stress_over(Moment::from_n_m(50.0));
        assert_close(twisted.stress.to_pa(), edge.to_pa(), 1e-12, "twist");
        let both = used(&layers, 4_000.0, 50.0).unwrap();
        let sum = crossed.stress.to_pa() + twisted.stress.to_pa();
        assert_close(both.stress.to_pa(), sum, 1e-12, "both");
    }

    #[test]
    fn without_a_limit_nothing_is_said_of_how_far() {
        let mut layers = [layer(20.0, 0.0), layer(20.0, 90.0), layer(20.0, 0.0)];
        layers[1].allowable.tension_across = None;
        let unknown = used(&layers, 4_000.0, 50.0).unwrap();
        assert!(unknown.ratio.is_none() && unknown.limit.is_none());
        assert!(unknown.stress.to_mpa() > 0.5);
        let plywood = Rolling::of_plywood(Some(Stress::from_mpa(0.8))).times(0.5);
        let half = plywood.used(section(), (Force::from_n(-4_000.0), Moment::from_n_m(0.0)), 1.0);
        assert_close(half.unwrap().ratio.unwrap(), 1.0 / 0.4, 1e-12, "plywood");
    }

    /// At 90° glue on the face rolls its wood; at 0° it shears it along the grain.
    #[test]
    fn a_face_bears_what_its_grain_does() {
        let of = |deg: f64| {
            let all = Laminate::new(vec![layer(20.0, 0.0), layer(20.0, deg)]).unwrap();
            all.face_shear().unwrap().to_mpa()
        };
        assert_close(of(0.0), 2.0, 1e-12, "along");
        assert_close(of(90.0), 1.0, 1e-12, "crossed");
    }
}
