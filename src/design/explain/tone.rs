//! Tone: partials, impedance, damping, glide.

use super::Words;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use crate::design::figures::row;
use crate::engine::analysis::Unknown;
use crate::engine::figure::Figure;

const PINNED: &str = "The string turns freely at both ends. Clamped ends shift all partials alike and change no ratio.";
const NO_WINDING: &str = "Windings add no stiffness, only mass. In truth they add a little.";
const BARE_RANGE: &str = "The law of the bare ends is for ends that are short against the wave: above a tenth of a \
                          wavelength it gives too much, by a quarter for partial 12 with a fiftieth of the length bare.";

pub(super) const INHARMONICITY: Words = Words {
    title: row(Figure::Inharmonicity).title,
    lead: "How much the stiffness of the string spreads its partials. A little warms the tone; a lot makes it \
           sound false and hard to tune.",
    formula: &[
        ("by stiffness", "B = π² E I/(T L²)"),
        ("and for each bare end", "(2 π²/3) (1 − r) (b/L)³"),
    ],
    symbols: &[
        is::SHARPNESS,
        is::MODULUS,
        is::INERTIA,
        is::PULL,
        is::LENGTH,
        is::CORE_SHARE,
        is::BARE,
    ],
    assumptions: &[
        PINNED,
        NO_WINDING,
        "The core is round, and its modulus is that of vibration at the stress of the string.",
        "Where a wound string has bare core at its ends, the ends are lighter and the upper partials go sharp, \
         as if the string were stiffer.",
    ],
    range: &[
        BARE_RANGE,
        "Measured wound strings are more inharmonic than the law for uniform strings says.",
        "As uncertain as the modulus: a law for nylon that is known at second hand may be off by a third.",
    ],
    sources: &[from::FLETCHER, from::YOUNG, from::STEPPED, from::KEMP],
    missing: &[from::NO_PULL, &[Unknown::Modulus]],
    worked: Worked::Wound,
};

pub(super) const PARTIAL_8: Words = Words {
    title: row(Figure::Partial8).title,
    lead: "How sharp the eighth partial is, three octaves above the note. It says what inharmonicity does to the \
           ear.",
    formula: &[
        ("by stiffness", "600 log₂((1 + 64 B)/(1 + B))"),
        ("and by bare ends", "1200 log₂(f₈/(8 f₁))"),
    ],
    symbols: &[is::SHARPNESS_OF_CORE, is::EIGHTH, is::FIRST],
    assumptions: &[
        PINNED,
        NO_WINDING,
        "It is set against eight times the first partial, which is what was tuned.",
        "The bare ends are taken exactly: the partials of a flexible string in three pieces, bare core, winding, \
         bare core. The cents of both parts are added.",
    ],
    range: &[
        "Right for the string as it is given. The adding of the two parts leaves out how they work on each other, \
         which is small where each is some tens of cents.",
        "A finding begins above {sharp} cents, if the difference can be heard as well.",
    ],
    sources: &[from::FLETCHER, from::STEPPED],
    missing: &[from::NO_PULL, &[Unknown::Modulus]],
    worked: Worked::Wound,
};

pub(super) const PARTIALS: Words = Words {
    title: "Partials",
    lead: "A stiff string sounds not quite whole multiples of its note: each partial is further off than \
           the one below.",
    formula: &[
        ("frequency of a partial", "fₙ = n f₀ √(1 + B n²)"),
        ("of the string without stiffness", "f₀ = √(T/μ)/(2 L)"),
        ("what is tuned", "f = f₀ √(1 + B)"),
        ("how sharp, in cents", "600 log₂((1 + B n²)/(1 + B))"),
    ],
    symbols: &[
        is::OF_PARTIAL,
        is::PARTIAL_ANY,
        is::FLEXIBLE,
        is::SHARPNESS_OF_CORE,
        is::PULL,
        is::MASS,
        is::LENGTH,
        is::PITCH,
    ],
    assumptions: &[
        PINNED,
        NO_WINDING,
        "Bare ends come on top: their part is that of a flexible string in three pieces, solved exactly for each \
         partial.",
    ],
    range: &[
        "Right while the string is long against its thickness, which every harp string is.",
        "Soundboard and neck move too and pull single partials up or down. That is left out.",
    ],
    sources: &[from::FLETCHER, from::YOUNG, from::STEPPED, from::KEMP],
    missing: &[from::NO_PULL, &[Unknown::Modulus]],
    worked: Worked::Wound,
};

