//! Lengths that are proposed for the strings as they are: for the target curve, scaled, stretched, or faired.

use super::outcome::Change;
use super::ranges::ranges;
use super::words::{self, Line, line};
use crate::design::display::{NONE, against, length_with_unit};
use crate::design::document::{Design, DrivesSpec, LengthUnit, MaterialSpec, Units, WantsSpec};
use crate::design::edit::{ChosenBy, Edit, Taken};
use crate::design::resolve::{Resolved, resolve};
use crate::design::targets::{Point, curve, wanted};
use crate::engine::analysis::{Analysis, Known, analyse, is_soft};
use crate::engine::figure::Figure;
pub use crate::engine::lengths::Strength;
use crate::engine::lengths::{
    Aim, Asked, Bound, Conflict, Held, Smoothing, Unevenness, fair, propose, rise, scale, stretch,
    to_longest, unevenness,
};
use crate::engine::units::{Force, Length, Stiffness};
use crate::words::{Words, choose as say};

/// Lengths are proposed in steps of half a millimetre, or of a 64th of an inch.
pub const STEP_MM: f64 = 0.5;
/// The parts of an inch.
const PARTS: f64 = 64.0;
/// Each proposed length is longer than the one above it by so much at least, so that it still is in steps.
const LEAST_RISE_MM: f64 = 1.0;
/// How far a bridge pin moves at most where no other limit is typed, as a share of its length: so the harp stays the
/// instrument that it is. Chosen for this project, no source.
pub const FAR_RATIO: f64 = 0.08;
/// By which ratio lengths can be scaled or stretched at most, and at least.
pub const RATIO: (f64, f64) = (0.25, 4.0);

/// How lengths are proposed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Way {
    /// For the target curve, with the make-ups as they are, so smooth.
    Wanted(Strength),
    /// All by one ratio.
    Scale(f64),
    /// All by one ratio, so that the longest is so long.
    Longest(Length),
    /// From the highest of the chosen strings to the lowest by a ratio that goes evenly from one to the other.
    Stretch(f64, f64),
    /// The chosen strings in a smooth curve, their ends kept.
    Fair(Strength),
}

/// How far lengths may go, where they are proposed for the target curve.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Room {
    /// How far a bridge pin may move along its string, as the neck leaves it; none for [`FAR_RATIO`].
    pub move_pins: Option<Length>,
    /// The shortest length; the neck must stay above the board in any case.
    pub shortest: Option<Length>,
    /// The longest length.
    pub longest: Option<Length>,
    /// How far a bridge pin may stand off the curve of its neighbours.
    pub kink: Option<Length>,
    /// The lowest and the highest load share in per cent; none for those of the instrument.
    pub share_percent: Option<(f64, f64)>,
}

/// Lengths that were proposed.
#[derive(Clone, Debug, PartialEq)]
pub struct Lengths {
    /// The whole design with these lengths.
    pub preview: Design,
    /// Its figures.
    pub analysis: Analysis,
    /// The strings that would change, from the highest down.
    pub changes: Vec<Change>,
    /// How good the lengths are, before and after.
    pub lines: Vec<Line>,
    /// What holds strings back, in sentences.
    pub notes: Vec<String>,
    /// Whether they gain what is worth moving pins for; lengths that are not sought for the curve are what was asked
    /// for, and always are.
    pub is_worth: bool,
    pub(super) taken: Vec<Taken>,
    /// The curve that they were made for.
    curve: Vec<Point>,
}

impl Lengths {
    /// The edit that takes the lengths: of all strings, or of those of which `rows` says so.
    pub fn edit(&self, rows: Option<&[bool]>) -> Edit {
        let chosen =
            |taken: &&Taken| rows.is_none_or(|rows| rows.get(taken.row).copied().unwrap_or(false));
        let strings = self.taken.iter().filter(chosen).cloned().collect();
        let materials = Vec::<MaterialSpec>::new();
        Edit::Take {
            strings,
            stock: Vec::new(),
            materials,
            chosen_by: ChosenBy { curve: self.curve.clone(), ..ChosenBy::default() },
        }
    }
}

