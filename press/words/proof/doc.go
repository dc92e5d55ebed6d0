// Package proof says what studies of a station say: findings, checks, statistics and states
// in words for people.
package proof
