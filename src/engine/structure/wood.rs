//! Woods: strength, stiffness, how they scatter, what slanting grain takes away, and what may be allowed.

mod built_in;
pub mod own;
mod said;

pub use self::built_in::{KEYS, SCATTER, Scatter, woods};
pub use self::said::said;
use super::duration::{LoadTime, Timber, madison_ratio, material_divisor, permanent_ratio};
use crate::engine::material::Sourced;
use crate::engine::units::{Density, Stress};
use crate::words::Words;

/// `E_L`, the modulus along the grain free of shear, over the modulus of a bending test.
///
/// Source: *Wood Handbook*, table 5-1, note (from memory).
pub const ALONG_OVER_BENDING: f64 = 1.10;

/// How much shorter a wood becomes across its grain, across the rings, for each part that it is stretched along it: that
/// of Sitka spruce, which other woods come near. A board's bending hardly depends on it.
///
/// Source: *Wood Handbook*, table 5-2 (from memory).
pub const POISSON: f64 = 0.37;

/// Standard deviations between the mean and the fifth percentile of a normal distribution.
const FIFTH_PERCENTILE: f64 = 1.645;

/// Which divisors hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WoodKind {
    /// Conifers.
    Softwood,
    /// Broad-leaved trees.
    Hardwood,
}

/// What the strengths of a wood are.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Basis {
    /// Means of small pieces without a flaw, at 12 % moisture.
    Clear,
    /// Fifth percentiles of graded timber.
    Characteristic,
}

/// Moduli over `E_L`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ElasticRatios {
    /// Across the grain, along the rings.
    pub tangential: f64,
    /// Across the grain, across the rings.
    pub radial: f64,
    /// Shear in the plane of grain and radius.
    pub shear_radial: f64,
    /// Shear in the plane of grain and rings, where it is tabulated.
    pub shear_tangential: Option<f64>,
}

impl ElasticRatios {
    /// Shear modulus of a bar along the grain that is twisted, over `E_L`: `√(G_LR G_LT)`.
    ///
    /// # Source
    ///
    /// *Wood Handbook*, chapter 9 (from memory).
    pub fn torsion_ratio(&self) -> Option<f64> {
        Some((self.shear_radial * self.shear_tangential?).sqrt())
    }
}

/// A wood with its figures; one that is not tabulated is `None`.
#[derive(Clone, Debug, PartialEq)]
pub struct Wood {
    /// Short and unique, in small letters and hyphens.
    pub key: &'static str,
    /// Name in words.
    pub name: Words,
    /// Botanical name, which is what decides.
    pub botanical: Words,
    /// Conifer or not.
    pub kind: WoodKind,
    /// What the strengths are.
    pub basis: Basis,
    /// Mass over volume.
    pub density: Option<Sourced<Density>>,
    /// Strength in bending, along the grain.
    pub bending: Option<Sourced<Stress>>,
    /// Modulus of a bending test, along the grain.
    pub modulus: Option<Sourced<Stress>>,
    /// Strength in compression along the grain.
    pub compression_along: Option<Sourced<Stress>>,
    /// Stress in compression across the grain at the proportional limit.
    pub compression_across: Option<Sourced<Stress>>,
    /// Strength in shear along the grain.
    pub shear: Option<Sourced<Stress>>,
    /// Strength in tension across the grain.
    pub tension_across: Option<Sourced<Stress>>,
    /// Moduli in other directions.
    pub ratios: Option<Sourced<ElasticRatios>>,
}

/// Stresses that may be allowed for good, and the moduli; what is not known is `None`.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Allowable {
    /// Bending; also taken for tension along the grain.
    pub bending: Option<Stress>,
    /// Compression along the grain, without buckling.
    pub compression_along: Option<Stress>,
    /// Compression across the grain.
    pub compression_across: Option<Stress>,
    /// Shear along the grain.
    pub shear: Option<Stress>,
    /// Tension across the grain.
    pub tension_across: Option<Stress>,
    /// Mean modulus in bending.
    pub modulus: Option<Stress>,
    /// Modulus for buckling, [`buckling_modulus`].
    pub least_modulus: Option<Stress>,
    /// How far the strengths lie above what is allowed.
    pub margins: Margins,
}

