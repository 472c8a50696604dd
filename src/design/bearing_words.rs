//! What the frame bears, in words: forces, a verdict for each part, what was assumed, what to do.
//!
//! A use above 100 % is told plainly and is no error. Every text is an estimate's; the caution stands beside it.

mod board;
pub mod csv;
mod forces;
mod granted;
mod joints;
mod names;
mod neck;
mod reserve;
mod summary;

pub use self::forces::forces;
pub use self::granted::assumptions;
use self::joints::{joint, soundbox};
pub use self::names::{aspect, board_name, part_name};
use self::names::{mend, mend_board, part_within};
pub use self::summary::{FrameFinding, FrameVerdict, MEANING, verdict};
use super::display;
use super::document::{ForceUnit, Units};
use super::letters::capital;
use crate::engine::analysis::{Analysis, StringFigures};
use crate::engine::bearing::{Bearing, Build, Case, FrameBearing, NeckBearing, Order, Part, Stage};
use crate::engine::geometry::Band;
use crate::engine::structure::frame::Point;
use crate::engine::structure::verdict::{Aspect, Use};
use crate::engine::units::{Force, Length, Moment, Stress};
use crate::words::{Words, choose, frame as say};

/// Pull of a string a whole tone below its pitch over that at pitch, in per cent: `2^(−2·2/12)`.
pub const TONE_BELOW_PERCENT: f64 = 79.4;

/// How a part stands to what may be allowed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Standing {
    /// No limit is known.
    Unknown,
    /// Within it.
    Within,
    /// Within it at the better end of the estimate, over it at the worse.
    Between,
    /// Over it.
    Over,
}

impl Standing {
    fn of(ratio: Option<(f64, f64)>) -> Self {
        match ratio {
            None => Self::Unknown,
            Some((_, most)) if most <= 1.0 => Self::Within,
            Some((least, _)) if least <= 1.0 => Self::Between,
            Some(_) => Self::Over,
        }
    }

    /// In a word or two.
    pub fn words(self) -> &'static str {
        match self {
            Self::Unknown => say::NOT_JUDGED,
            Self::Within => say::WITHIN,
            Self::Between => say::MAY_BE_OVER,
            Self::Over => say::OVER,
        }
        .said()
    }
}

/// A part of the harp, judged.
#[derive(Clone, Debug, PartialEq)]
pub struct PartWords {
    /// What it is called.
    pub name: &'static str,
    /// How far it is loaded, least and most, where a limit is known.
    pub ratio: Option<(f64, f64)>,
    /// The same in per cent.
    pub share: String,
    /// How it stands.
    pub standing: Standing,
    /// What leads, where, and how much of what.
    pub why: String,
    /// What may be done, where it is over or may be.
    pub mend: Option<&'static str>,
}

impl PartWords {
    /// How far it is loaded and how it stands: `43 %, within`.
    pub fn head(&self) -> String {
        match self.ratio {
            Some((least, _)) if least.is_infinite() => self.share.clone(),
            _ => format!("{}, {}", self.share, self.standing.words()),
        }
    }
}

/// A moment or a torque: newton metres, kilogram-force metres or pound-force feet, to a whole number, below 100 to a
/// tenth.
pub fn moment_with_unit(moment: Moment, unit: ForceUnit) -> String {
    let number = match unit {
        ForceUnit::Newton => moment.to_n_m(),
        ForceUnit::Kgf => Force::from_n(moment.to_n_m()).to_kgf(),
        ForceUnit::Lbf => moment.to_lbf_foot(),
    };
    let places = if number.abs() < 99.95 { 1 } else { 0 };
    format!("{} {}", display::decimals(number, places), moment_unit(unit))
}

const fn moment_unit(unit: ForceUnit) -> &'static str {
    match unit {
        ForceUnit::Newton => "N·m",
        ForceUnit::Kgf => "kgf·m",
        ForceUnit::Lbf => "lbf·ft",
    }
}

/// One or two numbers in whole per cent: `43 %`, `79 to 138 %`. A part that gives way has no number.
/// What is not quite 100 % does not read so.
pub fn percents((least, most): (f64, f64)) -> String {
    let [low, high] = [least, most].map(|ratio| display::apart(100.0 * ratio, 100.0, 0).0);
    match (least.is_infinite(), most.is_infinite()) {
        (true, _) => say::GIVES_WAY.into(),
        (_, true) => say::or_gives_way(&low),
        _ if low == high => format!("{low} %"),
        _ => say::percents(&high, &low),
    }
}

