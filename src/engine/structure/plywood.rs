//! Plywood, ply by ply: stiffness and strength flatwise, both ways, and on edge, as a neck is loaded.

use thiserror::Error;

use super::duration::{Timber, material_divisor, permanent_ratio};
use super::sourced;
use super::wood::{Allowable, Margins};
use crate::engine::material::{Sourced, Standing};
use crate::engine::units::{Density, Length, Stress};
use crate::words::structure as say;

const HANDBOOK: &str = super::cited::PLYWOOD;

/// The most plies that a panel may have.
pub const MOST_PLIES: usize = 200;

/// Why a panel cannot be made.
#[derive(Clone, Copy, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum PanelError {
    /// Too few or too many plies.
    #[error("{}", say::panel_plies(.got, &MOST_PLIES))]
    Plies {
        /// What was given.
        got: usize,
    },
    /// A cross-bonded panel that is not symmetric.
    #[error("{}", say::panel_even(.got))]
    Even {
        /// What was given.
        got: usize,
    },
    /// A ply without thickness, or with a figure that is no number.
    #[error("{}", say::panel_ply(.number))]
    Ply {
        /// Which, from 1.
        number: usize,
    },
    /// Nothing in the panel has stiffness.
    #[error("{}", say::PANEL_LIMP)]
    Limp,
}

/// Which way the grain of a ply runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Way {
    /// Along the grain of the faces.
    Along,
    /// Across it.
    Across,
}

/// One layer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ply {
    /// Its thickness.
    pub thickness: Length,
    /// Which way its grain runs.
    pub way: Way,
    /// Modulus along its grain.
    pub modulus: Stress,
    /// Modulus across its grain; handbooks take none.
    pub modulus_across: Stress,
    /// Strength in bending along its grain.
    pub bending: Stress,
    /// Strength in tension along its grain.
    pub tension: Stress,
    /// Strength in compression along its grain.
    pub compression: Stress,
}

/// Stiffness and strength of the whole panel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PanelFigures {
    /// Modulus as if the panel were of one piece.
    pub modulus: Stress,
    /// Strength in bending as if the panel were of one piece.
    pub bending: Stress,
}

/// Figures in the plane of the panel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EdgeFigures {
    /// Share of the thickness whose grain runs this way.
    pub share_ratio: f64,
    /// Modulus, in bending on edge as in tension.
    pub modulus: Stress,
    /// Strength in bending on edge, by the strength of the plies in bending.
    pub bending: Stress,
    /// Strength in tension.
    pub tension: Stress,
    /// Strength in compression.
    pub compression: Stress,
}

/// A panel.
#[derive(Clone, Debug, PartialEq)]
pub struct Panel {
    plies: Vec<Ply>,
    /// Mean mass over volume, where it is known.
    pub density: Option<Sourced<Density>>,
    /// Strength in shear through the thickness, where it is known.
    pub shear: Option<Sourced<Stress>>,
    /// Modulus of that shear, where it is known.
    pub shear_modulus: Option<Sourced<Stress>>,
}

/// Thickness of an inner ply of birch plywood, in mm.
const INNER_MM: f64 = 1.4;
/// Thickness of a sanded face, in mm.
const FACE_MM: f64 = 1.1;

impl Ply {
    /// A ply of birch, with the figures from which the handbook's tables follow: 17 500 MPa and 70 MPa along
    /// the grain, nothing across it; 75 MPa in tension and 52 MPa in compression.
    ///
    /// Source: *Handbook of Finnish Plywood* (from memory; modulus and strength in bending worked back from
    /// its table).
    pub const fn birch(thickness: Length, way: Way) -> Self {
        Self {
            thickness,
            way,
            modulus: Stress::from_mpa(17_500.0),
            modulus_across: Stress::from_mpa(0.0),
            bending: Stress::from_mpa(70.0),
            tension: Stress::from_mpa(75.0),
            compression: Stress::from_mpa(52.0),
        }
    }

    /// Modulus in pascals for a load that runs `way`.
    const fn towards(&self, way: Way) -> f64 {
        match (self.way, way) {
            (Way::Along, Way::Along) | (Way::Across, Way::Across) => self.modulus.to_pa(),
            _ => self.modulus_across.to_pa(),
        }
    }

