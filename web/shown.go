package web

import (
	"net/http"
	"reflect"
	"slices"
	"strconv"
	"sync"

	"ramplan/web/page"
)

// Request headers of a script that puts answers to typing into its page: the number
// of the answer that it shows, so that what is the same need not be sent again, and
// which form of the strip there is room for.
const (
	shownHeader = "Ramplan-Shown"
	roomHeader  = "Ramplan-Room"
)

// How many windows' answers are remembered, and how many of each: an answer that came
// too late was never shown.
const (
	mostWindows = 8
	answersEach = 2
)

// windows remember the last answers to each window, for as long as this process lives.
type windows struct {
	mu   sync.Mutex
	last []*shownIn // the one asked last at the end
	n    int        // of answers
}

// shownIn is what one window may show.
type shownIn struct {
	window  string
	answers []shown
}

// A shown answer is the parts of a bench that an answer to typing leaves out where they
// are the same.
type shown struct {
	n        int
	sections []page.Section
	drawings []string
}

// seen remembers an answer and gives it a number. Where the window shows an earlier
// one that is remembered, the parts that are the same are marked as kept.
func (s *windows) seen(window string, b *page.Bench, earlier string) {
	if window == "" {
		return
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.n++
	now := shown{n: s.n, sections: slices.Clone(b.Form.Sections), drawings: drawingsOf(b.Result)}
	b.Answer = strconv.Itoa(now.n)
	i := slices.IndexFunc(s.last, func(w *shownIn) bool { return w.window == window })
	w := &shownIn{window: window}
	if i >= 0 {
		w = s.last[i]
		s.last = slices.Delete(s.last, i, i+1)
	}
	for _, old := range w.answers {
		if strconv.Itoa(old.n) == earlier {
			old.keep(b)
		}
	}
	w.answers = append(w.answers, now)
	if len(w.answers) > answersEach {
		w.answers = slices.Delete(w.answers, 0, 1)
	}
	s.last = append(s.last, w)
	if len(s.last) > mostWindows {
		s.last = slices.Delete(s.last, 0, 1)
	}
}

// keep marks what is the same as in an earlier answer.
func (old shown) keep(b *page.Bench) {
	for i := range b.Form.Sections {
		if i < len(old.sections) && reflect.DeepEqual(old.sections[i], b.Form.Sections[i]) {
			b.Form.Sections[i].Kept, b.Form.Sections[i].Groups = true, nil // its name stays among the links
		}
	}
	if b.Result == nil {
		return
	}
	drawings := b.Result.Drawings()
	if len(drawings) != len(old.drawings) {
		return
	}
	for i, d := range drawings {
		if *d == old.drawings[i] && *d != "" {
			*d = page.KeptDrawing
		}
	}
}

func drawingsOf(r *page.Result) []string {
	if r == nil {
		return nil
	}
	var out []string
	for _, d := range r.Drawings() {
		out = append(out, *d)
	}
	return out
}

// roomOf is which form of the strip a request has room for; empty: both are drawn.
func roomOf(r *http.Request) string {
	switch room := r.Header.Get(roomHeader); room {
	case wide, narrow:
		return room
	}
	return ""
}

// The forms of the strip.
const (
	wide   = "wide"
	narrow = "narrow"
)
