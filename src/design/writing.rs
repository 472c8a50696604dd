//! From the types of the document into JSON, without any space.
//!
//! Fields are written by the tables that read them (`fields!` in [`reading`](super::reading)), by loops that all types
//! share. The types also derive serde's `Serialize`, which the page does not use: the tests hold what is written here
//! to what `serde_json` writes of it, byte for byte.

use serde_json::Number;

use super::reading::Json;

/// The JSON of something, without any space.
pub(crate) fn json_text(whole: &dyn Json) -> String {
    let mut out = String::new();
    whole.give(&mut out);
    out
}

/// Writes fields under their names, but for those that are left out.
pub(crate) fn give_fields(
    left_out: &[bool],
    names: &[&str],
    fields: &[&dyn Json],
    out: &mut String,
) {
    out.push('{');
    for ((name, field), _) in names.iter().zip(fields).zip(left_out).filter(|(_, out)| !**out) {
        // No value ends with a bracket that opens.
        if !out.ends_with('{') {
            out.push(',');
        }
        give_text(name, out);
        out.push(':');
        field.give(out);
    }
    out.push('}');
}

/// Writes a word with what it holds, as [`tagged`](super::reading::tagged) takes it.
pub(crate) fn give_tagged(word: &str, held: &dyn Json, out: &mut String) {
    give_fields(&[false], &[word], &[held], out);
}

/// Writes a list of so many parts.
pub(crate) fn give_list(count: usize, part: &dyn Fn(usize, &mut String), out: &mut String) {
    out.push('[');
    for index in 0..count {
        if index > 0 {
            out.push(',');
        }
        part(index, out);
    }
    out.push(']');
}

/// Writes a number; one that is not finite is none.
pub(crate) fn give_number(number: f64, out: &mut String) {
    match Number::from_f64(number) {
        Some(number) => out.push_str(&number.to_string()),
        None => out.push_str("null"),
    }
}

/// Writes a text in quotes.
pub(crate) fn give_text(text: &str, out: &mut String) {
    out.push('"');
    let mut done = 0;
    for (at, byte) in text.bytes().enumerate() {
        if byte >= b' ' && byte != b'"' && byte != b'\\' {
            continue;
        }
        out.push_str(&text[done..at]);
        done = at + 1;
        out.push('\\');
        match byte {
            0x08 => out.push('b'),
            b'\t' => out.push('t'),
            b'\n' => out.push('n'),
            0x0c => out.push('f'),
            b'\r' => out.push('r'),
            b'"' | b'\\' => out.push(byte.into()),
            _ => {
                out.push_str(if byte < 0x10 { "u000" } else { "u001" });
                out.extend(char::from_digit(u32::from(byte & 0xf), 16));
            }
        }
    }
    out.push_str(&text[done..]);
    out.push('"');
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{
        Design, GapsSpec, SparesSpec, StrengthSpec, ToleranceSpec, VersionSpec, ZoneSpec,
    };
    use crate::design::{library, persist, presets, stock};

    /// What `serde_json` writes of the derived writer is the measure.
    fn same<T: serde::Serialize + Json>(one: &T) {
        assert_eq!(json_text(one), serde_json::to_string(one).unwrap());
    }

    #[test]
    fn texts_and_numbers_are_written_as_serde_json_writes_them() {
        let letters = (0..0x250).filter_map(char::from_u32).chain("\u{2028}\u{feff}𝄞".chars());
        same(&letters.clone().collect::<String>());
        letters.for_each(|letter| same(&format!("a{letter}b{letter}")));
        for number in [0.0, -0.0, 1.0, 0.1, 1e21, -1e-7, 5e-324, f64::MAX, f64::NAN, f64::INFINITY]
        {
            same(&number);
        }
        same(&(0_u16, 7_u32));
        same(&(u16::MAX, u32::MAX));
        let mut bits = 0x9e37_79b9_7f4a_7c15_u64;
        for _ in 0..20_000 {
            // Xorshift, so that the draw is always the same.
            bits ^= bits << 13;
            bits ^= bits >> 7;
            bits ^= bits << 17;
            same(&f64::from_bits(bits));
        }
    }

    #[test]
    fn every_sample_list_and_material_is_written_as_serde_json_writes_it() {
        for sample in presets::SAMPLES {
            let design = sample.design();
            same(&design);
            let value: serde_json::Value = serde_json::from_str(&persist::write(&design)).unwrap();
            assert_eq!(json_text(&value), value.to_string());
        }
        library::built_in().iter().for_each(same);
        same(&stock::starting_list());
    }

    #[test]
    fn what_holds_something_is_written_as_serde_json_writes_it() {
        [GapsSpec::UniformMm(13.5), GapsSpec::ZonesMm(vec![(1, 28.0)]), GapsSpec::EachMm(vec![])]
            .iter()
            .for_each(same);
        [SparesSpec::None, SparesSpec::OneOfEachItem, SparesSpec::Percent(5.0)]
            .iter()
            .for_each(same);
        [ToleranceSpec::Mm(0.1), ToleranceSpec::StepsMm(vec![(1.0, 0.1)])].iter().for_each(same);
        [StrengthSpec::Mpa(900.0), StrengthSpec::TableMmMpa(vec![])].iter().for_each(same);
        let zone = ZoneSpec { thickest: "1 mm".to_owned(), ..ZoneSpec::default() };
        same(&zone);
        let mut design = Design::default();
        design.targets.zones.push(zone);
        design.order.from_string = 3;
        let versions =
            vec![VersionSpec { design: design.clone().into(), ..VersionSpec::default() }];
        same(&Design { versions, ..design });
    }
}
