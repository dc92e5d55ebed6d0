package proving

import "ramplan/press/study"

// The results of the studies, one type a kind. Pairs are [lower, upper] limits, two-sided 95 %
// where nothing else is said; a nil one could not be computed.

// A Pair is a closed interval.
type Pair = [2]float64

// A T is Student's test of one figure.
type T struct {
	T  *float64 `json:"t"`
	DF *float64 `json:"df"`
	P  *float64 `json:"p"`
}

// An F is Fisher's test of one ratio of variances.
type F struct {
	F   *float64 `json:"f"`
	DF1 *float64 `json:"df1"`
	DF2 *float64 `json:"df2"`
	P   *float64 `json:"p"`
}

// Trend is Mann and Kendall's test.
type Trend struct {
	S   float64 `json:"s"`
	Tau float64 `json:"tau"`
	P   float64 `json:"p"`
}

// Serial is von Neumann's test.
type Serial struct {
	Ratio float64 `json:"ratio"`
	P     float64 `json:"p"`
}

// Spread is a standard deviation held against the planned one.
type Spread struct {
	PlannedSD float64  `json:"planned_sd"`
	P         *float64 `json:"p"`
}

// Known is a figure and its expanded uncertainty.
type Known struct {
	Value       float64  `json:"value"`
	Uncertainty *float64 `json:"uncertainty"`
}

// Supported is what ± pushes scattered, and what ± they support at one-sided 95 %.
type Supported struct {
	Value *float64 `json:"value"`
	Upper *float64 `json:"upper"`
}

// LoadCellResult tells whether the force is what the plan says.
type LoadCellResult struct {
	N          int             `json:"n"`
	Settings   []SettingForces `json:"settings"`
	Scatter    Scatter         `json:"scatter"`
	Fit        CurveFit        `json:"fit"`
	Drift      *ForceDrift     `json:"drift"`
	ColdWarm   *ColdWarm       `json:"cold_warm"`
	OddScatter *OddScatter     `json:"odd_scatter"`
	AtSetting  *AtSetting      `json:"at_setting"`
	Outliers   []int           `json:"outliers"` // row numbers from 1
}

// SettingForces are the pushes at one setting. N.
type SettingForces struct {
	Setting float64     `json:"setting"` // %
	N       int         `json:"n"`
	Mean    float64     `json:"mean"`
	SD      *float64    `json:"sd"`
	Predict *Pair       `json:"predict"` // for one further push
	Plan    *[3]float64 `json:"plan"`    // low, typical, high
	Place   *string     `json:"place"`   // Inside, Outside or Undecided
}

// Places of a prediction against the plan's band.
const (
	Inside    = "inside"
	Outside   = "outside"
	Undecided = "open"
)

// Scatter of the forces at their settings.
type Scatter struct {
	DF           float64  `json:"df"`
	Tolerance    *float64 `json:"tolerance"` // ± %
	Scatter      *float64 `json:"scatter"`   // ± N
	Split        string   `json:"split"`     // SplitPlanned or SplitFitted
	Factor       *float64 `json:"factor"`
	FactorLimits *Pair    `json:"factor_limits"`
	P            *float64 `json:"p"`
}

// By what the scatter is split into a share of the force and a constant.
const (
	SplitPlanned = "plan"
	SplitFitted  = "fitted"
)

// CurveFit is the entered curve fitted to the forces.
type CurveFit struct {
	Scale *Scale `json:"scale"`
	Bend  *F     `json:"bend"`
}

// Scale is by what the entered curve must be multiplied.
type Scale struct {
	Factor float64  `json:"factor"`
	Limits *Pair    `json:"limits"`
	T      *float64 `json:"t"`
	DF     float64  `json:"df"`
	P      *float64 `json:"p"`
}

// ForceDrift is how far the forces moved over the study, in standard deviations.
type ForceDrift struct {
	ChangeSD float64 `json:"change_sd"`
	T        float64 `json:"t"`
	DF       float64 `json:"df"`
	P        float64 `json:"p"`
}

// ColdWarm is by how much warm pushes differ from cold ones, in standard deviations.
type ColdWarm struct {
	DifferenceSD float64 `json:"difference_sd"`
	T            float64 `json:"t"`
	DF           float64 `json:"df"`
	P            float64 `json:"p"`
}

// OddScatter is the setting that scatters most beyond the others.
type OddScatter struct {
	Setting float64 `json:"setting"` // %
	P       float64 `json:"p"`
}

