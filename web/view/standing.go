package view

import "ramplan/web/page"

// A Standing is how the station stands for the last revision of a plan.
type Standing struct {
	Letter  string // of the revision; empty: nothing is said
	State   string // one of the states of package proving
	Until   string // the last day on which it is proved
	Damaged bool   // a kept study cannot be read
}

// Link says it in a few words, and leads to the page of the proving. The revision is named
// where what stands before it does not name it.
func (s Standing) Link(plan string, named bool) page.Link {
	if s.Letter == "" || s.State == "" {
		return page.Link{}
	}
	letter := s.Letter
	if !named {
		letter = ""
	}
	return page.Link{Address: plan + "/proving", Text: sayProof.Standing(letter, s.State, s.Until, s.Damaged)}
}
