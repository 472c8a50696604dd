//! Pull and feel.

use super::Words;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;
use crate::design::figures::row;
use crate::engine::analysis::Unknown;
use crate::engine::figure::Figure;

const CORE_ALONE: &str =
    "The core carries the whole tension. Windings carry none and add no stiffness.";
const SMALL: &str =
    "The ends are fixed, and the string is pulled aside by little against either side.";

pub(super) const TENSION: Words = Words {
    title: row(Figure::Tension).title,
    lead: "The pull that brings the string to its pitch. Soundboard, neck and pins must bear the sum of all of \
           them.",
    formula: &[
        ("", "T = 4 L² f² μ − π² E I/L²"),
        (
            "where the modulus rises with the stress",
            "T = (4 L² f² μ − π² E₀ I/L²)/(1 + π² k I/(A L²))",
        ),
    ],
    symbols: &[
        is::PULL,
        is::LENGTH,
        is::PITCH,
        is::MASS,
        is::MODULUS,
        is::MODULUS_SLACK,
        is::MODULUS_RISE,
        is::INERTIA,
        is::AREA,
    ],
    assumptions: &[
        "The first partial of the stiff string is at pitch, not that of a string without stiffness.",
        "The string turns freely at soundboard and bridge pin. If it were clamped there, a stiff string would \
         sound a little higher.",
        "The tension is the same along the whole string: friction at the bridge pin is left out.",
        CORE_ALONE,
        "Bare core at the ends of a wound string is left out of the pull: with 6 and 4.5 % of the length bare, the \
         string sounds up to 1.6 cents above its note at this pull.",
        "The mass per metre is that of the string before it is stretched. For nylon and gut that is 1 to 4 % \
         more than at pitch, and so is the pull.",
    ],
    range: &[
        "Lengths of {lengths}, pitches of {pitches}.",
        "The gauge counts twice: a hundredth of a millimetre in 0.5 mm is 4 % of the pull. The page about \
         tolerance says how far each string may be off.",
    ],
    sources: &[from::WAVES, from::FLETCHER],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};

pub(super) const STRESS: Words = Words {
    title: row(Figure::Stress).title,
    lead: "The pull over the section of the core. For a plain string it follows from length, pitch and material \
           alone: a thicker gauge does not ease it.",
    formula: &[("", "σ = T/A"), ("", "A = π d²/4")],
    symbols: &[is::STRESS, is::PULL, is::AREA, is::CORE],
    assumptions: &[
        CORE_ALONE,
        "The tension is spread evenly over the section. Bends at pins, knots and levers add to it and are left out.",
        "The section is that of the string before it is stretched.",
    ],
    range: &[
        "As exact as the tension and the diameter of the core. A hexagonal core has more section than the round \
         one taken here.",
    ],
    sources: &[from::GEOMETRY, from::STRESS_LAW],
    missing: &[from::NO_PULL, &[Unknown::Core]],
    worked: Worked::Wound,
};

pub(super) const BREAKING_LOAD: Words = Words {
    title: row(Figure::BreakingLoad).title,
    lead: "The least pull at which a new string of this core is to be expected to break. An estimate and no \
           promise: knots, nicks, sharp edges and age lower it.",
    formula: &[("", "F = R A"), ("", "A = π d²/4")],
    symbols: &[is::BREAKS, is::STRENGTH, is::AREA, is::CORE],
    assumptions: &[
        CORE_ALONE,
        "The strength is the least that the source gives for new material at this diameter. Where a table goes by \
         diameter, there are straight lines between its rows.",
        "For a weighed string the breaking load that was typed is taken as it stands.",
    ],
    range: &[
        "Only for diameters that the source has: outside its table there is no figure.",
        "Some strengths are only known from memory, as the page of the materials says. Those may be \
         far off.",
        "Loads of {loads}.",
    ],
    sources: &[from::MATERIALS, from::GEOMETRY],
    missing: &[&[Unknown::MakeUp, Unknown::Strength, Unknown::OutOfReach]],
    worked: Worked::Steel,
};

pub(super) const LOAD_SHARE: Words = Words {
    title: row(Figure::LoadShare).title,
    lead: "How much of its breaking load a string works at. Near 100 % it breaks; very low, it sounds dull and \
           false.",
    formula: &[("in per cent", "100 T/F")],
    symbols: &[is::PULL, is::BREAKS],
    assumptions: &[
        CORE_ALONE,
        "Findings begin above {working} % and below {slack} % unless you set other limits.",
    ],
    range: &[
        "As uncertain as the breaking load. As pull and breaking load grow with the same diameter, a gauge that \
         is a little off hardly moves it.",
    ],
    sources: &[from::MATERIALS, from::PRACTICE],
    missing: &[from::NO_PULL, &[Unknown::Strength]],
    worked: Worked::Steel,
};

pub(super) const SEMITONES_TO_BREAK: Words = Words {
    title: row(Figure::SemitonesToBreak).title,
    lead: "How far the pitch could be raised before the string breaks. Below nothing, it breaks before it is in \
           tune.",
    formula: &[("", "6 log₂(F/T)")],
    symbols: &[is::BREAKS, is::PULL],
    assumptions: &[
        "The mass per metre stays the same while the string is tuned up. In truth it falls a little as the \
         string is stretched.",
        "Stiffness is left out: the tension grows with the square of the pitch.",
        CORE_ALONE,
    ],
    range: &[
        "As uncertain as the breaking load: a tenth of the load is nine tenths of a semitone.",
    ],
    sources: &[from::WAVES, from::MATERIALS],
    missing: &[from::NO_PULL, &[Unknown::Strength]],
    worked: Worked::Steel,
};

pub(super) const PLUCK_STIFFNESS: Words = Words {
    title: row(Figure::PluckStiffness).title,
    lead: "The force that the finger meets for each millimetre. It is the measure of feel: where it runs evenly \
           over the compass, the harp feels even.",
    formula: &[("", "T/(L β (1 − β))")],
    symbols: &[is::PULL, is::LENGTH, is::PLUCK_AT],
    assumptions: &[
        "The finger plucks at the same share of the length on every string: {at} % unless you set another.",
        SMALL,
        "The stretch by the pluck itself and the stiffness of the string are left out. The pluck force has the \
         stretch.",
    ],
    range: &[
        "Plucks from {places} of the length.",
        "Within a few per cent for the usual pull of some millimetres, except on very short strings.",
    ],
    sources: &[from::STATICS],
    missing: &[from::NO_PULL],
    worked: Worked::Nylon,
};

pub(super) const PLUCK_FORCE: Words = Words {
    title: row(Figure::PluckForce).title,
    lead: "The force with which the finger holds the string just before it lets go, the stretching of the string \
           included.",
    formula: &[("", "T κ h + (E A/(2 L)) κ² h³"), ("", "κ = 1/(L β (1 − β))")],
    symbols: &[is::PULL, is::SLOPES, is::ASIDE, is::MODULUS, is::AREA, is::LENGTH, is::PLUCK_AT],
    assumptions: &[
        "The string is pulled {pluck} mm aside unless you set another way, but never more than {most_pluck} % of its length: \
         short strings are plucked by less. Common practice, no source.",
        "All the stretch stays within the vibrating length: the string does not slip over the bridge pin.",
        SMALL,
        CORE_ALONE,
    ],
    range: &[
        "Ways of {plucks}. The second part is right while the string is pulled aside by no more than a tenth of \
              the shorter side.",
    ],
    sources: &[from::STRETCHING, from::STATICS],
    missing: &[from::NO_PULL, &[Unknown::Core, Unknown::Modulus]],
    worked: Worked::Nylon,
};
