//! What holds the soundbox down on the base: the strings pull it up there as hard as they push the pillar down beside it.

use super::findings::Finding;
use super::name::Kind;
use super::solid::Spot;
use super::{Making, Whole};
use crate::engine::bearing::FrameBearing;
use crate::engine::units::{Force, Stress};

/// Corners that lie apart by less are on one plane, in metres.
const SAME_M: f64 = 1e-6;

/// A stress and what may be allowed of it, where that is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Held {
    /// The greatest stress.
    pub stress: Stress,
    /// Its limit.
    pub limit: Option<Stress>,
}

impl Held {
    /// The share of the limit.
    pub fn ratio(&self) -> Option<f64> {
        let limit = self.limit.filter(|limit| limit.to_pa() > 0.0)?;
        Some(self.stress.to_pa() / limit.to_pa())
    }
}

/// What holds the soundbox on the base, at the worst of what joints may do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Holding {
    /// How hard the pillar is pushed down, and the soundbox pulled up.
    pub pull: Force,
    /// The glue under the foot block, pulled open.
    pub glue: Held,
    /// The base, bent between pillar and foot block.
    pub base: Held,
}

impl Holding {
    /// Adds what is over its limit to the findings.
    pub fn tell(&self, findings: &mut Vec<Finding>) {
        for (held, finding) in [
            (self.glue, (|ratio| Finding::BaseOpens { ratio }) as fn(f64) -> Finding),
            (self.base, |ratio| Finding::BaseBends { ratio }),
        ] {
            if let Some(ratio) = held.ratio().filter(|ratio| *ratio > 1.0) {
                findings.push(finding(ratio));
            }
        }
    }
}

/// How far the corners of the first part of a kind that lie as high as that reach along an axis.
fn reach(whole: &Whole, kind: Kind, (high, axis): (f64, usize)) -> Option<(f64, f64)> {
    let part = whole.of(kind).next()?;
    let corners = part.cells[..part.body].iter().flat_map(|cell| cell.corners());
    let at = corners.filter(|at: &Spot| (at[1] - high).abs() < SAME_M).map(|at| at[axis]);
    let all = at.fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), at| {
        (least.min(at), most.max(at))
    });
    (all.1 > all.0).then_some(all)
}

/// What holds the soundbox on the base; `None` where the parts have none, or the frame bears nothing.
///
/// The base is taken as stiff. It turns about the lower end of the sides at the back, on which it presses, and pulls at the
/// lower face of the foot block the harder the farther that lies from there. The moment of the pillar's push, with what
/// bends its foot, gives how hard. Nothing else is counted on: sides and back stand on end grain, the edge of the soundboard is
/// thin, and a screw bears little before glue has given way. At the front edge of the foot block the base is bent over a width
/// that is the pillar's, and as much more to either side as the edge lies behind the middle of that. The limits are those
/// of the wood of base and block, for tension across the grain and for bending.
///
/// # Source
///
/// Statics; worked out. How wide the base is bent: common practice, no source.
pub fn holding(making: &Making<'_>, whole: &Whole, frame: &FrameBearing) -> Option<Holding> {
    let base = whole.of(Kind::Base).next()?;
    let high = base.cells.first()?.near.first()?[1];
    let thick_m = base.sizes_m()[2];
    let along = |kind: Kind| reach(whole, kind, (high, 0));
    let across = |kind: Kind| reach(whole, kind, (high, 2));
    let wide = |(from, to): (f64, f64)| to - from;
    let (pillar, block) = (along(Kind::Pillar)?, along(Kind::FootBlock)?);
    let (back, push) = (along(Kind::Side)?.1, 0.5 * (pillar.0 + pillar.1));
    let arm = block.0 - push;
    let deep = wide(across(Kind::Pillar)?) + 2.0 * arm.max(0.0);
    let bent_m3 = deep.min(wide(across(Kind::Base)?)) * thick_m * thick_m / 6.0;
    let cube = |at: f64| (back - at).powi(3);
    let glued_m4 = wide(across(Kind::FootBlock)?) * (cube(block.0) - cube(block.1)) / 3.0;
    let mut most = [0.0_f64; 3];
    for [axial, _, _, _, _, moment] in frame.at_the_foot() {
        let (push_n, bends) = ((-axial).max(0.0), moment.abs());
        let turns = push_n * (back - push) + bends;
        let of = [
            push_n,
            turns * (back - block.0) / glued_m4,
            (push_n * arm.max(0.0) + bends) / bent_m3,
        ];
        most = [0, 1, 2].map(|at| most[at].max(of[at]));
    }
    let wood = &making.build.pillar_wood.allowable;
    let held = |pa: f64, limit| Held { stress: Stress::from_pa(pa), limit };
    Some(Holding {
        pull: Force::from_n(most[0]),
        glue: held(most[1], wood.tension_across),
        base: held(most[2], wood.bending),
    })
}
