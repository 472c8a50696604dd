//! The list of checks: each is a test of its own, and stands in the register that the page shows.
//!
//! `tests/published/README.md` says what each of them found; it is written by
//! `RENEW=1 cargo test --test published every_listed_check`.

use std::fmt::Write;
use std::path::Path;
use std::sync::OnceLock;

use stringloft::design::checks::{CHECKS, Check, TOPICS};
use stringloft::design::figures::ROWS;
use stringloft::engine::material::Standing;

use crate::record::{self, Record};

/// A check: its key in the register, its function, and what it found.
struct Listed {
    id: &'static str,
    run: fn(),
    found: OnceLock<Record>,
}

impl Listed {
    const fn new(id: &'static str, run: fn()) -> Self {
        Self { id, run, found: OnceLock::new() }
    }

    /// Runs it, once in each run of the tests.
    fn found(&self) -> &Record {
        self.found.get_or_init(|| {
            record::taken();
            (self.run)();
            record::taken()
        })
    }
}

fn listed(id: &str) -> &'static Listed {
    LISTED
        .iter()
        .chain(&KEPT_LISTED)
        .find(|listed| listed.id == id)
        .expect("the list makes tests of its own keys")
}

/// Makes a table of checks, and a test of each.
macro_rules! checks {
    ($table:ident: $($id:literal => $module:ident :: $name:ident,)+) => {
        static $table: [Listed; [$($id),+].len()] = [$(Listed::new($id, crate::$module::$name)),+];

        $(
            #[test]
            fn $name() {
                let found = listed($id).found();
                assert!(found.values() > 0, "the check compared nothing");
            }
        )+
    };
}

