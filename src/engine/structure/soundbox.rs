//! A soundbox as a tube of thin walls: board, two sides and a back, with liners in the corners. How stiff it is, and how far
//! its walls are loaded.

#[cfg(test)]
mod tests;

use std::f64::consts::PI;

use super::space::{Cut, Stiffness};
use super::verdict::{Aspect, Use, Verdict, bent, simple};
use super::wood::Allowable;
use crate::engine::units::{Length, Stress};

/// What a wall is made of, along the soundbox.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Wall {
    /// What it may bear for good; for the board, across its grain.
    pub allowable: Allowable,
    /// Modulus along the soundbox.
    pub along: Stress,
    /// Modulus across the wall.
    pub across: Stress,
    /// Shear modulus in its plane.
    pub shear: Stress,
}

/// Sound holes in the back, in a row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Holes {
    /// From the middle of one to that of the next.
    pub pitch: Length,
    /// Along the back.
    pub length: Length,
    /// Across it.
    pub width: Length,
}

/// How the back is open.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Back {
    /// Closed.
    Closed,
    /// With holes, between which it holds as a ladder.
    Holes(Holes),
    /// Open all along, so wide.
    Slotted(Length),
}

/// The section of a soundbox at a place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// Width of board and back.
    pub width: Length,
    /// From board to back.
    pub depth: Length,
    /// The board, whose grain runs across.
    pub board: (Length, Wall),
    /// Each side.
    pub side: (Length, Wall),
    /// The back.
    pub back: (Length, Wall),
    /// Width and height of each of four liners, of the wood of the sides.
    pub liner: (Length, Length),
    /// How the back is open.
    pub opening: Back,
    /// From brace to brace.
    pub braces: Option<Length>,
}

/// Sums over the walls.
#[derive(Clone, Copy)]
struct Sums {
    axial: f64,
    /// From the board to the common axis.
    axis: f64,
    plane: f64,
    side: f64,
}

impl Section {
    fn sides(&self) -> (f64, f64) {
        (self.width.to_m(), self.depth.to_m())
    }

    /// Of the back beside holes or a slot, how much is left.
    fn net_back(&self) -> f64 {
        let open = match self.opening {
            Back::Closed => 0.0,
            Back::Holes(holes) => holes.width.to_m(),
            Back::Slotted(width) => width.to_m(),
        };
        (self.width.to_m() - open).max(0.0)
    }

    fn sums(&self) -> Sums {
        let (b, h) = self.sides();
        let (board, side, back) = (self.board.0.to_m(), self.side.0.to_m(), self.back.0.to_m());
        let (lw, lh) = (self.liner.0.to_m(), self.liner.1.to_m());
        let (of_board, of_side, of_back) =
            (self.board.1.along.to_pa(), self.side.1.along.to_pa(), self.back.1.along.to_pa());
        let net = self.net_back();
        // Stiffness, place from the board, own thickness that way.
        let parts = [
            (of_board * b * board, 0.0, board),
            (of_side * 2.0 * h * side, 0.5 * h, h),
            (of_back * net * back, h, back),
            (of_side * 2.0 * lw * lh, 0.5 * lh, lh),
            (of_side * 2.0 * lw * lh, h - 0.5 * lh, lh),
        ];
        let (mut axial, mut about) = (0.0, 0.0);
        for (ea, z, _) in parts {
            axial += ea;
            about += ea * z;
        }
        let axis = about / axial;
        let plane = parts.iter().map(|(ea, z, own)| ea * ((z - axis).powi(2) + own * own / 12.0));
        let hole = b - net;
        let aside = of_board * board * b.powi(3) / 12.0
            + of_side * (2.0 * h * side * 0.25 * b * b + 4.0 * lw * lh * (0.5 * (b - lw)).powi(2))
            + of_back * back * (b.powi(3) - hole.powi(3)) / 12.0;
        Sums { axial, axis, plane: plane.sum(), side: aside }
    }

    /// From the board to the axis of bending.
    pub fn axis(&self) -> Length {
        Length::from_m(self.sums().axis)
    }

