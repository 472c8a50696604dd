//! What a design means: the harp as the engine takes it, and a sentence for each cell that cannot be
//! read.
//!
//! Nothing fails. An empty cell is no error; it only leaves a figure unknown. A setting out of reach
//! gives way to the usual one, with a sentence.

mod build;
mod drills;
mod geometry;
pub mod timber;
mod woods;

use std::sync::Arc;

pub use self::drills::Drills;
pub use self::geometry::curve;
use super::document::{
    Allowances, Design, GeometrySpec, LayerSpec, MakeUpSpec, MechanismKind, StringSpec,
    TemperamentSpec, WeighedSpec,
};
use super::letters;
use super::library;
use super::make_up_text;
use super::settings::Setting;
use super::typed::{self, Pitch, TypedError, cut};
use crate::engine::analysis::{
    Conditions, Harp, HarpString, Known, Limits, Mechanism, Tolerances, Unknown,
};
use crate::engine::bearing::Build;
use crate::engine::construction::{ConstructionError, Layer, MakeUp, Section};
use crate::engine::cut::Allowance;
use crate::engine::geometry::Geometry;
use crate::engine::material::Material;
use crate::engine::pitch::{Note, Temperament, Tuning};
use crate::engine::units::{Force, Frequency, Length, Stiffness};
use crate::words::{numeral, typed as say};

/// What a design means.
#[derive(Clone, Debug, PartialEq)]
pub struct Resolved {
    /// The harp as the engine takes it.
    pub harp: Harp,
    /// The shape of the harp.
    pub geometry: Geometry,
    /// What holes are drilled with.
    pub drills: Drills,
    /// What was typed of neck, pillar and board.
    parts: GeometrySpec,
    /// What is wrong with the cells of each string, in the design's order.
    pub cells: Vec<CellErrors>,
    /// What is wrong with the settings of the whole design.
    pub errors: Vec<String>,
}

impl Resolved {
    /// What neck, pillar and board are made of. Worked out when it is asked for: the woods come with the drawing.
    pub fn build(&self) -> Build {
        let pin_mm = self.drills.tuning_pin.map_or(0.0, Length::to_mm);
        let allowances = Allowances { pin_mm, ..Allowances::default() };
        build::build(&Design { geometry: self.parts.clone(), allowances, ..Design::default() })
    }
}

/// What is wrong with the cells of one string. A cell that is empty or can be read has no sentence.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct CellErrors {
    pub note: Option<String>,
    pub length: Option<String>,
    /// Materials, core, layers, bare ends, and what was weighed.
    pub make_up: Option<String>,
    /// The diameter of a plain string, the overall diameter of a weighed one.
    pub gauge: Option<String>,
}

impl CellErrors {
    /// Whether every cell is empty or can be read.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// Reads a whole design.
pub fn resolve(design: &Design) -> Resolved {
    let mut errors: Vec<String> =
        Setting::ALL.into_iter().filter_map(|setting| setting.wrong(design)).collect();
    let tuning = tuning(design);
    let limits = limits(design, &mut errors);
    let geometry = geometry::geometry(design, &mut errors);
    let drills = drills::drills(design);
    build::wrong(&design.geometry, &mut errors);
    let conditions = conditions(design, geometry.board_angle_rad);
    let pluck_ratio = Setting::Pluck.number(design) / 100.0;
    let mut shelf = Shelf { design, found: Vec::new() };
    let (mut strings, cells): (Vec<HarpString>, _) =
        design.strings.iter().map(|s| string(s, tuning, &mut shelf)).unzip();
    geometry::follow_curve(&design.geometry, &geometry, &mut strings, &mut errors);
    let harp = Harp { strings, pluck_ratio, conditions, limits };
    Resolved { harp, geometry, drills, parts: design.geometry.clone(), cells, errors }
}

fn string<'a>(
    spec: &'a StringSpec,
    tuning: Tuning,
    shelf: &mut Shelf<'a>,
) -> (HarpString, CellErrors) {
    let mut errors = CellErrors::default();
    let pitch = cell(&spec.note, typed::pitch, &mut errors.note);
    let (note, frequency): (Option<Note>, Option<Frequency>) = match pitch {
        Some(Pitch::Note(note)) => (Some(note), Some(tuning.frequency(note))),
        Some(Pitch::Frequency(frequency)) => (None, Some(frequency)),
        None => (None, None),
    };
    let length = cell(&spec.length, typed::length, &mut errors.length);
    let make_up = make_up(&spec.make_up, shelf, &mut errors);
    let frequency: Known<Frequency> = frequency.ok_or(Unknown::Pitch);
    let length = length.ok_or(Unknown::Length);
    let mechanism = mechanism(spec.mechanism.unwrap_or(shelf.design.mechanism.kind));
    let make_up = make_up.ok_or(Unknown::MakeUp);
    (HarpString { note, frequency, length, make_up, mechanism }, errors)
}

