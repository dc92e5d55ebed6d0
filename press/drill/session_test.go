package drill

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/words"
)

// The orders of this file are derived by hand from the rule: a miss comes back
// after three others, a new item stands between two that come back, nothing is
// asked more than three times, and after 20 answers the round is over.

func asked(s Session, wrong func(key string, nth int) bool) (Session, []string) {
	var out []string
	times := map[string]int{}
	for len(out) < 1000 {
		key, ok := s.Next()
		if !ok {
			break
		}
		out = append(out, key)
		times[key]++
		s = s.Answered(!wrong(key, times[key]))
	}
	return s, out
}

func TestWhatWasMissedComesBackSooner(t *testing.T) {
	keys := strings.Split("abcdefghij", "")
	never := func(string, int) bool { return false }
	s, order := asked(NewSession(keys), never)
	assert.Equal(t, keys, order, "nothing missed: once each")
	assert.Equal(t, 10, s.Right)
	assert.Empty(t, s.Missed)

	order10 := func(keys []string, wrong func(string, int) bool) (Session, string) {
		s, order := asked(NewSession(keys), wrong)
		return s, strings.Join(order, "")
	}
	s, got := order10(keys, func(key string, nth int) bool { return key == "b" && nth == 1 })
	assert.Equal(t, "abcdebfghij", got)
	assert.Equal(t, 9, s.Right, "only the first answer counts")
	assert.Empty(t, s.Missed, "right since")
	_, got = order10(keys, func(key string, nth int) bool { return key < "c" && nth == 1 })
	assert.Equal(t, "abcdaebfghij", got, "a new one between two that come back")
	s, got = order10(keys, func(key string, nth int) bool { return key == "j" && nth < 3 })
	assert.Equal(t, "abcdefghijjj", got, "at the end there is nothing to put between")
	assert.Empty(t, s.Missed)
	_, got = order10(keys, func(key string, _ int) bool { return key == "a" })
	assert.Equal(t, "abcdaefgahij", got, "three times and no more")
}

// A round ends however badly it goes, and who misses everything has still seen
// more new items than old ones.
func TestARoundEnds(t *testing.T) {
	keys := strings.Split("abcdefghijklmnopqrst", "")
	s, order := asked(NewSession(keys), func(string, int) bool { return true })
	assert.Equal(t, "abcdaebfcgdhaiejbkfl", strings.Join(order, ""))
	assert.Len(t, order, RoundLength)
	assert.True(t, s.Done())
	assert.Equal(t, 0, s.Right)
	assert.Greater(t, len(s.Seen), RoundLength/2)
	assert.ElementsMatch(t, s.Seen, s.Missed)
	for i, key := range order[1:] {
		assert.NotEqual(t, order[i], key, "not twice in a row")
	}
	done := s.Answered(true)
	assert.Equal(t, s, done, "an answer after the end changes nothing")
	s, order = asked(NewSession(keys[:3]), func(string, int) bool { return true })
	assert.Len(t, order, 9)
	assert.True(t, s.Done())
	assert.Equal(t, 0, NewSession(nil).Total())
}

func TestRounds(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for level := 1; level <= Levels; level++ {
		round := d.Round(level, RoundLength, 7)
		assert.Len(t, round, []int{20, 20, 20, 20}[level-1], "level %d", level)
		assert.Equal(t, round, d.Round(level, RoundLength, 7), "the same seed, the same round")
		assert.NotEqual(t, round, d.Round(level, RoundLength, 8))
		kinds, early := map[Kind]bool{}, map[Kind]bool{}
		for i, key := range round {
			e, ok := d.Exercise(key, 7)
			require.True(t, ok)
			assert.LessOrEqual(t, e.Level, level)
			kinds[e.Kind] = true
			if i < RoundLength/2 {
				early[e.Kind] = true
			}
			again, _ := d.Exercise(key, 7)
			assert.Equal(t, e, again, "the same seed, the same exercise")
		}
		assert.Equal(t, []int{3, 4, 6, 7}[level-1], len(kinds), "kinds in level %d", level)
		assert.Equal(t, kinds, early, "level %d: the first half has met every kind", level)
		slices.Sort(round)
		assert.Equal(t, round, slices.Compact(slices.Clone(round)), "no item twice")
	}
	assert.Empty(t, d.Round(0, 10, 1))
	_, ok := d.Exercise("of/another/plan", 1)
	assert.False(t, ok)
}

// right gives a right answer to an exercise.
func right(e Exercise) Answer {
	if e.Zone != nil {
		return Answer{Zone: &e.Zone.Solution}
	}
	return Answer{Choice: e.Right[0]}
}

func TestExam(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	x, err := d.NewExam(UsualRules(42))
	require.NoError(t, err)
	require.Len(t, x.Keys, 20)
	assert.Equal(t, 16, x.Needed())
	all := map[string]Answer{}
	for i, key := range x.Keys {
		all[key] = right(x.Exercise(i))
	}
	assert.Equal(t, Score{Items: 20, Right: 20, Needed: 16, Took: time.Minute, Passed: true}, x.Judge(all, time.Minute))
	late := x.Judge(all, 21*time.Minute)
	assert.True(t, late.OverTime)
	assert.False(t, late.Passed)

	for _, key := range x.Keys[:4] {
		all[key] = Answer{Choice: "nothing"}
	}
	four := x.Judge(all, time.Minute)
	assert.Equal(t, x.Keys[:4], four.Missed)
	assert.True(t, four.Passed, "16 of 20 is the pass mark")
	delete(all, x.Keys[4])
	five := x.Judge(all, time.Minute)
	assert.Equal(t, x.Keys[:5], five.Missed, "no answer is a miss")
	assert.False(t, five.Passed)
	for _, key := range five.Missed {
		assert.Contains(t, d.Title(key, 42), " ")
	}
	missed := x.Misses(all, five)
	require.Len(t, missed, 5)
	for i, m := range missed {
		e := x.Exercise(i)
		assert.Contains(t, m.Question, e.Question)
		assert.Equal(t, "no answer", m.Given)
		assert.NotEmpty(t, m.Right)
		assert.Equal(t, e.Kind, KindOfKey(e.Key))
		if e.Zone == nil {
			assert.Contains(t, m.Right, e.Said(right(e)))
		}
	}
	same, _ := d.NewExam(UsualRules(42))
	assert.Equal(t, x.Keys, same.Keys)
	_, err = d.NewExam(Rules{})
	assert.ErrorIs(t, err, ErrNothingToAsk)
}

