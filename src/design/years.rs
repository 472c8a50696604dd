//! What the years do to a harp, in words and as CSV.

use std::fmt::Write;

use super::display;
use super::document::{Design, LengthUnit, PLYWOOD, ServiceSpec, Units};
use super::giving::named;
use super::letters::capital;
use super::resolve::{Resolved, resolve};
use crate::engine::analysis::{Analysis, analyse};
use crate::engine::bearing::{Borne, Gives, Kept, Nearer, borne_again, nearer};
use crate::engine::geometry::{Band, Loads, lay_out};
use crate::engine::giving::tensions_n;
use crate::engine::structure::duration::{Service, Timber, creep_ratio};
use crate::engine::units::Length;
use crate::engine::years::{Climate, Range, StringYears, Years, shrinks, years};
use crate::words::{Words, giving, years as say};

/// What least and most are of, where the numbers come from, and what is left out.
pub const MEANING: Words = say::MEANING;

/// The heads of the table.
pub const HEADS: [Words; 3] = [say::HEAD_WHAT, say::HEAD_ONE_YEAR, say::HEAD_TEN_YEARS];

/// What the years do, told: rows below [`HEADS`], and sentences; without rows, why there are none.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// Each movement after the years.
    pub rows: Vec<[String; 3]>,
    /// Tuning, seasons, and what it is for.
    pub sentences: Vec<String>,
}

/// Moisture of wood in the dry season and in the damp one, in per cent. Heated rooms go from about 35 to 60 % of relative
/// humidity. Common practice, no source; EN 1995-1-1 has most wood in heated rooms below 12 % and under a roof below 20 %
/// (second-hand).
const fn moisture_percent(service: ServiceSpec) -> Range {
    match service {
        ServiceSpec::Heated => (7.0, 11.0),
        ServiceSpec::Covered => (10.0, 18.0),
        ServiceSpec::Outdoors => (12.0, 22.0),
    }
}

/// How the wood of a design creeps and swells where it stands; `None` where it is not known how it creeps.
fn climate(design: &Design) -> Option<Climate> {
    let shape = &design.geometry;
    let service = match shape.service {
        ServiceSpec::Heated => Service::Dry,
        ServiceSpec::Covered => Service::Covered,
        ServiceSpec::Outdoors => Service::Wet,
    };
    let creeps = |wood: &str| {
        let timber = if wood == PLYWOOD { Timber::Plywood } else { Timber::Solid };
        creep_ratio(timber, service).map(|sourced| sourced.value)
    };
    let (neck, pillar) = (creeps(&shape.neck.wood)?, creeps(&shape.pillar.wood)?);
    Some(Climate {
        frame_creep_ratio: neck.max(pillar),
        board_creep_ratio: creeps(&shape.board.wood)?,
        neck: shrinks(&shape.neck.wood),
        board: shrinks(&shape.board.wood),
        moisture_percent: moisture_percent(shape.service),
    })
}

/// What the years do to a design that is laid out.
pub fn years_of(
    design: &Design,
    resolved: &Resolved,
    analysis: &Analysis,
    (band, borne): (&Band, &Borne),
    nearer: Option<&Nearer>,
) -> Option<Years> {
    if !borne.bearing.is_given {
        return None;
    }
    let years = years(nearer?, &resolved.harp, analysis, band, &borne.bearing, &climate(design)?);
    (!years.strings.is_empty()).then_some(years)
}

/// How much nearer the ends of each string of a design come under all of them, with what is kept of the design before;
/// `None` where nothing can be said.
pub fn nearer_of(
    kept: &mut Kept,
    (band, loads): (&Band, &Loads),
    analysis: &Analysis,
    resolved: &Resolved,
) -> Option<Nearer> {
    let tensions_n = tensions_n(&resolved.harp, analysis);
    let strings = (analysis, &*tensions_n);
    nearer(kept, band, loads, strings, &resolved.geometry, &resolved.build())
}

/// The same of one of which it is known how it gives.
pub fn nearer_by(gives: &Gives, analysis: &Analysis, resolved: &Resolved) -> Nearer {
    Nearer::of(gives, &tensions_n(&resolved.harp, analysis))
}

/// A range in words, with so many decimals.
fn range((least, most): Range, places: usize) -> String {
    let [least, most] = [least, most].map(|number| display::decimals(number, places));
    if least == most { most } else { giving::range(&least, &most) }
}

/// Cents in words: to a tenth, from ten of them on to a whole one.
fn cents(both: Range) -> String {
    range(both, if both.1 < 10.0 { 1 } else { 0 })
}

