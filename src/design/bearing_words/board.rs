//! The board, in words.

use super::{aspect, leads, mpa, percents, rounded};
use crate::design::display;
use crate::design::document::Units;
use crate::engine::analysis::StringFigures;
use crate::engine::bearing::{BoardCut, BoardState};
use crate::engine::structure::verdict::{Aspect, Use};
use crate::engine::units::Length;

/// What the board bears at a string: what leads, all else that was looked at, and how far it rises.
pub(super) fn board(cut: &BoardCut, figures: Option<&StringFigures>, units: Units) -> String {
    let length = |length: Length| display::length_with_unit(length, units.length);
    let tenth = |length: Length| Length::from_mm((10.0 * length.to_mm()).round() / 10.0);
    let (firm, soft) = (&cut.firm, &cut.soft);
    let at = figures.map_or_else(String::new, |figures| {
        format!("At {} it", display::string_name(figures).replacen('S', "s", 1))
    });
    let at = if at.is_empty() { "It".to_owned() } else { at };
    let mut text = cut.governing().map(|used| format!("{}. ", leads(used))).unwrap_or_default();
    text += &format!(
        "{at} is {} wide and {} thick.",
        length(rounded(cut.width)),
        length(tenth(cut.thickness))
    );
    let all: Vec<String> = firm.verdict.uses.iter().map(|used| one(used, firm, soft)).collect();
    text += &format!(" There: {}.", all.join("; "));
    let range = |one: Length, other: Length| {
        let (one, other) = (length(tenth(one)), length(tenth(other)));
        if one == other { one } else { format!("{one} to {other}") }
    };
    text += &format!(" It rises {}", range(firm.rise, soft.rise));
    text += &if cut.creeps {
        format!(", over the years {}.", range(firm.rise_crept, soft.rise_crept))
    } else {
        "; how far it creeps so is not known.".to_owned()
    };
    text += if cut.on_liners {
        " One end holds for edges as firm as liners, sides and braces may make them, the other for edges as soft as these may be."
    } else {
        " One end holds for edges that neither turn nor move, the other for edges that turn freely and do not pull."
    };
    text += &match cut.bows_at {
        Some(times) if times.is_finite() && times > 0.0 => format!(
            " Crept for ten years, with the modulus for buckling, it would bow at {} times the push along it.",
            display::decimals((10.0 * times).floor() / 10.0, 1)
        ),
        Some(times) if times > 0.0 => {
            " The soundbox stretches it along, so that it does not bow.".to_owned()
        }
        Some(_) => String::new(),
        None => " Bowing under the push along it is not judged: that asks for the sizes of the soundbox and for how the wood creeps."
            .to_owned(),
    };
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
        "no limit is known".to_owned()
    };
    // What it bows at is told by itself.
    if used.aspect == Aspect::BoardBows {
        return format!("{name}: {share}");
    }
    let stress = |least: f64, most: f64| {
        let [least, most] = [least, most].map(|of| mpa(crate::engine::units::Stress::from_pa(of)));
        if least == most { most } else { format!("{least} to {most}") }
    };
    let of = || uses().map(|used| used.stress.to_pa());
    let limit = used.limit.map_or_else(String::new, |limit| format!(" of {}", mpa(limit)));
    let both = stress(of().fold(f64::INFINITY, f64::min), of().fold(0.0, f64::max));
    format!("{name}: {both}{limit} MPa, {share}")
}
