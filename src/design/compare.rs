//! What differs between two designs: string by string, in the totals, and in the settings.

use super::display::{self, figure, total_with_unit};
use super::document::{
    Design, DrivesSpec, FastenerSpec, GapsSpec, JointSpec, KindSpec, MetalSpec, NeckLayerSpec,
    OwnWoodSpec, SectionSpec, SparesSpec, StringSpec, Units, ZoneSpec,
};
use super::make_up_said;
use super::make_up_text;
use super::order::money_words;
use super::resolve::resolve;
use super::settings::{OneOf, Setting};
use super::stock::prices;
use crate::engine::analysis::{Analysis, StringFigures, analyse};
use crate::engine::figure::Figure;
use crate::engine::pitch::Note;
use crate::engine::pitch::naming::shown;
use crate::engine::units::Stiffness;
use crate::words::papers::titled;
use crate::words::{Words, compare as say, decimal_sign, numeral, semicolon};

/// The figures that are compared.
const FIGURES: [Figure; 5] =
    [Figure::Length, Figure::Gauge, Figure::Tension, Figure::PluckStiffness, Figure::LoadShare];

/// Heads of the cells of a [`StringDiff`]: note, make-up, then the figures with the unit of the page.
pub fn columns(units: &Units) -> [String; 7] {
    let unit = |name: Words, figure| match display::figure_unit(figure, units) {
        "" => name.into(),
        unit => format!("{name}, {unit}"),
    };
    [
        say::NOTE.into(),
        say::MAKE_UP.into(),
        unit(say::LENGTH, Figure::Length),
        unit(say::GAUGE, Figure::Gauge),
        unit(say::TENSION, Figure::Tension),
        unit(say::STIFFNESS, Figure::PluckStiffness),
        unit(say::SHARE, Figure::LoadShare),
    ]
}

/// Two texts under one name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pair {
    pub name: String,
    pub before: String,
    pub after: String,
}

impl Pair {
    /// Whether they are not the same.
    pub fn differs(&self) -> bool {
        self.before != self.after
    }
}

/// A string before and after.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StringDiff {
    /// Index before; none for a string that came.
    pub before: Option<usize>,
    /// Index after; none for a string that went.
    pub after: Option<usize>,
    /// Under [`columns`].
    pub cells: Vec<Pair>,
}

impl StringDiff {
    /// Whether anything differs.
    pub fn differs(&self) -> bool {
        self.cells.iter().any(Pair::differs)
    }
}

/// Everything that differs.
#[derive(Clone, Debug, PartialEq)]
pub struct Comparison {
    /// Every string of both, from the highest down, different or not.
    pub strings: Vec<StringDiff>,
    /// The totals, different or not.
    pub totals: Vec<Pair>,
    /// The settings that differ.
    pub settings: Vec<Pair>,
    /// The analysis of the design before, for ghost curves.
    pub ghost: Analysis,
}

/// Compares two designs. Figures stand in the units of `after`, rounded as in the chart, so that what differs
/// by less than can be seen is the same.
pub fn compare(before: &Design, after: &Design) -> Comparison {
    let [old, new] = [before, after].map(|design| analyse(&resolve(design).harp));
    let units = &after.units;
    let heads = columns(units);
    let strings = pairs(&old, &new).into_iter().map(|(was, is)| {
        let cells_of = |design: &Design, analysis: &Analysis, index: Option<usize>| match index {
            Some(index) => cells(design, analysis, index, units),
            None => vec![String::new(); heads.len()],
        };
        let sides = cells_of(before, &old, was).into_iter().zip(cells_of(after, &new, is));
        let cells = sides.zip(&heads).map(|((before, after), name)| Pair {
            name: name.clone(),
            before,
            after,
        });
        StringDiff { before: was, after: is, cells: cells.collect() }
    });
    let strings = strings.collect();
    let totals = totals((before, &old), (after, &new), units);
    let settings = settings(before, after);
    Comparison { strings, totals, settings, ghost: old }
}

