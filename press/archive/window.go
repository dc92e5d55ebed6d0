package archive

import "context"

type windowKey struct{}

// In names the window from which a change comes. Its own changes never make it
// stale: the answer to one may have been lost on the way. A window sends one
// change at a time.
func In(ctx context.Context, window string) context.Context {
	return context.WithValue(ctx, windowKey{}, window)
}

func windowOf(ctx context.Context) string {
	window, _ := ctx.Value(windowKey{}).(string)
	return window
}

// own tells whether every change since a version was made in this window.
func (h *Head) own(window string, from int64) bool {
	return window != "" && window == h.window && from >= h.since && from <= h.Version
}
