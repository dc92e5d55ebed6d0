// Sends the form and puts the answer into the page: the newest question wins,
// an older answer is dropped.

import { morph } from "./morph.js";
import { save } from "./save.js";

const rest = 200; // ms without a key before a change is sent
const patience = 1000; // ms before a slow answer is spoken of
const again = 3000; // ms before a server that did not answer is asked again

const lost = "ramplan does not answer. What you typed is kept here; start ramplan again on the same address and it goes on.";
const slow = "Still computing …";

// watch makes a form live. The returned object has command(do, file), which does
// what the button of that value does.
export function watch(form) {
  let timer = 0;
  let asked = null; // the AbortController of the question in flight
  let leaving = false; // for a page that brings the entries back
  // What another page brought back may never have been saved.
  let dirty = document.referrer.endsWith("/faults");

  const change = () => {
    dirty = true;
    clearTimeout(timer);
    timer = setTimeout(() => ask("recompute"), rest);
  };

  async function ask(command, file) {
    clearTimeout(timer);
    asked?.abort();
    const mine = (asked = new AbortController());
    const late = setTimeout(() => say("slow", slow), patience);
    try {
      const answer = await fetch(form.action, {
        method: "POST",
        headers: { "Ramplan-Part": "bench" },
        body: bodyOf(form, command, file),
        signal: mine.signal,
      });
      const text = await answer.text();
      if (mine !== asked) return;
      put(form, text, command, answer.ok || answer.status === 422);
    } catch (fault) {
      if (mine !== asked || fault.name === "AbortError") return;
      gone();
      timer = setTimeout(() => ask(command, file), again);
    } finally {
      clearTimeout(late);
    }
  }

  form.addEventListener("input", (e) => {
    if (e.target.name === ":paste" || e.target.type === "file") return;
    change();
  });
  form.addEventListener("submit", (e) => {
    const command = e.submitter?.value || "recompute";
    leaving = e.submitter?.getAttribute("formaction") === "/faults";
    if (leaving) return; // another page, which carries the entries along
    e.preventDefault();
    if (command === "save") {
      save(form).then(() => (dirty = false), gone);
      return;
    }
    if (command !== "recompute") dirty = true;
    const chosen = document.getElementById("file");
    const file = command === "open" ? chosen.files[0] : undefined;
    ask(command, file);
    if (command === "open") chosen.value = "";
    e.submitter?.closest("details.menu")?.removeAttribute("open");
  });
  addEventListener("beforeunload", (e) => {
    if (dirty && !leaving) e.preventDefault();
  });
  addEventListener("pageshow", (e) => {
    leaving = false;
    // Going back brings entries that are newer than the result beside them.
    const [how] = performance.getEntriesByType("navigation");
    if (e.persisted || how?.type === "back_forward") ask("recompute");
  });

  return { command: ask };
}

// gone says that there is no answer.
function gone() {
  say("lost", lost);
  document.documentElement.classList.add("lost");
}

// bodyOf is the form as it stands, with a button's value.
function bodyOf(form, command, file) {
  const data = new FormData(form);
  data.set(":do", command);
  data.delete(":file");
  if (file) {
    data.set(":file", file, file.name);
    return data;
  }
  return new URLSearchParams(data);
}

// say shows how the entries stand, where a screen reader hears it.
function say(kind, text) {
  const state = document.getElementById("state");
  state.className = "state state-" + kind;
  if (state.textContent !== text) state.textContent = text;
}

// put brings the page up to the answer. What is being typed is never touched by
// the answer to typing; a button's answer brings the entries as well.
function put(form, html, command, good) {
  const next = new DOMParser().parseFromString(html, "text/html");
  const main = next.getElementById("main");
  if (!good || !main) {
    say("lost", main?.textContent.replace(/\s+/g, " ").trim() || "The answer could not be read.");
    return;
  }
  document.documentElement.classList.remove("lost");
  document.title = main.dataset.title;
  morph(document.getElementById("main"), main, command === "recompute");
  if (command !== "recompute") settle(form, command);
}

// settle puts the focus where a button's work can be seen.
function settle(form, command) {
  const [what, list] = command.split(" ");
  const rows = list && document.getElementById("f-" + list.replaceAll(".", "-") + "-rows");
  if (what === "add" && rows) {
    const row = rows.querySelectorAll(".card, .pair");
    row[row.length - 1]?.querySelector("input:not([type=hidden])")?.focus();
  } else if (document.activeElement === document.body) {
    (rows || document.getElementById("entries")).focus({ preventScroll: Boolean(rows) });
  }
  if (what === "open" || what === "new" || what === "example" || what === "back") scrollTo(0, 0);
}
