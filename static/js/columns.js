// Two columns pasted into any point of the curve are read as the whole curve.

export function acceptColumns(form, live) {
  form.addEventListener("paste", (e) => {
    if (!e.target.name?.startsWith("ram.curve.points")) return;
    const text = e.clipboardData.getData("text/plain");
    if (!/\S.*[\r\n]+.*\S/.test(text)) return; // a single figure goes where the caret is
    e.preventDefault();
    document.getElementById("paste-text").value = text;
    live.command("paste ram.curve.points");
  });
}
