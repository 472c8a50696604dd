//! Sizes that are pulled in the drawing of the whole harp: what each is called, and the edit that gives it another number.

use super::sizes::PartSize;
use super::sketch;
use crate::design::document::{Design, GeometrySpec};
use crate::design::edit::Edit;
use crate::design::settings::Setting;
use crate::engine::parts::grips::{Grip, Pull};
use crate::words::{Words, parts_pulls as say, parts_sizes as said};

/// What makes sense of the soundbox, in mm; a hole, or what is deep, is there.
const BOX_MM: (f64, f64) = (1.0, 1_000.0);

/// What it is called.
pub const fn named(pull: Pull) -> Words {
    match pull {
        Pull::PillarWidth => say::PILLAR_WIDTH,
        Pull::PillarDepth => say::PILLAR_DEPTH,
        Pull::NeckThickness => say::NECK_THICKNESS,
        Pull::BoardLow => say::BOARD_LOW,
        Pull::BoardHigh => say::BOARD_HIGH,
        Pull::DepthLow => say::DEPTH_LOW,
        Pull::DepthHigh => say::DEPTH_HIGH,
        Pull::BackRise => say::BACK_RISE,
        Pull::HoleLength => say::HOLE_LENGTH,
        Pull::HoleWidth => say::HOLE_WIDTH,
        Pull::Base => said::BASE,
        Pull::Feet => say::FEET,
        Pull::BaseBeyond => said::BASE_BEYOND,
        Pull::BaseBehind => said::BASE_BEHIND,
        Pull::FootBlock => said::FOOT_BLOCK,
        Pull::KneeBlock => say::KNEE_BLOCK,
    }
}

/// Where it stands in a design: among the sizes for the saw, or in the frame.
const fn saw(pull: Pull) -> Option<PartSize> {
    Some(match pull {
        Pull::BackRise => PartSize::BackRise,
        Pull::Base => PartSize::Base,
        Pull::Feet => PartSize::Feet,
        Pull::BaseBeyond => PartSize::BaseBeyond,
        Pull::BaseBehind => PartSize::BaseBehind,
        Pull::FootBlock => PartSize::FootBlock,
        Pull::KneeBlock => PartSize::KneeBlock,
        _ => return None,
    })
}

fn frame(pull: Pull, geometry: &mut GeometrySpec) -> Option<&mut f64> {
    Some(match pull {
        Pull::PillarWidth => &mut geometry.pillar.width_mm,
        Pull::PillarDepth => &mut geometry.pillar.depth_mm,
        Pull::NeckThickness => &mut geometry.neck.thickness_mm,
        Pull::BoardLow => &mut geometry.board.bass_width_mm,
        Pull::BoardHigh => &mut geometry.board.treble_width_mm,
        Pull::DepthLow => &mut geometry.soundbox.bass_depth_mm,
        Pull::DepthHigh => &mut geometry.soundbox.treble_depth_mm,
        Pull::HoleLength => &mut geometry.soundbox.hole_length_mm,
        Pull::HoleWidth => &mut geometry.soundbox.hole_width_mm,
        _ => return None,
    })
}

/// The least and the greatest that make sense, in mm.
pub fn range_mm(pull: Pull) -> (f64, f64) {
    match pull {
        Pull::PillarWidth => Setting::PillarWidth.row().sensible,
        Pull::PillarDepth => Setting::PillarDepth.row().sensible,
        Pull::NeckThickness => Setting::NeckThickness.row().sensible,
        Pull::BoardLow => Setting::BassWidth.row().sensible,
        Pull::BoardHigh => Setting::TrebleWidth.row().sensible,
        _ => saw(pull).map_or(BOX_MM, |size| size.row().sensible),
    }
}

/// The number in a design, in mm.
pub fn number_mm(pull: Pull, design: &Design) -> f64 {
    let in_frame = || frame(pull, &mut design.geometry.clone()).map(|number| *number);
    match saw(pull) {
        Some(size) => size.number(&design.geometry),
        None => in_frame().unwrap_or_default(),
    }
}

/// How much a size grows when its grip goes on by 1: measured on a harp in which it is somewhat larger.
pub fn rate(grip: &Grip, design: &Design) -> f64 {
    let by_mm = 0.5;
    let next = edit(grip.pull, design, grip.size.to_mm() + by_mm).apply(design);
    let grips = sketch(&next).map(|sketch| sketch.grips).unwrap_or_default();
    let own = grips.iter().find(|own| own.pull == grip.pull);
    own.and_then(|own| {
        let went: f64 = (0..3).map(|axis| (own.at[axis] - grip.at[axis]) * grip.way[axis]).sum();
        let grew = own.size.to_m() - grip.size.to_m();
        (went > 0.1 * grew && grew > 0.0).then_some(grew / went)
    })
    .unwrap_or(grip.rate)
}

/// The edit that gives it another number, as near to it as makes sense. A run of such edits is one step.
pub fn edit(pull: Pull, design: &Design, to_mm: f64) -> Edit {
    let (least, most) = range_mm(pull);
    let to_mm = to_mm.clamp(least, most);
    if let Some(size) = saw(pull) {
        return size.edit(design, Some(to_mm));
    }
    let mut geometry = design.geometry.clone();
    if let Some(number) = frame(pull, &mut geometry) {
        *number = to_mm;
    }
    Edit::Geometry(Box::new(geometry))
}
