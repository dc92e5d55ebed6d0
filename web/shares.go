package web

import (
	"context"
	"io"
	"net/http"
	"net/url"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/words"
	"ramplan/web/page"
	"ramplan/web/view"
)

// How the shares of a bench and of their page are estimated, and how many parts may be
// counted while somebody waits for a page.
const (
	sharePrecision = 0.1
	firstPrecision = 1 // of the page before the script asks
	mostWaitedFor  = 10_000_000
)

// recordEnd stands after each piece of a stream.
const recordEnd = "\x1e"

// countAsked is what the form of the page asks for.
type countAsked struct {
	parts   int64 // 0: none are counted
	seed    uint64
	refused []string
}

func askedShares(q url.Values) countAsked {
	var a countAsked
	a.seed = 1
	if text := strings.TrimSpace(q.Get("parts")); text != "" {
		n, ok := press.PartsFrom(strings.NewReplacer(" ", "", "\u00a0", "", "\u202f", "").Replace(text))
		if !ok {
			a.refused = append(a.refused, words.PartsRefused)
		}
		a.parts = n
	}
	if text := strings.TrimSpace(q.Get("seed")); text != "" {
		n, err := strconv.ParseUint(text, 10, 64)
		if err != nil {
			a.refused = append(a.refused, words.SeedRefused)
		} else {
			a.seed = n
		}
	}
	return a
}

// showShares answers GET /plans/{id}/shares: the page; to its script, and the bench's, the
// shares bit by bit as they become known; to programs the simulation.
func (s *site) showShares(w http.ResponseWriter, r *http.Request) error {
	head, err := s.planHead(r)
	if err != nil {
		return err
	}
	plan, faults := head.Draft.Check()
	json := wantsJSON(w, r)
	if plan == nil && !json {
		if plan, err = s.store.LastPlan(r.Context(), head.ID, head.State); err != nil {
			return err
		}
	}
	w.Header().Add("Vary", partHeader+", "+roomHeader)
	query := r.URL.Query()
	ask := askedShares(query)
	var result *press.Result
	if plan != nil {
		result = press.Evaluate(plan)
	}
	switch {
	case json && len(faults) > 0:
		return faults
	case (json || r.Header.Get(partHeader) == "shares") && len(ask.refused) > 0:
		return refusal{http.StatusUnprocessableEntity, ask.refused[0], ask.refused[1:]}
	case json:
		return s.sendSimulation(w, r, result, ask)
	case r.Header.Get(partHeader) == "shares":
		if of := query.Get("of"); result == nil || of != "" && of != result.PlanDigest() {
			return refusal{http.StatusConflict, words.SharesMoved, nil}
		}
		return s.streamShares(w, r, query, plan, result, ask)
	}
	return s.sharesPage(w, r, head, plan, faults, result, ask)
}

// sharesPage is the page with what is known at once; without a script with what its form
// asks for as well.
func (s *site) sharesPage(w http.ResponseWriter, r *http.Request, head archive.Head, plan *press.Plan, faults press.Problems, result *press.Result, ask countAsked) error {
	query, status := r.URL.Query(), http.StatusOK
	v := view.SharesPage{
		Typed: view.Take(head.Draft.Entries, nil), Faults: faults, Plan: plan, Result: result, Address: planPath(head.ID, ""),
		Stream: planPath(head.ID, "shares"), Parts: query.Get("parts"), Seed: strconv.FormatUint(ask.seed, 10), Refused: ask.refused,
	}
	if ask.parts > mostWaitedFor {
		v.Refused = append(v.Refused, words.TooManyToWaitFor)
	}
	if v.NoParts = query.Has("parts") && strings.TrimSpace(v.Parts) == ""; v.NoParts {
		status = http.StatusUnprocessableEntity
	}
	if len(v.Refused) > 0 || len(faults) > 0 && plan == nil {
		status = http.StatusUnprocessableEntity
	}
	if result != nil {
		o := press.SimulationOptions{Seed: ask.seed, Precision: firstPrecision, Work: s.beside.Work(nil)}
		if ask.parts > 0 && len(v.Refused) == 0 {
			o.Parts, o.Precision = ask.parts, sharePrecision
		}
		v.Known = result.Simulate(r.Context(), o)
		var err error
		if v.Days, err = days(plan, result); err != nil {
			return err
		}
	}
	foot, err := s.standingFoot(r.Context(), head, plan, result, len(faults) > 0)
	if err != nil {
		return err
	}
	return show(w, r, status, page.SharesOf(v.Page(assets.sharesPage().With(foot))))
}

