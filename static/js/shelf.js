// The shelf and the pages of the past: a file may be dropped anywhere on them.

import { acceptDrops } from "./drop.js";
import { offerCopies } from "./copy.js";
import { offerOpening, open } from "./opening.js";

const opening = document.getElementById("opening");
if (opening) {
  offerOpening(opening);
  acceptDrops((file) => open(opening, file));
}
offerCopies(document);
document.documentElement.classList.add("live");
