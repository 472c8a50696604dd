//! What stands in the forms of a design, as lists: `panels/form.rs` shows them.

use crate::app::asked::Question;
use crate::design::choose::usual;
use crate::design::display;
use crate::design::document::Design;
use crate::design::edit::Field;
use crate::design::parts::sizes::PartSize;
use crate::design::settings::{OneOf, Setting};
use crate::words::{Words, forms as say, parts_sizes};

/// One thing in a form.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Entry {
    /// A field of a number.
    Number(Setting),
    /// A choice among words.
    Choice(OneOf),
    /// A line of text: its label, and an example of what goes into it.
    Text(Field, Words, Words),
    /// What there is to say about what stands above.
    Hint(Words),
    /// What may be asked about what stands above.
    Asked(Question),
}

use Entry::{Asked, Choice, Hint, Number, Text};

/// Entries under one head.
#[derive(Clone, Copy, Debug)]
pub struct Group {
    pub legend: Words,
    pub entries: &'static [Entry],
}

/// The whole instrument, by columns.
pub static INSTRUMENT: [[Group; 2]; 3] = [
    [
        Group {
            legend: say::ON_THE_CARD,
            entries: &[
                Text(Field::Title, say::INSTRUMENT, Words::NONE),
                Text(Field::Maker, say::MAKER, Words::NONE),
                Text(Field::Client, say::CLIENT, Words::NONE),
                Text(Field::Serial, say::SERIAL, Words::NONE),
                Text(Field::Date, say::DATE, Words::plain("2026-11-25")),
                Text(Field::OpenTuning, say::OPEN_TUNING, say::OPEN_TUNING_EXAMPLE),
                Text(Field::Remarks, say::REMARKS, Words::NONE),
            ],
        },
        Group {
            legend: say::LEVERS,
            entries: &[
                Choice(OneOf::Mechanism),
                Number(Setting::Push),
                Hint(say::PUSH_HINT),
                Number(Setting::FrameExpansion),
                Hint(say::EXPANSION_HINT),
            ],
        },
    ],
    [
        Group {
            legend: say::PITCH_AND_PLUCK,
            entries: &[
                Number(Setting::A4),
                Choice(OneOf::Temperament),
                Number(Setting::Pluck),
                Number(Setting::PluckBy),
                Number(Setting::DampingPartial),
                Hint(say::PLUCK_HINT),
            ],
        },
        Group {
            legend: say::CUT_LENGTH,
            entries: &[
                Number(Setting::AfterLength),
                Number(Setting::Turns),
                Asked(Question::Stretch),
                Number(Setting::TuningPin),
                Number(Setting::Knot),
                Number(Setting::Tail),
                Hint(say::MEASURE_HINT),
            ],
        },
    ],
    [
        Group {
            legend: say::FINDINGS,
            entries: &[
                Number(Setting::WorkingShare),
                Number(Setting::SoftShare),
                Number(Setting::SlackShare),
                Asked(Question::LoadShare),
                Number(Setting::LeastTension),
                Number(Setting::LeastStiffness),
                Number(Setting::MostStiffness),
                Asked(Question::Feel),
                Number(Setting::Partial8),
                Asked(Question::Partial),
                Number(Setting::Jump),
                Number(Setting::LeastRaise),
            ],
        },
        Group {
            legend: say::TOLERANCES,
            entries: &[
                Number(Setting::LengthOff),
                Number(Setting::PitchOff),
                Number(Setting::TemperatureOff),
                Number(Setting::PushOff),
                Number(Setting::DiameterOff),
                Number(Setting::DensityOff),
                Hint(say::TOLERANCES_HINT),
                Asked(Question::Tolerance),
            ],
        },
    ],
];

