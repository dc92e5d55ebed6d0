// Buttons that copy the text they carry.

export function offerCopies(root) {
  root.addEventListener("click", async (e) => {
    const button = e.target.closest?.("[data-copy]");
    if (!button) return;
    const said = button.textContent;
    try {
      await navigator.clipboard.writeText(button.dataset.copy);
      button.textContent = "Copied";
    } catch {
      button.textContent = "Not allowed to copy";
    }
    setTimeout(() => (button.textContent = said), 1500);
  });
}
