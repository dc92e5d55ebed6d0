// Sends the form and puts the answer into the page: the newest question wins,
// an older answer is dropped, and a button's command is never given up.

import { morph } from "./morph.js";
import { Queue } from "./questions.js";
import { Refusal, sentence, tell } from "./refusal.js";
import { save } from "./save.js";

const rest = 200; // ms without a key before a change is sent
const patience = 1000; // ms before a slow answer is spoken of
const again = 3000; // ms before a server that did not answer is asked again

const lost = "ramplan does not answer. What you typed is kept here; start ramplan again on the same address and it goes on.";
const slow = "Still computing …";

// watch makes a form live. The returned object has command(do, file), which does
// what the button of that value does.
export function watch(form) {
  const queue = new Queue();
  let timer = 0;
  let asked = null; // the question in flight
  let leaving = false; // for a page that brings the entries back
  // What another page brought back may never have been saved.
  let dirty = document.referrer.endsWith("/faults");

  // soon asks when the keys rest. A command in flight, or waiting for a server
  // that did not answer, comes first and is followed by what changed meanwhile.
  const soon = () => {
    if (queue.waiting) return;
    clearTimeout(timer);
    timer = setTimeout(ask, rest);
  };

  const recompute = () => {
    queue.spoiled();
    ask();
  };

  const command = (what, file) => {
    if (what === "recompute") return recompute();
    const paste = what.startsWith("paste ") ? document.getElementById("paste-text").value : undefined;
    dirty = true;
    tell("");
    queue.add({ do: what, file, paste });
    ask();
  };

  async function ask() {
    if (asked?.command) return; // its answer goes on
    clearTimeout(timer);
    asked?.control.abort();
    const mine = (asked = { command: queue.waiting, control: new AbortController() });
    const question = queue.send();
    const late = setTimeout(() => say("slow", slow), patience);
    try {
      const answer = await fetch(form.action, {
        method: "POST",
        headers: { "Ramplan-Part": "bench" },
        body: bodyOf(form, question),
        signal: mine.control.signal,
      });
      const text = await answer.text();
      if (mine !== asked) return;
      asked = null;
      take(question, text, answer.ok || answer.status === 422);
    } catch (fault) {
      if (mine !== asked || fault.name === "AbortError") return;
      asked = null;
      gone();
      queue.spoiled();
      timer = setTimeout(ask, again);
    } finally {
      clearTimeout(late);
    }
  }

  // take brings the page up to the answer. What is being typed is never touched by
  // the answer to typing; a button's answer brings the entries as well, but for
  // those that were changed since it was asked.
  function take(question, html, good) {
    const next = new DOMParser().parseFromString(html, "text/html");
    const main = good ? next.getElementById("main") : null;
    const isCommand = question.do !== "recompute";
    const changed = isCommand ? queue.answered(main !== null) : [];
    if (main) {
      document.documentElement.classList.remove("lost");
      show(form, main, question.do, changed);
    } else if (isCommand) {
      tell(sentence(html));
      queue.spoiled(); // what was typed before it has no answer yet
    } else {
      say("lost", sentence(html));
    }
    if (queue.waiting) ask();
    else if (isCommand && queue.stale) soon();
  }

  form.addEventListener("input", (e) => {
    if (e.target.name === ":paste" || e.target.type === "file") return;
    dirty = true;
    queue.changed(e.target.name);
    soon();
  });
  form.addEventListener("submit", (e) => {
    const what = e.submitter?.value || "recompute";
    leaving = e.submitter?.getAttribute("formaction") === "/faults";
    if (leaving) return; // another page, which carries the entries along
    e.preventDefault();
    if (what === "save") {
      tell("");
      save(form).then(
        () => (dirty = false),
        (fault) => (fault instanceof Refusal ? tell(fault.message) : gone()),
      );
      return;
    }
    const chosen = document.getElementById("file");
    command(what, what === "open" ? chosen.files[0] : undefined);
    if (what === "open") chosen.value = "";
    e.submitter?.closest("details.menu")?.removeAttribute("open");
  });
  addEventListener("beforeunload", (e) => {
    if (dirty && !leaving) e.preventDefault();
  });
  addEventListener("pageshow", (e) => {
    leaving = false;
    // Going back brings entries that are newer than the result beside them.
    const [how] = performance.getEntriesByType("navigation");
    if (e.persisted || how?.type === "back_forward") recompute();
  });

  return { command };
}

// gone says that there is no answer.
function gone() {
  say("lost", lost);
  document.documentElement.classList.add("lost");
}

// bodyOf is the form as it stands, with what is asked of it.
function bodyOf(form, question) {
  const data = new FormData(form);
  data.set(":do", question.do);
  if (question.paste !== undefined) data.set(":paste", question.paste);
  data.delete(":file");
  if (question.file) {
    data.set(":file", question.file, question.file.name);
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

// show puts an answer into the page. The changed fields, [name before, name
// now], keep what was typed in them, wherever their rows went.
function show(form, main, what, changed) {
  const typed = changed.map(([before, now]) => [now, valueOf(form.elements[before])]);
  const names = new Set(typed.map(([name]) => name));
  document.title = main.dataset.title;
  morph(document.getElementById("main"), main, {
    entry: (e) => what === "recompute" || names.has(e.name) || (e.name === ":paste" && !what.startsWith("paste ")),
    unfold: replaces(what),
    fold: (e) => !(e.id === "paste" && what.startsWith("paste ")),
  });
  for (const [name, value] of typed) fill(form.elements[name], value);
  if (what !== "recompute") settle(what);
}

function valueOf(field) {
  return field?.type === "checkbox" ? field.checked : field?.value;
}

function fill(field, value) {
  if (!field || value === undefined || valueOf(field) === value) return;
  if (field.type === "checkbox") field.checked = value;
  else field.value = value;
}

// settle puts the focus where a button's work can be seen.
function settle(what) {
  const [verb, list] = what.split(" ");
  const rows = list && document.getElementById("f-" + list.replaceAll(".", "-") + "-rows");
  const idle = document.activeElement === document.body || document.activeElement?.nodeName === "BUTTON";
  if (verb === "add" && rows && idle) {
    const row = rows.querySelectorAll(".card, .pair");
    row[row.length - 1]?.querySelector("input:not([type=hidden])")?.focus();
  } else if (document.activeElement === document.body) {
    (rows || document.getElementById("entries")).focus({ preventScroll: Boolean(rows) });
  }
  if (replaces(what)) scrollTo(0, 0);
}

// replaces tells whether a command puts another plan in place of this one.
function replaces(what) {
  return ["open", "new", "example", "back"].includes(what);
}
