package press

import (
	"context"

	"github.com/go-json-experiment/json"

	"ramplan/press/model"
	"ramplan/press/simulate"
	"ramplan/press/study"
)

// SimulationFormat is the name of the format of simulations.
const SimulationFormat = "ramplan.simulation/1"

// A Simulation is what becomes of many parts at the station of a plan. Figures that do
// not exist are nil.
type Simulation struct {
	Format     string  `json:"format"`
	PlanDigest string  `json:"plan_digest"`
	File       string  `json:"file,omitempty"`
	Parts      int64   `json:"parts"` // that were counted
	Seed       uint64  `json:"seed"`
	Precision  float64 `json:"precision"`
	Complete   bool    `json:"complete"` // false: it was stopped
	Counting   bool    `json:"-"`        // it goes on, or did when it was last heard of

	Verdicts []SimulatedPair         `json:"verdicts"`
	Matrix   *SimulatedMatrix[int64] `json:"matrix"`
	Counted  *Named[CountedShare]    `json:"counted"`
	Shares   *EstimatedShares        `json:"shares"`
	Readings *SimulatedReadings      `json:"readings"`
	Closed   ClosedForm              `json:"closed_form"`
	BadLot   *BadLot                 `json:"bad_lot"`
	Worst    *WorstDay               `json:"worst_day"`
	Says     []Saying                `json:"says"`
}

// SimulatedPair is a verdict with the words that the plan's table holds for it.
type SimulatedPair struct {
	Pair  string   `json:"pair"`
	Words []string `json:"words"`
}

// CountedShare is a share of the counted parts, with its 95 % limits.
type CountedShare struct {
	Count int64   `json:"count"`
	PPM   float64 `json:"ppm"`
	Low   float64 `json:"low"`
	High  float64 `json:"high"`
}

// EstimatedShare is a share by exact integration and replications, ppm, with its 95 %
// limits.
type EstimatedShare struct {
	PPM  float64 `json:"ppm"`
	Low  float64 `json:"low"`
	High float64 `json:"high"`
}

// EstimatedShares are all of them.
type EstimatedShares struct {
	Matrix       SimulatedMatrix[EstimatedShare] `json:"matrix"`
	Named        Named[EstimatedShare]           `json:"named"`
	Points       int                             `json:"points"` // of one replication
	Replications int                             `json:"replications"`
	Met          bool                            `json:"met"` // as precise as was asked for
	readings     *simulate.Spread
}

// SimulatedReadings is the density of readings of parts that are not met early: where the
// ram would come to rest if the stroke were endless.
type SimulatedReadings struct {
	From    float64               `json:"from"`  // mm
	Width   float64               `json:"width"` // mm, of one cell
	Seated  [simulate.Cells]int64 `json:"seated"`
	Stalled [simulate.Cells]int64 `json:"stalled"`
	Below   int64                 `json:"below"`
	Above   int64                 `json:"above"`
}

// ClosedForm are the shares that the plan's result says, to be held against.
type ClosedForm struct {
	ConsumerPPM     *float64 `json:"consumer_ppm"`
	ProducerPPM     *float64 `json:"producer_ppm"`
	EarlyContactPPM *float64 `json:"early_contact_ppm"`
	ConformingShare *float64 `json:"conforming_share"`
}

// BadLot is the week that somebody remembers: friction at one end for all parts, hole and
// shaft anywhere within their limits. There is none of a joint without a fit.
type BadLot struct {
	UnseatedPPM    float64 `json:"unseated_ppm"`
	LoosePPM       float64 `json:"loose_ppm"`
	FalseAcceptPPM float64 `json:"false_accept_ppm"`
	FalseRejectPPM float64 `json:"false_reject_ppm"`
}

// SimulationOptions says what is simulated.
type SimulationOptions struct {
	Parts     int64   // to be counted; 0: none, only estimated
	Seed      uint64  // of the random numbers
	Precision float64 // to what share of itself, or of 1 ppm, the estimate is to come
	Doublings int     // an estimate ends with 2 to this power of points; 0: as many as there are
	Work      simulate.Work

	// Sofar is given a reader of the answer with the parts that are counted so far, when the
	// count begins; it may be called from any goroutine, and gives nil where none are, or
	// where the signals are not known. nil: nobody asks.
	Sofar func(read func() *Simulation)

	// Refined is told of each answer on the way, with as many points as were done, before
	// anything is counted; nil: nobody asks. It may keep what it gets.
	Refined func(*Simulation)
}

