//! One row for each figure: everything that is shown or said of it, wherever that is.
//!
//! The string table, the chart, the curves, one string in full and the explanations all read the
//! rows. A row is a struct with every field given, and there are as many rows as figures, so that
//! the compiler asks for what a new figure lacks.

mod limits;
mod rows;

pub use self::limits::Allowed;
pub use self::rows::ROWS;
use super::display::{Rounding, Unit};
use super::document::MechanismKind;
use crate::engine::figure::Figure;
use crate::words::{Words, figures as say};

/// What is shown and said of a figure.
#[derive(Debug)]
pub struct FigureRow {
    /// Which figure it is.
    pub figure: Figure,
    /// The heading of its column in the string table, with its unit at the end where it has one.
    /// A heading is a promise: tables with it are out in the world.
    pub heading: &'static str,
    /// The word at the head of its column in the chart.
    pub word: Words,
    /// What it means, in a sentence or two.
    pub meaning: Words,
    /// Where it stands wherever figures are grouped.
    pub group: Group,
    /// Where it stands on the page, from left to right or from the top, of 1 to 255. There are gaps
    /// for those to come.
    pub place: u8,
    /// Whether the chart has a column for it.
    pub column: Column,
    pub unit: Unit,
    /// How the chart rounds it.
    pub rounding: Rounding,
    /// How its curve is drawn, if it has one.
    pub curve: Option<Curve>,
    /// Whether it speaks of loads or breaking, so that the cautions stand beside its explanation.
    pub caution: bool,
    /// What it is called in full: the title of the page that explains it.
    pub called: Words,
}

/// Where a figure or a topic stands wherever they are grouped.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    Pull,
    Tone,
    Tuning,
    Ordering,
    More,
}

impl Group {
    /// All of them, in order.
    pub const ALL: [Self; 5] = [Self::Pull, Self::Tone, Self::Tuning, Self::Ordering, Self::More];

    /// What stands over the topics.
    pub const fn title(self) -> Words {
        match self {
            Self::Pull => say::GROUP_PULL,
            Self::Tone => say::GROUP_TONE,
            Self::Tuning => say::GROUP_TUNING,
            Self::Ordering => say::GROUP_ORDERING,
            Self::More => say::GROUP_MORE,
        }
    }
}

/// Which harps have a column in the chart for a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Column {
    /// All of them.
    Always,
    /// Those with a string that one of these raises.
    Fitted(&'static [MechanismKind]),
    /// None: the figure is typed there, or stands among the details of a string alone.
    Never,
}

/// How the curve of a figure is drawn.
#[derive(Clone, Copy, Debug)]
pub struct Curve {
    pub scale: Scale,
    pub ticks: Ticks,
    /// What the maker allows.
    pub limits: Option<Allowed>,
}

/// The axis that suits: of equal ratios where a harp spans a decade or more and an octave is a ratio;
/// from zero where the value is a share.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scale {
    /// Around the values; from zero where the least of them is small beside the greatest.
    Free,
    /// From zero up.
    FromZero,
    /// As [`Scale::Free`], of a value that may be below nothing.
    Signed,
    /// Equal steps are equal ratios, where all values are above zero.
    Log,
}

/// How the numbers at an axis are rounded: no finer than can be measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ticks {
    /// To so many decimals, in each of the units that there are to choose from.
    Places([u8; 3]),
    /// To three figures.
    Three,
    /// To three figures, and whole from 20 up.
    WholeFrom20,
    /// As in the chart.
    AsShown,
}

/// The row of a figure.
pub const fn row(figure: Figure) -> &'static FigureRow {
    &ROWS[figure as usize]
}

// The rows stand in the order of the figures.
const _: () = {
    let mut at = 0;
    while at < ROWS.len() {
        assert!(ROWS[at].figure as usize == at, "a row stands where another figure has its own");
        at += 1;
    }
};

/// How many figures have a curve.
const CURVES: usize = {
    let (mut count, mut at) = (0, 0);
    while at < ROWS.len() {
        count += ROWS[at].curve.is_some() as usize;
        at += 1;
    }
    count
};

/// The figures from the first place on the page to the last.
pub const BY_PLACE: [Figure; ROWS.len()] = {
    let mut all = Figure::ALL;
    let mut at = 1;
    while at < all.len() {
        let mut before = at;
        while before > 0 && row(all[before]).place < row(all[before - 1]).place {
            (all[before], all[before - 1]) = (all[before - 1], all[before]);
            before -= 1;
        }
        at += 1;
    }
    all
};

/// The figures that have a curve, as a list shows them.
pub const WITH_CURVE: [Figure; CURVES] = {
    let mut all = [Figure::Tension; CURVES];
    let (mut count, mut at) = (0, 0);
    while at < BY_PLACE.len() {
        if row(BY_PLACE[at]).curve.is_some() {
            all[count] = BY_PLACE[at];
            count += 1;
        }
        at += 1;
    }
    all
};

impl FigureRow {
    /// What it is called.
    pub const fn name(&self) -> Words {
        self.called
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_two_figures_have_one_heading_or_one_place() {
        for (index, row) in ROWS.iter().enumerate() {
            for other in &ROWS[index + 1..] {
                assert_ne!(row.heading, other.heading);
                assert_ne!(row.place, other.place, "{} and {}", row.heading, other.heading);
            }
        }
    }

    #[test]
    fn a_heading_ends_with_its_unit() {
        for row in ROWS {
            let unit = row.unit.of_heading().to_lowercase();
            let end = format!("_{}", unit.replace('/', "_per_").replace('%', "percent"));
            // A unit that is written out may be what the heading begins with.
            let first = unit.split(' ').next().unwrap_or_default();
            let named = unit.is_empty() || row.heading.ends_with(&end);
            assert!(named || row.heading.starts_with(first), "{}, {unit}", row.heading);
        }
    }

    #[test]
    fn words_beside_a_curve_name_limits_that_there_are() {
        let limits = crate::design::resolve::resolve(&Default::default()).harp.limits;
        for row in ROWS {
            let Some(Allowed { of, words, .. }) = row.curve.and_then(|curve| curve.limits) else {
                continue;
            };
            let [low, high] = of(&limits);
            let words = words(&"{low}", &"{high}");
            assert!(words.contains("{low}") || words.contains("{high}"), "{words}");
            assert!(low.is_some() || !words.contains("{low}"), "{words}");
            assert!(high.is_some() || !words.contains("{high}"), "{words}");
        }
    }
}
