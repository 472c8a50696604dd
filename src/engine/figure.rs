//! The list of figures: a name for each, and its value for a string.

use super::analysis::{Known, StringFigures, Unknown};
use super::units::{Force, Frequency, Impedance, Length, LinearDensity, Stiffness, Stress};

/// Declares the figures, the list of all of them, and the value of each.
macro_rules! figures {
    ($($(#[$meta:meta])* $name:ident: $value:expr;)+) => {
        /// A figure of a string, in the order of the string table.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Figure {
            $($(#[$meta])* $name,)+
        }

        impl Figure {
            /// All of them, in order.
            pub const ALL: [Self; [$(Self::$name),+].len()] = [$(Self::$name),+];

            /// The figure of one string in the unit that the heading of its column ends with.
            pub fn value(self, of: &StringFigures) -> Known<f64> {
                let value: fn(&StringFigures) -> Known<f64> = match self {
                    $(Self::$name => $value,)+
                };
                value(of)
            }
        }
    };
}

// A new figure goes to the end: the columns of the string table are promised in their order.
figures! {
    Frequency: |of| of.frequency.map(Frequency::to_hz);
    Length: |of| of.length.map(Length::to_mm);
    Gauge: |of| of.gauge.map(Length::to_mm);
    Core: |of| of.core.map(Length::to_mm);
    LinearDensity: |of| of.linear_density.map(LinearDensity::to_g_per_m);
    Tension: |of| of.tension.map(Force::to_n);
    Stress: |of| of.stress.map(Stress::to_mpa);
    BreakingLoad: |of| of.breaking_load.map(Force::to_n);
    LoadShare: |of| of.load_share_percent;
    SemitonesToBreak: |of| of.semitones_to_break;
    PluckStiffness: |of| of.pluck_stiffness.map(Stiffness::to_n_per_mm);
    Inharmonicity: |of| of.inharmonicity_b;
    Partial8: |of| of.partial_8_cents;
    Impedance: |of| of.impedance.map(Impedance::to_kg_per_s);
    Damping: |of| of.damping_eta;
    Stretch: |of| of.stretch.map(Length::to_mm);
    PinTurns: |of| of.pin_turns;
    CentsPerPinDegree: |of| of.cents_per_pin_degree;
    CentsPerKelvin: |of| of.cents_per_kelvin;
    Lever: |of| of.lever.map(|place| place.distance.to_mm());
    DiscNatural: |of| of.disc_natural.map(|place| place.distance.to_mm());
    DiscSharp: |of| of.disc_sharp.map(|place| place.distance.to_mm());
    Lift: |of| of.lift.map(Force::to_n);
    AlongBoard: |of| of.along_board.map(Force::to_n);
    CutLength: |of| of.cut_length.map(Length::to_mm);
    PluckForce: |of| of.pluck_force.map(Force::to_n);
    Glide: |of| of.glide_cents;
    /// How sharp the first semitone is with its lever or disc where it would stand if it did not stretch
    /// the string.
    NominalError: |of| match (of.lever, of.disc_natural) {
        (Ok(place), _) | (Err(Unknown::NoLever), Ok(place)) => Ok(place.nominal_error_cents),
        // Of a string with discs, why they have no place; of one with neither, that it has no lever.
        (Err(Unknown::NoLever), Err(why)) if why != Unknown::NoDisc => Err(why),
        (Err(why), _) => Err(why),
    };
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_figure_stands_in_the_list_at_its_own_number() {
        for (index, figure) in Figure::ALL.into_iter().enumerate() {
            assert_eq!(figure as usize, index);
        }
    }
}