/// Which string was which: by the letter and octave, where there is one, else by the number.
fn pairs(old: &Analysis, new: &Analysis) -> Vec<(Option<usize>, Option<usize>)> {
    let step = |figures: &StringFigures| figures.note.map(Note::step);
    let mut taken = vec![false; old.strings.len()];
    let mut partner = vec![None; new.strings.len()];
    for (index, figures) in new.strings.iter().enumerate() {
        let free = |place: &usize| !taken[*place] && step(&old.strings[*place]) == step(figures);
        let same_number = Some(index).filter(|place| *place < taken.len());
        let found = match step(figures) {
            None => same_number.filter(|place| free(place)),
            Some(_) => {
                same_number.filter(|p| free(p)).or_else(|| (0..taken.len()).find(|p| free(p)))
            }
        };
        if let Some(place) = found {
            taken[place] = true;
            partner[index] = Some(place);
        }
    }
    // A string that went stands before the first one below it.
    let mut pairs = Vec::new();
    let mut gone = (0..taken.len()).filter(|place| !taken[*place]).peekable();
    for (index, was) in partner.into_iter().enumerate() {
        while let Some(lost) = gone.next_if(|lost| was.is_some_and(|was| *lost < was)) {
            pairs.push((Some(lost), None));
        }
        pairs.push((was, Some(index)));
    }
    pairs.extend(gone.map(|lost| (Some(lost), None)));
    pairs
}

fn cells(design: &Design, analysis: &Analysis, index: usize, units: &Units) -> Vec<String> {
    let (Some(spec), Some(figures)) = (design.strings.get(index), analysis.strings.get(index))
    else {
        return Vec::new();
    };
    let note = figures.note.map_or_else(|| spec.note.clone(), Note::printed);
    let known = FIGURES
        .iter()
        .map(|of| figure(*of, figures, units).unwrap_or_else(|_| display::NONE.to_owned()));
    let make_up = make_up_said::line_shown(&make_up_text::write(&spec.make_up));
    [note, make_up].into_iter().chain(known).collect()
}

fn totals(before: (&Design, &Analysis), after: (&Design, &Analysis), units: &Units) -> Vec<Pair> {
    let pair = |name: Words, words: &dyn Fn(&Design, &Analysis) -> String| Pair {
        name: name.into(),
        before: words(before.0, before.1),
        after: words(after.0, after.1),
    };
    let extreme = |analysis: &Analysis, most: bool| {
        let known = analysis.strings.iter().filter_map(|figures| figures.pluck_stiffness.ok());
        let known = known.map(Stiffness::to_n_per_mm);
        let found = if most { known.reduce(f64::max) } else { known.reduce(f64::min) };
        found.map_or(display::NONE.to_owned(), |stiffness| {
            display::stiffness(Stiffness::from_n_per_mm(stiffness), units.force)
        })
    };
    vec![
        pair(say::STRINGS, &|_, analysis| analysis.strings.len().to_string()),
        pair(say::TOTAL_TENSION, &|_, analysis| {
            let total = total_with_unit(analysis.total_tension, units.force);
            lacking(total, analysis.without_tension)
        }),
        pair(say::HIGHEST_SHARE, &|_, analysis| {
            let figures = analysis.tightest.and_then(|index| analysis.strings.get(index));
            let share = figures.and_then(|figures| figures.load_share_percent.ok());
            share.map_or(display::NONE.to_owned(), |share| say::percent(&display::percent(share)))
        }),
        pair(say::STIFFNESS_RANGE, &|_, analysis| {
            let unit = display::stiffness_unit(units.force);
            say::range(&extreme(analysis, true), &extreme(analysis, false), &unit)
        }),
        pair(say::KINDS_TO_BUY, &|design, _| {
            let mut kinds: Vec<String> = Vec::new();
            for make_up in design.strings.iter().map(|string| make_up_said::said(&string.make_up)) {
                if !make_up.is_empty() && !kinds.contains(&make_up) {
                    kinds.push(make_up);
                }
            }
            kinds.len().to_string()
        }),
        pair(say::FINDINGS, &|_, analysis| analysis.findings.len().to_string()),
        pair(say::PRICE, &|design, analysis| price_words(design, analysis)),
    ]
}

