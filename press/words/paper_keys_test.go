package words

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/presstest"
)

// phrases are what the pages behind the sheet say in figures: in braces keys of the
// result's document, each with how it is written, behind "shown." what comes of the plan or
// is no part of the document; three dots stand for any text. By hand, from what the words
// in front of a figure say. A row is one text, its cells apart by " | ".
var phrases = []string{
	// Setpoint list.
	"Setting | {force.setting|trim2} %", "Approach end | {travel.approach_end|set} mm", "Push stroke | {travel.push_stroke|set} mm", "Push end | {travel.push_end|set} mm",
	"Zone start | {window.zone[0]|set} mm", "Zone end | {window.zone[1]|set} mm",
	"Approach speed | {shown.approach_speed|trim3} mm/s", "Slow speed | {shown.slow_speed|trim3} mm/s", "Retract speed | {shown.retract_speed|trim3} mm/s",
	"Acceleration | {shown.accel|trim3} mm/s²", "Deceleration | {shown.decel|trim3} mm/s²", "Confirm time | {cycle.confirm|trim3} s", "Hold time | {cycle.hold|trim3} s",
	"Watch time, at least | {cycle.watch_time|after} s",

	// Two looks.
	"Probe setting | {probe.setting|trim2} %", "Probe end | {probe.end|set} mm", "Probe confirm time | {shown.probe_confirm|trim3} s", "Probe watch time, at least | {probe.watch_time|after} s",
	"probe setting {probe.setting|trim2} %, probe end {probe.end|pos} mm, approach end {travel.approach_end|pos} mm", "probe setting {probe.setting|trim2} %, probe end {probe.end|pos} mm,",
	"First look, in the probe: at arrival plus {shown.probe_confirm|s} s or after its watch time (wait at least {probe.watch_time|after} s from home)",
	"none; the ram ends at {probe.end|pos} mm", "The probe, at setting {probe.setting|trim2} % to {probe.end|pos} mm: a loose fit is refused by the probe {samples.probability|share} of the time below {probe.caught_below.effective|down1} µm",
	"A weak fit with more than {probe.caught_below.effective|down1} µm of effective interference may go on; below that the probe refuses it {samples.probability|share} of the time, and one with just that much holds {probe.caught_below.holding|0} N",
	"effective interference under {probe.caught_below.effective|down1} µm, or 0", "Without any grip it is refused with a probability of {probe.refused_at_zero|share}", "One with just {probe.caught_below.effective|down1} µm of effective interference, at most",
	"{probe.setting|trim2} %; end {probe.end|pos} mm; confirm {shown.probe_confirm|s} s", "The load cell at the probe setting {probe.setting|trim2} %, three times. | at rest {probe.low|0} N to {probe.high|0} N, typically {probe.typical|0} N",
	"at rest in the probe at {probe.stall_loosest|up} mm or before", "typically at {probe.stall_nominal|pos} mm in the probe", "watch at least {probe.watch_time|after} s in the probe, {cycle.watch_time|after} s",
	"The full setting again at the plan's slow speed of {shown.slow_speed|trim3} mm/s; note the peak as well; then take the load cell out. | at rest {force.low|0} N to {force.high|0} N, typically {force.typical|0} N; peak not over {force.cap|0} N",

	"One sample too tall, probe left out | … | … | {shown.tall_low|up} to {shown.tall_high|down} mm",

	// Limit samples.
	"Too tall | {samples.long|up3}… mm", "Tallest good | …{samples.tallest_good|down3} mm", "Shortest good | {samples.shortest_good|up3}… mm", "Too short | …{samples.short|down3} mm",
	"{samples.long|up3} to … mm (too tall)", "and … to {samples.short|down3} mm (too short) must be refused",
	"samples “too tall”, {samples.long|up3}… mm", "samples “tallest good”, …{samples.tallest_good|down3} mm",
	"samples “shortest good”, {samples.shortest_good|up3}… mm", "samples “too short”, …{samples.short|down3} mm",
	"Master | {shown.master_from|up3} to {shown.master_to|down3} mm", "Loose sample | {shown.master_from|up3} to {shown.master_to|down3} mm",
	"one step of the station's positions ({shown.step|pos} mm)", "the narrowest band is {shown.band|near3} mm wide, so the measurement may be uncertain by ± {shown.half_band|down3} mm",
	"Press the master, {shown.master_from|up3} to {shown.master_to|down3} mm, three times at the production setting {force.setting|trim2} %",
	"reads {shown.master_low|up} to {shown.master_high|down} mm each time", "not over the settle time of {shown.settle|s} s",
	"probability of at least {samples.probability|share}",

	// Requirement.
	"Seated height | – | – | {shown.low|pos} to {shown.high|pos} mm", "Seated height, periodic measurement | – | – | {shown.low|pos} to {shown.high|pos} mm",
	"Measure the first good part: {shown.low|pos} to {shown.high|pos} mm", "over {shown.high|pos} mm it is too tall by the drawing", "under {shown.low|pos} mm it is too short by the drawing",
	"holds {shown.hold|0} N", "accepted readings {window.overlap[0]|pos} to {window.overlap[1]|pos} mm",

	// Force.
	"at least {force.need|0} N, at most {force.cap|0} N; a sound ram gives {force.low|0} N to {force.high|0} N: between the two",
	"at setting {force.setting|trim2} % | 3 pushes", "with at least {impact.early|0} N, where part and tool may bear {force.cap|0} N",
	"setting {force.setting|trim2} %, three times. | at rest {force.low|0} N to {force.high|0} N, typically {force.typical|0} N",
	"then take the load cell out. | at rest {force.low|0} N to {force.high|0} N, typically {force.typical|0} N; peak not over {force.cap|0} N",
	"setting {shown.first|trim2} %, three times. | at rest {shown.first_low|0} N to {shown.first_high|0} N, typically {shown.first_typical|0} N",
	"setting {shown.half|trim2} %, three times. | at rest {shown.half_low|0} N to {shown.half_high|0} N, typically {shown.half_typical|0} N",

	// Positions, as they are proved and compared.
	"Push stroke: counted from the approach end at {travel.approach_end|pos} mm, also after the probe. A controller that counts from where the press starts is given the push end, {travel.push_end|pos} mm: this stroke",
	"setting {force.setting|trim2} %, approach end {travel.approach_end|pos} mm, push end {travel.push_end|pos} mm, zone {window.zone[0]|pos} to {window.zone[1]|pos} mm",
	"at home it shows {shown.home|pos} mm", "the setting {shown.first|trim2} %; read each of them back. | stroke to {shown.stroke|pos} mm; {shown.first|trim2} %; at most {shown.slow_speed|trim3} mm/s",
	"slow speed of {shown.slow_speed|trim3} mm/s",
	"at setting {shown.first|trim2} %; read the position. The push of {shown.first_typical|0} N is in the figure. | {shown.nest_low|down} to {shown.nest_high|up} mm, typically {shown.nest|pos} mm",
	"Enter the approach end; approach with no parts. | stops at {travel.approach_end|pos} mm",
	"Enter the setting {force.setting|trim2} % and the push stroke {travel.push_stroke|set} mm; push the empty nest. | ends at {shown.empty_end|pos} mm",
	"zone lamp on from {window.zone[0]|pos} to {window.zone[1]|pos} mm", "confirm {cycle.confirm|s} s",
	"{shown.approach_speed|trim3}, {shown.slow_speed|trim3}, {shown.retract_speed|trim3} mm/s", "watch at least {cycle.watch_time|after} s",
	"the ram ends at {travel.push_end|pos} mm", "at {travel.push_end|pos} mm nothing stopped it",
	"the nest itself stops the ram at {shown.empty_end|pos} mm, before the push ends at {travel.push_end|pos} mm",
	"Without an insert | … | … | {shown.missing_low|up} to {shown.missing_high|down} mm", "Empty nest | … | … | {shown.empty_low|up} to {shown.empty_high|down} mm",

	// What a part or the master reads.
	"and read {shown.master_low|up} to {shown.master_high|down} mm", "(it must read {shown.master_low|up} to {shown.master_high|down} mm",
	"Master that is good, {shown.height|pos} mm", "zone on | {shown.master_low|up} to {shown.master_high|down} mm", "zone off | {shown.master_low|up} to {shown.master_high|down} mm",
	"a part of {shown.height|pos} mm reads {shown.master_low|up} to {shown.master_high|down} mm",
	"all accepted; mean {shown.mean_low|down} to {shown.mean_high|up} mm",
	"A nominal part that stands less than … mm off its seat", // tested in truth_test.go
	"One sample too tall | … | … | {shown.tall_low|up} to {shown.tall_high|down} mm", "One sample too short | … | … | {shown.short_low|up} to {shown.short_high|down} mm",

	// How surely.
	"the push with the master finds a nest worn by {shown.worn|pos} mm in {shown.wear|share} of the cases", "the confirm time of {cycle.confirm|s} s", "(wait at least {cycle.watch_time|after} s from home",
	"finds it in {shown.wear|share} of the cases", "lamps {shown.worn_detection|rarely}, master check {shown.wear|rarely}", "the lamps see it in {shown.worn_detection|share} of the cases",
	"mostly do not. | lamps {shown.worn_detection|rarely}", "the check with the master in {shown.wear|share} of the cases", "the lamps on a part find it in {shown.worn_detection|share} of the cases", "worn by {shown.worn|pos} mm",
	"Two inserts are found only {shown.twice|share} of the time",

	// Fixed figures, of what the row is.
	"A part that reads 0.001 mm before the window", "A part that reads 0.001 mm past the window",
}