    /// The strain at which it breaks, if its grain runs that way; a ply across is not asked, as it carries
    /// almost nothing.
    fn breaks_at(&self, way: Way, strength: Stress) -> Option<f64> {
        (self.way == way && self.modulus.to_pa() > 0.0)
            .then(|| strength.to_pa() / self.modulus.to_pa())
    }

    fn is_usable(&self) -> bool {
        let figures =
            [self.modulus, self.modulus_across, self.bending, self.tension, self.compression];
        let thick = self.thickness.to_m();
        thick > 0.0
            && thick.is_finite()
            && figures.iter().all(|stress| stress.to_pa() >= 0.0 && stress.to_pa().is_finite())
    }
}

impl Panel {
    /// A panel of any plies, in their order from one face to the other. Density and shear are not known.
    ///
    /// # Errors
    ///
    /// When there are no plies, too many, or one that has no thickness.
    pub fn new(plies: Vec<Ply>) -> Result<Self, PanelError> {
        if plies.is_empty() || plies.len() > MOST_PLIES {
            return Err(PanelError::Plies { got: plies.len() });
        }
        if let Some(at) = plies.iter().position(|ply| !ply.is_usable()) {
            return Err(PanelError::Ply { number: at + 1 });
        }
        if plies.iter().all(|ply| ply.modulus.to_pa() <= 0.0) {
            return Err(PanelError::Limp);
        }
        Ok(Self { plies, density: None, shear: None, shear_modulus: None })
    }

    /// Cross-bonded birch plywood: inner plies of 1.4 mm, sanded faces of 1.1 mm, so `h = 1.4 n − 0.6` mm.
    ///
    /// Strengths are fifth percentiles, moduli means.
    ///
    /// # Errors
    ///
    /// When the number of plies is even or below 3, or above [`MOST_PLIES`].
    ///
    /// # Source
    ///
    /// *Handbook of Finnish Plywood*, 2002 (from memory).
    ///
    /// # Example
    ///
    /// ```
    /// use stringloft::engine::structure::plywood::Panel;
    ///
    /// let panel = Panel::birch(9)?;
    /// assert!((panel.thickness().to_mm() - 12.0).abs() < 1e-9);
    /// # Ok::<(), stringloft::engine::structure::plywood::PanelError>(())
    /// ```
    pub fn birch(plies: usize) -> Result<Self, PanelError> {
        check_birch(plies)?;
        let ply = |at: usize| {
            let thick = if at == 0 || at + 1 == plies { FACE_MM } else { INNER_MM };
            let way = if at.is_multiple_of(2) { Way::Along } else { Way::Across };
            Ply::birch(Length::from_mm(thick), way)
        };
        let mut panel = Self::new((0..plies).map(ply).collect())?;
        let (density, memory) = (Density::from_kg_per_m3(680.0), Standing::FromMemory);
        panel.density = Some(sourced(density, HANDBOOK, memory));
        panel.shear = Some(sourced(Stress::from_mpa(9.5), HANDBOOK, memory));
        panel.shear_modulus = Some(sourced(Stress::from_mpa(620.0), HANDBOOK, memory));
        Ok(panel)
    }

    /// Its plies.
    pub fn plies(&self) -> &[Ply] {
        &self.plies
    }

    /// Its thickness.
    pub fn thickness(&self) -> Length {
        Length::from_m(self.plies.iter().map(|ply| ply.thickness.to_m()).sum())
    }

