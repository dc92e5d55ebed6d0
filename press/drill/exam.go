package drill

import (
	"errors"
	"math"
	"slices"
	"time"
)

// Rules of an exam.
type Rules struct {
	Seed  uint64        `json:"seed"`
	Items int           `json:"items"`
	Pass  float64       `json:"pass"`  // share of right answers, 0 to 1
	Limit time.Duration `json:"limit"` // 0: none
	Level int           `json:"level"`
	Role  Role          `json:"role"` // whose exam it is; empty: everything is asked
}

// UsualRules are those of an exam that nobody has changed.
func UsualRules(seed uint64) Rules {
	return Rules{Seed: seed, Items: 20, Pass: 0.8, Limit: 20 * time.Minute, Level: Levels}
}

// An Exam is a fixed set of items of one plan.
type Exam struct {
	Rules Rules
	Keys  []string
	d     *Drill
}

// ErrNothingToAsk is the refusal of an exam that would have no items.
var ErrNothingToAsk = errors.New("drill: this plan has no items for such an exam")

// NewExam makes an exam. It has fewer items where the plan has fewer.
func (d *Drill) NewExam(rules Rules) (*Exam, error) {
	keys := d.drawn(d.keysFor(rules.Role, rules.Level), rules.Items, rules.Seed)
	if len(keys) == 0 {
		return nil, ErrNothingToAsk
	}
	return &Exam{Rules: rules, Keys: keys, d: d}, nil
}

// Exercise gives an item of the exam by its number, from 0.
func (x *Exam) Exercise(i int) Exercise {
	e, _ := x.d.Exercise(x.Keys[i], x.Rules.Seed)
	return e
}

// Needed is how many answers must be right.
func (x *Exam) Needed() int {
	return int(math.Ceil(x.Rules.Pass*float64(len(x.Keys)) - 1e-9))
}

// A Score is what an exam came to.
type Score struct {
	Items    int           `json:"items"`
	Right    int           `json:"right"`
	Needed   int           `json:"needed"`
	Missed   []string      `json:"missed"` // keys, in the order of the exam
	Took     time.Duration `json:"took"`
	OverTime bool          `json:"over_time"`
	Grave    []string      `json:"grave"` // what was answered that fails an exam alone, each once
	Passed   bool          `json:"passed"`
}

// Judge scores an exam. An item without an answer is missed; over the time limit
// nobody passes, and nobody whose answer says what no score makes up for.
func (x *Exam) Judge(answers map[string]Answer, took time.Duration) Score {
	s := Score{Items: len(x.Keys), Needed: x.Needed(), Took: took, OverTime: x.Rules.Limit > 0 && took > x.Rules.Limit}
	for i, key := range x.Keys {
		a, given := answers[key]
		j := x.Exercise(i).Judge(a)
		if given && j.Right {
			s.Right++
			continue
		}
		if given && j.Grave != "" && !slices.Contains(s.Grave, j.Grave) {
			s.Grave = append(s.Grave, j.Grave)
		}
		s.Missed = append(s.Missed, key)
	}
	s.Passed = s.Right >= s.Needed && !s.OverTime && len(s.Grave) == 0
	return s
}

// Title names an item in a few words, for a list of what was missed; empty for an
// item of another plan.
func (d *Drill) Title(key string, seed uint64) string {
	e, ok := d.Exercise(key, seed)
	if !ok {
		return ""
	}
	return e.InWords()
}
