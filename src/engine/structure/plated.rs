//! Metal beside wood: a bar of wood with plates on one or both of its faces, glued or screwed on, that bend as one.

mod held;

use std::f64::consts::PI;

pub use self::held::{Held, Where};

use super::frame::Station;
use super::holes::Factors;
use super::section::Rectangle;
use super::space::Stiffness;
use crate::engine::units::{Length, Stress};

/// Plates beside a bar, with the depth of the bar in their plane.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plates {
    /// Thickness of each.
    pub thickness: Length,
    /// In the plane of the depth; no more than the bar has counts.
    pub height: Length,
    /// Whether there is one on each face.
    pub both: bool,
    /// Modulus of the metal.
    pub modulus: Stress,
    /// Its shear modulus.
    pub shear: Stress,
    /// What it may bear for good.
    pub allowable: Stress,
    /// What holds them; glue where there is nothing, which does not slip.
    pub screws: Option<Slip>,
}

/// Screws along a plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slip {
    /// From one to the next.
    pub spacing: Length,
    /// Slip modulus of each.
    pub stiffness_n_per_m: f64,
}

/// A bar with its plates at a section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plated {
    section: Rectangle,
    plates: Plates,
    /// Depth of the plates that counts.
    height_m: f64,
    /// Share of a plate's stretching that goes with the wood.
    gamma: f64,
    /// From the middle of the wood to the common axis of bending sideways, towards a plate that is alone.
    aside_m: f64,
    axial: f64,
    bending: f64,
    sideways: f64,
    /// Moduli of the wood on edge and bent sideways.
    wood: (f64, f64),
}

impl Plates {
    fn count(&self) -> f64 {
        if self.both { 2.0 } else { 1.0 }
    }

    /// How much of the stretching of a plate so long goes with the wood: `γ = 1/(1 + π² E A s/(K l²))`.
    ///
    /// # Source
    ///
    /// EN 1995-1-1, annex B (from memory).
    ///
    /// # Example
    ///
    /// Glue does not slip.
    ///
    /// ```
    /// use stringloft::engine::structure::plated::Plates;
    /// use stringloft::engine::units::{Length, Stress};
    ///
    /// let mm = Length::from_mm;
    /// let plates = Plates {
    ///     thickness: mm(2.0),
    ///     height: mm(60.0),
    ///     both: true,
    ///     modulus: Stress::from_gpa(210.0),
    ///     shear: Stress::from_gpa(81.0),
    ///     allowable: Stress::from_mpa(157.0),
    ///     screws: None,
    /// };
    /// assert_eq!(plates.gamma(mm(60.0), mm(800.0)), 1.0);
    /// ```
    pub fn gamma(&self, height: Length, length: Length) -> f64 {
        let Some(screws) = self.screws else { return 1.0 };
        let stretch = self.modulus.to_pa() * self.thickness.to_m() * height.to_m();
        let held = screws.stiffness_n_per_m * length.to_m().powi(2);
        let gamma = 1.0 / (1.0 + PI * PI * stretch * screws.spacing.to_m() / held);
        if gamma.is_finite() { gamma } else { 0.0 }
    }

