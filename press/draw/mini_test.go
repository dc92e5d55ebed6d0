package draw

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// minisOf draws the small strips of every row of a plan.
func minisOf(p *press.Plan, r *press.Result, o Options) []*canvas.Picture {
	s := NewMinis(p, r)
	var out []*canvas.Picture
	for i, row := range r.Faults {
		o.ID = fmt.Sprint("mini-", i)
		out = append(out, s.Row(row, o))
	}
	return out
}

// TestMiniLabels looks at the small strips of every kind of plan and of random
// ones: no label leaves the strip or touches another.
func TestMiniLabels(t *testing.T) {
	drawn := 0
	look := func(name string, p *press.Plan) {
		for _, width := range []float64{0, 180, 320} {
			for _, d := range minisOf(p, press.Evaluate(p), Options{Width: width}) {
				drawn++
				labelsApart(t, d, name+": "+d.Title())
			}
		}
	}
	for name, p := range drawtest.Plans(t) {
		look(name, p)
	}
	random := rand.New(rand.NewPCG(5, 6))
	for n := 0; n < 120; {
		if p, ok := drawtest.RandomPlan(t, random); ok {
			n++
			look(fmt.Sprint("plan ", n), p)
		}
	}
	assert.Greater(t, drawn, 2000)
}

// TestMiniAnyResult draws rows of results that no plan leads to.
func TestMiniAnyResult(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 8))
	p := drawtest.Example(t, nil)
	for i := range 300 {
		r, _ := randomResult(random)
		for k, verdict := range []string{press.EarlyContact, press.Good, press.FaultWord} {
			r.Faults = append(r.Faults, press.FaultRow{Name: fmt.Sprint("row ", k), Verdict: verdict, Own: true})
		}
		for _, d := range minisOf(p, r, Options{}) {
			labelsApart(t, d, fmt.Sprint("result ", i))
			drawtest.WellFormedSVG(t, svgOf(d))
		}
	}
}

// TestMiniPlaces wants each row's marker at its reading, at the push end where
// nothing is met, and nowhere where the part is met before the push begins. The
// expected places are computed from the result and the stretch that is shown
// (derived).
func TestMiniPlaces(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	s := NewMinis(p, r)
	seen := map[string]int{}
	for _, row := range r.Faults {
		d := s.lay(row, Options{})
		x, inside := d.tip()
		share := func(mm float64) float64 { return 1 + (d.width-2)*(mm-s.lens[0])/(s.lens[1]-s.lens[0]) }
		switch {
		case row.Verdict == press.EarlyContact:
			seen["early"]++
			assert.False(t, inside, row.Name)
			assert.Contains(t, d.title(), "met in the approach", row.Name)
		case row.Reading == nil:
			seen["end"]++
			require.True(t, inside, row.Name)
			assert.InDelta(t, share(*r.Travel.PushEnd), x, 1e-9, row.Name)
			assert.Contains(t, d.title(), "stops at the push end", row.Name)
		case *row.Reading >= s.lens[0] && *row.Reading <= s.lens[1]:
			seen["read"]++
			require.True(t, inside, row.Name)
			assert.InDelta(t, share(*row.Reading), x, 1e-9, row.Name)
			assert.Contains(t, d.title(), figure(*row.Reading, 3), row.Name)
		default:
			seen["off"]++
			assert.False(t, inside, row.Name)
			assert.Contains(t, d.title(), figure(*row.Reading, 3), row.Name)
		}
	}
	for _, kind := range []string{"early", "end", "read"} {
		assert.NotZero(t, seen[kind], "no row is %s", kind)
	}
}

// TestMiniSVG: one scheme of classes, ids of its own, and the shared figures in
// the text equivalent (derived: those of the strip).
func TestMiniSVG(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	ids := map[string]bool{}
	for _, d := range minisOf(p, r, Options{}) {
		svg := string(svgOf(d))
		drawtest.WellFormedSVG(t, []byte(svg))
		assert.Contains(t, svg, `class="drawing mini"`)
		for _, shape := range regexp.MustCompile(`<(path|text) [^>]*>`).FindAllString(svg, -1) {
			assert.Regexp(t, `class="(fill|line)-(paper|ground|ink|quiet|faint|good|long|short|accent|alert)"`, shape)
		}
		for _, id := range regexp.MustCompile(` id="[^"]+"`).FindAllString(svg, -1) {
			assert.False(t, ids[id], "%s twice", id)
			ids[id] = true
		}
		desc := strings.ReplaceAll(d.Description(), "\u202f", " ")
		assert.Equal(t, "Required readings 115.05 to 115.23 mm, zone 115.08 to 115.35 mm, push end 115.19 mm.", desc)
		assert.Less(t, len(svg), 6000)
	}
	var b bytes.Buffer
	require.NoError(t, NewMinis(p, r).Row(r.Faults[0], Options{ID: "one"}).SVG(&b))
	assert.Contains(t, b.String(), ">good</text>")
	assert.Contains(t, b.String(), ">zone</text>")
}

func TestWidest(t *testing.T) {
	for _, c := range []struct{ x0, x1, from, to float64 }{{0, 10, 4, 10}, {0, 5, 0, 4}, {5, 5, 5, 5}, {6, 3, 6, 6}} {
		from, to := widest(c.x0, c.x1, 4)
		assert.Equal(t, []float64{c.from, c.to}, []float64{from, to}, "%+v", c)
	}
}

// TestLookMini writes the small strips of every kind of plan to the folder of
// -look.
func TestLookMini(t *testing.T) {
	if *look == "" {
		t.Skip("no folder given with -look")
	}
	for name, p := range drawtest.Plans(t) {
		for i, d := range minisOf(p, press.Evaluate(p), Options{}) {
			require.NoError(t, os.WriteFile(filepath.Join(*look, fmt.Sprintf("mini-%s-%02d.svg", name, i)), svgOf(d), 0o644))
		}
	}
}