/// Proposes lengths for the strings that `rows` chooses; the others keep theirs.
///
/// # Errors
///
/// Sentences that say what is in the way: limits that conflict, or a drawn curve that makes the lengths.
pub fn lengths(
    design: &Design,
    resolved: &Resolved,
    analysis: &Analysis,
    way: Way,
    rows: &[bool],
    room: &Room,
) -> Result<Lengths, Vec<String>> {
    if design.geometry.drives == DrivesSpec::NeckCurve {
        return Err(vec![say::CURVE_MAKES_LENGTHS.into()]);
    }
    let is_chosen = |index: usize| rows.get(index).copied().unwrap_or(false);
    let before: Vec<Known<Length>> = resolved.harp.strings.iter().map(|s| s.length).collect();
    let chosen: Vec<usize> = (0..before.len()).filter(|index| is_chosen(*index)).collect();
    let (Some(first), Some(last)) = (chosen.first(), chosen.last()) else {
        return Err(vec![say::NONE_CHOSEN.into()]);
    };
    let range = *first..*last + 1;
    let held: Vec<bool> = (0..before.len()).map(|index| !is_chosen(index)).collect();
    let mut notes = Vec::new();
    let ratio = |ratio: f64| {
        let valid = (RATIO.0..=RATIO.1).contains(&ratio);
        let sentence = || say::ratio_range(&RATIO.0, &RATIO.1, &ratio);
        if valid { Ok(ratio) } else { Err(vec![sentence()]) }
    };
    let after = match way {
        Way::Wanted(strength) => {
            let asked = asked(design, resolved, &before, rows, room);
            let least_rise = Some(Length::from_mm(LEAST_RISE_MM));
            let smoothing = Smoothing {
                greatest_kink: room.kink,
                least_rise,
                ..Smoothing::of(strength, before.len())
            };
            let proposal = propose(&resolved.harp, &asked, smoothing)
                .map_err(|conflicts| of_conflicts(&conflicts, analysis))?;
            notes = of_held(&proposal.held, analysis);
            rising(&before, proposal.lengths)
        }
        Way::Scale(by) => scale(&before, ratio(by)?),
        Way::Longest(longest) => {
            let now = before.iter().flatten().map(|length| length.to_m()).fold(0.0, f64::max);
            if now > 0.0 {
                ratio(longest.to_m() / now)?;
            }
            to_longest(&before, longest)
        }
        Way::Stretch(top, bottom) => stretch(&before, range, (ratio(top)?, ratio(bottom)?)),
        Way::Fair(strength) => fair(&before, range, strength, &held).lengths,
    };
    let taken: Vec<Taken> = before
        .iter()
        .zip(&after)
        .enumerate()
        .filter(|(row, _)| is_chosen(*row))
        .filter_map(|(row, (before, after))| {
            let length = (*after).ok()?;
            let text = written(length, design.units.length);
            let step_m = rounded(length, design.units.length).to_m();
            // What is the same after rounding stays as it was typed.
            let same = before.is_ok_and(|before| (before.to_m() - step_m).abs() < 1e-7);
            (!same).then_some(Taken { row, made: None, length: Some(text) })
        })
        .collect();
    let mut found = taken_into(design, resolved, analysis, taken, notes);
    if matches!(way, Way::Wanted(_)) {
        let figures = (analysis, &found.analysis);
        found.is_worth = words::is_worth(design, resolved, figures)
            || straightened(&before, &found.analysis) >= WORTH_KINK_MM;
    }
    Ok(found)
}

/// From what gain of the pin that is farthest off the curve of its neighbours pins are worth moving, in mm. Chosen for
/// this project, no source.
const WORTH_KINK_MM: f64 = 2.0;

/// By how much nearer to the curve of its neighbours the pin is that is farthest off it, in mm.
fn straightened(before: &[Known<Length>], after: &Analysis) -> f64 {
    let after: Vec<Known<Length>> = after.strings.iter().map(|string| string.length).collect();
    let kink = |lengths: &[Known<Length>]| {
        unevenness(lengths).kink.map_or(0.0, |(_, kink)| kink.to_mm().abs())
    };
    kink(before) - kink(&after)
}

