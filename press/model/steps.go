package model

import "math"

// steps are the whole multiples of a step inside a range, counted from 0.
type steps struct {
	size        float64
	first, last float64 // whole numbers
}

var noSteps = steps{size: 1, first: 1, last: 0}

// steps are the settings that can be set.
func (r *Ram) steps() steps { return multiplesWithin(r.SettingStep, r.SettingMin, r.SettingMax) }

func multiplesWithin(size, low, high float64) steps {
	return steps{size, math.Ceil((low - slack) / size), math.Floor((high + slack) / size)}
}

// Steps is how many settings can be set.
func (r *Ram) Steps() int { return int(r.steps().count()) }

func (s steps) count() float64 { return max(0, s.last-s.first+1) }

// at gives the k-th multiple as the number that people would write.
func (s steps) at(k float64) float64 { return multiple(k, s.size) }
