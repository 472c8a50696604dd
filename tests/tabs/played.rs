//! What the program does in each tab, as `src/app/store/keeping.rs` does it, and what must hold.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Value, json};
use stringloft::app::tab::{self, Answer, Elsewhere, Heard, Keep, Said, Tab};
use stringloft::design::document::Design;
use stringloft::design::history::History;
use stringloft::design::persist;

use super::acts::{Act, Seen};
use super::browser::Browser;
use super::page::{BIN, DESIGN, Page};

pub struct Played<'a> {
    browser: &'a mut Browser,
    pub pages: Vec<Page>,
    names: usize,
    pub typed: BTreeSet<String>,
    /// Words that a user took back.
    pub undone: BTreeSet<String>,
    /// Which tabs changed a design.
    by: BTreeMap<String, BTreeSet<usize>>,
    /// Designs that a tab left for the next page to write, by whom.
    given: BTreeSet<(usize, String)>,
    /// What a tab is to show when it is opened again: its design as it was left.
    left: BTreeMap<usize, (String, String)>,
    /// Words that some tab called kept, or left where the next one finds them.
    safe: BTreeSet<String>,
    /// Words that were not called kept when their tab was killed.
    pub killed: BTreeSet<String>,
    pub seen: Seen,
}

pub type Holds = Result<(), String>;

impl<'a> Played<'a> {
    pub fn begin(browser: &'a mut Browser, tabs: usize, seed: u32) -> Self {
        let mut played = Self {
            browser,
            pages: (0..tabs).map(|_| Page::new()).collect(),
            names: 0,
            typed: BTreeSet::new(),
            undone: BTreeSet::new(),
            by: BTreeMap::new(),
            left: BTreeMap::new(),
            given: BTreeSet::new(),
            safe: BTreeSet::new(),
            killed: BTreeSet::new(),
            seen: Seen::default(),
        };
        // Nothing is heard yet, as nothing has been done.
        let _ = played.ask(json!({ "do": "begin", "seed": seed, "count": tabs }));
        played
    }

    /// All tabs stand, and have the same design open.
    pub fn share(&mut self) -> Holds {
        self.rest()?;
        self.act(Act::Edit(0))?;
        self.keep_now(0)?;
        self.rest()?;
        let Some(id) = self.pages[0].id.clone() else { return Ok(()) };
        (1..self.pages.len()).try_for_each(|tab| self.open(tab, id.clone()))
    }

    /// Has something done in the browser; what its tabs tell meanwhile is heard.
    pub fn ask(&mut self, command: Value) -> Result<Value, String> {
        self.browser.say(&command);
        let mut held = Ok(());
        loop {
            let mut said = self.browser.hear(&command);
            if let Some(told) = said.get("tells") {
                let tab = told[0].as_u64().and_then(|tab| usize::try_from(tab).ok()).unwrap_or(0);
                let word = |at: usize| told[at].as_str().unwrap_or_default().to_owned();
                let heard = self.hear(tab, &word(1), word(2));
                held = held.and(heard);
                self.browser.say(&json!({ "do": "heard" }));
                continue;
            }
            return held.map(|()| said["answer"].take());
        }
    }

    pub fn text(&mut self, command: Value) -> Result<Option<String>, String> {
        Ok(self.ask(command)?.as_str().map(str::to_owned))
    }

    pub fn get(&mut self, tab: usize, key: &str) -> Result<Option<String>, String> {
        self.text(json!({ "do": "get", "tab": tab, "key": key }))
    }

    fn put(&mut self, tab: usize, key: &str, text: Option<&str>) -> Holds {
        self.ask(json!({ "do": "put", "tab": tab, "key": key, "text": text })).map(drop)
    }

    fn fails(&mut self, tab: usize) -> Result<bool, String> {
        Ok(self.text(json!({ "do": "failed", "tab": tab }))?.is_some_and(|why| !why.is_empty()))
    }

    fn fresh_name(&mut self) -> String {
        self.names += 1;
        format!("name-{}", self.names)
    }