/// The materials already looked up, by the text that names them: once for each design.
struct Shelf<'a> {
    design: &'a Design,
    found: Vec<(&'a str, Result<Arc<Material>, String>)>,
}

impl<'a> Shelf<'a> {
    /// The material that a text means; `None` with a sentence in `error` when there is none that can
    /// be used, without one when the text is empty.
    fn take(&mut self, text: &'a str, error: &mut Option<String>) -> Option<Arc<Material>> {
        if text.trim().is_empty() {
            return None;
        }
        let known = self.found.iter().position(|(name, _)| *name == text);
        let place = known.unwrap_or_else(|| {
            self.found.push((text, look_up(self.design, text)));
            self.found.len() - 1
        });
        match &self.found.get(place)?.1 {
            Ok(material) => Some(material.clone()),
            Err(sentence) => {
                error.get_or_insert_with(|| sentence.clone());
                None
            }
        }
    }
}

fn look_up(design: &Design, text: &str) -> Result<Arc<Material>, String> {
    let Some(spec) = library::find(&design.materials, text) else {
        // A make-up that cannot be taken apart is kept here as it was typed.
        return Err(match make_up_text::read(text) {
            Err(error) => error.to_string(),
            Ok(_) if says_wound(text) => say::wound_without_parts(&cut(text)),
            Ok(_) => say::material_unknown(&cut(text)),
        });
    };
    library::material_of(spec).map(Arc::new).map_err(|error| error.to_string())
}

/// Whether somebody wrote that a string is wound, in English, German or French, and not with what.
fn says_wound(text: &str) -> bool {
    const WOUND: [&str; 8] =
        ["wound", "overwound", "wrapped", "overspun", "covered", "umsponnen", "filée", "filé"];
    letters::small(text).split_whitespace().any(|word| WOUND.contains(&word))
}

fn make_up<'a>(
    spec: &'a MakeUpSpec,
    shelf: &mut Shelf<'a>,
    errors: &mut CellErrors,
) -> Option<MakeUp> {
    let material = shelf.take(&spec.material, &mut errors.make_up);
    let plain = !spec.is_wound() && spec.weighed.is_none();
    let at = if plain { &mut errors.gauge } else { &mut errors.make_up };
    let diameter = cell(&spec.diameter, typed::gauge, at);
    let core = material.zip(diameter);
    let made = match &spec.weighed {
        Some(weighed) => self::weighed(weighed, core, errors)?,
        None if spec.is_wound() => wound(spec, core, shelf, errors)?,
        None => {
            let (material, diameter) = core?;
            MakeUp::plain(material, diameter)
        }
    };
    made.map_err(|error| errors.make_up.get_or_insert_with(|| error.to_string())).ok()
}

type Made = Result<MakeUp, ConstructionError>;

