package shell

import (
	"fmt"
)

func (say Words) EvalNeedsPlans() string {
	return "eval needs the plan files to evaluate, or - for standard input; try: ramplan eval PLAN.json"
}

func (say Words) StoppedBefore(name string) string { return fmt.Sprintf("stopped before %s", name) }

func (say Words) CannotWriteResult(name string, err error) string {
	return fmt.Sprintf("%s: cannot write the result: %v", name, err)
}

func (say Words) CannotWrite(err error) string { return fmt.Sprintf("cannot write: %v", err) }

func (say Words) SheetForPlan() string {
	return "this is a sheet or a drawing with a plan inside; take the plan out first: ramplan extract -o PLAN.json SHEET"
}

func (say Words) NoSuchFile() string { return "no such file; check the name and the folder" }

func (say Words) MayNotRead() string { return "not allowed to read this file" }

func (say Words) CannotBeRead(err string) string { return "cannot be read: " + err }
