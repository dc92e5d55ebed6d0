package main

import (
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const plot = "gonum.org/v1/plot"

// importRule says what a package may import of the project, and what it must
// never import at all. It is policy: data flows one way, and who computes cannot
// talk to the network. Changing a line is a design decision, to be argued in the
// commit that does it.
var importRule = map[string]struct{ may, never []string }{
	"curves":           {nil, []string{"net/http", "os", plot}},
	"press/stack":      {nil, []string{"net/http", "os", plot}},
	"press/fit":        {nil, []string{"net/http", "os", plot}},
	"press/motion":     {nil, []string{"net/http", "os", plot}},
	"press/probe":      {[]string{"press/stack"}, []string{"net/http", "os", plot}},
	"press/sequence":   {[]string{"press/motion"}, []string{"net/http", "os", plot}},
	"press/verdict":    {nil, []string{"net/http", "os", plot}},
	"press/risk":       {[]string{"curves", "press/stack", "press/fit", "press/verdict"}, []string{"net/http", "os", plot}},
	"press/model":      {[]string{"curves", "press/stack", "press/fit", "press/motion", "press/sequence", "press/probe", "press/verdict", "press/risk"}, []string{"net/http", "os", "reflect", "crypto", "encoding", "github.com/go-json-experiment/json", plot}},
	"press/simulate":   {[]string{"press/stack", "press/fit", "press/risk", "press/verdict", "press/model"}, []string{"net/http", "os", "encoding", "github.com/go-json-experiment/json", plot}},
	"press/strict":     {nil, []string{"net/http", "os", plot}},
	"press":            {[]string{"curves", "press/fit", "press/model", "press/simulate", "press/strict", "press/study"}, []string{"net/http", plot}},
	"press/words":      {[]string{"press"}, []string{"net/http", plot}},
	"press/study":      {nil, []string{"net/http", "os", "encoding", "github.com/go-json-experiment/json", plot}},
	"press/proving":    {[]string{"press", "press/strict", "press/study", "press/model", "press/risk", "press/stack"}, []string{"net/http", "os", "database/sql", plot}},
	"press/carry":      {[]string{"press"}, []string{"net/http", "os", plot}},
	"press/training":   {[]string{"press"}, []string{"net/http", "os", "database/sql", plot}},
	"press/drafts":     {[]string{"press"}, []string{"net/http", "os", "database/sql", plot}},
	"press/issue":      {[]string{"press", "press/carry", "press/drafts"}, []string{"net/http", "os", "database/sql", plot}},
	"press/archive":    {[]string{"press", "press/proving", "press/words/kept", "press/carry", "press/drafts", "press/issue", "press/training"}, []string{"net/http", plot}},
	"press/drill":      {[]string{"press", "press/words", "press/words/lesson", "press/training"}, []string{"net/http", "os", plot}},
	"press/presstest":  {nil, nil},
	"web/page":         {nil, []string{"math", "strconv", "net/http", plot}},
	"web/view":         {[]string{"press", "press/proving", "press/words/proof", "press/draw/proof", "press/drafts", "press/issue", "press/words", "press/words/lesson", "press/words/screen", "press/draw", "press/draw/canvas", "press/draw/paper", "press/drill", "press/training", "web/page"}, []string{"net/http", "github.com/go-chi/chi/v5", plot}},
	"web":              {[]string{"curves", "press", "press/proving", "press/words/proof", "press/draw/proof", "web/view/proving", "press/words", "press/words/screen", "press/draw", "press/draw/canvas", "press/draw/paper", "press/carry", "press/archive", "press/drafts", "press/issue", "press/training", "press/drill", "web/view", "web/page", "static"}, []string{plot}},
	"web/view/proving": {[]string{"press", "press/proving", "press/words", "press/words/proof", "press/words/screen", "press/draw", "press/draw/canvas", "press/draw/proof", "web/view", "web/page"}, []string{"net/http", "github.com/go-chi/chi/v5", plot}},
	"static":           {nil, nil},
	"cmd/ramplan":      {[]string{"web", "press", "press/proving", "press/words/proof", "press/draw/proof", "press/simulate", "press/words", "press/words/shell", "press/draw", "press/draw/canvas", "press/draw/paper", "press/carry", "press/archive", "press/drafts", "static"}, []string{"github.com/go-chi/chi/v5", "github.com/a-h/templ", plot}},

	// The rooms of the drawings: each stands on those above it. Who draws knows what is
	// drawn; who writes letters and files does not.
	"press/draw/canvas":          {nil, []string{"net/http"}},
	"press/draw/typeset":         {[]string{"press/draw/canvas"}, []string{"net/http", "os", plot}},
	"press/draw":                 {[]string{"press", "press/words", "press/words/label", "press/draw/canvas", "press/draw/typeset"}, []string{"net/http", "os", plot}},
	"press/draw/paper":           {[]string{"press", "press/proving", "press/words/proof", "press/draw/proof", "press/words", "press/words/label", "press/carry", "press/training", "press/draw/canvas", "press/draw/typeset", "press/draw"}, []string{"net/http", "os", plot}},
	"press/draw/proof":           {[]string{"press", "press/proving", "press/words", "press/words/label", "press/words/proof", "press/draw/canvas", "press/draw/typeset", "press/draw"}, []string{"net/http", "os", plot}},
	"press/draw/drawtest":        {[]string{"press", "press/presstest"}, nil},
	"press/draw/drawtest/pushed": {[]string{"press", "press/proving"}, nil},
	"press/draw/drawtest/grey":   {[]string{"press/draw/canvas", "press/draw/drawtest"}, nil},

	// The words of one room each, which stand on the printer of press/words.
	"press/words/proof":  {[]string{"press", "press/words", "press/proving"}, []string{"net/http", "os", plot}},
	"press/words/shell":  {[]string{"press", "press/words"}, []string{"net/http", "os", plot}},
	"press/words/kept":   {[]string{"press", "press/words"}, []string{"net/http", "os", plot}},
	"press/words/label":  {[]string{"press", "press/words"}, []string{"net/http", "os", plot}},
	"press/words/screen": {[]string{"press", "press/words"}, []string{"net/http", "os", plot}},
	"press/words/lesson": {[]string{"press", "press/words"}, []string{"net/http", "os", plot}},
}

func TestImportRule(t *testing.T) {
	out, err := exec.Command("go", "list", "-f", `{{.ImportPath}}{{range .Imports}} {{.}}{{end}}`, "ramplan/...").Output()
	require.NoError(t, err)
	lines := strings.Split(strings.TrimSpace(string(out)), "\n")
	require.NotEmpty(t, lines)
	for _, line := range lines {
		words := strings.Fields(line)
		name := strings.TrimPrefix(words[0], "ramplan/")
		rule, known := importRule[name]
		if !known {
			t.Errorf("%s has no line in the import rule: say what it may import", name)
			continue
		}
		for _, imported := range words[1:] {
			if own, ok := strings.CutPrefix(imported, "ramplan/"); ok && !listed(rule.may, own) {
				t.Errorf("%s imports %s, which stands above or beside it; it may import %v of the project", name, own, rule.may)
			}
			for _, n := range rule.never {
				if imported == n || strings.HasPrefix(imported, n+"/") {
					t.Errorf("%s imports %s, which it must never do", name, imported)
				}
			}
		}
	}
}

func listed(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}