    /// With a bar of wood of such a section and moduli, on edge and bent sideways, over such a length.
    ///
    /// The transformed section: `E A` and `E I` are sums. In the plane of the depth wood and plates bend alike, whatever
    /// holds them; along the bar and sideways, where the plates are its outer layers, they slip on their screws.
    ///
    /// # Source
    ///
    /// Bars of two materials, as in J. M. Gere, *Mechanics of Materials*, 6.2 and 6.3, and EN 1995-1-1, annex B (both from
    /// memory).
    pub fn on(&self, section: Rectangle, length: Length, (edge, flat): (Stress, Stress)) -> Plated {
        let (b, h) = (section.breadth().to_m(), section.depth().to_m());
        let (t, height_m) = (self.thickness.to_m(), self.height.to_m().min(h));
        let (e, area, count) = (self.modulus.to_pa(), t * height_m, self.count());
        let gamma = self.gamma(Length::from_m(height_m), length);
        let wood = (edge.to_pa(), flat.to_pa());
        let axial = wood.0 * b * h + count * gamma * e * area;
        let bending = wood.0 * section.inertia_m4() + count * e * t * height_m.powi(3) / 12.0;
        let arm = 0.5 * (b + t);
        let aside_m = if self.both { 0.0 } else { gamma * e * area * arm / axial };
        let own = wood.1 * section.on_its_side().inertia_m4() + wood.0 * b * h * aside_m * aside_m;
        let plate = e * height_m * t.powi(3) / 12.0 + gamma * e * area * (arm - aside_m).powi(2);
        Plated {
            section,
            plates: *self,
            height_m,
            gamma,
            aside_m,
            axial,
            bending,
            sideways: own + count * plate,
            wood,
        }
    }
}

impl Plated {
    /// How stiff the whole is. In shear the wood is alone; against twist each part adds its own.
    pub fn stiffness(&self, wood: Stiffness) -> Stiffness {
        let plate = Rectangle::new(self.plates.thickness, Length::from_m(self.height_m));
        let twist = plate.map_or(0.0, |plate| self.plates.shear.to_pa() * plate.torsion_m4());
        Stiffness {
            axial: self.axial,
            torsion: wood.torsion + self.plates.count() * twist,
            bending: [self.bending, self.sideways],
            shear: wood.shear,
        }
    }

    /// How much of the stresses of a plain bar of wood is left in it. All shear and twist stay with the wood.
    pub fn wood(&self) -> Factors {
        let (b, plain) = (self.section.breadth().to_m(), self.section.on_its_side());
        let (edge, flat) = self.wood;
        let bending = edge * self.section.inertia_m4() / self.bending;
        let outer = 0.5 * flat * b + edge * self.aside_m;
        Factors {
            bending,
            sideways: outer * plain.modulus_m3() / self.sideways,
            axial: edge * self.section.area_m2() / self.axial,
            shear: 1.0,
            across: bending,
            aside: Length::from_m(self.aside_m),
            ..Factors::default()
        }
    }

    /// What the metal may bear for good.
    pub const fn limit(&self) -> Stress {
        self.plates.allowable
    }

