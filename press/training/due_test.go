package training

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Each exam has its own list of who is due. A pass of the exam of before there were two
// is one of both; an exam that is not finished takes no pass away. Derived: by hand.
func TestDueByExam(t *testing.T) {
	n := ID(100)
	rec := func(who, exam, digest string, passed, unfinished bool) Record {
		n--
		return Record{ID: n, Who: who, Exam: exam, Digest: digest, Passed: passed, Unfinished: unfinished}
	}
	all := []Record{ // the newest first
		rec("Ada", "technician", "B", true, false),
		rec("Bo", "technician", "B", false, true), // left, after a pass on A
		rec("Cy", "setter", "B", false, false),
		rec("Di", "setter", "B", false, true), // left, and passed on B before
		rec("Di", "setter", "B", true, false),
		rec("Bo", "technician", "A", true, false),
		rec("Ada", "setter", "A", true, false),
		rec("Old", "", "A", true, false),
		rec("Eve", "", "B", true, false),
		rec("Eve", "setter", "A", false, false),
		rec("Fay", "technician", "B", false, true), // never finished one
	}
	who := func(d Demand) (out []string) {
		for _, t := range Due(all, d) {
			out = append(out, t.Who)
		}
		return out
	}
	assert.Equal(t, []string{"Bo", "Old", "Fay"}, who(Demand{Exam: "technician", Elder: true, Counts: []string{"B"}}))
	assert.Equal(t, []string{"Cy", "Ada"}, who(Demand{Exam: "setter", Elder: false, Counts: []string{"B"}}), "Eve passed the exam of everything since")
	assert.Equal(t, []string{"Fay"}, who(Demand{Exam: "technician", Elder: true, Counts: []string{"B", "A"}}), "where B does not concern the drill")
	assert.Equal(t, []string{"Cy"}, who(Demand{Exam: "setter", Elder: false, Counts: []string{"B", "A"}}))
}

// An exam that was begun and left does not stand in front of one that was judged: on a
// newer revision the failed one before is what the list shows.
func TestLeavingHidesNoFailure(t *testing.T) {
	due := Due([]Record{
		{ID: 2, Who: "tom reed", Exam: "technician", Digest: "A", Unfinished: true},
		{ID: 1, Who: "Tom Reed", Exam: "technician", Digest: "A"},
	}, Demand{Exam: "technician", Elder: true, Counts: []string{"B"}})
	require.Len(t, due, 1)
	assert.Equal(t, ID(1), due[0].ID)
}

// Of several passes the newest counts: on a state that counts it takes its person off the
// list whatever was passed before it, and an older one on such a state does not.
func TestTheNewestPassCounts(t *testing.T) {
	pass := func(id ID, digest string) Record {
		return Record{ID: id, Who: "Ada", Exam: "setter", Digest: digest, Passed: true}
	}
	d := Demand{Exam: "setter", Counts: []string{"B"}}
	assert.Empty(t, Due([]Record{pass(2, "B"), pass(1, "A")}, d))
	due := Due([]Record{pass(2, "A"), pass(1, "B")}, d)
	require.Len(t, due, 1, "the plan was taken back to an older state")
	assert.Equal(t, ID(2), due[0].ID)
}

// Who failed the last exam on a state that counts is due, whatever was passed before it; who
// passed it again since is not. One on a state that does not count changes nothing.
func TestTheLastOnAStateThatCountsDecides(t *testing.T) {
	rec := func(id ID, digest string, passed bool) Record {
		return Record{ID: id, Who: "Ada", Exam: "setter", Digest: digest, Passed: passed}
	}
	d := Demand{Exam: "setter", Counts: []string{"B"}}
	due := Due([]Record{rec(2, "B", false), rec(1, "B", true)}, d)
	require.Len(t, due, 1)
	assert.Equal(t, ID(2), due[0].ID)
	assert.Empty(t, Due([]Record{rec(3, "B", true), rec(2, "B", false), rec(1, "B", true)}, d))
	assert.Empty(t, Due([]Record{rec(2, "C", false), rec(1, "B", true)}, d))
}
