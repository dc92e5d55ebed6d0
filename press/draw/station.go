package draw

import (
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/words"
)

// A Scene is what comes to the station in one cycle.
type Scene struct {
	Course press.Course
	Row    *press.FaultRow // of the catalogue, or
	Height float64         // mm above the datum, of a part that the learner sets
}

// name of what comes.
func (s Scene) name() string {
	if s.Row != nil {
		return say.Fault(*s.Row).Word
	}
	return "Part " + words.Unit(words.Fixed(s.Height, 3), "mm") + " high"
}

// looks is how the picture differs from that of a sound part.
func (s Scene) looks() press.Picture {
	if s.Row == nil {
		return press.LooksSound
	}
	return s.Row.Case().Looks
}

// Station is the side view of the station with one scene: its picture at any
// moment, and what a script needs to move it. In the SVG the groups station-ram and
// station-tip follow the position by the scales of a [Motion], station-part moves
// down by the differences of the px that a [Pose] gives, station-rod grows from the
// guide; while the tool stands outside the magnified stretch, station-above or
// station-below says where it is in place of station-tip. The groups lamp-arrival-on,
// -off and -unknown, and those of zone, are shown in turn; the texts of station-phase,
// station-clock, station-position and station-verdict say the rest.
type Station struct {
	m       *stripModel
	p       *press.Plan
	r       *press.Result
	s       Scene
	compact bool
	id      string

	width, height float64
	side, lens    canvas.Rectangle
	lamps         canvas.Rectangle
	travel, glass canvas.Scale // mm to px, downward: of the side view and of the magnified stretch
	part          section
}

// Default sizes of the station, px.
const (
	stationWide         = 760
	stationCompact      = 390
	stationCompactLeast = 340
	stationHeight       = 430
	stationSide         = 330 // height of the side view
)

// NewStation lays out the side view.
func NewStation(p *press.Plan, r *press.Result, s Scene, o Options) *Station {
	d := &Station{m: newStripModel(p, r, press.Traces{}), p: p, r: r, s: s, compact: o.Compact, id: o.ID}
	d.part = sectionOf(p, r, s)
	const top = canvas.Margin + 42
	if o.Compact {
		d.width = o.width(stationCompact, stationCompactLeast)
		split := math.Floor(d.width * 0.46)
		d.side, d.lens = canvas.Rect(canvas.Margin, top, split-6, top+stationSide), canvas.Rect(split+6, top, d.width-canvas.Margin, top+stationSide)
		d.lamps = canvas.Rect(canvas.Margin, d.side.Y1+34, d.width-canvas.Margin, d.side.Y1+34+118)
		d.height = d.lamps.Y1 + canvas.Margin
	} else {
		d.width, d.height = stationWide, stationHeight
		d.side, d.lens = canvas.Rect(canvas.Margin, top, 300, top+stationSide), canvas.Rect(330, top, 550, top+stationSide)
		d.lamps = canvas.Rect(584, top, d.width-canvas.Margin, top+stationSide)
	}
	from, to := d.stretch(r)
	d.travel = canvas.NewScale(from, to, d.side.Y0+homeRoom, d.side.Y1-nestRoom)
	d.glass = canvas.NewScale(d.m.lens[0], d.m.lens[1], d.lens.Y0+beyondRoom, d.lens.Y1-beyondRoom)
	return d
}

// nestRoom is kept under the side view for the nest, px.
const nestRoom = 30

// stretch is the piece of the travel that the side view shows: all of it, unless
// the parts would be too small to be seen.
func (d *Station) stretch(r *press.Result) (from, to float64) {
	from, to = d.p.Station.Home, d.p.Station.Nest
	high := math.Max(to-r.Travel.Contact, 1e-3)
	if to-from > 6*high {
		from = to - 6*high
	}
	if to <= from {
		from = to - 6*high
	}
	return from, to
}

// A Pose is what the station looks like at one moment, in px of its picture.
type Pose struct {
	Time     float64 `json:"time"`     // s
	Position float64 `json:"position"` // mm
	Part     float64 `json:"part"`     // px down, the insert
	Arrival  string  `json:"arrival"`  // on, off or unknown
	Zone     string  `json:"zone"`
	Phase    string  `json:"phase"`
	Says     string  `json:"says"`
	Verdict  string  `json:"verdict"`       // short: what the lamps meant when they were read; empty before
	Read     bool    `json:"read,omitzero"` // here the lamps are read, or nobody can read them any more
}

