package proof

import "ramplan/press/words/label"

// say writes what is lettered, in metric English.
var say label.Words
