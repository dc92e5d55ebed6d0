package drill

import (
	"math/rand/v2"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
)

// asSeen is everything that an item shows before it is answered.
func asSeen(e Exercise) string {
	out := append([]string{e.Question}, e.Facts...)
	for _, c := range e.Choices {
		out = append(out, c.Text)
	}
	if e.Zone != nil {
		for _, x := range e.Zone.Parts {
			out = append(out, e.Zone.d.high(x.Height))
		}
	}
	return strings.Join(out, "\n")
}

// told is what an item shows beside what it asks for and what can be chosen: the
// lamps of its own question and the four pairs as bare choices tell nothing.
func told(e Exercise) string {
	out := asSeen(e)
	for _, on := range words.AllPairs {
		out = strings.ReplaceAll(out, "The lamps show "+on.String()+".", "")
		out = strings.ReplaceAll(out, "The lamps that count are: "+on.String()+".", "")
		out = strings.ReplaceAll(out, "the lamps show "+on.String()+".", "")
		out = strings.ReplaceAll(out, "\n"+upper(on.String())+"\n", "\n\n")
		out = strings.ReplaceAll(out, "\n"+upper(on.String())+"\n", "\n\n")
		out = strings.TrimSuffix(out, "\n"+upper(on.String()))
	}
	return out
}

// stated is what an item says as a fact, or as the right answer: its wrong answers say
// nothing.
func stated(e Exercise) string {
	out := append([]string{e.Question}, e.Facts...)
	for _, c := range e.Choices {
		if slices.Contains(e.Right, c.ID) {
			out = append(out, c.Text)
		}
	}
	return strings.ToLower(strings.Join(out, "\n"))
}

// telling are sayings and the items that they answer. Derived: by hand, from what is asked.
var telling = []struct {
	says *regexp.Regexp
	keys []string
}{
	{regexp.MustCompile(`at the end of (the|a|its) push|before the ram goes back|lamps are read|while the ram goes back`), []string{"when/read", "when/back"}},
	{regexp.MustCompile(`must be off|both lamps off|at home, and the zone lamp is on|at home, and both lamps are off`), []string{"when/home", "when/lit"}},
	{regexp.MustCompile(`not limit|force-limited|nothing limits|limits the push only`), []string{"hands/approach", "hands/lowest"}},
	{regexp.MustCompile(`stands still|still at home`), []string{"hands/return"}},
	{regexp.MustCompile(`stop the cycle|hands outside`), []string{"hands/insert"}},
	{regexp.MustCompile(`slow ram|small steps`), []string{"hands/homing", "hands/jog"}},
	{regexp.MustCompile(`since the last check|of that time`), []string{"first/since", "change/found"}},
	{regexp.MustCompile(`instructions of (the|your) works`), []string{"rule/works"}},
	{regexp.MustCompile(`only whoever keeps the plan|is for whoever keeps the plan|part of the plan`), []string{"change/setting", "change/zone"}},
	{regexp.MustCompile(`hold these parts back|press nothing|nothing is pressed until`), []string{"several/on-off", "several/off-on", "several/off-off", "several/on-on", "rule/hurry"}},
	{regexp.MustCompile(`without an insert, and both lamps|pass a part without an insert`), []string{"lamps/missing"}},
	{regexp.MustCompile(`(has|have|was|were) stopped the ram|the ram was stopped`), []string{"signal/arrival"}},
	{regexp.MustCompile(`ram (rests|stands)[^.]*(inside|between)`), []string{"signal/zone"}},
	{regexp.MustCompile(`stays a refused part|second time`), []string{"part/twice"}},
	{regexp.MustCompile(`protects only`), []string{"hands/colleague"}},
	{regexp.MustCompile(`burst`), []string{"hands/shield"}},
}

// runOfWords is how many words in a row of a right answer tell it in another item.
const runOfWords = 4

// runs are the runs of words of a text.
func runs(text string) []string {
	list := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) })
	var out []string
	for i := range len(list) - runOfWords + 1 {
		out = append(out, " "+strings.Join(list[i:i+runOfWords], " ")+" ")
	}
	return out
}

