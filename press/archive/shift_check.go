package archive

import (
	"context"
	"errors"

	"ramplan/press/proving"
	"ramplan/press/training"
)

// A NewCheck is a shift check as it was filled in.
type NewCheck struct {
	Letter string         // of the issued revision whose window was checked
	By     string         // who checked
	Passed proving.Answer // Pass or Fail
	Typed  *proving.Typed // limit samples and the empty nest, of kind samples
	Once   string         // made once for the form: sent again with it, it is kept once
}

// AddShiftCheck keeps a shift check, signed with the time of now; it never changes. What cannot
// be read of it is refused with [proving.TypedFaults], a revision that is not there with
// [ErrNotFound].
func (a *Archive) AddShiftCheck(ctx context.Context, plan ID, c NewCheck) (KeptStudy, error) {
	r, err := a.Revision(ctx, plan, c.Letter)
	taken := (*NotTaken)(nil)
	if err != nil && !errors.As(err, &taken) { // one that today's rules do not take is at work all the same
		return KeptStudy{}, err
	}
	by := training.PersonName(c.By)
	switch {
	case by == "":
		return KeptStudy{}, ErrNoSigner
	case c.Passed != proving.Pass && c.Passed != proving.Fail:
		return KeptStudy{}, ErrOutcome
	case c.Typed == nil || c.Typed.Kind != proving.Samples:
		return KeptStudy{}, ErrKind
	}
	s, faults := c.Typed.Study()
	if len(faults) > 0 {
		return KeptStudy{}, faults
	}
	row := studyRow{purpose: Shift, kept: &KeptStudy{
		Plan: plan, Kind: proving.Samples, Typed: c.Typed, Study: s, SignedBy: by, Shift: true,
		Check: ShiftCheck{Letter: r.Letter, Digest: r.PlanDigest, Passed: c.Passed},
	}}
	if c.Once != "" {
		row.once = "check/" + c.Once
	}
	if err := row.setTyped(); err != nil {
		return KeptStudy{}, err
	}
	return a.addOne(ctx, &row)
}

// ShiftChecks lists the shift checks of a plan, the newest first.
func (a *Archive) ShiftChecks(ctx context.Context, plan ID) ([]KeptStudy, error) {
	return a.studies(ctx, "from study where plan = $1 and purpose = 'shift' order by signed desc, id desc", plan)
}