    /// Thickness of a wall without holes that shears as the back does.
    ///
    /// Between holes the back is a ladder: its two strips bend between the bridges, and the bridges with them:
    /// `1/(G t) = e [a³/(24 E I_c p) + a′ p e/(12 E I_p p)]` for strips `e` apart.
    ///
    /// # Source
    ///
    /// Frames without diagonals, as in books on thin walls; worked out.
    pub fn sheared_back(&self) -> Length {
        let t = self.back.0.to_m();
        let holes = match self.opening {
            Back::Closed => return self.back.0,
            Back::Slotted(_) => return Length::from_m(0.0),
            Back::Holes(holes) => holes,
        };
        let (pitch, length) = (holes.pitch.to_m(), holes.length.to_m());
        let (strip, bridge) = (0.5 * self.net_back(), pitch - length);
        if strip <= 0.0 || bridge <= 0.0 {
            return Length::from_m(0.0);
        }
        let apart = self.width.to_m() - strip;
        let [along, across] = [self.back.1.along, self.back.1.across].map(Stress::to_pa);
        let bends = |modulus: f64, depth: f64| modulus * t * depth.powi(3) / 12.0;
        // For a shear of 1 over the whole ladder: how far one bridge moves beside the next, for each length.
        let strips = length.powi(3) / (24.0 * bends(along, strip)) / pitch;
        let bridges = pitch * holes.width.to_m() / (12.0 * bends(across, bridge));
        let solid = 1.0 / (self.back.1.shear.to_pa() * t * apart);
        let given = 1.0 / ((strips + bridges + solid) * apart * self.back.1.shear.to_pa());
        Length::from_m(given.min(t))
    }

    /// How stiff it is: in twist as a closed tube, `4 A²/Σ s/(G t)`, or as open strips, `Σ G s t³/3`.
    ///
    /// # Source
    ///
    /// R. Bredt, 1896, for the tube, as in any textbook of strength of materials (from memory).
    pub fn stiffness(&self) -> Stiffness {
        let (b, h) = self.sides();
        let sums = self.sums();
        let walls = [(b, self.board), (h, self.side), (h, self.side)];
        let back = self.sheared_back().to_m();
        let shears = |wall: (Length, Wall)| wall.1.shear.to_pa() * wall.0.to_m();
        let open: f64 = walls
            .iter()
            .chain(&[(self.net_back(), self.back)])
            .map(|(s, wall)| s * shears(*wall) * wall.0.to_m().powi(2) / 3.0)
            .sum();
        let closed = if back > 0.0 {
            let around: f64 = walls.iter().map(|(s, wall)| s / shears(*wall)).sum();
            4.0 * b * b * h * h / (around + b / (self.back.1.shear.to_pa() * back))
        } else {
            0.0
        };
        Stiffness {
            axial: sums.axial,
            torsion: open.max(closed),
            bending: [sums.plane, sums.side],
            shear: [
                2.0 * h * shears(self.side),
                b * shears(self.board) + b * self.back.1.shear.to_pa() * back,
            ],
        }
    }

    /// By how much of its length the board is stretched by the forces at its axis, below 0 where it is shortened.
    pub fn board_strain(&self, cut: Cut, board_left: bool) -> f64 {
        let sums = self.sums();
        let to_board = if board_left { sums.axis } else { -sums.axis };
        cut[0] / sums.axial - cut[5] * to_board / sums.plane
    }

    /// How far its walls are loaded by the forces at its axis; `board_left` says whether the board lies to the left of the
    /// way along it.
    ///
    /// The greatest bending and the greatest shear are taken together everywhere. In a closed tube the twist goes round
    /// as a flow of `T/2A`; of an open one each wall is twisted by itself.
    pub fn judge(&self, cut: Cut, board_left: bool) -> Verdict {
        let [axial, shear, aside, torque, sideways, moment] = cut;
        let (b, h) = self.sides();
        let sums = self.sums();
        let to_board = if board_left { sums.axis } else { -sums.axis };
        let to_back = if board_left { sums.axis - h } else { h - sums.axis };
        let strain = axial / sums.axial;
        let bends = |to: f64| -moment * to / sums.plane;
        let swings = sideways.abs() * 0.5 * b / sums.side;
        let most = bends(to_board).abs().max(bends(to_back).abs()) + swings;
        let stress = |wall: &Wall, strain: f64| Stress::from_pa(wall.along.to_pa() * strain);
        let with_force = |wall: &Wall, bend: f64, more: f64, aspect: Aspect| {
            let bending = Stress::from_pa(wall.along.to_pa() * bend + more);
            let used = bent(axial, stress(wall, strain.abs()), bending, &wall.allowable);
            Use { aspect, ..used }
        };
        let (side, back, board) = (&self.side, &self.back, &self.board);
        let is_tube = self.sheared_back().to_m() > 0.0;
        let flow = if is_tube { torque.abs() / (2.0 * b * h) } else { 0.0 };
        let chord = self.bent_strip(flow + 0.5 * aside.abs() / b);
        let mut uses = vec![
            with_force(&side.1, most, 0.0, Aspect::SidesBent),
            with_force(&back.1, bends(to_back).abs() + swings, chord, Aspect::BackBent),
        ];
        let pulled = (strain + bends(to_board) + swings).max(0.0);
        let limit = board.1.allowable.tension_across;
        uses.push(simple(Aspect::BoardPulled, stress(&board.1, pulled), limit));
        let twisted = |thickness: f64| {
            if is_tube {
                return flow / thickness;
            }
            let all = self.stiffness().torsion;
            if all > 0.0 { torque.abs() * side.1.shear.to_pa() * thickness / all } else { 0.0 }
        };
        let sheared = 1.5 * shear.abs() / (2.0 * h * side.0.to_m()) + twisted(side.0.to_m());
        let sheared = Stress::from_pa(sheared);
        uses.push(simple(Aspect::SidesSheared, sheared, side.1.allowable.shear));
        let net = (self.net_back() / b).max(f64::MIN_POSITIVE);
        let of_back = (twisted(back.0.to_m()) + 0.75 * aside.abs() / (b * back.0.to_m())) / net;
        uses.push(simple(Aspect::BackSheared, Stress::from_pa(of_back), back.1.allowable.shear));
        let pushed = (-strain + bends(to_board).abs().max(bends(to_back).abs()) + swings).max(0.0);
        uses.push(self.bowing(stress(&side.1, pushed), sheared));
        Verdict { uses }
    }

