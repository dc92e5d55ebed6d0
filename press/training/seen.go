package training

import "slices"

// Seen finds out whether a person had handed in the same seed of the same plan before,
// of the records of that plan, and, if not, whether another person had, or was given it
// in an exam that began before: those are the seeds of others.
func (t *Record) Seen(kept []Record, others []uint64) {
	t.Repeat, t.Known = false, slices.Contains(others, t.Seed)
	for _, old := range kept {
		if old.Damaged || old.Seed != t.Seed {
			continue
		}
		if PersonKey(old.Who) == PersonKey(t.Who) {
			t.Repeat = true
		} else {
			t.Known = true
		}
	}
	t.Known = t.Known && !t.Repeat
}
