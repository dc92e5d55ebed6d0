package shell

import (
	"fmt"
)

func (say Words) DrillHasNoPages() string {
	return "-pages, -width, -title and -format are not for the drill: it is one HTML file"
}

func (say Words) DrillNeedsHTML(to string) string {
	return fmt.Sprintf("draw cannot write the drill to %q; give -o a name that ends in .html", to)
}

func (say Words) DrillOfOnePlan() string { return "the drill is of one plan; make a file for each" }
