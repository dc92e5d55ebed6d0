package web

import (
	"fmt"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// unlikeWhole asks for everything anew and names what stands otherwise in the page, which
// many answers that leave out what is the same have brought to where it is.
const unlikeWhole = `(async () => {
	const form = document.getElementById("plan");
	const data = new FormData(form);
	data.set(":do", "recompute");
	const answer = await fetch(form.action, { method: "POST", headers: { "Ramplan-Part": "bench", "Ramplan-Room": "wide" }, body: new URLSearchParams(data) });
	const whole = new DOMParser().parseFromString(await answer.text(), "text/html");
	form.elements[":version"].value = whole.querySelector('[name=":version"]').value; // it was saved
	const unlike = [];
	const says = (e) => {
		const bare = e.cloneNode(true);
		bare.querySelector(".handles")?.remove(); // the script writes on them
		return bare.textContent.replace(/\s+/g, " ").trim();
	};
	const where = (a, b) => { // the innermost that differs
		if (a.childNodes.length === b.childNodes.length) {
			for (let i = 0; i < a.childNodes.length; i++) {
				if (!a.childNodes[i].isEqualNode(b.childNodes[i])) return where(a.childNodes[i], b.childNodes[i]);
			}
		}
		const shown = (n) => (n.outerHTML ?? n.data).slice(0, 300);
		return shown(a) + " in place of " + shown(b);
	};
	for (const id of ["lead", "figures", "glance", "jumps", "faults"]) {
		const [here, there] = [document.getElementById(id), whole.getElementById(id)].map((e) => {
			const own = e.cloneNode(true);
			for (const place of own.querySelectorAll("[data-stream]")) { // the shares come by another way
				place.querySelector(".sharesbody")?.remove();
				place.removeAttribute("data-whole");
				place.className = "sharesof";
			}
			return own;
		});
		if (!here.isEqualNode(there)) unlike.push(id + ": " + where(here, there));
	}
	for (const section of document.querySelectorAll(".sec")) {
		if (says(section) !== says(whole.getElementById(section.id))) unlike.push(section.id);
	}
	for (const entry of whole.querySelectorAll("#plan input:not([type=hidden]), #plan textarea, #plan select")) {
		const here = document.getElementById(entry.id);
		if (here?.value !== entry.value || here.checked !== entry.checked || here.getAttribute("aria-invalid") !== entry.getAttribute("aria-invalid")) unlike.push(entry.id);
	}
	return unlike.join(" ");
})()`

// TestAnswersMakeTheWholePage types here and there, right and wrong, and presses buttons
// in between: the page is then what a whole one would be.
func TestAnswersMakeTheWholePage(t *testing.T) {
	b, _ := visitWhole(t, example(t))
	b.do(chromedp.EmulateViewport(1440, 900))
	answered := "document.getElementById('main').dataset.answer"
	for _, step := range []struct{ field, typed string }{
		{"f-station-nest", "141"}, {"f-title-notes", "words only"}, {"f-joint-fit", "H7/zz9"}, {"f-title-notes", "while it is wrong"},
		{"f-joint-fit", "H7/r6"}, {"f-station-nest", "139,5"}, {"", "undo"}, {"f-motion-slow_speed", "none"}, {"", "undo"}, {"f-station-nest", "140"},
	} {
		if step.field != "" && !eval[bool](b, "document.getElementById('"+step.field+"') !== null") {
			t.Errorf("the page has no %s", step.field)
			continue
		}
		before := eval[string](b, answered)
		if step.field == "" {
			click(b, "#"+step.typed)
		} else {
			// In one go: an answer to half of it would do no harm, but there would be two.
			eval[any](b, fmt.Sprintf("(() => { const f = document.getElementById(%q); f.focus(); f.select(); document.execCommand('insertText', false, %q); return 0; })()", step.field, step.typed))
		}
		b.until(answered + " !== '" + before + "'")
		b.until(stateText + ".includes('Saved.')")
		unlike := eval[string](b, unlikeWhole)
		for tries := 0; unlike != "" && tries < 5; tries++ { // another answer was on its way
			time.Sleep(300 * time.Millisecond)
			unlike = eval[string](b, unlikeWhole)
		}
		assert.Empty(t, unlike, "after %s %q", step.field, step.typed)
	}
	assert.Empty(t, b.complaints())
}
