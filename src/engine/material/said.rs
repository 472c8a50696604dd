//! Names and sources of the built-in materials in the language of now. Documents keep them in English.

use super::built_in::BESIDES;
use crate::words::{Words, known as say};

/// The short name of each built-in material. In English it is the key, in another language one of its other names.
const SHORT: [Words; 12] = [
    say::NYLON,
    say::GUT,
    say::FLUOROCARBON,
    say::STEEL,
    say::BRONZE,
    say::YELLOW_BRASS,
    say::RED_BRASS,
    say::COPPER,
    say::SILVER,
    say::IRON,
    say::SILK,
    say::POLYESTER,
];

/// The short name of a built-in material by its key.
pub fn name_of_key(key: &str) -> Option<Words> {
    SHORT.into_iter().find(|words| words.english().eq_ignore_ascii_case(key))
}

/// The key of a built-in material by its short name in the language of now.
pub fn key_said(text: &str) -> Option<&'static str> {
    let found = SHORT.iter().find(|words| words.said().eq_ignore_ascii_case(text.trim()));
    found.map(|words| words.english())
}

/// Every one of them.
const ALL: [Words; 57] = [
    say::NYLON_NAMED,
    say::GUT_NAMED,
    say::FLUOROCARBON_NAMED,
    say::STEEL_NAMED,
    say::BRONZE_NAMED,
    say::YELLOW_BRASS_NAMED,
    say::RED_BRASS_NAMED,
    say::COPPER_NAMED,
    say::SILVER_NAMED,
    say::IRON_NAMED,
    say::SILK_NAMED,
    say::POLYESTER_NAMED,
    say::A228,
    say::B159,
    say::EN_SM,
    say::POLYMER_MODULUS,
    say::NORTON,
    say::AS_FAST,
    say::GUT_ONE_MODULUS,
    say::MICROMETER,
    say::WOODHOUSE_2004,
    say::SPECIFIC_STRENGTH,
    say::NYLON_SLOW,
    say::SETTLED,
    say::GUT_MAKER,
    say::GUT_MODULUS,
    say::GUT_SPREAD,
    say::PVDF_ARTICLE,
    say::AS_NYLON,
    say::STIFFER_THAN_NYLON,
    say::STEEL_DENSITY,
    say::STEEL_LOSS,
    say::STEEL_SPREAD,
    say::B103,
    say::C26000,
    say::C26000_MODULUS,
    say::C26000_STRENGTH,
    say::TO_BE_FOUND,
    say::RED_BRASS_STRENGTH,
    say::C23000,
    say::STERLING,
    say::SILVER_MODULUS,
    say::STERLING_HARD,
    say::IRON_DENSITY,
    say::IRON_MODULUS,
    say::IRON_STRENGTH,
    say::IRON_EXPANSION,
    say::SILK_SHEET,
    say::SILK_STRENGTH,
    say::POLYESTER_MODULUS,
    say::POLYESTER_STRENGTH,
    say::NYLON_FALLS,
    say::GUT_FALLS,
    say::FLUOROCARBON_FALLS,
    say::NYLON_FLAT,
    say::GUT_FLAT,
    say::BY_HAND,
];

/// A source as the list had it up to revision 3.
pub fn source_before(text: &str) -> String {
    let cited = [say::POLYMER_MODULUS, say::WOODHOUSE_2004, say::GUT_MODULUS];
    let end = [" 516", ", table I"].into_iter().find(|end| text.contains(end));
    match end.filter(|_| cited.iter().any(|words| words.english() == text)) {
        Some(end) => text.replacen(end, &[end, BESIDES].concat(), 1),
        None => text.to_owned(),
    }
}

/// A name or a source as the language of now says it; one that is not built in as it is.
pub fn said(text: &str) -> &str {
    let is = |words: &&Words| {
        let (before, behind) = text.split_once(BESIDES).unwrap_or((text, ""));
        words.english().strip_prefix(before) == Some(behind)
    };
    ALL.iter().find(is).map_or(text, |words| words.said())
}

#[cfg(test)]
mod tests {
    use super::super::{built_in, flat_strength, key_of};
    use super::*;
    use crate::words::{Language, in_language};

    #[test]
    fn a_short_name_means_its_material_in_every_language() {
        let keys: Vec<String> = built_in().into_iter().map(|material| material.key).collect();
        assert_eq!(SHORT.map(Words::english).to_vec(), keys);
        for language in Language::ALL {
            for key in &keys {
                let name = in_language(language, || name_of_key(key).unwrap().said());
                assert_eq!(key_of(name), Some(key.as_str()), "{name}");
                assert_eq!(in_language(language, || key_said(name)), Some(key.as_str()), "{name}");
            }
        }
    }

    #[test]
    fn what_is_built_in_is_said_in_the_language_of_now() {
        let german = |text: &str| in_language(Language::German, || said(text).to_owned());
        let materials = built_in();
        for material in &materials {
            assert_eq!(said(&material.name), material.name);
            assert!(ALL.iter().any(|words| words.english() == material.name), "{}", material.name);
        }
        assert_eq!(german("Gut"), "Darm");
        assert_eq!(german("my own gut"), "my own gut");
        // Sources of before are said as those of now.
        let nylon = materials[0].modulus.as_ref().unwrap().source.clone();
        let before = source_before(&nylon);
        assert!(before.len() > nylon.len() && said(&before) == nylon, "{before}");
        assert_eq!(source_before("my own"), "my own");
        // No source that says where it was read, or that there is none, stays English.
        let strengths = materials.iter().filter_map(|material| flat_strength(&material.key));
        let sources = strengths.map(|sourced| sourced.source);
        let sources = sources.chain(materials.iter().flat_map(|material| {
            let strength = material.strength.iter().map(|sourced| sourced.source.clone());
            let moduli =
                [&material.modulus, &material.intermediate_modulus, &material.slow_modulus];
            let moduli = moduli.into_iter().flatten().map(|sourced| sourced.source.clone());
            strength.chain(moduli).chain([material.density.source.clone()])
        }));
        for source in sources {
            let told = german(&source);
            for english in ["to be found", "as quoted", "as reproduced", "taken as", " the "] {
                assert!(!told.contains(english), "{told}");
            }
        }
    }
}
