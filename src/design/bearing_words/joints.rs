//! Joints and soundbox, in words.

use super::{aspect, leads, mpa, nearest, percents};
use crate::design::letters::capital;
use crate::engine::analysis::Analysis;
use crate::engine::bearing::{BoxBearing, Judged};
use crate::engine::geometry::Band;
use crate::engine::structure::verdict::{Aspect, Use};

/// A joint, on the wood of a part.
pub(super) fn joint(judged: &Judged, wood: &str) -> String {
    if judged.ends.is_empty() {
        return "Not judged, as no sizes are given of what holds it.".to_owned();
    }
    let mut text = match judged.governing() {
        Some(used) if judged.used().is_some() => {
            format!("{}, on the wood of {wood}.", leads(used))
        }
        Some(_) => String::new(),
        None => "No limit is known of this wood.".to_owned(),
    };
    let others: Vec<String> = others(judged).iter().map(share).collect();
    if !others.is_empty() {
        text += &format!(" {}.", capital(&others.join("; ")));
    }
    if let Some(opening) = judged.opening() {
        text += &format!(
            " Bending is greater than the push: it would open an edge of the joint with up to {} MPa. The glue line and \
             dowels hold that; glue on end grain holds little, and the sizes of dowels are not known here.",
            mpa(opening)
        );
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
    format!("{}: {}", aspect(used.aspect), percents((ratio, ratio)))
}

/// The soundbox.
pub(super) fn soundbox(judged: Option<&BoxBearing>, band: &Band, analysis: &Analysis) -> String {
    let Some(soundbox) = judged else {
        return "Not judged, as the sizes of its sides and back are not given.".to_owned();
    };
    let Some((cut, used)) = soundbox.worst() else {
        return "No limit is known of its woods.".to_owned();
    };
    let holes = band.holes.iter().map(|hole| Some(hole.board));
    let mut text = format!("{}, {}.", leads(used), nearest(cut.at, holes, analysis));
    let others: Vec<String> = cut
        .verdict
        .uses
        .iter()
        .filter(|other| other.aspect != used.aspect && other.ratio.is_some_and(|ratio| ratio > 0.0))
        .map(share)
        .collect();
    if !others.is_empty() {
        text += &format!(" There: {}.", others.join("; "));
    }
    text
}
