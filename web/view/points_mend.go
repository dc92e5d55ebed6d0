package view

import (
	"math"
	"slices"
	"strconv"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// The commands that mend a curve that was read in another way than it was meant.
const (
	DoSwap    = "swap ram.curve.points"
	DoHundred = "hundredfold ram.curve.points"
	DoSort    = "sort ram.curve.points"
)

// MendCurve swaps the columns of the curve, takes its settings times 100, or puts
// its rows in order. What cannot be read as a number stays as it was typed. It is
// false for any other command.
func MendCurve(t Typed, do string) (out Typed, said string, ok bool) {
	switch do {
	case DoSwap:
		return eachSetting(t, swapped), say.ColumnsWereSwapped(), true
	case DoHundred:
		return eachSetting(t, hundredfold), say.TakenTimesHundred(), true
	case DoSort:
		return sorted(t), say.RowsWereOrdered(), true
	}
	return t, "", false
}

// eachSetting gives every entry of the curve's rows to a change.
func eachSetting(t Typed, change func(press.Entry, string) press.Entry) Typed {
	out := slices.Clone(t.Draft.Entries)
	for i, e := range out {
		if base, row, ok := rowOf(e.Path); ok && base == curveRows {
			out[i] = change(e, rowPath(base, row))
		}
	}
	t.Draft.Entries = out
	return t
}

func swapped(e press.Entry, row string) press.Entry {
	switch e.Path {
	case rowPath(row, 0):
		e.Path = rowPath(row, 1)
	case rowPath(row, 1):
		e.Path = rowPath(row, 0)
	}
	return e
}

func hundredfold(e press.Entry, row string) press.Entry {
	f, _ := press.FieldAt(e.Path)
	if e.Path != rowPath(row, 0) || f == nil {
		return e
	}
	if x, ok := press.TypedNumber(f.Bare(e.Text)); ok {
		// 15 digits: 0.55 becomes 55 and no binary noise.
		x, _ = strconv.ParseFloat(strconv.FormatFloat(x*100, 'g', 15, 64), 64)
		e.Text = words.Exact(x)
	}
	return e
}

// CurveDoubts are the questions about the curve as it is typed; none where it
// cannot be read.
func CurveDoubts(t Typed) []page.Doubt {
	var r Reading
	for i := range rowsIn(t.Draft.Entries, curveRows) {
		var p [2]float64
		for k := range p {
			x, ok := typedFigure(t, rowPath(rowPath(curveRows, i), k))
			if !ok {
				return nil
			}
			p[k] = x
		}
		r.Points = append(r.Points, p)
	}
	if len(r.Points) == 0 {
		return nil
	}
	return r.Doubts()
}

// typedFigure reads the number that is typed at a path.
func typedFigure(t Typed, path string) (float64, bool) {
	f, known := press.FieldAt(path)
	text, given := t.Draft.Get(path)
	if !known || !given {
		return 0, false
	}
	return press.TypedNumber(f.Bare(text))
}

// sorted puts the rows of the curve in the order of their settings; rows without
// one come last.
func sorted(t Typed) Typed {
	n := rowsIn(t.Draft.Entries, curveRows)
	settings := make([]float64, n)
	order := make([]int, n)
	for i := range n {
		order[i], settings[i] = i, math.Inf(1)
		if x, ok := typedFigure(t, rowPath(rowPath(curveRows, i), 0)); ok {
			settings[i] = x
		}
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return bySetting([2]float64{settings[a]}, [2]float64{settings[b]})
	})
	t.Draft.Entries = reordered(t.Draft.Entries, curveRows, order)
	return t
}
