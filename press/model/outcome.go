package model

import (
	"slices"

	"ramplan/press/verdict"
)

// An Outcome is everything that a station's figures lead to. Pointers are nil, and lists of
// unknown ends hold nil, where a figure does not exist.
type Outcome struct {
	Findings []Finding     `json:"findings"`
	Stack    Stack         `json:"stack"`
	Joint    *JointFigures `json:"joint"`
	Force    Force         `json:"force"`
	Probe    Probe         `json:"probe"`
	Travel   Travel        `json:"travel"`
	Window   Readings      `json:"window"`
	Verdict  *Verdict      `json:"verdict"`
	Risk     Risk          `json:"risk"`
	Cycle    Cycle         `json:"cycle"`
	Impact   Impact        `json:"impact"`
	Heating  Heating       `json:"heating"`
	Faults   []FaultRow    `json:"faults"`
	Samples  *Samples      `json:"samples"`
	Sequence *SequenceRun  `json:"sequence"`

	work *work // what lies between the figures
}

// inside is what lies between the figures, for what is asked of an outcome beside them.
// Only [Evaluate] knows it: an outcome that was put together by hand, as tests do, has its
// figures and nothing else, and asking it for more is a programmer's mistake.
func (r *Outcome) inside() *work {
	if r.work == nil {
		panic("model: this outcome was not made by Evaluate: it has figures, and nothing behind them that could be asked")
	}
	return r.work
}

// Severity of a finding.
type Severity string

// Severities, gravest first.
const (
	Blocker Severity = "blocker"
	Caution Severity = "caution"
	Note    Severity = "note"
)

// A Finding is one thing that the evaluation has to say about the plan. The
// figures are what its sentence is made from; press/words makes the sentence
// and puts it into Message.
type Finding struct {
	Severity Severity `json:"severity"`
	Code     string   `json:"code"`
	Message  string   `json:"message"`
	Path     string   `json:"path"` // the field that would mend it
	Row      string   `json:"-"`    // what the row is called to which it leads; empty for a nameless one and any other field
	Figures  any      `json:"-"`    // what is said: one of the types in findings_figures.go, or nil
}

// Blocked tells whether at least one blocker was found.
func (r *Outcome) Blocked() bool { return r.Count(Blocker) > 0 }

// Count gives the number of findings of this severity.
func (r *Outcome) Count(s Severity) int {
	n := 0
	for _, f := range r.Findings {
		if f.Severity == s {
			n++
		}
	}
	return n
}

// Height is one height of the stack, mm above the nest.
type Height struct {
	Mean  float64 `json:"mean"`
	Worst float64 `json:"worst"` // ± worst case
	RSS   float64 `json:"rss"`   // ± root-sum-square
	SD    float64 `json:"sd"`    // standard deviation
}

// Stack is the tolerance stack.
type Stack struct {
	Contact       Height  `json:"contact"` // unpressed, at first contact
	Seat          Height  `json:"seat"`    // seated
	PressInTravel float64 `json:"press_in_travel"`
}

// Triple is low, mean and high of one quantity.
type Triple = [3]float64

// JointFigures is what the joint demands, holds and suffers. Pointers are nil for a
// measured joint, of which only the demand is known.
type JointFigures struct {
	Interference      *Triple  `json:"interference"` // µm, shaft less hole
	Effective         *Triple  `json:"effective"`    // µm, after smoothing
	Pressure          *Triple  `json:"pressure"`     // MPa
	Demand            Triple   `json:"demand"`       // N at the seat
	Holding           *Triple  `json:"holding"`      // N
	HoldingService    *float64 `json:"holding_service"`
	HubHoop           *Triple  `json:"hub_hoop"`     // MPa at the bore
	InsertHoop        *Triple  `json:"insert_hoop"`  // MPa at its own bore
	BoreClosure       *Triple  `json:"bore_closure"` // µm on diameter
	HubGrowth         *Triple  `json:"hub_growth"`   // µm on diameter
	HubUtilisation    *float64 `json:"hub_utilisation"`
	InsertUtilisation *float64 `json:"insert_utilisation"`

	// Von Mises stress at the bores, MPa, at the highest pressure of room and
	// service, as the utilisations. It is shown and is no part of the document.
	HubMises    *float64 `json:"-"`
	InsertMises *float64 `json:"-"`
}

// Pair is a closed interval.
type Pair = [2]float64

