package drill

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
)

// One answer that would pass on a refused part fails an exam of which everything
// else is right; a harmless miss does not. Derived: from the rule that is said
// before the exam.
func TestGraveAnswersFailAnExam(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	seen := map[string]bool{}
	for seed := range uint64(40) {
		x, err := d.NewExam(UsualRules(seed))
		require.NoError(t, err)
		for i, key := range x.Keys {
			for _, c := range x.Exercise(i).Choices {
				if slices.Contains(x.Exercise(i).Right, c.ID) {
					continue
				}
				all := map[string]Answer{}
				for j, other := range x.Keys {
					all[other] = right(x.Exercise(j))
				}
				all[key] = Answer{Choice: c.ID}
				s := x.Judge(all, time.Minute)
				require.Equal(t, 19, s.Right, "%s: %s", key, c.Text)
				assert.Equal(t, c.Grave == "", s.Passed, "%s: %s", key, c.Text)
				if c.Grave != "" {
					seen[c.Grave] = true
					assert.Equal(t, []string{c.Grave}, s.Grave)
				}
			}
		}
	}
	assert.Len(t, seen, 6, "every kind comes up: %v", seen)
}

// The rule that is said before names what the failures are called. Derived: from the
// words of both.
func TestTheRuleNamesEveryFailure(t *testing.T) {
	for said, rule := range map[string]string{
		gravePass: "passes on a refused part", graveAgain: "presses a part again that must not be", graveGoOn: "goes on after a fault", graveRow: "after several refused parts in a row",
		graveChange: "changes the setting or moves the zone in answer to the lamps", graveHand: "puts a hand into the work space",
	} {
		assert.Contains(t, GraveRule, rule)
		long := func(s string) (out []string) {
			for _, w := range strings.FieldsFunc(s, func(r rune) bool { return r < 'a' || r > 'z' }) {
				if len(w) > 4 && !slices.Contains([]string{"changed", "passed", "pressed"}, w) {
					out = append(out, w)
				}
			}
			return out
		}
		for _, w := range long(said) {
			assert.Contains(t, GraveRule, w, said)
		}
	}
}

// Where the lamps mean two parts that are treated alike, one answer names both, and it
// stands beside the other lamps too. Derived: off/on of the example means either.
func TestBothInOneAnswer(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for _, on := range []string{"on-on", "on-off", "off-on", "off-off"} {
		e, ok := d.Exercise("read/"+on, 1)
		require.True(t, ok)
		var texts []string
		for _, c := range e.Choices {
			texts = append(texts, c.Text)
		}
		assert.Contains(t, texts, "Too short or no insert", on)
		assert.NotContains(t, texts, "No insert in the nest", on)
		if on == "off-on" {
			assert.Equal(t, "Too short or no insert", e.RightInWords())
		}
	}
}

// What passes on, presses again or goes on is grave wherever it is wrong, in 100
// random plans. Derived: from the texts that are shown.
func TestWhatIsGrave(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 5))
	n := 0
	for n < 100 {
		p, ok := randomPlan(t, rng)
		if !ok {
			continue
		}
		r := press.Evaluate(p)
		if r.Verdict == nil {
			continue
		}
		n++
		d := drillOf(t, p, r)
		for _, key := range d.Keys(Levels) {
			e, _ := d.Exercise(key, uint64(n))
			lamps := e.Picture != nil && e.Picture.Lamps != nil
			for _, c := range e.Choices {
				if !lamps || slices.Contains(e.Right, c.ID) {
					continue
				}
				on := *e.Picture.Lamps
				good := slices.Contains(r.Verdict.Table.Words(on.Arrival, on.Zone), press.Good)
				text := strings.ToLower(c.Text)
				switch {
				case strings.Contains(text, "setting one step higher"):
					assert.Equal(t, graveChange, c.Grave, "%s: %s", key, c.Text)
				case strings.Contains(text, "until both lamps come on"):
					assert.Equal(t, graveChange, c.Grave, "%s: %s", key, c.Text)
				case strings.Contains(text, "go on with the next part"):
					fault, several := len(r.Verdict.Table.Words(on.Arrival, on.Zone)) == 0, strings.Contains(key, "/run/") || strings.Contains(key, "/start/")
					assert.Equal(t, fault, c.Grave == graveGoOn, "%s: %s", key, c.Text)
					assert.Equal(t, !fault && !good && several, c.Grave == graveRow, "%s: %s", key, c.Text)
				case strings.Contains(text, "the part is good as far"),
					strings.Contains(text, "pass the part on"), strings.Contains(text, "pass it on"), key[:4] == "read" && c.ID == press.Good:
					assert.Equal(t, !good, c.Grave == gravePass, "%s: %s", key, c.Text)
				case strings.Contains(text, "press the part once more"):
					assert.NotEmpty(t, c.Grave, "%s: %s", key, c.Text)
				}
			}
		}
		if t.Failed() {
			return
		}
	}
}

// When the lamps count, and what no lamp makes safe, is asked in most exams.
func TestHandlingIsAsked(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for _, key := range []string{"when/read", "when/home", "when/lit", "hands/insert", "hands/guard", "hands/approach"} {
		assert.Contains(t, d.Keys(1), key)
		assert.NotEmpty(t, KindOfKey(key))
	}
	for seed := range uint64(30) {
		x, err := d.NewExam(UsualRules(seed))
		require.NoError(t, err)
		n := 0
		for _, key := range x.Keys {
			if d.KindOf(key) == Safe {
				n++
			}
		}
		assert.Equal(t, 3, n, "seed %d", seed)
	}
	e, _ := d.Exercise("when/read", 1)
	assert.Contains(t, e.Explain, "115.08", "the zone start of this plan")
	assert.Contains(t, e.Explain, "too short or no insert")
	e, _ = d.Exercise("read/on-on", 1)
	for _, c := range e.Choices {
		assert.NotContains(t, c.Text+c.Reason, "nothing else")
	}
	assert.Contains(t, words.WhenRead, "before the ram goes back")
}
