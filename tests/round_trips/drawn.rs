//! Whole designs and stock lists, drawn: every field of the document, and texts that nobody would type.

use std::sync::Arc;

use proptest::collection::vec;
use proptest::option::of;
use proptest::prelude::*;
use proptest::sample::select;

use stringloft::design::document::{
    Bare, ClassSpec, Design, DrivesSpec, Fact, FamilySpec, ForceUnit, GapsSpec, GaugeUnit,
    GeometrySpec, KindSpec, LayerSpec, LengthUnit, MakeUpSpec, MaterialSpec, MeasuredSpec,
    MechanismKind, ModulusSpec, SectionSpec, ServiceSpec, SizesSpec, SparesSpec, StandingSpec,
    StockItem, StrengthSpec, StringSpec, TargetsSpec, TemperamentSpec, ToleranceSpec, Units,
    VersionSpec, WantsSpec, WeighedSpec, ZoneSpec,
};
use stringloft::design::library::{
    DENSITY_KG_PER_M3, DEVIATION_MM, DEVIATION_PERCENT, EXPANSION_E6_PER_K, LONGEST_KEY,
    LOSS_FACTOR, MODULUS_GPA, PER_STRESS, STRENGTH_MPA, built_in, embed,
};
use stringloft::design::persist::{check, tidy};
use stringloft::design::settings::{
    GAP, GAP_NUMBER, NODE_ACROSS, NODE_ALONG, SECTION_AT, SECTION_DEPTH, SECTION_THICKNESS, Setting,
};
use stringloft::design::stock::{self, StockList};

use crate::texts::{length, material, note, number, or_odd, size, text};

fn layer(odd: u32) -> BoxedStrategy<LayerSpec> {
    let width = prop_oneof![3 => Just(String::new()), 1 => number((0.3, 2.0)).prop_map(|mm| mm.to_string())];
    let packing = prop_oneof![2 => Just(100.0), 1 => number((5.0, 100.0))];
    (or_odd(material(), odd), or_odd(size(), odd), or_odd(width, odd), packing)
        .prop_map(|(material, size, width, packing_percent)| LayerSpec {
            material,
            size,
            width,
            packing_percent,
        })
        .boxed()
}

/// What a string is made of; of twenty texts so many are `odd`.
pub fn make_up(odd: u32) -> BoxedStrategy<MakeUpSpec> {
    let weighed = (number((0.1, 40.0)), of(number((0.3, 3.0))), of(number((50.0, 900.0))));
    let words = |number: Option<f64>| number.map(|number| number.to_string()).unwrap_or_default();
    let weighed = weighed.prop_map(move |(mass, gauge, breaks)| WeighedSpec {
        g_per_m: mass.to_string(),
        gauge: words(gauge),
        breaks_n: words(breaks),
    });
    let bare = (of(number((0.0, 40.0))), of(number((0.0, 40.0))));
    let bare = bare.prop_map(move |(board, pin)| Bare { board: words(board), pin: words(pin) });
    let parts = (or_odd(material(), odd), or_odd(size(), odd), vec(layer(odd), 0..=3), bare);
    (parts, prop_oneof![9 => Just(None), 1 => weighed.prop_map(Some)])
        .prop_map(|((material, diameter, layers, bare), weighed)| match weighed {
            // One that was weighed has no layers, and bare ends only where there are layers.
            Some(_) => MakeUpSpec { material, diameter, weighed, ..MakeUpSpec::default() },
            None if layers.is_empty() => MakeUpSpec { material, diameter, ..MakeUpSpec::default() },
            None => MakeUpSpec { material, diameter, layers, bare, weighed },
        })
        .boxed()
}

fn mechanism() -> BoxedStrategy<MechanismKind> {
    use MechanismKind::{DoubleDisc, Lever, None, SingleDisc};
    select(vec![None, Lever, SingleDisc, DoubleDisc]).boxed()
}

/// A string; of twenty texts so many are `odd`.
pub fn string(odd: u32) -> BoxedStrategy<StringSpec> {
    let words = (or_odd(note(), odd), or_odd(length(), odd), text());
    (words, make_up(odd), 0..2_000_u16, of(mechanism()), any::<bool>())
        .prop_map(|((note, length, order_code), make_up, key, mechanism, locked)| StringSpec {
            note,
            length,
            make_up,
            order_code,
            stock_key: key.saturating_sub(1_000),
            mechanism,
            locked,
        })
        .boxed()
}

