//! Every figure of one string.

use std::f64::consts::PI;

use super::pull::{Made, finite, stiffness_of, usable_length, usable_pitch};
use super::{Conditions, Harp, HarpString, Known, Mechanism, StringFigures, Unknown};
use crate::engine::construction::{MakeUp, area_m2};
use crate::engine::cut::cut_length;
use crate::engine::lever::{LeverError, Stopped};
use crate::engine::material::{Class, Pace};
use crate::engine::mechanics::{
    Core, bare_end_inharmonicity, bending_loss, impedance, inharmonicity, partial_cents,
    semitones_to_break, stress,
};
use crate::engine::pluck::{pluck_force, pluck_glide_cents};
use crate::engine::stepped::bare_end_cents;
use crate::engine::take_up::{cents_per_kelvin, cents_per_pin_degree, pin_turns, strain, stretch};
use crate::engine::units::{Force, Impedance, Length, LinearDensity, Stress};

/// Every figure of one string of a harp.
pub(in crate::engine) fn figures(number: usize, string: &HarpString, harp: &Harp) -> StringFigures {
    let frequency = usable_pitch(string.frequency);
    let length = usable_length(string.length);
    let make_up = string.make_up.as_ref().map_err(|why| *why);
    let linear_density = finite(make_up.map(MakeUp::linear_density), LinearDensity::to_kg_per_m);
    let made = make_up.map(Made::of);
    let tension = made.and_then(|made| made.tension(frequency?, length?));
    let core = make_up.and_then(|m| m.core().map(|(_, d)| d).ok_or(Unknown::Core));
    let breaking_load = made.and_then(|made| made.breaking_load);
    let load = both(tension, breaking_load);
    let inharmonicity_b = make_up.and_then(|m| inharmonicity_of(m, length?, tension?));
    let inharmonicity_b = finite(inharmonicity_b, |b| b);
    let stress = finite(both(tension, core).map(|(pull, d)| stress(pull, d)), Stress::to_pa);
    let mut figures = StringFigures {
        number,
        note: string.note,
        frequency,
        length,
        gauge: make_up.and_then(|make_up| make_up.gauge().ok_or(Unknown::Gauge)),
        core,
        linear_density,
        tension,
        stress,
        breaking_load,
        load_share_percent: made.and_then(|made| made.share_percent(tension?)),
        semitones_to_break: finite(load.map(|(t, most)| semitones_to_break(t, most)), |x| x),
        pluck_stiffness: both(tension, length)
            .and_then(|(pull, length)| stiffness_of(pull, length, harp.pluck_ratio)),
        inharmonicity_b,
        partial_8_cents: make_up.and_then(|m| partial_of(m, length?, tension?, 8)),
        impedance: finite(
            both(tension, linear_density).map(|(pull, density)| impedance(pull, density)),
            Impedance::to_kg_per_s,
        ),
        damping_eta: Err(Unknown::MakeUp),
        stretch: Err(Unknown::MakeUp),
        pin_turns: Err(Unknown::MakeUp),
        cents_per_pin_degree: Err(Unknown::MakeUp),
        cents_per_kelvin: Err(Unknown::MakeUp),
        lever: Err(Unknown::NoLever),
        disc_natural: Err(Unknown::NoDisc),
        disc_sharp: Err(Unknown::NoDisc),
        lift: Err(Unknown::MakeUp),
        along_board: Err(Unknown::MakeUp),
        cut_length: Err(Unknown::MakeUp),
        pluck_force: Err(Unknown::MakeUp),
        glide_cents: Err(Unknown::MakeUp),
    };
    vibration(&mut figures, make_up, harp);
    on_board(&mut figures, harp.conditions.board_angle_rad);
    take_up(&mut figures, make_up, &harp.conditions);
    raised(&mut figures, make_up, string.mechanism, &harp.conditions);
    figures
}

