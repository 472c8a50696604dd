//! A design that uses every field of the document.

use std::sync::Arc;

use stringloft::design::document::{
    Allowances, BarSpec, Bare, BarsSpec, BoardSpec, ClassSpec, Design, DrillsSpec, DrivesSpec,
    Fact, FamilySpec, FastenerSpec, ForceUnit, GapsSpec, GaugeUnit, GeometrySpec, JointSpec,
    JointsSpec, KindSpec, LayerSpec, LengthUnit, LimitsSpec, MakeUpSpec, MaterialSpec,
    MeasuredSpec, MechanismKind, MechanismSpec, MetalSpec, ModulusSpec, NeckLayerSpec,
    NeckMetalSpec, NeckSpec, OrderSpec, OwnWoodSpec, PillarSpec, PitchSpec, SectionSpec,
    ServiceSpec, SizesSpec, SoundboxSpec, SpacingSpec, SparesSpec, StandingSpec, StockItem,
    StrengthSpec, StringSpec, TargetsSpec, TemperamentSpec, ToleranceSpec, TolerancesSpec, Units,
    VersionSpec, WantsSpec, WeighedSpec, WeightsSpec, ZoneSpec,
};
use stringloft::design::library::embed;
use stringloft::design::link::built_in_at;

fn text(text: &str) -> String {
    text.to_owned()
}

/// Nylon as it was when those designs were saved: its strength did not fall with the diameter yet.
fn flat_nylon() -> MaterialSpec {
    built_in_at(2).expect("an older list")[0].clone()
}

/// A design that uses every field, as `tests/designs/` holds it in every version.
pub fn every_field() -> Design {
    let plain = |material: &str, diameter: &str| MakeUpSpec {
        material: text(material),
        diameter: text(diameter),
        ..MakeUpSpec::default()
    };
    let string = |note: &str, length: &str, make_up| StringSpec {
        note: text(note),
        length: text(length),
        make_up,
        ..StringSpec::default()
    };
    let wound = MakeUpSpec {
        layers: vec![
            LayerSpec {
                material: text("silk"),
                size: text("0.10"),
                width: String::new(),
                packing_percent: 90.0,
            },
            LayerSpec {
                material: text("bronze"),
                size: text("0.15"),
                width: text("0.6"),
                packing_percent: 100.0,
            },
        ],
        bare: Bare { board: text("12"), pin: text("1/2 in") },
        ..plain("steel", "0.45")
    };
    let weighed = WeighedSpec { g_per_m: text("6.75"), gauge: text("1.10"), breaks_n: text("480") };
    let strings = vec![
        StringSpec {
            order_code: text("N32"),
            stock_key: 4_711,
            ..string("C5", "12 in", plain("nylon", "32 thou"))
        },
        StringSpec {
            mechanism: Some(MechanismKind::DoubleDisc),
            locked: true,
            ..string("443.2 Hz", "31,2 cm", plain("oak gall", "0.5"))
        },
        string("A3", "612", wound),
        string("G3", "700", MakeUpSpec { weighed: Some(weighed), ..MakeUpSpec::default() }),
        string("not a note", "?", MakeUpSpec::default()),
    ];
    let mut design = Design {
        title: text("Every field"),
        maker: text("Quillbeck Harpworks"),
        client: text("Ines Marrow"),
        serial: text("QH-T-1"),
        date: text("1 April 2026"),
        open_tuning: text("C major"),
        remarks: text("Two\nlines."),
        pitch: PitchSpec { a4_hz: 415.0, temperament: TemperamentSpec::WerckmeisterThree },
        units: Units { length: LengthUnit::Inch, gauge: GaugeUnit::Thou, force: ForceUnit::Lbf },
        pluck_percent: 33.0,
        pluck_mm: 3.5,
        damping_partial: 12,
        mechanism: MechanismSpec { kind: MechanismKind::Lever, push_mm: 1.25 },
        frame_expansion_e6_per_k: 4.0,
        geometry: shape(),
        tolerances: TolerancesSpec {
            length_mm: 0.5,
            pitch_cents: 3.0,
            temperature_k: 8.0,
            push_mm: 0.2,
            diameter_mm: 0.02,
            density_percent: 2.0,
        },
        limits: LimitsSpec {
            working_share_percent: 70.0,
            soft_share_percent: 60.0,
            slack_share_percent: 15.0,
            least_tension_n: 25.0,
            least_stiffness_n_per_mm: 0.8,
            most_stiffness_n_per_mm: 1.7,
            partial_8_cents: 20.0,
            jump_percent: 25.0,
            least_raise_mm: 4.5,
        },
        allowances: Allowances {
            after_length_mm: 50.0,
            turns: 3.5,
            pin_mm: 6.0,
            knot_mm: 100.0,
            tail_mm: 110.0,
        },
        order: OrderSpec {
            spares: SparesSpec::Percent(10.0),
            from_string: 1,
            to_string: 2,
            remarks: text("Two\ncoils."),
        },
        targets: wanted(),
        materials: vec![own_wire(), flat_nylon()],
        strings,
        stock: vec![StockItem {
            key: 4_711,
            make_up: "nylon 32 thou".into(),
            code: text("N32"),
            supplier: text("Reedmarsh Strings"),
            single: true,
            bundle: 12,
            pack_mm: Some(1_500.0),
            price: Some(2.35),
            currency: text("EUR"),
            sold_out: true,
            lowest: text("C4"),
            highest: text("G7"),
            remark: text("cut long"),
        }],
        versions: Vec::new(),
    };
    embed(&mut design);
    let mut before = Design {
        title: text("Every field, before"),
        pluck_percent: 30.0,
        strings: design.strings[..1].to_vec(),
        materials: vec![flat_nylon()],
        ..Design::default()
    };
    embed(&mut before);
    let (name, date) = (text("first"), text("1 March 2026"));
    design.versions = vec![VersionSpec { name, date, design: Arc::new(before) }];
    design
}

