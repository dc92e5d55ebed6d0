package model

// Kept is how far the parts may go, each by itself, before a target is missed. Where none
// is, up to the last row that is looked at, it is that row.
type Kept struct {
	Lower, Taller float64 // mm, off the mean height
	Wider         float64 // factor on the tolerances of all rows that are no datum
}

// Where things stand now in the rows of a worst day, and what limits are found to, mm and
// a factor: less than what is written of them.
const (
	shiftNow   = 10
	spreadNow  = 5
	keptFine   = 1e-4
	keptFactor = 1e-3
)

// limits of what keeps both targets; nil where one is missed as things are now. Between
// the last row that keeps them and the next it halves, and tells what keeps them.
func (d *days) limits(shift, spread [][3]float64) *Kept {
	t := &d.in.Targets
	keeps := func(consumer, producer float64) bool {
		return consumer <= max(t.FalseAcceptPPM, finest) && producer <= max(t.FalseRejectPPM, finest)
	}
	if now := shift[shiftNow]; !keeps(now[1], now[2]) {
		return nil
	}
	e := d.average()
	find := func(rows [][3]float64, from, step int, fine float64, at func(x float64) Shares) float64 {
		i := from
		for i+step >= 0 && i+step < len(rows) && keeps(rows[i+step][1], rows[i+step][2]) {
			i += step
		}
		if i+step < 0 || i+step == len(rows) {
			return rows[i][0]
		}
		kept, missed := rows[i][0], rows[i+step][0]
		for (missed-kept)*float64(step) > fine {
			mid := (kept + missed) / 2
			if s := at(mid); keeps(s.ConsumerPPM, s.ProducerPPM) {
				kept = mid
			} else {
				missed = mid
			}
		}
		return kept
	}
	moved := func(x float64) Shares { return d.moved(x, e) }
	return &Kept{
		Lower: -find(shift, shiftNow, -1, keptFine, moved), Taller: find(shift, shiftNow, 1, keptFine, moved),
		Wider: find(spread, spreadNow, 1, keptFactor, func(x float64) Shares { return d.spreadBy(x, e) }),
	}
}
