package drill

import (
	"slices"
)

// RoundLength is how many items a round has, where the level has as many.
const RoundLength = 10

// Round picks the items of a round from a level: kinds in turn, the items of each
// in the order of chance. No two of them ask the same or tell each other's answer.
// The same seed picks the same round.
func (d *Drill) Round(level, n int, seed uint64) []string {
	rng := random(seed, "round")
	byKind := map[Kind][]string{}
	for _, key := range d.Keys(level) {
		k := d.KindOf(key)
		byKind[k] = append(byKind[k], key)
	}
	for _, k := range Kinds {
		list := byKind[k]
		rng.Shuffle(len(list), func(i, j int) { list[i], list[j] = list[j], list[i] })
	}
	var out []string
	used := map[string]bool{}
	fresh := func(key string) bool {
		return !slices.ContainsFunc(d.topicsOf(key), func(topic string) bool { return used[topic] })
	}
	for len(out) < n {
		before := len(out)
		for _, k := range Kinds {
			i := slices.IndexFunc(byKind[k], fresh)
			if i < 0 || len(out) >= n {
				continue
			}
			key := byKind[k][i]
			for _, topic := range d.topicsOf(key) {
				used[topic] = true
			}
			out = append(out, key)
			byKind[k] = byKind[k][i+1:] // what was passed over will not be fresh later
		}
		if len(out) == before {
			break
		}
	}
	rng.Shuffle(len(out), func(i, j int) { out[i], out[j] = out[j], out[i] })
	return out
}

// A Session is a round under way. It is plain data, for a page to carry along:
// what comes next, and what was answered.
type Session struct {
	Queue []string `json:"queue"` // what is still to be asked, in this order
	Again []string `json:"again"` // what was missed and not answered rightly since
	Tried int      `json:"tried"` // answers given
	Right int      `json:"right"` // items that were right at the first go
	Items int      `json:"items"` // items of the round
	Seen  []string `json:"seen"`  // items that were asked at least once
}

// NewSession begins a round.
func NewSession(keys []string) Session {
	return Session{Queue: slices.Clone(keys), Items: len(keys)}
}

// How many other items lie between a miss and its return, and between the first
// right answer to it and the check whether it stuck.
const (
	soon  = 2
	later = 5
)

// Next is what to ask now; it is false when the round is over.
func (s Session) Next() (key string, ok bool) {
	if len(s.Queue) == 0 {
		return "", false
	}
	return s.Queue[0], true
}

// Answered takes the item that was asked out of the queue. A missed one comes
// back after two others, and once more some items after it was right: what is
// missed comes back sooner. Only the first answer to an item counts in the score.
func (s Session) Answered(right bool) Session {
	key, ok := s.Next()
	if !ok {
		return s
	}
	out := s
	out.Queue = slices.Clone(s.Queue[1:])
	out.Again, out.Seen = slices.Clone(s.Again), slices.Clone(s.Seen)
	out.Tried++
	first := !slices.Contains(s.Seen, key)
	if first {
		out.Seen = append(out.Seen, key)
	}
	missed := slices.Contains(s.Again, key)
	back := -1
	switch {
	case right && first:
		out.Right++
	case right && missed:
		out.Again = slices.DeleteFunc(out.Again, func(k string) bool { return k == key })
		if len(out.Queue) >= later { // at the end of a round there is nothing to wait for
			back = later
		}
	case !right:
		if !missed {
			out.Again = append(out.Again, key)
		}
		back = soon
	}
	if back >= 0 && !slices.Contains(out.Queue, key) {
		out.Queue = slices.Insert(out.Queue, min(back, len(out.Queue)), key)
	}
	return out
}

// Done tells whether the round is over.
func (s Session) Done() bool { return len(s.Queue) == 0 }
