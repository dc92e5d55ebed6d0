package screen

import (
	"ramplan/press/words"
)

func (say Words) WithFaults(called string) string { return called + ", with faults" }

func (say Words) PlanOf(called string, planDigest string) string {
	return called + ", plan " + words.ShortDigest(planDigest)
}

func (say Words) ThereIsNoSuchState() string { return "There is no such state of this plan." }