/// A wound string; `None` when a part is missing or cannot be read.
fn wound<'a>(
    spec: &'a MakeUpSpec,
    core: Option<(Arc<Material>, Length)>,
    shelf: &mut Shelf<'a>,
    errors: &mut CellErrors,
) -> Option<Made> {
    // Every part is read before the first one that is missing ends it, so that each says what is wrong.
    let layers: Vec<Option<Layer>> =
        spec.layers.iter().map(|layer| self::layer(layer, shelf, errors)).collect();
    let mut end = |text: &str| match text.trim() {
        "" => Some(Length::from_m(0.0)),
        text => cell(text, typed::bare_end, &mut errors.make_up),
    };
    let bare = (end(&spec.bare.board), end(&spec.bare.pin));
    let (material, diameter) = core?;
    let layers = layers.into_iter().collect::<Option<_>>()?;
    Some(MakeUp::wound(material, diameter, layers, (bare.0?, bare.1?)))
}

/// A weighed string; `None` when its mass is missing or cannot be read.
fn weighed(
    spec: &WeighedSpec,
    core: Option<(Arc<Material>, Length)>,
    errors: &mut CellErrors,
) -> Option<Made> {
    let mass = cell(&spec.g_per_m, typed::mass_per_metre, &mut errors.make_up);
    let gauge = cell(&spec.gauge, typed::gauge, &mut errors.gauge);
    let breaks = cell(&spec.breaks_n, typed::load, &mut errors.make_up);
    Some(MakeUp::weighed(mass?, core, gauge, breaks))
}

fn layer<'a>(spec: &'a LayerSpec, shelf: &mut Shelf<'a>, errors: &mut CellErrors) -> Option<Layer> {
    let material = shelf.take(&spec.material, &mut errors.make_up);
    let thickness = cell(&spec.size, typed::gauge, &mut errors.make_up);
    let section = if spec.is_ribbon() {
        let width = cell(&spec.width, typed::gauge, &mut errors.make_up);
        thickness.zip(width).map(|(thickness, width)| Section::Ribbon { thickness, width })
    } else {
        thickness.map(|diameter| Section::Round { diameter })
    };
    let packing_ratio = spec.packing_percent / 100.0;
    Some(Layer { material: material?, section: section?, packing_ratio })
}

/// What a cell says; `None` when it is empty, and with a sentence when it cannot be read.
fn cell<T>(
    text: &str,
    read: impl Fn(&str) -> Result<T, TypedError>,
    error: &mut Option<String>,
) -> Option<T> {
    if text.trim().is_empty() {
        return None;
    }
    read(text).map_err(|why| error.get_or_insert_with(|| why.to_string())).ok()
}

/// The engine's temperament.
pub const fn temperament(spec: TemperamentSpec) -> Temperament {
    match spec {
        TemperamentSpec::Equal => Temperament::Equal,
        TemperamentSpec::Pythagorean => Temperament::Pythagorean,
        TemperamentSpec::QuarterCommaMeantone => Temperament::QuarterCommaMeantone,
        TemperamentSpec::WerckmeisterThree => Temperament::WerckmeisterThree,
        TemperamentSpec::Vallotti => Temperament::Vallotti,
        TemperamentSpec::YoungTwo => Temperament::YoungTwo,
        TemperamentSpec::JustOnC => Temperament::JustOnC,
    }
}

/// Its reference pitch and its temperament; the usual ones where they cannot be used.
pub(super) fn tuning(design: &Design) -> Tuning {
    let a4 = Frequency::from_hz(Setting::A4.number(design));
    Tuning::new(a4, temperament(design.pitch.temperament)).unwrap_or_default()
}

/// The engine's mechanism.
pub const fn mechanism(kind: MechanismKind) -> Mechanism {
    match kind {
        MechanismKind::None => Mechanism::None,
        MechanismKind::Lever => Mechanism::Lever,
        MechanismKind::SingleDisc => Mechanism::SingleDisc,
        MechanismKind::DoubleDisc => Mechanism::DoubleDisc,
    }
}