checks! { LISTED:
    "music-wire-strength" => wire::music_wire_is_as_strong_as_the_standard_says,
    "music-wire-load" => wire::music_wire_breaks_at_the_load_of_the_table,
    "music-wire-laws" => wire::the_handbooks_laws_lie_about_the_table_as_found,
    "music-wire-refit" => wire::one_power_law_comes_within_half_a_percent_of_the_table,
    "gauge-tolerance" => wire::the_tolerance_of_wire_shows_in_the_pull,
    "spring-wire-below" => wire::music_wire_is_about_a_tenth_stronger_than_spring_wire,
    "bronze-strength" => wire::phosphor_bronze_has_the_steps_of_the_standard,
    "material-data" => materials::built_in_materials_have_what_their_sources_print,
    "material-strengths" => materials::built_in_strengths_lie_in_the_range_that_their_sources_print,
    "nylon-modulus" => stiffness::the_modulus_of_nylon_rises_as_it_was_measured,
    "specific-strength" => wire::breaking_loads_give_the_printed_specific_strengths,
    "steel-highest-note" => textbooks::the_highest_note_of_so_much_steel,
    "winding-mass" => windings::close_turns_weigh_what_the_helix_says,
    "winding-parts" => windings::core_and_wrap_weigh_what_was_worked_out,
    "second-layer-mass" => windings::a_second_layer_lies_on_the_first,
    "ribbon-mass" => windings::a_ribbon_weighs_a_little_more_than_a_tube,
    "helix-walked" => windings::a_helix_walked_in_small_steps_is_as_long,
    "helix-integrated" => reference::windings_weigh_as_the_helix_integrated,
    "turns-integrated" => reference::turns_on_a_pin_take_the_string_that_a_helix_takes,
    "mersenne-length" => laws::twice_the_length_sounds_an_octave_lower,
    "mersenne-pull" => laws::the_pull_goes_with_the_square_of_length_pitch_and_gauge,
    "stress-of-pitch" => laws::the_stress_of_a_flexible_string_is_the_same_for_every_gauge,
    "guitar-wave-speed" => textbooks::two_guitar_strings_of_one_wave_speed,
    "piano-lowest-string" => textbooks::the_lowest_string_of_a_piano,
    "violin-string" => textbooks::a_violin_string_pulls_fifteen_pounds,
    "two-gram-string" => textbooks::a_string_of_two_grams_pulls_a_thousand_newtons,
    "highest-harmonic" => textbooks::the_highest_harmonic_that_can_be_heard,
    "harp-middle-c" => textbooks::a_harp_string_of_middle_c,
    "light-string" => textbooks::a_light_string_with_slow_waves,
    "hung-masses" => textbooks::two_masses_hung_on_one_string,
    "flexible-rows" => figures::flexible_strings_pull_what_was_worked_out,
    "stiff-rows" => figures::every_figure_of_a_row_is_the_one_worked_out,
    "stiff-rows-tuned" => figures::the_analysis_tunes_the_stiff_string,
    "steel-tenth-partial" => figures::the_tenth_partial_of_half_a_metre_of_steel,
    "wound-row" => figures::a_wound_string_pulls_on_its_core_alone,
    "weighed-row" => figures::a_weighed_string_without_a_core_has_a_pull_and_no_more,
    "semitone-shares" => figures::semitones_below_breaking_are_shares_of_the_load,
    "middle-c-feel" => textbooks::a_harp_string_of_middle_c_meets_the_finger,
    "fifty-digits-tension" => reference::stiff_strings_pull_and_feel_as_with_fifty_digits,
    "fifty-digits-partials" => reference::stiff_strings_are_inharmonic_as_with_fifty_digits,
    "fifty-digits-breaking" => reference::strings_break_as_with_fifty_digits,
    "young-piano-wire" => stiffness::piano_wire_follows_youngs_law,
    "feynman-pitch" => stiffness::stiffness_raises_the_pitch_as_feynman_wrote,
    "guitar-notes" => stiffness::the_strings_of_a_guitar_sound_their_notes,
    "guitar-inharmonicity" => stiffness::the_strings_of_a_guitar_have_their_inharmonicity,
    "piano-middle-c" => stiffness::middle_c_of_a_piano_sounds_and_is_stiff,
    "audible-inharmonicity" => stiffness::inharmonicity_is_heard_from_where_listeners_heard_it,
    "beam-pinned" => beams::a_beam_without_pull_sounds_as_euler_and_bernoulli_have_it,
    "beam-refined" => beams::finer_elements_close_in_on_the_partials_of_a_stiff_string,
    "beam-partials" => beams::twelve_partials_of_every_plain_string_are_those_of_the_beam,
    "beam-tuned" => beams::the_tension_brings_the_beam_to_pitch,
    "stepped-roots" => beams::the_roots_of_a_stepped_string_are_the_ones_worked_out,
    "stepped-elements" => beams::elements_find_the_same_roots,
    "bare-ends-worked" => figures::the_law_of_bare_ends_is_the_one_worked_out,
    "bare-ends-law" => beams::the_law_of_bare_ends_is_true_for_low_partials_and_errs_upward,
    "bare-ends-halved" => beams::half_the_bare_end_has_a_quarter_of_the_error,
    "bare-ends-and-stiffness" => beams::stiffness_and_bare_ends_add_up,
    "bare-ends-exact" => bare_ends::partials_of_a_string_in_three_pieces_are_the_roots_with_fifty_digits,
    "bare-ends-exact-worked" => bare_ends::exact_bare_ends_raise_the_partials_as_worked_out,
    "bare-ends-added" => bare_ends::cents_of_stiffness_and_of_bare_ends_add_up,
    "bending-loss" => reference::partials_lose_what_a_complex_modulus_says,
    "levers-found" => levers::levers_stand_where_a_root_finder_puts_them,
    "sharp-discs-found" => levers::sharp_discs_stand_where_a_root_finder_puts_them,
    "lever-slopes" => levers::what_a_lever_does_at_its_place_is_the_same,
    "lever-frets" => levers::without_a_push_levers_stand_as_frets_do,
    "lever-push" => levers::a_push_of_a_millimetre_sharpens_as_worked_out,
    "pluck-energy" => plucks::the_force_of_a_pluck_is_that_of_least_energy,
    "pluck-nylon" => plucks::a_nylon_string_drawn_aside_is_as_worked_out,
    "glide-swing" => plucks::the_glide_is_that_of_a_string_that_swings_in_one_plane,
    "strain-integrated" => take_up::strings_stretch_as_their_modulus_integrated,
    "slopes-of-pitch" => take_up::pin_and_warmth_move_the_pitch_by_its_slope,
    "take-up-worked" => take_up::strings_are_taken_up_as_worked_out,
    "dulcimer-warmth" => take_up::the_slackest_string_of_a_dulcimer_falls_as_printed,
    "warmth-worked" => take_up::metal_strings_fall_with_warmth_as_worked_out,
    "best-set-solved" => solved::larger_tasks_have_the_optimum_of_an_integer_programming_solver,
    "lengths-proposed" => lengths::proposed_lengths_are_those_of_a_library,
    "equal-compass" => pitches::the_equal_tempered_compass_is_the_printed_one,
    "key-numbers" => pitches::keys_have_their_numbers,
    "standard-pitch" => pitches::the_reference_pitch_is_that_of_the_standard,
    "other-pitches" => pitches::other_reference_pitches_lie_where_they_should,
    "temperaments-above-c" => temperaments::every_key_lies_where_its_temperament_puts_it,
    "temperaments-from-equal" => temperaments::a_tuner_sets_every_key_as_far_from_equal_as_the_table_says,
    "wolf-and-commas" => temperaments::the_wolf_and_the_commas_have_their_printed_size,
    "harp-octaves" => pitches::the_harpists_octaves_are_counted_from_the_top,
    "lever-keys" => keys::full_levers_give_the_keys_that_the_signs_allow,
    "pedal-keys" => keys::pedals_give_flats_naturals_and_sharps,
    "lever-harp-total" => totals::the_lever_harp_pulls_as_a_folk_harp_of_36_strings,
    "pedal-harp-total" => totals::the_pedal_harp_pulls_between_ten_and_twelve_kilonewtons,

    "wood-under-time" => structure_woods::wood_tires_as_the_curves_say,
    "torsion-table" => structure_sections::rectangles_twist_as_the_table_says,
    "torsion-handbook" => structure_sections::the_handbooks_short_formula_for_twist_is_near,
    "torsion-differences" => structure_frames::bars_twist_as_by_finite_differences,
    "torsion-brass" => structure_sections::two_brass_bars_bear_their_torque,
    "curved-bar" => structure_sections::a_curved_bar_has_its_stresses,
    "timber-columns" => structure_sections::two_timber_columns_are_as_slender_and_stressed_as_printed,
    "column-euler" => structure_sections::two_columns_give_way_at_eulers_load,
    "column-beside" => structure_sections::a_tube_loaded_beside_its_middle_has_its_stress,
    "column-roots" => structure_frames::struts_bear_what_root_finding_gives,
    "string-triangles" => geometry::strings_lift_the_board_and_stand_on_it_as_triangles_say,
    "pin-curve" => geometry::a_curve_through_three_nodes_is_the_textbooks,
    "parallel-forces" => structure_frames::parallel_forces_are_one_at_their_centre,
    "propped-upright" => structure_frames::a_propped_upright_is_a_truss,
    "timber-beams" => structure_frames::two_timber_beams_bear_what_their_books_say,
    "frame-solved" => structure_frames::pillar_and_shoulder_bear_what_a_frame_solver_finds,
    "neck-solved" => structure_frames::the_neck_bears_what_a_frame_solver_finds,
    "sample-neck-solved" => structure_frames::the_sample_bears_what_a_frame_solver_finds,
    "frame-in-space" => space_frames::whole_frames_bear_what_a_frame_program_finds,
    "frame-joints" => space_joints::frames_with_joints_and_soundbox_bear_what_a_frame_program_finds,
    "giving-frames" => space_giving::strings_fall_as_unit_loads_in_a_frame_program_say,
    "laminate-textbook" => structure_timber::a_laminate_of_three_has_the_stiffness_of_the_textbook,
    "laminates-turned" => structure_timber::laminates_are_as_stiff_as_by_turned_tensors,
    "metal-and-wood" => structure_timber::wood_and_metal_bear_as_by_adding_up_a_grid,
    "plates-slip" => structure_timber::plates_slip_on_their_screws_as_by_finite_differences,
    "crossed-layers-roll" => structure_held::crossed_layers_roll_as_by_adding_up_a_grid,
    "crossed-layers-twist" => structure_held::crossed_layers_bear_no_more_of_a_twist_than_is_reckoned,
    "hole-rims" => structure_held::the_rim_of_a_hole_bears_what_finite_elements_find,
    "metal-glued" => structure_held::glue_at_the_end_of_a_plate_bears_no_more_than_is_reckoned,
    "metal-screwed" => structure_held::the_last_screw_of_a_plate_bears_no_more_than_is_reckoned,
    "pin-holes" => structure_timber::holes_leave_of_a_section_what_a_grid_leaves,
    "tapped-bars" => structure_timber::a_tapped_bar_tells_the_modulus_that_it_was_made_with,
    "tapped-bar-standard" => structure_timber::a_bar_of_no_grain_has_the_standards_correction,
    "boards-solved" => structure_boards::boards_with_and_without_rib_bend_as_by_finite_elements,
    "rib-ends-solved" => structure_boards::a_rib_is_sheared_at_the_ends_of_a_board_as_by_finite_elements,
    "boards-that-hang" => structure_hanging::boards_that_hang_rise_as_by_finite_elements,
    "boards-that-bow" => structure_hanging::boards_that_are_pushed_bow_as_by_finite_elements,
    "boards-mapped" => structure_mapped::boards_with_a_map_bend_as_by_finite_elements,
    "bar-ends-turn" => structure_ended::as_much_of_a_moment_comes_to_the_end_of_a_bar_as_is_reckoned,
    "bar-ends-open" => structure_ended::the_glue_at_the_end_of_a_bar_gives_up_no_more_than_is_reckoned,
}

