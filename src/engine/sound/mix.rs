//! Sounds that are compared, piece by piece, so that the first piece is heard while the rest is rendered: equally loud,
//! within the limit, and without a step from piece to piece.
//!
//! How loud each is follows from its partials in closed form. How high its peak will be is known of the first pieces and
//! estimated beyond them. A piece is given when the next one is known: should that go beyond the limit after all, all
//! sounds fall in a straight line over the piece before it, and stay there.

use std::cell::RefCell;
use std::f64::consts::TAU;
use std::rc::Rc;

use super::render::{COMPARED_S, PEAK, RAMP_S, samples};
use super::ringing::Ringing;
use super::voice::{Partial, Voice};

/// Samples of the first pieces; after each few they are twice as long, so many times. So what is rendered stays ahead of
/// what is heard, while the first is heard soon.
const FIRST: usize = 1_024;
const FEW: usize = 4;
const DOUBLINGS: usize = 4;
/// Partials that lie nearer to each other than this beat slowly enough to tell on the loudness, in hertz.
const BEAT_HZ: f64 = 20.0;
/// A rise takes as much of the energy as silence over this share of it: `1 − ∫ (½ − ½ cos πx)² dx = 5/8`.
const RISE_RATIO: f64 = 0.625;
/// So many of the strongest partials say how strongly a string still rings.
const STRONGEST: usize = 8;
/// How far the peak of strings that ring together goes beyond the root of their mean square, as measured on the samples.
const CREST: f64 = 2.5;
/// The same of a string as it begins, beside all its partials at once.
const BEGIN: f64 = 1.0;

/// A string of a sound.
#[derive(Clone)]
pub struct Strung {
    /// Shared with other sounds that have it.
    pub string: Rc<RefCell<Ringing>>,
    /// What it is rendered from.
    pub voice: Rc<Voice>,
    /// When it begins, in seconds.
    pub start_s: f64,
}

/// Some sounds on their way.
pub struct Mix {
    sets: Vec<Vec<Strung>>,
    rate_hz: f64,
    factors: Vec<f64>,
    /// The piece that is not given yet, as loud as it will be but for the gain.
    held: Vec<Vec<f32>>,
    /// How many samples are rendered, and in how many pieces.
    rendered: usize,
    pieces: usize,
    /// What all sounds are multiplied by, at the end of what was given.
    gain: f64,
}

impl Mix {
    /// Sounds that are to be equally loud.
    pub fn new(sets: Vec<Vec<Strung>>, rate_hz: f64) -> Self {
        let mut mix = Self {
            factors: vec![1.0; sets.len()],
            sets,
            rate_hz,
            held: Vec::new(),
            rendered: 0,
            pieces: 0,
            gain: 1.0,
        };
        let first = mix.piece();
        let second = mix.piece();
        let known = |place: usize| -> f64 {
            let of = |piece: &Vec<Vec<f32>>| peak(&piece[place]);
            of(&first).max(of(&second))
        };
        let loud: Vec<(f64, f64)> = mix
            .sets
            .iter()
            .enumerate()
            .map(|(place, set)| (energy(set, rate_hz).sqrt(), later(set).max(known(place))))
            .collect();
        let sounding = loud.iter().filter(|(size, _)| *size > 0.0);
        let highest = sounding.map(|(size, peak)| peak / size).fold(0.0, f64::max);
        if highest > 0.0 {
            let factor = |(size, _): &(f64, f64)| {
                if *size > 0.0 { f64::from(PEAK) / highest / size } else { 1.0 }
            };
            mix.factors = loud.iter().map(factor).collect();
        }
        mix.held = mix.scaled(first);
        mix.rendered = mix.held.iter().map(Vec::len).max().unwrap_or(0);
        mix.pieces = 1;
        mix
    }

    /// How many samples each sound has.
    pub fn counts(&self) -> Vec<usize> {
        let of = |strung: &Strung| {
            samples(strung.start_s, self.rate_hz) + strung.string.borrow().count()
        };
        self.sets.iter().map(|set| set.iter().map(of).max().unwrap_or(0)).collect()
    }

