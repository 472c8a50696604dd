//! Holes across a bar, as for pins: what they leave of its section.

use super::section::Rectangle;
use crate::engine::units::{Length, Stress};

/// Holes so many diameters before or after a cut count as in it: half of the least spacing of bolts along the grain.
///
/// Source: EN 1995-1-1, 5.2 and table 8.4 (from memory).
const REACH_DIAMETERS: f64 = 2.5;
/// What is left at least of a section or between two holes, so that every stress stays a number.
const LEAST_LEFT: f64 = 0.01;

/// A hole that goes into a bar square to the plane in which its depth lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hole {
    /// How far along the bar.
    pub along: Length,
    /// From the middle line, in the plane of the depth, to either side with its sign.
    pub off: Length,
    /// How wide.
    pub diameter: Length,
    /// How deep, over the breadth of the bar: 1 where it goes through.
    pub deep_ratio: f64,
    /// To the next hole of its row; `None` where it is alone.
    pub pitch: Option<Length>,
}

/// What a stress along the grain does at the rim of a round hole, over that stress.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rim {
    /// Along the grain, at the sides of the hole.
    pub along: f64,
    /// Across the grain, where the grain runs into the hole: pulled where the wood is pushed, and pushed where it is pulled.
    pub across: f64,
}

/// The rim of a hole that is small in a plate under a stress along its grain:
/// `1 + √(2 (√(E₁/E₂) − ν) + E₁/G)` and `√(E₂/E₁)`. `None` where a modulus is none.
///
/// # Source
///
/// S. G. Lekhnitskii, *Anisotropic Plates* (from memory); of a material without a grain, G. Kirsch's 3 and 1, of 1898.
///
/// # Example
///
/// ```
/// use stringloft::engine::structure::holes::rim;
/// use stringloft::engine::units::Stress;
///
/// let gpa = Stress::from_gpa;
/// let steel = rim((gpa(208.0), gpa(208.0)), gpa(80.0), 0.3).expect("moduli");
/// assert!((steel.along - 3.0).abs() < 1e-12 && (steel.across - 1.0).abs() < 1e-12);
/// ```
pub fn rim((along, across): (Stress, Stress), shear: Stress, poisson: f64) -> Option<Rim> {
    let (e1, e2, g) = (along.to_pa(), across.to_pa(), shear.to_pa());
    let gathers = 1.0 + (2.0 * ((e1 / e2).sqrt() - poisson) + e1 / g).sqrt();
    let is_one = e1 > 0.0 && e2 > 0.0 && g > 0.0 && gathers.is_finite();
    is_one.then(|| Rim { along: gathers, across: (e2 / e1).sqrt() })
}

/// How many times greater stresses are than in a plain bar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factors {
    /// Of bending in the plane of the depth.
    pub bending: f64,
    /// Of bending sideways.
    pub sideways: f64,
    /// Of a force along the bar.
    pub axial: f64,
    /// Of shear and twist.
    pub shear: f64,
    /// Of tension across the grain, which goes between the holes of a row.
    pub across: f64,
    /// How far the middle of what bears lies beside that of the bar, in the plane of the depth.
    pub shift: Length,
    /// The same across that plane.
    pub aside: Length,
}

impl Default for Factors {
    /// As in a plain bar.
    fn default() -> Self {
        let none = Length::from_m(0.0);
        Self {
            bending: 1.0,
            sideways: 1.0,
            axial: 1.0,
            shear: 1.0,
            across: 1.0,
            shift: none,
            aside: none,
        }
    }
}

impl Factors {
    /// Both causes together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        let sum = |one: Length, other: Length| Length::from_m(one.to_m() + other.to_m());
        Self {
            bending: self.bending * other.bending,
            sideways: self.sideways * other.sideways,
            axial: self.axial * other.axial,
            shear: self.shear * other.shear,
            across: self.across * other.across,
            shift: sum(self.shift, other.shift),
            aside: sum(self.aside, other.aside),
        }
    }
}

