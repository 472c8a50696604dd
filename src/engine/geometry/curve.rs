//! The drawn curve of the bridge pins, from which lengths follow.

use kurbo::{BezPath, Point as Node};
use thiserror::Error;

use super::spline::Spline;
use super::{Axes, Geometry};
use crate::engine::analysis::{Known, Unknown};
use crate::engine::units::Length;
use crate::words::{engine as say, numeral};

/// The most nodes of a drawn curve.
pub const MOST_NODES: usize = 40;
/// The least distance of two nodes, square to the strings.
const LEAST_STEP_MM: f64 = 0.1;

/// Why there is no harmonic curve.
#[derive(Clone, Copy, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum CurveError {
    /// Too few or too many nodes.
    #[error("{}", say::curve_count(.got, &MOST_NODES))]
    Count {
        /// What was given.
        got: usize,
    },
    /// A node that is no number.
    #[error("{}", say::curve_number(.number))]
    NotANumber {
        /// Which, from 1.
        number: usize,
    },
    /// A node that does not lie beyond the one before.
    #[error("{}", say::curve_order(&numeral(*.got_mm), &numeral(LEAST_STEP_MM), .number))]
    Order {
        /// Which, from 1.
        number: usize,
        /// How far it lies beyond the one before.
        got_mm: f64,
    },
}

/// The curve of the bridge pins, drawn through nodes that are given square to the strings and along them: a
/// natural cubic spline, beyond its ends straight. Every string meets it just once.
#[derive(Clone, Debug, PartialEq)]
pub struct PinCurve {
    spline: Spline,
}

/// A curve with few nodes and how well it keeps to the pins.
#[derive(Clone, Debug, PartialEq)]
pub struct Fitted {
    /// The curve.
    pub curve: PinCurve,
    /// How far the farthest pin would move along its string.
    pub miss: Length,
}

impl PinCurve {
    /// Through nodes from the bass up: how far square to the strings from the lowest one, and how far along them
    /// from its hole.
    ///
    /// # Errors
    ///
    /// When there are too few or too many nodes, or one is no number or does not lie beyond the one before.
    pub fn new(nodes: &[(Length, Length)]) -> Result<Self, CurveError> {
        if !(2..=MOST_NODES).contains(&nodes.len()) {
            return Err(CurveError::Count { got: nodes.len() });
        }
        Self::of_any_count(nodes)
    }

    fn of_any_count(nodes: &[(Length, Length)]) -> Result<Self, CurveError> {
        let is_number = |(across, along): &(Length, Length)| {
            across.to_m().is_finite() && along.to_m().is_finite()
        };
        if let Some(place) = nodes.iter().position(|node| !is_number(node)) {
            return Err(CurveError::NotANumber { number: place + 1 });
        }
        let step_mm = |pair: &[(Length, Length)]| pair[1].0.to_mm() - pair[0].0.to_mm();
        // A step that was typed as the least may come out a little less.
        let wrong = |pair: &[(Length, Length)]| step_mm(pair) < LEAST_STEP_MM - 1e-9;
        if let Some(place) = nodes.windows(2).position(wrong) {
            let got_mm = step_mm(&nodes[place..]);
            return Err(CurveError::Order { number: place + 2, got_mm });
        }
        let (knots, values) = nodes.iter().map(|(a, b)| (a.to_m(), b.to_m())).unzip();
        let spline = Spline::new(knots, values).ok_or(CurveError::Count { got: nodes.len() })?;
        Ok(Self { spline })
    }

    /// The nodes.
    pub fn nodes(&self) -> Vec<(Length, Length)> {
        let pairs = self.spline.knots.iter().zip(&self.spline.values);
        pairs.map(|(across, along)| (Length::from_m(*across), Length::from_m(*along))).collect()
    }

    /// How far along its string the curve meets a string at a distance from the lowest one.
    pub fn along_at(&self, across: Length) -> Length {
        Length::from_m(self.spline.at(across.to_m()))
    }

    /// The curve from its first node to its last: metres square to the strings and along them.
    pub fn path(&self) -> BezPath {
        let spline = &self.spline;
        let mut path = BezPath::new();
        for (place, from) in spline.knots.iter().enumerate() {
            let node = Node::new(*from, spline.values[place]);
            if place == 0 {
                path.move_to(node);
                continue;
            }
            let before = Node::new(spline.knots[place - 1], spline.values[place - 1]);
            let third = (from - before.x) / 3.0;
            let one = Node::new(before.x + third, before.y + third * spline.slope(before.x));
            let two = Node::new(from - third, node.y - third * spline.slope(*from));
            path.curve_to(one, two, node);
        }
        path
    }