fn mpa(stress: Stress) -> String {
    display::decimals(stress.to_mpa(), 1)
}

/// Every part, judged: the frame's, then the board. None while nobody gave their sizes.
pub fn verdicts(
    bearing: &Bearing,
    band: &Band,
    analysis: &Analysis,
    build: &Build,
    units: Units,
) -> Vec<PartWords> {
    let with_reserve = |mut why: String, words: Option<String>| {
        if let Some(words) = words {
            why += " ";
            why += &words;
        }
        why
    };
    let mut all = Vec::new();
    if !bearing.is_given {
        return all;
    }
    if let Ok(frame) = &bearing.frame {
        all.extend(Part::ALL.map(|part| {
            let ratio = frame.used(part);
            let governing = frame.governing(part);
            let why = match part {
                Part::Neck => neck(frame, band, analysis, (build.neck.drilled.any(), units)),
                Part::Pillar => pillar(frame, units),
                Part::Shoulder => joint(&frame.shoulder.judged, say::joint_on_neck),
                Part::Head => joint(&frame.head.judged, say::joint_on_neck),
                Part::Foot => joint(&frame.foot.judged, say::joint_on_pillar),
                Part::Soundbox => soundbox(frame.soundbox.as_ref(), band, analysis),
            };
            let reserve = governing.filter(|_| ratio.is_some()).and_then(|leads| {
                let uses = reserve::uses(frame, part);
                reserve::words(leads, &uses, |aspect| build.reserve(part, aspect))
            });
            let why = with_reserve(why, reserve);
            judged(part_name(part), ratio, why, governing.map(|used| mend(part, used.aspect)))
        }));
    }
    let board = bearing.board_worst();
    if let Some((place, cut)) = board {
        let why = board::board(cut, analysis.strings.get(place), units);
        let leads = cut.governing().map(|used| used.aspect);
        let reserve = cut.governing().filter(|_| cut.used().is_some()).and_then(|leads| {
            let uses: Vec<&Use> =
                [&cut.firm, &cut.soft].iter().flat_map(|state| &state.verdict.uses).collect();
            reserve::words(leads, &uses, |aspect| build.board_reserve(aspect))
        });
        let why = with_reserve(why, reserve);
        let mend = mend_board(leads.unwrap_or(Aspect::BoardBent));
        all.push(judged(board_name(cut), cut.used(), why, Some(mend)));
    }
    all
}

fn judged(
    name: &'static str,
    ratio: Option<(f64, f64)>,
    why: String,
    mend: Option<Words>,
) -> PartWords {
    let standing = Standing::of(ratio);
    let over = matches!(standing, Standing::Between | Standing::Over);
    PartWords {
        name,
        ratio,
        share: ratio.map_or_else(|| display::NONE.to_owned(), percents),
        standing,
        why,
        mend: mend.filter(|_| over).map(Words::said),
    }
}

/// Two shares that differ by less are of one stress.
const SAME_SHARE: f64 = 1e-6;

/// A stress and its limit with so many decimals, one or more, that the share which a reader works out of them is the one
/// that is shown.
fn in_proportion(stress: Stress, limit: Stress) -> (String, String) {
    let (is, most) = (stress.to_mpa(), limit.to_mpa());
    let shown = |decimals: i32| {
        let tens = 10_f64.powi(decimals);
        let [is, most] = [is, most].map(|mpa| (mpa * tens).round() / tens);
        (100.0 * is / most).round()
    };
    let decimals = (1..3).find(|decimals| shown(*decimals) == (100.0 * is / most).round());
    let decimals = usize::try_from(decimals.unwrap_or(3)).unwrap_or(3);
    let write = |mpa| display::decimals(mpa, decimals);
    (write(is), write(most))
}