    /// The piece after what is rendered, in newtons.
    fn piece(&mut self) -> Vec<Vec<f32>> {
        let long = FIRST << (self.pieces / FEW).min(DOUBLINGS);
        let (from, to) = (self.rendered, self.rendered + long);
        let counts = self.counts();
        self.rendered = to;
        self.pieces += 1;
        let of = |(set, count): (&Vec<Strung>, usize)| {
            let mut sum = vec![0.0_f32; to.min(count).saturating_sub(from)];
            for strung in set {
                let start = samples(strung.start_s, self.rate_hz);
                let mut string = strung.string.borrow_mut();
                string.to(to.saturating_sub(start));
                let skipped = start.saturating_sub(from);
                let own = string.samples().iter().skip(from.saturating_sub(start));
                sum.iter_mut().skip(skipped).zip(own).for_each(|(sum, sample)| *sum += sample);
            }
            sum
        };
        self.sets.iter().zip(counts).map(of).collect()
    }

    fn scaled(&self, mut piece: Vec<Vec<f32>>) -> Vec<Vec<f32>> {
        for (sound, factor) in piece.iter_mut().zip(&self.factors) {
            sound.iter_mut().for_each(|sample| *sample = narrow(f64::from(*sample) * factor));
        }
        piece
    }
}

impl Iterator for Mix {
    type Item = Vec<Vec<f32>>;

    /// The next piece of each sound; of one that is over, nothing. `None` when all are.
    fn next(&mut self) -> Option<Vec<Vec<f32>>> {
        if self.held.iter().all(Vec::is_empty) {
            return None;
        }
        let following = self.piece();
        let following = self.scaled(following);
        let highest = following.iter().map(|piece| peak(piece)).fold(0.0, f64::max);
        let to = self.gain.min(f64::from(PEAK) / highest.max(f64::MIN_POSITIVE));
        let mut given = std::mem::replace(&mut self.held, following);
        let long = given.iter().map(Vec::len).max().unwrap_or(0);
        for piece in &mut given {
            for (place, sample) in piece.iter_mut().enumerate() {
                let share = (place + 1) as f64 / long as f64;
                let gain = self.gain + (to - self.gain) * share;
                // The last digit must not pass the limit.
                *sample = narrow(f64::from(*sample) * gain).clamp(-PEAK, PEAK);
            }
        }
        self.gain = to;
        Some(given)
    }
}

fn narrow(sample: f64) -> f32 {
    #[allow(clippy::cast_possible_truncation, reason = "samples are kept to seven digits")]
    let narrow = sample as f32;
    narrow
}

fn peak(sound: &[f32]) -> f64 {
    f64::from(sound.iter().fold(0.0_f32, |most, sample| most.max(sample.abs())))
}

/// Energy of the first second, as [`energy`](super::render::energy) counts it on samples.
///
/// Of `F cos ωt · e^(−t/τ)` half of `F² ∫ e^(−2t/τ) dt`, and of two partials that lie near each other and begin together
/// `F₁F₂ ∫ e^(−t/τ₁ − t/τ₂) cos Δωt dt`. All others cancel each other but for little. Worked out for this project.
fn energy(set: &[Strung], rate_hz: f64) -> f64 {
    let mut groups: Vec<(f64, Vec<&Partial>)> = Vec::new();
    for Strung { voice, start_s, .. } in set {
        let at = groups.iter().position(|(start, _)| (start - start_s).abs() < 1e-9);
        let at = at.unwrap_or_else(|| {
            groups.push((*start_s, Vec::new()));
            groups.len() - 1
        });
        groups[at].1.extend(&voice.partials);
    }
    let of = |(start_s, mut partials): (f64, Vec<&Partial>)| {
        let from = RISE_RATIO * RAMP_S;
        let to = COMPARED_S - start_s;
        if to <= from {
            return 0.0;
        }
        partials.sort_unstable_by(|one, other| one.hz.total_cmp(&other.hz));
        let mut sum = 0.0;
        for (at, one) in partials.iter().enumerate() {
            let own = one.force_n * one.force_n;
            sum += 0.5 * own * integral(2.0 / one.decay_s, 0.0, from, to);
            for other in partials[at + 1..].iter().take_while(|it| it.hz - one.hz < BEAT_HZ) {
                let falls = 1.0 / one.decay_s + 1.0 / other.decay_s;
                let turns = TAU * (other.hz - one.hz);
                sum += one.force_n * other.force_n * integral(falls, turns, from, to);
            }
        }
        sum
    };
    rate_hz * groups.into_iter().map(of).sum::<f64>()
}

