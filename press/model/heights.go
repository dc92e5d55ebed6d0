package model

import (
	"math"

	"ramplan/press/stack"
)

// parts is the tolerance stack, sorted by what each row counts in.
type parts struct {
	contact  []stack.Term // the height at first contact, H0
	product  []stack.Term // what height and reading share
	read     []stack.Term // datum rows that carry the insert: in the reading, not in the height
	beside   []stack.Term // datum rows that do not: in the height (counted off), not in the reading
	under    stack.Height // the datum, H_D: both kinds of its rows
	aside    float64      // mm, mean of the rows beside
	lost     float64      // mm, by how much the press-in travel may fall short, worst case
	inserts  float64      // mm, contact height of the rows that go with the insert
	without  float64      // mm, seated height without them
	inserted bool         // some row is marked as insert
	xContact float64      // mm, nominal first contact
	xSeat    float64      // mm, nominal seat at zero force
	travel   float64      // mm, press-in travel t
	earliest float64      // mm, earliest contact, worst case
}

// pressable tells whether there is a way to press in: the part is no lower before than
// after.
func (q *parts) pressable() bool { return q.travel >= 0 }

var shapes = map[string]stack.Shape{Uniform: stack.Uniform, Triangular: stack.Triangular, Normal: stack.Normal}

func (row Part) mean() float64 { return row.Nominal + (row.Plus-row.Minus)/2 }

func (row Part) term(times float64) stack.Term {
	return stack.Term{
		Row:   stack.Row{Mean: row.mean(), Half: (row.Minus + row.Plus) / 2, Shape: shapes[row.Shape], Sigmas: row.Sigmas},
		Times: times,
	}
}

// stackUp adds up the rows on the nest (model section 3).
func stackUp(rows []Part, nest float64) (parts, Stack) {
	n := len(rows)
	var q parts
	terms := make([]stack.Term, 0, 4*n)
	for _, row := range rows {
		terms = append(terms, row.term(row.Contact))
		if row.Insert {
			q.inserted = true
			q.inserts += row.Contact * row.mean()
		} else {
			q.without += row.Seat * row.mean()
		}
	}
	group := func(of func(Part) bool, times func(Part) float64) []stack.Term {
		from := len(terms)
		for _, row := range rows {
			if of(row) {
				terms = append(terms, row.term(times(row)))
			}
		}
		return terms[from:len(terms):len(terms)]
	}
	inSeat := func(row Part) float64 { return row.Seat }
	countedOff := func(row Part) float64 { return -row.DatumCount }
	q.contact = terms[:n:n]
	q.product = group(func(row Part) bool { return !row.Datum }, inSeat)
	q.read = group(func(row Part) bool { return row.Datum && row.Carries() }, inSeat)
	seated := terms[n:len(terms):len(terms)]
	q.beside = group(func(row Part) bool { return row.Datum && !row.Carries() }, countedOff)
	beside := stack.Add(q.beside)
	q.under, q.aside = stack.Add(q.read), -beside.Mean
	q.under.Mean -= beside.Mean
	q.under.SD = math.Hypot(q.under.SD, beside.SD)

	contact, seat := stack.Add(q.contact), stack.Add(seated)
	q.xContact, q.xSeat = nest-contact.Mean, nest-seat.Mean
	q.earliest = q.xContact - contact.Worst
	q.travel = contact.Mean - seat.Mean
	if math.Abs(q.travel) < slack {
		q.travel = 0
	}
	for _, row := range rows {
		q.lost += math.Abs(row.Seat-row.Contact) * row.term(1).Half
	}
	return q, Stack{Contact: Height(contact), Seat: Height(seat), PressInTravel: q.travel}
}