fn fact<T: std::fmt::Debug + 'static>(
    value: impl Strategy<Value = T> + 'static,
) -> BoxedStrategy<Fact<T>> {
    use StandingSpec::{Computed, FromMemory, Own, SecondHand, Seen};
    (value, text(), select(vec![Own, Seen, SecondHand, Computed, FromMemory]))
        .prop_map(|(value, source, standing)| Fact { value, source, standing })
        .boxed()
}

/// Rows whose diameters rise.
fn rows(values: (f64, f64)) -> BoxedStrategy<Vec<(f64, f64)>> {
    vec(number(values), 1..8)
        .prop_map(|values| (1..).map(|at| 0.1 * f64::from(at)).zip(values).collect())
        .boxed()
}

/// A material of the user's own, some under a key that comes with the program.
fn own_material() -> BoxedStrategy<MaterialSpec> {
    let key = prop_oneof![
        1 => Just("own 1".to_owned()),
        1 => select(built_in().iter().map(|material| material.key.clone()).collect::<Vec<_>>()),
        2 => text(),
    ];
    let modulus = (number(MODULUS_GPA), number(PER_STRESS))
        .prop_map(|(base_gpa, per_stress)| ModulusSpec { base_gpa, per_stress })
        .boxed();
    let strength = prop_oneof![
        number(STRENGTH_MPA).prop_map(StrengthSpec::Mpa),
        rows(STRENGTH_MPA).prop_map(StrengthSpec::TableMmMpa),
        rows(STRENGTH_MPA).prop_map(StrengthSpec::StepsMmMpa),
    ];
    let tolerance = prop_oneof![
        number(DEVIATION_MM).prop_map(ToleranceSpec::Mm),
        number(DEVIATION_PERCENT).prop_map(ToleranceSpec::Percent),
        rows(DEVIATION_MM).prop_map(ToleranceSpec::StepsMm),
    ];
    let class = select(vec![ClassSpec::Metal, ClassSpec::Polymer, ClassSpec::Natural]);
    let moduli = [(); 3].map(|()| of(fact(modulus.clone())));
    (
        (key, text(), class),
        fact(number(DENSITY_KG_PER_M3)),
        of(fact(number(DEVIATION_PERCENT))),
        of(fact(tolerance)),
        moduli,
        of(fact(strength)),
        of(fact(number(EXPANSION_E6_PER_K))),
        of(fact(number(LOSS_FACTOR))),
    )
        .prop_map(
            |(
                (key, name, class),
                density,
                off,
                diameter_tolerance,
                moduli,
                strength,
                expansion,
                loss,
            )| {
                let [modulus, intermediate_modulus, slow_modulus] = moduli;
                MaterialSpec {
                    key: key.chars().take(LONGEST_KEY).collect(),
                    name,
                    class,
                    density_kg_per_m3: density,
                    density_tolerance_percent: off,
                    diameter_tolerance,
                    modulus,
                    intermediate_modulus,
                    slow_modulus,
                    strength,
                    expansion_e6_per_k: expansion,
                    loss_factor: loss,
                }
            },
        )
        .boxed()
}

/// Materials with keys that differ.
fn materials() -> BoxedStrategy<Vec<MaterialSpec>> {
    vec(own_material(), 0..6)
        .prop_map(|mut all| {
            let mut keys = Vec::new();
            all.retain(|material| {
                let key = material.key.to_lowercase();
                // Without what is taken out of every text it must differ too.
                let key: String = key.chars().filter(|c| c.is_ascii_graphic()).collect();
                let is_new = !key.is_empty() && !keys.contains(&key);
                keys.push(key);
                is_new
            });
            all
        })
        .boxed()
}

