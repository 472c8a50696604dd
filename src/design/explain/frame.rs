//! What the frame bears, and what it is made of.

use super::Words;
use super::example::Worked;
use super::fill::with;
use super::hand::hand;
use super::sheet::Table;
use super::sources as from;
use super::symbols::Symbol;
use crate::design::letters::capital;
use crate::engine::material::Sourced;
use crate::engine::structure::duration::LoadTime;
use crate::engine::structure::wood::{SCATTER, Wood, WoodKind, divisors, woods};
use crate::engine::units::Stress;

macro_rules! symbols {
    ($($name:ident = $sign:literal, $meaning:literal, $unit:literal, $value:expr;)+) => {
        $(const $name: Symbol = Symbol::new($sign, $meaning, $unit, $value);)+
    };
}

symbols! {
    AXIAL = "N", "force along the neck at the cut, a pull above 0", "N", |_| Some(hand()?.station.axial_n);
    ACROSS = "X", "part of a force beyond the cut to the right", "N", |_| None;
    UP = "Y", "part of a force beyond the cut upward", "N", |_| None;
    COSINE = "p", "direction of the neck at the cut, to the right", "", |_| Some(hand()?.way.0);
    SINE = "q", "direction of the neck at the cut, upward", "", |_| Some(hand()?.way.1);
    SHEAR = "V", "shear at the cut", "N", |_| Some(hand()?.station.shear_n);
    MOMENT = "M", "bending moment at the cut", "N·m", |_| Some(hand()?.station.moment_n_m);
    AT_X = "x", "place of a force, to the right of where the lowest string meets the board", "mm", |_| None;
    CUT_X = "x₀", "place of the cut, to the right", "mm", |_| Some(hand()?.station.at.x.to_mm());
    AT_Y = "y", "place of a force, upward from there", "mm", |_| None;
    CUT_Y = "y₀", "place of the cut, upward", "mm", |_| Some(hand()?.station.at.y.to_mm());
    TORQUE = "T", "torque about the middle line", "N·m", |_| Some(hand()?.station.torque_n_m);
    OFFSET = "e", "distance of the strings from the middle of the neck", "mm", |_| Some(hand()?.offset.to_mm());
    SIDEWAYS = "M′", "bending moment out of the plane of the strings", "N·m", |_| Some(hand()?.station.sideways_n_m);
    STRESS = "σ", "greatest stress along the grain", "MPa", |_| Some(hand()?.uses[0].stress.to_mpa());
    SHEAR_STRESS = "τ", "greatest shear stress", "MPa", |_| Some(hand()?.uses[1].stress.to_mpa());
    BREADTH = "b", "thickness of the neck", "mm", |_| Some(hand()?.station.section.breadth().to_mm());
    DEPTH = "h", "depth of the neck", "mm", |_| Some(hand()?.station.section.depth().to_mm());
    TORSION = "c₁", "Saint-Venant's number for the stress of a twisted rectangle", "", |_| {
        Some(hand()?.station.section.torsion_numbers().c1)
    };
    GIVES_WAY = "Pₑ", "push at which a pillar gives way sideways", "N", |_| Some(hand()?.pillar.3.to_n());
    MODULUS = "E", "modulus for buckling", "GPa", |_| Some(hand()?.pillar.2.to_gpa());
    INERTIA = "I", "second moment of area over the thinner side of the pillar", "mm⁴", |_| Some(1e12 * hand()?.inertia_m4);
    PILLAR_LENGTH = "l", "length of the pillar", "mm", |_| Some(hand()?.pillar.1.to_mm());
    BOARD_STRESS = "σ₁", "stress in the board with edges as firm as they may be", "MPa", |_| Some(hand()?.board.firm.stress.to_mpa());
    BOARD_MOMENT = "m", "bending moment across the board for each metre along it", "N·m/m", |_| {
        Some(hand()?.board.firm.moment_n_m_per_m)
    };
    BOARD_PULL = "n", "pull across the risen board for each metre along it", "N/m", |_| {
        Some(hand()?.board.firm.pull_n_per_m)
    };
    THICKNESS = "t", "thickness of the board", "mm", |_| Some(hand()?.board.thickness.to_mm());

    ALLOWED = "R", "stress that may be allowed for good", "MPa", |_| maple(LoadTime::Permanent);
    STRENGTH = "r", "mean strength of small clear pieces", "MPa", |_| Some(sugar_maple()?.bending?.value.to_mpa());
    SPREAD = "v", "coefficient of variation of that strength", "", |_| Some(SCATTER.bending);
    TIME = "d", "factor for the time of the load", "", |_| Some(LoadTime::Permanent.factor().value);
    DIVISOR = "n", "divisor of the standard, safety included", "", |_| Some(divisors(WoodKind::Hardwood).bending);
    SHARE = "S", "share of the short-time strength that is left, in per cent", "", |_| None;
    SECONDS = "z", "time under load in seconds", "", |_| None;
}