// keyed is a result in which the phrases find their figures.
func keyed(t *testing.T, p *press.Plan, r *press.Result) *presstest.Document {
	t.Helper()
	text, err := r.JSON(false)
	require.NoError(t, err)
	m, q, u := &p.Motion, &p.Requirement, 2*r.Window.Uncertainty
	more := map[string]any{
		"approach_speed": m.ApproachSpeed, "slow_speed": m.SlowSpeed, "retract_speed": m.RetractSpeed, "accel": m.Accel, "decel": m.Decel, "home": p.Station.Home, "stroke": p.Ram.Stroke,
		"low": q.HeightLow, "high": q.HeightHigh, "hold": p.Joint.HoldingRequired * p.Joint.HoldingSafety, "worn": p.Faults.NestWear,
	}
	rising := r.Rising()
	for i, name := range []string{"first", "half"} {
		if i < len(rising)-1 || i == 0 {
			f := r.PushAt(rising[i])
			more[name], more[name+"_low"], more[name+"_high"], more[name+"_typical"] = f.Setting, f.Low, f.High, f.Typical
			if i == 0 {
				more["nest"], more["nest_low"], more["nest_high"] = f.Reading, f.Reading-f.Within, f.Reading+f.Within
			}
		}
	}
	nest := r.PushAt(r.Force.Setting).Reading
	more["empty_low"], more["empty_high"] = nest-u, nest+u
	if e := r.Travel.PushEnd; e != nil {
		more["empty_end"] = min(nest, *e)
	}
	nominal := r.Nominal()
	mean := r.MeanWithin(30)
	more["step"], more["settle"] = p.Station.PositionStep, m.SettleTime
	more["master_from"], more["master_to"] = max(r.HeightOf(nominal)-p.Station.PositionStep, q.HeightLow), min(r.HeightOf(nominal)+p.Station.PositionStep, q.HeightHigh)
	more["height"], more["master_low"], more["master_high"] = r.HeightOf(nominal), nominal-u, nominal+u
	more["mean_low"], more["mean_high"] = nominal-mean, nominal+mean
	for _, x := range say.LimitSamples(p, r) {
		name := map[string]string{"Too tall": "tall", "Too short": "short"}[x.Name]
		if wide := x.To - x.From; !x.Missing && !x.Early && (more["band"] == nil || wide < more["band"].(float64)) {
			more["band"], more["half_band"] = wide, wide/2
		}
		if name != "" && !x.Missing {
			more[name+"_low"], more[name+"_high"] = r.ReadingOf(x.To)-u, r.ReadingOf(x.From)+u
		}
	}
	if TwoLooks(r) {
		more["probe_confirm"] = p.Probe.ConfirmTime
	}
	for _, f := range r.Faults {
		switch f.Name {
		case press.RowNestWorn:
			more["worn_detection"] = f.Detection
			pos := PositionsOf(p)
			if share, ok := r.WearFound(pos.up(nominal-u), pos.down(nominal+u)); ok {
				more["wear"] = share
			}
		case press.RowMissing:
			if f.Reading != nil {
				more["missing_low"], more["missing_high"] = *f.Reading-u, *f.Reading+u
			}
		case press.RowTwoInserts:
			more["twice"] = f.Detection
		}
	}
	pos := PositionsOf(p)
	d, err := presstest.NewDocument(text, more, func(x float64, how string) string {
		switch how {
		case "trim2":
			return Trimmed(x, 2)
		case "trim3":
			return Trimmed(x, 3)
		case "set":
			return pos.Set(x)
		case "pos":
			return pos.Bare(x)
		case "up":
			return pos.Bare(pos.up(x))
		case "down":
			return pos.Bare(pos.down(x))
		case "down1":
			return Fixed(math.Floor(x*10)/10, 1)
		case "up3":
			return pos.Fine().Bare(pos.Fine().up(x))
		case "down3":
			return pos.Fine().Bare(pos.Fine().down(x))
		case "near3":
			return pos.Fine().Bare(x)
		case "s":
			return SecondsBare(x)
		case "after":
			return AfterBare(x)
		case "share":
			return Share(x)
		case "rarely":
			return Rarely(x)
		}
		decimals, err := strconv.Atoi(how)
		require.NoError(t, err, how)
		return Fixed(x, decimals)
	})
	require.NoError(t, err)
	return d
}

