// The bench, live. Without this script the page works by its buttons; with it,
// every change is sent after a short rest and the answer is put into the page.

import { roomOf, watch } from "./live.js";
import { acceptDrops } from "./drop.js";
import { offerOpening, open } from "./opening.js";
import { offerCopies } from "./copy.js";
import { acceptColumns } from "./columns.js";
import { movePoints } from "./curve.js";
import { roveRows } from "./rows.js";
import { moveHold, pickSteps } from "./run.js";
import { followShares } from "./shares.js";

const form = document.getElementById("plan");
if (form) {
  const live = watch(form);
  const opening = document.getElementById("opening");
  offerOpening(opening, live.settled);
  acceptDrops((file) => open(opening, file, live.settled), async (file) => {
    document.getElementById("paste-text").value = await file.text();
    live.command("paste ram.curve.points");
  });
  acceptColumns(form, live);
  movePoints(form, live);
  roveRows(form);
  pickSteps(document.getElementById("main"));
  moveHold(document.getElementById("main"), form);
  followShares(form, roomOf);
  offerCopies(document);
  document.documentElement.classList.add("live");
}
