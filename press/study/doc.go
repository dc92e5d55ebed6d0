// Package study computes the statistics that a station is proved with: means and spreads
// with their limits, shares, trends, normality, outliers, least squares, analysis of variance
// and gauge indices. Pure functions of numbers, each with its equation and source.
package study
