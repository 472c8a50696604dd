//! The notes of a table in the spelling of whoever wrote it: scientific names, German and French ones, octaves
//! as harpists count them. What a name means is found from all of them together.

mod plain_b;

pub use self::plain_b::PlainB;
use self::plain_b::{Sign, plain_b_of};
use crate::design::letters::small;
use crate::design::typed::{self, Pitch};
use crate::engine::pitch::{Letter, Note, naming};
use crate::words::tables;

/// Words that stand for an octave.
const OCTAVE: [&str; 8] = ["octave", "octaves", "oct", "okt", "oktave", "ottava", "8ve", "8va"];

/// A name before it is known how its octave is counted.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Name {
    letter: Letter,
    alter: i8,
    octave: Octave,
    /// Whether it is a syllable such as `sol`.
    is_syllable: bool,
    /// Whether the letter is H, or a B without a sign, which is B flat in German lists.
    german: Option<char>,
    sign: Sign,
    is_capital: bool,
    /// What stands in brackets behind it.
    pub(super) remark: String,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Octave {
    None,
    Number(i8),
    /// Before the letter, or with the word.
    Word(i8),
    /// `c''`
    Primes(i8),
    /// C4, whatever else.
    Middle,
}

/// How the octaves of a table are counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Count {
    Scientific,
    Harp,
    /// Large and small letters, small ones from c′, which is middle C.
    Helmholtz,
    /// `la3` is A4.
    French,
}

/// A number of an octave in a text, as in `5th octave`, `Octave 5`, `1. Oktave`.
pub(super) fn octave_in(text: &str) -> Option<i8> {
    let text = small(text);
    let words: Vec<&str> =
        text.split(|c: char| c.is_whitespace() || ".,:()-".contains(c)).collect();
    if !words.iter().any(|word| OCTAVE.contains(word)) {
        return None;
    }
    words.iter().find_map(|word| leading(word).filter(|number| *number <= 9))
}

/// The number at the beginning of a word: `5th`.
fn leading(word: &str) -> Option<i8> {
    let digits: String = word.chars().take_while(char::is_ascii_digit).collect();
    digits.parse().ok()
}

/// The name behind the number of a string, as in `1) C6`; what is said of an octave stays.
fn without_number(cell: &str) -> &str {
    match cell.trim().split_once([')', '.']) {
        Some((number, rest)) if number.parse::<u16>().is_ok() && octave_in(cell).is_none() => rest,
        _ => cell,
    }
}

impl Name {
    /// Reads a name, or `None` where it is none.
    pub(super) fn read(cell: &str) -> Option<Self> {
        let cell = without_number(cell);
        let (cell, remark) = match cell.split_once(['(', '[']) {
            Some((name, rest)) => (name.trim(), rest.trim_end_matches([')', ']', ' '])),
            None => (cell.trim(), ""),
        };
        // Of two names for one string the first is taken.
        let cell = cell.split('/').next().unwrap_or_default().trim().trim_end_matches('*');
        let text = small(cell);
        if text == "middle c" {
            return Some(Self {
                remark: remark.to_owned(),
                ..Self::of(Letter::C, 0, Octave::Middle)
            });
        }
        let mut octave = Octave::None;
        let kept: Vec<&str> = match octave_in(cell) {
            Some(number) => {
                octave = Octave::Word(number);
                let is_rest = |word: &&str| {
                    !OCTAVE.contains(&&*small(word.trim_matches([',', '.', ':'])))
                        && leading(word).is_none()
                };
                cell.split_whitespace().filter(is_rest).collect()
            }
            None => cell.split_whitespace().collect(),
        };
        let joined = kept.join(" ");
        let mut rest = joined.as_str();
        if let Some(number) = leading(rest) {
            // `4C`, but not `4 C 5` or `12`.
            if octave != Octave::None || number > 9 {
                return None;
            }
            octave = Octave::Word(number);
            rest = rest.trim_start_matches(|c: char| c.is_ascii_digit()).trim_start();
        }
        let (mut name, rest) = letter(rest)?;
        let (alter, sign, rest) = sign(&name, rest)?;
        name.alter += alter;
        name.sign = sign;
        if sign != Sign::None && name.german == Some('B') {
            name.german = None;
        }
        let found = octave_behind(rest.trim())?;
        name.octave = match (octave, found) {
            (Octave::None, found) => found,
            (octave, Octave::None) => octave,
            _ => return None,
        };
        name.remark = remark.to_owned();
        Some(name)
    }