// AtSetting is the force at the plan's own setting. N.
type AtSetting struct {
	Setting float64 `json:"setting"` // %
	Force   float64 `json:"force"`
	Predict *Pair   `json:"predict"`
	Need    float64 `json:"need"`
	Cap     float64 `json:"cap"`
}

// StiffnessResult tells how stiff the station is and where its nest stands.
type StiffnessResult struct {
	N             int        `json:"n"`
	Levels        int        `json:"levels"`
	Used          int        `json:"used"`
	ForceFrom     string     `json:"force_from"`    // FromCell or FromCurve
	StartupBelow  *float64   `json:"startup_below"` // N
	Lowest        *Lowest    `json:"lowest"`
	Curvature     *Curvature `json:"curvature"`
	Line          *Line      `json:"line"`
	Stiffness     *Stiff     `json:"stiffness"`
	Nest          *NestFound `json:"nest"`
	Taught        *NestFound `json:"taught"`
	Repeatability *Supported `json:"repeatability"`
	Agreement     *Agreement `json:"agreement"`
	Trend         *Trend     `json:"trend"`
	Serial        *Serial    `json:"serial"`
	Outliers      []int      `json:"outliers"`
}

// Where the forces of a stiffness study come from.
const (
	FromCell  = "cell"
	FromCurve = "curve"
)

// Lowest is the lowest level of force against the line of the others.
type Lowest struct {
	Deviation float64  `json:"deviation"` // mm
	T         *float64 `json:"t"`
	DF        float64  `json:"df"`
	P         *float64 `json:"p"`
}

// Curvature is a bent line.
type Curvature struct {
	T   *float64 `json:"t"`
	DF  float64  `json:"df"`
	P   *float64 `json:"p"`
	Sag float64  `json:"sag"` // mm
}

// Line is reading + height over force.
type Line struct {
	Intercept   float64  `json:"intercept"`    // mm at 0 N
	Slope       float64  `json:"slope"`        // mm/N
	InterceptSD *float64 `json:"intercept_sd"` // mm
	SlopeSD     *float64 `json:"slope_sd"`     // mm/N
	ResidualSD  *float64 `json:"residual_sd"`  // mm
	DF          float64  `json:"df"`

	fit *study.Fit // nil of a line that was put together by hand
}

// Stiff is the station's stiffness. N/mm.
type Stiff struct {
	Value       float64      `json:"value"`
	Uncertainty *float64     `json:"uncertainty"`
	Limits      *[2]*float64 `json:"limits"`
}

// NestFound is a name of the line: where the nest stands under a force.
type NestFound struct {
	Value       float64  `json:"value"`       // mm
	Uncertainty *float64 `json:"uncertainty"` // mm
	NestForce   float64  `json:"nest_force"`  // N
}

// Agreement of a stiffness study with the plan, as E_n numbers.
type Agreement struct {
	StiffnessEN         *float64 `json:"stiffness_en"`
	PositionShift       *float64 `json:"position_shift"`       // mm
	PositionUncertainty *float64 `json:"position_uncertainty"` // mm
	PositionAllowed     *float64 `json:"position_allowed"`     // mm
	PositionEN          *float64 `json:"position_en"`
}

// MasterResult tells how well the station repeats one master.
type MasterResult struct {
	N             int        `json:"n"`
	Setting       float64    `json:"setting"` // %
	Mean          float64    `json:"mean"`
	Predicted     float64    `json:"predicted"`
	Bias          Bias       `json:"bias"`
	SD            *float64   `json:"sd"`
	SDLimits      *Pair      `json:"sd_limits"`
	Repeatability *Supported `json:"repeatability"`
	Spread        Spread     `json:"spread"`
	Trend         *Trend     `json:"trend"`
	Serial        *Serial    `json:"serial"`
	Gauge         Gauge      `json:"gauge"`
	Outliers      []int      `json:"outliers"`
}

// Bias of the readings of a master. mm.
type Bias struct {
	Value       float64  `json:"value"`
	Uncertainty *float64 `json:"uncertainty"`
	Allowed     float64  `json:"allowed"`
	T           *float64 `json:"t"`
	DF          float64  `json:"df"`
	P           *float64 `json:"p"`
}

