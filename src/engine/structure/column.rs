//! Struts: when a pillar gives way sideways, straight or loaded beside its middle, and with bending besides.

use std::f64::consts::PI;

use thiserror::Error;

use super::section::Rectangle;
use crate::engine::units::{Force, Length, Stress};
use crate::words::{Words, structure as say};

/// Why a strut cannot be worked out.
#[derive(Clone, Copy, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum StrutError {
    /// A number that must be above 0.
    #[error("{}", say::strut_number(.got, .what))]
    Number {
        /// Which.
        what: Words,
        /// What was given, in SI units.
        got: f64,
    },
}

/// How the ends of a strut are held.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Ends {
    /// Both turn freely: the careful choice for a pillar.
    Pinned,
    /// One cannot turn.
    FixedPinned,
    /// Neither can turn.
    Fixed,
    /// One cannot turn, the other hangs in the air.
    FixedFree,
}

impl Ends {
    /// Length between points without bending, over the length: 1, 0.7, 0.5 or 2.
    pub const fn length_ratio(self) -> f64 {
        match self {
            Self::Pinned => 1.0,
            Self::FixedPinned => 0.7,
            Self::Fixed => 0.5,
            Self::FixedFree => 2.0,
        }
    }
}

/// A straight bar in compression.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strut {
    area_m2: f64,
    inertia_m4: f64,
    edge_m: f64,
    length_m: f64,
    modulus_pa: f64,
}

impl Strut {
    /// A strut of any section: area, least second moment of area, distance from the middle to the farthest fibre
    /// of that bending, length between points without bending, and modulus.
    ///
    /// # Errors
    ///
    /// When any of them is not a number above 0.
    pub fn new(
        area_m2: f64,
        inertia_m4: f64,
        edge: Length,
        free_length: Length,
        modulus: Stress,
    ) -> Result<Self, StrutError> {
        let (edge_m, length_m, modulus_pa) = (edge.to_m(), free_length.to_m(), modulus.to_pa());
        let numbers = [
            (say::AREA, area_m2),
            (say::SECOND_MOMENT, inertia_m4),
            (say::DISTANCE_TO_EDGE, edge_m),
            (say::LENGTH, length_m),
            (say::MODULUS, modulus_pa),
        ];
        for (what, got) in numbers {
            if !(got > 0.0 && got.is_finite()) {
                return Err(StrutError::Number { what, got });
            }
        }
        Ok(Self { area_m2, inertia_m4, edge_m, length_m, modulus_pa })
    }

    /// A strut of a rectangular section, which gives way over its thinner side.
    ///
    /// # Errors
    ///
    /// When length or modulus is not above 0.
    pub fn rectangle(
        section: Rectangle,
        length: Length,
        ends: Ends,
        modulus: Stress,
    ) -> Result<Self, StrutError> {
        let section = section.weaker_way();
        let free = Length::from_m(ends.length_ratio() * length.to_m());
        let edge = Length::from_m(0.5 * section.depth().to_m());
        Self::new(section.area_m2(), section.inertia_m4(), edge, free, modulus)
    }

    /// Radius of gyration, `i = √(I/A)`.
    pub fn gyration(self) -> Length {
        Length::from_m((self.inertia_m4 / self.area_m2).sqrt())
    }

    /// Slenderness, `λ = K L/i`.
    pub fn slenderness_ratio(self) -> f64 {
        self.length_m / self.gyration().to_m()
    }

    /// Stress if the load acts in the middle, `P/A`.
    pub const fn mean_stress(self, load: Force) -> Stress {
        Stress::from_pa(load.to_n() / self.area_m2)
    }

