//! What is being done to the stock: the list in hand, and keeping it.

use leptos::prelude::*;

use crate::app::browser::{self, Handed, NotHanded, StorageError, Worked};
use crate::app::rows::{StockCell, put};
use crate::app::stock_shelf::{self, Shelved};
use crate::app::store::Store;
use crate::design::document::{MaterialSpec, StockItem};
use crate::design::letters::capital;
use crate::design::make_up_said::{kept, line_said};
use crate::design::stock::{self, StockList};
use crate::words::{Words, stock_page as say};

/// Said when the browser does not keep the list.
const NOT_KEPT: Words = say::NOT_KEPT;
/// Asked before a list is let go that the browser does not keep.
const LEAVE: Words = say::LEAVE;

/// That the list in hand was changed as asked. Only this file makes one, and no words of success can be said
/// without.
#[derive(Debug)]
pub struct Changed(());

/// The signals of the panel.
#[derive(Clone, Copy)]
pub struct Desk {
    pub store: Store,
    /// The name under which the list is kept.
    pub id: RwSignal<String>,
    /// The list in use, as it is kept.
    pub list: RwSignal<StockList>,
    /// Every list that there is.
    pub lists: RwSignal<Vec<Shelved>>,
    /// What went wrong.
    pub wrong: RwSignal<String>,
    /// What was done; only [`Desk::tell`] and its like say that something was.
    told: RwSignal<String>,
    /// Whether a table is being read.
    pub importing: RwSignal<bool>,
    /// The table.
    pub text: RwSignal<String>,
    /// What is looked for.
    pub filter: RwSignal<String>,
    /// Changes when the rows are others than before, so that what was typed into them goes.
    pub turn: RwSignal<u32>,
    /// Whether the browser took it as a file since the last change.
    saved: RwSignal<bool>,
    /// The lines of the last table that were left out.
    pub left_out: RwSignal<Vec<String>>,
    /// Whether the browser does not keep the list.
    unkept: RwSignal<bool>,
}

impl Desk {
    /// With the list in use.
    pub fn new(store: Store) -> Self {
        let id = stock_shelf::in_use();
        let kept = stock_shelf::take(&id);
        let shop = store.shop.get_untracked();
        // What the browser did not keep is still in use.
        let is_kept = kept.as_ref().is_ok_and(|list| stock_shelf::filled(list) == shop);
        let wrong = match &kept {
            Err(why) => say::list_not_opened(&why),
            Ok(_) if is_kept => String::new(),
            Ok(_) => NOT_KEPT.into(),
        };
        // What is not kept gets a place of its own, so that it is written over nothing.
        let unkept = kept.is_ok() && !is_kept;
        let id = if unkept { browser::fresh_name() } else { id };
        let list = match kept {
            Ok(list) if is_kept => list,
            _ => (*shop).clone(),
        };
        let lists = listed(&id, &list);
        let desk = Self {
            store,
            id: RwSignal::new(id),
            list: RwSignal::new(list),
            lists: RwSignal::new(lists),
            wrong: RwSignal::new(wrong),
            told: RwSignal::new(String::new()),
            importing: RwSignal::new(false),
            text: RwSignal::new(String::new()),
            filter: RwSignal::new(String::new()),
            turn: RwSignal::new(0),
            saved: RwSignal::new(false),
            left_out: RwSignal::new(Vec::new()),
            unkept: RwSignal::new(unkept),
        };
        // Whether the browser could write it is known only later.
        Effect::new(move |_| {
            let failing = store.not_kept.read().is_some();
            match browser::failing() {
                Some(why) if failing && stock_shelf::waits(&desk.id.read_untracked()) => {
                    desk.tell_kept(Err(why));
                }
                None if !failing && desk.unkept.get_untracked() => {
                    desk.unkept.set(false);
                    desk.wrong.set(String::new());
                }
                _ => {}
            }
        });
        // Another tab changed the stock.
        Effect::new(move |_| {
            let shop = store.shop.get();
            if desk.list.with_untracked(|list| stock_shelf::filled(list) != shop) {
                desk.load(&stock_shelf::in_use());
                desk.told.set(say::CHANGED_ELSEWHERE.into());
            }
        });
        desk
    }

