package archive

import (
	"context"
	"runtime/debug"
	"sync"
	"time"
)

// rest is how long nothing is saved before the log is written into the file. What
// is in the log alone is lost with it, and a log that is damaged ends at the damage,
// unnoticed: so as little as may be is left there.
const rest = time.Second

// idle is the clock that runs while nothing is saved.
type idle struct {
	sync.Mutex
	timer *time.Timer
	ended bool
	work  sync.Mutex // held while the log is written
}

// rests begins the rest anew.
func (a *Archive) rests() {
	a.idle.Lock()
	defer a.idle.Unlock()
	switch {
	case a.idle.ended:
	case a.idle.timer == nil:
		a.idle.timer = time.AfterFunc(rest, func() {
			defer func() {
				if v := recover(); v != nil { // what was saved is in the log all the same
					a.log.Printf("writing the log into the file: panic: %v\n%s", v, debug.Stack())
				}
			}()
			a.tidy()
		})
	default:
		a.idle.timer.Reset(rest)
	}
}

// end stops the clock for good, after the work that is under way.
func (i *idle) end() {
	i.Lock()
	i.ended = true
	if i.timer != nil {
		i.timer.Stop()
	}
	i.Unlock()
	i.work.Lock()
	defer i.work.Unlock()
}

func (i *idle) over() bool {
	i.Lock()
	defer i.Unlock()
	return i.ended
}

// tidy writes the log into the file and empties it. Where somebody still reads an
// older moment, or saves, it is tried again after the next rest.
func (a *Archive) tidy() {
	a.idle.work.Lock()
	defer a.idle.work.Unlock()
	if a.idle.over() {
		return
	}
	ctx, done := context.WithTimeout(context.Background(), 3*time.Second)
	defer done()
	h := a.handles.Load()
	if a.stands(h) != nil || !a.logStands(h) {
		return // the next change meets it, and says so
	}
	switch whole, err := h.emptyLog(ctx); {
	case err != nil:
		a.log.Printf("what was saved stays in the log for now, as it could not be written into the file: %v", explain(err))
	case !whole:
		a.rests()
	}
}

// emptyLog writes the log into the file without making anybody wait, and tells
// whether nothing is left in it.
func (h *handles) emptyLog(ctx context.Context) (bool, error) {
	conn, err := h.write.Conn(ctx)
	if err != nil {
		return false, err
	}
	defer conn.Close()
	if _, err := conn.ExecContext(ctx, "pragma busy_timeout(0)"); err != nil {
		return false, err
	}
	defer func() { _, _ = conn.ExecContext(context.WithoutCancel(ctx), "pragma busy_timeout(5000)") }()
	var busy, pages, written int
	err = conn.QueryRowContext(ctx, "pragma wal_checkpoint(truncate)").Scan(&busy, &pages, &written)
	return busy == 0, err
}
