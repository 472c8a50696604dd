//! The cross-section of a string, to scale: plain shapes in millimetres, no page.

use crate::engine::construction::{MakeUp, Section};

/// A shape of the drawing; `layer` 0 is the core.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SectionShape {
    /// A circle.
    Circle { x: f64, y: f64, radius: f64, layer: usize },
    /// An upright rectangle by its corner.
    Rect { x: f64, y: f64, width: f64, height: f64, layer: usize },
}

/// The drawing: the string seen from its end at the left, cut along its length at the right.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SectionDrawing {
    pub shapes: Vec<SectionShape>,
    pub width_mm: f64,
    pub height_mm: f64,
    /// Length of the scale bar.
    pub bar_mm: f64,
}

/// Lengths of the cut for each diameter of the string.
const CUT_DIAMETERS: f64 = 2.4;
/// The most turns of a layer that are drawn.
const MOST_TURNS: usize = 200;

/// Draws a make-up; `None` when its diameters are not known.
pub fn draw(make_up: &MakeUp) -> Option<SectionDrawing> {
    let (_, core) = make_up.core()?;
    let (core_mm, gauge_mm) = (core.to_mm(), make_up.gauge()?.to_mm());
    let middle = gauge_mm / 2.0;
    let (left, length) = (gauge_mm * 1.25, gauge_mm * CUT_DIAMETERS);
    let mut rings =
        vec![SectionShape::Circle { x: middle, y: middle, radius: core_mm / 2.0, layer: 0 }];
    let mut cut = vec![SectionShape::Rect {
        x: left,
        y: middle - core_mm / 2.0,
        width: length,
        height: core_mm,
        layer: 0,
    }];
    let mut under = core_mm / 2.0;
    for (index, layer) in make_up.layers().iter().enumerate() {
        let number = index + 1;
        let thickness = layer.section.thickness().to_mm();
        rings.push(SectionShape::Circle {
            x: middle,
            y: middle,
            radius: under + thickness,
            layer: number,
        });
        let width = match layer.section {
            Section::Round { diameter } => diameter.to_mm(),
            Section::Ribbon { width, .. } => width.to_mm(),
        };
        let pitch = width / layer.packing_ratio;
        let turn = |turn: usize, side: f64| {
            // The turns on the two sides are half a pitch apart, as a helix is.
            #[expect(clippy::cast_precision_loss, reason = "at most a few hundred turns")]
            let along = turn as f64 * pitch + if side > 0.0 { pitch / 2.0 } else { 0.0 };
            let y = middle + side * (under + thickness / 2.0);
            match layer.section {
                Section::Round { diameter } => {
                    let radius = diameter.to_mm() / 2.0;
                    SectionShape::Circle { x: left + along + radius, y, radius, layer: number }
                }
                Section::Ribbon { .. } => SectionShape::Rect {
                    x: left + along,
                    y: y - thickness / 2.0,
                    width,
                    height: thickness,
                    layer: number,
                },
            }
        };
        let fits = |shape: &SectionShape| match *shape {
            SectionShape::Circle { x, radius, .. } => x + radius <= left + length,
            SectionShape::Rect { x, width, .. } => x + width <= left + length,
        };
        for side in [-1.0, 1.0] {
            cut.extend((0..MOST_TURNS).map(|n| turn(n, side)).take_while(fits));
        }
        under += thickness;
    }
    // The outer rings first, so that the inner ones lie on them.
    rings.reverse();
    rings.extend(cut);
    let bar_mm = if gauge_mm > 1.2 { 1.0 } else { 0.5 };
    Some(SectionDrawing { shapes: rings, width_mm: left + length, height_mm: gauge_mm, bar_mm })
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::engine::construction::Layer;
    use crate::engine::material::built_in;
    use crate::engine::units::Length;

    fn wound(packing_ratio: f64) -> MakeUp {
        let material = |key: &str| Arc::new(built_in().into_iter().find(|m| m.key == key).unwrap());
        let mm = Length::from_mm;
        let bed = Layer {
            material: material("silk"),
            section: Section::Round { diameter: mm(0.1) },
            packing_ratio,
        };
        let wrap = Layer {
            material: material("bronze"),
            section: Section::Ribbon { thickness: mm(0.15), width: mm(0.6) },
            packing_ratio: 1.0,
        };
        MakeUp::wound(material("steel"), mm(0.5), vec![bed, wrap], (mm(0.0), mm(0.0))).unwrap()
    }

    #[test]
    fn every_layer_stands_at_its_true_radius() {
        let drawing = draw(&wound(1.0)).unwrap();
        let radii: Vec<(usize, f64)> = drawing
            .shapes
            .iter()
            .filter_map(|shape| match *shape {
                SectionShape::Circle { x, radius, layer, .. } if (x - 0.5).abs() < 1e-9 => {
                    Some((layer, (radius * 1e6).round() / 1e6))
                }
                _ => None,
            })
            .collect();
        assert_eq!(radii, [(2, 0.5), (1, 0.35), (0, 0.25)]);
        assert!((drawing.height_mm - 1.0).abs() < 1e-12);
    }

    #[test]
    fn loose_turns_are_fewer() {
        let turns = |packing: f64| {
            let drawing = draw(&wound(packing)).unwrap();
            drawing
                .shapes
                .iter()
                .filter(|s| matches!(s, SectionShape::Circle { layer: 1, .. }))
                .count()
        };
        assert!(turns(0.5) * 2 <= turns(1.0) + 4, "{} and {}", turns(0.5), turns(1.0));
        assert!(turns(0.5) > 10);
    }

    #[test]
    fn no_make_up_draws_more_than_a_page_can_bear() {
        assert!(draw(&wound(0.05)).unwrap().shapes.len() < 1_000);
    }
}
