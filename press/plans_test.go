package press

import (
	"fmt"
	"math"
	"os"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/strict"
)

// example is the plan of the first start. Its data is invented.
func example(t testing.TB) *Plan {
	t.Helper()
	data, err := os.ReadFile("../static/examples/example-plan.json")
	require.NoError(t, err)
	p, ps := Decode(data)
	require.Empty(t, ps)
	return p
}

// with changes entries of a plan: path, text, path, text, …
func with(t testing.TB, p *Plan, changes ...string) *Plan {
	t.Helper()
	d := p.Draft()
	for i := 0; i < len(changes); i += 2 {
		d.Set(changes[i], changes[i+1])
	}
	q, ps := d.Check()
	require.Empty(t, ps)
	return q
}

// measuredJoint and touchJoint turn a draft to another kind of joint.
func (d *Draft) dropJoint() {
	kept := d.Entries[:0]
	for _, e := range d.Entries {
		if !strict.Below(e.Path, "joint") {
			kept = append(kept, e)
		}
	}
	d.Entries = kept
}

// besideRow adds a datum row that does not carry the insert and gives its mean.
func besideRow(d *Draft, t *rapid.T) float64 {
	i := 0
	for _, e := range d.Entries {
		if strings.HasSuffix(e.Path, "].nominal") {
			i++
		}
	}
	nominal := math.Round(rapid.Float64Range(1, 20).Draw(t, "beside nominal")*100) / 100
	for path, text := range map[string]string{
		"nominal": strict.PlainNumber(nominal), "minus": "0.02", "plus": "0.02", "contact": "0", "seat": "0", "datum": "true", "datum_count": "1",
	} {
		d.Set(fmt.Sprintf("parts[%d].%s", i, path), text)
	}
	return nominal
}

// randomPlan draws a plan in the scale of a workbench press.
func randomPlan(t *rapid.T) *Plan {
	d := &Draft{}
	set := func(path string, low, high float64) {
		d.Set(path, strict.PlainNumber(math.Round(rapid.Float64Range(low, high).Draw(t, path)*1e4)/1e4))
	}
	maybe := func(path string, low, high float64) {
		if rapid.Bool().Draw(t, path+" given") {
			set(path, low, high)
		}
	}
	d.Set("title.name", "random plan")
	set("ram.stroke", 80, 200)
	d.Set("ram.max_speed", "300")
	d.Set("ram.max_accel", "3000")
	maybe("ram.repeatability", 0, 0.05)
	maybe("ram.force_tolerance", 0, 30)
	maybe("ram.force_scatter", 0, 40)
	set("ram.moving_mass", 0, 10)
	maybe("ram.inertia_mass", 0, 60)
	d.Set("ram.direction", rapid.SampledFrom([]string{Down, Up, Level}).Draw(t, "direction"))
	d.Set("ram.curve.interpolation", rapid.SampledFrom([]string{"monotone", "linear"}).Draw(t, "interpolation"))
	c, f := 5.0, 50.0
	for i := range rapid.IntRange(2, 6).Draw(t, "points") {
		d.Set(fmt.Sprintf("ram.curve.points[%d][0]", i), strict.PlainNumber(c))
		d.Set(fmt.Sprintf("ram.curve.points[%d][1]", i), strict.PlainNumber(f))
		c += float64(rapid.IntRange(4, 18).Draw(t, "step"))
		f += float64(rapid.IntRange(40, 900).Draw(t, "rise"))
	}
	set("station.nest", 60, 150)
	maybe("station.nest_drift", 0, 0.03)
	set("station.stiffness", 500, 60000)
	maybe("station.nest_force", 0, 500)
	maybe("station.reference_uncertainty", 0, 0.03)
	set("station.max_force", 300, 5000)
	height := 0.0
	for i := range rapid.IntRange(1, 6).Draw(t, "rows") {
		at := func(name string) string { return fmt.Sprintf("parts[%d].%s", i, name) }
		nominal := math.Round(rapid.Float64Range(1, 20).Draw(t, "nominal")*100) / 100
		height += nominal
		d.Set(at("nominal"), strict.PlainNumber(nominal))
		set(at("minus"), 0, 0.05)
		set(at("plus"), 0, 0.05)
		d.Set(at("contact"), "1")
		d.Set(at("seat"), "1")
		d.Set(at("shape"), rapid.SampledFrom([]string{Uniform, Triangular, Normal}).Draw(t, "shape"))
		d.Set(at("insert"), strconv.FormatBool(rapid.Bool().Draw(t, "insert")))
		if i > 0 && rapid.IntRange(0, 4).Draw(t, "datum") == 0 {
			d.Set(at("datum"), "true")
			height -= nominal
		}
	}
	if rapid.IntRange(0, 4).Draw(t, "beside") == 0 {
		height -= besideRow(d, t)
	}
	if rapid.IntRange(0, 4).Draw(t, "checked") == 0 {
		d.Set("station.presence_check", "light barrier")
	}
	d.Set("requirement.height_low", strict.PlainNumber(height-0.08))
	d.Set("requirement.height_high", strict.PlainNumber(height+0.08))
	maybe("requirement.min_seating_force", 0, 400)
	randomJoint(t, d, set)
	for path, text := range map[string]string{"approach_speed": "180", "accel": "2000", "decel": "1500", "slow_speed": "8", "retract_speed": "200"} {
		d.Set("motion."+path, text)
	}
	maybe("motion.settle_time", 0, 1)
	maybe("joint.counterforce", 0, 100)
	maybe("window.guard_factor", 0, 2)
	if rapid.IntRange(0, 3).Draw(t, "by hand") == 0 {
		a := rapid.Float64Range(20, 120).Draw(t, "A")
		d.Set("window.approach_end", strict.PlainNumber(math.Round(a*100)/100))
		maybe("window.push_stroke", 0.1, 30)
		maybe("window.zone_start", 40, 120)
	}
	p, ps := d.Check()
	if len(ps) > 0 {
		t.Fatalf("the random plan is refused: %v", ps)
	}
	return p
}

