package words

import (
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
	assert.Equal(t, "good, if the other check says that an insert is there", GoodIf(p))
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