var keyedPlans = map[string]changes{
	"example":            nil,
	"two looks":          {"probe.use": "true", "probe.confirm_time": "0.08"},
	"by hand":            {"window.zone_start": "115.1", "window.push_stroke": "7.69", "window.setting": "61"},
	"stalls":             {"window.setting": "30", "window.zone_start": "110"},
	"no setting":         {"station.max_force": "900"},
	"no window":          {"station.reference_uncertainty": "0.2"},
	"never good":         {"window.zone_start": "115.08", "window.push_stroke": "5"},
	"no way to press in": {"parts[1].contact": "-2"},
	"over yield":         {"joint.hub.yield": "20"},
	"settled":            {"motion.settle_time": "0.12"},
	"down to the nest":   {"window.push_stroke": "33"},
	"the zone ends":      {"window.push_stroke": "8", "window.zone_end": "115.2"},
	"two pass":           {"window.approach_end": "95", "window.zone_start": "100"},
	"before the zone":    {"window.zone_start": "115.16", "window.push_stroke": "7.73"},
}

// plainly is a text without the blanks that are set for people.
func plainly(s string) string { return strings.NewReplacer("\u202f", " ", "\u00a0", " ").Replace(s) }

// Every figure with a unit on a page behind the sheet is told by one of the phrases, which
// compute it again from the key that the words before it name: a figure of another key, or
// in another unit, is left over.
func TestEveryFigureOfThePagesIsOfItsKey(t *testing.T) {
	unit := regexp.MustCompile(`[−-]?\d[\d ]*(?:\.\d+)? (?:mm/s²|mm/s|mm|N|MPa|µm|s|%|ppm)(?:$|[^\w])`)
	used := map[string]bool{}
	for name, c := range keyedPlans {
		p := example(t, c)
		r := press.Evaluate(p)
		d := keyed(t, p, r)
		said := map[string]*regexp.Regexp{}
		for _, phrase := range phrases {
			text, known := d.Fill(phrase)
			if !known {
				continue
			}
			said[phrase] = regexp.MustCompile(strings.ReplaceAll(regexp.QuoteMeta(plainly(text)), "…", `[^|]*?`))
		}
		for _, paper := range PaperNames() {
			if paper == DaysPaper || paper == SharesPaper {
				continue // of no key of the result: see TestDaysAreOfTheirFigures, TestSharesAreOfTheirFigures
			}
			if paper == "basis" {
				continue // of the plan's own entries: see TestOutcomesAreOfTheirKeys and paper_basis_test.go
			}
			x, _ := Paper(paper, p, r)
			texts := append(append([]string{x.Lead, x.Lacking}, x.Notes...), x.Fill...)
			for i, row := range x.Rows {
				switch paper {
				case "faults":
					faultRow(t, d, p, r, name, i, row)
					row = slices.Clone(row[:3])
				case "failures":
					failureRow(t, d, p, r, row)
					if row[0] != Fault(press.FaultRow{Name: press.RowNestWorn}).Word {
						row = row[:7]
					}
				}
				texts = append(texts, strings.Join(row, " | "))
			}
			for _, text := range texts {
				left := plainly(text)
				for _, phrase := range phrases {
					if is := said[phrase]; is != nil && is.MatchString(left) {
						used[phrase] = true
						left = is.ReplaceAllString(left, "□")
					}
				}
				assert.Empty(t, unit.FindAllString(left, -1), "%s, %s: no phrase tells a figure of %q", name, paper, left)
			}
		}
	}
	for _, phrase := range phrases {
		assert.True(t, used[phrase], "no plan says %q", phrase)
	}
}

