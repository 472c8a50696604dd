//! From string to string: how wide, measured square to the strings or along the board.

use super::axes::Axes;
use crate::engine::structure::strip::Spacing;
use crate::engine::units::Length;

/// The gaps between neighbours, counted from the bass: gap 1 lies between the lowest string and the next one.
#[derive(Clone, Debug, PartialEq)]
pub enum Gaps {
    /// All alike.
    Uniform(Length),
    /// Some gaps by their number, rising, with even steps between them; beyond the ends they go on unchanged.
    Zones(Vec<(usize, Length)>),
    /// Each by itself, from the bass; where there are too few, the last goes on.
    Each(Vec<Length>),
}

/// The distance of two neighbours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gap {
    /// Square to the strings.
    pub square: Length,
    /// Along the board, from hole to hole.
    pub along_board: Length,
}

impl Gaps {
    /// The gap of a number, as it is measured; 0 where none was given.
    ///
    /// # Example
    ///
    /// A harp of 26 strings whose gaps go from 18 mm to 12 mm: the middle one of its 25 is 15 mm.
    ///
    /// ```
    /// use stringloft::engine::geometry::Gaps;
    /// use stringloft::engine::units::Length;
    ///
    /// let mm = Length::from_mm;
    /// let gaps = Gaps::Zones(vec![(1, mm(18.0)), (25, mm(12.0))]);
    /// assert!((gaps.gap(13).to_mm() - 15.0).abs() < 1e-12);
    /// ```
    pub fn gap(&self, number: usize) -> Length {
        match self {
            Self::Uniform(width) => *width,
            Self::Each(widths) => {
                let place = number.saturating_sub(1);
                widths.get(place).or(widths.last()).copied().unwrap_or_default()
            }
            Self::Zones(zones) => between(zones, number),
        }
    }

    /// For each of so many strings, the highest first: how far its hole is from that of the lowest along the
    /// board, in metres, and the gap to the next higher one.
    pub(super) fn places(
        &self,
        count: usize,
        measured: Spacing,
        axes: &Axes,
    ) -> Vec<(f64, Option<Gap>)> {
        let mut along_m = 0.0;
        let mut places: Vec<(f64, Option<Gap>)> = (1..=count)
            .map(|number| {
                let here = along_m;
                let gap = (number < count).then(|| {
                    let width_m = self.gap(number).to_m();
                    let (square, along) = match measured {
                        Spacing::Square => (width_m, width_m / axes.sine()),
                        Spacing::AlongBoard => (width_m * axes.sine(), width_m),
                    };
                    along_m += along;
                    Gap { square: Length::from_m(square), along_board: Length::from_m(along) }
                });
                (here, gap)
            })
            .collect();
        places.reverse();
        places
    }
}

/// Even steps between the zones on both sides.
fn between(zones: &[(usize, Length)], number: usize) -> Length {
    let after = zones.iter().position(|(at, _)| *at >= number);
    let (Some(first), Some(last)) = (zones.first(), zones.last()) else {
        return Length::default();
    };
    match after {
        None => last.1,
        Some(0) => first.1,
        Some(place) => {
            let ((low, from), (high, to)) = (zones[place - 1], zones[place]);
            let steps = |count: usize| u32::try_from(count).map_or(f64::INFINITY, f64::from);
            let share =
                steps(number.saturating_sub(low)) / steps(high.saturating_sub(low)).max(1.0);
            Length::from_m(from.to_m() + share * (to.to_m() - from.to_m()))
        }
    }
}
