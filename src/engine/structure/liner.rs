//! How a liner and a side hold the edge of a board that is glued onto them: between turning freely and not turning.

use super::section::Rectangle;
use crate::engine::units::{Length, Stress};

/// A liner on a side of the soundbox, under the edge of the board.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Liner {
    /// Breadth and height of the liner; nothing where there is none.
    pub size: (Length, Length),
    /// Thickness of the side.
    pub side: Length,
    /// From board to back.
    pub depth: Length,
    /// Modulus of the side as it bends from board to back.
    pub bends: Stress,
    /// Modulus of the liner as it is pressed towards the board.
    pub pressed: Stress,
    /// Modulus of the liner along it.
    pub along: Stress,
    /// Shear modulus of the liner as it is twisted.
    pub twisted: Stress,
    /// From brace to brace, where that is known.
    pub braces: Option<Length>,
}

/// How an edge is held.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Holds {
    /// At least against turning, in N·m for each radian and metre of edge.
    pub soft_n: f64,
    /// At most.
    pub firm_n: f64,
    /// At most against being drawn in, in N for each metre of it and metre of edge; 0 where braces are not known.
    pub draws_pa: f64,
}

/// One after the other.
fn in_turn(one: f64, other: f64) -> f64 {
    one * other / (one + other)
}

impl Liner {
    /// How wide the board is glued on: liner and side.
    pub fn glued(&self) -> Length {
        Length::from_m(self.size.0.to_m() + self.side.to_m())
    }

    /// How the edge is held.
    ///
    /// The side is a strip from board to back. At least it turns freely at the back and bends over its whole depth, `3 E I/h`;
    /// at most it cannot turn at the back and bends between the liners alone, `4 E I/h′`, and the liner is also held against
    /// twist at each brace, which on the average of a length `l` between braces is `12 G J/l²`. In either case the liner is
    /// pressed together under the edge, `E b³/12 h` for a breadth `b` of glue. Against being drawn in the edge is held at most
    /// by the liner as a beam between braces, `720 E I/l⁴` on the average.
    ///
    /// `None` where a measure is none.
    ///
    /// # Source
    ///
    /// Beams and twisted bars of textbooks of strength of materials; worked out.
    ///
    /// # Example
    ///
    /// A side of 8 mm with 1 GPa across, 128 mm deep, without a liner: `3 · 10⁹ · 0.008³/12/0.128` is 1,000 N.
    ///
    /// ```
    /// use stringloft::engine::structure::liner::Liner;
    /// use stringloft::engine::units::{Length, Stress};
    ///
    /// let (none, gpa) = (Length::from_m(0.0), Stress::from_gpa(1.0));
    /// let side = Length::from_mm(8.0);
    /// let liner = Liner {
    ///     size: (none, none),
    ///     side,
    ///     depth: Length::from_mm(128.0),
    ///     bends: gpa,
    ///     pressed: gpa,
    ///     along: gpa,
    ///     twisted: gpa,
    ///     braces: None,
    /// };
    /// let holds = liner.holds().expect("sizes");
    /// assert!((holds.soft_n - 1_000.0).abs() < 1e-9);
    /// assert!((holds.firm_n - 4.0 / 3.0 * 1_000.0).abs() < 1e-9);
    /// ```
    pub fn holds(&self) -> Option<Holds> {
        let (side, depth) = (self.side.to_m(), self.depth.to_m());
        let (breadth, height) = (self.size.0.to_m(), self.size.1.to_m());
        let strip = self.bends.to_pa() * side.powi(3) / 12.0;
        if !(strip > 0.0 && strip.is_finite() && depth > 0.0 && depth.is_finite()) {
            return None;
        }
        let (mut soft_n, mut firm_n) = (3.0 * strip / depth, 4.0 * strip / depth);
        let mut draws_pa = 0.0;
        if let Ok(liner) = Rectangle::new(self.size.0, self.size.1) {
            // Two liners leave a third of the side free at least.
            let free = (depth - 2.0 * height).max(depth / 3.0);
            firm_n = 4.0 * strip / free;
            if let Some(braces) = self.braces.map(Length::to_m).filter(|apart| *apart > 0.0) {
                firm_n += 12.0 * self.twisted.to_pa() * liner.torsion_m4() / (braces * braces);
                let bent = self.along.to_pa() * height * breadth.powi(3) / 12.0;
                draws_pa = 720.0 * bent / braces.powi(4);
            }
            let pressed = self.pressed.to_pa() * self.glued().to_m().powi(3) / (12.0 * height);
            (soft_n, firm_n) = (in_turn(soft_n, pressed), in_turn(firm_n, pressed));
        }
        let is_one = soft_n > 0.0 && firm_n.is_finite() && draws_pa.is_finite();
        is_one.then_some(Holds { soft_n, firm_n, draws_pa })
    }

    /// With what stress the glue of an edge is pulled open: `V/b + 6 M/b²` under a lift `V` and a moment `M` for each metre of
    /// edge, as if it were stiff. Greatest at the inner edge of the liner.
    pub fn peels(&self, lift_n_per_m: f64, moment_n_m_per_m: f64) -> Stress {
        let glued = self.glued().to_m();
        Stress::from_pa(lift_n_per_m / glued + 6.0 * moment_n_m_per_m.abs() / (glued * glued))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn liner() -> Liner {
        let mm = Length::from_mm;
        Liner {
            size: (mm(15.0), mm(20.0)),
            side: mm(7.0),
            depth: mm(160.0),
            bends: Stress::from_gpa(0.6),
            pressed: Stress::from_gpa(0.6),
            along: Stress::from_gpa(12.0),
            twisted: Stress::from_gpa(0.8),
            braces: Some(mm(180.0)),
        }
    }

    /// `3 E I/h` is 321.6, `E b³/12 h` 26.6 kN; `4 E I/h′` 571.7, `12 G J/l²` with `J = 0.1804 · 20 · 15³ mm⁴` about 3,608.
    #[test]
    fn an_edge_is_held_by_side_liner_and_braces() {
        let holds = liner().holds().unwrap();
        assert_close(holds.soft_n, 321.6 * 26_620.0 / (321.6 + 26_620.0), 1e-3, "soft");
        let firm = 571.7 + 3_608.0;
        assert_close(holds.firm_n, firm * 26_620.0 / (firm + 26_620.0), 5e-3, "firm");
        assert_close(holds.draws_pa, 720.0 * 67.5 / 0.18_f64.powi(4), 1e-9, "drawn in");
        let loose = Liner { braces: None, ..liner() }.holds().unwrap();
        assert!(loose.soft_n < loose.firm_n && loose.firm_n < holds.firm_n);
        assert_eq!(loose.draws_pa, 0.0);
        assert_eq!(Liner { side: Length::from_m(0.0), ..liner() }.holds(), None);
    }

    /// 1,100 N/m on 22 mm are 0.05 MPa, and 24.2 N·m/m are 0.3.
    #[test]
    fn glue_is_pulled_open_by_lift_and_moment() {
        assert_close(liner().peels(1_100.0, -24.2).to_mpa(), 0.35, 1e-12, "peel");
    }
}
