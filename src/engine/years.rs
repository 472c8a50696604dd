//! What the years do to a harp: how far its frame and board go on giving under strings that are kept at pitch, and how
//! far its wood swells and shrinks with the seasons.
//!
//! Each movement at once, least and most, is multiplied by what wood creeps in a time, and each length across the grain
//! by what its wood swells. It is an estimate for joints that hold and for moisture that stays within its range.

mod shrinkage;

pub use self::shrinkage::{Shrinks, shrinks};
use super::analysis::{Analysis, Harp, StringFigures};
use super::bearing::{Bearing, BoardCut, BoardState, Nearer};
use super::geometry::{Band, Placed};
use super::giving::{Known, known};
use super::mechanics::CENTS_PER_LOG;
use super::structure::duration::crept;
use super::structure::frame::Point;
use super::units::Length;

/// Least and most.
pub type Range = (f64, f64);

/// The years after which is told.
pub const YEARS: [f64; 2] = [1.0, 10.0];

/// The power of time with which creep grows, from the slow beginning to the quick one. Source: that it is a power is
/// read in D. Tong, S. A. Brown, D. Corr and G. Cusatis, *Holzforschung*, 2020 (abstract); its range is from memory.
const POWERS: [f64; 2] = [0.3, 0.2];
/// A month, in years.
const MONTH: f64 = 1.0 / 12.0;

/// What is known of the wood and of where it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Climate {
    /// What neck, pillar and soundbox give over the years in addition, over their first movement.
    pub frame_creep_ratio: f64,
    /// The same of the board.
    pub board_creep_ratio: f64,
    /// How the neck's wood swells; `None` where that is not known.
    pub neck: Option<Shrinks>,
    /// The same of the board.
    pub board: Option<Shrinks>,
    /// Moisture of the wood in the dry season and in the damp one, in per cent.
    pub moisture_percent: Range,
}

/// What becomes of a string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StringYears {
    /// Place in the harp.
    pub place: usize,
    /// How much shorter it has become after each of [`YEARS`], in metres.
    pub shorter_m: [Range; 2],
    /// By how many cents it falls in the first month, and in a month after the first year, if it is not retuned.
    pub month_cents: [Range; 2],
    /// How sharp its farthest lever or disc has become after each of [`YEARS`]; `None` where it has none.
    pub contact_cents: Option<[Range; 2]>,
    /// By how many cents it sounds higher at the damp end of the seasons than at the dry end, as its tuning pin moves away
    /// from the middle of the neck, which stays where it is; `None` where it is not known how the neck swells.
    pub season_cents: Option<Range>,
}

/// What becomes of the harp.
#[derive(Clone, Debug, PartialEq)]
pub struct Years {
    /// The strings that could be worked out.
    pub strings: Vec<StringYears>,
    /// Where the board has risen most, and how much it has risen there beyond its rise at once, in metres.
    pub belly: Option<(usize, [Range; 2])>,
    /// How far the neck has rolled beyond its twist at once, in radians.
    pub roll_rad: Option<[Range; 2]>,
    /// How far the top of the pillar has gone sideways beyond its sway at once, in metres.
    pub sway_m: Option<[Range; 2]>,
    /// How far the tuning pin that is farthest from the middle of the neck moves against it through the seasons, in metres.
    pub pins_m: Option<Range>,
    /// How much longer the board would be at the damp end of the seasons if nothing held it, in metres.
    pub board_m: Option<Range>,
}

/// A movement at once, least and most, after each of [`YEARS`].
fn aged(at_once: Range, creep_ratio: f64) -> [Range; 2] {
    YEARS.map(|years| {
        let [slow, quick] = POWERS.map(|power| crept(creep_ratio, years, power));
        // Before fifty years the lower power is the quicker one.
        (at_once.0 * slow, at_once.1 * quick)
    })
}

fn widen(range: &mut Range, value: f64) {
    *range = (range.0.min(value), range.1.max(value));
}

const NOTHING: Range = (f64::INFINITY, f64::NEG_INFINITY);

/// By how many cents a string falls whose ends come nearer by some metres, if it is not retuned: its tension falls, and
/// the little that it is shorter raises it.
///
/// # Source
///
/// Hooke's law, and pitch by length and root of tension; for small movements.
fn falls_cents(nearer_m: f64, length_m: f64, tension_n: f64, stiffness_n_per_m: f64) -> f64 {
    CENTS_PER_LOG * nearer_m * (stiffness_n_per_m / tension_n - 2.0 / length_m)
}