    fn of(letter: Letter, alter: i8, octave: Octave) -> Self {
        let remark = String::new();
        Self {
            letter,
            alter,
            octave,
            is_syllable: false,
            german: None,
            sign: Sign::None,
            is_capital: true,
            remark,
        }
    }

    /// The same name in an octave that stands elsewhere.
    pub(super) fn in_octave(mut self, number: i8) -> Self {
        if self.octave == Octave::None {
            self.octave = Octave::Word(number);
        }
        self
    }

    fn note(&self, count: Count) -> Option<Note> {
        // A number that no octave can have gives none that one can have.
        let helmholtz = |marks: i8| {
            if self.is_capital { 2_i8.saturating_sub(marks) } else { marks.saturating_add(3) }
        };
        let octave = match (self.octave, count) {
            (Octave::Middle, _) => 4,
            (Octave::None, Count::Helmholtz) => helmholtz(0),
            (Octave::None, _) => return None,
            (Octave::Primes(marks), _) => helmholtz(marks),
            (Octave::Number(number), Count::Helmholtz) => helmholtz(number),
            (Octave::Number(number) | Octave::Word(number), count) => match count {
                Count::Harp if matches!(self.letter, Letter::C | Letter::D | Letter::E) => {
                    8_i8.saturating_sub(number)
                }
                Count::Harp => 7_i8.saturating_sub(number),
                Count::French => naming::octave_of_syllable(number),
                _ => number,
            },
        };
        Note::new(self.letter, self.alter, octave).ok()
    }
}

/// The letter or syllable at the beginning, and what follows it.
fn letter(text: &str) -> Option<(Name, &str)> {
    let low = small(text);
    if let Some((letter, length)) = naming::syllable(&low) {
        let rest = text.get(length..)?;
        if !rest.starts_with(|c: char| c.is_alphabetic() && !matches!(c, 'b' | 'd' | 'x')) {
            let name = Name { is_syllable: true, ..Name::of(letter, 0, Octave::None) };
            return Some((name, rest));
        }
    }
    let first = text.chars().next()?;
    let capital = first.to_ascii_uppercase();
    let found = if capital == 'H' {
        Letter::B
    } else {
        Letter::ALL.into_iter().find(|letter| letter.name() == capital)?
    };
    let german = matches!(capital, 'H' | 'B').then_some(capital);
    let is_capital = first.is_ascii_uppercase();
    Some((Name { german, is_capital, ..Name::of(found, 0, Octave::None) }, &text[1..]))
}

/// What raises or lowers it, and what follows.
fn sign<'a>(name: &Name, text: &'a str) -> Option<(i8, Sign, &'a str)> {
    let text = text.trim_start();
    match naming::sign(name.letter, &small(text)) {
        Some(sign) => {
            let kind = if sign.is_ending { Sign::Ending } else { Sign::Mark };
            text.get(sign.length..).map(|rest| (sign.alter, kind, rest))
        }
        None => Some((0, Sign::None, text)),
    }
}

/// The octave behind a letter: digits, primes, or none.
fn octave_behind(text: &str) -> Option<Octave> {
    let text = text.trim_start_matches(['-', '_', ' ']);
    if text.is_empty() {
        return Some(Octave::None);
    }
    let mut marks = text.chars().map(|c| match c {
        '\'' | '’' | '′' | '´' => Some(1),
        '"' | '″' | '”' => Some(2),
        '‴' => Some(3),
        _ => None,
    });
    if let Some(marks) = marks.try_fold(0_i8, |sum, mark| Some(sum.saturating_add(mark?))) {
        return Some(Octave::Primes(marks));
    }
    let plain: String = text
        .chars()
        .map(|c| match u32::from(c) {
            code @ 0x2080..=0x2089 => char::from(b'0' + u8::try_from(code - 0x2080).unwrap_or(0)),
            _ => c,
        })
        .collect();
    let number = plain.replace('−', "-").parse::<i8>().ok()?;
    (-3..=10).contains(&number).then_some(Octave::Number(number))
}

