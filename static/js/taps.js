// Samples at the station: a tap is judged at once. What is filled into a shift check is kept
// in this window until it is signed.

export function keepTaps(form, live) {
  form.addEventListener("change", () => live.soon());
  if (form.dataset.shift !== "yes") return;
  const key = "check " + form.action;
  const restore = () => {
    const kept = new Map(JSON.parse(sessionStorage.getItem(key) ?? "[]"));
    for (const e of form.elements) {
      if (!kept.has(e.name) || e.type === "hidden") continue;
      if (e.type === "radio") e.checked = e.value === kept.get(e.name);
      else e.value = kept.get(e.name);
    }
    return kept.size > 0;
  };
  form.addEventListener("input", () => {
    sessionStorage.setItem(key, JSON.stringify([...new FormData(form)].filter(([name]) => !name.startsWith(":"))));
  });
  form.addEventListener("submit", (e) => {
    if (e.submitter?.hasAttribute("data-leaves")) sessionStorage.removeItem(key);
  });
  if (restore()) live.soon();
}
