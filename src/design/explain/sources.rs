//! Where the formulas come from, each with how well it is known, and the reasons that go with a pull.

use super::Source;
use crate::engine::analysis::Unknown;
use crate::engine::material::Standing::{Computed, FromMemory, SecondHand, Seen};

pub(super) const GEOMETRY: Source = ("Geometry, worked out for this project", Computed);
pub(super) const PARTS_OF_A_FORCE: Source =
    ("Statics: the parts of a force along two directions, worked out for this project", Computed);
pub(super) const STATICS: Source =
    ("Statics of a string pulled aside at one point, worked out for this project", Computed);
pub(super) const HOOKE: Source =
    ("Hooke's law and geometry, worked out for this project", Computed);
pub(super) const WAVES: Source =
    ("OpenStax, University Physics 1, section 16.3: waves on a string run at √(T/μ)", Seen);
pub(super) const FLETCHER: Source = (
    "H. Fletcher, Normal vibration frequencies of a stiff piano string, J. Acoust. Soc. Am. 36 (1964) 203; \
     N. H. Fletcher and T. D. Rossing, The Physics of Musical Instruments, 2nd ed., section 2.18: both as the \
     documentation of a library cites them",
    SecondHand,
);
pub(super) const YOUNG: Source = (
    "R. W. Young, J. Acoust. Soc. Am. 24 (1952), abstract: the same law for steel, measured on pianos",
    Seen,
);
pub(super) const PHYSICS: Source = (
    "N. H. Fletcher and T. D. Rossing, The Physics of Musical Instruments, 2nd ed., chapter 2",
    FromMemory,
);
pub(super) const STRESS_LAW: Source = (
    "N. Lynch-Aird and J. Woodhouse, Mechanical properties of nylon harp strings, Materials 10 (2017) 497, \
     equation 1",
    Seen,
);
pub(super) const PACES: Source = (
    "N. Lynch-Aird and J. Woodhouse, Materials 11 (2018) 2160, abstract: moduli over weeks, minutes and \
     milliseconds; for polymers warmth moves pitch both ways",
    Seen,
);
pub(super) const BENDING: Source = (
    "J. Woodhouse, Euphonics, section 7.2.2, equation 1: the same where B n² is small, and the limit of a good tone",
    Seen,
);
pub(super) const BENDING_LAW: Source = (
    "J. Woodhouse, Plucked guitar transients, Acta Acustica united with Acustica 90 (2004) 945, equation 8, as \
     quoted second-hand",
    SecondHand,
);
pub(super) const HARDENING: Source = (
    "A spring that hardens, averaged over a period (G. Duffing, 1918), worked out for this project",
    FromMemory,
);
pub(super) const ENERGY: Source = (
    "J. Ripplinger, thesis, Brigham Young University, 2009, abstract: the rise goes with the energy",
    Seen,
);
pub(super) const STRETCHING: Source = (
    "J. Woodhouse, Euphonics, section 7.4.1, equations 1 to 4: how a plucked string is stretched",
    Seen,
);
pub(super) const STEPPED: Source =
    ("The ideal string in three pieces, worked out for this project and solved exactly", Computed);
pub(super) const KEMP: Source = (
    "J. A. Kemp, SN Applied Sciences 2 (2020) 636: the step at the end of a winding may be treated so for design",
    Seen,
);
pub(super) const AUDIBLE: Source = (
    "H. Järveläinen, V. Välimäki and M. Karjalainen, Acoustics Research Letters Online 2 (2001) 79",
    FromMemory,
);
pub(super) const GUITARS: Source = (
    "H. Järveläinen and M. Karjalainen, Importance of inharmonicity in the acoustic guitar: real strings lie \
     up to 58 times over that threshold, and average listeners only just notice",
    Seen,
);
pub(super) const WARMTH: Source = (
    "T. Rossing (ed.), The Science of String Instruments, 2010, chapter 21, equation 21.1, page 379",
    Seen,
);
pub(super) const PRACTICE: Source = ("Common practice, no source", FromMemory);
pub(super) const RULE_OF_FEEL: Source = (
    "A rule of builders, 1 to 2.5 lbf/in for tension over length (a harp makers' mailing list, 2005), taken to \
     a pluck at 40 % of the length and rounded: the band of pluck stiffness",
    Seen,
);
pub(super) const MATERIALS: Source =
    ("The strength of each material has a source of its own: see the page of the materials", Seen);
pub(super) const STANDARD_PITCH: Source = (
    "ISO 16:1975, as quoted on a piano technicians' list: A4 is 440 Hz, held within 0.5 Hz",
    SecondHand,
);
pub(super) const TEMPERAMENTS: Source =
    ("The definitions of the temperaments, worked out for this project", Computed);
pub(super) const ORGAN: Source = (
    "The tables of an open-source organ program agree for Pythagorean, meantone and Werckmeister III",
    Seen,
);
pub(super) const HARP_OCTAVES: Source = ("An article on how harp strings are numbered, 2024", Seen);
pub(super) const SIGNS: Source =
    ("Counting of the signs of keys, worked out for this project", Computed);