checks! { KEPT_LISTED:
    "suggested-harp-total" => totals::a_suggested_harp_of_34_strings_pulls_as_nylon_harps_do,
    "working-load" => totals::every_string_of_the_samples_works_at_a_quarter_to_three_quarters_of_its_load,
    "wood-at-an-angle" => structure_woods::maple_at_an_angle_stays_as_worked_out,
    "board-strip" => structure_sections::a_strip_of_the_board_stays_as_worked_out,
    "frame-rows" => structure_frames::a_frame_and_a_twisted_neck_stay_as_worked_out,
    "gut-strength" => wire::gut_breaks_at_the_least_product_that_was_measured,
    "nylon-window" => textbooks::nylon_at_a4_has_its_window_of_lengths,
    "birch-plywood" => structure_woods::birch_plywood_is_as_stiff_and_strong_as_the_table,
    "wood-data" => structure_woods::woods_are_those_of_the_handbook,
    "wood-ratios" => structure_woods::woods_have_the_moduli_across_of_the_handbook,
    "wood-allowance" => structure_woods::scatter_grain_and_divisors_are_the_printed_ones,
    "unit-factors" => materials::units_have_their_printed_factors,
    "strength-classes" => structure_timber::woods_reach_the_classes_of_the_standard,
    "time-factors" => structure_woods::factors_for_time_are_those_of_the_standards,
}

