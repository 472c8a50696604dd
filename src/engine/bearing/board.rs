//! The soundboard under all its strings, as a plate with string rib and bars, on liners, pushed along by the soundbox.

mod ends;
mod whole;

pub use self::ends::BoardEnds;
pub(super) use self::whole::crept_when_it_bows;
use self::whole::{Borne, Whole};
use super::soundbox::BoxParts;
use super::{BoardMargins, BoxBearing};
use crate::engine::analysis::{Analysis, Known, Unknown};
use crate::engine::geometry::{Band, BoardPull, Geometry, Hole, Loads};
use crate::engine::structure::liner::{Holds, Liner};
use crate::engine::structure::plate::{
    Bars, Edges, Lift, Plate, Pulled, Push, Rib, Sheet, Stiffness, Support, Thick,
};
use crate::engine::structure::strip::BoardLoad;
use crate::engine::structure::verdict::{Aspect, Use, Verdict};
use crate::engine::units::{Force, Length, Stress};

/// What a board is made of. Width and thickness go evenly from the lowest string to the highest, and on to the ends.
#[derive(Clone, Debug, PartialEq)]
pub struct BoardParts {
    /// What it may bear for good in bending from edge to edge, where that is known.
    pub bending: Option<Stress>,
    /// How far breaking lies above what may be allowed.
    pub margins: BoardMargins,
    /// Modulus of that bending, where it is known.
    pub modulus: Option<Stress>,
    /// Modulus of bending along the board, shear modulus and Poisson's number, where they are known; else each strip
    /// from edge to edge bends for itself.
    pub along: Option<(Stress, Stress, f64)>,
    /// Of its modulus, what counts where it would bow.
    pub least_ratio: Option<f64>,
    /// What it gives over the years in addition to its first rise, over that rise, where it is known.
    pub creep_ratio: Option<f64>,
    /// What its wood, and so the glue on it, may bear for good in shear along its grain, where that is known.
    pub sheared: Option<Stress>,
    /// The same where it rolls, as the wood of what runs along the board makes it.
    pub rolled: Option<Stress>,
    /// What it may bear for good in tension across its grain, where that is known.
    pub peeled: Option<Stress>,
    /// What is known of its wood where rib and bars end.
    pub ends: Option<BoardEnds>,
    /// At the lowest and at the highest string.
    pub width: (Length, Length),
    /// At the lowest and at the highest string, along the middle.
    pub thickness: (Length, Length),
    /// Thickness at the sides over that in the middle.
    pub side_ratio: f64,
    /// How thick it is from place to place, from its lower end to its upper, where that is given.
    pub thick: Option<Thick>,
    /// String rib and strip outside; without any, both are nothing.
    pub rib: Rib,
    /// What they may bear for good in bending, where that is known.
    pub rib_bending: Option<Stress>,
    /// The bars, those across without their places.
    pub bars: Bars,
    /// The shares of the way from the lower end of the board at which the first and the last bar across lie, where that is
    /// given; else they lie evenly.
    pub cross_shares: Option<(f64, f64)>,
    /// What they may bear for good in bending, where that is known.
    pub bars_bending: Option<Stress>,
    /// What they may bear for good in shear and twist together, and their shear modulus, where both are known.
    pub bars_shear: Option<(Stress, Stress)>,
    /// The holes of the strings.
    pub string_holes: StringHoles,
}

/// The holes of the strings through board and string rib.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct StringHoles {
    /// How wide all are, where they have eyelets.
    pub eyelet: Option<Length>,
    /// How much wider than its string each is, where it has none.
    pub clearance: Length,
}

impl StringHoles {
    /// How wide that of each string is, in the harp's order; `None` where it depends on a gauge that is not known.
    pub(super) fn of(self, analysis: &Analysis) -> Vec<Option<Length>> {
        let loose = |gauge: Length| Length::from_m(gauge.to_m() + self.clearance.to_m());
        let gauges = analysis.strings.iter().map(|figures| figures.gauge.ok());
        gauges.map(|gauge| self.eyelet.or_else(|| gauge.map(loose))).collect()
    }
}

