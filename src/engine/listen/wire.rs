//! What the page and the worker that listens say to each other, as plain numbers: what is listened for, and what was
//! heard. A number that is not there is none of the numbers, a place that is not there −1.

use super::{HIGHEST, Heard, NoteFound, Reading, Sought};
use crate::engine::units::Frequency;

/// Numbers for each string that is listened for.
const SOUGHT: usize = 5;
/// Numbers for each reading, and for each note.
const READING: usize = 12;
const NOTE: usize = 9 + HIGHEST as usize;

/// What is listened for: the strings, and the place of the one that is led.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Wanted {
    pub strings: Vec<Sought>,
    pub led: Option<usize>,
}

/// What was heard.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Told {
    pub readings: Vec<Reading>,
    pub notes: Vec<NoteFound>,
}

impl Wanted {
    /// As a list: the place of the string that is led, then the strings.
    pub fn numbers(&self) -> Vec<f64> {
        let mut list = vec![of_place(self.led)];
        for string in &self.strings {
            list.extend([
                of_count(string.number),
                string.target.to_hz(),
                of(string.inharmonicity_b),
                of(string.cents_per_degree),
                f64::from(u8::from(string.is_in_tune)),
            ]);
        }
        list
    }

    /// What such a list says.
    pub fn of_numbers(list: &[f64]) -> Self {
        let Some((led, rest)) = list.split_first() else { return Self::default() };
        let string = |five: &[f64]| {
            let [number, hz, b, per_degree, is_in_tune] = *five else { return None };
            Some(Sought {
                number: place(number)?,
                target: Frequency::from_hz(hz),
                inharmonicity_b: some(b),
                cents_per_degree: some(per_degree),
                is_in_tune: is_in_tune > 0.0,
            })
        };
        Self { strings: rest.chunks_exact(SOUGHT).filter_map(string).collect(), led: place(*led) }
    }
}

impl Told {
    /// As a list: how many readings, they, then the notes. Nothing where there is nothing.
    pub fn numbers(&self) -> Vec<f64> {
        if self.readings.is_empty() && self.notes.is_empty() {
            return Vec::new();
        }
        let mut list = vec![of_count(self.readings.len())];
        for Reading { time_s, level_db, heard } in &self.readings {
            list.extend([*time_s, *level_db]);
            list.extend(heard.map_or([f64::NAN; READING - 2], of_heard));
        }
        for note in &self.notes {
            list.extend([
                note.struck_s,
                note.until_s,
                of_place(note.string),
                note.fit.to_hz(),
                note.inharmonicity_b,
                of(note.cents),
                note.scatter_cents,
                of_count(note.readings),
                of(note.pin_degrees),
            ]);
            list.extend(note.partials_hz);
        }
        list
    }

    /// What such a list says.
    pub fn of_numbers(list: &[f64]) -> Self {
        let Some((count, rest)) = list.split_first() else { return Self::default() };
        let long = place(*count).unwrap_or(0).saturating_mul(READING).min(rest.len());
        let (readings, notes) = rest.split_at(long);
        Self {
            readings: readings.chunks_exact(READING).filter_map(reading).collect(),
            notes: notes.chunks_exact(NOTE).filter_map(note).collect(),
        }
    }
}

fn of_heard(heard: Heard) -> [f64; READING - 2] {
    [
        of_place(heard.string),
        heard.fit.to_hz(),
        of(heard.first.map(Frequency::to_hz)),
        heard.inharmonicity_b,
        of_count(heard.partials),
        heard.off_cents,
        of(heard.cents),
        of(heard.needle_cents),
        f64::from(u8::from(heard.is_steady)),
        of(heard.pin_degrees),
    ]
}

fn reading(numbers: &[f64]) -> Option<Reading> {
    let [time_s, level_db, string, fit, first, b, partials, off, cents, needle, steady, pin] =
        *numbers
    else {
        return None;
    };
    let heard = some(fit).map(|fit| Heard {
        string: place(string),
        fit: Frequency::from_hz(fit),
        first: some(first).map(Frequency::from_hz),
        inharmonicity_b: b,
        partials: place(partials).unwrap_or(0),
        off_cents: off,
        cents: some(cents),
        needle_cents: some(needle),
        is_steady: steady > 0.0,
        pin_degrees: some(pin),
    });
    Some(Reading { time_s, level_db, heard })
}