/// Damping, and what a finger meets and leaves: the modulus of vibration.
fn vibration(figures: &mut StringFigures, make_up: Known<&MakeUp>, harp: &Harp) {
    let damping_partial = harp.conditions.damping_partial;
    figures.damping_eta = make_up.and_then(|make_up| {
        if !make_up.layers().is_empty() {
            return Err(Unknown::WoundDamping);
        }
        let (length, tension) = both(figures.length, figures.tension)?;
        let material = make_up.core().ok_or(Unknown::Core)?.0;
        let core = Core::of(make_up).ok_or(Unknown::Modulus)?;
        let loss = material.loss_factor.as_ref().ok_or(Unknown::LossFactor)?.value;
        let b = inharmonicity(core, length, tension);
        finite(Ok(bending_loss(b, damping_partial, loss)), |eta| eta)
    });
    let stretched = make_up.and_then(|make_up| {
        let (length, tension) = both(figures.length, figures.tension)?;
        if !(harp.pluck_ratio > 0.0 && harp.pluck_ratio < 1.0) {
            return Err(Unknown::OutOfReach);
        }
        Ok((length, tension, rigidity_n(make_up, tension, Pace::Fast)?))
    });
    let ratio = harp.pluck_ratio;
    let aside = |length: Length| harp.conditions.pluck_of(length);
    let force = stretched.map(|(l, t, rigidity)| pluck_force(t, l, ratio, rigidity, aside(l)));
    figures.pluck_force = finite(force, Force::to_n);
    let glide =
        stretched.map(|(l, t, rigidity)| pluck_glide_cents(t, l, ratio, rigidity, aside(l)));
    figures.glide_cents = finite(glide, |cents| cents);
}

/// What the string does to the soundboard: the parts of its pull, `T sin θ` and `T cos θ`.
fn on_board(figures: &mut StringFigures, angle_rad: f64) {
    let (sine, cosine) = angle_rad.sin_cos();
    let usable = angle_rad > 0.0 && angle_rad < PI;
    let part = |share: f64| {
        let tension = figures.tension?;
        if !usable {
            return Err(Unknown::OutOfReach);
        }
        finite(Ok(Force::from_n(share * tension.to_n())), Force::to_n)
    };
    (figures.lift, figures.along_board) = (part(sine), part(cosine));
}

/// Stretch, tuning, temperature and the length to cut.
fn take_up(figures: &mut StringFigures, make_up: Known<&MakeUp>, conditions: &Conditions) {
    let Conditions { allowance, frame_expansion_per_k, .. } = conditions;
    let material = make_up.and_then(|m| m.core().map(|(m, _)| m.as_ref()).ok_or(Unknown::Core));
    let modulus = |pace: Pace, why: Unknown| {
        material.and_then(|material| material.modulus_at(pace).ok_or(why))
    };
    let between = figures.length.map(|length| allowance.between_fixings(length));
    figures.stretch = modulus(Pace::Slow, Unknown::SlowModulus).and_then(|slow| {
        let strained = strain(slow, figures.stress?);
        let strained = strained.ok_or(Unknown::OutOfReach)?;
        finite(Ok(stretch(strained, between?)), Length::to_m)
    });
    let on_pin = both(figures.stretch, figures.gauge);
    let turns = on_pin.map(|(stretch, gauge)| pin_turns(stretch, allowance.pin(), gauge));
    figures.pin_turns = finite(turns, |turns| turns);
    let degree = modulus(Pace::Intermediate, Unknown::IntermediateModulus).and_then(|modulus| {
        let stress = figures.stress?;
        let modulus = modulus.at(stress);
        Ok(cents_per_pin_degree(modulus, stress, allowance.pin(), figures.gauge?, between?))
    });
    figures.cents_per_pin_degree = finite(degree, |cents| cents);
    let kelvin = material.and_then(|material| {
        match material.class {
            Class::Metal => {}
            Class::Polymer => return Err(Unknown::PolymerDrift),
            Class::Natural => return Err(Unknown::NaturalDrift),
        }
        let expansion = material.expansion_per_k.as_ref().ok_or(Unknown::Expansion)?.value;
        let modulus = material.modulus_at(Pace::Intermediate).ok_or(Unknown::Modulus)?;
        let stress = figures.stress?;
        Ok(cents_per_kelvin(modulus.at(stress), stress, expansion, *frame_expansion_per_k))
    });
    figures.cents_per_kelvin = finite(kelvin, |cents| cents);
    figures.cut_length = both(figures.length, figures.gauge)
        .map(|(length, gauge)| cut_length(length, gauge, allowance));
}

