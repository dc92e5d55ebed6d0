package shell

import (
	"fmt"
)

func (say Words) ServeDoes() string {
	return "serve the bench to the browser of this machine; so does ramplan alone"
}

func (say Words) EvalDoes() string {
	return "print the result of each plan as JSON; - reads one plan from standard input"
}

func (say Words) SimulateDoes() string {
	return "press many parts in at the station, and tell what becomes of them"
}

func (say Words) DrawDoes() string {
	return "put plans on paper, as sheet.pdf, .svg or .png; draw -h lists what else"
}

func (say Words) ExtractDoes() string {
	return "take the plan out of a sheet or a drawing, byte for byte"
}

func (say Words) VerifyDoes() string {
	return "tell whether a sheet, a plan file, or a digest typed from paper, is what the archive issued"
}

func (say Words) CheckDoes() string {
	return "look at everything in the archive, also while it is served"
}

func (say Words) BackupDoes() string {
	return "copy the archive into a new file, also while it is served"
}

func (say Words) RestoreDoes() string {
	return "put a backup in the archive's place; what stood there is kept"
}

func (say Words) OutDoes() string {
	return "write all plans, revisions, studies and rams as plain files into a new folder"
}

func (say Words) InDoes() string {
	return "bring plain files, and sheets that are named, in as new plans, with their issued revisions and studies"
}

func (say Words) HelpDoes() string { return "print this page" }

func (say Words) VersionDoes() string { return "print the version" }

func (say Words) NoSuchVerb(found string) string {
	return fmt.Sprintf("no verb %q; try: ramplan help", found)
}
