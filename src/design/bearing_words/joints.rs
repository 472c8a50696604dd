//! Joints and soundbox, in words.

use std::fmt::Display;

use super::{aspect, leads, mpa, nearest, percents};
use crate::design::letters::capital;
use crate::engine::analysis::Analysis;
use crate::engine::bearing::{BoxBearing, Judged};
use crate::engine::geometry::Band;
use crate::engine::structure::verdict::{Aspect, Use};
use crate::words::{frame as say, semicolon};

/// A joint, on the wood of a part.
pub(super) fn joint(judged: &Judged, on_wood: fn(&dyn Display) -> String) -> String {
    if judged.ends.is_empty() {
        return say::JOINT_NO_SIZES.into();
    }
    let mut text = match judged.governing() {
        Some(used) if judged.used().is_some() => on_wood(&leads(used)),
        Some(_) => String::new(),
        None => say::JOINT_NO_LIMIT.into(),
    };
    let others: Vec<String> = others(judged).iter().map(share).collect();
    if !others.is_empty() {
        text += &format!(" {}.", capital(&others.join(semicolon())));
    }
    if let Some(opening) = judged.opening() {
        text += &format!(" {}", say::joint_opens(&mpa(opening)));
    }
    text.trim_start().to_owned()
}

/// What else of a joint was judged by its sizes, each at its highest.
fn others(judged: &Judged) -> Vec<Use> {
    let lead = judged.governing().map(|used| used.aspect);
    let uses = judged.ends.iter().flat_map(|end| &end.uses);
    let sized = |used: &&Use| {
        matches!(used.aspect, Aspect::OpeningOn(_) | Aspect::SlidingOn(_) | Aspect::Splitting)
    };
    if !uses.clone().any(|used| sized(&used)) {
        return Vec::new();
    }
    let mut all: Vec<Use> = Vec::new();
    for used in uses.filter(|used| Some(used.aspect) != lead && used.ratio.is_some()) {
        match all.iter_mut().find(|other| other.aspect == used.aspect) {
            Some(other) if used.ratio > other.ratio => *other = *used,
            Some(_) => {}
            None => all.push(*used),
        }
    }
    all
}

/// `sliding and twist held by the tenon: 30 %`.
fn share(used: &Use) -> String {
    let ratio = used.ratio.unwrap_or_default();
    say::share_of(&percents((ratio, ratio)), &aspect(used.aspect))
}

/// The soundbox.
pub(super) fn soundbox(judged: Option<&BoxBearing>, band: &Band, analysis: &Analysis) -> String {
    let Some(soundbox) = judged else {
        return say::BOX_NO_SIZES.into();
    };
    let Some((cut, used)) = soundbox.worst() else {
        return say::BOX_NO_LIMIT.into();
    };
    let holes = band.holes.iter().map(|hole| Some(hole.board));
    let mut text = say::box_where(&leads(used), &nearest(cut.at, holes, analysis));
    let others: Vec<String> = cut
        .verdict
        .uses
        .iter()
        .filter(|other| other.aspect != used.aspect && other.ratio.is_some_and(|ratio| ratio > 0.0))
        .map(share)
        .collect();
    if !others.is_empty() {
        text += &format!(" {}", say::there(&others.join(semicolon())));
    }
    text
}
