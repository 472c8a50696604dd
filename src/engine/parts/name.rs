//! What the parts are called.

use std::fmt;

use crate::words::{Words, parts as say};

/// What a part is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Kind {
    /// The neck.
    Neck,
    /// The pillar.
    Pillar,
    /// A cheek that widens the pillar at its top, to the face on which the neck is glued.
    Capital,
    /// The base, on which pillar and soundbox stand.
    Base,
    /// The foot below the pillar, from side to side.
    FrontFoot,
    /// The foot below the back.
    RearFoot,
    /// The soundboard.
    Board,
    /// The strip outside, over the string rib.
    Strip,
    /// The string rib.
    Rib,
    /// A piece of a bar across the board.
    CrossBar,
    /// A bar along the board.
    LongBar,
    /// A side of the soundbox.
    Side,
    /// Its back.
    Back,
    /// A liner between board and side.
    FrontLiner,
    /// A liner between back and side.
    BackLiner,
    /// A brace on a side.
    SideBrace,
    /// A brace on the back.
    BackBrace,
    /// The block at the lower end of the soundbox.
    FootBlock,
    /// The block on which the neck stands.
    KneeBlock,
}

impl Kind {
    /// All of them.
    pub const ALL: [Self; 19] = [
        Self::Neck,
        Self::Pillar,
        Self::Capital,
        Self::Base,
        Self::FrontFoot,
        Self::RearFoot,
        Self::Board,
        Self::Strip,
        Self::Rib,
        Self::CrossBar,
        Self::LongBar,
        Self::Side,
        Self::Back,
        Self::FrontLiner,
        Self::BackLiner,
        Self::SideBrace,
        Self::BackBrace,
        Self::FootBlock,
        Self::KneeBlock,
    ];

    /// As it stands in tables, the same in every language.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Neck => "neck",
            Self::Pillar => "pillar",
            Self::Capital => "capital",
            Self::Base => "base",
            Self::FrontFoot => "front_foot",
            Self::RearFoot => "rear_foot",
            Self::Board => "soundboard",
            Self::Strip => "strip",
            Self::Rib => "string_rib",
            Self::CrossBar => "cross_bar",
            Self::LongBar => "long_bar",
            Self::Side => "side",
            Self::Back => "back",
            Self::FrontLiner => "front_liner",
            Self::BackLiner => "back_liner",
            Self::SideBrace => "side_brace",
            Self::BackBrace => "back_brace",
            Self::FootBlock => "foot_block",
            Self::KneeBlock => "knee_block",
        }
    }

    /// What it is called.
    pub const fn said(self) -> Words {
        match self {
            Self::Neck => say::NECK,
            Self::Pillar => say::PILLAR,
            Self::Capital => say::CAPITAL,
            Self::Base => say::BASE,
            Self::FrontFoot => say::FRONT_FOOT,
            Self::RearFoot => say::REAR_FOOT,
            Self::Board => say::SOUNDBOARD,
            Self::Strip => say::STRIP,
            Self::Rib => say::STRING_RIB,
            Self::CrossBar => say::CROSS_BAR,
            Self::LongBar => say::LONG_BAR,
            Self::Side => say::SIDE,
            Self::Back => say::BACK,
            Self::FrontLiner => say::FRONT_LINER,
            Self::BackLiner => say::BACK_LINER,
            Self::SideBrace => say::SIDE_BRACE,
            Self::BackBrace => say::BACK_BRACE,
            Self::FootBlock => say::FOOT_BLOCK,
            Self::KneeBlock => say::KNEE_BLOCK,
        }
    }
}

/// Which side of the harp.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Hand {
    /// Where the strings hang beside the neck.
    Strings,
    /// The other.
    Other,
}

impl Hand {
    /// Above 0 on the strings' side.
    pub(super) const fn sign(self) -> f64 {
        match self {
            Self::Strings => 1.0,
            Self::Other => -1.0,
        }
    }
}

/// Which of the parts it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Name {
    /// What it is.
    pub kind: Kind,
    /// Which side of the harp it belongs to, where there is one for each.
    pub hand: Option<Hand>,
    /// Counted from the lower end, and from the middle outward, where there are several; else 0.
    pub number: usize,
}

impl fmt::Display for Name {
    /// As it stands in tables.
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        to.write_str(self.kind.key())?;
        match self.hand {
            Some(Hand::Strings) => to.write_str("_strings")?,
            Some(Hand::Other) => to.write_str("_other")?,
            None => {}
        }
        if self.number > 0 { write!(to, "_{}", self.number) } else { Ok(()) }
    }
}