func randomJoint(t *rapid.T, d *Draft, set func(path string, low, high float64)) {
	kind := rapid.SampledFrom([]string{Touch, Measured, Interference}).Draw(t, "joint")
	d.Set("joint.kind", kind)
	if kind == Touch {
		return
	}
	last := 0
	for p, ok := d.Get("parts[0].nominal"); ok && p != ""; p, ok = d.Get(fmt.Sprintf("parts[%d].nominal", last)) {
		last++
	}
	row := func(name, text string) { d.Set(fmt.Sprintf("parts[%d].%s", last, name), text) }
	for name, text := range map[string]string{"minus": "0.1", "plus": "0.1", "contact": "1", "seat": "0"} {
		row(name, text)
	}
	row("nominal", strict.PlainNumber(math.Round(rapid.Float64Range(0, 9).Draw(t, "travel")*100)/100))
	if kind == Measured {
		low := rapid.IntRange(0, 900).Draw(t, "force")
		for i, name := range []string{"force_low", "force_typical", "force_high"} {
			d.Set("joint."+name, strconv.Itoa(low*(i+1)))
		}
		return
	}
	set("joint.diameter", 4, 40)
	set("joint.engagement", 1, 8)
	set("joint.hub.outside_diameter", 45, 80)
	for _, side := range []string{"hub", "insert"} {
		d.Set("joint."+side+".modulus", "200000")
		d.Set("joint."+side+".poisson", "0.3")
		d.Set("joint."+side+".yield", "300")
		set("joint."+side+".roughness_rz", 0, 8)
	}
	d.Set("joint.fit", rapid.SampledFrom([]string{"H7/p6", "H7/s6", "H6/k5", "K7/h6", "H8/u8"}).Draw(t, "fit"))
	set("joint.friction_low", 0.02, 0.1)
	set("joint.friction_high", 0.1, 0.2)
	set("joint.drag", 0, 100)
}

// everyNumber calls f for every number that a value holds.
func everyNumber(v reflect.Value, path string, f func(path string, x float64)) {
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			everyNumber(v.Elem(), path, f)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				everyNumber(v.Field(i), path+"."+v.Type().Field(i).Name, f)
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			everyNumber(v.Index(i), fmt.Sprintf("%s[%d]", path, i), f)
		}
	case reflect.Map:
		for _, k := range v.MapKeys() {
			everyNumber(v.MapIndex(k), path+"."+k.String(), f)
		}
	case reflect.Float64:
		f(path, v.Float())
	}
}
