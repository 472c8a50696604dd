//! What holds metal beside wood: the shear in the glue of a plate, and the push across its screws.

use super::{Plated, Plates};
use crate::engine::structure::frame::Station;
use crate::engine::structure::verdict::{Aspect, Use, simple};
use crate::engine::units::{Force, Length, Stress};

/// How a plate is held, and what of that may be counted on for good.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Held {
    /// By glue over its whole face, which is as strong as the wood beside it in shear along the bar, where that is known.
    Glued(Option<Stress>),
    /// By a row of screws in the middle of its height.
    Screwed {
        /// What each bears across it, where that is known.
        each: Option<Force>,
        /// How thick they are.
        diameter: Length,
    },
}

impl Held {
    /// The same where only a share of every strength of wood may be allowed.
    #[must_use]
    pub fn times(self, ratio: f64) -> Self {
        match self {
            Self::Glued(limit) => Self::Glued(limit.map(|of| Stress::from_pa(ratio * of.to_pa()))),
            Self::Screwed { each, diameter } => {
                let each = each.map(|of| Force::from_n(ratio * of.to_n()));
                Self::Screwed { each, diameter }
            }
        }
    }
}

/// Where on a plate its hold is looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Where {
    /// How long the plate is.
    pub length: Length,
    /// Whether it ends there.
    pub ends: bool,
    /// By how much the force along the bar changes there, and the shear force in the plane of its depth, as at a string.
    pub step: (Force, Force),
    /// How much more a bend of the bar makes of bending in its plane.
    pub curved: f64,
    /// Shear modulus of the wood.
    pub shear: Stress,
}

/// How much more than `α t σ` the glue bears over the first 5 mm of a plate: up to 1.9 times as much by plane finite elements,
/// as what lies near the edge of the plate is stiffer than the whole. Source: worked out, `held_values.py` among the checks.
const AT_THE_END: f64 = 2.0;

/// The most that a screw at the end of a row bears of a moment over their spacing, and of a shear force: that of a long beam
/// on supports that do not give, `3 − √3`. Source: the theorem of three moments; worked out.
const ON_SUPPORTS: f64 = 1.268;

impl Plated {
    /// How far the glue or the screws of a plate are loaded by the forces at a cut.
    ///
    /// Glue: `τ = t ∂σ/∂x` along the plate, with `σ` of the metal's outermost fibre; where the plate ends, and half of it where
    /// a force comes in, also `α t σ` with `α² = (6 G/b)(1/(E t) + 6/(E_w b))`: every fibre of the plate is anchored by shear in
    /// the wood, which alone gives, as that of a lap joint. At an end it counts twice, for what gathers over the first 5 mm.
    ///
    /// Screws: `s (∂N/∂x + α N)` along the plate, with `K/s` over the area of the plate in place of `6 G/b` over its height; and
    /// across it, where the plate ends and must take its share of the bending in its plane, `2 λ (V + λ M) s`, as of a long beam
    /// on an elastic bed, `λ⁴ = K/(4 s E I)`; no more than on supports that do not give.
    ///
    /// Twist of the bar, and what gathers at the very edge of a plate, are left out.
    ///
    /// # Source
    ///
    /// O. Volkersen, 1938, the lap joint; M. Hetényi, *Beams on Elastic Foundation* (both from memory); worked out for this
    /// project.
    pub fn held(&self, held: &Held, cut: &Station, at: &Where) -> Use {
        let plates = Plates { screws: None, ..self.plates };
        let (edge, flat) = self.wood;
        let rigid =
            plates.on(self.section, at.length, (Stress::from_pa(edge), Stress::from_pa(flat)));
        match held {
            Held::Glued(limit) => simple(Aspect::MetalGlue, rigid.glue(cut, at), *limit),
            Held::Screwed { each, diameter } => {
                let area = 0.25 * std::f64::consts::PI * diameter.to_m().powi(2);
                let over = |n: f64| Stress::from_pa(n / area);
                let force = self.screw(&rigid, cut, at);
                simple(Aspect::MetalScrews, over(force), each.map(|each| over(each.to_n())))
            }
        }
    }