    fn hear(&mut self, tab: usize, what: &str, key: String) -> Holds {
        if what == "ready" {
            return self.start(tab);
        }
        let heard = Heard::of(what, key);
        let own = self.pages[tab].key();
        let is_open = |key: &str| own.as_deref() == Some(key);
        match (tab::answer(&heard, is_open, |key| key.starts_with(DESIGN)), heard) {
            (Answer::Say, _) => {
                let fails = self.fails(tab)?;
                let page = &mut self.pages[tab];
                match tab::said(fails, page.says.is_none(), page.tab.unkept) {
                    Said::AsBefore => {}
                    Said::Kept => {
                        self.pages[tab].says = Some(Said::Kept);
                        self.is_kept(tab)?;
                    }
                    Said::NotKept => {
                        page.says = Some(Said::NotKept);
                        self.seen.refused += 1;
                    }
                }
                Ok(())
            }
            (Answer::TakeSteps, _) => {
                let history = &self.pages[tab].history;
                if history.at() == 0 && !history.can_redo() {
                    self.take_steps(tab)?;
                }
                Ok(())
            }
            (Answer::Warn, Heard::Elsewhere(key)) => {
                let gone = self.get(tab, &key)?.is_none();
                let what = if gone { Elsewhere::Gone } else { Elsewhere::Changed };
                self.pages[tab].tab.elsewhere = Some(what);
                Ok(())
            }
            (Answer::Copy, _) => self.keep_beside(tab),
            (Answer::Complain | Answer::Nothing | Answer::TellCopy | Answer::Warn, _) => Ok(()),
        }
    }

    /// What a tab calls kept has been on the disk, just so.
    fn is_kept(&mut self, tab: usize) -> Holds {
        let page = &self.pages[tab];
        let Some(key) = page.key() else { return Ok(()) };
        let text = persist::write(page.history.present());
        let command = json!({ "do": "ever", "key": key, "text": text });
        if self.ask(command)? == json!(true) {
            self.is_safe(tab);
            Ok(())
        } else {
            Err(format!("tab {tab} says that {key} is kept, and it was never on the disk as it is"))
        }
    }

    /// Nothing may happen any more to what was typed in a tab.
    fn is_safe(&mut self, tab: usize) {
        self.safe.append(&mut self.pages[tab].risked);
    }

    fn take_steps(&mut self, tab: usize) -> Holds {
        let mut counts = [0, 0];
        for (count, forward) in counts.iter_mut().zip([false, true]) {
            let answer = self.ask(json!({ "do": "steps", "tab": tab, "forward": forward }))?;
            *count = answer.as_u64().and_then(|count| usize::try_from(count).ok()).unwrap_or(0);
        }
        self.pages[tab].history.set_elsewhere(counts[0], counts[1]);
        Ok(())
    }

    /// The page opens with what was open last.
    fn start(&mut self, tab: usize) -> Holds {
        self.pages[tab].is_ready = true;
        self.open_last(tab)?;
        let Some((id, text)) = self.left.remove(&tab) else { return Ok(()) };
        let page = &self.pages[tab];
        let same = page.id.as_ref() == Some(&id) && persist::write(page.history.present()) == text;
        if same || !self.is_only_by(&id, tab) {
            return Ok(());
        }
        Err(format!("tab {tab} was left with another design, or another state of it"))
    }

    /// Whether no other tab changed a design.
    pub fn is_only_by(&self, id: &str, tab: usize) -> bool {
        self.by.get(id).is_some_and(|tabs| *tabs == BTreeSet::from([tab]))
    }

    fn open_last(&mut self, tab: usize) -> Holds {
        let Some(id) = self.text(json!({ "do": "opened", "tab": tab }))? else { return Ok(()) };
        let Some(text) = self.get(tab, &format!("{DESIGN}{id}"))? else { return Ok(()) };
        let page = &mut self.pages[tab];
        page.history = History::new(persist::read(&text).map_err(|why| why.to_string())?);
        page.id = Some(id);
        self.note_open(tab)?;
        self.take_steps(tab)
    }

    fn changed(&mut self, tab: usize) {
        if self.pages[tab].id.is_none() {
            self.pages[tab].id = Some(self.fresh_name());
        }
        let page = &mut self.pages[tab];
        page.tab.unkept = true;
        page.says = Some(Said::AsBefore);
        page.is_hasty |= page.keeps_soon;
        page.keeps_soon = true;
    }

    pub fn keep_now(&mut self, tab: usize) -> Holds {
        let page = &mut self.pages[tab];
        page.keeps_soon = false;
        let Some(id) = page.id.clone() else { return Ok(()) };
        match page.tab.keep() {
            Keep::Nothing => Ok(()),
            Keep::Beside => self.keep_beside(tab),
            Keep::Here => {
                page.tab.unkept = false;
                page.says = Some(Said::AsBefore);
                let ((at, steady), before) = tab::steps(&mut page.history);
                self.by.entry(id.clone()).or_default().insert(tab);
                let text = persist::write(page.history.present());
                self.ask(json!({
                    "do": "keep", "tab": tab, "name": id, "text": text,
                    "at": at, "steady": steady, "before": before,
                }))?;
                self.note_open(tab)
            }
        }
    }