impl BoardParts {
    /// Whether something is glued on along the middle.
    pub fn has_rib(&self) -> bool {
        let area = |(breadth, height): (Length, Length)| breadth.to_m() * height.to_m();
        self.rib.modulus.to_pa() > 0.0 && area(self.rib.inside) + area(self.rib.outside) > 0.0
    }
}

/// What board, rib and bars feel at a string.
#[derive(Clone, Debug, PartialEq)]
pub struct BoardState {
    /// Bending moment from edge to edge, of middle or edge, whichever is stressed more, for each metre of the board's length.
    pub moment_n_m_per_m: f64,
    /// Pull from edge to edge there, for each metre, as the board has risen; 0 where it is pressed.
    pub pull_n_per_m: f64,
    /// Stress of the board there: of bending and of that pull.
    pub stress: Stress,
    /// All that is looked at; what there is none of is left out.
    pub verdict: Verdict,
    /// Rise of the middle at once.
    pub rise: Length,
    /// Rise of the middle over the years, where the creep is known; else as at once.
    pub rise_crept: Length,
}

impl BoardState {
    /// An aspect, where it was looked at.
    pub fn used(&self, aspect: Aspect) -> Option<&Use> {
        self.verdict.uses.iter().find(|used| used.aspect == aspect)
    }

    /// How far it has risen when so much of its creep has come that is `whole` in the end: by the power of the load that gives
    /// both ends, as a board that hangs rises less than its load grows.
    pub fn rise_when(&self, creep: f64, whole: f64) -> Length {
        let (now, last) = (self.rise.to_m(), self.rise_crept.to_m());
        if !(now > 0.0 && last > now && whole > 0.0) {
            return Length::from_m(now * (1.0 + creep));
        }
        Length::from_m(now * (1.0 + creep).powf((last / now).ln() / whole.ln_1p()))
    }
}

/// The board at a string. It rises the less the more its edges hold; the truth lies between.
#[derive(Clone, Debug, PartialEq)]
pub struct BoardCut {
    /// What strings do to a metre of it.
    pub load: BoardLoad,
    /// From edge to edge.
    pub width: Length,
    /// How thick it is.
    pub thickness: Length,
    /// With edges as firm as liners and sides may be; where these are not known, with edges that neither turn nor move.
    pub firm: BoardState,
    /// With edges as soft as they may be; where that is not known, with edges that turn freely and do not pull.
    pub soft: BoardState,
    /// Whether liners and sides say how the edges hold.
    pub on_liners: bool,
    /// Whether the creep is known.
    pub creeps: bool,
    /// How many times its push along makes the board bow, at least, once it has crept for ten years and with the modulus for
    /// buckling; `None` where nothing is known of the push.
    pub bows_at: Option<f64>,
    /// Whether there is a string rib, or a strip outside.
    pub has_rib: bool,
    /// Whether string rib or bars end somewhere on it where that is not judged.
    pub has_unjudged_ends: bool,
}

impl BoardCut {
    /// How far board, rib, bars and glue are loaded, least and most: what is loaded most. `None` where no limit of the
    /// board is known.
    pub fn used(&self) -> Option<(f64, f64)> {
        let (firm, soft) = (Self::share(&self.firm)?, Self::share(&self.soft)?);
        Some((firm.min(soft), firm.max(soft)))
    }

    fn share(state: &BoardState) -> Option<f64> {
        state.used(Aspect::BoardBent)?.ratio?;
        state.verdict.governing()?.ratio
    }

    /// What is loaded most.
    pub fn governing(&self) -> Option<&Use> {
        let (firm, soft) = (self.firm.verdict.governing(), self.soft.verdict.governing());
        match (firm, soft) {
            (Some(firm), Some(soft)) => Some(if firm.ratio > soft.ratio { firm } else { soft }),
            (one, other) => one.or(other),
        }
    }