/// `84.20 EUR + 12.00 GBP, without 3 strings`
fn price_words(design: &Design, analysis: &Analysis) -> String {
    let mut sums: Vec<(String, f64)> = Vec::new();
    let mut without = 0_usize;
    for price in prices(design, analysis) {
        let Ok((price, currency)) = price else {
            without += 1;
            continue;
        };
        match sums.iter_mut().find(|sum| sum.0 == currency) {
            Some(sum) => sum.1 += price,
            None => sums.push((currency, price)),
        }
    }
    if sums.is_empty() {
        return display::NONE.to_owned();
    }
    let sums: Vec<String> = sums.iter().map(|(name, sum)| money_words(*sum, name)).collect();
    lacking(sums.join(" + "), without)
}

/// A sum, and how many strings are not in it.
fn lacking(sum: String, without: usize) -> String {
    if without == 0 { sum } else { say::without(&without, &sum) }
}

/// Something of a design in words.
type InWords = (Words, fn(&Design) -> String);

/// What of the settings is no plain number, in the order of the document.
const WORDS: [InWords; 36] = [
    (say::TITLE, |d| d.title.clone()),
    (say::MAKER, |d| d.maker.clone()),
    (say::CLIENT, |d| d.client.clone()),
    (say::SERIAL, |d| d.serial.clone()),
    (say::DATE, |d| d.date.clone()),
    (say::OPEN_TUNING, |d| d.open_tuning.clone()),
    (say::REMARKS, |d| d.remarks.clone()),
    (say::TEMPERAMENT, |d| OneOf::Temperament.of(d).into()),
    (say::MECHANISM, |d| OneOf::Mechanism.of(d).into()),
    (say::OWN_MECHANISM, |d| {
        d.strings.iter().filter(|string| string.mechanism.is_some()).count().to_string()
    }),
    (say::MEASURED, |d| OneOf::Measured.of(d).into()),
    (say::SPACING, |d| gaps_words(&d.geometry.spacing.gaps)),
    (say::DRIVES, |d| {
        match d.geometry.drives {
            DrivesSpec::Lengths => say::DRIVES_LENGTHS,
            DrivesSpec::NeckCurve => say::DRIVES_CURVE,
        }
        .into()
    }),
    (say::NODES, |d| {
        let node = |(across, along): &(f64, f64)| listed(&[*across, *along]);
        d.geometry.nodes_mm.iter().map(node).collect::<Vec<_>>().join(semicolon())
    }),
    (say::NECK_WOOD, |d| d.geometry.neck.wood.clone()),
    (say::SECTIONS, |d| {
        let section = |own: &SectionSpec| {
            let [at, thickness, depth] =
                [own.at_percent, own.thickness_mm, own.depth_mm].map(numeral);
            say::section(&at, &depth, &thickness)
        };
        d.geometry.neck.sections.iter().map(section).collect::<Vec<_>>().join(semicolon())
    }),
    (say::NECK_LAYERS, |d| {
        let layer = |of: &NeckLayerSpec| {
            format!("{} {} {}", numeral(of.thickness_mm), numeral(of.angle_deg), of.wood)
        };
        d.geometry.neck.layers.iter().map(layer).collect::<Vec<_>>().join(semicolon())
    }),
    (say::PLATES, |d| {
        let plates = &d.geometry.neck.plates;
        let side = if plates.one_side { say::ONE_SIDE } else { Words::NONE };
        with(listed(&plates.numbers()), &[side, metal_words(plates.metal)])
    }),
    (say::OWN_WOODS, |d| {
        let wood = |of: &OwnWoodSpec| {
            let kind = if of.softwood { say::SOFTWOOD } else { say::HARDWOOD };
            let class = if of.by_class { say::BY_CLASS } else { Words::NONE };
            titled(&with(of.name.clone(), &[kind, class]), &listed(&of.numbers()))
        };
        d.geometry.woods.iter().map(wood).collect::<Vec<_>>().join(semicolon())
    }),
    (say::PILLAR_WOOD, |d| d.geometry.pillar.wood.clone()),
    (say::BOARD_WOOD, |d| d.geometry.board.wood.clone()),
    (say::RIB_WOOD, |d| d.geometry.board.rib_wood.clone()),
    (say::JOINTS, |d| d.geometry.joints.all().map(joint_words).join(semicolon())),
    (say::SOUNDBOX, |d| {
        let soundbox = &d.geometry.soundbox;
        let sizes = listed(&soundbox.numbers());
        let slot = if soundbox.slotted { say::OPEN_BACK } else { Words::NONE };
        with(format!("{sizes}, {}, {}", soundbox.side_wood, soundbox.back_wood), &[slot])
    }),
    (say::BARS, |d| {
        let bars = &d.geometry.bars;
        format!("{}, {}", listed(&bars.numbers()), bars.wood)
    }),
    (say::PART_SIZES, |d| d.geometry.parts.clone()),
    (say::SERVICE, |d| OneOf::Service.of(d).into()),
    (say::FAMILY, |d| OneOf::Family.of(d).into()),
    (say::WOUND_FROM, |d| d.targets.wound_from.clone()),
    (say::WANTS, |d| OneOf::Wants.of(d).into()),
    (say::WANTED_CURVE, |d| points_words(d)),
    (say::ZONES, |d| zones_words(d)),
    (say::KINDS, |d| kinds_words(d)),
    (say::SPARES, |d| spares_words(d)),
    (say::MATERIALS, |d| materials_words(d)),
    (say::CODES, |d| {
        let coded = d.strings.iter().filter(|string| !string.order_code.trim().is_empty());
        let code =
            |string: &StringSpec| format!("{} {}", shown(&string.note), string.order_code.trim());
        coded.map(code).collect::<Vec<_>>().join(semicolon())
    }),
];

