package archive

import (
	"context"
	"database/sql"
	"errors"
	"strconv"
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/issue"
	"ramplan/press/proving"
)

// standingEdition tells standings of this program from those that an older one kept: what
// it concluded from studies may have been something else.
const standingEdition = " 1"

// A Standing is how the newest issued revision of a plan stands on a day, and when its shift
// was last checked.
type Standing struct {
	State   string    // one of the states of package proving; empty where nothing was issued
	Until   string    // the last day on which it is proved, or was; empty where it never was
	Damaged bool      // a signed study, or the revision, is damaged: nothing is proved by the rest
	Studies int       // signed, corrected ones too
	Checked LastCheck // of the shift
}

// A LastCheck is the last shift check of a plan; At is zero where there was none.
type LastCheck struct {
	At     time.Time
	Letter string // of the revision whose window it checked
	Passed proving.Answer
}

// Standings tells how the newest revisions of plans stand on a day, written 2026-11-28, by
// the number of the plan. What was concluded is kept, and concluded anew when a study is
// signed, a revision issued, or a day comes on which a study runs out; so a visit to the
// shelf assesses hardly anything.
func (a *Archive) Standings(ctx context.Context, items []Item, day string) (map[ID]Standing, error) {
	out := map[ID]Standing{}
	var ids []string
	issued := map[ID]string{}
	for _, it := range items {
		if it.Issued != "" {
			ids = append(ids, strconv.FormatInt(int64(it.ID), 10))
			issued[it.ID] = it.Issued
		}
	}
	if len(ids) == 0 {
		return out, nil
	}
	var anew []ID
	err := each(ctx, a.reader(ctx), `
select p.id, coalesce(k.of, ''), coalesce(k.since, ''), coalesce(k.last, ''), coalesce(k.state, ''), coalesce(k.until, ''),
	(select count(*) from study where plan = p.id and purpose = '' and signed is not null),
	coalesce(c.signed, ''), coalesce(c.letter, ''), coalesce(c.outcome, '')
from plan p left join proved k on k.plan = p.id
	left join study c on c.id = (select id from study where plan = p.id and purpose = 'shift' order by signed desc, id desc limit 1)
where p.id in (`+strings.Join(ids, ", ")+")", nil, func(scan scanner) error {
		var id ID
		var of, since, last, checked string
		var s Standing
		if err := scan(&id, &of, &since, &last, &s.State, &s.Until, &s.Studies, &checked, &s.Checked.Letter, &s.Checked.Passed); err != nil {
			return err
		}
		s.Checked.At = readStamp(checked)
		switch {
		case s.Studies == 0:
			s.State, s.Until = proving.StateNotProved, ""
		case of != standingOf(issued[id], s.Studies) || day < since || day > last:
			anew = append(anew, id)
		}
		out[id] = s
		return nil
	})
	if err != nil {
		return nil, explain(err)
	}
	for _, id := range anew {
		if err := a.standAnew(ctx, id, day, out); err != nil {
			return nil, err
		}
	}
	return out, nil
}

// standingOf is what a standing was concluded from: signed studies never change, so their
// number tells whether one came.
func standingOf(planDigest string, studies int) string {
	return planDigest + " " + strconv.Itoa(studies) + standingEdition
}

// standAnew assesses the newest revision of a plan, and keeps what it found for the next
// visit.
func (a *Archive) standAnew(ctx context.Context, id ID, day string, out map[ID]Standing) error {
	s := out[id]
	defer func() { out[id] = s }()
	s.State, s.Until = proving.StateNotProved, ""
	r, err := a.LastIssued(ctx, id)
	if err != nil {
		return err
	}
	all, err := a.Studies(ctx, id)
	if err != nil {
		return err
	}
	studies, err := counting(all)
	if damaged := (*Damaged)(nil); errors.As(err, &damaged) || r.Damaged {
		s.Damaged = true
		return nil // not kept: a backup may be put back
	}
	if r.Plan == nil {
		return nil // today's rules do not take it, so it cannot be held against them
	}
	signed := 0
	for _, k := range all {
		if k.Signed() {
			signed++
		}
	}
	proved := Assess(&r, studies, day).Proved
	s.State, s.Studies = proved.State, signed
	if proved.Until != nil {
		s.Until = *proved.Until
	}
	since, last := proving.Holds(studies, day)
	err = a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		_, err := tx.ExecContext(ctx, `
insert into proved (plan, of, since, last, state, until) values ($1, $2, $3, $4, $5, $6)
on conflict (plan) do update set of = excluded.of, since = excluded.since, last = excluded.last, state = excluded.state, until = excluded.until`,
			id, standingOf(r.PlanDigest, signed), since, last, s.State, s.Until)
		return err
	})
	if failure := (*Failure)(nil); errors.As(err, &failure) {
		return nil // a disk that takes nothing is no reason not to show the shelf
	}
	return err
}

// Assess holds an issued revision whose plan today's rules take against the studies of its
// plan, those of [Archive.CountingStudies], on a day.
func Assess(r *issue.Revision, studies []*proving.Study, day string) *proving.Assessment {
	return proving.Assess(press.Evaluate(r.Plan), studies, day)
}
