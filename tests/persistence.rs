//! Files and links: every version ever saved opens, nothing is lost on the way, and wrong input gets a
//! sentence.

use std::path::Path;
use std::sync::Arc;

#[path = "persistence/every_field.rs"]
mod every_field;
#[path = "persistence/fields.rs"]
mod fields;
#[path = "persistence/lists.rs"]
mod lists;

use every_field::{every_field, without_later_fields};
use stringloft::design::document::{Design, MakeUpSpec, StringSpec, TargetsSpec, VersionSpec};
use stringloft::design::link::{self, LinkError};
use stringloft::design::persist::{ReadError, VERSION, check, read, write};
use stringloft::design::presets::SAMPLES;

fn text(text: &str) -> String {
    text.to_owned()
}

#[test]
fn every_version_ever_saved_still_opens() {
    let today = every_field();
    for version in 1..=VERSION {
        let path = format!("{}/tests/designs/v{version}.json", env!("CARGO_MANIFEST_DIR"));
        let saved = std::fs::read_to_string(Path::new(&path)).expect("a file for each version");
        let expected = if version == 1 { without_later_fields(&today) } else { today.clone() };
        assert_eq!(read(&saved).unwrap(), expected, "{path}");
    }
    let newest = std::fs::read_to_string(format!(
        "{}/tests/designs/v{VERSION}.json",
        env!("CARGO_MANIFEST_DIR")
    ));
    assert_eq!(write(&today), newest.unwrap(), "today's file is as the newest one");
}

#[test]
fn every_design_comes_back_from_its_file_and_its_link() {
    let samples = SAMPLES.iter().map(|sample| sample.design());
    for design in samples.chain([every_field(), Design::default()]) {
        assert_eq!(read(&write(&design)).unwrap(), design);
        let two = link::write_with_version(&design, 0).unwrap();
        assert_eq!(link::read(&two).unwrap(), design);
        // A link holds the design as it is now.
        let fragment = link::write(&design).unwrap();
        let design = Design { versions: Vec::new(), ..design };
        assert_eq!(link::read(&fragment).unwrap(), design);
        assert_eq!(link::read(&format!("https://example.org/#{fragment}")).unwrap(), design);
        assert!(fragment.bytes().all(|b| b.is_ascii_alphanumeric() || b"-_.".contains(&b)));
    }
}

#[test]
fn odd_texts_are_kept_as_they_were_typed() {
    let mut design = Design::default();
    for odd in ["", " ", "\"\\/", "é ♭ 𝄫 漢", "[1,{\"a\":2}]", "null", "a,b:c", "~|^", "\u{200b}"]
    {
        let make_up = MakeUpSpec { material: text(odd), ..MakeUpSpec::default() };
        let (note, length) = (text(odd), text(odd));
        design.strings.push(StringSpec {
            note,
            length,
            make_up,
            order_code: text(odd),
            ..StringSpec::default()
        });
    }
    assert_eq!(read(&write(&design)).unwrap(), design);
    assert_eq!(link::read(&link::write(&design).unwrap()).unwrap(), design);
}

#[test]
fn a_file_without_materials_gets_those_its_strings_use() {
    let by_hand =
        r#"{"stringloft": 1, "strings": [{"note": "A4", "length": "370", "material": "Gut"}]}"#;
    let design = read(by_hand).unwrap();
    let keys: Vec<&str> = design.materials.iter().map(|material| &*material.key).collect();
    assert_eq!(keys, ["gut"]);
}

