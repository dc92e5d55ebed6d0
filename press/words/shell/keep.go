package shell

import (
	"fmt"
)

func (say Words) NeedsTryRamplanHelp(name string, needs string) string {
	return fmt.Sprintf("%s needs %s; try: ramplan help", name, needs)
}

func (say Words) NeedsItKnowsNoStandard(name string, needs string) string {
	return fmt.Sprintf("%s needs %s; it knows no standard input or output", name, needs)
}

func (say Words) NoFileOnlyDataDir() string {
	return "no file, only -data DIR where the archive is not the user's own"
}

func (say Words) StopThatProcessFirstCtrl() string {
	return "stop that process first (Ctrl-C where it runs), then try again"
}

func (say Words) TheNameOfTheFile() string { return "the name of the file to make" }

func (say Words) TheNameOfTheBackup() string { return "the name of the backup" }

func (say Words) WhatStoodThereBeforeIs(aside string) string {
	return fmt.Sprintf("What stood there before is kept as %s\n", aside)
}
