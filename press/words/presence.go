package words

import (
	"slices"
	"strings"
	"unicode/utf8"

	"ramplan/press"
)

// PresenceCheck names the other check that finds a missing insert, so that it can stand
// in a sentence.
func (say Printer) PresenceCheck(p *press.Plan) string {
	if say.NamesNoCheck(p.Station.PresenceCheck) || utf8.RuneCountInString(p.Station.PresenceCheck) > longName {
		return "the other check"
	}
	return strings.TrimRight(strings.TrimSpace(p.Station.PresenceCheck), ".")
}

// NamesNoCheck tells whether what was typed as the presence check denies that there is
// one. The plan takes it for a name all the same, so everything that speaks of the check
// has to say so.
func (say Printer) NamesNoCheck(typed string) bool {
	switch strings.ToLower(strings.Trim(typed, " \t.,;:!?()[]/\u00a0")) {
	case "":
		return strings.TrimSpace(typed) != "" // signs alone
	case "none", "no", "not", "nil", "null", "nothing", "n/a", "n.a", "na", "n.n", "tbd", "tba", "x", "xx", "xxx", "0", "-", "--", "---", "\u2013", "\u2014", "_",
		"no check", "no other check", "no presence check", "none yet", "not yet", "not any", "not present", "not used", "not applicable", "not available", "not needed",
		"without", "missing", "unknown", "off", "false", "there is none", "no sensor", "to be defined", "to be determined":
		return true
	}
	return false
}

// noCheck says that what was typed names no check; empty where it may name one.
func (say Printer) noCheck(p *press.Plan) string {
	if !say.NamesNoCheck(p.Station.PresenceCheck) {
		return ""
	}
	return "\u201c" + strings.TrimSpace(p.Station.PresenceCheck) + "\u201d names no check that finds it"
}

// LeaveEmpty stands beside the field of the presence check where something was typed that
// names none.
func (say Printer) LeaveEmpty(typed string) string {
	if !say.NamesNoCheck(typed) {
		return ""
	}
	return "names no check: leave it empty when there is none"
}

// OnlyGoodWith says on what the setpoints of a plan rest beside themselves: on the other
// check that alone finds a missing insert. Empty where nothing else is needed.
func (say Printer) OnlyGoodWith(p *press.Plan, r *press.Result) string {
	if !missingPasses(r) || p.Station.PresenceCheck == "" {
		return ""
	}
	if none := say.noCheck(p); none != "" {
		return "a missing insert passes: " + none
	}
	return "only good with: " + strings.TrimSpace(p.Station.PresenceCheck)
}

// GoodIf is the verdict where a missing insert gives both signals and another check is
// named that finds it.
func (say Printer) GoodIf(p *press.Plan) string {
	return Say(press.Good) + ", if " + say.PresenceCheck(p) + " says that an insert is there"
}

// GoodIfThere says the same where there is little room and the pairs beside it name the
// check.
const GoodIfThere = "good if an insert is there"

// LampsMislead says of a fault that shows the lamps of a good part that it is none;
// empty for everything else.
func (say Printer) LampsMislead(p *press.Plan, r *press.Result, row *press.FaultRow, on Pair) string {
	if row != nil && RefusedFirst(*row) {
		return " It does not come to this: the probe refuses it, and the press does not take place."
	}
	if row == nil || row.Good || !on.Arrival || !on.Zone || r.Verdict == nil || !slices.Contains(r.Verdict.Table.OnOn, press.Good) {
		return ""
	}
	s := " It is not good: " + lowerFirst(say.Fault(*row).Word) + ". These two lamps do not find this fault"
	if row.Name == press.RowMissing && !row.Own && p.Station.PresenceCheck != "" {
		return s + "; " + say.PresenceCheck(p) + " does."
	}
	if isWear(*row) {
		return " The part is good, the station is not: " + lowerFirst(say.Fault(*row).Word) + ". The check with the master finds it."
	}
	return s + "."
}

// Settled tells whether a named presence check tells apart what these words mean: good
// parts and missing inserts.
func Settled(p *press.Plan, list []string) bool {
	return p.Station.PresenceCheck != "" && slices.Equal(list, []string{press.Good, press.Missing})
}

// SayWords joins the words behind a pair as they are said for a plan.
func (say Printer) SayWords(p *press.Plan, list []string) string {
	if Settled(p, list) {
		return say.GoodIf(p)
	}
	return SayAll(list)
}

// SayVerdict says the verdict of a row of the fault catalogue.
func (say Printer) SayVerdict(p *press.Plan, row press.FaultRow) string {
	if len(row.Words) == 0 {
		return Say(row.Verdict)
	}
	return say.SayWords(p, row.Words)
}
