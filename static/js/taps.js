// Samples at the station: a tap is judged at once. What is filled into a shift check is kept
// in this window until it came out signed: an answer that is lost, or refused, loses nothing.

const sent = "check sent";
const once = ":once"; // by it a check that is sent twice is kept once

// forgetSigned lets go of what was filled in where the page of the signed check is there.
export function forgetSigned() {
  if (!/\/checks\/\d+$/.test(location.pathname)) return;
  sessionStorage.removeItem(sessionStorage.getItem(sent));
  sessionStorage.removeItem(sent);
}

export function keepTaps(form, live) {
  form.addEventListener("change", () => live.soon());
  if (form.dataset.shift !== "yes") return;
  const key = "check " + form.action;
  const restore = () => {
    const kept = new Map(JSON.parse(sessionStorage.getItem(key) ?? "[]"));
    for (const e of form.elements) {
      if (!kept.has(e.name) || (e.type === "hidden" && e.name !== once)) continue;
      if (e.type === "radio") e.checked = e.value === kept.get(e.name);
      else e.value = kept.get(e.name);
    }
    return kept.size > 0;
  };
  form.addEventListener("input", () => {
    sessionStorage.setItem(key, JSON.stringify([...new FormData(form)].filter(([name]) => !name.startsWith(":") || name === once)));
  });
  form.addEventListener("submit", (e) => {
    if (e.submitter?.hasAttribute("data-leaves")) sessionStorage.setItem(sent, key);
  });
  sessionStorage.removeItem(sent);
  if (restore()) live.soon();
}
