package web

import (
	"bytes"
	"context"
	"errors"
	"strconv"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/press/draw"
)

// cardEdition tells cards of this program from those that an older one kept: what it
// found in a plan may have been something else.
const cardEdition = " 2"

// damagedCard marks the card of a draft that does not match its digest.
const damagedCard = "damaged"

// bringCard makes what the shelf shows of a plan where it is older than the
// draft, and keeps it for the next visit.
func (s *site) bringCard(ctx context.Context, it *archive.Item) error {
	if it.Card.Of == it.Digest+cardEdition && it.Digest != "" {
		return nil
	}
	head, err := s.store.Get(ctx, it.ID)
	var damaged *archive.Damaged
	if errors.As(err, &damaged) {
		it.Card = archive.Card{Of: damagedCard}
		return nil
	}
	if err != nil {
		return err
	}
	card, err := s.newCard(ctx, head)
	if err != nil {
		return err
	}
	it.Card = card
	var failure *archive.Failure
	if err := s.store.KeepCard(ctx, it.ID, card); err != nil && !errors.As(err, &failure) {
		return err // a disk that takes nothing is no reason not to show the shelf
	}
	return nil
}

// asIssued tells whether the draft is the last revision. It is asked for issued
// plans alone, and not kept: the answer changes with either.
func (s *site) asIssued(ctx context.Context, it *archive.Item) bool {
	if it.Issued == "" || it.Card.Faults > 0 {
		return false
	}
	plan, err := s.store.Sound(ctx, it.ID)
	return err == nil && plan.Digest() == it.Issued
}

// notReady says why a plan with a blocker is not ready. It is computed once for each
// draft that is shown, and remembered while the program runs: no more than a sentence.
func (s *site) notReady(ctx context.Context, it *archive.Item) string {
	if it.Card.Blockers == 0 || it.Card.Faults > 0 {
		return ""
	}
	if known, ok := s.why.Load(it.Digest); ok {
		return known.(string)
	}
	plan, err := s.store.Sound(ctx, it.ID)
	if err != nil {
		return "" // the card says how many blockers there are
	}
	why := say.Blocked(press.Evaluate(plan))
	s.why.Store(it.Digest, why)
	return why
}

// newCard draws the small strip of the nominal part and counts the findings: of
// the draft, or of the last sound plan that it was.
func (s *site) newCard(ctx context.Context, head archive.Head) (archive.Card, error) {
	card := archive.Card{Of: head.Digest + cardEdition}
	plan, faults := head.Draft.Check()
	card.Faults = len(faults)
	if plan == nil {
		var err error
		if plan, err = s.store.LastPlan(ctx, head.ID, head.State); plan == nil {
			return card, err
		}
	}
	shown, err := cardOf(plan, press.Evaluate(plan), head.ID)
	shown.Of, shown.Faults = card.Of, card.Faults
	return shown, err
}

// cardOf is what a card shows of a plan.
func cardOf(plan *press.Plan, r *press.Result, id archive.ID) (card archive.Card, err error) {
	card.Blockers, card.Cautions, card.Notes = r.Count(press.Blocker), r.Count(press.Caution), r.Count(press.Note)
	if len(r.Faults) == 0 {
		return card, nil
	}
	var svg bytes.Buffer
	o := draw.Options{Width: cardStrip, ID: "card-" + strconv.FormatInt(int64(id), 10)}
	if err := draw.NewMinis(plan, r).Row(r.Faults[0], o).SVG(&svg); err != nil {
		return card, err
	}
	card.Strip = svg.String()
	return card, nil
}

// cardStrip is the width of the strip on a card, px.
const cardStrip = 320
