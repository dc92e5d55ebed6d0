package screen

import (
	"strconv"
)

func (say Words) NoSuchStep(value string) string {
	return strconv.Quote(value) + ", counted from 0: no such step"
}
