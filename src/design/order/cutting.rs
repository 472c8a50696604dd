//! How many coils of one length some pieces take.
//!
//! First the longest piece that is left goes into the first coil that has room (first-fit decreasing); then
//! a bound says how few could do. Where they differ, a search settles it, unless it would take too long.
//!
//! # Source
//!
//! The bound: S. Martello and P. Toth, Lower bounds and reduction procedures for the bin packing problem,
//! Discrete Applied Mathematics 28 (1990) 59 (`L2`; from memory). The tests compare with trying everything.

use super::Packs;
use crate::engine::order::sort;

/// The most steps of a search; some milliseconds.
const MOST_STEPS: usize = 20_000;

/// How many coils the pieces take, all in millimetres; `None` when a piece is longer than a coil.
///
/// # Example
///
/// Of three pieces of 600 mm only one goes into each metre; the three of 400 mm fill them.
///
/// ```
/// use stringloft::design::order::{Packs, cutting::coils};
///
/// let pieces = [400, 600, 400, 600, 400, 600];
/// assert_eq!(coils(&pieces, 1_000), Some(Packs { count: 3, at_least: 3 }));
/// assert_eq!(coils(&[1_001], 1_000), None);
/// ```
pub fn coils(pieces: &[u32], coil: u32) -> Option<Packs> {
    let mut pieces: Vec<u32> = pieces.iter().copied().filter(|piece| *piece > 0).collect();
    sort(&mut pieces, |one, other| one < other);
    if pieces.first().is_some_and(|longest| *longest > coil) {
        return None;
    }
    let mut count = first_fit(&pieces, coil);
    let mut at_least = bound(&pieces, coil);
    let mut steps = MOST_STEPS;
    while at_least < count {
        let mut room = vec![coil; at_least];
        let left: u64 = pieces.iter().map(|piece| u64::from(*piece)).sum();
        match fits(&pieces, &mut room, left, &mut steps) {
            Some(true) => count = at_least,
            Some(false) => at_least += 1,
            None => break,
        }
    }
    Some(Packs { count, at_least })
}

fn first_fit(pieces: &[u32], coil: u32) -> usize {
    let mut room: Vec<u32> = Vec::new();
    for piece in pieces {
        match room.iter_mut().find(|room| **room >= *piece) {
            Some(room) => *room -= piece,
            None => room.push(coil - piece),
        }
    }
    room.len()
}

/// No fewer coils can do. For each length `k` up to half a coil: pieces longer than `coil − k` stand
/// alone, those longer than half stand apart, and what of the others down to `k` finds no room beside
/// them takes further coils.
fn bound(pieces: &[u32], coil: u32) -> usize {
    let coil = u64::from(coil);
    let long = |piece: &u64| *piece * 2 > coil;
    let pieces: Vec<u64> = pieces.iter().copied().map(u64::from).collect();
    let halves = pieces.iter().copied().filter(|piece| !long(piece));
    let tries = halves.chain([0]).map(|k| {
        let beside = pieces.iter().filter(|piece| long(piece) && **piece <= coil - k);
        let room: u64 = beside.map(|piece| coil - piece).sum();
        let short: u64 = pieces.iter().filter(|piece| !long(piece) && **piece >= k).sum();
        let apart = pieces.iter().filter(|piece| long(piece)).count();
        let further = short.saturating_sub(room).div_ceil(coil.max(1));
        apart + usize::try_from(further).unwrap_or(usize::MAX)
    });
    tries.max().unwrap_or(0)
}

/// Whether the pieces, longest first, go into the rooms; `None` when the steps run out.
fn fits(pieces: &[u32], room: &mut [u32], left: u64, steps: &mut usize) -> Option<bool> {
    let Some((piece, rest)) = pieces.split_first() else { return Some(true) };
    *steps = steps.checked_sub(1)?;
    let free: u64 = room.iter().map(|room| u64::from(*room)).sum();
    if free < left {
        return Some(false);
    }
    for at in 0..room.len() {
        // A coil with as much room as one that was tried is no other try.
        if room[at] < *piece || room[..at].contains(&room[at]) {
            continue;
        }
        room[at] -= piece;
        let found = fits(rest, room, left - u64::from(*piece), steps);
        room[at] += piece;
        if found != Some(false) {
            return found;
        }
    }
    Some(false)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Tries every way to part the pieces.
    fn by_trying(pieces: &[u32], coil: u32) -> usize {
        fn try_all(pieces: &[u32], rooms: &mut Vec<u32>, coil: u32, best: &mut usize) {
            let Some((piece, rest)) = pieces.split_first() else {
                *best = (*best).min(rooms.len());
                return;
            };
            for at in 0..rooms.len() {
                if rooms[at] >= *piece {
                    rooms[at] -= piece;
                    try_all(rest, rooms, coil, best);
                    rooms[at] += piece;
                }
            }
            rooms.push(coil - piece);
            try_all(rest, rooms, coil, best);
            rooms.pop();
        }
        let mut best = usize::MAX;
        try_all(pieces, &mut Vec::new(), coil, &mut best);
        best
    }

    #[test]
    fn no_fewer_coils_do_than_trying_everything_finds() {
        let mut seed = 1_u64;
        let mut draw = |most: u64| {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            u32::try_from(1 + (seed >> 33) % most).unwrap()
        };
        for round in 0..400 {
            let most = [20, 50, 60, 100][round % 4];
            let pieces: Vec<u32> = (0..=round % 8).map(|_| draw(most)).collect();
            let best = by_trying(&pieces, 100);
            let expected = Some(Packs { count: best, at_least: best });
            assert_eq!(coils(&pieces, 100), expected, "{pieces:?}");
        }
    }

    /// First-fit decreasing takes 4 coils here, and 3 suffice: 44 + 17, 24 + 24 + 6 + 6, 22 + 21 + 8 + 8.
    #[test]
    fn the_search_finds_what_first_fit_misses() {
        let pieces = [44, 24, 24, 22, 21, 17, 8, 8, 6, 6];
        assert_eq!(first_fit(&pieces, 61), 4);
        assert_eq!(by_trying(&pieces, 61), 3);
        assert_eq!(coils(&pieces, 61), Some(Packs { count: 3, at_least: 3 }));
    }

    #[test]
    fn nothing_takes_no_coil_and_too_long_a_piece_goes_into_none() {
        assert_eq!(coils(&[], 1_000), Some(Packs { count: 0, at_least: 0 }));
        assert_eq!(coils(&[0], 0), Some(Packs { count: 0, at_least: 0 }));
        assert_eq!(coils(&[5, 1_001], 1_000), None);
        assert_eq!(coils(&[1], 0), None);
    }

    #[test]
    fn many_pieces_end_with_a_bound() {
        let mut seed = 7_u64;
        let mut draw = || {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            u32::try_from(201 + (seed >> 33) % 400).unwrap()
        };
        let pieces: Vec<u32> = (0..1_000).map(|_| draw()).collect();
        let packs = coils(&pieces, 1_000).unwrap();
        let sum: u64 = pieces.iter().map(|piece| u64::from(*piece)).sum();
        assert!(packs.at_least <= packs.count && packs.count <= packs.at_least * 5 / 4);
        assert!(u64::try_from(packs.at_least).unwrap() >= sum.div_ceil(1_000));
    }
}
