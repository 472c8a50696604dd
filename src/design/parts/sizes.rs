//! Sizes for the saw that the frame does not say, and what woods cost: one row for each, with its words, its unit and its
//! range.
//!
//! A design holds those that are not usual as one text, `base=24; kerf=2.8; price sugar-maple=1900`, so that a page that
//! shows no parts need not know them. What no row knows stays in it: a later program may have written it.

use crate::design::decimal::decimal;
use crate::design::document::{Design, GeometrySpec, LONGEST_TEXT};
use crate::design::edit::Edit;
use crate::design::settings::NumberRow;
use crate::engine::parts::Proportions;
use crate::engine::parts::cutting::Stock;
use crate::engine::units::Length;
use crate::words::{Words, parts_sizes as say};

/// Between two entries, between a name and its number, and what opens the name of a price.
const BETWEEN: char = ';';
const IS: char = '=';
const PRICE: &str = "price ";

/// What a price may be, for a square metre or a cubic metre.
pub const PRICE_RANGE: (f64, f64) = (0.0, 1e7);

/// Makes of each line a size: its name in a design, what it is called, its unit, what is usual, and what makes sense.
macro_rules! sizes {
    ($($size:ident: $key:literal, $label:expr, $usual:expr, $range:expr;)+) => {
        /// A size for the saw.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum PartSize {
            $(#[doc = concat!("What `", stringify!($label), "` names.")] $size,)+
        }

        impl PartSize {
            /// In the order of the forms.
            pub const ALL: [Self; [$(stringify!($size)),+].len()] = [$(Self::$size),+];

            /// Its name in a design.
            pub const fn key(self) -> &'static str {
                match self { $(Self::$size => $key),+ }
            }

            /// What it is called, its unit and what makes sense.
            pub const fn row(self) -> NumberRow {
                match self { $(Self::$size => NumberRow::new($label, MM, $range)),+ }
            }

            /// What it is where nothing was typed.
            pub const fn usual(self) -> f64 {
                match self { $(Self::$size => $usual),+ }
            }
        }
    };
}

const MM: Words = Words::plain("mm");

// The usual values stand in `Proportions` and `Stock` as well, where the engine has them without a document; a test holds
// both to each other.
sizes! {
    Base: "base", say::BASE, 20.0, (5.0, 100.0);
    BaseBeyond: "base_beyond", say::BASE_BEYOND, 12.0, (0.0, 200.0);
    BaseBehind: "base_behind", say::BASE_BEHIND, 40.0, (0.0, 500.0);
    Feet: "feet", say::FEET, 25.0, (1.0, 300.0);
    FootBlock: "foot_block", say::FOOT_BLOCK, 25.0, (10.0, 500.0);
    KneeBlock: "knee_block", say::KNEE_BLOCK, 45.0, (10.0, 500.0);
    Brace: "brace", say::BRACE, 10.0, (2.0, 60.0);
    TenonShoulder: "tenon_shoulder", say::TENON_SHOULDER, 5.0, (0.0, 50.0);
    UnderTenon: "under_tenon", say::UNDER_TENON, 8.0, (0.0, 100.0);
    BackRise: "back_rise", say::BACK_RISE, 0.0, (0.0, 300.0);
    GlueRoom: "glue_room", say::GLUE_ROOM, 0.0, (0.0, 2.0);
    Kerf: "kerf", say::KERF, 3.2, (0.0, 20.0);
    OnLength: "on_length", say::ON_LENGTH, 20.0, (0.0, 300.0);
    OnWidth: "on_width", say::ON_WIDTH, 6.0, (0.0, 100.0);
    OnThickness: "on_thickness", say::ON_THICKNESS, 4.0, (0.0, 50.0);
    BoardLength: "board_length", say::PLANK_LENGTH, 2400.0, (200.0, 10_000.0);
    BoardWidth: "board_width", say::PLANK_WIDTH, 200.0, (30.0, 2_000.0);
    BoardThickness: "board_thickness", say::PLANK_THICKNESS, 60.0, (10.0, 500.0);
    SheetLength: "sheet_length", say::SHEET_LENGTH, 1525.0, (200.0, 10_000.0);
    SheetWidth: "sheet_width", say::SHEET_WIDTH, 1525.0, (200.0, 10_000.0);
}