    fn note_open(&mut self, tab: usize) -> Holds {
        let name = self.pages[tab].id.clone();
        self.ask(json!({ "do": "open", "tab": tab, "name": name })).map(drop)
    }

    fn keep_beside(&mut self, tab: usize) -> Holds {
        self.seen.copies += 1;
        let name = self.fresh_name();
        let page = &mut self.pages[tab];
        let now = page.history.present();
        let copy = Design { title: format!("{} (copy)", now.title), ..now.clone() };
        page.tab.elsewhere = None;
        page.id = Some(name);
        page.history.record(copy, None);
        page.tab.unkept = true;
        self.keep_now(tab)
    }

    /// Opens another design, as `Store::replace` does; whether it did.
    fn replace(&mut self, tab: usize, id: String, design: Design) -> Result<bool, String> {
        self.keep_now(tab)?;
        if let Some(key) = self.pages[tab].key() {
            let waits = self.ask(json!({ "do": "waits", "tab": tab, "key": key }))?;
            if waits == json!(true) && self.fails(tab)? {
                // The user is asked, and says no.
                return Ok(false);
            }
        }
        let page = &mut self.pages[tab];
        page.tab = Tab::default();
        page.says = None;
        page.id = Some(id);
        page.history = History::new(design);
        Ok(true)
    }

    fn listed(&mut self, tab: usize, prefix: &str, which: usize) -> Result<Option<String>, String> {
        let keys = self.ask(json!({ "do": "keys", "tab": tab, "prefix": prefix }))?;
        let mut keys: Vec<String> = serde_json::from_value(keys).map_err(|why| why.to_string())?;
        keys.sort();
        let at = which % keys.len().max(1);
        Ok(keys.get(at).and_then(|key| key.strip_prefix(prefix)).map(str::to_owned))
    }

    fn walk(&mut self, tab: usize, forward: bool) -> Holds {
        let mut kept = None;
        if self.pages[tab].history.is_elsewhere(forward) {
            self.keep_now(tab)?;
            if self.pages[tab].history.is_elsewhere(forward) {
                let text = self.text(json!({ "do": "next", "tab": tab, "forward": forward }))?;
                kept = Some(text.and_then(|text| persist::read(&text).ok()));
            }
        }
        let before = self.pages[tab].words();
        if self.pages[tab].history.walk(forward, kept) {
            let after = self.pages[tab].words();
            self.undone.extend(before.difference(&after).cloned());
            self.pages[tab].risked.extend(after.difference(&before).cloned());
            self.undone.retain(|word| before.contains(word) || !after.contains(word));
            self.seen.undone += usize::from(before != after);
            self.changed(tab);
        }
        Ok(())
    }

    /// One thing is done. In a tab that is not there, or not ready, nothing is.
    pub fn act(&mut self, act: Act) -> Holds {
        let tab = match act {
            Act::Step(which) | Act::Full(which) => {
                let fails = matches!(act, Act::Full(_));
                return self.ask(json!({ "do": "step", "which": which, "fails": fails })).map(drop);
            }
            Act::Pause => return self.pause(),
            Act::Load(which) => self.warned(which),
            Act::Edit(tab) | Act::Frame(tab) | Act::Copy(tab) => tab,
            Act::Undo(tab) | Act::Redo(tab) | Act::Begin(tab) | Act::Hide(tab) => tab,
            Act::Reload(tab, _) | Act::Kill(tab, _) => tab,
            Act::Bin(tab, _) | Act::PutBack(tab, _) | Act::Open(tab, _) => tab,
        };
        if self.pages.get(tab).is_none_or(|page| !page.is_ready) {
            return Ok(());
        }
        match act {
            Act::Edit(_) => {
                let word = format!("w{}", self.typed.len());
                self.typed.insert(word.clone());
                let page = &mut self.pages[tab];
                page.risked.insert(word.clone());
                let now = page.history.present();
                let remarks = format!("{} {word}", now.remarks);
                page.history.record(Design { remarks, ..now.clone() }, None);
                self.changed(tab);
                Ok(())
            }
            Act::Frame(_) if self.pages[tab].keeps_soon => self.keep_now(tab),
            Act::Load(_) => self.load(tab),
            Act::Copy(_) if self.pages[tab].tab.elsewhere.is_some() => self.keep_beside(tab),
            Act::Undo(_) => self.walk(tab, false),
            Act::Redo(_) => self.walk(tab, true),
            Act::Hide(_) => self.leave(tab),
            Act::Reload(_, completes) => {
                self.leave(tab)?;
                let page = &self.pages[tab];
                let left = page.id.clone().map(|id| (id, persist::write(page.history.present())));
                self.left.extend(left.map(|left| (tab, left)));
                self.again(tab, completes)
            }
            Act::Kill(_, completes) => {
                self.seen.kills += 1;
                self.killed.append(&mut self.pages[tab].risked);
                self.again(tab, completes)
            }
            Act::Bin(_, which) => self.bin(tab, which),
            Act::PutBack(_, which) => self.put_back(tab, which),
            Act::Open(_, which) => {
                // The list keeps what is open before it shows anything.
                self.keep_now(tab)?;
                let Some(id) = self.listed(tab, DESIGN, which)? else { return Ok(()) };
                self.open(tab, id)
            }
            Act::Begin(_) => {
                let name = self.fresh_name();
                if self.replace(tab, name, Design::default())? {
                    self.pages[tab].tab.unkept = true;
                    self.keep_now(tab)?;
                }
                Ok(())
            }
            Act::Frame(_) | Act::Copy(_) | Act::Step(_) | Act::Full(_) | Act::Pause => Ok(()),
        }
    }

