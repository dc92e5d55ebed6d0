package proving

import "ramplan/press"

// The names of checks.
const (
	CheckSize        = "size"
	CheckRange       = "range"
	CheckCalibration = "calibration"
	CheckBand        = "band"
	CheckScatter     = "scatter"
	CheckDrift       = "drift"
	CheckForce       = "force"
	CheckLinear      = "linear"
	CheckStiffness   = "stiffness"
	CheckPosition    = "position"
	CheckSharp       = "sharp"
	CheckBias        = "bias"
	CheckSpread      = "spread"
	CheckLamps       = "lamps"
	CheckRejects     = "rejects"
	CheckShift       = "shift"
	CheckFalseAccept = "false_accept"
	CheckReadings    = "readings"
	CheckLong        = "long"
	CheckShort       = "short"
	CheckGood        = "good"
	CheckEmpty       = "empty"
)

// judging is one study under judgement: the checks and findings as they come.
type judging struct {
	plan     *press.Result
	study    *Study
	checks   []Check
	findings []Finding
	result   any
	adopt    *Adopt
}

// check answers one question of the study.
func (j *judging) check(name string, answer Answer) {
	j.checks = append(j.checks, Check{name, answer})
}

// say adds a finding, where it is one.
func (j *judging) say(is bool, code string) {
	if is {
		j.findings = append(j.findings, finding(code))
	}
}

// sayOf adds a finding that is about another entry than it usually is.
func (j *judging) sayOf(is bool, code, path string) {
	if is {
		f := finding(code)
		f.Path = path
		j.findings = append(j.findings, f)
	}
}

// done closes the study: cautions come before notes, and checks decide.
func (j *judging) done() Judged {
	out := Judged{Kind: j.study.Kind, StudyDigest: j.study.Digest(), Checks: j.checks, Result: j.result, Adopt: j.adopt}
	for _, s := range []press.Severity{press.Caution, press.Note} {
		for _, f := range j.findings {
			if f.Severity == s {
				out.Findings = append(out.Findings, f)
			}
		}
	}
	if j.study.Kind != Event {
		out.Verdict = verdict(j.checks)
	}
	return out
}

// verdict of a study: fail if one check fails, else open if one is open, else pass.
func verdict(checks []Check) Answer {
	v := Pass
	for _, c := range checks {
		switch c.Outcome {
		case Fail:
			return Fail
		case Open:
			v = Open
		}
	}
	return v
}

// passes is Pass, or what is answered else.
func passes(yes bool, otherwise Answer) Answer {
	if yes {
		return Pass
	}
	return otherwise
}

// answer of a question that can be asked only where its figures are known.
func answer(known, yes bool) Answer {
	if !known {
		return Open
	}
	return passes(yes, Fail)
}
