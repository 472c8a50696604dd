//! Laminates: bars glued up of layers of any woods, along, crossed or at an angle, by classical laminate theory.
//!
//! The layers lie side by side across the breadth of a bar, as planks and veneers do in a neck, and stretch as one.

mod rolling;

use thiserror::Error;

pub use self::rolling::Rolling;

use super::wood::{Allowable, Margin, Margins, buckling_modulus};
use crate::engine::units::{Length, Stress};
use crate::words::structure as say;

/// The most layers that a laminate may have.
pub const MOST_LAYERS: usize = 40;
/// A layer whose grain runs farther than this from a load is not counted on to bear it, as the plies that lie across are
/// not in plywood.
const STEEPEST_RAD: f64 = std::f64::consts::FRAC_PI_4;

/// Why layers make no laminate.
#[derive(Clone, Copy, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum LaminateError {
    /// Too few or too many layers.
    #[error("{}", say::laminate_layers(.got, &MOST_LAYERS))]
    Layers {
        /// How many there are.
        got: usize,
    },
    /// A layer without thickness or stiffness.
    #[error("{}", say::laminate_layer(.number))]
    Layer {
        /// Which, from 1.
        number: usize,
    },
}

/// One layer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layer {
    /// Its thickness.
    pub thickness: Length,
    /// From the length of the bar to its grain, in the plane of the layer.
    pub angle_rad: f64,
    /// Modulus along its grain.
    pub along: Stress,
    /// Modulus across its grain.
    pub across: Stress,
    /// Shear modulus in its plane.
    pub shear: Stress,
    /// How much narrower it becomes for each part that it is stretched along its grain.
    pub poisson: f64,
    /// What it may bear for good.
    pub allowable: Allowable,
}

/// Rows and columns of stresses and strains along, across, and in shear.
pub type Three = [[f64; 3]; 3];

/// Stiffness of a laminate: forces and moments for each metre of its width by strains and curvatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Abd {
    /// Forces by strains, in N/m.
    pub a: Three,
    /// Forces by curvatures, in N.
    pub b: Three,
    /// Moments by curvatures, in N·m.
    pub d: Three,
}

impl Layer {
    /// Stresses by strains in its own axes: `Q`.
    fn own(&self) -> Three {
        let (e1, e2, g) = (self.along.to_pa(), self.across.to_pa(), self.shear.to_pa());
        let share = 1.0 - self.poisson * self.poisson * e2 / e1;
        let q12 = self.poisson * e2 / share;
        [[e1 / share, q12, 0.0], [q12, e2 / share, 0.0], [0.0, 0.0, g]]
    }

    /// Strains of the bar as strains of its own axes.
    fn turned(&self, strain: [f64; 3]) -> [f64; 3] {
        let (s, c) = self.angle_rad.sin_cos();
        let [x, y, xy] = strain;
        [
            c * c * x + s * s * y + s * c * xy,
            s * s * x + c * c * y - s * c * xy,
            2.0 * s * c * (y - x) + (c * c - s * s) * xy,
        ]
    }

    /// Stresses by strains in the axes of the bar: `Q̄`, the work of which is that in its own axes.
    fn stiffness(&self) -> Three {
        let own = self.own();
        let unit = |at: usize| self.turned([0, 1, 2].map(|i| f64::from(u8::from(i == at))));
        let units = [unit(0), unit(1), unit(2)];
        let mut all = [[0.0; 3]; 3];
        for (row, one) in units.iter().enumerate() {
            for (column, other) in units.iter().enumerate() {
                all[row][column] = dot(*one, times(&own, *other));
            }
        }
        all
    }

