package shell

import (
	"fmt"
)

func (say Words) CannotWriteFile(name string, err error) string {
	return fmt.Sprintf("cannot write %s: %v", name, err)
}
