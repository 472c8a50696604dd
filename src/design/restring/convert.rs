//! Strings of one material in another, at the same pitch and length: which gauge pulls the same, feels the
//! same or weighs the same, and the nearest one that can be bought.

use std::ops::Range;
use std::sync::Arc;

use super::shown;
use crate::design::display::{percent, semitones, string_name, total_with_unit};
use crate::design::document::{Design, MakeUpSpec, MaterialSpec, StockItem, Units};
use crate::design::edit::{ChosenBy, Edit, Made, Taken};
use crate::design::library::{find, material_of};
use crate::design::resolve::resolve;
use crate::design::stock::{Shelf, is_sold_for};
use crate::design::typed;
use crate::engine::analysis::{Analysis, Harp, HarpString, StringFigures, analyse};
use crate::engine::construction::MakeUp;
use crate::engine::material::Material;
use crate::engine::units::{Density, Force, Length};
use crate::words::{Words, restring as say};

/// The most steps to a gauge; a handful suffices, as the pull goes almost with its square.
const MOST_STEPS: usize = 60;
/// How near the gauge is found, as a share.
const NEAR: f64 = 1e-10;
/// A gauge in stock that is farther off than this is told, as a share. Common practice, no source.
const FAR_OFF: f64 = 0.05;

/// What is to stay the same.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Equal {
    /// The pull at pitch; so also the pluck stiffness for small plucks, as the length stays.
    #[default]
    Tension,
    /// The force of the finger at the design's displacement, what the string stretches by included.
    PluckForce,
    /// The mass per metre: `d₂ = d₁ √(ρ₁/ρ₂)`. A flexible string then pulls and feels the same.
    Mass,
}

impl Equal {
    /// In the order in which a list shows them.
    pub const ALL: [Self; 3] = [Self::Tension, Self::PluckForce, Self::Mass];

    /// As a list shows it.
    pub fn name(self) -> &'static str {
        let words = match self {
            Self::Tension => say::SAME_TENSION,
            Self::PluckForce => say::SAME_FORCE,
            Self::Mass => say::SAME_MASS,
        };
        words.said()
    }
}

/// What is to be converted into what.
#[derive(Clone, Debug)]
pub struct Conversion<'a> {
    /// Rows of the strings.
    pub rows: Range<usize>,
    /// The new material, by key, name or a usual other name.
    pub material: &'a str,
    pub equal: Equal,
    /// What can be bought; where it is empty, gauges are whole hundredths of a millimetre.
    pub stock: &'a [StockItem],
    /// Own materials of the stock's lists.
    pub materials: &'a [MaterialSpec],
}

/// What becomes of one string.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// Index of the string.
    pub row: usize,
    /// The gauge that keeps the wanted figure the same.
    pub wanted: Option<Length>,
    /// The gauge that is taken.
    pub gauge: Option<Length>,
    /// The stock item that it is.
    pub item: Option<StockItem>,
    /// Why the string stays as it is, or what is odd; without a full stop.
    pub remark: Option<String>,
}

/// A conversion before it is done.
#[derive(Clone, Debug, PartialEq)]
pub struct Preview {
    /// One for each row that was asked for.
    pub changes: Vec<Change>,
    /// The harp as it is, and as it would be.
    pub before: Analysis,
    pub after: Analysis,
    /// The design as it would be.
    pub design: Design,
    /// Does it, in one step.
    pub edit: Edit,
}