    /// The load at which a perfect strut gives way: `P = π² E I/(K L)²`.
    ///
    /// # Source
    ///
    /// L. Euler; any book on strength of materials.
    ///
    /// # Example
    ///
    /// With `E I = 1 N·m²` over a metre it is π² newtons.
    ///
    /// ```
    /// use stringloft::engine::structure::column::Strut;
    /// use stringloft::engine::units::{Length, Stress};
    ///
    /// let (edge, metre) = (Length::from_mm(5.0), Length::from_m(1.0));
    /// let rod = Strut::new(1e-4, 1e-9, edge, metre, Stress::from_gpa(1.0))?;
    /// assert!((rod.euler().to_n() - 9.8696).abs() < 1e-4);
    /// # Ok::<(), stringloft::engine::structure::column::StrutError>(())
    /// ```
    pub fn euler(self) -> Force {
        Force::from_n(PI * PI * self.modulus_pa * self.inertia_m4 / (self.length_m * self.length_m))
    }

    /// The mean stress at which a straight strut fails, of a material that is crushed at `σ_c`: Johnson's parabola
    /// `σ_c [1 − σ_c λ²/(4 π² E)]` below `λ = π √(2E/σ_c)`, and Euler's curve beyond, which it meets at half of
    /// `σ_c`.
    ///
    /// # Source
    ///
    /// J. B. Johnson; any book on machine design.
    pub fn failing_stress(self, crushing: Stress) -> Stress {
        let (crush, lambda) = (crushing.to_pa(), self.slenderness_ratio());
        if lambda < PI * (2.0 * self.modulus_pa / crush).sqrt() {
            let lost = crush * lambda * lambda / (4.0 * PI * PI * self.modulus_pa);
            Stress::from_pa(crush * (1.0 - lost))
        } else {
            self.mean_stress(self.euler())
        }
    }

    /// How many times a load beside the middle bends the strut more than the same load on a stiff one:
    /// `sec(½π √(P/P_E))`. `None` at the load of Euler and above, and for a pull.
    pub fn amplification_ratio(self, load: Force) -> Option<f64> {
        let share = load.to_n() / self.euler().to_n();
        (0.0..1.0).contains(&share).then(|| 1.0 / (0.5 * PI * share.sqrt()).cos())
    }

    /// The greatest stress under a load that acts beside the middle: `P/A [1 + (e c/i²) sec(½π √(P/P_E))]`.
    ///
    /// `None` where the strut has given way, at the load of Euler and above.
    ///
    /// # Source
    ///
    /// The secant formula; F. P. Beer and E. R. Johnston, *Mechanics of Materials*, chapter 10 (from memory).
    pub fn eccentric_stress(self, load: Force, eccentricity: Length) -> Option<Stress> {
        let gyration = self.gyration().to_m();
        let bends = eccentricity.to_m().abs() * self.edge_m / (gyration * gyration);
        let stress = load.to_n() / self.area_m2 * (1.0 + bends * self.amplification_ratio(load)?);
        Some(Stress::from_pa(stress))
    }

