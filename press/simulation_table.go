package press

import (
	"slices"

	"ramplan/press/simulate"
)

// ByTruth is something for each thing that a part can be.
type ByTruth[T any] struct {
	Unseated   T `json:"unseated"`
	Long       T `json:"long"`
	Short      T `json:"short"`
	Loose      T `json:"loose"`
	Conforming T `json:"conforming"`
}

// All gives them in the order of package simulate.
func (b *ByTruth[T]) All() [simulate.Truths]*T {
	return [simulate.Truths]*T{&b.Unseated, &b.Long, &b.Short, &b.Loose, &b.Conforming}
}

// ByVerdict is something for each thing that the station can say.
type ByVerdict[T any] struct {
	OnOn         T `json:"on_on"`
	OnOff        T `json:"on_off"`
	OffOn        T `json:"off_on"`
	OffOff       T `json:"off_off"`
	EarlyContact T `json:"early_contact"`
}

// All gives them in the order of package simulate.
func (b *ByVerdict[T]) All() [simulate.Verdicts]*T {
	return [simulate.Verdicts]*T{&b.OnOn, &b.OnOff, &b.OffOn, &b.OffOff, &b.EarlyContact}
}

// SimulatedMatrix is truth against verdict.
type SimulatedMatrix[T any] = ByTruth[ByVerdict[T]]

// Named is something for each of the named shares of all parts.
type Named[T any] struct {
	Unseated            T `json:"unseated"`
	Long                T `json:"long"`
	Short               T `json:"short"`
	Loose               T `json:"loose"`
	Conforming          T `json:"conforming"`
	Accepted            T `json:"accepted"`
	EarlyContact        T `json:"early_contact"`
	FalseAccept         T `json:"false_accept"`
	FalseAcceptHeight   T `json:"false_accept_height"`
	FalseAcceptUnseated T `json:"false_accept_unseated"`
	FalseAcceptLoose    T `json:"false_accept_loose"`
	FalseReject         T `json:"false_reject"`
	LooseFails          T `json:"loose_fails"`
}

// All gives them in the order of package simulate.
func (n *Named[T]) All() [simulate.Shares]*T {
	return [simulate.Shares]*T{&n.Unseated, &n.Long, &n.Short, &n.Loose, &n.Conforming, &n.Accepted, &n.EarlyContact,
		&n.FalseAccept, &n.FalseAcceptHeight, &n.FalseAcceptUnseated, &n.FalseAcceptLoose, &n.FalseReject, &n.LooseFails}
}

// Of gives the share of this name; there is one.
func (n *Named[T]) Of(name string) *T { return n.All()[slices.Index(shareNames[:], name)] }