    pub fn complain(self, text: String) {
        self.told.set(String::new());
        self.wrong.set(text);
    }

    /// Tells what was done.
    pub fn tell(self, _done: Changed, words: String) {
        self.told.set(words);
    }

    /// What was done last.
    pub fn told(self) -> String {
        self.told.get()
    }

    /// Tells whether the browser took the list as a file, and remembers if it did.
    pub fn tell_handed(self, handed: Result<Handed, NotHanded>) {
        match handed {
            Ok(handed) => {
                self.saved.set(true);
                self.told.set(handed.words());
            }
            Err(error) => self.complain(format!("{}.", capital(&error.to_string()))),
        }
    }

    /// Tells whether the browser kept the list, and remembers it.
    fn tell_kept(self, kept: Result<Worked, StorageError>) {
        self.unkept.set(kept.is_err());
        self.wrong.set(kept.err().map_or_else(String::new, not_kept));
    }

    /// Whether the list may be let go: it is kept or saved, or the user says so.
    pub fn may_leave(self) -> bool {
        !self.unkept.get_untracked()
            || self.saved.get_untracked()
            || browser::confirmed(LEAVE.said())
    }

    /// Says on the page that the list is not kept, if so.
    pub fn warn(self) {
        if self.unkept.get_untracked() && !self.saved.get_untracked() {
            self.store.complain(NOT_KEPT.said());
        }
    }

    /// Takes a list of the shelf in hand.
    fn load(self, id: &str) {
        self.wrong.set(String::new());
        self.told.set(String::new());
        let list = match stock_shelf::take(id) {
            Ok(list) => list,
            Err(why) => {
                self.wrong.set(say::list_spoilt(&why));
                StockList::default()
            }
        };
        self.unkept.set(false);
        self.take(id, list);
    }

    fn take(self, id: &str, list: StockList) {
        stock_shelf::set_in_use(id);
        self.id.set(id.to_owned());
        self.importing.set(false);
        self.filter.set(String::new());
        self.turn.update(|turn| *turn += 1);
        self.saved.set(false);
        self.left_out.set(Vec::new());
        let shop = stock_shelf::filled(&list);
        self.lists.set(listed(id, &list));
        self.list.set(list);
        self.store.shop.set(shop);
    }

    /// Another list is to be used.
    pub fn choose(self, id: String) {
        if self.may_leave() {
            self.load(&id);
        }
    }

    /// A list that begins here.
    pub fn begin(self, list: StockList) {
        if !self.may_leave() {
            return;
        }
        let (id, kept) = stock_shelf::begin(&list);
        let name = list.name.clone();
        self.take(&id, list);
        self.tell_kept(kept);
        self.tell(Changed(()), say::now_in_use(&name));
    }

    /// A list that was read of a table begins here, under a name that no other has; `None` when it cannot.
    #[must_use = "words of success need it"]
    pub fn begin_read(self, mut list: StockList) -> Option<Changed> {
        stock::give_keys(&mut list.items);
        if let Err(error) = stock::check(&list) {
            self.complain(say::refused(&error));
            return None;
        }
        if !self.may_leave() {
            return None;
        }
        let has = |name: &str| self.lists.with_untracked(|all| all.iter().any(|l| l.title == name));
        let name = |count: usize| match count {
            1 => say::FROM_TABLE.into(),
            count => say::from_table_next(&count),
        };
        list.name = (1..).map(name).find(|name| !has(name)).unwrap_or_default();
        let (id, kept) = stock_shelf::begin(&list);
        self.take(&id, list);
        self.tell_kept(kept);
        Some(Changed(()))
    }

    /// Asks, then removes the list in hand.
    pub fn remove_list(self) {
        let name = self.list.with_untracked(|list| list.name.clone());
        let question = say::remove_asked(&name);
        if browser::confirmed(&question) {
            match stock_shelf::remove(&self.id.get_untracked()) {
                Ok(_) => {
                    self.load(&stock_shelf::in_use());
                    self.tell(Changed(()), say::list_removed(&name));
                }
                Err(why) => self.complain(say::list_not_removed(&name, &why)),
            }
        }
    }

