//! Gauges that are usual in the trade: what the list to start from holds, and what new harps are strung with. One set
//! for both, so that a new harp is strung with what that list offers. Common practice, no source: from memory, but for
//! what is said beside them.

/// Gauges of plain strings in millimetres, thinnest first. Nylon goes in steps of thousandths of an inch: .016 .018 .020
/// .022 .025 .028 .030 .032 .036 .040 .045 .050 .055 .060 .065. Gut begins with the 0.40 mm of a gut string maker's
/// note. Yellow brass runs to 1.2 mm in the bass of replicas (Chadwick, Stringing a Gaelic harp) and to 1.5 mm on a
/// museum harp (Chadwick, Hollybrook Harp Survey, 2020).
pub(super) const PLAIN: [(&str, &[f64]); 7] = [
    (
        "nylon",
        &[0.41, 0.46, 0.51, 0.56, 0.64, 0.71, 0.76, 0.81, 0.91, 1.02, 1.14, 1.27, 1.40, 1.52, 1.65],
    ),
    (
        "gut",
        &[
            0.40, 0.43, 0.46, 0.50, 0.54, 0.58, 0.62, 0.66, 0.70, 0.74, 0.78, 0.82, 0.86, 0.90,
            0.94, 0.98, 1.02, 1.06, 1.10, 1.14, 1.18, 1.22, 1.26, 1.30, 1.36, 1.42, 1.48, 1.54,
            1.60, 1.68, 1.76, 1.84, 1.92, 2.00, 2.10, 2.20, 2.30, 2.40, 2.50, 2.60, 2.70,
        ],
    ),
    (
        "fluorocarbon",
        &[
            0.33, 0.37, 0.40, 0.43, 0.47, 0.52, 0.57, 0.62, 0.66, 0.70, 0.74, 0.78, 0.81, 0.85,
            0.91, 0.97, 1.04, 1.12, 1.20, 1.30, 1.40, 1.50, 1.60,
        ],
    ),
    (
        "steel",
        &[
            0.20, 0.225, 0.25, 0.275, 0.30, 0.325, 0.35, 0.375, 0.40, 0.425, 0.45, 0.475, 0.50,
            0.525, 0.55, 0.575, 0.60, 0.65, 0.70, 0.75, 0.80,
        ],
    ),
    ("bronze", &WIRES_MM),
    ("yellow brass", &WIRES_MM),
    ("red brass", &[0.40, 0.46, 0.50, 0.56, 0.60, 0.64, 0.70, 0.80, 0.90, 1.00, 1.10, 1.20]),
];

const WIRES_MM: [f64; 25] = [
    0.30, 0.33, 0.35, 0.38, 0.40, 0.43, 0.45, 0.48, 0.50, 0.53, 0.56, 0.60, 0.65, 0.70, 0.75, 0.80,
    0.85, 0.90, 0.95, 1.00, 1.10, 1.20, 1.30, 1.40, 1.50,
];

/// The thickest that a wound string is against its core.
const MOST_GAUGE_RATIO: f64 = 3.4;

/// Wound strings of one make: each wrap on each core that is not too thin for it.
#[derive(Debug, PartialEq)]
pub(super) struct Winding {
    pub core: &'static str,
    cores_mm: &'static [f64],
    /// Of the silk below the wrap; 0 for none.
    pub silk_mm: f64,
    pub wrap: &'static str,
    wraps_mm: &'static [f64],
}

pub(super) const NYLON_ON_NYLON: Winding = Winding {
    core: "nylon",
    cores_mm: &[0.81, 0.91, 1.02, 1.14],
    silk_mm: 0.0,
    wrap: "nylon",
    wraps_mm: &[0.20, 0.25, 0.30, 0.35, 0.40, 0.45, 0.51, 0.56],
};
/// Bronze over silk on steel, for lever harps.
pub(super) const LIGHT_WIRES: Winding = Winding {
    core: "steel",
    cores_mm: &[0.40, 0.45, 0.50, 0.55, 0.60, 0.65, 0.70, 0.75, 0.80],
    silk_mm: 0.10,
    wrap: "bronze",
    wraps_mm: &[0.10, 0.14, 0.18, 0.22, 0.25, 0.30, 0.35, 0.40, 0.50, 0.60, 0.70, 0.80],
};
/// Heavier ones for pedal harps, with more silk.
pub(super) const HEAVY_WIRES: Winding = Winding {
    cores_mm: &[0.65, 0.70, 0.75, 0.80, 0.85, 0.90],
    silk_mm: 0.15,
    wraps_mm: &[0.16, 0.20, 0.25, 0.32, 0.40, 0.50, 0.65, 0.80],
    ..LIGHT_WIRES
};

impl Winding {
    /// Core and wrap of each string, in mm.
    pub fn pairs(&self) -> impl Iterator<Item = (f64, f64)> + '_ {
        let pairs = self.cores_mm.iter().flat_map(|core| self.wraps_mm.iter().map(|w| (*core, *w)));
        pairs.filter(|(core, wrap)| {
            core + 2.0 * (self.silk_mm + wrap) <= MOST_GAUGE_RATIO * core + 1e-9
        })
    }
}

/// The gauges of plain strings of a material.
pub(super) fn plain(material: &str) -> &'static [f64] {
    PLAIN.iter().find(|(key, _)| *key == material).map_or(&[], |(_, gauges)| gauges)
}
