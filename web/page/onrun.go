package page

// OnRun is what lies over the drawing of the run, in the same view box: the ground of each
// step, which leads to its entries, and the hold case, which a script lets people drag.
type OnRun struct {
	Box         string // the view box of the drawing
	Top, Height string // of the ground of every step
	Steps       []RunGround
	Hold        *RunHold
	Start       *Start // begins a hold case where there is none
	Hint        string // said with the script only
}

// A RunGround is the ground of one step.
type RunGround struct{ ID, Link, Left, Width, Name string }

// A RunHold is the hold case on the way of its step.
type RunHold struct {
	Way      string // x y mm of each place, in turn
	Field    string // the path of the entry that it is written to
	Step     string // mm, the least change
	Low      string // mm, beyond which it may not go
	High     string
	At       string // mm
	Name     string
	Decimals string
}