/// Numbers one after the other, parted so that a decimal comma is not taken for another number.
fn listed(numbers: &[f64]) -> String {
    let between = if decimal_sign() == ',' { semicolon() } else { ", " };
    numbers.iter().map(|number| numeral(*number)).collect::<Vec<_>>().join(between)
}

/// A text, and behind commas what else there is to say.
fn with(mut text: String, more: &[Words]) -> String {
    for words in more.iter().filter(|words| !words.is_empty()) {
        text += ", ";
        text += words.said();
    }
    text
}

const fn metal_words(metal: MetalSpec) -> Words {
    match metal {
        MetalSpec::Steel => Words::NONE,
        MetalSpec::Brass => say::BRASS,
        MetalSpec::Aluminium => say::ALUMINIUM,
    }
}

fn joint_words(joint: &JointSpec) -> String {
    let fasteners = match joint.fasteners {
        FastenerSpec::None => Words::NONE,
        FastenerSpec::Dowels => say::DOWELS,
        FastenerSpec::Bolts => say::BOLTS,
        FastenerSpec::Screws => say::SCREWS,
    };
    with(listed(&joint.numbers()), &[fasteners, metal_words(joint.metal)])
}

/// The numbers that [`WORDS`] has already.
const IN_WORDS: [Setting; 4] =
    [Setting::Gap, Setting::Spares, Setting::FirstSpare, Setting::LastSpare];