// Simulate presses parts in at the station of the plan. Where ctx ends before all is
// done, the answer holds what there is.
func (r *Result) Simulate(ctx context.Context, o SimulationOptions) *Simulation {
	s := &Simulation{Format: SimulationFormat, PlanDigest: r.PlanDigest(), File: r.File, Seed: o.Seed, Precision: o.Precision, Says: []Saying{}}
	station, can := simulate.New(&r.Plan.Input, &r.Outcome)
	if !can {
		s.Complete = true
		return s
	}
	s.Closed = ClosedForm{r.Risk.ConsumerPPM, r.Risk.ProducerPPM, &r.Risk.EarlyContactPPM, &r.Risk.ConformingShare}
	known := station.Known()
	station.AtMost(o.Doublings)
	if known {
		s.Verdicts = pairs(r.Verdict.Table)
		s.estimate(ctx, station, o)
	}
	s.Complete = ctx.Err() == nil
	if o.Parts > 0 {
		if o.Sofar != nil {
			before := *s
			o.Work.Sofar = func(read func() simulate.Tally) { o.Sofar(func() *Simulation { return before.with(station, read()) }) }
		}
		tally, complete := station.Count(ctx, o.Parts, o.Seed, o.Work)
		s.Parts, s.Complete = tally.Parts, s.Complete && complete
		s.Readings = readings(station, &tally)
		if known {
			s.count(&tally)
		}
	}
	if known {
		if ctx.Err() == nil || s.Parts > 0 { // else nobody waits for it
			s.Worst = r.WorstDay()
		}
		s.say(station)
	}
	return s
}

// with is the answer with parts that are counted so far.
func (s Simulation) with(station *simulate.Station, t simulate.Tally) *Simulation {
	if !station.Known() || t.Parts == 0 {
		return nil
	}
	s.Parts, s.Complete, s.Counting, s.Says = t.Parts, false, true, []Saying{}
	s.Readings = readings(station, &t)
	s.count(&t)
	s.say(station)
	return &s
}

// estimate finds the shares of all parts and of a bad lot.
func (s *Simulation) estimate(ctx context.Context, station *simulate.Station, o SimulationOptions) {
	var refined func(simulate.Estimated)
	if o.Refined != nil {
		refined = func(e simulate.Estimated) {
			one := *s
			one.Shares, one.Says = estimated(&e), []Saying{}
			one.say(station)
			o.Refined(&one)
		}
	}
	if e, _ := station.Estimate(ctx, o.Seed, o.Precision, o.Work, refined); e.Points > 0 {
		s.Shares = estimated(&e)
	}
	if lot, is := station.BadLot(ctx, o.Seed, o.Precision, o.Work); is {
		s.BadLot = &BadLot{
			UnseatedPPM: perMillion * lot.Unseated, LoosePPM: perMillion * lot.Loose,
			FalseAcceptPPM: perMillion * lot.FalseAccept, FalseRejectPPM: perMillion * lot.FalseReject,
		}
	}
}

// pairs are the five verdicts with what the table says of them.
func pairs(t model.Table) []SimulatedPair {
	return []SimulatedPair{{"on_on", t.OnOn}, {"on_off", t.OnOff}, {"off_on", t.OffOn}, {"off_off", t.OffOff}, {"early_contact", []string{}}}
}

func readings(station *simulate.Station, t *simulate.Tally) *SimulatedReadings {
	from, width := station.Density()
	return &SimulatedReadings{From: from, Width: width, Seated: t.Seated, Stalled: t.Stalled, Below: t.Below, Above: t.Above}
}

const perMillion = 1e6

func (s *Simulation) count(t *simulate.Tally) {
	s.Matrix = &SimulatedMatrix[int64]{}
	for i, row := range s.Matrix.All() {
		for j, cell := range row.All() {
			*cell = t.Matrix[i][j]
		}
	}
	s.Counted = &Named[CountedShare]{}
	for i, share := range s.Counted.All() {
		k := t.Count(simulate.Share(i))
		low, high := study.ShareLimits(k, t.Parts)
		*share = CountedShare{Count: k, PPM: perMillion * float64(k) / float64(max(1, t.Parts)), Low: perMillion * low, High: perMillion * high}
	}
}

func estimated(e *simulate.Estimated) *EstimatedShares {
	out := &EstimatedShares{Points: e.Points, Replications: simulate.Replications, Met: e.Met, readings: e.Spread}
	of := func(f simulate.Figure) EstimatedShare {
		return EstimatedShare{PPM: perMillion * f.Value, Low: perMillion * f.Low, High: perMillion * f.High}
	}
	for i, row := range out.Matrix.All() {
		for j, cell := range row.All() {
			*cell = of(e.Matrix[i][j])
		}
	}
	for i, share := range out.Named.All() {
		*share = of(e.Named[i])
	}
	return out
}

// JSON writes the simulation as one object on one line.
func (s *Simulation) JSON() ([]byte, error) {
	data, err := json.Marshal(s, json.WithMarshalers(finite), json.FormatNilSliceAsNull(true))
	if err != nil {
		return nil, err
	}
	return append(data, '\n'), nil
}
