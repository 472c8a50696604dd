//! The state of the frame: the one verdict that header, findings, loads and papers tell. It names the part that leads
//! and how sure that is, and says what is not judged.

use super::{Standing, aspect, board_name, part_name, percents, unjudged};
use crate::design::letters::{capital, small};
use crate::engine::bearing::{Bearing, Part};
use crate::engine::structure::verdict::Aspect;

/// What no figure here looks at.
const NEVER_JUDGED: &str = "the ends of string rib and bars, the board beside its string holes";

/// What 100 % is. For sawn wood with a coefficient of variation of 16 % the factors are `1 − 1.645 · 0.16` for the
/// weakest of twenty pieces, 0.6 for a lasting load and 1.3 for safety: `0.74 · 0.6/1.3 = 0.34`.
pub const MEANING: &str = "100 % is the design allowance and not breaking: the strength that 95 of 100 pieces of the wood \
     have, less what a lasting load and safety take from it. For solid wood that is about a third of the mean strength of \
     small, sound pieces. What is expected to break a part stands beside it, for straight grain and without drilled holes, by a \
     curve of how wood tires that was read second-hand.";

/// The verdict on a frame whose sizes nobody gave, in short and in full.
const NOT_GIVEN: &str = "not judged, as its sizes are not given";
const UNGIVEN: &str = "The frame is not judged: nobody has given the sizes and woods of neck, pillar and board yet. Give them in \
     the drawing, under Woods.";

/// The state of a frame.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct FrameVerdict {
    /// In a few words, with the part that leads; empty where there is nothing to judge.
    pub short: String,
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
        all.extend(Part::ALL.map(|part| (small(part_name(part)), frame.used(part))));
    }
    if let Some((_, cut)) = bearing.board_worst() {
        all.push((small(board_name(cut)), cut.used()));
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
        if frame.used(Part::Neck).is_some() && unjudged(&frame.neck.cuts).is_some() {
            all.push("tension across the grain of the neck".to_owned());
        }
        let joints = [
            (Part::Shoulder, &frame.shoulder.judged),
            (Part::Head, &frame.head.judged),
            (Part::Foot, &frame.foot.judged),
        ];
        for (part, judged) in joints {
            if frame.used(part).is_some() && judged.opening().is_some() {
                all.push(format!("opening of the {}", small(part_name(part))));
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
        all.push("tension of the board across its grain".to_owned());
    }
    let mut add = |name: &str| {
        if !all.iter().any(|other| other == name) {
            all.push(name.to_owned());
        }
    };
    if let Some((_, cut)) = bearing.board_worst() {
        for used in cut.unjudged() {
            add(&of_board(used.aspect));
        }
        if !cut.on_liners {
            add("the glue of the board's edges");
        }
        if cut.bows_at.is_none() {
            add("bowing of the board under the push along it");
        }
    }
    all.push(NEVER_JUDGED.to_owned());
    all.join(", ")
}

/// What was looked at of the board, by itself.
fn of_board(of: Aspect) -> String {
    match of {
        Aspect::BoardBent => "bending of the board".to_owned(),
        _ => aspect(of).replacen("its", "the board's", 1),
    }
}

/// The state of a frame, told alike wherever it is told.
pub fn verdict(bearing: &Bearing) -> FrameVerdict {
    let all = parts(bearing);
    let Some((name, (least, most))) = worst(&all) else {
        return FrameVerdict { short: String::new(), full: summary(bearing, &all), finding: None };
    };
    if !bearing.is_given {
        return FrameVerdict {
            short: NOT_GIVEN.to_owned(),
            full: UNGIVEN.to_owned(),
            finding: None,
        };
    }
    let share = percents((least, most));
    let standing = Standing::of(Some((least, most)));
    let lead = match standing {
        _ if least.is_infinite() => format!("{name} gives way"),
        _ if most.is_infinite() => format!("{name} may give way"),
        Standing::Over => format!("{name}: {share}, over"),
        Standing::Between => format!("{name}: {share}, may be over"),
        // What is not judged may be worse.
        _ => format!("{name}: {share}, worst of what is judged"),
    };
    let finding = matches!(standing, Standing::Over | Standing::Between).then(|| FrameFinding {
        weight: if standing == Standing::Over { 1 } else { 2 },
        sentence: format!("Frame, estimated: {lead}. Not judged: {}.", not_judged(bearing, &all)),
    });
    FrameVerdict { short: format!("{lead}, estimated"), full: summary(bearing, &all), finding }
}

/// Every part in a line: `Neck 65 to 87 %, pillar 29 %, …`; the reason where there is none.
fn summary(bearing: &Bearing, all: &[(String, Share)]) -> String {
    let mut text = match &bearing.frame {
        Err(error) => capital(&format!("no loads: {error}.")),
        Ok(_) => String::new(),
    };
    let (mut shares, mut fallen) = (Vec::new(), String::new());
    for (name, share) in all {
        match share {
            Some((least, most)) if most.is_infinite() => {
                let verb = if least.is_infinite() { "gives way" } else { "may give way" };
                fallen += &format!(" By this estimate the {name} {verb}.");
            }
            Some(share) => shares.push(format!("{name} {}", percents(*share))),
            None => shares.push(format!("{name} not judged")),
        }
    }
    if !shares.is_empty() {
        let shares = capital(&shares.join(", "));
        text += &format!(" {shares} of the design allowance, estimated.");
    }
    text += &match worst(all) {
        _ if !fallen.is_empty() => fallen,
        Some((name, share)) => match Standing::of(Some(share)) {
            Standing::Over => format!(" The {name} is over it."),
            Standing::Between => format!(" The {name} may be over it."),
            _ => String::new(),
        },
        None => String::new(),
    };
    if !all.is_empty() {
        text += &format!(" Not judged: {}.", not_judged(bearing, all));
    }
    text.trim_start().to_owned()
}
