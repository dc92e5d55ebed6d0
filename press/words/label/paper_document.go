package label

import (
	"fmt"
)

func (say Words) Plans(n int) string { return fmt.Sprintf("%d plans", n) }

func (say Words) ThePlan(digest string) string { return "the plan " + digest }