    /// What has no limit that is known.
    pub fn unjudged(&self) -> impl Iterator<Item = &Use> {
        let uses = self.firm.verdict.uses.iter().chain(&self.soft.verdict.uses);
        uses.filter(|used| used.ratio.is_none() && used.stress.to_pa() > 0.0)
    }
}

/// How far a width or a thickness may shrink on the way to an end of the board, over that at the string next to it.
const LEAST_LEFT: f64 = 0.25;

/// How far the board goes on beyond a string, so that it does not end in a point: `shrinks` is how much of a measure is
/// lost with each metre.
fn reach(to_end: Length, measures: [(Length, f64); 2]) -> f64 {
    let mut far = to_end.to_m();
    for (measure, shrinks) in measures {
        if shrinks > 0.0 {
            far = far.min((1.0 - LEAST_LEFT) * measure.to_m() / shrinks);
        }
    }
    far.max(0.0)
}

/// The board from end to end, and how far below the lowest string it begins, in metres.
fn plate(band: &Band, parts: &BoardParts, geometry: &Geometry) -> (Plate, f64) {
    let whole_m = band.holes.first().map_or(0.0, |hole| hole.along_board.to_m());
    let slope = |(low, high): (Length, Length)| {
        if whole_m > 0.0 { (high.to_m() - low.to_m()) / whole_m } else { 0.0 }
    };
    let (wide, mut thick) = (slope(parts.width), slope(parts.thickness));
    if parts.thick.is_some() {
        thick = 0.0;
    }
    let below = reach(geometry.board_below, [(parts.width.0, wide), (parts.thickness.0, thick)]);
    let above = reach(geometry.board_above, [(parts.width.1, -wide), (parts.thickness.1, -thick)]);
    let ends = |(low, high): (Length, Length), slope: f64| {
        (Length::from_m(low.to_m() - slope * below), Length::from_m(high.to_m() + slope * above))
    };
    let none = Stress::from_pa(0.0);
    let (along, shear, poisson) = parts.along.unwrap_or((none, none, 0.0));
    let across = parts.modulus.unwrap_or(none);
    let plate = Plate {
        length: Length::from_m(below + whole_m + above),
        width: ends(parts.width, wide),
        thickness: ends(parts.thickness, thick),
        sheet: Sheet { across, along, shear, poisson },
        side_ratio: parts.side_ratio,
        thick: parts.thick,
        rib: parts.rib,
        bars: placed(parts, below + whole_m + above),
    };
    (plate, below)
}

/// The bars, those across with their places.
fn placed(parts: &BoardParts, length_m: f64) -> Bars {
    let count = parts.bars.cross.max(1) as f64;
    let (first, last) = parts.cross_shares.unwrap_or((0.5 / count, 1.0 - 0.5 / count));
    let apart = if count > 1.0 { (last - first) / (count - 1.0) } else { 0.0 };
    let along = |share: f64| Length::from_m(share * length_m);
    Bars { cross_at: (along(first), along(apart)), ..parts.bars }
}

/// How liners and sides hold the edges, at the lowest and at the highest string; `None` where their sizes are not known.
fn liners(soundbox: Option<&BoxParts>) -> Option<[(Liner, Holds); 2]> {
    let parts = soundbox?;
    let at = |up: f64| {
        let liner = parts.liner_at(up);
        Some((liner, liner.holds()?))
    };
    Some([at(0.0)?, at(1.0)?])
}

/// The edges at both ends of the estimate, from what holds them most to what holds them least.
fn supports(liners: Option<&[(Liner, Holds); 2]>) -> [Support; 2] {
    let Some([(_, low), (_, high)]) = liners else { return [Support::FIRM, Support::LOOSE] };
    let draws_pa = low.draws_pa.min(high.draws_pa);
    // Sides hold a board along them, being so much stiffer; ends are glued on blocks.
    let sides = if draws_pa > 0.0 { Pulled::AnyWay } else { Pulled::Along };
    let firm = Support {
        edges: Edges { sides_n: (low.firm_n, high.firm_n), ends_n: f64::INFINITY },
        sides,
        sides_pa: draws_pa,
        ends: Pulled::AnyWay,
    };
    let soft = Support {
        edges: Edges { sides_n: (low.soft_n, high.soft_n), ends_n: 0.0 },
        sides: Pulled::Along,
        sides_pa: 0.0,
        ends: Pulled::Along,
    };
    [firm, soft]
}