/// Works out a conversion. A string that is not plain, or of which something is missing, stays as it is.
///
/// # Source
///
/// `d₂ = d₁ √(ρ₁/ρ₂)` follows from the mass per metre; the pull of a stiff string from
/// [`tension`](crate::engine::mechanics::tension), the force of the finger from
/// [`pluck_force`](crate::engine::pluck::pluck_force). Both are solved for the gauge by steps of the root
/// of what is still missing.
pub fn convert(design: &Design, conversion: &Conversion<'_>) -> Preview {
    let start = conversion.rows.start.min(design.strings.len());
    let rows = start..conversion.rows.end.clamp(start, design.strings.len());
    let mut source = design.clone();
    for material in conversion.materials {
        if find(&source.materials, &material.key).is_none() {
            source.materials.push(material.clone());
        }
    }
    let harp = resolve(design).harp;
    let before = analyse(&harp);
    let material = find(&source.materials, conversion.material);
    let own = material.filter(|m| conversion.materials.contains(m)).cloned();
    let material = material.and_then(|spec| material_of(spec).ok()).map(Arc::new);
    let shelf = Shelf::new(&source.materials, conversion.stock);
    let (mut strings, mut stock, mut changes) = (Vec::new(), Vec::new(), Vec::new());
    for row in rows {
        let why_not = |remark: String| Change {
            row,
            wanted: None,
            gauge: None,
            item: None,
            remark: Some(remark),
        };
        let Some(material) = &material else {
            let name = shown(conversion.material);
            changes.push(why_not(say::material_unknown(&name)));
            continue;
        };
        let place = StringAt { harp: &harp, row, figures: &before.strings[row] };
        let wanted = match place.wanted(material, conversion.equal) {
            Ok(wanted) => wanted,
            Err(remark) => {
                changes.push(why_not(remark.into()));
                continue;
            }
        };
        let chosen = match conversion.stock {
            [] => Some((None, hundredths(wanted))),
            _ => nearest(&shelf, &source.materials, &material.key, place.figures, wanted),
        };
        let Some((index, gauge)) = chosen else {
            let remark = say::stock_lacks(&shown(&material.key));
            changes.push(Change { wanted: Some(wanted), ..why_not(remark) });
            continue;
        };
        let item = index.map(|index| conversion.stock[index].clone());
        let made = index.and_then(|index| shelf.make_up(index)).cloned();
        let make_up = made.unwrap_or_else(|| MakeUpSpec {
            material: material.key.clone(),
            diameter: format!("{:.2}", gauge.to_mm()),
            ..MakeUpSpec::default()
        });
        let order_code = item.as_ref().map(|item| item.code.clone()).unwrap_or_default();
        let stock_key = item.as_ref().map_or(0, |item| item.key);
        let made = Some(Made { make_up, order_code, stock_key });
        strings.push(Taken { row, made, length: None });
        stock.extend(item.clone());
        let off = gauge.to_m() / wanted.to_m() - 1.0;
        let remark = (off.abs() > FAR_OFF).then(|| {
            let said = if off > 0.0 { say::nearest_thicker } else { say::nearest_thinner };
            said(&percent(100.0 * off.abs()))
        });
        changes.push(Change { row, wanted: Some(wanted), gauge: Some(gauge), item, remark });
    }
    let materials = own.into_iter().collect();
    let edit = Edit::Take { strings, stock, materials, chosen_by: ChosenBy::default() };
    let design = edit.apply(design);
    let after = analyse(&resolve(&design).harp);
    Preview { changes, before, after, design, edit }
}

/// One string of the harp.
struct StringAt<'a> {
    harp: &'a Harp,
    row: usize,
    figures: &'a StringFigures,
}

impl StringAt<'_> {
    /// The gauge of the new material that keeps the figure.
    fn wanted(&self, material: &Arc<Material>, equal: Equal) -> Result<Length, Words> {
        let Some(string) = self.harp.strings.get(self.row) else {
            return Err(say::NOT_THERE);
        };
        let (old, gauge) = match &string.make_up {
            Ok(MakeUp::Plain { material, diameter }) => (material, *diameter),
            Ok(_) => return Err(say::NOT_PLAIN),
            Err(_) => return Err(say::NOT_KNOWN),
        };
        let ratio = density(old) / density(material);
        let start = Length::from_m(gauge.to_m() * ratio.sqrt());
        let figure = |figures: &StringFigures| match equal {
            Equal::Tension => figures.tension.ok(),
            _ => figures.pluck_force.ok(),
        };
        if equal == Equal::Mass {
            return Ok(start);
        }
        let aim = figure(self.figures).map(Force::to_n).filter(|aim| *aim > 0.0);
        let Some(aim) = aim else {
            return Err(say::NO_TENSION);
        };
        let mut gauge = start;
        for _ in 0..MOST_STEPS {
            let made = MakeUp::plain(material.clone(), gauge);
            let Ok(made) = made else { return Err(say::NO_GAUGE) };
            let one = HarpString { make_up: Ok(made), ..string.clone() };
            let Harp { pluck_ratio, conditions, limits, .. } = self.harp;
            let one = Harp {
                strings: vec![one],
                pluck_ratio: *pluck_ratio,
                conditions: conditions.clone(),
                limits: limits.clone(),
            };
            let got = analyse(&one).strings.first().and_then(figure).map(Force::to_n);
            let Some(got) = got.filter(|got| *got > 0.0) else {
                return Err(say::NO_GAUGE);
            };
            let step = (aim / got).sqrt();
            gauge = Length::from_m(gauge.to_m() * step);
            if (step - 1.0).abs() < NEAR {
                return Ok(gauge);
            }
        }
        Err(say::NO_GAUGE)
    }
}

