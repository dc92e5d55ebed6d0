// Package archive keeps plans: the working draft of each as it is typed, every
// state that it had, and its issued revisions, in one SQLite file.
//
// What is acknowledged is on the disk: every change is one transaction that was
// synced before the call returned. A stored document is checked against its
// digest whenever it is read. Nothing here is ever overwritten silently: a
// change names the version that it started from, and one that started from an
// older version changes nothing.
//
// The file may be read by other processes while one serves it.
package archive

import "ramplan/press/words/kept"

// say writes what the archive has to tell people.
var say kept.Words