// Force is the force window and the setting chosen in it.
type Force struct {
	Need            float64 `json:"need"`     // N
	Cap             float64 `json:"cap"`      // N
	Settings        *Pair   `json:"settings"` // %, exact range
	Steps           *Pair   `json:"steps"`    // %, first and last settable step inside
	Setting         float64 `json:"setting"`  // %
	SettingFeasible bool    `json:"setting_feasible"`
	Low             float64 `json:"low"`     // N at the setting
	Typical         float64 `json:"typical"` // N at the setting
	High            float64 `json:"high"`    // N at the setting

	// StepWorth is what one step of the setting adds to the typical push there, N,
	// by the slope of the curve. It is shown and is no part of the document.
	StepWorth float64 `json:"-"`
}

// Travel is where the ram goes. mm.
type Travel struct {
	ApproachEnd float64  `json:"approach_end"` // A
	Contact     float64  `json:"contact"`      // nominal first contact
	SlowContact float64  `json:"slow_contact"` // from A to the contact
	PressIn     float64  `json:"press_in"`
	SeatReading float64  `json:"seat_reading"` // nominal part, seated, under force
	PushStroke  *float64 `json:"push_stroke"`
	PushEnd     *float64 `json:"push_end"`   // E
	Overtravel  *float64 `json:"overtravel"` // from the seated reading to E
}

// Readings is the window of readings, mm.
type Readings struct {
	GoodRange   Pair         `json:"good_range"` // [x1, x2]
	GuardBand   float64      `json:"guard_band"` // w
	Acceptance  *Pair        `json:"acceptance"` // [a1, a2]
	Zone        *[2]*float64 `json:"zone"`       // [Z1, Z2]
	Overlap     *Pair        `json:"overlap"`
	Uncertainty float64      `json:"uncertainty"` // u
	By          Origins      `json:"by"`
	Target      *Target      `json:"target"` // nil under another rule
}

// Origins tell by what each figure of the window was found: by a rule, by a margin, or by
// hand. Nil where the figure does not exist.
type Origins struct {
	Setting     string  `json:"setting"`      // ForForce, ForTarget or ByHand
	ApproachEnd string  `json:"approach_end"` // ByClearance or ByHand
	ZoneStart   *string `json:"zone_start"`   // ByGuard, ByTarget, ByProcess or ByHand
	PushEnd     *string `json:"push_end"`     // likewise
	ZoneEnd     *string `json:"zone_end"`     // ByMargin or ByHand
}

// By what a figure was found beside the rules.
const (
	ByHand      = "hand"
	ByClearance = "clearance"
	ByMargin    = "margin"
)

// Target is how the window stands to the targets for which it was looked for.
type Target struct {
	Met     bool           `json:"met"`
	Binding *string        `json:"binding"` // BindsAccept, BindsReject or BindBoth; nil without a window
	Measure *float64       `json:"measure"` // the larger share in terms of its target; nil without a window
	Changes []TargetChange `json:"changes"` // see [Outcome.TargetChanges]; nil here
}

// Which target binds.
const (
	BindsAccept = "false_accept"
	BindsReject = "false_reject"
	BindBoth    = "both"
)

// The drawing's words for a part, and the outcome for no insert.
const (
	Long    = "long"
	Good    = "good"
	Short   = "short"
	Missing = "missing"
)

// Segment is a stretch of readings with one state of the signals.
type Segment struct {
	From    float64 `json:"from"`
	To      float64 `json:"to"`
	Arrival bool    `json:"arrival"`
	Zone    bool    `json:"zone"`
	Part    string  `json:"part"` // Long, Good or Short
}

// Verdict is what the two signals say.
type Verdict struct {
	Segments  []Segment `json:"segments"`
	End       PushEnd   `json:"end"`
	Table     Table     `json:"table"`
	Ambiguous bool      `json:"ambiguous"`
}

// PushEnd is where the ram rests when nothing stops it.
type PushEnd struct {
	Position float64 `json:"position"`
	Zone     bool    `json:"zone"`
}

// Table holds the words behind each signal pair: arrival first, then zone.
type Table struct {
	OnOn   []string `json:"on_on"`
	OnOff  []string `json:"on_off"`
	OffOn  []string `json:"off_on"`
	OffOff []string `json:"off_off"`

	Checked bool `json:"-"` // another check finds a missing insert
}

// Words returns the words behind a signal pair.
func (t Table) Words(arrival, zone bool) []string { return verdict.Table(t).Words(arrival, zone) }

