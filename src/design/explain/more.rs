//! Tolerance, materials, findings, pitch: topics that are no figure of a string.

use super::Words;
use super::example::Worked;
use super::sources as from;
use super::symbols as is;

pub(super) const TOLERANCE: Words = Words {
    title: "Tolerance",
    lead: "How far a figure may be off, because no string is quite as thick, as heavy, as long, as well tuned or as \
           warm as the design says.",
    formula: &[("", "U = √(Σ (u² + v²)/2)"), ("everything at its worst at once", "W = Σ m")],
    symbols: &[is::SPREAD, is::MOVED_UP, is::MOVED_DOWN, is::MOVED_MOST, is::WORST],
    assumptions: &[
        "Each thing is moved by its tolerance to either side, all else staying as it is, and the whole string is \
         worked out again. How far the figure goes is what it does.",
        "The effects are combined as the root of the sum of squares, as they are independent.",
        "Unless you set others, lengths are off by {off_length} mm, the pitch by {off_pitch} cents, the warmth since \
         tuning by {off_kelvins} °C and the push of a lever by {off_push} mm. Where a material states none, its diameter is off by {off_diameter} mm and its \
         density by {off_density} %.",
    ],
    range: &[
        "Poor where a figure steps, as a table of strengths does, and where a tolerance is a good part of the thing \
         itself.",
        "It tells nothing of what is wrong with a formula, a modulus or a strength.",
        "The strings of a harp are not independent of each other: a material that is heavier is so in all of them.",
        "For a question of safety take the worst case.",
    ],
    sources: &[from::UNCERTAINTY, from::PRACTICE],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const MATERIALS: Words = Words {
    title: "Materials",
    lead: "What is known of each material, and how well. What stands from memory must be verified before you rely \
           on it.",
    formula: &[("modulus under a stress", "E = E₀ + k σ"), ("breaking load", "F = R A")],
    symbols: &[
        is::MODULUS,
        is::MODULUS_SLACK,
        is::MODULUS_RISE,
        is::STRESS,
        is::BREAKS,
        is::STRENGTH,
        is::AREA,
    ],
    assumptions: &[
        "Nylon, fluorocarbon and gut have three moduli: in vibration (milliseconds), over minutes (levers, the tuning \
         pin) and over weeks, creep included (the take-up). Metals have one for all.",
        "The strength is the least that a source gives for new material.",
        "What you enter yourself is marked so and stays with the design.",
    ],
    range: &[
        "Batches differ. A string that is weighed and measured is worth more than any table.",
        "Nylon settles at about 97 % of the density that it has before it is first stretched.",
    ],
    sources: &[from::PACES, from::STRESS_LAW],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const FINDINGS: Words = Words {
    title: "Findings and limits",
    lead: "What the findings look for, and at what limits. The limits are yours: set them under Instrument.",
    formula: &[
        ("it breaks", "100 T/F > 100"),
        ("inharmonicity that listeners begin to hear", "ln Bₕ = {slope} ln f − {offset}"),
    ],
    symbols: &[is::PULL, is::BREAKS, is::AUDIBLE, is::PITCH],
    assumptions: &[
        "Grave: the tension is over the breaking load.",
        "Overworked: over {working} % of the breaking load, or over {creeping} % where the core is gut or plastic, \
         which gives way under a lasting load sooner than in a short test. Slack: under {slack} %, where a string sounds dull and \
         false. Little pull: under {least} N.",
        "Inharmonic: partial 8 is more than {sharp} cents sharp, and the inharmonicity is more than {times} times what \
         listeners begin to hear at that pitch. Both must hold.",
        "Thin core: the gauge is more than {thin} times the core.",
        "Feel: a pluck stiffness outside {soft} to {hard} N/mm. Jump: it changes by more than {jump} % where the make-up \
         changes.",
        "Tight: a lever or first disc nearer than {least_raise} mm to its bridge pin. Turns: bringing a string to pitch \
         takes more turns of its pin than the cut length reckons with; only the string that takes most is named.",
        "Out of line: a string is shorter than the next higher one; or it is thinner than the higher one of the same \
         make-up, or sounds higher. Of the two the one is named that was just changed; else the one without which the \
         strings run on, or that lies farther from the line of its neighbours.",
    ],
    range: &[
        "A finding is a hint and no verdict. That there is none does not say that the harp holds: soundboard, neck and \
         joints are not looked at.",
        "The threshold of hearing is an average of listeners in a laboratory. With real strings and their natural \
         attack most people hear less.",
    ],
    sources: &[from::AUDIBLE, from::GUITARS, from::RULE_OF_FEEL, from::PRACTICE],
    missing: &[],
    worked: Worked::Nylon,
};

pub(super) const PITCH: Words = Words {
    title: "Notes and temperaments",
    lead: "Notes have their scientific names: middle C is C4, and the number changes between B and C. Harpists \
           count octaves from the top, each from E down to F.",
    formula: &[
        ("pitch", "f = fₐ · 2^(C/1200)"),
        ("the harpist's octave of C, D and E", "H = 8 − O"),
        ("and of F, G, A and B", "H = 7 − O"),
    ],
    symbols: &[is::PITCH, is::REFERENCE, is::CENTS, is::HARP_OCTAVE, is::OCTAVE],
    assumptions: &[
        "A4 is {a4} Hz unless you set another pitch ({a4s}).",
        "In Pythagorean and meantone a flat and a sharp between the same two notes differ. The other temperaments have \
         twelve pitches to the octave.",
        "Octaves are pure: they are not stretched for the inharmonicity of the strings.",
    ],
    range: &[
        "Cents are given to a tenth; a tuning device holds half a hertz at A4, which is 2 cents.",
    ],
    sources: &[from::STANDARD_PITCH, from::TEMPERAMENTS, from::ORGAN, from::HARP_OCTAVES],
    missing: &[],
    worked: Worked::Nylon,
};
