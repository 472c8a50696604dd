//! What limits are called, what breaks them and what can be done about them.

use crate::engine::choose::LimitKind;
use crate::words::{Words, choose as say};

/// What a limit is about, as a maker would call it.
pub(super) const fn limit(kind: LimitKind) -> Words {
    match kind {
        LimitKind::MostShare => say::LIMIT_MOST_SHARE,
        LimitKind::LeastShare => say::LIMIT_LEAST_SHARE,
        LimitKind::UnknownShare => say::LIMIT_UNKNOWN_SHARE,
        LimitKind::Thin => say::LIMIT_THIN,
        LimitKind::Thick => say::LIMIT_THICK,
        LimitKind::UnknownGauge => say::LIMIT_UNKNOWN_GAUGE,
        LimitKind::Place => say::LIMIT_PLACE,
        LimitKind::Note => say::LIMIT_NOTE,
        LimitKind::Stock => say::LIMIT_STOCK,
        LimitKind::Order => say::LIMIT_ORDER,
        LimitKind::Shrinking => say::LIMIT_SHRINKING,
        LimitKind::Jump => say::LIMIT_JUMP,
        LimitKind::Changes => say::LIMIT_CHANGES,
        LimitKind::Items => say::LIMIT_ITEMS,
        LimitKind::Total => say::LIMIT_TOTAL,
        LimitKind::Breaks => say::LIMIT_BREAKS,
        LimitKind::NoPull => say::LIMIT_NO_TENSION,
    }
}

/// What is wrong with so many items that break a limit on a string: `12 are too tight`.
pub(super) fn why_not(kind: LimitKind, count: usize) -> String {
    let said = match kind {
        LimitKind::MostShare => say::why_tight,
        LimitKind::LeastShare => say::why_slack,
        LimitKind::UnknownShare => say::why_unknown_load,
        LimitKind::Thin => say::why_thin,
        LimitKind::Thick => say::why_thick,
        LimitKind::UnknownGauge => say::why_unknown_gauge,
        LimitKind::Place => say::why_kind,
        LimitKind::Note => say::why_note,
        LimitKind::Stock => say::why_stock,
        LimitKind::Breaks => say::why_breaks,
        LimitKind::NoPull => say::why_stiff,
        _ => say::why_neighbours,
    };
    said(&count)
}

/// What a maker can do about a limit.
pub(super) const fn remedy(kind: LimitKind) -> Words {
    match kind {
        LimitKind::MostShare => say::DO_MOST_SHARE,
        LimitKind::LeastShare => say::DO_LEAST_SHARE,
        LimitKind::UnknownShare => say::DO_UNKNOWN_SHARE,
        LimitKind::Thin | LimitKind::Thick | LimitKind::UnknownGauge => say::DO_ZONE,
        LimitKind::Place => say::DO_PLACE,
        LimitKind::Note => say::DO_NOTE,
        LimitKind::Stock => say::DO_STOCK,
        LimitKind::Order => say::DO_ORDER,
        LimitKind::Shrinking => say::DO_SHRINKING,
        LimitKind::Jump => say::DO_JUMP,
        LimitKind::Changes => say::DO_CHANGES,
        LimitKind::Items => say::DO_ITEMS,
        LimitKind::Total => say::DO_TOTAL,
        LimitKind::Breaks | LimitKind::NoPull => say::DO_LENGTHS,
    }
}