fn sugar_maple() -> Option<Wood> {
    woods().into_iter().find(|wood| wood.key == "sugar-maple")
}

fn maple(time: LoadTime) -> Option<f64> {
    Some(sugar_maple()?.allowable(time).bending?.to_mpa())
}

pub(super) const LOADS: Words = Words {
    title: "Loads on the frame",
    lead: "What the strings do to neck, pillar, joints and soundboard, and how far each part is used up. The example is \
           one cut through the neck of the sample of 36 strings, without its holes. It can be followed with a calculator; the last digit may \
           differ, as the program rounds nothing on the way. How the limits come about stands under Woods and plywood.",
    formula: &[
        ("forces beyond a cut of the neck, along it", "N = Σ (X p + Y q)"),
        ("across it", "V = Σ (Y p − X q)"),
        ("bending", "M = Σ [(x − x₀) Y − (y − y₀) X]"),
        ("torque, as the strings hang beside the neck", "T = Σ e (X q − Y p)"),
        ("bending sideways", "M′ = Σ e (X p + Y q)"),
        (
            "stress along the grain, of the sizes without their signs",
            "σ = 6 M/(b h²) + 6 M′/(h b²) + N/(b h)",
        ),
        (
            "shear stress, of the sizes too, h being the longer side",
            "τ = 1.5 V/(b h) + T/(c₁ h b²)",
        ),
        ("pillar", "Pₑ = π² E I/l²"),
        ("board, whose moment and pull are those of a plate", "σ₁ = 6 m/t² + n/t"),
    ],
    symbols: &[
        AXIAL,
        ACROSS,
        UP,
        COSINE,
        SINE,
        SHEAR,
        MOMENT,
        AT_X,
        CUT_X,
        AT_Y,
        CUT_Y,
        TORQUE,
        OFFSET,
        SIDEWAYS,
        STRESS,
        SHEAR_STRESS,
        BREADTH,
        DEPTH,
        TORSION,
        GIVES_WAY,
        MODULUS,
        INERTIA,
        PILLAR_LENGTH,
        BOARD_STRESS,
        BOARD_MOMENT,
        BOARD_PULL,
        THICKNESS,
    ],
    assumptions: &[
        "Both ends of what the joints may be are told. At one no joint gives: neck and pillar are beams in space with bending \
         both ways, shear and twist, and the soundbox is a tube of its sizes; without sizes it either does not give or has \
         usual proportions. At the other the joints are springs that give twice as much as their sizes say. Where these do \
         not say it, the pillar only pushes along itself, and neck and shoulder meet in a pin that alone holds the neck \
         against twist: that can be worked out by statics, as in the example.",
        "Each pull acts at its bridge pin and goes into the middle line at the nearest place. Parts with a pull are used \
         up by the sum of both stresses over the limit of bending; with a push by the square of the one and the other.",
        "In a bend of the neck the stresses of a curved bar count. Where the bend is opened, the wood is pulled across its \
         grain. A bend is taken no tighter than three quarters of the depth.",
        "Shear and twist are added and held against the limit of shear. Standards allow more in twist.",
        "Holes for pins take their part of the neck's section: bending acts on what they leave of W, force, shear and twist on \
         what they leave of the area, and what pulls across the grain goes between the holes of a row. Holes within 2.5 \
         diameters of a cut count in it, as in EN 1995-1-1, 5.2 (from memory). Stress at the rim of a hole is left out.",
        "A pillar that only pushes does so beside its middle. If no joint gives, it is bent both ways and twisted besides; \
         what the push adds to that bending is taken from its buckling over the weaker side.",
        "Of a joint with sizes the faces bear the push, half of them at least. What is left of the bending, and all sliding \
         and twist, is borne by one thing alone, the one with the lowest share: a tenon by the glue of its cheeks and its own \
         section; dowels, bolts or screws as a group, by the least of the ways in which they give, in end grain; plates \
         as a couple. Glue on end grain counts for a tenth of the wood. Splitting is looked at besides.",
        "A joint without sizes is looked at as faces of wood. Where bending would open an edge of it, it is not judged, unless \
         it is over a limit otherwise.",
        "The soundbox is a tube of thin walls: board, sides, back and four liners bend as one, each with its own modulus. A \
         closed one twists by Bredt's formula; between sound holes the back holds as a ladder, and an open back leaves \
         strips. Its sides may bow between liners and braces, on whose edges they turn freely.",
        "The board is a plate that is stiff along its grain, from edge to edge, and soft across it, as wide and thick as you \
         say, with string rib, strip and bars glued on, each with the board under it. It is cut into 96 patches on each side; on \
         each the rise is a cubic both ways, and so is the stress function of its pull as it rises (after von Kármán). It is also \
         pushed along as far as the soundbox shortens it, and bows where that push is too great.",
        "Liners and sides hold the edges of the board. At least a side turns freely at the back and bends over its whole depth, and \
         the edge is drawn in freely; at most it cannot turn at the back, and braces hold the liner against twist and against being \
         drawn in. Without sizes of the soundbox the edges neither turn nor move at the one end and turn freely at the other.",
        "The glue of an edge is taken as stiff and as wide as liner and side; what pulls it open is held against the tension across the \
         grain of the weaker wood, as glue is stronger than wood (from memory). What runs along the board rolls its wood, so that its \
         glue bears twice the tension across the grain at most; what runs across it shears the wood along its grain.",
        "With part of the strings up, every string that is up is at pitch.",
    ],
    range: &[
        "Good for comparing designs and for finding the weakest place. It is no proof that a frame is safe: no knots, \
         glue lines or blows are in it.",
        "Statics is exact to many digits; strengths of wood scatter by 15 to 25 %, of which the limits take account.",
        "How far the board creeps is for the humidity that you set. The shear of string rib and bars themselves and their twist are left \
         out, which is the careful way; so are the ends of both and the holes of the strings.",
        "Within some depths of a joint the stresses are others than those of a slender beam.",
    ],
    sources: &[
        from::FRAME_STATICS,
        from::TORSION,
        from::COLUMNS,
        from::JOINTS,
        from::TUBES,
        from::PLATES,
        from::CREEP,
        from::DAMP,
        from::PRACTICE,
    ],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const WOODS: Words = Words {
    title: "Woods and plywood",
    lead: "What is known of each wood, and how much of it may be allowed for good. The example is sugar maple in bending.",
    formula: &[
        ("stress that may be allowed", "R = r (1 − 1.645 v) d/n"),
        ("what time leaves of the strength", "S = 18.3 + 108.4 z^(−0.0464)"),
    ],
    symbols: &[ALLOWED, STRENGTH, SPREAD, TIME, DIVISOR, SHARE, SECONDS],
    assumptions: &[
        "Strengths are means of small pieces without a flaw at 12 % moisture. What may be allowed starts from the value \
         that 95 of 100 pieces pass.",
        "A lasting load counts with a factor of 0.9 on what a standard allows for ten years. Compression across the grain is \
         not taken down for time.",
        "Grain that slants takes strength away by a table that ends at a rise of 1 in 5.",
        "Birch plywood is worked out ply by ply: those that run along the part carry. Of its characteristic strength 60 % \
         counts under a lasting load, over a divisor of 1.2.",
        "A neck that is glued up of layers is a laminate: its moduli are those of all layers together, each turned to its angle. \
         The layers that run within 45° of a load bear it alone, and the first of them that reaches its limit ends it, by the \
         root of the sum of squares of its stresses along, across and in shear over their limits.",
        "Metal beside the neck bends as one with it: E A and E I are sums. Screws slip, γ = 1/(1 + π² E A s/(K l²)), along the \
         neck and in bending sideways. Two thirds of the yield or proof stress are allowed in it, with wood that has crept.",
        "A wood of your own has the density and the modulus of its bar. Its strengths are those of the highest class of EN 338 \
         that it reaches in both, 60 % of them over 1.3 allowed for good, or none.",
    ],
    range: &[
        "Planks differ. Weigh yours: light, wide-ringed or brash wood is weaker than the table.",
        "Strengths are those of dry rooms and of a roof; in the open five sixths of them are allowed, by the factors of \
         EN 1995-1-1, table 3.1 (from memory).",
        "Where no strength is tabulated the part is not judged in that way; nothing is made up.",
    ],
    sources: &[
        from::WOOD_TABLE,
        from::WOOD_LIMITS,
        from::TIME,
        from::PLYWOOD,
        from::LAMINATES,
        from::METALS,
        from::BRASS,
        from::OWN_WOOD,
        from::DAMP,
    ],
    missing: &[],
    worked: Worked::Nylon,
};

/// Every figure of the built-in woods: its source, how well it is known, and what of it may be allowed for good.
pub(super) fn table() -> Table {
    let heads = ["Wood", "Figure", "Value", "Source", "How well known"].map(str::to_owned).into();
    let groups = woods().iter().map(|wood| (capital(wood.name), rows(wood))).collect();
    Table { caption: "The woods that come with the program", heads, groups }
}

fn rows(wood: &Wood) -> Vec<Vec<String>> {
    let allowed = wood.allowable(LoadTime::Permanent);
    let strengths = [
        ("Bending", &wood.bending, allowed.bending),
        ("Compression along the grain", &wood.compression_along, allowed.compression_along),
        ("Compression across the grain", &wood.compression_across, allowed.compression_across),
        ("Shear", &wood.shear, allowed.shear),
        ("Tension across the grain", &wood.tension_across, allowed.tension_across),
    ];
    let mut rows = Vec::new();
    if let Some(density) = &wood.density {
        let text = with(density.value.to_kg_per_m3(), "kg/m³");
        rows.push(row("Density", text, density));
    }
    if let Some(modulus) = &wood.modulus {
        rows.push(row("Modulus in bending", with(modulus.value.to_gpa(), "GPa"), modulus));
    }
    for (what, strength, allowed) in strengths {
        let Some(strength) = strength else { continue };
        let of = allowed
            .map_or_else(String::new, |allowed| format!(", allowed for good {}", mpa(allowed)));
        rows.push(row(what, format!("{}{of}", mpa(strength.value)), strength));
    }
    rows
}

fn mpa(stress: Stress) -> String {
    with(stress.to_mpa(), "MPa")
}

fn row<T>(what: &str, value: String, sourced: &Sourced<T>) -> Vec<String> {
    let known = super::standing(sourced.standing).to_owned();
    vec![what.to_owned(), value, sourced.source.clone(), known]
}
