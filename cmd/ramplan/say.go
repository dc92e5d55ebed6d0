package main

import "ramplan/press/words/shell"

// say writes what the command line says, in metric English.
var say shell.Words