    /// Stress in the strips beside the holes, which a flow of shear bends between the bridges.
    fn bent_strip(&self, flow: f64) -> f64 {
        let Back::Holes(holes) = self.opening else { return 0.0 };
        let (strip, t) = (0.5 * self.net_back(), self.back.0.to_m());
        let moment = 0.25 * flow * self.width.to_m() * holes.length.to_m();
        if strip > 0.0 { 6.0 * moment / (t * strip * strip) } else { f64::INFINITY }
    }

    /// A side between two braces and its liners, on which it turns freely, pushed along and sheared:
    /// `σ/σ_cr + (τ/τ_cr)²`, with the modulus for buckling.
    ///
    /// # Source
    ///
    /// Plates that are stiffer one way: S. Timoshenko and J. M. Gere, *Theory of Elastic Stability*, chapter 9, and for
    /// shear E. Seydel, 1933 (both from memory).
    fn bowing(&self, pushed: Stress, sheared: Stress) -> Use {
        let (thickness, wall) = self.side;
        let aspect = Aspect::Bowing;
        let unknown = Use { aspect, stress: pushed, limit: None, ratio: None };
        let (Some(least), Some(braces)) = (wall.allowable.least_modulus, self.braces) else {
            return unknown;
        };
        let firm = least.to_pa() / wall.along.to_pa();
        let panel = Panel::new(thickness, self.depth, braces, wall);
        let (along, shear) = (firm * panel.pushed(), firm * panel.sheared());
        let (pushed_share, shear_share) = (pushed.to_pa() / along, sheared.to_pa() / shear);
        Use {
            aspect,
            stress: pushed,
            limit: Some(Stress::from_pa(along)),
            ratio: Some(pushed_share + shear_share * shear_share).filter(|ratio| ratio.is_finite()),
        }
    }
}

/// A plate on edges that turn freely.
#[derive(Clone, Copy)]
pub struct Panel {
    thickness_m: f64,
    width_m: f64,
    length_m: f64,
    along: f64,
    across: f64,
    twist: f64,
}

/// Half waves that are looked at.
const MOST_WAVES: u8 = 8;

impl Panel {
    /// A panel of a wall, so thick, so wide across and so long.
    pub fn new(thickness: Length, width: Length, length: Length, wall: Wall) -> Self {
        let cube = thickness.to_m().powi(3) / 12.0;
        Self {
            thickness_m: thickness.to_m(),
            width_m: width.to_m(),
            length_m: length.to_m(),
            along: wall.along.to_pa() * cube,
            across: wall.across.to_pa() * cube,
            twist: 2.0 * wall.shear.to_pa() * cube,
        }
    }

    /// The stress in Pa along it at which it bows: the least over `m` of
    /// `π²/(b² t) [D₁ (m b/a)² + 2 H + D₂ (a/(m b))²]`. Of `H` only the twist counts, which is the careful way.
    pub fn pushed(&self) -> f64 {
        let least = (1..=MOST_WAVES).map(|waves| {
            let ratio = (f64::from(waves) * self.width_m / self.length_m).powi(2);
            self.along * ratio + 2.0 * self.twist + self.across / ratio
        });
        let least = least.fold(f64::INFINITY, f64::min);
        PI * PI * least / (self.width_m * self.width_m * self.thickness_m)
    }

    /// The shear in Pa at which it bows, if it is long: `4 k (D₁ D₂³)^¼/(b² t)`.
    pub fn sheared(&self) -> f64 {
        let square = self.width_m * self.width_m * self.thickness_m;
        let theta = (self.along * self.across).sqrt() / self.twist;
        if theta >= 1.0 {
            let k = 8.125 + 5.045 / theta;
            return 4.0 * k * (self.along * self.across.powi(3)).sqrt().sqrt() / square;
        }
        let k = 11.7 + 0.532 * theta + 0.938 * theta * theta;
        4.0 * k * (self.across * self.twist).sqrt() / square
    }
}
