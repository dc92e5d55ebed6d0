package shell

import (
	"fmt"
)

func (say Words) CannotWriteA(name string, pathless error) string {
	return fmt.Sprintf("cannot write %s: %v", name, pathless)
}

func (say Words) CannotWriteB(there string, pathless error) string {
	return fmt.Sprintf("cannot write %s: %v", there, pathless)
}