/// How many times what is allowed a piece bears in a test of some minutes, straight-grained and without a flaw.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Margin {
    /// A piece of mean strength; `None` where only the strength of the weakest is known.
    pub mean: Option<f64>,
    /// The weakest of twenty.
    pub weak: f64,
}

impl Margin {
    /// The same after so long a time under load, by the Madison curve; see [`madison_ratio`].
    pub fn after(self, seconds: f64) -> Option<Self> {
        let left = madison_ratio(seconds)?;
        Some(Self { mean: self.mean.map(|mean| left * mean), weak: left * self.weak })
    }
}

/// The margins of the stresses of [`Allowable`], where these are known.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Margins {
    /// Bending.
    pub bending: Option<Margin>,
    /// Compression along the grain.
    pub compression_along: Option<Margin>,
    /// Compression across the grain, which crushes the wood and does not break it.
    pub compression_across: Option<Margin>,
    /// Shear along the grain.
    pub shear: Option<Margin>,
    /// Tension across the grain.
    pub tension_across: Option<Margin>,
    /// Buckling, by the modulus.
    pub buckling: Option<Margin>,
}

impl Margin {
    /// Of two that may break first the nearer to it.
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        let mean = self.mean.zip(other.mean).map(|(one, other)| one.min(other));
        Self { mean, weak: self.weak.min(other.weak) }
    }
}

impl Margins {
    /// Of strengths of which the weakest of twenty pieces are known and `factor` of them is allowed.
    pub fn of_characteristic(factor: f64) -> Self {
        let all = Some(Margin { mean: None, weak: 1.0 / factor });
        Self {
            bending: all,
            compression_along: all,
            compression_across: all,
            shear: all,
            tension_across: all,
            buckling: None,
        }
    }
}

impl Wood {
    /// `E_L`, the modulus along the grain free of shear.
    pub fn modulus_along(&self) -> Option<Stress> {
        let bending = self.modulus.as_ref()?.value;
        Some(Stress::from_pa(ALONG_OVER_BENDING * bending.to_pa()))
    }

    /// Shear modulus of a bar along the grain that is twisted: `√(G_LR G_LT)`.
    pub fn torsion_modulus(&self) -> Option<Stress> {
        let ratio = self.ratios.as_ref()?.value.torsion_ratio()?;
        Some(Stress::from_pa(ratio * self.modulus_along()?.to_pa()))
    }

    /// Stresses that may be allowed, for grain that runs straight along the part.
    ///
    /// For clear wood `mean (1 − 1.645 CoV) C_D/divisor`, with the divisor of [`divisors`] that holds for ten
    /// years; compression across the grain is its mean over the divisor, whatever the time. For graded timber
    /// `k_mod f_k/γ_M`, which is for a permanent load only, and wants the load taken with its own factor;
    /// shorter times are not credited. A part with slanting grain takes [`Allowable::at_slope`] besides.
    ///
    /// The tension across the grain has no divisor in the source; that of shear is taken, which is a choice of
    /// this program.
    ///
    /// # Source
    ///
    /// ASTM D245 for the divisors, *Wood Handbook* table 5-6 for the scatter, both from memory.
    pub fn allowable(&self, time: LoadTime) -> Allowable {
        let modulus = self.modulus.as_ref().map(|sourced| sourced.value);
        let of = |strength: &Option<Sourced<Stress>>, factor: f64| {
            strength.as_ref().map(|sourced| Stress::from_pa(factor * sourced.value.to_pa()))
        };
        // Of a mean, `factor` is allowed, and the weakest of twenty have the fifth percentile.
        let clear = |factor: f64, scatter: f64| {
            Some(Margin {
                mean: Some(1.0 / factor),
                weak: fifth_percentile_ratio(scatter) / factor,
            })
        };
        let (factors, margins) = match self.basis {
            Basis::Clear => {
                let (duration, by) = (time.factor().value, divisors(self.kind));
                let factor = |scatter: f64, divisor: f64| {
                    fifth_percentile_ratio(scatter) * duration / divisor
                };
                let factors = Divisors {
                    bending: factor(SCATTER.bending, by.bending),
                    compression_along: factor(SCATTER.compression_along, by.compression_along),
                    compression_across: 1.0 / by.compression_across,
                    shear: factor(SCATTER.shear, by.shear),
                    tension_across: factor(SCATTER.tension_across, by.tension_across),
                };
                let margins = Margins {
                    bending: clear(factors.bending, SCATTER.bending),
                    compression_along: clear(factors.compression_along, SCATTER.compression_along),
                    compression_across: clear(
                        factors.compression_across,
                        SCATTER.compression_across,
                    ),
                    shear: clear(factors.shear, SCATTER.shear),
                    tension_across: clear(factors.tension_across, SCATTER.tension_across),
                    buckling: clear(BUCKLING_OF_MEAN, SCATTER.modulus),
                };
                (factors, margins)
            }
            Basis::Characteristic => {
                let factor = permanent_ratio().value / material_divisor(Timber::Solid).value;
                (Divisors::all_alike(factor), Margins::of_characteristic(factor))
            }
        };
        Allowable {
            bending: of(&self.bending, factors.bending),
            compression_along: of(&self.compression_along, factors.compression_along),
            compression_across: of(&self.compression_across, factors.compression_across),
            shear: of(&self.shear, factors.shear),
            tension_across: of(&self.tension_across, factors.tension_across),
            modulus,
            least_modulus: modulus.map(buckling_modulus),
            margins,
        }
    }
}