    /// From the common axis of bending sideways to the middle of the plate.
    fn arm(&self) -> f64 {
        let (b, t) = (self.section.breadth().to_m(), self.plates.thickness.to_m());
        0.5 * (b + t) - self.aside_m
    }

    fn glue(&self, cut: &Station, at: &Where) -> Stress {
        let (e, t) = (self.plates.modulus.to_pa(), self.plates.thickness.to_m());
        let (b, wood) = (self.section.breadth().to_m(), self.wood.0);
        let alpha = (6.0 * at.shear.to_pa() / b * (1.0 / (e * t) + 6.0 / (wood * b))).sqrt();
        let in_plane = at.curved * cut.shear_n.abs() * 0.5 * self.height_m / self.bending;
        let aside = cut.aside_n.abs() * (self.arm() + 0.5 * t) / self.sideways;
        let step = at.step.0.to_n().abs() / self.axial;
        let mut flow = e * t * (in_plane + aside + 0.5 * alpha * step);
        if at.ends {
            flow += AT_THE_END * alpha * t * self.metal(cut, at.curved).to_pa();
        }
        Stress::from_pa(flow)
    }

    /// The push across the screw that bears most there, in N.
    fn screw(&self, rigid: &Self, cut: &Station, at: &Where) -> f64 {
        let Some(screws) = self.plates.screws else { return 0.0 };
        let (e, t) = (self.plates.modulus.to_pa(), self.plates.thickness.to_m());
        let (b, h, s) =
            (self.section.breadth().to_m(), self.section.depth().to_m(), screws.spacing.to_m());
        let (area, bed) = (t * self.height_m, screws.stiffness_n_per_m / s);
        let (arm, count) = (rigid.arm(), self.plates.count());
        // Along the plate.
        // Beside two plates the wood gives as a bar that is pulled, or as one that is bent; beside one plate both ways at once.
        let gives = if self.plates.both { [2.0, 6.0] } else { [4.0, 4.0] };
        let alphas = gives.map(|of| (bed * (1.0 / (e * area) + of / (self.wood.0 * b * h))).sqrt());
        let anchored = |alpha: f64| alpha * (0.5 * alpha * at.length.to_m()).tanh();
        let aside = cut.sideways_n_m.abs() + cut.axial_n.abs() * rigid.aside_m;
        let step = 0.5 * alphas[0] * at.step.0.to_n().abs() / rigid.axial;
        let mut along = e * area * (cut.aside_n.abs() * arm / rigid.sideways + step);
        // Across it: the plate's share of the bending in the plane, and its bed beside the wood.
        let own = e * t * self.height_m.powi(3) / 12.0;
        let share = own / rigid.bending;
        let wood = rigid.bending - count * own;
        let lambda = (0.25 * bed * (1.0 / own + count / wood)).powf(0.25);
        let mut across = share * at.step.1.to_n().abs() * (0.5 * lambda * s).min(1.0);
        if at.ends {
            let pulled = anchored(alphas[0]) * cut.axial_n.abs() / rigid.axial;
            let bent = anchored(alphas[1]) * aside * arm / rigid.sideways;
            along += e * area * (pulled + bent);
            let by_moment = (2.0 * lambda * lambda * s).min(ON_SUPPORTS / s);
            let by_shear = (2.0 * lambda * s).min(ON_SUPPORTS);
            let moment = cut.moment_n_m.abs() * by_moment;
            across += at.curved * share * (moment + cut.shear_n.abs() * by_shear);
        }
        (s * along).hypot(across)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::structure::frame::Point;
    use crate::engine::structure::plated::Slip;
    use crate::engine::structure::section::Rectangle;
    use crate::testing::assert_close;

    fn mm(mm: f64) -> Length {
        Length::from_mm(mm)
    }

    fn plated(screws: Option<Slip>) -> Plated {
        let plates = Plates {
            thickness: mm(2.0),
            height: mm(60.0),
            both: true,
            modulus: Stress::from_gpa(210.0),
            shear: Stress::from_gpa(81.0),
            allowable: Stress::from_mpa(157.0),
            screws,
        };
        let wood = Stress::from_gpa(12.0);
        plates.on(Rectangle::new(mm(40.0), mm(80.0)).unwrap(), mm(900.0), (wood, wood))
    }

    fn cut(forces: [f64; 6]) -> Station {
        let mut cut = Station {
            at: Point::from_mm(0.0, 0.0),
            s_m: 0.0,
            section: Rectangle::new(mm(40.0), mm(80.0)).unwrap(),
            axial_n: 0.0,
            shear_n: 0.0,
            aside_n: 0.0,
            moment_n_m: 0.0,
            torque_n_m: 0.0,
            sideways_n_m: 0.0,
        };
        cut.take(forces);
        cut
    }

    const MIDDLE: Where = Where {
        length: Length::from_m(0.9),
        ends: false,
        step: (Force::from_n(0.0), Force::from_n(0.0)),
        curved: 1.0,
        shear: Stress::from_gpa(0.9),
    };
    const END: Where = Where { ends: true, ..MIDDLE };

    /// Along a plate the glue brings what its stress gains: `V S/(I b)` of the transformed section, and nothing more.
    #[test]
    fn glue_in_the_middle_brings_what_the_metal_gains() {
        let plated = plated(None);
        let glue = plated.held(&Held::Glued(None), &cut([0.0, 0.0, 500.0, 0.0, 0.0, 0.0]), &MIDDLE);
        // `E A z/(E I)` of the outermost fibre, over the height.
        let flow = 210e9 * 0.002 * 0.022 * 500.0 / plated.sideways;
        assert_close(glue.stress.to_pa(), flow, 1e-12, "shear");
        assert_eq!((glue.aspect, glue.ratio), (Aspect::MetalGlue, None));
        let end = plated.held(&Held::Glued(None), &cut([0.0, 0.0, 500.0, 0.0, 40.0, 0.0]), &END);
        assert!(end.stress > glue.stress);
        let known = Held::Glued(Some(Stress::from_mpa(2.0))).times(0.5);
        let used = plated.held(&known, &cut([0.0, 0.0, 500.0, 0.0, 0.0, 0.0]), &MIDDLE);
        assert_close(used.ratio.unwrap(), flow / 1e6, 1e-12, "use");
    }

    /// With a bed of endless stiffness the last screw of a row bears what a beam on supports gives it.
    #[test]
    fn screws_that_do_not_give_are_supports() {
        let screws = Slip { spacing: mm(50.0), stiffness_n_per_m: 1e15 };
        let plated = plated(Some(screws));
        let held = Held::Screwed { each: Some(Force::from_n(400.0)), diameter: mm(4.0) };
        let end = plated.held(&held, &cut([0.0, 0.0, 0.0, 0.0, 0.0, 100.0]), &END);
        let own = 210e9 * 0.002 * 0.06_f64.powi(3) / 12.0;
        let force = 1.268 * 100.0 * own / plated.bending / 0.05;
        assert_close(end.ratio.unwrap(), force / 400.0, 1e-9, "moment");
        let inside = plated.held(&held, &cut([0.0, 0.0, 0.0, 0.0, 0.0, 100.0]), &MIDDLE);
        assert_close(inside.stress.to_pa(), 0.0, 1.0, "inside, without a change");
        let unknown = Held::Screwed { each: None, diameter: mm(4.0) };
        assert_eq!(plated.held(&unknown, &cut([1e3; 6]), &END).ratio, None);
    }

    /// Screws nearer to each other each bear less.
    #[test]
    fn closer_screws_bear_less_each() {
        let forces = [800.0, 200.0, 300.0, 0.0, 40.0, 60.0];
        let force = |spacing: f64| {
            let screws = Slip { spacing: mm(spacing), stiffness_n_per_m: 4e6 };
            let held = Held::Screwed { each: Some(Force::from_n(1.0)), diameter: mm(4.0) };
            plated(Some(screws)).held(&held, &cut(forces), &END).ratio.unwrap()
        };
        assert!(force(20.0) < force(40.0) && force(40.0) < force(80.0));
    }
}
