package words

import (
	"slices"
	"strings"
	"unicode/utf8"

	"ramplan/press"
)

// PresenceCheck names the other check that finds a missing insert, so that it can stand
// in a sentence.
func PresenceCheck(p *press.Plan) string {
	if utf8.RuneCountInString(p.Station.PresenceCheck) > longName {
		return "the other check"
	}
	return strings.TrimRight(strings.TrimSpace(p.Station.PresenceCheck), ".")
}

// GoodIf is the verdict where a missing insert gives both signals and another check is
// named that finds it.
func GoodIf(p *press.Plan) string {
	return Say(press.Good) + ", if " + PresenceCheck(p) + " says that an insert is there"
}

// Settled tells whether a named presence check tells apart what these words mean: good
// parts and missing inserts.
func Settled(p *press.Plan, list []string) bool {
	return p.Station.PresenceCheck != "" && slices.Equal(list, []string{press.Good, press.Missing})
}

// SayWords joins the words behind a pair as they are said for a plan.
func SayWords(p *press.Plan, list []string) string {
	if Settled(p, list) {
		return GoodIf(p)
	}
	return SayAll(list)
}

// SayVerdict says the verdict of a row of the fault catalogue.
func SayVerdict(p *press.Plan, verdict string) string { return SayWords(p, strings.Split(verdict, " or ")) }

// Contradicts tells whether a pair of signals cannot be trusted in a plan: its words
// contradict each other, and no other check that is named tells them apart.
func Contradicts(p *press.Plan, r *press.Result, on Pair) bool {
	t := r.Verdict.Table
	return t.Contradicts(on.Arrival, on.Zone) && !(on.Arrival && on.Zone && Settled(p, t.Words(true, true)))
}

// Unclear tells whether any pair of a plan cannot be trusted.
func Unclear(p *press.Plan, r *press.Result) bool {
	return r.Verdict != nil && slices.ContainsFunc(AllPairs, func(on Pair) bool { return Contradicts(p, r, on) })
}