/// `∫ e^(−at) cos ωt dt` between two times: the real part of `(e^(−zu) − e^(−zv))/z` with `z = a + iω`.
fn integral(falls: f64, turns: f64, from: f64, to: f64) -> f64 {
    let at = |time: f64| {
        let (sine, cosine) = (turns * time).sin_cos();
        (-falls * time).exp() * (falls * cosine - turns * sine)
    };
    (at(from) - at(to)) / (falls * falls + turns * turns)
}

/// An estimate of the highest peak where strings begin later than the sound: how strongly such a string begins, and how
/// strongly those before it still ring then. 0 where all begin together.
fn later(set: &[Strung]) -> f64 {
    let strength = |strung: &Strung| {
        let mut strongest: Vec<&Partial> = strung.voice.partials.iter().collect();
        strongest.sort_unstable_by(|one, other| other.force_n.abs().total_cmp(&one.force_n.abs()));
        strongest.truncate(STRONGEST);
        let ringing: Vec<(f64, f64)> =
            strongest.iter().map(|one| (0.5 * one.force_n * one.force_n, one.decay_s)).collect();
        let whole: f64 = strung.voice.partials.iter().map(|one| one.force_n).sum();
        (strung.start_s, BEGIN * whole.abs(), ringing)
    };
    let all: Vec<_> = set.iter().map(strength).collect();
    let at = |(start_s, begins, _): &(f64, f64, Vec<(f64, f64)>)| {
        let square: f64 = all
            .iter()
            .filter(|(earlier, ..)| earlier < start_s)
            .flat_map(|(earlier, _, ringing)| {
                ringing
                    .iter()
                    .map(move |(square, decay)| square * (-2.0 * (start_s - earlier) / decay).exp())
            })
            .sum();
        begins + CREST * square.sqrt()
    };
    all.iter().filter(|(start_s, ..)| *start_s > 0.0).map(at).fold(0.0, f64::max)
}

#[cfg(test)]
mod tests {
    use std::f64::consts::PI;

    use super::*;
    use crate::engine::sound::render::{self, level, mixed, ring};
    use crate::testing::assert_close;

    const RATE: f64 = 48_000.0;

    fn voice(hz: f64, force_n: f64, decay_s: f64) -> Voice {
        let partial = |n: u32| {
            let order = f64::from(n);
            let own = force_n * (0.4 * PI * order).sin() / order;
            Partial { hz: order * hz, force_n: own, decay_s: decay_s / order, glide_cents: 0.0 }
        };
        let first: Vec<Partial> = (1..=20).map(partial).collect();
        let mut all = first.clone();
        all.extend(first.iter().map(|one| Partial {
            hz: 1.0004 * one.hz,
            force_n: 0.3 * one.force_n,
            ..*one
        }));
        Voice { partials: all, glide_fall_s: 0.0 }
    }

    fn strung(voice: &Voice, start_s: f64) -> Strung {
        let string = Rc::new(RefCell::new(Ringing::new(voice, RATE, 4.0)));
        Strung { string, voice: Rc::new(voice.clone()), start_s }
    }

    /// All pieces of each sound, one after another.
    fn all(mix: &mut Mix) -> Vec<Vec<f32>> {
        let mut sounds = vec![Vec::new(); mix.counts().len()];
        for piece in mix.by_ref() {
            sounds.iter_mut().zip(piece).for_each(|(sound, piece)| sound.extend(piece));
        }
        sounds
    }

