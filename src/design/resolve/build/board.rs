//! What the board is made of, with its string rib and bars.

use super::{joint_wood, service};
use crate::design::document::{BarSpec, BarsSpec, Design, GeometrySpec, PLYWOOD};
use crate::design::resolve::build::{count, size};
use crate::design::resolve::timber::{Made, made};
use crate::design::settings::Setting;
use crate::design::thickness_map::thick;
use crate::engine::bearing::{BoardEnds, BoardMargins, BoardParts, StringHoles};
use crate::engine::structure::duration::{
    LoadTime, Timber, creep_ratio, material_divisor, permanent_ratio,
};
use crate::engine::structure::ended::energy_j_per_m2;
use crate::engine::structure::joint::ROLLING_MODULUS;
use crate::engine::structure::plate::{Bars, MOST_BARS, Rib};
use crate::engine::structure::plywood::Way;
use crate::engine::structure::wood::{
    Allowable, Margins, POISSON, SCATTER, Wood, fifth_percentile_ratio,
};
use crate::engine::units::{Length, Stress};

type Pair = (Length, Length);

pub(super) fn board(
    design: &Design,
    usual: &GeometrySpec,
    (width, thickness): (Pair, Pair),
) -> BoardParts {
    let (board, of) = (&design.geometry.board, &usual.board);
    let service = service(&design.geometry);
    let creep = |timber| creep_ratio(timber, service).map(|sourced| sourced.value);
    let own = &design.geometry.woods;
    let wood = made(&board.wood, Some(board.plies), own);
    let made = wood.or_else(|| made(&of.wood, Some(of.plies), own));
    // Of plywood nothing is known that holds its plies together where they are pulled apart.
    let glue = joint_wood(&board.wood, board.plies, own);
    let peeled = glue.allowable.tension_across.filter(|_| board.wood != PLYWOOD);
    let solid = match &made {
        Some(Made::Solid(wood)) => Some(wood.clone()),
        _ => None,
    };
    let (bending, margins, modulus, along, least_ratio, creep_ratio) = match made {
        // The grain runs from edge to edge, and the rings stand upright.
        Some(Made::Solid(wood)) => {
            let allowable = wood.allowable(LoadTime::Permanent);
            let along = wood.ratios.as_ref().zip(wood.modulus_along()).map(|(ratios, modulus)| {
                let of = |ratio: f64| Stress::from_pa(ratio * modulus.to_pa());
                (of(ratios.value.radial), of(ratios.value.shear_radial), POISSON)
            });
            let both = allowable.least_modulus.zip(allowable.modulus);
            let least = both.map(|(least, mean)| least.to_pa() / mean.to_pa());
            let creep = creep(Timber::Solid);
            (allowable.bending, allowable.margins, allowable.modulus, along, least, creep)
        }
        // The grain of the faces runs from edge to edge, as that of a solid board.
        Some(Made::Plywood(panel)) => {
            let flat = panel.flatwise(Way::Along);
            let divisor = material_divisor(Timber::Plywood).value;
            let factor = permanent_ratio().value / divisor;
            let bending = Stress::from_pa(factor * flat.bending.to_pa());
            let along = panel
                .shear_modulus
                .as_ref()
                .map(|shear| (panel.flatwise(Way::Across).modulus, shear.value, 0.0));
            let margins = Margins::of_characteristic(factor);
            let (least, creep) = (Some(1.0 / divisor), creep(Timber::Plywood));
            (Some(bending), margins, Some(flat.modulus), along, least, creep)
        }
        None => Default::default(),
    };
    let ends = solid.as_ref().and_then(|wood| ends(wood, design));
    let (rib, of_rib) = rib(design);
    let (bars, of_bars, bars_torsion) = bars(design);
    let bars_given = &design.geometry.bars;
    BoardParts {
        bending,
        margins: BoardMargins { board: margins, rib: of_rib.margins, bars: of_bars.margins },
        modulus,
        along,
        least_ratio,
        creep_ratio,
        sheared: glue.allowable.shear,
        rolled: glue.rolling,
        peeled,
        ends,
        width,
        thickness,
        side_ratio: match bars_given.side_percent / 100.0 {
            ratio if ratio > 0.0 => ratio.clamp(LEAST_SIDE, MOST_SIDE),
            _ => 1.0,
        },
        thick: thick(&design.geometry),
        rib,
        rib_bending: of_rib.bending,
        bars,
        bars_bending: of_bars.bending,
        bars_shear: of_bars.shear.zip(bars_torsion),
        cross_shares: shares(&bars_given.cross),
        string_holes: StringHoles {
            eyelet: size(Setting::Eyelet.number(design)),
            clearance: Length::from_mm(Setting::StringClearance.number(design)),
        },
    }
}

