package shell

import (
	"fmt"
)

func (say Words) RamplanPlansPressStationsWhich() string {
	return "ramplan plans press stations: which setting, where to stop, what the signals mean."
}

func (say Words) EvalEndsWith0When() string {
	return "eval ends with 0 when no plan has a blocker, 1 when one has, 2 when a file could not be read."
}

func (say Words) CheckAndBackupEndWith() string {
	return "check and backup end with 0 when nothing is damaged, 1 when something is, 2 when they could not do it."
}

func (say Words) ExtractEndsWith1When() string {
	return "extract ends with 1 when the file is cut off and the plan inside is whole, 2 when no plan comes out."
}

func (say Words) VerifyEndsWith0For() string {
	return "verify ends with 0 for what was issued last, 1 for what was not issued so or is cut off, 2 when it cannot tell, 3 for what a newer revision has superseded."
}

func (say Words) OutAndInEndWith() string {
	return "out and in end with 2 when something could not be moved as it is; standard error names it."
}

func (say Words) DirIsTheArchivesFolder() string {
	return "DIR is the archive's folder; without -data it is ramplan in the user's data folder."
}

func (say Words) DrawWritesToStandardOutput() string {
	return "draw writes to standard output with -o -, each plan into a file of its own with -o FOLDER/, all into one with -o FILE.pdf."
}

func (say Words) APlanningAidProveForce() string {
	return "A planning aid: prove force and position on the station before use."
}

func (say Words) HelpPrintsItsPageOr() string {
	return "help prints its page, or what one verb has to say: ramplan help draw"
}

func (say Words) VersionTakesNothingFound(from string) string {
	return fmt.Sprintf("version takes nothing, found %q", from)
}
