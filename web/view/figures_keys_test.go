package view

import (
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/presstest"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A shownRow says what a row of the bench shows: in braces keys of the result's document,
// each with how it is written; behind "shown." what is shown and is no part of it. What
// has no figure shows the text of otherwise, or is left out where that is empty. Three dots
// stand for a text that is tested elsewhere.
type shownRow struct {
	group, label, value, unit, note string
	exact                           string // the key whose figure is carried to the last digit
	otherwise                       string
}

// shownRows are all rows of the bench, by hand from what each name says: what is needed is
// what the worst part needs (force.need), and so on.
var shownRows = []shownRow{
	{"setpoints", "Setting", "{force.setting|trim2}", "%", "…", "force.setting", ""},
	{"setpoints", "Approach end", "{travel.approach_end|set}", "mm", "…", "travel.approach_end", "–"},
	{"setpoints", "Push stroke", "{travel.push_stroke|set}", "mm", "…", "travel.push_stroke", "–"},
	{"setpoints", "Push end", "{travel.push_end|set}", "mm", "…", "travel.push_end", "–"},
	{"setpoints", "Zone start", "{window.zone[0]|set}", "mm", "…", "window.zone[0]", "–"},
	{"setpoints", "Zone end", "{window.zone[1]|set}", "mm", "…", "window.zone[1]", "–"},
	{"setpoints", "Probe setting", "{probe.setting|trim2}", "%", "…", "probe.setting", ""},
	{"setpoints", "Probe end", "{probe.end|set}", "mm", "…", "probe.end", ""},
	{"setpoints", "Expected reading", "{travel.seat_reading|pos}", "mm", "nominal part, seated", "travel.seat_reading", "–"},

	{"force", "Needed at the seat", "{force.need|0}", "N", "", "force.need", ""},
	{"force", "Allowed at most", "{force.cap|0}", "N", "", "force.cap", ""},
	{"force", "At this setting", "{force.low|0} to {force.high|0}", "N", "at rest; typically {force.typical|0}…", "", ""},
	{"force", "Settings inside", "{force.settings[0]|1} to {force.settings[1]|1}", "%", "", "", "none"},
	{"force", "Steps inside", "{force.steps[0]|trim2} to {force.steps[1]|trim2}", "%", "", "", ""},
	{"force", "One step is worth", "{shown.step_worth|0}", "N", "at this setting", "shown.step_worth", ""},
	{"force", "Met at first contact", "{impact.contact|0}", "N", "", "impact.contact", ""},
	{"force", "Met at the seat", "{force.typical|0} to {impact.seat_expected|0}", "N", "the push alone, to push and blow; with a strong ram to {shown.seat_strong|0}…", "impact.seat_expected", ""},
	{"force", "At the seat, undamped", "{impact.seat_bound|0}", "N", "a bound, no forecast", "", ""},
	{"force", "Met in the approach", "at least {impact.early|0}", "N", "the motor pushes on behind it…", "impact.early", ""},

	{"joint", "Demand at the seat", "{joint.demand[0]|0} to {joint.demand[2]|0}", "N", "mean {joint.demand[1]|0}", "", ""},
	{"joint", "Interference", "{joint.interference[0]|1} to {joint.interference[2]|1}", "µm", "mean {joint.interference[1]|1}", "", ""},
	{"joint", "After smoothing", "{joint.effective[0]|1} to {joint.effective[2]|1}", "µm", "mean {joint.effective[1]|1}", "", ""},
	{"joint", "Pressure", "{joint.pressure[0]|1} to {joint.pressure[2]|1}", "MPa", "mean {joint.pressure[1]|1}", "", ""},
	{"joint", "Holding force", "{joint.holding[0]|0} to {joint.holding[2]|0}", "N", "mean {joint.holding[1]|0}", "", ""},
	{"joint", "Hub used", "{joint.hub_utilisation|percent0}", "%", "von Mises up to {shown.hub_mises|0}\u202fMPa at its bore", "shown.hub_percent", ""},
	{"joint", "Insert used", "{joint.insert_utilisation|percent0}", "%", "von Mises up to {shown.insert_mises|0}\u202fMPa …", "shown.insert_percent", ""},
	{"joint", "Bore closes by", "{joint.bore_closure[0]|1} to {joint.bore_closure[2]|1}", "µm", "mean {joint.bore_closure[1]|1}", "", ""},
	{"joint", "Hub grows by", "{joint.hub_growth[0]|1} to {joint.hub_growth[2]|1}", "µm", "mean {joint.hub_growth[1]|1}", "", ""},

	// The phases are written so that they add up to the total: at most a hundredth off.
	{"cycle", "Cycle, nominal part", "{cycle.total|s}", "s", "", "cycle.total", ""},
	{"cycle", "Approach", "{cycle.approach|phase}", "s", "", "cycle.approach", ""},
	{"cycle", "Probe", "{cycle.probe|phase}", "s", "", "cycle.probe", ""},
	{"cycle", "Press", "{cycle.press|phase}", "s", "", "cycle.press", ""},
	{"cycle", "Settle", "{cycle.settle|phase}", "s", "", "cycle.settle", ""},
	{"cycle", "Confirm", "{cycle.confirm|phase}", "s", "", "cycle.confirm", ""},
	{"cycle", "Hold", "{cycle.hold|phase}", "s", "", "cycle.hold", ""},
	{"cycle", "Retract", "{cycle.retract|phase}", "s", "", "cycle.retract", ""},
	{"cycle", "Handling", "{cycle.handling|phase}", "s", "", "cycle.handling", ""},
	{"cycle", "Watch time of the probe, at least", "{probe.watch_time|after}", "s", "…", "probe.watch_time", ""},
	{"cycle", "Watch time, at least", "{cycle.watch_time|after}", "s", "…", "cycle.watch_time", "–"},
	{"cycle", "Cycle, part missing", "{shown.missing_watched|s}", "s", "…", "shown.missing_watched", "–"},
	{"cycle", "Peak speed", "{cycle.peak_speed|0}", "mm/s", "", "cycle.peak_speed", ""},
	{"cycle", "Heats like", "{heating.rms_setting|1}", "%", "held without end", "heating.rms_setting", "–"},

	{"travel", "First contact", "{travel.contact|pos}", "mm", "", "travel.contact", ""},
	{"travel", "Slow travel to contact", "{travel.slow_contact|pos}", "mm", "", "travel.slow_contact", ""},
	{"travel", "Press-in travel", "{travel.press_in|pos}", "mm", "", "travel.press_in", ""},
	{"travel", "Overtravel", "{travel.overtravel|pos}", "mm", "", "travel.overtravel", "–"},
	{"travel", "Readings of good parts", "{window.good_range[0]|3} to {window.good_range[1]|3}", "mm", "", "", ""},
	{"travel", "Guard band", "{window.guard_band|3}", "mm", "", "", ""},
	{"travel", "Accepted readings", "{window.overlap[0]|pos} to {window.overlap[1]|pos}", "mm", "", "", "none"},
	{"travel", "Uncertainty of a reading", "± {shown.expanded|3}", "mm", "two standard deviations", "", ""},

	{"probe", "Probe setting", "{probe.setting|setting}", "", "", "probe.setting", ""},
	{"probe", "Probe pushes", "{probe.low|0} to {probe.high|0}", "N", "typically {probe.typical|0}", "", ""},
	{"probe", "Probe end", "{probe.end|pos}", "mm", "", "probe.end", "–"},
	{"probe", "Latest probe end", "{probe.latest_end|pos}", "mm", "", "probe.latest_end", "–"},
	{"probe", "Nominal part stalls at", "{probe.stall_nominal|pos}", "mm", "", "probe.stall_nominal", "–"},
	{"probe", "Loosest sound part stalls at", "{probe.stall_loosest|pos}", "mm", "", "probe.stall_loosest", "–"},
	{"probe", "Room left to the probe end", "{probe.room|3}", "mm", "less the uncertainty", "probe.room", "–"},
	{"probe", "Refused surely below", "{probe.caught_below.effective|down1}", "µm", "effective; such a part holds {probe.caught_below.holding|force}", "probe.caught_below.effective", "none is"},
	{"probe", "Passed surely above", "{probe.passed_above|up1}", "µm", "effective", "probe.passed_above", "–"},
	{"probe", "Sound parts refused by the probe", "{probe.false_refusal_ppm|ppm}", "", "", "probe.false_refusal_ppm", "not known"},
	{"probe", "The probe adds", "{probe.added_time|s}", "s", "", "probe.added_time", "–"},

	{"run", "1 to the camera", "{sequence.steps[0].end[1]|pos}", "mm", "from {sequence.steps[0].begins|s}…", "sequence.steps[0].end[1]", ""},
	{"run", "2 picture", "{sequence.steps[1].end[1]|pos}", "mm", "from {sequence.steps[1].begins|s}…", "sequence.steps[1].end[1]", ""},
	{"run", "3 fast", "{sequence.steps[2].end[1]|pos}", "mm", "from {sequence.steps[2].begins|s}…", "sequence.steps[2].end[1]", ""},
	{"run", "4 probe", "{sequence.steps[3].end[0]|pos} to {sequence.steps[3].end[2]|pos}", "mm", "nominal {sequence.steps[3].end[1]|pos}; from {sequence.steps[3].begins|s}…", "sequence.steps[3].end[1]", ""},
	{"run", "5 press", "{sequence.steps[4].end[0]|pos} to {sequence.steps[4].end[2]|pos}", "mm", "nominal {sequence.steps[4].end[1]|pos}; from {sequence.steps[4].begins|s}…", "sequence.steps[4].end[1]", ""},
	{"run", "6 off the part, gently", "{sequence.steps[5].end[1]|pos}", "mm", "from {sequence.steps[5].begins|s}…", "sequence.steps[5].end[1]", ""},
	{"run", "7 clear", "{sequence.steps[6].end[1]|pos}", "mm", "from {sequence.steps[6].begins|s}…", "sequence.steps[6].end[1]", ""},
	{"run", "8 shake the stack on", "{sequence.steps[7].end[1]|pos}", "mm", "from {sequence.steps[7].begins|s}…", "sequence.steps[7].end[1]", ""},
	{"run", "8 shake the stack on, pass 2", "{sequence.steps[8].end[1]|pos}", "mm", "from {sequence.steps[8].begins|s}…", "sequence.steps[8].end[1]", ""},
	{"run", "8 shake the stack on, pass 3", "{sequence.steps[9].end[1]|pos}", "mm", "from {sequence.steps[9].begins|s}…", "sequence.steps[9].end[1]", ""},
	{"run", "9 home", "{sequence.steps[10].end[1]|pos}", "mm", "from {sequence.steps[10].begins|s}…", "sequence.steps[10].end[1]", ""},

	{"risk", "Parts within the drawing", "{risk.conforming_share|share}", "", "", "risk.conforming_share", ""},
	{"risk", "Wrong heights accepted", "{risk.consumer_ppm|ppm}", "", "", "risk.consumer_ppm", "not known"},
	{"risk", "Good parts refused", "{risk.producer_ppm|ppm}", "", "", "risk.producer_ppm", "not known"},
	{"risk", "Met in the approach", "{risk.early_contact_ppm|ppm}", "", "", "risk.early_contact_ppm", ""},

	// A sample stands on its side of its limit, rounded away from it: what is too tall by at
	// least samples.long, and so on.
	{"samples", "Too tall", "{samples.long|up3}…\u202fmm", "", "refused", "", "…"},
	{"samples", "Tallest good", "…{samples.tallest_good|down3}\u202fmm", "", "accepted", "", "–"},
	{"samples", "Shortest good", "{samples.shortest_good|up3}…\u202fmm", "", "accepted", "", "–"},
	{"samples", "Too short", "…{samples.short|down3}\u202fmm", "", "refused", "", "…"},
	{"samples", "Each with a probability of", "{samples.probability|share}", "", "", "", ""},
}

// A resultDocument is a result as it is written, with what is shown and is no part of it.
type resultDocument struct {
	*presstest.Document
	p *press.Plan
}

func documentOf(t *testing.T, p *press.Plan, r *press.Result) resultDocument {
	t.Helper()
	text, err := r.JSON(false)
	require.NoError(t, err)
	more := map[string]any{
		"step_worth": r.Force.StepWorth, "seat_strong": r.Impact.SeatStrong, "expanded": 2 * r.Window.Uncertainty,
	}
	put := func(name string, times float64, x *float64) {
		if x != nil {
			more[name] = times * *x
		}
	}
	put("missing_watched", 1, r.Cycle.MissingWatched)
	if j := r.Joint; j != nil {
		put("hub_mises", 1, j.HubMises)
		put("insert_mises", 1, j.InsertMises)
		put("hub_percent", 100, j.HubUtilisation)
		put("insert_percent", 100, j.InsertUtilisation)
	}
	pos := say.Positions(p)
	d, err := presstest.NewDocument(text, more, func(x float64, how string) string { return written(pos, x, how) })
	require.NoError(t, err)
	return resultDocument{d, p}
}

// written writes a figure in one of the ways of the table.
func written(pos words.Positions, x float64, how string) string {
	thousandth := func(round func(float64) float64, nudge float64) string {
		return words.Fixed(round(x*1000+nudge)/1000, 3)
	}
	switch how {
	case "trim2":
		return words.Trimmed(x, 2)
	case "set":
		return pos.Set(x)
	case "pos":
		return pos.Bare(x)
	case "down1": // as the drawing and the sentences: it never catches more than is said
		return strconv.FormatFloat(math.Floor(10*x)/10, 'f', 1, 64)
	case "up1":
		return strconv.FormatFloat(math.Ceil(10*x)/10, 'f', 1, 64)
	case "s", "phase":
		return words.SecondsBare(x)
	case "after":
		return words.AfterBare(x)
	case "setting":
		return words.Setting(x)
	case "force":
		return words.Force(x)
	case "share":
		return words.Share(x)
	case "ppm":
		return words.PPM(x)
	case "percent0":
		return words.Fixed(100*x, 0)
	case "up3":
		return thousandth(math.Ceil, -1e-6)
	case "down3":
		return thousandth(math.Floor, 1e-6)
	}
	decimals, err := strconv.Atoi(how)
	if err != nil {
		panic("no such way to write a figure: " + how)
	}
	return words.Fixed(x, decimals)
}

// shownPlans are the plans whose rows are compared: what is sound, what stalls, and what
// is blocked in one way or another.
var shownPlans = map[string][]string{
	"example":                     {},
	"two looks":                   {"probe.use", "true", "probe.confirm_time", "0.08"},
	"by hand":                     {"window.zone_start", "115.1", "window.push_stroke", "7.7001", "window.setting", "61"},
	"stalls":                      {"window.setting", "30", "window.zone_start", "110"},
	"no setting":                  {"station.max_force", "900"},
	"no window":                   {"station.reference_uncertainty", "0.2"},
	"never good":                  {"window.zone_start", "115.08", "window.push_stroke", "5"},
	"no way to press in":          {"parts[1].contact", "-2"},
	"solid insert":                {"joint.insert.bore", "0"},
	"over yield":                  {"joint.hub.yield", "20"},
	"probe and steps":             {"../../static/examples/pivot-bush.json"},
	"faster, settled and steeped": {"motion.settle_time", "0.12", "station.position_step", "0.001", "motion.slow_speed", "60"},
}

func shownPlan(t *testing.T, edits ...string) (*press.Plan, *press.Result) {
	t.Helper()
	p, _ := evaluated(t, example(t))
	if len(edits) == 1 { // another plan
		data, err := os.ReadFile(edits[0])
		require.NoError(t, err)
		p, faults := press.Decode(data)
		require.Empty(t, faults)
		return p, press.Evaluate(p)
	}
	d := p.Draft()
	for i := 0; i < len(edits); i += 2 {
		d.Set(edits[i], edits[i+1])
	}
	p, faults := d.Check()
	require.Empty(t, faults)
	return p, press.Evaluate(p)
}

// Every row of figures of the bench shows the key of the result that its name says, in its
// unit, and carries that figure to the last digit. A row that the table does not know fails,
// and so does one of the table that no plan shows.
func TestEveryFigureIsOfItsKey(t *testing.T) {
	met := map[string]bool{}
	for name, edits := range shownPlans {
		t.Run(name, func(t *testing.T) {
			p, r := shownPlan(t, edits...)
			d := documentOf(t, p, r)
			out := result(p, r, Drawings{}, places{})
			groups := append([]page.Figures{{ID: "setpoints", Rows: out.Setpoints}, {ID: "samples", Rows: out.Samples}}, out.Groups...)
			there := map[string]bool{}
			for _, g := range groups {
				for _, f := range g.Rows {
					there[g.ID+", "+f.Label] = true
					d.compare(t, g.ID, f)
				}
			}
			for _, row := range shownRows {
				key := row.group + ", " + row.label
				if there[key] {
					met[key] = true
				} else if _, known := d.Fill(row.value); known && groupShown(groups, row.group) && (row.label != "Probe" || r.Cycle.Probe > 0) && (row.label != "Bore closes by" || p.Joint.Insert.Bore > 0) {
					assert.Fail(t, "a figure of the result is not shown", key)
				}
			}
		})
	}
	for _, row := range shownRows {
		assert.True(t, met[row.group+", "+row.label], "no plan shows %s, %s", row.group, row.label)
	}
}

func groupShown(groups []page.Figures, id string) bool {
	for _, g := range groups {
		if g.ID == id {
			return len(g.Rows) > 0
		}
	}
	return false
}

// compare holds one row against the table.
func (d resultDocument) compare(t *testing.T, group string, f page.Figure) {
	t.Helper()
	for _, row := range shownRows {
		if row.group != group || row.label != f.Label {
			continue
		}
		where := group + ", " + f.Label
		value, known := d.Fill(row.value)
		if !known {
			assert.True(t, presstest.Fits(row.otherwise, f.Value), "%s: %q where there is no figure", where, f.Value)
			assert.Empty(t, f.Unit+f.Exact, where)
			return
		}
		if row.otherwise == "…" && !presstest.Fits(value, f.Value) { // a sample that cannot be made says so
			assert.NotContains(t, f.Value, "mm", where)
			return
		}
		if group == "samples" && row.otherwise == none && f.Value == none { // accepted, and wrong by the drawing
			q := &d.p.Requirement
			tall, _ := d.At("samples.tallest_good")
			short, _ := d.At("samples.shortest_good")
			assert.True(t, tall > q.HeightHigh || short < q.HeightLow, where)
			return
		}
		if strings.HasSuffix(row.value, "|phase}") { // rounded so that all of them add up: a hundredth less at most
			at, err := strconv.ParseFloat(f.Value, 64)
			require.NoError(t, err, where)
			x, _ := d.At(row.exact)
			assert.InDelta(t, x, at, 0.01, where)
		} else {
			assert.True(t, presstest.Fits(value, f.Value), "%s shows %q, want %q", where, f.Value, value)
		}
		assert.Equal(t, row.unit, f.Unit, where)
		note, _ := d.Fill(row.note)
		assert.True(t, presstest.Fits(note, f.Note), "%s: note %q, want %q", where, f.Note, note)
		exact := ""
		if row.exact != "" {
			x, ok := d.At(row.exact)
			require.True(t, ok, where)
			exact = words.Exact(x)
		}
		assert.Equal(t, exact, f.Exact, where)
		return
	}
	assert.Fail(t, "a row that the table of keys does not know", "%s, %s", group, f.Label)
}

// The rows of the fault catalogue show reading, time and detection of their own row of the
// result. That of a worn nest and of an insert that nobody looks for say so in words.
func TestEveryFaultRowIsOfItsKey(t *testing.T) {
	for name, edits := range shownPlans {
		p, r := shownPlan(t, edits...)
		d := documentOf(t, p, r)
		rows := result(p, r, Drawings{}, places{}).Faults
		require.Len(t, rows, len(r.Faults), name)
		for i, row := range rows {
			key := fmt.Sprintf("faults[%d].", i)
			if words.RefusedFirst(r.Faults[i]) {
				key += "probe."
			}
			of := func(member, how string) string {
				if s, known := d.Fill("{" + key + member + "|" + how + "}"); known {
					return s
				}
				return none
			}
			assert.Equal(t, words.Fault(r.Faults[i]).Word, row.Name, name)
			assert.Equal(t, of("reading", "3"), row.Reading, "%s, %s", name, row.Name)
			if words.TwoLooks(r) && !strings.HasSuffix(key, "probe.") {
				assert.Equal(t, of("reading", "3"), row.Reading, "%s, %s", name, row.Name)
				looked := fmt.Sprintf("faults[%d].probe.", i)
				want, known := d.Fill("{" + looked + "time|after}")
				if !known {
					want = none
				}
				assert.Equal(t, want, row.Time, "%s, %s", name, row.Name)
				if x, _ := d.At(looked + "detection"); r.Faults[i].Name != press.RowNestWorn {
					assert.Equal(t, words.Rarely(x), row.Detection, "%s, %s", name, row.Name)
				}
				continue
			}
			assert.Equal(t, of("time", "after"), row.Time, "%s, %s", name, row.Name)
			if x, _ := d.At(key + "detection"); r.Faults[i].Name != press.RowNestWorn {
				assert.Equal(t, words.Rarely(x), row.Detection, "%s, %s", name, row.Name)
			}
			for signal, got := range map[string]string{"arrival": row.Arrival, "zone": row.Zone} {
				want := map[any]string{true: "on", false: "off", nil: none}[d.Find(key+signal)]
				assert.Equal(t, want, got, "%s, %s, %s", name, row.Name, signal)
			}
		}
	}
}
