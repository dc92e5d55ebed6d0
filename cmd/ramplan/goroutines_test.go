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

// A goroutine that panics ends the program, whoever else uses it: each of our own
// catches that in itself.
func TestGoroutinesCatchTheirPanics(t *testing.T) {
	found := 0
	require.NoError(t, filepath.WalkDir("../..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		files := token.NewFileSet()
		file, err := parser.ParseFile(files, path, nil, 0)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool {
			var began ast.Expr
			switch n := n.(type) {
			case *ast.GoStmt:
				began = n.Call.Fun
			case *ast.CallExpr:
				if of, ok := n.Fun.(*ast.SelectorExpr); ok && of.Sel.Name == "AfterFunc" && len(n.Args) == 2 {
					began = n.Args[1]
				}
			}
			if began != nil {
				found++
				assert.True(t, catches(began), "%s: a goroutine without recover", files.Position(n.Pos()))
			}
			return true
		})
		return nil
	}))
	assert.GreaterOrEqual(t, found, 4)
}

func catches(began ast.Expr) bool {
	does := false
	ast.Inspect(began, func(n ast.Node) bool {
		if call, ok := n.(*ast.CallExpr); ok {
			if name, ok := call.Fun.(*ast.Ident); ok && (name.Name == "recover" || name.Name == "safely") {
				does = true
			}
		}
		return true
	})
	return does
}
