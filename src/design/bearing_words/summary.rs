//! The frame in a line, and in a few words: neck, pillar, joints and board alike, and what is not judged.

use super::{Standing, part_name, percents};
use crate::design::letters::{capital, small};
use crate::engine::bearing::{Bearing, Part};

/// What no figure here looks at.
const NEVER_JUDGED: &str = "soundbox, string rib and bars";

/// How far a part is used, least and most; `None` where that is not judged.
type Share = Option<(f64, f64)>;

/// Every part, by its name, the frame's first; the board where its strings bear on it.
fn parts(bearing: &Bearing) -> Vec<(String, Share)> {
    let mut all = Vec::new();
    if let Ok(frame) = &bearing.frame {
        all.extend(Part::ALL.map(|part| (small(part_name(part)), frame.used(part))));
    }
    if let Some((_, cut)) = bearing.board_worst() {
        all.push(("board".to_owned(), cut.fixed_ratio.zip(cut.hinged_ratio)));
    }
    all
}

/// The part that is used farthest at most.
fn worst(parts: &[(String, Share)]) -> Option<(&str, (f64, f64))> {
    let mut judged = parts.iter().filter_map(|(name, share)| Some((&**name, (*share)?)));
    let first = judged.next()?;
    Some(judged.fold(first, |most, next| if next.1.1 > most.1.1 { next } else { most }))
}

/// The frame in a line for a summary: `Neck 65 to 87 %, pillar 29 %, …`; the reason where there is none.
pub fn summary(bearing: &Bearing) -> String {
    let all = parts(bearing);
    let mut text = match &bearing.frame {
        Err(error) => capital(&format!("no loads: {error}.")),
        Ok(_) => String::new(),
    };
    let (mut shares, mut fallen) = (Vec::new(), String::new());
    for (name, share) in &all {
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
        text += &format!(" {shares} of what may be allowed, estimated.");
    }
    text += &match worst(&all) {
        _ if !fallen.is_empty() => fallen,
        Some((name, share)) => match Standing::of(Some(share)) {
            Standing::Over => format!(" The {name} is over what may be allowed."),
            Standing::Between => format!(" The {name} may be over what may be allowed."),
            _ => String::new(),
        },
        None => String::new(),
    };
    if !all.is_empty() {
        text += &format!(" Not judged: {NEVER_JUDGED}.");
    }
    text.trim_start().to_owned()
}

/// The frame in a few words, by the part that is used farthest and those that are not judged:
/// `board may be over: 68 to 137 %, estimated`; nothing where there is none.
pub fn in_short(bearing: &Bearing) -> String {
    let all = parts(bearing);
    let unjudged: Vec<&str> =
        all.iter().filter(|(_, share)| share.is_none()).map(|(name, _)| &**name).collect();
    let rest = match unjudged.as_slice() {
        [] => String::new(),
        names => format!(", {} not judged", names.join(" and ")),
    };
    let Some((name, (least, most))) = worst(&all) else {
        return rest.trim_start_matches(", ").to_owned();
    };
    let share = percents((least, most));
    let lead = match Standing::of(Some((least, most))) {
        _ if least.is_infinite() => format!("{name} gives way, estimated"),
        _ if most.is_infinite() => format!("{name} may give way, estimated"),
        Standing::Over => format!("{name} over: {share}, estimated"),
        Standing::Between => format!("{name} may be over: {share}, estimated"),
        _ => format!("{name} at most {}, estimated", percents((most, most))),
    };
    lead + &rest
}
