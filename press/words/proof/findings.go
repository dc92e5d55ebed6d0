package proof

import (
	"math"
	"slices"
	"strconv"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// Explain writes the sentence of every finding of an assessment into its Message.
func (say Words) Explain(r *press.Result, studies []*proving.Study, a *proving.Assessment) {
	for i := range a.Studies {
		j := &a.Studies[i]
		for k := range j.Findings {
			j.Findings[k].Message = say.FindingSaid(r, studies[i], j, j.Findings[k])
		}
	}
}

// FindingSaid is the sentence of a finding, with its figures.
func (say Words) FindingSaid(r *press.Result, s *proving.Study, j *proving.Judged, f proving.Finding) string {
	tell, ok := sentences[f.Code]
	if !ok {
		panic("proof: no sentence for the finding " + f.Code)
	}
	return tell(say.about(r, s, j))
}

// told is a judged study with what its sentences are made from.
type told struct {
	say Words
	r   *press.Result
	s   *proving.Study
	j   *proving.Judged
	pos words.Positions
}

func (say Words) about(r *press.Result, s *proving.Study, j *proving.Judged) *told {
	return &told{say: say, r: r, s: s, j: j, pos: say.Positions(r.Plan).Fine()}
}

// sentences has one maker for each code.
var sentences = map[string]func(*told) string{
	proving.OtherRam:              otherRam,
	proving.OtherPlan:             otherPlan,
	proving.Drifting:              drifting,
	proving.Outlying:              outlying,
	proving.CurveScaled:           curveScaled,
	proving.CurveBent:             curveBent,
	proving.ColdAndWarm:           coldAndWarm,
	proving.OddlyScattered:        oddlyScattered,
	proving.NotRising:             notRising,
	proving.NothingToAdopt:        nothingToAdopt,
	proving.OtherSpeed:            otherSpeed,
	proving.SplitAsPlanned:        splitAsPlanned,
	proving.CellTakenAsPerfect:    cellTakenAsPerfect,
	proving.OutsideCurve:          outsideCurve,
	proving.StartupRange:          startupRange,
	proving.NotLinear:             notLinear,
	proving.StiffnessOff:          stiffnessOff,
	proving.NestOff:               nestOff,
	proving.ForceFromCurve:        forceFromCurve,
	proving.SpreadOverPlan:        spreadOverPlan,
	proving.GaugeWeak:             gaugeWeak,
	proving.Biased:                biased,
	proving.RepeatabilityNotShown: repeatabilityNotShown,
	proving.WarmUp:                warmUp,
	proving.StartsDiffer:          startsDiffer,
	proving.LampsDiffer:           lampsDiffer,
	proving.MoreRejects:           moreRejects,
	proving.FalseAccepts:          falseAccepts,
	proving.NotNormal:             notNormal,
	proving.Censored:              censored,
	proving.CapabilityFew:         capabilityFew,
	proving.NestCorrection:        nestCorrection,
	proving.ReadingsDiffer:        readingsDiffer,
	proving.SampleUndecided:       sampleUndecided,
	proving.SampleTooEasy:         sampleTooEasy,
}

// The results of the kinds; an empty one where a study has none.
func (t *told) loadCell() *proving.LoadCellResult   { return resultOf[proving.LoadCellResult](t) }
func (t *told) stiffness() *proving.StiffnessResult { return resultOf[proving.StiffnessResult](t) }
func (t *told) master() *proving.MasterResult       { return resultOf[proving.MasterResult](t) }
func (t *told) restart() *proving.RestartResult     { return resultOf[proving.RestartResult](t) }
func (t *told) trial() *proving.TrialResult         { return resultOf[proving.TrialResult](t) }
func (t *told) samples() *proving.SamplesResult     { return resultOf[proving.SamplesResult](t) }

func resultOf[R any](t *told) *R {
	if r, ok := t.j.Result.(*R); ok && r != nil {
		return r
	}
	return new(R)
}

// within writes a length as ±.
func (t *told) within(mm float64) string { return "±" + thin + t.pos.Length(mm) }

// beside says on which side of the planned position something lies, and how far.
func (t *told) beside(mm float64) string {
	if mm < 0 {
		return t.pos.Length(-mm) + " before"
	}
	return t.pos.Length(mm) + " past"
}

// sure adds the uncertainty of a figure.
func (t *told) sure(u *float64) string {
	if u == nil {
		return ""
	}
	return ", " + t.within(*u)
}

// byChance says how often a right station does the same.
func (t *told) byChance(p float64) string {
	return "a station that is right does so in " + t.say.OneIn(p)
}

const thin = "\u202f" // narrow no-break space, as numbers are set with

// rowsNamed names rows, the first few of many.
func rowsNamed(rows []int) string {
	const most = 8
	if len(rows) == 1 {
		return "Row " + strconv.Itoa(rows[0])
	}
	s := "Rows "
	for i, n := range rows[:min(len(rows), most)] {
		switch {
		case i > 0 && i == len(rows)-1:
			s += " and "
		case i > 0:
			s += ", "
		}
		s += strconv.Itoa(n)
	}
	if more := len(rows) - most; more > 0 {
		s += " and " + strconv.Itoa(more) + " more"
	}
	return s
}

// several takes a verb to one or many.
func several(n int, one, many string) string {
	if n == 1 {
		return one
	}
	return many
}

func otherRam(t *told) string {
	return "The study names the ram “" + t.s.Ram + "” and the plan “" + t.r.Plan.Ram.Name + "”: it says nothing of the plan's ram."
}

func otherPlan(t *told) string {
	short := t.s.PlanDigest[:min(len(t.s.PlanDigest), len("sha256:")+12)]
	what := "what it tells of the machine is held against this plan."
	if t.s.Kind == proving.Trial || t.s.Kind == proving.Samples {
		what = "it does not count for the window of this one; take it again with this plan."
	}
	return "The study was taken with another plan, " + short + ": " + what
}

// drifting tells by which test, and of what.
func drifting(t *told) string {
	const cause = ": find the cause, such as warming up or wear, and push again."
	if t.s.Kind == proving.LoadCell {
		d := t.loadCell().Drift
		way := "rose"
		if d.ChangeSD < 0 {
			way = "fell"
		}
		return "From the first push to the last the forces " + way + " by " + words.Fixed(math.Abs(d.ChangeSD), 1) + " standard deviations of a push (" + t.byChance(d.P) + ")" + cause
	}
	what, trend, serial := t.series()
	if trend != nil && trend.P < 0.01 && (serial == nil || trend.P <= serial.P) {
		way := "rise"
		if trend.S < 0 {
			way = "fall"
		}
		return what + " " + way + " over the study (" + t.byChance(trend.P) + ")" + cause
	}
	return what + " wander: neighbours are more alike than chance makes them (" + t.byChance(serial.P) + ")" + cause
}

// series is what drifts in a study of readings.
func (t *told) series() (what string, trend *proving.Trend, serial *proving.Serial) {
	switch t.s.Kind {
	case proving.Stiffness:
		x := t.stiffness()
		return "The distances from the line", x.Trend, x.Serial
	case proving.Restart:
		x := t.restart()
		return "The means of the starts", x.Trend, x.Serial
	case proving.Trial:
		x := t.trial()
		return "The readings", x.Trend, x.Serial
	}
	x := t.master()
	return "The readings", x.Trend, x.Serial
}

func outlying(t *told) string {
	var rows []int
	switch t.s.Kind {
	case proving.LoadCell:
		rows = t.loadCell().Outliers
	case proving.Stiffness:
		rows = t.stiffness().Outliers
	case proving.Master:
		rows = t.master().Outliers
	case proving.Restart:
		rows = t.restart().Outliers
	case proving.Trial:
		rows = t.trial().Outliers
	}
	return rowsNamed(rows) + several(len(rows), " stands", " stand") + " apart from the others. Nothing was left out: look whether " +
		several(len(rows), "it was", "they were") + " read and typed rightly, and what happened there."
}

// firstRow finds a row by a condition; −1 where there is none.
func firstRow(s *proving.Study, is func(*proving.Row) bool) int {
	return slices.IndexFunc(s.Rows, func(r proving.Row) bool { return is(&r) })
}