// Contradicts tells whether a signal pair cannot be trusted.
func (t Table) Contradicts(arrival, zone bool) bool {
	return verdict.Table(t).Contradicts(arrival, zone)
}

// Pressable tells whether there is a way to press in: the part is no lower before
// than after. Where it is not, travel, window, verdict, risk, faults and samples have
// no meaning.
func (r *Outcome) Pressable() bool { return r.Stack.PressInTravel >= 0 }

// MissingPasses tells whether a missing insert gives both signals.
func (r *Outcome) MissingPasses() bool {
	return r.Verdict != nil && slices.Contains(r.Verdict.Table.OnOn, Missing)
}

// Narrow tells whether the overlap is narrower than three times the expanded
// uncertainty, so that even a centred part is refused now and then.
func (r *Outcome) Narrow() bool {
	w := r.Window.Overlap
	return w != nil && w[1]-w[0] < 6*r.Window.Uncertainty-slack
}

// Risk is the closed-form risk of all parts (JCGM 106:2012, clause 9).
type Risk struct {
	ConformingShare float64  `json:"conforming_share"`
	ConsumerPPM     *float64 `json:"consumer_ppm"` // wrong heights accepted; nil where the nominal part stalls
	ProducerPPM     *float64 `json:"producer_ppm"` // right heights refused; likewise
	EarlyContactPPM float64  `json:"early_contact_ppm"`
}

// Cycle is the time of one cycle, s.
type Cycle struct {
	Approach     float64  `json:"approach"`
	Probe        float64  `json:"probe"`
	Press        float64  `json:"press"`
	Settle       float64  `json:"settle"`
	Confirm      float64  `json:"confirm"`
	Hold         float64  `json:"hold"`
	Retract      float64  `json:"retract"`
	Handling     float64  `json:"handling"`
	Total        float64  `json:"total"`
	MissingTotal *float64 `json:"missing_total"`
	WatchTime    *float64 `json:"watch_time"`
	PeakSpeed    float64  `json:"peak_speed"` // mm/s

	// MissingWatched is MissingTotal at a station that looks at nothing but the two
	// signals: there the ram stays until the watch time is over, so that the signals
	// can be latched before it retracts. It is shown and is no part of the document.
	MissingWatched *float64 `json:"-"`
	MissingMet     bool     `json:"-"` // without an insert something stops the ram: there is nothing to wait for
}

// Impact is what the moving mass adds, N.
type Impact struct {
	Contact      float64 `json:"contact"`       // at slow speed at first contact
	Early        float64 `json:"early"`         // at least: at approach speed, from the momentum alone
	SeatExpected float64 `json:"seat_expected"` // at the seat up to this much, from the typical force on
	SeatBound    float64 `json:"seat_bound"`    // at the seat never more

	// SeatStrong is SeatExpected from the push of a strong ram. It is shown and is no
	// part of the document.
	SeatStrong float64 `json:"-"`

	// EarlyPush is what the motor pushes behind a blow in the approach, where no limit is
	// in force: the typical push at the greatest setting. It is shown and is no part of the
	// document.
	EarlyPush float64 `json:"-"`
}

// Heating is the setting that heats like the cycle, %.
type Heating struct {
	RMSSetting *float64 `json:"rms_setting"`
}

// FaultRow is one row of the fault catalogue.
type FaultRow struct {
	Name      string   `json:"name"`
	Arrival   *bool    `json:"arrival"`
	Zone      *bool    `json:"zone"`
	Verdict   string   `json:"verdict"` // the words as one text, or EarlyContact or FaultWord
	Words     []string `json:"-"`       // of the table; none where there is no word for it
	Reading   *float64 `json:"reading"` // mm
	Time      *float64 `json:"time"`    // s
	Detection float64  `json:"detection"`

	Probe *ProbeRow `json:"probe"` // nil without a probe
	Own   bool      `json:"-"`     // one of the user's rows
	Good  bool      `json:"-"`     // it should be accepted
}

// EarlyContact and FaultWord are the verdicts beside the words of the table.
const (
	EarlyContact = "early contact"
	FaultWord    = "fault"
)

// Samples are the limit samples: heights above the datum, mm.
type Samples struct {
	Probability  float64  `json:"probability"`
	Long         float64  `json:"long"`
	Short        float64  `json:"short"`
	TallestGood  *float64 `json:"tallest_good"`
	ShortestGood *float64 `json:"shortest_good"`
}
