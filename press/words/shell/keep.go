package shell

import (
	"fmt"
)

func (say Words) VerbNeeds(name string, needs string) string {
	return fmt.Sprintf("%s needs %s; try: ramplan help", name, needs)
}

func (say Words) VerbNeedsFile(name string, needs string) string {
	return fmt.Sprintf("%s needs %s; it knows no standard input or output", name, needs)
}

func (say Words) CheckNeedsNoFile() string {
	return "no file, only -data DIR where the archive is not the user's own"
}

func (say Words) StopThatProcess() string {
	return "stop that process first (Ctrl-C where it runs), then try again"
}

func (say Words) FileToMake() string { return "the name of the file to make" }

func (say Words) BackupToPutBack() string { return "the name of the backup" }

func (say Words) KeptAside(aside string) string {
	return fmt.Sprintf("What stood there before is kept as %s\n", aside)
}
