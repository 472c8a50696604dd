//! The list of figures: one name, one heading and one unit for each, wherever it is shown, saved or
//! explained.

use super::analysis::{Known, StringFigures};
use super::units::{Force, Frequency, Impedance, Length, LinearDensity, Stiffness, Stress};

/// A figure of a string, in the order of the string table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Figure {
    Frequency,
    Length,
    Gauge,
    Core,
    LinearDensity,
    Tension,
    Stress,
    BreakingLoad,
    LoadShare,
    SemitonesToBreak,
    PluckStiffness,
    Inharmonicity,
    Partial8,
    Impedance,
    Damping,
    Stretch,
    PinTurns,
    CentsPerPinDegree,
    CentsPerKelvin,
    Lever,
    DiscNatural,
    DiscSharp,
    Lift,
    AlongBoard,
    CutLength,
    PluckForce,
    Glide,
}

impl Figure {
    /// All of them, in order.
    pub const ALL: [Self; 27] = [
        Self::Frequency,
        Self::Length,
        Self::Gauge,
        Self::Core,
        Self::LinearDensity,
        Self::Tension,
        Self::Stress,
        Self::BreakingLoad,
        Self::LoadShare,
        Self::SemitonesToBreak,
        Self::PluckStiffness,
        Self::Inharmonicity,
        Self::Partial8,
        Self::Impedance,
        Self::Damping,
        Self::Stretch,
        Self::PinTurns,
        Self::CentsPerPinDegree,
        Self::CentsPerKelvin,
        Self::Lever,
        Self::DiscNatural,
        Self::DiscSharp,
        Self::Lift,
        Self::AlongBoard,
        Self::CutLength,
        Self::PluckForce,
        Self::Glide,
    ];

    /// The heading of its column, with the unit of [`Figure::value`] at the end where it has one.
    /// A heading is a promise: tables with it are out in the world.
    pub const fn heading(self) -> &'static str {
        match self {
            Self::Frequency => "frequency_hz",
            Self::Length => "length_mm",
            Self::Gauge => "gauge_mm",
            Self::Core => "core_mm",
            Self::LinearDensity => "linear_density_g_per_m",
            Self::Tension => "tension_n",
            Self::Stress => "stress_mpa",
            Self::BreakingLoad => "breaking_load_n",
            Self::LoadShare => "load_share_percent",
            Self::SemitonesToBreak => "semitones_to_break",
            Self::PluckStiffness => "pluck_stiffness_n_per_mm",
            Self::Inharmonicity => "inharmonicity_b",
            Self::Partial8 => "partial_8_cents",
            Self::Impedance => "impedance_kg_per_s",
            Self::Damping => "damping_eta",
            Self::Stretch => "stretch_mm",
            Self::PinTurns => "pin_turns",
            Self::CentsPerPinDegree => "cents_per_pin_degree",
            Self::CentsPerKelvin => "cents_per_kelvin",
            Self::Lever => "lever_mm",
            Self::DiscNatural => "disc_natural_mm",
            Self::DiscSharp => "disc_sharp_mm",
            Self::Lift => "lift_n",
            Self::AlongBoard => "along_board_n",
            Self::CutLength => "cut_length_mm",
            Self::PluckForce => "pluck_force_n",
            Self::Glide => "glide_cents",
        }
    }

    /// The figure of one string in the unit of its heading.
    pub fn value(self, of: &StringFigures) -> Known<f64> {
        match self {
            Self::Frequency => of.frequency.map(Frequency::to_hz),
            Self::Length => of.length.map(Length::to_mm),
            Self::Gauge => of.gauge.map(Length::to_mm),
            Self::Core => of.core.map(Length::to_mm),
            Self::LinearDensity => of.linear_density.map(LinearDensity::to_g_per_m),
            Self::Tension => of.tension.map(Force::to_n),
            Self::Stress => of.stress.map(Stress::to_mpa),
            Self::BreakingLoad => of.breaking_load.map(Force::to_n),
            Self::LoadShare => of.load_share_percent,
            Self::SemitonesToBreak => of.semitones_to_break,
            Self::PluckStiffness => of.pluck_stiffness.map(Stiffness::to_n_per_mm),
            Self::Inharmonicity => of.inharmonicity_b,
            Self::Partial8 => of.partial_8_cents,
            Self::Impedance => of.impedance.map(Impedance::to_kg_per_s),
            Self::Damping => of.damping_eta,
            Self::Stretch => of.stretch.map(Length::to_mm),
            Self::PinTurns => of.pin_turns,
            Self::CentsPerPinDegree => of.cents_per_pin_degree,
            Self::CentsPerKelvin => of.cents_per_kelvin,
            Self::Lever => of.lever.map(|place| place.distance.to_mm()),
            Self::DiscNatural => of.disc_natural.map(|place| place.distance.to_mm()),
            Self::DiscSharp => of.disc_sharp.map(|place| place.distance.to_mm()),
            Self::Lift => of.lift.map(Force::to_n),
            Self::AlongBoard => of.along_board.map(Force::to_n),
            Self::CutLength => of.cut_length.map(Length::to_mm),
            Self::PluckForce => of.pluck_force.map(Force::to_n),
            Self::Glide => of.glide_cents,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_two_figures_have_one_heading() {
        for (index, figure) in Figure::ALL.iter().enumerate() {
            assert_eq!(*figure as usize, index, "in the order of the list");
            for other in &Figure::ALL[index + 1..] {
                assert_ne!(figure.heading(), other.heading());
            }
        }
    }
}
