package web

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// names gives the names of the parts on the page, in order.
func (s *sheet) names() []string {
	var out []string
	for i := 0; ; i++ {
		name, ok := s.value("parts[" + string(rune('0'+i)) + "].name")
		if !ok {
			return out
		}
		out = append(out, name)
	}
}

func TestRows(t *testing.T) {
	s := start(t)
	was := s.names()
	require.Len(t, was, 3)
	a, b, c := was[0], was[1], was[2]

	s = s.press("down parts 0")
	assert.Equal(t, []string{b, a, c}, s.names())
	s = s.press("up parts 2")
	assert.Equal(t, []string{b, c, a}, s.names())
	s = s.press("remove parts 1")
	assert.Equal(t, []string{b, a}, s.names())
	assert.Equal(t, 200, s.status)

	s = s.press("add parts")
	assert.Equal(t, []string{b, a, ""}, s.names())
	assert.Equal(t, 422, s.status, "an empty row makes no plan")
	assert.Contains(t, text(s.byID("f-parts-2-nominal-n")), "needed")
	assert.Equal(t, "needed", attr(s.byID("f-parts-2-nominal"), "placeholder"))
	s = s.press("recompute")
	assert.Equal(t, []string{b, a, ""}, s.names(), "an empty row stays until it is removed")
	s = s.press("up parts 2").press("up parts 1")
	assert.Equal(t, []string{"", b, a}, s.names())
	s = s.press("remove parts 0")
	assert.Equal(t, []string{b, a}, s.names())
	assert.Equal(t, 200, s.status)

	for _, do := range []string{"up parts 0", "down parts 1", "remove parts 2", "remove parts -1", "remove parts", "up nothing 1", "remove title.name 0"} {
		assert.Equal(t, 400, s.press(do).status, do)
	}
}

func TestOwnFaultsKeepEmptyList(t *testing.T) {
	s := start(t).open("p.json", edited(t, `"window": {}`, `"faults": {"other": []}`))
	digest := text(s.byID("digest"))
	require.NotEmpty(t, digest)
	s = s.press("add faults.other").press("remove faults.other 0")
	assert.Equal(t, digest, text(s.byID("digest")))
}

// TestAnotherKindOfJoint changes the kind back and forth: what was typed for the
// other kind is kept aside, said so, and comes back.
func TestAnotherKindOfJoint(t *testing.T) {
	s := start(t)
	digest := text(s.byID("digest"))
	s.typeIn("joint.kind", "touch")
	s = s.press("recompute")
	assert.Nil(t, s.byID("f-joint-diameter"))
	assert.Contains(t, text(s.byID("parked")), "Kept aside")
	assert.NotContains(t, string(s.save()), "diameter")

	s.typeIn("joint.kind", "measured")
	s = s.press("recompute")
	assert.NotNil(t, s.byID("f-joint-force_low"))
	assert.Equal(t, 422, s.status)
	s.typeIn("joint.force_low", "100")
	assert.Contains(t, string(s.save()), "joint.diameter", "a draft keeps what is kept aside")

	s.typeIn("joint.kind", "interference")
	s = s.press("recompute")
	assert.Equal(t, digest, text(s.byID("digest")))
	assert.Contains(t, text(s.byID("parked")), "1 entry")
}

func TestPaste(t *testing.T) {
	s := start(t)
	s.typeIn(":paste", "Setting;Force\n10;200\n20,5;560,5\n40;1500\n")
	s = s.press("paste ram.curve.points")
	got, _ := s.value("ram.curve.points[1][0]")
	assert.Equal(t, "20.5", got)
	_, more := s.value("ram.curve.points[3][0]")
	assert.False(t, more)

	s.typeIn(":paste", "10 200\nten 300")
	s = s.press("paste ram.curve.points")
	assert.Equal(t, 422, s.status)
	assert.Contains(t, text(s.byID("paste")), "Line 2")
	kept, _ := s.value(":paste")
	assert.Equal(t, "10 200\nten 300", kept)

	s = s.press("recompute").press("undo")
	got, _ = s.value("ram.curve.points[6][1]")
	assert.Equal(t, "2620", got, "the points of before are back")
}

// TestPasteOfAnotherOrder reads columns that are meant in another way than they
// stand: the heading is heeded, a falling list turned round, and both are said;
// what is only doubtful is asked, and changed by a button alone.
func TestPasteOfAnotherOrder(t *testing.T) {
	s := start(t)
	read := func(text string) {
		s.typeIn(":paste", text)
		s = s.press("paste ram.curve.points")
	}
	curve := func() (out []string) {
		for _, name := range []string{"[0][0]", "[0][1]", "[1][0]", "[1][1]"} {
			v, _ := s.value("ram.curve.points" + name)
			out = append(out, v)
		}
		return out
	}
	read("Force;Setting\n120;10\n505;100")
	assert.Equal(t, []string{"10", "120", "100", "505"}, curve())
	assert.Contains(t, text(s.byID("lead")), "by the heading “Force;Setting”, force first")
	assert.Nil(t, s.byID("points-doubts"))

	read("100;505\n10;120")
	assert.Equal(t, []string{"10", "120", "100", "505"}, curve())
	assert.Contains(t, text(s.byID("lead")), "turned round because the list fell")

	read("120;10\n505;100")
	assert.Equal(t, []string{"120", "10", "505", "100"}, curve(), "nothing is changed unasked")
	assert.Contains(t, text(s.byID("points-doubts")), "are the columns swapped?")
	s = s.press("swap ram.curve.points")
	assert.Equal(t, []string{"10", "120", "100", "505"}, curve())
	assert.Nil(t, s.byID("points-doubts"))

	read("0,1;120\n1;505")
	assert.Contains(t, text(s.byID("points-doubts")), "are these fractions")
	s = s.press("hundredfold ram.curve.points")
	assert.Equal(t, []string{"10", "120", "100", "505"}, curve())
	s = s.press("undo")
	assert.Equal(t, []string{"0.1", "120", "1", "505"}, curve())

	read("10;120\n5;60\n100;505")
	assert.Equal(t, 422, s.status)
	s = s.press("sort ram.curve.points")
	assert.Equal(t, []string{"5", "60", "10", "120"}, curve())
	assert.Nil(t, s.byID("points-doubts"))
	assert.Equal(t, 400, s.press("sort parts").status)

	read("1;120\n0.5;60")
	s.typeIn("ram.curve.points[0][1]", "200")
	s = s.press("swap ram.curve.points")
	assert.Contains(t, text(s.byID("points-doubts")), "swapped?", "what was made of them is asked about again")
}

// TestPasteIsKept presses other buttons while columns are typed and not read yet:
// they stay in their box, which stays open, until they are read.
func TestPasteIsKept(t *testing.T) {
	s := start(t)
	s.typeIn(":paste", "10 200\n20")
	for _, do := range []string{"add parts", "down parts 0", "remove parts 3", "recompute", "undo"} {
		s = s.press(do)
		kept, _ := s.value(":paste")
		assert.Equal(t, "10 200\n20", kept, do)
		assert.True(t, has(s.byID("paste"), "open"), do)
	}
	s.typeIn(":paste", "10 200\n20 560\n")
	s = s.press("paste ram.curve.points")
	kept, _ := s.value(":paste")
	assert.Empty(t, kept, "what was read need not be read again")
}
