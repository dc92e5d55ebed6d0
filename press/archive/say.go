package archive

import "ramplan/press/words/kept"

// say writes what the archive has to tell people.
var say kept.Words