fn conditions(design: &Design, board_angle_rad: f64) -> Conditions {
    let of = |setting: Setting| setting.number(design);
    let mm = |setting: Setting| Length::from_mm(of(setting));
    let partial = Setting::DampingPartial;
    let damping_partial = match partial.wrong(design) {
        None => design.damping_partial,
        Some(_) => Design::default().damping_partial,
    };
    let tolerances = Tolerances {
        length: mm(Setting::LengthOff),
        pitch_cents: of(Setting::PitchOff),
        temperature_k: of(Setting::TemperatureOff),
        push: mm(Setting::PushOff),
        diameter: mm(Setting::DiameterOff),
        density_ratio: of(Setting::DensityOff) / 100.0,
    };
    Conditions {
        pluck: mm(Setting::PluckBy),
        damping_partial,
        allowance: usable_allowance(design),
        push: mm(Setting::Push),
        frame_expansion_per_k: of(Setting::FrameExpansion) * 1e-6,
        board_angle_rad,
        tolerances,
    }
}

/// What a string needs beyond its vibrating length, as the engine takes it. None when a part makes no sense: the
/// usual one might be too short.
pub fn allowance(design: &Design) -> Option<Allowance> {
    let parts =
        [Setting::AfterLength, Setting::Turns, Setting::TuningPin, Setting::Knot, Setting::Tail];
    let is_known = parts.iter().all(|part| part.wrong(design).is_none());
    is_known.then(|| usable_allowance(design))
}

/// The same, with the usual part for each that makes no sense.
fn usable_allowance(design: &Design) -> Allowance {
    let mm = |setting: Setting| Length::from_mm(setting.number(design));
    let (after, turns, pin) =
        (mm(Setting::AfterLength), Setting::Turns.number(design), mm(Setting::TuningPin));
    Allowance::new(after, turns, pin, mm(Setting::Knot), mm(Setting::Tail)).unwrap_or_default()
}

