package drill

import (
	"slices"
	"strconv"
)

// A Taken is a drill to take along: exercises that were made beforehand, and sets of
// them, for a page that has not this program behind it. Zones are chosen there and not
// set, because a set zone is judged here alone. The same plan always gives the same.
type Taken struct {
	Exercises []Exercise
	Rounds    [Levels][]Set // by level, from 1
	Exams     []TakenExam
}

// A Set is what one round or exam asks, in its order: the places of exercises.
type Set struct {
	Seed  uint64
	Items []int
}

// A TakenExam is the exam of a role, in several sets.
type TakenExam struct {
	Rules Rules // of the first set; the others differ in their seed alone
	First *Exam
	Sets  []Set
}

const (
	takenSets     = 8         // rounds of a level, and exams of a role
	takenVariants = 3         // ways to ask an item whose figures are drawn by chance
	takenSeed     = 1_000_000 // of the first set: beyond those that are drawn for exams at the bench
	takenRole     = 100       // by which the seeds of one role's exams stand apart from another's, and from rounds
)

// TakeAlong makes such a drill.
func (d *Drill) TakeAlong() Taken {
	var t Taken
	place := map[string]int{} // by key and what is asked; -1: not possible here
	put := func(key string, n int) int {
		e, _ := d.Exercise(key, uint64(takenSeed+n%takenVariants))
		mark := key + "\n" + e.mark()
		if at, known := place[mark]; known {
			return at
		}
		if e, ok := e.chosen(); ok {
			t.Exercises = append(t.Exercises, e)
			place[mark] = len(t.Exercises) - 1
		} else {
			place[mark] = -1
		}
		return place[mark]
	}
	set := func(keys []string, seed uint64, n int) Set {
		s := Set{Seed: seed}
		for _, key := range keys {
			if at := put(key, n); at >= 0 {
				s.Items = append(s.Items, at)
			}
		}
		return s
	}
	for level := range Levels {
		for n := range takenSets {
			seed := uint64(takenSeed + n)
			if s := set(d.Round(level+1, RoundLength, seed), seed, n); len(s.Items) > 0 {
				t.Rounds[level] = append(t.Rounds[level], s)
			}
		}
	}
	for i, role := range Roles {
		var x TakenExam
		for n := range takenSets {
			rules := UsualRules(uint64(takenSeed + takenRole*(i+1) + n))
			rules.Role = role
			exam, err := d.NewExam(rules)
			if err != nil {
				continue
			}
			if s := set(exam.Keys, rules.Seed, n); len(s.Items) > 0 {
				if x.First == nil {
					x.First, x.Rules = exam, rules
				}
				x.Sets = append(x.Sets, s)
			}
		}
		if x.First != nil {
			t.Exams = append(t.Exams, x)
		}
	}
	return t
}

// mark is the same for exercises that ask the same, in whatever order their choices
// stand.
func (e Exercise) mark() string {
	all := append([]string{e.Question}, e.Facts...)
	var choices []string
	for _, c := range e.Choices {
		choices = append(choices, c.ID+" "+c.Text)
	}
	slices.Sort(choices)
	all = append(all, choices...)
	if e.Zone != nil {
		all = append(all, strconv.FormatFloat(e.Zone.Shift, 'g', -1, 64))
	}
	out := ""
	for _, s := range all {
		out += s + "\n"
	}
	return out
}