/// Versions in files and links of strangers.
#[test]
fn hostile_versions_get_a_sentence() {
    let one = "{\"name\": \"a\", \"design\": {\"strings\": [{\"note\": \"A4\"}]}}";
    let file = |versions: &str| format!("{{\"stringloft\": 2, \"versions\": [{versions}]}}");
    assert_eq!(read(&file(one)).unwrap().versions.len(), 1);
    assert_eq!(read(&file("{}")).unwrap().versions[0].design.strings.len(), 0);
    let many = format!("{}{one}", format!("{one},").repeat(12));
    let nested = format!("{{\"design\": {{\"versions\": [{one}]}}}}");
    let strings = format!("{{\"design\": {{\"strings\": [{}{{}}]}}}}", "{},".repeat(150));
    let long = format!("{{\"name\": \"{}\"}}", "x".repeat(201));
    let cell = format!("{{\"note\": \"{}\", \"material\": \"x\"}}", "y".repeat(200));
    let large =
        format!("{{\"design\": {{\"strings\": [{}{cell}]}}}}", format!("{cell},").repeat(149));
    assert!(read(&file(&large)).is_ok());
    let text = format!("{{\"remarks\": \"{}\"}}", "z".repeat(4_000));
    let sources = format!(
        "{{\"key\": \"m\", \"name\": \"\", \"density_kg_per_m3\": {{\"value\": 1000.0, \"source\": \"{}\", \"standing\": \"own\"}}}}",
        "s".repeat(4_000)
    );
    let materials: Vec<String> =
        (0..300).map(|n| sources.replace("\"m\"", &format!("\"m{n}\""))).collect();
    let materials = format!("{{\"design\": {{\"materials\": [{}]}}}}", materials.join(","));
    assert!(read(&file(&format!("{{\"design\": {text}}}"))).is_ok());
    let deep = "{\"design\": {\"versions\": [".repeat(2_000);
    for (versions, expected) in [
        (&*many, "a design must have at most 12 versions, got 13"),
        (&nested, "a version must hold no versions itself, but version 1 does"),
        (&strings, "version 1 cannot be kept: a design must have at most 150 strings, got 151"),
        (&long, "the name of version 1 must be at most 200 characters long"),
        (&materials, "the versions of a design must take at most 1024 KB together"),
        (
            &deep,
            "this design cannot be read: something is missing, repeated or out of place, at line 1, place ",
        ),
        (
            "5",
            "this design cannot be read: versions, 1 must be a set of fields, got a number (mend",
        ),
    ] {
        let error = read(&file(versions)).expect_err(expected).to_string();
        assert!(error.starts_with(expected), "{error}");
    }
    for document in [
        "{\"v\":2,\"@\":[{\"design\":{\"M\":[\"mithril\"]}}]}",
        "{\"v\":2,\"@\":[{\"design\":{\"r\":99,\"M\":[\"nylon\"]}}]}",
    ] {
        let error = link::read(&forged(document.as_bytes())).expect_err(document);
        assert_eq!(error, LinkError::TooNew, "{document}");
    }
    let many = format!("{{\"v\":2,\"@\":[{}{{}}]}}", "{},".repeat(100_000));
    assert!(link::read(&forged(many.as_bytes())).is_err());
}

#[test]
fn two_designs_in_a_link_open_again_or_are_refused() {
    let mut design = SAMPLES[3].design();
    let before = Design { title: text("before"), ..design.clone() };
    let (name, date) = (text("first"), String::new());
    design.versions = vec![VersionSpec { name, date, design: Arc::new(before) }];
    let two = link::write_with_version(&design, 0).unwrap();
    assert_eq!(link::read(&two).unwrap(), design);
    // Twice the same packs well.
    assert!(two.len() < link::write(&design).unwrap().len() * 3 / 2, "{}", two.len());
    let mut seed = 1_usize;
    let mut noise = |_| {
        seed = (seed.wrapping_mul(1_103_515_245).wrapping_add(12_345)) % (1 << 31);
        char::from(b'!' + u8::try_from((seed >> 16) % 90).expect("below 90"))
    };
    for string in &mut design.strings {
        string.order_code = (0..200).map(&mut noise).collect();
    }
    let mut other = design.clone();
    other.versions.clear();
    for string in &mut other.strings {
        string.length = (0..200).map(&mut noise).collect();
        string.note = (0..200).map(&mut noise).collect();
        string.order_code = (0..200).map(&mut noise).collect();
        string.make_up.diameter = (0..200).map(&mut noise).collect();
        string.make_up.material = (0..200).map(&mut noise).collect();
    }
    design.versions[0].design = Arc::new(other);
    assert!(link::write(&design).is_ok());
    let error = link::write_with_version(&design, 0).expect_err("too much for a link");
    assert_eq!(error, LinkError::TwoTooLarge);
    assert_eq!(link::write_with_version(&design, 7), link::write(&design));
}

#[test]
fn a_file_cut_anywhere_is_an_error() {
    let whole = write(&SAMPLES[0].design());
    let whole = whole.trim_end();
    for (end, _) in whole.char_indices() {
        assert!(read(&whole[..end]).is_err(), "cut at {end}");
    }
}

#[test]
fn a_file_with_any_letter_changed_never_panics() {
    let whole = write(&every_field());
    for ((at, old), new) in whole.char_indices().zip(["0", "\"", "{", "\\", ""].iter().cycle()) {
        let rest = &whole[at + old.len_utf8()..];
        if let Ok(design) = read(&format!("{}{new}{rest}", &whole[..at])) {
            assert_eq!(check(&design), Ok(()), "{new} at {at}");
        }
    }
}