    /// How far it is loaded by strains of the bar, by the square root of the sum of squares of stress over limit.
    /// `None` where a limit is not known that is asked for.
    fn used(
        &self,
        strain: [f64; 3],
        (along, across): (Option<Stress>, Option<Stress>),
    ) -> Option<f64> {
        let stress = times(&self.own(), self.turned(strain));
        let greatest = stress.iter().map(|of| of.abs()).fold(0.0, f64::max);
        let mut sum = 0.0;
        for (of, limit) in stress.into_iter().zip([along, across, self.allowable.shear]) {
            // What is nothing asks for no limit.
            if of.abs() > 1e-9 * greatest {
                let limit = limit.map(Stress::to_pa).filter(|limit| *limit > 0.0)?;
                sum += (of / limit).powi(2);
            }
        }
        Some(sum.sqrt())
    }

    /// Whether its grain runs near enough to a direction to bear what pulls that way.
    fn runs(&self, towards: Towards) -> bool {
        let off = self.angle_rad.sin().abs().asin();
        match towards {
            Towards::Along => off <= STEEPEST_RAD + 1e-9,
            Towards::Across => off >= STEEPEST_RAD - 1e-9,
        }
    }

    fn is_usable(&self) -> bool {
        let all =
            [self.thickness.to_m(), self.along.to_pa(), self.across.to_pa(), self.shear.to_pa()];
        all.iter().all(|number| *number > 0.0 && number.is_finite())
            && self.angle_rad.is_finite()
            && self.poisson * self.poisson * self.across.to_pa() < self.along.to_pa()
    }
}

fn dot(one: [f64; 3], other: [f64; 3]) -> f64 {
    one[0] * other[0] + one[1] * other[1] + one[2] * other[2]
}

fn times(matrix: &Three, vector: [f64; 3]) -> [f64; 3] {
    matrix.map(|row| dot(row, vector))
}

/// The inverse by cofactors.
fn inverse(m: &Three) -> Three {
    let minor = |r: usize, c: usize| {
        let (r1, r2, c1, c2) = ((r + 1) % 3, (r + 2) % 3, (c + 1) % 3, (c + 2) % 3);
        m[r1][c1] * m[r2][c2] - m[r1][c2] * m[r2][c1]
    };
    let whole = m[0][0] * minor(0, 0) + m[0][1] * minor(0, 1) + m[0][2] * minor(0, 2);
    let mut all = [[0.0; 3]; 3];
    for (r, row) in all.iter_mut().enumerate() {
        for (c, number) in row.iter_mut().enumerate() {
            *number = minor(c, r) / whole;
        }
    }
    all
}

fn product(one: &Three, other: &Three) -> Three {
    let mut all = [[0.0; 3]; 3];
    for (r, row) in all.iter_mut().enumerate() {
        for (c, number) in row.iter_mut().enumerate() {
            *number = (0..3).map(|i| one[r][i] * other[i][c]).sum();
        }
    }
    all
}

/// Which way a load runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Towards {
    Along,
    Across,
}

/// Moduli as if the laminate were of one piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LaminateModuli {
    /// Along the bar, in bending on edge and in tension.
    pub along: Stress,
    /// Across it, in its plane.
    pub across: Stress,
    /// Shear in its plane.
    pub shear: Stress,
    /// Along the bar, bent sideways, over the faces of the layers.
    pub sideways: Stress,
}

/// Layers from one face to the other.
#[derive(Clone, Debug, PartialEq)]
pub struct Laminate {
    layers: Vec<Layer>,
}

impl Laminate {
    /// Of any layers, in their order.
    ///
    /// # Errors
    ///
    /// When there are none, too many, or one that has no thickness or no modulus.
    pub fn new(layers: Vec<Layer>) -> Result<Self, LaminateError> {
        if layers.is_empty() || layers.len() > MOST_LAYERS {
            return Err(LaminateError::Layers { got: layers.len() });
        }
        if let Some(at) = layers.iter().position(|layer| !layer.is_usable()) {
            return Err(LaminateError::Layer { number: at + 1 });
        }
        Ok(Self { layers })
    }

    /// Its thickness.
    pub fn thickness(&self) -> Length {
        Length::from_m(self.layers.iter().map(|layer| layer.thickness.to_m()).sum())
    }

