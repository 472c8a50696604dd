//! What users do and what happens to them, and how often it came to pass.

/// What a user does, or what happens; the first number is the tab.
#[derive(Clone, Debug)]
pub enum Act {
    /// Types a word.
    Edit(usize),
    /// The page has shown the change, and keeps it.
    Frame(usize),
    /// One of the steps that wait in the browser is done.
    Step(usize),
    /// The same, and there is no room for what it writes.
    Full(usize),
    /// For a while nobody does anything, and all that waits is done.
    Pause,
    /// "Load it", in one of the tabs that offer it.
    Load(usize),
    /// "Keep mine as a copy".
    Copy(usize),
    Undo(usize),
    Redo(usize),
    /// Another program comes to the front: the page leaves what waits, and lives on.
    Hide(usize),
    /// The page is left and opened again; whether a write under way is complete.
    Reload(usize, bool),
    /// The tab dies and is opened again.
    Kill(usize, bool),
    /// Puts one of the designs into the bin.
    Bin(usize, usize),
    PutBack(usize, usize),
    /// Opens one of the designs.
    Open(usize, usize),
    /// Begins a new design.
    Begin(usize),
}

/// How often what mattered came to pass.
#[derive(Clone, Copy, Debug, Default)]
pub struct Seen {
    pub copies: usize,
    pub loads: usize,
    pub undone: usize,
    pub again: usize,
    pub kills: usize,
    pub bins: usize,
    pub refused: usize,
}

impl Seen {
    pub fn and(self, other: Self) -> Self {
        Self {
            copies: self.copies + other.copies,
            loads: self.loads + other.loads,
            undone: self.undone + other.undone,
            again: self.again + other.again,
            kills: self.kills + other.kills,
            bins: self.bins + other.bins,
            refused: self.refused + other.refused,
        }
    }

    /// The rarest of what must happen often.
    pub fn least(&self) -> usize {
        let cut_short = [self.kills, self.again, self.refused];
        let done = [self.copies, self.loads, self.undone, self.bins];
        cut_short.into_iter().chain(done).min().unwrap_or(0)
    }
}
