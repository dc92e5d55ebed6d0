package proving

import (
	"slices"
	"strconv"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/web/page"
	"ramplan/web/view"
)

// Offers is everything that is shown of what a study offers as new entries.
type Offers struct {
	Study   *proving.Study
	Judged  *proving.Judged
	Against *press.Result // that the study is held against
	Plan    *press.Plan   // of the draft, or the last sound one
	Changes []proving.Change
	Picked  []string // paths
	Chosen  bool     // somebody picked them; else all are
	Unsound int      // faults of the draft
	Trouble []string // why the draft would be no plan with them
	Effect  view.Effect
	Version int64 // of the draft
}

// Picks are the changes that are picked.
func (o Offers) Picks() []proving.Change {
	return slices.DeleteFunc(slices.Clone(o.Changes), func(c proving.Change) bool { return !o.picked(c.Path) })
}

func (o Offers) picked(path string) bool { return !o.Chosen || slices.Contains(o.Picked, path) }

// Page gives what is shown of them.
func (o Offers) Page() *page.Adoption {
	out := &page.Adoption{Lead: say.OffersLead(len(o.Changes)), Version: strconv.FormatInt(o.Version, 10), New: o.Effect.New, Gone: o.Effect.Gone}
	if len(o.Changes) == 0 {
		out.Taken = say.AllTaken()
	}
	switch {
	case o.Unsound > 0:
		out.Trouble = say.DraftUnsound(o.Unsound)
	case len(o.Trouble) > 0:
		out.Trouble = say.NoPlanWithThem(o.Trouble[0])
	}
	for _, c := range o.Changes {
		one := page.Offer{Path: c.Path, Label: say.AdoptName(c.Path), Does: say.AdoptDoes(c.Path), Picked: o.picked(c.Path)}
		one.Was, one.Is = say.AdoptValues(o.Plan, c)
		out.Offers = append(out.Offers, one)
	}
	for _, f := range o.Effect.Figures {
		out.Effects = append(out.Effects, page.Effect(f))
	}
	out.Correct = o.correction()
	return out
}

// correction is the nest moved by whole steps, where a trial proposes that.
func (o Offers) correction() *page.NestCorrection {
	r, ok := o.Judged.Result.(*proving.TrialResult)
	if !ok || r == nil || r.Correction == nil {
		return nil
	}
	c := r.Correction
	out := &page.NestCorrection{Text: say.CorrectionSaid(o.Against.Plan, c)}
	if c.SharesNow == nil || c.SharesAfter == nil {
		return out
	}
	for _, x := range []struct {
		pair    string
		was, is float64
	}{
		{"on_on", c.SharesNow.OnOn, c.SharesAfter.OnOn}, {"on_off", c.SharesNow.OnOff, c.SharesAfter.OnOff},
		{"off_on", c.SharesNow.OffOn, c.SharesAfter.OffOn}, {"off_off", c.SharesNow.OffOff, c.SharesAfter.OffOff},
	} {
		out.Rows = append(out.Rows, page.Effect{Label: say.PairName(x.pair), Was: say.SeenShare(x.was), Is: say.SeenShare(x.is)})
	}
	return out
}