/// What is kept without anything from outside to compare it with.
struct Kept {
    id: &'static str,
    /// What the values are: part of a sentence.
    what: &'static str,
    /// Why they check nothing.
    why: &'static str,
}

const KEPT: [Kept; KEPT_LISTED.len()] = [
    Kept {
        id: "suggested-harp-total",
        what: "total tension of a suggested nylon harp of 34 strings",
        why: COMMON_PRACTICE,
    },
    Kept {
        id: "working-load",
        what: "share of the breaking load at which the sample harps work",
        why: COMMON_PRACTICE,
    },
    Kept {
        id: "wood-at-an-angle",
        what: "strength of maple at an angle to the grain",
        why: BY_HAND,
    },
    Kept {
        id: "board-strip",
        what: "pull of the strings on the board, and its stress and rise",
        why: BY_HAND,
    },
    Kept { id: "frame-rows", what: "a frame, a twisted neck and a pillar", why: BY_HAND },
    Kept {
        id: "gut-strength",
        what: "length times pitch at which gut breaks",
        why: "the built-in strength was worked out from this very product",
    },
    Kept {
        id: "nylon-window",
        what: "shortest and longest string of nylon for one note",
        why: "the strength was worked out from the longest, and the shortest follows from the two shares",
    },
    Kept {
        id: "birch-plywood",
        what: "thickness, strength and stiffness of birch plywood of 3 to 17 plies",
        why: BOTH_FROM_MEMORY,
    },
    Kept {
        id: "wood-data",
        what: "density, strength and stiffness of thirteen woods, and which of them were read",
        why: "the list is a copy of the same tables; about a quarter of it is from memory",
    },
    Kept {
        id: "wood-ratios",
        what: "stiffness across the grain and in shear of ten woods",
        why: BOTH_FROM_MEMORY,
    },
    Kept {
        id: "wood-allowance",
        what: "scatter of wood, what slanting grain leaves, and divisors for allowable stresses",
        why: BOTH_FROM_MEMORY,
    },
    Kept {
        id: "unit-factors",
        what: "pounds, kilograms, inches and ksi in newtons, millimetres and MPa",
        why: "the program has the same factors, and they are definitions; from memory",
    },
    Kept {
        id: "strength-classes",
        what: "strength classes of woods of one's own",
        why: BOTH_FROM_MEMORY,
    },
    Kept {
        id: "time-factors",
        what: "factors of two standards for lasting loads, and creep",
        why: BOTH_FROM_MEMORY,
    },
];
const COMMON_PRACTICE: &str = "common practice, no source";
const BY_HAND: &str = "worked out once by hand from the program's own formulas";
const BOTH_FROM_MEMORY: &str = "the program's values and these come from the same memory";

