package press

import (
	"reflect"
	"strconv"
)

// Origin tells where an entry of a plan comes from.
type Origin int

// The origins of an entry.
const (
	FromPlan     Origin = iota // it was given
	FromDefault                // the field's default
	FromOthers                 // other entries, as [Field.Derived] says
	FromProposal               // the evaluation proposes it
	FromNothing                // nothing was given, and nothing stands in
)

// A Stated is one entry of a plan as the result rests on it.
type Stated struct {
	Path  string
	Field *Field
	From  Origin
	Value any // float64, string or bool; nil from nothing, and where a proposal does not exist
}

// Fields that say it in their Derived have nothing to stand in.
const notStated = "not stated"

// proposedField is what Derived says of a figure that the evaluation proposes.
const proposedField = "proposed"

// Stated lists every entry that this kind of plan has, in the order of the field
// table, whether it was given or not. An empty list of rows is one entry.
func (r *Result) Stated() []Stated {
	p := r.Plan
	s := stater{p: p, kind: p.Joint.Kind, standIns: r.standIns()}
	s.walk(root, reflect.ValueOf(p).Elem(), "")
	return s.out
}

// standIns are the figures that hold where the plan itself has none.
func (r *Result) standIns() map[string]*float64 {
	p := r.Plan
	margin := p.EdgeMargin()
	pilot := r.StandInPilot()
	out := map[string]*float64{
		"joint.pilot":    &pilot,
		"window.setting": &r.Force.Setting, "window.approach_end": &r.Travel.ApproachEnd, "window.push_stroke": r.Travel.PushStroke,
		"window.edge_margin": &margin,
	}
	if z := r.Window.Zone; z != nil {
		out["window.zone_start"], out["window.zone_end"] = z[0], z[1]
	}
	out["probe.setting"], out["probe.end"] = r.Probe.Setting, r.Probe.End
	if q := p.Sequence; q != nil {
		for i := range q.Steps {
			m := p.Motion
			out[stepPath(i, "speed")], out[stepPath(i, "accel")], out[stepPath(i, "decel")] = &m.ApproachSpeed, &m.Accel, &m.Decel
		}
	}
	return out
}

type stater struct {
	p        *Plan
	kind     string // of the joint, or of the step in hand
	standIns map[string]*float64
	out      []Stated
}

func (s *stater) walk(sc *schema, v reflect.Value, path string) {
	switch {
	case !sc.applies(s.kind) || sc.format:
	case v.Kind() == reflect.Pointer && !sc.isLeaf():
		s.optional(sc, v, path)
	case sc.isRows() && v.Len() == 0:
		s.out = append(s.out, Stated{Path: path, Field: sc.field, From: FromNothing})
	case sc.isRows():
		for i := range v.Len() {
			s.walk(sc.row, v.Index(i), path+"["+strconv.Itoa(i)+"]")
		}
	case sc.isTuple():
		for i, kid := range sc.kids {
			s.walk(kid, v.Index(i), path+kid.name)
		}
	case sc.isObject():
		outer := s.kind
		if i, has := sc.names["kind"]; has {
			s.kind = v.FieldByIndex(sc.kids[i].index).String()
		}
		defer func() { s.kind = outer }()
		for _, kid := range sc.kids {
			at := kid.name
			if path != "" {
				at = path + "." + kid.name
			}
			if !kid.format {
				s.walk(kid, v.FieldByIndex(kid.index), at)
			}
		}
	default:
		s.out = append(s.out, s.leaf(sc.field, v, path))
	}
}

// optional walks what may be absent as a whole: a section is then not stated, a pair is
// as two entries without a value.
func (s *stater) optional(sc *schema, v reflect.Value, path string) {
	switch {
	case !v.IsNil():
		s.walk(sc, v.Elem(), path)
	case sc.isTuple():
		for _, kid := range sc.kids {
			s.out = append(s.out, Stated{Path: path + kid.name, Field: kid.field, From: FromNothing})
		}
	}
}

func (s *stater) leaf(f *Field, v reflect.Value, path string) Stated {
	out := Stated{Path: path, Field: f}
	switch {
	case s.p.Given(path):
	case f.Default != nil:
		out.From = FromDefault
	case f.Derived == proposedField:
		out.From = FromProposal
	case f.Derived == notStated || f.Kind == Text || f.Kind == Choice:
		out.From = FromNothing
		return out
	default:
		out.From = FromOthers
	}
	if v.Kind() == reflect.Pointer {
		if v.IsNil() {
			if x := s.standIns[path]; x != nil {
				out.Value = *x
			}
			return out
		}
		v = v.Elem()
	}
	out.Value = v.Interface()
	return out
}
