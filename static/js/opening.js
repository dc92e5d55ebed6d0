// Opens a file as a new plan. One that is refused changes nothing on this page.

import { said, tell } from "./refusal.js";

// offerOpening makes the form that opens files work without leaving the page. What
// must be done before another page comes is waited for first.
export function offerOpening(form, before) {
  form?.addEventListener("submit", async (e) => {
    if (e.submitter?.value !== "open") return;
    e.preventDefault();
    const file = form.elements[":file"].files[0];
    if (!file) return tell("Choose a file first, then open it.");
    e.submitter.closest("details")?.removeAttribute("open");
    await open(form, file, before);
    form.elements[":file"].value = "";
  });
}

// open sends a file and goes to the plan that it makes.
export async function open(form, file, before) {
  tell("");
  const data = new FormData();
  data.set(":do", "open");
  data.set(":file", file, file.name);
  try {
    const answer = await fetch(form.action, { method: "POST", body: data });
    if (!answer.redirected) {
      const { text, lines } = said(await answer.text());
      return tell(text, lines);
    }
    await before?.();
    location.assign(answer.url);
  } catch {
    tell("ramplan does not answer; the file was not opened.");
  }
}
