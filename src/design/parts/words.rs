//! What is worth saying of the parts, in sentences.

use super::Parts;
use crate::design::display::decimals;
use crate::design::letters::capital;
use crate::engine::bearing::Part;
use crate::engine::parts::findings::{Finding, HAND_M, Tip};
use crate::engine::parts::{HoleKind, Kind, NoRoom};
use crate::engine::units::Length;
use crate::words::{Words, frame, parts as say};

/// A neck whose line turns from its grain by less is taken as one whose grain follows it. A choice of this program.
const LEAST_TURN_DEG: f64 = 5.0;

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

/// How far the line of the neck turns from the straight grain of its planks, where that is more than a little.
fn neck_grain(parts: &Parts) -> Option<String> {
    let neck = parts.whole.of(Kind::Neck).next().filter(|neck| !neck.stuff.is_sheet)?;
    let along = neck.face.u;
    let stations = &parts.band.neck.as_ref()?.centre;
    let turned = stations.windows(2).map(|pair| {
        let way =
            [pair[1].at.x.to_m() - pair[0].at.x.to_m(), pair[1].at.y.to_m() - pair[0].at.y.to_m()];
        let (cos, sin) =
            (way[0] * along[0] + way[1] * along[1], way[0] * along[1] - way[1] * along[0]);
        sin.abs().atan2(cos.abs()).to_degrees()
    });
    let most = turned.fold(0.0, f64::max);
    (most > LEAST_TURN_DEG).then(|| say::neck_grain(&decimals(most, 0)))
}

/// All that is said of the parts, and last what they do not tell.
pub fn told(parts: &Parts) -> Vec<String> {
    let mut all: Vec<String> =
        parts.wrong.iter().map(|wrong| format!("{}.", capital(wrong))).collect();
    all.extend(parts.findings.iter().map(sentence));
    if parts.whole.of(Kind::Back).any(|back| back.sheet.is_some()) {
        all.push(say::BENT_NOT_JUDGED.into());
    }
    all.extend(neck_grain(parts));
    all.push(say::NOT_JUDGED.into());
    all
}