fn note(numbers: &[f64]) -> Option<NoteFound> {
    let [
        struck_s,
        until_s,
        string,
        fit,
        inharmonicity_b,
        cents,
        scatter_cents,
        count,
        pin,
        ref partials @ ..,
    ] = *numbers
    else {
        return None;
    };
    Some(NoteFound {
        struck_s,
        until_s,
        string: place(string),
        fit: Frequency::from_hz(some(fit)?),
        inharmonicity_b,
        cents: some(cents),
        scatter_cents,
        readings: place(count)?,
        pin_degrees: some(pin),
        partials_hz: partials.try_into().ok()?,
    })
}

fn of(number: Option<f64>) -> f64 {
    number.unwrap_or(f64::NAN)
}

fn some(number: f64) -> Option<f64> {
    Some(number).filter(|number| !number.is_nan())
}

fn of_place(place: Option<usize>) -> f64 {
    place.map_or(-1.0, of_count)
}

fn of_count(count: usize) -> f64 {
    count as f64
}

/// A place or a count; `None` where the number is none.
fn place(number: f64) -> Option<usize> {
    (0.0..1e9).contains(&number).then(|| super::whole(number))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sought(number: usize, b: Option<f64>) -> Sought {
        Sought {
            number,
            target: Frequency::from_hz(441.5),
            inharmonicity_b: b,
            cents_per_degree: b.map(|b| 1e5 * b),
            is_in_tune: number == 2,
        }
    }

    #[test]
    fn what_is_listened_for_comes_back_from_its_numbers() {
        for led in [None, Some(0), Some(1)] {
            let wanted = Wanted { strings: vec![sought(1, Some(3e-5)), sought(2, None)], led };
            assert_eq!(Wanted::of_numbers(&wanted.numbers()), wanted);
        }
        assert_eq!(Wanted::of_numbers(&[]), Wanted::default());
        let odd = Wanted::of_numbers(&[1e300, f64::NAN, 440.0, 0.0, 0.0, 0.0, 7.0, 1.0]);
        assert_eq!(odd, Wanted::default());
    }

    #[test]
    fn what_is_heard_comes_back_from_its_numbers() {
        let heard = Heard {
            string: Some(3),
            fit: Frequency::from_hz(220.1),
            first: None,
            inharmonicity_b: 2e-5,
            partials: 9,
            off_cents: 0.04,
            cents: Some(-7.5),
            needle_cents: Some(-7.25),
            is_steady: true,
            pin_degrees: None,
        };
        let note = NoteFound {
            struck_s: 0.1,
            until_s: 1.9,
            string: None,
            fit: Frequency::from_hz(97.0),
            inharmonicity_b: 1e-4,
            cents: None,
            scatter_cents: 0.2,
            readings: 30,
            pin_degrees: Some(4.0),
            partials_hz: std::array::from_fn(|place| 97.1 * (place as f64)),
        };
        let readings = vec![
            Reading { time_s: 0.05, level_db: -70.0, heard: None },
            Reading { time_s: 0.10, level_db: -20.0, heard: Some(heard) },
        ];
        for notes in [vec![], vec![note, NoteFound { string: Some(0), ..note }]] {
            let told = Told { readings: readings.clone(), notes };
            assert_eq!(Told::of_numbers(&told.numbers()), told);
        }
        assert_eq!(Told::default().numbers(), [0.0_f64; 0]);
        assert_eq!(Told::of_numbers(&[]), Told::default());
        // More readings than there are numbers: what is whole is taken.
        let mut cut = Told { readings, notes: vec![] }.numbers();
        cut[0] = 1e8;
        assert_eq!(Told::of_numbers(&cut[..1 + READING]).readings.len(), 1);
    }
}