fn wanted() -> TargetsSpec {
    TargetsSpec {
        wants: WantsSpec::Tension,
        points_n_per_mm: vec![(36.0, 0.7), (60.5, 1.1), (96.0, 0.9)],
        points_n: vec![(36.0, 180.0), (96.0, 45.0)],
        weights: WeightsSpec {
            target: 10.0,
            even_stiffness: 5.0,
            even_tension: 1.0,
            changes: 2.0,
            items: 4.0,
            price: 6.0,
        },
        least_share_percent: Some(20.0),
        most_share_percent: Some(65.0),
        zones: vec![ZoneSpec {
            lowest: text("C3"),
            highest: text("B3"),
            thinnest: text("0.6"),
            thickest: text("50 thou"),
        }],
        kinds: vec![
            KindSpec { kind: text("nylon"), lowest: text("C4"), highest: text("G6") },
            KindSpec { kind: text("steel + silk + bronze"), ..KindSpec::default() },
        ],
        most_changes: Some(2),
        most_total_n: Some(4_000.0),
        most_items: Some(12),
        family: FamilySpec::Gut,
        wound_from: text("E3"),
        thickest_plain_mm: Some(1.6),
        most_jump_percent: Some(20.0),
    }
}

fn shape() -> GeometrySpec {
    GeometrySpec {
        board_angle_deg: 33.0,
        lean_deg: -2.0,
        spacing: SpacingSpec {
            measured: MeasuredSpec::AlongBoard,
            gaps: GapsSpec::ZonesMm(vec![(1, 28.0), (4, 26.5)]),
        },
        start_mm: 4.0,
        pin_sideways_mm: -6.0,
        strings_from_neck_mm: 31.0,
        drives: DrivesSpec::NeckCurve,
        nodes_mm: vec![(0.0, 720.0), (30.5, 600.0), (60.0, 420.0)],
        neck: NeckSpec {
            below_pins_mm: 14.0,
            above_pins_mm: 17.0,
            thickness_mm: 37.2,
            wood: text("birch-plywood"),
            plies: 25,
            grain_percent: 4.0,
            sections: vec![SectionSpec { at_percent: 20.0, thickness_mm: 39.0, depth_mm: 71.0 }],
            layers: vec![
                NeckLayerSpec { thickness_mm: 12.5, angle_deg: 90.0, wood: text("own-1") },
                NeckLayerSpec { thickness_mm: 24.0, ..NeckLayerSpec::default() },
            ],
            plates: NeckMetalSpec {
                thickness_mm: 1.5,
                height_mm: 44.0,
                one_side: true,
                metal: MetalSpec::Aluminium,
                from_percent: 10.0,
                to_percent: 90.0,
                screw_mm: 4.0,
                screw_gap_mm: 55.0,
                screw_depth_mm: 26.0,
            },
        },
        pillar: PillarSpec {
            gap_mm: 28.0,
            width_mm: 48.0,
            depth_mm: 44.0,
            wood: text("black-walnut"),
            beside_mm: 6.0,
        },
        board: BoardSpec {
            below_mm: 90.0,
            above_mm: 50.0,
            bass_width_mm: 310.0,
            treble_width_mm: 100.0,
            bass_thickness_mm: 4.5,
            treble_thickness_mm: 3.0,
            wood: text("european-spruce"),
            plies: 5,
            rib_width_mm: 28.0,
            rib_height_mm: 9.0,
            strip_width_mm: 18.0,
            strip_height_mm: 3.5,
            rib_wood: text("white-oak"),
        },
        drills: DrillsSpec {
            bridge_pin_mm: 3.5,
            string_clearance_mm: 0.5,
            eyelet_mm: 4.5,
            mechanism_mm: 2.5,
            tuning_depth_mm: 38.0,
            bridge_depth_mm: 22.0,
        },
        service: ServiceSpec::Covered,
        joints: JointsSpec {
            shoulder: JointSpec {
                face_width_mm: 41.0,
                face_height_mm: 82.0,
                tenon_mm: 14.5,
                tenon_depth_mm: 55.0,
                fasteners: FastenerSpec::Dowels,
                count: 4,
                diameter_mm: 10.5,
                depth_mm: 45.0,
                apart_mm: 22.0,
                across_mm: 24.0,
                plate_mm: 2.5,
                plate_width_mm: 26.0,
                metal: MetalSpec::Brass,
            },
            head: JointSpec { fasteners: FastenerSpec::Bolts, ..JointSpec::default() },
            foot: JointSpec { fasteners: FastenerSpec::Screws, ..JointSpec::default() },
        },
        soundbox: SoundboxSpec {
            bass_depth_mm: 190.0,
            treble_depth_mm: 88.0,
            side_mm: 5.5,
            side_wood: text("black-walnut"),
            back_mm: 4.2,
            back_wood: text("sitka-spruce"),
            liner_width_mm: 14.0,
            liner_height_mm: 15.0,
            brace_gap_mm: 210.0,
            holes: 4,
            hole_length_mm: 120.0,
            hole_width_mm: 52.0,
            slotted: true,
        },
        woods: vec![OwnWoodSpec {
            key: text("own-1"),
            name: text("Pear from the garden"),
            softwood: true,
            by_class: true,
            length_mm: 600.0,
            width_mm: 40.0,
            height_mm: 20.0,
            weight_g: 320.0,
            span_mm: 500.0,
            load_kg: 5.0,
            falls_mm: 3.9,
            tone_hz: 231.0,
        }],
        bars: BarsSpec {
            cross: BarSpec {
                count: 5,
                width_mm: 7.0,
                height_mm: 11.0,
                at_percent: 12.0,
                to_percent: 88.0,
            },
            along: BarSpec {
                count: 1,
                width_mm: 9.0,
                height_mm: 10.0,
                at_percent: 45.0,
                to_percent: 46.0,
            },
            side_percent: 80.0,
            wood: text("european-spruce"),
        },
        sizes: SizesSpec::Proposed,
        parts: text("base=22; kerf=2.8; price sugar-maple=1900; thick=0 8 6.5 4, 100 3.5 3 2.5"),
    }
}