    fn open(&mut self, tab: usize, id: String) -> Holds {
        let Some(text) = self.get(tab, &format!("{DESIGN}{id}"))? else { return Ok(()) };
        let design = persist::read(&text).map_err(|why| why.to_string())?;
        if self.replace(tab, id, design)? {
            self.note_open(tab)?;
        }
        Ok(())
    }

    fn load(&mut self, tab: usize) -> Holds {
        let page = &self.pages[tab];
        if page.tab.elsewhere != Some(Elsewhere::Changed) {
            return Ok(());
        }
        if page.tab.keep() == Keep::Beside {
            return self.keep_now(tab);
        }
        self.seen.loads += 1;
        let Some(id) = page.id.clone() else { return Ok(()) };
        self.open(tab, id)
    }

    pub fn leave(&mut self, tab: usize) -> Holds {
        self.keep_now(tab)?;
        if let Some(id) = self.pages[tab].id.clone() {
            self.given.insert((tab, id));
            if self.pages.iter().any(|page| !page.is_ready) {
                self.take_over(usize::MAX);
            }
        }
        match self.ask(json!({ "do": "leave", "tab": tab }))? {
            Value::Bool(true) => {
                self.is_safe(tab);
                Ok(())
            }
            _ => Err(format!("tab {tab} could not leave what waits")),
        }
    }

    /// A page that opens writes what others left, and is the last one to have written it.
    fn take_over(&mut self, by: usize) {
        for (_, id) in self.given.iter().filter(|(tab, _)| *tab != by) {
            self.by.entry(id.clone()).or_default().insert(usize::MAX);
        }
    }

    pub fn again(&mut self, tab: usize, completes: bool) -> Holds {
        self.take_over(tab);
        self.seen.again += 1;
        self.pages[tab] = Page::new();
        self.ask(json!({ "do": "reload", "tab": tab, "completes": completes })).map(drop)
    }

    /// As `shelf::bin` does, for a design that is not open here.
    fn bin(&mut self, tab: usize, which: usize) -> Holds {
        self.keep_now(tab)?;
        let Some(id) = self.listed(tab, DESIGN, which)? else { return Ok(()) };
        if self.pages[tab].id.as_ref() == Some(&id) {
            return Ok(());
        }
        self.seen.bins += 1;
        self.by.entry(id.clone()).or_default().insert(usize::MAX);
        let key = format!("{DESIGN}{id}");
        let text = self.get(tab, &key)?.unwrap_or_default();
        self.put(tab, &format!("{BIN}{id}"), Some(&text))?;
        self.put(tab, &format!("stringloft/binned/{id}"), Some("1"))?;
        self.put(tab, &key, None)
    }

    /// As `shelf::put_back` does.
    fn put_back(&mut self, tab: usize, which: usize) -> Holds {
        let Some(id) = self.listed(tab, BIN, which)? else { return Ok(()) };
        let text = self.get(tab, &format!("{BIN}{id}"))?.unwrap_or_default();
        let is_there = self.get(tab, &format!("{DESIGN}{id}"))?.is_some();
        let to = if is_there { self.fresh_name() } else { id.clone() };
        self.by.entry(to.clone()).or_default().insert(usize::MAX);
        self.put(tab, &format!("{DESIGN}{to}"), Some(&text))?;
        self.put(tab, &format!("stringloft/binned/{id}"), None)?;
        self.put(tab, &format!("{BIN}{id}"), None)
    }
}
