package label

import (
	"fmt"
)

func (say Words) InFullOnPage(page int) string { return fmt.Sprintf("In full on page %d.", page) }

func (say Words) ContinuedOnPage(page int) string { return fmt.Sprintf("Continued on page %d.", page) }

func (say Words) MoreOnPage(left int, page int) string {
	return fmt.Sprintf("And %d more on page %d.", left, page)
}

func (say Words) ReadingRuleHead() string { return "Reading rule:" }