impl Allowable {
    /// The same where only a share of every strength may be allowed; the moduli stay.
    #[must_use]
    pub fn times(self, ratio: f64) -> Self {
        let times = |stress: Option<Stress>| stress.map(|of| Stress::from_pa(ratio * of.to_pa()));
        Self {
            bending: times(self.bending),
            compression_along: times(self.compression_along),
            compression_across: times(self.compression_across),
            shear: times(self.shear),
            tension_across: times(self.tension_across),
            ..self
        }
    }

    /// The same for a part whose grain slants by `slope_ratio`, 1 in so many. `None` where that is steeper
    /// than the table goes.
    #[must_use]
    pub fn at_slope(self, slope_ratio: f64) -> Option<Self> {
        let left = grain_left(slope_ratio)?;
        let times = |stress: Option<Stress>, ratio: f64| {
            stress.map(|stress| Stress::from_pa(ratio * stress.to_pa()))
        };
        Some(Self {
            bending: times(self.bending, left.bending_ratio),
            compression_along: times(self.compression_along, left.compression_ratio),
            ..self
        })
    }
}

/// What a strength is divided by, or a factor on it, part by part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Divisors {
    /// Bending.
    pub bending: f64,
    /// Compression along the grain.
    pub compression_along: f64,
    /// Compression across the grain.
    pub compression_across: f64,
    /// Shear along the grain.
    pub shear: f64,
    /// Tension across the grain.
    pub tension_across: f64,
}

impl Divisors {
    const fn all_alike(number: f64) -> Self {
        Self {
            bending: number,
            compression_along: number,
            compression_across: number,
            shear: number,
            tension_across: number,
        }
    }
}

/// From the fifth percentile of clear wood to a stress that may be allowed for ten years, safety included.
///
/// Older editions divide shear by more than 4; verify before relying on it. The last, tension across the
/// grain, is that of shear and stands in no standard.
///
/// # Source
///
/// ASTM D245 (from memory).
pub const fn divisors(kind: WoodKind) -> Divisors {
    match kind {
        WoodKind::Softwood => Divisors {
            bending: 2.1,
            compression_along: 1.9,
            compression_across: 1.67,
            shear: 2.1,
            tension_across: 2.1,
        },
        WoodKind::Hardwood => Divisors {
            bending: 2.3,
            compression_along: 2.1,
            compression_across: 1.67,
            shear: 2.3,
            tension_across: 2.3,
        },
    }
}

