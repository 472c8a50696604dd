//! The frame of a new harp: wide and thick enough for its strings by the program's own estimate.
//!
//! Widths, spacing and the measures to begin with are those of the samples: common practice, no source. Thicknesses then
//! follow from the estimate, so that no part bears more than is allowed, the board at both ends of what its liners hold and
//! without bars. A maker who counts on bars makes the board thinner.

use super::kind::Kind;
use super::soundbox::{least_treble_mm, take_braces, take_foot_block, usual_soundbox, widen_end};
use crate::design::document::{
    Design, FastenerSpec, GapsSpec, GeometrySpec, JointSpec, JointsSpec, MechanismKind, SizesSpec,
};
use crate::design::parts::sizes::{PartSize, with_entry};
use crate::design::resolve::{Resolved, resolve};
use crate::engine::analysis::{Analysis, Known, analyse};
use crate::engine::bearing::{
    Bearing, BearingError, BoardCut, FrameBearing, Part, bear_board, bear_frame, borne,
};
use crate::engine::geometry::{Band, lay_out};
use crate::engine::parts::findings::BOLT_ROOM;
use crate::engine::structure::verdict::{Aspect, Carrier, Use};

/// How far neck, pillar and joints of a new frame may be used up, and how far its board.
const MOST_USED: f64 = 0.9;
const MOST_USED_BOARD: f64 = 0.98;
/// The same of its board with what the soundbox pushes it along.
const MOST_USED_PUSHED: f64 = 0.985;
/// The thinnest board that a new harp has, in mm, and after how many rounds of looking it only grows.
const LEAST_THICKNESS_MM: f64 = 2.0;
const ROUNDS_TO_FIND: usize = 3;
/// What the middle of a string keeps from the face of the neck, in mm. Common practice, no source.
const STRINGS_OFF_NECK_MM: f64 = 8.0;
/// How deep bridge pins sit in the neck, in mm. Common practice, no source.
const BRIDGE_PIN_DEEP_MM: f64 = 22.0;
/// The longest string of a floor harp, in mm: the soundbox of a larger harp is wider and deeper. Common practice, no source.
pub(super) const FLOOR_MM: f64 = 1200.0;
/// From this length on a base reaches farther behind, by so much for each millimetre. Common practice, no source.
const STANDS_MM: f64 = 1000.0;
const BEHIND_EACH: f64 = 0.28;
/// How thick the base of a pedal harp is, in mm. Common practice, no source.
const PEDAL_BASE_MM: f64 = 24.0;
/// How deep a soundbox is made at its lower end at most before its walls grow thicker, over the width of its board.
const MOST_DEPTH: f64 = 0.65;
/// How far up its thicker board the lowest string of a pedal harp begins, in mm. Common practice, no source.
const PEDAL_BELOW_MM: f64 = 115.0;
/// How far the pillar of a new harp stands from its lowest string at most, in mm. Common practice, no source.
const MOST_GAP_MM: f64 = 44.0;
/// A tenon in the knee block is no thicker than this share of the neck. Common practice, no source.
const MOST_TENON: f64 = 0.6;
/// Wire-strung harps with fewer gaps have their neck on a tenon. Chosen for this project, no source.
const MOST_GAPS_TENONED: u32 = 25;
/// How often a measure grows before the frame is left as it is: far more often than any harp of a kind needs.
const MOST_TRIES: usize = 60;