#[test]
fn every_listed_check_exists_and_passes() {
    let all = || LISTED.iter().chain(&KEPT_LISTED);
    for listed in all() {
        let checks = CHECKS.iter().map(|check| check.id);
        let entries = checks.chain(KEPT.map(|kept| kept.id)).filter(|id| *id == listed.id).count();
        assert_eq!(entries, 1, "entries of {} in the register", listed.id);
        let functions = all().filter(|other| other.id == listed.id).count();
        assert_eq!(functions, 1, "functions of {}", listed.id);
    }
    for check in CHECKS {
        assert!(LISTED.iter().any(|listed| listed.id == check.id), "{} has no check", check.id);
    }
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/published/README.md");
    let text = report();
    if std::env::var_os("RENEW").is_some() {
        std::fs::write(&path, &text).expect("the report can be written");
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    for (number, (kept, new)) in (1..).zip(kept.lines().zip(text.lines())) {
        assert_eq!(kept, new, "line {number} of the report (renew it with RENEW=1)");
    }
    assert_eq!(kept.lines().count(), text.lines().count(), "lines (renew it with RENEW=1)");
}

/// The headings of the figures, and the topics.
fn covered() -> impl Iterator<Item = &'static str> {
    ROWS.iter().map(|row| row.heading).chain(TOPICS.iter().copied())
}

#[test]
fn every_entry_of_the_register_can_be_shown() {
    for Check { id, what, source, figures, .. } in CHECKS {
        let is_kebab = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        assert!(!id.is_empty() && id.chars().all(is_kebab), "{id}");
        for text in [what.english(), source.english()] {
            assert!(text.len() > 10 && !text.ends_with('.'), "{id}: {text}");
            assert!(!text.contains('|') && text.trim() == text, "{id}: {text}");
        }
        assert!(!figures.is_empty(), "{id} covers no figure");
        for figure in *figures {
            assert!(
                covered().any(|known| known == *figure),
                "{id} covers {figure}, which is no figure"
            );
        }
    }
    for known in covered() {
        let covers = CHECKS.iter().any(|check| check.figures.contains(&known));
        assert!(covers, "nothing covers {known}");
    }
}

const INTRODUCTION: &str = "\
# What the figures are checked against

Every check compares what the program computes with a value that does not come from the program: printed, measured, \
or worked out another way. What is only kept, so that a change is noticed, stands in a list of its own at the end.

- **Known**: *read* in the source named or in the reproduction named; *second-hand*, as another text quotes it; \
*from memory*, to be looked up before it is relied on; or *worked out* from the formulas of the source, apart from this code.
- **Values**: how many values were compared.
- **Largest deviation**: the farthest of them. A printed table leaves room for half of its last digit, \
so 0.50 of the last printed digit still rounds to what is printed. \
Where nothing is printed, it is a share of the value or cents of pitch. \
*Within the bounds stated* is a range that the source gives, or that its digits leave.

The test `every_listed_check_exists_and_passes` compares this file with what the checks find. \
To renew it: `RENEW=1 cargo test --test published every_listed_check`.

| Check | What was compared | Source | Known | Values | Largest deviation |
| --- | --- | --- | --- | ---: | --- |
";

fn report() -> String {
    let mut text = INTRODUCTION.to_owned();
    let mut values = 0;
    for check in CHECKS {
        let found = listed(check.id).found();
        values += found.values();
        let Check { id, what, source, standing, .. } = check;
        let (known, count, off) = (known(*standing), found.values(), found.deviation());
        writeln!(text, "| {id} | {what} | {source} | {known} | {count} | {off} |")
            .expect("a text can be written to");
    }
    write!(text, "\n{} checks, {values} values.\n{KEPT_INTRODUCTION}", CHECKS.len())
        .expect("a text can be written to");
    for Kept { id, what, why } in KEPT {
        let count = listed(id).found().values();
        writeln!(text, "| {id} | {what} | {why} | {count} |").expect("a text can be written to");
    }
    text
}

const KEPT_INTRODUCTION: &str = "
## Kept values

These tests show that nothing has changed. They do not show that it is right, and the page does not name them.

| Test | What is kept | Why it is no check | Values |
| --- | --- | --- | ---: |
";

const fn known(standing: Standing) -> &'static str {
    match standing {
        Standing::Seen => "read",
        Standing::SecondHand => "second-hand",
        Standing::Computed => "worked out",
        Standing::FromMemory => "from memory",
        Standing::Own => "own",
    }
}
