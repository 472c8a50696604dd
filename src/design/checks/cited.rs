//! Sources that are named as they were published, in every language.

use crate::words::Words;

pub(super) const BEER: Words =
    Words::plain("F. P. Beer and E. R. Johnston, Mechanics of Materials");
pub(super) const BURDEN: Words =
    Words::plain("R. L. Burden and J. D. Faires, Numerical Analysis, section 3.5");
pub(super) const CHAIGNE: Words =
    Words::plain("A. Chaigne and A. Askenfelt, J. Acoust. Soc. Am. 95 (1994) 1112");
pub(super) const HIBBELER: Words = Words::plain("R. C. Hibbeler, Engineering Mechanics: Statics");
pub(super) const JARVELAINEN: Words = Words::plain(
    "H. Järveläinen, V. Välimäki and M. Karjalainen, Acoustics Research Letters Online 2 (2001) 79",
);
pub(super) const KAW: Words =
    Words::plain("A. K. Kaw, Mechanics of Composite Materials, 2nd ed., example 4.2");
pub(super) const KEMPER: Words = Words::plain("R. Kemper, Structural Analysis of Folk Harps, 2005");
pub(super) const KNIGHT: Words = Words::plain(
    "R. Knight, Physics for Scientists and Engineers, 3rd ed., chapter 21, problem 17",
);
pub(super) const LYNCH_AIRD: Words =
    Words::plain("N. Lynch-Aird and J. Woodhouse, Materials 10 (2017) 497, equation 1");
pub(super) const MERSENNE: Words = Words::plain("M. Mersenne, Harmonie universelle, 1636");
pub(super) const ROARK: Words = Words::plain("R. J. Roark, Formulas for Stress and Strain");
pub(super) const ROSSING: Words = Words::plain(
    "T. D. Rossing (ed.), The Science of String Instruments (2010), chapter 21, equation 21.1",
);
