package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestEveryFaultRowHasItsName walks the keys of catalogue.go.
func TestEveryFaultRowHasItsName(t *testing.T) {
	keys := constants(t, "cases.go", "Row")
	assert.Len(t, rowTexts, len(keys))
	for name, key := range keys {
		term := Fault(press.FaultRow{Name: key})
		require.NotEqual(t, key, term.Word, name)
		wellFormed(t, term.Meaning)
	}
}

// TestOwnFault: a row of the user's own keeps its name, even a key of ours.
func TestOwnFault(t *testing.T) {
	assert.Equal(t, "missing", Fault(press.FaultRow{Name: "missing", Own: true}).Word)
}

// TestPairs reads the table of plans whose push end lies in, past and before the
// zone, as the table of the model's section 8 has it.
func TestPairs(t *testing.T) {
	for _, c := range []struct {
		name  string
		plan  changes
		words [4]string
		clear [4]bool
	}{
		{"push end in the zone", nil, [4]string{"good", "too tall", "too short or no insert", "fault"}, [4]bool{true, true, true, true}},
		{"push end past the zone", changes{"window.zone_end": "115.20", "window.push_stroke": "8.2"}, [4]string{"good", "too tall or too short", "fault", "too short or no insert"}, [4]bool{true, false, true, true}},
		{"push end before the zone", changes{"window.push_stroke": "7.5"}, [4]string{"fault", "too tall", "fault", "too tall or good or too short or no insert"}, [4]bool{true, true, true, false}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := example(t, c.plan)
			r := press.Evaluate(p)
			pairs := PairTexts(p, r)
			require.Len(t, pairs, 4)
			all := true
			for i, p := range pairs {
				assert.Equal(t, c.words[i], p.Verdict, p.Pair.String())
				assert.Equal(t, c.clear[i], p.Clear, p.Pair.String())
				all = all && p.Clear
				wellFormed(t, p.Meaning)
				wellFormed(t, p.Do)
			}
			assert.Equal(t, r.Verdict.Ambiguous, !all)
		})
	}
	assert.Nil(t, PairTexts(nil, &press.Result{}))
	assert.Equal(t, "arrival on, zone off", Pair{Arrival: true}.String())
}

// TestTexts: every text is a sentence, no word stands twice.
func TestTexts(t *testing.T) {
	for _, list := range [][]Term{Glossary, Signals, Verdicts()} {
		seen := map[string]bool{}
		for _, term := range list {
			assert.False(t, seen[term.Word], term.Word)
			seen[term.Word] = true
			wellFormed(t, term.Meaning)
		}
	}
	p := decoded(t)
	for _, s := range append(append([]string{ReadingRule(p, press.Evaluate(p)), say.WatchNote(press.Evaluate(p))}, Cautions...), TradeCautions...) {
		wellFormed(t, s)
	}
}

// TestGlossaryHasTheWordsOfTheModel: the words of the model's section 0.
func TestGlossaryHasTheWordsOfTheModel(t *testing.T) {
	all := map[string]bool{}
	for _, term := range Glossary {
		all[term.Word] = true
	}
	for _, word := range strings.Split("ram,setting,curve,nest,approach,slow-contact travel,press-in travel,push stroke,overtravel,reading,arrival signal,zone,datum,overlap,good,long,short,missing", ",") {
		assert.True(t, all[word], word)
	}
}

// TestFirstTerms: what a learner reads first stands in the glossary, each word once.
func TestFirstTerms(t *testing.T) {
	first := FirstTerms()
	require.Len(t, first, 9)
	for _, term := range first {
		assert.Contains(t, Glossary, term)
	}
}

// TestUnseen: what is never detected depends on the joint and the window.
func TestUnseen(t *testing.T) {
	has := func(p *press.Plan, start string) bool {
		for _, s := range Unseen(p, press.Evaluate(p)) {
			wellFormed(t, s)
			if strings.HasPrefix(s, start) {
				return true
			}
		}
		return false
	}
	assert.True(t, has(example(t, nil), "A loose fit"))
	assert.True(t, has(example(t, nil), "A nest worn by 0.05"))
	assert.False(t, has(example(t, nil), "A missing insert"))
	assert.False(t, has(example(t, with(touch, changes{"parts[2].contact": "0"})), "A loose fit"))
	assert.True(t, has(example(t, changes{"parts[1].insert": "false", "parts[2].insert": "true"}), "A missing insert"))
}
