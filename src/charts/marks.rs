//! The mark of a string on the curves: its shape tells the material of the plain string or the
//! core, its filling whether the string is plain, wound or weighed.

use crate::design::make_up_said;
use crate::engine::analysis::Harp;
use crate::engine::construction::MakeUp;
use crate::engine::material::said;
use crate::words::charts as say;

/// The longest name in a legend, in characters.
const LONGEST_NAME: usize = 24;

/// The outline of a mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MarkShape {
    Circle,
    Square,
    Diamond,
    Up,
    Down,
    Bar,
    Plus,
    Cross,
    /// Small; for a string whose make-up is missing.
    Dot,
}

/// How an outline is filled.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fill {
    /// A plain string.
    Solid,
    /// A wound string.
    Hollow,
    /// A weighed string: hollow, with a dot.
    Dotted,
}

/// The mark of a string.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Mark {
    pub shape: MarkShape,
    pub fill: Fill,
}

/// A mark that a harp uses, with what it means.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LegendEntry {
    pub mark: Mark,
    /// `gut`, `steel, wound`, `nylon, weighed`.
    pub label: String,
    /// The full name of the material; empty where it is not known.
    pub material: String,
}

/// The marks of a harp.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Marks {
    /// One for each string.
    pub of_string: Vec<Mark>,
    /// Each mark used, in the order in which it first comes, from string 1 down.
    pub legend: Vec<LegendEntry>,
}

impl MarkShape {
    /// The shapes given to materials, in the order in which free ones are taken.
    const GIVEN: [Self; 8] = [
        Self::Circle,
        Self::Square,
        Self::Up,
        Self::Diamond,
        Self::Down,
        Self::Bar,
        Self::Plus,
        Self::Cross,
    ];

    /// The shape that a built-in material has unless it is taken; so a material keeps its shape
    /// from harp to harp.
    fn usual(key: &str) -> Option<Self> {
        Some(match key {
            "nylon" | "silk" => Self::Circle,
            "gut" | "red brass" => Self::Square,
            "steel" | "iron" => Self::Up,
            "fluorocarbon" | "silver" => Self::Diamond,
            "bronze" | "polyester" => Self::Down,
            "yellow brass" => Self::Bar,
            "copper" => Self::Plus,
            _ => return None,
        })
    }
}

impl Marks {
    /// The marks of the strings of `harp`. Two materials have different shapes, as long as there
    /// are no more materials than shapes.
    pub fn of(harp: &Harp) -> Self {
        let mut shapes: Vec<(&str, MarkShape)> = Vec::new();
        let mut marks = Self::default();
        for string in &harp.strings {
            let make_up = string.make_up.as_ref().ok();
            let mark =
                make_up.map_or(Mark { shape: MarkShape::Dot, fill: Fill::Solid }, |make_up| {
                    let key = make_up.core().map_or("", |(material, _)| material.key.as_str());
                    Mark { shape: shape_of(key, &mut shapes), fill: fill_of(make_up) }
                });
            if !marks.legend.iter().any(|entry| entry.mark == mark) {
                marks.legend.push(entry(mark, make_up));
            }
            marks.of_string.push(mark);
        }
        marks
    }
}

fn shape_of<'a>(key: &'a str, shapes: &mut Vec<(&'a str, MarkShape)>) -> MarkShape {
    if let Some((_, shape)) = shapes.iter().find(|(known, _)| *known == key) {
        return *shape;
    }
    let is_free = |shape: &MarkShape| !shapes.iter().any(|(_, taken)| taken == shape);
    let shape = MarkShape::usual(key)
        .filter(is_free)
        .or_else(|| MarkShape::GIVEN.into_iter().find(is_free))
        .unwrap_or(MarkShape::GIVEN[shapes.len() % MarkShape::GIVEN.len()]);
    shapes.push((key, shape));
    shape
}

