// The pages on which a station is proved. Without this script they work by their buttons;
// with it a study is typed like a spreadsheet, kept at every rest of the keys, and what it
// says follows.

import { acceptDrops } from "./drop.js";
import { answering } from "./asking.js";
import { likeSpreadsheet } from "./cells.js";
import { forgetSigned, keepTaps } from "./taps.js";

forgetSigned();
const root = document.documentElement;
const study = document.getElementById("study");
const check = document.getElementById("check");
const upload = document.getElementById("upload");

if (study) {
  const live = answering(study, "study");
  likeSpreadsheet(study, live);
  acceptDrops(async (file) => live.command({ do: "read", paste: await file.text() }));
  root.classList.add("live");
} else if (check) {
  const live = answering(check, "check");
  keepTaps(check, live);
  root.classList.add("live");
} else if (upload) {
  acceptDrops(async (file) => {
    upload.open = true;
    document.getElementById("upload-text").value = await file.text();
    upload.querySelector("form").requestSubmit(upload.querySelector("button"));
  });
  root.classList.add("live");
}

// That a name is missing is said until one is typed.
document.addEventListener("input", (e) => {
  if (e.target.id !== "sign-who" || e.target.value.trim() === "") return;
  e.target.removeAttribute("aria-invalid");
  e.target.removeAttribute("aria-describedby");
  document.getElementById("sign-f")?.remove();
});

// What would be done by what is ticked is shown at once.
const adopt = document.getElementById("adopt");
if (adopt) {
  let under = null;
  adopt.addEventListener("change", async () => {
    under?.abort();
    const mine = (under = new AbortController());
    const data = new FormData(adopt);
    data.set(":do", "try");
    try {
      const answer = await fetch(adopt.action, { method: "POST", headers: { "Ramplan-Part": "study" }, body: new URLSearchParams(data), signal: mine.signal });
      const next = new DOMParser().parseFromString(await answer.text(), "text/html").getElementById("effect");
      if (next && under === mine) document.getElementById("effect").replaceWith(next);
    } catch (fault) {
      if (!mine.signal.aborted) throw fault;
    }
  });
  root.classList.add("live");
}
