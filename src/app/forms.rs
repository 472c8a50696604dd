//! What stands in the forms of a design, as lists: `panels/form.rs` shows them.

use crate::design::choose::usual;
use crate::design::display;
use crate::design::document::Design;
use crate::design::edit::Field;
use crate::design::settings::{OneOf, Setting};

/// One thing in a form.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Entry {
    /// A field of a number.
    Number(Setting),
    /// A choice among words.
    Choice(OneOf),
    /// A line of text: its label, and an example of what goes into it.
    Text(Field, &'static str, &'static str),
    /// What there is to say about what stands above.
    Hint(&'static str),
}

use Entry::{Choice, Hint, Number, Text};

/// Entries under one head.
#[derive(Clone, Copy, Debug)]
pub struct Group {
    pub legend: &'static str,
    pub entries: &'static [Entry],
}

/// The whole instrument, by columns.
pub static INSTRUMENT: [[Group; 2]; 3] = [
    [
        Group {
            legend: "On the card",
            entries: &[
                Text(Field::Title, "Instrument", ""),
                Text(Field::Maker, "Maker", ""),
                Text(Field::Client, "Client", ""),
                Text(Field::Serial, "Serial", ""),
                Text(Field::Date, "Date", "2026-11-25"),
                Text(Field::OpenTuning, "Open tuning", "E flat major, levers down"),
                Text(Field::Remarks, "Remarks", ""),
            ],
        },
        Group {
            legend: "Levers, discs and frame",
            entries: &[
                Choice(OneOf::Mechanism),
                Number(Setting::Push),
                Hint(
                    "A string that differs is set under Details. The push is common practice, no source: measure your own.",
                ),
                Number(Setting::FrameExpansion),
                Hint(
                    "For drift by warmth. 0: the frame has not yet followed the air. Wood along the grain: 3 to 5 (from memory).",
                ),
            ],
        },
    ],
    [
        Group {
            legend: "Pitch and pluck",
            entries: &[
                Number(Setting::A4),
                Choice(OneOf::Temperament),
                Number(Setting::Pluck),
                Number(Setting::PluckBy),
                Number(Setting::DampingPartial),
                Hint(
                    "Common practice, no source: harps are plucked near 40 % of the length. A string is pulled aside by no more than 2 % of its length.",
                ),
            ],
        },
        Group {
            legend: "Cut length",
            entries: &[
                Number(Setting::AfterLength),
                Number(Setting::Turns),
                Number(Setting::TuningPin),
                Number(Setting::Knot),
                Number(Setting::Tail),
                Hint("Common practice, no source. Measure your own instrument."),
            ],
        },
    ],
    [
        Group {
            legend: "Findings and bands",
            entries: &[
                Number(Setting::WorkingShare),
                Number(Setting::SoftShare),
                Number(Setting::SlackShare),
                Number(Setting::LeastTension),
                Number(Setting::LeastStiffness),
                Number(Setting::MostStiffness),
                Number(Setting::Partial8),
                Number(Setting::Jump),
                Number(Setting::LeastRaise),
            ],
        },
        Group {
            legend: "Tolerances (±)",
            entries: &[
                Number(Setting::LengthOff),
                Number(Setting::PitchOff),
                Number(Setting::TemperatureOff),
                Number(Setting::PushOff),
                Number(Setting::DiameterOff),
                Number(Setting::DensityOff),
                Hint(
                    "Diameter and density hold where the material states none. Common practice, no source; the pitch after ISO 16.",
                ),
            ],
        },
    ],
];

/// How the strings stand.
pub static STRINGS: Group = Group {
    legend: "Strings",
    entries: &[
        Number(Setting::BoardAngle),
        Number(Setting::Lean),
        Number(Setting::Start),
        Number(Setting::PinSideways),
        Number(Setting::StringsFromNeck),
    ],
};

/// What stands around them.
pub static AROUND: Group = Group {
    legend: "Neck, pillar and board",
    entries: &[
        Number(Setting::BelowPins),
        Number(Setting::AbovePins),
        Number(Setting::PillarGap),
        Number(Setting::BoardBelow),
        Number(Setting::BoardAbove),
        Hint(
            "Common practice, from memory. Measure your own. How thick and wide each part is stands under Woods.",
        ),
    ],
};

/// The neck as far as loads go, below its wood.
pub static NECK: [Entry; 2] = [Number(Setting::NeckThickness), Number(Setting::NeckGrain)];

/// The pillar, below its wood.
pub static PILLAR: [Entry; 3] =
    [Number(Setting::PillarWidth), Number(Setting::PillarDepth), Number(Setting::PillarBeside)];

/// The soundboard, below its wood.
pub static BOARD: [Entry; 4] = [
    Number(Setting::BassWidth),
    Number(Setting::TrebleWidth),
    Number(Setting::BassThickness),
    Number(Setting::TrebleThickness),
];