#[test]
fn a_link_with_any_letter_changed_or_cut_anywhere_is_an_error() {
    let fragment = link::write(&every_field()).unwrap();
    for at in 0..fragment.len() {
        assert!(link::read(&fragment[..at]).is_err(), "cut at {at}");
        for new in "Aa0_-.#%é ".chars() {
            let changed = format!("{}{new}{}", &fragment[..at], &fragment[at + 1..]);
            if changed != fragment {
                assert!(link::read(&changed).is_err(), "{new} at {at}");
            }
        }
    }
}

#[test]
fn what_is_no_link_says_why() {
    let long = format!("1.{}", "A".repeat(60_000));
    for (given, expected) in [
        ("", LinkError::NotALink),
        ("#", LinkError::NotALink),
        ("about", LinkError::NotALink),
        ("x.AAAA", LinkError::NotALink),
        ("+1.AAAA", LinkError::NotALink),
        ("0.AAAA", LinkError::NotALink),
        ("3.AAAA", LinkError::TooNew),
        ("2.", LinkError::Altered),
        ("2.AAAA", LinkError::Altered),
        ("2.====", LinkError::Altered),
        ("2.AAAAAAAAAAAA", LinkError::Altered),
        ("1.", LinkError::Altered),
        ("1.AAAA", LinkError::Altered),
        ("1.====", LinkError::Altered),
        ("1.AAAAAAAAAAAA", LinkError::Altered),
        (&long, LinkError::TooLarge),
    ] {
        assert_eq!(link::read(given), Err(expected), "{}", &given[..given.len().min(40)]);
    }
}

/// Links of the samples as they were when links had another form.
#[test]
fn links_of_the_first_form_open() {
    let opened: Vec<(String, usize)> = include_str!("designs/links-1.txt")
        .lines()
        .map(|line| link::read(line).unwrap_or_else(|error| panic!("{line}: {error}")))
        .map(|design| (design.title, design.strings.len()))
        .collect();
    let were =
        [("Glimmerford 22", 22), ("Saltmarsh 26", 26), ("Emberlow 36", 36), ("Marchmoor 47", 47)];
    assert_eq!(opened, were.map(|(title, strings)| (title.to_owned(), strings)));
}

/// A link that is whole as far as its check sum goes, but holds what no design would.
fn forged(document: &[u8]) -> String {
    use base64::Engine as _;
    let packed = miniz_oxide::deflate::compress_to_vec(document, 6);
    let mut bytes = crc32fast::hash(&packed).to_be_bytes().to_vec();
    bytes.extend(packed);
    format!("1.{}", base64::engine::general_purpose::URL_SAFE_NO_PAD.encode(bytes))
}

#[test]
fn a_forged_link_is_refused_with_a_sentence() {
    let bomb = vec![b' '; 8 << 20];
    let many = format!("{{\"v\":1,\"S\":{{\"n\":\"{}\"}}}}", "\u{7f}".repeat(500_000));
    let deep = "[".repeat(100_000);
    let names = format!("{{\"v\":1,\"r\":1,\"M\":[{}\"nylon\"]}}", "\"nylon\",".repeat(100_000));
    for (document, expected) in [
        (
            names.as_bytes(),
            "the link does not hold a design that can be used: a design must have at most 300",
        ),
        (&bomb[..], "this design is too large"),
        (b"\xff\xfe", "this link was cut off or altered"),
        (b"", "this link was cut off or altered"),
        (deep.as_bytes(), "this link was cut off or altered"),
        (b"[]", "the link does not hold a design"),
        (b"{}", "the link does not hold a design"),
        (
            b"{\"v\":9}",
            "the link does not hold a design that can be used: this design is of version 9",
        ),
        (b"{\"v\":1,\"r\":99,\"M\":[\"nylon\"]}", "this link was made by a newer"),
        (b"{\"v\":1,\"r\":1,\"M\":[\"mithril\"]}", "this link was made by a newer"),
        (b"{\"v\":1,\"S\":{\"n\":\"A4\",\"L\":5}}", ""),
        (b"{\"v\":1,\"S\":[5]}", ""),
        (b"{\"v\":1,\"S\":{\"n\":\"A4\",\"y\":[5]}}", "the link does not hold a design"),
        (
            many.as_bytes(),
            "the link does not hold a design that can be used: a design must have at most 150",
        ),
    ] {
        let shown = String::from_utf8_lossy(&document[..document.len().min(60)]).into_owned();
        match link::read(&forged(document)) {
            Err(error) => assert!(error.to_string().starts_with(expected), "{shown}: {error}"),
            Ok(design) => assert!(expected.is_empty() && check(&design).is_ok(), "{shown}"),
        }
    }
}

#[test]
fn control_characters_and_turned_writing_are_taken_out() {
    let given =
        "{\"stringloft\": 1, \"title\": \"a\\u0000b\\tc\\u202e\", \"remarks\": \"x\\ny\\u0007\"}";
    let design = read(given).unwrap();
    assert_eq!((&*design.title, &*design.remarks), ("ab c", "x\ny"));
}