// faultRow holds the figures of a row of the fault catalogue against their own row of the
// result.
func faultRow(t *testing.T, d *presstest.Document, p *press.Plan, r *press.Result, name string, i int, row []string) {
	t.Helper()
	from, shift := "faults[%d].", 0
	if TwoLooks(r) {
		from, shift = "faults[%d].probe.", 1
	}
	reading := "faults[%d].reading"
	if RefusedFirst(r.Faults[i]) {
		reading = "faults[%d].probe.reading"
	}
	for column, text := range map[int]string{4: "{" + reading + "|3} mm", 5: "{" + from + "time|after} s", 6: "{" + from + "detection|rarely}"} {
		if column == 6 && (r.Faults[i].Name == press.RowNestWorn || NotLookedAt(p, r.Faults[i])) {
			continue
		}
		want, known := d.Fill(fmt.Sprintf(text, i))
		if !known {
			want = none
		}
		assert.Equal(t, plainly(want), plainly(row[column+shift]), "%s, %s", name, row[0])
	}
	assert.Equal(t, Fault(r.Faults[i]).Word, row[0])
}

// failureRow holds the detection of a failure against the row of that name.
func failureRow(t *testing.T, d *presstest.Document, p *press.Plan, r *press.Result, row []string) {
	t.Helper()
	for i, f := range r.Faults {
		if Fault(f).Word == row[0] && f.Name != press.RowNestWorn && !NotLookedAt(p, f) {
			key := "faults[%d].detection"
			if TwoLooks(r) {
				key = "faults[%d].probe.detection"
			}
			x, _ := d.At(fmt.Sprintf(key, i))
			assert.Equal(t, Rarely(x), row[7], row[0])
		}
	}
}

