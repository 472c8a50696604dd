//! The questions that a figure, a field or a finding raises, each with a short answer, and which of them somebody has
//! said to be clear. Plain data, no page: `panels/asked.rs` shows them.

use crate::app::rows::{FindingWords, runs};
use crate::engine::analysis::Analysis;
use crate::engine::figure::Figure;
use crate::engine::findings::FindingKind;
use crate::words::{Words, hints as say};

/// Declares the questions: for each the name under which it is kept, what is asked, and the answer.
macro_rules! questions {
    ($($name:ident: $key:literal, $asked:ident, $answer:ident;)+) => {
        /// A question.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Question {
            $($name,)+
        }

        impl Question {
            /// All of them.
            pub const ALL: [Self; [$(Self::$name),+].len()] = [$(Self::$name),+];

            /// The name under which it is kept, what is asked, and the answer.
            const fn row(self) -> (&'static str, Words, Words) {
                match self {
                    $(Self::$name => ($key, say::$asked, say::$answer),)+
                }
            }
        }
    };
}

questions! {
    Feel: "feel", FEEL, FEEL_IS;
    LoadShare: "load-share", LOAD_SHARE, LOAD_SHARE_IS;
    Margin: "margin", MARGIN, MARGIN_IS;
    Stretch: "stretch", STRETCH, STRETCH_IS;
    Turns: "turns", TURNS, TURNS_IS;
    Partial: "partial", PARTIAL, PARTIAL_IS;
    Tolerance: "tolerance", TOLERANCE, TOLERANCE_IS;
    Range: "range", RANGE, RANGE_IS;
    Joint: "joint", JOINT, JOINT_IS;
    Falls: "falls", FALLS, FALLS_IS;
    Target: "target", TARGET, TARGET_IS;
    Weights: "weights", WEIGHTS, WEIGHTS_IS;
    Spares: "spares", SPARES, SPARES_IS;
    Standing: "standing", STANDING, STANDING_IS;
    Breaking: "breaking", BREAKING, BREAKING_IS;
    Loaded: "loaded", LOADED, LOADED_IS;
    Slack: "slack", SLACK, SLACK_IS;
    Light: "light", LIGHT, LIGHT_IS;
    Core: "core", CORE, CORE_IS;
    OrderOfGauges: "order-of-gauges", ORDER_OF_GAUGES, ORDER_OF_GAUGES_IS;
    Length: "length", LENGTH, LENGTH_IS;
    Note: "note", NOTE, NOTE_IS;
    FeelsOff: "feels-off", FEELS_OFF, FEELS_OFF_IS;
    Jump: "jump", JUMP, JUMP_IS;
    Raise: "raise", RAISE, RAISE_IS;
    PartOver: "part-over", PART_OVER, PART_OVER_IS;
    Unread: "unread", UNREAD, UNREAD_IS;
}

impl Question {
    /// The name under which it is kept.
    pub const fn key(self) -> &'static str {
        self.row().0
    }

    /// What is asked.
    pub const fn asked(self) -> Words {
        self.row().1
    }

    /// The answer.
    pub const fn answer(self) -> Words {
        self.row().2
    }

    /// What is asked about a figure of a string, where that is something.
    pub const fn of_figure(figure: Figure) -> Option<Self> {
        Some(match figure {
            Figure::PluckStiffness => Self::Feel,
            Figure::LoadShare => Self::LoadShare,
            Figure::SemitonesToBreak => Self::Margin,
            Figure::Stretch => Self::Stretch,
            Figure::PinTurns => Self::Turns,
            Figure::Partial8 => Self::Partial,
            _ => return None,
        })
    }

    /// What is asked about a finding on a string.
    const fn of_finding(kind: &FindingKind) -> Self {
        match kind {
            FindingKind::Breaks { .. } => Self::Breaking,
            FindingKind::Overworked { .. } => Self::Loaded,
            FindingKind::Slack { .. } => Self::Slack,
            FindingKind::LittlePull { .. } => Self::Light,
            FindingKind::Inharmonic { .. } => Self::Partial,
            FindingKind::ThinCore { .. } => Self::Core,
            FindingKind::GaugeOrder { .. } | FindingKind::CoreOrder { .. } => Self::OrderOfGauges,
            FindingKind::OutOfLine { .. } | FindingKind::LengthOff { .. } => Self::Length,
            FindingKind::Note { .. } | FindingKind::PitchOrder { .. } => Self::Note,
            FindingKind::Feel { .. } => Self::FeelsOff,
            FindingKind::Jump { .. } => Self::Jump,
            FindingKind::TightRaise { .. } => Self::Raise,
            FindingKind::Turns { .. } => Self::Turns,
        }
    }

    /// What each line of the list of findings asks, in its order. A question stands beside the first line that raises it.
    pub fn of_lines(lines: &[FindingWords], analysis: &Analysis) -> Vec<Option<Self>> {
        let mut kinds = runs(analysis).map(|run| Self::of_finding(&run[0].kind));
        let mut told = Vec::new();
        lines
            .iter()
            .map(|line| {
                let question = match (line.frame, line.is_on_string()) {
                    (true, _) if line.weight > 1 => Self::Range,
                    (true, _) => Self::PartOver,
                    (_, true) => kinds.next()?,
                    _ => Self::Unread,
                };
                let first = !told.contains(&question);
                told.push(question);
                first.then_some(question)
            })
            .collect()
    }
}

