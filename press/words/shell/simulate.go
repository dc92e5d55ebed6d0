package shell

import (
	"fmt"
)

func (say Words) HowManyPartsToCount() string {
	return "how many parts to count, 1 to 1e12 (default 1e6)"
}

func (say Words) WhichRandomNumbers0To() string {
	return "which random numbers, 0 to 2⁶⁴ − 1 (default 1)"
}

func (say Words) HowCloseTheEstimateIs() string {
	return "how close the estimate is to come, as a share of it, 0.001 to 1 (default 0.1)"
}

func (say Words) PrintJSONOneObjectA() string { return "print JSON, one object a plan" }

func (say Words) SimulateNeedsThePlanFiles() string {
	return "simulate needs the plan files, or - for standard input; try: ramplan simulate PLAN.json"
}

func (say Words) CannotWriteTheSimulation(name string, err error) string {
	return fmt.Sprintf("%s: cannot write the simulation: %v", name, err)
}

func (say Words) AWholeNumberFrom1() string { return "a whole number from 1 to 1e12 is wanted" }

func (say Words) AWholeNumberFrom0(most uint64) string {
	return fmt.Sprintf("a whole number from 0 to %d is wanted", most)
}

func (say Words) AShareFrom0001() string { return "a share from 0.001 to 1 is wanted" }
