//! Dowels, bolts and screws of a joint, after the European standard for timber. Its figures are from memory, to be
//! verified before anything is built on them alone.

use super::JointWood;
use crate::engine::structure::duration::{Timber, material_divisor, permanent_ratio};
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::verdict::{Aspect, Carrier, Use};
use crate::engine::structure::wood::{Margin, SCATTER, fifth_percentile_ratio};
use crate::engine::units::{Length, Stress};

/// What goes through a joint.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fastener {
    /// Of the wood of the joint, glued in.
    Dowels,
    /// Of steel, with nuts on washers three times as wide.
    Bolts,
    /// Of steel, whose thread holds all along their depth.
    Screws,
}

impl Fastener {
    /// What it is called among all that may carry a joint.
    pub const fn carrier(self) -> Carrier {
        match self {
            Self::Dowels => Carrier::Dowels,
            Self::Bolts => Carrier::Bolts,
            Self::Screws => Carrier::Screws,
        }
    }
}

/// Fasteners of a kind in one row in the plane of the strings, or in two.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fasteners {
    /// What they are.
    pub kind: Fastener,
    /// How many.
    pub count: usize,
    /// How thick.
    pub diameter: Length,
    /// How deep in each part.
    pub depth: Length,
    /// From one to the next along a row.
    pub apart: Length,
    /// From row to row; 0 for one row.
    pub across: Length,
}

/// Strength of the steel of bolts and screws in tension, in MPa: that of class 4.8. Source: ISO 898-1 (from memory).
const STEEL_MPA: f64 = 400.0;
/// Divisor of steel that is pulled, and how much of its area is left in the thread. Source: EN 1993-1-8 (from memory);
/// with the load's own factor of 1.35.
const STEEL_DIVISOR: f64 = STEEL_SAFETY / 0.9;
const STEEL_SAFETY: f64 = 1.25 * 1.35;
const THREAD: f64 = 0.7;
/// What is left in end grain of a push across a fastener. Source: *National Design Specification*, end grain factor (from
/// memory).
const END_GRAIN_ACROSS: f64 = 0.67;
/// And of a pull along a screw. Source: U. Hübner, Withdrawal strength of self-tapping screws in hardwoods, abstract.
const END_GRAIN_ALONG: f64 = 0.7;
/// Tension along the grain over bending. Source: EN 384 (from memory).
const TENSION_OF_BENDING: f64 = 0.6;
/// Washers, over the bolt.
const WASHER: f64 = 3.0;

/// What of a characteristic strength counts under a load that stays.
fn lasting() -> f64 {
    permanent_ratio().value / material_divisor(Timber::Solid).value
}

/// How far the weakest of twenty lie above what is allowed: of what is held by wood, and of the steel of bolts and screws,
/// which does not tire under a load that rests.
pub(super) fn margins() -> (Margin, Margin) {
    let weak = |weak: f64| Margin { mean: None, weak };
    (weak(1.0 / lasting()), weak(STEEL_SAFETY))
}

impl Fasteners {
    fn rows(&self) -> usize {
        if self.across.to_m() > 0.0 && self.count > 1 { 2 } else { 1 }
    }

    /// Places across the harp and in the plane of the strings, from the middle. An odd one of two rows is left out.
    fn places(&self) -> impl Iterator<Item = (f64, f64)> {
        let (rows, apart, across) = (self.rows(), self.apart.to_m(), self.across.to_m());
        let each = self.count / rows;
        let middle = 0.5 * (each as f64 - 1.0);
        let z = 0.5 * (rows as f64 - 1.0) * across;
        (0..rows * each)
            .map(move |at| (if at < each { -z } else { z }, ((at % each) as f64 - middle) * apart))
    }

    fn area_mm2(&self) -> f64 {
        0.25 * std::f64::consts::PI * self.diameter.to_mm().powi(2)
    }

    /// A force on the one that bears most against what it bears, as stress on its section.
    pub(super) fn used(&self, aspect: Aspect, force_n: f64, bears_n: f64) -> Use {
        let over = |n: f64| Stress::from_mpa(n / self.area_mm2());
        Use {
            aspect,
            stress: over(force_n),
            limit: Some(over(bears_n)),
            ratio: Some(force_n / bears_n).filter(|ratio| !ratio.is_nan()),
        }
    }

    /// `Σ z²` and `Σ y²` about the lines of pressing, which lie so far from the middle.
    pub(super) fn squares(&self, about: (f64, f64)) -> (f64, f64) {
        let (mut z2, mut y2) = (0.0, 0.0);
        for (z, y) in self.places() {
            z2 += (z + about.0).max(0.0).powi(2);
            y2 += (y + about.1).max(0.0).powi(2);
        }
        (z2, y2)
    }

    /// `Σ r²` about the middle.
    pub(super) fn polar(&self) -> f64 {
        self.places().map(|(z, y)| z * z + y * y).sum()
    }