    /// Bent flatwise, with the span running `way`: `E_m = 12 Σ E (t³/12 + t z²)/h³` about the axis of the
    /// stiffness, and the moment at which the first ply that runs so breaks, over `h²/6`.
    ///
    /// Both are 0 where no ply runs that way and the plies have no modulus across.
    ///
    /// # Source
    ///
    /// Beam theory of layers; it gives the tables of the *Handbook of Finnish Plywood*.
    pub fn flatwise(&self, way: Way) -> PanelFigures {
        let h = self.thickness().to_m();
        let layers: Vec<(f64, f64, &Ply)> = self
            .plies
            .iter()
            .scan(0.0, |from, ply| {
                let low = *from;
                *from += ply.thickness.to_m();
                Some((low, *from, ply))
            })
            .collect();
        let sum = |of: &dyn Fn(f64, f64) -> f64| -> f64 {
            layers.iter().map(|(low, high, ply)| ply.towards(way) * of(*low, *high)).sum()
        };
        let stretch = sum(&|low, high| high - low);
        let none = Stress::from_pa(0.0);
        if stretch <= 0.0 {
            return PanelFigures { modulus: none, bending: none };
        }
        let axis = sum(&|low, high| 0.5 * (high - low) * (high + low)) / stretch;
        let rigidity = sum(&|low, high| {
            let (thick, arm) = (high - low, 0.5 * (high + low) - axis);
            thick.powi(3) / 12.0 + thick * arm * arm
        });
        let curvature = layers
            .iter()
            .filter_map(|(low, high, ply)| {
                let farthest = (low - axis).abs().max((high - axis).abs());
                Some(ply.breaks_at(way, ply.bending)? / farthest)
            })
            .min_by(f64::total_cmp);
        let moment = rigidity * curvature.unwrap_or(0.0);
        PanelFigures {
            modulus: Stress::from_pa(12.0 * rigidity / h.powi(3)),
            bending: Stress::from_pa(6.0 * moment / (h * h)),
        }
    }

    /// Loaded in its plane, with the span running `way`, as the neck of a harp: the plies that run so carry.
    ///
    /// `E = Σ E t/h`, and each strength is that at which the first of them breaks.
    ///
    /// # Example
    ///
    /// In 12 mm of nine plies 6.4 mm run along the faces: 53.3 % of 17 500 MPa.
    ///
    /// ```
    /// use stringloft::engine::structure::plywood::{Panel, Way};
    ///
    /// let edge = Panel::birch(9)?.edgewise(Way::Along);
    /// assert!((edge.modulus.to_mpa() - 17_500.0 * 6.4 / 12.0).abs() < 1e-6);
    /// # Ok::<(), stringloft::engine::structure::plywood::PanelError>(())
    /// ```
    pub fn edgewise(&self, way: Way) -> EdgeFigures {
        let h = self.thickness().to_m();
        let sum = |of: &dyn Fn(&Ply) -> f64| -> f64 {
            self.plies.iter().map(|ply| ply.thickness.to_m() * of(ply)).sum()
        };
        let modulus = sum(&|ply| ply.towards(way)) / h;
        let breaks = |strength: &dyn Fn(&Ply) -> Stress| {
            let strains = self.plies.iter().filter_map(|ply| ply.breaks_at(way, strength(ply)));
            Stress::from_pa(modulus * strains.min_by(f64::total_cmp).unwrap_or(0.0))
        };
        EdgeFigures {
            share_ratio: sum(&|ply| f64::from(ply.way == way)) / h,
            modulus: Stress::from_pa(modulus),
            bending: breaks(&|ply| ply.bending),
            tension: breaks(&|ply| ply.tension),
            compression: breaks(&|ply| ply.compression),
        }
    }

    /// Stresses that may be allowed for good in the plane of the panel, in a dry room: `k_mod f/γ_M`.
    ///
    /// In bending on edge the least of the strengths in bending, tension and compression counts, which is the
    /// careful choice of this program. Across, the plies that run that way carry. The modulus for buckling is the mean over
    /// `γ_M`.
    ///
    /// # Source
    ///
    /// EN 1995-1-1 (from memory).
    pub fn allowable_edgewise(&self, way: Way) -> Allowable {
        let divisor = material_divisor(Timber::Plywood).value;
        let factor = permanent_ratio().value / divisor;
        let times = |stress: Stress| Stress::from_pa(factor * stress.to_pa());
        let edge = self.edgewise(way);
        let across = self.edgewise(match way {
            Way::Along => Way::Across,
            Way::Across => Way::Along,
        });
        let least = [edge.tension, edge.compression]
            .into_iter()
            .fold(edge.bending, |least, stress| if stress < least { stress } else { least });
        Allowable {
            bending: Some(times(least)),
            compression_along: Some(times(edge.compression)),
            compression_across: Some(times(across.compression)),
            shear: self.shear.as_ref().map(|sourced| times(sourced.value)),
            tension_across: Some(times(across.tension)),
            modulus: Some(edge.modulus),
            least_modulus: Some(Stress::from_pa(edge.modulus.to_pa() / divisor)),
            margins: Margins::of_characteristic(factor),
        }
    }
}