/// The stress that leads and its limit: `Shear and twist together, 4.1 of 4.8 MPa`.
fn leads(used: &Use) -> String {
    let stress = mpa(used.stress);
    let what = capital(aspect(used.aspect));
    match used.limit {
        _ if used.stress.to_pa().is_infinite() => say::leads_gives_way(&what),
        Some(limit) => {
            let is = used.stress.to_pa() / limit.to_pa();
            let ratio = used.ratio.unwrap_or(is);
            if (ratio - is).abs() > SAME_SHARE {
                let share = percents((ratio, ratio));
                say::leads_sum(&mpa(limit), &share, &stress, &what)
            } else {
                let (stress, limit) = in_proportion(used.stress, limit);
                say::leads_of(&limit, &stress, &what)
            }
        }
        None => say::leads_unlimited(&stress, &what),
    }
}

fn neck(
    frame: &FrameBearing,
    band: &Band,
    analysis: &Analysis,
    (is_drilled, units): (bool, Units),
) -> String {
    let Some(cut) = frame.neck.worst() else {
        return say::NECK_NO_STRENGTH.into();
    };
    let lead = cut.verdict.governing().map(leads).unwrap_or_default();
    let length = |length| display::length_with_unit(length, units.length);
    let section = cut.station.section;
    let mut text = say::neck_where(
        &length(rounded(section.depth())),
        &lead,
        &near(cut.station.at, band, analysis),
        &length(section.breadth()),
    );
    if is_drilled {
        text += &format!(" {}", say::NECK_DRILLED);
    }
    if let Some([least, most]) = frame.neck.range()
        && most.1 - least.1 > 0.005
    {
        let [least, most] = [least, most].map(|end| case(end.0));
        text += &format!(" {}", say::neck_range(&least, &most));
    }
    let leads = cut.verdict.governing().map(|used| used.aspect);
    text += &neck::others(frame, leads);
    if let Some(across) = unjudged(&frame.neck) {
        text += &format!(" {}", say::neck_across(&mpa(across)));
    }
    text
}

/// What joints and soundbox do.
const fn case(case: Case) -> Words {
    match case {
        Case::PillarPushes => say::CASE_PUSHES,
        Case::JointsGive => say::CASE_JOINTS_GIVE,
        Case::NoJointGives => say::CASE_NO_JOINT,
        Case::NothingGives => say::CASE_NOTHING,
    }
}

/// The greatest tension across the grain that has no limit, in the cases that count.
fn unjudged(neck: &NeckBearing) -> Option<Stress> {
    let uses = neck.counted().flat_map(|cut| &cut.verdict.uses);
    let across = uses.filter(|used| used.aspect == Aspect::AcrossTheCurve && used.limit.is_none());
    let greatest = across.map(|used| used.stress.to_pa()).fold(0.0, f64::max);
    (greatest > 0.0).then(|| Stress::from_pa(greatest))
}

/// To a whole millimetre.
fn rounded(length: Length) -> Length {
    Length::from_mm(length.to_mm().round())
}

/// The string whose pin is nearest to a place: `near string 12, C4`.
fn near(at: Point, band: &Band, analysis: &Analysis) -> String {
    let pins = band.strings.iter().map(|string| string.as_ref().ok().map(|placed| placed.bridge));
    nearest(at, pins, analysis)
}

/// The string of whose places, in the harp's order, one is nearest to a place.
fn nearest(at: Point, places: impl Iterator<Item = Option<Point>>, analysis: &Analysis) -> String {
    let off = |pin: Point| (pin.x.to_m() - at.x.to_m()).hypot(pin.y.to_m() - at.y.to_m());
    let mut best: Option<(f64, usize)> = None;
    for (place, stands) in places.enumerate() {
        let Some(stands) = stands else { continue };
        let off = off(stands);
        if best.is_none_or(|(least, _)| off < least) {
            best = Some((off, place));
        }
    }
    let figures = best.and_then(|(_, place)| analysis.strings.get(place));
    figures.map_or_else(|| say::IN_THE_NECK.into(), |figures| say::near(&within(figures)))
}

/// A string within a sentence: `string 9, F5`.
fn within(figures: &StringFigures) -> String {
    match figures.note {
        Some(note) => choose::string_at(&note.printed(), &figures.number),
        None => choose::string_numbered(&figures.number),
    }
}

