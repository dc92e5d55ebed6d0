package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// sentencesOutside is how many literals that look like sentences stand in each package
// outside press/words and what is below it. It may only fall: what hangs on a figure, a
// code or a choice is said in words. What is left is of three kinds: text of the document
// itself (labels and help of the field table, faults of an entry), errors of packages that
// stand below words, and what no person reads (headers, patterns, formats).
var sentencesOutside = map[string]int{
	"cmd/ramplan":              16,
	"curves":                   28,
	"press":                    312,
	"press/archive":            78,
	"press/carry":              11,
	"press/drafts":             7,
	"press/draw":               1,
	"press/draw/canvas":        20,
	"press/draw/drawtest":      10,
	"press/draw/drawtest/grey": 1,
	"press/draw/paper":         5,
	"press/drill":              5,
	"press/fit":                8,
	"press/issue":              18,
	"press/model":              6,
	"press/presstest":          14,
	"press/proving":            106,
	"press/simulate":           2,
	"press/strict":             11,
	"press/study":              1,
	"press/training":           1,
	"web":                      71,
	"web/page":                 4,
	"web/view":                 2,
}

// statement is what looks like a sentence and is a question to the database.
var statement = regexp.MustCompile(`(?is)^\s*(select|insert (or|into)|update \w+ set|delete from|create (table|index|virtual|trigger)|alter table|drop table|with recursive|vacuum into|pragma |order by )` +
	`|^\s*(from \w+ (where|order by)|n, at, did|letter, at, |id, version, |n, window)|, drill, seal`)

// literalSentences counts the string literals of a file that have three words or more.
func literalSentences(f *ast.File) int {
	n := 0
	ast.Inspect(f, func(node ast.Node) bool {
		switch x := node.(type) {
		case *ast.ImportSpec:
			return false
		case *ast.Field: // its tag is no text
			return x.Tag == nil
		case *ast.BasicLit:
			if x.Kind != token.STRING {
				return true
			}
			text, err := strconv.Unquote(x.Value)
			if err == nil && len(strings.Fields(text)) >= 3 && strings.Contains(text, " ") && !statement.MatchString(text) {
				n++
			}
		}
		return true
	})
	return n
}

// TestSentencesStandInWords holds that no room puts more sentences together than it did.
func TestSentencesStandInWords(t *testing.T) {
	found := map[string]int{}
	root := filepath.Join("..", "..")
	require.NoError(t, filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		name := d.Name()
		if err != nil || d.IsDir() || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") || strings.HasSuffix(name, "_templ.go") {
			return err
		}
		place, err := filepath.Rel(root, filepath.Dir(path))
		if place = filepath.ToSlash(place); err != nil || place == "press/words" || strings.HasPrefix(place, "press/words/") {
			return err
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		if n := literalSentences(f); err == nil && n > 0 {
			found[place] += n
		}
		return err
	}))
	for place, n := range found {
		switch allowed := sentencesOutside[place]; {
		case n > allowed:
			t.Errorf("%s has %d literals that look like sentences, and may have %d: what hangs on a figure, a code or a choice is said in press/words, with typed figures", place, n, allowed)
		case n < allowed:
			t.Errorf("%s has only %d literals that look like sentences: write that down in place of %d, so that it stays so", place, n, allowed)
		}
	}
	for place := range sentencesOutside {
		assert.Contains(t, found, place, "it has none any more: take its line away")
	}
}

// A literal is counted by its words, and what no person reads is not. By hand.
func TestWhatIsASentence(t *testing.T) {
	for text, n := range map[string]int{
		`"Not saved yet"`:          1,
		`"two words"`:              0,
		`"select body from state"`: 0,
		`"a" + "more than that"`:   1,
		"`three words here`":       1,
		`"one\ntwo\nthree"`:        0,
	} {
		f, err := parser.ParseFile(token.NewFileSet(), "x.go", "package x\n\nimport \"a b c\"\n\ntype y struct {\n\tz int `json:\"z\" help:\"not a sentence\"`\n}\n\nvar s = "+text, 0)
		require.NoError(t, err)
		assert.Equal(t, n, literalSentences(f), text)
	}
}
