package proving

import (
	"slices"
	"strconv"
)

// Typed gives a study as somebody would have typed it: loss-free, in the units of the document,
// with the columns in which some row has a cell.
func (s *Study) Typed() *Typed {
	t := &Typed{Kind: s.Kind}
	number := func(v *float64) string {
		if v == nil {
			return ""
		}
		return strconv.FormatFloat(*v, 'g', -1, 64)
	}
	lamp := func(v *bool) string {
		switch {
		case v == nil:
			return ""
		case *v:
			return "on"
		}
		return "off"
	}
	for _, h := range []Head{
		{"taken_at", s.TakenAt}, {"taken_by", s.TakenBy}, {"ram", s.Ram}, {"plan_digest", s.PlanDigest},
		{"cell", s.Cell}, {"cell_uncertainty", number(s.CellUncertainty)}, {"calibrated_at", s.CalibratedAt}, {"calibration_days", number(s.CalibrationDays)},
		{"height", number(s.Height)}, {"height_uncertainty", number(s.HeightUncertainty)}, {"setting", number(s.Setting)}, {"resolution", number(s.Resolution)},
		{"event", s.Event}, {"notes", s.Notes},
	} {
		t.SetHead(h.Name, h.Text)
	}
	names := []string{"start", "setting", "force", "reading", "sample", "height", "arrival", "zone", "condition", "speed", "time", "remark"}
	var given []int
	var rows [][]string
	for _, r := range s.Rows {
		cells := []string{number(r.Start), number(r.Setting), number(r.Force), number(r.Reading), r.Sample, number(r.Height), lamp(r.Arrival), lamp(r.Zone), r.Condition, number(r.Speed), number(r.Time), r.Remark}
		for i, c := range cells {
			if c != "" && !slices.Contains(given, i) {
				given = append(given, i)
			}
		}
		rows = append(rows, cells)
	}
	slices.Sort(given)
	for _, i := range given {
		t.Columns = append(t.Columns, names[i])
	}
	for _, cells := range rows {
		var row []string
		for _, i := range given {
			row = append(row, cells[i])
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
