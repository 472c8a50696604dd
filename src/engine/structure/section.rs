//! A rectangle of wood: areas, moments of area, stresses in bending, shear and torsion; and what a curve adds.

use std::f64::consts::PI;

use thiserror::Error;

use crate::engine::units::{Force, Length, Moment, Stress};
use crate::words::{Words, structure as say};

/// Why a section cannot be worked out.
#[derive(Clone, Copy, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum SectionError {
    /// A side is zero, negative, endless or no number.
    #[error("{}", say::section_side(.got_mm, .side))]
    Side {
        /// Which side.
        side: Words,
        /// What was given.
        got_mm: f64,
    },
    /// The curve is tighter than the section is deep.
    #[error("{}", say::section_radius(.got_mm, .half_mm))]
    Radius {
        /// Half of the depth.
        half_mm: f64,
        /// What was given.
        got_mm: f64,
    },
}

/// A rectangular section: its depth lies in the plane in which it is bent, its breadth across that plane.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rectangle {
    breadth: Length,
    depth: Length,
}

/// Saint-Venant's numbers for the torsion of a rectangle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TorsionNumbers {
    /// For the stress, `τ = T/(c₁ h b²)`.
    pub c1: f64,
    /// For the twist, `θ = T L/(c₂ h b³ G)`.
    pub c2: f64,
}

/// `Σ 1/n⁵` over odd `n`: 31/32 of ζ(5), which is 1.036 927 755 143 37.
const ODD_FIFTH_POWERS: f64 = 31.0 / 32.0 * 1.036_927_755_143_37;
/// `Σ ±1/n²` over odd `n`.
const CATALAN: f64 = 0.915_965_594_177_219;
/// Beyond this odd term of the series nothing is left, even for a square: `e^(-nπ)` is below 1e-40.
const LAST_ODD: i32 = 29;
/// Nor beyond this odd term times the ratio of the sides: `1/cosh(nπh/2b)` is below 1e-19.
const LAST_OVER_RATIO: f64 = 29.0;

/// Saint-Venant's `c₁` and `c₂` for a rectangle of sides `h ≥ b`.
///
/// `c₂ = ⅓ [1 − (192/π⁵)(b/h) Σ tanh(nπh/2b)/n⁵]` and `c₁ = c₂/[1 − (8/π²) Σ 1/(n² cosh(nπh/2b))]` over odd `n`.
/// The first sum is taken as what is missing from `Σ 1/n⁵`, so that both converge as `e^(−nπh/b)`. The sides
/// may come in either order. `None` where the ratio is not a number above 0.
///
/// # Source
///
/// S. Timoshenko and J. N. Goodier, *Theory of Elasticity*, the torsion of a rectangular bar (from memory).
///
/// # Example
///
/// A very thin strip has a third for both.
///
/// ```
/// use stringloft::engine::structure::section::torsion_numbers;
///
/// let thin = torsion_numbers(1e9).expect("a ratio above 0");
/// assert!((thin.c1 - 1.0 / 3.0).abs() < 1e-9 && (thin.c2 - 1.0 / 3.0).abs() < 1e-9);
/// ```
pub fn torsion_numbers(sides_ratio: f64) -> Option<TorsionNumbers> {
    if !(sides_ratio > 0.0 && sides_ratio.is_finite()) {
        return None;
    }
    let ratio = if sides_ratio < 1.0 { 1.0 / sides_ratio } else { sides_ratio };
    let (mut missing, mut edge) = (0.0, 0.0);
    for n in (1..=LAST_ODD).step_by(2).map(f64::from) {
        if n * ratio > LAST_OVER_RATIO {
            break;
        }
        // 1 − tanh x = 2/(1 + e^2x).
        missing += 2.0 / (1.0 + (n * PI * ratio).exp()) / n.powi(5);
        edge += 1.0 / (n * n * (0.5 * n * PI * ratio).cosh());
    }
    let c2 = (1.0 - 192.0 / (PI.powi(5) * ratio) * (ODD_FIFTH_POWERS - missing)) / 3.0;
    Some(TorsionNumbers { c1: c2 / (1.0 - 8.0 / (PI * PI) * edge), c2 })
}

