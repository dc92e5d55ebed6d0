package web

import (
	"errors"
	"net/http"
	"strconv"

	"github.com/a-h/templ"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/web/page"
)

// A refusal is a request that is answered with a sentence and what to do.
type refusal struct {
	status int
	text   string
	hints  []string
}

func (e refusal) Error() string { return "web: " + strconv.Itoa(e.status) + ": " + e.text }

// answer makes a handler of a function that may fail: the one place where an
// error becomes a response.
func answer(f func(http.ResponseWriter, *http.Request) error) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		err := safely(func() error { return f(w, r) })
		if err == nil || r.Context().Err() != nil { // nobody is waiting for an answer any more
			return
		}
		e := asRefusal(err)
		switch e.status {
		case http.StatusInternalServerError:
			logOf(r).Printf("%s %s: %v", r.Method, r.URL.Path, err)
		case http.StatusServiceUnavailable:
			logOf(r).Printf("%s %s: %s", r.Method, r.URL.Path, e.text)
		}
		variesByAccept(w)
		if takesProblem(r) {
			sendProblem(w, e, err)
			return
		}
		if err := show(w, r, e.status, page.Message(assets.page(), headline(e.status), e.text, e.hints)); err != nil {
			http.Error(w, e.text, e.status)
		}
	})
}

// headline says in a word or two how a request ended.
func headline(status int) string {
	switch status {
	case http.StatusNotFound:
		return say.NotThere()
	case http.StatusConflict:
		return say.ChangedMeanwhile()
	case http.StatusRequestEntityTooLarge:
		return say.TooLarge()
	case http.StatusUnprocessableEntity, http.StatusUnsupportedMediaType:
		return say.NotAccepted()
	case http.StatusServiceUnavailable:
		return say.NotPossibleJustNow()
	case http.StatusInternalServerError:
		return say.ProgramFault()
	}
	return say.NotDone()
}

// asRefusal finds the status and the sentence of an error.
func asRefusal(err error) refusal {
	var e refusal
	var large *http.MaxBytesError
	var stale *archive.Stale
	var faults press.Problems
	var staleRam *archive.StaleRam
	var damaged *archive.Damaged
	var failure *archive.Failure
	var old *archive.NotTaken
	switch {
	case errors.As(err, &e):
		return e
	case errors.Is(err, archive.ErrNotFound):
		return errNoPlan
	case errors.As(err, &stale):
		return refusal{http.StatusConflict, say.PlanChangedElsewhere(), []string{say.OpenPlanAgain()}}
	case errors.As(err, &staleRam):
		return refusal{http.StatusConflict, say.RamChangedElsewhere(), []string{say.OpenRamAgain()}}
	case errors.As(err, &damaged):
		return refusal{http.StatusInternalServerError, say.DamagedOf(capital(damaged.What)), []string{say.HistoryShowsWhole(), say.CheckLooksThrough()}}
	case errors.As(err, &old):
		return refusal{http.StatusUnprocessableEntity, say.IssuedButNotTaken(old.Letter),
			append(lines(old.Faults), say.PrintedSheetStays())}
	case errors.As(err, &failure):
		return refusal{http.StatusServiceUnavailable, failure.Text, []string{say.TypedIsThereTryAgain()}}
	case errors.As(err, &faults):
		return refusal{http.StatusUnprocessableEntity, say.CannotKeepSent(), lines(faults)}
	case errors.As(err, &large):
		return refusal{http.StatusRequestEntityTooLarge, say.RequestTooLarge(), []string{say.MostOfAFile(), say.TypedIsThere()}}
	}
	return refusal{http.StatusInternalServerError, say.WentWrong(), []string{say.SaveEntriesAndRestart()}}
}

// show renders a page to its end before anything of it is sent.
func show(w http.ResponseWriter, r *http.Request, status int, c templ.Component) error {
	b := templ.GetBuffer()
	defer templ.ReleaseBuffer(b)
	if err := c.Render(r.Context(), b); err != nil {
		return err
	}
	h := w.Header()
	h.Set("Content-Type", "text/html; charset=utf-8")
	h.Set("Cache-Control", "private, no-cache") // not no-store: going back must find what was typed
	w.WriteHeader(status)
	_, _ = w.Write(b.Bytes()) // a browser that went away is no fault
	return nil
}
