package words

import (
	"time"

	"ramplan/press"
)

// The short forms of what a [Printer] writes, in metric English whoever asks: for the rooms
// that have no printer of their reader at hand yet. None is added, and one that nobody asks
// any more goes (TestShortForms in cmd/ramplan).

func Accepted(p *press.Plan, r *press.Result) string { return Printer{}.Accepted(p, r) }
func After(s float64) string                         { return Printer{}.After(s) }
func AfterBare(s float64) string                     { return Printer{}.AfterBare(s) }
func Anywhere(check string, when Situation) bool     { return Printer{}.Anywhere(check, when) }
func AskedChanges(last string, changed []string, lamps bool) string {
	return Printer{}.AskedChanges(last, changed, lamps)
}
func AtFirstLook(p *press.Plan, r *press.Result, on Pair, when Situation) FirstLookText {
	return Printer{}.AtFirstLook(p, r, on, when)
}
func AtRest(r *press.Result) string                       { return Printer{}.AtRest(r) }
func Blocked(r *press.Result) string                      { return Printer{}.Blocked(r) }
func BlowFigure(r *press.Result, force float64) string    { return Printer{}.BlowFigure(r, force) }
func BoundNote(r *press.Result) string                    { return Printer{}.BoundNote(r) }
func ByMotion(r *press.Result) string                     { return Printer{}.ByMotion(r) }
func CardAct(t PairText) string                           { return Printer{}.CardAct(t) }
func CardCheck(t PairText) string                         { return Printer{}.CardCheck(t) }
func CardReads(r *press.Result) string                    { return Printer{}.CardReads(r) }
func CardSamples(p *press.Plan, r *press.Result) []string { return Printer{}.CardSamples(p, r) }
func CardSamplesHead(p *press.Plan) string                { return Printer{}.CardSamplesHead(p) }
func CardUnseen(p *press.Plan, r *press.Result) []string  { return Printer{}.CardUnseen(p, r) }
func CatalogueLead(r *press.Result) string                { return Printer{}.CatalogueLead(r) }
func CurveSetting(setting float64, force float64) string {
	return Printer{}.CurveSetting(setting, force)
}
func CurveTitle(t *press.CurveTrace, setting *float64, force float64) string {
	return Printer{}.CurveTitle(t, setting, force)
}
func CycleTitle(r *press.Result) string { return Printer{}.CycleTitle(r) }
func Datum(p *press.Plan) string        { return Printer{}.Datum(p) }
func Day(t time.Time) string            { return Printer{}.Day(t) }
func Detected(p *press.Plan, r *press.Result, row press.FaultRow) string {
	return Printer{}.Detected(p, r, row)
}
func DraftState(at time.Time, stands bool) string { return Printer{}.DraftState(at, stands) }
func EarlyBlow(r *press.Result) string            { return Printer{}.EarlyBlow(r) }
func EarlyNote(r *press.Result) string            { return Printer{}.EarlyNote(r) }
func ExamAsks(role string) string                 { return Printer{}.ExamAsks(role) }
func ExamOf(role string) string                   { return Printer{}.ExamOf(role) }
func Explain(r *press.Result)                     { Printer{}.Explain(r) }
func Fault(row press.FaultRow) Term               { return Printer{}.Fault(row) }
func FaultMeans(p *press.Plan, r *press.Result, f press.FaultRow) string {
	return Printer{}.FaultMeans(p, r, f)
}
func FirstLook(f press.FaultRow) string              { return Printer{}.FirstLook(f) }
func FirstTerms() []Term                             { return Printer{}.FirstTerms() }
func Force(n float64) string                         { return Printer{}.Force(n) }
func ForceTitle(r *press.Result) string              { return Printer{}.ForceTitle(r) }
func Found(share float64) string                     { return Printer{}.Found(share) }
func Glance(p *press.Plan, r *press.Result) string   { return Printer{}.Glance(p, r) }
func GoodIf(p *press.Plan) string                    { return Printer{}.GoodIf(p) }
func Headline(p *press.Plan, r *press.Result) string { return Printer{}.Headline(p, r) }
func IdentityOf(p *press.Plan, r *press.Result, revision string, date string) Identity {
	return Printer{}.IdentityOf(p, r, revision, date)
}
func Judged(p *press.Plan, r *press.Result, row press.FaultRow) string {
	return Printer{}.Judged(p, r, row)
}
func Lacking(r *press.Result) []string { return Printer{}.Lacking(r) }
func LampsMislead(p *press.Plan, r *press.Result, row *press.FaultRow, on Pair) string {
	return Printer{}.LampsMislead(p, r, row, on)
}
func LeaveEmpty(typed string) string                            { return Printer{}.LeaveEmpty(typed) }
func LimitSamples(p *press.Plan, r *press.Result) []LimitSample { return Printer{}.LimitSamples(p, r) }
func LooseSampleFit(r *press.Result) string                     { return Printer{}.LooseSampleFit(r) }
func LooseSampleNotes(r *press.Result) []string                 { return Printer{}.LooseSampleNotes(r) }
func Microns(x float64) string                                  { return Printer{}.Microns(x) }
func MissingCycle(r *press.Result) string                       { return Printer{}.MissingCycle(r) }
func NamesNoCheck(typed string) bool                            { return Printer{}.NamesNoCheck(typed) }
func NotFinished(answered string, items string) string          { return Printer{}.NotFinished(answered, items) }
func NotForUse(why string) string                               { return Printer{}.NotForUse(why) }
func NotReady(r *press.Result) string                           { return Printer{}.NotReady(r) }
func NotTyped(r *press.Result) string                           { return Printer{}.NotTyped(r) }
func OneIn(share float64) string                                { return Printer{}.OneIn(share) }
func OnlyGoodWith(p *press.Plan, r *press.Result) string        { return Printer{}.OnlyGoodWith(p, r) }
func PPM(x float64) string                                      { return Printer{}.PPM(x) }
func PairTexts(p *press.Plan, r *press.Result) []PairText       { return Printer{}.PairTexts(p, r) }
func PairsHead(r *press.Result) string                          { return Printer{}.PairsHead(r) }
func Paper(name string, p *press.Plan, r *press.Result) (Table, bool) {
	return Printer{}.Paper(name, p, r)
}
func Perfect(r *press.Result) string      { return Printer{}.Perfect(r) }
func PositionsOf(p *press.Plan) Positions { return Printer{}.Positions(p) }
func PresenceCheck(p *press.Plan) string  { return Printer{}.PresenceCheck(p) }
func PressInTitle(p *press.Plan, r *press.Result, tight *float64, stall *float64) string {
	return Printer{}.PressInTitle(p, r, tight, stall)
}
func ProbeMay(setting float64) string                     { return Printer{}.ProbeMay(setting) }
func ProbeTitle(r *press.Result) string                   { return Printer{}.ProbeTitle(r) }
func Rarely(share float64) string                         { return Printer{}.Rarely(share) }
func Ratio(x float64) string                              { return Printer{}.Ratio(x) }
func Reactions(p *press.Plan, r *press.Result) []Reaction { return Printer{}.Reactions(p, r) }
func ReadAs(x float64) string                             { return Printer{}.ReadAs(x) }
func ReadingRule(p *press.Plan, r *press.Result) string   { return Printer{}.ReadingRule(p, r) }
func RotorMissing(r *press.Result) string                 { return Printer{}.RotorMissing(r) }
func RunTitle(r *press.Result) string                     { return Printer{}.RunTitle(r) }
func SampleNotes(p *press.Plan, r *press.Result) []string { return Printer{}.SampleNotes(p, r) }
func SamplesMade(p *press.Plan, r *press.Result) string   { return Printer{}.SamplesMade(p, r) }
func SayVerdict(p *press.Plan, row press.FaultRow) string { return Printer{}.SayVerdict(p, row) }
func SayWords(p *press.Plan, list []string) string        { return Printer{}.SayWords(p, list) }
func SeatBlow(r *press.Result) string                     { return Printer{}.SeatBlow(r) }
func SeatedHeight(p *press.Plan) string                   { return Printer{}.SeatedHeight(p) }
func SecondLook(f press.FaultRow) string                  { return Printer{}.SecondLook(f) }
func SecondOnly(r *press.Result) string                   { return Printer{}.SecondOnly(r) }
func Seconds(s float64) string                            { return Printer{}.Seconds(s) }
func SecondsBare(s float64) string                        { return Printer{}.SecondsBare(s) }
func SetOf(repeat bool, known bool) string                { return Printer{}.SetOf(repeat, known) }
func SetpointNote(r *press.Result, hand bool) string      { return Printer{}.SetpointNote(r, hand) }
func Setpoints(p *press.Plan, r *press.Result) []Setpoint { return Printer{}.Setpoints(p, r) }
func Setting(percent float64) string                      { return Printer{}.Setting(percent) }
func Share(p float64) string                              { return Printer{}.Share(p) }
func Speed(v float64) string                              { return Printer{}.Speed(v) }
func Standing(letter string, same bool) string            { return Printer{}.Standing(letter, same) }
func StandingOld(same string, last string) string         { return Printer{}.StandingOld(same, last) }
func StepsNotDrawn(r *press.Result) string                { return Printer{}.StepsNotDrawn(r) }
func StripTitle(p *press.Plan, r *press.Result) string    { return Printer{}.StripTitle(p, r) }
func SupersededBy(letter string, day string) string       { return Printer{}.SupersededBy(letter, day) }
func TableHead(r *press.Result) string                    { return Printer{}.TableHead(r) }
func TargetPPM(x float64) string                          { return Printer{}.TargetPPM(x) }
func TargetShare(p float64) string                        { return Printer{}.TargetShare(p) }
func TimeOver(leftFrom time.Time) string                  { return Printer{}.TimeOver(leftFrom) }
func Today() string                                       { return Printer{}.Today() }
func TypedOutcome(exam string, o Outcome) string          { return Printer{}.TypedOutcome(exam, o) }
func Unseen(p *press.Plan, r *press.Result) []string      { return Printer{}.Unseen(p, r) }
func WatchBrief(r *press.Result) string                   { return Printer{}.WatchBrief(r) }
func WatchNote(r *press.Result) string                    { return Printer{}.WatchNote(r) }
func Wear(p *press.Plan, r *press.Result, row press.FaultRow) string {
	return Printer{}.Wear(p, r, row)
}
func WeightDoubt(r *press.Result) string { return Printer{}.WeightDoubt(r) }
func When(t time.Time) string            { return Printer{}.When(t) }
func WhenReadIn(r *press.Result) string  { return Printer{}.WhenReadIn(r) }
