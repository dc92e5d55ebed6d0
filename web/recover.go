package web

import (
	"fmt"
	"log"
	"net/http"
	"runtime/debug"
)

// A panicked is a fault of the program, met where it was caught.
type panicked struct {
	value any
	stack []byte
}

func (e panicked) Error() string { return fmt.Sprintf("web: panic: %v\n%s", e.value, e.stack) }

// safely does something and makes an error of a panic. Handlers run in it, and so
// does every goroutine of this package: one that panics outside of it ends the server
// for every window.
func safely(do func() error) (err error) {
	defer func() {
		switch v := recover(); v {
		case nil:
		case http.ErrAbortHandler: // means to end the connection
			panic(v)
		default:
			err = panicked{v, debug.Stack()}
		}
	}()
	return do()
}

// logOf is where the server of a request writes what goes wrong.
func logOf(r *http.Request) *log.Logger {
	if srv, ok := r.Context().Value(http.ServerContextKey).(*http.Server); ok && srv.ErrorLog != nil {
		return srv.ErrorLog
	}
	return log.Default()
}