/// `c₂` by the closed approximation that handbooks print, for `h ≥ b`: `⅓ [1 − 0.63 (b/h)(1 − b⁴/12h⁴)]`.
///
/// With half sides it reads `K = a b³ [16/3 − 3.36 (b/a)(1 − b⁴/12a⁴)]`. It only serves as a check.
///
/// # Source
///
/// R. J. Roark, *Formulas for Stress and Strain*, table of torsion (from memory).
pub fn torsion_c2_by_handbook(sides_ratio: f64) -> f64 {
    let ratio = sides_ratio.max(1.0 / sides_ratio);
    (16.0 / 3.0 - 3.36 / ratio * (1.0 - ratio.powi(-4) / 12.0)) / 16.0
}

impl Rectangle {
    /// A section with both sides above 0.
    ///
    /// # Errors
    ///
    /// When a side is not a length above 0.
    pub fn new(breadth: Length, depth: Length) -> Result<Self, SectionError> {
        for (side, length) in [(say::BREADTH, breadth), (say::DEPTH, depth)] {
            if !(length.to_m() > 0.0 && length.to_m().is_finite()) {
                return Err(SectionError::Side { side, got_mm: length.to_mm() });
            }
        }
        Ok(Self { breadth, depth })
    }

    /// The side across the plane of bending.
    pub const fn breadth(self) -> Length {
        self.breadth
    }

    /// The side in the plane of bending.
    pub const fn depth(self) -> Length {
        self.depth
    }

    /// The same section bent sideways.
    #[must_use]
    pub const fn on_its_side(self) -> Self {
        Self { breadth: self.depth, depth: self.breadth }
    }

    /// The section between this one and another, `share` of the way.
    #[must_use]
    pub(super) fn towards(self, other: Self, share: f64) -> Self {
        let between = |from: Length, to: Length| {
            Length::from_m(from.to_m() + share * (to.to_m() - from.to_m()))
        };
        Self {
            breadth: between(self.breadth, other.breadth),
            depth: between(self.depth, other.depth),
        }
    }

    /// Area, in m².
    pub const fn area_m2(self) -> f64 {
        self.breadth.to_m() * self.depth.to_m()
    }

    /// Second moment of area for bending in the plane of the depth, `b h³/12`, in m⁴.
    pub fn inertia_m4(self) -> f64 {
        self.breadth.to_m() * self.depth.to_m().powi(3) / 12.0
    }

    /// Section modulus for bending in the plane of the depth, `b h²/6`, in m³.
    pub fn modulus_m3(self) -> f64 {
        self.breadth.to_m() * self.depth.to_m().powi(2) / 6.0
    }

    /// Radius of gyration for bending in the plane of the depth, `h/√12`.
    pub fn gyration(self) -> Length {
        Length::from_m(self.depth.to_m() / 12.0_f64.sqrt())
    }

    /// The same section with its thinner side in the plane of bending: how a strut gives way.
    #[must_use]
    pub fn weaker_way(self) -> Self {
        if self.depth > self.breadth { self.on_its_side() } else { self }
    }

    /// Saint-Venant's numbers of this section.
    pub fn torsion_numbers(self) -> TorsionNumbers {
        // Two lengths above 0 can be so unlike that their ratio is endless: then it is a thin strip.
        let thin = TorsionNumbers { c1: 1.0 / 3.0, c2: 1.0 / 3.0 };
        torsion_numbers(self.depth.to_m() / self.breadth.to_m()).unwrap_or(thin)
    }

    fn long_and_short_m(self) -> (f64, f64) {
        let (b, h) = (self.breadth.to_m(), self.depth.to_m());
        (b.max(h), b.min(h))
    }

    /// Torsion constant `c₂ h b³`, in m⁴.
    pub fn torsion_m4(self) -> f64 {
        let (long, short) = self.long_and_short_m();
        self.torsion_numbers().c2 * long * short.powi(3)
    }

    /// Stress of a pull or push spread over the section, `N/A`.
    pub const fn axial_stress(self, force: Force) -> Stress {
        Stress::from_pa(force.to_n() / self.area_m2())
    }

