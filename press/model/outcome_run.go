package model

// Probe tells whether a low-force push first can find a loose fit and, where one is in
// use, what it does. All but the first three are nil unless it is in use and its end is
// known.
type Probe struct {
	Possible       bool     `json:"possible"`
	HighestSetting *float64 `json:"highest_setting"` // %
	InUse          bool     `json:"in_use"`

	Setting         *float64   `json:"setting"` // %
	Low             *float64   `json:"low"`     // N
	Typical         *float64   `json:"typical"` // N
	High            *float64   `json:"high"`    // N
	End             *float64   `json:"end"`     // mm, E_p
	LatestEnd       *float64   `json:"latest_end"`
	PassLimit       *float64   `json:"pass_limit"`    // mm, Q: a part passes that rests at or before it
	StallNominal    *float64   `json:"stall_nominal"` // mm; nil where it does not stall
	StallLoosest    *float64   `json:"stall_loosest"` // mm, the loosest sound part; likewise
	Room            *float64   `json:"room"`          // mm, from there to the end, less the uncertainty
	WatchTime       *float64   `json:"watch_time"`    // s
	AddedTime       *float64   `json:"added_time"`    // s, by which the cycle of a part grows
	RefusedAtZero   *float64   `json:"refused_at_zero"`
	CaughtBelow     *Caught    `json:"caught_below"` // nil: none is caught surely
	PassedAbove     *float64   `json:"passed_above"` // µm; nil: none passes surely
	FalseRefusalPPM *float64   `json:"false_refusal_ppm"`
	Detection       *Detection `json:"detection"`
}

// Caught is the interference under which the probe refuses surely, and what such a part
// holds.
type Caught struct {
	Effective float64 `json:"effective"` // µm
	Holding   float64 `json:"holding"`   // N
}

// Detection is the chance of refusal against the effective interference, from none to
// the mean.
type Detection struct {
	Effective [21]float64 `json:"effective"` // µm
	Refused   [21]float64 `json:"refused"`
}

// ProbeRow is what a row of the fault catalogue does in the probe, and what both looks
// together say of it. Pointers are nil where the part is met before the push begins.
type ProbeRow struct {
	Arrival   *bool    `json:"arrival"`
	Zone      *bool    `json:"zone"`
	Reading   *float64 `json:"reading"` // mm; nil past the probe end
	Time      *float64 `json:"time"`    // s, until the verdict can be read
	Passed    *bool    `json:"passed"`
	Verdict   string   `json:"verdict"`
	Detection float64  `json:"detection"`
}

// RefusedByProbe is the verdict on what the probe does not let through.
const RefusedByProbe = "refused by the probe"

// SequenceRun is the cycle as it is run step by step.
type SequenceRun struct {
	Steps          []StepRun  `json:"steps"` // one a pass, of the nominal part
	Nominal        RunTrace   `json:"nominal"`
	Missing        RunTrace   `json:"missing"`
	Hold           *HoldTrace `json:"hold"`
	Elsewhere      []Lit      `json:"elsewhere"`
	Drift          Triple     `json:"drift"` // mm from home at the end: low, nominal, high
	Closes         bool       `json:"closes"`
	CyclesInStroke *int       `json:"cycles_in_stroke"` // nil: it never leaves the stroke
}

// StepRun is one pass of a step.
type StepRun struct {
	Step       int      `json:"step"` // index from 0
	Pass       int      `json:"pass"` // from 1
	Kind       string   `json:"kind"`
	Begins     float64  `json:"begins"`   // s
	Duration   float64  `json:"duration"` // s, with pause, settle, confirm and hold
	Start      Triple   `json:"start"`    // mm: low, nominal, high
	End        Triple   `json:"end"`
	Target     *float64 `json:"target"`      // mm; nil for a wait
	PeakSpeed  float64  `json:"peak_speed"`  // mm/s
	StartSpeed float64  `json:"start_speed"` // mm/s
	EndSpeed   float64  `json:"end_speed"`   // mm/s
}

// RunTrace is a run in time, without handling.
type RunTrace struct {
	Total    float64    `json:"total"` // s
	End      float64    `json:"end"`   // mm
	Timeline []Instant  `json:"timeline"`
	Signals  RunSignals `json:"signals"`
}

// Instant is a moment at which the movement changes: values just after it.
type Instant struct {
	Time         float64 `json:"time"`         // s
	Position     float64 `json:"position"`     // mm
	Speed        float64 `json:"speed"`        // mm/s, signed
	Acceleration float64 `json:"acceleration"` // mm/s², signed
	Step         int     `json:"step"`
}

// RunSignals are the signals of a run.
type RunSignals struct {
	Arrival     Changes  `json:"arrival"`
	StepZone    Changes  `json:"step_zone"`
	StationZone *Changes `json:"station_zone"` // nil where there is none
}

// Changes is a signal in time.
type Changes struct {
	First   bool      `json:"first"`   // at the start
	Changes []float64 `json:"changes"` // s
}

// HoldTrace is the run in which the ram had to hold.
type HoldTrace struct {
	Step             int     `json:"step"`
	Pass             int     `json:"pass"`
	Speed            float64 `json:"speed"`             // mm/s, where the input goes off
	StoppingDistance float64 `json:"stopping_distance"` // mm
	Rest             float64 `json:"rest"`              // mm
	Resumes          float64 `json:"resumes"`           // s from the start
	Cancelled        bool    `json:"cancelled"`
	RunTrace
}

// Lit is a stretch in which a zone signal is on that began outside the press.
type Lit struct {
	Signal string  `json:"signal"`
	Step   int     `json:"step"`
	Pass   int     `json:"pass"`
	From   float64 `json:"from"` // s
	To     float64 `json:"to"`   // s
}
