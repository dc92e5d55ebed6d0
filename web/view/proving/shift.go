package proving

import (
	"slices"
	"strconv"
	"time"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
	"ramplan/press/words/proof"
	"ramplan/web/page"
)

// ShiftFacts are what stands over a shift check.
func ShiftFacts(who string, at time.Time, letter, plan, digest string) []page.Fact {
	return []page.Fact{
		{Name: say.CheckedLabel(), Text: say.When(at)}, {Name: say.CheckedByLabel(), Text: who},
		{Name: say.RevisionLabel(), Text: letter}, {Name: say.HeadOf(proving.Samples, "plan_digest").Label, Text: plan}, {Name: say.DigestLabel(), Text: digest},
	}
}

// byMaster are rows of samples, those of what is as good as the master held to its limits.
func byMaster(r *press.Result, rows []proving.SampleRow) []proving.SampleRow {
	return proving.ByLimits(rows, r.MasterWithin(), words.Master, words.LooseSample)
}

// PushesOf are the pushes of a shift check, each with what the plan predicts of it and how it
// went. Without the plan's result nothing is predicted and nothing judged.
func PushesOf(r *press.Result, s *proving.Study) []proof.ShiftPushed {
	asked := map[string]words.ShiftPush{}
	var rows []proving.SampleRow
	if r != nil {
		for _, x := range say.ShiftPushes(r) {
			asked[x.Sample] = x
		}
		if len(s.Rows) > 0 {
			rows = byMaster(r, samplesOf(&proving.Assess(r, []*proving.Study{s}, s.TakenAt[:len(time.DateOnly)]).Studies[0]).Rows)
		}
	}
	var out, last []proof.ShiftPushed
	for _, l := range say.LooksOf(s.Notes) {
		x := proof.ShiftPushed{Sample: l.Sample, First: true, Arrival: &l.Arrival, Zone: &l.Zone, How: proving.Open}
		if want := asked[l.Sample]; want.First && want.Lamps != nil {
			x.WantArrival, x.WantZone = &want.Lamps.Arrival, &want.Lamps.Zone
			x.How = lookOutcome(want, &l.Arrival, &l.Zone)
		}
		if l.Sample == words.LooseSample {
			last = append(last, x)
		} else {
			out = append(out, x)
		}
	}
	for i, row := range s.Rows {
		x := proof.ShiftPushed{Sample: row.Sample, Height: row.Height, Reading: row.Reading, Remark: row.Remark, Arrival: row.Arrival, Zone: row.Zone, How: proving.Open}
		if i < len(rows) {
			x.WantArrival, x.WantZone, x.WantReading, x.Allowed, x.How = rows[i].Arrival, rows[i].Zone, rows[i].PredictedReading, rows[i].Allowed, proving.PushOutcome(&rows[i])
		}
		out = append(out, x)
	}
	return slices.Concat(out, last)
}

// lookOutcome is how a push with the probe went, as soon as it can be told: one wrong lamp is
// enough. What the plan cannot tell stands against nothing.
func lookOutcome(want words.ShiftPush, arrival, zone *bool) proving.Answer {
	switch {
	case want.Lamps != nil && (arrival != nil && *arrival != want.Lamps.Arrival || zone != nil && *zone != want.Lamps.Zone):
		return proving.Fail
	case arrival == nil || zone == nil:
		return proving.Open
	}
	return proving.Pass
}

// ShiftTable is what was pushed, what was predicted, and what came.
func ShiftTable(pushes []proof.ShiftPushed) page.SaysTable {
	t := say.ShiftTable(pushes)
	out := page.SaysTable{ID: "figures-" + t.Name, Head: t.Head, Heads: t.Heads}
	for _, row := range t.Rows {
		out.Rows = append(out.Rows, page.SaysRow(row))
	}
	return out
}

// ShiftHeads are the columns of shift checks as a table.
func ShiftHeads() []string {
	return []string{
		"plan", "revision", "checked", "by", "check", "sample", "look", "height_mm", "predicted_arrival", "predicted_zone", "predicted_reading_mm", "reading_within_mm",
		"arrival", "zone", "reading_mm", "push", "remark", "study_digest",
	}
}

// A ShiftKept is a kept shift check, for a table of all of them.
type ShiftKept struct {
	Plan, Who, Letter, Digest string
	At                        time.Time
	Passed                    proving.Answer
	Pushes                    []proof.ShiftPushed
}

// Rows are the rows of one shift check, a row for each push.
func (k ShiftKept) Rows(to words.Separation) [][]string {
	number := func(x *float64) string {
		if x == nil {
			return ""
		}
		return to.Number(strconv.FormatFloat(*x, 'f', -1, 64))
	}
	rounded := func(x *float64) string { // what was computed
		if x == nil {
			return ""
		}
		return to.Number(strconv.FormatFloat(*x, 'f', 4, 64))
	}
	lamp := func(on *bool) string {
		if on == nil {
			return ""
		}
		return words.OnOff(*on)
	}
	var out [][]string
	for _, x := range k.Pushes {
		out = append(out, []string{
			words.Cell(k.Plan), k.Letter, words.Stamp(k.At), words.Cell(k.Who), say.ShiftVerdict(k.Passed), words.Cell(say.SampleName(x.Sample)), say.LookWord(x.First), number(x.Height),
			lamp(x.WantArrival), lamp(x.WantZone), rounded(x.WantReading), rounded(x.Allowed), lamp(x.Arrival), lamp(x.Zone), number(x.Reading), say.PushedWord(x.How), words.Cell(x.Remark), k.Digest,
		})
	}
	return out
}