fn limits(design: &Design, errors: &mut Vec<String>) -> Limits {
    let of = |setting: Setting| setting.number(design);
    let (working, slack) = (of(Setting::WorkingShare), of(Setting::SlackShare));
    let (low, high) = (of(Setting::LeastStiffness), of(Setting::MostStiffness));
    if slack >= working {
        errors.push(say::shares_crossed(&numeral(working), &numeral(slack)));
    }
    if low > high {
        errors.push(say::stiffness_crossed(&numeral(high), &numeral(low)));
    }
    let stiffness = Stiffness::from_n_per_mm;
    Limits {
        working_share_percent: working,
        soft_share_percent: of(Setting::SoftShare),
        slack_share_percent: slack,
        least_tension: Force::from_n(of(Setting::LeastTension)),
        stiffness_band: (stiffness(low.min(high)), stiffness(low.max(high))),
        partial_8_cents: of(Setting::Partial8),
        jump_percent: of(Setting::Jump),
        least_raise: Length::from_mm(of(Setting::LeastRaise)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{LimitsSpec, PitchSpec};
    use crate::engine::analysis::analyse;
    use crate::testing::assert_close;

    fn string(note: &str, length: &str, make_up: &str) -> StringSpec {
        let make_up = make_up_text::read(make_up).unwrap();
        let (note, length) = (note.to_owned(), length.to_owned());
        StringSpec { note, length, make_up, ..StringSpec::default() }
    }

    fn of(strings: Vec<StringSpec>) -> Resolved {
        resolve(&Design { strings, ..Design::default() })
    }

    fn one(note: &str, length: &str, make_up: &str) -> (HarpString, CellErrors) {
        let resolved = of(vec![string(note, length, make_up)]);
        (resolved.harp.strings[0].clone(), resolved.cells[0].clone())
    }

    #[test]
    fn a_string_means_what_was_typed() {
        let (string, errors) = one("A4", "61.2 cm", "nylon 32 thou");
        assert!(errors.is_empty(), "{errors:?}");
        assert_eq!(string.note.map(|note| note.to_string()).as_deref(), Some("A4"));
        assert_close(string.frequency.unwrap().to_hz(), 440.0, 1e-12, "pitch");
        assert_close(string.length.unwrap().to_mm(), 612.0, 1e-12, "length");
        let make_up = string.make_up.unwrap();
        assert_close(make_up.gauge().unwrap().to_mm(), 0.8128, 1e-12, "gauge");
        assert_eq!(make_up.core().unwrap().0.key, "nylon");
        let (string, errors) = one("443.2 Hz", "", "");
        assert!(errors.is_empty(), "{errors:?}");
        assert_eq!((string.note, string.frequency), (None, Ok(Frequency::from_hz(443.2))));
    }

    #[test]
    fn a_wound_string_has_its_layers_and_bare_ends() {
        let (string, errors) = one(
            "A2",
            "900",
            "steel 0.45 + silk 0.10 at 90 % + bronze 0.15 x 0.60, bare 12 board 15 pin",
        );
        assert!(errors.is_empty(), "{errors:?}");
        let make_up = string.make_up.unwrap();
        assert_close(make_up.gauge().unwrap().to_mm(), 0.95, 1e-12, "gauge");
        assert_close(make_up.layers()[0].packing_ratio, 0.9, 1e-12, "packing");
        let bare = make_up.bare_ends();
        assert_close(bare.0.to_mm(), 12.0, 1e-12, "board");
        assert_close(bare.1.to_mm(), 15.0, 1e-12, "pin");
    }

    #[test]
    fn a_weighed_string_has_what_was_measured() {
        let (string, errors) =
            one("A2", "900", "weighed 6.75 g/m, core steel 0.50, gauge 1.10, breaks 48 kgf");
        assert!(errors.is_empty(), "{errors:?}");
        let make_up = string.make_up.unwrap();
        assert_close(make_up.linear_density().to_g_per_m(), 6.75, 1e-12, "mass");
        assert_close(make_up.breaking_load().unwrap().to_kgf(), 48.0, 1e-12, "load");
        let (string, errors) = one("A2", "900", "weighed 6.75");
        assert!(errors.is_empty(), "{errors:?}");
        assert_eq!(string.make_up.unwrap().core(), None);
    }

    #[test]
    fn an_empty_cell_is_no_error() {
        for (note, length, make_up) in [
            ("", "", ""),
            (" ", " ", "nylon"),
            ("A4", "612", "0.81"),
            ("A4", "612", "steel 0.45 + []"),
            ("A4", "612", "steel 0.45 + bronze"),
            ("A4", "612", "steel + bronze 0.2"),
            ("A4", "612", "weighed"),
        ] {
            let (string, errors) = one(note, length, make_up);
            assert!(errors.is_empty(), "{make_up}: {errors:?}");
            assert_eq!(string.make_up, Err(Unknown::MakeUp), "{make_up}");
        }
        let (string, _) = one("", "", "nylon 0.81");
        assert_eq!((string.frequency, string.length), (Err(Unknown::Pitch), Err(Unknown::Length)));
        assert!(string.make_up.is_ok());
    }

    #[test]
    fn each_cell_says_what_is_wrong_with_it() {
        let (string, errors) = one("H4", "long", "mithril 32");
        assert!(errors.note.unwrap().contains("\"H4\""));
        assert!(errors.length.unwrap().contains("\"long\""));
        assert!(errors.make_up.unwrap().contains("\"mithril\""));
        assert!(errors.gauge.unwrap().contains("did you mean"));
        assert_eq!(string.make_up, Err(Unknown::MakeUp));
        for (make_up, part) in [
            ("steel 32 + bronze 0.2", "the gauge"),
            ("steel 0.45 + mithril 0.2", "\"mithril\""),
            ("steel 0.45 + bronze 0.2 + bronze 32", "\"32\""),
            ("steel 0.45 + bronze 0.2 x 32", "\"32\""),
            ("steel 0.45 + bronze 0.2 at 120 %", "got 120 %"),
            ("steel 0.45 + bronze 0.2, bare 999 pin", "bare core"),
            ("weighed 6.75, core mithril 0.5", "\"mithril\""),
            ("weighed 0", "mass per metre"),
            ("weighed 6.75, breaks never", "\"never\""),
            ("weighed 6.75, core steel 1.2, gauge 1.1", "the core"),
        ] {
            let (string, errors) = one("A4", "612", make_up);
            assert!(errors.make_up.as_ref().unwrap().contains(part), "{make_up}: {errors:?}");
            assert_eq!(errors.gauge, None, "{make_up}");
            assert!(string.make_up.is_err() || make_up.starts_with("weighed 6.75"), "{make_up}");
        }
        let (_, errors) = one("A4", "612", "weighed 6.75, gauge thick");
        assert!(errors.gauge.unwrap().contains("\"thick\""));
    }

    #[test]
    fn a_material_is_looked_up_once() {
        let resolved =
            of(vec![string("A4", "448", "nylon 0.81"), string("G4", "500", "nylon 0.91")]);
        let core =
            |index: usize| resolved.harp.strings[index].make_up.as_ref().unwrap().core().unwrap().0;
        assert!(Arc::ptr_eq(core(0), core(1)));
    }

    #[test]
    fn a_material_that_cannot_be_used_says_why() {
        let mut nylon = library::built_in()[0].clone();
        nylon.density_kg_per_m3.value = 1e9;
        let strings = vec![string("A4", "448", "nylon 0.81")];
        let resolved = resolve(&Design { strings, materials: vec![nylon], ..Design::default() });
        assert!(resolved.cells[0].make_up.as_ref().unwrap().contains("density of \"nylon\""));
    }

    #[test]
    fn settings_out_of_reach_give_way_to_the_usual_ones() {
        assert_eq!(of(vec![]).errors, Vec::<String>::new());
        let usual = of(vec![]).harp;
        for wrong in [f64::NAN, f64::INFINITY, -1.0, 1e9] {
            let design = Design {
                pitch: PitchSpec { a4_hz: wrong, temperament: TemperamentSpec::Vallotti },
                pluck_percent: wrong,
                limits: LimitsSpec {
                    working_share_percent: wrong,
                    soft_share_percent: wrong,
                    slack_share_percent: wrong,
                    least_tension_n: wrong,
                    least_stiffness_n_per_mm: wrong,
                    most_stiffness_n_per_mm: wrong,
                    partial_8_cents: wrong,
                    jump_percent: wrong,
                    least_raise_mm: wrong,
                },
                strings: vec![string("A4", "448", "nylon 0.81")],
                ..Design::default()
            };
            let resolved = resolve(&design);
            assert_eq!(resolved.errors.len(), 11, "{:?}", resolved.errors);
            assert_eq!(resolved.harp.limits, usual.limits, "{wrong}");
            assert_eq!(resolved.harp.pluck_ratio, usual.pluck_ratio, "{wrong}");
            let hz = resolved.harp.strings[0].frequency.unwrap().to_hz();
            assert_close(hz, 440.0, 1e-12, "A4");
        }
    }

    #[test]
    fn the_temperament_comes_through() {
        let pitch = PitchSpec { a4_hz: 415.0, temperament: TemperamentSpec::Pythagorean };
        let strings = vec![string("E5", "300", "nylon 0.6")];
        let resolved = resolve(&Design { pitch, strings, ..Design::default() });
        let hz = resolved.harp.strings[0].frequency.unwrap().to_hz();
        assert_close(hz, 415.0 * 1.5, 1e-12, "a pure fifth up");
    }

    #[test]
    fn a_design_goes_through_to_its_figures() {
        // 4 × 0.448² × 440² × 1140 × π/4 × 0.81e-3² is the flexible string's pull.
        let analysis = analyse(&of(vec![string("A4", "448", "nylon 0.81")]).harp);
        let pull = analysis.strings[0].tension.unwrap().to_n();
        assert!(pull > 90.0 && pull < 91.3, "{pull}");
    }
}