// Gauge is a gauge study of type 1.
type Gauge struct {
	Tolerance float64        `json:"tolerance"` // mm
	Cg        *float64       `json:"cg"`
	Cgk       *float64       `json:"cgk"`
	Variants  []GaugeVariant `json:"variants"`
	QMS       *float64       `json:"q_ms"` // %
	CMS       *float64       `json:"c_ms"`
}

// A GaugeVariant is another usual definition of the two indices.
type GaugeVariant struct {
	Name string   `json:"name"`
	Cg   *float64 `json:"cg"`
	Cgk  *float64 `json:"cgk"`
}

// RestartResult tells what a new start moves.
type RestartResult struct {
	N         int           `json:"n"`
	Starts    []Start       `json:"starts"`
	Within    *float64      `json:"within"`  // mm
	Between   *float64      `json:"between"` // mm
	Anova     *F            `json:"anova"`
	SD        *float64      `json:"sd"`        // mm, of the means of the starts
	Supported *float64      `json:"supported"` // ± mm
	Spread    Spread        `json:"spread"`
	ColdWarm  *ColdWarmMean `json:"cold_warm"`
	Trend     *Trend        `json:"trend"`
	Serial    *Serial       `json:"serial"`
	Outliers  []int         `json:"outliers"`
}

// A Start is the pushes after one restart.
type Start struct {
	Start float64 `json:"start"`
	N     int     `json:"n"`
	Mean  float64 `json:"mean"` // mm
}

// ColdWarmMean is by how much cold starts differ from warm ones. mm.
type ColdWarmMean struct {
	Difference float64 `json:"difference"`
	Limits     *Pair   `json:"limits"`
}

// TrialResult tells what parts as they come say of the plan.
type TrialResult struct {
	N            int         `json:"n"`
	Used         int         `json:"used"` // with arrival
	Shares       []SeenShare `json:"shares"`
	Rejects      SeenShare   `json:"rejects"`
	Truth        *Truth      `json:"truth"`
	LampMismatch []int       `json:"lamp_mismatch"` // row numbers
	Mean         *float64    `json:"mean"`
	SD           *float64    `json:"sd"`
	SDLimits     *Pair       `json:"sd_limits"`
	Nominal      float64     `json:"nominal"`
	Shift        *Shift      `json:"shift"`
	StationShift *Shift      `json:"station_shift"`
	PartsShift   *Shift      `json:"parts_shift"`
	Spread       Spread      `json:"spread"`
	Normality    *Normality  `json:"normality"`
	Capability   *Capability `json:"capability"`
	Trend        *Trend      `json:"trend"`
	Serial       *Serial     `json:"serial"`
	Outliers     []int       `json:"outliers"`
	Correction   *Correction `json:"correction"`
}

// A SeenShare is how often something was seen, and how often the plan predicts it.
type SeenShare struct {
	Pair      string   `json:"pair,omitempty"` // on_on, on_off, off_on or off_off; empty where it is something else
	Seen      int      `json:"seen"`
	Of        int      `json:"of"`
	Share     *float64 `json:"share"`
	Limits    *Pair    `json:"limits"`
	Predicted *float64 `json:"predicted"`
	Lower     *float64 `json:"lower,omitempty"` // one-sided 99 %, of what decides a check
}

// Truth is what the measured parts were, against what the lamps said.
type Truth struct {
	N           int                `json:"n"`        // measured rows
	Doubtful    int                `json:"doubtful"` // of these, nearer to a limit than their uncertainty
	Matrix      map[string]PairSum `json:"matrix"`   // by long, good, short
	FalseAccept SeenShare          `json:"false_accept"`
	FalseReject SeenShare          `json:"false_reject"`
}

// PairSum counts the four pairs of the signals.
type PairSum struct {
	OnOn   int `json:"on_on"`
	OnOff  int `json:"on_off"`
	OffOn  int `json:"off_on"`
	OffOff int `json:"off_off"`
}

// Shift is by how much something stands off what was planned. mm.
type Shift struct {
	N           int      `json:"n"`
	Value       float64  `json:"value"`
	Uncertainty *float64 `json:"uncertainty"`
	Allowed     *float64 `json:"allowed"`
}

// Normality is Anderson and Darling's test.
type Normality struct {
	A2         float64 `json:"a2"`
	A2Adjusted float64 `json:"a2_adjusted"`
	P          float64 `json:"p"`
}

