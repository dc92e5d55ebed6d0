package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// shortForms is how many functions press/words/metric.go has. It may only fall.
const shortForms = 42

// selected adds to what stands there the names of a package that a file asks for; path is
// the package's.
func selected(f *ast.File, path string, into map[string]bool) {
	name := ""
	for _, imp := range f.Imports {
		if strings.Trim(imp.Path.Value, `"`) == path {
			name = path[strings.LastIndex(path, "/")+1:]
			if imp.Name != nil {
				name = imp.Name.Name
			}
		}
	}
	ast.Inspect(f, func(node ast.Node) bool {
		if sel, ok := node.(*ast.SelectorExpr); ok {
			if of, ok := sel.X.(*ast.Ident); ok && name != "" && of.Name == name {
				into[sel.Sel.Name] = true
			}
		}
		return true
	})
}

// calledInside adds the names of functions of its own package that a file calls or hands on.
func calledInside(f *ast.File, into map[string]bool) {
	ast.Inspect(f, func(node ast.Node) bool {
		if call, ok := node.(*ast.CallExpr); ok {
			for _, x := range append([]ast.Expr{call.Fun}, call.Args...) {
				if name, ok := x.(*ast.Ident); ok {
					into[name.Name] = true
				}
			}
		}
		return true
	})
}

// TestShortForms holds that no short form of what a printer writes is added, that no room
// asks for one, and that none stays when no test asks for it any more.
func TestShortForms(t *testing.T) {
	root, own := filepath.Join("..", ".."), filepath.Join("..", "..", "press", "words")
	f, err := parser.ParseFile(token.NewFileSet(), filepath.Join(own, "metric.go"), nil, 0)
	require.NoError(t, err)
	forms := map[string]bool{}
	for _, decl := range f.Decls {
		if fn, ok := decl.(*ast.FuncDecl); ok {
			assert.Nil(t, fn.Recv, "%s is a method, and no short form", fn.Name.Name)
			forms[fn.Name.Name] = true
		}
	}
	assert.Len(t, forms, shortForms, "who says something new asks a words.Printer for it; where there are fewer, write that down here")

	rooms, all := map[string]bool{}, map[string]bool{}
	require.NoError(t, filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || path == filepath.Join(own, "metric.go") {
			return err
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		if err != nil {
			return err
		}
		selected(f, "ramplan/press/words", all)
		if filepath.Dir(path) == own {
			calledInside(f, all)
		}
		if !strings.HasSuffix(path, "_test.go") {
			selected(f, "ramplan/press/words", rooms)
		}
		return nil
	}))
	for form := range forms {
		assert.True(t, all[form], "nobody asks for words.%s any more: take it away", form)
		assert.False(t, rooms[form], "words.%s: a room asks a words.Printer, whose reader it knows", form)
	}
}

// Only what is asked of that package counts, under whatever name it is imported. By hand.
func TestSelected(t *testing.T) {
	for text, want := range map[string]map[string]bool{
		`import "ramplan/press/words"; var _ = words.Day`:     {"Day": true},
		`import w "ramplan/press/words"; var _ = w.Day`:       {"Day": true},
		`import "other/words"; var _ = words.Day`:             {},
		`import "ramplan/press/words"; var _ = say.Day`:       {},
		`import "ramplan/press/words"; var _ = words.X.Day()`: {"X": true},
	} {
		f, err := parser.ParseFile(token.NewFileSet(), "x.go", "package x; "+text, 0)
		require.NoError(t, err)
		found := map[string]bool{}
		selected(f, "ramplan/press/words", found)
		assert.Equal(t, want, found, text)
	}
	f, err := parser.ParseFile(token.NewFileSet(), "x.go", "package x; var _ = Day(Hour, say.Week()); func Month() {}", 0)
	require.NoError(t, err)
	found := map[string]bool{}
	calledInside(f, found)
	assert.Equal(t, map[string]bool{"Day": true, "Hour": true}, found)
}
