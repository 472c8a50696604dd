//! The state of the frame: the one verdict that header, findings, loads and papers tell. It names the part that leads
//! and how sure that is, and says what is not judged.

use super::names::{board_within, of_board, part_within};
use super::{Standing, aspect, neck, percents, unjudged};
use crate::design::letters::capital;
use crate::engine::bearing::{Bearing, Part};
use crate::words::{Words, frame as say};

/// What 100 % is. For sawn wood with a coefficient of variation of 16 % the factors are `1 − 1.645 · 0.16` for the
/// weakest of twenty pieces, 0.6 for a lasting load and 1.3 for safety: `0.74 · 0.6/1.3 = 0.34`.
pub const MEANING: Words = say::MEANING;

/// The state of a frame.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct FrameVerdict {
    /// In a few words, with the part that leads; empty where there is nothing to judge.
    pub short: String,
    /// The same without what a head above it says: that it is the worst of what is judged, and estimated.
    pub lead: String,
    /// Every part, and what is not judged.
    pub full: String,
    /// The finding, where a part is over, may be over or gives way.
    pub finding: Option<FrameFinding>,
}

/// A finding about the frame.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FrameFinding {
    /// 1 for a warning, 2 for a remark: where only the worse end of the estimate is over.
    pub weight: u8,
    /// What was found.
    pub sentence: String,
}

/// How far a part is used, least and most; `None` where that is not judged.
type Share = Option<(f64, f64)>;

/// Every part, by its name, the frame's first; the board where its strings bear on it.
fn parts(bearing: &Bearing) -> Vec<(String, Share)> {
    let mut all = Vec::new();
    if let Ok(frame) = &bearing.frame {
        all.extend(Part::ALL.map(|part| (part_within(part).to_owned(), frame.used(part))));
    }
    if let Some((_, cut)) = bearing.board_worst() {
        all.push((board_within(cut).to_owned(), cut.used()));
    }
    all
}

/// The part that is used farthest at most.
fn worst(parts: &[(String, Share)]) -> Option<(&str, (f64, f64))> {
    let mut judged = parts.iter().filter_map(|(name, share)| Some((&**name, (*share)?)));
    let first = judged.next()?;
    Some(judged.fold(first, |most, next| if next.1.1 > most.1.1 { next } else { most }))
}

/// All that is not judged, in words.
fn not_judged(bearing: &Bearing, parts: &[(String, Share)]) -> String {
    let mut all: Vec<String> =
        parts.iter().filter(|(_, share)| share.is_none()).map(|(name, _)| name.clone()).collect();
    if let Ok(frame) = &bearing.frame {
        if frame.used(Part::Neck).is_some() && unjudged(&frame.neck).is_some() {
            all.push(say::ACROSS_NECK.into());
        }
        if frame.used(Part::Neck).is_some() {
            all.extend(neck::not_judged(frame).map(|of| aspect(of).to_owned()));
            all.extend(frame.neck.runs_out_rad.map(|_| say::GRAIN_OF_NECK.into()));
        }
        let joints = [
            (Part::Shoulder, &frame.shoulder.judged),
            (Part::Head, &frame.head.judged),
            (Part::Foot, &frame.foot.judged),
        ];
        for (part, judged) in joints {
            if frame.used(part).is_some() && judged.opening().is_some() {
                all.push(say::opening_of(&part_within(part)));
            }
        }
    }
    let soundbox = bearing.frame.as_ref().ok().and_then(|frame| frame.soundbox.as_ref());
    if let Some(soundbox) = soundbox {
        for used in soundbox.unjudged() {
            let name = aspect(used.aspect).to_owned();
            if !all.contains(&name) {
                all.push(name);
            }
        }
    } else if bearing.frame.is_ok() {
        all.push(say::ACROSS_BOARD.into());
    }
    let mut add = |name: &str| {
        if !all.iter().any(|other| other == name) {
            all.push(name.to_owned());
        }
    };
    if let Some((_, cut)) = bearing.board_worst() {
        for used in cut.unjudged() {
            add(of_board(used.aspect));
        }
        if !cut.on_liners {
            add(say::EDGES_GLUE.said());
        }
        if cut.bows_at.is_none() {
            add(say::BOARD_BOWING.said());
        }
        if cut.has_unjudged_ends {
            add(say::ENDS_OF_BARS.said());
        }
    }
    all.push(say::NEVER_JUDGED.into());
    all.join(", ")
}

/// The state of a frame, told alike wherever it is told.
pub fn verdict(bearing: &Bearing) -> FrameVerdict {
    let all = parts(bearing);
    let Some((name, (least, most))) = worst(&all) else {
        return FrameVerdict { full: summary(bearing, &all), ..FrameVerdict::default() };
    };
    if !bearing.is_given {
        return FrameVerdict {
            short: say::NOT_GIVEN.into(),
            lead: say::NOT_GIVEN.into(),
            full: say::NOT_GIVEN_FULL.into(),
            finding: None,
        };
    }
    let share = percents((least, most));
    let standing = Standing::of(Some((least, most)));
    let told = match standing {
        _ if least.is_infinite() => Some(say::lead_gives_way(&name)),
        _ if most.is_infinite() => Some(say::lead_may_give_way(&name)),
        Standing::Over => Some(say::lead_over(&name, &share)),
        Standing::Between => Some(say::lead_may_be_over(&name, &share)),
        _ => None,
    };
    let beside = told.clone().unwrap_or_else(|| say::lead_share(&name, &share));
    // What is not judged may be worse.
    let lead = told.unwrap_or_else(|| say::lead_worst(&name, &share));
    let finding = matches!(standing, Standing::Over | Standing::Between).then(|| FrameFinding {
        weight: if standing == Standing::Over { 1 } else { 2 },
        sentence: {
            let list = not_judged(bearing, &all);
            let finding = if bearing.is_proposed { say::finding_proposed } else { say::finding };
            finding(&lead, &list)
        },
    });
    let estimated = if bearing.is_proposed { say::estimated_proposed } else { say::estimated };
    let short = estimated(&lead);
    FrameVerdict { short, lead: beside, full: summary(bearing, &all), finding }
}

/// Every part in a line: `Neck 65 to 87 %, pillar 29 %, …`; the reason where there is none.
fn summary(bearing: &Bearing, all: &[(String, Share)]) -> String {
    let mut text = match &bearing.frame {
        Err(error) => say::no_loads(error),
        Ok(_) => String::new(),
    };
    let (mut shares, mut fallen) = (Vec::new(), String::new());
    for (name, share) in all {
        match share {
            Some((least, most)) if most.is_infinite() => {
                let told = if least.is_infinite() { say::falls(name) } else { say::may_fall(name) };
                fallen += &format!(" {told}");
            }
            Some(share) => shares.push(format!("{name} {}", percents(*share))),
            None => shares.push(say::share_unjudged(name)),
        }
    }
    if !shares.is_empty() {
        let shares = capital(&shares.join(", "));
        text += &format!(" {}", say::shares(&shares));
    }
    text += &match worst(all) {
        _ if !fallen.is_empty() => fallen,
        Some((name, share)) => match Standing::of(Some(share)) {
            Standing::Over => format!(" {}", say::is_over(&name)),
            Standing::Between => format!(" {}", say::is_maybe_over(&name)),
            _ => String::new(),
        },
        None => String::new(),
    };
    if !all.is_empty() {
        text += &format!(" {}", say::not_judged_list(&not_judged(bearing, all)));
        if bearing.is_proposed {
            text += &format!(" {}", say::SIZES_PROPOSED);
        }
    }
    text.trim_start().to_owned()
}
