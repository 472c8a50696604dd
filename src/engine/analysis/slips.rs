//! Slips of the hand: a note that does not follow from those around it, and a length that leaves the line of its
//! neighbours.

use super::StringFigures;
use crate::engine::findings::{Finding, FindingKind, Misplaced};
use crate::engine::order::sort;
use crate::engine::pitch::Note;
use crate::engine::units::Length;

/// How far a length may lie from the line of the four lengths around it, as a ratio and in mm, before it is taken for a
/// slip; both must be passed. The samples and new harps stay within 1.1 mm of it. Chosen for this project, no source.
const OFF: (f64, f64) = (0.012, 2.5);
/// By how much more than each neighbour it must be off. One wrong length puts those beside it off by two thirds of its
/// own error.
const STANDS_OUT: f64 = 1.2;
/// So many other strings of the same letter must agree on how it is altered. Chosen for this project, no source.
const OTHERS: usize = 2;
/// The lowest strings that may be tuned on their own, as a drone or beyond the discs is.
const LOWEST: usize = 2;

/// Notes that do not follow from their neighbours, and those that are altered as no other of their letter is.
pub(super) fn of_notes(strings: &[StringFigures]) -> Vec<Finding> {
    let note = |index: usize| strings.get(index)?.note;
    let mut found = Vec::new();
    for (index, own) in
        strings.iter().enumerate().filter_map(|(at, string)| Some((at, string.note?)))
    {
        let above = index.checked_sub(1).and_then(note);
        let below = note(index + 1);
        let beside = [above, below];
        let belongs = match (above, below) {
            // One letter has room between the two.
            (Some(above), Some(below)) => {
                (above.step() - below.step() == 2).then(|| below.step() + 1)
            }
            // At an end only another octave is a slip for certain.
            (None, Some(below)) => at_end(own, below, note(index + 2), 1),
            (Some(above), None) => at_end(own, above, index.checked_sub(2).and_then(note), -1),
            (None, None) => None,
        };
        if let Some(step) = belongs.filter(|step| *step != own.step()) {
            let altered = |letter| altered_as(strings, index, |other| other.letter() == letter);
            let signs = |letter| altered(letter).map_or(0, |(alter, _)| alter);
            if let Some(meant) = own.moved(step - own.step(), signs) {
                let kind = FindingKind::Note { note: own, meant, beside, why: Misplaced::Row };
                found.push(Finding { index, kind });
            }
            continue;
        }
        if index + LOWEST >= strings.len() {
            continue;
        }
        if let Some((alter, count)) =
            altered_as(strings, index, |other| other.letter() == own.letter())
            && count >= OTHERS
            && alter != own.alter()
            && let Some(meant) = own.moved(0, |_| alter)
        {
            let kind = FindingKind::Note { note: own, meant, beside, why: Misplaced::Sign };
            found.push(Finding { index, kind });
        }
    }
    found
}

/// The step of the note at an end, if it is right but for its octave; `toward` is where it lies from its neighbour.
fn at_end(own: Note, next: Note, after: Option<Note>, toward: i32) -> Option<i32> {
    let step = next.step() + toward;
    let runs = after.is_some_and(|after| next.step() - after.step() == toward);
    (runs && (own.step() - step) % 7 == 0).then_some(step)
}

/// How all other strings that `like` takes are altered, and how many there are; `None` where they differ.
fn altered_as(
    strings: &[StringFigures],
    index: usize,
    like: impl Fn(Note) -> bool,
) -> Option<(i8, usize)> {
    let others = strings.iter().enumerate().filter(|(at, _)| *at != index);
    let mut alters = others.filter_map(|(_, string)| string.note).filter(|note| like(*note));
    let first = alters.next()?.alter();
    let mut count = 1;
    for note in alters {
        if note.alter() != first {
            return None;
        }
        count += 1;
    }
    Some((first, count))
}

/// Lengths that leave the line of those around: each is the one that, put on the line, puts all around it in line. Of
/// several it is the one that was changed last, or the one that is off farthest.
pub(super) fn of_lengths(strings: &[StringFigures], changed: Option<usize>) -> Vec<Finding> {
    // Logarithms; a length that is not known is none, and so is all that follows from it.
    let known =
        |string: &StringFigures| string.length.map_or(f64::NAN, |length| length.to_m().ln());
    let logs: Vec<f64> = strings.iter().map(known).collect();
    let is_off = |logs: &[f64], index: usize| {
        let off = (logs[index] - line(logs, index)).abs();
        off > OFF.0.max(OFF.1 / Length::from_m(logs[index].exp()).to_mm())
    };
    let far: Vec<usize> = (0..logs.len()).filter(|&index| is_off(&logs, index)).collect();
    let mut found = Vec::new();
    // Lengths that are off near each other are of one slip, if of any.
    for group in far.chunk_by(|one, next| next - one <= REACH) {
        let around =
            group[0].saturating_sub(REACH)..(group[group.len() - 1] + REACH + 1).min(logs.len());
        let mut able: Vec<(usize, f64)> = Vec::new();
        for index in around.clone() {
            let mut mended = logs.clone();
            mended[index] = line(&logs, index);
            if mended[index].is_nan() {
                mended[index] = before_the_first(&logs, index);
            }
            if !mended[index].is_nan() && !around.clone().any(|other| is_off(&mended, other)) {
                able.push((index, mended[index]));
            }
        }
        let shift = |one: &(usize, f64)| (one.1 - logs[one.0]).abs();
        sort(&mut able, |one, other| shift(one) < shift(other));
        // Near an end the neighbours of several that may be meant cannot tell; a step of the whole curve, as between
        // materials, puts two off alike.
        let near_end = |one: &(usize, f64)| one.0 < REACH || one.0 + REACH >= logs.len();
        let is_told = match able.as_slice() {
            [one] => one.0 > 0 && one.0 + 1 < logs.len(),
            [one, next, ..] => !able.iter().any(near_end) && shift(one) > STANDS_OUT * shift(next),
            [] => false,
        };
        let just_changed = able.iter().find(|one| changed == Some(one.0));
        let slip = just_changed.or_else(|| able.first().filter(|_| is_told)).copied();
        if let Some((index, log)) = slip
            && let Ok(length) = strings[index].length
        {
            let line = Length::from_m(log.exp());
            found.push(Finding { index, kind: FindingKind::LengthOff { length, line } });
        }
    }
    found
}

/// How many strings on each side a wrong length puts off.
const REACH: usize = 3;

/// The value so many places on, or back; none beyond the ends.
fn at(logs: &[f64], index: usize, offset: isize) -> f64 {
    let place = index.checked_add_signed(offset);
    place.and_then(|place| logs.get(place).copied()).unwrap_or(f64::NAN)
}

/// Where a string lies on the cubic through four neighbours: two on each side, or one and three beside an end.
fn line(logs: &[f64], index: usize) -> f64 {
    let at = |offset| at(logs, index, offset);
    let even = (4.0 * (at(-1) + at(1)) - at(-2) - at(2)) / 6.0;
    if !even.is_nan() {
        return even;
    }
    let beside = |toward: isize| {
        0.25 * at(-toward) + 1.5 * at(toward) - at(2 * toward) + 0.25 * at(3 * toward)
    };
    let down = beside(1);
    if down.is_nan() { beside(-1) } else { down }
}

/// Where a string at an end lies on the cubic through the four that follow.
fn before_the_first(logs: &[f64], index: usize) -> f64 {
    let step = if index == 0 { 1 } else { -1 };
    let at = |times: isize| at(logs, index, times * step);
    4.0 * at(1) - 6.0 * at(2) + 4.0 * at(3) - at(4)
}