/// The promise of this project: 36 strings, ten of them wound, and the whole frame, in 600 characters of address.
#[test]
fn a_link_is_short() {
    let address = "https://workshop.example/stringloft/#";
    let length = |key: &str| {
        let sample = SAMPLES.iter().find(|sample| sample.key == key).expect("a sample");
        address.len() + link::write(&sample.design()).unwrap().len()
    };
    for (sample, most) in
        [("wire-22", 600), ("travel-26", 800), ("floor-36", 600), ("pedal-47", 800)]
    {
        assert!(length(sample) <= most, "{sample}: {}", length(sample));
    }
}

#[test]
fn the_largest_design_is_refused_as_a_link_or_comes_back() {
    let mut design = Design { remarks: "é".repeat(4_000), ..Design::default() };
    for index in 0..150_usize {
        // Texts that do not compress: the digits of a linear congruence, from memory.
        let mut seed = index;
        let mut noise = || {
            (0..200)
                .map(|_| {
                    seed = (seed.wrapping_mul(1_103_515_245).wrapping_add(12_345)) % (1 << 31);
                    char::from(b'!' + u8::try_from((seed >> 16) % 90).unwrap())
                })
                .collect::<String>()
        };
        let (note, length) = (noise(), noise());
        design.strings.push(StringSpec { note, length, ..StringSpec::default() });
    }
    assert_eq!(read(&write(&design)).unwrap(), design);
    match link::write(&design) {
        Ok(fragment) => assert_eq!(link::read(&fragment).unwrap(), design),
        Err(error) => assert_eq!(error, LinkError::TooLarge),
    }
}

#[test]
fn errors_can_be_told_apart() {
    assert_eq!(read("{\"stringloft\": 4}"), Err(ReadError::TooNew { found: 4 }));
    assert_eq!(read("{}"), Err(ReadError::OtherKind));
    assert_eq!(read("{\"stringloft\": 1,\n"), Err(ReadError::CutOff { line: 2 }));
}

/// A link leaves out what is usual, so that the usual must never change: a link of today would open
/// with other limits tomorrow.
#[test]
fn the_usual_settings_are_as_links_remember_them() {
    let kept = include_str!("designs/usual-v2.json");
    assert_eq!(write(&Design::default()), kept);
}

/// Saved before stock items had keys and strings named them, and before there were bundles.
#[test]
fn a_design_without_keys_still_opens() {
    let mut expected = every_field();
    let before = Arc::make_mut(&mut expected.versions[0].design);
    for string in expected.strings.iter_mut().chain(&mut before.strings) {
        string.stock_key = 0;
    }
    expected.stock[0].key = 0;
    // Nor had what is wanted a family.
    let none = TargetsSpec::default();
    expected.targets = TargetsSpec {
        family: none.family,
        wound_from: none.wound_from,
        thickest_plain_mm: none.thickest_plain_mm,
        most_jump_percent: none.most_jump_percent,
        ..expected.targets
    };
    expected.stock[0].bundle = 0;
    // Nor were there limits for what creeps and for levers near their pins.
    let usual = Design::default().limits;
    for design in
        [&mut expected.limits, &mut Arc::make_mut(&mut expected.versions[0].design).limits]
    {
        (design.soft_share_percent, design.least_raise_mm) =
            (usual.soft_share_percent, usual.least_raise_mm);
    }
    // Nor string ribs.
    let none = Design::default().geometry.board;
    let board = &mut expected.geometry.board;
    (board.rib_width_mm, board.rib_height_mm) = (none.rib_width_mm, none.rib_height_mm);
    (board.strip_width_mm, board.strip_height_mm) = (none.strip_width_mm, none.strip_height_mm);
    board.rib_wood = none.rib_wood;
    // Nor sizes of joints and soundbox, nor depths of holes.
    let shape = Design::default().geometry;
    expected.geometry.neck.layers = shape.neck.layers;
    (expected.geometry.neck.plates, expected.geometry.woods) = (shape.neck.plates, shape.woods);
    let drills = &mut expected.geometry.drills;
    (drills.tuning_depth_mm, drills.bridge_depth_mm) = (0.0, 0.0);
    (expected.geometry.joints, expected.geometry.soundbox) = (shape.joints, shape.soundbox);
    (expected.geometry.bars, expected.geometry.sizes) = (shape.bars, shape.sizes);
    expected.geometry.parts = shape.parts;
    let opened = read(include_str!("designs/keyless-v2.json")).expect("a design");
    assert!(opened == expected, "it holds what it held");
}