/// Where levers and discs touch.
fn raised(
    figures: &mut StringFigures,
    make_up: Known<&MakeUp>,
    mechanism: Mechanism,
    conditions: &Conditions,
) {
    if mechanism == Mechanism::None {
        return;
    }
    let stopped = make_up.and_then(|make_up| stopped(make_up, figures, conditions));
    let first = stopped.as_ref().map_err(|why| *why).and_then(|s| s.place(1).map_err(why_no_place));
    match mechanism {
        Mechanism::None => {}
        Mechanism::Lever => figures.lever = first,
        Mechanism::SingleDisc => figures.disc_natural = first,
        Mechanism::DoubleDisc => {
            figures.disc_natural = first;
            figures.disc_sharp =
                stopped.and_then(|s| s.sharp_place(first?.distance).map_err(why_no_place));
        }
    }
}

/// A string as a lever or a disc meets it.
pub fn stopped(
    make_up: &MakeUp,
    figures: &StringFigures,
    conditions: &Conditions,
) -> Known<Stopped> {
    let (length, tension) = both(figures.length, figures.tension)?;
    Ok(Stopped {
        length,
        tension,
        core: Core::of(make_up),
        stretch_rigidity_n: rigidity_n(make_up, tension, Pace::Intermediate)?,
        between_fixings: conditions.allowance.between_fixings(length),
        push: conditions.push,
    })
}

const fn why_no_place(error: LeverError) -> Unknown {
    match error {
        LeverError::TooMuchPush { .. } => Unknown::TooMuchPush,
        _ => Unknown::OutOfReach,
    }
}

/// Modulus times area of what carries the pull, in newtons: the pull per strain.
pub(in crate::engine) fn rigidity_n(make_up: &MakeUp, tension: Force, pace: Pace) -> Known<f64> {
    let (material, diameter) = make_up.core().ok_or(Unknown::Core)?;
    let why = match pace {
        Pace::Fast => Unknown::Modulus,
        Pace::Intermediate => Unknown::IntermediateModulus,
        Pace::Slow => Unknown::SlowModulus,
    };
    let modulus = material.modulus_at(pace).ok_or(why)?;
    let area = area_m2(diameter);
    finite(Ok(modulus.at(Stress::from_pa(tension.to_n() / area)).to_pa() * area), |n| n)
}

/// How sharp a partial of a string is against its multiple of the first, in cents: by the stiffness of
/// the core, and exactly by the bare ends of a wound string.
pub fn partial_of(make_up: &MakeUp, length: Length, tension: Force, partial: u32) -> Known<f64> {
    let (stiff, bare) = partial_parts(make_up, length, tension, partial)?;
    finite(Ok(stiff + bare), |cents| cents)
}

/// What the stiffness of the core and what the bare ends add to a partial, in cents.
pub fn partial_parts(
    make_up: &MakeUp,
    length: Length,
    tension: Force,
    partial: u32,
) -> Known<(f64, f64)> {
    let core = Core::of(make_up).ok_or(Unknown::Modulus)?;
    let stiff = partial_cents(inharmonicity(core, length, tension), partial);
    let (board, pin) = make_up.bare_ends();
    let bare = match make_up.core_linear_density() {
        Some(density) if board.to_m() + pin.to_m() > 0.0 => {
            let ratio = density.to_kg_per_m() / make_up.linear_density().to_kg_per_m();
            bare_end_cents((board, pin), length, ratio, partial).ok_or(Unknown::OutOfReach)?
        }
        _ => 0.0,
    };
    finite(Ok(stiff), |cents| cents).map(|stiff| (stiff, bare))
}

fn inharmonicity_of(make_up: &MakeUp, length: Length, tension: Force) -> Known<f64> {
    let core = Core::of(make_up).ok_or(Unknown::Modulus)?;
    Ok(inharmonicity(core, length, tension) + of_bare_ends(make_up, length))
}

/// What the two bare ends of a wound string add to its inharmonicity.
fn of_bare_ends(make_up: &MakeUp, length: Length) -> f64 {
    let Some(core) = make_up.core_linear_density() else { return 0.0 };
    let mass_ratio = core.to_kg_per_m() / make_up.linear_density().to_kg_per_m();
    let ends = make_up.bare_ends();
    [ends.0, ends.1].iter().map(|end| bare_end_inharmonicity(*end, length, mass_ratio)).sum()
}

fn both<A, B>(one: Known<A>, other: Known<B>) -> Known<(A, B)> {
    Ok((one?, other?))
}
