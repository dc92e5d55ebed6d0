package archive

import (
	"context"
	"crypto/sha256"
	"database/sql"
	"errors"
	"fmt"
	"strings"
)

// migrations lead from each schema to the next: the first makes schema 1. A step
// that was released is never changed.
var migrations = []migration{
	{sql: schema1},
	{sql: schema2},
	{sql: schema3, then: sealAll},
	{sql: schema4},
	{sql: schema5},
	{sql: schema6},
	{sql: schema7},
}

// A migration leads to a schema: statements, and what else they need.
type migration struct {
	sql  string
	then func(ctx context.Context, tx *sql.Tx) error
}

// schema1 holds plans, their states and their issued revisions.
//
// A plan's version counts every change of its draft, undoing included. Its head
// is the state that stands. A state's prev is where undo leads from it, its next
// where redo leads; the states themselves are only ever added.
const schema1 = `
create table plan (
	id       integer primary key autoincrement,
	version  integer not null default 1,
	head     integer not null default 1,
	top      integer not null default 1,
	name     text not null,
	number   text not null,
	made     text not null,
	changed  text not null,
	binned   text,
	card_of  text not null default '',
	strip    text not null default '',
	blockers integer not null default 0,
	cautions integer not null default 0,
	notes    integer not null default 0,
	faults   integer not null default 0
) strict;
create index plan_changed on plan (binned, changed desc, id desc);
create index plan_name on plan (binned, name collate nocase, id);
create index plan_number on plan (binned, number collate nocase, id);

create table state (
	plan   integer not null references plan on delete cascade,
	n      integer not null,
	prev   integer,
	next   integer,
	at     text not null,
	did    text not null,
	digest text not null,
	valid  integer not null,
	body   blob not null,
	primary key (plan, n)
) strict;

create table revision (
	plan     integer not null references plan on delete cascade,
	seq      integer not null,
	letter   text not null,
	at       text not null,
	prepared text not null,
	checked  text not null,
	approved text not null,
	reason   text not null,
	despite  text not null,
	second   text not null,
	plan_digest text not null,
	digest   text not null,
	body     blob not null,
	primary key (plan, seq),
	unique (plan, letter)
) strict;
create trigger revision_stays before update on revision
begin select raise(abort, 'an issued revision is never changed'); end;
create trigger revision_kept before delete on revision
when exists (select 1 from plan where id = old.plan and binned is null)
begin select raise(abort, 'an issued revision is never removed'); end;

create virtual table find using fts5 (name, number, notes, parts,
	tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3');
`

// schema2 remembers which window made the last changes of a draft, and the version
// that stood before the first of them.
const schema2 = `
alter table plan add column window text not null default '';
alter table plan add column since integer not null default 0;
`

// schema3 adds the shelf of rams, and a seal on each revision: the digest of all
// that is said of it, names and dates too. The database itself now keeps issued
// revisions also from being replaced, and their plans from being removed
// otherwise than through the bin.
const schema3 = `
create table ram (
	id      integer primary key autoincrement,
	version integer not null default 1,
	name    text not null,
	changed text not null,
	digest  text not null,
	sum     text not null,
	body    blob not null
) strict;
create unique index ram_name on ram (name collate nocase);

alter table revision add column seal text not null default '';
drop trigger revision_stays;
create trigger revision_new before insert on revision
when exists (select 1 from revision where plan = new.plan and (seq >= new.seq or letter = new.letter))
begin select raise(abort, 'an issued revision is never replaced'); end;
create trigger plan_kept before delete on plan
when old.binned is null and exists (select 1 from revision where plan = old.id)
begin select raise(abort, 'a plan with issued revisions is removed through the bin only'); end;
`

// schema4 adds the records of exams in the drill. They outlive their plan, so
// nothing ties them to it but its number, which is never given again.
const schema4 = `
create table training (
	id       integer primary key autoincrement,
	plan     integer not null,
	sitting  text not null unique,
	who      text not null,
	at       text not null,
	revision text not null,
	sum      text not null,
	body     blob not null
) strict;
create index training_plan on training (plan, at desc, id desc);
create index training_who on training (who collate nocase, at desc, id desc);
create trigger training_stays before update on training
begin select raise(abort, 'a training record is never changed'); end;
`

// schema5 adds the exams that were begun and are not handed in yet. They are no
// records: the program removes them itself.
const schema5 = `
create table sitting (
	id      text primary key,
	plan    integer not null,
	who     text not null,
	started text not null,
	sum     text not null,
	body    blob not null
) strict;
`

// schema6 adds what the planner says of a revision and the drill: empty in revisions of
// before, of which nobody said anything. A seal takes it in where something is said.
const schema6 = `
alter table revision add column drill text not null default '';
`

