//! What the tuner shows of a string that sounds: large letters, a needle, and what the pin must do.

use crate::design::display;
use crate::design::letters::escape;
use crate::engine::analysis::{Analysis, StringFigures};
use crate::engine::listen::{Heard, Sought};
use crate::engine::units::Frequency;
use crate::words::{Words, tuner as say};

/// The needle goes so far to either side, in cents.
const NEEDLE_CENTS: f64 = 50.0;
/// Marks of the scale, in cents.
const MARKS: [i32; 11] = [-50, -40, -30, -20, -10, 0, 10, 20, 30, 40, 50];
/// What is nearer to pitch is at pitch, in cents.
const LEAST_OFF_CENTS: f64 = 0.5;
/// From here on, degrees are told whole.
const WHOLE_DEGREES: f64 = 10.0;

/// What is heard, and of which harp.
pub struct Sounds<'a> {
    /// The strings that are listened for.
    pub strings: &'a [Sought],
    /// The figures of all strings.
    pub analysis: &'a Analysis,
    /// What was heard last.
    pub heard: Option<&'a Heard>,
    /// It sounds no more.
    pub is_past: bool,
    /// The row that is to be plucked, if the maker goes one by one.
    pub led: Option<usize>,
    /// How far from its pitch that string is tuned for now, in cents.
    pub off_cents: f64,
    /// Within so many cents a string is in tune.
    pub room_cents: f64,
}

impl Sounds<'_> {
    /// The figures of a string in the list.
    fn figures(&self, place: usize) -> Option<&StringFigures> {
        let number = self.strings.get(place)?.number;
        self.analysis.strings.get(number.checked_sub(1)?)
    }

    /// Which string it is, or what to do.
    fn title(&self) -> String {
        if let Some(heard) = self.heard {
            let figures = heard.string.and_then(|place| self.figures(place));
            return figures.map_or_else(|| say::UNKNOWN.into(), display::string_number);
        }
        match self.led.and_then(|row| self.analysis.strings.get(row)) {
            Some(figures) => say::pluck_one(&display::string_number(figures)),
            None => say::PLUCK_ANY.into(),
        }
    }

    /// The number of the string that is to be plucked.
    fn number(&self) -> Option<usize> {
        Some(self.led? + 1)
    }

    /// What the round asks of the string that is to be plucked, as markup; nothing where that is its pitch.
    fn for_now(&self) -> String {
        if self.led.is_none() || self.off_cents.abs() < LEAST_OFF_CENTS {
            return String::new();
        }
        let cents = display::decimals(self.off_cents.abs(), 0);
        let said =
            if self.off_cents > 0.0 { say::now_sharp(&cents) } else { say::now_flat(&cents) };
        format!("<p class=\"heard-pin\">{}</p>", escape(&said))
    }

    /// The words for how it stands: too low, too high or in tune.
    fn verdict(&self, cents: f64) -> Words {
        if cents.abs() <= self.room_cents {
            say::IN_TUNE
        } else if cents < 0.0 {
            say::FLAT
        } else {
            say::SHARP
        }
    }

    /// What a reader of the screen is told once the needle stands.
    pub fn steady(&self) -> String {
        let Some(heard) = self.heard.filter(|heard| heard.is_steady && !self.is_past) else {
            return String::new();
        };
        let Some(cents) = heard.needle_cents else { return String::new() };
        let told = format!("{}, {}", signed(cents.round(), 0), self.verdict(cents));
        say::of_string(&told, &self.title())
    }

    /// All of it as markup.
    pub fn markup(&self) -> String {
        let title = escape(&self.title());
        let hz = |frequency: Frequency| display::decimals(frequency.to_hz(), 2);
        let for_now = self.for_now();
        let Some(heard) = self.heard else {
            let led = self.strings.iter().find(|string| Some(string.number) == self.number());
            let target = led.map(|string| say::target(&hz(string.target))).unwrap_or_default();
            return format!(
                "<p class=\"heard-name\">{title}</p>{for_now}{}<p class=\"hint\">{}</p>",
                needle(None),
                escape(&target)
            );
        };
        let target = heard.string.and_then(|place| self.strings.get(place));
        let (cents, verdict) = match heard.needle_cents {
            Some(cents) => (signed(cents, 1), self.verdict(cents)),
            None => (String::new(), Words::NONE),
        };
        let pin = heard.pin_degrees.filter(|_| verdict != say::IN_TUNE);
        let pin = pin.map(turned).unwrap_or_default();
        let class = match (self.is_past, verdict == say::IN_TUNE) {
            (true, _) => " past",
            (_, true) => " true",
            _ => "",
        };
        let first =
            heard.first.map_or_else(|| say::FIRST_WEAK.into(), |first| say::first(&hz(first)));
        let target = target.map(|string| say::target(&hz(string.target))).unwrap_or_default();
        format!(
            "<div class=\"heard{class}\"><p class=\"heard-name\">{title}</p>{for_now}\
             <p class=\"heard-cents\">{cents} <span>{}</span></p>{}\
             <p class=\"heard-pin\">{}</p>\
             <p class=\"hint\">{} · {} · {}</p></div>",
            escape(verdict.said()),
            needle(heard.needle_cents),
            escape(&pin),
            escape(&target),
            escape(&say::fit(&hz(heard.fit))),
            escape(&first),
        )
    }
}