/// Metres in words: to a tenth of a millimetre, or to a hundredth of an inch.
fn long((least, most): Range, units: Units) -> String {
    match units.length {
        LengthUnit::Mm => format!("{} mm", range((1e3 * least, 1e3 * most), 1)),
        LengthUnit::Inch => {
            let inch = |m: f64| Length::from_m(m).to_inch();
            format!("{} in", range((inch(least), inch(most)), 2))
        }
    }
}

/// The string of which something is most, by its most.
fn farthest(
    strings: &[StringYears],
    of: impl Fn(&StringYears) -> Option<Range>,
) -> Option<&StringYears> {
    let mut most: Option<(&StringYears, f64)> = None;
    for string in strings {
        let Some((_, next)) = of(string) else { continue };
        if most.is_none_or(|(_, most)| next > most) {
            most = Some((string, next));
        }
    }
    most.map(|(string, _)| string)
}

/// What the years do, in words.
pub fn told(years: Option<&Years>, design: &Design, analysis: &Analysis) -> Told {
    let Some(years) = years else {
        return Told { rows: Vec::new(), sentences: vec![capital(&format!("{}.", say::NOTHING))] };
    };
    let units = design.units;
    let named = |place: usize| named(analysis, place);
    let lengths = |both: [Range; 2]| both.map(|range| long(range, units));
    let mut rows = Vec::new();
    let mut row = |what: String, [one, ten]: [String; 2]| rows.push([what, one, ten]);
    if let Some((place, belly)) = years.belly {
        row(say::belly(&named(place)), lengths(belly));
    }
    if let Some(roll) = years.roll_rad {
        let degrees = |(least, most): Range| {
            format!("{}°", range((least.to_degrees(), most.to_degrees()), 1))
        };
        row(say::ROLL.into(), roll.map(degrees));
    }
    if let Some(sway) = years.sway_m {
        row(say::SWAY.into(), lengths(sway));
    }
    if let Some(most) = farthest(&years.strings, |string| Some(string.shorter_m[1])) {
        row(say::shorter(&named(most.place)), lengths(most.shorter_m));
    }
    let contact = |string: &StringYears| string.contact_cents;
    if let Some(most) = farthest(&years.strings, |string| Some(contact(string)?[1]))
        && let Some(cents) = contact(most)
    {
        row(say::contact(&named(most.place)), cents.map(|both| say::cents(&self::cents(both))));
    }
    let mut sentences = Vec::new();
    if let Some(most) = farthest(&years.strings, |string| Some(string.month_cents[0])) {
        let [first, later] = most.month_cents.map(cents);
        sentences.push(say::months(&first, &later, &named(most.place)));
    }
    let (dry, damp) = moisture_percent(design.geometry.service);
    let [dry, damp] = [dry, damp].map(|percent| display::decimals(percent, 0));
    let season = |string: &StringYears| string.season_cents;
    if let Some(pins) = years.pins_m
        && let Some(most) = farthest(&years.strings, season)
        && let Some(cents) = season(most)
    {
        sentences.push(say::seasons(
            &self::cents(cents),
            &damp,
            &dry,
            &long(pins, units),
            &named(most.place),
        ));
    }
    // What is tuned in the dry season and left alone.
    let risen = |string: &StringYears| {
        let now = analysis.strings.get(string.place)?.load_share_percent.ok()?;
        Some((
            string.place,
            now,
            now * (string.season_cents?.1 / 600.0 * std::f64::consts::LN_2).exp(),
        ))
    };
    let most = years.strings.iter().filter_map(risen);
    if let Some((place, now, then)) =
        most.reduce(|one, next| if next.2 > one.2 { next } else { one })
        && then > design.limits.working_share_percent
    {
        let [now, then] = [now, then].map(|percent| display::decimals(percent, 0));
        sentences.push(say::damp_share(&now, &named(place), &then));
    }
    if let Some(board) = years.board_m {
        sentences.push(say::board(&damp, &dry, &long(board, units)));
    }
    let kept = match design.geometry.service {
        ServiceSpec::Heated => say::KEPT_HEATED,
        ServiceSpec::Covered => say::KEPT_COVERED,
        ServiceSpec::Outdoors => say::KEPT_OUTDOORS,
    };
    sentences.push(kept.into());
    Told { rows, sentences }
}

const COLUMNS: &str = "string,note,shorter_1_year_least_mm,shorter_1_year_most_mm,shorter_10_years_least_mm,\
     shorter_10_years_most_mm,falls_first_month_least_cents,falls_first_month_most_cents,falls_a_later_month_least_cents,\
     falls_a_later_month_most_cents,contact_1_year_least_cents,contact_1_year_most_cents,contact_10_years_least_cents,\
     contact_10_years_most_cents,season_least_cents,season_most_cents\n";

