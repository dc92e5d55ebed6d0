package kept

import (
	"fmt"
)

func (say Words) NeverOverwritten(file string) string {
	return fmt.Sprintf("%s is there already; it is never overwritten, name another file.", file)
}

func (say Words) NoFolder(dir string) string {
	return fmt.Sprintf("There is no folder %s.", dir)
}

func (say Words) IsReadOnly(dir string) string { return fmt.Sprintf("%s is read-only.", dir) }

func (say Words) MayNotWrite(path string) string {
	return fmt.Sprintf("%s may not be written by this user.", path)
}