// Capability of the heights: performance indices.
type Capability struct {
	Of        string   `json:"of"` // OfHeights or OfReadings
	N         int      `json:"n"`
	Mean      *float64 `json:"mean"`
	SD        *float64 `json:"sd"`
	Pp        *float64 `json:"pp"`
	PpLimits  *Pair    `json:"pp_limits"`
	Ppk       *float64 `json:"ppk"`
	PpkLimits *Pair    `json:"ppk_limits"`
}

// Of what a capability is told.
const (
	OfHeights  = "heights"
	OfReadings = "readings"
)

// Correction is by how many steps of the position the nest is to be corrected.
type Correction struct {
	Steps       int     `json:"steps"`
	Nest        float64 `json:"nest"`  // mm
	Basis       string  `json:"basis"` // ByStationShift or ByShift
	SharesNow   *Shares `json:"shares_now"`
	SharesAfter *Shares `json:"shares_after"`
}

// What a correction rests on.
const (
	ByStationShift = "station_shift"
	ByShift        = "shift"
)

// Shares of the four pairs of the signals.
type Shares struct {
	OnOn   float64 `json:"on_on"`
	OnOff  float64 `json:"on_off"`
	OffOn  float64 `json:"off_on"`
	OffOff float64 `json:"off_off"`
}

// SamplesResult tells whether limit samples and the empty nest give the predicted lamps.
type SamplesResult struct {
	N      int           `json:"n"`
	Roles  Roles         `json:"roles"`
	Offset *SampleOffset `json:"offset"`
	Rows   []SampleRow   `json:"rows"`
}

// Roles counts the rows that prove something.
type Roles struct {
	Long  int `json:"long"`
	Short int `json:"short"`
	Good  int `json:"good"`
	Empty int `json:"empty"`
}

// SampleOffset is the mean difference of the readings from the predicted ones. mm.
type SampleOffset struct {
	N       int     `json:"n"`
	Value   float64 `json:"value"`
	Allowed float64 `json:"allowed"`
}

// A SampleRow is one sample, what was predicted for it and what came.
type SampleRow struct {
	Row              int      `json:"row"` // from 1
	Sample           string   `json:"sample"`
	Role             *string  `json:"role"` // long, good, short or empty; nil: proves nothing either way
	Chance           *float64 `json:"chance"`
	PredictedReading *float64 `json:"predicted_reading"` // mm
	Arrival          *bool    `json:"arrival"`           // predicted
	Zone             *bool    `json:"zone"`              // predicted
	Lamps            Answer   `json:"lamps"`
	Difference       *float64 `json:"difference"` // mm
	Allowed          *float64 `json:"allowed"`    // mm
	Reading          *Answer  `json:"reading"`
}

// Proved is whether the station is proved for the plan on the day asked.
type Proved struct {
	State       string               `json:"state"`
	Until       *string              `json:"until"` // the last day of the first of the four, whatever their state; nil while one is missing
	PlanBlocked bool                 `json:"plan_blocked"`
	AsFound     *AsFound             `json:"as_found"`
	Kinds       map[string]KindState `json:"kinds"`
}

// The states of a station, and of a kind of study beside the verdicts.
const (
	StateProved    = "proved"
	StateNotProved = "not_proved"
	StateWithdrawn = "withdrawn"
	StateExpired   = "expired"
	StateMissing   = "missing"
	StateOtherPlan = "other_plan"
	StateOtherRam  = "other_ram"
)

// FoundStands tells whether the master study by which the station was found still counts: not
// where something happened to the station since, or too long ago.
func (p *Proved) FoundStands() bool {
	switch Answer(p.Kinds[Master].State) {
	case Pass, Fail, Open:
		return p.AsFound != nil
	}
	return false
}

// KindState is how a kind of study stands, and which of the given studies counts for it.
type KindState struct {
	State string `json:"state"` // one of the states, or the verdict of the study
	Study *int   `json:"study"` // its place among the studies, from 0
}

// AsFound is the promise computed again for the station as its latest master found it.
type AsFound struct {
	Bias         float64  `json:"bias"`         // mm
	SD           float64  `json:"sd"`           // mm
	ConsumerPPM  *float64 `json:"consumer_ppm"` // nil where the nominal part stalls
	ProducerPPM  *float64 `json:"producer_ppm"`
	Long         *float64 `json:"long"` // limit samples, mm
	Short        *float64 `json:"short"`
	TallestGood  *float64 `json:"tallest_good"`
	ShortestGood *float64 `json:"shortest_good"`
	Met          *bool    `json:"met"` // nil where the shares are
}