/// What was worked out of a board and rests as long as its sizes do, whatever its strings pull.
#[derive(Default)]
pub(super) struct BoardKept(Option<Stiffness>);

impl BoardKept {
    /// How stiff a board is; `None` where it holds nothing.
    fn stiffness(&mut self, plate: &Plate) -> Option<&Stiffness> {
        if self.0.as_ref().is_none_or(|known| known.plate() != plate) {
            self.0 = plate.stiffness();
        }
        self.0.as_ref()
    }
}

/// How much nearer the board brings the ends of each string for each newton on another, in m/N, row by row, for the
/// strings at these places: with edges as firm and as soft as liners and sides may be. `None` where the board's
/// stiffness or the place of a string is not known.
pub(super) fn gives(
    kept: &mut BoardKept,
    band: &Band,
    loads: &Loads,
    of_board: (&BoardParts, Option<&BoxParts>),
    geometry: &Geometry,
    places: &[usize],
) -> Option<[Vec<Vec<f64>>; 2]> {
    let (stiffness, spots, supports) = spots(kept, band, loads, of_board, geometry, places)?;
    let gives = |support: &Support| stiffness.gives(&spots, support.edges);
    Some([gives(&supports[0])?, gives(&supports[1])?])
}

/// How much nearer it brings them under the tensions of all, in metres, for the strings at these places.
pub(super) fn nearer(
    kept: &mut BoardKept,
    band: &Band,
    loads: &Loads,
    of_board: (&BoardParts, Option<&BoxParts>),
    geometry: &Geometry,
    (places, tensions_n): (&[usize], &[f64]),
) -> Option<[Vec<f64>; 2]> {
    let (stiffness, spots, supports) = spots(kept, band, loads, of_board, geometry, places)?;
    let nearer = |support: &Support| stiffness.gives_under(&spots, tensions_n, support.edges);
    Some([nearer(&supports[0])?, nearer(&supports[1])?])
}

/// A board, what a newton along each string does square to it, and how its edges hold it at both ends of the estimate.
fn spots<'a>(
    kept: &'a mut BoardKept,
    band: &Band,
    loads: &Loads,
    (parts, soundbox): (&BoardParts, Option<&BoxParts>),
    geometry: &Geometry,
    places: &[usize],
) -> Option<(&'a Stiffness, Vec<Lift>, [Support; 2])> {
    let (plate, below) = plate(band, parts, geometry);
    // What a newton along the string does square to the board.
    let lift = Force::from_n(geometry.board_angle_rad.sin());
    let spot = |place: &usize| {
        let over = loads.board.get(*place)?.as_ref().ok()?.per_length?.pitch;
        let along = band.holes.get(*place)?.along_board.to_m();
        Some(Lift { at: Length::from_m(below + along), over, force: lift })
    };
    let spots = places.iter().map(spot).collect::<Option<Vec<Lift>>>()?;
    Some((kept.stiffness(&plate)?, spots, supports(liners(soundbox).as_ref())))
}

/// By how much of its length a board is shortened by the bending of the soundbox: the most of all cases, at shares of the way
/// from its lower end.
fn pushes(
    band: &Band,
    soundbox: Option<&BoxBearing>,
    (below, length): (f64, Length),
) -> Vec<(f64, f64)> {
    let Some((cases, lowest)) = soundbox.map(|of| &of.cases).zip(band.holes.last()) else {
        return Vec::new();
    };
    let off = |at: crate::engine::structure::frame::Point| {
        let (from, low) = (band.board.0, lowest.board);
        let to = |p: crate::engine::structure::frame::Point| {
            (p.x.to_m() - from.x.to_m()).hypot(p.y.to_m() - from.y.to_m())
        };
        (below + to(at) - to(low)) / length.to_m()
    };
    let mut all: Vec<(f64, f64)> = Vec::new();
    for cuts in cases {
        for (place, cut) in cuts.iter().enumerate() {
            let shortened = -cut.board_strain;
            match all.get_mut(place) {
                Some(most) => most.1 = most.1.max(shortened),
                None => all.push((off(cut.at), shortened)),
            }
        }
    }
    all
}