fn own_wire() -> MaterialSpec {
    fn own<T>(value: T, source: &str) -> Fact<T> {
        Fact { value, source: source.to_owned(), standing: StandingSpec::Own }
    }
    let steps = StrengthSpec::StepsMmMpa(vec![(0.5, 900.0), (1.0, 850.0)]);
    MaterialSpec {
        key: text("oak gall"),
        name: text("Own wire"),
        class: ClassSpec::Natural,
        density_kg_per_m3: own(8_000.0, "weighed"),
        density_tolerance_percent: Some(own(2.0, "several reels")),
        diameter_tolerance: Some(own(ToleranceSpec::StepsMm(vec![(0.4, 0.01)]), "micrometer")),
        modulus: Some(own(ModulusSpec { base_gpa: 120.0, per_stress: 0.5 }, "rung")),
        intermediate_modulus: Some(own(ModulusSpec { base_gpa: 100.0, per_stress: 0.0 }, "turned")),
        slow_modulus: Some(own(ModulusSpec { base_gpa: 80.0, per_stress: 1.0 }, "hung")),
        strength: Some(own(steps, "broken")),
        expansion_e6_per_k: Some(own(15.0, "warmed")),
        loss_factor: Some(own(0.01, "listened")),
    }
}

/// The design as version 1 could hold it. The figures that built-in materials got later come with it.
pub fn without_later_fields(design: &Design) -> Design {
    let Design { pluck_mm, damping_partial, mechanism, .. } = Design::default();
    let Design { frame_expansion_e6_per_k, geometry, tolerances, targets, .. } = Design::default();
    let mut old = Design {
        pluck_mm,
        damping_partial,
        mechanism,
        frame_expansion_e6_per_k,
        geometry,
        tolerances,
        order: OrderSpec::default(),
        stock: Vec::new(),
        versions: Vec::new(),
        targets,
        ..design.clone()
    };
    let usual = Design::default().limits;
    (old.limits.soft_share_percent, old.limits.least_raise_mm) =
        (usual.soft_share_percent, usual.least_raise_mm);
    for string in &mut old.strings {
        string.mechanism = None;
        string.locked = false;
        string.stock_key = 0;
    }
    for material in old.materials.iter_mut().filter(|material| material.key == "oak gall") {
        *material = MaterialSpec {
            class: ClassSpec::default(),
            density_tolerance_percent: None,
            diameter_tolerance: None,
            intermediate_modulus: None,
            slow_modulus: None,
            expansion_e6_per_k: None,
            loss_factor: None,
            ..material.clone()
        };
    }
    old
}
