//! The samples against what makes a sound harp. Their totals are in `published/totals.rs`.

use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use stringloft::engine::findings::Weight;

#[test]
fn every_sample_is_complete_and_free_of_warnings() {
    for sample in SAMPLES {
        let design = sample.design();
        let resolved = resolve(&design);
        assert!(resolved.errors.is_empty(), "{}: {:?}", sample.key, resolved.errors);
        assert!(resolved.cells.iter().all(|cells| cells.is_empty()), "{}", sample.key);
        let analysis = analyse(&resolved.harp);
        assert_eq!(analysis.without_tension, 0, "{}", sample.key);
        let heavy = analysis.findings.iter().find(|f| f.kind.weight() < Weight::Remark);
        assert_eq!(heavy, None, "{}", sample.key);
        assert!(analysis.findings.len() <= 2, "{}: {:?}", sample.key, analysis.findings);
    }
}

#[test]
fn the_samples_feel_even_and_grow_toward_the_bass() {
    for sample in SAMPLES {
        let design = sample.design();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        for (index, pair) in analysis.strings.windows(2).enumerate() {
            let at = format!("{} string {}", sample.key, index + 2);
            let of = |k: usize| pair[k].pluck_stiffness.expect("a complete sample").to_n_per_m();
            let step = of(1) / of(0);
            assert!((0.82..=1.22).contains(&step), "{at}: a step of feel to {step}");
            assert!(pair[1].length.unwrap() > pair[0].length.unwrap(), "{at}: length");
            let make_up = |index: usize| resolved.harp.strings[index].make_up.as_ref().unwrap();
            if make_up(index).has_materials_of(make_up(index + 1)) {
                assert!(pair[1].gauge.unwrap() >= pair[0].gauge.unwrap(), "{at}: gauge");
            }
        }
        let (least, most) =
            (design.limits.least_stiffness_n_per_mm, design.limits.most_stiffness_n_per_mm);
        for string in &analysis.strings {
            let feel = string.pluck_stiffness.unwrap().to_n_per_mm();
            assert!(
                (least..=most).contains(&feel),
                "{} {}: {feel} N/mm",
                sample.key,
                string.number
            );
        }
    }
}
