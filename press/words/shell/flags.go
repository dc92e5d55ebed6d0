package shell

import (
	"fmt"
)

func (say Words) FlagBehindNames(name string) string {
	return fmt.Sprintf("flags stand before the names, found %s behind them; a file of that name is written ./%s", name, name)
}
