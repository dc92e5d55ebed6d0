package press

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// linear wants sixteen times as much to take far less than 256 times as long. A machine
// that does other work may spoil a comparison, so it is made a few times: what is
// quadratic never passes.
func linear(t *testing.T, took func(n int) time.Duration) {
	t.Helper()
	const times, leeway, tries = 16, 6, 5
	var few, lots time.Duration
	for range tries {
		if few, lots = took(1), took(times); lots < times*leeway*few+20*time.Millisecond {
			return
		}
	}
	assert.Fail(t, "not linear", "%v for some, %v for sixteen times as many", few, lots)
}

// TestReadingIsLinear reads documents of many keys, rows and repetitions, sixteen
// times as many at the second time: that may take some sixteen times as long. Where
// each key is compared with all before it, it takes 256 times as long.
func TestReadingIsLinear(t *testing.T) {
	many := func(n int, one func(i int) string) string {
		var b strings.Builder
		for i := range n {
			if i > 0 {
				b.WriteByte(',')
			}
			b.WriteString(one(i))
		}
		return b.String()
	}
	key := func(i int) string { return fmt.Sprintf(`"k%d":1`, i) }
	whole := func(text string) []byte { return []byte(`{"format":"ramplan.plan/1",` + text + `}`) }
	for name, doc := range map[string]func(n int) []byte{
		"keys":        func(n int) []byte { return whole(many(n, key)) },
		"keys inside": func(n int) []byte { return whole(`"ram":{` + many(n, key) + `}`) },
		"keys in a row": func(n int) []byte {
			return whole(`"parts":[{` + many(n, key) + `}]`)
		},
		"one key again and again": func(n int) []byte { return whole(many(n, func(int) string { return `"k":1` })) },
		"rows":                    func(n int) []byte { return whole(`"parts":[` + many(n, func(int) string { return `{}` }) + `]`) },
		"objects": func(n int) []byte {
			return whole(many(n, func(i int) string { return fmt.Sprintf(`"k%d":{"a":{}}`, i) }))
		},
		"entries of a draft": func(n int) []byte {
			return []byte(`{"format":"ramplan.draft/1","fields":[` + many(n, func(i int) string { return fmt.Sprintf(`["k%d",7]`, i) }) + `]}`)
		},
	} {
		t.Run(name, func(t *testing.T) {
			took := func(n int) time.Duration {
				data, best := doc(n), time.Hour
				require.Less(t, len(data), MaxBytes)
				for range 3 {
					began := time.Now()
					_, faults := Decode(data)
					_, more := DecodeDraft(data)
					best = min(best, time.Since(began))
					require.NotEmpty(t, faults)
					require.NotEmpty(t, more)
					assert.LessOrEqual(t, max(len(faults), len(more)), MostListed+1)
				}
				return best
			}
			linear(t, func(n int) time.Duration { return took(2500 * n) })
		})
	}
}

// A draft of as many entries as there may be is checked in one go as well.
func TestDraftOfManyEntriesIsLinear(t *testing.T) {
	took := func(n int) time.Duration {
		d := &Draft{}
		for i := range n {
			d.Entries = append(d.Entries, Entry{fmt.Sprintf("parts[%d].name", i%200), "x"}, Entry{fmt.Sprintf("k%d", i), "x"})
		}
		best := time.Hour
		for range 5 {
			began := time.Now()
			_, faults := d.Check()
			best = min(best, time.Since(began))
			require.NotEmpty(t, faults)
		}
		return best
	}
	linear(t, func(n int) time.Duration { return took(MaxEntries / 2 / 16 * n) })
}

// Of a document with more faults than anybody reads the first are listed, and the
// others counted.
func TestFaultsAreListedUpToANumber(t *testing.T) {
	data := []byte(`{"format":"ramplan.plan/1"` + strings.Repeat(`,"nonsense":1`, 3) + string(bytes.Repeat([]byte(`,"parts":1`), 1000)) + `}`)
	_, faults := Decode(data)
	require.Len(t, faults, MostListed+1)
	last := faults[MostListed]
	assert.Equal(t, CodeMore, last.Code)
	assert.Regexp(t, `^and \d+ more faults$`, last.Message)
	_, few := Decode([]byte(`{"format":"ramplan.plan/1"}`))
	assert.NotContains(t, few.Error(), "more fault")
}