    #[test]
    fn pieces_make_the_sounds_that_are_rendered_as_a_whole() {
        let (one, other) = (voice(220.0, 2.0, 1.5), voice(97.0, 5.0, 0.9));
        let mut mix = Mix::new(vec![vec![strung(&one, 0.0)], vec![strung(&other, 0.0)]], RATE);
        let counts = mix.counts();
        let sounds = all(&mut mix);
        let (mut whole, mut second) = (ring(&one, RATE, 4.0), ring(&other, RATE, 4.0));
        level(&mut [&mut whole, &mut second], RATE);
        for ((sound, whole), count) in sounds.iter().zip([whole, second]).zip(counts) {
            assert_eq!((sound.len(), count), (whole.len(), whole.len()));
            // By the same factor throughout: a little off, as the loudness is worked out.
            let factor = f64::from(sound[4_000]) / f64::from(whole[4_000]);
            assert!((factor - 1.0).abs() < 0.02, "{factor}");
            for (got, expected) in sound.iter().zip(&whole) {
                assert!((f64::from(*got) - factor * f64::from(*expected)).abs() < 1e-6);
            }
        }
    }

    #[test]
    fn loudness_in_closed_form_is_that_of_the_samples() {
        let (one, other) = (voice(220.0, 2.0, 1.5), voice(97.0, 5.0, 0.9));
        let sets = [
            vec![strung(&one, 0.0)],
            vec![strung(&other, 0.0)],
            vec![strung(&one, 0.0), strung(&other, 0.0)],
            vec![strung(&one, 0.0), strung(&other, 0.35), strung(&one, 2.0)],
        ];
        for set in sets {
            let parts: Vec<(Vec<f32>, f64)> =
                set.iter().map(|one| (ring(&one.voice, RATE, 4.0), one.start_s)).collect();
            let parts: Vec<(&[f32], f64)> =
                parts.iter().map(|(sound, start)| (sound.as_slice(), *start)).collect();
            let expected = render::energy(&mixed(&parts, RATE), RATE);
            assert_close(energy(&set, RATE), expected, 0.02, set.len());
        }
    }

    /// Strings that all begin where the ear does not expect them: in step, so that their peaks add up. No estimate knows
    /// that; the limit holds all the same, and nothing jumps.
    #[test]
    fn what_comes_louder_than_foreseen_is_let_down_without_a_step() {
        let voice = voice(200.0, 1.0, 30.0);
        let set: Vec<Strung> = (0..40).map(|turn| strung(&voice, 0.1 * f64::from(turn))).collect();
        let mut mix = Mix::new(vec![set.clone(), vec![]], RATE);
        let sounds = all(&mut mix);
        assert!(mix.gain < 0.9, "nothing had to be let down: {}", mix.gain);
        assert_eq!(sounds[1], [0.0_f32; 0]);
        let parts: Vec<(Vec<f32>, f64)> =
            set.iter().map(|one| (ring(&one.voice, RATE, 4.0), one.start_s)).collect();
        let parts: Vec<(&[f32], f64)> =
            parts.iter().map(|(sound, start)| (sound.as_slice(), *start)).collect();
        let whole = mixed(&parts, RATE);
        let mut before: Option<f64> = None;
        for (got, expected) in sounds[0].iter().zip(&whole) {
            assert!(got.abs() <= PEAK);
            if expected.abs() < 0.5 {
                continue;
            }
            let factor = f64::from(*got) / f64::from(*expected);
            // Never up, and down by no more than a straight line over a piece.
            let step = before.map_or(0.0, |before| factor / before - 1.0);
            assert!((-2e-3..1e-4).contains(&step), "{step}");
            before = Some(factor);
        }
    }

    #[test]
    fn silence_is_over_at_once() {
        assert_eq!(Mix::new(vec![], RATE).next(), None);
        assert_eq!(Mix::new(vec![vec![], vec![]], RATE).next(), None);
    }
}
