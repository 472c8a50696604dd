//! What a string of a design would sound like when it is plucked: its partials with their force on the soundboard, and
//! how each dies away. Then samples of it, and a file.
//!
//! What is heard is the force on the soundboard at the end of the string. There is no soundbox, no room and no hand in
//! it: a sound to compare strings by, not a recording. Pitches, forces, bending and air follow from the design; what
//! the soundboard takes, what a second plane of swinging does and what a winding loses by friction are stand-ins,
//! figures of the usual size that say so.

pub mod air;
pub mod mix;
pub mod pattern;
pub mod render;
pub mod ringing;
mod shape;
pub mod voice;
pub mod wav;

use std::f64::consts::PI;

use self::air::air_loss;
use self::shape::Stepped;
pub use self::voice::{Partial, Voice};
use super::analysis::{
    Harp, HarpString, Known, MOST_PLUCK_RATIO, StringFigures, Unknown, figures, rigidity_n, stopped,
};
use super::construction::MakeUp;
use super::lever::ContactPlace;
use super::material::{Class, Pace};
use super::mechanics::{CENTS_PER_LOG, Core, bending_loss, inharmonicity, partial_cents};
use super::pitch::ratio;
use super::pluck::{pluck_force, pluck_glide_cents, release_tension_ratio};
use super::units::{Force, Frequency, Length, Mobility};

/// The highest partial that is worked out: few hear above it.
pub const HIGHEST_HZ: f64 = 16_000.0;
/// The most partials of a string.
const MOST_PARTIALS: u32 = 512;
/// What is smaller than this share of the finger's force is left out.
const LEAST_RATIO: f64 = 1e-6;

/// Loss factor of bending of a metal, a plastic and a natural material whose own is not known. A stand-in, from memory.
pub const USUAL_LOSS: (f64, f64, f64) = (1e-3, 0.02, 0.03);
/// The least loss factor with which a wound string bends, for the friction of its turns. A stand-in, no source.
pub const WINDING_LOSS: f64 = 0.03;
/// How much of the force of a pluck the soundboard gets from the second plane. A stand-in, no source.
pub const SECOND_FORCE_RATIO: f64 = 0.3;
/// How much of the soundboard's loss there is in the second plane. A stand-in, no source.
pub const SECOND_LOSS_RATIO: f64 = 0.25;
/// How much sharper the string swings in the second plane, in cents. A stand-in, no source.
pub const SECOND_CENTS: f64 = 0.7;

/// How a string is plucked, and what it is plucked on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ask {
    /// Semitones by which its lever or its discs raise it; 0 for the open string.
    pub raised: u32,
    /// Where the finger plucks, as a share of the open length from the soundboard.
    pub pluck_ratio: f64,
    /// How far the finger pulls the string aside, up to [`MOST_PLUCK_RATIO`] of its length.
    pub pluck: Length,
    /// Width of the fingertip along the string.
    pub finger: Length,
    /// How readily the soundboard gives at the string. The same for all pitches: a stand-in.
    pub board: Mobility,
    /// Whether the string also swings in a second plane: a stand-in.
    pub two_planes: bool,
}

impl Ask {
    /// As the harp is plucked, open, with a fingertip of 12 mm, common practice, and a soundboard that gives 3 mm/s
    /// for each newton, a figure of the usual size; no source for either.
    pub fn of(harp: &Harp) -> Self {
        Self {
            raised: 0,
            pluck_ratio: harp.pluck_ratio,
            pluck: harp.conditions.pluck,
            finger: Length::from_mm(12.0),
            board: Mobility::from_mm_per_s_per_n(3.0),
            two_planes: true,
        }
    }
}

/// A string as it sounds, open or raised.
struct Sounding {
    length: Length,
    tension: Force,
    pitch: Frequency,
    /// How much shorter than open it is, at the end of the bridge pin.
    off: Length,
}