/// How the strings stand.
pub static STRINGS: Group = Group {
    legend: say::STRINGS,
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
    legend: say::AROUND,
    entries: &[
        Number(Setting::BelowPins),
        Number(Setting::AbovePins),
        Number(Setting::PillarGap),
        Number(Setting::BoardBelow),
        Number(Setting::BoardAbove),
        Hint(say::AROUND_HINT),
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
    Hint(say::RIB_HINT),
];

/// Where the harp is kept.
pub static STANDS: Group =
    Group { legend: say::STANDS, entries: &[Choice(OneOf::Service), Hint(say::STANDS_HINT)] };

/// Whose the sizes of the frame are.
pub static SIZES: Group =
    Group { legend: say::SIZES, entries: &[Choice(OneOf::Sizes), Hint(say::SIZES_HINT)] };

/// What holes are drilled with.
pub static DRILLS: [Entry; 7] = [
    Number(Setting::BridgePin),
    Number(Setting::BridgePinDepth),
    Number(Setting::TuningPinDepth),
    Number(Setting::StringClearance),
    Number(Setting::Eyelet),
    Number(Setting::MechanismDrill),
    Hint(say::DRILLS_HINT),
];

/// What no set of strings may break.
pub static LIMITS: [Entry; 4] = [
    Number(Setting::MostTotal),
    Number(Setting::MostChanges),
    Number(Setting::MostItems),
    Hint(say::NO_LIMIT_HINT),
];

/// Which strings are chosen from, and what is usual for them.
pub static FAMILY: [Entry; 7] = [
    Choice(OneOf::Family),
    Number(Setting::ThickestPlain),
    Number(Setting::LeastShare),
    Number(Setting::MostShare),
    Number(Setting::MostJump),
    Hint(say::FAMILY_HINT),
    Hint(say::BREAKING_HINT),
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

/// Sizes of the parts under one head.
#[derive(Clone, Copy, Debug)]
pub struct PartGroup {
    pub legend: Words,
    pub sizes: &'static [PartSize],
    pub hint: Words,
}

/// What the frame does not say of the parts, and what they are sawn from. [`PartSize::of`] has the number,
/// [`PartSize::edit`] what typing one does.
pub static PARTS: [PartGroup; 3] = [
    PartGroup {
        legend: parts_sizes::BASE_AND_BLOCKS,
        sizes: &[
            PartSize::Base,
            PartSize::BaseBeyond,
            PartSize::BaseBehind,
            PartSize::Feet,
            PartSize::FootBlock,
            PartSize::KneeBlock,
            PartSize::Brace,
            PartSize::TenonShoulder,
            PartSize::UnderTenon,
            PartSize::BackRise,
        ],
        hint: parts_sizes::BASE_HINT,
    },
    PartGroup {
        legend: parts_sizes::SAWING,
        sizes: &[
            PartSize::Kerf,
            PartSize::OnLength,
            PartSize::OnWidth,
            PartSize::OnThickness,
            PartSize::GlueRoom,
        ],
        hint: parts_sizes::SAWING_HINT,
    },
    PartGroup {
        legend: parts_sizes::PLANKS_AND_SHEETS,
        sizes: &[
            PartSize::BoardLength,
            PartSize::BoardWidth,
            PartSize::BoardThickness,
            PartSize::SheetLength,
            PartSize::SheetWidth,
        ],
        hint: parts_sizes::PLANKS_HINT,
    },
];

/// What woods cost: its head, and what the price of planks and that of sheets is for.
/// [`price`](crate::design::parts::sizes::price) has the number of a wood.
pub static PRICES: (Words, [Words; 2]) =
    (parts_sizes::PRICES, [parts_sizes::PRICE_OF_PLANKS, parts_sizes::PRICE_OF_SHEETS]);

/// What an empty field of a number stands for.
pub fn when_empty(setting: Setting, design: &Design) -> String {
    let usual = usual(design);
    let number = match setting {
        Setting::ThickestPlain => display::decimals(usual.thickest_plain_mm, 2),
        Setting::LeastShare => display::percent(usual.least_share_percent),
        Setting::MostShare if usual.most_soft_share_percent < usual.most_share_percent => {
            let [metal, soft] = [usual.most_share_percent, usual.most_soft_share_percent];
            return say::usual_soft(&display::percent(metal), &display::percent(soft));
        }
        Setting::MostShare => display::percent(usual.most_share_percent),
        Setting::MostJump => display::percent(usual.jump_percent),
        Setting::MostTotal => return say::ANY.into(),
        _ => return say::ANY_NUMBER.into(),
    };
    say::usual(&number)
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
        let groups = INSTRUMENT.as_flattened().iter().chain([&STRINGS, &AROUND, &STANDS, &SIZES]);
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
        let sizes: Vec<PartSize> = PARTS.iter().flat_map(|group| group.sizes.to_vec()).collect();
        for size in PartSize::ALL {
            assert_eq!(sizes.iter().filter(|own| **own == size).count(), 1, "{size:?}");
        }
    }
}