/// Whether birch plywood can have so many plies.
///
/// # Errors
///
/// As those of [`Panel::birch`].
pub const fn check_birch(plies: usize) -> Result<(), PanelError> {
    if plies > MOST_PLIES {
        return Err(PanelError::Plies { got: plies });
    }
    if plies < 3 || plies.is_multiple_of(2) {
        return Err(PanelError::Even { got: plies });
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn birch(mm: f64, way: Way) -> Ply {
        Ply::birch(Length::from_mm(mm), way)
    }

    #[test]
    fn plies_that_all_run_along_are_solid_wood() {
        let panel = Panel::new(vec![birch(1.4, Way::Along); 7]).unwrap();
        let (flat, edge) = (panel.flatwise(Way::Along), panel.edgewise(Way::Along));
        assert_close(flat.modulus.to_mpa(), 17_500.0, 1e-12, "flat");
        assert_close(flat.bending.to_mpa(), 70.0, 1e-12, "strength");
        assert_close(edge.modulus.to_mpa(), 17_500.0, 1e-12, "edge");
        assert_close(edge.share_ratio, 1.0, 1e-12, "share");
        let across = panel.flatwise(Way::Across);
        assert_eq!((across.modulus.to_pa(), across.bending.to_pa()), (0.0, 0.0));
        assert_eq!(panel.edgewise(Way::Across).bending.to_pa(), 0.0);
    }

    #[test]
    fn both_ways_together_are_as_stiff_as_solid_wood() {
        for plies in (3..=35).step_by(2) {
            let panel = Panel::birch(plies).unwrap();
            let both =
                |of: &dyn Fn(Way) -> Stress| of(Way::Along).to_mpa() + of(Way::Across).to_mpa();
            assert_close(both(&|way| panel.flatwise(way).modulus), 17_500.0, 1e-12, plies);
            assert_close(both(&|way| panel.edgewise(way).modulus), 17_500.0, 1e-12, plies);
        }
    }

    #[test]
    fn a_panel_bends_the_same_from_either_face() {
        let mut plies =
            vec![birch(1.1, Way::Along), birch(2.0, Way::Across), birch(0.6, Way::Along)];
        plies.push(birch(1.4, Way::Across));
        let panel = Panel::new(plies.clone()).unwrap();
        plies.reverse();
        let turned = Panel::new(plies).unwrap();
        for way in [Way::Along, Way::Across] {
            let (one, other) = (panel.flatwise(way), turned.flatwise(way));
            assert_close(one.modulus.to_pa(), other.modulus.to_pa(), 1e-12, "modulus");
            assert_close(one.bending.to_pa(), other.bending.to_pa(), 1e-12, "strength");
        }
    }

    #[test]
    fn panels_that_cannot_be_made_are_refused_in_words() {
        assert_eq!(Panel::birch(4), Err(PanelError::Even { got: 4 }));
        assert_eq!(Panel::birch(1), Err(PanelError::Even { got: 1 }));
        assert_eq!(Panel::birch(usize::MAX), Err(PanelError::Plies { got: usize::MAX }));
        assert_eq!(Panel::new(vec![]), Err(PanelError::Plies { got: 0 }));
        let bad = Panel::new(vec![birch(1.4, Way::Along), birch(f64::NAN, Way::Across)]);
        assert_eq!(bad, Err(PanelError::Ply { number: 2 }));
        let limp = Ply { modulus: Stress::from_pa(0.0), ..birch(1.0, Way::Along) };
        assert_eq!(Panel::new(vec![limp]), Err(PanelError::Limp));
    }
}
