//! The order of building: what is cut, glued and drilled when, what to check at each step, and what to beware of.
//!
//! Every dimension is taken from the parts themselves. Order and cautions are common practice, no source.

mod soundboard;

use std::fmt::Display;

use super::Parts;
use crate::design::display::decimals;
use crate::design::document::{Design, JointSpec};
use crate::engine::geometry::Placed;
use crate::engine::parts::cutting::Counts;
use crate::engine::parts::{
    Hand, Hole, HoleKind, Kind, Knot, NoRoom, Part, Sheet, Spot, shoulder_of,
};
use crate::engine::units::Length;
use crate::words::{Words, building as say, semicolon};

/// Something to check, and what it should be.
#[derive(Clone, Debug, PartialEq)]
pub struct Check {
    /// What is measured.
    pub what: String,
    /// What it should be.
    pub size: Length,
}

/// A step of the work.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What it is about.
    pub title: Words,
    /// What is done, a sentence for each.
    pub does: Vec<String>,
    /// What to check then.
    pub checks: Vec<Check>,
    /// What to beware of.
    pub cautions: Vec<Words>,
}

/// All steps, in their order.
pub fn steps(design: &Design, parts: &Parts) -> Vec<Step> {
    let model = Model { design, parts };
    vec![
        step(say::WOOD, vec![say::WOOD_RESTS.into(), say::WOOD_PRINT.into()], vec![]),
        model.neck().wary(&[say::DRILLS, say::SAWS, say::DUST]),
        model.pillar().wary(&[say::PLANERS]),
        model.sides(),
        model.blocks(),
        model.frame().wary(&[say::GLUE, say::CLAMPS]),
        model.liners(),
        model.back(),
        model.soundboard().wary(&[say::PLANERS]),
        model.closing(),
        model.base(),
        step(say::TRIAL, vec![say::TRIAL_BUILD.into()], model.standing()),
        model.shoulder().wary(&[say::DRILLS, say::CLAMPS]),
        model.finish().wary(&[say::RAGS]),
        step(say::STRINGING, vec![say::STRINGING_UP.into()], vec![]),
    ]
}

#[inline(never)]
fn step(title: Words, does: Vec<String>, checks: Vec<Check>) -> Step {
    Step { title, does, checks, cautions: Vec::new() }
}

impl Step {
    fn wary(mut self, of: &[Words]) -> Self {
        self.cautions.extend(of);
        self
    }
}

#[inline(never)]
fn check(what: Words, size_m: f64) -> Check {
    Check { what: what.into(), size: Length::from_m(size_m) }
}

#[inline(never)]
fn mm(size_m: f64) -> String {
    decimals(1e3 * size_m, 1)
}

fn apart(one: Spot, other: Spot) -> f64 {
    let off = [0, 1, 2].map(|axis| one[axis] - other[axis]);
    off.iter().map(|part| part * part).sum::<f64>().sqrt()
}

/// A design and its parts.
struct Model<'a> {
    design: &'a Design,
    parts: &'a Parts,
}

