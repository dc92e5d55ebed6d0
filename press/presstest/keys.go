package presstest

import (
	"encoding/json"
	"regexp"
	"strconv"
	"strings"
)

// A Document is a result as it is written, in which figures are found by keys such as
// force.settings[0].
type Document struct {
	all   map[string]any
	write func(x float64, how string) string
}

// NewDocument reads a result. What is shown and is no part of it stands under "shown";
// write writes a figure in one of the ways that texts with keys name.
func NewDocument(result []byte, shown map[string]any, write func(x float64, how string) string) (*Document, error) {
	d := &Document{write: write}
	if err := json.Unmarshal(result, &d.all); err != nil {
		return nil, err
	}
	d.all["shown"] = shown
	return d, nil
}

var keyStep = regexp.MustCompile(`[^.\[\]]+`)

// Find gives what stands at a key; nil where nothing does.
func (d *Document) Find(key string) any {
	var here any = d.all
	for _, step := range keyStep.FindAllString(key, -1) {
		switch x := here.(type) {
		case map[string]any:
			here = x[step]
		case []any:
			i, err := strconv.Atoi(step)
			if err != nil || i >= len(x) {
				return nil
			}
			here = x[i]
		default:
			return nil
		}
	}
	return here
}

// At gives the figure of a key; false where there is none.
func (d *Document) At(key string) (float64, bool) {
	x, ok := d.Find(key).(float64)
	return x, ok
}

var inBraces = regexp.MustCompile(`\{([^|}]+)\|([^}]+)\}`)

// Fill puts figures into a text, {key|how} by {key|how}; false where one of them does not
// exist.
func (d *Document) Fill(text string) (string, bool) {
	known := true
	out := inBraces.ReplaceAllStringFunc(text, func(one string) string {
		m := inBraces.FindStringSubmatch(one)
		x, ok := d.At(m[1])
		known = known && ok
		return d.write(x, m[2])
	})
	return out, known
}

// Fits tells whether a text is what was wanted, where three dots stand for any text.
func Fits(want, got string) bool {
	parts := strings.Split(want, "…")
	if len(parts) == 1 {
		return want == got
	}
	if !strings.HasPrefix(got, parts[0]) {
		return false
	}
	got = got[len(parts[0]):]
	last := parts[len(parts)-1]
	for _, part := range parts[1 : len(parts)-1] {
		_, after, found := strings.Cut(got, part)
		if !found {
			return false
		}
		got = after
	}
	return strings.HasSuffix(got, last)
}