/// A stock item; what it is made of may be anything.
pub fn item(odd: u32) -> BoxedStrategy<StockItem> {
    let make_up = prop_oneof![
        (20 - odd) => make_up(0).prop_map(|make_up| stringloft::design::make_up_text::write(&make_up)),
        odd => text()
    ];
    let note =
        || prop_oneof![2 => Just(String::new()), 1 => "[A-G][#b]?[0-8]".prop_map(|note| note)];
    let sold = (any::<bool>(), prop_oneof![2 => Just(0_u32), 1 => 0..=10_000_u32], any::<bool>());
    let worth = (of(number((1.0, 10_000_000.0))), of(number((0.0, 10_000_000.0))), text());
    ((make_up, text(), text()), sold, worth, (note(), note(), text()), 0..1_000_u16)
        .prop_map(|((make_up, code, supplier), (single, bundle, sold_out), worth, words, key)| {
            let ((pack_mm, price, currency), (lowest, highest, remark)) = (worth, words);
            StockItem {
                key,
                make_up: make_up.into(),
                code,
                supplier,
                single,
                bundle,
                pack_mm,
                price,
                currency,
                sold_out,
                lowest,
                highest,
                remark,
            }
        })
        .boxed()
}

/// A stock list, tidied as what comes from outside is.
pub fn stock_list() -> BoxedStrategy<StockList> {
    ((text(), text(), text()), materials(), vec(item(5), 0..80))
        .prop_map(|((name, currency, remark), materials, items)| {
            let mut list = StockList { name, currency, remark, materials, items };
            stock::tidy(&mut list);
            list
        })
        .boxed()
}

fn geometry() -> BoxedStrategy<GeometrySpec> {
    let gaps = prop_oneof![
        number(GAP.held).prop_map(GapsSpec::UniformMm),
        vec((number(GAP_NUMBER.held).prop_map(whole), number(GAP.held)), 0..9)
            .prop_map(GapsSpec::ZonesMm),
        vec(number(GAP.held), 0..150).prop_map(GapsSpec::EachMm),
    ];
    let section =
        (number(SECTION_AT.held), number(SECTION_THICKNESS.held), number(SECTION_DEPTH.held));
    let section = section.prop_map(|(at_percent, thickness_mm, depth_mm)| SectionSpec {
        at_percent,
        thickness_mm,
        depth_mm,
    });
    let words = (
        select(vec![MeasuredSpec::Square, MeasuredSpec::AlongBoard]),
        select(vec![DrivesSpec::Lengths, DrivesSpec::NeckCurve]),
        select(vec![ServiceSpec::Heated, ServiceSpec::Covered, ServiceSpec::Outdoors]),
        select(vec![SizesSpec::Own, SizesSpec::Proposed]),
    );
    let nodes = vec((number(NODE_ACROSS.held), number(NODE_ALONG.held)), 0..9);
    (words, gaps, nodes, vec(section, 0..9), [text(), text(), text(), text(), text()])
        .prop_map(|((measured, drives, service, sizes), gaps, nodes_mm, sections, woods)| {
            let usual = GeometrySpec::default();
            let mut shape = GeometrySpec { drives, nodes_mm, service, sizes, ..usual };
            (shape.spacing.measured, shape.spacing.gaps) = (measured, gaps);
            shape.neck.sections = sections;
            let parts;
            [shape.neck.wood, shape.pillar.wood, shape.board.wood, shape.board.rib_wood, parts] =
                woods;
            shape.parts = parts;
            shape
        })
        .boxed()
}

fn targets() -> BoxedStrategy<TargetsSpec> {
    use FamilySpec::{Fluorocarbon, Gut, Nylon, Present, Wire};
    let points = || vec((number((-24.0, 160.0)), number((0.0, 1_000_000.0))), 0..=12);
    let zone =
        [text(), text(), text(), text()].prop_map(|[lowest, highest, thinnest, thickest]| {
            ZoneSpec { lowest, highest, thinnest, thickest }
        });
    let kind = [text(), text(), text()].prop_map(|[kind, lowest, highest]| KindSpec {
        kind,
        lowest,
        highest,
    });
    let wants = select(vec![WantsSpec::Stiffness, WantsSpec::Tension]);
    let family = select(vec![Present, Nylon, Gut, Fluorocarbon, Wire]);
    (wants, points(), points(), vec(zone, 0..5), vec(kind, 0..5), family, text())
        .prop_map(|(wants, points_n_per_mm, points_n, zones, kinds, family, wound_from)| {
            TargetsSpec {
                wants,
                points_n_per_mm,
                points_n,
                zones,
                kinds,
                family,
                wound_from,
                ..TargetsSpec::default()
            }
        })
        .boxed()
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "counted, below 10,000"
)]
fn whole(number: f64) -> u32 {
    number.round() as u32
}

