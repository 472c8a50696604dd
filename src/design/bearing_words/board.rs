//! The board, in words.

use super::{aspect, leads, mpa, percents, rounded, within};
use crate::design::display;
use crate::design::document::Units;
use crate::engine::analysis::StringFigures;
use crate::engine::bearing::{BoardCut, BoardState};
use crate::engine::structure::verdict::{Aspect, Use};
use crate::engine::units::Length;
use crate::words::{frame as say, semicolon};

/// What the board bears at a string: what leads, all else that was looked at, and how far it rises.
pub(super) fn board(cut: &BoardCut, figures: Option<&StringFigures>, units: Units) -> String {
    let length = |length: Length| display::length_with_unit(length, units.length);
    let tenth = |length: Length| Length::from_mm((10.0 * length.to_mm()).round() / 10.0);
    let (firm, soft) = (&cut.firm, &cut.soft);
    let (wide, thick) = (length(rounded(cut.width)), length(tenth(cut.thickness)));
    let mut text = cut.governing().map(|used| format!("{}. ", leads(used))).unwrap_or_default();
    text += &match figures {
        Some(figures) => say::board_at(&within(figures), &thick, &wide),
        None => say::board_is(&thick, &wide),
    };
    let all: Vec<String> = firm.verdict.uses.iter().map(|used| one(used, firm, soft)).collect();
    text += &format!(" {}", say::there(&all.join(semicolon())));
    let range = |one: Length, other: Length| {
        let (one, other) = (length(tenth(one)), length(tenth(other)));
        if one == other { one } else { say::from_to(&other, &one) }
    };
    let now = range(firm.rise, soft.rise);
    let rises = if cut.creeps {
        say::board_rises_years(&range(firm.rise_crept, soft.rise_crept), &now)
    } else {
        say::board_rises(&now)
    };
    let edges = if cut.on_liners { say::BOARD_ON_LINERS } else { say::BOARD_EDGES };
    let bows = match cut.bows_at {
        Some(times) if times.is_finite() && times > 0.0 => {
            say::board_bows_at(&display::decimals((10.0 * times).floor() / 10.0, 1))
        }
        Some(times) if times > 0.0 => say::BOARD_NO_BOWING.into(),
        Some(_) => String::new(),
        None => say::BOARD_BOWING_UNJUDGED.into(),
    };
    text += &format!(" {rises} {edges} {bows}");
    let mut text = text.trim_end().to_owned();
    if cut.has_unjudged_ends {
        text += &format!(" {}", say::BOARD_ENDS);
    }
    text
}

/// What was looked at, at both ends: `bending of its string rib: 5.1 to 7.9 of 21.0 MPa, 24 to 38 %`.
fn one(used: &Use, firm: &BoardState, soft: &BoardState) -> String {
    let both = [firm, soft].map(|state| state.used(used.aspect));
    let uses = || both.into_iter().flatten();
    let ratios = || uses().filter_map(|used| used.ratio);
    let name = aspect(used.aspect);
    let (least, most) = (ratios().fold(f64::INFINITY, f64::min), ratios().fold(0.0_f64, f64::max));
    let share = if ratios().next().is_some() {
        percents((least, most))
    } else {
        say::NO_LIMIT_KNOWN.into()
    };
    // What it bows at is told by itself.
    if used.aspect == Aspect::BoardBows {
        return say::share_of(&share, &name);
    }
    let stress = |least: f64, most: f64| {
        let [least, most] = [least, most].map(|of| mpa(crate::engine::units::Stress::from_pa(of)));
        if least == most { most } else { say::from_to(&most, &least) }
    };
    let of = || uses().map(|used| used.stress.to_pa());
    let both = stress(of().fold(f64::INFINITY, f64::min), of().fold(0.0, f64::max));
    match used.limit {
        Some(limit) => say::shares_list(&mpa(limit), &share, &both, &name),
        None => say::shares_unlimited(&share, &both, &name),
    }
}
