// Sends a form of these pages at every rest of the keys and puts the answer into the page.
// One question is under way at a time, as each names the version that it starts from.

import { morph } from "./morph.js";
import { Queue } from "./questions.js";
import { sentence, tell } from "./refusal.js";

const rest = 250; // ms without a key before a change is sent
const tooLong = 30000; // ms before an answer is given up
const again = 3000; // ms before a server that did not answer is asked again

const lost = "Not saved: ramplan does not answer. What you typed is kept here; start ramplan again on the same address and it goes on.";

// answering makes a form live. part names what is asked for. The returned object has
// command({do, paste}), which does what the button of that value does, and soon().
export function answering(form, part) {
  const queue = new Queue();
  let timer = 0;
  let asked = false;
  let leaving = false;
  let dirty = false;
  let shown = null; // called once when the next answer is shown

  const soon = () => {
    clearTimeout(timer);
    timer = setTimeout(ask, queue.waiting ? 0 : rest);
  };

  const command = (what, then) => {
    dirty = true;
    tell("");
    queue.add(what);
    if (then) shown = then;
    ask();
  };

  async function ask() {
    if (asked || leaving) return;
    clearTimeout(timer);
    asked = true;
    const question = queue.send();
    try {
      const data = new FormData(form);
      data.set(":do", question.do === "recompute" ? "save" : question.do);
      if (question.paste !== undefined) data.set(":text", question.paste);
      const answer = await fetch(form.action, { method: "POST", headers: { "Ramplan-Part": part }, body: new URLSearchParams(data), signal: AbortSignal.timeout(tooLong) });
      const html = await answer.text();
      asked = false;
      take(question, html);
    } catch {
      asked = false;
      say("lost", lost);
      queue.spoiled();
      timer = setTimeout(ask, again);
    }
  }

  function take(question, html) {
    const main = new DOMParser().parseFromString(html, "text/html").getElementById("main");
    const typing = question.do === "recompute";
    const known = main?.dataset.saved !== undefined;
    const changed = typing ? [] : queue.answered(known);
    if (!known) {
      if (typing) say("lost", sentence(html));
      else {
        tell(sentence(html));
        queue.spoiled();
      }
    } else {
      dirty = queue.stale || main.dataset.saved !== "yes";
      if (typing && queue.stale) {
        // What was typed meanwhile is answered next; only where it starts from is taken over.
        for (const name of [":version", ":from", ":count"]) {
          const next = main.querySelector(`[name="${name}"]`);
          const here = form.elements[name];
          if (next && here) here.value = next.value;
        }
      } else {
        put(main, typing, changed);
        const then = shown;
        shown = null;
        then?.();
      }
      if (main.dataset.saved === "no" && !main.querySelector("#stale")) timer = setTimeout(ask, again);
    }
    if (queue.waiting) ask();
    else if (queue.stale) soon();
  }

  function put(main, typing, changed) {
    const names = new Set(changed.map(([, now]) => now));
    const typed = changed.map(([before, now]) => [now, form.elements[before]?.value]);
    morph(document.getElementById("main"), main, {
      entries: typing,
      entry: (e) => typing || names.has(e.name) || e.name === "who" || (e.closest("#upload") !== null && e.form !== form),
      unfold: false,
      fold: () => true,
    });
    for (const [name, value] of typed) if (form.elements[name] && value !== undefined) form.elements[name].value = value;
    form.dispatchEvent(new Event("shown"));
  }

  form.addEventListener("input", (e) => {
    if (e.target.type === "file") return;
    dirty = true;
    queue.changed(e.target.name);
    soon();
  });
  form.addEventListener("submit", (e) => {
    if (e.submitter?.hasAttribute("data-leaves") || e.submitter?.value === "overwrite") {
      clearTimeout(timer);
      leaving = true;
      return;
    }
    e.preventDefault();
    const what = e.submitter?.value || "save";
    if (what === "save") {
      queue.spoiled();
      ask();
    } else command({ do: what });
  });
  addEventListener("beforeunload", (e) => {
    if (dirty && !leaving && form.dataset.shift !== "yes") e.preventDefault(); // a shift check is kept in this window (taps.js)
  });
  addEventListener("pageshow", (e) => {
    leaving = false;
    const [how] = performance.getEntriesByType("navigation");
    if (part === "study" && (e.persisted || how?.type === "back_forward")) {
      dirty = false;
      location.replace(location.href);
    }
  });
  return { command, soon };
}

function say(kind, text) {
  const state = document.getElementById("state");
  state.className = "state state-" + kind;
  if (state.textContent !== text) state.textContent = text;
}
