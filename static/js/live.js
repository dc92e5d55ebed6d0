// Sends the form and puts the answer into the page. One question is under way at
// a time, as each names the version of the draft that it starts from; an answer
// older than the entries is dropped, and a button's command is never given up.

import { morph } from "./morph.js";
import { Queue } from "./questions.js";
import { Refusal, sentence, tell } from "./refusal.js";
import { save } from "./save.js";

const rest = 200; // ms without a key before a change is sent
const patience = 1000; // ms before a slow answer is spoken of
const tooLong = 30000; // ms before an answer is given up
const again = 3000; // ms before a server that did not answer is asked again

const lost = "ramplan does not answer. What you typed is kept here; start ramplan again on the same address and it goes on.";
const slow = "Still computing …";

// watch makes a form live. The returned object has command(do), which does what
// the button of that value does.
export function watch(form) {
  const queue = new Queue();
  let timer = 0;
  let asked = null; // the question in flight
  let leaving = false; // for a page beside this one, by a button that saves first
  let dirty = false; // something typed is not saved

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

  const command = (what) => {
    if (what === "recompute") return recompute();
    const paste = what.startsWith("paste ") ? document.getElementById("paste-text").value : undefined;
    dirty = true;
    tell("");
    queue.add({ do: what, paste });
    ask();
  };

  async function ask() {
    if (asked || leaving) return; // its answer goes on
    clearTimeout(timer);
    asked = true;
    const question = queue.send();
    const late = setTimeout(() => say("slow", slow), patience);
    try {
      const answer = await fetch(form.action, {
        method: "POST",
        headers: headersOf(question),
        body: bodyOf(form, question),
        signal: AbortSignal.timeout(tooLong),
      });
      const text = await answer.text();
      asked = null;
      take(question, text);
    } catch (fault) {
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
  function take(question, html) {
    const next = new DOMParser().parseFromString(html, "text/html");
    const main = next.querySelector("main.bench");
    const isCommand = question.do !== "recompute";
    const changed = isCommand ? queue.answered(main !== null) : [];
    if (main) {
      document.documentElement.classList.remove("lost");
      alarm("");
      dirty = queue.stale || main.dataset.saved !== "yes";
      if (isCommand || !queue.stale) show(form, main, question.do, changed);
      else for (const name of [":version", ":state"]) form.elements[name].value = main.querySelector(`[name="${name}"]`).value;
      if (main.dataset.saved === "no") {
        clearTimeout(timer);
        timer = setTimeout(recompute, again); // saved when it can be again
      }
    } else if (isCommand) {
      tell(sentence(html));
      queue.spoiled(); // what was typed before it has no answer yet
    } else {
      say("lost", sentence(html));
    }
    if (queue.waiting) ask();
    else if (queue.stale) soon();
  }

  // The strip is sent in the form that there is room for: in another room, another.
  const room = new ResizeObserver(() => {
    const strip = document.getElementById("strip");
    if (strip?.clientWidth && !strip.querySelector(roomOf() === "narrow" ? ".drawing.compact" : ".drawing:not(.compact)")) recompute();
  });
  room.observe(document.getElementById("figures"));

  form.addEventListener("input", (e) => {
    if (e.target.name?.startsWith(":") || e.target.type === "file") return; // no entries of the plan
    dirty = true;
    queue.changed(e.target.name);
    soon();
  });
  form.addEventListener("submit", (e) => {
    const what = e.submitter?.value || "recompute";
    if (e.submitter?.hasAttribute("data-leaves")) {
      clearTimeout(timer);
      leaving = true;
      return; // the form is sent as it stands, saved, and another page comes
    }
    e.preventDefault();
    e.submitter?.closest("details.menu")?.removeAttribute("open");
    if (what === "save") {
      tell("");
      save(form, e.submitter.formAction).catch((fault) => (fault instanceof Refusal ? tell(fault.message) : gone()));
      return;
    }
    command(what);
  });
  addEventListener("beforeunload", (e) => {
    if (dirty && !leaving) e.preventDefault();
  });
  addEventListener("pageshow", (e) => {
    leaving = false;
    // Going back brings entries, and a version, from before they were saved.
    const [how] = performance.getEntriesByType("navigation");
    if (e.persisted || how?.type === "back_forward") {
      dirty = false;
      location.replace(location.href);
    }
  });

  // settled waits until everything typed is saved, for another page to come.
  const settled = async () => {
    if (queue.stale && !asked) ask();
    for (let waited = 0; dirty && waited < patience; waited += 50) await new Promise((go) => setTimeout(go, 50));
  };

  return { command, settled };
}

// gone says that there is no answer.
function gone() {
  say("lost", lost);
  alarm("Not saved: ramplan does not answer. These figures are older than the entries.");
  document.documentElement.classList.add("lost");
}

// narrowest is the width of the wide strip at least, px; strip.css has the same.
const narrowest = 720;

// roomOf tells which form of the strip there is room for; "" where none is shown.
export function roomOf() {
  const width = document.getElementById("strip")?.clientWidth;
  if (!width) return "";
  return width < narrowest ? "narrow" : "wide";
}

// headersOf says what is wanted of the answer, and which one is shown, so that what is
// the same need not come again.
function headersOf(question) {
  const headers = { "Ramplan-Part": "bench", "Ramplan-Room": roomOf() };
  if (question.do === "recompute") headers["Ramplan-Shown"] = document.getElementById("main").dataset.answer ?? "";
  return headers;
}

// bodyOf is the form as it stands, with what is asked of it.
function bodyOf(form, question) {
  const data = new FormData(form);
  data.set(":do", question.do);
  if (question.paste !== undefined) data.set(":paste", question.paste);
  return new URLSearchParams(data);
}

// say shows how the entries stand, where a screen reader hears it.
function say(kind, text) {
  const state = document.getElementById("state");
  state.className = "state state-" + kind;
  if (state.textContent !== text) state.textContent = text;
}

// alarm says where it is always in sight that nothing is saved.
function alarm(text) {
  for (const place of document.querySelectorAll("[data-alarm]")) place.textContent = text;
}

// show puts an answer into the page. The changed fields, [name before, name
// now], keep what was typed in them, wherever their rows went.
function show(form, main, what, changed) {
  const typed = changed.map(([before, now]) => [now, valueOf(form.elements[before])]);
  const names = new Set(typed.map(([name]) => name));
  document.title = main.dataset.title;
  document.documentElement.dataset.foot = main.dataset.foot;
  morph(document.getElementById("main"), main, {
    entries: what === "recompute",
    entry: (e) => what === "recompute" || names.has(e.name) || (e.name === ":paste" && !what.startsWith("paste ")) || (e.name?.startsWith(":growth ") && what !== "grow"),
    unfold: replaces(what),
    fold: (e) => !(e.id === "paste" && what.startsWith("paste ")),
  });
  document.getElementById("undo").disabled = main.dataset.undo !== "yes";
  document.getElementById("redo").disabled = main.dataset.redo !== "yes";
  for (const [name, value] of typed) fill(form.elements[name], value);
  if (what !== "recompute") settle(what);
  form.dispatchEvent(new Event("shown"));
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
  if (verb === "steps") { // what a template leaves open is typed next
    const steps = document.getElementById("f-sequence-steps-rows");
    (steps?.querySelector(".missing input") ?? steps)?.focus();
    return;
  }
  if (verb === "hold") document.getElementById("run-hold")?.focus();
  const rows = list && document.getElementById("f-" + list.replaceAll(".", "-") + "-rows");
  document.getElementById("points-doubts")?.scrollIntoView({ block: "nearest" });
  const idle = document.activeElement === document.body || document.activeElement?.nodeName === "BUTTON";
  if (verb === "add" && rows && idle) {
    const row = rows.querySelectorAll(".card, .pair");
    row[row.length - 1]?.querySelector("input:not([type=hidden])")?.focus();
  } else if (document.activeElement === document.body) {
    (rows || document.getElementById("entries")).focus({ preventScroll: Boolean(rows) });
  }
}

// replaces tells whether a command may change any entry.
function replaces(what) {
  return ["undo", "redo"].includes(what);
}
