//! How smooth the harmonic curve is: its curvature, the second difference of the lengths, and the strings that
//! stand out.

use super::neck::Smooth;
use super::{Axes, Placed};
use crate::engine::analysis::Known;
use crate::engine::order::sort;
use crate::engine::units::Length;

/// From which robust z-score on a second difference stands out.
///
/// Source: B. Iglewicz and D. C. Hoaglin, *How to Detect and Handle Outliers*, 1993 (from memory).
pub const OUTLYING: f64 = 3.5;
/// A normal distribution's median absolute deviation over its standard deviation.
const MEDIAN_DEVIATION: f64 = 0.6745;
/// A pin that lies nearer to the curve of its neighbours is no kink: lengths that are rounded to whole millimetres
/// alone can put it off by 1.3 mm.
pub const LEAST_MOVE_MM: f64 = 1.5;
/// How many neighbours on each side the curve is drawn through.
const NEIGHBOURS: usize = 2;

/// How smooth the harmonic curve is; one entry for each string, in the harp's order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Smoothness {
    /// Curvature of the curve at the bridge pin in 1/m; above 0 where its centre lies on the board's side.
    pub curvature_per_m: Vec<Option<f64>>,
    /// Second difference of the natural logarithm of the length, `ln(L₊ L₋/L²)`; `None` where a neighbour or its
    /// length is missing.
    pub second_difference: Vec<Option<f64>>,
    /// Strings that stand out, from string 1 down.
    pub kinks: Vec<Kink>,
}

/// A string whose length does not go with those of its neighbours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kink {
    /// Index of the string in the harp.
    pub index: usize,
    /// How far its second difference stands out: `0.6745 (D − median)/median deviation`.
    pub z_score: f64,
    /// How far its bridge pin would have to move along the string, to lie on the cubic through the two neighbours on
    /// either side; above 0 if the string must be longer.
    pub move_by: Length,
}

pub(super) fn smoothness(strings: &[Known<Placed>], axes: &Axes) -> Smoothness {
    let pins: Vec<Option<(f64, f64)>> = strings
        .iter()
        .map(|string| string.as_ref().ok().map(|placed| axes.own(placed.bridge)))
        .collect();
    let logs: Vec<Option<f64>> = strings
        .iter()
        .map(|string| {
            let log = string.as_ref().ok()?.length.to_m().ln();
            log.is_finite().then_some(log)
        })
        .collect();
    let second_difference: Vec<Option<f64>> = (0..strings.len())
        .map(|here| {
            let at = |place: usize| logs.get(place).copied().flatten();
            Some(at(here.checked_sub(1)?)? - 2.0 * at(here)? + at(here + 1)?)
        })
        .collect();
    let kinks = kinks(&second_difference, &pins);
    Smoothness { curvature_per_m: curvatures(&pins), second_difference, kinks }
}

fn curvatures(pins: &[Option<(f64, f64)>]) -> Vec<Option<f64>> {
    let known: Vec<(f64, f64)> = pins.iter().flatten().copied().collect();
    let curve = Smooth::through(&known);
    let mut chord = 0.0;
    let mut last: Option<(f64, f64)> = None;
    pins.iter()
        .map(|pin| {
            let (pin, curve) = ((*pin)?, curve.as_ref()?);
            chord += last.map_or(0.0, |last| (pin.0 - last.0).hypot(pin.1 - last.1));
            last = Some(pin);
            let curvature = curve.curvature(chord);
            curvature.is_finite().then_some(curvature)
        })
        .collect()
}

fn kinks(differences: &[Option<f64>], pins: &[Option<(f64, f64)>]) -> Vec<Kink> {
    let known: Vec<f64> = differences.iter().flatten().copied().collect();
    let Some(middle) = median(known.clone()) else { return Vec::new() };
    let off = known.iter().map(|difference| (difference - middle).abs()).collect();
    let deviation = median(off).unwrap_or(0.0).max(1e-9);
    let mut standing_out: Vec<(usize, f64)> = differences
        .iter()
        .enumerate()
        .filter_map(|(index, difference)| {
            let z_score = MEDIAN_DEVIATION * ((*difference)? - middle) / deviation;
            (z_score.abs() > OUTLYING).then_some((index, z_score))
        })
        .collect();
    sort(&mut standing_out, |one, other| one.1.abs() < other.1.abs());
    let (mut pins, mut kinks) = (pins.to_vec(), Vec::<Kink>::new());
    for (index, z_score) in standing_out {
        // One string that is off pulls the differences of both neighbours along, by half as much each.
        let is_pulled = kinks.iter().any(|other| other.index.abs_diff(index) <= 1);
        let Some(move_by) = move_m(&pins, index).map(Length::from_m) else { continue };
        if !is_pulled && move_by.to_mm().abs() >= LEAST_MOVE_MM {
            kinks.push(Kink { index, z_score, move_by });
            // It must not bend the curve through the neighbours of the others.
            pins[index] = None;
        }
    }
    sort(&mut kinks, |one, other| one.index > other.index);
    kinks
}

fn median(mut values: Vec<f64>) -> Option<f64> {
    sort(&mut values, |one, other| one > other);
    let (low, high) = (values.get((values.len().max(1) - 1) / 2)?, values.get(values.len() / 2)?);
    Some(0.5 * (low + high))
}

/// How far a pin lies below the polynomial through its neighbours, along its string.
fn move_m(pins: &[Option<(f64, f64)>], index: usize) -> Option<f64> {
    let (across, along) = pins.get(index).copied().flatten()?;
    let known = |place: &usize| pins.get(*place).copied().flatten();
    let higher = (0..index).rev().filter_map(|place| known(&place)).take(NEIGHBOURS);
    let lower = (index + 1..pins.len()).filter_map(|place| known(&place)).take(NEIGHBOURS);
    let mut around: Vec<(f64, f64)> = higher.chain(lower).collect();
    sort(&mut around, |one, other| one.0 > other.0);
    around.dedup_by(|next, last| next.0 - last.0 < 1e-6);
    if around.len() < 2 {
        return None;
    }
    // Lagrange's form.
    let weight = |own: &(f64, f64)| {
        let others = around.iter().filter(|other| other.0 != own.0);
        others.map(|other| (across - other.0) / (own.0 - other.0)).product::<f64>()
    };
    let moved = around.iter().map(|own| own.1 * weight(own)).sum::<f64>() - along;
    moved.is_finite().then_some(moved)
}
