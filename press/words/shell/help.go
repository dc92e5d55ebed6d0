package shell

import (
	"fmt"
)

func (say Words) HelpPurpose() string {
	return "ramplan plans press stations: which setting, where to stop, what the signals mean."
}

func (say Words) EvalStatuses() string {
	return "eval ends with 0 when no plan has a blocker, 1 when one has, 2 when a file could not be read."
}

func (say Words) SimulateStatuses() string {
	return "simulate ends with 0, also for a plan with a blocker, 2 when a plan or a flag could not be read, 130 when it was interrupted."
}

func (say Words) CheckAndBackupStatuses() string {
	return "check and backup end with 0 when nothing is damaged, 1 when something is, 2 when they could not do it."
}

func (say Words) ExtractStatuses() string {
	return "extract ends with 1 when the file is cut off and the plan inside is whole, 2 when no plan comes out."
}

func (say Words) VerifyStatuses() string {
	return "verify ends with 0 for what was issued last, 1 for what was not issued so or is cut off, 2 when it cannot tell, 3 for what a newer revision has superseded."
}

func (say Words) OutAndInStatuses() string {
	return "out and in end with 2 when something could not be moved as it is; standard error names it."
}

func (say Words) HelpOfData() string {
	return "DIR is the archive's folder; without -data it is ramplan in the user's data folder."
}

func (say Words) HelpOfDrawOut() string {
	return "draw writes to standard output with -o -, each plan into a file of its own with -o FOLDER/, all into one with -o FILE.pdf."
}

func (say Words) HelpCaution() string {
	return "A planning aid: prove force and position on the station before use."
}

func (say Words) HelpTakesAVerb() string {
	return "help prints its page, or what one verb has to say: ramplan help draw"
}

func (say Words) VersionTakesNothing(found string) string {
	return fmt.Sprintf("version takes nothing, found %q", found)
}
