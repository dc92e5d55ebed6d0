package shell

import "strconv"

func (say Words) PartsFlag() string { return "`NUMBER` of parts to count, 1 to 1e12" }

func (say Words) SeedFlag() string {
	return "`SEED` of the random numbers, 0 to 18446744073709551615"
}

func (say Words) PrecisionFlag() string {
	return "how close the estimate is to come, as a `SHARE` of itself, 0.001 to 1"
}

func (say Words) SimulateJSONFlag() string { return "print JSON, one object a line and plan" }

func (say Words) SimulateNeedsPlans() string {
	return "simulate needs the plan files, or - for standard input; try: ramplan simulate PLAN.json"
}

func (say Words) SeedRefused(seed string, most uint64) string {
	return "-seed " + seed + ": a whole number from 0 to " + strconv.FormatUint(most, 10) + " is wanted"
}

func (say Words) PrecisionRefused(precision string) string {
	return "-precision " + precision + ": a number from 0.001 to 1 is wanted"
}

func (say Words) PartsRefused(parts string) string {
	return "-parts " + parts + ": a whole number from 1 to 1e12 is wanted"
}

// FaultInThisProgram is said where something breaks that must not.
func (say Words) FaultInThisProgram(what string) string { return "a fault in this program: " + what }
