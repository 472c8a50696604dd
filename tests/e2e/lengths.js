// Types `lengths` one after the other into the first cell of the lengths for `keeping.rs`, in the page itself, as a driver
// takes its time for each.
const frame = () => new Promise((then) => requestAnimationFrame(then));
const key = (at, name) => at.dispatchEvent(new KeyboardEvent("keydown", { key: name, bubbles: true, cancelable: true }));
for (const length of lengths) {
  const cell = document.querySelector("#cell-0-1");
  for (const kind of ["pointerdown", "mousedown", "pointerup", "mouseup"]) {
    const Kind = kind.startsWith("pointer") ? PointerEvent : MouseEvent;
    cell.dispatchEvent(new Kind(kind, { bubbles: true, cancelable: true, button: 0, isPrimary: true }));
  }
  key(document.querySelector("#chart"), "Enter");
  await frame();
  const field = document.querySelector(".cell-field");
  field.value = length;
  field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  key(field, "Enter");
  await frame();
}
return true;
