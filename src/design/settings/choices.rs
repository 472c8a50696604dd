//! The settings of a design that are one of a few words.

use crate::design::document::{
    Design, FamilySpec, MeasuredSpec, MechanismKind, ServiceSpec, TemperamentSpec, WantsSpec,
};

/// What a choice is called, what there is to choose from, and where it stands in a design.
struct Entry {
    label: &'static str,
    options: &'static [&'static str],
    of: fn(&Design) -> &'static str,
    put: fn(&mut Design, usize),
}

/// Makes of each line a choice. The compiler asks for the words of every value.
macro_rules! choices {
    ($(
        $choice:ident: $label:literal, $($field:ident).+,
        $kind:ident { $($value:ident => $words:literal,)+ }
    )+) => {
        /// A setting that is one of a few words.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum OneOf {
            $(#[doc = concat!("\"", $label, "\".")] $choice,)+
        }

        impl OneOf {
            /// In the order of the document.
            pub const ALL: [Self; [$($label),+].len()] = [$(Self::$choice),+];

            fn entry(self) -> &'static Entry {
                match self {
                    $(Self::$choice => &Entry {
                        label: $label,
                        options: &[$($words),+],
                        of: |design| match design.$($field).+ { $($kind::$value => $words,)+ },
                        put: |design, place| {
                            if let Some(value) = [$($kind::$value),+].get(place) {
                                design.$($field).+ = *value;
                            }
                        },
                    },)+
                }
            }
        }
    };
}

choices! {
    Temperament: "Temperament", pitch.temperament, TemperamentSpec {
        Equal => "Equal",
        Pythagorean => "Pythagorean",
        QuarterCommaMeantone => "Quarter-comma meantone",
        WerckmeisterThree => "Werckmeister III",
        Vallotti => "Vallotti",
        YoungTwo => "Young II",
        JustOnC => "Just on C",
    }
    Mechanism: "Each string has", mechanism.kind, MechanismKind {
        None => "None",
        Lever => "Lever",
        SingleDisc => "Single disc",
        DoubleDisc => "Double disc",
    }
    Measured: "Measured", geometry.spacing.measured, MeasuredSpec {
        Square => "Square to the strings",
        AlongBoard => "Along the board",
    }
    Service: "Harp is kept", geometry.service, ServiceSpec {
        Heated => "In heated rooms",
        Covered => "Under a roof, not heated",
        Outdoors => "In the open",
    }
    Family: "Strings", targets.family, FamilySpec {
        Present => "As on the harp now",
        Nylon => "Nylon and wound",
        Gut => "Gut and wound",
        Fluorocarbon => "Fluorocarbon and wound",
        Wire => "Wire",
    }
    Wants: "Wanted is a curve of", targets.wants, WantsSpec {
        Stiffness => "Pluck stiffness, the feel",
        Tension => "Tension",
    }
}

impl OneOf {
    /// What it is called where it is made.
    pub fn label(self) -> &'static str {
        self.entry().label
    }

    /// What there is to choose from, in words.
    pub fn options(self) -> &'static [&'static str] {
        self.entry().options
    }

    /// What a design has, in words.
    pub fn of(self, design: &Design) -> &'static str {
        (self.entry().of)(design)
    }

    /// Gives a design what has these words; other words change nothing.
    pub fn put(self, design: &mut Design, words: &str) {
        if let Some(place) = self.options().iter().position(|option| *option == words) {
            (self.entry().put)(design, place);
        }
    }
}