    /// The greatest pull on one in N, when a pull is shared evenly and moments, sideways and in the plane, turn the faces
    /// about lines on which they press.
    pub(super) fn pulled(&self, pull: f64, moments: (f64, f64), about: (f64, f64)) -> f64 {
        let (z2, y2) = self.squares(about);
        let share = |moment: f64, arm: f64, squares: f64| {
            if moment > 0.0 { moment * arm.max(0.0) / squares } else { 0.0 }
        };
        let one = |(z, y): (f64, f64)| {
            share(moments.0, z + about.0, z2) + share(moments.1, y + about.1, y2)
        };
        let even = if self.count > 0 { pull / self.count as f64 } else { f64::INFINITY };
        even + self.places().map(one).fold(0.0, f64::max)
    }

    /// The greatest push across one in N, of forces across the harp and in its plane and of a twist. `None` where a single
    /// one cannot bear a twist.
    pub(super) fn pushed(&self, (aside, down): (f64, f64), torque: f64) -> Option<f64> {
        let (count, polar) = (self.places().count() as f64, self.polar());
        if count == 0.0 || (polar == 0.0 && torque > 0.0) {
            return None;
        }
        let twist = if torque > 0.0 { torque / polar } else { 0.0 };
        let one = |(z, y): (f64, f64)| {
            (aside / count + twist * y.abs()).hypot(down / count + twist * z.abs())
        };
        Some(self.places().map(one).fold(0.0, f64::max))
    }

    /// The greatest force on one of a row along the part, beside a plate: along it, across it, and with a moment.
    pub(super) fn in_a_row(&self, along: f64, across: f64, moment: f64) -> Option<f64> {
        let squares = self.row_squares();
        if self.count == 0 || (squares == 0.0 && moment > 0.0) {
            return None;
        }
        let farthest = 0.5 * (self.count as f64 - 1.0) * self.apart.to_m();
        let turn = if moment > 0.0 { moment * farthest / squares } else { 0.0 };
        Some((along / self.count as f64).hypot(across / self.count as f64 + turn))
    }

    /// `Σ x²` of a row about its middle.
    pub(super) fn row_squares(&self) -> f64 {
        let n = self.count as f64;
        self.apart.to_m().powi(2) * n * (n * n - 1.0) / 12.0
    }

    /// From the joint to the middle of a row beside it.
    pub(super) fn reach(&self) -> f64 {
        0.5 * (self.count as f64 + 1.0) * self.apart.to_m()
    }

    /// What one bears along its axis for good, in N; `None` where the wood is not known.
    ///
    /// Dowels by their glue line, as rolling shear of the wood about them, and by their own tension; bolts by their steel
    /// and by the wood under washers, which may be pressed three times as hard; screws `f_ax d l` with
    /// `f_ax = 0.52 ρ^0.8/(d^0.5 l^0.1)`.
    ///
    /// # Source
    ///
    /// EN 1995-1-1, 8.5.2 and 8.7.2 (second-hand, in a book on timber design and a public notebook); dowels are worked
    /// out.
    pub fn withdrawal(&self, wood: &JointWood) -> Option<f64> {
        let (d, l, area) = (self.diameter.to_mm(), self.depth.to_mm(), self.area_mm2());
        let allowable = &wood.allowable;
        let steel = THREAD * area * STEEL_MPA / STEEL_DIVISOR;
        Some(match self.kind {
            Fastener::Dowels => {
                let glue = std::f64::consts::PI * d * l * wood.rolling?.to_mpa();
                glue.min(TENSION_OF_BENDING * allowable.bending?.to_mpa() * area)
            }
            Fastener::Bolts => {
                let washer = (WASHER * WASHER - 1.0) * area;
                steel.min(3.0 * allowable.compression_across?.to_mpa() * washer)
            }
            Fastener::Screws => {
                let density = characteristic_density(wood)?;
                let per_area = 0.52 * density.powf(0.8) / (d.sqrt() * l.powf(0.1));
                let together = (self.count as f64).powf(-0.1);
                let one = per_area * d * l * (d / 8.0).min(1.0) * together;
                steel.min(lasting() * END_GRAIN_ALONG * one)
            }
        })
    }

    /// What one bears across its axis for good, in N, with as much depth in both parts: the least of Johansen's six ways,
    /// with the part that ends there pressed along the axis of the grain. Dowels also by their own shear.
    ///
    /// # Source
    ///
    /// EN 1995-1-1, 8.2.2, without the rope's share (from memory).
    pub fn lateral(&self, wood: &JointWood) -> Option<f64> {
        let (d, t) = (self.diameter.to_mm(), self.depth.to_mm());
        let side = embedding(wood, d)?;
        let end = END_GRAIN_ACROSS * side;
        let least = johansen(end, side / end, (t, d), self.yields(wood)?);
        let lasting = lasting() * least;
        Some(match self.kind {
            Fastener::Dowels => lasting.min(self.area_mm2() * wood.allowable.shear?.to_mpa()),
            Fastener::Bolts | Fastener::Screws => lasting,
        })
    }

