//! The settings of a design that are one of a few words.

use crate::design::document::{
    Design, FamilySpec, MeasuredSpec, MechanismKind, ServiceSpec, SizesSpec, TemperamentSpec,
    WantsSpec,
};
use crate::words::{Words, settings as say};

/// What a choice is called, what there is to choose from, and where it stands in a design.
struct Entry {
    label: Words,
    options: &'static [Words],
    of: fn(&Design) -> Words,
    put: fn(&mut Design, usize),
}

/// Makes of each line a choice. The compiler asks for the words of every value.
macro_rules! choices {
    ($(
        $choice:ident: $label:expr, $($field:ident).+,
        $kind:ident { $($value:ident => $words:expr,)+ }
    )+) => {
        /// A setting that is one of a few words.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum OneOf {
            $(#[doc = concat!("What `", stringify!($label), "` names.")] $choice,)+
        }

        impl OneOf {
            /// In the order of the document.
            pub const ALL: [Self; [$(stringify!($choice)),+].len()] = [$(Self::$choice),+];

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
    Temperament: say::TEMPERAMENT, pitch.temperament, TemperamentSpec {
        Equal => say::EQUAL,
        Pythagorean => say::PYTHAGOREAN,
        QuarterCommaMeantone => say::MEANTONE,
        WerckmeisterThree => say::WERCKMEISTER,
        Vallotti => say::VALLOTTI,
        YoungTwo => say::YOUNG,
        JustOnC => say::JUST,
    }
    Mechanism: say::MECHANISM, mechanism.kind, MechanismKind {
        None => say::MECHANISM_NONE,
        Lever => say::MECHANISM_LEVER,
        SingleDisc => say::MECHANISM_SINGLE,
        DoubleDisc => say::MECHANISM_DOUBLE,
    }
    Measured: say::MEASURED, geometry.spacing.measured, MeasuredSpec {
        Square => say::MEASURED_SQUARE,
        AlongBoard => say::MEASURED_ALONG,
    }
    Service: say::SERVICE, geometry.service, ServiceSpec {
        Heated => say::SERVICE_HEATED,
        Covered => say::SERVICE_COVERED,
        Outdoors => say::SERVICE_OUTDOORS,
    }
    Sizes: say::SIZES, geometry.sizes, SizesSpec {
        Own => say::SIZES_OWN,
        Proposed => say::SIZES_PROPOSED,
    }
    Family: say::FAMILY, targets.family, FamilySpec {
        Present => say::FAMILY_PRESENT,
        Nylon => say::FAMILY_NYLON,
        Gut => say::FAMILY_GUT,
        Fluorocarbon => say::FAMILY_FLUOROCARBON,
        Wire => say::FAMILY_WIRE,
    }
    Wants: say::WANTS, targets.wants, WantsSpec {
        Stiffness => say::WANTS_STIFFNESS,
        Tension => say::WANTS_TENSION,
    }
}

impl OneOf {
    /// What it is called where it is made.
    pub fn label(self) -> Words {
        self.entry().label
    }

    /// What there is to choose from, in words.
    pub fn options(self) -> &'static [Words] {
        self.entry().options
    }

    /// What a design has, in words.
    pub fn of(self, design: &Design) -> Words {
        (self.entry().of)(design)
    }

    /// Which of its options a design has.
    pub fn place(self, design: &Design) -> usize {
        let now = self.of(design);
        self.options().iter().position(|option| *option == now).unwrap_or_default()
    }

    /// Gives a design the option at a place; a place beyond them changes nothing.
    pub fn put(self, design: &mut Design, place: usize) {
        (self.entry().put)(design, place);
    }
}
