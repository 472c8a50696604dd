//! How notes are named: a choice of display of its own, which follows the language unless somebody chose.

use std::cell::Cell;

use super::{Language, language};

/// The names of notes. What documents, links and CSV hold has English names, whatever is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Naming {
    /// `C4`, `E♭3`, `B♭3`, `B3`.
    English,
    /// `C4`, `Es3`, `B3`, `H3`. The octaves keep their numbers: the harpist's octave stands beside the note, and for
    /// strokes below the lowest letters there are several spellings.
    German,
    /// `do3`, `mi♭2`, `si♭2`, `si2`. Octaves are counted from `do1`, two below the middle one, so that 440 Hz is `la3`;
    /// there is no octave 0.
    ///
    /// # Source
    ///
    /// J. Zamacois, *Teoría de la música*, book 1, 1986, as an encyclopaedia's article on this count reports it; an
    /// Italian law of 3 May 1989 (n. 170) calls 440 Hz la3, as the same article has it. That sign and number follow
    /// the syllable without a blank: common practice, no source.
    Syllables,
}

impl Naming {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::English, Self::German, Self::Syllables];

    /// What the choice is kept as.
    pub const fn key(self) -> &'static str {
        match self {
            Self::English => "english",
            Self::German => "german",
            Self::Syllables => "syllables",
        }
    }

    /// The one that is kept as that.
    pub fn of_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|naming| naming.key() == key)
    }
}

impl Language {
    /// The names that its speakers use.
    pub const fn naming(self) -> Naming {
        match self {
            Self::English => Naming::English,
            Self::German => Naming::German,
            Self::French => Naming::Syllables,
        }
    }
}

thread_local! {
    static CHOSEN: Cell<Option<Naming>> = const { Cell::new(None) };
}

/// How notes are named now: as was chosen, else as is usual in the language of now.
pub fn naming() -> Naming {
    CHOSEN.get().unwrap_or(language().naming())
}

/// What was chosen, if anything was.
pub fn chosen_naming() -> Option<Naming> {
    CHOSEN.get()
}

/// Names notes so from now on, or with `None` as is usual in each language.
pub fn name_notes(chosen: Option<Naming>) {
    CHOSEN.set(chosen);
}

/// Does something with notes named so, then goes back to what was chosen before.
pub fn in_naming<T>(naming: Naming, what: impl FnOnce() -> T) -> T {
    let before = CHOSEN.replace(Some(naming));
    let done = what();
    CHOSEN.set(before);
    done
}
