//! A string that rings, as plain numbers: what the renderer takes, wherever it runs.

/// One partial: a swing that dies away.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Partial {
    /// Pitch when the string has settled.
    pub hz: f64,
    /// Force on the soundboard as the finger lets go, in newtons; negative where it begins the other way.
    pub force_n: f64,
    /// Time in which it falls to 1/e, in seconds.
    pub decay_s: f64,
    /// How sharp it begins, in cents.
    pub glide_cents: f64,
}

/// All partials of a plucked string.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Voice {
    /// From the lowest up; where the string swings in two planes, those of the second follow.
    pub partials: Vec<Partial>,
    /// Time in which the sharpness of the beginning falls to 1/e, in seconds.
    pub glide_fall_s: f64,
}

/// Numbers for each partial in [`Voice::numbers`].
const WIDTH: usize = 4;

impl Voice {
    /// The voice as a list, for another program: the fall of the glide, then four numbers for each partial.
    pub fn numbers(&self) -> Vec<f64> {
        let mut list = vec![self.glide_fall_s];
        for partial in &self.partials {
            list.extend([partial.hz, partial.force_n, partial.decay_s, partial.glide_cents]);
        }
        list
    }

    /// The voice of such a list; what is no number is left out.
    pub fn of_numbers(list: &[f64]) -> Self {
        let (first, rest) = list.split_first().unwrap_or((&0.0, &[]));
        let partials = rest.chunks_exact(WIDTH).filter_map(|four| {
            let [hz, force_n, decay_s, glide_cents] = *four else { return None };
            let usable =
                hz > 0.0 && decay_s > 0.0 && force_n.is_finite() && glide_cents.is_finite();
            usable.then_some(Partial { hz, force_n, decay_s, glide_cents })
        });
        Self { partials: partials.collect(), glide_fall_s: *first }
    }

    /// The most that all partials can give together at a time after the pluck, in newtons.
    pub fn most_n(&self, after_s: f64) -> f64 {
        let one = |partial: &Partial| partial.force_n.abs() * (-after_s / partial.decay_s).exp();
        self.partials.iter().map(one).sum()
    }

    /// How long it rings until no more than a thousandth is left, up to `most_s`.
    pub fn rings_s(&self, most_s: f64) -> f64 {
        let end = 1e-3 * self.most_n(0.0);
        if end == 0.0 {
            return 0.0;
        }
        if self.most_n(most_s) >= end {
            return most_s;
        }
        let (mut low, mut high) = (0.0, most_s);
        for _ in 0..20 {
            let middle = 0.5 * (low + high);
            if self.most_n(middle) >= end { low = middle } else { high = middle }
        }
        high
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn voice() -> Voice {
        let of = |hz, force_n, decay_s| Partial { hz, force_n, decay_s, glide_cents: 3.0 };
        Voice { partials: vec![of(220.0, 2.0, 1.5), of(441.0, -1.0, 0.5)], glide_fall_s: 0.7 }
    }

    #[test]
    fn a_voice_comes_back_from_its_numbers() {
        assert_eq!(Voice::of_numbers(&voice().numbers()), voice());
        assert_eq!(Voice::of_numbers(&[]), Voice::default());
        let mut broken = voice().numbers();
        broken[1] = f64::NAN;
        broken[7] = 0.0;
        assert_eq!(Voice::of_numbers(&broken).partials, []);
    }

    #[test]
    fn it_rings_until_a_thousandth_is_left() {
        let whole = Voice { partials: voice().partials[..1].to_vec(), glide_fall_s: 0.0 };
        // ln 1000 = 6.908 times the time to 1/e.
        assert_close(whole.rings_s(60.0), 1.5 * 1000.0_f64.ln(), 1e-4, "alone");
        assert_close(whole.rings_s(4.0), 4.0, 0.0, "cut off");
        assert_close(Voice::default().rings_s(4.0), 0.0, 0.0, "nothing");
    }
}
