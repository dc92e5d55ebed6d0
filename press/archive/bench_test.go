package archive

import (
	"context"
	"database/sql"
	"fmt"
	"strings"
	"testing"

	"ramplan/press"
	"ramplan/press/drafts"
)

const shelfSize = 10000

// crowded makes an archive of many plans with cards, and gives it.
func crowded(b *testing.B) *Archive {
	b.Helper()
	a := opened(b, b.TempDir(), Options{})
	d := example(b)
	strip := "<svg>" + strings.Repeat("<path d='M0 0h100v20'/>", 200) + "</svg>"
	err := a.change(background(), func(ctx context.Context, tx *sql.Tx) error {
		for i := range shelfSize {
			one := &press.Draft{Entries: append([]press.Entry(nil), d.Entries...)}
			one.Set("title.name", fmt.Sprintf("sleeve %d into hub %d", i, i%97))
			one.Set("title.number", fmt.Sprintf("WS-%05d", (i*7919)%shelfSize))
			h, err := a.create(ctx, tx, one, drafts.DidMake)
			if err != nil {
				return err
			}
			if _, err := tx.ExecContext(ctx, "update plan set strip = $1, card_of = $2 where id = $3", strip, h.Digest, h.ID); err != nil {
				return err
			}
		}
		return nil
	})
	if err != nil {
		b.Fatal(err)
	}
	return a
}

func BenchmarkShelf(b *testing.B) {
	a := crowded(b)
	for _, c := range []struct {
		name string
		q    Query
	}{
		{"first page", Query{Limit: 24}},
		{"last page", Query{Limit: 24, Offset: shelfSize - 24}},
		{"by name", Query{Limit: 24, Order: ByName}},
		{"by number, middle", Query{Limit: 24, Order: ByNumber, Offset: shelfSize / 2}},
		{"by what is due", Query{Limit: 24, Order: ByDue}},
		{"search one", Query{Limit: 24, Text: "WS-00123"}},
		{"search a hundredth", Query{Limit: 24, Text: "hub 17"}},
		{"search all", Query{Limit: 24, Text: "sleeve"}},
		{"search all by name", Query{Limit: 24, Text: "s", Order: ByName}},
	} {
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				items, _, err := a.List(background(), c.q)
				if err != nil || len(items) == 0 {
					b.Fatal(err, len(items))
				}
			}
		})
	}
	b.Run("save", func(b *testing.B) { benchmarkSave(b, a) })
	b.Run("get", func(b *testing.B) {
		for b.Loop() {
			if _, err := a.Get(background(), shelfSize/2); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("create", func(b *testing.B) {
		d := example(b)
		for b.Loop() {
			if _, err := a.Create(background(), d, drafts.DidCopy); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("open", func(b *testing.B) {
		for b.Loop() {
			o, err := Open(background(), a.dir, Options{})
			if err != nil {
				b.Fatal(err)
			}
			_ = o.Close()
		}
	})
}

func benchmarkSave(b *testing.B, a *Archive) {
	h, err := a.Get(background(), 1)
	if err != nil {
		b.Fatal(err)
	}
	for i := 0; b.Loop(); i++ {
		h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", fmt.Sprint(i)), drafts.DidReplace)
		if err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkHistory(b *testing.B) {
	const states = 5000
	a := opened(b, b.TempDir(), Options{First: []*press.Draft{example(b)}})
	d := example(b)
	err := a.change(background(), func(ctx context.Context, tx *sql.Tx) error {
		for i := int64(2); i <= states; i++ {
			body, _, err := encode(with(d, "title.notes", fmt.Sprint(i)))
			if err != nil {
				return err
			}
			if err := addState(ctx, tx, 1, i, i-1, a.stamp(), "title.notes", digest(body), body, i%2 == 0); err != nil {
				return err
			}
			if _, err := tx.ExecContext(ctx, "update state set next = $1 where plan = 1 and n = $2", i, i-1); err != nil {
				return err
			}
		}
		if _, err := tx.ExecContext(ctx, "update plan set head = $1, top = $1 where id = 1", states); err != nil {
			return err
		}
		return findBy(ctx, tx, 1, drafts.LabelsOf(with(d, "title.notes", fmt.Sprint(states))))
	})
	if err != nil {
		b.Fatal(err)
	}
	for _, before := range []int64{0, states / 2, 51} {
		b.Run(fmt.Sprintf("page before %d", before), func(b *testing.B) {
			for b.Loop() {
				page, err := a.History(background(), 1, before, 50)
				if err != nil || len(page) != 50 {
					b.Fatal(err, len(page))
				}
			}
		})
	}
	b.Run("save", func(b *testing.B) { benchmarkSave(b, a) })
	b.Run("undo and redo", func(b *testing.B) {
		h, err := a.Get(background(), 1)
		if err != nil {
			b.Fatal(err)
		}
		for b.Loop() {
			if h, err = a.Undo(background(), 1, At(h.Version)); err == nil {
				h, err = a.Redo(background(), 1, At(h.Version))
			}
			if err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("check", func(b *testing.B) {
		for b.Loop() {
			r, err := a.Check(background())
			if err != nil || len(r.Faults) > 0 {
				b.Fatal(err, r)
			}
		}
	})
}