const fn fill_of(make_up: &MakeUp) -> Fill {
    match make_up {
        MakeUp::Plain { .. } => Fill::Solid,
        MakeUp::Wound(_) => Fill::Hollow,
        MakeUp::Weighed(_) => Fill::Dotted,
    }
}

fn entry(mark: Mark, make_up: Option<&MakeUp>) -> LegendEntry {
    let core = make_up.and_then(|m| m.core()).map(|(material, _)| material);
    let key = core.map(|material| shortened(&make_up_said::material(&material.key)));
    let label = match (make_up, key, mark.fill) {
        (None, ..) => say::NO_MAKE_UP.into(),
        (_, Some(key), Fill::Solid) => key,
        (_, Some(key), Fill::Hollow) => say::wound_of(&key),
        (_, Some(key), Fill::Dotted) => say::weighed_of(&key),
        (_, None, _) => say::WEIGHED.into(),
    };
    LegendEntry {
        mark,
        label,
        material: core.map(|m| said(&m.name).to_owned()).unwrap_or_default(),
    }
}

/// A user's name, fit for a drawing: no control characters, and not too long.
fn shortened(name: &str) -> String {
    let mut clean = name.chars().filter(|c| !c.is_control());
    let mut short: String = clean.by_ref().take(LONGEST_NAME).collect();
    if clean.next().is_some() {
        short.push('…');
    }
    short
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::charts::samples;
    use crate::engine::units::{Length, LinearDensity};

    fn legend(harp: &Harp) -> Vec<String> {
        Marks::of(harp).legend.into_iter().map(|entry| entry.label).collect()
    }

    #[test]
    fn the_legend_names_each_mark_once_from_the_top() {
        assert_eq!(legend(&samples::harp(47)), ["nylon", "gut", "nylon, wound", "steel, wound"]);
        assert_eq!(legend(&samples::unknown(9)), ["no make-up"]);
        assert_eq!(legend(&samples::harp(0)), [""; 0]);
    }

    #[test]
    fn a_winding_keeps_the_shape_of_its_core_and_is_hollow() {
        let marks = Marks::of(&samples::harp(47)).of_string;
        assert_eq!(marks[0], Mark { shape: MarkShape::Circle, fill: Fill::Solid });
        assert_eq!(marks[33], Mark { shape: MarkShape::Circle, fill: Fill::Hollow });
        assert_eq!(marks[46], Mark { shape: MarkShape::Up, fill: Fill::Hollow });
    }

    #[test]
    fn materials_with_the_same_usual_shape_still_differ() {
        let mut harp = samples::harp(3);
        for (string, key) in harp.strings.iter_mut().zip(["steel", "iron", "silk"]) {
            string.make_up =
                Ok(MakeUp::plain(samples::material(key), Length::from_mm(0.5)).unwrap());
        }
        let shapes: Vec<MarkShape> = Marks::of(&harp).of_string.iter().map(|m| m.shape).collect();
        assert_eq!(shapes, [MarkShape::Up, MarkShape::Circle, MarkShape::Square]);
    }

    #[test]
    fn a_weighed_string_without_a_core_has_a_mark() {
        let mut harp = samples::harp(1);
        let density = LinearDensity::from_g_per_m(5.0);
        harp.strings[0].make_up = Ok(MakeUp::weighed(density, None, None, None).unwrap());
        assert_eq!(legend(&harp), ["weighed"]);
        assert_eq!(Marks::of(&harp).of_string[0].fill, Fill::Dotted);
    }

    #[test]
    fn a_hostile_name_is_shortened() {
        let mut harp = samples::harp(1);
        let mut material = (*samples::material("gut")).clone();
        material.key = format!("\u{0}\u{1b}{}", "ab".repeat(4000));
        harp.strings[0].make_up =
            Ok(MakeUp::plain(Arc::new(material), Length::from_mm(0.6)).unwrap());
        assert_eq!(legend(&harp), [format!("{}…", "ab".repeat(12))]);
    }
}
