package kept

import (
	"fmt"
)

func (say Words) AnotherProcess() string { return "another process" }

func (say Words) Number(pid int) string { return fmt.Sprintf(" (number %d)", pid) }
