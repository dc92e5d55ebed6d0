// Package proving makes the structs of the pages on which a station is proved.
package proving