    /// Greatest stress of bending in the plane of the depth, `6 M/(b h²)`.
    pub fn bending_stress(self, moment: Moment) -> Stress {
        Stress::from_pa(moment.to_n_m() / self.modulus_m3())
    }

    /// Greatest shear stress of a shear force, at mid depth: `1.5 V/A`.
    pub const fn shear_stress(self, force: Force) -> Stress {
        Stress::from_pa(1.5 * force.to_n() / self.area_m2())
    }

    /// Greatest shear stress of a torque, in the middle of the longer side: `T/(c₁ h b²)`.
    ///
    /// Holds for a material that is alike in all directions; for wood it is the usual approximation.
    ///
    /// # Source
    ///
    /// Saint-Venant; S. Timoshenko and J. N. Goodier, *Theory of Elasticity* (from memory).
    ///
    /// # Example
    ///
    /// A strip of 1000 × 1 mm has a `c₁` of almost a third, so 1 N·m gives 3 MPa.
    ///
    /// ```
    /// use stringloft::engine::{structure::section::Rectangle, units::{Length, Moment}};
    ///
    /// let strip = Rectangle::new(Length::from_mm(1.0), Length::from_mm(1000.0))?;
    /// let stress = strip.torsion_stress(Moment::from_n_m(1.0)).to_mpa();
    /// assert!((stress - 3.0).abs() < 0.003);
    /// # Ok::<(), stringloft::engine::structure::section::SectionError>(())
    /// ```
    pub fn torsion_stress(self, torque: Moment) -> Stress {
        let (long, short) = self.long_and_short_m();
        Stress::from_pa(torque.to_n_m() / (self.torsion_numbers().c1 * long * short * short))
    }

    /// The same in the middle of the side across the plane of bending, where the layers of a bar show that is glued up of layers
    /// side by side: on the shorter side `k T/(c₂ h b²)` with `k = (8/π²) Σ ±tanh(nπh/2b)/n²` over odd `n`.
    ///
    /// # Source
    ///
    /// As [`torsion_numbers`].
    ///
    /// # Example
    ///
    /// In a square all sides are alike.
    ///
    /// ```
    /// use stringloft::engine::{structure::section::Rectangle, units::{Length, Moment}};
    ///
    /// let square = Rectangle::new(Length::from_mm(40.0), Length::from_mm(40.0))?;
    /// let torque = Moment::from_n_m(10.0);
    /// let (all, side) = (square.torsion_stress(torque), square.torsion_stress_over(torque));
    /// assert!((side.to_pa() / all.to_pa() - 1.0).abs() < 1e-12);
    /// # Ok::<(), stringloft::engine::structure::section::SectionError>(())
    /// ```
    pub fn torsion_stress_over(self, torque: Moment) -> Stress {
        let (long, short) = self.long_and_short_m();
        if self.breadth > self.depth {
            return self.torsion_stress(torque);
        }
        // What is missing from `Σ ±1/n²`, Catalan's number.
        let (mut missing, mut sign) = (0.0, 1.0);
        for n in (1..=LAST_ODD).step_by(2).map(f64::from) {
            if n * long / short > LAST_OVER_RATIO {
                break;
            }
            missing += sign * 2.0 / (1.0 + (n * PI * long / short).exp()) / (n * n);
            sign = -sign;
        }
        let share = 8.0 / (PI * PI) * (CATALAN - missing);
        let twist = torque.to_n_m() / (self.torsion_numbers().c2 * long * short * short);
        Stress::from_pa(share * twist)
    }

    /// Twist of a bar of a length under a torque, in radians: `T L/(c₂ h b³ G)`.
    pub fn twist_rad(self, torque: Moment, length: Length, shear_modulus: Stress) -> f64 {
        torque.to_n_m() * length.to_m() / (self.torsion_m4() * shear_modulus.to_pa())
    }
}

/// Stresses at the two faces of a bent bar that is curved; tension is above 0.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CurvedStress {
    /// At the hollow face.
    pub inner: Stress,
    /// At the round face.
    pub outer: Stress,
    /// Radius of the fibre without stress.
    pub neutral_radius: Length,
}