/// What the notes of a table are.
#[derive(Default)]
pub(super) struct Notes {
    /// As a cell of the design has them; empty where it is not known.
    pub(super) texts: Vec<String>,
    /// What was assumed, a sentence each without a full stop.
    pub(super) told: Vec<String>,
    /// Whether it must be asked what a B without a sign is.
    pub(super) asks_b: bool,
}

/// What is known of a table beside its notes.
#[derive(Clone, Copy, Default)]
pub(super) struct About {
    /// Whether the strings grow longer, where that is known.
    pub(super) down: Option<bool>,
    /// Whether its words are German.
    pub(super) is_german: bool,
    /// What a B without a sign is, where somebody said so.
    pub(super) plain_b: Option<PlainB>,
}

/// Reads the notes of a column.
pub(super) fn read(cells: &[(String, Option<i8>)], about: About) -> Notes {
    let mut out = Notes::default();
    let mut names: Vec<Option<Name>> = cells
        .iter()
        .map(|(cell, octave)| {
            let name = Name::read(cell)?;
            Some(match octave {
                Some(number) => name.in_octave(*number),
                None => name,
            })
        })
        .collect();
    let has_h = names.iter().flatten().any(|name| name.german == Some('H'));
    let is_plain = |name: &Name| name.german == Some('B');
    let has_plain = names.iter().flatten().any(is_plain);
    let found = plain_b_of(&names, about.is_german);
    out.asks_b = has_plain && found == PlainB::Open && about.plain_b.is_none();
    let plain_b = about.plain_b.filter(|_| found == PlainB::Open).unwrap_or(found);
    if has_plain && plain_b == PlainB::Flat {
        names.iter_mut().flatten().filter(|name| is_plain(name)).for_each(|name| name.alter = -1);
    }
    match (has_h, has_plain && plain_b == PlainB::Flat) {
        (true, _) => out.told.push(tables::GERMAN_H.into()),
        (false, true) => out.told.push(tables::GERMAN_B.into()),
        (false, false) => {}
    }
    let count = count_of(&names);
    match count {
        Count::Harp => out.told.push(tables::OCTAVES_HARP.into()),
        Count::Helmholtz => out.told.push(tables::OCTAVES_HELMHOLTZ.into()),
        Count::French => out.told.push(tables::OCTAVES_FRENCH.into()),
        Count::Scientific => {}
    }
    let mut notes: Vec<Option<Note>> =
        names.iter().map(|name| name.as_ref().and_then(|name| name.note(count))).collect();
    spread(&names, &mut notes, about.down);
    let inferred = fill(&mut notes, &names);
    if inferred > 0 {
        let one = inferred == 1;
        let told = if one { tables::NOTE_INFERRED_ONE } else { tables::NOTE_INFERRED_SOME };
        out.told.push(told.into());
    }
    for (((cell, _), note), name) in cells.iter().zip(notes).zip(&names) {
        let is_open = about.plain_b == Some(PlainB::Open) && plain_b == PlainB::Open;
        let note = note.filter(|_| !(is_open && name.as_ref().is_some_and(is_plain)));
        let text = match (note, typed::pitch(cell)) {
            (_, Ok(Pitch::Frequency(_))) => cell.trim().to_owned(),
            (Some(note), _) => note.to_string(),
            (None, _) => String::new(),
        };
        out.texts.push(text);
    }
    out
}

