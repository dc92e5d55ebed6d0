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
		return "Not there"
	case http.StatusConflict:
		return "Changed meanwhile"
	case http.StatusRequestEntityTooLarge:
		return "Too large"
	case http.StatusUnprocessableEntity, http.StatusUnsupportedMediaType:
		return "Not accepted"
	case http.StatusServiceUnavailable:
		return "Not possible just now"
	case http.StatusInternalServerError:
		return "A fault in the program or its archive"
	}
	return "Not done"
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
		return refusal{http.StatusConflict, "Another window changed the plan meanwhile: nothing was done.", []string{"Open the plan again and look at what stands there now."}}
	case errors.As(err, &staleRam):
		return refusal{http.StatusConflict, "Another window changed the ram meanwhile: nothing was done.", []string{"Open the ram again and look at what stands there now."}}
	case errors.As(err, &damaged):
		return refusal{http.StatusInternalServerError, capital(damaged.What) + " is damaged: it is not what was stored.", []string{"The history of the plan shows which states are whole.", "ramplan check looks through the whole archive."}}
	case errors.As(err, &old):
		return refusal{http.StatusUnprocessableEntity, "Revision " + old.Letter + " is what was issued, but today's rules do not take it: they ask for more than those under which it was issued.",
			append(lines(old.Faults), "Its sheet that was printed then stays what it is. On the page Revisions a new draft can be started from it, to be mended and issued anew.")}
	case errors.As(err, &failure):
		return refusal{http.StatusServiceUnavailable, failure.Text, []string{"Go back: what you typed is still there. Try again when it is mended."}}
	case errors.As(err, &faults):
		return refusal{http.StatusUnprocessableEntity, "What was sent cannot be kept.", lines(faults)}
	case errors.As(err, &large):
		return refusal{http.StatusRequestEntityTooLarge, "The request is larger than 8 MiB.", []string{"A plan or draft file may have 4 MiB at most.", "Go back: what you typed is still there."}}
	}
	return refusal{http.StatusInternalServerError, "Something went wrong in the program; the entries are still in your browser.", []string{"Go back, save the entries as a file and start ramplan again."}}
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
