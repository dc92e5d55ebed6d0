package proving_test

import (
	"testing"

	"ramplan/press/proving"
)

// A station that drifts, one with a wrong nest and one with a bent curve are told apart by
// their four studies together: drift is said in any of them; a wrong nest in those of block,
// master and parts, with clean forces; a bent curve by the forces alone.
func TestStationsToldApart(t *testing.T) {
	plan, c := station(t, nil), newTally(t, wrong)
	push := rightStation(plan, 0).pushSD()
	for i := range repetitions() {
		for name, fault := range map[string]func(*truth){
			"right":    func(*truth) {},
			"drifting": func(s *truth) { s.drift, s.forceDrift = 3*push, 3 },
			"nest":     func(s *truth) { s.off = 0.03 },
			"bent":     func(s *truth) { s.bend = 0.03 },
		} {
			s := blockStation(plan, 100000+uint64(i))
			fault(s)
			forces, _ := s.underCell()
			cell, block := proving.Judge(plan, forces), proving.Judge(plan, s.onBlock(five, 0))
			s.sd = 0 // from here on as the plan says
			master, trial := proving.Judge(plan, s.onMaster(25)), proving.Judge(plan, s.trialOf(40, 1))

			drift, nests := false, 0
			for _, j := range []proving.Judged{cell, block, master, trial} {
				drift = drift || says(j, proving.Drifting)
				if says(j, proving.NestOff) {
					nests++
				}
			}
			bent := says(cell, proving.CurveBent)
			told := "right"
			switch {
			case drift:
				told = "drifting"
			case nests == 3 && !bent:
				told = "nest"
			case bent && nests == 0:
				told = "bent"
			case bent || nests > 0:
				told = "unclear"
			}
			c.add(name+" told as "+name, told == name)
			c.add(name+" told as something else that is wrong", told != name && told != "right" && told != "unclear")
		}
	}
	// By hand from the shares above: four studies say drift of a right station in about 6 of 100
	// together, which hides what else there is.
	c.often("right told as right", 0.92)
	c.often("drifting told as drifting", 0.99)
	c.often("nest told as nest", 0.92)
	c.often("bent told as bent", 0.847*0.93)
	c.seldom("drifting told as something else that is wrong", 0.005)
	c.seldom("nest told as something else that is wrong", 0.07)
	c.seldom("bent told as something else that is wrong", 0.07)
}
