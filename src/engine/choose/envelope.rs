//! The least of many straight lines at given places, in as many steps as there are bits in the number of places.
//!
//! What it costs to follow an item at `u` by one at `p`, `V + W (p − u)²`, is `W u²` and a line in `u`; so the best of
//! many followers is the lowest line.
//!
//! # Source
//!
//! The tree of lines after Li Chao (programming contests, from memory): each node keeps the line that is lowest in
//! the middle of its stretch, and the other goes to the half where it may yet be lower.

/// No line.
const NONE: u16 = u16::MAX;

#[derive(Clone, Copy)]
struct Line {
    slope: f64,
    height: f64,
    of: u16,
}

impl Line {
    fn at(&self, place: f64) -> f64 {
        self.height + self.slope * place
    }
}

/// The lowest of the lines put in so far.
pub(super) struct Envelope {
    nodes: Vec<Line>,
}

impl Envelope {
    pub const fn new() -> Self {
        Self { nodes: Vec::new() }
    }

    /// Without any line, for so many places.
    pub fn clear(&mut self, places: usize) {
        self.nodes.clear();
        let none = Line { slope: 0.0, height: f64::INFINITY, of: NONE };
        self.nodes.resize((places + 1).next_power_of_two(), none);
    }

    /// Puts in the line of an owner. `places` stand in rising order and are the same at each call.
    pub fn put(&mut self, places: &[f64], slope: f64, height: f64, of: u16) {
        let mut line = Line { slope, height, of };
        let (mut node, mut low, mut high) = (1, 0, places.len());
        while low < high {
            let middle = usize::midpoint(low, high);
            let own = &mut self.nodes[node];
            if own.of == NONE {
                *own = line;
                return;
            }
            if line.at(places[middle]) < own.at(places[middle]) {
                std::mem::swap(own, &mut line);
            }
            if line.slope > own.slope {
                (node, high) = (2 * node, middle);
            } else if line.slope < own.slope {
                (node, low) = (2 * node + 1, middle + 1);
            } else {
                return;
            }
        }
    }

    /// The owner of the lowest line at the place of this rank.
    pub fn lowest(&self, places: &[f64], rank: usize) -> Option<usize> {
        let place = places[rank];
        let (mut node, mut low, mut high) = (1, 0, places.len());
        let (mut least, mut of) = (f64::INFINITY, NONE);
        while low < high {
            let own = &self.nodes[node];
            if own.of == NONE {
                break;
            }
            let height = own.at(place);
            if height < least {
                (least, of) = (height, own.of);
            }
            let middle = usize::midpoint(low, high);
            if rank < middle {
                (node, high) = (2 * node, middle);
            } else if rank > middle {
                (node, low) = (2 * node + 1, middle + 1);
            } else {
                break;
            }
        }
        (of != NONE).then_some(usize::from(of))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_lowest_line_is_found_at_every_place() {
        let places: Vec<f64> = (0..37_u16).map(|place| f64::from(place * place) / 100.0).collect();
        let mut envelope = Envelope::new();
        envelope.clear(places.len());
        let mut lines: Vec<(f64, f64)> = Vec::new();
        assert_eq!(envelope.lowest(&places, 5), None);
        let mut seed = 7_u32;
        let mut drawn = || {
            seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            f64::from(seed >> 16) / 65_536.0
        };
        for of in 0..200_u16 {
            let (slope, height) = (4.0 * drawn() - 2.0, 10.0 * drawn());
            envelope.put(&places, slope, height, of);
            lines.push((slope, height));
            for (rank, place) in places.iter().enumerate() {
                let height = |of: usize| lines[of].1 + lines[of].0 * place;
                let least = (0..lines.len()).map(height).fold(f64::INFINITY, f64::min);
                assert_eq!(envelope.lowest(&places, rank).map(height), Some(least));
            }
        }
    }
}