impl PartSize {
    /// The number in a design, whether it makes sense or not; the usual one where none was typed.
    pub fn of(self, design: &Design) -> f64 {
        typed(&design.geometry, self.key()).unwrap_or_else(|| self.usual())
    }

    /// The number in a design where it makes sense, else the usual one.
    pub fn number(self, geometry: &GeometrySpec) -> f64 {
        let typed = typed(geometry, self.key());
        typed.filter(|number| self.row().takes(*number)).unwrap_or_else(|| self.usual())
    }

    /// What is wrong with the number in a design.
    pub fn wrong(self, geometry: &GeometrySpec) -> Option<String> {
        self.row().wrong(typed(geometry, self.key())?, Some(self.usual()))
    }

    /// The edit that types a number; none gives the usual one back. A run of such edits is one step.
    pub fn edit(self, design: &Design, number: Option<f64>) -> Edit {
        let number = number.filter(|number| number.total_cmp(&self.usual()).is_ne());
        put(design, self.key(), number)
    }
}

/// What a wood costs: a cubic metre of planks, or a square metre of a sheet; `None` where nothing was typed that makes sense.
pub fn price(geometry: &GeometrySpec, wood: &str) -> Option<f64> {
    let takes = |price: &f64| (PRICE_RANGE.0..=PRICE_RANGE.1).contains(price);
    typed(geometry, &price_key(wood)).filter(takes)
}

/// The edit that types what a wood costs; none takes it away.
pub fn price_edit(design: &Design, wood: &str, price: Option<f64>) -> Edit {
    put(design, &price_key(wood), price)
}

/// A wood of one's own may have any name; what parts entries is left out of it.
fn price_key(wood: &str) -> String {
    let plain: String = wood.trim().chars().filter(|sign| ![BETWEEN, IS].contains(sign)).collect();
    format!("{PRICE}{plain}")
}

fn entries(text: &str) -> impl Iterator<Item = (&str, &str)> {
    let all = text.split(BETWEEN).filter_map(|one| one.split_once(IS));
    all.map(|(key, value)| (key.trim(), value.trim()))
}

fn typed(geometry: &GeometrySpec, key: &str) -> Option<f64> {
    let mut own = entries(&geometry.parts).filter(|(name, _)| *name == key);
    own.find_map(|(_, value)| decimal(value))
}

/// What stands under a name.
pub fn entry<'a>(geometry: &'a GeometrySpec, key: &str) -> Option<&'a str> {
    entries(&geometry.parts).find(|(name, _)| *name == key).map(|(_, value)| value)
}

/// Puts something else under a name, or nothing. A text that would grow longer than a design may hold stays as it is.
pub fn with_entry(geometry: &mut GeometrySpec, key: &str, value: Option<String>) {
    let mut all: Vec<String> = Vec::new();
    let others = entries(&geometry.parts).filter(|(name, _)| *name != key);
    all.extend(others.map(|(name, value)| format!("{name}{IS}{value}")));
    all.extend(value.map(|value| format!("{key}{IS}{value}")));
    let text = all.join("; ");
    if text.chars().count() <= LONGEST_TEXT {
        geometry.parts = text;
    }
}

/// The edit that puts another number under a name, or none.
fn put(design: &Design, key: &str, number: Option<f64>) -> Edit {
    let mut geometry = design.geometry.clone();
    with_entry(&mut geometry, key, number.map(|number| number.to_string()));
    Edit::Geometry(Box::new(geometry))
}