// Lamps that nobody knows.
const unknownLamp = "unknown"

// Poses are the moments of the course; between two of them everything that moves
// moves straight, and the lamps stay.
func (d *Station) Poses() []Pose {
	out := make([]Pose, 0, len(d.s.Course.Frames))
	deepest, verdict := d.part.top, ""
	x, _ := d.saysFrom()
	for _, f := range d.s.Course.Frames {
		t := words.Phase(f.Phase)
		q := Pose{
			Time: f.Time, Position: f.Position,
			Arrival: words.OnOff(f.Arrival), Zone: words.OnOff(f.Zone), Phase: t.Word, Says: t.Meaning,
		}
		switch f.Phase {
		case press.PhaseStruck:
			q.Arrival, q.Zone, q.Read = unknownLamp, unknownLamp, true
		case press.PhaseRead:
			on := words.Pair{Arrival: f.Arrival, Zone: f.Zone}
			short := words.UpperFirst(d.verdict(on))
			if say.LampsMislead(d.p, d.r, d.s.Row, on) != "" {
				short = say.LampsSayGoodWrongly()
			}
			verdict = canvas.Bold(canvas.Black, canvas.Body).Clip(short, d.width-canvas.Margin-x)
			q.Says += " " + words.UpperFirst(on.String()) + ": " + d.verdict(on) + "." + say.LampsMislead(d.p, d.r, d.s.Row, on) + d.guarded(on)
			q.Read = true
		}
		q.Verdict = verdict
		if d.part.pushed && f.Phase != press.PhaseApproach {
			deepest = math.Max(deepest, math.Min(f.Position, d.s.Course.Rest))
		}
		q.Part = d.travel.At(deepest)
		out = append(out, q)
	}
	return out
}

// A Stretch puts positions on px: those between From and To lie on it, the others
// beyond its ends.
type Stretch struct {
	From float64 `json:"from"` // mm
	To   float64 `json:"to"`   // mm
	At   float64 `json:"at"`   // px of From
	End  float64 `json:"end"`  // px of To
}

func stretchOf(s canvas.Scale) Stretch { return Stretch{s.From, s.To, s.X0, s.X1} }

// A Motion is what a script needs to move a picture of the station.
type Motion struct {
	Drawn  Pose    `json:"drawn"`  // the pose of the picture
	Guide  float64 `json:"guide"`  // px down, from where the rod comes
	Tool   float64 `json:"tool"`   // px, by which the rod ends above the tool's face
	Travel Stretch `json:"travel"` // of the side view
	Higher float64 `json:"higher"` // px, by which the tool is drawn above the travel that is shown
	Glass  Stretch `json:"glass"`  // the magnified stretch
	Poses  []Pose  `json:"poses"`

	Decimals int `json:"decimals"` // of a position
}

// Motion of a picture that shows a pose.
func (d *Station) Motion(drawn Pose) Motion {
	return Motion{drawn, d.side.Y0 + guideEdge, toolHigh, stretchOf(d.travel), higher, stretchOf(d.glass), d.Poses(), d.decimals()}
}

// ramAtPx is where the face of the tool is drawn in the side view, px down. A tool
// above the travel that is shown stands off its ruler.
func (d *Station) ramAtPx(mm float64) float64 {
	if mm < d.travel.From {
		return d.travel.X0 - higher
	}
	return d.travel.At(mm)
}

// decimals of a position in this scene: so many that the place of rest is not written
// like an end of the zone or the push end beside which it lies.
func (d *Station) decimals() int {
	n := d.m.pos.Decimals()
	for _, edge := range []*float64{d.m.zoneStart, d.m.zoneEnd, d.m.end} {
		for edge != nil && n < 6 && math.Abs(d.s.Course.Rest-*edge) > 1e-6 && words.Fixed(d.s.Course.Rest, n) == words.Fixed(*edge, n) {
			n++
		}
	}
	return n
}

// at writes a position of the scene.
func (d *Station) at(mm float64) string { return words.Unit(words.Fixed(mm, d.decimals()), "mm") }