/// A string of a harp when it is plucked. `index` counts from string 1, which is 0.
///
/// - Pitch of partial `n`: `n f₁` and what stiffness and bare ends add, as the engine has them.
/// - Force on the soundboard: `F 2 sin(nπβ)/(nπ)` of a plain string, exactly so of a stepped one; `F` is the force
///   of the finger before it lets go. A finger of the width `w` takes `exp(−(k w)²/24)` of it, as a force that is
///   spread like a bell does whose deviation is that of one spread evenly over `w`.
/// - Decay: `1/τ = π f (η_bend + η_air) + Y (T/L)(1 + B n²)`, with `Y` the mobility of the soundboard.
/// - Glide: it begins sharp as the swing stretches it, and settles with the energy of the first partial.
///
/// How the finger leaves the string, sympathetic strings, and what the soundboard's own resonances do are left out.
///
/// # Errors
///
/// What is not known and needed: pitch, length, make-up, modulus, overall diameter, or the lever.
///
/// # Source
///
/// Statics and modes of a string: N. H. Fletcher and T. D. Rossing, *The Physics of Musical Instruments*, 2nd ed.,
/// sections 2.7 and 2.12 (from memory); the stepped string and the sum of losses worked out for this project. That
/// losses add: as the work of each.
pub fn voice(harp: &Harp, index: usize, ask: &Ask) -> Known<Voice> {
    let string = harp.strings.get(index).ok_or(Unknown::Pitch)?;
    let figures = figures(index + 1, string, harp);
    let make_up = string.make_up.as_ref().map_err(|why| *why)?;
    let sounding = sounding(string, &figures, harp, ask.raised)?;
    let Sounding { length, tension, pitch, off } = sounding;
    let (material, _) = make_up.core().ok_or(Unknown::Core)?;
    let core = Core::of(make_up).ok_or(Unknown::Modulus)?;
    let (density, gauge) = (figures.linear_density?, figures.gauge?);
    let b = inharmonicity(core, length, tension);
    let stepped = stepped(make_up, length, off);
    // The finger stays where it is when a lever shortens the string at its other end.
    let at = ask.pluck_ratio * figures.length?.to_m() / length.to_m();
    if !(at > 0.0 && at < 1.0) {
        return Err(Unknown::OutOfReach);
    }
    let aside = Length::from_m(ask.pluck.to_m().min(MOST_PLUCK_RATIO * length.to_m()));
    let rigidity = rigidity_n(make_up, tension, Pace::Fast)?;
    let force_n = pluck_force(tension, length, at, rigidity, aside).to_n();
    let rise = release_tension_ratio(tension, length, at, rigidity, aside) - 1.0;
    let first_cents = pluck_glide_cents(tension, length, at, rigidity, aside);
    // The pull that tells on the higher partials is its mean, half of the rise.
    let other_cents = CENTS_PER_LOG * (0.5 * rise).ln_1p();
    let loss = bending_of(make_up, material.class, material.loss_factor.as_ref().map(|f| f.value));
    let board_per_s = ask.board.to_s_per_kg() * tension.to_n() / length.to_m();
    let finger = ask.finger.to_m() / length.to_m();

    let first = stepped.partial(1, at).ok_or(Unknown::OutOfReach)?;
    let (mut partials, mut second) = (Vec::new(), Vec::new());
    for n in 1..=MOST_PARTIALS {
        let shape = stepped.partial(n, at).ok_or(Unknown::OutOfReach)?;
        let times = f64::from(n) * shape.raised_ratio / first.raised_ratio;
        let hz = pitch.to_hz() * times * ratio(partial_cents(b, n));
        if !(hz > 0.0 && hz < HIGHEST_HZ) {
            break;
        }
        let spread = (shape.wave_number * finger).powi(2) / 24.0;
        let force_ratio = shape.force_ratio * (-spread).exp();
        let bending = b * f64::from(n) * f64::from(n);
        let own = bending_loss(b, n, loss) + air_loss(gauge, density, Frequency::from_hz(hz));
        let own_per_s = PI * hz * own;
        let board_per_s = board_per_s * (1.0 + bending) * shape.loss_ratio;
        let glide_cents = if n == 1 { first_cents } else { other_cents };
        if force_ratio.abs() < LEAST_RATIO {
            continue;
        }
        let force_n = force_ratio * force_n;
        let decay_s = 1.0 / (own_per_s + board_per_s);
        partials.push(Partial { hz, force_n, decay_s, glide_cents });
        second.push(Partial {
            hz: hz * ratio(SECOND_CENTS),
            force_n: SECOND_FORCE_RATIO * force_n,
            decay_s: 1.0 / (own_per_s + SECOND_LOSS_RATIO * board_per_s),
            glide_cents,
        });
    }
    // The energy falls twice as fast as the swing.
    let glide_fall_s = partials.first().map_or(0.0, |first| 0.5 * first.decay_s);
    if ask.two_planes {
        partials.append(&mut second);
    }
    let known = partials
        .iter()
        .all(|one| one.decay_s > 0.0 && (one.force_n + one.decay_s + one.glide_cents).is_finite());
    if known && !partials.is_empty() {
        Ok(Voice { partials, glide_fall_s })
    } else {
        Err(Unknown::OutOfReach)
    }
}