    /// The same beside a thin plate: `min(0.4 f_h t d, 1.15 √(2 M_y f_h d))`.
    ///
    /// # Source
    ///
    /// EN 1995-1-1, 8.2.3 (from memory).
    pub fn beside_plate(&self, wood: &JointWood) -> Option<f64> {
        let (d, t) = (self.diameter.to_mm(), self.depth.to_mm());
        let pressed = embedding(wood, d)?;
        let bends = 1.15 * (2.0 * self.yields(wood)? * pressed * d).sqrt();
        Some(lasting() * (0.4 * pressed * t * d).min(bends))
    }

    /// The moment at which one yields, in N·mm.
    fn yields(&self, wood: &JointWood) -> Option<f64> {
        let d = self.diameter.to_mm();
        Some(match self.kind {
            Fastener::Dowels => {
                let weak = wood.allowable.margins.bending.map_or(1.0, |margin| margin.weak);
                weak * wood.allowable.bending?.to_mpa() * std::f64::consts::PI * d.powi(3) / 32.0
            }
            Fastener::Bolts | Fastener::Screws => 0.3 * STEEL_MPA * d.powf(2.6),
        })
    }

    /// Splitting of the part that ends there, which is pressed across its grain: `14 b √(h_e/(1 − h_e/h))`, with the
    /// farthest of them `h_e` from the edge that is loaded. The formula is for conifers; other woods bear more.
    ///
    /// # Source
    ///
    /// EN 1995-1-1, 8.1.4 (from memory).
    pub(super) fn splitting(&self, (down, aside): (f64, f64), section: Rectangle) -> Option<Use> {
        let (b, h) = (section.breadth().to_mm(), section.depth().to_mm());
        let each = self.count / self.rows();
        let spread = (each as f64 - 1.0) * self.apart.to_mm();
        let ways = [(down, b, h, spread), (aside, h, b, self.across.to_mm())];
        let mut worst: Option<Use> = None;
        for (force, b, h, spread) in ways {
            let from_edge = 0.5 * (h + spread);
            if from_edge >= h {
                continue;
            }
            let bears = lasting() * 14.0 * b * (from_edge / (1.0 - from_edge / h)).sqrt();
            let over = |n: f64| Some(Stress::from_mpa(1.5 * n / (b * from_edge)));
            let ratio = Some(force / bears);
            let next =
                Use { aspect: Aspect::Splitting, stress: over(force)?, limit: over(bears), ratio };
            if worst.is_none_or(|worst| next.ratio > worst.ratio) {
                worst = Some(next);
            }
        }
        worst
    }

    /// How stiff one is across its axis, in N/m: `ρ^1.5 d/23` in N/mm.
    pub(super) fn slip(&self, wood: &JointWood) -> Option<f64> {
        Some(1e3 * wood.density?.to_kg_per_m3().powf(1.5) * self.diameter.to_mm() / 23.0)
    }

    /// And along it, in N/m: `25 d l` in N/mm, for bolts half of what their steel gives.
    pub(super) fn axial_slip(&self) -> f64 {
        let (d, l) = (self.diameter.to_mm(), self.depth.to_mm());
        match self.kind {
            Fastener::Dowels | Fastener::Screws => 1e3 * 25.0 * d * l,
            Fastener::Bolts => 1e3 * 0.5 * 210_000.0 * self.area_mm2() / (2.0 * l),
        }
    }
}

/// Density that 95 of 100 pieces pass, in kg/m³.
fn characteristic_density(wood: &JointWood) -> Option<f64> {
    Some(wood.density?.to_kg_per_m3() * fifth_percentile_ratio(SCATTER.density))
}

/// What wood bears under a fastener that presses across its grain, in MPa:
/// `0.082 (1 − 0.01 d) ρ/k₉₀`. Source: EN 1995-1-1, 8.5.1 (from memory).
fn embedding(wood: &JointWood, d: f64) -> Option<f64> {
    let across = if wood.is_softwood { 1.35 } else { 0.90 } + 0.015 * d;
    Some(0.082 * (1.0 - 0.01 * d) * characteristic_density(wood)? / across)
}

/// The least of the six ways in which a fastener between two parts of the same depth gives, in N, without the rope's
/// share: both parts pressed, one of them, the fastener turned, bent once in either part, and bent in both.
pub(super) fn johansen(pressed: f64, ratio: f64, (t, d): (f64, f64), yields: f64) -> f64 {
    let b = ratio;
    let whole = pressed * t * d;
    let bend = 4.0 * b * (2.0 + b) * yields / (pressed * d * t * t);
    let turned = (b + 2.0 * b * b * 3.0 + b * b * b).sqrt() - 2.0 * b;
    let once = (2.0 * b * (1.0 + b) + bend).sqrt() - b;
    let other = (2.0 * b * b * (1.0 + b)
        + 4.0 * b * (1.0 + 2.0 * b) * yields / (pressed * d * t * t))
        .sqrt()
        - b;
    let both = 1.15 * (2.0 * b / (1.0 + b)).sqrt() * (2.0 * yields * pressed * d).sqrt();
    let ways = [
        whole,
        b * whole,
        whole / (1.0 + b) * turned,
        1.05 * whole / (2.0 + b) * once,
        1.05 * whole / (1.0 + 2.0 * b) * other,
        both,
    ];
    ways.into_iter().fold(f64::INFINITY, f64::min)
}