// schema7 adds the studies with which a station is proved, and the checks of its shifts. What
// was signed is never changed, removed or replaced; a correction is another study that
// names it. What was typed stays beside what it was read as. Table proved keeps how
// the newest revision of a plan stands, so that the shelf need not assess it at each visit: a
// study that is signed and a revision that is issued take it away.
const schema7 = `
create table study (
	id       integer primary key autoincrement,
	plan     integer not null references plan on delete cascade,
	once     text unique,
	version  integer not null default 1,
	kind     text not null,
	purpose  text not null,
	posted   integer not null,
	made     text not null,
	changed  text not null,
	replaces integer,
	signed   text,
	signer   text not null default '',
	outcome  text not null default '',
	letter   text not null default '',
	revision text not null default '',
	typed_sum text not null,
	typed    blob not null,
	sum      text not null default '',
	document blob,
	seal     text not null default ''
) strict;
create index study_plan on study (plan, purpose, signed desc, id desc);
create unique index study_corrected on study (replaces) where replaces is not null and signed is not null;
create trigger study_stays before update on study when old.signed is not null
begin select raise(abort, 'a signed study is never changed'); end;
create trigger study_kept before delete on study
when old.signed is not null and exists (select 1 from plan where id = old.plan and binned is null)
begin select raise(abort, 'a signed study is never removed'); end;
create trigger study_new before insert on study
when exists (select 1 from study where signed is not null and (id = new.id or once = new.once))
begin select raise(abort, 'a signed study is never replaced'); end;
create trigger plan_proved before delete on plan
when old.binned is null and exists (select 1 from study where plan = old.id and signed is not null)
begin select raise(abort, 'a plan with signed studies is removed through the bin only'); end;

create table proved (
	plan  integer primary key references plan on delete cascade,
	of    text not null,
	since text not null,
	last  text not null,
	state text not null,
	until text not null
) strict;
create trigger study_signed after update on study when new.signed is not null
begin delete from proved where plan = new.plan; end;
create trigger study_came after insert on study when new.signed is not null
begin delete from proved where plan = new.plan; end;
create trigger revision_came after insert on revision
begin delete from proved where plan = new.plan; end;
`

const revisionStays = `
create trigger revision_stays before update on revision
begin select raise(abort, 'an issued revision is never changed'); end;
`

// sealAll seals the revisions of older schemas. It stands for itself, as what was
// released does: it uses nothing that later programs change.
func sealAll(ctx context.Context, tx *sql.Tx) error {
	type row struct {
		plan  int64
		texts [10]string // letter to plan_digest, then the digest of the body
	}
	var all []row
	err := each(ctx, tx, "select plan, letter, at, prepared, checked, approved, reason, despite, second, plan_digest, digest from revision", nil, func(scan scanner) error {
		var one row
		to := []any{&one.plan}
		for i := range one.texts {
			to = append(to, &one.texts[i])
		}
		err := scan(to...)
		all = append(all, one)
		return err
	})
	if err != nil {
		return err
	}
	for _, one := range all {
		var b strings.Builder
		for _, s := range one.texts {
			fmt.Fprintf(&b, "%d %s\n", len(s), s)
		}
		seal := fmt.Sprintf("sha256:%x", sha256.Sum256([]byte(b.String())))
		if _, err := tx.ExecContext(ctx, "update revision set seal = $1 where plan = $2 and letter = $3", seal, one.plan, one.texts[0]); err != nil {
			return err
		}
	}
	_, err = tx.ExecContext(ctx, revisionStays)
	return err
}

// Schema is the number of the newest schema that this program knows.
func Schema() int { return len(migrations) }

// schemaOf reads the number of the schema; 0 is an empty file.
func schemaOf(ctx context.Context, q querier) (int, error) {
	var n int
	err := q.QueryRowContext(ctx, "pragma user_version").Scan(&n)
	return n, err
}

// errBare says that a database holds nothing at all.
var errBare = errors.New("archive: the file holds no tables")

// migrate brings the file to the newest schema, and fills a new one, in one
// transaction, so that nobody ever sees half of it.
func migrate(ctx context.Context, db *sql.DB, fill func(*sql.Tx) error) error {
	tx, err := db.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer func() { _ = tx.Rollback() }()
	from, err := schemaOf(ctx, tx)
	if err != nil {
		return err
	}
	if from > Schema() {
		return newer(from)
	}
	if from == 0 {
		var tables int
		if err := tx.QueryRowContext(ctx, "select count(*) from sqlite_master").Scan(&tables); err != nil {
			return err
		}
		if tables > 0 {
			return &Failure{Text: "The file is no archive of ramplan."}
		}
		if fill == nil {
			return errBare
		}
	}
	for n := from; n < Schema(); n++ {
		m := migrations[n]
		_, err := tx.ExecContext(ctx, m.sql+fmt.Sprintf("\npragma user_version = %d;", n+1))
		if err == nil && m.then != nil {
			err = m.then(ctx, tx)
		}
		if err != nil {
			return fmt.Errorf("archive: schema %d: %w", n+1, err)
		}
	}
	if from == 0 {
		if err := fill(tx); err != nil {
			return err
		}
	}
	return tx.Commit()
}

func newer(schema int) error {
	return &Failure{Text: fmt.Sprintf("The archive has schema %d and was made by a newer ramplan; this one reads up to %d.", schema, Schema())}
}
