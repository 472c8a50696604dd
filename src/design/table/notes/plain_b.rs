//! What a B without a sign is: B natural, or B flat as in German lists.

use super::{Name, Octave};
use crate::engine::pitch::Letter;

/// How a letter is raised or lowered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Sign {
    None,
    /// `#`, `♭`, or a word.
    Mark,
    /// `is`, `es`, or the `s` of `as`.
    Ending,
}

/// What a B without a sign is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PlainB {
    /// As English names have it.
    Natural,
    /// As German names have it.
    Flat,
    /// Nobody knows, so that its note stays empty.
    Open,
}

/// What a B without a sign is, going by how the other notes are written. A list that has H has no other B than B
/// flat. Names such as `es` and `as` are German or Dutch, but where E or A is flat, so is B, and the Dutch write
/// that as `bes`. Whoever writes B flat with a sign means another note by B.
pub(super) fn plain_b_of(names: &[Option<Name>], is_german: bool) -> PlainB {
    let all = || names.iter().flatten();
    let of = |sign: Sign| all().filter(move |name| name.sign == sign);
    let others = |sign: Sign| of(sign).filter(|name| name.letter != Letter::B);
    if all().any(|name| name.german == Some('H')) {
        return PlainB::Flat;
    }
    if all().any(|name| name.letter == Letter::B && name.sign != Sign::None) {
        return PlainB::Natural;
    }
    if others(Sign::Ending).any(|name| name.alter < 0) {
        return PlainB::Flat;
    }
    if others(Sign::Ending).next().is_some() {
        return PlainB::Open;
    }
    let has_flat = others(Sign::Mark).any(|name| name.alter < 0);
    if others(Sign::Mark).next().is_some() {
        return if is_german && has_flat { PlainB::Open } else { PlainB::Natural };
    }
    let has_marks = all().any(|name| matches!(name.octave, Octave::Primes(_)));
    match (is_german, has_marks) {
        (true, true) => PlainB::Flat,
        (false, false) => PlainB::Natural,
        _ => PlainB::Open,
    }
}
