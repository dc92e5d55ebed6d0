package archive

import (
	"context"
	"database/sql"
	"sync"
)

const headQuery = `
select p.version, p.window, p.since, p.head, s.at, p.binned is not null, s.prev is not null, s.next is not null, s.digest, s.body,
	coalesce(r.letter, ''), coalesce(r.plan_digest, '')
from plan p
	left join revision r on r.plan = p.id and r.seq = (select max(seq) from revision where plan = p.id)
	left join state s on s.plan = p.id and s.n = p.head where p.id = $1`

// heads asks for the head of a plan.
type heads func(context.Context, ID) *sql.Row

// compiled is the query of a head, compiled once a connection: a save asks it three times,
// and compiling it takes longer than its answer.
type compiled struct {
	once sync.Once
	stmt *sql.Stmt // nil where it could not be compiled: as text it is told why
}

func (c *compiled) of(ctx context.Context, db *sql.DB) *sql.Stmt {
	c.once.Do(func() { c.stmt, _ = db.PrepareContext(context.WithoutCancel(ctx), headQuery) })
	return c.stmt
}

func asText(q querier) heads {
	return func(ctx context.Context, id ID) *sql.Row { return q.QueryRowContext(ctx, headQuery, id) }
}

func compiledHeads(s *sql.Stmt) heads {
	return func(ctx context.Context, id ID) *sql.Row { return s.QueryRowContext(ctx, id) }
}

// heads asks outside of any transaction.
func (h *handles) heads(ctx context.Context) heads {
	if s := h.toRead.of(ctx, h.read); s != nil {
		return compiledHeads(s)
	}
	return asText(h.read)
}

// compile makes the query of a transaction ready. It waits for the one connection that
// writes, so it comes before the transaction.
func (h *handles) compile(ctx context.Context) { h.toWrite.of(ctx, h.write) }

// headsIn asks in a transaction that writes.
func (h *handles) headsIn(ctx context.Context, tx *sql.Tx) heads {
	if h.toWrite.stmt != nil {
		return compiledHeads(tx.StmtContext(ctx, h.toWrite.stmt))
	}
	return asText(tx)
}