/// What the holes near a cut do to its stresses, by the section that is left.
///
/// In bending `W/W_net`, about the middle of what is left; along it and in shear `A/A_net`; sideways, where a hole counts
/// as through, by the depth that is left. Across the grain what goes through a row goes between its holes,
/// `p/(p − d)`, at the share `1 − (2 y/h)²` which that stress has so far from the middle. Stress that gathers at the rim of
/// a hole is left out, as timber rules leave it out, and told by itself ([`rim`]); so is what a pin that fills its hole helps.
///
/// # Source
///
/// Net sections as in EN 1995-1-1, 5.2 (from memory); geometry.
///
/// # Example
///
/// A hole of a tenth of the depth in the middle takes a tenth of the area and a thousandth of the stiffness.
///
/// ```
/// use stringloft::engine::structure::holes::{Hole, left};
/// use stringloft::engine::{structure::section::Rectangle, units::Length};
///
/// let mm = Length::from_mm;
/// let bar = Rectangle::new(mm(40.0), mm(100.0))?;
/// let hole = Hole { along: mm(0.0), off: mm(0.0), diameter: mm(10.0), deep_ratio: 1.0, pitch: None };
/// let stress = left(bar, &[hole], mm(5.0));
/// assert!((stress.axial - 1.0 / 0.9).abs() < 1e-12 && (stress.bending - 1.0 / 0.999).abs() < 1e-12);
/// # Ok::<(), stringloft::engine::structure::section::SectionError>(())
/// ```
pub fn left(section: Rectangle, holes: &[Hole], at: Length) -> Factors {
    let (b, h) = (section.breadth().to_m(), section.depth().to_m());
    let near = |hole: &&Hole| {
        let reach = REACH_DIAMETERS * hole.diameter.to_m();
        (hole.along.to_m() - at.to_m()).abs() <= reach
    };
    // From where to where each takes of the depth, and how much of the breadth.
    let mut strips: Vec<(f64, f64, f64)> = Vec::new();
    let mut across = 1.0_f64;
    for hole in holes.iter().filter(near) {
        let (off, d) = (hole.off.to_m(), hole.diameter.to_m());
        let deep = hole.deep_ratio.clamp(0.0, 1.0);
        let (low, high) = ((off - 0.5 * d).max(-0.5 * h), (off + 0.5 * d).min(0.5 * h));
        if high <= low || deep <= 0.0 {
            continue;
        }
        strips.push((low, high, deep));
        if let Some(pitch) = hole.pitch {
            let left = (1.0 - deep * d / pitch.to_m()).max(LEAST_LEFT);
            let share = 1.0 - (2.0 * off / h).powi(2);
            across = across.max(share / left);
        }
    }
    if strips.is_empty() {
        return Factors::default();
    }
    let (mut area, mut about, mut inertia, mut depth) = (b * h, 0.0, b * h.powi(3) / 12.0, h);
    for (low, high, deep) in flat(&strips) {
        let (wide, middle) = (high - low, 0.5 * (high + low));
        let taken = b * deep * wide;
        area -= taken;
        about -= taken * middle;
        inertia -= taken * (wide * wide / 12.0 + middle * middle);
        depth -= wide;
    }
    let area = area.max(LEAST_LEFT * b * h);
    let shift = about / area;
    let inertia = (inertia - area * shift * shift).max(LEAST_LEFT * b * h.powi(3) / 12.0);
    let edge = 0.5 * h + shift.abs();
    Factors {
        bending: section.modulus_m3() * edge / inertia,
        sideways: h / depth.max(LEAST_LEFT * h),
        axial: b * h / area,
        shear: b * h / area,
        across,
        shift: Length::from_m(shift),
        ..Factors::default()
    }
}

