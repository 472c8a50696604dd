//! The shared axis along the compass: from the bass at the left to the treble at the right, as on a
//! keyboard; the labels of its notes and string numbers.

use std::ops::Range;

use crate::engine::pitch::{Letter, Note};

/// Room at the left for the labels of the upright axes, in CSS pixels; the same for every drawing,
/// so that drawings under each other share the compass.
pub const LABEL_AREA: f64 = 48.0;
/// Room at the right, in CSS pixels.
pub const RIGHT_MARGIN: f64 = 12.0;
/// Size of the text along the axis, in CSS pixels.
pub const TEXT: f64 = 11.0;
/// Width of a character over the size of the text: a guess, as nothing is measured.
pub const CHARACTER: f64 = 0.55;
/// Least gap between two labels, in CSS pixels.
const GAP: f64 = 8.0;

/// Where each string lies across a drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Compass {
    /// The left edge of the lowest string's slot, in pixels.
    pub left: f64,
    /// The right edge of the highest string's slot, in pixels.
    pub right: f64,
    /// How many strings there are.
    pub count: usize,
}

/// What a label stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LabelKind {
    /// A C string.
    C,
    /// An F string.
    F,
    /// Another note.
    Note,
}

/// A label of a string along the axis.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Label {
    /// Index of the string.
    pub index: usize,
    /// `C4`, `F`, `G4`.
    pub text: String,
    pub kind: LabelKind,
}

impl Compass {
    /// The compass across a drawing of a width in pixels, at a scale (pixels for each CSS pixel).
    pub fn across(width_px: f64, scale: f64, count: usize) -> Self {
        let left = (LABEL_AREA * scale).round();
        Self { left, right: (width_px - RIGHT_MARGIN * scale).round().max(left), count }
    }

    /// Width of the slot that each string has.
    pub fn slot(&self) -> f64 {
        (self.right - self.left) / as_f64(self.count.max(1))
    }

    /// The middle of the slot of a string.
    pub fn x_of(&self, index: usize) -> f64 {
        self.right - (as_f64(index) + 0.5) * self.slot()
    }

    /// The edges of the slots of a range of strings; `None` where none of them is in the compass.
    pub fn span_of(&self, strings: &Range<usize>) -> Option<(f64, f64)> {
        let end = strings.end.min(self.count);
        let half = self.slot() / 2.0;
        (strings.start < end).then(|| (self.x_of(end - 1) - half, self.x_of(strings.start) + half))
    }

    /// The string in whose slot `x` lies.
    pub fn index_at(&self, x: f64) -> Option<usize> {
        if self.count == 0 || !(self.left..=self.right).contains(&x) || self.slot() <= 0.0 {
            return None;
        }
        let from_right = (self.right - x) / self.slot();
        // Whole numbers in a short range: counting is as quick as a cast, and cannot go wrong.
        (0..self.count).find(|index| from_right < as_f64(index + 1)).or(Some(self.count - 1))
    }

    /// Labels of the notes, thinned out to what has room: every note, else C with F, else C, else
    /// every second C and so on.
    pub fn note_labels(&self, notes: &[Option<Note>], scale: f64) -> Vec<Label> {
        let all = |every_note: bool, with_f: bool, every: i8| {
            let label = move |(index, note): (usize, &Option<Note>)| {
                let note = (*note)?;
                let (kind, text) = match note.letter() {
                    Letter::C if note.octave().rem_euclid(every) == 0 => {
                        (LabelKind::C, note.printed())
                    }
                    Letter::F if every_note => (LabelKind::F, note.printed()),
                    Letter::F if with_f => (LabelKind::F, Letter::F.printed()),
                    Letter::C | Letter::F => return None,
                    _ if every_note => (LabelKind::Note, note.printed()),
                    _ => return None,
                };
                Some(Label { index, text, kind })
            };
            notes.iter().take(self.count).enumerate().filter_map(label).collect::<Vec<_>>()
        };
        let levels = [(true, true, 1), (false, true, 1), (false, false, 1), (false, false, 2)];
        levels
            .into_iter()
            .map(|(every_note, with_f, every)| all(every_note, with_f, every))
            .find(|labels| self.have_room(labels, scale))
            .unwrap_or_else(|| all(false, false, 4))
    }

    /// Indices of the strings whose number is shown: 1, the last, and as many whole fives or
    /// tens between as have room.
    pub fn number_labels(&self, scale: f64) -> Vec<usize> {
        let Some(last) = self.count.checked_sub(1) else { return Vec::new() };
        let room = width(&self.count.to_string(), scale) + GAP * scale;
        let apart = |a: usize, b: usize| as_f64(a.abs_diff(b)) * self.slot() >= room;
        let step = [1, 5, 10, 20, 50].into_iter().find(|step| apart(0, *step)).unwrap_or(100);
        let mut shown = vec![0];
        shown.extend((1..last).filter(|i| (i + 1) % step == 0 && apart(0, *i) && apart(*i, last)));
        if apart(0, last) {
            shown.push(last);
        }
        shown
    }

