// Brings the shares of parts into the page as they become known: the first from few points,
// each next better than the one before.

import { morph } from "./morph.js";

const recordEnd = "\x1e";

// stream asks for the shares and calls take with each piece of HTML as it comes. It ends when
// all of them are there, or the signal says so.
export async function stream(address, signal, take) {
  const answer = await fetch(address, { headers: { "Ramplan-Part": "shares" }, signal });
  if (!answer.ok) throw new Error(String(answer.status));
  const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return;
    const pieces = (rest + value).split(recordEnd);
    rest = pieces.pop();
    for (const piece of pieces) take(piece);
  }
}

// put shows a piece in its place; folds stay as they were left. The worst day comes last of
// all: until then the one before stays, marked as older, or what is below would jump.
export function put(place, html) {
  const next = new DOMParser().parseFromString(html, "text/html").body.firstElementChild;
  const now = place.querySelector(".sharesbody");
  const days = now?.querySelector(".days");
  if (days && next.querySelector("table") && !next.querySelector(".days")) {
    const before = days.cloneNode(true);
    before.classList.add("older");
    next.append(before);
  }
  if (now) morph(now, next, { entry: () => false, fold: () => true });
  else place.append(document.importNode(next, true));
}

// followShares keeps the bench's shares those of its result: they are dropped when something
// is typed, and asked for anew when the answer to it is shown.
export function followShares(form) {
  let under = null; // the question under way
  let whole = ""; // whose shares are all there

  const drop = () => {
    under?.abort();
    under = null;
    document.getElementById("shares")?.classList.add("older");
  };

  const ask = async () => {
    const place = document.getElementById("shares");
    if (!place) return;
    const of = place.dataset.of;
    if (whole === of && place.querySelector(".sharesbody")) {
      place.classList.remove("older");
      return;
    }
    drop();
    whole = "";
    const mine = (under = new AbortController());
    try {
      await stream(place.dataset.stream + "?of=" + encodeURIComponent(of), mine.signal, (html) => {
        if (mine.signal.aborted) return;
        put(place, html);
        place.classList.remove("older");
      });
      whole = of;
      place.dataset.whole = of;
    } catch {
      // Dropped, or the server is gone: what is shown stays marked as older.
    }
  };

  form.addEventListener("input", (e) => {
    if (!e.target.name?.startsWith(":")) drop();
  });
  form.addEventListener("shown", ask);
  ask();
}
