//! What limits are called, what breaks them and what can be done about them.

use crate::engine::choose::LimitKind;

/// What a limit is about, as a maker would call it.
pub(super) fn limit(kind: LimitKind) -> &'static str {
    match kind {
        LimitKind::MostShare => "the highest load share",
        LimitKind::LeastShare => "the lowest load share",
        LimitKind::UnknownShare => "that the breaking load must be known",
        LimitKind::Thin => "the thinnest gauge of the zone",
        LimitKind::Thick => "the thickest gauge of the zone",
        LimitKind::UnknownGauge => "that the gauge must be known in a zone of gauges",
        LimitKind::Place => "where a kind of string may be used",
        LimitKind::Note => "the notes that strings are sold for",
        LimitKind::Stock => "what is in stock",
        LimitKind::Order => "the order of the kinds of string",
        LimitKind::Shrinking => "that no string is thinner than the one above it",
        LimitKind::Jump => "the highest jump of the feel from string to string",
        LimitKind::Changes => "the number of changes of material",
        LimitKind::Items => "the number of different strings",
        LimitKind::Total => "the highest total tension",
        LimitKind::Breaks => "that no string breaks",
        LimitKind::NoPull => "that the tension can be computed",
    }
}

/// What is wrong with items that break a limit on a string: `12 are too tight`.
pub(super) const fn why_not(kind: LimitKind) -> &'static str {
    match kind {
        LimitKind::MostShare => "too tight",
        LimitKind::LeastShare => "too slack",
        LimitKind::UnknownShare => "of unknown breaking load",
        LimitKind::Thin => "too thin for the zone",
        LimitKind::Thick => "too thick for the zone",
        LimitKind::UnknownGauge => "of unknown gauge",
        LimitKind::Place => "of a kind not allowed there",
        LimitKind::Note => "not sold for this note",
        LimitKind::Stock => "not in stock",
        LimitKind::Breaks => "so tight that they break",
        LimitKind::NoPull => "too stiff for this length",
        _ => "in the way of their neighbours",
    }
}

/// What a maker can do about a limit.
pub(super) const fn remedy(kind: LimitKind) -> &'static str {
    match kind {
        LimitKind::MostShare => {
            "raise the highest load share, shorten these strings, or add thicker strings or others of greater strength to the stock"
        }
        LimitKind::LeastShare => {
            "lower the lowest load share, lengthen these strings, or add strings to the stock"
        }
        LimitKind::UnknownShare => "fill in the strength of the material",
        LimitKind::Thin | LimitKind::Thick | LimitKind::UnknownGauge => "widen the zone of gauges",
        LimitKind::Place => "allow another kind of string there",
        LimitKind::Note => "widen the notes that the items are sold for",
        LimitKind::Stock => "add what is missing to the stock",
        LimitKind::Order => "change the order of the kinds, or unlock a string",
        LimitKind::Shrinking => "unlock a string, or add gauges to the stock",
        LimitKind::Jump => "allow a higher jump, unlock a string, or add gauges to the stock",
        LimitKind::Changes => "allow one more change",
        LimitKind::Items => "allow more different strings",
        LimitKind::Total => "raise the highest total tension, or shorten the strings",
        LimitKind::Breaks | LimitKind::NoPull => "change the lengths, or add strings to the stock",
    }
}