    /// The stiffness about its middle: `A = Σ Q̄ t`, `B = Σ Q̄ (z₂² − z₁²)/2`, `D = Σ Q̄ (z₂³ − z₁³)/3`.
    ///
    /// # Source
    ///
    /// R. M. Jones, *Mechanics of Composite Materials*, chapter 4 (from memory).
    pub fn abd(&self) -> Abd {
        self.abd_of(|_| true)
    }

    fn abd_of(&self, counts: impl Fn(&Layer) -> bool) -> Abd {
        let mut all = Abd { a: [[0.0; 3]; 3], b: [[0.0; 3]; 3], d: [[0.0; 3]; 3] };
        for (layer, low, high) in self.placed().filter(|(layer, _, _)| counts(layer)) {
            let stiff = layer.stiffness();
            for (r, row) in stiff.iter().enumerate() {
                for (c, q) in row.iter().enumerate() {
                    all.a[r][c] += q * (high - low);
                    all.b[r][c] += q * (high * high - low * low) / 2.0;
                    all.d[r][c] += q * (high.powi(3) - low.powi(3)) / 3.0;
                }
            }
        }
        all
    }

    /// Each layer with where it begins and ends, from the middle.
    fn placed(&self) -> impl Iterator<Item = (&Layer, f64, f64)> {
        let mut from = -0.5 * self.thickness().to_m();
        self.layers.iter().map(move |layer| {
            let low = from;
            from += layer.thickness.to_m();
            (layer, low, from)
        })
    }

    /// Moduli as if it were of one piece, each with the others free to follow.
    ///
    /// # Example
    ///
    /// Layers that all run along are solid wood.
    ///
    /// ```
    /// use stringloft::engine::structure::laminate::{Laminate, Layer};
    /// use stringloft::engine::units::{Length, Stress};
    ///
    /// let layer = Layer {
    ///     thickness: Length::from_mm(10.0),
    ///     angle_rad: 0.0,
    ///     along: Stress::from_gpa(12.0),
    ///     across: Stress::from_gpa(0.8),
    ///     shear: Stress::from_gpa(0.9),
    ///     poisson: 0.37,
    ///     allowable: Default::default(),
    /// };
    /// let moduli = Laminate::new(vec![layer; 4])?.moduli();
    /// assert!((moduli.along.to_gpa() - 12.0).abs() < 1e-9 && (moduli.sideways.to_gpa() - 12.0).abs() < 1e-9);
    /// # Ok::<(), stringloft::engine::structure::laminate::LaminateError>(())
    /// ```
    pub fn moduli(&self) -> LaminateModuli {
        let (h, abd) = (self.thickness().to_m(), self.abd());
        let soft = inverse(&abd.a);
        // Bent with the forces in its plane nothing: D − B A⁻¹ B.
        let coupled = product(&abd.b, &product(&soft, &abd.b));
        let mut bent = abd.d;
        for (row, less) in bent.iter_mut().zip(coupled) {
            row.iter_mut().zip(less).for_each(|(number, less)| *number -= less);
        }
        let of = |soft: f64| Stress::from_pa(1.0 / (h * soft));
        LaminateModuli {
            along: of(soft[0][0]),
            across: of(soft[1][1]),
            shear: of(soft[2][2]),
            sideways: Stress::from_pa(12.0 / (h.powi(3) * inverse(&bent)[0][0])),
        }
    }