// tells gives what one item says of another one's answer; empty for nothing. Items of
// one kind of question, such as what happens to a part with some lamps, may have the same
// answer: that they do is what is asked. So may checks that stand in many lists.
func tells(a, b Exercise) string {
	family := func(e Exercise) string { return strings.Split(e.Key, "/")[0] }
	text := stated(a)
	for _, x := range telling {
		if slices.Contains(x.keys, b.Key) {
			if found := x.says.FindString(text); found != "" {
				return found
			}
		}
	}
	if family(a) == family(b) && !slices.Contains([]Kind{Safe, Act}, a.Kind) || family(a) == "do" && family(b) == "do" || b.Kind == Predict || b.Kind == Blind || family(b) == "lamps" || family(b) == "several" && family(a) == "several" {
		return ""
	}
	words := " " + strings.Join(strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) }), " ") + " "
	own := strings.ToLower(b.Question)
	for _, c := range b.Choices {
		if !slices.Contains(b.Right, c.ID) {
			own += "\n" + strings.ToLower(c.Text)
		}
	}
	own = " " + strings.Join(strings.FieldsFunc(own, func(r rune) bool { return !unicode.IsLetter(r) }), " ") + " "
	for _, c := range b.Choices {
		if !slices.Contains(b.Right, c.ID) {
			continue
		}
		for _, run := range runs(c.Text) {
			if strings.Contains(words, run) && !strings.Contains(own, run) {
				return run
			}
		}
	}
	return ""
}

// No two items of an exam are the same, and none tells another's answer: over the
// example and 100 random plans, by what the items show.
func TestNoItemAnswersAnother(t *testing.T) {
	check := func(p *press.Plan, r *press.Result, seed uint64) (items int) {
		d := drillOf(t, p, r)
		rules := UsualRules(seed)
		rules.Role = []Role{"", Technician, Setter}[seed%3]
		x, err := d.NewExam(rules)
		require.NoError(t, err)
		var all []Exercise
		for i := range x.Keys {
			all = append(all, x.Exercise(i))
		}
		own := press.Pair{d.s.ZoneStart, d.s.ZoneEnd}
		for i, a := range all {
			for _, on := range words.AllPairs {
				assert.NotContains(t, strings.ToLower(told(a)), on.String(), "%s says what some part shows", a.Key)
			}
			if a.Zone != nil {
				assert.False(t, a.Judge(Answer{Zone: &own}).Right, "%s: other items print the plan's zone", a.Key)
			}
			for j, b := range all {
				if i == j {
					continue
				}
				// In both directions: each of the two is read for the answer of the other.
				assert.Empty(t, tells(a, b), "%s tells the answer of %s", a.Key, b.Key)
				if part := strings.Split(a.Key, "/"); part[0] == "react" && part[3] == "next" {
					assert.NotContains(t, []string{"read/" + part[1], "do/" + part[1]}, b.Key, "%s prints the first check, which tells %s", a.Key, b.Key)
					assert.False(t, strings.HasPrefix(b.Key, "lamps/") && b.Judge(Answer{Choice: part[1]}).Right, "%s prints the first check, which tells %s", a.Key, b.Key)
				}
				assert.NotEqual(t, asSeen(a), asSeen(b), "%s and %s", a.Key, b.Key)
				if a.Zone != nil && b.Zone != nil {
					assert.False(t, a.Judge(Answer{Zone: &b.Zone.Solution}).Right, "%s answers %s", b.Key, a.Key)
				}
				if h := a.Picture; h != nil && h.Height != nil && b.Picture != nil && b.Picture.Height != nil {
					assert.NotEqual(t, *h.Height, *b.Picture.Height, "%s and %s", a.Key, b.Key)
				}
				if a.Kind == React && b.Kind == React && *a.Picture.Lamps == *b.Picture.Lamps {
					for _, c := range a.Choices {
						if a.Judge(Answer{Choice: c.ID}).Right {
							assert.NotContains(t, strings.Join(b.Facts, "\n"), c.Text, "%s is told by %s", a.Key, b.Key)
						}
					}
				}
			}
			for _, row := range all[:i] {
				same := a.Picture != nil && row.Picture != nil && a.Picture.Lamps == nil && row.Picture.Lamps == nil && a.Picture.Height == nil && row.Picture.Height == nil && a.Zone == nil && row.Zone == nil
				assert.False(t, same && a.Picture.Row == row.Picture.Row, "%s and %s are about one fault", a.Key, row.Key)
			}
		}
		return len(all)
	}
	p, r := example(t)
	for seed := range uint64(90) {
		assert.Equal(t, 20, check(p, r, seed), "the example has enough for a whole exam")
		if t.Failed() {
			t.Fatalf("seed %d", seed)
		}
	}
	rng := rand.New(rand.NewPCG(8, 8))
	for n := 1; n <= 100; n++ {
		p, r := judgedPlan(t, rng)
		check(p, r, uint64(n))
		if t.Failed() {
			t.Fatalf("plan %d", n)
		}
	}
}

