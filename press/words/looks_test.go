package words

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// probed is the worked example with a probe and steps.
func probed(t *testing.T) (*press.Plan, *press.Result) {
	t.Helper()
	text, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	p, problems := press.Decode(text)
	require.Empty(t, problems)
	r := press.Evaluate(p)
	Explain(r)
	return p, r
}

// saidOf is everything that the pages of a plan say, a text a row.
func saidOf(p *press.Plan, r *press.Result) []string {
	all := append([]string{Headline(p, r), ReadingRule(p, r), say.WhenReadIn(r), say.CatalogueLead(r), CycleTitle(r), say.WatchNote(r), Sentence(CardUnseen(p, r))}, Unseen(p, r)...)
	all = append(all, CardSamples(p, r)...)
	for _, f := range r.Findings {
		all = append(all, f.Message)
	}
	for _, name := range PaperNames() {
		x, _ := Paper(name, p, r)
		all = append(append(all, x.Lead), x.Notes...)
		for _, row := range x.Rows {
			all = append(all, strings.Join(row, " | "))
		}
	}
	return all
}

// neverSeen are claims that only a plan with one look may make.
var neverSeen = []string{
	"no lamp shows it", "loose fit is never seen", "A loose fit: it rests in the right place", "Not seen by the two signals", "It is expected to pass", "these two signals never see it", "see the findings",
	"read them once", "read once, at the end", "A loose fit, ", "The watch time runs from", "A part that was pressed before.", "a part pressed twice",
}

// TestNoPageDeniesTheProbe: where the probe refuses a loose fit, no page says that it is
// never seen, and with one look the pages say so still.
func TestNoPageDeniesTheProbe(t *testing.T) {
	p, r := probed(t)
	text := strings.Join(saidOf(p, r), "\n")
	for _, bad := range neverSeen {
		assert.NotContains(t, text, bad)
	}
	for _, want := range []string{
		GoOnOnly, "Loose fit | ", "refused by the probe", "first look: arrival on, zone off | go on", "first look: arrival off, zone off | refused at the first look", "A loose sample, probe back in",
		"Probe setting | ", "Probe end | ", "Probe confirm time | ", "Probe watch time, at least | ", "probe setting 12\u202f%", "A grip that comes from dirt",
	} {
		assert.Contains(t, text, want)
	}
	p.Probe, p.Sequence = nil, nil
	r = press.Evaluate(p)
	Explain(r)
	text = strings.Join(saidOf(p, r), "\n")
	for _, want := range []string{"no lamp shows it", "A loose fit: it rests in the right place", "Not seen by the two signals", "read them once"} {
		assert.Contains(t, text, want, "with one look")
	}
	assert.NotContains(t, text, "First look")
	assert.NotContains(t, text, "second look")
}

// TestNoPageClaimsMoreThanTheProbeDoes: without an interference that is caught surely, no
// page names one.
func TestNoPageClaimsMoreThanTheProbeDoes(t *testing.T) {
	p, _ := probed(t)
	twelve := 12.0
	p.Probe.Setting = &twelve
	p.Joint.Drag = 250 // N, little less than the probe's weakest push of 258 N: some loose parts stop in it
	r := press.Evaluate(p)
	Explain(r)
	require.True(t, TwoLooks(r) && Probed(r))
	require.Nil(t, r.Probe.CaughtBelow)
	require.Less(t, *r.Probe.RefusedAtZero, p.Faults.SampleProbability)
	text := strings.Join(saidOf(p, r), "\n")
	assert.NotContains(t, text, "µm of effective interference")
	for _, want := range []string{"but at no interference as surely as", "Some loose fits: the probe refuses none of them as surely as", "Not always: the station reports", "Without any grip it is refused with a probability of " + Share(*r.Probe.RefusedAtZero)} {
		assert.Contains(t, text, want)
	}
	assert.Contains(t, CardUnseen(p, r), "a loose fit")
}

// TestAsJudged: what the probe refuses has the lamps and the time of the first look, what
// it lets through those of the second with the longer time.
func TestAsJudged(t *testing.T) {
	_, r := probed(t)
	loose := AsJudged(*row(r, press.RowLoose))
	assert.Equal(t, press.RefusedByProbe, loose.Verdict)
	assert.Equal(t, "refused: arrival off, zone off", say.FirstLook(loose))
	assert.Equal(t, "no push", say.SecondLook(loose))
	assert.Equal(t, *r.Probe.WatchTime, *loose.Time)
	assert.Equal(t, row(r, press.RowLoose).Probe.Detection, loose.Detection)
	nominal := AsJudged(*row(r, press.RowNominal))
	assert.Equal(t, "goes on", say.FirstLook(nominal))
	assert.Equal(t, "arrival on, zone on", say.SecondLook(nominal))
	assert.InDelta(t, *row(r, press.RowNominal).Time+*r.Probe.AddedTime, *nominal.Time, 1e-9)
	early := AsJudged(*row(r, press.RowTwoInserts))
	assert.Equal(t, none, say.FirstLook(early))
	assert.Equal(t, press.EarlyContact, early.Verdict)
}