    /// The vibrating lengths of so many strings, the highest first: from the bar to the curve, `f(x) − x cot θ − s`.
    /// A string that the curve leaves no length has none.
    ///
    /// # Example
    ///
    /// Strings at 45 degrees to the board, 10 mm apart, under a level curve: each is 10 mm shorter than the next
    /// lower one.
    ///
    /// ```
    /// use stringloft::engine::geometry::{Gaps, Geometry, PinCurve};
    /// use stringloft::engine::units::Length;
    ///
    /// let mm = Length::from_mm;
    /// let curve = PinCurve::new(&[(mm(0.0), mm(500.0)), (mm(100.0), mm(500.0))])?;
    /// let geometry = Geometry {
    ///     board_angle_rad: 45.0_f64.to_radians(),
    ///     gaps: Gaps::Uniform(mm(10.0)),
    ///     ..Geometry::default()
    /// };
    /// let lengths = curve.lengths(3, &geometry);
    /// assert!((lengths[0].expect("a length").to_mm() - 480.0).abs() < 1e-9);
    /// # Ok::<(), stringloft::engine::geometry::CurveError>(())
    /// ```
    pub fn lengths(&self, count: usize, geometry: &Geometry) -> Vec<Known<Length>> {
        let axes = Axes::new(geometry.board_angle_rad, geometry.lean_rad);
        let places = geometry.gaps.places(count, geometry.measured, &axes);
        let length = |(along_board_m, _): (f64, _)| {
            let (across, on_board) = axes.on_board(along_board_m);
            let length_m = self.spline.at(across) - on_board - geometry.start.to_m();
            if length_m > 0.0 && length_m.is_finite() {
                Ok(Length::from_m(length_m))
            } else {
                Err(Unknown::OffCurve)
            }
        };
        places.into_iter().map(length).collect()
    }

    /// The curve with so many nodes that comes nearest to pins, given from the bass up: by least squares of the
    /// distances along the strings, with nodes at pins that lie evenly among all. With as many nodes as pins, or
    /// more, it goes through all of them. Pins that do not lie beyond the one before are left out.
    ///
    /// # Errors
    ///
    /// When there are fewer than two pins, or one is no number.
    pub fn through(pins: &[(Length, Length)], nodes: usize) -> Result<Fitted, CurveError> {
        let pins = apart(pins);
        let count = nodes.clamp(2, MOST_NODES).min(pins.len());
        if count == pins.len() {
            return Ok(Fitted { curve: Self::new(&pins)?, miss: Length::default() });
        }
        // Checks the numbers and the order of all.
        Self::of_any_count(&pins)?;
        let places: Vec<usize> =
            (0..count).map(|node| node * (pins.len() - 1) / (count - 1)).collect();
        Self::at_pins(&pins, &places)
    }

    /// The curve with at most so many nodes whose farthest pin moves least: by [`through`](Self::through), after
    /// which the nodes between the ends are moved from pin to pin for as long as that brings the farthest pin nearer.
    /// Of curves that come equally near to 0.05 mm it takes the one with the fewest nodes.
    ///
    /// # Errors
    ///
    /// As [`through`](Self::through).
    ///
    /// # Example
    ///
    /// Pins on a straight line need two nodes.
    ///
    /// ```
    /// use stringloft::engine::geometry::PinCurve;
    /// use stringloft::engine::units::Length;
    ///
    /// let mm = Length::from_mm;
    /// let pins: Vec<_> = [0.0, 10.0, 20.0, 30.0].map(|at| (mm(at), mm(500.0 - at))).to_vec();
    /// let fitted = PinCurve::closest(&pins, 7)?;
    /// assert_eq!(fitted.curve.nodes().len(), 2);
    /// assert!(fitted.miss.to_mm() < 1e-9);
    /// # Ok::<(), stringloft::engine::geometry::CurveError>(())
    /// ```
    pub fn closest(pins: &[(Length, Length)], most_nodes: usize) -> Result<Fitted, CurveError> {
        let mut best = Self::through(pins, 2)?;
        let pins = apart(pins);
        for count in 3..=most_nodes.clamp(2, MOST_NODES).min(pins.len()) {
            let fitted = Self::moved_closer(&pins, count)?;
            if fitted.miss.to_mm() < best.miss.to_mm() - EQUALLY_NEAR_MM {
                best = fitted;
            }
        }
        Ok(best)
    }

