package page

// Rules are the windows that each rule would give, side by side, to choose from.
type Rules struct {
	Lead    string
	Rows    []RuleRow
	ByHand  string // said where both edges are set by hand
	Says    string // how the window stands to its targets
	Changes *Changes
}

// A RuleRow is the window of one rule.
type RuleRow struct {
	Name, Help    string
	Start, End    string
	Width         string
	Accept        string
	Reject, Price string
	AcceptWorst   string // the same shares on the worst day
	RejectWorst   string
	Missed        string // the targets are missed by it
	NoWindow      string // it proposes none: said in place of its button
	Chosen        bool
	Do            string // chooses it
}

// Changes are what alone would meet the targets.
type Changes struct {
	Lead    string
	Rows    []ChangeRow
	GivenUp string // of what is not offered
}

// A ChangeRow is one of them.
type ChangeRow struct {
	What, To string
	Do       string // tries it
}