    /// The load beside the middle at which the greatest stress is a limit; without eccentricity the lesser of
    /// `σ A` and the load of Euler. `None` where the limit is not a stress above 0, or the eccentricity is
    /// endless.
    pub fn load_at(self, limit: Stress, eccentricity: Length) -> Option<Force> {
        let usable = limit.to_pa() > 0.0 && limit.to_pa().is_finite();
        if !usable || !eccentricity.to_m().is_finite() {
            return None;
        }
        let (mut low, mut high) = (0.0, self.euler().to_n().min(limit.to_pa() * self.area_m2));
        if eccentricity.to_m() == 0.0 {
            return Some(Force::from_n(high));
        }
        // The stress rises with the load, and passes the limit before either bound.
        for _ in 0..200 {
            let middle = 0.5 * (low + high);
            let stress = self.eccentric_stress(Force::from_n(middle), eccentricity);
            if stress.is_some_and(|stress| stress <= limit) {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(Force::from_n(low))
    }
}

/// Stress at which a rectangular wooden column gives way, `F_cE = 0.822 E_min/(l_e/d)²`, with the free length
/// over the side that bends.
///
/// # Source
///
/// *National Design Specification for Wood Construction*, 3.7.1 (from memory). 0.822 is π²/12.
///
/// # Example
///
/// 822 MPa with a column ten times as long as thick: 8.22 MPa.
///
/// ```
/// use stringloft::engine::{structure::column::critical_stress, units::Stress};
///
/// let stress = critical_stress(Stress::from_mpa(1000.0), 10.0);
/// assert!((stress.to_mpa() - 8.22).abs() < 1e-12);
/// ```
pub fn critical_stress(least_modulus: Stress, length_over_side: f64) -> Stress {
    Stress::from_pa(0.822 * least_modulus.to_pa() / (length_over_side * length_over_side))
}

/// `c` of [`stability_ratio`] for sawn timber.
pub const SAWN: f64 = 0.8;

/// Share of the compression along the grain that a column of some slenderness may bear, `C_P`:
/// `(1 + α)/2c − √([(1 + α)/2c]² − α/c)`, `α = F_cE/F_c*`.
///
/// `None` where α is negative or no number, or `c` not between 0 and 1.
///
/// # Source
///
/// *National Design Specification for Wood Construction*, 3.7.1 (from memory).
///
/// # Example
///
/// With `c = 1` it is the lesser of α and 1.
///
/// ```
/// use stringloft::engine::structure::column::stability_ratio;
///
/// assert_eq!(stability_ratio(0.25, 1.0), Some(0.25));
/// ```
pub fn stability_ratio(alpha: f64, c: f64) -> Option<f64> {
    if !(alpha >= 0.0 && c > 0.0 && c <= 1.0) {
        return None;
    }
    let half = (1.0 + alpha) / (2.0 * c);
    if half.is_infinite() || (half * half).is_infinite() {
        return Some(1.0);
    }
    // The lesser root of c x² − (1 + α) x + α = 0, as α/c over the greater, which loses no digits.
    let root = (half * half - alpha / c).max(0.0).sqrt();
    Some(alpha / (c * (half + root)))
}

/// How far bending and compression together use a part up: `(f_c/F_c′)² + f_b/[F_b′ (1 − f_c/F_cE)]`; 1 is all.
///
/// `None` where it has given way, at `F_cE` and above, or where a limit is not above 0.
///
/// # Source
///
/// *National Design Specification for Wood Construction*, 3.9.2 (from memory).
pub fn bending_with_compression(
    compression: (Stress, Stress),
    bending: (Stress, Stress),
    critical: Stress,
) -> Option<f64> {
    let axial = compression.0.to_pa() / compression.1.to_pa();
    let bent = bending.0.to_pa() / bending.1.to_pa();
    let left = 1.0 - compression.0.to_pa() / critical.to_pa();
    let usable = compression.1.to_pa() > 0.0 && bending.1.to_pa() > 0.0 && left > 0.0;
    usable.then(|| axial * axial + bent / left).filter(|ratio| ratio.is_finite())
}

/// How far bending and tension together use a part up: `f_t/F_t′ + f_b/F_b*`; 1 is all.
///
/// `None` where a limit is not above 0.
///
/// # Source
///
/// *National Design Specification for Wood Construction*, 3.9.1 (from memory).
pub fn bending_with_tension(tension: (Stress, Stress), bending: (Stress, Stress)) -> Option<f64> {
    let usable = tension.1.to_pa() > 0.0 && bending.1.to_pa() > 0.0;
    let ratio = tension.0.to_pa() / tension.1.to_pa() + bending.0.to_pa() / bending.1.to_pa();
    usable.then_some(ratio).filter(|ratio| ratio.is_finite())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn pillar(length_mm: f64) -> Strut {
        let section = Rectangle::new(Length::from_mm(60.0), Length::from_mm(45.0)).unwrap();
        let (length, modulus) = (Length::from_mm(length_mm), Stress::from_gpa(12.6));
        Strut::rectangle(section, length, Ends::Pinned, modulus).unwrap()
    }

    #[test]
    fn johnson_and_euler_meet_at_half_the_crushing_stress() {
        let crushing = Stress::from_mpa(54.0);
        let meeting = PI * (2.0 * 12.6e9 / 54e6_f64).sqrt();
        let length_mm = 1e3 * meeting * pillar(1000.0).gyration().to_m();
        for factor in [1.0 - 1e-9, 1.0 + 1e-9] {
            let stress = pillar(length_mm * factor).failing_stress(crushing);
            assert_close(stress.to_mpa(), 27.0, 1e-8, factor);
        }
        let stub = pillar(1e-3).failing_stress(crushing);
        assert_close(stub.to_mpa(), 54.0, 1e-9, "a stub is crushed");
    }

    #[test]
    fn the_load_found_has_the_stress_that_was_the_limit() {
        let strut = pillar(1100.0);
        for (limit, beside) in [(20.0, 5.0), (20.0, 0.01), (60.0, 30.0), (3.0, 200.0)] {
            let (limit, beside) = (Stress::from_mpa(limit), Length::from_mm(beside));
            let load = strut.load_at(limit, beside).unwrap();
            let stress = strut.eccentric_stress(load, beside).unwrap();
            assert_close(stress.to_pa(), limit.to_pa(), 1e-9, limit.to_mpa());
        }
        let straight = strut.load_at(Stress::from_mpa(60.0), Length::from_m(0.0)).unwrap();
        assert_eq!(straight, strut.euler());
        assert_eq!(strut.eccentric_stress(strut.euler(), Length::from_mm(1.0)), None);
        assert_eq!(strut.load_at(Stress::from_mpa(f64::NAN), Length::from_mm(1.0)), None);
    }

    #[test]
    fn a_short_column_bears_all_and_a_slender_one_what_euler_says() {
        assert_close(stability_ratio(1e9, SAWN).unwrap(), 1.0, 1e-8, "short");
        assert_eq!(stability_ratio(f64::MAX, SAWN), Some(1.0));
        let slender = stability_ratio(1e-9, SAWN).unwrap();
        assert_close(slender, 1e-9, 1e-8, "slender");
        assert_eq!(stability_ratio(0.0, SAWN), Some(0.0));
        for (alpha, c) in [(-0.1, 0.8), (f64::NAN, 0.8), (0.5, 0.0), (0.5, 1.1)] {
            assert_eq!(stability_ratio(alpha, c), None);
        }
    }

    #[test]
    fn a_strut_without_a_measure_is_refused_in_words() {
        let edge = Length::from_mm(10.0);
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            let error = Strut::new(1e-4, 1e-9, edge, Length::from_m(bad), Stress::from_gpa(1.0));
            let text = error.unwrap_err().to_string();
            assert!(text.starts_with("the length of a pillar must be above 0, got"), "{text}");
        }
    }

    #[test]
    fn together_bending_and_push_use_up_more_than_each() {
        let mpa = Stress::from_mpa;
        let ratio =
            bending_with_compression((mpa(5.0), mpa(10.0)), (mpa(5.0), mpa(20.0)), mpa(10.0));
        assert_close(ratio.unwrap(), 0.25 + 0.5, 1e-15, "pushed");
        let ratio = bending_with_tension((mpa(5.0), mpa(10.0)), (mpa(5.0), mpa(20.0)));
        assert_close(ratio.unwrap(), 0.75, 1e-15, "pulled");
        let none =
            bending_with_compression((mpa(10.0), mpa(20.0)), (mpa(1.0), mpa(9.0)), mpa(10.0));
        assert_eq!(none, None);
        assert_eq!(bending_with_tension((mpa(1.0), mpa(0.0)), (mpa(1.0), mpa(1.0))), None);
    }
}