// The shares of all parts are of the keys that their names say.
func TestOutcomesAreOfTheirKeys(t *testing.T) {
	for name, c := range keyedPlans {
		p := example(t, c)
		r := press.Evaluate(p)
		d := keyed(t, p, r)
		ppm := func(key string) string {
			if x, ok := d.At(key); ok {
				return PPM(x)
			}
			return none
		}
		want := map[string]string{
			"Accepted, of wrong height": ppm("risk.consumer_ppm"), "Refused although good": ppm("risk.producer_ppm"), "Met in the approach": ppm("risk.early_contact_ppm"),
			"Within the drawing": none, "Accepted": none, "Refused": none,
		}
		if x, ok := d.At("risk.conforming_share"); ok {
			want["Within the drawing"] = Share(x)
		}
		// Who is accepted: the good ones that are not refused, and the wrong ones that are let in.
		consumer, known := d.At("risk.consumer_ppm")
		if producer, ok := d.At("risk.producer_ppm"); known && ok {
			accepted := r.Risk.ConformingShare - producer/1e6 + consumer/1e6
			want["Accepted"], want["Refused"] = Share(accepted), PPM((1-accepted)*1e6)
		}
		x, _ := Paper("basis", p, r)
		seen := 0
		for _, row := range x.Rows {
			if row[0] != "Shares of all parts" {
				continue
			}
			seen++
			got := row[2]
			if row[3] != none {
				got = Unit(row[2], row[3])
			}
			assert.Equal(t, want[row[1]], got, "%s, %s", name, row[1])
		}
		assert.Len(t, want, seen, name)
	}
}