pub(super) const STEPWISE: Source =
    ("R. Bellman, Dynamic Programming, 1957: the principle of optimality", FromMemory);
pub(super) const CONSTRAINED: Source = (
    "G. Y. Handler and I. Zang, A dual algorithm for the constrained shortest path problem, Networks 10 (1980) 293",
    FromMemory,
);
pub(super) const GRADUATION: Source =
    ("E. T. Whittaker and R. Henderson: graduation by differences of the third order", FromMemory);
pub(super) const LEAST_SQUARES: Source = (
    "Å. Björck, Numerical Methods for Least Squares Problems, 1996: bounds by active sets",
    FromMemory,
);
pub(super) const PEDALS: Source = (
    "An encyclopaedia's article on the pedal harp: all flats open, naturals with the upper disc, sharps with both",
    Seen,
);
pub(super) const UNCERTAINTY: Source = (
    "JCGM 100:2008, Guide to the expression of uncertainty in measurement, section 5.1",
    FromMemory,
);

pub(super) const FRAME_STATICS: Source = (
    "Statics of a neck on a pin and a pillar that only pushes, worked out for this project",
    Computed,
);
pub(super) const TORSION: Source = (
    "Saint-Venant's torsion of a rectangle: S. Timoshenko and J. N. Goodier, Theory of Elasticity",
    FromMemory,
);
pub(super) const COLUMNS: Source = (
    "National Design Specification for Wood Construction, 3.7 and 3.9: columns, and bending with a push or a pull",
    FromMemory,
);
pub(super) const JOINTS: Source = (
    "EN 1995-1-1, 8.1 to 8.7, as quoted in public programs and a book on timber design: fasteners across and along their \
     axis; slip, splitting and rolling shear from memory",
    SecondHand,
);
pub(super) const TUBES: Source = (
    "R. Bredt, 1896, for closed tubes; S. Timoshenko and J. M. Gere, Theory of Elastic Stability, chapter 9, and E. Seydel, \
     1933, for walls that bow",
    FromMemory,
);
pub(super) const PLATES: Source = (
    "S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., 1959: boards that are stiffer one way",
    FromMemory,
);
pub(super) const CREEP: Source =
    ("EN 1995-1-1, table 3.2, as quoted: how far wood creeps", SecondHand);
pub(super) const CREEP_POWER: Source = (
    "D. Tong, S. A. Brown, D. Corr and G. Cusatis, Holzforschung, 2020, abstract: creep grows with a power of time; the range of \
     the power from memory",
    FromMemory,
);
pub(super) const SWELLING: Source = (
    "Wood Handbook, USDA Forest Products Laboratory, table 13-5: how woods swell, in part",
    FromMemory,
);
pub(super) const SPACE_FRAMES: Source = (
    "J. S. Przemieniecki, Theory of Matrix Structural Analysis, chapter 5: bars in space; Maxwell and Betti for what one load \
     moves at another",
    FromMemory,
);
pub(super) const LAMINATES: Source = (
    "R. M. Jones, Mechanics of Composite Materials: classical laminate theory; C. B. Norris, 1950, for stresses that act together",
    FromMemory,
);
pub(super) const METALS: Source = (
    "EN 1993-1-1 and EN 1999-1-1 for steel S235 and aluminium EN AW-6082 T6; J. M. Gere, Mechanics of Materials, 6.2, for bars of \
     two materials; EN 1995-1-1, 7.1 and annex B, for screws that slip",
    FromMemory,
);
pub(super) const BRASS: Source = (
    "Copper Development Association, publication 120, table 16: proof stress of brass sheet from 125 MPa soft to 550 MPa hard",
    Seen,
);
pub(super) const OWN_WOOD: Source = (
    "EN 338:2016 and EN 384: strength classes; E. Goens, 1931, and R. F. S. Hearmon, 1958: tones of free bars with shear; \
     ASTM E1876 for the same without the grain of wood",
    FromMemory,
);
pub(super) const DAMP: Source = ("EN 1995-1-1, table 3.1 for damp air, 5.2 for holes", FromMemory);
pub(super) const WOOD_TABLE: Source = (
    "Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, chapter 5, part of it in copies: the table says \
     which figures were read",
    FromMemory,
);
pub(super) const WOOD_LIMITS: Source = (
    "ASTM D245 for the divisors, Wood Handbook table 5-6 for the scatter, National Design Specification table 2.3.2 for \
     the time",
    FromMemory,
);
pub(super) const TIME: Source =
    ("L. Wood, 1951, as quoted in Forests 12 (2021) 1148: strength under lasting load", SecondHand);
pub(super) const PLYWOOD: Source = (
    "Handbook of Finnish Plywood, Finnish Forest Industries Federation, 2002; EN 1995-1-1 for time and divisor",
    FromMemory,
);

/// Why there may be no pull.
pub(super) const NO_PULL: &[Unknown] = &[
    Unknown::Pitch,
    Unknown::Length,
    Unknown::OffCurve,
    Unknown::MakeUp,
    Unknown::BareEnds,
    Unknown::TooStiff,
    Unknown::OutOfReach,
];
