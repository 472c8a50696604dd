//! What is worth saying of the parts, in sentences.

use super::Parts;
use crate::design::display::{decimals, percent};
use crate::design::letters::capital;
use crate::engine::bearing::Part;
use crate::engine::parts::findings::{Finding, HAND_M, Tip};
use crate::engine::parts::{HoleKind, Kind, NoRoom};
use crate::engine::units::Length;
use crate::words::{Words, frame, parts as say};

/// A length to a tenth of a millimetre, with the decimal sign of the language.
fn mm(length: Length) -> String {
    decimals(length.to_mm(), 1)
}

fn whole(length: Length) -> String {
    decimals(length.to_mm(), 0)
}

const fn pin(kind: HoleKind) -> Words {
    match kind {
        HoleKind::TuningPin => say::TUNING_PIN,
        _ => say::BRIDGE_PIN,
    }
}

/// A finding as a sentence.
pub fn sentence(finding: &Finding) -> String {
    match finding {
        Finding::StringsAtNeck { gap } => say::strings_at_neck(&mm(*gap)),
        Finding::StringAtPin { string, other, kind, gap } => {
            say::string_at_pin(&mm(*gap), other, &pin(*kind), string)
        }
        Finding::LeversClose { string, other, gap } => say::levers_close(&mm(*gap), string, other),
        Finding::PinAtEdge { string, kind, off, asked } => {
            say::pin_at_edge(&mm(*asked), &mm(*off), &pin(*kind), string)
        }
        Finding::HoleOnBrace { hole, brace } => say::hole_on_brace(brace, hole),
        Finding::BackLower { from, to } => say::back_lower(&mm(*from), &mm(*to)),
        Finding::HoleNarrowed { hole, from, to } => {
            say::hole_narrowed(&whole(*from), hole, &whole(*to))
        }
        Finding::HandTooWide { length, width } => {
            let of = |m: f64| whole(Length::from_m(m));
            say::hand_too_wide(&of(HAND_M.0), &of(HAND_M.1), &whole(*length), &whole(*width))
        }
        Finding::OutOfReach { count, first, last, far, reach } => {
            say::out_of_reach(count, &whole(*far), first, last, &whole(*reach))
        }
        Finding::InBlock { kind: Kind::FootBlock, count, first, last } => {
            say::in_foot_block(count, first, last)
        }
        Finding::InBlock { count, first, last, .. } => say::in_knee_block(count, first, last),
        Finding::BoardThin { string, at_string, at_end } => {
            say::board_thin(&mm(*at_end), &mm(*at_string), string)
        }
        Finding::FaceTooLarge { at, across, given, drawn } => {
            let joint = match at {
                Part::Shoulder => frame::PART_SHOULDER,
                Part::Foot => frame::PART_FOOT,
                _ => frame::PART_HEAD,
            };
            let way = if *across { say::FACE_ACROSS } else { say::FACE_HIGH };
            say::face_too_large(&mm(*drawn), &mm(*given), &joint, &way)
        }
        Finding::BoltsClose { gap, asked } => say::bolts_close(&mm(*asked), &mm(*gap)),
        Finding::BlockLonger { from, to } => say::block_longer(&mm(*from), &mm(*to)),
        Finding::BaseOpens { ratio } => say::base_opens(&share(*ratio)),
        Finding::BaseBends { ratio } => say::base_bends(&share(*ratio)),
        Finding::NeckBeside { by, wanted } => say::neck_beside(&mm(*by), &whole(*wanted)),
        Finding::RibNarrowed { from, to } => say::rib_narrowed(&mm(*from), &mm(*to)),
        Finding::BarAtRib { pair } => say::bar_at_rib(pair),
        Finding::NeckInBox { kind, deep } => say::neck_in_box(&mm(*deep), &kind.said()),
        Finding::LeftOut(what) => String::from(match what {
            NoRoom::ShoulderTenon => say::NO_SHOULDER_TENON,
            NoRoom::ShoulderFastener => say::NO_SHOULDER_FASTENER,
            NoRoom::NeckFastener => say::NO_NECK_FASTENER,
            NoRoom::HeadTenon => say::NO_HEAD_TENON,
            NoRoom::FootTenon => say::NO_FOOT_TENON,
        }),
        Finding::Tips { tip, angle_rad } => {
            let way = match tip {
                Tip::Front => say::TO_FRONT,
                Tip::Back => say::TO_PLAYER,
                Tip::Aside => say::ASIDE,
            };
            if *angle_rad > 0.0 {
                say::tips(&decimals(angle_rad.to_degrees(), 1), &way)
            } else {
                say::falls(&way)
            }
        }
    }
}

/// What holds the soundbox on the base, and how far that is used.
fn held(parts: &Parts) -> Option<String> {
    let holding = parts.holding?;
    Some(match holding.glue.ratio().zip(holding.base.ratio()) {
        Some((glue, base)) => say::held(&share(base), &share(glue), &parts.pull),
        None => say::held_unjudged(&parts.pull),
    })
}

fn share(ratio: f64) -> String {
    percent(100.0 * ratio)
}

/// How much is worth a look.
pub fn found(parts: &Parts) -> usize {
    parts.findings.len() + usize::from(parts.over.is_some())
}

/// How much of the parts is said to be not judged.
pub fn unjudged(parts: &Parts) -> usize {
    let known = parts.holding.is_none_or(|held| held.glue.ratio().zip(held.base.ratio()).is_some());
    [!known, parts.runs_out_rad.is_some(), is_bent(parts)].into_iter().filter(|is| *is).count()
}

fn is_bent(parts: &Parts) -> bool {
    parts.whole.of(Kind::Back).any(|back| back.sheet.is_some())
}

/// All that is said of the parts, and last what they do not tell.
pub fn told(parts: &Parts) -> Vec<String> {
    let mut all: Vec<String> =
        parts.wrong.iter().map(|wrong| format!("{}.", capital(wrong))).collect();
    all.extend(parts.over.clone());
    all.extend(parts.findings.iter().map(sentence));
    if is_bent(parts) {
        all.push(say::BENT_NOT_JUDGED.into());
    }
    all.extend(held(parts));
    let turned = parts.runs_out_rad.map(f64::to_degrees);
    let grain = if parts.is_crossed { say::neck_layers_turn } else { say::neck_grain };
    all.extend(turned.map(|most| grain(&decimals(most, 0))));
    all.push(say::NOT_JUDGED.into());
    all
}
