package draw

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

func stations(t testing.TB, p *press.Plan, o Options) []*Station {
	t.Helper()
	r := press.Evaluate(p)
	var out []*Station
	for i := range r.Faults {
		c, ok := r.CourseOf(i)
		require.True(t, ok)
		out = append(out, NewStation(p, r, Scene{Course: c, Row: &r.Faults[i]}, o))
	}
	if len(r.Faults) > 0 {
		for _, by := range []float64{-0.3, 0, 0.2, 12} {
			h := r.HeightOf(r.Nominal()) + by
			c, _ := r.CourseAt(h)
			out = append(out, NewStation(p, r, Scene{Course: c, Height: h}, o))
		}
	}
	return out
}

// TestStations draws the station with everything that can come, of every kind of
// plan and of random ones: no label touches another, in any pose that is shown
// as a still.
func TestStations(t *testing.T) {
	drawn := 0
	look := func(name string, p *press.Plan) {
		for _, o := range []Options{{}, {Compact: true}, {Compact: true, Width: 340}} {
			for _, d := range stations(t, p, o) {
				for _, q := range []Pose{d.Before(), d.Read()} {
					drawn++
					labelsApart(t, d.Picture(q), name+": "+d.title()+": "+q.Phase)
				}
			}
		}
	}
	for name, p := range drawtest.Plans(t) {
		look(name, p)
	}
	random := rand.New(rand.NewPCG(11, 6))
	for n := 0; n < 20; {
		if p, ok := drawtest.RandomPlan(t, random); ok {
			n++
			look(fmt.Sprint("plan ", n), p)
		}
	}
	assert.Greater(t, drawn, 4000)
}

// The lamps of the pose that is read are those of the catalogue. Derived.
func TestStationReadsAsTheCatalogue(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	word := map[bool]string{true: "on", false: "off"}
	for i, d := range stations(t, p, Options{})[:len(r.Faults)] {
		f, q := r.Faults[i], d.Read()
		if f.Arrival == nil {
			assert.Equal(t, "unknown unknown", q.Arrival+" "+q.Zone, f.Name)
			continue
		}
		assert.Equal(t, word[*f.Arrival]+" "+word[*f.Zone], q.Arrival+" "+q.Zone, f.Name)
		if f.Reading != nil {
			assert.InDelta(t, *f.Reading, q.Position, 1e-9)
		}
	}
}

// What moves is in groups, the shown lamp is visible and the others are not, and
// a later pose stands deeper by as much as the poses say.
func TestStationGroups(t *testing.T) {
	p := drawtest.Example(t, nil)
	d := stations(t, p, Options{ID: "one"})[0]
	before, read := d.Before(), d.Read()
	svg := string(svgOf(d.Picture(read)))
	drawtest.WellFormedSVG(t, []byte(svg))
	for _, class := range []string{"station-ram", "station-rod", "station-part", "station-tip", "station-phase", "station-clock", "station-position", "station-verdict"} {
		assert.Equal(t, 1, strings.Count(svg, `<g class="`+class+`">`), class)
	}
	for _, lamp := range []string{"arrival", "zone"} {
		assert.Contains(t, svg, `<g class="lamp-`+lamp+`-on">`)
		assert.Contains(t, svg, `<g class="lamp-`+lamp+`-off" visibility="hidden">`)
		assert.Contains(t, svg, `<g class="lamp-`+lamp+`-unknown" visibility="hidden">`)
	}
	assert.Greater(t, d.ramAtPx(read.Position), d.ramAtPx(before.Position))
	assert.Greater(t, read.Part, before.Part, "the insert is pressed in")
	last := d.Poses()[len(d.Poses())-1]
	assert.Equal(t, before.Position, last.Position, "home again")
	assert.Equal(t, read.Part, last.Part, "the insert stays")
	m := d.Motion(read)
	assert.Less(t, m.Guide+m.Tool, d.ramAtPx(before.Position)+1e-9, "the rod never turns over")
	assert.NotContains(t, svg, "style=")
	var pdf bytes.Buffer
	require.NoError(t, d.Picture(read).PDF(&pdf))
}