/// Gives a design with strings its frame.
pub fn build(design: &mut Design, kind: &Kind) {
    let longest = design.strings.last().and_then(|string| string.length.parse::<u16>().ok());
    let longest_mm = longest.map_or(0.0, f64::from);
    let gaps = u32::try_from(design.strings.len()).unwrap_or(u32::MAX).saturating_sub(1);
    let pedal = kind.mechanism == MechanismKind::DoubleDisc;
    let geometry = &mut design.geometry;
    let (bass, treble) = kind.spacing_mm;
    geometry.spacing.gaps = if gaps < 2 || bass.total_cmp(&treble).is_eq() {
        GapsSpec::UniformMm(bass)
    } else {
        GapsSpec::ZonesMm(vec![(1, bass), (gaps, treble)])
    };
    // 270 mm for a lap harp, 330 mm for a floor harp, 430 mm for a pedal harp.
    let more_mm = (longest_mm - FLOOR_MM).max(0.0);
    geometry.board.bass_width_mm = 10.0 * (18.0 + 0.012 * longest_mm + 0.03 * more_mm).round();
    (geometry.pillar.width_mm, geometry.pillar.depth_mm) = (40.0, 36.0);
    let board = &mut geometry.board;
    // 27 by 9 mm for a lap harp, 31 by 11 mm for a floor harp, 40 by 16 mm for a pedal harp.
    board.rib_width_mm = (21.0 + 0.0075 * longest_mm).round();
    board.rib_height_mm = (6.0 + 0.004 * longest_mm).round();
    if pedal {
        board.rib_width_mm += 8.0;
        board.rib_height_mm += 4.0;
        board.below_mm = PEDAL_BELOW_MM;
        geometry.neck.above_pins_mm = 30.0;
        design.allowances.pin_mm = 6.5;
        design.allowances.after_length_mm = 60.0;
        design.allowances.knot_mm = 110.0;
    }
    board.strip_width_mm = board.rib_width_mm - 8.0;
    board.strip_height_mm = 3.0;
    take_neck(geometry, 36.0);
    geometry.drills.bridge_depth_mm = BRIDGE_PIN_DEEP_MM;
    // The neck of a small wire-strung harp bends away above its shoulder: bolts would come out of it.
    let is_tenoned = kind.mechanism == MechanismKind::None && gaps < MOST_GAPS_TENONED;
    making(geometry, longest_mm, (pedal, is_tenoned));
    geometry.sizes = SizesSpec::Proposed;
    let Some(mut meant) = Meant::of(design) else { return };
    for _ in 0..MOST_TRIES {
        meant = meant.again(design);
        let Ok(frame) = meant.frame() else { return };
        if !(widen_end(&mut design.geometry, &meant.band)
            || strengthen(&mut design.geometry, &frame))
        {
            break;
        }
    }
    meant = thicken_board(design, meant);
    meant = widen_liners(design, meant);
    // Now the soundbox pushes the board as well.
    for _ in 0..MOST_TRIES {
        take_foot_block(&mut design.geometry, &meant.band, pedal);
        take_braces(&mut design.geometry, &meant.band);
        meant = meant.again(design);
        let bearing = meant.pushed();
        let cuts = &bearing.board;
        let over = |counts| {
            let most = cuts.iter().flatten().filter_map(|cut| share(cut, counts));
            most.fold(0.0, f64::max) > MOST_USED_PUSHED
        };
        let geometry = &mut design.geometry;
        if widen_end(geometry, &meant.band) {
            continue;
        }
        if over(bends) {
            let board = &mut geometry.board;
            board.bass_thickness_mm += 0.5;
            let least = least_treble_mm(board.bass_thickness_mm, &meant.band);
            board.treble_thickness_mm = (board.treble_thickness_mm + 0.5).max(least);
        } else if over(|aspect| !bends(aspect)) {
            geometry.soundbox.liner_width_mm += 2.0;
        } else if !bearing.frame.as_ref().is_ok_and(|frame| strengthen(geometry, frame)) {
            return;
        }
    }
}

/// 0 for a lap harp, 1 for a floor harp, 2 for a pedal harp.
pub(super) fn size_class(longest_mm: f64) -> f64 {
    ((longest_mm - 400.0) / 450.0).round().clamp(0.0, 2.0)
}

/// A neck so thick, with the strings beside it and its bolts in it.
fn take_neck(geometry: &mut GeometrySpec, thickness_mm: f64) {
    geometry.neck.thickness_mm = thickness_mm;
    geometry.strings_from_neck_mm = 0.5 * thickness_mm + STRINGS_OFF_NECK_MM;
    let bolts = &mut geometry.joints.shoulder;
    bolts.across_mm = (thickness_mm / 3.0).round().max(BOLT_ROOM * bolts.diameter_mm);
}

/// What holds the joints, and the soundbox: bolts through the shoulder, or a tenon on a wire-strung harp, whose neck bends
/// away there; tenons at head and foot. Sizes are common practice, no source.
fn making(geometry: &mut GeometrySpec, longest_mm: f64, (is_pedal, is_tenoned): (bool, bool)) {
    let size = size_class(longest_mm);
    let diameter_mm = if is_pedal { 12.0 } else { 8.0 };
    let bolts = JointSpec {
        fasteners: FastenerSpec::Bolts,
        count: 4,
        diameter_mm,
        depth_mm: 40.0,
        apart_mm: 3.0 * diameter_mm,
        across_mm: geometry.joints.shoulder.across_mm.max(BOLT_ROOM * diameter_mm),
        ..JointSpec::default()
    };
    let tenon = JointSpec {
        tenon_mm: 14.0 + 3.0 * size,
        tenon_depth_mm: 45.0 + 8.0 * size,
        ..JointSpec::default()
    };
    let shoulder = if is_tenoned { tenon } else { bolts };
    geometry.joints = JointsSpec { shoulder, head: tenon, foot: tenon };
    geometry.soundbox = usual_soundbox(geometry, longest_mm);
    let usual = PartSize::BaseBehind.usual();
    let behind = usual + (BEHIND_EACH * (longest_mm - STANDS_MM).max(0.0)).round();
    with_entry(geometry, PartSize::BaseBehind.key(), (behind > usual).then(|| behind.to_string()));
    with_entry(geometry, PartSize::Base.key(), is_pedal.then(|| PEDAL_BASE_MM.to_string()));
}

