// The points of the curve, moved on its drawing: with the pointer, or with the
// arrow keys. What is moved is written into the entries of its row, and they are
// sent as if they had been typed. The handles always stand where the entries
// say, on whatever axes the last answer has brought.

export function movePoints(form, live) {
  let held = null; // {handle, wanted, from, at} while the pointer moves a point

  form.addEventListener("pointerdown", (e) => {
    const handle = e.target.closest?.(".handle");
    if (!handle || e.button !== 0) return;
    e.preventDefault(); // no text is marked
    handle.focus({ preventScroll: true });
    handle.setPointerCapture(e.pointerId);
    handle.classList.add("held");
    const from = valuesOf(form, handle);
    held = { handle, from, wanted: [...from], at: [e.clientX, e.clientY] };
  });
  form.addEventListener("pointermove", (e) => {
    if (!held) return;
    // Step by step, so that other axes in the middle of it do no harm.
    const now = [e.clientX, e.clientY];
    const perPx = valuePerPx(held.handle);
    held.wanted = held.wanted.map((w, k) => w + (now[k] - held.at[k]) * perPx[k]);
    held.at = now;
    move(form, held.handle, held.wanted);
  });
  const release = () => {
    held?.handle.classList.remove("held");
    held = null;
  };
  form.addEventListener("pointerup", release);
  form.addEventListener("pointercancel", release);
  form.addEventListener("lostpointercapture", release);

  form.addEventListener("keydown", (e) => {
    const handle = e.target.closest?.(".handle");
    if (!handle) return;
    if (e.key === "Escape" && held) {
      write(form, handle, held.from);
      return release();
    }
    const step = stepOf(e);
    if (step) {
      e.preventDefault();
      release();
      return takeBack(step, live);
    }
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowDown: [0, -1], ArrowUp: [0, 1] }[e.key];
    if (!way || e.ctrlKey || e.altKey || e.metaKey) return;
    e.preventDefault();
    const steps = axesOf(handle).map((a) => a.step);
    const values = valuesOf(form, handle);
    move(form, handle, values.map((v, k) => v + way[k] * steps[k] * (e.shiftKey ? 10 : 1)));
  });

  const place = () => {
    for (const handle of form.querySelectorAll(".handle")) stand(handle, valuesOf(form, handle));
    watcher.takeRecords();
  };
  // An answer brings the handles as they were when it was asked for.
  const watcher = new MutationObserver(place);
  watcher.observe(form, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-x", "data-y", "transform"] });
  form.addEventListener("input", (e) => e.target.name?.startsWith("ram.curve.points") && place());
  place();
}

// stepOf is what a key asks for on the drawing, where no text has an undo of its own.
function stepOf(e) {
  if (!(e.ctrlKey || e.metaKey) || e.altKey) return "";
  const key = e.key.toLowerCase();
  if (key === "z") return e.shiftKey ? "redo" : "undo";
  return key === "y" && !e.shiftKey ? "redo" : "";
}

// takeBack does what the button does; what was just moved is saved before.
async function takeBack(step, live) {
  const button = document.getElementById(step);
  if (button.disabled) await live.settled();
  button.click();
}

const known = new WeakMap(); // what the entries of a handle said when they could be read

function inputOf(form, row, k) {
  return form.elements[`ram.curve.points[${row}][${k}]`];
}

// valuesOf is what the entries of a point say; where that cannot be read, what
// they said before.
function valuesOf(form, handle) {
  const values = [0, 1].map((k) => read(inputOf(form, handle.dataset.row, k)?.value) ?? known.get(handle)?.[k] ?? 0);
  known.set(handle, values);
  return values;
}

function read(text) {
  const plain = text?.trim().replace("−", "-").replace(/\s*[%N]$/, "");
  if (!plain) return null;
  const value = Number(plain.includes(".") ? plain : plain.replace(",", "."));
  return Number.isFinite(value) ? value : null;
}

// axesOf gives both axes of the drawing on which a handle lies.
function axesOf(handle) {
  const { x, y } = handle.parentNode.dataset;
  return [x, y].map((text) => {
    const [from, to, at, end, step] = text.split(" ").map(Number);
    return { from, to, at, end, step };
  });
}

function valuePerPx(handle) {
  const svg = handle.parentNode;
  const scale = svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
  return axesOf(handle).map((a) => (scale * (a.to - a.from)) / (a.end - a.at));
}

// move writes a point as near to where it is wanted as its neighbours let it
// come, in round steps. What would not change is left as it was typed.
function move(form, handle, wanted) {
  const row = Number(handle.dataset.row);
  const now = valuesOf(form, handle);
  const before = beside(form, handle, row - 1);
  const after = beside(form, handle, row + 1);
  const next = axesOf(handle).map((a, k) => {
    const half = a.step / 2;
    if (Math.abs(wanted[k] - now[k]) < half) return now[k];
    const least = before ? above(before[k], a.step) : k === 1 ? a.step : a.from;
    const most = after ? -above(-after[k], a.step) : a.to;
    if (least > most) return now[k];
    return tidy(Math.min(Math.max(Math.round(wanted[k] / a.step) * a.step, least), most));
  });
  write(form, handle, next);
}

function beside(form, handle, row) {
  const other = handle.parentNode.querySelector(`[data-row="${row}"]`);
  return other && valuesOf(form, other);
}

// above is the first round step over a value.
function above(value, step) {
  return (Math.floor(value / step + 1e-6) + 1) * step;
}

function tidy(value) {
  return Number(value.toPrecision(12));
}

function write(form, handle, values) {
  const now = valuesOf(form, handle);
  const inputs = values.map((v, k) => (v === now[k] ? null : inputOf(form, handle.dataset.row, k)));
  inputs.forEach((input, k) => input && (input.value = String(values[k])));
  for (const input of inputs) input?.dispatchEvent(new Event("input", { bubbles: true }));
}

// stand puts a handle where its figures belong, and says them.
function stand(handle, values) {
  const [x, y] = axesOf(handle).map((a, k) => {
    const share = Math.min(Math.max((values[k] - a.from) / (a.to - a.from), 0), 1);
    return a.at + share * (a.end - a.at);
  });
  const said = `${values[0]}\u202f%, ${values[1]}\u202fN`;
  const width = handle.parentNode.viewBox.baseVal.width;
  handle.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)})`);
  handle.setAttribute("aria-label", `${handle.dataset.name}: ${said}`);
  handle.setAttribute("aria-valuenow", values[0]);
  handle.setAttribute("aria-valuetext", said);
  handle.classList.toggle("at-start", x < width / 4);
  const text = handle.querySelector("text");
  if (text.textContent !== said) text.textContent = said;
}