    /// The stress, spread over the whole thickness, at which the first layer that is counted on reaches its limit.
    fn bears(
        &self,
        towards: Towards,
        limits: impl Fn(&Allowable) -> (Option<Stress>, Option<Stress>),
    ) -> Option<Stress> {
        let h = self.thickness().to_m();
        let any = self.layers.iter().any(|layer| layer.runs(towards));
        let counts = |layer: &Layer| !any || layer.runs(towards);
        let soft = inverse(&self.abd_of(counts).a);
        let force = match towards {
            Towards::Along => [h, 0.0, 0.0],
            Towards::Across => [0.0, h, 0.0],
        };
        let strain = times(&soft, force);
        let used = self.layers.iter().filter(|layer| counts(layer));
        let used = used.map(|layer| layer.used(strain, limits(&layer.allowable)));
        let most = used.collect::<Option<Vec<f64>>>()?.into_iter().fold(0.0, f64::max);
        (most > 0.0).then(|| Stress::from_pa(1.0 / most))
    }

    /// The same bent sideways, over `h²/6`.
    fn bears_sideways(&self) -> Option<Stress> {
        let h = self.thickness().to_m();
        let any = self.layers.iter().any(|layer| layer.runs(Towards::Along));
        let counts = |layer: &Layer| !any || layer.runs(Towards::Along);
        let abd = self.abd_of(counts);
        let soft = inverse(&abd.a);
        let coupled = product(&abd.b, &product(&soft, &abd.b));
        let mut bent = abd.d;
        for (row, less) in bent.iter_mut().zip(coupled) {
            row.iter_mut().zip(less).for_each(|(number, less)| *number -= less);
        }
        let curved = times(&inverse(&bent), [h * h / 6.0, 0.0, 0.0]);
        let stretched = times(&soft, times(&abd.b, curved)).map(|number| -number);
        let mut most = 0.0_f64;
        for (layer, low, high) in self.placed().filter(|(layer, _, _)| counts(layer)) {
            for z in [low, high] {
                let strain = [0, 1, 2].map(|i| stretched[i] + z * curved[i]);
                let limits = (layer.allowable.bending, layer.allowable.tension_across);
                most = most.max(layer.used(strain, limits)?);
            }
        }
        (most > 0.0).then(|| Stress::from_pa(1.0 / most))
    }

    /// In shear in its plane every layer goes along.
    fn bears_shear(&self) -> Option<Stress> {
        let h = self.thickness().to_m();
        let strain = times(&inverse(&self.abd().a), [0.0, 0.0, h]);
        let mut most = 0.0_f64;
        for layer in &self.layers {
            // Along the grain it shears as wood shears; a layer at an angle is also pulled and pushed along it.
            let own = layer.own();
            let stress = times(&own, layer.turned(strain));
            let shear = stress[2].abs() / layer.allowable.shear?.to_pa();
            let along = stress[0].abs() / layer.allowable.bending?.to_pa();
            most = most.max(shear.hypot(along));
        }
        (most > 0.0).then(|| Stress::from_pa(1.0 / most))
    }

    /// Stresses that may be allowed for good, as if it were of one piece, and how much more a stress of bending sideways
    /// counts than one of bending on edge.
    ///
    /// The layers that run within 45° of a load bear it alone, and the first of them that reaches its limit ends it, by
    /// the root of the sum of squares of its stresses along, across and in shear over their limits. So crossed layers carry
    /// what pulls across the bar, and without any the wood does that is pulled across its grain. Shear that rolls
    /// crossed layers is looked at by itself, [`rolling`](Self::rolling). Not known where a limit of a layer is not that is asked for.
    ///
    /// # Source
    ///
    /// Classical laminate theory; the sum of squares after C. B. Norris, 1950 (from memory), without the product of both
    /// stresses; the rest is a choice of this program, as for plywood.
    pub fn allowable(&self) -> (Allowable, f64) {
        let moduli = self.moduli();
        let bending = self.bears(Towards::Along, |of| (of.bending, of.tension_across));
        let pressed = |of: &Allowable| (of.compression_along, of.compression_across);
        let (along, across) =
            (self.bears(Towards::Along, pressed), self.bears(Towards::Across, pressed));
        let pulled = |of: &Allowable| (of.bending, of.tension_across);
        let allowable = Allowable {
            bending,
            compression_along: along,
            compression_across: across,
            shear: self.bears_shear(),
            tension_across: self.bears(Towards::Across, pulled),
            modulus: Some(moduli.along),
            least_modulus: Some(buckling_modulus(moduli.along)),
            margins: self.margins(),
        };
        let sideways = bending.zip(self.bears_sideways());
        let ratio = sideways.map_or(1.0, |(edge, flat)| edge.to_pa() / flat.to_pa());
        (allowable, ratio)
    }

