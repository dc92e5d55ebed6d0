package presstest_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/presstest"
)

// sections are what the doc of an exported formula holds, in this order.
var sections = []string{"Arguments:", "Result:", "Range:", "Special cases:", "Source:"}

// unit is what must follow the name of an argument that is a quantity.
const unit = `, (–|%|mm|mm/s|mm/s²|N|N/mm|µm|MPa|kg|s|K)[,;. ]`

// TestFormulaDocs holds that every exported formula says what it takes and
// gives, in which units, in which range and from which source.
func TestFormulaDocs(t *testing.T) {
	root := filepath.Dir(presstest.Folder(t))
	for folder, least := range map[string]int{"press/fit": 20, "press/motion": 14, "press/probe": 11, "press/study": 25} {
		formulas := 0
		files, err := filepath.Glob(filepath.Join(root, folder, "*.go"))
		require.NoError(t, err)
		for _, file := range files {
			if strings.HasSuffix(file, "_test.go") {
				continue
			}
			f, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.ParseComments)
			require.NoError(t, err)
			for _, d := range f.Decls {
				if fn, ok := d.(*ast.FuncDecl); ok && fn.Name.IsExported() {
					formulas++
					checkDoc(t, folder+" "+fn.Name.Name, fn)
				}
			}
		}
		assert.GreaterOrEqual(t, formulas, least, "formulas found in %s", folder)
	}
}

// checkDoc holds the doc of one formula. A formula without parameters takes its
// arguments from the fields of its receiver, which carry their own units.
func checkDoc(t *testing.T, what string, fn *ast.FuncDecl) {
	doc := fn.Doc.Text()
	assert.True(t, strings.HasPrefix(doc, fn.Name.Name+" "), "%s: the doc begins with the name", what)
	last := -1
	text := make(map[string]string)
	for i, s := range sections {
		at := strings.Index(doc, "\n"+s)
		if !assert.Greater(t, at, last, "%s: %q is missing or out of order", what, s) {
			return
		}
		end := len(doc)
		if i+1 < len(sections) {
			if next := strings.Index(doc, "\n"+sections[i+1]); next > 0 {
				end = next
			}
		}
		text[s] = strings.Join(strings.Fields(doc[at:end]), " ")
		last = at
	}
	for _, field := range fn.Type.Params.List {
		kind, _ := field.Type.(*ast.Ident)
		for _, name := range field.Names {
			pattern := `\b` + name.Name + `\b`
			if kind != nil && kind.Name != "string" {
				pattern += unit
			}
			assert.Regexp(t, regexp.MustCompile(pattern), text["Arguments:"], "%s: argument %s", what, name.Name)
		}
	}
	assert.Regexp(t, `[ ,](–|%|mm|mm/s|N|µm|MPa|s)([,;. ]|$)`, text["Result:"], "%s: unit of the result", what)
}
