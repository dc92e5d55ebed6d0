package kept

import (
	"fmt"
)

func (say Words) TheFileIsEmptyIt() string { return "The file is empty: it is no archive." }

func (say Words) WhatWasSavedLastIs(path string) string {
	return fmt.Sprintf("What was saved last is in %s-wal, and reading that needs a folder that may be written to: copy both files into one, and name it.", path)
}

func (say Words) AnOlderRamplanServesThis() string {
	return "An older ramplan serves this archive; stop it first."
}

func (say Words) ThereIsNoArchiveIn() string { return "There is no archive in this folder." }
