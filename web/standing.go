package web

import (
	"context"

	"ramplan/press/archive"
	"ramplan/web/view"
)

// standing is how the station stands for the last revision of a plan, whose plan has this
// digest. Nothing is said where that cannot be told: the page is shown in any case.
func (s *site) standing(ctx context.Context, id archive.ID, issued, letter string) view.Standing {
	if issued == "" || letter == "" {
		return view.Standing{}
	}
	all, err := s.store.Standings(ctx, []archive.Item{{ID: id, Issued: issued}}, today())
	if err != nil {
		return view.Standing{}
	}
	k := all[id]
	return view.Standing{Letter: letter, State: k.State, Until: k.Until, Damaged: k.Damaged}
}