// guarded says of a part of a height that the drawing allows that it is refused all
// the same, and by what; empty for every other.
func (d *Station) guarded(on words.Pair) string {
	h, q, w := d.s.Height, d.p.Requirement, d.r.Window
	if d.s.Row != nil || on.Arrival && on.Zone || h < q.HeightLow || h > q.HeightHigh {
		return ""
	}
	if x := d.r.ReadingOf(h); w.Acceptance != nil && x >= w.Acceptance[0] && x <= w.Acceptance[1] {
		return words.RefusedByWindow
	}
	if say.Ruled(d.p) != "" {
		return words.RefusedByRule
	}
	return words.RefusedByGuard
}

// verdict says what the lamps that are read mean.
func (d *Station) verdict(on words.Pair) string {
	for _, t := range say.PairTexts(d.p, d.r) {
		if t.Pair == on {
			return t.Verdict
		}
	}
	return ""
}

// Before is the pose before the cycle, with lamps that say nothing yet.
func (d *Station) Before() Pose {
	q := d.Poses()[0]
	q.Arrival, q.Zone = unknownLamp, unknownLamp
	q.Phase, q.Says = say.BeforeThePush(), ""
	return q
}

// Read is the pose in which the lamps are read, or the last one.
func (d *Station) Read() Pose {
	all := d.Poses()
	for i, f := range d.s.Course.Frames {
		if f.Phase == press.PhaseRead {
			return all[i]
		}
	}
	return all[len(all)-1]
}

// Stills are the poses in which a phase begins: one picture each where nothing
// may move.
func (d *Station) Stills() []Pose {
	var out []Pose
	last := press.Phase("")
	all := d.Poses()
	for i, f := range d.s.Course.Frames {
		if f.Phase != last {
			out, last = append(out, all[i]), f.Phase
		}
	}
	return out
}

// Steps tell the course in words, a line each: every beginning of a phase and
// every change of a lamp.
func (d *Station) Steps() []string {
	var out []string
	var last Pose
	for i, q := range d.Poses() {
		if i > 0 && q.Phase == last.Phase && q.Arrival == last.Arrival && q.Zone == last.Zone {
			continue
		}
		line := say.PoseText(q.Time, d.at(q.Position), q.Phase)
		if q.Phase != last.Phase {
			line += " " + q.Says
		}
		if d.s.Course.Frames[i].Phase != press.PhaseRead && (i == 0 || q.Arrival != last.Arrival || q.Zone != last.Zone) {
			line += say.PoseLamps(q.Arrival, q.Zone)
		}
		out, last = append(out, line), q
	}
	return out
}

// Picture is the station in a pose.
func (d *Station) Picture(q Pose) *canvas.Picture {
	title := d.title()
	return canvas.NewPicture(canvas.Layout{
		Kind: "station", Compact: d.compact, ID: d.id, Title: title,
		Desc:  d.desc(q),
		Width: d.width, Height: d.height,
		Paint: func(p *canvas.Pen) { d.paint(p, q) },
	})
}

func (d *Station) title() string { return say.StationTitle(d.s.name()) }

func (d *Station) desc(q Pose) string {
	s := []string{say.StationPose(q.Phase, d.at(q.Position), q.Time)}
	if q.Arrival == unknownLamp {
		s = append(s, say.LampsUnknown())
	} else {
		s = append(s, say.LampsText(q.Arrival, q.Zone))
	}
	if z := d.m; z.zoneStart != nil && z.zoneEnd != nil && z.end != nil {
		s = append(s, say.SetAndRequired(z.pos, *z.zoneStart, *z.zoneEnd, *z.end, z.requirement[0], z.requirement[1]))
	}
	return strings.Join(s, " ")
}

func (d *Station) paint(p *canvas.Pen, q Pose) {
	p.Text(canvas.Bold(canvas.Black, canvas.Heading), canvas.Margin, canvas.Margin+canvas.Heading, canvas.Start,
		canvas.Bold(canvas.Black, canvas.Heading).Clip(d.s.name(), d.width-2*canvas.Margin))
	d.paintSide(p, q)
	d.paintLens(p, q)
	d.paintLamps(p, q)
}

// Name of what comes to the station.
func (d *Station) Name() string { return d.s.name() }
