package web

import "ramplan/press/words/screen"

// say writes what the server answers, in metric English.
var say screen.Words