/// What is known of the wood of a solid board where bars end: its rings stand upright, so that their way is that
/// of its thickness. Of the mean energy of parting is allowed what the weakest of twenty have over the square of how far breaking
/// lies above what is allowed across the grain, as the load that breaks goes with its root.
fn ends(wood: &Wood, design: &Design) -> Option<BoardEnds> {
    let (ratios, along) = (&wood.ratios.as_ref()?.value, wood.modulus_along()?);
    let margin = wood.allowable(LoadTime::Permanent).margins.tension_across?;
    let share = fifth_percentile_ratio(SCATTER.tension_across) / margin.weak;
    let own = wood.density.as_ref()?.value;
    let of = |ratio: f64| Stress::from_pa(ratio * along.to_pa());
    let (key, usual) = (&design.geometry.bars.wood, BarsSpec::default().wood);
    let woods = &design.geometry.woods;
    let made = made(key, None, woods).or_else(|| made(&usual, None, woods));
    let parts = match made {
        Some(Made::Solid(bar)) => bar.density.as_ref().and_then(|other| {
            let lighter = if other.value < own { other.value } else { own };
            Some(energy_j_per_m2(lighter)? * share * share)
        }),
        _ => None,
    };
    Some(BoardEnds {
        through: of(ratios.tangential),
        rolls: of(ROLLING_MODULUS),
        parts_j_per_m2: parts,
    })
}

/// How thin and how thick a board may be at its sides, over its thickness in the middle.
const LEAST_SIDE: f64 = 0.2;
const MOST_SIDE: f64 = 3.0;

/// Where the first and the last of bars lie, as shares; `None` where they lie evenly.
fn shares(bars: &BarSpec) -> Option<(f64, f64)> {
    let (first, last) = (bars.at_percent / 100.0, bars.to_percent / 100.0);
    (first > 0.0 && last >= first && last <= 1.0).then_some((first, last))
}

/// The bars of the board, with what their wood may bear and its shear modulus.
fn bars(design: &Design) -> (Bars, Allowable, Option<Stress>) {
    let given = &design.geometry.bars;
    let own = &design.geometry.woods;
    let wood = made(&given.wood, None, own);
    let wood = wood.or_else(|| made(&BarsSpec::default().wood, None, own));
    let Some(Made::Solid(wood)) = wood else { return Default::default() };
    let allowable = wood.allowable(LoadTime::Permanent);
    let sized = |bars: &BarSpec| {
        let size = size(bars.width_mm).zip(size(bars.height_mm))?;
        (bars.count > 0).then_some((count(bars.count).min(MOST_BARS), size))
    };
    let (mut bars, none) = (Bars::default(), (0, Default::default()));
    bars.modulus = allowable.modulus.unwrap_or_default();
    (bars.cross, bars.cross_size) = sized(&given.cross).unwrap_or(none);
    (bars.pairs, bars.pair_size) = sized(&given.along).unwrap_or(none);
    let even = 1.0 / (bars.pairs + 1) as f64;
    bars.pair_shares = shares(&given.along).unwrap_or((even, 1.0 - even));
    (bars, allowable, wood.torsion_modulus())
}

/// String rib and strip outside, with what their wood may bear.
fn rib(design: &Design) -> (Rib, Allowable) {
    let mm = |setting: Setting| Length::from_mm(setting.number(design));
    let usual = GeometrySpec::default().board.rib_wood;
    let own = &design.geometry.woods;
    let wood = made(&design.geometry.board.rib_wood, None, own);
    let wood = wood.or_else(|| made(&usual, None, own));
    let Some(Made::Solid(wood)) = wood else { return Default::default() };
    let allowable = wood.allowable(LoadTime::Permanent);
    let rib = Rib {
        inside: (mm(Setting::RibWidth), mm(Setting::RibHeight)),
        outside: (mm(Setting::StripWidth), mm(Setting::StripHeight)),
        modulus: allowable.modulus.unwrap_or_default(),
    };
    (rib, allowable)
}
