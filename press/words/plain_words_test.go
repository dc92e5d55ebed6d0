package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestPlainWords: sentences that a technician did not understand, and claims that the
// plan does not keep, stand in no text: glossary, rows, findings, pages, what is unseen.
func TestPlainWords(t *testing.T) {
	for name, c := range map[string]changes{"example": nil, "touch": with(touch, changes{"parts[2].contact": "0"}), "other check": otherCheck, "no stop": {"joint.stop": "none"}} {
		p := example(t, c)
		r := press.Evaluate(p)
		Explain(r)
		all := append(append([]string{Headline(p, r), ReadingRule(p, r), say.CatalogueLead(r)}, Unseen(p, r)...), Cautions...)
		for _, f := range r.Findings {
			all = append(all, f.Message)
		}
		for _, term := range Glossary {
			all = append(all, term.Meaning)
		}
		for _, row := range r.Faults {
			all = append(all, Fault(row).Meaning, Detected(p, r, row))
		}
		for _, paper := range PaperNames() {
			table := paperOf(t, paper, p)
			all = append(append(all, flat(table)...), table.Notes...)
		}
		text := strings.Join(all, "\n")
		for _, bad := range []string{
			"No interference is left", "1.2 times", "at its mean, as most parts are", "the encoder tells", "probability of 0.00", "ad parts", "up to " + Force(r.Impact.Early),
			"% can tell.", "would, because only a loose part", "push would find it",
		} {
			assert.NotContains(t, text, bad, name)
		}
	}
}

// TestProbeOnlyWherePossible: a first push is spoken of only where the plan allows one,
// with an end of its own and what it does not show.
func TestProbeOnlyWherePossible(t *testing.T) {
	for _, c := range []changes{nil, {"joint.drag": "1000"}} {
		p := example(t, c)
		r := press.Evaluate(p)
		Explain(r)
		text := strings.Join(Unseen(p, r), "\n")
		for _, f := range r.Findings {
			if f.Code == press.LooseFitUnseen {
				text += f.Message
			}
		}
		assert.Equal(t, r.Probe.Possible, strings.Contains(text, "irst push"), c)
		if r.Probe.Possible {
			for _, want := range []string{"end of its own", "without arrival", "does not show a grip from dirt", "Prove it"} {
				assert.Contains(t, text, want)
			}
		}
	}
}