    /// The least of the margins of its layers.
    fn margins(&self) -> Margins {
        let least = |of: fn(&Margins) -> Option<Margin>| {
            let mut all = self.layers.iter().map(|layer| of(&layer.allowable.margins));
            let first = all.next()??;
            all.try_fold(first, |least, next| Some(least.or(next?)))
        };
        Margins {
            bending: least(|of| of.bending),
            compression_along: least(|of| of.compression_along),
            compression_across: least(|of| of.compression_across),
            shear: least(|of| of.shear),
            tension_across: least(|of| of.tension_across),
            buckling: least(|of| of.buckling),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::structure::plywood::{Panel, Way};
    use crate::testing::assert_close;

    fn mpa(mpa: f64) -> Option<Stress> {
        Some(Stress::from_mpa(mpa))
    }

    fn layer(mm: f64, deg: f64) -> Layer {
        let allowable = Allowable {
            bending: mpa(30.0),
            compression_along: mpa(16.0),
            compression_across: mpa(6.0),
            shear: mpa(5.0),
            tension_across: mpa(0.8),
            ..Allowable::default()
        };
        Layer {
            thickness: Length::from_mm(mm),
            angle_rad: deg.to_radians(),
            along: Stress::from_gpa(12.0),
            across: Stress::from_gpa(0.8),
            shear: Stress::from_gpa(0.9),
            poisson: 0.37,
            allowable,
        }
    }

    fn of(angles: &[f64]) -> Laminate {
        Laminate::new(angles.iter().map(|deg| layer(10.0, *deg)).collect()).unwrap()
    }

    #[test]
    fn layers_that_run_along_are_solid_wood_whatever_their_number() {
        for count in [1, 2, 5] {
            let (allowable, sideways) = of(&vec![0.0; count]).allowable();
            let limits = [
                (allowable.bending, 30.0),
                (allowable.compression_along, 16.0),
                (allowable.compression_across, 6.0),
                (allowable.shear, 5.0),
                (allowable.tension_across, 0.8),
            ];
            for (limit, mpa) in limits {
                assert_close(limit.unwrap().to_mpa(), mpa, 1e-9, count);
            }
            assert_close(sideways, 1.0, 1e-9, count);
        }
        let shear = of(&[0.0; 3]).moduli();
        assert_close(shear.shear.to_gpa(), 0.9, 1e-12, "shear");
        assert_close(shear.across.to_gpa(), 0.8, 1e-12, "across");
    }

    /// Of three alike with the middle one crossed two thirds bear along, and one third, along its own grain, across.
    #[test]
    fn crossed_layers_carry_across() {
        let (allowable, sideways) = of(&[0.0, 90.0, 0.0]).allowable();
        assert_close(allowable.bending.unwrap().to_mpa(), 20.0, 1e-9, "along");
        assert_close(allowable.tension_across.unwrap().to_mpa(), 10.0, 1e-9, "across");
        assert_close(allowable.compression_across.unwrap().to_mpa(), 16.0 / 3.0, 1e-9, "pressed");
        // Bent sideways, 26 of 27 parts of the inertia are left.
        assert_close(sideways, 20.0 / (30.0 * 26.0 / 27.0), 1e-9, "sideways");
    }

    /// Crossed alike both ways it is as stiff both ways, and so near to the mean of both moduli as Poisson lets it be.
    #[test]
    fn a_crossed_laminate_is_as_stiff_as_the_mean_of_its_layers() {
        let moduli = of(&[0.0, 90.0, 90.0, 0.0]).moduli();
        assert_close(moduli.along.to_pa(), moduli.across.to_pa(), 1e-12, "both ways");
        let mean = 0.5 * (12.0 + 0.8);
        assert!((moduli.along.to_gpa() / mean - 1.0).abs() < 0.01, "{moduli:?}");
        assert_close(moduli.shear.to_gpa(), 0.9, 1e-12, "shear");
    }

    /// Without stiffness across, the plies of birch plywood give the figures of the panel.
    #[test]
    fn birch_plies_make_birch_plywood() {
        let panel = Panel::birch(9).unwrap();
        let plies = panel.plies().iter().map(|ply| Layer {
            thickness: ply.thickness,
            angle_rad: if ply.way == Way::Along { 0.0 } else { std::f64::consts::FRAC_PI_2 },
            along: ply.modulus,
            across: Stress::from_pa(1.0),
            poisson: 0.0,
            ..layer(1.0, 0.0)
        });
        let moduli = Laminate::new(plies.collect()).unwrap().moduli();
        let (edge, flat) = (panel.edgewise(Way::Along), panel.flatwise(Way::Along));
        assert_close(moduli.along.to_pa(), edge.modulus.to_pa(), 1e-9, "edge");
        assert_close(moduli.sideways.to_pa(), flat.modulus.to_pa(), 1e-9, "flat");
        let across = panel.edgewise(Way::Across).modulus;
        assert_close(moduli.across.to_pa(), across.to_pa(), 1e-9, "across");
    }

    /// A layer at an angle by itself has the modulus of the textbooks:
    /// `1/E = c⁴/E₁ + s⁴/E₂ + (1/G − 2ν/E₁) s² c²`.
    #[test]
    fn a_layer_at_an_angle_is_as_soft_as_the_books_say() {
        for deg in [10.0_f64, 30.0, 45.0, 70.0] {
            let (s, c) = deg.to_radians().sin_cos();
            let soft = c.powi(4) / 12.0
                + s.powi(4) / 0.8
                + (1.0 / 0.9 - 2.0 * 0.37 / 12.0) * s * s * c * c;
            let moduli = of(&[deg]).moduli();
            assert_close(moduli.along.to_gpa(), 1.0 / soft, 1e-12, deg);
            // By itself it bends as it stretches.
            assert_close(moduli.sideways.to_gpa(), 1.0 / soft, 1e-12, deg);
        }
    }

    /// At an angle the limit is that of the sum of squares: `c² σ`, `s² σ`, `s c σ` in its own axes.
    #[test]
    fn a_layer_at_an_angle_bears_less() {
        let (allowable, _) = of(&[20.0]).allowable();
        let (s, c) = 20.0_f64.to_radians().sin_cos();
        let used = ((c * c / 30.0).powi(2) + (s * s / 0.8).powi(2) + (s * c / 5.0).powi(2)).sqrt();
        assert_close(allowable.bending.unwrap().to_mpa(), 1.0 / used, 1e-9, "20°");
    }

    #[test]
    fn layers_that_make_no_laminate_are_refused_in_words() {
        assert_eq!(Laminate::new(vec![]), Err(LaminateError::Layers { got: 0 }));
        let bad = Laminate::new(vec![layer(10.0, 0.0), layer(0.0, 0.0)]);
        assert_eq!(bad, Err(LaminateError::Layer { number: 2 }));
        let none = Layer { across: Stress::from_pa(0.0), ..layer(1.0, 0.0) };
        assert!(Laminate::new(vec![none]).is_err());
    }

    #[test]
    fn what_is_not_known_of_a_layer_is_not_made_up() {
        let mut unknown = layer(10.0, 0.0);
        unknown.allowable.tension_across = None;
        let (allowable, _) = Laminate::new(vec![unknown; 3]).unwrap().allowable();
        assert_eq!(allowable.tension_across, None);
        assert!(allowable.bending.is_some());
    }
}
