package web

import (
	"bytes"
	"net/http"
	"strings"

	"ramplan/press"
	"ramplan/web/page"
	"ramplan/web/view"
)

// mostShown is how many faults of a refused file are listed.
const mostShown = 50

// open puts the entries of the chosen file in place of the form's. A file that
// is neither a plan nor a draft changes nothing but the notice.
func (p *posted) open(b *bench) {
	refuse := func(text string, faults press.Problems) {
		n := page.Notice{Kind: "refused", Text: text}
		for i, f := range faults {
			if i == mostShown {
				n.Lines = append(n.Lines, "and more")
				break
			}
			n.Lines = append(n.Lines, f.String())
		}
		b.notices = append(b.notices, n)
		b.refused = true
	}
	if p.file == nil {
		refuse("Choose a file first, then open it.", nil)
		return
	}
	name := cleanName(p.file.name)
	if isDraft(p.file.data) {
		d, faults := press.DecodeDraft(p.file.data)
		if len(faults) > 0 {
			refuse(name+" was not opened; nothing has changed.", faults)
			return
		}
		b.replace(view.Take(d.Entries, nil), "Opened the draft "+name+".")
		b.last = nil
		return
	}
	plan, faults := press.Decode(p.file.data)
	if len(faults) > 0 {
		refuse(name+" was not opened; nothing has changed.", faults)
		return
	}
	b.replace(view.Take(plan.Draft().Entries, nil), "Opened the plan "+name+".")
	b.last = plan
}

// isDraft tells whether a file says of itself that it is a draft.
func isDraft(data []byte) bool {
	head := data[:min(len(data), 400)]
	return bytes.Contains(head, []byte("ramplan.draft/")) && !bytes.Contains(head, []byte(press.Format))
}

// cleanName is the name of a file as it may be shown and used.
func cleanName(name string) string {
	name = strings.ToValidUTF8(name, "")
	if i := strings.LastIndexAny(name, `/\`); i >= 0 {
		name = name[i+1:]
	}
	if runes := []rune(name); len(runes) > 80 {
		name = string(runes[:80]) + "…"
	}
	if name == "" {
		return "the file"
	}
	return name
}

// saveFile answers POST /save: a plan where the entries make one, else a draft,
// so that anything typed can be saved.
func saveFile(w http.ResponseWriter, r *http.Request) error {
	p, err := readForm(r)
	if err != nil {
		return err
	}
	body, kind := p.typed.All().Encode(), "draft"
	if plan, _ := p.typed.Draft.Check(); plan != nil {
		body, kind = plan.JSON(), "plan"
	}
	name, _ := p.typed.Draft.Get("title.number")
	if name == "" {
		name, _ = p.typed.Draft.Get("title.name")
	}
	h := w.Header()
	h.Set("Content-Type", "application/json")
	h.Set("Content-Disposition", `attachment; filename="`+fileStem(name)+"."+kind+`.json"`)
	h.Set("Cache-Control", "no-store")
	_, _ = w.Write(body)
	return nil
}

// fileStem makes a file name of a title: letters, digits and hyphens.
func fileStem(title string) string {
	var b strings.Builder
	for _, c := range title {
		switch {
		case c >= '0' && c <= '9', c >= 'a' && c <= 'z', c >= 'A' && c <= 'Z':
			b.WriteRune(c)
		case b.Len() > 0 && !strings.HasSuffix(b.String(), "-"):
			b.WriteByte('-')
		}
		if b.Len() == 40 {
			break
		}
	}
	if s := strings.Trim(b.String(), "-"); s != "" {
		return s
	}
	return "ramplan"
}