/// How far a board is used up at most in the aspects that count.
fn share(cut: &BoardCut, counts: fn(Aspect) -> bool) -> Option<f64> {
    let uses = cut.firm.verdict.uses.iter().chain(&cut.soft.verdict.uses);
    uses.filter(|used| counts(used.aspect)).filter_map(|used| used.ratio).reduce(f64::max)
}

/// Makes the first part larger that bears too much; whether there is one.
fn strengthen(geometry: &mut GeometrySpec, frame: &FrameBearing) -> bool {
    let over = |part: &Part| frame.used(*part).is_some_and(|used| used.1 > MOST_USED);
    match Part::ALL.iter().find(|part| over(part)) {
        Some(Part::Shoulder) if frame.shoulder.judged.governing().is_some_and(on_bolts) => {
            let bolts = &mut geometry.joints.shoulder;
            bolts.diameter_mm += 1.0;
            bolts.apart_mm = 3.0 * bolts.diameter_mm;
            bolts.across_mm = bolts.across_mm.max(BOLT_ROOM * bolts.diameter_mm);
        }
        Some(Part::Shoulder) if frame.shoulder.judged.governing().is_some_and(on_tenon) => {
            // With wood left on both sides of it, so that the neck grows with it.
            let wider_mm = geometry.joints.shoulder.tenon_mm + 2.0;
            geometry.joints.shoulder.tenon_mm = wider_mm;
            let neck_mm = 2.0 * (0.5 * wider_mm / MOST_TENON).ceil();
            let more_mm = neck_mm - geometry.neck.thickness_mm;
            if more_mm > 0.0 {
                take_neck(geometry, neck_mm);
                geometry.neck.above_pins_mm += more_mm;
            }
        }
        Some(Part::Neck | Part::Shoulder) => {
            take_neck(geometry, geometry.neck.thickness_mm + 2.0);
            geometry.neck.above_pins_mm += 2.0;
        }
        Some(Part::Head) => {
            // A pillar with a capital: a wider one would only bear more.
            let face = &mut geometry.joints.head;
            face.face_width_mm = geometry.neck.thickness_mm.min(geometry.pillar.depth_mm);
            face.face_height_mm = geometry.pillar.width_mm.max(face.face_height_mm) + 6.0;
        }
        Some(Part::Foot) if frame.foot.judged.governing().is_some_and(on_tenon) => {
            // With wood left on both sides of it; a wider pillar would only bear more.
            let foot = &mut geometry.joints.foot;
            foot.tenon_mm += 2.0;
            geometry.pillar.depth_mm = geometry.pillar.depth_mm.max(foot.tenon_mm / MOST_TENON);
        }
        Some(Part::Foot) => {
            // Farther from the soundboard more of it stands on the base; a wider one draws more bending to its foot.
            let pillar = &mut geometry.pillar;
            if pillar.gap_mm < MOST_GAP_MM {
                pillar.gap_mm += 2.0;
            } else {
                pillar.depth_mm += 2.0;
            }
        }
        Some(Part::Pillar) => {
            geometry.pillar.width_mm += 2.0;
            geometry.pillar.depth_mm += 2.0;
        }
        Some(Part::Soundbox) => {
            let of_box = &mut geometry.soundbox;
            if of_box.bass_depth_mm < MOST_DEPTH * geometry.board.bass_width_mm {
                of_box.bass_depth_mm += 10.0;
                of_box.treble_depth_mm += 4.0;
            } else {
                of_box.side_mm += 0.5;
                of_box.back_mm += 1.0;
            }
        }
        None => return false,
    }
    true
}

/// What thicker bolts mend.
fn on_bolts(used: &Use) -> bool {
    matches!(
        used.aspect,
        Aspect::OpeningOn(Carrier::Bolts) | Aspect::SlidingOn(Carrier::Bolts) | Aspect::Splitting
    )
}