/// The string rib, below its wood.
pub static RIB: [Entry; 5] = [
    Number(Setting::RibWidth),
    Number(Setting::RibHeight),
    Number(Setting::StripWidth),
    Number(Setting::StripHeight),
    Hint(
        "The rib inside runs along the strings, and the strip lies over it outside; both are glued on, with their grain along. 0 for what there is none of.",
    ),
];

/// Where the harp is kept.
pub static STANDS: Group = Group {
    legend: "Where it stands",
    entries: &[Choice(OneOf::Service), Hint("Damp wood creeps more under a load that stays.")],
};

/// What holes are drilled with.
pub static DRILLS: [Entry; 7] = [
    Number(Setting::BridgePin),
    Number(Setting::BridgePinDepth),
    Number(Setting::TuningPinDepth),
    Number(Setting::StringClearance),
    Number(Setting::Eyelet),
    Number(Setting::MechanismDrill),
    Hint(
        "0 for what is not drilled or not known. A pin goes through the neck where its depth is 0; the holes weaken the neck, which the loads count. With an eyelet, every string hole is as wide as it. Tuning pins have their diameter under Instrument: a tapered pin is drilled at its small end and reamed. Common practice, from memory; a hole is often 0.3 to 0.5 mm wider than its string.",
    ),
];

/// What no set of strings may break.
pub static LIMITS: [Entry; 4] = [
    Number(Setting::MostTotal),
    Number(Setting::MostChanges),
    Number(Setting::MostItems),
    Hint("An empty field is no limit."),
];

/// Which strings are chosen from, and what is usual for them.
pub static FAMILY: [Entry; 7] = [
    Choice(OneOf::Family),
    Number(Setting::ThickestPlain),
    Number(Setting::LeastShare),
    Number(Setting::MostShare),
    Number(Setting::MostJump),
    Hint(
        "An empty field holds what is usual for these strings: common practice, no source. Kinds that are listed below go before the family.",
    ),
    Hint("Breaking loads of one material differ from maker to maker: leave room."),
];

/// What matters how much when strings are chosen; each is said in words.
pub static WEIGHTS: [Setting; 6] = [
    Setting::TargetWeight,
    Setting::StiffnessWeight,
    Setting::TensionWeight,
    Setting::ChangesWeight,
    Setting::ItemsWeight,
    Setting::PriceWeight,
];

/// The strings for which spares are ordered.
pub static SPARES: [Entry; 2] = [Number(Setting::FirstSpare), Number(Setting::LastSpare)];

/// What an empty field of a number stands for.
pub fn when_empty(setting: Setting, design: &Design) -> String {
    let usual = usual(design);
    let number = match setting {
        Setting::ThickestPlain => display::decimals(usual.thickest_plain_mm, 2),
        Setting::LeastShare => display::percent(usual.least_share_percent),
        Setting::MostShare if usual.most_soft_share_percent < usual.most_share_percent => {
            let [metal, soft] = [usual.most_share_percent, usual.most_soft_share_percent];
            return format!(
                "{}, gut and plastics {}",
                display::percent(metal),
                display::percent(soft)
            );
        }
        Setting::MostShare => display::percent(usual.most_share_percent),
        Setting::MostJump => display::percent(usual.jump_percent),
        Setting::MostTotal => return "any".to_owned(),
        _ => return "any number".to_owned(),
    };
    format!("{number}, as is usual")
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Settings that are shown beside what they belong to: the plies by their wood, a width of all gaps while they
    /// are alike, a share of spares while it is one.
    const ELSEWHERE: [Setting; 4] =
        [Setting::NeckPlies, Setting::BoardPlies, Setting::Gap, Setting::Spares];
    const CHOSEN_ELSEWHERE: [OneOf; 2] = [OneOf::Measured, OneOf::Wants];

    #[test]
    fn every_setting_stands_in_one_form() {
        let groups = INSTRUMENT.as_flattened().iter().chain([&STRINGS, &AROUND, &STANDS]);
        let mut entries: Vec<Entry> = groups.flat_map(|group| group.entries.to_vec()).collect();
        entries.extend(NECK.iter().chain(&PILLAR).chain(&BOARD).chain(&RIB).chain(&DRILLS));
        entries.extend(FAMILY.iter().chain(&LIMITS).chain(&SPARES));
        entries.extend(WEIGHTS.map(Number));
        entries.extend(ELSEWHERE.map(Number));
        entries.extend(CHOSEN_ELSEWHERE.map(Choice));
        let count = |this: Entry| entries.iter().filter(|entry| **entry == this).count();
        for setting in Setting::ALL {
            assert_eq!(count(Number(setting)), 1, "{setting:?}");
        }
        for choice in OneOf::ALL {
            assert_eq!(count(Choice(choice)), 1, "{choice:?}");
        }
    }
}