/// The questions that somebody has said to be clear.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Clear(Vec<Question>);

impl Clear {
    /// From the text that [`write`](Self::write) gives; what is no name of a question is left out.
    pub fn read(text: &str) -> Self {
        let named = |question: &Question| text.split(' ').any(|key| key == question.key());
        Self(Question::ALL.into_iter().filter(named).collect())
    }

    /// The names of all that are clear.
    pub fn write(&self) -> String {
        self.0.iter().map(|question| question.key()).collect::<Vec<_>>().join(" ")
    }

    /// Whether one of them is clear.
    pub fn has(&self, question: Question) -> bool {
        self.0.contains(&question)
    }

    /// Whether none is.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// One more is clear.
    pub fn add(&mut self, question: Question) {
        if !self.has(question) {
            self.0.push(question);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::rows::findings;
    use crate::design::bearing_words::FrameFinding;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;

    #[test]
    fn what_is_clear_comes_back_as_it_was_kept() {
        let mut clear = Clear::default();
        assert_eq!(Clear::read(&clear.write()), clear);
        for question in Question::ALL {
            assert!(!clear.has(question), "{question:?}");
            clear.add(question);
            clear.add(question);
            assert!(Clear::read(&clear.write()).has(question), "{question:?}");
        }
        assert_eq!(clear.0.len(), Question::ALL.len());
        assert!(Clear::read("of another program").is_empty());
    }

    #[test]
    fn every_question_has_a_name_and_words_of_its_own() {
        for (at, question) in Question::ALL.into_iter().enumerate() {
            for other in &Question::ALL[..at] {
                assert_ne!(question.key(), other.key());
                assert_ne!(question.asked(), other.asked());
                assert_ne!(question.answer(), other.answer());
            }
            assert!(question.asked().said().ends_with('?'), "{question:?}");
        }
    }

    #[test]
    fn each_line_of_the_findings_asks_about_what_it_says() {
        let mut design = SAMPLES[1].design();
        design.strings[2].length = "about".to_owned();
        design.strings[5].length = "900".to_owned();
        design.strings[20].make_up.diameter = "0.2".to_owned();
        design.strings[12].note = "G7".to_owned();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let frame = FrameFinding { weight: 1, sentence: "The neck is over.".to_owned() };
        let lines = findings(&design, &resolved, &analysis, Some(&frame));
        let asked = Question::of_lines(&lines, &analysis);
        assert_eq!(asked.len(), lines.len());
        // What the line says that each question stands beside.
        let beside: [(Question, &[&str]); 7] = [
            (Question::PartOver, &["The neck is over."]),
            (Question::Unread, &["String 3"]),
            (Question::Note, &["Check the note"]),
            (Question::Length, &["Check the length", "than the string"]),
            (Question::Breaking, &["breaks before it is in tune", "breaks it"]),
            (Question::Slack, &["it will sound dull"]),
            (Question::FeelsOff, &["under the finger"]),
        ];
        let mut met = Vec::new();
        for (line, question) in lines.iter().zip(&asked) {
            let Some(row) = beside.iter().find(|row| Some(row.0) == *question) else { continue };
            let says = row.1.iter().any(|words| line.sentence.contains(words));
            assert!(says, "{question:?}: {}", line.sentence);
            met.push(row.0);
        }
        for question in [Question::PartOver, Question::Unread, Question::Note, Question::Length] {
            assert!(met.contains(&question), "{question:?} among {met:?}");
        }
        // Beside the first that raises it alone.
        for question in Question::ALL {
            let count = asked.iter().filter(|one| **one == Some(question)).count();
            assert!(count <= 1, "{question:?} {count} times");
        }
        // Whatever is on a string has the question of its own kind.
        let kinds = runs(&analysis).count();
        assert_eq!(lines.iter().filter(|line| line.is_on_string()).count(), kinds);
    }
}
