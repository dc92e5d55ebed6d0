// Makes one piece of the page equal to another without replacing what is already
// right, so that focus, caret and scroll position stay.

// morph changes `from` into `to`, of which what is new is taken out and put in.
// keep.entry tells which entries keep what is typed in them, keep.entries that all
// do; keep.fold which folds stay as the user left them, and keep.unfold opens those
// that `to` has open all the same.
export function morph(from, to, keep) {
  if (from.nodeType !== Node.ELEMENT_NODE) {
    if (from.data !== to.data) from.data = to.data;
    return;
  }
  if (from.id === "refusal") return; // not from the answer, and stays
  if (to.hasAttribute("data-kept")) return; // the server knows that this is shown
  // The browser compares quicker than a script; what is typed it does not compare.
  if ((keep.entries || !holdsEntries(from)) && from.isEqualNode(to)) return;
  attributes(from, to, keep);
  if (to.hasAttribute("data-stream")) return; // what is inside comes from another answer
  if (from.nodeName === "TEXTAREA") {
    if (!keep.entry(from)) from.value = to.value;
    return;
  }
  children(from, to, keep);
  if (keep.entry(from)) return;
  if (from.nodeName === "SELECT") from.value = to.value;
  if (from.nodeName === "INPUT" && from.type !== "file") {
    from.value = to.getAttribute("value") ?? "";
    from.checked = to.hasAttribute("checked");
  }
}

const entries = "input, select, textarea";

function holdsEntries(element) {
  return element.matches(entries) || element.querySelector(entries) !== null;
}

function attributes(from, to, keep) {
  const had = from.attributes;
  for (let i = had.length - 1; i >= 0; i--) {
    const { name } = had[i];
    if (!to.hasAttribute(name) && !own(from, name, keep)) from.removeAttribute(name);
  }
  for (const a of to.attributes) {
    if (from.getAttribute(a.name) === a.value) continue;
    if (own(from, a.name, keep) && !(a.name === "open" && (keep.unfold || mustOpen(from, to)))) continue;
    from.setAttribute(a.name, a.value);
  }
}

// own tells whether an attribute is the user's: what was opened stays open, and
// what was typed, ticked or chosen stays.
function own(element, name, keep) {
  if (name === "data-picked") return true; // by the pointer or the focus
  switch (element.nodeName) {
    case "DETAILS":
      return name === "open" && keep.fold(element);
    case "BUTTON":
      return name === "tabindex"; // which of a group is in the way of the Tab key
    case "OPTION":
      return name === "selected" && keep.entry(element.closest("select"));
    case "INPUT":
      return element.type !== "hidden" && (name === "value" || name === "checked") && keep.entry(element);
  }
  return false;
}

// mustOpen: a new fault inside must be seen.
function mustOpen(from, to) {
  return from.nodeName === "DETAILS" && to.querySelector("[aria-invalid], .faultline") !== null && from.querySelector("[aria-invalid], .faultline") === null;
}

// children matches children by id, or by kind in order, and makes the rest anew.
function children(from, to, keep) {
  const byKey = new Map();
  for (const child of from.childNodes) {
    const key = keyOf(child);
    if (key) byKey.set(key, child);
  }
  const wanted = new Set();
  for (const child of to.childNodes) {
    const key = keyOf(child);
    if (key) wanted.add(key);
  }
  let at = from.firstChild;
  for (const next of [...to.childNodes]) {
    const key = keyOf(next);
    // What has no counterpart any more goes, so that the rest need not move.
    while (at && keyOf(at) && !wanted.has(keyOf(at))) at = drop(at);
    const known = key ? byKey.get(key) : at && !keyOf(at) && at.nodeName === next.nodeName ? at : null;
    if (!known) {
      from.insertBefore(next, at);
      continue;
    }
    if (known === at) at = at.nextSibling;
    else from.insertBefore(known, at);
    morph(known, next, keep);
  }
  while (at) at = drop(at);
}

function drop(node) {
  const next = node.nextSibling;
  node.remove();
  return next;
}

function keyOf(node) {
  return node.nodeType === Node.ELEMENT_NODE && node.id ? node.nodeName + node.id : "";
}
