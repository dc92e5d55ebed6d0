package press

import (
	"math"

	"ramplan/press/stack"
)

// parts is the tolerance stack, sorted by what each row counts in.
type parts struct {
	contact  []stack.Term // the height at first contact, H0
	product  []stack.Term // the seated height above the datum, C
	datum    []stack.Term // the rows under the datum, H_D
	under    stack.Height // H_D
	inserts  float64      // mm, contact height of the rows that go with the insert
	without  float64      // mm, seated height without them
	inserted bool         // some row is marked as insert
	xContact float64      // mm, nominal first contact
	xSeat    float64      // mm, nominal seat at zero force
	travel   float64      // mm, press-in travel t
	earliest float64      // mm, earliest contact, worst case
}

var shapes = map[string]stack.Shape{Uniform: stack.Uniform, Triangular: stack.Triangular, Normal: stack.Normal}

func (row Part) mean() float64 { return row.Nominal + (row.Plus-row.Minus)/2 }

func (row Part) term(times float64) stack.Term {
	return stack.Term{
		Row:   stack.Row{Mean: row.mean(), Half: (row.Minus + row.Plus) / 2, Shape: shapes[row.Shape], Sigmas: row.Sigmas},
		Times: times,
	}
}

// heights adds up the rows (model section 3).
func (w *work) heights() {
	n := len(w.p.Parts)
	q := &w.parts
	terms := make([]stack.Term, 0, 3*n)
	for _, row := range w.p.Parts {
		terms = append(terms, row.term(row.Contact))
		if row.Insert {
			q.inserted = true
			q.inserts += row.Contact * row.mean()
		} else {
			q.without += row.Seat * row.mean()
		}
	}
	q.contact = terms[:n:n]
	for _, row := range w.p.Parts {
		if !row.Datum {
			terms = append(terms, row.term(row.Seat))
		}
	}
	products := len(terms)
	q.product = terms[n:products:products]
	for _, row := range w.p.Parts {
		if row.Datum {
			terms = append(terms, row.term(row.Seat))
		}
	}
	q.datum = terms[products:]
	q.under = stack.Add(q.datum)

	contact, seat := stack.Add(q.contact), stack.Add(terms[n:])
	nest := w.p.Station.Nest
	q.xContact, q.xSeat = nest-contact.Mean, nest-seat.Mean
	q.earliest = q.xContact - contact.Worst
	q.travel = contact.Mean - seat.Mean
	if math.Abs(q.travel) < slack {
		q.travel = 0
	}
	w.r.Stack = Stack{Contact: Height(contact), Seat: Height(seat), PressInTravel: q.travel}
}