pub(super) const IMPEDANCE: Words = Words {
    title: row(Figure::Impedance).title,
    lead: "How hard the string is to move at its end, and so how strongly it can drive the soundboard.",
    formula: &[("", "√(T μ)")],
    symbols: &[is::PULL, is::MASS],
    assumptions: &[
        "The string is flexible and uniform. Bare ends are left out.",
        "What the soundboard does with it is not told by this figure.",
    ],
    range: &["As exact as the tension and the mass per metre."],
    sources: &[from::PHYSICS],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};

pub(super) const DAMPING: Words = Words {
    title: row(Figure::Damping).title,
    lead: "How fast a high partial dies away by the bending of the string itself. The higher, the duller the \
           string.",
    formula: &[("", "η = ηₑ B n²/(1 + B n²)")],
    symbols: &[is::DAMPING, is::SHARPNESS_OF_CORE, is::PARTIAL, is::LOSS],
    assumptions: &[
        "It is given for partial {partial} unless you set another (up to {most_partial}). That choice is ours and \
         has no source.",
        "Only bending counts. Losses to the air, into soundboard and neck, and by friction in a winding are left \
         out, so this is the least that the partial loses.",
        "The inharmonicity is that of the stiffness alone.",
        "Wound strings get no figure: friction within the winding outweighs the bending of the core.",
    ],
    range: &[
        "Right for every partial, as far as bending goes.",
        "Nylon strings that were found good showed partials up to a loss factor of about 0.001, and 0.002 was taken as \
         the limit of a good tone. Take that as an order of magnitude.",
        "The loss factors of gut and most metals are not known here, and then there is no figure.",
    ],
    sources: &[from::BENDING_LAW, from::BENDING],
    missing: &[
        from::NO_PULL,
        &[Unknown::Core, Unknown::WoundDamping, Unknown::Modulus, Unknown::LossFactor],
    ],
    worked: Worked::Nylon,
};

pub(super) const GLIDE: Words = Words {
    title: row(Figure::Glide).title,
    lead: "How sharp the string begins after a pluck, before it settles. A slack string that is plucked hard \
           audibly falls in pitch.",
    formula: &[
        ("", "600 log₂(1 + q E A κ h²/(4 L T))"),
        ("", "κ = 1/(L β (1 − β))"),
        ("", "q = 1 + sin²(π β)/(π² β (1 − β))"),
    ],
    symbols: &[
        is::IN_STEP,
        is::MODULUS,
        is::AREA,
        is::SLOPES,
        is::ASIDE,
        is::LENGTH,
        is::PULL,
        is::PLUCK_AT,
    ],
    assumptions: &[
        "The string is pulled {pluck} mm aside unless you set another way, but never more than {most_pluck} % of its length: \
         short strings are plucked by less. Common practice, no source.",
        "While it swings, half of the stretch of the pluck is left on average. The pull is greatest whenever the \
         string is farthest out, which tells on the first partial by the factor q.",
        "It swings in one plane, as it does after a pluck. A string that has turned to circling sounds lower.",
        "All the stretch stays within the vibrating length: the string does not slip over the bridge pin.",
    ],
    range: &[
        "An estimate of the very beginning. The rise falls as the sound dies, so what the ear takes for the pitch \
         lies below it.",
        "Ways of {plucks}.",
    ],
    sources: &[from::STRETCHING, from::HARDENING, from::ENERGY],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::Modulus]],
    worked: Worked::Nylon,
};
