// A robot that works in the page for `soak.rs`: clicks, keys, sense and nonsense typed, dragging, always in the order
// that the seed gives. It must not leave the page, so dialogs, downloads and printing are answered here, and another
// language or other names of notes, which load the page anew, are not chosen; nor is sound asked for, which a browser
// gives to a hand alone.

window.robot = (() => {
  let state;
  const draw = (below) => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
    return Number((state >> 33n) % BigInt(below));
  };
  const one = (list) => (list.length ? list[draw(list.length)] : undefined);
  const all = (css) => [...document.querySelectorAll(css)];
  const top = () => document.querySelector("dialog[open]") ?? document;
  const isSeen = (element) => element.getClientRects().length > 0 && !element.closest("[inert]");
  const seen = (css) => [...top().querySelectorAll(css)].filter(isSeen);

  window.confirm = () => draw(2) === 0;
  window.alert = window.print = () => {};
  for (const kind of [HTMLAnchorElement, HTMLInputElement]) {
    const click = HTMLElement.prototype.click;
    kind.prototype.click = function () {
      if (!this.download && this.type !== "file") click.call(this);
    };
  }

  const SENSE = ["12", "0.55", "1.02", "340", "87.5", "A4", "C3", "F#5", "nylon 0.8", "gut 1.1", "440", "3", "25.4 mm", "1/2 in"];
  const NONSENSE = [
    "", " ", "-", "1e308", "-1e-300", "NaN", "0", "-5", "9".repeat(60), "1,2,3", "\u{1f3b5}", "<b>x</b>", "\u202eabc", "H9",
    "C99", "gut gut gut", "0.0.0", "1/0 in", "\n", "\u0000",
  ];
  const text = () => one(draw(3) ? SENSE : NONSENSE);

  const key = (element, name, more = {}) => {
    const event = new KeyboardEvent("keydown", { key: name, bubbles: true, cancelable: true, ...more });
    element.dispatchEvent(event);
  };
  const set = (field, value) => {
    field.value = value;
    field.dispatchEvent(new Event("input", { bubbles: true }));
    field.dispatchEvent(new Event("change", { bubbles: true }));
  };
  const pointer = (element, kind, x, y) => {
    const given = { bubbles: true, cancelable: true, clientX: x, clientY: y, pointerId: 1, isPrimary: true, button: 0 };
    element.dispatchEvent(new PointerEvent(`pointer${kind}`, { ...given, buttons: kind === "up" ? 0 : 1 }));
    element.dispatchEvent(new MouseEvent(`mouse${kind}`, given));
  };

  /** Types into a cell of the chart, as the keyboard does. */
  function typeInto(cell, words) {
    const { left, top: above } = cell.getBoundingClientRect();
    pointer(cell, "down", left + 2, above + 2);
    pointer(cell, "up", left + 2, above + 2);
    key(document.getElementById("chart"), "Enter");
    return () => {
      const field = document.querySelector(".cell-field");
      if (!field) return;
      field.value = words;
      field.dispatchEvent(new Event("input", { bubbles: true }));
      key(field, draw(8) ? "Enter" : "Escape");
    };
  }

  const VIEWS = ["chart-view", "drawing", "parts-view", "choose-view", "order-view", "versions-view"];
  const WINDOWS = [
    "new", "restring", "shelf", "instrument", "materials", "stock", "card", "report", "numbers", "keys", "link",
    "sound", "tuner", "settling", "tuning-sheet",
  ];
  const KEYS = [
    ["ArrowDown"], ["ArrowUp"], ["ArrowLeft"], ["ArrowRight"], ["PageDown"], ["Home"], ["End"], ["F6"], ["F2"], ["Escape"],
    ["Insert"], ["Delete"], ["Backspace"], ["ArrowUp", { altKey: true }], ["ArrowDown", { altKey: true }],
    ["Enter", { altKey: true }], ["Enter", { ctrlKey: true }], ["F1"], ["d", { ctrlKey: true }], ["a", { ctrlKey: true }],
    ["ArrowUp", { ctrlKey: true, shiftKey: true }], ["ArrowDown", { shiftKey: true }], ["Delete", { ctrlKey: true }],
  ];

  /** Each does one thing, says what, and may give what is to be done after the page has answered. */
  const ACTS = [
    [16, () => {
      const cell = one(all("#chart tbody td[id^=cell-]"));
      return cell && [`type into ${cell.id}`, typeInto(cell, text())];
    }],
    [10, () => {
      const [name, more] = one(KEYS);
      const at = document.activeElement ?? document.body;
      key(at, name, more);
      return [`key ${name} at ${at.id || at.tagName}`];
    }],
    [8, () => (key(document.body, draw(3) ? "z" : "y", { ctrlKey: true }), ["undo or redo"])],
    [6, () => {
      const id = one(VIEWS);
      document.getElementById(id)?.click();
      return [`view ${id}`];
    }],
    [6, () => {
      const id = one(WINDOWS);
      document.getElementById(id)?.click();
      return [`window ${id}`];
    }],
    [8, () => {
      if (document.querySelector(".card-bar")) document.getElementById("close-card")?.click();
      else key(top() === document ? document.body : top(), "Escape");
      // A window that is asked by the browser closes by its own button.
      const close = top() === document ? undefined : top().querySelector("button[aria-label=Close], .window-head button");
      close?.click();
      return ["close"];
    }],
    [14, () => {
      const field = one(seen("input:not([type=file]):not([type=checkbox]):not([type=radio]):not(.cell-field), textarea:not([readonly])"));
      if (!field) return;
      field.focus();
      set(field, field.type === "range" ? String(draw(100)) : text());
      field.blur();
      return [`fill ${field.id || field.getAttribute("aria-label") || field.closest("label")?.innerText}`];
    }],
    [6, () => {
      const list = one(seen("select:not(#note-names)"));
      if (!list) return;
      set(list, one([...list.options]).value);
      return [`choose ${list.id || list.closest("label")?.innerText.slice(0, 30)}`];
    }],
    [4, () => {
      const box = one(seen("input[type=checkbox], input[type=radio]"));
      box?.click();
      return box && [`tick ${box.id}`];
    }],
    [12, () => {
      const button = one(seen("button:not(:disabled), summary").filter((found) => !found.closest("#fault, .menu-item[lang], .sound, .tuner")));
      button?.click();
      return button && [`press ${button.id || button.innerText.slice(0, 30)}`];
    }],
    [6, () => {
      const node = one(seen(".node, #loft"));
      if (!node) return;
      const { left, top: above, width, height } = node.getBoundingClientRect();
      let [x, y] = [left + draw(Math.max(1, width | 0)), above + draw(Math.max(1, height | 0))];
      pointer(node, "down", x, y);
      for (let step = 0; step < 4; step++) pointer(node, "move", (x += draw(21) - 10), (y += draw(21) - 10));
      pointer(node, "up", x, y);
      return ["drag in the drawing"];
    }],
    [4, () => {
      const canvas = document.getElementById("curves");
      const { left, top: above, width, height } = canvas.getBoundingClientRect();
      pointer(canvas, "move", left + draw(1 + (width | 0)), above + draw(1 + (height | 0)));
      return ["point at the curves"];
    }],
  ];
  const WEIGHT = ACTS.reduce((sum, [weight]) => sum + weight, 0);

  const channel = new MessageChannel();
  let answered;
  channel.port1.onmessage = () => answered();
  /** After what is waiting by now. */
  const turn = () => new Promise((then) => ((answered = then), channel.port2.postMessage(0)));
  const frame = () => new Promise((then) => requestAnimationFrame(then));

  /** How long something takes: itself, what follows at once, and the work of the next frame, without waiting for it. */
  async function timed(act) {
    const begun = performance.now();
    act();
    await turn();
    const shown = performance.now();
    await frame();
    const framed = performance.now();
    await turn();
    return shown - begun + (performance.now() - framed);
  }

  /** The mean of the middle half, as the clock of some engines only counts milliseconds. */
  function typical(times) {
    const sorted = [...times].sort((a, b) => a - b);
    const middle = sorted.slice(sorted.length >> 2, sorted.length - (sorted.length >> 2));
    return middle.reduce((sum, time) => sum + time, 0) / middle.length;
  }
  const done = [];
  // If it leaves the page after all, this says how.
  addEventListener("pagehide", () => sessionStorage.setItem("robot-left", JSON.stringify(done.slice(-12))));

  async function act() {
    let at = draw(WEIGHT);
    const [, does] = ACTS.find(([weight]) => (at -= weight) < 0);
    let then;
    const ms = await timed(() => {
      const [said, after] = does() ?? ["nothing to do"];
      done.push(said);
      then = after;
    });
    return ms + (then ? await timed(then) : 0);
  }

  return {
    seed: (number) => (state = BigInt(number)),
    /** So many actions; how long each took, and what was done last if the program stopped. */
    async run(count) {
      const times = [];
      for (let turns = 0; turns < count; turns++) {
        times.push(await act());
        const fault = document.getElementById("fault");
        if (fault) return { stopped: [...done.slice(-12), fault.report] };
      }
      return { times };
    },
    /** What is typical of so many edits of one cell of the open design, each over the same two lengths. */
    async edits(count) {
      const times = [];
      for (let turns = 0; turns < count; turns++) {
        const then = typeInto(document.getElementById("cell-5-1"), turns % 2 ? "131" : "132");
        await turn();
        await frame();
        const field = document.querySelector(".cell-field");
        field.value = turns % 2 ? "131" : "132";
        times.push(await timed(() => key(field, "Enter")));
        void then;
      }
      return typical(times);
    },
    /** What stands beside the curves, each either shown or not: `wanted`, or as it is. */
    async curves(wanted) {
      const menu = document.getElementById("which-curves").parentElement;
      menu.open = true;
      while (!menu.querySelector("input")) await frame();
      const boxes = () => [document.getElementById("tolerances"), ...menu.querySelectorAll("input")];
      // First what goes: only so many have room.
      for (const on of wanted ? [false, true] : []) {
        for (let place = 0; place < wanted.length; place++) {
          const box = boxes()[place];
          if (wanted[place] === on && box.checked !== on) box.click();
          await turn();
        }
      }
      const shown = boxes().map((box) => box.checked);
      menu.open = false;
      return shown;
    },
    /** What stands beside what. */
    sides(wanted) {
      set(document.getElementById("sides"), wanted);
      return document.getElementById("sides").value;
    },
    memory: () => Math.max(0, ...(window.memories ?? []).map(({ buffer }) => buffer.byteLength)),
    /** How many different things were done. */
    kinds: () => new Set(done).size,
    last: () => done.slice(-12),
  };
})();
