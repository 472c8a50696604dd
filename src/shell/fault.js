// Told when the program has stopped amid work: what happened, what is kept, and the ways on. It is not part of the
// program, which cannot be trusted any more; boot.js fetches it when it is needed.

/** What is said, in the language of the page: boot.js has it. */
const { told } = globalThis.tongues;

const OPEN = "stringloft/open";
const DESIGN = "stringloft/design/";
/** Opens the page with nothing, once; the program takes it away. */
const WITH_NOTHING = "stringloft/with-nothing";

const make = (tag, words, more = {}) => Object.assign(document.createElement(tag), { textContent: words }, more);

/** The text of the design that was open, as it is kept; none if the browser keeps none. */
function design() {
  try {
    const id = sessionStorage.getItem(OPEN) ?? keeping.get(OPEN);
    return keeping.failed() ? undefined : id && keeping.get(DESIGN + id);
  } catch {
    return undefined; // cookies are blocked, and so is storage
  }
}

function sayWhenKept(kept) {
  const { kept: time } = document.documentElement.dataset;
  const clock = time && new Date(Number(time)).toLocaleTimeString(document.documentElement.lang);
  if (time && kept) return told(8, "Your design was last kept in this browser at { $clock }. What you did after that may be missing.", clock);
  if (kept) return told(9, "Your design is kept in this browser as it was when you opened it. What you did in this page may be missing.");
  return told(10, "This browser keeps no copy of the design that was open.");
}

function report(error, build, kept) {
  const said = error?.stack ?? String(error);
  const lines = [`Stringloft ${build}`, new Date().toISOString(), navigator.userAgent, said.slice(0, 4000)];
  return [...lines, ...(kept ? [kept] : [])].join("\n");
}

function save(text) {
  const href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  make("a", "", { href, download: "harp-as-kept.json" }).click();
  setTimeout(() => URL.revokeObjectURL(href), 60_000);
}

/** Lies over the page and cannot be sent away, since whatever the page still shows would take no more edits. */
export function tell(error, build) {
  const kept = design();
  const done = make("p", "", { role: "status" });
  const withDesign = make("input", "", { type: "checkbox", id: "fault-with-design" });
  const button = (words, act) => {
    const made = make("button", words, { type: "button", className: "tool" });
    made.addEventListener("click", act);
    return made;
  };
  const again = button(told(11, "Open what was kept"), () => location.reload());
  again.classList.add("main");
  const file = button(told(12, "Save what was kept as a file"), () => save(kept));
  file.disabled = !kept;
  const copy = button(told(13, "Copy a report"), async () => {
    try {
      await navigator.clipboard.writeText(report(error, build, withDesign.checked && kept));
      done.textContent = withDesign.checked
        ? told(15, "Copied. It holds the version, the browser and the error, and the design.")
        : told(14, "Copied. It holds the version, the browser and the error, and nothing of the design.");
    } catch {
      done.textContent = told(16, "This browser does not let the report be copied.");
    }
  });
  const nothing = button(told(17, "Open with an empty chart"), () => {
    try {
      sessionStorage[WITH_NOTHING] = "1";
    } catch {
      // Then it opens as usual.
    }
    history.replaceState(null, "", location.pathname);
    location.reload();
  });
  const label = make("label", "");
  label.append(withDesign, " " + told(18, "with the design in the report"));
  const buttons = make("p", "");
  buttons.append(again, file, copy, nothing);
  // The report is there for whoever looks into the page, as tests do.
  const box = make("dialog", "", { id: "fault", report: report(error, build) });
  box.setAttribute("aria-labelledby", "fault-head");
  box.append(
    make("h2", told(19, "Stringloft has stopped"), { id: "fault-head" }),
    make("p", told(20, "A fault in the program: what you did last did not work, and this page can do no more.") + " " + sayWhenKept(kept)),
    make("p", told(21, "If the same thing happens again, open with an empty chart, and open the file you saved from there. All your designs stay under Designs.")),
    buttons,
    label,
    done,
  );
  box.addEventListener("cancel", (event) => event.preventDefault());
  box.addEventListener("close", () => box.showModal()); // a second Escape is not to be refused
  document.body.append(box);
  box.showModal();
  again.focus();
}