// No exam asks twice, with the same lamps, for a first check that is the same.
func TestFirstChecksDiffer(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	asked := map[string]bool{}
	for seed := range uint64(200) {
		rules := UsualRules(seed)
		rules.Role = Setter
		x, err := d.NewExam(rules)
		require.NoError(t, err)
		seen := map[string]string{}
		for i, key := range x.Keys {
			if part := strings.Split(key, "/"); part[0] == "react" && part[3] == "first" {
				asked[key] = true
				answer := part[1] + ": " + x.Exercise(i).RightInWords()
				assert.Empty(t, seen[answer], "seed %d: %s asks what %s asks: %s", seed, key, seen[answer], answer)
				seen[answer] = key
			}
		}
	}
	assert.True(t, asked["react/on-on/run/first"] && asked["react/on-on/start/first"], "both come up, each in its own exam")
}

// Another seed draws other parts for the same way of asking.
func TestZonesDiffer(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	seen := map[string]bool{}
	for seed := range uint64(30) {
		for _, key := range []string{"zone/1", "zone/2"} {
			e, ok := d.Exercise(key, seed)
			require.True(t, ok)
			seen[asSeen(e)] = true
			tall, good := -1.0, 1e9
			for _, x := range e.Zone.Parts {
				if x.Word == press.Long {
					tall = max(tall, x.Reading)
				} else if x.Word == press.Good {
					good = min(good, x.Reading)
				}
			}
			// As close as a zone can tell them apart, and not much further. Derived: a
			// reading may be off by 0.0278 either way, and the drawing allows 0.18.
			assert.Greater(t, good-tall, 2*0.0278)
			assert.Less(t, good-tall, 2*0.0278+0.05)
		}
	}
	assert.Len(t, seen, 60)
}

// What a learner must work out has its figures beside it, and no word of how it is
// found.
func TestRowFacts(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for key, wants := range map[string][]string{
		"blind/gap":                {"The gap is 0.05", "stopped at 115.09 ", "off by 0.028"},
		"blind/chip":               {"The chip is 0.1", "stopped at 115.04 "},
		"blind/nest-worn":          {"given way by 0.05", "stopped at 115.187"},
		"predict/two-inserts":      {"The tool would meet it at ", "the push begins at 107.46"},
		"predict/zone-stuck-on":    {"stopped at 115.079"},
		"blind/arrival-stuck-on":   {"always on while the insert is missing"},
		"predict/arrival-stuck-on": {"always on while the insert is missing"},
	} {
		e, ok := d.Exercise(key, 3)
		require.True(t, ok, key)
		text := strings.ReplaceAll(strings.Join(e.Facts, " "), "\u202f", " ")
		for _, want := range wants {
			assert.Contains(t, text, want, key)
		}
		assert.NotContains(t, text, "finds it", key)
	}
}

// Asked again, a question has its choices in another order, and the same answers.
func TestReordered(t *testing.T) {
	p, r := example(t)
	e, _ := drillOf(t, p, r).Exercise("read/on-off", 4)
	orders := map[string]bool{asSeen(e): true}
	for times := range 3 {
		again := e.Reordered(4, times+1)
		orders[asSeen(again)] = true
		assert.ElementsMatch(t, e.Choices, again.Choices)
		assert.Equal(t, e.Right, again.Right)
	}
	assert.Greater(t, len(orders), 2)
}
