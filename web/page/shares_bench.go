package page

// BenchShares tells the bench where its shares come from.
type BenchShares struct {
	Stream  string   // address of the shares, bit by bit
	Of      string   // digest of the plan that they must be of
	Address string   // of the page
	Says    []string // what must be known beside the closed form's shares, until those come
}
