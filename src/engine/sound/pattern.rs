//! Which strings are played, and when each begins.

/// Strings of a scale: the eight of an octave.
const SCALE: usize = 8;
/// Steps from the lowest string of a chord to the others: root, third, fifth and octave.
const CHORD: [usize; 4] = [0, 2, 4, 7];
/// From one string of a scale to the next, in seconds.
const SCALE_S: f64 = 0.35;
/// The same for a glide, as fast as a hand runs over the strings. Common practice, no source.
const GLIDE_S: f64 = 0.06;

/// What is played.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Pattern {
    /// The string that is chosen.
    #[default]
    One,
    /// Eight strings up from it.
    Scale,
    /// Root, third, fifth and octave over it, all at once.
    Chord,
    /// Every string of the harp, from the lowest up.
    Glide,
}

impl Pattern {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::One, Self::Scale, Self::Chord, Self::Glide];

    /// The strings of a harp that has `count`, and when each begins, in seconds; both count from 0, the highest string
    /// being 0. Where there are too few strings above the one chosen, scale and chord begin lower.
    pub fn strings(self, chosen: usize, count: usize) -> Vec<(usize, f64)> {
        let Some(lowest) = count.checked_sub(1) else { return Vec::new() };
        let from = |reach: usize| chosen.max(reach).min(lowest);
        let up = |root: usize, steps: &mut dyn Iterator<Item = usize>, pace_s: f64| {
            let mut list = Vec::new();
            let mut start_s = 0.0;
            for string in steps.filter_map(|step| root.checked_sub(step)) {
                list.push((string, start_s));
                start_s += pace_s;
            }
            list
        };
        match self {
            Self::One => vec![(chosen.min(lowest), 0.0)],
            Self::Scale => up(from(SCALE - 1), &mut (0..SCALE), SCALE_S),
            Self::Chord => up(from(SCALE - 1), &mut CHORD.into_iter(), 0.0),
            Self::Glide => up(lowest, &mut (0..count), GLIDE_S),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn numbers(pattern: Pattern, chosen: usize, count: usize) -> Vec<usize> {
        pattern.strings(chosen, count).into_iter().map(|(string, _)| string).collect()
    }

    #[test]
    fn a_pattern_goes_up_from_the_string_that_is_chosen() {
        assert_eq!(numbers(Pattern::One, 12, 36), [12]);
        assert_eq!(numbers(Pattern::Scale, 12, 36), [12, 11, 10, 9, 8, 7, 6, 5]);
        assert_eq!(numbers(Pattern::Chord, 12, 36), [12, 10, 8, 5]);
        assert_eq!(numbers(Pattern::Glide, 12, 4), [3, 2, 1, 0]);
    }

    #[test]
    fn at_the_top_it_begins_lower_and_a_small_harp_has_what_it_has() {
        assert_eq!(numbers(Pattern::Scale, 2, 36), [7, 6, 5, 4, 3, 2, 1, 0]);
        assert_eq!(numbers(Pattern::Chord, 0, 3), [2, 0]);
        assert_eq!(numbers(Pattern::One, 9, 3), [2]);
        for pattern in Pattern::ALL {
            assert_eq!(numbers(pattern, 0, 0), [0_usize; 0]);
        }
    }

    #[test]
    fn a_chord_begins_at_once_and_a_scale_does_not() {
        let starts = |pattern: Pattern| pattern.strings(20, 36).into_iter().map(|(_, s)| s);
        assert!(starts(Pattern::Chord).all(|start| start == 0.0));
        assert!((starts(Pattern::Scale).fold(0.0, f64::max) - 7.0 * SCALE_S).abs() < 1e-12);
        assert!((starts(Pattern::Glide).fold(0.0, f64::max) - 35.0 * GLIDE_S).abs() < 1e-12);
    }
}