/// Half of the depth over the mean radius.
fn curve(section: Rectangle, mean_radius: Length) -> Result<f64, SectionError> {
    let (half, radius) = (0.5 * section.depth().to_m(), mean_radius.to_m());
    if radius > half && radius.is_finite() {
        Ok(half / radius)
    } else {
        Err(SectionError::Radius { half_mm: 1e3 * half, got_mm: mean_radius.to_mm() })
    }
}

/// Stresses in a curved bar under a moment that opens the curve: `σ = M (r_n − r)/(A e r)`.
///
/// The fibre without stress lies at `r_n = h/ln(r_o/r_i)`, nearer to the centre than the middle by
/// `e = r̄ − r_n`. A moment that closes the curve is below 0. Holds for a rectangle of one material.
///
/// # Errors
///
/// When the mean radius is not more than half of the depth.
///
/// # Source
///
/// E. Winkler's theory of curved bars, as in F. P. Beer and E. R. Johnston, *Mechanics of Materials*, section
/// 4.15 (from memory).
///
/// # Example
///
/// A curve so wide that it is straight has the stress of a straight bar on both faces.
///
/// ```
/// use stringloft::engine::structure::section::{curved_stress, Rectangle};
/// use stringloft::engine::units::{Length, Moment};
///
/// let bar = Rectangle::new(Length::from_mm(60.0), Length::from_mm(100.0))?;
/// let stress = curved_stress(bar, Length::from_m(1e6), Moment::from_n_m(1000.0))?;
/// assert!((stress.inner.to_mpa() - 10.0).abs() < 1e-5);
/// assert!((stress.outer.to_mpa() + 10.0).abs() < 1e-5);
/// # Ok::<(), stringloft::engine::structure::section::SectionError>(())
/// ```
pub fn curved_stress(
    section: Rectangle,
    mean_radius: Length,
    opening: Moment,
) -> Result<CurvedStress, SectionError> {
    let x = curve(section, mean_radius)?;
    let mean = mean_radius.to_m();
    // r_n = r̄ x/atanh x; the difference from r̄ as a series where it would lose its digits.
    let excess = if x < 0.05 {
        let square = x * x;
        x * square * (1.0 / 3.0 + square * (0.2 + square * (1.0 / 7.0 + square / 9.0)))
    } else {
        x.atanh() - x
    };
    let eccentricity = mean * excess / x.atanh();
    let neutral = mean - eccentricity;
    let half = 0.5 * section.depth().to_m();
    let at = |offset: f64| {
        let arm = -eccentricity - offset;
        let per_area = opening.to_n_m() / (section.area_m2() * eccentricity);
        Stress::from_pa(per_area * arm / (mean + offset))
    };
    Ok(CurvedStress { inner: at(-half), outer: at(half), neutral_radius: Length::from_m(neutral) })
}

