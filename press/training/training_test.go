package training

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// A name is kept with its blanks tidied; one that is too long, holds what is no sign, or
// is nothing at all is none. Derived: by hand from that rule.
func TestPersonName(t *testing.T) {
	for typed, want := range map[string]string{
		"  Ada   Fell ": "Ada Fell", "": "", " \t\n": "", "a\x01b": "", "a\x7fb": "", "a\uFFFDb": "", "a\tb": "a b", "Ö 7": "Ö 7",
		strings.Repeat("é", MaxWho): strings.Repeat("é", MaxWho), strings.Repeat("é", MaxWho+1): "",
	} {
		assert.Equal(t, want, PersonName(typed), "%q", typed)
	}
}

// Names are one person's that differ in blanks and in capital letters of ASCII alone, as
// the store compares them: from A to Z, and nothing beside them.
func TestPersonKey(t *testing.T) {
	assert.Equal(t, PersonKey("ada zett"), PersonKey(" ADA  Zett"))
	assert.NotEqual(t, PersonKey("Öl"), PersonKey("öl"), "no letters of ASCII")
	assert.NotEqual(t, PersonKey("a@"), PersonKey("a\x60"), "the sign before A")
	assert.NotEqual(t, PersonKey("a["), PersonKey("a{"), "the sign behind Z")
}

// A record that was typed in from a code says so, and by which.
func TestTypedIn(t *testing.T) {
	r := Record{Sitting: TypedInSitting("7K2M")}
	assert.Equal(t, "7K2M", r.TypedIn())
	r.Sitting = "7K2M"
	assert.Empty(t, r.TypedIn(), "an exam that was taken here")
}

// An exam is left an hour after its time, without a limit a day after it began: at that
// very moment it is not yet. Derived: by hand from that rule.
func TestLeft(t *testing.T) {
	began := time.Date(2026, 3, 2, 8, 0, 0, 0, time.UTC)
	for _, one := range []struct {
		limit, after time.Duration
		want         bool
	}{
		{20 * time.Minute, 80 * time.Minute, false}, {20 * time.Minute, 80*time.Minute + 1, true}, {20 * time.Minute, 19 * time.Minute, false},
		{0, 24 * time.Hour, false}, {0, 24*time.Hour + 1, true}, {0, 2 * time.Hour, false}, {time.Nanosecond, 2 * time.Hour, true},
	} {
		s := Sitting{Started: began, Limit: one.limit}
		assert.Equal(t, one.want, s.Left(began.Add(one.after)), "%v", one)
	}
}

// What is recorded of an exam that was left: whose it was and of which plan, how long it
// was under way, how many questions it had and how many had an answer; nothing is judged.
func TestLeftAt(t *testing.T) {
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	began := time.Date(2026, 3, 2, 8, 0, 0, 0, time.UTC)
	s := Sitting{
		ID: "s", Plan: 3, Who: "Ada", Started: began, Revision: "B", Document: plan.Canonical(), Exam: "setter", Seed: 9, Items: 20, Asks: 18, Needed: 15, Pass: 0.8, Limit: time.Hour,
		Given: map[string]Given{"a": {Choice: "x"}, "b": {From: "1"}},
	}
	assert.Equal(t, began, s.LastHeard(), "nothing was heard")
	s.Heard = began.Add(4 * time.Minute)
	assert.Equal(t, s.Heard, s.LastHeard())
	assert.Equal(t, Record{
		Plan: 3, Sitting: "s", Who: "Ada", At: s.Heard, Name: plan.Title.Name, Number: plan.Title.Number, Revision: "B", Digest: plan.Digest(), Exam: "setter", Seed: 9, Items: 18,
		Needed: 15, Pass: 0.8, Limit: time.Hour, Took: 4 * time.Minute, Unfinished: true, Answered: 2,
	}, s.LeftAt(s.Heard))
	s.Asks, s.Document = 0, []byte("{}")
	old := s.LeftAt(s.Heard)
	assert.Equal(t, 20, old.Items, "of older programs, which kept no more than what was asked for")
	assert.Empty(t, old.Name+old.Number+old.Digest, "a plan that cannot be read")
}

// A seed is seen again by its person, else known from another one, in a record or in an
// exam that began before; a damaged record says nothing. Derived: by hand from that rule.
func TestSeen(t *testing.T) {
	kept := []Record{{Who: "Bo", Seed: 5}, {Who: "Ada", Seed: 6}, {Who: "Ada", Seed: 7, Damaged: true}, {Who: "Bo", Seed: 6}}
	for _, one := range []struct {
		who           string
		seed          uint64
		others        []uint64
		repeat, known bool
	}{
		{"ada", 6, nil, true, false}, {"Ada", 5, nil, false, true}, {"Ada", 7, nil, false, false}, {"Cy", 6, nil, false, true},
		{"Cy", 8, []uint64{9}, false, false}, {"Cy", 8, []uint64{9, 8}, false, true}, {"Ada", 6, []uint64{6}, true, false},
	} {
		r := Record{Who: one.who, Seed: one.seed, Repeat: true, Known: true}
		r.Seen(kept, one.others)
		assert.Equal(t, []bool{one.repeat, one.known}, []bool{r.Repeat, r.Known}, "%v", one)
	}
}
