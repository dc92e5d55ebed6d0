package proof

import "ramplan/press/words"

// Words writes what studies say for one reader.
type Words struct{ words.Printer }
