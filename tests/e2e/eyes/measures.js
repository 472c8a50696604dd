// What the eye meets on the page as it is now: each function gives a list of complaints, empty where all is well.
// The tests put this into the page and call it; nothing of it is part of the page.
globalThis.measures = (() => {
  // A colour as red, green, blue of 0 to 255 and its share of 0 to 1, however the browser writes it.
  const pixel = new OffscreenCanvas(1, 1).getContext("2d", { willReadFrequently: true });
  const known = new Map();
  function colour(text) {
    let found = known.get(text);
    if (!found) {
      const plain = /^rgba?\((\d+), (\d+), (\d+)(?:, ([\d.]+))?\)$/.exec(text);
      if (plain) {
        found = [+plain[1], +plain[2], +plain[3], plain[4] === undefined ? 1 : +plain[4]];
      } else {
        pixel.clearRect(0, 0, 1, 1);
        pixel.fillStyle = text;
        pixel.fillRect(0, 0, 1, 1);
        const [red, green, blue, share] = pixel.getImageData(0, 0, 1, 1).data;
        found = [red, green, blue, share / 255];
      }
      known.set(text, found);
    }
    return found;
  }
  const over = ([r, g, b, share], below) => [r, g, b].map((top, at) => top * share + below[at] * (1 - share));

  // Source: W3C, Web Content Accessibility Guidelines 2.2, relative luminance and contrast ratio.
  function luminance(rgb) {
    const linear = rgb.map((c) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
  }
  function ratio(one, other) {
    const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (high + 0.05) / (low + 0.05);
  }

  /** What lies behind an element: the colours of all it stands in, from the page up. */
  function ground(element) {
    const chain = [];
    for (let one = element; one; one = one.parentElement) chain.unshift(one);
    let rgb = [255, 255, 255];
    const dark = getComputedStyle(document.documentElement).colorScheme;
    if (dark === "dark") rgb = [18, 18, 18];
    for (const one of chain) rgb = over(colour(getComputedStyle(one).backgroundColor), rgb);
    return rgb;
  }

  /** What a drawn text stands on: the shapes of its picture that were drawn before it and reach below its middle. */
  function drawnGround(element, place) {
    let rgb = ground(element);
    const middle = new DOMPoint(place.left + place.width / 2, place.top + place.height / 2);
    const root = element.ownerSVGElement;
    for (const shape of root?.querySelectorAll("path, rect, circle, ellipse, polygon") ?? []) {
      if (!(shape.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING) || shape.closest("defs, clipPath, mask")) continue;
      const style = getComputedStyle(shape);
      const matrix = shape.getScreenCTM()?.inverse();
      if (!style.fill.startsWith("rgb") || !matrix || !shape.isPointInFill(middle.matrixTransform(matrix))) continue;
      const fill = colour(style.fill);
      rgb = over([...fill.slice(0, 3), fill[3] * Number(style.fillOpacity) * Number(style.opacity)], rgb);
    }
    return rgb;
  }

  /** Text and ground as they reach the eye, through whatever is half transparent around the element. */
  function seen(element, ink, own) {
    let below = own ?? ground(element);
    let text = over(colour(ink), below);
    for (let one = element; one; one = one.parentElement) {
      const share = Number(getComputedStyle(one).opacity);
      if (share < 1 && one.parentElement) {
        const behind = ground(one.parentElement);
        text = over([...text, share], behind);
        below = over([...below, share], behind);
      }
    }
    return ratio(text, below);
  }

  /** What is being looked at: the window that is open, or all. What lies behind one is looked at where it is in front. */
  const front = () => document.querySelector("dialog[open]") ?? document.body;
  const all = () => front().querySelectorAll("*");
  const visible = (element) =>
    element.checkVisibility({ checkOpacity: true, checkVisibilityCSS: true, contentVisibilityAuto: true }) &&
    !element.closest("[inert], .out-of-sight, .skip:not(:focus), script, style, title, noscript, #shell");
  const name = (element) => {
    const id = element.id ? `#${element.id}` : "";
    const kinds = [...element.classList].map((kind) => `.${kind}`).join("");
    const within = element.closest("[id]");
    return `${id || !within ? "" : `#${within.id} `}${element.tagName.toLowerCase()}${id}${kinds}`;
  };
  const short = (text) => JSON.stringify(text.trim().slice(0, 50));

  /** The pieces of text in sight: their nodes, elements and places, a place for each line. */
  function texts() {
    const found = [];
    const walker = document.createTreeWalker(front(), NodeFilter.SHOW_TEXT);
    const range = document.createRange();
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      if (!node.data.trim() || !visible(element)) continue;
      range.selectNodeContents(node);
      const places = [...range.getClientRects()].filter((place) => place.width > 0.5 && place.height > 0.5);
      if (places.length) found.push({ node, element, places });
    }
    return found;
  }

  function needed(style) {
    const size = parseFloat(style.fontSize);
    const large = size >= 24 || (size >= 18.66 && Number(style.fontWeight) >= 700);
    return large ? 3 : 4.5;
  }

  /** Texts, marks, placeholders and what is switched off, held to 4.5, and to 3 where they are large. */
  function contrast() {
    const found = new Map();
    let looked = 0;
    const hold = (what, element, words, got, wanted) => {
      looked += 1;
      if (got < wanted - 0.005) found.set(`${what} ${name(element)}`, `${got.toFixed(2)} of ${wanted}: ${what} ${name(element)} ${short(words)}`);
    };
    for (const { node, element, places } of texts()) {
      const style = getComputedStyle(element);
      if (element instanceof SVGElement) {
        // A text with a rim stands on its rim.
        const rim = style.paintOrder.startsWith("stroke") && style.stroke !== "none" && parseFloat(style.strokeWidth) > 1;
        const own = rim ? over(colour(style.stroke), [255, 255, 255]) : drawnGround(element, places[0]);
        if (style.fill.startsWith("rgb")) hold("drawn text", element, node.data, seen(element, style.fill, own), needed(style));
      } else {
        hold("text", element, node.data, seen(element, style.color), needed(style));
      }
    }
    for (const element of all()) {
      if (!visible(element)) continue;
      for (const which of ["::before", "::after"]) {
        const style = getComputedStyle(element, which);
        const words = /^"(.+)"$/.exec(style.content)?.[1];
        if (!words?.trim() || style.display === "none") continue;
        const own = over(colour(style.backgroundColor), ground(element));
        hold(which, element, words, seen(element, style.color, own), needed(style));
      }
      if (element.matches("input, textarea, select")) {
        const typed = element.matches("[type=checkbox], [type=radio], [type=range], [type=file]");
        const style = getComputedStyle(element);
        if (!typed && element.value) hold("field", element, String(element.value), seen(element, style.color), needed(style));
        if (element.placeholder) {
          const ink = getComputedStyle(element, "::placeholder");
          const faded = over([...colour(ink.color).slice(0, 3), colour(ink.color)[3] * Number(ink.opacity)], ground(element));
          hold("placeholder", element, element.placeholder, seen(element, `rgb(${faded.map(Math.round).join(", ")})`), needed(style));
        }
        // What shows where a field is: its rim against what is around it, or its own ground.
        if (!typed && style.appearance !== "none" && element.parentElement) {
          const around = ground(element.parentElement);
          const sides = ["Top", "Right", "Bottom", "Left"].filter((side) => parseFloat(style[`border${side}Width`]) >= 1);
          const rims = sides.map((side) => ratio(over(colour(style[`border${side}Color`]), around), around));
          const best = Math.max(1, ratio(ground(element), around), ...rims);
          if (!element.disabled && !element.closest(".cell-field")) hold("rim of a field", element, element.ariaLabel ?? "", best, 3);
        }
      }
    }
    if (!looked) return ["no text was found"];
    return [...found.values()];
  }

  const scrolls = (value) => value === "auto" || value === "scroll";
  const hides = (value) => value === "hidden" || value === "clip";

  /** Texts that are cut off by what they stand in. */
  function cut(pieces) {
    const found = new Map();
    for (const { node, element, places } of pieces) {
      if (element.closest("option, .cell-field")) continue;
      for (const place of places) {
        let [across, down] = [true, true];
        for (let one = element; one && one !== document.body && (across || down); one = one.parentElement) {
          const style = getComputedStyle(one);
          if (style.display === "inline" || style.display === "contents") continue;
          const strict = /paint|strict|content/.test(style.contain) && !scrolls(style.overflowX) && !scrolls(style.overflowY);
          const box = one.getBoundingClientRect();
          const out = (low, high, from, to, slack) => low < from - slack || high > to + slack;
          if (across && (hides(style.overflowX) || strict) && out(place.left, place.right, box.left, box.right, 2)) {
            found.set(name(element), `cut off across by ${name(one)}: ${name(element)} ${short(node.data)}`);
          }
          if (down && (hides(style.overflowY) || strict) && out(place.top, place.bottom, box.top, box.bottom, 4)) {
            found.set(name(element), `cut off down by ${name(one)}: ${name(element)} ${short(node.data)}`);
          }
          if (scrolls(style.overflowX)) across = false;
          if (scrolls(style.overflowY)) down = false;
          if (style.position === "fixed") break;
        }
      }
    }
    return [...found.values()];
  }

  /** Texts that reach out of the button, heading, tab or cell that they stand in. */
  function spilt(pieces) {
    const found = new Map();
    const BOXES = "button, summary, th, td, h1, h2, h3, h4, legend, label, dt, dd, figcaption, .tool, .view-button, .hint";
    for (const { node, element, places } of pieces) {
      if (element instanceof SVGElement || element.closest("option, .out-of-sight")) continue;
      const box = element.closest(BOXES);
      if (!box) continue;
      const style = getComputedStyle(box);
      if (style.display === "inline" || style.display === "contents" || scrolls(style.overflowX)) continue;
      const around = box.getBoundingClientRect();
      for (const place of places) {
        if (place.left < around.left - 2 || place.right > around.right + 2) {
          found.set(name(box), `spills by ${Math.round(Math.max(around.left - place.left, place.right - around.right))}: ${name(box)} ${short(node.data)}`);
        }
      }
    }
    return [...found.values()];
  }

  /** What an element is stacked in: pieces of one layer must not lie over each other. */
  function layer(element) {
    for (let one = element; one; one = one.parentElement) {
      const style = getComputedStyle(one);
      if (style.position !== "static" && style.position !== "relative") return one;
      if (scrolls(style.overflowX) || scrolls(style.overflowY)) return one;
    }
    return null;
  }

  /** Texts that lie over each other. */
  function overlaid(texts) {
    const found = new Map();
    const layers = new Map();
    for (const { node, element, places } of texts) {
      if (element instanceof SVGElement || element.closest("option")) continue;
      const key = layer(element);
      if (!layers.has(key)) layers.set(key, []);
      for (const place of places) layers.get(key).push({ node, element, place });
    }
    for (const pieces of layers.values()) {
      pieces.sort((a, b) => a.place.top - b.place.top);
      pieces.forEach((one, at) => {
        for (let next = at + 1; next < pieces.length && pieces[next].place.top < one.place.bottom; next += 1) {
          const other = pieces[next];
          if (other.node === one.node) continue;
          const wide = Math.min(one.place.right, other.place.right) - Math.max(one.place.left, other.place.left);
          const high = Math.min(one.place.bottom, other.place.bottom) - Math.max(one.place.top, other.place.top);
          if (wide > 3 && high > 0.4 * Math.min(one.place.height, other.place.height)) {
            found.set(name(one.element), `over each other: ${name(one.element)} ${short(one.node.data)} and ${name(other.element)} ${short(other.node.data)}`);
          }
        }
      });
    }
    return [...found.values()];
  }

  /** Whether the page, or something in it that is no table, chart or drawing, goes sideways. `rows` may too. */
  function sideways(rows) {
    const found = [];
    // A phone shows what is too wide smaller, and its inner width grows: this one stays.
    const { scrollWidth, clientWidth } = document.documentElement;
    const wide = scrollWidth - clientWidth;
    if (wide > 0) {
      const widest = [...all()].filter((one) => one.getBoundingClientRect().right > clientWidth + 1 && visible(one)).slice(0, 3).map(name);
      found.push(`the page goes ${wide} px sideways: ${widest.join("; ")}`);
    }
    for (const one of all()) {
      if (!scrolls(getComputedStyle(one).overflowX) || one.scrollWidth <= one.clientWidth + 1 || !visible(one)) continue;
      // A table is read across and down, and so are chart and drawing, and planks to scale. Papers have the size of paper.
      if (one.matches("#chart-scroll, .chart-scroll, .parts-paper.long, #print-root, textarea, select") || one.querySelector("table")) continue;
      if (rows && one.matches(rows)) continue;
      found.push(`${name(one)} goes ${one.scrollWidth - one.clientWidth} px sideways`);
    }
    return found;
  }

  /** Text that stands a few letters to a line, as what is beside it leaves it no room. */
  function squeezed() {
    const found = [];
    for (const one of all()) {
      for (const node of one.childNodes) {
        const letters = node.nodeType === Node.TEXT_NODE ? node.data.trim().length : 0;
        if (letters < 12 || one.closest("svg, #print-root") || !visible(one)) continue;
        const range = document.createRange();
        range.selectNodeContents(node);
        const lines = new Set([...range.getClientRects()].map((line) => Math.round(line.top))).size;
        if (lines > 4 && letters / lines < 4) found.push(`${name(one)} has ${lines} lines of ${(letters / lines).toFixed(1)} letters`);
      }
    }
    return found;
  }

  /** What cannot be seen when the keyboard comes to it, as something else lies over it. */
  function covered() {
    const found = [];
    const stops = front().querySelectorAll("button, a[href], input, select, textarea, summary, [tabindex]");
    let looked = 0;
    for (const element of stops) {
      if (element.disabled || element.tabIndex < 0 || element.closest("[inert], .out-of-sight") || !element.checkVisibility({ checkVisibilityCSS: true })) continue;
      element.focus();
      if (document.activeElement !== element) continue;
      looked += 1;
      // A notice leaves by itself, or when it is dismissed; the keyboard goes through the list of a cell before it leaves.
      if (document.querySelector(".notices .notice, #offers:not([hidden])")) return [];
      const box = element.getBoundingClientRect();
      if (box.width < 2 || box.height < 2) continue;
      const [left, right] = [Math.max(box.left, 0), Math.min(box.right, innerWidth)];
      const [top, bottom] = [Math.max(box.top, 0), Math.min(box.bottom, innerHeight)];
      if (right - left < 2 || bottom - top < 2) {
        found.push(`out of the screen with the keyboard on it: ${name(element)}`);
        continue;
      }
      const spots = [[0.5, 0.5], [0.1, 0.2], [0.9, 0.2], [0.1, 0.8], [0.9, 0.8]];
      const free = spots.some(([x, y]) => {
        const there = document.elementFromPoint(left + x * (right - left), top + y * (bottom - top));
        return there && (there === element || element.contains(there) || there.contains(element) || element.labels?.[0]?.contains(there));
      });
      if (!free) {
        const there = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
        found.push(`covered by ${there ? name(there) : "nothing"}: ${name(element)} ${short(element.innerText ?? "")}`);
      }
    }
    return looked ? found : ["the keyboard comes to nothing"];
  }

  /** What moves by itself, or takes its time to change. */
  function moves() {
    const found = document.getAnimations().map((one) => `${one.animationName ?? one.transitionProperty} of ${name(one.effect.target)}`);
    for (const element of document.querySelectorAll("body *")) {
      const style = getComputedStyle(element);
      const takes = [...style.transitionDuration.split(","), ...style.animationDuration.split(",")].some((time) => parseFloat(time) > 0);
      if (takes) found.push(`${name(element)} takes its time`);
      if (style.scrollBehavior === "smooth") found.push(`${name(element)} glides`);
    }
    return [...new Set(found)];
  }

  function layout(rows) {
    // Papers measure their own words, and tests lay them in every language; a drawing is moved about on its paper.
    const pieces = texts().filter(({ element }) => !element.closest("#print-root, #loft"));
    return [...sideways(rows), ...cut(pieces), ...spilt(pieces), ...overlaid(pieces)];
  }

  return { contrast, layout, sideways, squeezed, covered, moves };
})();
