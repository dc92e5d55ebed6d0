package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// otherCheck is a plan whose missing insert stops the ram where a good part would, with
// another check that finds it.
var otherCheck = changes{"parts[1].insert": "false", "parts[2].insert": "true", "station.presence_check": "light barrier B3"}

// TestPresenceCheckSettlesTheTable: with a named check both signals on means good under
// a condition, everywhere, and nobody is told to change the window.
func TestPresenceCheckSettlesTheTable(t *testing.T) {
	const want = "good, if light barrier B3 says that an insert is there"
	p := example(t, otherCheck)
	r := press.Evaluate(p)
	require.True(t, r.MissingPasses())
	both := PairTexts(p, r)[0]
	assert.True(t, both.Clear)
	assert.Equal(t, want, both.Verdict)
	for _, s := range []string{both.Meaning, both.Do, both.Brief, both.Act} {
		assert.NotContains(t, s, "window")
	}
	assert.Contains(t, both.Do, "light barrier B3 says that an insert is there")
	assert.Equal(t, "GOOD, if light barrier B3 says that an insert is there", CardVerdict(both))
	assert.Equal(t, want, SayVerdict(p, press.FaultRow{Words: []string{press.Good, press.Missing}}))
	assert.False(t, r.Verdict.Ambiguous)
	x, ok := ReactionTo(Reactions(p, r), both.Pair, One)
	require.True(t, ok)
	assert.Contains(t, x.Checks[0], "light barrier B3")

	// Without a named check it is a contradiction still.
	p = example(t, with(otherCheck, changes{"station.presence_check": ""}))
	r = press.Evaluate(p)
	both = PairTexts(p, r)[0]
	assert.False(t, both.Clear)
	assert.Equal(t, "good or no insert", both.Verdict)
	assert.True(t, r.Verdict.Ambiguous)

	// A name that is too long for a sentence is not put into one.
	p = example(t, with(otherCheck, changes{"station.presence_check": "a laser that looks across the nest from the left side"}))
	assert.Equal(t, "good, if the other check says that an insert is there", say.GoodIf(p))
}

// TestLateArrivalAndNothing: zone alone may be a part that is seated and whose force was
// not reported in time; neither lamp names the drive.
func TestLateArrivalAndNothing(t *testing.T) {
	p := example(t, nil)
	pairs := PairTexts(p, press.Evaluate(p))
	assert.Equal(t, Pair{Zone: true}, pairs[2].Pair)
	assert.Contains(t, pairs[2].Meaning, "or seated, but the force was not reported in time")
	assert.Contains(t, pairs[2].Do, "not reported in time")
	assert.Equal(t, "No part leads here by plan: weak drive, stick-slip, a lost signal.", pairs[3].Meaning)
	for _, q := range pairs {
		wellFormed(t, q.Meaning)
		wellFormed(t, q.Do)
	}
	// The push end past the zone: zone alone has no part by plan, and the same cause.
	p = example(t, changes{"window.zone_end": "115.20", "window.push_stroke": "8.2"})
	assert.Contains(t, PairTexts(p, press.Evaluate(p))[2].Meaning, "seated, but the force was not reported in time")
}

// What is typed to say that there is no other check is told as that: in the note, in the
// headline, on the card, among what is not seen and where the setpoints are copied. The
// plan counts it as a name, so nothing else stops the reader.
func TestATypedNoNamesNoCheck(t *testing.T) {
	for typed, none := range map[string]bool{"none": true, "No.": true, " - ": true, "N/A": true, "\u2014": true, "(none)": true, "?": true, "": false, "light barrier B3": false, "no-contact sensor N1": false, "nest sensor": false} {
		assert.Equal(t, none, say.NamesNoCheck(typed), typed)
	}
	for typed, none := range map[string]bool{"none": true, "light barrier B3": false} {
		p := example(t, with(otherCheck, changes{"station.presence_check": typed}))
		r := press.Evaluate(p)
		note := found(t, press.PresenceByOtherCheck, with(otherCheck, changes{"station.presence_check": typed}))
		require.False(t, r.Blocked())
		const names = "\u201cnone\u201d names no check"
		for where, text := range map[string]string{"note": note.Message, "headline": Headline(p, r), "unseen": strings.Join(Unseen(p, r), " "), "copied": say.OnlyGoodWith(p, r)} {
			assert.Equal(t, none, strings.Contains(text, names), "%s: %s", where, text)
		}
		assert.Equal(t, none, strings.HasPrefix(Headline(p, r), "Passes a missing insert"), typed)
		assert.Equal(t, none, strings.Contains(Glance(p, r), "but a missing insert passes"))
		assert.Equal(t, none, say.LeaveEmpty(typed) != "")
		if !none {
			assert.True(t, strings.HasPrefix(note.Message, "The other check named in the plan is the only barrier"), note.Message)
			assert.Equal(t, "only good with: light barrier B3", say.OnlyGoodWith(p, r))
		}
	}
	assert.Empty(t, say.OnlyGoodWith(example(t, nil), press.Evaluate(example(t, nil))))
}

// Where the nest itself stops the ram before the push ends, nothing asks for no arrival on
// the empty nest: the rule asks for what the shift check has in its row (by hand: nest at
// 140, push to 141).
func TestTheRuleOfTheEmptyNestFollowsThePlan(t *testing.T) {
	p := example(t, changes{"window.push_stroke": "35", "window.approach_end": "107", "ram.stroke": "150"})
	r := press.Evaluate(p)
	stop, stops := r.NestStops()
	require.True(t, stops)
	push := say.shiftPushes(p, r)[0]
	assert.Contains(t, push.lamps, "arrival on")
	assert.Contains(t, ReadingRule(p, r), "it must show "+push.lamps)
	assert.Equal(t, Pair{true, stop.Zone}.String(), push.lamps)
	assert.NotContains(t, ReadingRule(p, r), "a move that merely ends must")
	assert.Contains(t, ReadingRule(example(t, nil), press.Evaluate(example(t, nil))), "a move that only ends must give no arrival")
}
