//! The built-in materials against the tables they were taken from, and units against the table of factors.

use stringloft::engine::units::{Force, Length, Stress};

use super::{assert_prints, assert_within, built_in_material};

/// A material with the least and the greatest density (kg/m³) and modulus at no stress (GPa) that sources print.
type Printed = (&'static str, [f64; 2], Option<[f64; 2]>);

/// Only figures that were read. The sources, in the order of the rows: EN 10270-1 by a spring maker, and a
/// database of materials for the least; ASTM B103, alloy sheet; a copper-alloy wire mill's sheet; M. Norton and
/// D. Karczub, appendix 4A, and an encyclopaedia's table; a precious-metal supplier's data; an encyclopaedia's
/// article; a silk spinner's sheet; W. E. Morton and J. W. S. Hearle, table 13.2 (10.6 N/tex at 1390 kg/m³), and the
/// Handbook of Properties of Textile and Technical Fibres, table 1.1; a gut string maker's note and the 2019
/// paper on choosing strings. The loss factors are those of Norton and Karczub, table 6.1.
const PRINTED: [Printed; 9] = [
    ("steel", [7800.0, 7850.0], Some([190.0, 206.0])),
    ("phosphor bronze", [8860.0, 8860.0], Some([110.0, 110.0])),
    ("yellow brass", [8530.0, 8530.0], Some([110.0, 112.0])),
    ("copper", [8900.0, 8920.0], Some([122.0, 122.0])),
    ("silver", [10_360.0, 10_360.0], None),
    ("fluorocarbon", [1780.0, 1780.0], None),
    ("silk", [1340.0, 1342.0], Some([5.0, 5.0])),
    ("polyester", [1380.0, 1390.0], Some([14.7, 15.0])),
    ("gut", [1300.0, 1320.0], None),
];

pub fn built_in_materials_have_what_their_sources_print() {
    for (name, [light, heavy], moduli) in PRINTED {
        let material = built_in_material(name);
        assert_within(material.density.value.to_kg_per_m3(), light..=heavy, name);
        if let Some([soft, stiff]) = moduli {
            let modulus = material.modulus.expect("built in").value;
            assert_within(modulus.base.to_gpa(), soft..=stiff, name);
        }
    }
    for (name, printed) in EXPANSION {
        let expansion = built_in_material(name).expansion_per_k.expect("built in").value;
        assert_prints(expansion * 1e6, printed, 0.1, format_args!("{name}, expansion"));
    }
    for (name, least, most) in [("steel", 1e-4, 6e-4), ("copper", 2e-3, 2e-3)] {
        let loss = built_in_material(name).loss_factor.expect("built in").value;
        assert_within(loss, least..=most, format_args!("{name}, loss factor"));
    }
}

/// Expansion in millionths for each kelvin.
///
/// Source: a database of materials and T. D. Rossing (ed.), *The Science of String Instruments* (2010), page 379;
/// ASTM B103, alloy sheet; a copper-alloy wire mill's sheet; a precious-metal supplier's data. All read.
const EXPANSION: [(&str, f64); 4] =
    [("steel", 12.0), ("phosphor bronze", 17.8), ("yellow brass", 19.9), ("silver", 19.0)];

/// Strength in `MPa` of a built-in material that has one for every diameter, and the range that its source prints.
///
/// Source: the sheets of [`PRINTED`], read; polyester from 0.47 and 0.56 N/tex at 1390 kg/m³, worked out; gut from
/// products of length and pitch of 240 to 280 m/s, worked out.
pub fn built_in_strengths_lie_in_the_range_that_their_sources_print() {
    for (name, weak, strong) in [
        ("yellow brass", 830.0, 890.0),
        ("copper", 220.0, 220.0),
        ("silver", 552.0, 552.0),
        ("silk", 500.0, 600.0),
        ("polyester", 653.0, 778.0),
        ("gut", 299.0, 408.0),
    ] {
        let strength = built_in_material(name).strength.expect("built in").value;
        let at = strength.at(Length::from_mm(0.5)).expect("the same for every diameter");
        assert_within(at.to_mpa(), weak..=strong, name);
    }
}

/// Source: NIST SP 811 (2008), appendix B.8, factors printed to seven digits; from memory.
pub fn units_have_their_printed_factors() {
    assert_prints(Force::from_lbf(1.0).to_n(), 4.448_222, 1e-6, "pound-force, N");
    assert_prints(Force::from_kgf(1.0).to_n(), 9.806_65, 1e-6, "kilogram-force, N");
    assert_prints(Stress::from_ksi(1.0).to_mpa(), 6.894_757, 1e-6, "ksi, MPa");
    assert_prints(Length::from_inch(1.0).to_mm(), 25.4, 1e-6, "inch, mm");
    assert_prints(Length::from_thou(1.0).to_mm(), 0.0254, 1e-6, "mil, mm");
    assert_prints(Length::from_foot(1.0).to_m(), 0.3048, 1e-6, "foot, m");
}
