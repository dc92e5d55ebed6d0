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
	"ramplan/press/words/lesson"
)

// One answer that would pass on a refused part fails an exam of which everything
// else is right; a harmless miss does not. Derived: from the rule that is said
// before the exam.
func TestGraveAnswersFailAnExam(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	seen := map[string]bool{}
	for seed := range uint64(40) {
		rules := UsualRules(seed / 2)
		rules.Role = Roles[seed%2]
		x, err := d.NewExam(rules)
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
					seen[string(c.Grave)] = true
					assert.Equal(t, []string{"answered that " + lesson.Words{}.Grave(c.Grave)}, s.Grave)
				}
			}
		}
	}
	assert.Len(t, seen, len(graveOf("")), "every kind comes up: %v", seen)
}

// The rule that is said before an exam names every answer that can fail it alone, and
// no other; both say what is answered, and never that it was done. Derived: from what
// can be chosen in the example, as eight seeds draw it.
func TestTheRuleNamesEveryFailure(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for _, role := range append([]Role{""}, Roles...) {
		rule, met := GraveRule(words.Printer{}, role), map[lesson.Grave]bool{}
		for _, key := range d.keysFor(role, Levels) {
			for seed := range uint64(8) {
				e, _ := d.Exercise(key, seed)
				for _, c := range e.Choices {
					if c.Grave == "" {
						continue
					}
					met[c.Grave] = true
					assert.Contains(t, rule, lesson.Words{}.Grave(c.Grave), key)
					assert.Equal(t, "answered that "+lesson.Words{}.Grave(c.Grave), e.Judge(Answer{Choice: c.ID}).Grave)
					assert.Regexp(t, " (may be|may go on|may protect) ", lesson.Words{}.Grave(c.Grave), "an answer is no deed")
				}
			}
		}
		assert.Len(t, met, len(graveOf(role)), "%s: %v", role, met)
		for _, line := range rule {
			assert.LessOrEqual(t, len(strings.Fields(line)), 15, "a short line")
		}
	}
}

// Who takes a part that is refused for a good one fails alone, whichever of the two is
// shown, and so does who would work on with a guard that is open, pass on what nothing has
// judged, or put the next insert on a part. Derived: on/off of the example means too tall,
// on/on good and nothing else; the others by hand, from what each would let happen.
func TestTheMirrorIsGraveAsWell(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for _, one := range []struct {
		key, choice string
		grave       bool
	}{
		{"hands/bridged", "careful", true}, {"hands/bridged", "end", true}, {"hands/shield", "hand", true}, {"hands/shield", "side", true},
		{"hands/colleague", "both", true}, {"hands/colleague", "stop", true}, {"do/on-on", "stay", true}, {"part/away", "before", true}, {"part/away", "eye", true},
		{"part/stopped", "lamps", true}, {"part/stopped", "hammer", true}, {"first/change", "pass", true}, {"first/change", "agree", true}, {"first/check", "warm", true}, {"first/check", "none", true},
		{"part/chip", "tell", true}, {"hands/trapped", "quick", false},
		{"read/on-off", press.Good, true}, {"lamps/good", "on-off", true}, {"lamps/good", "off-off", true}, {"lamps/long", "on-on", true}, {"lamps/missing", "on-on", true},
		{"read/on-on", press.Long, false}, {"lamps/long", "off-off", false}, {"lamps/good", "on-on", false},
	} {
		e, ok := d.Exercise(one.key, 1)
		require.True(t, ok, one.key)
		assert.Equal(t, one.grave, e.Judge(Answer{Choice: one.choice}).Grave != "", one)
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
		p, r := judgedPlan(t, rng)
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
				case strings.HasPrefix(key, "several/"): // proved beside the right answers
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

// When the lamps count, and what no lamp makes safe, is asked in every technician's exam.
func TestHandlingIsAsked(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for _, key := range []string{"when/read", "when/home", "when/lit", "hands/insert", "hands/guard", "hands/approach", "hands/return", "hands/lowest"} {
		assert.Contains(t, d.Keys(1), key)
		assert.NotEmpty(t, KindOfKey(key))
	}
	for seed := range uint64(30) {
		rules := UsualRules(seed)
		rules.Role = Technician
		x, err := d.NewExam(rules)
		require.NoError(t, err)
		n := 0
		for _, key := range x.Keys {
			if d.KindOf(key) == Safe {
				n++
			}
		}
		assert.GreaterOrEqual(t, n, 4, "seed %d", seed)
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
