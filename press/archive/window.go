package archive

// A Start is where a change of a plan starts from.
type Start struct {
	Version int64 // that stood when the change was begun

	// Window that sends it; empty for one of nobody in particular. A window's own changes
	// never make it stale: the answer to one may have been lost on the way. A window sends
	// one change at a time.
	Window string
}

// At starts from a version, in no window in particular.
func At(version int64) Start { return Start{Version: version} }

// stale tells whether a change from there would pass over another one: whether the
// version is not the one that stands, and not every change since was made in this window.
func (h *Head) stale(from Start) bool {
	own := from.Window != "" && from.Window == h.window && from.Version >= h.since && from.Version <= h.Version
	return from.Version != h.Version && !own
}