    /// Changes the list and keeps it. A list that was not read is not written over. What goes wrong is told;
    /// `None` when the list could not be changed.
    #[must_use = "words of success need it"]
    pub fn change(self, mut next: StockList) -> Option<Changed> {
        stock::give_keys(&mut next.items);
        if let Err(error) = stock::check(&next) {
            self.complain(say::refused(&error));
            return None;
        }
        let id = self.id.get_untracked();
        if let Err(why) = stock_shelf::take(&id)
            && !self.unkept.get_untracked()
        {
            self.complain(say::refused_list(&why));
            return None;
        }
        let kept = stock_shelf::keep(&id, &next);
        stock_shelf::set_in_use(&id);
        let shop = stock_shelf::filled(&next);
        self.list.set(next);
        self.store.shop.set(shop);
        self.saved.set(false);
        self.told.set(String::new());
        self.tell_kept(kept);
        Some(Changed(()))
    }

    pub fn rename(self, name: String) {
        if self.change(StockList { name, ..self.list.get_untracked() }).is_some() {
            self.lists.set(self.list.with_untracked(|list| listed(&self.id.get_untracked(), list)));
        }
    }

    pub fn set_currency(self, currency: String) {
        let _told = self.change(StockList { currency, ..self.list.get_untracked() });
    }

    /// Changes one item; whether it could be changed.
    pub fn change_item(self, row: usize, change: impl FnOnce(&mut StockItem)) -> bool {
        let mut list = self.list.get_untracked();
        let Some(item) = list.items.get_mut(row) else { return false };
        change(item);
        self.change(list).is_some()
    }

    /// Puts what was typed into a cell.
    ///
    /// # Errors
    ///
    /// A sentence, when the item cannot hold it.
    pub fn put(self, row: usize, cell: StockCell, typed: &str) -> Result<(), String> {
        let Some(before) = self.item(row) else { return Ok(()) };
        let mut item = before.clone();
        // What names a string in the language of the page is kept as a list has it.
        let typed = match cell {
            StockCell::MakeUp => self.list.with_untracked(|list| kept(typed, &list.materials)),
            _ => typed.to_owned(),
        };
        put(&mut item, cell, &typed)?;
        if item == before || self.change_item(row, |place| *place = item) {
            Ok(())
        } else {
            Err(self.wrong.get_untracked())
        }
    }

    /// An item, now.
    pub fn item(self, row: usize) -> Option<StockItem> {
        self.list.with_untracked(|list| list.items.get(row).cloned())
    }

    /// An item is added at the end, and shown.
    pub fn add(self) -> Option<usize> {
        let mut list = self.list.get_untracked();
        list.items.push(StockItem::default());
        let row = list.items.len() - 1;
        self.filter.set(String::new());
        self.change(list).map(|_| row)
    }

    /// An item goes.
    pub fn remove(self, row: usize) {
        let mut list = self.list.get_untracked();
        if row < list.items.len() {
            let item = list.items.remove(row);
            if let Some(changed) = self.change(list) {
                self.turn.update(|turn| *turn += 1);
                self.tell(changed, say::item_removed(&line_said(&item.make_up)));
            }
        }
    }

    /// A table is to be read.
    pub fn open_import(self, text: String) {
        self.wrong.set(String::new());
        self.told.set(String::new());
        self.left_out.set(Vec::new());
        self.text.set(text);
        self.importing.set(true);
    }

    /// The materials of the list and of the open design.
    pub fn materials(self) -> Vec<MaterialSpec> {
        let mut all = self.list.with(|list| list.materials.clone());
        all.extend(self.store.design.with(|design| design.materials.clone()));
        all
    }
}

fn not_kept(why: StorageError) -> String {
    say::not_kept_because(&why)
}

/// Every list on the shelf, and the one in hand, kept or not.
fn listed(id: &str, list: &StockList) -> Vec<Shelved> {
    let mut lists = stock_shelf::all();
    if lists.iter().all(|shelved| shelved.id != id) {
        lists.push(Shelved { id: id.to_owned(), title: say::listed_not_kept(&list.name) });
    }
    lists
}