/// Lengths that rise wherever those before did: where they do not, they stay nearer to those before.
fn rising(before: &[Known<Length>], proposed: Vec<Known<Length>>) -> Vec<Known<Length>> {
    let least = Length::from_mm(LEAST_RISE_MM);
    let mut share = 1.0;
    let mut next = proposed.clone();
    while share > 0.0 && rise(before, least) && !rise(&next, least) {
        share -= 0.125;
        let part = |(was, is): (&Known<Length>, &Known<Length>)| match (was, is) {
            (Ok(was), Ok(is)) => Ok(Length::from_m(was.to_m() + share * (is.to_m() - was.to_m()))),
            _ => *is,
        };
        next = before.iter().zip(&proposed).map(part).collect();
    }
    next
}

/// The preview of lengths that are taken.
pub(super) fn taken_into(
    design: &Design,
    resolved: &Resolved,
    analysis: &Analysis,
    taken: Vec<Taken>,
    notes: Vec<String>,
) -> Lengths {
    let mut lengths = Lengths {
        preview: Design::default(),
        analysis: analysis.clone(),
        changes: Vec::new(),
        lines: Vec::new(),
        notes,
        is_worth: true,
        taken,
        curve: curve(design, resolved),
    };
    lengths.preview = lengths.edit(None).apply(design);
    let meant = resolve(&lengths.preview);
    lengths.analysis = analyse(&meant.harp);
    for taken in &lengths.taken {
        let (before, after) = (&analysis.strings[taken.row], &lengths.analysis.strings[taken.row]);
        let mut change = Change::new(taken.row, before, after);
        change.length =
            (design.strings[taken.row].length.clone(), taken.length.clone().unwrap_or_default());
        lengths.changes.push(change);
    }
    lengths.lines = lines(design, (resolved, &meant), (analysis, &lengths.analysis));
    lengths
}

/// What is asked of each string.
pub(super) fn asked(
    design: &Design,
    resolved: &Resolved,
    before: &[Known<Length>],
    rows: &[bool],
    room: &Room,
) -> Vec<Asked> {
    let targets = &design.targets;
    let limits = &resolved.harp.limits;
    let of_harp = (limits.slack_share_percent, limits.working_share_percent);
    let most_of = |index: usize| {
        let make_up = resolved.harp.strings[index].make_up.as_ref();
        make_up.map_or(f64::INFINITY, |make_up| limits.most_share_percent(is_soft(make_up)))
    };
    let shares = room.share_percent.unwrap_or(of_harp);
    let neck = resolved.geometry.below_pins.to_m();
    let asked = |(index, wanted): (usize, Option<f64>)| {
        let aim = wanted.map(|value| match targets.wants {
            WantsSpec::Stiffness => Aim::Stiffness(Stiffness::from_n_per_mm(value)),
            WantsSpec::Tension => Aim::Tension(Force::from_n(value)),
        });
        let is = before[index].ok().map(Length::to_m);
        let far = is.map(|is| FAR_RATIO * is);
        let by = room.move_pins.map(Length::to_m).or(far);
        let least =
            [Some(neck), room.shortest.map(Length::to_m), is.zip(by).map(|(is, by)| is - by)];
        let most = [room.longest.map(Length::to_m), is.zip(by).map(|(is, by)| is + by)];
        Asked {
            aim,
            weight: 1.0,
            is_locked: !rows.get(index).copied().unwrap_or(false),
            least: least.into_iter().flatten().reduce(f64::max).map(Length::from_m),
            most: most.into_iter().flatten().reduce(f64::min).map(Length::from_m),
            least_share_percent: Some(targets.least_share_percent.unwrap_or(shares.0)),
            most_share_percent: Some(
                targets.most_share_percent.unwrap_or(shares.1).min(most_of(index)),
            ),
        }
    };
    wanted(design, resolved).into_iter().enumerate().map(asked).collect()
}

