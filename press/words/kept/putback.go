package kept

import (
	"fmt"
)

func (say Words) NoFile(file string) string { return fmt.Sprintf("There is no file %s.", file) }
