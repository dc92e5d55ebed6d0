// Files dropped anywhere on the page: a plan or draft is opened as a new plan,
// two columns of text are read into the curve.

// acceptDrops takes what opens a file and what reads columns; without the latter
// they are no different from other files.
export function acceptDrops(open, columns) {
  const root = document.documentElement;
  const brings = (e) => [...(e.dataTransfer?.types ?? [])].includes("Files");
  addEventListener("dragover", (e) => {
    if (!brings(e)) return;
    e.preventDefault();
    root.classList.add("dropping");
  });
  addEventListener("dragleave", (e) => {
    if (!e.relatedTarget) root.classList.remove("dropping");
  });
  addEventListener("drop", (e) => {
    root.classList.remove("dropping");
    if (!brings(e)) return;
    e.preventDefault();
    const file = e.dataTransfer.files[0];
    if (!file) return;
    if (columns && /\.(csv|tsv|txt)$/i.test(file.name)) columns(file);
    else open(file);
  });
}