    fn have_room(&self, labels: &[Label], scale: f64) -> bool {
        labels.windows(2).all(|pair| {
            let apart = as_f64(pair[0].index.abs_diff(pair[1].index)) * self.slot();
            let widths = width(&pair[0].text, scale) + width(&pair[1].text, scale);
            apart >= widths / 2.0 + GAP * scale
        })
    }
}

/// The guessed width of a text along the axis, in pixels.
fn width(text: &str, scale: f64) -> f64 {
    as_f64(text.chars().count()) * CHARACTER * TEXT * scale
}

pub(super) fn as_f64(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap_or(u32::MAX))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::charts::samples;

    fn notes(count: usize) -> Vec<Option<Note>> {
        samples::harp(count).strings.iter().map(|string| string.note).collect()
    }

    fn texts(count: usize, width: f64, scale: f64) -> Vec<String> {
        let compass = Compass::across(width, scale, count);
        compass.note_labels(&notes(count), scale).into_iter().map(|label| label.text).collect()
    }

    #[test]
    fn the_string_at_its_place_is_the_string() {
        for count in [1, 2, 22, 47, 150] {
            for width in [200.0, 640.0, 2731.0] {
                let compass = Compass::across(width, 2.0, count);
                for index in 0..count {
                    assert_eq!(compass.index_at(compass.x_of(index)), Some(index));
                }
            }
        }
    }

    #[test]
    fn the_bass_is_at_the_left() {
        let compass = Compass::across(640.0, 1.0, 47);
        assert!(compass.x_of(46) < compass.x_of(0));
        assert_eq!(compass.index_at(compass.left), Some(46));
        assert_eq!(compass.index_at(compass.right), Some(0));
    }

    #[test]
    fn beside_the_compass_there_is_no_string() {
        let compass = Compass::across(640.0, 1.0, 47);
        for x in [compass.left - 1.0, compass.right + 1.0, f64::NAN, f64::INFINITY] {
            assert_eq!(compass.index_at(x), None, "{x}");
        }
        assert_eq!(Compass::across(640.0, 1.0, 0).index_at(300.0), None);
        assert_eq!(Compass::across(10.0, 1.0, 5).index_at(48.0), None);
    }

    #[test]
    fn labels_thin_out_as_the_drawing_narrows() {
        assert_eq!(texts(8, 640.0, 1.0), ["A6", "G6", "F6", "E6", "D6", "C6", "B5", "A5"]);
        assert_eq!(texts(8, 140.0, 1.0), ["F", "C6"]);
        assert_eq!(texts(22, 240.0, 1.0), ["F", "C6", "F", "C5", "F", "C4"]);
        assert_eq!(texts(47, 640.0, 1.0).len(), 14);
        assert_eq!(texts(47, 270.0, 1.0), ["C7", "C6", "C5", "C4", "C3", "C2", "C1"]);
        assert_eq!(texts(47, 170.0, 1.0), ["C6", "C4", "C2"]);
        assert_eq!(texts(47, 640.0, 1.0), texts(47, 1920.0, 3.0), "sharper, but the same");
    }

    #[test]
    fn a_range_spans_the_slots_of_its_strings() {
        let compass = Compass { left: 100.0, right: 200.0, count: 10 };
        assert_eq!(compass.span_of(&(0..1)), Some((190.0, 200.0)));
        assert_eq!(compass.span_of(&(8..99)), Some((100.0, 120.0)));
        assert_eq!(compass.span_of(&(10..12)), None);
        assert_eq!(compass.span_of(&(3..3)), None);
    }

    #[test]
    fn numbers_run_from_the_first_to_the_last() {
        let numbers = |count, width| -> Vec<usize> {
            let compass = Compass::across(width, 1.0, count);
            compass.number_labels(1.0).into_iter().map(|index| index + 1).collect()
        };
        assert_eq!(numbers(5, 640.0), [1, 2, 3, 4, 5]);
        assert_eq!(numbers(47, 640.0), [1, 5, 10, 15, 20, 25, 30, 35, 40, 45, 47]);
        assert_eq!(numbers(47, 300.0), [1, 5, 10, 15, 20, 25, 30, 35, 40, 47]);
        assert_eq!(numbers(1, 640.0), [1]);
        assert!(numbers(0, 640.0).is_empty());
    }
}
