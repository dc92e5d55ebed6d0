package proving

import (
	"strconv"
	"time"

	"ramplan/press/proving"
	"ramplan/press/words"
	"ramplan/web/page"
)

// ShiftFacts are what stands over a shift check.
func ShiftFacts(who string, at time.Time, letter, plan, digest string) []page.Fact {
	return []page.Fact{
		{Name: say.CheckedLabel(), Text: say.When(at)}, {Name: say.CheckedByLabel(), Text: who},
		{Name: say.RevisionLabel(), Text: letter}, {Name: say.HeadOf(proving.Samples, "plan_digest").Label, Text: plan}, {Name: say.DigestLabel(), Text: digest},
	}
}

// ShiftTable is what was pushed and what came.
func ShiftTable(s *proving.Study) page.SaysTable {
	t := say.ShiftTable(s)
	out := page.SaysTable{ID: "figures-" + t.Name, Head: t.Head, Heads: t.Heads}
	for _, row := range t.Rows {
		out.Rows = append(out.Rows, page.SaysRow(row))
	}
	return out
}

// ShiftHeads are the columns of shift checks as a table.
func ShiftHeads() []string {
	return []string{"checked", "by", "revision", "passed", "sample", "height_mm", "arrival", "zone", "reading_mm", "remark", "study_digest"}
}

// ShiftRows are the rows of one shift check, a row for each push.
func ShiftRows(who string, at time.Time, letter string, passed proving.Answer, s *proving.Study, digest string, to words.Separation) [][]string {
	number := func(x *float64) string {
		if x == nil {
			return ""
		}
		return to.Number(strconv.FormatFloat(*x, 'f', -1, 64))
	}
	lamp := func(on *bool) string {
		if on == nil {
			return ""
		}
		return strconv.FormatBool(*on)
	}
	var out [][]string
	for _, r := range s.Rows {
		out = append(out, []string{
			words.Stamp(at), words.Cell(who), letter, strconv.FormatBool(passed == proving.Pass), words.Cell(r.Sample),
			number(r.Height), lamp(r.Arrival), lamp(r.Zone), number(r.Reading), words.Cell(r.Remark), digest,
		})
	}
	return out
}