/// Fifth percentile over mean: `1 − 1.645 CoV`, and never below 0.
///
/// # Example
///
/// With a coefficient of variation of 20 % two thirds are left.
///
/// ```
/// use stringloft::engine::structure::wood::fifth_percentile_ratio;
///
/// assert!((fifth_percentile_ratio(0.2) - 0.671).abs() < 1e-12);
/// ```
pub const fn fifth_percentile_ratio(variation_ratio: f64) -> f64 {
    (1.0 - FIFTH_PERCENTILE * variation_ratio).max(0.0)
}

/// Modulus with which a column is checked for buckling: `1.03 E (1 − 1.645 CoV)/1.66`.
///
/// # Source
///
/// *National Design Specification for Wood Construction*, appendix D (from memory); the scatter of clear wood.
pub fn buckling_modulus(mean: Stress) -> Stress {
    Stress::from_pa(BUCKLING_OF_MEAN * mean.to_pa())
}

/// The modulus for buckling over the mean one.
const BUCKLING_OF_MEAN: f64 = 1.03 / 1.66 * fifth_percentile_ratio(SCATTER.modulus);

/// Shares of the strength that are left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GrainLeft {
    /// Of the strength in bending.
    pub bending_ratio: f64,
    /// Of the strength in compression along the part.
    pub compression_ratio: f64,
}

/// Slope of the grain, shares left in bending and in compression.
const GRAIN: [(f64, f64, f64); 6] = [
    (0.0, 1.0, 1.0),
    (1.0 / 25.0, 0.96, 1.0),
    (1.0 / 20.0, 0.93, 1.0),
    (1.0 / 15.0, 0.89, 1.0),
    (1.0 / 10.0, 0.81, 0.99),
    (1.0 / 5.0, 0.55, 0.93),
];

/// What slanting grain leaves of the strength, for a slope of 1 in so many given as their ratio; straight lines
/// between the rows of the table.
///
/// `None` for a slope below 0, or steeper than 1 in 5, where the table ends: a neck cut across its grain is
/// another matter.
///
/// # Source
///
/// *Wood Handbook*, table 5-12 (from memory).
///
/// # Example
///
/// ```
/// use stringloft::engine::structure::wood::grain_left;
///
/// let left = grain_left(1.0 / 10.0).expect("a row of the table");
/// assert!((left.bending_ratio - 0.81).abs() < 1e-12);
/// ```
pub fn grain_left(slope_ratio: f64) -> Option<GrainLeft> {
    let pair = GRAIN.windows(2).find(|pair| (pair[0].0..=pair[1].0).contains(&slope_ratio))?;
    let (low, high) = (pair[0], pair[1]);
    let share = (slope_ratio - low.0) / (high.0 - low.0);
    Some(GrainLeft {
        bending_ratio: low.1 + share * (high.1 - low.1),
        compression_ratio: low.2 + share * (high.2 - low.2),
    })
}