fn pillar(frame: &FrameBearing, units: Units) -> String {
    let pillar = &frame.pillar;
    let force = |force| display::total_with_unit(force, units.force);
    if pillar.push.to_n() <= 0.0 {
        return say::pillar_pulled(&force(Force::from_n(-pillar.push.to_n())));
    }
    let Some(used) = pillar.judged.governing() else {
        return say::PILLAR_NO_STRENGTH.into();
    };
    let mut text = format!("{}.", leads(used));
    if let Some((plane, square)) = pillar.gives_way {
        let told = say::pillar_bears(&force(plane), &force(pillar.push), &force(square));
        text += &format!(" {told}");
    }
    let [in_plane, sideways, torque] = [5, 4, 3].map(|at| {
        let moment = Moment::from_n_m(pillar_at_most(frame, at));
        moment_with_unit(moment, units.force)
    });
    text += &format!(" {}", say::pillar_also(&in_plane, &sideways, &torque));
    text
}

/// The greatest of a force or moment in the pillar, by size, if no joint gives.
fn pillar_at_most(frame: &FrameBearing, at: usize) -> f64 {
    let cuts = frame.firm().iter().flat_map(|stiff| &stiff.pillar);
    cuts.map(|cut| cut[at].abs()).fold(0.0, f64::max)
}

/// What an order of stringing is called.
pub fn order_name(order: Order) -> &'static str {
    match order {
        Order::LowestFirst => say::ORDER_LOWEST,
        Order::HighestFirst => say::ORDER_HIGHEST,
        Order::MiddleFirst => say::ORDER_MIDDLE,
        Order::InTurns => say::ORDER_IN_TURNS,
    }
    .said()
}

/// The advice that goes with stringing.
pub const STRINGING: [Words; 5] = [
    say::STRINGING_ONE,
    say::STRINGING_TONE,
    say::STRINGING_ROUNDS,
    say::STRINGING_DOWN,
    say::STRINGING_CARE,
];

/// A stage in numbers: pull, push in the pillar, greatest moment, greatest torque, use.
pub fn stage(stage: &Stage, units: Units) -> [String; 5] {
    let force = |force| display::total_with_unit(force, units.force);
    [
        force(stage.pull),
        force(stage.pillar),
        moment_with_unit(stage.moment, units.force),
        moment_with_unit(stage.torque, units.force),
        match (stage.used_ratio, stage.leads) {
            (Some(used), Some(part)) => format!("{}, {}", percents(used), part_within(part)),
            (Some(used), None) => percents(used),
            (None, _) => display::NONE.to_owned(),
        },
    ]
}