fn density(material: &Material) -> f64 {
    Density::to_kg_per_m3(material.density.value)
}

/// The plain item of a material whose gauge is nearest, as a ratio, of those that can be had for the note;
/// of two as near, the thinner.
fn nearest(
    shelf: &Shelf<'_>,
    materials: &[MaterialSpec],
    key: &str,
    figures: &StringFigures,
    wanted: Length,
) -> Option<(Option<usize>, Length)> {
    let mut best: Option<(usize, Length, f64)> = None;
    for (index, item) in shelf.items().iter().enumerate() {
        let Some(make_up) = shelf.make_up(index).filter(|make_up| make_up.is_plain()) else {
            continue;
        };
        if item.sold_out || !is_sold_for(item, figures.note) {
            continue;
        }
        if find(materials, &make_up.material).is_none_or(|found| found.key != key) {
            continue;
        }
        let Ok(gauge) = typed::gauge(&make_up.diameter) else { continue };
        let off = (gauge.to_m() / wanted.to_m()).ln().abs();
        let better = best.is_none_or(|(_, held, least)| {
            off < least - 1e-12 || (off < least + 1e-12 && gauge < held)
        });
        if better {
            best = Some((index, gauge, off));
        }
    }
    best.map(|(index, gauge, _)| (Some(index), gauge))
}

fn hundredths(gauge: Length) -> Length {
    Length::from_mm((gauge.to_mm() * 100.0).round() / 100.0)
}

/// What a conversion changes, in sentences: the pull of the harp, the tightest string, the margin to
/// breaking.
pub fn summary(preview: &Preview, units: &Units) -> Vec<String> {
    let (before, after) = (&preview.before, &preview.after);
    let mut words = Vec::new();
    let (old, new) = (before.total_tension.to_n(), after.total_tension.to_n());
    let total = |force| total_with_unit(force, units.force);
    let totals = (total(before.total_tension), total(after.total_tension));
    words.push(if old > 0.0 && new > 0.0 {
        let change = 100.0 * (new / old - 1.0);
        let sign = if change > 0.0 { "+" } else { "" };
        say::total_change(&totals.1, &totals.0, &format!("{sign}{}", percent(change)))
    } else {
        say::total(&totals.1, &totals.0)
    });
    if after.without_tension > 0 {
        words.push(say::totals_lack(&after.without_tension));
    }
    let tightest = |analysis: &Analysis| {
        let figures = analysis.strings.get(analysis.tightest?)?;
        let share = figures.load_share_percent.ok()?;
        Some(say::share_of(&percent(share), &string_name(figures)))
    };
    if let (Some(old), Some(new)) = (tightest(before), tightest(after)) {
        words.push(say::tightest(&new, &old));
    }
    let margin = |analysis: &Analysis| {
        let rows = preview.changes.iter().filter(|change| change.gauge.is_some());
        let figures = rows.filter_map(|change| analysis.strings.get(change.row));
        let known = figures.filter_map(|figures| Some((figures, figures.semitones_to_break.ok()?)));
        let least = known.min_by(|one, other| one.1.total_cmp(&other.1));
        least.map(|(figures, margin)| say::margin_of(&semitones(margin), &string_name(figures)))
    };
    if let (Some(old), Some(new)) = (margin(before), margin(after)) {
        words.push(say::margin(&new, &old));
    }
    words
}
