//! What a template must be before it is written, so that a hostile one costs no time and no paper.

use super::limits::{MOST_LETTER_MM, MOST_LETTERS, MOST_MM, MOST_POINTS, MOST_SHAPES};
use super::model::{Extent, LayerKind, PointMm, Shape, Template, TemplateError};
use super::plane::steps;
use crate::words::{Words, templates as say};

/// Fails with the first thing that cannot be drawn.
pub(super) fn check(template: &Template) -> Result<(), TemplateError> {
    let shapes = || template.layers.iter().flat_map(|layer| &layer.shapes);
    let count = shapes().count();
    if count == 0 {
        return Err(TemplateError::Empty);
    }
    let words = template.notes.iter().chain([&template.title, &template.origin]);
    words
        .chain(shapes().filter_map(words_of))
        .try_for_each(|text| letters(text.chars().count()))?;
    letters(template.notes.len())?;
    template
        .layers
        .iter()
        .try_for_each(|layer| layer.shapes.iter().try_for_each(|shape| one(layer.kind, shape)))?;
    let points = shapes().map(point_count).sum();
    if count > MOST_SHAPES || points > MOST_POINTS {
        return Err(TemplateError::Many { shapes: count, points });
    }
    Ok(())
}

impl Template {
    /// How far the drawing reaches, with the mark at the origin.
    ///
    /// # Errors
    ///
    /// When there is nothing to draw, or a number that cannot be drawn.
    pub fn extent(&self) -> Result<Extent, TemplateError> {
        check(self)?;
        let layers = self.drawn();
        let points = layers.iter().flat_map(|layer| &layer.shapes).flat_map(Shape::corners);
        let extent = Extent::of(points).ok_or(TemplateError::Empty)?;
        let (width_mm, height_mm) = (extent.width_mm(), extent.height_mm());
        if width_mm > MOST_MM || height_mm > MOST_MM {
            return Err(TemplateError::Size { width_mm, height_mm });
        }
        Ok(extent)
    }
}

fn letters(got: usize) -> Result<(), TemplateError> {
    if got > MOST_LETTERS { Err(TemplateError::Letters { got }) } else { Ok(()) }
}

fn words_of(shape: &Shape) -> Option<&String> {
    match shape {
        Shape::Text { text, .. } => Some(text),
        _ => None,
    }
}

fn point_count(shape: &Shape) -> usize {
    match shape {
        Shape::Polyline { points, .. } => points.len(),
        // As many as it will have as a line.
        Shape::Bezier { start, curves } => {
            let starts = std::iter::once(start).chain(curves.iter().map(|curve| &curve[2]));
            starts.zip(curves).map(|(from, curve)| steps(*from, curve)).sum()
        }
        Shape::Line(..) => 2,
        Shape::Circle { .. } | Shape::Cross { .. } | Shape::Text { .. } => 1,
    }
}

fn one(kind: LayerKind, shape: &Shape) -> Result<(), TemplateError> {
    let layer = kind.said();
    let measure = |what: Words, got_mm: f64, most_mm: f64| {
        if got_mm > 0.0 && got_mm <= most_mm {
            Ok(())
        } else {
            Err(TemplateError::Measure { layer, what, most_mm, got_mm })
        }
    };
    match shape {
        Shape::Line(from, to) => places(layer, &[*from, *to]),
        Shape::Polyline { points, .. } if points.len() < 2 => Err(TemplateError::Short { layer }),
        Shape::Polyline { points, .. } => places(layer, points),
        Shape::Bezier { curves, .. } if curves.is_empty() => Err(TemplateError::Short { layer }),
        Shape::Bezier { start, curves } => {
            places(layer, &[*start])?;
            places(layer, curves.as_flattened())
        }
        Shape::Circle { centre, radius_mm } => {
            places(layer, &[*centre])?;
            measure(say::RADIUS, *radius_mm, MOST_MM)
        }
        Shape::Cross { centre, arm_mm } => {
            places(layer, &[*centre])?;
            measure(say::CROSS, *arm_mm, MOST_MM)
        }
        Shape::Text { at, height_mm, angle_deg, .. } => {
            places(layer, &[*at])?;
            if !angle_deg.is_finite() {
                return Err(TemplateError::Angle { layer, got_deg: *angle_deg });
            }
            measure(say::LETTER_HEIGHT, *height_mm, MOST_LETTER_MM)
        }
    }
}

fn places(layer: Words, points: &[PointMm]) -> Result<(), TemplateError> {
    match points.iter().find(|point| !point.is_usable()) {
        None => Ok(()),
        Some(PointMm { x_mm, y_mm }) => {
            Err(TemplateError::Point { layer, x_mm: *x_mm, y_mm: *y_mm })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::papers::template::model::{Anchor, Layer};

    fn with(shape: Shape) -> Template {
        let layers = vec![Layer { kind: LayerKind::Pins, shapes: vec![shape] }];
        Template { title: "Sample".to_owned(), layers, ..Template::default() }
    }

    #[test]
    fn what_cannot_be_drawn_is_refused_with_its_layer() {
        let at = PointMm::new(10.0, 20.0);
        let text = |height_mm: f64, angle_deg: f64| Shape::Text {
            at,
            height_mm,
            text: "7".to_owned(),
            angle_deg,
            anchor: Anchor::Start,
        };
        let bad = [
            Shape::Line(at, PointMm::new(f64::NAN, 0.0)),
            Shape::Line(at, PointMm::new(0.0, 20_000.1)),
            Shape::Polyline { points: vec![at], closed: true },
            Shape::Bezier { start: at, curves: Vec::new() },
            Shape::Bezier { start: at, curves: vec![[at, at, PointMm::new(f64::INFINITY, 0.0)]] },
            Shape::Circle { centre: at, radius_mm: 0.0 },
            Shape::Cross { centre: at, arm_mm: f64::NAN },
            text(201.0, 0.0),
            text(3.0, f64::NAN),
        ];
        for shape in bad {
            let error = check(&with(shape.clone())).expect_err("a bad shape").to_string();
            assert!(error.contains("pins"), "{shape:?}: {error}");
        }
        assert_eq!(check(&with(text(3.0, 90.0))), Ok(()));
    }

    #[test]
    fn too_much_is_refused() {
        let circle = Shape::Circle { centre: PointMm::default(), radius_mm: 2.0 };
        let mut template = with(circle.clone());
        template.layers[0].shapes = vec![circle; MOST_SHAPES + 1];
        assert!(matches!(check(&template), Err(TemplateError::Many { .. })));
        let points = vec![PointMm::default(); MOST_POINTS + 1];
        template.layers[0].shapes = vec![Shape::Polyline { points, closed: false }];
        assert!(matches!(check(&template), Err(TemplateError::Many { .. })));
        let mut template = with(Shape::Cross { centre: PointMm::default(), arm_mm: 2.0 });
        template.notes = vec!["n".repeat(MOST_LETTERS + 1)];
        assert!(matches!(check(&template), Err(TemplateError::Letters { .. })));
        template.layers.clear();
        assert_eq!(check(&template), Err(TemplateError::Empty));
    }
}
