package archive

import (
	"context"
	"database/sql"
	"strconv"
	"strings"
	"time"

	"ramplan/press/drafts"
)

// An Item is a plan as it stands on the shelf.
type Item struct {
	ID           ID
	Name, Number string
	Revision     string // the last issued; empty before the first
	Issued       string // digest of its plan
	Asked        string // the revision whose digest was searched for; empty where it was words
	Changed      time.Time
	Binned       time.Time // when it was moved to the bin; zero on the shelf
	Version      int64
	Digest       string // of the working draft
	Card         Card
}

// A Card is what the shelf shows of a draft, kept so that it is not computed at
// each visit.
type Card struct {
	Of                         string // digest of the draft that it shows; another one's card is old
	Strip                      string // small strip, SVG
	Blockers, Cautions, Faults int
	Notes                      int
}

// Orders of the shelf.
const (
	ByChange = "changed"
	ByName   = "name"
	ByNumber = "number"
	ByDue    = "due" // what lost its proof, or failed a shift check, then the stations by the day on which they lose it
)

// dueOrder is the order of [ByDue] over a plan p. A station with signed studies of which nothing
// is kept comes first: it is assessed when it is shown.
func dueOrder(p string) string {
	return strings.ReplaceAll(` order by case
	when (select state from proved where plan = p.id) in ('withdrawn', 'expired') then 0
	when coalesce((select outcome from study where plan = p.id and purpose = 'shift' order by signed desc, id desc limit 1), '') = 'fail' then 1
	when (select state from proved where plan = p.id) = 'proved' then 2
	when not exists (select 1 from proved where plan = p.id) and exists (select 1 from study where plan = p.id and purpose = '' and signed is not null) then 0
	when exists (select 1 from revision where plan = p.id) then 3 else 4 end,
	(select until from proved where plan = p.id), p.changed desc, p.id desc`, "p.", p+".")
}

// A Query asks for a page of the shelf.
type Query struct {
	Text   string // words or beginnings of words, all of which are found; or the digits of an issued digest
	Order  string // ByChange when empty
	Also   []ID   // plans that are taken besides those that the text finds
	Binned bool   // the bin in place of the shelf
	Offset int
	Limit  int
}

// List gives a page of the shelf and how many plans there are in all.
func (a *Archive) List(ctx context.Context, q Query) ([]Item, int, error) {
	var total int
	query, args := countQuery(q)
	if err := a.reader(ctx).QueryRowContext(ctx, query, args...).Scan(&total); err != nil {
		return nil, 0, explain(err)
	}
	query, args = pageQuery(q)
	rows, err := a.reader(ctx).QueryContext(ctx, query, args...)
	if err != nil {
		return nil, 0, explain(err)
	}
	defer rows.Close()
	var out []Item
	for rows.Next() {
		var i Item
		var changed string
		var binned, sum sql.NullString
		c := &i.Card
		if err := rows.Scan(&i.ID, &i.Name, &i.Number, &i.Revision, &i.Issued, &i.Asked, &changed, &binned, &i.Version, &sum, &c.Of, &c.Strip, &c.Blockers, &c.Cautions, &c.Notes, &c.Faults); err != nil {
			return nil, 0, explain(err)
		}
		i.Changed, i.Binned, i.Digest = readStamp(changed), readStamp(binned.String), sum.String
		out = append(out, i)
	}
	return out, total, explain(rows.Err())
}

// wanted gives the condition of a query, over plan p.
func (q *Query) wanted() (string, []any) {
	where := " where p.binned is null"
	if q.Binned {
		where = " where p.binned is not null"
	}
	match := matching(q.Text)
	if match == "" {
		return where, nil
	}
	where += " and (p.id in (select rowid from find where find match $1)"
	for _, id := range q.Also {
		where += " or p.id = " + strconv.FormatInt(int64(id), 10)
	}
	if digits, ok := drafts.TypedDigest(q.Text); ok {
		return where + " or p.id in (select plan from revision where " + hasDigits + "))", []any{match, drafts.DigestName + digits}
	}
	return where + ")", []any{match}
}

// hasDigits is the condition that a revision's digest begins with the second
// argument of a query.
const hasDigits = "plan_digest between $2 and $2 || 'g'"

func countQuery(q Query) (string, []any) {
	where, args := q.wanted()
	return "select count(*) from plan p" + where, args
}

// pageQuery first finds the numbers of the page, for which the indices of the
// orders suffice, and then looks at these plans alone.
func pageQuery(q Query) (string, []any) {
	where, args := q.wanted()
	order := func(p string) string {
		switch q.Order {
		case ByName:
			return " order by " + p + ".name collate nocase, " + p + ".id"
		case ByNumber:
			return " order by " + p + ".number collate nocase, " + p + ".id"
		case ByDue:
			return dueOrder(p)
		}
		return " order by " + p + ".changed desc, " + p + ".id desc"
	}
	asked := "''"
	if len(args) == 2 {
		asked = "coalesce((select letter from revision where plan = o.id and " + hasDigits + " order by seq desc limit 1), '')"
	}
	page := "select p.id from plan p" + where + order("p") + " limit " + count(q.Limit) + " offset " + count(q.Offset)
	return `
select o.id, o.name, o.number, coalesce(r.letter, ''), coalesce(r.plan_digest, ''), ` + asked + `,
	o.changed, o.binned, o.version, s.digest, o.card_of, o.strip, o.blockers, o.cautions, o.notes, o.faults
from plan o left join revision r on r.plan = o.id and r.seq = (select max(seq) from revision where plan = o.id) left join state s on s.plan = o.id and s.n = o.head where o.id in (` + page + ")" + order("o"), args
}

// matching makes a query of what a person types: every word, or its beginning.
func matching(text string) string {
	words := drafts.Words(text)
	for i, w := range words {
		words[i] = `"` + w + `"*`
	}
	return strings.Join(words, " ")
}

// KeepCard keeps what the shelf shows of a plan.
func (a *Archive) KeepCard(ctx context.Context, id ID, c Card) error {
	return a.change(ctx, func(ctx context.Context, tx *sql.Tx) error {
		_, err := tx.ExecContext(ctx, "update plan set card_of = $1, strip = $2, blockers = $3, cautions = $4, notes = $5, faults = $6 where id = $7",
			c.Of, c.Strip, c.Blockers, c.Cautions, c.Notes, c.Faults, id)
		return err
	})
}
