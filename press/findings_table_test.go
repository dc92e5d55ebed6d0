package press

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var anyRow = regexp.MustCompile(`\[\d+\]`)

// obeys tells whether a finding is what the table says of its code.
func obeys(t assert.TestingT, f Finding) {
	rule, known := RuleOf(f.Code)
	if !assert.True(t, known, "%s has no rule", f.Code) {
		return
	}
	assert.True(t, f.Severity == rule.Severity || rule.Milder != "" && f.Severity == rule.Milder, "%s is said as a %s", f.Code, f.Severity)
	assert.Contains(t, rule.Paths, anyRow.ReplaceAllString(f.Path, "[]"), "%s leads to a field that its rule does not name", f.Code)
}

// Every code has one rule, in the order of the constants, and every field that it
// leads to is one.
func TestEveryCodeHasItsRule(t *testing.T) {
	parsed, err := parser.ParseFile(token.NewFileSet(), "model/findings.go", nil, 0)
	require.NoError(t, err)
	var codes, ruled []string
	ast.Inspect(parsed, func(n ast.Node) bool {
		if lit, ok := n.(*ast.BasicLit); ok && lit.Kind == token.STRING {
			code, err := strconv.Unquote(lit.Value)
			require.NoError(t, err)
			codes = append(codes, code)
		}
		return true
	})
	gravities := map[int]string{}
	for _, r := range Rules {
		ruled = append(ruled, r.Code)
		assert.NotEmpty(t, r.Paths, r.Code)
		for _, path := range r.Paths {
			at := strings.ReplaceAll(path, "[]", "[0]")
			assert.NotNil(t, schemaAt(at), "%s leads to %s, which is no field", r.Code, path)
		}
		if r.Severity != Blocker {
			assert.Zero(t, r.Gravity, r.Code)
			assert.False(t, r.Never, "%s is no blocker", r.Code)
			continue
		}
		assert.Empty(t, gravities[r.Gravity], "%s and another have one place in a headline", r.Code)
		gravities[r.Gravity] = r.Code
	}
	assert.Equal(t, codes, ruled)
	for i := range len(gravities) {
		assert.NotEmpty(t, gravities[i+1], "no blocker has place %d", i+1)
	}
}

// What is refused for good, by hand: what breaks, jams, or passes as good whatever
// anybody signs; every other blocker may be issued with a reason and a second name.
func TestRefusedForGood(t *testing.T) {
	var never, signed []string
	for _, r := range Rules {
		switch {
		case r.Severity != Blocker:
		case r.Never:
			never = append(never, r.Code)
		default:
			signed = append(signed, r.Code)
		}
	}
	assert.Equal(t, []string{
		"beyond-stroke", "early-contact", "speed-over-ram", "nothing-stops-it", "missing-looks-good", "fault-looks-good", "over-yield",
		"probe-cannot-tell", "part-met-in-move",
	}, never)
	assert.Equal(t, []string{
		"no-setting", "setting-not-feasible", "no-acceptance", "never-good", "nominal-rejected", "holding-short",
		"travel-negative", "touch-with-travel", "engagement-too-long", "probe-no-fit", "probe-not-possible", "probe-refuses-nominal", "hand-over-impossible", "overlap-wider-than-drawing",
	}, signed)
	for _, code := range never {
		assert.True(t, Finding{Code: code, Severity: Blocker}.Never(), code)
	}
	assert.False(t, Finding{Code: OverYield, Severity: Note}.Never())
}

// Every word of the model that starts with a capital and stands for a text is named
// by press, under the same name.
func TestModelsWordsAreNamed(t *testing.T) {
	words := func(file string) (out []string) {
		parsed, err := parser.ParseFile(token.NewFileSet(), file, nil, 0)
		require.NoError(t, err)
		ast.Inspect(parsed, func(n ast.Node) bool {
			if spec, ok := n.(*ast.ValueSpec); ok && spec.Names[0].IsExported() {
				out = append(out, spec.Names[0].Name)
			}
			return true
		})
		return out
	}
	named := words("aliases.go")
	for _, file := range []string{"input.go", "findings.go", "cases.go", "outcome.go", "course.go"} {
		for _, name := range words("model/" + file) {
			assert.True(t, name == "Perfect" || slices.Contains(named, name), "%s of model/%s has no name here", name, file)
		}
	}
}

// The findings of every kept plan and of random ones are what the table says.
func TestFindingsObeyTheirRules(t *testing.T) {
	seen := map[string]bool{}
	for _, pattern := range []string{"../static/examples/*.json", "../testdata/plans/*/*.json"} {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		require.NotEmpty(t, files, pattern)
		for _, file := range files {
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			plan, faults := Decode(data)
			if len(faults) > 0 {
				continue // a broken one, or a result
			}
			for _, f := range Evaluate(plan).Findings {
				obeys(t, f)
				seen[f.Code] = true
			}
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		for _, q := range []*Plan{p, randomRun(t, p)} {
			for _, f := range Evaluate(q).Findings {
				obeys(t, f)
				seen[f.Code] = true
			}
		}
	})
	var never []string
	for _, r := range Rules {
		if !seen[r.Code] {
			never = append(never, r.Code)
		}
	}
	slices.Sort(never)
	assert.Less(t, len(never), len(Rules)/4, "these were met nowhere: %v", never)
	t.Logf("%d of %d codes were met; not %v", len(seen), len(Rules), never)
}
