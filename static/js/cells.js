// The table of a study, typed like a spreadsheet: the arrow keys and Enter lead from cell to
// cell, Escape brings back what stood there, a block is pasted where the caret is.

export function likeSpreadsheet(form, live) {
  let before = ""; // what stood in the cell when it was entered

  form.addEventListener("focusin", (e) => {
    if (!isCell(e.target)) return;
    before = e.target.value;
    e.target.select();
  });

  form.addEventListener("keydown", (e) => {
    const cell = e.target;
    if (!isCell(cell) || e.ctrlKey || e.metaKey || e.altKey || e.isComposing) return;
    const to = wayOf(e, cell);
    if (e.key === "Escape" && cell.value !== before) {
      cell.value = before;
      cell.select();
      cell.dispatchEvent(new Event("input", { bubbles: true }));
      e.preventDefault();
    } else if (e.key === "F2") {
      cell.setSelectionRange(cell.value.length, cell.value.length);
      e.preventDefault();
    } else if (to) {
      e.preventDefault();
      go(cell, to);
    }
  });

  form.addEventListener("paste", (e) => {
    if (!isCell(e.target)) return;
    const text = e.clipboardData.getData("text/plain");
    if (!/[\t\n\r]/.test(text.trim())) return; // a single figure goes where the caret is
    e.preventDefault();
    const [row, column] = placeOf(e.target);
    live.command({ do: `paste rows ${row} ${column}`, paste: text });
  });

  // go leads from a cell; under the last row more rows are asked for first.
  function go(cell, [down, right]) {
    const next = beside(cell, down, right);
    if (next) {
      next.focus();
      return;
    }
    if (down !== 1) return;
    const [row, column] = placeOf(cell);
    live.command({ do: "more" }, () => cellAt(row + 1, column)?.focus());
  }
}

const isCell = (e) => e.matches?.("#rows input[type=text]");

function placeOf(cell) {
  const [, row, column] = /^rows\[(\d+)\]\.(\d+)$/.exec(cell.name);
  return [Number(row), Number(column)];
}

const cellAt = (row, column) => document.getElementsByName(`rows[${row}].${column}`)[0];

function beside(cell, down, right) {
  const [row, column] = placeOf(cell);
  return cellAt(row + down, column + right);
}

// wayOf tells where a key leads: [rows down, columns right]; nothing for a key of the text.
function wayOf(e, cell) {
  const whole = cell.selectionStart === 0 && cell.selectionEnd === cell.value.length;
  const atStart = whole || cell.selectionEnd === 0;
  const atEnd = whole || cell.selectionStart === cell.value.length;
  switch (e.key) {
    case "Enter":
      return [e.shiftKey ? -1 : 1, 0];
    case "ArrowDown":
      return e.shiftKey ? null : [1, 0];
    case "ArrowUp":
      return e.shiftKey ? null : [-1, 0];
    case "ArrowLeft":
      return atStart && !e.shiftKey ? [0, -1] : null;
    case "ArrowRight":
      return atEnd && !e.shiftKey ? [0, 1] : null;
  }
  return null;
}
