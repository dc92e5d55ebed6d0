// The page of the shares: refines what it shows, and counts parts with progress and a way to
// stop.

import { put, stream } from "./shares.js";

const place = document.getElementById("shares");
const asked = document.getElementById("asked");
if (place && asked) {
  document.documentElement.classList.add("live");
  const stop = document.getElementById("stop");
  const progress = document.getElementById("progress");
  let under = null;

  const run = async (query) => {
    under?.abort();
    const mine = (under = new AbortController());
    stop.disabled = false;
    progress.textContent = "";
    let said = "";
    try {
      await stream(place.dataset.stream + query, mine.signal, (html) => {
        if (html.startsWith("<output>")) {
          said = new DOMParser().parseFromString(html, "text/html").body.textContent;
          progress.textContent = said;
        } else put(place, html);
      });
      progress.textContent = "";
    } catch (fault) {
      if (under !== mine) return;
      if (mine.signal.aborted) progress.textContent = said ? "Stopped: " + said + " What was counted by then is kept below, with its limits." : "Stopped.";
      else progress.textContent = fault.message === "422" ? "Parts: a whole number from 1 to 1e12. Seed: a whole number." : "ramplan does not answer.";
    }
    if (under === mine) stop.disabled = true;
  };

  asked.addEventListener("submit", (e) => {
    e.preventDefault();
    const parts = document.getElementById("parts");
    const fault = document.getElementById("parts-n");
    const none = parts.value.trim() === "";
    fault.textContent = none ? fault.dataset.none : "";
    parts.setAttribute("aria-invalid", String(none));
    if (none) return parts.focus();
    run("?" + new URLSearchParams(new FormData(asked)));
  });
  stop.addEventListener("click", () => under?.abort());
  if (!new URLSearchParams(location.search).get("parts")) run("?" + new URLSearchParams(new FormData(asked)));
}