/// What is drawn of every plain number of a design: where it lies in its range, and whether it is drawn at all.
fn settings() -> BoxedStrategy<Vec<(Setting, Option<f64>)>> {
    let one = |setting: Setting| {
        let row = setting.row();
        let drawn = number(row.held)
            .prop_map(move |number| if row.whole { number.round() } else { number });
        let drawn = if row.optional { of(drawn).boxed() } else { drawn.prop_map(Some).boxed() };
        drawn.prop_map(move |number| (setting, number))
    };
    let all: Vec<_> = Setting::ALL.into_iter().map(|setting| of(one(setting))).collect();
    all.prop_map(|drawn| drawn.into_iter().flatten().collect()).boxed()
}

fn choices() -> BoxedStrategy<(TemperamentSpec, Units, MechanismKind, SparesSpec)> {
    use TemperamentSpec::{
        Equal, JustOnC, Pythagorean, QuarterCommaMeantone, Vallotti, WerckmeisterThree, YoungTwo,
    };
    let temperament =
        [Equal, Pythagorean, QuarterCommaMeantone, WerckmeisterThree, Vallotti, YoungTwo, JustOnC];
    let units = (
        select(vec![LengthUnit::Mm, LengthUnit::Inch]),
        select(vec![GaugeUnit::Mm, GaugeUnit::Thou]),
        select(vec![ForceUnit::Newton, ForceUnit::Kgf, ForceUnit::Lbf]),
    );
    let units = units.prop_map(|(length, gauge, force)| Units { length, gauge, force });
    let spares = prop_oneof![
        Just(SparesSpec::None),
        Just(SparesSpec::OneOfEachItem),
        Just(SparesSpec::OneOfEachString),
        number((0.0, 1_000.0)).prop_map(SparesSpec::Percent),
    ];
    (select(temperament.to_vec()), units, mechanism(), spares).boxed()
}

/// A design without versions; of twenty texts of a string so many are `odd`.
fn one(odd: u32, most_strings: usize) -> BoxedStrategy<Design> {
    let texts = [text(), text(), text(), text(), text(), text(), text(), text()];
    let strings = vec(string(odd), 0..=most_strings);
    let stock = vec(item(5), 0..6);
    (texts, choices(), settings(), geometry(), targets(), materials(), strings, stock)
        .prop_map(|(texts, choices, settings, geometry, targets, materials, strings, stock)| {
            let [title, maker, client, serial, date, open_tuning, remarks, order_remarks] = texts;
            let mut design = Design {
                title,
                maker,
                client,
                serial,
                date,
                open_tuning,
                remarks,
                geometry,
                targets,
                materials,
                strings,
                stock,
                ..Design::default()
            };
            for (setting, number) in settings {
                setting.put(&mut design, number);
            }
            let (temperament, units, mechanism, spares) = choices;
            (design.pitch.temperament, design.units) = (temperament, units);
            (design.mechanism.kind, design.order.spares) = (mechanism, spares);
            design.order.remarks = order_remarks;
            tidy(&mut design);
            embed(&mut design);
            design
        })
        .boxed()
}

/// A design as it can stand in the page: tidied, with the materials that its strings use, and within the limits.
pub fn design(odd: u32, most_strings: usize) -> BoxedStrategy<Design> {
    let version = (text(), text(), one(odd, most_strings / 4))
        .prop_map(|(name, date, design)| VersionSpec { name, date, design: Arc::new(design) });
    let versions = prop_oneof![2 => Just(Vec::new()), 1 => vec(version, 1..=3)];
    (one(odd, most_strings), versions)
        .prop_map(|(mut design, versions)| {
            design.versions = versions;
            tidy(&mut design);
            design
        })
        .prop_filter("within the limits", |design| check(design).is_ok())
        .boxed()
}
