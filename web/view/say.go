package view

import (
	"ramplan/press/words/proof"
	"ramplan/press/words/screen"
)

// say writes what the pages say, in metric English. A builder that is handed the words of
// its reader takes them under this name.
var say screen.Words

// sayProof writes what studies of a station say.
var sayProof proof.Words
