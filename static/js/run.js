// The run on its drawing. The step under the pointer, or with the focus, is picked out
// wherever it stands: its ground on the drawing, its line in the list, its entries. The
// hold case is dragged along the way of its step, or moved with the arrow keys; what it is
// moved to is written into its entry, and sent as if it had been typed.

const rows = "f-sequence-steps-";

// pickSteps picks steps out. What is picked carries data-picked, which an answer leaves.
export function pickSteps(root) {
  let shown = null;
  const pick = (step) => {
    shown = step;
    for (const e of root.querySelectorAll("[data-picked]")) if (stepOf(e) !== step) e.removeAttribute("data-picked");
    if (step === null) return;
    for (const e of root.querySelectorAll(`#${rows}${step}, a[href="#${rows}${step}"]`)) e.setAttribute("data-picked", "");
  };
  const focused = () => stepOf(document.activeElement);
  root.addEventListener("pointerover", (e) => pick(stepOf(e.target) ?? focused()));
  root.addEventListener("pointerleave", () => pick(focused()));
  root.addEventListener("focusin", (e) => pick(stepOf(e.target)));
  root.addEventListener("focusout", (e) => e.relatedTarget ?? pick(null));
  new MutationObserver(() => shown !== null && pick(shown)).observe(root, { subtree: true, childList: true });
}

// stepOf is the step, from 0, to which an element belongs or leads.
function stepOf(element) {
  const found = element?.closest?.(`[id^="${rows}"].card, a[href^="#${rows}"]`);
  if (!found) return null;
  const text = (found.id.startsWith(rows) ? found.id : found.getAttribute("href").slice(1)).slice(rows.length);
  return /^\d+$/.test(text) ? text : null;
}

// moveHold lets the hold case be moved.
export function moveHold(root, form) {
  let held = null; // what the entry said before the pointer took it
  const handleOf = (e) => e.target.closest?.("#run-hold");

  root.addEventListener("pointerdown", (e) => {
    const handle = handleOf(e);
    if (!handle || e.button !== 0) return;
    e.preventDefault();
    handle.focus({ preventScroll: true });
    handle.setPointerCapture(e.pointerId);
    handle.classList.add("held");
    held = input(form, handle).value;
  });
  root.addEventListener("pointermove", (e) => {
    const handle = document.getElementById("run-hold");
    if (held === null || !handle) return;
    const at = new DOMPoint(e.clientX, e.clientY).matrixTransform(handle.ownerSVGElement.getScreenCTM().inverse());
    move(form, handle, nearest(wayOf(handle), at));
  });
  const release = () => {
    document.getElementById("run-hold")?.classList.remove("held");
    held = null;
  };
  for (const end of ["pointerup", "pointercancel", "lostpointercapture"]) root.addEventListener(end, release);

  root.addEventListener("keydown", (e) => {
    const handle = handleOf(e);
    if (!handle) return;
    if (e.key === "Escape" && held !== null) {
      write(form, handle, held);
      return release();
    }
    if (e.ctrlKey || e.altKey || e.metaKey) return;
    const [low, high] = limits(handle);
    const step = Number(handle.dataset.step) * (e.shiftKey ? 10 : 1);
    const now = valueOf(form, handle);
    // Down is deeper, as on the drawing.
    const to = { ArrowDown: now + step, ArrowRight: now + step, ArrowUp: now - step, ArrowLeft: now - step, PageDown: now + 10 * step, PageUp: now - 10 * step, Home: low, End: high }[e.key];
    if (to === undefined) return;
    e.preventDefault();
    move(form, handle, to);
  });

  const place = () => {
    const handle = document.getElementById("run-hold");
    if (handle) stand(handle, valueOf(form, handle));
    watcher.takeRecords();
  };
  const watcher = new MutationObserver(place);
  watcher.observe(root, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-way", "transform"] });
  form.addEventListener("input", place);
  place();
}

const input = (form, handle) => form.elements[handle.dataset.field];

const limits = (handle) => ["aria-valuemin", "aria-valuemax"].map((a) => Number(handle.getAttribute(a)));

// valueOf is what the entry says; where that cannot be read, what the last answer had.
function valueOf(form, handle) {
  const plain = input(form, handle)?.value.trim().replace("−", "-").replace(/\s*mm$/, "").replace(",", ".");
  const value = Number(plain);
  return plain && Number.isFinite(value) ? value : Number(handle.getAttribute("aria-valuenow"));
}

// wayOf gives the places of the step, [x, y, mm] each.
function wayOf(handle) {
  const all = handle.dataset.way.split(" ").map(Number);
  return Array.from({ length: all.length / 3 }, (_, i) => all.slice(3 * i, 3 * i + 3));
}

// nearest is the position, mm, of the place on the way that lies nearest to a point.
function nearest(way, point) {
  let best = Infinity, found = way[0][2];
  for (let i = 1; i < way.length; i++) {
    const [a, b] = [way[i - 1], way[i]];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const length = dx * dx + dy * dy;
    const share = length > 0 ? Math.min(1, Math.max(0, ((point.x - a[0]) * dx + (point.y - a[1]) * dy) / length)) : 0;
    const off = Math.hypot(a[0] + share * dx - point.x, a[1] + share * dy - point.y);
    if (off < best) [best, found] = [off, a[2] + share * (b[2] - a[2])];
  }
  return found;
}

// move writes a position, in whole steps, strictly inside the step's way.
function move(form, handle, wanted) {
  const step = Number(handle.dataset.step), slack = 1e-9;
  const [low, high] = limits(handle);
  const least = (Math.floor(low / step + slack) + 1) * step, most = (Math.ceil(high / step - slack) - 1) * step;
  if (least > most) return;
  const value = Math.min(most, Math.max(least, Math.round(wanted / step) * step));
  write(form, handle, String(Number(value.toFixed(6))));
}

function write(form, handle, text) {
  const field = input(form, handle);
  if (!field || field.value === text) return;
  field.value = text;
  field.dispatchEvent(new Event("input", { bubbles: true }));
}

// stand puts the handle where the ram is at a position, and says it.
function stand(handle, value) {
  const way = wayOf(handle);
  let i = 1;
  while (i < way.length - 1 && (way[i][2] - value) * (way[i - 1][2] - value) > 0) i++;
  const [a, b] = [way[i - 1], way[i]];
  const share = b[2] === a[2] ? 0 : Math.min(1, Math.max(0, (value - a[2]) / (b[2] - a[2])));
  const x = a[0] + share * (b[0] - a[0]), y = a[1] + share * (b[1] - a[1]);
  const said = `${value.toFixed(handle.dataset.decimals)}\u202fmm`;
  const at = `translate(${x.toFixed(2)} ${y.toFixed(2)})`;
  if (handle.getAttribute("transform") !== at) handle.setAttribute("transform", at);
  handle.setAttribute("aria-valuenow", value);
  handle.setAttribute("aria-valuetext", said);
  handle.classList.toggle("at-start", x < handle.ownerSVGElement.viewBox.baseVal.width / 2);
  const text = handle.querySelector("text");
  if (text.textContent !== said) text.textContent = said;
}
