package proving

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"github.com/go-json-experiment/json"
)

// Study reads what was typed: the study of the rows that can be read, and what of the others
// cannot. Without a fault the study is whole.
func (t *Typed) Study() (*Study, TypedFaults) {
	var faults TypedFaults
	doc := map[string]any{"format": Format, "kind": t.Kind}
	for _, h := range t.Heads {
		read(doc, &faults, 0, bare(h.Name), h.Text)
	}
	var rows []map[string]any
	for i, cells := range t.Rows {
		if t.Blank(i) {
			continue
		}
		row, before := map[string]any{}, len(faults)
		for j, text := range cells {
			if j < len(t.Columns) {
				read(row, &faults, i+1, bare(t.Columns[j]), text)
			}
		}
		if len(faults) == before {
			rows = append(rows, row)
		}
	}
	if len(rows) > 0 {
		doc["rows"] = rows
	}
	body, err := json.Marshal(doc)
	if err != nil {
		panic("proving: " + err.Error())
	}
	s := &Study{}
	if err := json.Unmarshal(body, s); err != nil {
		panic("proving: " + err.Error())
	}
	return s, faults
}

// read puts the text of a field into a document.
func read(doc map[string]any, faults *TypedFaults, row int, name, text string) {
	text = strings.TrimSpace(text)
	switch {
	case text == "":
	case slices.Contains([]string{"arrival", "zone"}, name):
		on := slices.Contains([]string{"on", "1", "true", "yes"}, strings.ToLower(text))
		if !on && !slices.Contains([]string{"off", "0", "false", "no"}, strings.ToLower(text)) {
			*faults = append(*faults, TypedFault{row, name, "found " + strconv.Quote(text) + "; on or off is needed"})
			return
		}
		doc[name] = on
	case slices.Contains([]string{"taken_at", "taken_by", "ram", "notes", "plan_digest", "cell", "calibrated_at", "event", "sample", "condition", "remark"}, name):
		doc[name] = text
	default:
		v, err := strconv.ParseFloat(strings.Replace(strings.Replace(text, ",", ".", 1), "\u2212", "-", 1), 64)
		if err != nil || math.IsNaN(v) || math.IsInf(v, 0) {
			*faults = append(*faults, TypedFault{row, name, "found " + strconv.Quote(text) + "; a number is needed"})
			return
		}
		doc[name] = v
	}
}