/// How the octaves are counted: in the way in which the fewest neighbours are far apart.
fn count_of(names: &[Option<Name>]) -> Count {
    let all = || names.iter().flatten();
    if all().any(|name| matches!(name.octave, Octave::Primes(_))) {
        return Count::Helmholtz;
    }
    let broken = |count: Count| {
        let notes: Vec<Note> = all().filter_map(|name| name.note(count)).collect();
        let apart = |pair: &&[Note]| (pair[0].step() - pair[1].step()).abs() > 4;
        notes.windows(2).filter(apart).count()
    };
    let large = all().any(|name| name.is_capital && !name.is_syllable);
    if large && all().any(|name| !name.is_capital) && all().any(|name| name.octave == Octave::None)
    {
        let both = broken(Count::Helmholtz);
        if both < broken(Count::Scientific) || all().all(|name| name.octave == Octave::None) {
            return Count::Helmholtz;
        }
    }
    let (scientific, harp) = (broken(Count::Scientific), broken(Count::Harp));
    let said = all().any(|name| matches!(name.octave, Octave::Word(_)));
    if harp < scientific || (harp == scientific && said) {
        return Count::Harp;
    }
    if all().any(|name| name.is_syllable) { Count::French } else { Count::Scientific }
}

/// Names without an octave, from those that have one, step by step along the list.
fn spread(names: &[Option<Name>], notes: &mut [Option<Note>], down: Option<bool>) {
    let Some(down) = down else { return };
    let known: Vec<usize> = (0..notes.len()).filter(|at| notes[*at].is_some()).collect();
    for start in known {
        for forth in [true, false] {
            let mut at = start;
            while let Some(next) = if forth { at.checked_add(1) } else { at.checked_sub(1) } {
                let (Some(Some(name)), Some(note), Some(None)) =
                    (names.get(next), notes[at], notes.get(next))
                else {
                    break;
                };
                notes[next] = beside(note, name, down == forth);
                at = next;
            }
        }
    }
}

/// The nearest note with a name's letter, at or below another note, or at or above it.
fn beside(note: Note, name: &Name, below: bool) -> Option<Note> {
    let steps = if below { 0..7 } else { -6..1 };
    let at = |down: i32| note.moved(-down, |_| 0).filter(|moved| moved.letter() == name.letter);
    let octave = steps.into_iter().find_map(at)?.octave();
    Note::new(name.letter, name.alter, octave).ok()
}