/// Two tables: what becomes of each string; and what becomes of the harp, least and most after the years. Falls are of strings
/// that are not retuned, in a month.
///
/// # Errors
///
/// Why nothing can be said.
pub fn csv(design: &Design) -> Result<String, String> {
    let resolved = resolve(design);
    let analysis = analyse(&resolved.harp);
    let (shape, build) = (&resolved.geometry, &resolved.build());
    let band = lay_out(&resolved.harp, &analysis, shape);
    let mut kept = Kept::default();
    let borne = borne_again(&mut kept, &band, &resolved.harp, &analysis, shape, build);
    let nearer = nearer_of(&mut kept, (&band, &borne.loads), &analysis, &resolved);
    let years = years_of(design, &resolved, &analysis, (&band, &borne), nearer.as_ref());
    let years = years.ok_or_else(|| String::from(say::NOTHING))?;
    let mut csv = COLUMNS.to_owned();
    let pairs = |csv: &mut String, ranges: [Option<Range>; 2], times: f64| {
        for range in ranges {
            match range {
                Some((least, most)) => {
                    let _ = write!(csv, ",{:.4},{:.4}", times * least + 0.0, times * most + 0.0);
                }
                None => csv.push_str(",,"),
            }
        }
    };
    for string in &years.strings {
        let figures = analysis.strings.get(string.place);
        let note = figures.and_then(|figures| figures.note);
        let note = note.map(|note| note.to_string()).unwrap_or_default();
        let _ = write!(csv, "{},{note}", figures.map_or(0, |figures| figures.number));
        pairs(&mut csv, string.shorter_m.map(Some), 1e3);
        pairs(&mut csv, string.month_cents.map(Some), 1.0);
        pairs(&mut csv, string.contact_cents.map_or([None; 2], |both| both.map(Some)), 1.0);
        let season = string.season_cents.map_or((String::new(), String::new()), |(least, most)| {
            (format!("{least:.4}"), format!("{most:.4}"))
        });
        let _ = write!(csv, ",{},{}", season.0, season.1);
        csv.push('\n');
    }
    csv += "\nwhat,unit,1_year_least,1_year_most,10_years_least,10_years_most\n";
    let belly = years.belly.map(|(_, rise)| rise);
    let all = [
        ("board rises beyond its rise at once", "mm", belly, 1e3),
        ("neck rolls beyond its twist at once", "deg", years.roll_rad, 1_f64.to_degrees()),
        ("top of the pillar goes sideways", "mm", years.sway_m, 1e3),
        ("tuning pins move through the seasons", "mm", years.pins_m.map(|range| [range; 2]), 1e3),
        ("board would grow along it", "mm", years.board_m.map(|range| [range; 2]), 1e3),
    ];
    for (what, unit, ranges, times) in all {
        let _ = write!(csv, "{what},{unit}");
        pairs(&mut csv, ranges.map_or([None; 2], |both| both.map(Some)), times);
        csv.push('\n');
    }
    Ok(csv)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::giving::gives_of;
    use crate::design::presets::SAMPLES;
    use crate::engine::bearing::borne;
    use crate::engine::geometry::loads;
    use crate::testing::assert_close;

    /// What all strings do together is the sum of what each does.
    #[test]
    fn both_ways_to_what_the_strings_do_together_come_to_the_same() {
        for sample in SAMPLES {
            let resolved = resolve(&sample.design());
            let analysis = analyse(&resolved.harp);
            let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
            let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
            let gives = gives_of(&band, &loads, &analysis, &resolved).expect("a sample gives");
            let sums = nearer_by(&gives, &analysis, &resolved);
            let mut kept = Kept::default();
            // The second time with what the first one left.
            for _ in 0..2 {
                let whole = nearer_of(&mut kept, (&band, &loads), &analysis, &resolved);
                let whole = whole.expect("a sample gives");
                assert_eq!(whole.places, sums.places);
                assert_eq!(whole.states().count(), sums.states().count());
                for ((frame, board), (ours, own)) in sums.states().zip(whole.states()) {
                    for (row, (one, other)) in frame.iter().zip(ours).enumerate() {
                        assert_close(*other, *one, 1e-9, format!("{}: {row}", sample.key));
                    }
                    for (row, (one, other)) in board.iter().zip(own).enumerate() {
                        assert_close(*other, *one, 1e-9, format!("{}: {row}", sample.key));
                    }
                }
            }
        }
    }

    fn of(design: &Design) -> (Option<Years>, Told) {
        let resolved = resolve(design);
        let analysis = analyse(&resolved.harp);
        let (shape, build) = (&resolved.geometry, &resolved.build());
        let band = lay_out(&resolved.harp, &analysis, shape);
        let borne = borne(&band, &resolved.harp, &analysis, shape, build);
        let gives = gives_of(&band, &borne.loads, &analysis, &resolved);
        let nearer = gives.map(|gives| nearer_by(&gives, &analysis, &resolved));
        let years = years_of(design, &resolved, &analysis, (&band, &borne), nearer.as_ref());
        let told = told(years.as_ref(), design, &analysis);
        (years, told)
    }

    #[test]
    fn samples_give_more_after_ten_years_and_most_is_never_below_least() {
        for sample in SAMPLES {
            let design = sample.design();
            let (years, told) = of(&design);
            let years = years.expect("a sample has its woods");
            assert_eq!(years.strings.len(), design.strings.len(), "{}", sample.key);
            for string in &years.strings {
                let [one, ten] = string.shorter_m;
                assert!(0.0 < one.0 && one.0 < one.1 && one.1 < ten.1, "{}", sample.key);
                let [first, later] = string.month_cents;
                assert!(later.1 < first.1 && first.0 <= first.1, "{}: {string:?}", sample.key);
            }
            assert!(told.rows.len() >= 4, "{}: {:?}", sample.key, told.rows);
            assert!(told.sentences.len() >= 3, "{}: {:?}", sample.key, told.sentences);
            for text in told.rows.iter().flatten().chain(&told.sentences) {
                assert!(!text.contains("NaN") && !text.contains("inf"), "{text}");
            }
        }
    }

    #[test]
    fn every_sample_has_a_row_for_each_string_and_one_for_each_movement() {
        for sample in SAMPLES {
            let csv = csv(&sample.design()).unwrap();
            let (strings, harp) = csv.split_once("\n\n").unwrap();
            assert_eq!(
                strings.lines().count(),
                1 + sample.design().strings.len(),
                "{}",
                sample.key
            );
            for line in strings.lines() {
                assert_eq!(line.matches(',').count(), 15, "{line}");
                assert!(!line.contains("NaN") && !line.contains("inf"), "{line}");
            }
            assert_eq!(harp.lines().count(), 6, "{harp}");
            for line in harp.lines() {
                assert_eq!(line.matches(',').count(), 5, "{line}");
            }
        }
        let nothing = csv(&Design::default()).unwrap_err();
        assert!(nothing.starts_with("nothing can be said about the years"), "{nothing}");
    }

    #[test]
    fn a_damper_place_does_more() {
        let mut design = SAMPLES[2].design();
        let most = |design: &Design| {
            let years = of(design).0.expect("years");
            years.strings.iter().map(|string| string.shorter_m[1].1).fold(0.0, f64::max)
        };
        let heated = most(&design);
        design.geometry.service = ServiceSpec::Covered;
        let covered = most(&design);
        // The standard's factors: 0.6 and 0.8.
        assert!((covered / heated - 0.8 / 0.6).abs() < 1e-9, "{covered} for {heated}");
    }

    /// Tension goes with the square of the pitch.
    #[test]
    fn a_string_that_the_damp_season_brings_too_near_to_breaking_is_told() {
        let mut warned = Vec::new();
        for service in [ServiceSpec::Heated, ServiceSpec::Outdoors] {
            for sample in SAMPLES {
                let mut design = sample.design();
                design.geometry.service = service;
                let (years, told) = of(&design);
                let Some(years) = years else { continue };
                let analysis = analyse(&resolve(&design).harp);
                let risen = |string: &StringYears| {
                    let share = analysis.strings[string.place].load_share_percent.ok()?;
                    Some(share * 4_f64.powf(string.season_cents?.1 / 1200.0))
                };
                let most = years.strings.iter().filter_map(risen).fold(0.0, f64::max);
                let said = told.sentences.iter().any(|text| {
                    text.contains(&format!(" to {most:.0} % of the load at which it breaks"))
                });
                assert_eq!(
                    said,
                    most > 75.0,
                    "{} {service:?}: {most} {:?}",
                    sample.key,
                    told.sentences
                );
                warned.push(said);
            }
        }
        assert!(warned.contains(&true) && warned.contains(&false), "{warned:?}");
    }

    #[test]
    fn what_is_not_known_is_not_told() {
        let mut design = SAMPLES[2].design();
        design.geometry.neck.wood = PLYWOOD.to_owned();
        let (years, told) = of(&design);
        assert!(years.is_some_and(|years| years.pins_m.is_none()));
        assert!(!told.rows.is_empty());
        design.geometry.service = ServiceSpec::Outdoors;
        assert!(of(&design).1.rows.is_empty());
        let nothing = format!("{}.", say::NOTHING);
        assert_eq!(of(&Design::default()).1.sentences, [capital(&nothing)]);
    }
}
