// Files dropped anywhere on the page: a plan or draft is opened, two columns of
// text are read into the curve.

export function acceptDrops(live) {
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
  addEventListener("drop", async (e) => {
    root.classList.remove("dropping");
    if (!brings(e)) return;
    e.preventDefault();
    const file = e.dataTransfer.files[0];
    if (!file) return;
    if (!/\.(csv|tsv|txt)$/i.test(file.name)) {
      live.command("open", file);
      return;
    }
    document.getElementById("paste-text").value = await file.text();
    live.command("paste ram.curve.points");
  });
}