    /// The greatest stress in the metal at a cut; `curved` is how much more a bend of the bar makes of bending in its plane.
    pub fn metal(&self, cut: &Station, curved: f64) -> Stress {
        let (e, t) = (self.plates.modulus.to_pa(), self.plates.thickness.to_m());
        let arm = 0.5 * (self.section.breadth().to_m() + t) - self.aside_m;
        let in_plane = curved * cut.moment_n_m.abs() * 0.5 * self.height_m / self.bending;
        let aside = cut.sideways_n_m.abs() + cut.axial_n.abs() * self.aside_m;
        let sideways = aside * (self.gamma * arm + 0.5 * t) / self.sideways;
        let along = self.gamma * cut.axial_n.abs() / self.axial;
        Stress::from_pa(e * (in_plane + sideways + along))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::structure::frame::Point;
    use crate::testing::assert_close;

    fn mm(mm: f64) -> Length {
        Length::from_mm(mm)
    }

    fn steel(both: bool, screws: Option<Slip>) -> Plates {
        Plates {
            thickness: mm(3.0),
            height: mm(60.0),
            both,
            modulus: Stress::from_gpa(210.0),
            shear: Stress::from_gpa(81.0),
            allowable: Stress::from_mpa(157.0),
            screws,
        }
    }

    fn bar() -> Rectangle {
        Rectangle::new(mm(40.0), mm(80.0)).unwrap()
    }

    fn on(plates: Plates) -> Plated {
        let wood = Stress::from_gpa(12.0);
        plates.on(bar(), mm(900.0), (wood, wood))
    }

    fn cut(axial: f64, sideways: f64, moment: f64) -> Station {
        let zero = Point { x: mm(0.0), y: mm(0.0) };
        let mut cut = Station {
            at: zero,
            s_m: 0.0,
            section: bar(),
            axial_n: 0.0,
            shear_n: 0.0,
            aside_n: 0.0,
            moment_n_m: 0.0,
            torque_n_m: 0.0,
            sideways_n_m: 0.0,
        };
        cut.take([axial, 0.0, 0.0, 0.0, sideways, moment]);
        cut
    }

    /// Stresses of wood and metal, put together over their areas, are the force and the moment.
    #[test]
    fn wood_and_metal_bear_the_whole() {
        for both in [true, false] {
            let plated = on(steel(both, None));
            let count = if both { 2.0 } else { 1.0 };
            let wood = plated.wood();
            // In the plane: stresses go evenly from the middle, so that each part bears σ W.
            let own = wood.bending;
            let metal = plated.metal(&cut(0.0, 0.0, 1.0), 1.0).to_pa();
            let plate = count * metal * 0.003 * 0.06 * 0.06 / 6.0;
            assert_close(own + plate, 1.0, 1e-12, both);
        }
        // Along it, with both plates.
        let plated = on(steel(true, None));
        let metal = plated.metal(&cut(1.0, 0.0, 0.0), 1.0).to_pa() * 2.0 * 0.003 * 0.06;
        assert_close(plated.wood().axial + metal, 1.0, 1e-12, "along");
    }

    /// A plate alone pulls the axis of bending to itself: about it `Σ E A z` is nothing.
    #[test]
    fn the_axis_lies_where_the_stretching_balances() {
        let plated = on(steel(false, None));
        let arm = 0.5 * 0.043 - plated.aside_m;
        let (wood, metal) = (12e9 * 0.04 * 0.08 * plated.aside_m, 210e9 * 0.003 * 0.06 * arm);
        assert_close(wood, metal, 1e-12, "balance");
        assert_eq!(on(steel(true, None)).aside_m, 0.0);
    }

    /// With screws that hardly hold, the plates bend for themselves; with very many, as glued.
    #[test]
    fn screws_lie_between_nothing_and_glue() {
        let screwed = |stiffness_n_per_m: f64| {
            on(steel(true, Some(Slip { spacing: mm(50.0), stiffness_n_per_m })))
        };
        let glued = on(steel(true, None));
        assert_close(screwed(1e18).sideways, glued.sideways, 1e-6, "many");
        let loose =
            12e9 * 0.08 * 0.04_f64.powi(3) / 12.0 + 2.0 * 210e9 * 0.06 * 0.003_f64.powi(3) / 12.0;
        assert_close(screwed(1e-9).sideways, loose, 1e-9, "few");
        assert_close(screwed(1e-9).bending, glued.bending, 1e-12, "in the plane all bend alike");
        let real = screwed(5e6);
        assert!(loose < real.sideways && real.sideways < glued.sideways);
        assert!(real.wood().sideways > glued.wood().sideways);
    }

    /// Metal as soft as wood is wood.
    #[test]
    fn a_plate_of_wood_makes_a_broader_bar() {
        let wood = Stress::from_gpa(12.0);
        let plates = Plates { modulus: wood, height: mm(80.0), ..steel(true, None) };
        let broader = Rectangle::new(mm(46.0), mm(80.0)).unwrap();
        let plated = plates.on(bar(), mm(900.0), (wood, wood));
        assert_close(plated.axial, 12e9 * broader.area_m2(), 1e-12, "along");
        assert_close(plated.bending, 12e9 * broader.inertia_m4(), 1e-12, "in the plane");
        assert_close(plated.sideways, 12e9 * broader.on_its_side().inertia_m4(), 1e-12, "aside");
        let outer = plated.metal(&cut(0.0, 1.0, 0.0), 1.0).to_pa();
        assert_close(outer, 1.0 / broader.on_its_side().modulus_m3(), 1e-12, "outer face");
    }
}