/// Notes of strings that stand between two others, where the count of strings fits the steps. How many there are.
fn fill(notes: &mut [Option<Note>], names: &[Option<Name>]) -> usize {
    let known: Vec<Note> = notes.iter().flatten().copied().collect();
    let sign = |letter: Letter| {
        known.iter().find(|note| note.letter() == letter).map_or(0, |note| note.alter())
    };
    let mut count = 0;
    let mut last: Option<usize> = None;
    for at in 0..notes.len() {
        let Some(note) = notes[at] else { continue };
        if let Some((from, first)) = last.and_then(|from| Some((from, notes[from]?)))
            && at > from + 1
            && names[from + 1..at].iter().all(Option::is_none)
        {
            let steps = note.step() - first.step();
            if usize::try_from(steps.abs()) == Ok(at - from) {
                for (down, between) in (1..).zip(&mut notes[from + 1..at]) {
                    *between = first.moved(down * steps.signum(), sign);
                    count += 1;
                }
            }
        }
        last = Some(at);
    }
    count
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(list: &str, down: Option<bool>) -> Vec<String> {
        let cells: Vec<(String, Option<i8>)> =
            list.split(',').map(|cell| (cell.trim().to_owned(), None)).collect();
        read(&cells, About { down, ..About::default() }).texts
    }

    #[test]
    fn a_name_is_read_in_every_spelling() {
        for (list, notes) in [
            ("C5, Bb4, F♯4, D flat 4, G sharp3, C₄", ["C5", "Bb4", "F#4", "Db4", "G#3", "C4"]),
            ("c'', h', b', as', fis', es'", ["C5", "B4", "Bb4", "Ab4", "F#4", "Eb4"]),
            ("c', h, a, d, c, H", ["C4", "B3", "A3", "D3", "C3", "B2"]),
            ("do4, si3, la3, sol3, fa3, mi3", ["C5", "B4", "A4", "G4", "F4", "E4"]),
            ("E1, D1, C1, B1, F1, E2", ["E7", "D7", "C7", "B6", "F6", "E6"]),
            ("1E, 1D, 1C, 1B, 1F, 2E", ["E7", "D7", "C7", "B6", "F6", "E6"]),
            ("2) C5, 3) B4, 4. A4, 5. G4, 6. F4, 7. E4", ["C5", "B4", "A4", "G4", "F4", "E4"]),
        ] {
            assert_eq!(of(list, Some(true)), notes, "{list}");
        }
        for text in ["", "gut", "12", "612 mm", "nylon", "see below", "1 2 3", "é", "b c d"] {
            assert_eq!(Name::read(text), None, "{text}");
        }
    }

    #[test]
    fn a_plain_b_is_flat_where_the_list_is_german_and_asked_about_where_nothing_tells() {
        let b = |list: &str, is_german: bool| {
            let cells: Vec<(String, Option<i8>)> =
                list.split(',').map(|cell| (cell.trim().to_owned(), None)).collect();
            let notes = read(&cells, About { is_german, ..About::default() });
            (notes.texts[0].clone(), notes.asks_b)
        };
        for (list, is_german, note, asks) in [
            // An H, or `es` and `as`: German, whatever the headings.
            ("b'', h', c''", false, "Bb5", false),
            ("b'', as'', g'', f'', es''", false, "Bb5", false),
            ("B4, As4, G4, Es4", false, "Bb4", false),
            // Dutch: B flat is `bes`.
            ("b'', bes', as', es'", false, "B5", false),
            // German words and octave marks.
            ("b'', a'', g''", true, "Bb5", false),
            ("b'', a'', g''", false, "B5", true),
            ("B4, A4, G4", true, "B4", true),
            // `fis`: German, where B is flat, or Dutch, where it is none.
            ("b'', a'', fis''", true, "B5", true),
            // English signs.
            ("B4, A4, F#4", true, "B4", false),
            ("B4, Ab4, Eb4", false, "B4", false),
            ("B4, Ab4, Eb4", true, "B4", true),
            ("B4, A4, G4", false, "B4", false),
            // B with its own sign is what it says.
            ("Bb4, A4, H3", true, "Bb4", false),
            ("B♮4, A4, H3", true, "B4", false),
            ("A4, G4, F4", true, "A4", false),
        ] {
            assert_eq!(b(list, is_german), (note.to_owned(), asks), "{list} {is_german}");
        }
        let cells = ["c''", "b'", "a'"].map(|cell| (cell.to_owned(), None));
        let said = |plain_b| read(&cells, About { plain_b: Some(plain_b), ..About::default() });
        assert_eq!(said(PlainB::Flat).texts, ["C5", "Bb4", "A4"]);
        assert_eq!(said(PlainB::Natural).texts, ["C5", "B4", "A4"]);
        assert_eq!(said(PlainB::Open).texts, ["C5", "", "A4"]);
        assert!(!said(PlainB::Natural).asks_b);
    }

    #[test]
    fn letters_follow_from_one_that_has_its_octave_and_gaps_from_their_neighbours() {
        assert_eq!(of("E, D, C4, B, A", Some(true)), ["E4", "D4", "C4", "B3", "A3"]);
        assert_eq!(of("A, B, C4, D, E", Some(false)), ["A3", "B3", "C4", "D4", "E4"]);
        assert_eq!(of("E, D, C", Some(true)), ["", "", ""], "nothing says which");
        assert_eq!(of("C5, ?, Ab4, ?, F4", Some(true)), ["C5", "B4", "Ab4", "G4", "F4"]);
        assert_eq!(of("C5, ?, F4", Some(true)), ["C5", "", "F4"], "the count does not fit");
        assert_eq!(of("C5, 443.2 Hz, A4", Some(true)), ["C5", "443.2 Hz", "A4"]);
    }
}
