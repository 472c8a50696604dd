//! What differs between two designs: string by string, in the totals, and in the settings.

use super::display::{self, figure, total_with_unit};
use super::document::{
    Design, DrivesSpec, FastenerSpec, GapsSpec, JointSpec, KindSpec, MetalSpec, NeckLayerSpec,
    OwnWoodSpec, SectionSpec, SparesSpec, Units, ZoneSpec,
};
use super::make_up_text;
use super::order::money_words;
use super::resolve::resolve;
use super::settings::{OneOf, Setting};
use super::stock::prices;
use crate::engine::analysis::{Analysis, StringFigures, analyse};
use crate::engine::figure::Figure;
use crate::engine::pitch::Note;
use crate::engine::units::Stiffness;

/// The figures that are compared.
const FIGURES: [Figure; 5] =
    [Figure::Length, Figure::Gauge, Figure::Tension, Figure::PluckStiffness, Figure::LoadShare];

/// Heads of the cells of a [`StringDiff`]: note, make-up, then the figures with the unit of the page.
pub fn columns(units: &Units) -> [String; 7] {
    let unit = |name: &str, figure| match display::figure_unit(figure, units) {
        "" => name.to_owned(),
        unit => format!("{name}, {unit}"),
    };
    [
        "note".to_owned(),
        "make-up".to_owned(),
        unit("length", Figure::Length),
        unit("gauge", Figure::Gauge),
        unit("tension", Figure::Tension),
        unit("pluck stiffness", Figure::PluckStiffness),
        unit("load share", Figure::LoadShare),
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
    [note, make_up_text::write(&spec.make_up)].into_iter().chain(known).collect()
}

fn totals(before: (&Design, &Analysis), after: (&Design, &Analysis), units: &Units) -> Vec<Pair> {
    let pair = |name: &str, words: &dyn Fn(&Design, &Analysis) -> String| Pair {
        name: name.to_owned(),
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
        pair("strings", &|_, analysis| analysis.strings.len().to_string()),
        pair("total tension", &|_, analysis| {
            let lacks = match analysis.without_tension {
                0 => String::new(),
                count => format!(", without {count} strings"),
            };
            format!("{}{lacks}", total_with_unit(analysis.total_tension, units.force))
        }),
        pair("highest load share", &|_, analysis| {
            let figures = analysis.tightest.and_then(|index| analysis.strings.get(index));
            let share = figures.and_then(|figures| figures.load_share_percent.ok());
            share.map_or(display::NONE.to_owned(), |share| format!("{} %", display::percent(share)))
        }),
        pair("pluck stiffness, lowest to highest", &|_, analysis| {
            let unit = display::stiffness_unit(units.force);
            format!("{} to {} {unit}", extreme(analysis, false), extreme(analysis, true))
        }),
        pair("different strings to buy", &|design, _| {
            let mut kinds: Vec<String> = Vec::new();
            for make_up in design.strings.iter().map(|string| make_up_text::write(&string.make_up))
            {
                if !make_up.is_empty() && !kinds.contains(&make_up) {
                    kinds.push(make_up);
                }
            }
            kinds.len().to_string()
        }),
        pair("findings", &|_, analysis| analysis.findings.len().to_string()),
        pair("price of the strings", &|design, analysis| price_words(design, analysis)),
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
    let lacks = if without == 0 { String::new() } else { format!(", without {without} strings") };
    format!("{}{lacks}", sums.join(" + "))
}

/// Something of a design in words.
type InWords = (&'static str, fn(&Design) -> String);

/// What of the settings is no plain number, in the order of the document.
const WORDS: [InWords; 35] = [
    ("title", |d| d.title.clone()),
    ("maker", |d| d.maker.clone()),
    ("client", |d| d.client.clone()),
    ("serial number", |d| d.serial.clone()),
    ("date", |d| d.date.clone()),
    ("open tuning", |d| d.open_tuning.clone()),
    ("remarks", |d| d.remarks.clone()),
    ("temperament", |d| OneOf::Temperament.of(d).to_owned()),
    ("levers or discs", |d| OneOf::Mechanism.of(d).to_owned()),
    ("strings with levers or discs of their own", |d| {
        d.strings.iter().filter(|string| string.mechanism.is_some()).count().to_string()
    }),
    ("spacing is measured", |d| OneOf::Measured.of(d).to_owned()),
    ("spacing, mm", |d| gaps_words(&d.geometry.spacing.gaps)),
    ("what is drawn", |d| {
        match d.geometry.drives {
            DrivesSpec::Lengths => "lengths",
            DrivesSpec::NeckCurve => "curve of the pins",
        }
        .to_owned()
    }),
    ("drawn curve of the pins", |d| {
        let node = |(across, along): &(f64, f64)| format!("{across}, {along}");
        d.geometry.nodes_mm.iter().map(node).collect::<Vec<_>>().join("; ")
    }),
    ("wood of the neck", |d| d.geometry.neck.wood.clone()),
    ("sections of the neck, %, mm", |d| {
        let section = |own: &SectionSpec| {
            format!("{}: {} by {}", own.at_percent, own.thickness_mm, own.depth_mm)
        };
        d.geometry.neck.sections.iter().map(section).collect::<Vec<_>>().join("; ")
    }),
    ("layers of the neck, mm, degrees", |d| {
        let layer =
            |of: &NeckLayerSpec| format!("{} {} {}", of.thickness_mm, of.angle_deg, of.wood);
        d.geometry.neck.layers.iter().map(layer).collect::<Vec<_>>().join("; ")
    }),
    ("metal beside the neck", |d| {
        let plates = &d.geometry.neck.plates;
        let side = if plates.one_side { ", one side" } else { "" };
        format!("{}{side}{}", sizes_words(&plates.numbers()), metal_words(plates.metal))
    }),
    ("woods of its own", |d| {
        let wood = |of: &OwnWoodSpec| {
            let kind = if of.softwood { "softwood" } else { "hardwood" };
            let class = if of.by_class { ", by class" } else { "" };
            format!("{}, {kind}{class}: {}", of.name, sizes_words(&of.numbers()))
        };
        d.geometry.woods.iter().map(wood).collect::<Vec<_>>().join("; ")
    }),
    ("wood of the pillar", |d| d.geometry.pillar.wood.clone()),
    ("wood of the board", |d| d.geometry.board.wood.clone()),
    ("wood of the string rib", |d| d.geometry.board.rib_wood.clone()),
    ("joints", |d| d.geometry.joints.all().map(joint_words).join("; ")),
    ("soundbox", |d| {
        let soundbox = &d.geometry.soundbox;
        let sizes = sizes_words(&soundbox.numbers());
        let slot = if soundbox.slotted { ", open back" } else { "" };
        format!("{sizes}, {}, {}{slot}", soundbox.side_wood, soundbox.back_wood)
    }),
    ("bars of the board", |d| {
        let bars = &d.geometry.bars;
        format!("{}, {}", sizes_words(&bars.numbers()), bars.wood)
    }),
    ("where the harp lives", |d| OneOf::Service.of(d).to_owned()),
    ("strings to choose from", |d| OneOf::Family.of(d).to_owned()),
    ("note from which strings are wound", |d| d.targets.wound_from.clone()),
    ("what is wanted of the strings", |d| OneOf::Wants.of(d).to_owned()),
    ("curve that is wanted", |d| points_words(d)),
    ("gauges by zone", |d| zones_words(d)),
    ("kinds of string", |d| kinds_words(d)),
    ("spares", |d| spares_words(d)),
    ("figures of materials", |d| materials_words(d)),
    ("order codes", |d| {
        let coded = d.strings.iter().map(|string| string.order_code.trim());
        coded.filter(|code| !code.is_empty()).collect::<Vec<_>>().join(", ")
    }),
];

/// Sizes in mm, in the order of the document.
fn sizes_words(numbers: &[f64]) -> String {
    numbers.iter().map(f64::to_string).collect::<Vec<_>>().join(", ")
}

const fn metal_words(metal: MetalSpec) -> &'static str {
    match metal {
        MetalSpec::Steel => "",
        MetalSpec::Brass => ", brass",
        MetalSpec::Aluminium => ", aluminium",
    }
}

fn joint_words(joint: &JointSpec) -> String {
    let fasteners = match joint.fasteners {
        FastenerSpec::None => "",
        FastenerSpec::Dowels => ", dowels",
        FastenerSpec::Bolts => ", bolts",
        FastenerSpec::Screws => ", screws",
    };
    let metal = metal_words(joint.metal);
    format!("{}{fasteners}{metal}", sizes_words(&joint.numbers()))
}

/// The numbers that [`WORDS`] has already.
const IN_WORDS: [Setting; 4] =
    [Setting::Gap, Setting::Spares, Setting::FirstSpare, Setting::LastSpare];

/// The settings that differ: what is no plain number, then the numbers.
fn settings(before: &Design, after: &Design) -> Vec<Pair> {
    let words = WORDS.iter().map(|(name, words)| Pair {
        name: (*name).to_owned(),
        before: words(before),
        after: words(after),
    });
    let number = |setting: Setting, design: &Design| {
        setting.of(design).map_or_else(|| display::NONE.to_owned(), |number| number.to_string())
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

fn gaps_words(gaps: &GapsSpec) -> String {
    let list = |widths: &[f64]| widths.iter().map(f64::to_string).collect::<Vec<_>>().join(", ");
    match gaps {
        GapsSpec::UniformMm(width) => width.to_string(),
        GapsSpec::ZonesMm(zones) => {
            let zone = |(number, width): &(u32, f64)| format!("{width} at gap {number}");
            zones.iter().map(zone).collect::<Vec<_>>().join(", ")
        }
        GapsSpec::EachMm(widths) => list(widths),
    }
}

fn points_words(design: &Design) -> String {
    let point = |(key, value): &(f64, f64)| format!("{value} at note {key}");
    design.targets.points().iter().map(point).collect::<Vec<_>>().join(", ")
}

fn zones_words(design: &Design) -> String {
    let zone = |zone: &ZoneSpec| {
        let texts = [&zone.lowest, &zone.highest, &zone.thinnest, &zone.thickest];
        texts.map(|text| if text.is_empty() { display::NONE } else { text }).join(" ")
    };
    design.targets.zones.iter().map(zone).collect::<Vec<_>>().join("; ")
}

fn kinds_words(design: &Design) -> String {
    let kind = |kind: &KindSpec| format!("{} {} {}", kind.kind, kind.lowest, kind.highest);
    let kinds = design.targets.kinds.iter().map(kind);
    kinds.map(|words| words.trim_end().to_owned()).collect::<Vec<_>>().join("; ")
}

fn spares_words(design: &Design) -> String {
    let range = match (design.order.from_string, design.order.to_string) {
        (0, 0) => String::new(),
        (from, 0) => format!(", from string {from}"),
        (from, to) => format!(", from string {} to {to}", from.max(1)),
    };
    let spares = match design.order.spares {
        SparesSpec::None => return "none".to_owned(),
        SparesSpec::OneOfEachItem => "one of each stock item".to_owned(),
        SparesSpec::OneOfEachString => "one for each string".to_owned(),
        SparesSpec::Percent(percent) => format!("{percent} %"),
    };
    format!("{spares}{range}")
}

/// The materials with their density, strength and modulus, so that a changed figure is seen.
fn materials_words(design: &Design) -> String {
    let words = design.materials.iter().map(|material| {
        let modulus = material.modulus.as_ref().map(|fact| fact.value.base_gpa.to_string());
        let modulus = modulus.unwrap_or_else(|| display::NONE.to_owned());
        format!("{}: {} kg/m³, {modulus} GPa", material.key, material.density_kg_per_m3.value)
    });
    words.collect::<Vec<_>>().join("; ")
}

#[cfg(test)]
mod tests;