/// The proportions of a shape.
pub fn proportions(geometry: &GeometrySpec) -> Proportions {
    let mm = |size: PartSize| Length::from_mm(size.number(geometry));
    Proportions {
        base: mm(PartSize::Base),
        base_beyond: mm(PartSize::BaseBeyond),
        base_behind: mm(PartSize::BaseBehind),
        feet: mm(PartSize::Feet),
        under_tenon: mm(PartSize::UnderTenon),
        tenon_shoulder: mm(PartSize::TenonShoulder),
        foot_block: mm(PartSize::FootBlock),
        knee_block: mm(PartSize::KneeBlock),
        brace: mm(PartSize::Brace),
        glue_room: mm(PartSize::GlueRoom),
        back_rise: mm(PartSize::BackRise),
    }
}

/// What its parts are sawn from.
pub fn stock(geometry: &GeometrySpec) -> Stock {
    let mm = |size: PartSize| Length::from_mm(size.number(geometry));
    Stock {
        on_length: mm(PartSize::OnLength),
        on_width: mm(PartSize::OnWidth),
        on_thickness: mm(PartSize::OnThickness),
        kerf: mm(PartSize::Kerf),
        board: (mm(PartSize::BoardLength), mm(PartSize::BoardWidth)),
        thickest: mm(PartSize::BoardThickness),
        sheet: (mm(PartSize::SheetLength), mm(PartSize::SheetWidth)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn with(design: &Design, edit: &Edit) -> Design {
        edit.apply(design)
    }

    #[test]
    fn what_is_usual_is_what_the_engine_takes_and_no_text_in_a_design() {
        let design = Design::default();
        assert_eq!(proportions(&design.geometry), Proportions::default());
        assert_eq!(stock(&design.geometry), Stock::default());
        assert!(design.geometry.parts.is_empty());
        for (at, size) in PartSize::ALL.into_iter().enumerate() {
            assert!(size.row().takes(size.usual()), "{size:?}");
            assert!(PartSize::ALL[at + 1..].iter().all(|other| other.key() != size.key()));
        }
    }

    #[test]
    fn a_number_that_is_typed_comes_back_and_the_usual_one_leaves_no_trace() {
        let mut design = Design::default();
        for size in PartSize::ALL {
            let number = size.usual() + 0.5;
            design = with(&design, &size.edit(&design, Some(number)));
            assert!((size.of(&design) - number).abs() < 1e-12, "{size:?}");
            assert!((size.number(&design.geometry) - number).abs() < 1e-12, "{size:?}");
        }
        assert!(design.geometry.parts.starts_with("base=20.5; base_beyond=12.5"));
        for size in PartSize::ALL {
            design = with(&design, &size.edit(&design, Some(size.usual())));
        }
        assert_eq!(design, Design::default());
    }

    #[test]
    fn prices_stand_under_the_name_of_their_wood() {
        let mut design = Design::default();
        assert_eq!(price(&design.geometry, "sugar-maple"), None);
        for (wood, own) in [("sugar-maple", 1900.0), ("a; = wood", 12.5)] {
            design = with(&design, &price_edit(&design, wood, Some(own)));
            assert_eq!(price(&design.geometry, wood), Some(own));
        }
        assert_eq!(design.geometry.parts, "price sugar-maple=1900; price a  wood=12.5");
        design = with(&design, &price_edit(&design, "sugar-maple", None));
        assert_eq!(price(&design.geometry, "sugar-maple"), None);
    }

    #[test]
    fn what_makes_no_sense_gives_way_and_what_is_not_known_stays() {
        let mut design = Design::default();
        design.geometry.parts = "kerf=900;later thing=4;;base=x;feet".to_owned();
        assert_eq!(stock(&design.geometry), Stock::default());
        assert_eq!(proportions(&design.geometry), Proportions::default());
        let told = PartSize::Kerf.wrong(&design.geometry).expect("a sentence");
        assert!(told.contains("900 mm") && told.contains("3.2 mm"), "{told}");
        assert_eq!(PartSize::Base.wrong(&design.geometry), None);
        let next = with(&design, &PartSize::Feet.edit(&design, Some(30.0)));
        assert_eq!(next.geometry.parts, "kerf=900; later thing=4; base=x; feet=30");
    }
}