/// Stress along the radius in curved wood: `σ_r = 3 M/(2 r̄ b h)`, a pull across the grain where the moment
/// opens the curve.
///
/// Holds for wood whose grain follows the curve.
///
/// # Errors
///
/// When the mean radius is not more than half of the depth.
///
/// # Source
///
/// *Wood Handbook*, USDA Forest Products Laboratory, chapter 9 (from memory).
///
/// # Example
///
/// 2000 N·m on 60 × 100 mm with a radius of half a metre: 3 · 2000/(2 · 0.5 · 0.006) Pa are 1 MPa.
///
/// ```
/// use stringloft::engine::structure::section::{radial_stress, Rectangle};
/// use stringloft::engine::units::{Length, Moment};
///
/// let bar = Rectangle::new(Length::from_mm(60.0), Length::from_mm(100.0))?;
/// let stress = radial_stress(bar, Length::from_m(0.5), Moment::from_n_m(2000.0))?;
/// assert!((stress.to_mpa() - 1.0).abs() < 1e-12);
/// # Ok::<(), stringloft::engine::structure::section::SectionError>(())
/// ```
pub fn radial_stress(
    section: Rectangle,
    mean_radius: Length,
    opening: Moment,
) -> Result<Stress, SectionError> {
    curve(section, mean_radius)?;
    let pascals = 1.5 * opening.to_n_m() / (mean_radius.to_m() * section.area_m2());
    Ok(Stress::from_pa(pascals))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn rectangle(breadth_mm: f64, depth_mm: f64) -> Rectangle {
        Rectangle::new(Length::from_mm(breadth_mm), Length::from_mm(depth_mm)).unwrap()
    }

    #[test]
    fn a_section_without_a_side_is_refused_in_words() {
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            let error = Rectangle::new(Length::from_mm(40.0), Length::from_mm(bad)).unwrap_err();
            assert!(error.to_string().starts_with("the depth must be more than 0 mm"), "{error}");
            assert!(Rectangle::new(Length::from_mm(bad), Length::from_mm(40.0)).is_err());
            assert_eq!(torsion_numbers(bad), None);
        }
    }

    /// The series as the textbook writes it, with many terms.
    #[test]
    fn the_fast_series_is_the_slow_one() {
        for ratio in [1.0, 1.3, 2.0, 5.0, 40.0] {
            let odd = || (1..20_001).step_by(2).map(f64::from);
            let slow: f64 = odd().map(|n| (0.5 * n * PI * ratio).tanh() / n.powi(5)).sum::<f64>();
            let c2 = (1.0 - 192.0 / PI.powi(5) / ratio * slow) / 3.0;
            let fast = torsion_numbers(ratio).unwrap();
            assert_close(fast.c2, c2, 1e-13, format_args!("{ratio}"));
            assert_eq!(torsion_numbers(1.0 / ratio).map(|n| n.c2 - fast.c2 < 1e-15), Some(true));
        }
    }

    #[test]
    fn a_bar_twists_the_same_however_it_is_turned() {
        let bar = rectangle(40.0, 75.0);
        let torque = Moment::from_n_m(64.0);
        let turned = bar.on_its_side();
        assert_close(
            bar.torsion_stress(torque).to_pa(),
            turned.torsion_stress(torque).to_pa(),
            1e-12,
            "stress",
        );
        assert_close(bar.torsion_m4(), turned.torsion_m4(), 1e-12, "constant");
        assert_eq!(bar.weaker_way(), turned.weaker_way());
        assert_close(bar.gyration().to_m().powi(2) * bar.area_m2(), bar.inertia_m4(), 1e-12, "i");
    }

    /// The moment of the stresses about the middle is the moment, and their sum is no force.
    #[test]
    fn a_curved_bar_balances() {
        for (depth, radius) in [(50.0, 40.0), (50.0, 500.0), (50.0, 700.0), (20.0, 9_000.0)] {
            let bar = rectangle(30.0, depth);
            let moment = 100.0;
            let stress =
                curved_stress(bar, Length::from_mm(radius), Moment::from_n_m(moment)).unwrap();
            let neutral = stress.neutral_radius.to_m();
            let inner = 1e-3 * (radius - 0.5 * depth);
            // σ = k (r_n/r − 1), so the force is k b [r_n ln(r_o/r_i) − h].
            let k = stress.inner.to_pa() / (neutral / inner - 1.0);
            let log = ((radius + 0.5 * depth) / (radius - 0.5 * depth)).ln();
            let (b, h, mean) = (0.03, 1e-3 * depth, 1e-3 * radius);
            let force = k * b * (neutral * log - h);
            assert!(force.abs() * h < 1e-8 * moment, "{force} N at {radius}");
            // ∫ σ b (r̄ − r) dr = k b r_n (r̄ ln(r_o/r_i) − h).
            let back = k * b * neutral * (mean * log - h);
            assert_close(back, moment, 1e-6, format_args!("{radius}"));
        }
    }

    #[test]
    fn a_curve_tighter_than_the_bar_is_deep_is_refused() {
        let bar = rectangle(30.0, 50.0);
        for bad in [25.0, 0.0, -9.0, f64::NAN, f64::INFINITY] {
            let radius = Length::from_mm(bad);
            assert!(curved_stress(bar, radius, Moment::from_n_m(1.0)).is_err(), "{bad}");
            assert!(radial_stress(bar, radius, Moment::from_n_m(1.0)).is_err(), "{bad}");
        }
    }
}