/// How sharp a semitone becomes whose contact stands at a place, when the string above it becomes shorter:
/// `1200 log₂(L′/(L′ − d)) − 1200 log₂(L/(L − d))`.
///
/// # Source
///
/// Pitch by length; that the contact also stretches the string hardly changes.
fn contact_cents(shorter_m: f64, length_m: f64, place_m: f64) -> f64 {
    let left = |length_m: f64| (length_m / (length_m - place_m)).ln();
    2.0 * CENTS_PER_LOG * (left(length_m - shorter_m) - left(length_m))
}

/// What becomes of a harp and its strings.
pub fn years(
    nearer: &Nearer,
    harp: &Harp,
    analysis: &Analysis,
    band: &Band,
    bearing: &Bearing,
    climate: &Climate,
) -> Years {
    let known = |place: &usize| known(harp, analysis.strings.get(*place)?, *place);
    let strings: Vec<Option<Known>> = nearer.places.iter().map(known).collect();
    let swells = climate.moisture_percent.1 - climate.moisture_percent.0;
    let mut all = Vec::new();
    for (row, string) in strings.iter().enumerate() {
        let Some((place, _, strung)) = string else { continue };
        let Some(figures) = analysis.strings.get(*place) else { continue };
        let Ok(length) = figures.length else { continue };
        // How much nearer its ends are at pitch than with no string on, by frame and by board.
        let moved = nearer.states().map(|(frame, board)| (frame[row], board[row]));
        let mut one = StringYears {
            place: *place,
            shorter_m: [NOTHING; 2],
            month_cents: [NOTHING; 2],
            contact_cents: None,
            season_cents: None,
        };
        let length_m = length.to_m();
        let fall = |nearer_m: f64| {
            strung
                .map(|of| falls_cents(nearer_m, length_m, of.tension.to_n(), of.stiffness_n_per_m))
        };
        for (frame, board) in moved {
            for power in POWERS {
                let after = |years: f64| {
                    frame * crept(climate.frame_creep_ratio, years, power)
                        + board * crept(climate.board_creep_ratio, years, power)
                };
                for (range, years) in one.shorter_m.iter_mut().zip(YEARS) {
                    widen(range, after(years));
                }
                let months = [after(MONTH), after(1.0 + MONTH) - after(1.0)];
                for (range, nearer_m) in one.month_cents.iter_mut().zip(months) {
                    fall(nearer_m).into_iter().for_each(|cents| widen(range, cents));
                }
            }
        }
        one.contact_cents = farthest(figures).map(|at| {
            let sharp = |m: f64| contact_cents(m, length_m, at.to_m());
            one.shorter_m.map(|(least, most)| (sharp(least), sharp(most)))
        });
        one.season_cents = climate.neck.and_then(|wood| {
            let off = from_middle(band, band.strings.get(*place)?.as_ref().ok()?)?;
            let [soft, stiff] = [wood.radial, wood.tangential].map(|by| fall(off * by * swells));
            let all = soft.into_iter().chain(stiff).map(f64::abs);
            let mut range = NOTHING;
            all.for_each(|cents| widen(&mut range, cents));
            Some(range)
        });
        all.push(one);
    }
    let whole = climate.board_creep_ratio;
    let cuts = bearing.board.iter().enumerate();
    let cuts = cuts.filter_map(|(place, cut)| Some((place, cut.as_ref().ok()?)));
    let highest = cuts.fold(None, |most: Option<(usize, &BoardCut)>, next| {
        Some(most.filter(|most| most.1.soft.rise >= next.1.soft.rise).unwrap_or(next))
    });
    // A board that hangs creeps less than its rise at once says.
    let belly = highest.map(|(place, cut)| {
        let since = |state: &BoardState, creep: f64| {
            state.rise_when(creep, whole).to_m() - state.rise.to_m()
        };
        let after = |years: f64| {
            let [slow, quick] = POWERS.map(|power| crept(whole, years, power));
            let all = [since(&cut.firm, slow), since(&cut.soft, slow)];
            let most = [since(&cut.firm, quick), since(&cut.soft, quick)];
            (all[0].min(all[1]), most[0].max(most[1]))
        };
        (place, YEARS.map(after))
    });
    let frame = bearing.frame.as_ref().ok();
    let twist = frame.and_then(|frame| frame.neck.twist_rad);
    let sway = frame.map(|frame| {
        let mut range = NOTHING;
        frame.counted().for_each(|stiff| widen(&mut range, stiff.top[2].abs()));
        range
    });
    let offs = band.strings.iter().flatten().filter_map(|string| from_middle(band, string));
    let farthest_m = offs.fold(0.0, f64::max);
    let by = |wood: Shrinks, m: f64| (wood.radial * swells * m, wood.tangential * swells * m);
    let ends = band.board;
    Years {
        strings: all,
        belly,
        roll_rad: twist.map(|(held, alone)| {
            let (held, alone) = (held.abs(), alone.abs());
            aged((held.min(alone), held.max(alone)), climate.frame_creep_ratio)
        }),
        sway_m: sway.map(|range| aged(range, climate.frame_creep_ratio)),
        pins_m: climate.neck.map(|wood| by(wood, farthest_m)),
        // Quarter-sawn: the rings stand upright, and the board is radial along its length.
        board_m: climate.board.map(|wood| {
            let free = by(wood, distance(ends.0, ends.1)).0;
            (free, free)
        }),
    }
}

