package drill

import (
	"maps"
	"slices"
)

// RoundLength is how many questions a round asks at the most, what was missed and
// is asked again counted in: about ten minutes.
const RoundLength = 20

// Round picks the items of a round from a level: kinds in turn, so that who gets
// through half of it has met them all, the items of each in the order of chance. No two of them ask the same or tell each other's answer.
// The same seed picks the same round.
func (d *Drill) Round(level, n int, seed uint64) []string { return d.drawn(d.Keys(level), n, seed) }

// drawn picks items of some.
func (d *Drill) drawn(keys []string, n int, seed uint64) []string {
	rng := random(seed, "round")
	byKind := map[Kind][]string{}
	for _, key := range keys {
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
		turn := out[before:]
		if len(turn) == 0 {
			break
		}
		rng.Shuffle(len(turn), func(i, j int) { turn[i], turn[j] = turn[j], turn[i] })
	}
	return out
}

// A Session is a round under way: what was answered, and what comes next.
type Session struct {
	Length int      // questions at the most
	Fresh  []string // items not asked yet, in their order
	Due    []Due    // missed ones that will be asked again, the first to come first
	Tried  int      // answers given
	Right  int      // items that were right at the first go
	Seen   []string // items that were asked at least once
	Missed []string // items that were missed and not right since
	repeat bool     // the last question was one asked again
	times  map[string]int
}

// A Due is a missed item, and the number of answers from which it may come back.
type Due struct {
	Key  string
	From int
}

// NewSession begins a round.
func NewSession(keys []string) Session {
	return Session{Length: RoundLength, Fresh: slices.Clone(keys)}
}

const (
	Soon      = 3 // items that lie between a miss and its return, at least
	MostTimes = 3 // that an item is asked in one round
)

// Next is what to ask now; it is false when the round is over. A missed item comes
// back soon, but never twice in a row with another one that was missed, as long as
// there are new ones: who misses everything still sees what there is.
func (s Session) Next() (key string, ok bool) {
	switch {
	case s.Tried >= s.Length || len(s.Fresh)+len(s.Due) == 0:
		return "", false
	case len(s.Fresh) == 0, len(s.Due) > 0 && !s.repeat && s.Due[0].From <= s.Tried:
		return s.Due[0].Key, true
	}
	return s.Fresh[0], true
}

// Answered takes the item that was asked out of what is to come, and puts it back
// when it was missed. Only the first answer to an item counts in the score.
func (s Session) Answered(right bool) Session {
	key, ok := s.Next()
	if !ok {
		return s
	}
	not := func(k string) bool { return k == key }
	out := s
	out.Fresh = slices.DeleteFunc(slices.Clone(s.Fresh), not)
	out.Due = slices.DeleteFunc(slices.Clone(s.Due), func(d Due) bool { return d.Key == key })
	out.Seen, out.Missed = slices.Clone(s.Seen), slices.DeleteFunc(slices.Clone(s.Missed), not)
	out.times = maps.Clone(s.times)
	if out.times == nil {
		out.times = map[string]int{}
	}
	out.times[key]++
	out.Tried++
	out.repeat = slices.Contains(s.Seen, key)
	if !out.repeat {
		out.Seen = append(out.Seen, key)
	}
	switch {
	case !right:
		out.Missed = append(out.Missed, key)
		if out.times[key] < MostTimes {
			out.Due = append(out.Due, Due{key, out.Tried + Soon})
		}
	case !out.repeat:
		out.Right++
	}
	return out
}

// Done tells whether the round is over.
func (s Session) Done() bool {
	_, more := s.Next()
	return !more
}

// Again tells whether what is asked now was asked before in this round.
func (s Session) Again() bool {
	key, ok := s.Next()
	return ok && slices.Contains(s.Seen, key)
}

// Times is how often what is asked now was asked before.
func (s Session) Times() int {
	key, _ := s.Next()
	return s.times[key]
}

// Total is how many questions the round will have had if nothing more is missed.
func (s Session) Total() int { return min(s.Length, s.Tried+len(s.Fresh)+len(s.Due)) }