/// The board at each string, in the harp's order.
pub(super) fn cuts(
    kept: &mut BoardKept,
    band: &Band,
    loads: &Loads,
    (parts, box_parts): (&BoardParts, Option<&BoxParts>),
    (geometry, analysis): (&Geometry, &Analysis),
    soundbox: Option<&BoxBearing>,
) -> Vec<Known<BoardCut>> {
    let (plate, below) = plate(band, parts, geometry);
    let at = |hole: &Hole| Length::from_m(below + hole.along_board.to_m());
    let ends = [plate.length, Length::from_m(0.0)];
    let places: Vec<Length> = band.holes.iter().map(at).chain(ends).collect();
    let lift = |(place, pull): (&Length, &Known<BoardPull>)| {
        let load = pull.as_ref().ok()?.per_length?;
        let force = Force::from_n(load.lift_n_per_m * load.pitch.to_m());
        Some(Lift { at: *place, over: load.pitch, force })
    };
    let lifts: Vec<Lift> = places.iter().zip(&loads.board).filter_map(lift).collect();
    let push = pushes(band, soundbox, (below, plate.length));
    let stiffness = kept.stiffness(&plate);
    let by = Push(&push);
    let pushed = stiffness.filter(|_| by.pushes()).map(|of| of.pushed(&by));
    let holes = parts.string_holes.of(analysis);
    let hole = |(hole, pull): (&Option<Length>, &Known<BoardPull>)| {
        Some((hole.as_ref()?.to_m(), pull.as_ref().ok()?.per_length?.pitch.to_m()))
    };
    let whole = Whole {
        plate: &plate,
        parts,
        holes: holes.iter().zip(&loads.board).map(hole).collect(),
        liners: liners(box_parts),
        side_peeled: box_parts.and_then(|of| of.side.1.allowable.tension_across),
        push: &push,
        pushed: pushed.as_ref(),
    };
    let [firm, soft] = supports(whole.liners.as_ref())
        .map(|support| whole.borne(stiffness?, &lifts, support, &places));
    let last = band.holes.len().saturating_sub(1);
    let cut = |(place, pull): (usize, &Known<BoardPull>)| {
        let load = (*pull)?.per_length.ok_or(Unknown::OutOfReach)?;
        parts.modulus.filter(|modulus| modulus.to_pa() > 0.0).ok_or(Unknown::Modulus)?;
        let state = |of: &Option<Borne>| {
            let (of, at) = (of.as_ref()?, *places.get(place)?);
            let mut state = whole.told(at, of, place)?;
            // Beside the lowest and the highest string, the end of the board there counts as well.
            for (beside, end) in [(0, last + 1), (last, last + 2)] {
                if place == beside {
                    state.end(&whole.told(*places.get(end)?, of, end)?);
                }
            }
            Some(state)
        };
        let (firm, soft) = state(&firm).zip(state(&soft)).ok_or(Unknown::OutOfReach)?;
        let at = *places.get(place).ok_or(Unknown::OutOfReach)?;
        let bows = [&firm, &soft].map(|state| state.used(Aspect::BoardBows)?.ratio);
        let most = bows.into_iter().flatten().reduce(f64::max);
        Ok(BoardCut {
            load,
            width: plate.width_at(at),
            thickness: plate.thickness_at(at),
            firm,
            soft,
            on_liners: whole.liners.is_some(),
            creeps: parts.creep_ratio.is_some(),
            bows_at: most.map(|used| 1.0 / used),
            has_rib: parts.has_rib(),
            has_unjudged_ends: whole.has_unjudged_ends(),
        })
    };
    loads.board.iter().enumerate().map(cut).collect()
}