/// A number with its sign.
fn signed(number: f64, places: usize) -> String {
    let text = display::decimals(number, places);
    if number > 0.0 && text.bytes().any(|digit| matches!(digit, b'1'..=b'9')) {
        format!("+{text}")
    } else {
        text
    }
}

/// How the pin is to be turned.
fn turned(degrees: f64) -> String {
    let places = usize::from(degrees.abs() < WHOLE_DEGREES);
    let shown = display::decimals(degrees.abs(), places);
    if degrees > 0.0 { say::tighten(&shown) } else { say::let_down(&shown) }
}

/// How a string stands that was heard, for the list of all.
pub fn told(cents: Option<f64>, room_cents: f64) -> String {
    match cents {
        None => say::NOT_HEARD.into(),
        Some(cents) if cents.abs() <= room_cents => say::heard_in_tune(&signed(cents, 1)),
        Some(cents) => say::cents(&signed(cents, 1)),
    }
}

/// The scale with its needle, which the digits beside it say in words.
fn needle(cents: Option<f64>) -> String {
    let mark = |cents: &i32| {
        let long = if *cents == 0 { 4 } else { 9 };
        format!("<path d=\"M{cents} {long}V14\"/>")
    };
    let marks: String = MARKS.iter().map(mark).collect();
    let hand = cents.map(|cents| {
        let at = cents.clamp(-NEEDLE_CENTS, NEEDLE_CENTS);
        format!("<path class=\"hand\" d=\"M{at:.2} 0V17\"/>")
    });
    format!(
        "<svg class=\"needle\" viewBox=\"-54 -1 108 19\" aria-hidden=\"true\">{marks}{}</svg>",
        hand.unwrap_or_default()
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;

    #[test]
    fn a_string_is_shown_with_its_cents_and_what_its_pin_must_do() {
        let design = crate::design::persist::read(SAMPLES[0].json).unwrap();
        let analysis = analyse(&resolve(&design).harp);
        let string = |number| Sought {
            number,
            target: Frequency::from_hz(440.0),
            inharmonicity_b: None,
            cents_per_degree: None,
            is_in_tune: false,
        };
        let strings = [string(3), string(4)];
        let heard = Heard {
            string: Some(1),
            fit: Frequency::from_hz(437.0),
            first: None,
            inharmonicity_b: 1e-5,
            partials: 5,
            off_cents: 0.1,
            cents: Some(-11.84),
            needle_cents: Some(-11.84),
            is_steady: true,
            pin_degrees: Some(3.16),
        };
        let of = |heard: Option<&Heard>, led| {
            let sounds = Sounds {
                strings: &strings,
                analysis: &analysis,
                heard,
                is_past: false,
                led,
                off_cents: 0.0,
                room_cents: 2.0,
            };
            (sounds.markup(), sounds.steady())
        };
        let (markup, steady) = of(Some(&heard), None);
        for part in
            ["−11.8", "Too low", "turn the pin 3.2°", "440.00", "437.00", "too weak", "M-11.84 0"]
        {
            assert!(markup.contains(part), "{part}: {markup}");
        }
        assert!(markup.contains(&display::string_number(&analysis.strings[3])), "{markup}");
        assert!(steady.ends_with("−12, Too low"), "{steady}");
        let true_one = Heard { needle_cents: Some(1.2), ..heard };
        let (markup, _) = of(Some(&true_one), None);
        assert!(
            markup.contains("+1.2")
                && markup.contains("In tune")
                && !markup.contains("turn the pin")
        );
        let (markup, steady) = of(None, Some(0));
        assert!(markup.contains("Pluck String 1") || markup.contains("Pluck string 1"), "{markup}");
        assert_eq!(steady, "");
        assert!(of(None, None).0.contains("Pluck a string"));
        let for_now = |off_cents: f64| {
            let (analysis, strings) = (&analysis, &strings);
            let sounds = Sounds {
                strings,
                analysis,
                heard: None,
                is_past: false,
                led: Some(2),
                off_cents,
                room_cents: 2.0,
            };
            sounds.markup()
        };
        assert!(for_now(12.4).contains("12 cents above pitch"), "{}", for_now(12.4));
        assert!(for_now(-100.0).contains("100 cents below pitch"));
        assert!(for_now(0.3).contains("440.00") && !for_now(0.3).contains("pitch"));
        let other = Heard { string: None, needle_cents: None, pin_degrees: None, ..heard };
        assert!(of(Some(&other), None).0.contains("No string of the harp"));
        assert_eq!(told(None, 2.0), "not heard yet");
        assert_eq!(told(Some(-0.04), 2.0), "in tune (0.0 cents)");
        assert_eq!(told(Some(7.0), 2.0), "+7.0 cents");
    }
}