/// The harp with every string as thick as its tolerance allows, tuned to the same pitches: plain strings, and the cores
/// of wound ones. What cannot be made so stays as it is.
pub fn thickest(harp: &Harp) -> Harp {
    let mut harp = harp.clone();
    let usual = harp.conditions.tolerances.diameter;
    for string in &mut harp.strings {
        let Ok(make_up) = &string.make_up else { continue };
        let Some((material, diameter)) = make_up.core() else { continue };
        let stated = material.diameter_tolerance.as_ref();
        let room = stated.map_or(usual, |tolerance| tolerance.value.at(diameter));
        let thick = Length::from_m(diameter.to_m() + room.to_m());
        let made = match make_up {
            MakeUp::Plain { material, .. } => MakeUp::plain(material.clone(), thick),
            MakeUp::Wound(_) => {
                let layers = make_up.layers().to_vec();
                MakeUp::wound(material.clone(), thick, layers, make_up.bare_ends())
            }
            MakeUp::Weighed(_) => continue,
        };
        if let Ok(made) = made {
            string.make_up = Ok(made);
        }
    }
    harp
}

/// What sounds of a string: all of it, or what a lever or discs leave.
fn sounding(
    string: &HarpString,
    figures: &StringFigures,
    harp: &Harp,
    raised: u32,
) -> Known<Sounding> {
    let (length, tension, pitch) = (figures.length?, figures.tension?, figures.frequency?);
    if raised == 0 {
        return Ok(Sounding { length, tension, pitch, off: Length::from_m(0.0) });
    }
    let place: ContactPlace = match raised {
        1 => figures.lever.or(figures.disc_natural)?,
        2 => figures.disc_sharp?,
        _ => return Err(Unknown::NoLever),
    };
    let make_up = string.make_up.as_ref().map_err(|why| *why)?;
    let stopped = stopped(make_up, figures, &harp.conditions)?;
    let rest_m = length.to_m() - place.distance.to_m();
    Ok(Sounding {
        length: Length::from_m(rest_m.hypot(harp.conditions.push.to_m())),
        tension: stopped.pull(&place),
        pitch: Frequency::from_hz(pitch.to_hz() * ratio(100.0 * f64::from(raised))),
        off: place.distance,
    })
}

/// The string with its bare ends, of which a lever takes away its part at the bridge pin.
fn stepped(make_up: &MakeUp, length: Length, off: Length) -> Stepped {
    let (board, pin) = make_up.bare_ends();
    let pin_m = (pin.to_m() - off.to_m()).max(0.0);
    // Without bare ends the core does not count; that of a weighed string may not even be lighter than the whole.
    let core = make_up.core_linear_density().filter(|_| board.to_m() + pin_m > 0.0);
    let whole = make_up.linear_density().to_kg_per_m();
    let mass_ratio = core.map_or(1.0, |core| core.to_kg_per_m() / whole);
    Stepped { bare: (board.to_m() / length.to_m(), pin_m / length.to_m()), mass_ratio }
}

