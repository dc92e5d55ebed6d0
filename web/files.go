package web

import (
	"bytes"
	"encoding/json"
	"net/http"
	"strings"

	"ramplan/press"
	"ramplan/press/carry"
)

// mostShown is how many faults of a refused file are listed.
const mostShown = 50

// readFile makes a draft of a plan or draft file, or of a sheet that carries one. What is neither is refused
// with everything that is wrong with it.
func readFile(f *postedFile) (*press.Draft, error) {
	if f == nil {
		return nil, refusal{http.StatusUnprocessableEntity, say.ChooseAFile(), nil}
	}
	d, faults := decodeFile(f.data)
	if len(faults) > 0 {
		said := say.NotOpened(cleanName(f.name))
		if carry.Foreign(f.data) {
			said = say.NotOpenedNoPlan(cleanName(f.name))
			faults = faults[:1] // what else a plan would need is of no use
		}
		return nil, refusal{http.StatusUnprocessableEntity, said, lines(faults)}
	}
	return d, nil
}

func decodeFile(data []byte) (*press.Draft, press.Problems) {
	if carry.Is(data) {
		inside, err := carry.Extract(data)
		if err != nil {
			return nil, press.Problems{{Code: press.CodeSyntax, Message: strings.TrimPrefix(err.Error(), "carry: ")}}
		}
		data = inside.Plan
	}
	if isDraft(data) {
		return press.DecodeDraft(data)
	}
	plan, faults := press.Decode(data)
	if len(faults) > 0 {
		return nil, faults
	}
	return plan.Draft(), nil
}

// lines are the faults of a file, one a line, as many as a page may show.
func lines(faults press.Problems) []string {
	var out []string
	for i, f := range faults {
		if i == mostShown {
			return append(out, say.AndMore())
		}
		out = append(out, f.String())
	}
	return out
}

// isDraft tells whether a file says of itself that it is a draft.
func isDraft(data []byte) bool {
	var doc struct {
		Format string `json:"format"`
	}
	if json.Unmarshal(data, &doc) == nil {
		return strings.HasPrefix(doc.Format, "ramplan.draft/")
	}
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
		return say.ThatFile()
	}
	return name
}

// saveFile answers POST /plans/{id}/file: a plan where the entries make one, else a draft,
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
