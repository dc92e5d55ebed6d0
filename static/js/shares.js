// Brings the shares of parts into the page as they become known: the first from few points,
// each next better than the one before.

import { morph } from "./morph.js";

const recordEnd = "\x1e";

// stream asks for the shares and calls take with each piece of HTML as it comes. It ends when
// all of them are there, or the signal says so.
export async function stream(address, signal, take, room = "") {
  const answer = await fetch(address, { headers: { "Ramplan-Part": "shares", "Ramplan-Room": room }, signal });
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

// isStrip tells a piece that is the decision strip, with the readings as they are simulated.
const isStrip = (html) => html.startsWith('<div class="drawings"');

// putStrip shows it in place of the one that came with the answer to typing.
function putStrip(html) {
  const now = document.getElementById("strip");
  const next = new DOMParser().parseFromString(html, "text/html").getElementById("strip");
  if (now && next) morph(now, next, { entry: () => false, fold: () => true });
}

// How high the shares of this plan were in a window as wide: as much room is kept for them
// until they come, so that they push nothing down.
const heightKey = (place) => `shares ${location.pathname} ${Math.round(place.clientWidth / 20)}`;

function reserve(place) {
  try {
    const height = Number(localStorage.getItem(heightKey(place)));
    if (height > 0) place.style.minHeight = height + "px";
  } catch {
    // Nothing may be kept in this browser.
  }
}

function release(place) {
  place.style.minHeight = "";
  try {
    localStorage.setItem(heightKey(place), String(Math.round(place.getBoundingClientRect().height)));
  } catch {
    // Likewise.
  }
}

// followShares keeps the bench's shares those of its result: they are dropped when something
// is typed, and asked for anew when the answer to it is shown. roomOf tells which form of the
// strip there is room for.
export function followShares(form, roomOf) {
  let under = null; // the question under way
  let whole = ""; // whose shares are all there
  let strip = ""; // the last one that came with them
  let room = ""; // that it has

  const drop = () => {
    under?.abort();
    under = null;
    document.getElementById("shares")?.classList.add("older");
    for (const g of document.querySelectorAll("#strip .stalled")) g.classList.add("older");
  };

  const ask = async () => {
    const place = document.getElementById("shares");
    if (!place) return;
    const of = place.dataset.of;
    if (whole === of && room === roomOf() && place.querySelector(".sharesbody")) {
      place.classList.remove("older");
      putStrip(strip);
      return;
    }
    drop();
    whole = "";
    room = roomOf();
    const mine = (under = new AbortController());
    try {
      await stream(place.dataset.stream + "?of=" + encodeURIComponent(of), mine.signal, (html) => {
        if (mine.signal.aborted) return;
        if (isStrip(html)) return putStrip((strip = html));
        put(place, html);
        place.classList.remove("older");
      }, room);
      whole = of;
      place.dataset.whole = of;
      release(place);
    } catch {
      // Dropped, or the server is gone: what is shown stays marked as older.
    }
  };

  form.addEventListener("input", (e) => {
    if (!e.target.name?.startsWith(":")) drop();
  });
  form.addEventListener("shown", ask);
  const place = document.getElementById("shares");
  if (place) reserve(place);
  ask();
}
