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
)

func stations(t testing.TB, p *press.Plan, o Options) []*Station {
	t.Helper()
	r := press.Evaluate(p)
	var out []*Station
	for i := range r.Faults {
		c, ok := r.CourseOf(p, i)
		require.True(t, ok)
		out = append(out, NewStation(p, r, Scene{Course: c, Row: &r.Faults[i]}, o))
	}
	if len(r.Faults) > 0 {
		for _, by := range []float64{-0.3, 0, 0.2, 12} {
			h := r.HeightOf(p, r.Nominal()) + by
			c, _ := r.CourseAt(p, h)
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
	for name, p := range plans(t) {
		look(name, p)
	}
	random := rand.New(rand.NewPCG(11, 6))
	for n := 0; n < 20; {
		if p, ok := randomPlan(t, random); ok {
			n++
			look(fmt.Sprint("plan ", n), p)
		}
	}
	assert.Greater(t, drawn, 4000)
}

// The lamps of the pose that is read are those of the catalogue. Derived.
func TestStationReadsAsTheCatalogue(t *testing.T) {
	p := example(t, nil)
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
	p := example(t, nil)
	d := stations(t, p, Options{ID: "one"})[0]
	before, read := d.Before(), d.Read()
	svg := string(d.Picture(read).svg())
	wellFormedSVG(t, []byte(svg))
	for _, class := range []string{"station-ram", "station-rod", "station-part", "station-tip", "station-phase", "station-clock", "station-position"} {
		assert.Equal(t, 1, strings.Count(svg, `<g class="`+class+`">`), class)
	}
	for _, lamp := range []string{"arrival", "zone"} {
		assert.Contains(t, svg, `<g class="lamp-`+lamp+`-on">`)
		assert.Contains(t, svg, `<g class="lamp-`+lamp+`-off" visibility="hidden">`)
		assert.Contains(t, svg, `<g class="lamp-`+lamp+`-unknown" visibility="hidden">`)
	}
	assert.Greater(t, read.Ram, before.Ram)
	assert.Greater(t, read.Tip, before.Tip)
	assert.Greater(t, read.Part, before.Part, "the insert is pressed in")
	last := d.Poses()[len(d.Poses())-1]
	assert.Equal(t, before.Ram, last.Ram, "home again")
	assert.Equal(t, read.Part, last.Part, "the insert stays")
	m := d.Motion(read)
	assert.Less(t, m.Guide+m.Tool, before.Ram+1e-9, "the rod never turns over")
	assert.NotContains(t, svg, "style=")
	var pdf bytes.Buffer
	require.NoError(t, d.Picture(read).PDF(&pdf))
}

func TestStationSteps(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	c, _ := r.CourseOf(p, 0)
	steps := NewStation(p, r, Scene{Course: c, Row: &r.Faults[0]}, Options{}).Steps()
	text := strings.Join(steps, "\n")
	// Derived: from the example plan's positions and times.
	for _, part := range []string{"107.46", "108.60", "115.14", "1.69", "arrival on, zone on"} {
		assert.Contains(t, strings.ToLower(text), part)
	}
	assert.Equal(t, 9, len(steps))
	assert.Contains(t, text, "Now the two lamps are read, once, and latched. Arrival on, zone on: good.")
	assert.Equal(t, 2, strings.Count(text, "rrival on, zone on"), "at rest, and as it is read")
}

// A place of rest beside the zone start is not written like the zone start. Derived:
// the zone of the example starts at 115.08, and a part of 25.061 reads 115.076.
func TestStationPositionsAreToldApart(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	h := r.HeightOf(p, 115.076)
	c, _ := r.CourseAt(p, h)
	d := NewStation(p, r, Scene{Course: c, Height: h}, Options{})
	text := strings.Join(d.Steps(), "\n")
	assert.Contains(t, text, "at 115.076\u202fmm: Read.")
	assert.Contains(t, text, "Arrival on, zone off: too tall.")
	assert.NotContains(t, text, "115.08")
	assert.Equal(t, 3, d.Motion(d.Read()).Decimals)
	assert.Contains(t, strings.Join(cardTexts(d.Picture(d.Read())), " "), "required")
	assert.Contains(t, d.desc(d.Read()), "Required by the drawing: 115.05 to 115.23")
	c, _ = r.CourseOf(p, 0)
	assert.Equal(t, 2, NewStation(p, r, Scene{Course: c, Row: &r.Faults[0]}, Options{}).Motion(Pose{}).Decimals)
}

func BenchmarkStationSVG(b *testing.B) {
	p := example(b, nil)
	r := press.Evaluate(p)
	c, _ := r.CourseOf(p, 0)
	for b.Loop() {
		d := NewStation(p, r, Scene{Course: c, Row: &r.Faults[0]}, Options{})
		_ = d.Picture(d.Read()).svg()
	}
}