/// What a thicker tenon mends.
fn on_tenon(used: &Use) -> bool {
    matches!(used.aspect, Aspect::OpeningOn(Carrier::Tenon) | Aspect::SlidingOn(Carrier::Tenon))
}

/// What a thicker board mends.
fn bends(aspect: Aspect) -> bool {
    !matches!(aspect, Aspect::EdgePeel)
}

/// Makes the liners so wide, in steps of 2 mm, that the glue of the edges holds.
fn widen_liners(design: &mut Design, mut meant: Meant) -> Meant {
    for _ in 0..MOST_TRIES {
        meant = meant.again(design);
        let cuts = meant.board();
        let peels = |cut: &Known<BoardCut>| {
            let over = share(cut.as_ref().ok()?, |aspect| !bends(aspect))?;
            Some(over > MOST_USED_BOARD)
        };
        if !cuts.iter().filter_map(peels).any(|over| over) {
            break;
        }
        design.geometry.soundbox.liner_width_mm += 2.0;
    }
    meant
}

/// Makes the board so thick, in half millimetres, that no string asks too much of it. The stress falls with the square of
/// the thickness, more or less, so that a few rounds come close; then the board grows until it is thick enough.
fn thicken_board(design: &mut Design, mut meant: Meant) -> Meant {
    for round in 0..MOST_TRIES {
        meant = meant.again(design);
        let cuts = meant.board();
        let need = |cut: &Known<BoardCut>| {
            let cut = cut.as_ref().ok()?;
            let thickness_mm = cut.thickness.to_mm();
            Some((thickness_mm, thickness_mm * (share(cut, bends)? / MOST_USED_BOARD).sqrt()))
        };
        let needs: Vec<(f64, f64)> = cuts.iter().filter_map(need).collect();
        let (Some(top), Some(bottom)) = (needs.first(), needs.last()) else { break };
        let board = &mut design.geometry.board;
        if round >= ROUNDS_TO_FIND {
            if needs.iter().all(|(now, need)| need <= now) {
                break;
            }
            board.bass_thickness_mm += 0.5;
            let least = least_treble_mm(board.bass_thickness_mm, &meant.band);
            board.treble_thickness_mm = (board.treble_thickness_mm + 0.5).max(least);
            continue;
        }
        let (treble, bass) = (top.1, bottom.1);
        let span = bottom.0 - top.0;
        let mut most = 1.0_f64;
        for (now, need) in &needs {
            // The board tapers evenly, so what lies between the ends follows from them.
            let share = if span.abs() > 0.0 { (now - top.0) / span } else { 0.0 };
            most = most.max(need / (treble + share * (bass - treble)));
        }
        let halves = |mm: f64| (2.0 * mm * most).round() / 2.0;
        board.bass_thickness_mm = halves(bass).max(LEAST_THICKNESS_MM);
        let least = least_treble_mm(board.bass_thickness_mm, &meant.band);
        board.treble_thickness_mm = halves(treble).max(LEAST_THICKNESS_MM).max(least);
    }
    meant
}

/// A design with all its strings, laid out.
struct Meant {
    resolved: Resolved,
    analysis: Analysis,
    band: Band,
}

impl Meant {
    /// `None` where a string has no tension.
    fn of(design: &Design) -> Option<Self> {
        let resolved = resolve(design);
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        (analysis.without_tension == 0).then_some(Self { resolved, analysis, band })
    }

    /// The same after a change of the frame, which leaves the strings as they are. Most measures of the frame do not
    /// move anything.
    fn again(self, design: &Design) -> Self {
        let resolved = resolve(design);
        let band = if resolved.geometry == self.resolved.geometry {
            self.band
        } else {
            lay_out(&resolved.harp, &self.analysis, &resolved.geometry)
        };
        Self { resolved, analysis: self.analysis, band }
    }

    fn board(&self) -> Vec<Known<BoardCut>> {
        let Self { resolved, analysis, band } = self;
        bear_board(band, &resolved.harp, analysis, &resolved.geometry, &resolved.build())
    }

    fn frame(&self) -> Result<FrameBearing, BearingError> {
        let Self { resolved, analysis, band } = self;
        bear_frame(band, analysis, &resolved.geometry, &resolved.build()).1
    }

    /// All of it, the board with what the soundbox pushes it along.
    fn pushed(&self) -> Bearing {
        let Self { resolved, analysis, band } = self;
        let Resolved { harp, geometry, .. } = resolved;
        borne(band, harp, analysis, geometry, &resolved.build()).bearing
    }
}
