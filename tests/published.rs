//! The engine against what stands outside the project: standards, handbooks, textbooks, general-purpose
//! libraries, and figures worked out apart from the code.
//!
//! Each check is a function that stands in the list of `published/register.rs` and in the register of
//! `design::checks`; `published/README.md` says what they found. What is only kept, with nothing from
//! outside to compare it with, stands in a second list there and not in the register.
//!
//! Each table says its source and how well it is known: **read** (in the named source, or in the
//! reproduction that is named), **second-hand** (as another text quotes it), **from memory**, or
//! **worked out** (by hand from the formulas of the source, apart from this code). The room is half of
//! the last printed digit; where the printed answer itself was reached with rounded numbers, the test
//! says so and takes those.

use std::sync::Arc;

use stringloft::engine::construction::MakeUp;
use stringloft::engine::material::{
    Class, Material, Modulus, Sourced, Standing, Strength, built_in, key_of,
};
use stringloft::engine::units::{Density, Length, Stress};

#[path = "published/bare_ends.rs"]
mod bare_ends;
#[path = "published/beams.rs"]
mod beams;
#[path = "choose/drawn.rs"]
mod drawn;
#[path = "published/figures.rs"]
mod figures;
#[path = "published/geometry.rs"]
mod geometry;
#[path = "published/keys.rs"]
mod keys;
#[path = "published/laws.rs"]
mod laws;
#[path = "published/lengths.rs"]
mod lengths;
#[path = "published/levers.rs"]
mod levers;
#[path = "published/materials.rs"]
mod materials;
#[path = "choose/model.rs"]
#[expect(dead_code, reason = "tests/choose.rs uses the rest")]
mod model;
#[path = "published/pitches.rs"]
mod pitches;
#[path = "published/plucks.rs"]
mod plucks;
#[path = "published/record.rs"]
mod record;
#[path = "published/reference.rs"]
mod reference;
#[path = "published/register.rs"]
mod register;
#[path = "choose/solved.rs"]
mod solved;
#[path = "published/space_frames.rs"]
mod space_frames;
#[path = "published/space_giving.rs"]
mod space_giving;
#[path = "published/space_joints.rs"]
mod space_joints;
#[path = "published/stiffness.rs"]
mod stiffness;
#[path = "published/structure_boards.rs"]
mod structure_boards;
#[path = "published/structure_ended.rs"]
mod structure_ended;
#[path = "published/structure_frames.rs"]
mod structure_frames;
#[path = "published/structure_hanging.rs"]
mod structure_hanging;
#[path = "published/structure_held.rs"]
mod structure_held;
#[path = "published/structure_mapped.rs"]
mod structure_mapped;
#[path = "published/structure_sections.rs"]
mod structure_sections;
#[path = "published/structure_timber.rs"]
mod structure_timber;
#[path = "published/structure_woods.rs"]
mod structure_woods;
#[path = "published/take_up.rs"]
mod take_up;
#[path = "published/temperaments.rs"]
mod temperaments;
#[path = "published/textbooks.rs"]
mod textbooks;
#[path = "published/totals.rs"]
mod totals;
#[path = "published/windings.rs"]
mod windings;
#[path = "published/wire.rs"]
mod wire;

use record::{assert_cents, assert_near, assert_prints, assert_same, assert_within};

/// A built-in material by any of its names.
fn built_in_material(name: &str) -> Material {
    let key = key_of(name).expect("the test names a built-in material");
    built_in().into_iter().find(|material| material.key == key).expect("every key has its material")
}

/// A material with the numbers of a source in place of the built-in ones.
fn material_of(kg_per_m3: f64, gpa: f64, strength_mpa: f64) -> Arc<Material> {
    fn sourced<T>(value: T) -> Sourced<T> {
        Sourced { value, source: "as the test states".to_owned(), standing: Standing::Own }
    }
    Arc::new(Material {
        key: "test".to_owned(),
        name: "Material of a test".to_owned(),
        class: Class::Metal,
        density: sourced(Density::from_kg_per_m3(kg_per_m3)),
        modulus: Some(sourced(Modulus::constant(Stress::from_gpa(gpa)))),
        intermediate_modulus: None,
        slow_modulus: None,
        strength: Some(sourced(Strength::Constant(Stress::from_mpa(strength_mpa)))),
        expansion_per_k: None,
        loss_factor: None,
        diameter_tolerance: None,
        density_tolerance_ratio: None,
    })
}

/// A plain string of a material.
fn plain(material: &Arc<Material>, diameter: Length) -> MakeUp {
    MakeUp::plain(Arc::clone(material), diameter).expect("the test's diameter can be made")
}
