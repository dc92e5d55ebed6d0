package issue

import (
	"strings"

	"ramplan/press"
	"ramplan/press/drafts"
)

// Standing is what stands in the way of issuing a plan.
type Standing struct {
	Physical []press.Finding // with these it cannot be issued
	Others   []press.Finding // with these, and with an ambiguous table, only with a reason and a second name
}

// StandingOf sorts the blockers of a result. Lamps that mean two things stand in the
// way as well: nobody can be asked to judge parts by them without being told why.
func StandingOf(r *press.Result) Standing {
	var s Standing
	for _, f := range r.Findings {
		switch {
		case f.Code == press.AmbiguousTable:
			s.Others = append(s.Others, f)
		case f.Severity != press.Blocker:
		case f.Never():
			s.Physical = append(s.Physical, f)
		default:
			s.Others = append(s.Others, f)
		}
	}
	return s
}

// Refuse tells why a plan cannot be issued as signed.
func Refuse(p *press.Plan, s Signed) press.Problems {
	var ps press.Problems
	stands := StandingOf(press.Evaluate(p))
	for _, f := range stands.Physical {
		ps = append(ps, press.Problem{Path: f.Path, Code: f.Code, Message: "a plan with this blocker cannot be issued"})
	}
	text := func(path, value, needed string) {
		switch {
		case strings.TrimSpace(value) == "" && needed != "":
			ps = append(ps, press.Problem{Path: path, Code: press.CodeRequired, Message: needed})
		case len([]rune(value)) > drafts.MostText:
			ps = append(ps, press.Problem{Path: path, Code: press.CodeLength, Message: drafts.AtMost(drafts.MostText)})
		}
	}
	text(PathPrepared, s.Prepared, "who prepared it is needed")
	text(PathChecked, s.Checked, "who checked it is needed")
	text(PathApproved, s.Approved, "who approved it is needed")
	text(PathReason, s.Reason, "the reason for the change is needed")
	if len(stands.Others) == 0 {
		return ps
	}
	text(PathDespite, s.Despite, "with blockers a reason is needed why it is issued all the same")
	text(PathSecond, s.Second, "with blockers a second name is needed")
	if second := strings.TrimSpace(s.Second); second != "" && strings.EqualFold(second, strings.TrimSpace(s.Approved)) {
		ps = append(ps, press.Problem{Path: PathSecond, Code: press.CodeConflict, Message: "the second name is another one than who approved it"})
	}
	return ps
}