/// The units of what [`stage`] tells, in its order; the last has its own.
pub const fn stage_units(units: Units) -> [&'static str; 5] {
    let (force, moment) = (display::force_unit(units.force), moment_unit(units.force));
    [force, force, moment, moment, ""]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::Design;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::engine::bearing::bear;
    use crate::engine::geometry::{lay_out, loads};

    fn told(design: &Design) -> (Bearing, Vec<PartWords>) {
        let resolved = resolve(design);
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
        let bearing = bear(&band, &loads, &analysis, &resolved.geometry, &resolved.build());
        let words = verdicts(&bearing, &band, &analysis, &resolved.build(), design.units);
        (bearing, words)
    }

    /// The line of the forces that tells the twist of the neck.
    fn twist(bearing: &Bearing) -> Option<String> {
        let lines = forces(bearing, Units::default());
        lines.into_iter().find(|(what, _)| *what == say::FORCE_NECK_TWIST.said()).map(|line| line.1)
    }

    #[test]
    fn the_neck_twists_from_the_least_to_the_most() {
        for sample in SAMPLES {
            let (bearing, _) = told(&sample.design());
            let text = twist(&bearing).expect("a frame with sizes twists");
            let ends: Vec<f64> =
                text.trim_end_matches('°').split(" to ").map(|end| end.parse().unwrap()).collect();
            assert!(ends.is_sorted_by(|one, next| one < next), "{}: {text}", sample.key);
        }
    }

    #[test]
    fn nothing_is_judged_of_a_frame_whose_sizes_nobody_gave() {
        let mut design = SAMPLES[2].design();
        design.geometry = Design::default().geometry;
        let (bearing, words) = told(&design);
        assert!(words.is_empty() && !bearing.is_given);
        assert_eq!(twist(&bearing), None);
        let resolved = resolve(&design);
        let (analysis, build) = (analyse(&resolved.harp), resolved.build());
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
        let all = crate::engine::bearing::stages(
            &band,
            &loads,
            &analysis,
            &resolved.geometry,
            &build,
            Order::default(),
        );
        assert!(all.len() > 2 && all.iter().all(|stage| stage.used_ratio.is_none()));
        assert_eq!(stage(&all[1], design.units)[4], display::NONE);
    }

    /// A design of which joints and soundbox have no sizes.
    fn without_making(mut design: Design) -> Design {
        let none = Design::default().geometry;
        (design.geometry.joints, design.geometry.soundbox) = (none.joints, none.soundbox);
        design
    }

    #[test]
    fn every_part_of_the_samples_is_told_in_whole_sentences() {
        for sample in SAMPLES {
            let (bearing, words) = told(&sample.design());
            assert_eq!(words.len(), 7, "{}", sample.key);
            for part in &words {
                assert!(part.why.ends_with('.') && !part.why.contains("  "), "{}", part.why);
                // The samples have all their sizes, and bear what they must.
                assert_eq!(part.standing, Standing::Within, "{}: {}", sample.key, part.name);
                assert!(part.share.ends_with('%'), "{}: {}", part.name, part.share);
                let joint = part.name == "Shoulder" || part.name.ends_with("joint");
                assert!(!joint || part.why.to_lowercase().contains("held by"), "{}", part.why);
                assert_eq!(part.mend, None, "{}", part.name);
                // How far it is from breaking is told, or that it is not judged.
                let loaded = part.ratio.is_some_and(|(_, most)| most >= 0.3);
                let told = part.why.contains("At the highest figure")
                    || part.why.contains("is from breaking is not judged");
                assert_eq!(told, loaded, "{}: {}", part.name, part.why);
            }
            let unknown = told(&without_making(sample.design())).1;
            for part in &unknown {
                // Joints that bending would open are not judged.
                let joint = part.name == "Shoulder" || part.name.ends_with("joint");
                let making = joint || part.name == "Soundbox";
                assert_eq!(part.standing == Standing::Unknown, making, "{}", part.name);
                assert!(part.why.ends_with('.') && !part.why.contains("  "), "{}", part.why);
                let over = matches!(part.standing, Standing::Between | Standing::Over);
                assert_eq!(part.mend.is_some(), over, "{}", part.name);
            }
            assert!(verdict(&bearing).full.contains("of the design allowance, estimated."));
            let lines = forces(&bearing, sample.design().units);
            assert_eq!(lines.len(), 18, "{}", sample.key);
            for line in assumptions(&sample.design()) {
                assert!(line.ends_with('.') && !line.contains("  "), "{line}");
            }
        }
    }

    #[test]
    fn a_thin_neck_is_told_to_be_over_and_how_to_mend_it() {
        let mut design = without_making(SAMPLES[2].design());
        design.geometry.neck.thickness_mm = 20.0;
        let (bearing, words) = told(&design);
        assert_eq!(words[0].standing, Standing::Over);
        assert!(words[0].mend.is_some_and(|mend| mend.contains("thicker")));
        let state = verdict(&bearing);
        assert!(state.full.contains("The neck is over the allowance."), "{state:?}");
        assert!(state.short.starts_with("neck: ") && state.short.contains(", over"), "{state:?}");
        assert_eq!(state.finding.map(|finding| finding.weight), Some(1));
        design.geometry.neck.wood = "european-spruce".to_owned();
        let (_, words) = told(&design);
        assert_eq!((words[0].standing, &*words[0].share), (Standing::Unknown, "–"));
    }

    /// Nothing reassuring stands where the board may be over.
    #[test]
    fn the_worst_part_is_told_and_it_may_be_the_board() {
        let mut design = without_making(SAMPLES[2].design());
        let board = &mut design.geometry.board;
        (board.bass_thickness_mm, board.treble_thickness_mm) = (8.5, 2.9);
        let (bearing, words) = told(&design);
        let board = words.last().expect("the board is judged last");
        assert_eq!(board.standing, Standing::Between);
        let state = verdict(&bearing);
        let lead = format!("soundboard with its string rib: {}, may be over", board.share);
        assert_eq!(state.short, format!("{lead}, estimated"));
        assert!(
            state.full.contains("The soundboard with its string rib may be over the allowance."),
            "{state:?}"
        );
        for part in ["soundbox", "Not judged: shoulder, pillar-to-neck joint"] {
            assert!(state.full.contains(part), "{part}: {state:?}");
        }
        let finding = state.finding.expect("a part that may be over is a finding");
        assert!(finding.sentence.starts_with(&format!("Frame, estimated: {lead}. Not judged: ")));
        assert_eq!(finding.weight, 2);
    }

    /// A wood without a limit for tension across the grain makes no neck safer, and nothing is called harmless.
    #[test]
    fn what_is_not_judged_of_a_neck_is_told() {
        let mut design = SAMPLES[3].design();
        design.geometry.neck.wood = "sugar-maple".to_owned();
        let (bearing, _) = told(&design);
        let neck = &bearing.frame.as_ref().expect("a frame").neck;
        let state = verdict(&bearing);
        let unknown = unjudged(neck).is_some();
        assert_eq!(
            state.full.contains("tension across the grain of the neck"),
            unknown,
            "{state:?}"
        );
        for sample in SAMPLES {
            let (bearing, words) = told(&sample.design());
            let state = verdict(&bearing);
            assert!(!state.short.contains("at most"), "{state:?}");
            // The line of a neck leaves the grain of its planks; that of plywood has plies either way.
            assert!(state.full.contains("grain that runs out of the neck"), "{state:?}");
            let mut design = sample.design();
            design.geometry.neck.wood = "birch-plywood".to_owned();
            let full = verdict(&told(&design).0).full;
            assert!(!full.contains("grain that runs out"), "{full}");
            let over = |part: &PartWords| part.ratio.is_some_and(|ratio| ratio.1 > 1.0);
            assert_eq!(state.finding.is_some(), words.iter().any(over), "{}", sample.key);
        }
    }

    /// No number stands for a part that gives way, wherever its figures are shown.
    #[test]
    fn a_pillar_that_gives_way_is_told_in_words() {
        let mut design = SAMPLES[2].design();
        (design.geometry.pillar.width_mm, design.geometry.pillar.depth_mm) = (12.0, 12.0);
        let (bearing, words) = told(&design);
        let pillar = &words[1];
        assert_eq!((&*pillar.share, &*pillar.head()), ("gives way", "gives way"));
        assert!(pillar.why.starts_with("Off-centre load: the part gives way."));
        assert_eq!(verdict(&bearing).short, "pillar gives way, estimated");
        let summary = verdict(&bearing).full;
        assert!(summary.contains("estimated. By this estimate the pillar gives way."), "{summary}");
        let all = words.iter().map(|part| part.head() + &part.why).collect::<String>() + &summary;
        assert!(!all.contains("endless") && !all.contains("inf"), "{all}");
        assert_eq!(percents((0.79, f64::INFINITY)), "79 % or gives way");
    }

    #[test]
    fn a_design_without_neck_has_its_reason() {
        let (bearing, words) = told(&Design::default());
        assert!(words.is_empty());
        assert!(verdict(&bearing).full.starts_with("No loads: a neck needs three strings"));
    }

    #[test]
    fn numbers_go_by_the_units_of_the_design() {
        let moment = Moment::from_n_m(135.58);
        assert_eq!(moment_with_unit(moment, ForceUnit::Newton), "136 N·m");
        assert_eq!(moment_with_unit(moment, ForceUnit::Lbf), "100 lbf·ft");
        assert_eq!(moment_with_unit(moment, ForceUnit::Kgf), "13.8 kgf·m");
        assert_eq!(percents((0.431, 0.434)), "43 %");
        assert_eq!(percents((0.79, 1.38)), "79 to 138 %");
        let tone = 100.0 * 2.0_f64.powf(-4.0 / 12.0);
        assert!((tone - TONE_BELOW_PERCENT).abs() < 0.05);
    }

    /// The sizes of a new document are nobody's: what they would bear says nothing about this harp.
    #[test]
    fn a_frame_whose_sizes_nobody_gave_is_not_judged() {
        let mut design = SAMPLES[2].design();
        design.geometry = Design::default().geometry;
        let (bearing, words) = told(&design);
        let state = verdict(&bearing);
        assert!(words.is_empty() && state.finding.is_none(), "{state:?}");
        assert_eq!(state.short, "not judged: its sizes are not given");
        assert!(state.full.starts_with("The frame is not judged: no sizes and woods"));
        design.geometry.board.bass_thickness_mm = 6.0;
        let (bearing, words) = told(&design);
        assert!(!words.is_empty() && verdict(&bearing).short.contains("board"));
    }
}