/// The strips side by side; where some lie over each other, the deepest counts.
fn flat(strips: &[(f64, f64, f64)]) -> Vec<(f64, f64, f64)> {
    let mut edges: Vec<f64> = strips.iter().flat_map(|(low, high, _)| [*low, *high]).collect();
    crate::engine::order::sort(&mut edges, |one, next| one > next);
    let between = |pair: &[f64]| {
        let (low, high) = (pair[0], pair[1]);
        let covers = |strip: &&(f64, f64, f64)| strip.0 <= low && high <= strip.1;
        let deep = strips.iter().filter(covers).map(|strip| strip.2).fold(0.0, f64::max);
        (deep > 0.0 && high > low).then_some((low, high, deep))
    };
    edges.windows(2).filter_map(between).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn mm(mm: f64) -> Length {
        Length::from_mm(mm)
    }

    fn hole(along: f64, off: f64, diameter: f64) -> Hole {
        Hole {
            along: mm(along),
            off: mm(off),
            diameter: mm(diameter),
            deep_ratio: 1.0,
            pitch: None,
        }
    }

    fn bar() -> Rectangle {
        Rectangle::new(mm(40.0), mm(80.0)).unwrap()
    }

    /// A hole at an edge leaves a smaller rectangle: 60 of 80 mm deep, bent about its own middle, 10 mm beside the old one.
    #[test]
    fn what_is_cut_from_an_edge_leaves_a_rectangle() {
        let stress = left(bar(), &[hole(0.0, 30.0, 20.0)], mm(0.0));
        assert_close(stress.axial, 80.0 / 60.0, 1e-12, "area");
        assert_close(stress.shift.to_mm(), -10.0, 1e-12, "middle");
        // The stress at the farther edge of the old bar is taken, which is no longer there: on the safe side.
        let exact = (80.0_f64 / 60.0).powi(2);
        assert_close(stress.bending, exact * 50.0 / 30.0, 1e-12, "bending");
    }

    /// Two alike, one on each side: `I` loses `2 b (d³/12 + d y²)`.
    #[test]
    fn two_rows_take_what_geometry_says() {
        let holes = [hole(0.0, 20.0, 6.0), hole(3.0, -20.0, 6.0)];
        let stress = left(bar(), &holes, mm(1.0));
        let whole = 80.0_f64.powi(3) / 12.0;
        let net = whole - 2.0 * (18.0 + 6.0 * 400.0);
        assert_close(stress.bending, whole / net, 1e-12, "bending");
        assert_close(stress.axial, 80.0 / 68.0, 1e-12, "along");
        assert_close(stress.sideways, 80.0 / 68.0, 1e-12, "sideways");
        assert!(stress.shift.to_mm().abs() < 1e-12);
    }

    #[test]
    fn holes_in_one_line_count_once_and_those_far_away_not_at_all() {
        let one = left(bar(), &[hole(0.0, 10.0, 6.0)], mm(0.0));
        let row = [hole(-12.0, 10.0, 6.0), hole(0.0, 10.0, 6.0), hole(12.0, 10.0, 6.0)];
        let stress = left(bar(), &row, mm(0.0));
        assert_close(stress.axial, one.axial, 1e-12, "area");
        assert_close(stress.bending, one.bending, 1e-12, "bending");
        assert_eq!(left(bar(), &row, mm(12.0 + 15.1)), Factors::default());
    }

    /// Half as deep takes half as much of the area; a row takes between its holes what is missing.
    #[test]
    fn depth_and_pitch_count() {
        let half = Hole { deep_ratio: 0.5, ..hole(0.0, 0.0, 8.0) };
        assert_close(left(bar(), &[half], mm(0.0)).axial, 80.0 / 76.0, 1e-12, "half");
        let row = Hole { pitch: Some(mm(16.0)), ..hole(0.0, 0.0, 8.0) };
        assert_close(left(bar(), &[row], mm(0.0)).across, 2.0, 1e-12, "between");
        let aside = Hole { off: mm(20.0), ..row };
        assert_close(left(bar(), &[aside], mm(0.0)).across, 1.5, 1e-12, "beside the middle");
    }

    #[test]
    fn a_neck_that_is_all_holes_has_a_number() {
        let all = [Hole { pitch: Some(mm(5.0)), ..hole(0.0, 0.0, 500.0) }];
        let stress = left(bar(), &all, mm(0.0));
        for number in [stress.bending, stress.sideways, stress.axial, stress.shear, stress.across] {
            assert!(number.is_finite() && number >= 1.0, "{stress:?}");
        }
    }
}
