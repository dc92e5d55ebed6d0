package kept

import (
	"fmt"
)

func (say Words) FileEmpty() string { return "The file is empty: it is no archive." }

func (say Words) LogNeedsWritableFolder(path string) string {
	return fmt.Sprintf("What was saved last is in %s-wal, and reading that needs a folder that may be written to: copy both files into one, and name it.", path)
}

func (say Words) ServedByOlder() string {
	return "An older ramplan serves this archive; stop it first."
}

func (say Words) NoArchiveInFolder() string { return "There is no archive in this folder." }