    /// With so many nodes, moved from pin to pin for as long as that brings the farthest pin nearer.
    fn moved_closer(pins: &[(Length, Length)], count: usize) -> Result<Fitted, CurveError> {
        let last = pins.len() - 1;
        let mut places: Vec<usize> = (0..count).map(|node| node * last / (count - 1)).collect();
        let mut best = Self::at_pins(pins, &places)?;
        for _ in 0..MOST_ROUNDS {
            let before = best.miss;
            for node in 1..count - 1 {
                let (low, high) = (places[node - 1] + 1, places[node + 1] - 1);
                let here = places[node];
                for place in here.saturating_sub(2).max(low)..=(here + 2).min(high) {
                    let mut tried = places.clone();
                    tried[node] = place;
                    let fitted = Self::at_pins(pins, &tried)?;
                    if fitted.miss < best.miss {
                        (best, places) = (fitted, tried);
                    }
                }
            }
            if best.miss >= before {
                break;
            }
        }
        Ok(best)
    }

    /// Nearest to pins by least squares, with nodes at some of them.
    fn at_pins(pins: &[(Length, Length)], places: &[usize]) -> Result<Fitted, CurveError> {
        let knots: Vec<f64> = places.iter().map(|place| pins[*place].0.to_m()).collect();
        let values = least_squares(&knots, pins);
        let nodes: Vec<(Length, Length)> = knots
            .iter()
            .zip(values)
            .map(|(across, along)| (Length::from_m(*across), Length::from_m(along)))
            .collect();
        let curve = Self::new(&nodes)?;
        let off = |(across, along): &(Length, Length)| {
            (curve.along_at(*across).to_m() - along.to_m()).abs()
        };
        let miss = Length::from_m(pins.iter().map(off).fold(0.0, f64::max));
        Ok(Fitted { curve, miss })
    }
}

/// Misses that differ by less are equally near.
const EQUALLY_NEAR_MM: f64 = 0.05;
/// How often every node may be moved.
const MOST_ROUNDS: usize = 20;

/// The pins that lie beyond the one before.
fn apart(pins: &[(Length, Length)]) -> Vec<(Length, Length)> {
    let mut pins = pins.to_vec();
    pins.dedup_by(|next, last| next.0.to_mm() - last.0.to_mm() < LEAST_STEP_MM);
    pins
}

/// The values at the knots with which a spline comes nearest to all pins. As every knot lies at a pin, there is
/// just one answer.
fn least_squares(knots: &[f64], pins: &[(Length, Length)]) -> Vec<f64> {
    let count = knots.len();
    // What a rise of each node by one does to the spline at each pin.
    let rises: Vec<Vec<f64>> = (0..count)
        .filter_map(|node| {
            let values = (0..count).map(|other| if other == node { 1.0 } else { 0.0 }).collect();
            let spline = Spline::new(knots.to_vec(), values)?;
            Some(pins.iter().map(|(across, _)| spline.at(across.to_m())).collect())
        })
        .collect();
    let dot = |one: &[f64], other: &mut dyn Iterator<Item = f64>| {
        one.iter().zip(other).map(|(one, other)| one * other).sum::<f64>()
    };
    let mut rows: Vec<Vec<f64>> = rises
        .iter()
        .map(|rise| {
            let mut row: Vec<f64> =
                rises.iter().map(|other| dot(rise, &mut other.iter().copied())).collect();
            row.push(dot(rise, &mut pins.iter().map(|(_, along)| along.to_m())));
            row
        })
        .collect();
    // The matrix is symmetric and above 0, so that no pivots need be sought.
    for here in 0..rows.len() {
        let pivot = rows[here].clone();
        for row in rows.iter_mut().skip(here + 1) {
            let times = row[here] / pivot[here];
            row.iter_mut().zip(&pivot).for_each(|(cell, above)| *cell -= times * above);
        }
    }
    let mut values = vec![0.0; rows.len()];
    for here in (0..rows.len()).rev() {
        let known: f64 =
            (here + 1..rows.len()).map(|other| rows[here][other] * values[other]).sum();
        values[here] = (rows[here][rows.len()] - known) / rows[here][here];
    }
    values
}
