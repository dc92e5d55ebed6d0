package kept

import (
	"fmt"
)

func (say Words) AnotherProcess() string { return "another process" }

func (say Words) ProcessNumber(pid int) string { return fmt.Sprintf(" (number %d)", pid) }