/// The place of the lever or disc that is farthest from the pin.
fn farthest(figures: &StringFigures) -> Option<Length> {
    let places = [figures.lever, figures.disc_natural, figures.disc_sharp];
    let places = places.into_iter().flatten().map(|place| place.distance);
    places.reduce(|one, other| if other > one { other } else { one })
}

/// How far the tuning pin of a string lies beyond the middle line of the neck, in metres: string that slides over its
/// bridge pin feels that movement alone.
fn from_middle(band: &Band, string: &Placed) -> Option<f64> {
    let centre = &band.neck.as_ref()?.centre;
    let ways = centre.iter().map(|station| distance(station.at, string.tuning));
    ways.reduce(f64::min)
}

fn distance(from: Point, to: Point) -> f64 {
    (to.x.to_m() - from.x.to_m()).hypot(to.y.to_m() - from.y.to_m())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    /// Ten times as long a time gives `10^m` as much; fifty years all of it.
    #[test]
    fn creep_grows_as_a_power_of_time() {
        for power in POWERS {
            let [one, ten] = YEARS.map(|years| crept(0.6, years, power));
            assert_close(ten / one, 10.0_f64.powf(power), 1e-12, power);
            assert_close(crept(0.8, 50.0, power), 0.8, 1e-12, power);
        }
        let [one, ten] = aged((2.0, 5.0), 0.6);
        assert_close(one.0, 2.0 * 0.6 * 0.02_f64.powf(0.3), 1e-12, "least after a year");
        assert_close(ten.1, 5.0 * 0.6 * 0.2_f64.powf(0.2), 1e-12, "most after ten");
    }

    /// A wire of 20 N/mm under 100 N that gives up a tenth of a millimetre loses 2 N, which is 17.3 cents; being shorter
    /// by that of 500 mm it gains 0.35.
    #[test]
    fn a_string_falls_by_its_tension_and_rises_by_its_length() {
        let fell = falls_cents(1e-4, 0.5, 100.0, 2e4);
        let tension = 600.0 * (0.98_f64).log2();
        let length = 1200.0 * (0.5_f64 / 0.4999).log2();
        // To the first order of a change by a fiftieth.
        assert_close(fell, -(tension + length), 0.012, "cents");
    }

    /// A disc a semitone up a string of 100 mm: shortened by 1 mm the string is raised by more.
    #[test]
    fn a_contact_that_stays_raises_a_shorter_string_by_more() {
        let place = 0.1 * (1.0 - (-1.0_f64 / 12.0).exp2());
        let semitone = |length: f64| 1200.0 * (length / (length - place)).log2();
        assert_close(semitone(0.1), 100.0, 1e-12, "a semitone");
        assert_close(contact_cents(1e-3, 0.1, place), semitone(0.099) - 100.0, 1e-9, "sharp");
        assert_eq!(contact_cents(0.0, 0.1, place), 0.0);
    }
}
