package press

import "ramplan/press/simulate"

// A ReadingSpread is where parts read, seated ones and stalled ones apart, as it was
// estimated: not a part of the document of a simulation, whose own densities are counted.
type ReadingSpread struct {
	Seated, Stalled []Pair // mm, share of all parts a mm
	StalledPPM      float64
	AcceptedPPM     float64 // of all parts: stalled, and both signals on
	Points          int     // of one replication
	Seed            uint64
}

// leastStalledPPM is from how many stalled parts on they are spoken of.
const leastStalledPPM = 0.1

// Stalls tells whether parts stall that are worth speaking of.
func (s *ReadingSpread) Stalls() bool { return s != nil && s.StalledPPM >= leastStalledPPM }

// Spread is where the parts read, as far as it is known; nil before.
func (s *Simulation) Spread() *ReadingSpread {
	if s == nil || s.Shares == nil {
		return nil
	}
	return s.Shares.spread(s.Seed)
}

// PaperSpread is that of the shares on paper. It is nil, and nothing is estimated for it,
// where so few parts stall at most that they are not spoken of.
func (r *Result) PaperSpread() *ReadingSpread {
	if station, can := simulate.New(&r.Plan.Input, &r.Outcome); !can || !station.Known() || perMillion*station.MayStall() < leastStalledPPM {
		return nil
	}
	return r.PaperShares().Spread()
}

func (e *EstimatedShares) spread(seed uint64) *ReadingSpread {
	out := &ReadingSpread{StalledPPM: e.Named.Unseated.PPM, AcceptedPPM: e.Named.FalseAcceptUnseated.PPM, Points: e.Points, Seed: seed}
	of := e.readings
	for i := range simulate.SpreadCells {
		at := of.From + (float64(i)+0.5)*of.Width
		out.Seated = append(out.Seated, Pair{at, of.Seated[i] / of.Width})
		out.Stalled = append(out.Stalled, Pair{at, of.Stalled[i] / of.Width})
	}
	return out
}