/// Strength at an angle to the grain by Hankinson: `P Q/(P sinⁿ φ + Q cosⁿ φ)`.
///
/// The power is 2 for compression, and 1.5 to 2 for tension and bending.
///
/// # Source
///
/// *Wood Handbook*, chapter 5 (from memory).
///
/// # Example
///
/// With both strengths alike the angle does not count if the power is 2.
///
/// ```
/// use stringloft::engine::{structure::wood::hankinson, units::Stress};
///
/// let ten = Stress::from_mpa(10.0);
/// assert!((hankinson(ten, ten, 0.7, 2.0).to_mpa() - 10.0).abs() < 1e-12);
/// ```
pub fn hankinson(along: Stress, across: Stress, angle_rad: f64, power: f64) -> Stress {
    let (p, q) = (along.to_pa(), across.to_pa());
    let (sine, cosine) = (angle_rad.sin().abs(), angle_rad.cos().abs());
    Stress::from_pa(p * q / (p * sine.powf(power) + q * cosine.powf(power)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn wood(key: &str) -> Wood {
        woods().into_iter().find(|wood| wood.key == key).unwrap()
    }

    #[test]
    fn every_wood_has_a_key_of_its_own() {
        let mut keys: Vec<_> = woods().iter().map(|wood| wood.key).collect();
        assert_eq!(keys, KEYS);
        keys.sort_unstable();
        assert!(keys.is_sorted_by(|one, next| one < next), "{keys:?}");
    }

    #[test]
    fn less_is_allowed_than_the_wood_bears() {
        for wood in woods() {
            let allowable = wood.allowable(LoadTime::Permanent);
            let pairs = [
                (&wood.bending, allowable.bending),
                (&wood.compression_along, allowable.compression_along),
                (&wood.compression_across, allowable.compression_across),
                (&wood.shear, allowable.shear),
                (&wood.tension_across, allowable.tension_across),
                (&wood.modulus, allowable.least_modulus),
            ];
            for (strength, allowed) in pairs {
                assert_eq!(strength.is_some(), allowed.is_some(), "{}", wood.key);
                let strength = strength.as_ref().map(|sourced| sourced.value);
                assert!(allowed.is_none() || allowed < strength, "{}", wood.key);
                assert!(allowed.is_none_or(|stress| stress.to_pa() > 0.0), "{}", wood.key);
            }
        }
    }

    /// Of softwood in bending for good: mean over allowed is `2.1/(0.9 (1 − 1.645 · 0.16))` = 3.17, and after ten years
    /// 62 % of it by the curve of Madison (worked out by hand from its formula: 18.3 + 108.4 · 0.4029).
    #[test]
    fn strengths_lie_above_what_is_allowed_and_sink_with_the_years() {
        let margins = wood("sitka-spruce").allowable(LoadTime::Permanent).margins;
        let bending = margins.bending.unwrap();
        assert_close(bending.mean.unwrap(), 2.1 / (0.9 * 0.7368), 1e-12, "mean");
        assert_close(bending.weak, 2.1 / 0.9, 1e-12, "weak");
        let after = bending.after(10.0 * super::super::duration::YEAR_S).unwrap();
        assert!((after.mean.unwrap() / bending.mean.unwrap() - 0.62).abs() < 0.005);
        for wood in woods() {
            let margins = wood.allowable(LoadTime::Permanent).margins;
            let all = [margins.bending, margins.shear, margins.tension_across, margins.buckling];
            for margin in all.into_iter().flatten() {
                assert!(margin.weak > 1.0, "{}: {margin:?}", wood.key);
                assert!(margin.mean.is_none_or(|mean| mean > margin.weak), "{}", wood.key);
            }
        }
    }

    #[test]
    fn what_is_not_tabulated_is_not_made_up() {
        assert_eq!(wood("paper-birch").tension_across, None);
        assert_eq!(wood("paper-birch").allowable(LoadTime::TenYears).tension_across, None);
        // That of another maple, and said so.
        let bound = wood("sugar-maple").tension_across.unwrap();
        assert!(bound.source.contains("silver maple, the lightest"), "{}", bound.source);
        assert_eq!(wood("white-oak").torsion_modulus(), None);
        assert_eq!(wood("european-spruce").allowable(LoadTime::TenYears).bending, None);
    }

    #[test]
    fn the_ends_of_hankinsons_formula_are_the_two_strengths() {
        let (p, q) = (Stress::from_mpa(54.0), Stress::from_mpa(10.1));
        for power in [1.5, 2.0] {
            assert_close(hankinson(p, q, 0.0, power).to_mpa(), 54.0, 1e-15, "along");
            let right = std::f64::consts::FRAC_PI_2;
            assert_close(hankinson(p, q, right, power).to_mpa(), 10.1, 1e-12, "across");
        }
    }

    #[test]
    fn slanting_grain_weakens_up_to_the_end_of_the_table() {
        let slopes: Vec<_> = (0..=20).map(|i| grain_left(f64::from(i) / 100.0).unwrap()).collect();
        assert!(slopes.is_sorted_by(|less, more| less.bending_ratio > more.bending_ratio));
        assert_eq!(slopes[0], GrainLeft { bending_ratio: 1.0, compression_ratio: 1.0 });
        for bad in [0.21, -0.01, f64::NAN] {
            assert_eq!(grain_left(bad), None);
            assert_eq!(wood("black-cherry").allowable(LoadTime::TenYears).at_slope(bad), None);
        }
    }
}