/// The loss factor of bending: of the core's material where it is known, else of its kind; with the friction of turns.
fn bending_of(make_up: &MakeUp, class: Class, known: Option<f64>) -> f64 {
    let (metal, polymer, natural) = USUAL_LOSS;
    let usual = match class {
        Class::Metal => metal,
        Class::Polymer => polymer,
        Class::Natural => natural,
    };
    let own = known.unwrap_or(usual);
    if make_up.layers().is_empty() { own } else { own.max(WINDING_LOSS) }
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::engine::analysis::{Conditions, Limits, Mechanism, analyse, partial_of};
    use crate::engine::construction::{Layer, Section};
    use crate::engine::material::{Material, built_in};
    use crate::engine::pitch::cents;
    use crate::engine::units::{LinearDensity, Stiffness};
    use crate::testing::assert_close;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    fn material(key: &str) -> Arc<Material> {
        Arc::new(built_in().into_iter().find(|one| one.key == key).expect("a built-in material"))
    }

    fn wound() -> MakeUp {
        let section = Section::Round { diameter: mm(0.3) };
        let layer = Layer { material: material("bronze"), section, packing_ratio: 1.0 };
        MakeUp::wound(material("steel"), mm(0.5), vec![layer], (mm(15.0), mm(30.0))).unwrap()
    }

    fn harp(make_up: MakeUp, length: Length, hz: f64) -> Harp {
        let string = HarpString {
            note: None,
            frequency: Ok(Frequency::from_hz(hz)),
            length: Ok(length),
            make_up: Ok(make_up),
            mechanism: Mechanism::Lever,
        };
        let limits = Limits {
            working_share_percent: 75.0,
            soft_share_percent: 75.0,
            slack_share_percent: 20.0,
            least_tension: Force::from_n(10.0),
            stiffness_band: (Stiffness::from_n_per_m(200.0), Stiffness::from_n_per_m(1500.0)),
            partial_8_cents: 30.0,
            jump_percent: 25.0,
            least_raise: mm(0.0),
        };
        let conditions = Conditions::default();
        Harp { strings: vec![string], pluck_ratio: 0.4, conditions, limits }
    }

    fn nylon() -> Harp {
        harp(MakeUp::plain(material("nylon"), mm(0.8)).unwrap(), mm(448.0), 440.0)
    }

    /// In one plane, so that the partials stand by themselves.
    fn plain_ask(harp: &Harp) -> Ask {
        Ask { two_planes: false, ..Ask::of(harp) }
    }

    #[test]
    fn partials_are_those_of_the_engine() {
        for harp in [nylon(), harp(wound(), mm(1200.0), 55.0)] {
            let figures = &analyse(&harp).strings[0];
            let make_up = harp.strings[0].make_up.as_ref().unwrap();
            // Next to the end, where no partial is missing.
            let ask = Ask { pluck_ratio: 0.011, finger: mm(1.0), ..plain_ask(&harp) };
            let voice = voice(&harp, 0, &ask).unwrap();
            let (length, tension) = (figures.length.unwrap(), figures.tension.unwrap());
            let first = voice.partials[0].hz;
            assert_close(first, figures.frequency.unwrap().to_hz(), 1e-12, "first");
            for n in 1..=24_u32 {
                let got = voice.partials[usize::try_from(n - 1).unwrap()].hz;
                let expected = partial_of(make_up, length, tension, n).unwrap();
                let sharp = cents(got / (f64::from(n) * first));
                assert!((sharp - expected).abs() < 1e-9, "partial {n}: {sharp}, {expected}");
            }
        }
    }

    /// By statics the soundboard bears `1 − β` of what the finger holds. A broad finger rounds the corner of the string,
    /// so that few partials are enough; the force at rest stays.
    #[test]
    fn all_partials_begin_with_what_the_finger_left_at_the_soundboard() {
        let harp = nylon();
        let force = analyse(&harp).strings[0].pluck_force.unwrap().to_n();
        let ask = Ask { finger: mm(50.0), ..plain_ask(&harp) };
        let sum: f64 = voice(&harp, 0, &ask).unwrap().partials.iter().map(|p| p.force_n).sum();
        assert_close(sum, 0.6 * force, 1e-3, "force at rest");
    }

    /// By hand: `Y T/L` alone, where nothing else is lost to speak of.
    #[test]
    fn a_soundboard_that_gives_takes_all_low_partials_at_one_pace() {
        let harp = nylon();
        let figures = &analyse(&harp).strings[0];
        let board = Mobility::from_mm_per_s_per_n(1e3);
        let voice = voice(&harp, 0, &Ask { board, ..plain_ask(&harp) }).unwrap();
        let per_s = figures.tension.unwrap().to_n() / 0.448;
        assert_close(voice.partials[0].decay_s, 1.0 / per_s, 0.02, "first partial");
        assert_close(voice.partials[1].decay_s, 1.0 / per_s, 0.02, "second partial");
    }

    #[test]
    fn the_losses_are_those_of_the_engine_and_of_the_air() {
        let harp = nylon();
        let figures = &analyse(&harp).strings[0];
        let board = Mobility::from_s_per_kg(0.0);
        let voice = voice(&harp, 0, &Ask { board, ..plain_ask(&harp) }).unwrap();
        // Partial 8 of a pluck at two fifths: five is missing, so it stands seventh.
        let eighth = voice.partials[6];
        let air = air_loss(mm(0.8), figures.linear_density.unwrap(), Frequency::from_hz(eighth.hz));
        let eta = figures.damping_eta.unwrap() + air;
        assert_close(eighth.decay_s, 1.0 / (PI * eighth.hz * eta), 1e-12, "partial 8");
    }

    #[test]
    fn a_lever_raises_every_partial_by_about_a_semitone() {
        let harp = nylon();
        let ask = plain_ask(&harp);
        let open = voice(&harp, 0, &ask).unwrap();
        let raised = voice(&harp, 0, &Ask { raised: 1, ..ask }).unwrap();
        assert_close(raised.partials[0].hz, open.partials[0].hz * ratio(100.0), 1e-12, "first");
        assert!(raised.partials[0].force_n != open.partials[0].force_n);
        let two = voice(&harp, 0, &Ask { raised: 2, ..ask });
        assert_eq!(two, Err(Unknown::NoDisc));
        let three = voice(&harp, 0, &Ask { raised: 3, ..ask });
        assert_eq!(three, Err(Unknown::NoLever));
    }

    #[test]
    fn a_hard_pluck_begins_sharp_and_a_soft_one_does_not() {
        let harp = nylon();
        let glide = |by: f64| {
            let ask = Ask { pluck: mm(by), ..plain_ask(&harp) };
            voice(&harp, 0, &ask).unwrap().partials[0].glide_cents
        };
        let figures = &analyse(&harp).strings[0];
        assert_close(glide(4.0), figures.glide_cents.unwrap(), 1e-12, "the engine's glide");
        assert!(glide(0.1) < 0.01);
    }

    #[test]
    fn the_second_plane_is_sharper_and_lasts_longer() {
        let harp = nylon();
        let both = voice(&harp, 0, &Ask::of(&harp)).unwrap().partials;
        let (one, other) = both.split_at(both.len() / 2);
        for (one, other) in one.iter().zip(other) {
            assert_close(cents(other.hz / one.hz), SECOND_CENTS, 1e-6, "sharper");
            assert!(other.decay_s > one.decay_s);
        }
    }

    #[test]
    fn a_thicker_string_pulls_more_on_the_soundboard_at_the_same_pitch() {
        for harp in [nylon(), harp(wound(), mm(1200.0), 55.0)] {
            let ask = plain_ask(&harp);
            let (usual, thick) = (voice(&harp, 0, &ask), voice(&thickest(&harp), 0, &ask));
            let first = |voice: Known<Voice>| voice.unwrap().partials[0];
            let (usual, thick) = (first(usual), first(thick));
            assert_close(thick.hz, usual.hz, 1e-12, "pitch");
            assert!(thick.force_n > usual.force_n);
        }
    }

    #[test]
    fn what_is_not_known_says_why() {
        let nylon = nylon();
        let ask = Ask::of(&nylon);
        assert_eq!(voice(&nylon, 1, &ask), Err(Unknown::Pitch));
        let at = |pluck_ratio| voice(&nylon, 0, &Ask { pluck_ratio, ..ask });
        for out in [0.0, -0.1, 1.0, f64::NAN] {
            assert_eq!(at(out), Err(Unknown::OutOfReach), "{out}");
        }
        let density = LinearDensity::from_g_per_m(1.0);
        let bare = MakeUp::weighed(density, None, None, None).unwrap();
        let weighed = harp(bare, mm(400.0), 440.0);
        assert_eq!(voice(&weighed, 0, &ask), Err(Unknown::Core));
    }
}
