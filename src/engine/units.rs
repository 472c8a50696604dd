//! Quantities. Each is one `f64` in its SI unit; a unit is named where a number enters or leaves.
//!
//! The only file with conversion factors. The inch is 25.4 mm exactly and the pound 0.453 592 37 kg
//! exactly (international yard and pound, 1959); standard gravity is 9.806 65 m/s² exactly (third
//! General Conference on Weights and Measures, 1901), as both stand in NIST SP 811, appendix B.

/// Declares a quantity and, for each unit, the way in and the way out.
macro_rules! quantity {
    ($(#[$meta:meta])* $name:ident { $($from:ident / $to:ident = $si:expr),+ $(,)? }) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            $(
                /// From a number in the unit that ends the name.
                pub const fn $from(value: f64) -> Self {
                    Self(value * $si)
                }

                /// As a number in the unit that ends the name.
                pub const fn $to(self) -> f64 {
                    self.0 / $si
                }
            )+
        }
    };
}

const INCH_M: f64 = 0.0254;
const KGF_N: f64 = 9.806_65;
const LBF_N: f64 = 0.453_592_37 * KGF_N;

quantity! {
    /// A length: of a string, of a soundboard, or across a wire.
    Length {
        from_m / to_m = 1.0,
        from_cm / to_cm = 1e-2,
        from_mm / to_mm = 1e-3,
        from_inch / to_inch = INCH_M,
        from_thou / to_thou = INCH_M / 1000.0,
        from_foot / to_foot = INCH_M * 12.0,
    }
}

quantity! {
    /// A pitch.
    Frequency { from_hz / to_hz = 1.0 }
}

quantity! {
    /// A pull or a breaking load.
    Force { from_n / to_n = 1.0, from_kgf / to_kgf = KGF_N, from_lbf / to_lbf = LBF_N }
}

quantity! {
    /// Mass per metre of string.
    LinearDensity { from_kg_per_m / to_kg_per_m = 1.0, from_g_per_m / to_g_per_m = 1e-3 }
}

quantity! {
    /// Pull over area, and so also a modulus of elasticity or a strength.
    Stress {
        from_pa / to_pa = 1.0,
        from_mpa / to_mpa = 1e6,
        from_gpa / to_gpa = 1e9,
        from_ksi / to_ksi = 1000.0 * LBF_N / (INCH_M * INCH_M),
    }
}

quantity! {
    /// A bending moment or a torque.
    Moment {
        from_n_m / to_n_m = 1.0,
        from_n_mm / to_n_mm = 1e-3,
        from_lbf_inch / to_lbf_inch = LBF_N * INCH_M,
        from_lbf_foot / to_lbf_foot = LBF_N * INCH_M * 12.0,
    }
}

quantity! {
    /// A mass.
    Mass { from_kg / to_kg = 1.0, from_g / to_g = 1e-3 }
}

quantity! {
    /// Mass over volume.
    Density { from_kg_per_m3 / to_kg_per_m3 = 1.0 }
}

quantity! {
    /// Force that a finger meets for each unit of displacement.
    Stiffness {
        from_n_per_m / to_n_per_m = 1.0,
        from_n_per_mm / to_n_per_mm = 1e3,
        from_kgf_per_mm / to_kgf_per_mm = KGF_N * 1e3,
        from_lbf_per_inch / to_lbf_per_inch = LBF_N / INCH_M,
    }
}

quantity! {
    /// Characteristic impedance of a string: force over velocity.
    Impedance { from_kg_per_s / to_kg_per_s = 1.0 }
}

quantity! {
    /// How readily something gives: velocity over force, one over an impedance.
    Mobility { from_s_per_kg / to_s_per_kg = 1.0, from_mm_per_s_per_n / to_mm_per_s_per_n = 1e-3 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn every_unit_comes_back_as_it_went_in() {
        for value in [1e-9, 0.81, 1.0, 612.0, 4.0e9] {
            assert_close(Length::from_inch(value).to_inch(), value, 1e-15, "inch");
            assert_close(Length::from_thou(value).to_thou(), value, 1e-15, "thou");
            assert_close(Force::from_lbf(value).to_lbf(), value, 1e-15, "lbf");
            assert_close(Stress::from_ksi(value).to_ksi(), value, 1e-15, "ksi");
            assert_close(Moment::from_lbf_foot(value).to_lbf_foot(), value, 1e-15, "lbf ft");
        }
    }

    /// Source: NIST SP 811 (2008), appendix B.8, factors printed to seven digits: pound-force
    /// 4.448 222 N, kilogram-force 9.806 65 N, ksi 6.894 757 MPa, inch 25.4 mm, mil 0.0254 mm.
    /// Values from memory of that table.
    #[test]
    fn units_agree_with_the_table_of_factors() {
        assert_close(Force::from_lbf(1.0).to_n(), 4.448_222, 2e-7, "lbf");
        assert_close(Force::from_kgf(1.0).to_n(), 9.806_65, 1e-15, "kgf");
        assert_close(Stress::from_ksi(1.0).to_mpa(), 6.894_757, 1e-7, "ksi");
        assert_close(Length::from_inch(1.0).to_mm(), 25.4, 1e-15, "inch");
        assert_close(Length::from_thou(32.0).to_mm(), 0.8128, 1e-15, "thou");
    }
}
