package archive

import (
	"math"
	"os"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press"
	"ramplan/press/drafts"
)

// A paper history is the one that anybody would keep on paper: every state that
// there was, numbered from 1, one pile of those before the present one and one of
// those that were undone.
type paperHistory struct {
	states       []paperState
	past, future []int
	now          int
	version      int64
}

type paperState struct {
	nest, owner string
	typedIn     string // the one entry that was typed; empty for everything else
	at          time.Time
}

func (p *paperHistory) state() *paperState { return &p.states[p.now-1] }

// change puts a new state on top, or types on in the present one.
func (p *paperHistory) change(s paperState) {
	p.version++
	was := p.state()
	if s.typedIn != "" && s.typedIn == was.typedIn && len(p.past) > 0 && len(p.future) == 0 && s.at.Sub(was.at) < time.Second {
		*was = s
		return
	}
	p.states = append(p.states, s)
	p.past = append(p.past, p.now)
	p.future = nil
	p.now = len(p.states)
}

func (p *paperHistory) move(from, to *[]int) {
	if len(*from) == 0 {
		return
	}
	p.version++
	*to = append(*to, p.now)
	p.now = (*from)[len(*from)-1]
	*from = (*from)[:len(*from)-1]
}

func draftOf(s *paperState) *press.Draft {
	return &press.Draft{Entries: []press.Entry{{Path: "title.owner", Text: s.owner}, {Path: "station.nest", Text: s.nest}}}
}

// TestHistoryIsAsOnPaper does the same to the archive and to a history on paper. Each case
// starts from a copy of one empty archive: making it took longer than what is done to it.
func TestHistoryIsAsOnPaper(t *testing.T) {
	t.Parallel()
	empty := t.TempDir()
	first, err := Open(background(), empty, Options{})
	require.NoError(t, err)
	require.NoError(t, first.Close())
	rapid.Check(t, func(t *rapid.T) {
		dir, err := os.MkdirTemp("", "ramplan-history-")
		require.NoError(t, err)
		defer os.RemoveAll(dir)
		require.NoError(t, os.CopyFS(dir, os.DirFS(empty)))
		c := newClock()
		a, err := Open(background(), dir, Options{Now: c.now})
		require.NoError(t, err)
		defer func() { _ = a.Close() }()
		paper := paperHistory{states: []paperState{{at: c.at}}, now: 1, version: 1}
		h, err := a.Create(background(), draftOf(paper.state()), drafts.DidMake)
		require.NoError(t, err)
		id := h.ID
		word := rapid.SampledFrom([]string{"", "1", "12", "123", "a"})

		save := func(t *rapid.T, from int64) (Head, paperState, error) {
			s := *paper.state()
			s.at = c.at
			changed := 0
			for path, entry := range map[string]*string{"title.owner": &s.owner, "station.nest": &s.nest} {
				if rapid.Bool().Draw(t, "touch "+path) {
					if typed := word.Draw(t, path); typed != *entry {
						*entry = typed
						changed++
						s.typedIn = path
					}
				}
			}
			if changed != 1 {
				s.typedIn = ""
			}
			got, err := a.Save(background(), id, At(from), draftOf(&s), "")
			return got, s, err
		}
		same := func(s paperState) bool { return s.nest == paper.state().nest && s.owner == paper.state().owner }
		t.Repeat(map[string]func(*rapid.T){
			"save": func(t *rapid.T) {
				_, s, err := save(t, paper.version)
				require.NoError(t, err)
				if !same(s) {
					paper.change(s)
				}
			},
			"stale save": func(t *rapid.T) {
				from := rapid.Int64Range(0, paper.version+2).Filter(func(v int64) bool { return v != paper.version }).Draw(t, "from")
				got, s, err := save(t, from)
				if same(s) {
					require.NoError(t, err, "what stands already may be saved again")
					return
				}
				var stale *Stale
				require.ErrorAs(t, err, &stale)
				require.Equal(t, from, stale.From)
				require.Equal(t, paper.version, got.Version)
				require.Equal(t, paper.state().nest, text(stale.Head, "station.nest"))
			},
			"undo": func(t *rapid.T) {
				_, err := a.Undo(background(), id, At(paper.version))
				require.NoError(t, err)
				paper.move(&paper.past, &paper.future)
			},
			"redo": func(t *rapid.T) {
				_, err := a.Redo(background(), id, At(paper.version))
				require.NoError(t, err)
				paper.move(&paper.future, &paper.past)
			},
			"restore": func(t *rapid.T) {
				n := rapid.IntRange(1, len(paper.states)).Draw(t, "state")
				_, err := a.Restore(background(), id, At(paper.version), int64(n))
				require.NoError(t, err)
				if n != paper.now {
					s := paper.states[n-1]
					s.typedIn, s.at = "", c.at
					paper.change(s)
				}
			},
			"stale step": func(t *rapid.T) {
				var stale *Stale
				_, err := a.Undo(background(), id, At(paper.version-1))
				require.ErrorAs(t, err, &stale)
				_, err = a.Redo(background(), id, At(paper.version+1))
				require.ErrorAs(t, err, &stale)
				_, err = a.Restore(background(), id, At(0), 1)
				require.ErrorAs(t, err, &stale)
			},
			"rest": func(t *rapid.T) {
				c.rest(time.Duration(rapid.IntRange(1, 1500).Draw(t, "milliseconds")) * time.Millisecond)
			},
			"reopen": func(t *rapid.T) {
				require.NoError(t, a.Close())
				a, err = Open(background(), dir, Options{Now: c.now})
				require.NoError(t, err)
			},
			"": func(t *rapid.T) {
				h, err := a.Get(background(), id)
				require.NoError(t, err)
				require.Equal(t, paper.version, h.Version)
				require.Equal(t, int64(paper.now), h.State)
				require.Equal(t, draftOf(paper.state()), h.Draft)
				require.Equal(t, len(paper.past) > 0, h.CanUndo)
				require.Equal(t, len(paper.future) > 0, h.CanRedo)
			},
		})
		all, err := a.History(background(), id, 0, math.MaxInt)
		require.NoError(t, err)
		slices.Reverse(all)
		require.Len(t, all, len(paper.states))
		for i, s := range all {
			require.Equal(t, draftOf(&paper.states[i]), s.Draft, "state %d", i+1)
			require.True(t, paper.states[i].at.Equal(s.At), "state %d", i+1)
			require.Equal(t, paper.now == i+1, s.Stands)
		}
		report, err := a.Check(background())
		require.NoError(t, err)
		require.Empty(t, report.Faults)
	})
}