impl Model<'_> {
    fn count(&self, kind: Kind) -> usize {
        self.parts.whole.of(kind).count()
    }

    #[inline(never)]
    fn part(&self, kind: Kind) -> Option<&Part> {
        let mut all = self.parts.whole.of(kind);
        all.find(|part| part.name.hand != Some(Hand::Other))
    }

    /// The corners of the outside of a part that has four.
    fn corners(&self, kind: Kind) -> Option<[Spot; 4]> {
        self.part(kind)?.cells.first()?.near.as_slice().try_into().ok()
    }

    /// The sheet of a back that is bent.
    fn sheet(&self) -> Option<&Sheet> {
        self.part(Kind::Back)?.sheet.as_ref()
    }

    /// How thick a part is at most.
    fn thick(&self, kind: Kind) -> f64 {
        self.part(kind).map_or(0.0, Part::thick_m)
    }

    /// How high a place is above the upper face of the base.
    fn above_base(&self, at: Spot) -> f64 {
        let base = self.part(Kind::Base).and_then(|base| base.cells.first()?.near.first().copied());
        at[1] - base.map_or(0.0, |base| base[1])
    }

    /// From the hole of the lowest string to that of the highest.
    fn across_holes(&self, kind: Kind, hole: HoleKind) -> Option<f64> {
        let part = self.part(kind)?;
        let own = || part.holes.iter().filter(|own| own.kind == hole);
        let highest = own().min_by_key(|hole| hole.string)?;
        let lowest = own().max_by_key(|hole| hole.string)?;
        Some(apart(lowest.at, highest.at))
    }

    fn neck(&self) -> Step {
        let thick = mm(self.thick(Kind::Neck));
        let layers: usize = self
            .parts
            .blanks
            .iter()
            .filter(|blank| blank.name.kind == Kind::Neck)
            .map(|blank| blank.layers)
            .sum();
        let Counts { tuning_pins, bridge_pins, levers, discs, .. } = self.parts.counts;
        let turns = self.parts.runs_out_rad.map(f64::to_degrees);
        let mut does: Vec<String> =
            turns.iter().map(|turns| say::neck_runs_out(&decimals(*turns, 0))).collect();
        does.push(if layers > 1 {
            say::neck_layers(&layers, &thick)
        } else {
            say::neck_piece(&thick)
        });
        let angles = self.design.geometry.neck.layers.iter().map(|layer| layer.angle_deg);
        if self.parts.is_crossed {
            let all: Vec<String> = angles.map(|angle| format!("{}°", decimals(angle, 0))).collect();
            does.push(say::neck_turned(&all.join(semicolon())));
        }
        does.push(say::neck_drill(&bridge_pins, &tuning_pins));
        let deep = |kind| {
            let mut holes = self.part(Kind::Neck)?.holes.iter();
            holes.find(|hole| hole.kind == kind).map(|hole| mm(hole.deep.to_m()))
        };
        if let (Some(bridge), Some(tuning)) = (deep(HoleKind::BridgePin), deep(HoleKind::TuningPin))
        {
            let of = &self.design.geometry;
            let out_mm = of.strings_from_neck_mm - 0.5 * of.neck.thickness_mm;
            does.push(say::neck_pins(&bridge, &decimals(out_mm, 1), &tuning));
        }
        if levers > 0 {
            does.push(say::neck_levers(&levers));
        }
        if discs > 0 {
            does.push(say::neck_discs(&discs));
        }
        does.push(say::neck_outline(&mm(self.parts.whole.heel_m)));
        if let Some(neck) = self.part(Kind::Neck) {
            let cut = [
                (!neck.cuts.is_empty()).then_some(say::NECK_MORTISE),
                (!neck.tenons().is_empty()).then_some(say::NECK_TENON),
            ];
            does.extend(cut.into_iter().flatten().map(String::from));
        }
        let mut checks = Vec::new();
        for (what, kind) in
            [(say::CHECK_BRIDGE, HoleKind::BridgePin), (say::CHECK_TUNING, HoleKind::TuningPin)]
        {
            checks.extend(self.across_holes(Kind::Neck, kind).map(|m| check(what, m)));
        }
        checks.extend(self.longest(Kind::Neck).map(|m| check(say::CHECK_NECK_LONG, m)));
        step(say::NECK, does, checks)
    }

    /// The length of a part along its first axis, without tenons.
    fn longest(&self, kind: Kind) -> Option<f64> {
        let part = self.part(kind)?;
        let own = part.cells.first()?.corners().map(|at| part.face.own(at)[0]);
        let (low, high) = own.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| {
            (low.min(at), high.max(at))
        });
        Some(high - low)
    }

    fn pillar(&self) -> Step {
        let size = &self.design.geometry.pillar;
        let [wide, deep] = [size.width_mm, size.depth_mm].map(|size| decimals(size, 1));
        let mut does = Vec::new();
        if self.count(Kind::Capital) > 0 {
            does.push(say::PILLAR_CAPITAL.into());
        }
        does.push(say::pillar_cut(&deep, &wide));
        let tenons = self.part(Kind::Pillar).map_or(0, |pillar| pillar.tenons().len());
        if tenons > 0 {
            does.push(say::pillar_tenons(&tenons));
            let joints = &self.design.geometry.joints;
            let sizes = |joint: &JointSpec| {
                [joint.tenon_mm, joint.tenon_depth_mm].map(|mm| decimals(mm, 1))
            };
            let left_out = |what: NoRoom| self.parts.whole.left_out.contains(&what);
            if joints.head.tenon_mm > 0.0 && !left_out(NoRoom::HeadTenon) {
                let [thick, deep] = sizes(&joints.head);
                does.push(say::tenon_head(&deep, &thick));
            }
            if joints.foot.tenon_mm > 0.0 && !left_out(NoRoom::FootTenon) {
                let [thick, deep] = sizes(&joints.foot);
                does.push(say::tenon_foot(&deep, &thick));
            }
        }
        let long = self.longest(Kind::Pillar).map(|m| check(say::CHECK_PILLAR_LONG, m));
        step(say::PILLAR, does, long.into_iter().collect())
    }

    fn sides(&self) -> Step {
        let does = vec![say::sides_cut(&mm(self.thick(Kind::Side)))];
        // Round it: lower front, upper front, upper back, lower back.
        let checks = self.corners(Kind::Side).map(|at| {
            vec![
                check(say::CHECK_SIDE_ONE, apart(at[0], at[2])),
                check(say::CHECK_SIDE_OTHER, apart(at[1], at[3])),
            ]
        });
        step(say::SIDES, does, checks.unwrap_or_default())
    }

    fn blocks(&self) -> Step {
        let mut does = vec![say::BLOCKS_CUT.into()];
        if self.part(Kind::KneeBlock).is_some_and(|block| !block.cuts.is_empty()) {
            does.push(say::BLOCKS_MORTISE.into());
            let (shape, joint) = (&self.design.geometry, &self.design.geometry.joints.shoulder);
            let [thick, deep, off] =
                [joint.tenon_mm, joint.tenon_depth_mm, shape.strings_from_neck_mm]
                    .map(|mm| decimals(mm, 1));
            does.push(say::mortise_knee(&deep, &off, &thick));
        }
        let holes = self.fasteners(Kind::KneeBlock);
        if let Some(hole) = holes.first() {
            let (count, wide) = (holes.len(), decimals(hole.diameter.to_mm(), 1));
            does.push(if hole.through {
                say::blocks_drill_through(&count, &wide)
            } else {
                say::blocks_drill(&count, &decimals(hole.deep.to_mm(), 1), &wide)
            });
        }
        step(say::BLOCKS, does, self.of_fasteners(&holes))
    }

    /// The holes of the fasteners of the shoulder in a part.
    fn fasteners(&self, kind: Kind) -> Vec<Hole> {
        let own = self.part(kind).into_iter().flat_map(|part| &part.holes);
        own.filter(|hole| hole.kind == HoleKind::Fastener).copied().collect()
    }

    /// Where the holes of the fasteners lie on the upper face of the knee block: from its front edge, and from the middle of
    /// the harp to the neck's side.
    fn of_fasteners(&self, holes: &[Hole]) -> Vec<Check> {
        // Round its side: lower front, upper front, upper back, lower back.
        let Some([_, front, back, _]) = self.corners(Kind::KneeBlock) else { return Vec::new() };
        let level = [0, 1].map(|axis| back[axis] - front[axis]);
        let long = level[0].hypot(level[1]);
        let along = |hole: &Hole| {
            let off = [0, 1].map(|axis| hole.at[axis] - front[axis]);
            (off[0] * level[0] + off[1] * level[1]) / long
        };
        let mut checks: Vec<Check> = Vec::new();
        for (what, places) in [
            (
                say::check_fastener_front as fn(&dyn Display) -> String,
                holes.iter().map(along).collect(),
            ),
            (
                say::check_fastener_middle,
                holes.iter().rev().map(|hole| hole.at[2].abs()).collect::<Vec<f64>>(),
            ),
        ] {
            // They are placed from the front backward, and the line that is farther from the middle first.
            let mut seen: Vec<f64> = Vec::new();
            for place in places {
                if seen.iter().all(|other| (other - place).abs() > 1e-6) {
                    seen.push(place);
                    checks.push(Check { what: what(&seen.len()), size: Length::from_m(place) });
                }
            }
        }
        checks
    }

    /// Both diagonals of the front and its widths, as the edges of sides and soundboard have them.
    fn of_front(&self) -> Vec<Check> {
        let checks = self.corners(Kind::Board).map(|at| {
            vec![
                check(say::CHECK_FRONT, apart(at[0], at[2])),
                check(say::CHECK_LOW, apart(at[0], at[3])),
                check(say::CHECK_HIGH, apart(at[1], at[2])),
            ]
        });
        checks.unwrap_or_default()
    }

    fn frame(&self) -> Step {
        step(say::FRAME, vec![say::FRAME_GLUE.into()], self.of_front())
    }

    fn liners(&self) -> Step {
        let liners = self.count(Kind::FrontLiner) + self.count(Kind::BackLiner);
        let braces = self.count(Kind::SideBrace) + self.count(Kind::BackBrace);
        let mut does = Vec::new();
        if self.sheet().is_some() {
            does.push(say::BACK_ARCHED.into());
        }
        does.push(say::liners_glue(&braces, &liners));
        step(say::LINERS, does, Vec::new())
    }

    fn back(&self) -> Step {
        let holes = self.part(Kind::Back).map_or(0, |back| back.openings.len());
        let mut does = vec![say::back_cut(&holes)];
        let Some(sheet) = self.sheet() else {
            let diagonal = self.corners(Kind::Back).map(|at| apart(at[0], at[2]));
            let checks = diagonal.map(|m| check(say::CHECK_BACK, m));
            return step(say::BACK, does, checks.into_iter().collect());
        };
        let (low, high) = sheet.radius_m;
        does.push(say::back_bend(&mm(high), &mm(low)));
        let flat = sheet.corners();
        let diagonal = flat.map(|at| (at[2].0 - at[0].0).hypot(at[2].1 - at[0].1));
        let checks = diagonal.map(|m| check(say::CHECK_BACK, m));
        let rise = check(say::CHECK_RISE, sheet.rise_m);
        step(say::BACK, does, checks.into_iter().chain([rise]).collect()).wary(&[say::BENDING])
    }

    /// The soundboard is glued on; then the holes of the highest strings may go on through the knee block.
    fn closing(&self) -> Step {
        let knots = self.parts.whole.knots.iter().zip(1_usize..);
        let through = knots.filter_map(|(knot, string)| match knot {
            Knot::UnderBlock(_, deep_m) => Some((string, *deep_m)),
            _ => None,
        });
        let drilled = through.map(|(string, deep_m)| say::closing_drill(&mm(deep_m), &string));
        let does = std::iter::once(say::CLOSING_GLUE.into()).chain(drilled).collect();
        step(say::CLOSING, does, self.of_front())
    }

    fn base(&self) -> Step {
        let (front, back) = self.parts.whole.feet_m;
        let checks = vec![check(say::CHECK_BASE, back - front)];
        step(say::BASE, vec![say::BASE_CUT.into()], checks)
    }

    /// The harp as it stands: the shoulder, the seat of the pillar, and three strings.
    fn standing(&self) -> Vec<Check> {
        let mut checks = Vec::new();
        if let Some(at) = self.corners(Kind::Side) {
            checks.push(check(say::CHECK_SHOULDER_FRONT, self.above_base(at[1])));
            checks.push(check(say::CHECK_SHOULDER_BACK, self.above_base(at[2])));
        }
        let high = self.part(Kind::Pillar).and_then(|pillar| {
            let corners = pillar.cells.first()?.corners().map(|at| self.above_base(at));
            corners.reduce(f64::max)
        });
        checks.extend(high.map(|m| check(say::CHECK_SEAT, m)));
        let strings: Vec<&Placed> = self.parts.band.strings.iter().flatten().collect();
        let long = |placed: &Placed| {
            let (from, to) = (placed.hole.start, placed.bridge);
            (to.x.to_m() - from.x.to_m()).hypot(to.y.to_m() - from.y.to_m())
        };
        if let [highest, .., lowest] = strings[..] {
            let middle = strings[strings.len() / 2];
            checks.push(check(say::CHECK_LOWEST_STRING, long(lowest)));
            let what = say::check_middle_string(&middle.number);
            checks.push(Check { what, size: Length::from_m(long(middle)) });
            checks.push(check(say::CHECK_HIGHEST_STRING, long(highest)));
        }
        checks
    }

    fn shoulder(&self) -> Step {
        let deep =
            |kind| self.fasteners(kind).first().map(|hole| (hole.through, mm(hole.deep.to_m())));
        let mut does = Vec::new();
        if let (Some((_, neck)), Some((through, block))) = (deep(Kind::Neck), deep(Kind::KneeBlock))
        {
            does.push(say::shoulder_drill(&neck));
            if through {
                does.push(say::shoulder_bolts(&block, &neck));
            }
        }
        does.push(say::SHOULDER_GLUE.into());
        does.extend(self.parts.holding.map(|_| say::shoulder_pull(&self.parts.pull)));
        step(say::SHOULDER, does, self.standing())
    }

    fn finish(&self) -> Step {
        let mass = decimals(self.parts.weight.mass.to_kg(), 1);
        let high = shoulder_of(&self.parts.whole)[1] - self.parts.whole.floor_m;
        let checks = vec![check(say::CHECK_SHOULDER_FLOOR, high)];
        step(say::FINISH, vec![say::finish_coat(&mass)], checks)
    }
}
