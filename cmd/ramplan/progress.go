package main

import (
	"io"
	"os"
	"sync"
	"time"

	"github.com/schollz/progressbar/v3"
	"golang.org/x/term"
)

// bar tells somebody who watches a terminal how many parts are done. Nobody else sees it.
type bar struct {
	mu  sync.Mutex
	bar *progressbar.ProgressBar // nil: nobody watches
}

func newBar(to io.Writer, parts int64) *bar {
	f, ok := to.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) || parts <= 0 {
		return &bar{}
	}
	return &bar{bar: progressbar.NewOptions64(parts,
		progressbar.OptionSetWriter(f),
		progressbar.OptionSetDescription("parts"),
		progressbar.OptionShowCount(),
		progressbar.OptionSetPredictTime(true),
		progressbar.OptionThrottle(200*time.Millisecond),
		progressbar.OptionClearOnFinish(),
		progressbar.OptionFullWidth(),
	)}
}

// add is called from any goroutine.
func (b *bar) add(parts int64) {
	if b.bar == nil {
		return
	}
	b.mu.Lock()
	defer b.mu.Unlock()
	_ = b.bar.Add64(parts) // it only shows
}

// pause takes the bar away before something is printed; the next part brings it back.
func (b *bar) pause() {
	if b.bar == nil {
		return
	}
	b.mu.Lock()
	defer b.mu.Unlock()
	_ = b.bar.Clear()
}
