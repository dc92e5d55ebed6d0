// The buttons beside the rows are few stops of the Tab key: one for all rows that
// take a line each, one for each row that is a card. From there the arrow keys lead
// on. Without this script every button is a stop of its own.

export function roveRows(form) {
  const place = () => {
    for (const group of form.querySelectorAll(".rows-pairs, .card")) keepOne(group);
  };
  new MutationObserver(place).observe(form, { subtree: true, childList: true, attributes: true, attributeFilter: ["disabled"] });
  form.addEventListener("focusin", (e) => {
    const group = groupOf(e.target);
    if (group) keepOne(group, e.target);
  });
  form.addEventListener("keydown", (e) => {
    const group = groupOf(e.target);
    if (!group || e.ctrlKey || e.altKey || e.metaKey || e.shiftKey) return;
    const next = after(group, e.target, e.key);
    if (!next) return;
    e.preventDefault();
    next.focus();
  });
  place();
}

function groupOf(element) {
  return element.matches(".sign") ? element.closest(".rows-pairs, .card") : null;
}

const usable = (within) => [...within.querySelectorAll(".sign:not(:disabled)")];

// keepOne leaves one button of a group in the way of the Tab key: the one given,
// the one that was it, or the last, behind everything that is typed.
function keepOne(group, wanted) {
  const all = usable(group);
  const one = all.find((b) => b === wanted) ?? all.find((b) => b.getAttribute("tabindex") === "0") ?? all.at(-1);
  for (const b of group.querySelectorAll(".sign")) b.tabIndex = b === one ? 0 : -1;
}

// after is the button to which a key leads: along the row, or to the same button
// of another row, or what stands in for it there.
function after(group, button, key) {
  const all = usable(group);
  const rows = [...group.querySelectorAll(".rowbuttons")];
  const row = rows.indexOf(button.parentNode);
  const beside = { ArrowLeft: -1, ArrowRight: 1 }[key];
  const below = { ArrowUp: -1, ArrowDown: 1 }[key];
  if (key === "Home") return all[0];
  if (key === "End") return all.at(-1);
  if (beside) {
    const line = usable(rows[row]);
    return line[line.indexOf(button) + beside];
  }
  const other = below && rows[row + below];
  if (!other) return null;
  const same = other.children[[...button.parentNode.children].indexOf(button)];
  return same.disabled ? usable(other)[0] : same;
}
