package shell

import "fmt"

func (say Words) AssessDoes() string {
	return "hold a plan against studies of its station, .csv or JSON, and print what they say"
}

func (say Words) OnFlag() string {
	return "the `DATE` for which the state proved is asked, today in UTC"
}

func (say Words) AssessNeedsFiles() string {
	return "assess needs a plan file and the studies of its station; try: ramplan assess PLAN.json STUDY.csv"
}

func (say Words) OnRefused(found string) string {
	return fmt.Sprintf("-on takes a day such as 2026-11-28, found %q", found)
}

func (say Words) StandardInputOnce() string { return "- is standard input, and can be read once only" }

func (say Words) AssessStatuses() string {
	return "assess ends with 0 when every study passed, 1 when one failed or is open, 2 when a file could not be read."
}
