package press

import (
	"math"

	"ramplan/press/simulate"
)

// Codes of what is said beside small shares.
const (
	TailAssumed  = "tail-assumed"  // hangs on the assumed shape of the tails
	TailHard     = "tail-hard"     // parts beyond their limits are taken not to exist
	CountedNone  = "counted-none"  // none among the parts that were counted
	NotInModel   = "not-in-model"  // what no share is about
	WhyDifferent = "why-different" // closed form and simulated differ
)

// What makes closed form and simulated differ most.
const (
	ByStalls = "stalled" // parts that stall, which the closed form takes as seated
	ByLoose  = "loose"   // loose parts, whose height is right
	ByEarly  = "early"   // parts that are met early, a position error with them
	ByForce  = "force"   // force and stiffness multiply at the part's own force
)

// A Saying is a sentence beside small shares, by code and figures; press/words puts it
// into Message.
type Saying struct {
	Code    string   `json:"code"`
	Message string   `json:"message"`
	Shares  []string `json:"shares"` // keys of the named shares that it is about; none: all

	Parts     *int64   `json:"parts,omitzero"`         // counted-none
	UnderPPM  *float64 `json:"under_ppm,omitzero"`     // likewise
	ClosedPPM *float64 `json:"closed_ppm,omitzero"`    // why-different
	PPM       *float64 `json:"simulated_ppm,omitzero"` // likewise
	Cause     string   `json:"cause,omitzero"`         // likewise
}

// SmallPPM is under which share, in ppm, something has to be said.
const SmallPPM = 100

// shareNames are the keys of the named shares, in their order.
var shareNames = [simulate.Shares]string{"unseated", "long", "short", "loose", "conforming", "accepted", "early_contact", "false_accept",
	"false_accept_height", "false_accept_unseated", "false_accept_loose", "false_reject", "loose_fails"}

// beside are the other figures of a share that stand beside it: of the closed form, and of
// a bad lot.
func (s *Simulation) beside(name string) []*float64 {
	lot := s.BadLot
	if lot == nil {
		lot = &BadLot{math.Inf(1), math.Inf(1), math.Inf(1), math.Inf(1)}
	}
	return map[string][]*float64{
		"false_accept_height": {s.Closed.ConsumerPPM},
		"early_contact":       {s.Closed.EarlyContactPPM},
		"false_reject":        {s.Closed.ProducerPPM, &lot.FalseRejectPPM},
		"false_accept":        {&lot.FalseAcceptPPM},
		"unseated":            {&lot.UnseatedPPM},
		"loose":               {&lot.LoosePPM},
	}[name]
}

// ClosedSays tells what has to be said beside the shares of the closed form, without
// anything simulated; nothing where nothing can be pressed in.
func (r *Result) ClosedSays() []Saying {
	station, can := simulate.New(&r.Plan.Input, &r.Outcome)
	if !can {
		return nil
	}
	s := Simulation{Closed: ClosedForm{r.Risk.ConsumerPPM, r.Risk.ProducerPPM, &r.Risk.EarlyContactPPM, &r.Risk.ConformingShare}}
	s.say(station)
	return s.Says
}

// say tells what has to be said beside the shares.
func (s *Simulation) say(station *simulate.Station) {
	var assumed, hard, none []string
	for i, name := range shareNames {
		ppm := math.Inf(1)
		if s.Shares != nil {
			ppm = s.Shares.Named.All()[i].PPM
		}
		for _, shown := range s.beside(name) {
			if shown != nil {
				ppm = min(ppm, *shown)
			}
		}
		if s.Counted != nil {
			c := s.Counted.All()[i]
			ppm = min(ppm, c.PPM)
			if c.Count == 0 && s.Parts > 0 {
				none = append(none, name)
			}
		}
		if !(ppm < SmallPPM) {
			continue
		}
		ofNormal, ofLimits := station.Tails(simulate.Share(i))
		if ofNormal {
			assumed = append(assumed, name)
		}
		if ofLimits {
			hard = append(hard, name)
		}
	}
	if len(assumed) > 0 {
		s.Says = append(s.Says, Saying{Code: TailAssumed, Shares: assumed})
	}
	if len(hard) > 0 {
		s.Says = append(s.Says, Saying{Code: TailHard, Shares: hard})
	}
	if len(none) > 0 {
		parts, under := s.Parts, 3*perMillion/float64(s.Parts)
		s.Says = append(s.Says, Saying{Code: CountedNone, Shares: none, Parts: &parts, UnderPPM: &under})
	}
	s.Says = append(s.Says, Saying{Code: NotInModel, Shares: []string{}})
	if s.Shares != nil {
		s.compare(s.Closed.ConsumerPPM, "false_accept_height", s.Shares.Named.FalseAcceptHeight)
		s.compare(s.Closed.ProducerPPM, "false_reject", s.Shares.Named.FalseReject)
	}
}

// closedGood is to how many ppm the closed form's integrals are good.
const closedGood = 0.01

// compare tells why the closed form says something else, where it does.
func (s *Simulation) compare(closed *float64, name string, simulated EstimatedShare) {
	if closed == nil {
		return
	}
	difference := *closed - simulated.PPM
	if math.Abs(difference) <= max(0.1*max(*closed, simulated.PPM), closedGood) || *closed >= simulated.Low && *closed <= simulated.High {
		return
	}
	by := map[string]float64{ByStalls: *closed * s.Shares.Named.Unseated.PPM / perMillion, ByLoose: 0, ByEarly: 0}
	if name == "false_reject" { // what is loose, or met early, is not counted as refused there
		loose := &s.Shares.Matrix.Loose
		by[ByLoose] = loose.OnOff.PPM + loose.OffOn.PPM + loose.OffOff.PPM
		by[ByEarly] = s.Shares.Matrix.Conforming.EarlyContact.PPM
	}
	cause, rest := ByForce, math.Abs(difference-by[ByStalls]-by[ByLoose]-by[ByEarly])
	for _, c := range []string{ByStalls, ByLoose, ByEarly} {
		if by[c] > rest {
			cause, rest = c, by[c]
		}
	}
	ppm := simulated.PPM
	s.Says = append(s.Says, Saying{Code: WhyDifferent, Shares: []string{name}, ClosedPPM: closed, PPM: &ppm, Cause: cause})
}
