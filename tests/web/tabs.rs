//! Two tabs on one design, in drawn interleavings: whatever was typed in either is kept somewhere.
//!
//! Two copies of `keep.js` in one page are two tabs to the browser's storage and its channel. What the page does with
//! what it hears (`src/app/store/keeping.rs`) is played here in a few lines, so that many turns take little time;
//! `tests/e2e/keeping.rs` plays some with two pages.

use super::outcomes::{open_keeping, wait_for};
use wasm_bindgen_test::wasm_bindgen_test;

const TABS: &str = r"
globalThis.played = async (first, second) => {
  let state = 5n;
  const draw = (below) => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
    return Number((state >> 33n) % BigInt(below));
  };
  const rest = (ms) => new Promise((then) => setTimeout(then, ms));
  let names = 0;
  const key = (name) => `stringloft/design/${name}`;

  class Tab {
    constructor(keeping) {
      this.keeping = keeping;
      keeping.listen((what, about) => {
        if (about !== key(this.name)) return;
        // No design is open to the scripts here, so that they put what clashes beside by themselves.
        if (what === 'elsewhere' || what === 'beside') this.elsewhere = true;
        if (what === 'clash') this.copy();
      });
    }
    open(name, text) { Object.assign(this, { name, text, elsewhere: false, unkept: false }); }
    edit(word) {
      this.text += `${word} `;
      this.unkept = true;
      draw(2) ? this.keep() : setTimeout(() => this.keep(), draw(6));
    }
    keep() {
      if (!this.unkept) return;
      if (this.elsewhere) return this.copy();
      this.unkept = false;
      this.keeping.putDesign(this.name, this.text, 0, 0);
    }
    copy() {
      this.elsewhere = false;
      this.name = `copy-${names++}`;
      this.unkept = true;
      this.keep();
    }
    load() {
      const text = this.keeping.get(key(this.name));
      if (this.elsewhere && !this.unkept && text !== undefined) this.open(this.name, text);
    }
    bin(name) {
      const text = this.keeping.get(key(name));
      if (text === undefined || name === this.name) return;
      this.keeping.put(`stringloft/bin/${name}`, text);
      this.keeping.put(key(name), undefined);
    }
    async end() {
      this.keep();
      while (this.unkept || this.keeping.waits(key(this.name))) await rest(2);
    }
  }

  const tabs = [new Tab(first), new Tab(second)];
  const seen = { copies: 0, loads: 0, bins: 0 };
  for (let turn = 0; turn < 200; turn++) {
    const name = `shared-${turn}`;
    const copies = names;
    const words = [];
    tabs.forEach((tab) => tab.open(name, ''));
    for (let step = 0; step < 12; step++) {
      const [tab, other] = draw(2) ? tabs : [tabs[1], tabs[0]];
      const act = draw(10);
      if (act < 5) {
        words.push(`w${turn}-${step}`);
        tab.edit(words.at(-1));
      } else if (act < 7) {
        seen.loads += tab.elsewhere && !tab.unkept;
        tab.load();
      } else if (act < 8 && draw(3) === 0) {
        seen.bins++;
        tab.bin(other.name);
      } else {
        await rest(draw(8));
      }
    }
    for (const tab of tabs) await tab.end();
    await rest(20);
    for (const tab of tabs) await tab.end();
    seen.copies += names - copies;
    // What is on the disk is what a third tab would read.
    const base = await new Promise((yes) => (indexedDB.open('stringloft').onsuccess = ({ target }) => yes(target.result)));
    const all = await new Promise((yes) => {
      base.transaction('texts').objectStore('texts').getAll().onsuccess = ({ target }) => yes(target.result);
    });
    base.close();
    const kept = all.map(({ text }) => text).join(' ');
    const lost = words.filter((word) => !kept.includes(`${word} `));
    if (lost.length) throw new Error(`turn ${turn} lost ${lost} of ${words}`);
    for (const tab of tabs) {
      const mine = tab.keeping.get(key(tab.name));
      if (mine !== undefined && mine !== tab.text && !tab.elsewhere) throw new Error(`turn ${turn}: ${mine} is not ${tab.text}`);
    }
  }
  if (seen.copies < 20 || seen.loads < 1 || seen.bins < 10) throw new Error(`too tame: ${JSON.stringify(seen)}`);
  console.log(JSON.stringify(seen));
};
";

#[wasm_bindgen_test]
async fn two_tabs_lose_nothing_in_200_interleavings() {
    js_sys::eval(TABS).expect("it runs");
    open_keeping().await;
    js_sys::eval("globalThis.firstTab = keeping").expect("it runs");
    open_keeping().await;
    wait_for("played(firstTab, keeping)").await;
}
