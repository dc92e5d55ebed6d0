package web

import "context"

// board has the places at which drawings for paper are made: two, as one of dots
// takes some 60 MB while it is drawn. Memory is the machine's, so all share them.
var board = make(turns, 2)

// turns are places at which work is done. Who leaves gives the place up.
type turns chan struct{}

// take waits for a place and does the work there.
func (t turns) take(ctx context.Context, work func() error) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	select {
	case t <- struct{}{}:
	case <-ctx.Done():
		return ctx.Err()
	}
	defer func() { <-t }()
	return work()
}
