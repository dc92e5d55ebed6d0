// Saves the file without leaving the page, so that nothing is lost when the
// program does not answer.

import { Refusal, sentence } from "./refusal.js";

// save fails with a Refusal when the program answered but would not save.
export async function save(form, address) {
  const answer = await fetch(address, { method: "POST", body: new URLSearchParams(new FormData(form)) });
  if (!answer.ok) throw new Refusal(sentence(await answer.text()));
  const named = /filename="([^"]+)"/.exec(answer.headers.get("Content-Disposition") ?? "");
  const link = document.createElement("a");
  link.href = URL.createObjectURL(await answer.blob());
  link.download = named?.[1] ?? "plan.json";
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}
