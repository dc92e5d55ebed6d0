package web

import (
	"net/http"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/web/page"
	"ramplan/web/view"
)

// obey does what the pressed button wants.
func (p *posted) obey() (*bench, error) {
	b := &bench{typed: p.typed, before: p.before}
	if p.paste != "" { // typed and not read yet
		b.paste = &page.Paste{Text: p.paste, Do: view.DoPaste, Open: true}
	}
	if p.last != "" {
		b.last, _ = press.Decode([]byte(p.last)) // carried by the page; a broken one is no plan
	}
	what, rest, _ := strings.Cut(p.do, " ")
	switch what {
	case "", "recompute", "return": // the last from another page, which carried the entries along
		return b, nil
	case "open":
		p.open(b)
		return b, nil
	case "new":
		b.replace(view.Typed{}, "This is a new, empty plan.")
		b.last, b.fresh = nil, true
		return b, nil
	case "example":
		e, err := exampleBench()
		if err != nil {
			return nil, err
		}
		b.replace(e.typed, "This is the example plan.")
		b.last = e.last
		return b, nil
	case "back":
		b.back()
		return b, nil
	case "paste":
		p.pasteInto(b)
		return b, nil
	case "forget":
		n, _ := strconv.Atoi(rest)
		b.typed = view.Forget(b.typed, n)
		return b, nil
	case "add", "remove", "up", "down":
		base, digits, _ := strings.Cut(rest, " ")
		row, err := strconv.Atoi(digits)
		if err != nil && what != "add" {
			return nil, unknownCommand(p.do)
		}
		moved, ok := view.Move(b.typed, what, base, row)
		if !ok {
			return nil, unknownCommand(p.do)
		}
		if what == "remove" {
			b.replace(moved, view.RowName(base, row)+" was removed.")
			return b, nil
		}
		b.typed = moved
		return b, nil
	}
	return nil, unknownCommand(p.do)
}

func unknownCommand(do string) error {
	if len(do) > 60 {
		do = do[:60] + " …"
	}
	return refusal{http.StatusBadRequest, "The form asks for something that this program does not know: " + strings.ToValidUTF8(do, "\uFFFD") + ".", []string{"Go back and press the button again."}}
}

// replace puts other entries in place of these and offers the way back.
func (b *bench) replace(typed view.Typed, text string) {
	if len(b.typed.Draft.Entries) > 0 {
		b.before = string(b.typed.All().Encode())
	}
	b.typed = typed
	b.notices = append(b.notices, page.Notice{Kind: "done", Text: text})
}

// back brings back the entries of before, and offers the way back from there.
func (b *bench) back() {
	d, faults := press.DecodeDraft([]byte(b.before))
	if len(faults) > 0 {
		b.notices = append(b.notices, page.Notice{Kind: "refused", Text: "There are no entries of before to bring back."})
		b.refused = true
		return
	}
	b.replace(view.Take(d.Entries, nil), "The entries of before are back.")
}
