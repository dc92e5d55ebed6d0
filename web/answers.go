package web

import (
	"net/http"
	"strings"

	"ramplan/press"
	"ramplan/press/drill"
	"ramplan/press/training"
	"ramplan/web/view"
)

// givenIn reads what a form has for an exercise, as it was chosen or typed. It is not ok
// for a choice that the page of this program does not have.
func givenIn(r *http.Request, e drill.Exercise, name string) (g training.Given, ok bool) {
	if e.Zone == nil {
		g.Choice, ok = view.Chosen(e, r.PostForm.Get(name))
		return g, ok
	}
	return training.Given{From: strings.TrimSpace(r.PostForm.Get(name + "-from")), To: strings.TrimSpace(r.PostForm.Get(name + "-to"))}, true
}

// answered is what was given as an answer. It is not readable where something was typed
// that is no zone: then it is to be asked again.
func answered(e drill.Exercise, g training.Given) (a drill.Answer, readable bool) {
	if e.Zone == nil {
		return drill.Answer{Choice: g.Choice}, true
	}
	if g.From+g.To == "" {
		return drill.Answer{}, true
	}
	from, ok1 := view.TypedLength(g.From)
	to, ok2 := view.TypedLength(g.To)
	if !ok1 || !ok2 {
		return drill.Answer{}, false
	}
	return drill.Answer{Zone: &press.Pair{from, to}}, true
}

// answerOf reads the answer to an exercise from a form. It is not readable where
// something was typed that is no zone, or chosen that the page of this program does not
// have: then it is to be asked again.
func answerOf(r *http.Request, e drill.Exercise, name string) (a drill.Answer, readable bool) {
	g, ok := givenIn(r, e, name)
	if !ok {
		return drill.Answer{}, false
	}
	return answered(e, g)
}

// takenIn reads a whole form: what has an answer, and the items whose answer is none
// that this program knows.
func (x *sitting) takenIn(r *http.Request) (given map[string]training.Given, unknown map[string]bool) {
	given, unknown = map[string]training.Given{}, map[string]bool{}
	for i, key := range x.exam.Keys {
		g, ok := givenIn(r, x.exam.Exercise(i), view.ItemName(i))
		if !ok {
			unknown[key] = true
		} else if g != (training.Given{}) {
			given[key] = g
		}
	}
	return given, unknown
}

// answers are those that can be read.
func (x *sitting) answers() map[string]drill.Answer {
	out := map[string]drill.Answer{}
	for i, key := range x.exam.Keys {
		out[key], _ = answered(x.exam.Exercise(i), x.given[key])
	}
	return out
}