// sendSimulation answers programs.
func (s *site) sendSimulation(w http.ResponseWriter, r *http.Request, result *press.Result, ask countAsked) error {
	if ask.parts > mostWaitedFor {
		return refusal{http.StatusUnprocessableEntity, words.TooManyToWaitFor, nil}
	}
	if ask.parts == 0 {
		ask.parts = 1_000_000
	}
	sim := result.Simulate(r.Context(), press.SimulationOptions{Parts: ask.parts, Seed: ask.seed, Precision: sharePrecision, Work: s.beside.Work(nil)})
	data, err := sim.JSON()
	if err != nil {
		return err
	}
	w.Header().Set("Content-Type", "application/json")
	_, err = w.Write(data)
	return err
}

// A stream of pieces of HTML, each of which replaces the one before.
type stream struct {
	w  http.ResponseWriter
	rc *http.ResponseController
}

func (t stream) put(ctx context.Context, render func(context.Context, io.Writer) error) error {
	_ = t.rc.SetWriteDeadline(time.Now().Add(DefaultTimeouts.Write)) // a long count is no slow reader
	if err := render(ctx, t.w); err != nil {
		return err
	}
	if _, err := io.WriteString(t.w, recordEnd); err != nil {
		return err
	}
	return t.rc.Flush()
}

// streamShares sends the estimate each time that it is better, then the parts counted; to a
// bench the strip too, where it differs. It ends when nobody reads it any more.
func (s *site) streamShares(w http.ResponseWriter, r *http.Request, query url.Values, plan *press.Plan, result *press.Result, ask countAsked) error {
	ctx, stop := context.WithCancel(r.Context())
	defer stop()
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("Cache-Control", "no-store")
	to := stream{w, http.NewResponseController(w)}
	strip, drawn := "", query.Get("of") != "" // the bench has one, whose readings become known with the shares
	put := func(sim *press.Simulation, on *page.Days) error {
		if drawn {
			now, err := drawnStrip(plan, result, roomOf(r), sim.Spread())
			if err != nil {
				return err
			}
			if now != strip {
				if err := to.put(ctx, page.Strip(now).Render); err != nil {
					return err
				}
			}
			strip = now
		}
		return to.put(ctx, page.SharesBody(view.Shares(result, sim, on)).Render)
	}
	body := func(sim *press.Simulation) error { return put(sim, nil) }
	onDays := sync.OnceValues(func() (*page.Days, error) { return days(plan, result) })
	last := func(sim *press.Simulation) error {
		on, err := onDays()
		if err != nil {
			return err
		}
		return put(sim, on)
	}
	o := press.SimulationOptions{Parts: ask.parts, Seed: ask.seed, Precision: sharePrecision, Work: s.beside.Work(nil)}
	var broken error
	o.Refined = func(sim *press.Simulation) {
		if broken == nil {
			if broken = body(sim); broken != nil {
				stop() // nobody reads it any more
			}
		}
	}
	if ask.parts == 0 {
		sim := result.Simulate(ctx, o)
		if ctx.Err() != nil {
			return nil
		}
		return last(sim)
	}
	return s.streamCount(ctx, stop, to, body, last, result, o)
}

// told is how often the progress of a count is said.
const told = 250 * time.Millisecond

// streamCount counts parts, and says how far it is.
func (s *site) streamCount(ctx context.Context, stop func(), to stream, body, last func(*press.Simulation) error, result *press.Result, o press.SimulationOptions) error {
	var done atomic.Int64
	o.Work = s.beside.Work(func(n int64) { done.Add(n) })
	better := make(chan *press.Simulation) // estimates are written here, one at a time with the progress
	o.Refined = func(sim *press.Simulation) {
		select {
		case better <- sim:
		case <-ctx.Done():
		}
	}
	var sofar atomic.Pointer[func() *press.Simulation]
	o.Sofar = func(read func() *press.Simulation) { sofar.Store(&read) }
	var sim *press.Simulation
	end := make(chan error, 1)
	go func() {
		end <- safely(func() error { sim = result.Simulate(ctx, o); return nil })
	}()
	tick := time.NewTicker(told)
	defer tick.Stop()
	for {
		var broken error
		select {
		case err := <-end:
			if err != nil || ctx.Err() != nil {
				return err
			}
			return last(sim)
		case sim := <-better:
			broken = body(sim)
		case <-tick.C:
			// What is counted so far comes too: whoever stops keeps it.
			if read := sofar.Load(); read != nil {
				if part := (*read)(); part != nil {
					broken = last(part)
				}
			}
			if broken == nil {
				broken = to.put(ctx, page.Progress(say.SharesProgress(done.Load(), o.Parts)).Render)
			}
		}
		if broken != nil { // nobody reads it any more
			stop()
			return <-end
		}
	}
}

// days are those of the plan, in words and drawings.
func days(p *press.Plan, r *press.Result) (*page.Days, error) {
	d, err := drawnDays(p, r)
	return view.Days(p, r, d), err
}
