package kept

import (
	"fmt"
)

func (say Words) ThereIsNoFile(file string) string { return fmt.Sprintf("There is no file %s.", file) }