func TestRefusedWithoutSignals(t *testing.T) {
	p, r := example(t, "station.reference_uncertainty", "0.3")
	require.Nil(t, r.Verdict)
	_, err := New(words.Printer{}, p, r, words.Reactions(p, r))
	assert.ErrorIs(t, err, ErrNoSignals)
	_, err = AtStation(words.Printer{}, p, r, nil, words.Pair{}, words.One, nil)
	assert.ErrorIs(t, err, ErrNoSignals)
}

// A plan whose push ends before every good part still teaches what it can, and
// says what it cannot.
func TestKindsThatAPlanDoesNotAllow(t *testing.T) {
	p, r := example(t, "window.push_stroke", "7.4")
	d := drillOf(t, p, r)
	assert.Contains(t, d.Impossible()[Zone], "No good part reads between")
	assert.Contains(t, d.Impossible()[Zone], "114.86")
	assert.NotContains(t, d.Impossible(), Read)
	assert.Greater(t, len(d.Keys(Levels)), 20)
	none, err := New(words.Printer{}, p, r, nil)
	require.NoError(t, err)
	assert.NotEmpty(t, none.Impossible()[React])
	assert.Contains(t, d.Notices()[0], "Never put a hand")
	assert.True(t, strings.HasPrefix(d.Notices()[3], "This plan is not ready: "+words.NotReady(r)+". Practise with it"), "the cause once, and no headline")
}

// A plan's own reaction list takes the place of the usual one.
func TestOwnReactionList(t *testing.T) {
	p, r := example(t)
	own := []words.Reaction{{Pair: words.Pair{Arrival: true}, Situation: words.One, Part: "Red bin.", Checks: []string{"Ring the bell.", "Fetch the setter."}, Own: true}}
	d, err := New(words.Printer{}, p, r, own)
	require.NoError(t, err)
	e, ok := d.Exercise("react/on-off/one/first", 1)
	require.True(t, ok)
	for _, c := range e.Choices {
		assert.Equal(t, c.Text == "Ring the bell.", e.Judge(Answer{Choice: c.ID}).Right, c.Text)
	}
	assert.Contains(t, e.Explain, "Red bin.")
	_, ok = d.Exercise("react/off-on/one/first", 1)
	assert.False(t, ok)
}

// Each role has an exam of its own, of twenty questions in the example. What no lamp makes
// safe is asked in both, four times at least, and no other kind. Derived: from what the two
// do at a station; who sets up jogs and homes.
func TestTwoExams(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	want := map[Role][]Kind{Technician: {Read, Act, Safe}, Setter: {Zone, React, Predict, Blind, Safe}}
	for _, role := range Roles {
		for seed := range uint64(20) {
			rules := UsualRules(seed)
			rules.Role = role
			x, err := d.NewExam(rules)
			require.NoError(t, err)
			require.Len(t, x.Keys, 20)
			met, safe := map[Kind]bool{}, 0
			for _, key := range x.Keys {
				if d.KindOf(key) == Safe {
					safe++
				}
				met[d.KindOf(key)] = true
				assert.Contains(t, want[role], d.KindOf(key), "%s: %s", role, key)
			}
			assert.Len(t, met, len(want[role]), "%s has every kind of its own", role)
			assert.GreaterOrEqual(t, safe, 4, "%s, seed %d", role, seed)
		}
	}
}

// Of a list that is common practice any order counts; where something stops or holds
// back, that comes first. Derived: by hand, from the lists of the example.
func TestOrderOfCommonPractice(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	rightOnes := func(key string) (out []string, e Exercise) {
		e, ok := d.Exercise(key, 1)
		require.True(t, ok, key)
		for _, c := range e.Choices {
			if e.Judge(Answer{Choice: c.ID}).Right {
				out = append(out, c.Text)
			}
		}
		return out, e
	}
	both, e := rightOnes("react/on-off/one/first")
	assert.ElementsMatch(t, []string{"Look for a chip or a burr under the part and in the nest.", "Look whether the insert stands straight and has reached its seat."}, both)
	assert.Contains(t, e.Explain, "In any order")
	one, e := rightOnes("react/off-off/one/first")
	assert.Equal(t, []string{"Stop. Test each lamp and its input by itself."}, one)
	assert.Contains(t, e.Explain, "First of all: 1. Stop")
	assert.Contains(t, e.Explain, "Then, in any order: 2.")
	both, _ = rightOnes("react/off-off/one/next")
	assert.Len(t, both, 2)
}

func BenchmarkDrill(b *testing.B) {
	p, r := example(b)
	list := words.Reactions(p, r)
	for b.Loop() {
		d, err := New(words.Printer{}, p, r, list)
		if err != nil {
			b.Fatal(err)
		}
		for _, key := range d.Round(Levels, RoundLength, 1) {
			_, _ = d.Exercise(key, 1)
		}
	}
}