/// The settings that differ: what is no plain number, then the numbers.
fn settings(before: &Design, after: &Design) -> Vec<Pair> {
    let words = WORDS.iter().map(|(name, words)| {
        let (before, after) = match (words(before), words(after)) {
            // Long lists of which mostly one thing differs.
            (before, after) if [say::MATERIALS, say::CODES].contains(name) => {
                (others(&before, &after), others(&after, &before))
            }
            both => both,
        };
        Pair { name: (*name).into(), before, after }
    });
    let number = |setting: Setting, design: &Design| {
        setting.of(design).map_or_else(|| display::NONE.to_owned(), numeral)
    };
    let numbers = Setting::ALL.into_iter().filter(|setting| !IN_WORDS.contains(setting));
    let numbers = numbers.map(|setting| {
        let row = setting.row();
        let unit = if row.unit.is_empty() { String::new() } else { format!(", {}", row.unit) };
        Pair {
            name: format!("{}{unit}", row.name),
            before: number(setting, before),
            after: number(setting, after),
        }
    });
    words.chain(numbers).filter(Pair::differs).collect()
}

/// What of a list is not in the other one.
fn others(list: &str, other: &str) -> String {
    let known: Vec<&str> = other.split(semicolon()).collect();
    let others = list.split(semicolon()).filter(|item| !known.contains(item));
    let others = others.collect::<Vec<_>>().join(semicolon());
    if others.is_empty() && !list.is_empty() { display::NONE.to_owned() } else { others }
}

fn gaps_words(gaps: &GapsSpec) -> String {
    match gaps {
        GapsSpec::UniformMm(width) => numeral(*width),
        GapsSpec::ZonesMm(zones) => {
            let zone = |(number, width): &(u32, f64)| say::at_gap(number, &numeral(*width));
            zones.iter().map(zone).collect::<Vec<_>>().join(", ")
        }
        GapsSpec::EachMm(widths) => listed(widths),
    }
}

fn points_words(design: &Design) -> String {
    let point = |(key, value): &(f64, f64)| say::at_note(&numeral(*key), &numeral(*value));
    design.targets.points().iter().map(point).collect::<Vec<_>>().join(", ")
}

fn zones_words(design: &Design) -> String {
    let zone = |zone: &ZoneSpec| {
        let texts = [shown(&zone.lowest), shown(&zone.highest)];
        let texts = texts.into_iter().chain([zone.thinnest.clone(), zone.thickest.clone()]);
        let or_none = |text: String| if text.is_empty() { display::NONE.to_owned() } else { text };
        texts.map(or_none).collect::<Vec<_>>().join(" ")
    };
    design.targets.zones.iter().map(zone).collect::<Vec<_>>().join(semicolon())
}

fn kinds_words(design: &Design) -> String {
    let kind =
        |kind: &KindSpec| format!("{} {} {}", kind.kind, shown(&kind.lowest), shown(&kind.highest));
    let kinds = design.targets.kinds.iter().map(kind);
    kinds.map(|words| words.trim_end().to_owned()).collect::<Vec<_>>().join(semicolon())
}

fn spares_words(design: &Design) -> String {
    let spares = match design.order.spares {
        SparesSpec::None => return say::SPARES_NONE.into(),
        SparesSpec::OneOfEachItem => say::SPARES_ITEM.into(),
        SparesSpec::OneOfEachString => say::SPARES_STRING.into(),
        SparesSpec::Percent(percent) => say::percent(&numeral(percent)),
    };
    match (design.order.from_string, design.order.to_string) {
        (0, 0) => spares,
        (from, 0) => say::spares_from(&from, &spares),
        (from, to) => say::spares_between(&from.max(1), &to, &spares),
    }
}

/// The materials with their density, strength and modulus, so that a changed figure is seen.
fn materials_words(design: &Design) -> String {
    let words = design.materials.iter().map(|material| {
        let modulus = material.modulus.as_ref().map(|fact| numeral(fact.value.base_gpa));
        let modulus = modulus.unwrap_or_else(|| display::NONE.to_owned());
        let density = numeral(material.density_kg_per_m3.value);
        format!("{}: {density} kg/m³, {modulus} GPa", material.key)
    });
    words.collect::<Vec<_>>().join(semicolon())
}

#[cfg(test)]
mod tests;
