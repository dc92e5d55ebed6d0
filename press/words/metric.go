package words

import (
	"time"

	"ramplan/press"
)

// The short forms of what a [Printer] writes, in metric English whoever asks: for tests,
// which know their reader. No room asks for one, none is added, and one that nobody asks for
// any more goes (TestShortForms in cmd/ramplan).

func Accepted(p *press.Plan, r *press.Result) string      { return Printer{}.Accepted(p, r) }
func After(s float64) string                              { return Printer{}.After(s) }
func AfterBare(s float64) string                          { return Printer{}.AfterBare(s) }
func CardCheck(t PairText) string                         { return Printer{}.CardCheck(t) }
func CardSamples(p *press.Plan, r *press.Result) []string { return Printer{}.CardSamples(p, r) }
func CardUnseen(p *press.Plan, r *press.Result) []string  { return Printer{}.CardUnseen(p, r) }
func CycleTitle(r *press.Result) string                   { return Printer{}.CycleTitle(r) }
func Day(t time.Time) string                              { return Printer{}.Day(t) }
func Detected(p *press.Plan, r *press.Result, row press.FaultRow) string {
	return Printer{}.Detected(p, r, row)
}
func Explain(r *press.Result)                        { Printer{}.Explain(r) }
func Fault(row press.FaultRow) Term                  { return Printer{}.Fault(row) }
func FirstTerms() []Term                             { return Printer{}.FirstTerms() }
func Force(n float64) string                         { return Printer{}.Force(n) }
func ForceTitle(r *press.Result) string              { return Printer{}.ForceTitle(r) }
func Glance(p *press.Plan, r *press.Result) string   { return Printer{}.Glance(p, r) }
func Headline(p *press.Plan, r *press.Result) string { return Printer{}.Headline(p, r) }
func IdentityOf(p *press.Plan, r *press.Result, revision string, date string) Identity {
	return Printer{}.IdentityOf(p, r, revision, date)
}
func Judged(p *press.Plan, r *press.Result, row press.FaultRow) string {
	return Printer{}.Judged(p, r, row)
}
func LampsMislead(p *press.Plan, r *press.Result, row *press.FaultRow, on Pair) string {
	return Printer{}.LampsMislead(p, r, row, on)
}
func Microns(x float64) string                            { return Printer{}.Microns(x) }
func MissingCycle(r *press.Result) string                 { return Printer{}.MissingCycle(r) }
func NotReady(r *press.Result) string                     { return Printer{}.NotReady(r) }
func PPM(x float64) string                                { return Printer{}.PPM(x) }
func PairTexts(p *press.Plan, r *press.Result) []PairText { return Printer{}.PairTexts(p, r) }
func Paper(name string, p *press.Plan, r *press.Result) (Table, bool) {
	return Printer{}.Paper(name, p, r)
}
func Perfect(r *press.Result) string      { return Printer{}.Perfect(r) }
func PositionsOf(p *press.Plan) Positions { return Printer{}.Positions(p) }
func PressInTitle(p *press.Plan, r *press.Result, tight *float64, stall *float64) string {
	return Printer{}.PressInTitle(p, r, tight, stall)
}
func Rarely(share float64) string                         { return Printer{}.Rarely(share) }
func Reactions(p *press.Plan, r *press.Result) []Reaction { return Printer{}.Reactions(p, r) }
func ReadingRule(p *press.Plan, r *press.Result) string   { return Printer{}.ReadingRule(p, r) }
func SayVerdict(p *press.Plan, row press.FaultRow) string { return Printer{}.SayVerdict(p, row) }
func SeatedHeight(p *press.Plan) string                   { return Printer{}.SeatedHeight(p) }
func Seconds(s float64) string                            { return Printer{}.Seconds(s) }
func SecondsBare(s float64) string                        { return Printer{}.SecondsBare(s) }
func Setpoints(p *press.Plan, r *press.Result) []Setpoint { return Printer{}.Setpoints(p, r) }
func Setting(percent float64) string                      { return Printer{}.Setting(percent) }
func Share(p float64) string                              { return Printer{}.Share(p) }
func StripTitle(p *press.Plan, r *press.Result) string    { return Printer{}.StripTitle(p, r) }
func SupersededBy(letter string, day string) string       { return Printer{}.SupersededBy(letter, day) }
func Today() string                                       { return Printer{}.Today() }
func Unseen(p *press.Plan, r *press.Result) []string      { return Printer{}.Unseen(p, r) }