// The pointer of the magnified stretch stands at the ram's own position, and outside
// that stretch the picture says on which side, and where, the tool is. Derived: the
// stretch of the example begins after 113.44 mm.
func TestStationPointerIsTrue(t *testing.T) {
	p := drawtest.Example(t, nil)
	for _, o := range []Options{{}, {Compact: true}, {Compact: true, Width: 340}} {
		d := stations(t, p, o)[0]
		q := d.Read()
		q.Position = 113.44
		require.Less(t, q.Position, d.glass.From)
		svg, text := string(svgOf(d.Picture(q))), strings.Join(cardTexts(d.Picture(q)), "\n")
		assert.Contains(t, svg, `<g class="station-tip" visibility="hidden">`)
		assert.Contains(t, svg, `<g class="station-above">`)
		assert.Contains(t, text, "tool above, at 113.44")
		labelsApart(t, d.Picture(q), "above")
		q.Position = d.glass.To + 0.5
		svg, text = string(svgOf(d.Picture(q))), strings.Join(cardTexts(d.Picture(q)), "\n")
		assert.Contains(t, svg, `<g class="station-tip" visibility="hidden">`)
		assert.Contains(t, svg, `<g class="station-below">`)
		assert.Contains(t, text, "tool below, at "+fmt.Sprintf("%.2f", q.Position))
		labelsApart(t, d.Picture(q), "below")
		svg = string(svgOf(d.Picture(d.Read())))
		assert.Contains(t, svg, `<g class="station-tip">`)
		assert.Contains(t, svg, `<g class="station-above" visibility="hidden">`)
		assert.Contains(t, svg, `<g class="station-below" visibility="hidden">`)
		m := d.Motion(d.Read())
		assert.Equal(t, []float64{d.m.lens[0], d.m.lens[1]}, []float64{m.Glass.From, m.Glass.To})
	}
}

// One pose of every course is the one to stop at, and from there on the picture has
// the meaning of the lamps.
func TestStationStopsAtTheReading(t *testing.T) {
	p := drawtest.Example(t, nil)
	for _, d := range stations(t, p, Options{Compact: true}) {
		stops := 0
		for _, q := range d.Poses() {
			if q.Read {
				stops++
			}
			assert.Equal(t, stops == 0 || q.Arrival == unknownLamp, q.Verdict == "", "%s: %s", d.title(), q.Phase)
		}
		assert.Equal(t, 1, stops, d.title())
		if d.Read().Verdict != "" {
			assert.Contains(t, strings.Join(cardTexts(d.Picture(d.Read())), "\n"), d.Read().Verdict)
		}
	}
}

func TestStationSteps(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	c, _ := r.CourseOf(0)
	steps := NewStation(p, r, Scene{Course: c, Row: &r.Faults[0]}, Options{}).Steps()
	text := strings.Join(steps, "\n")
	// Derived: from the example plan's positions and times.
	for _, part := range []string{"107.46", "108.60", "115.14", "1.70", "arrival on, zone on"} {
		assert.Contains(t, strings.ToLower(text), part)
	}
	assert.Equal(t, 9, len(steps))
	assert.Contains(t, text, "Now the two lamps are read, once, and latched: the controller holds them until the next start. Arrival on, zone on: good.")
	assert.Equal(t, 2, strings.Count(text, "rrival on, zone on"), "at rest, and as it is read")
}

// A place of rest beside the zone start is not written like the zone start. Derived:
// the zone of the example starts at 115.08, and a part of 25.061 reads 115.076.
func TestStationPositionsAreToldApart(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	h := r.HeightOf(115.076)
	c, _ := r.CourseAt(h)
	d := NewStation(p, r, Scene{Course: c, Height: h}, Options{})
	text := strings.Join(d.Steps(), "\n")
	assert.Contains(t, text, "at 115.076\u202fmm: Read.")
	assert.Contains(t, text, "Arrival on, zone off: too tall.")
	assert.NotContains(t, text, "115.08")
	assert.Equal(t, 3, d.Motion(d.Read()).Decimals)
	assert.Contains(t, strings.Join(cardTexts(d.Picture(d.Read())), " "), "required")
	assert.Contains(t, d.desc(d.Read()), "Required by the drawing: 115.05 to 115.23")
	c, _ = r.CourseOf(0)
	assert.Equal(t, 2, NewStation(p, r, Scene{Course: c, Row: &r.Faults[0]}, Options{}).Motion(Pose{}).Decimals)
}

func BenchmarkStationSVG(b *testing.B) {
	p := drawtest.Example(b, nil)
	r := press.Evaluate(p)
	c, _ := r.CourseOf(0)
	for b.Loop() {
		d := NewStation(p, r, Scene{Course: c, Row: &r.Faults[0]}, Options{})
		_ = svgOf(d.Picture(d.Read()))
	}
}

// A part that the drawing allows and the window refuses says by what. By hand: the
// drawing of the example allows 24.91 to 25.09, less a guard band to each side.
func TestStationSaysWhatTheGuardRefuses(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	require.NotNil(t, r.Window.Acceptance)
	for h, want := range map[float64]bool{24.92: true, 25.08: true, 25: false, 24.80: false, 25.20: false} {
		c, _ := r.CourseAt(h)
		text := strings.Join(NewStation(p, r, Scene{Course: c, Height: h}, Options{}).Steps(), "\n")
		assert.Equal(t, want, strings.Contains(text, "good by the drawing, refused by the guard band"), "%v: %s", h, text)
	}
}