fn lines(
    design: &Design,
    meant: (&Resolved, &Resolved),
    figures: (&Analysis, &Analysis),
) -> Vec<Line> {
    let unit = design.units.length;
    let mut lines = ranges(design, figures);
    lines.extend(words::off_lines(design, meant.0, figures));
    let lengths = |resolved: &Resolved| -> Vec<Known<Length>> {
        resolved.harp.strings.iter().map(|string| string.length).collect()
    };
    let both = (lengths(meant.0), lengths(meant.1));
    let longest = |lengths: &[Known<Length>]| {
        let most = lengths.iter().flatten().map(|length| length.to_m()).fold(0.0, f64::max);
        length_with_unit(Length::from_m(most), unit)
    };
    let kink = |uneven: Unevenness| match uneven.kink {
        Some((index, kink)) => {
            let kink = Length::from_m(kink.to_m().abs());
            format!("{}, {}", length_with_unit(kink, unit), words::within(figures.0, index))
        }
        None => NONE.to_owned(),
    };
    lines.push(line(say::LINE_LONGEST, longest(&both.0), longest(&both.1)));
    lines.push(line(say::LINE_KINK, kink(unevenness(&both.0)), kink(unevenness(&both.1))));
    lines
}

/// A length in steps, as it would be typed.
pub fn written(length: Length, unit: LengthUnit) -> String {
    match unit {
        LengthUnit::Mm => {
            let text = format!("{:.1}", rounded(length, unit).to_mm());
            text.strip_suffix(".0").map_or(text.clone(), str::to_owned)
        }
        LengthUnit::Inch => {
            let mut parts = (length.to_inch() * PARTS).round();
            let whole = (parts / PARTS).floor();
            parts -= whole * PARTS;
            let mut of = PARTS;
            while parts > 0.0 && parts % 2.0 == 0.0 {
                (parts, of) = (parts / 2.0, of / 2.0);
            }
            match (whole > 0.0, parts > 0.0) {
                (_, false) => format!("{whole:.0} in"),
                (false, true) => format!("{parts:.0}/{of:.0} in"),
                (true, true) => format!("{whole:.0} {parts:.0}/{of:.0} in"),
            }
        }
    }
}

/// A length in steps.
fn rounded(length: Length, unit: LengthUnit) -> Length {
    match unit {
        LengthUnit::Mm => Length::from_mm((length.to_mm() / STEP_MM).round() * STEP_MM),
        LengthUnit::Inch => Length::from_inch((length.to_inch() * PARTS).round() / PARTS),
    }
}

const fn bound(bound: Bound) -> Words {
    match bound {
        Bound::Asked => say::BOUND_ASKED,
        Bound::LoadShare => say::BOUND_SHARE,
        Bound::Pull => say::BOUND_STIFFNESS,
        _ => say::BOUND_COMPUTED,
    }
}

fn of_held(held: &[Option<Held>], analysis: &Analysis) -> Vec<String> {
    let mut told: Vec<(Held, (usize, usize))> = Vec::new();
    for (index, held) in held.iter().enumerate() {
        let Some(held) = held.filter(|held| *held != Held::Locked) else { continue };
        match told.last_mut() {
            Some(last) if last.0 == held && last.1.1 + 1 == index => last.1.1 = index,
            _ => told.push((held, (index, index))),
        }
    }
    let sentence = |(held, strings): (Held, (usize, usize))| {
        let strings = words::span(analysis, strings);
        match held {
            Held::Least(by) => say::held_shorter(&bound(by), &strings),
            Held::Most(by) => say::held_longer(&bound(by), &strings),
            Held::Locked => String::new(),
        }
    };
    told.into_iter().map(sentence).filter(|text| !text.is_empty()).collect()
}

fn of_conflicts(conflicts: &[Conflict], analysis: &Analysis) -> Vec<String> {
    let sentence = |conflict: &Conflict| {
        let Conflict { index, least, most } = conflict;
        let (above, below) = (least.0.to_mm(), most.0.to_mm());
        let (above, below) = against(Figure::Length, above, below, &Units::default());
        let string = words::within(analysis, *index);
        say::length_conflict(&above, &below, &bound(least.1), &bound(most.1), &string)
    };
    let mut told: Vec<String> = conflicts.iter().take(5).map(sentence).collect();
    let more = conflicts.len() - told.len();
    if more > 0 {
        told.push(say::and_so_on(&more));
    }
    told
}
