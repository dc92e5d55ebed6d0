// Package proof draws what studies of a station say, one file a drawing, on the theme of
// package draw.
package proof
